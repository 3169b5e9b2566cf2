"""Every relation on a pullover reckoned by hand (see `hand_garment`), whole and with one number changed."""

from fractions import Fraction

import pytest

from grading_core.chart.grid import Anchor
from grading_core.codes import ProofCode
from grading_core.gauge import Gauge
from grading_core.proof.proof import proofread
from grading_core.proof.request import ProofRequest
from grading_core.pullover.request import Gauges
from grading_core.rounding import CountRule
from tests.grading_core.proof.hand_garment import (
    GARMENT,
    LABELS,
    Values,
    corrected,
    found,
    garment_proof,
    proof_of,
    row,
)

# All cuffs are even and no multiple of 4; body, hem and cast-on are multiples of 4.
RULES = {name: CountRule(4) for name in ("cast_on", "body", "hem", "band")} | {
    "sleeve": CountRule(2),
    "cuff": CountRule(2),
}
# Sections of S: neck 30 and 10, split 66 and 40; of M 32, 10, 72, 44; of L 32, 12, 78, 50: all even.
BETWEEN_STITCHES = Anchor(back=Fraction(5, 2), front=Fraction(5, 2), sleeve=Fraction(5, 2))


def changed(name: str, value: float, place: int = 1) -> Values:
    values = list(GARMENT[name])
    values[place] = value
    return tuple(values)


def codes(name: str, value: float, place: int = 1) -> set[str]:
    proof = garment_proof({name: changed(name, value, place)}, count_rules=RULES, anchor=BETWEEN_STITCHES)
    assert {each.size for each in proof.findings} <= {LABELS[place]}
    return {each.code.value for each in proof.findings}


def test_nothing_is_found_in_the_garment_reckoned_by_hand() -> None:
    proof = garment_proof(count_rules=RULES, anchor=BETWEEN_STITCHES)
    assert (proof.findings, proof.corrections, proof.unchecked) == ((), (), ())


def test_nothing_is_found_in_the_garment_printed_as_size_runs() -> None:
    runs = {name: f"{first:g} ({', '.join(f'{v:g}' for v in rest)})" for name, (first, *rest) in GARMENT.items()}
    assert found(garment_proof(runs)) == []


@pytest.mark.parametrize(
    ("name", "value", "expected"),
    [
        # what a number stands in: the sums of the module's docstring, and the multiples and parities asked
        ("neck.stitches", 88, {"section_sum", "yoke_from_neck", "cast_on", "width"}),
        ("neck.cast_on", 96, {"cast_on"}),
        ("neck.cast_on", 84, {"cast_on", "pick_up"}),
        ("neck.back", 30, {"section_sum", "split_from_neck"}),
        ("neck.front", 34, {"section_sum", "split_from_neck"}),
        ("neck.sleeve", 12, {"section_sum", "split_from_neck"}),
        ("neck.sleeve", 11, {"section_sum", "split_from_neck", "chart_parity"}),
        ("yoke.back_increases", 19, {"split_from_neck", "yoke_from_neck"}),
        ("yoke.front_increases", 21, {"split_from_neck", "yoke_from_neck", "increase_rounds"}),
        ("yoke.sleeve_increases", 18, {"split_from_neck", "yoke_from_neck"}),
        ("yoke.increase_rounds", 19, {"increase_rounds"}),
        ("yoke.increase_rounds", 26, {"increase_rounds", "increases_exceed_rounds"}),
        ("yoke.doubled_rounds", 1, {"increase_rounds"}),
        ("yoke.rounds", 38, {"falls", "height", "increases_exceed_rounds"}),
        ("split.back", 74, {"split_from_neck", "section_sum", "body_from_split"}),
        ("split.front", 70, {"split_from_neck", "section_sum", "body_from_split"}),
        ("split.sleeve", 46, {"split_from_neck", "section_sum", "sleeve_from_split"}),
        ("split.yoke_total", 232, {"section_sum", "yoke_from_neck", "split_closes"}),
        ("split.underarm", 10, {"body_from_split", "sleeve_from_split", "split_closes", "width"}),
        ("split.line_to_body", 2, {"body_from_split", "sleeve_from_split"}),
        ("body.stitches", 156, {"body_from_split", "split_closes", "width"}),
        ("body.stitches", 158, {"body_from_split", "split_closes", "width", "count_rule"}),
        ("sleeve.stitches", 56, {"sleeve_from_split", "split_closes", "width", "decreases_to_cuff"}),
        ("sleeve.decrease_rounds", 9, {"decreases_to_cuff"}),
        ("sleeve.rounds", 7, {"decreases_exceed_rounds", "height"}),
        ("cuff.stitches", 47, {"decreases_to_cuff", "width", "count_rule"}),
        ("hem.stitches", 160, {"width"}),
        ("band.stitches", 84, {"falls", "pick_up", "width"}),
        ("body.rounds", 94, {"height"}),
        ("hem.rounds", 17, {"height"}),
        ("cuff.rounds", 10, {"height"}),
        ("to_fit.bust", 75, {"ease"}),
        ("to_fit.ease", 7, {"ease"}),
        ("finished.bust", 84, {"width", "ease", "inches"}),
        ("finished.upper_arm", 26, {"width"}),
        ("finished.neck", 47, {"width"}),
        ("finished.underarm", 5, {"width"}),
        ("finished.hem", 81, {"width"}),
        ("finished.wrist", 20, {"width"}),
        ("finished.band", 45, {"width"}),
        ("finished.depth", 16.5, {"height", "total_length", "reach"}),
        ("finished.body_length", 39, {"height", "total_length"}),
        ("finished.front_length", 36, {"total_length"}),
        ("finished.sleeve_length", 41.5, {"height", "reach"}),
        ("finished.total_length", 62, {"total_length"}),
        ("finished.reach", 68, {"reach"}),
        ("yarn.metres_1", 800, {"yards"}),
        ("yarn.yards_1", 750, {"yards"}),
    ],
)
def test_one_changed_number_breaks_the_relations_that_it_stands_in(name: str, value: float, expected: set[str]) -> None:
    # M's yoke of 38 rounds falls besides, from S's 42, and its band of 84 from S's 88
    assert codes(name, value) == expected


