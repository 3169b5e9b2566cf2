"""A whole proof: what was checked, what could not be, what is left out, and what is wrong with a request."""

from fractions import Fraction

import pytest

from grading_core.chart.grid import Anchor
from grading_core.codes import ProofCode
from grading_core.errors import ContradictionError
from grading_core.proof.proof import MAX_FINDINGS
from grading_core.proof.result import Proof
from grading_core.rounding import CountRule
from tests.grading_core.proof.hand_garment import GAUGES, corrected, found, garment_proof, proof_of

SPLIT = {
    "split.back": "66 (72, 78)",
    "split.front": "66 (72, 78)",
    "split.sleeve": "40 (44, 50)",
    "split.yoke_total": "220 (240, 264)",
    "split.underarm": "8 (8, 10)",
    "body.stitches": "152 (164, 180)",
    "sleeve.stitches": "50 (54, 62)",
}
LABELS = ("S", "M", "L")


def times(proof: Proof) -> dict[str, int]:
    return {each.code.value: each.times for each in proof.checked}


def unchecked(proof: Proof) -> dict[str, tuple[set[str], tuple[str, ...]]]:
    return {each.code.value: ({".".join(row) for row in each.rows}, each.fields) for each in proof.unchecked}


def test_every_sum_of_the_garment_is_checked_in_each_of_three_sizes() -> None:
    checked = times(garment_proof())
    # two rounds and three sections each; one body, sleeve and yoke; seven widths are more, one of them in inches too
    assert {code: checked[code] for code in ("section_sum", "split_from_neck", "body_from_split", "reach")} == {
        "section_sum": 2 * 3,
        "split_from_neck": 3 * 3,
        "body_from_split": 3,
        "reach": 3,
    }
    assert (checked["height"], checked["width"]) == (3 * 3, 7 * 3 + 3)


def test_a_relation_is_checked_in_the_sizes_that_have_all_its_numbers() -> None:
    rows = {"neck.back": "30 (32, -)", "yoke.back_increases": "18 (-, 23)", "split.back": "66 (72, 78)"}
    assert times(proof_of(LABELS, rows)) == {"split_from_neck": 1}


def test_every_rule_is_checked_where_its_count_is() -> None:
    rules = {"body": CountRule(4), "hem": CountRule(4)}
    assert times(proof_of(LABELS, {"body.stitches": "152 (164, 180)"}, count_rules=rules)) == {"count_rule": 3}


def test_what_lacks_one_row_is_unchecked_and_names_it() -> None:
    told = unchecked(proof_of(LABELS, {"neck.back": "30", "yoke.back_increases": "18"}))
    assert told["split_from_neck"] == ({"split.back"}, ())
    assert told["body_from_split"][0] == {
        "body.stitches",
        "split.back",
        "split.front",
        "split.underarm",
        "split.line_to_body",
    }


def test_the_row_that_most_relations_lack_alone_is_wanted_most() -> None:
    # body and sleeve lack the stitches of a line that go to the body; all else lacks two rows or none
    proof = proof_of(LABELS, SPLIT, line_stitches=2)
    assert proof.most_wanted == ("split", "line_to_body")
    told = unchecked(proof)
    assert told["body_from_split"] == told["sleeve_from_split"] == ({"split.line_to_body"}, ())
    assert times(proof) == {"section_sum": 3, "split_closes": 3}


def test_no_row_is_wanted_where_all_are_there() -> None:
    fields = {"count_rules": {"body": CountRule(4)}, "anchor": Anchor(*[Fraction(1, 2)] * 3)}
    proof = garment_proof({"finished.front_extra": "0"}, **fields)
    assert (proof.most_wanted, proof.unchecked) == (None, ())


def test_what_a_field_of_the_request_is_lacking_for_names_the_field() -> None:
    told = unchecked(garment_proof(gauges=None))
    assert {code: fields for code, (_, fields) in told.items() if fields} == {
        "width": ("gauge",),
        "height": ("gauge",),
        "count_rule": ("count_rules",),
        "chart_parity": ("chart",),
    }


def test_lines_that_nothing_tells_are_a_field_that_is_lacking() -> None:
    told = unchecked(proof_of(LABELS, {"neck.back": "30", "split.back": "66"}))
    assert told["section_sum"] == told["sleeve_from_split"] == (set(), ("line_stitches",))


