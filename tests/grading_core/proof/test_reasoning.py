"""What the reasoning of a finding rests on. Expected values are computed by hand beside each."""

from collections.abc import Mapping
from fractions import Fraction
from typing import Any

from grading_core.codes import ProofCode
from grading_core.gauge import Gauge
from grading_core.proof.figures import Figure, Key, Numbers, grains
from grading_core.proof.proof import proofread
from grading_core.proof.reasoning import of_relation
from grading_core.proof.relations import linear
from grading_core.proof.request import PrintedRow, ProofRequest
from grading_core.proof.result import Finding, Proof
from grading_core.pullover.request import Gauges
from grading_core.sentences import Sentence

LABELS = ("S", "M")


def proved(rows: Mapping[tuple[str, str], str], **asked: Any) -> Proof:
    printed = tuple(PrintedRow(part, item, run=run) for (part, item), run in rows.items())
    return proofread(ProofRequest(labels=LABELS, rows=printed, **asked))


def only(rows: Mapping[tuple[str, str], str], **asked: Any) -> Finding:
    (finding,) = proved(rows, **asked).findings
    return finding


def value(sentence: Sentence) -> Any:
    return sentence.values["value"]


def test_what_a_sum_comes_to_is_told_exactly() -> None:
    """36 + 2 * 22 = 80."""
    rows = {("neck", "back"): "34 (36)", ("yoke", "back_increases"): "20 (22)", ("split", "back"): "74 (89)"}
    because = only(rows).because
    assert (because.id, because.values["side"], value(because.values["expected"])) == ("proof.told", "exactly", 80)


def test_what_may_be_more_is_told_as_a_bound() -> None:
    """25 increase rounds, every second one from round 1 on: 49 rounds."""
    because = only({("yoke", "increase_rounds"): "25 (26)", ("yoke", "rounds"): "40 (60)"}, step=2).because
    assert (because.values["side"], value(because.values["expected"])) == ("least", 49)


def test_what_may_be_less_is_told_as_a_bound() -> None:
    """100 - 2 * 61 is no cuff of 30, so the decrease rounds are wrong; 60 rounds have at most 60 of them."""
    rows = {
        ("sleeve", "rounds"): "60 (62)",
        ("sleeve", "decrease_rounds"): "61 (36)",
        ("sleeve", "stitches"): "100 (104)",
        ("cuff", "stitches"): "30 (32)",
    }
    because = next(each.because for each in proved(rows).findings if each.code == "decreases_exceed_rounds")
    assert (because.values["side"], value(because.values["expected"])) == ("most", 60)


def test_a_count_that_a_rounded_length_leaves_open_is_told_from_least_to_most() -> None:
    """90.5 to 91.5 cm at 2.2 stitches a cm are 199.1 to 201.3 stitches; the ease says that it is no other length."""
    rows = {
        ("body", "stitches"): "220 (224)",
        ("finished", "bust"): "91 (102)",
        ("to_fit", "bust"): "83 (92)",
        ("to_fit", "ease"): "8 (10)",
    }
    because = only(rows, gauges=Gauges(plain=Gauge(Fraction(22, 10), Fraction(3)))).because
    told = because.values
    assert (because.id, value(told["least"]), value(told["most"]), told["rounding"]) == (
        "proof.between", 200, 201, "allowed"
    )  # fmt: skip


def test_a_number_follows_from_the_others_as_they_are_to_be() -> None:
    """The back is 34 + 2 * 26 = 86, not 68; then the body is 86 + 86 + 2 * 9 + 4 * 1 = 194."""
    rows = {
        ("neck", "back"): "34 (36)",
        ("yoke", "back_increases"): "26 (27)",
        ("split", "back"): "68 (90)",
        ("split", "front"): "86 (90)",
        ("split", "underarm"): "9",
        ("split", "line_to_body"): "1",
        ("body", "stitches"): "241 (202)",
    }
    of_body = next(each for each in proved(rows).findings if each.code == "body_from_split")
    (corrected,) = (each for each in of_body.because.values["others"] if each.id == "proof.corrected")
    assert (value(corrected.values["printed"]), value(corrected.values["value"])) == (68, 86)
    assert of_body.expected == value(of_body.because.values["expected"]) == 194


def test_the_stitches_of_a_raglan_line_are_told_where_a_sum_has_them() -> None:
    rows = {("neck", "back"): "34", ("neck", "front"): "30", ("neck", "sleeve"): "10", ("neck", "stitches"): "92 (93)"}
    told = only(rows, line_stitches=2).because.values["others"][-1]
    assert (told.id, told.values["stitches"]) == ("proof.line_stitches", 2)


def test_a_count_that_no_whole_number_fits_is_told_as_the_nearest() -> None:
    """99.3 cm at 2.2 stitches a cm are 218.46 stitches."""
    body, bust = Key("body", "stitches"), Key("finished", "bust")
    width = linear(ProofCode.WIDTH, (body, 1), (bust, -Fraction(22, 10)))
    columns = {
        body: Numbers((grains(230),), 0, "stitches"),
        bust: Numbers((grains(Fraction(993, 10)),), grains(Fraction(1, 20)), "cm"),
    }
    figures = {key: Figure(row.values[0] or 0, row.half) for key, row in columns.items()}
    finding = of_relation(width, "S", figures, {}, columns=columns, line_stitches=None)
    assert finding.expected == value(finding.because.values["expected"]) == 218


def test_no_count_is_corrected_to_less_than_nothing() -> None:
    """20 + 35 cm are more than 50 already: fewer short rows mend nothing."""
    rows = {
        ("finished", "total_length"): "50 (60)",
        ("finished", "depth"): "20 (22)",
        ("finished", "body_length"): "35 (36)",
        ("neck", "short_rows"): "6",
    }
    (correction,) = proved(rows, gauges=Gauges(plain=Gauge(Fraction(22, 10), Fraction(3)))).corrections
    assert correction.others == 2, "any of the three lengths would do"


def test_a_number_that_all_sizes_share_is_not_that_of_a_neighbour() -> None:
    """It is the same in every size, and says nothing about which number is wrong."""
    rows = {
        ("split", "back"): "86 (90)",
        ("split", "front"): "86 (90)",
        ("split", "underarm"): "9",
        ("split", "line_to_body"): "1",
        ("body", "stitches"): "214 (202)",
    }
    assert [each.cause for each in proved(rows).corrections] == [None]