def test_every_code_but_that_of_yarn_and_of_printed_runs_is_met_above() -> None:
    met = set()
    for mark in test_one_changed_number_breaks_the_relations_that_it_stands_in.pytestmark:  # type: ignore[attr-defined]
        for _, _, expected in mark.args[1]:
            met |= expected
    assert {code.value for code in ProofCode} - met == {
        "run_length",
        "printed_differs",
        "below_one",
        "not_whole",
        "yarn_falls",
    }


@pytest.mark.parametrize(
    ("name", "value", "right"),
    [
        ("neck.back", 36, 32),
        ("neck.sleeve", 13, 10),
        ("neck.stitches", 98, 92),
        ("yoke.sleeve_increases", 19, 17),
        ("split.back", 27, 72),
        ("split.sleeve", 48, 44),
        ("split.yoke_total", 204, 240),
        ("split.underarm", 4, 8),
        ("split.line_to_body", 2, 1),
        ("body.stitches", 146, 164),
        ("sleeve.stitches", 45, 54),
        ("finished.depth", 16.5, 17.5),
        ("finished.body_length", 39, 37.5),
        ("finished.bust", 84, 82),
    ],
)
@pytest.mark.parametrize("place", range(3))
def test_a_number_that_two_relations_tell_is_the_one_to_blame(
    name: str, value: float, right: float, place: int
) -> None:
    wrong = GARMENT[name][place] + (value - right)  # type: ignore[operator]
    proof = garment_proof({name: changed(name, wrong, place)})
    assert corrected(proof) == [(LABELS[place], name, wrong, GARMENT[name][place])]
    assert proof.corrections[0].others == 0


def test_an_ease_that_is_five_too_few_is_found_though_all_lengths_are_fives() -> None:
    # 80 + 10, 85 + 10, and 90 + 10 is not 105
    rows = {"to_fit.bust": "80 (85, 90)", "to_fit.ease": "10", "finished.bust": "90 (95, 105)"}
    assert [(each.code, each.size) for each in found(proof_of(LABELS, rows))] == [("ease", "L")]


def test_a_width_is_found_where_its_pattern_has_no_other_length() -> None:
    # 216 stitches at 2.2 to the cm are 98.2 cm
    rows = {"body.stitches": "216", "finished.bust": "100"}
    assert [
        each.code for each in found(proof_of(("M",), rows, gauges=Gauges(Gauge(Fraction(11, 5), Fraction(3)))))
    ] == ["width"]


def test_a_front_drop_is_stitches_that_are_not_cast_on() -> None:
    fewer = {"neck.cast_on": (70, 72, 76), "neck.front_drop": (8, 8, 8)}
    assert found(garment_proof(fewer)) == []
    more = fewer | {"neck.cast_on": (70, 93, 76)}
    assert [(each.code, each.size) for each in found(garment_proof(more))] == [("cast_on", "M")]