@pytest.mark.parametrize(
    ("skip", "left"),
    [
        ((), {"body_from_split", "split_closes", "width"}),
        ((ProofCode.WIDTH,), {"body_from_split", "split_closes"}),
        ((ProofCode.WIDTH, ProofCode.SPLIT_CLOSES, ProofCode.BODY_FROM_SPLIT), set()),
    ],
)
def test_what_is_skipped_is_neither_found_nor_checked_nor_unchecked(
    skip: tuple[ProofCode, ...], left: set[str]
) -> None:
    proof = garment_proof({"body.stitches": "152 (156, 180)"}, skip=skip)
    assert {each.code for each in found(proof)} == left
    assert times(proof).keys().isdisjoint(skip)
    assert unchecked(proof).keys().isdisjoint(skip)


def test_what_is_skipped_lacks_no_field() -> None:
    told = unchecked(garment_proof(gauges=None, skip=(ProofCode.WIDTH, ProofCode.COUNT_RULE)))
    assert told.keys() == {"height", "chart_parity"}


def test_what_is_skipped_blames_no_number() -> None:
    wrong = {"body.stitches": "152 (156, 180)"}
    assert corrected(garment_proof(wrong)) == [("M", "body.stitches", 156, 164)]
    codes = (ProofCode.WIDTH, ProofCode.SPLIT_CLOSES, ProofCode.BODY_FROM_SPLIT)
    assert corrected(garment_proof(wrong, skip=codes)) == []


@pytest.mark.parametrize(
    ("name", "run", "code"),
    [
        ("neck.stitches", "96 (92, 88)", ProofCode.FALLS),
        ("neck.stitches", "0 (92, 96)", ProofCode.BELOW_ONE),
        ("neck.stitches", "88 (92.5, 96)", ProofCode.NOT_WHOLE),
        ("neck.stitches", "88 (92)", ProofCode.RUN_LENGTH),
    ],
)
def test_what_a_row_says_by_itself_may_be_skipped(name: str, run: str, code: ProofCode) -> None:
    assert {each.code for each in found(proof_of(LABELS, {name: run}))} == {code}
    assert found(proof_of(LABELS, {name: run}, skip=(code,))) == []


def test_a_wrong_number_in_each_of_two_sizes_is_corrected_in_each() -> None:
    proof = garment_proof({"body.stitches": "152 (156, 180)", "split.sleeve": "40 (44, 53)"})
    assert corrected(proof) == [("M", "body.stitches", 156, 164), ("L", "split.sleeve", 53, 50)]


def test_two_wrong_numbers_of_one_size_are_both_corrected() -> None:
    proof = garment_proof({"neck.back": "30 (35, 32)", "sleeve.stitches": "50 (51, 62)"})
    assert set(corrected(proof)) == {("M", "neck.back", 35, 32), ("M", "sleeve.stitches", 51, 54)}


def test_where_either_of_two_numbers_may_be_wrong_others_are_counted() -> None:
    # 66 = 30 + 2 x 18; of 67, 30 and 18 the first may be 66, or the second 31; an 18 1/2 can't be
    (only,) = proof_of(("S",), {"split.back": "67", "neck.back": "30", "yoke.back_increases": "18"}).corrections
    assert only.others == 1


def test_more_findings_than_anybody_reads_are_not_named() -> None:
    labels = tuple(str(place) for place in range(40))
    names = ("neck.stitches", "neck.back", "split.back", "split.front", "split.yoke_total", "body.stitches")
    names += ("hem.stitches", "sleeve.stitches", "cuff.stitches", "band.stitches", "yoke.rounds")
    proof = proof_of(labels, dict.fromkeys(names, "0"))
    assert len(names) * len(labels) > MAX_FINDINGS
    assert len(proof.findings) == MAX_FINDINGS
    assert [each.code.value for each in proof.remarks] == ["many_findings"]
    assert proof_of(labels, dict.fromkeys(names[:3], "0")).remarks == ()


def test_a_label_that_stands_there_twice_is_wrong() -> None:
    with pytest.raises(ContradictionError):
        proof_of(("S", "S"), {"neck.back": "30"})


def test_a_gauge_is_all_that_a_width_takes() -> None:
    rows = {"body.stitches": "152 (164, 180)", "finished.bust": "76 (82, 90)"}
    assert times(proof_of(LABELS, rows, gauges=GAUGES)) == {"width": 3}
    assert times(proof_of(LABELS, rows)) == {}