def test_a_total_length_without_short_rows_told_may_be_longer_than_its_parts_and_not_shorter() -> None:
    # M: 17.5 + 37.5 = 55, printed to half a centimetre each: 54.25 and more may be meant
    lengths = {"finished.depth": "17.5", "finished.body_length": "37.5", "finished.bust": "82.5"}
    for total, codes in (("60", []), ("54.5", []), ("54", ["total_length"])):
        proof = proof_of(
            ("M",), lengths | {"finished.total_length": total}, gauges=Gauges(Gauge(Fraction(2), Fraction(3)))
        )
        assert [each.code.value for each in proof.findings] == codes


def test_a_height_of_two_fabrics_lies_between_what_either_comes_to_and_a_width_is_of_one() -> None:
    # 40 rounds are 10 cm at 4 and 8 cm at 5 to the centimetre; 60 stitches 30 cm at 2 and 20 cm at 3
    gauges = Gauges(plain=Gauge(Fraction(2), Fraction(4)), stranded=Gauge(Fraction(3), Fraction(5)))
    rows = {"yoke.rounds": "40", "neck.stitches": "60"}
    for depth, neck, codes in (
        ("8", "20", []),
        ("10", "30", []),
        ("9", "20", []),
        ("7.9", "20", ["height"]),
        ("10.1", "20", ["height"]),
        ("9", "19.8", ["width"]),
        ("9", "25", ["width"]),
        ("9", "30.2", ["width"]),
    ):
        # more lengths that say that all are printed to a tenth
        printed = rows | {"finished.depth": depth, "finished.neck": neck, "finished.reach": "61.3"}
        assert [each.code.value for each in proof_of(("M",), printed, gauges=gauges).findings] == codes, depth


def test_ribs_are_measured_at_their_own_gauge() -> None:
    gauges = Gauges(plain=Gauge(Fraction(2), Fraction(3)), rib=Gauge(Fraction(5, 2), Fraction(4)))
    # cuff 45 / 2.5 = 18; sleeve 90 / 3 + cuff 20 / 4 = 35
    rows = {"cuff.stitches": "45", "finished.wrist": "18", "sleeve.rounds": "90", "cuff.rounds": "20"}
    assert found(proof_of(("M",), rows | {"finished.sleeve_length": "35"}, gauges=gauges)) == []


@pytest.mark.parametrize(("step", "rounds", "fits"), [(1, 20, True), (1, 19, False), (2, 39, True), (2, 38, False)])
def test_twenty_increase_rounds_fit_from_the_first_round_on(step: int, rounds: int, fits: bool) -> None:
    # rounds 1, 3, 5 ... 39 are the twentieth at a step of 2
    proof = proof_of(("M",), {"yoke.increase_rounds": "20", "yoke.rounds": str(rounds)}, step=step)
    assert [each.code for each in found(proof)] == ([] if fits else ["increases_exceed_rounds"])


def test_a_rib_of_up_to_six_stitches_is_reached_by_an_adjusting_round() -> None:
    # 60 - 2 x 8 = 44 (common practice, no source, for the six)
    sleeve = {"sleeve.stitches": "60", "sleeve.decrease_rounds": "8"}
    for cuff, codes in ((38, []), (50, []), (37, ["decreases_to_cuff"]), (51, ["decreases_to_cuff"])):
        assert [each.code for each in found(proof_of(("M",), sleeve | {"cuff.stitches": str(cuff)}))] == codes


def test_stitches_of_a_line_that_nobody_tells_are_what_the_sums_agree_on() -> None:
    assert found(garment_proof(line_stitches=None)) == []
    wrong = found(garment_proof({"neck.back": changed("neck.back", 36)}, line_stitches=None))
    assert {each.code for each in wrong} == {"section_sum", "split_from_neck"}


def test_lines_of_which_another_number_is_told_break_every_sum_with_lines() -> None:
    proof = garment_proof(line_stitches=1)
    assert {each.code.value for each in proof.findings} == {"section_sum", "sleeve_from_split"}


def test_a_chart_on_a_stitch_needs_odd_sections() -> None:
    on_stitch = Anchor(back=Fraction(3), front=Fraction(3), sleeve=Fraction(5, 2))
    proof = garment_proof(anchor=on_stitch)
    wrong = {(each.code.value, each.rows[0]) for each in proof.findings}
    assert wrong == {("chart_parity", (part, section)) for part in ("neck", "split") for section in ("back", "front")}


def test_printed_inches_may_be_nominal_in_all_of_a_pattern() -> None:
    # 2.5 cm to the inch: 75, 80, 70 and 71.875 cm; exactly they would be 76.2, 81.28, 71.12 and 73.03
    rows = (row("finished.bust", "75 (80)", run_inch="30 (32)"), row("finished.hem", "70 (72)", run_inch="28 (28 3/4)"))
    assert found(proofread(ProofRequest(labels=("S", "M"), rows=rows))) == []
