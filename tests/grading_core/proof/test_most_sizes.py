"""What is asked of a size where most sizes keep to it, and corrections where a relation may hold in two ways."""

from fractions import Fraction

import pytest

from grading_core.gauge import Gauge
from grading_core.proof.proof import proofread
from grading_core.proof.request import ProofRequest
from grading_core.pullover.request import Gauges
from grading_core.rounding import CountRule
from tests.grading_core.proof.hand_garment import GAUGES, found, garment_proof, proof_of, row

LABELS = ("S", "M", "L")
TWO_FABRICS = Gauges(plain=Gauge(Fraction(2), Fraction(3)), stranded=Gauge(Fraction(5, 2), Fraction(3)))


def codes(rows, labels=LABELS, **request):
    return [(each.code.value, each.size) for each in proof_of(labels, rows, **request).findings]


def corrections(rows, labels=LABELS, **request):
    return [
        (f"{each.row.part}.{each.row.item}", each.size, each.unit, float(each.expected))
        for each in proof_of(labels, rows, **request).corrections
    ]


def test_a_width_in_two_fabrics_is_corrected_to_the_one_that_the_ease_agrees_with() -> None:
    # 100 stitches are 50 cm at 2 to the centimetre and 40 cm at 2.5; 44 + 6 = 50, though 42 lies nearer to 40
    rows = {"body.stitches": (90, 100, 110), "finished.bust": (45, 42, 55), "to_fit.bust": (39, 44, 49)}
    rows["to_fit.ease"] = (6, 6, 6)
    assert corrections(rows, gauges=TWO_FABRICS) == [("finished.bust", "M", "cm", 50)]


def test_a_front_that_is_wider_is_so_by_its_stitches() -> None:
    # 84 - 76 = 8 stitches are 4 cm at 20 to 10 cm
    rows = {"split.back": (70, 76, 80), "split.front": (78, 84, 88), "finished.front_extra": (4, 4.5, 4)}
    assert codes(rows | {"finished.bust": (80.25, 86, 90)}, gauges=GAUGES) == [("width", "M")]


def test_a_cuff_that_is_wider_than_the_sleeve_has_no_decreases_before_it() -> None:
    rows = {"sleeve.stitches": (40, 44, 48), "sleeve.decrease_rounds": (0, 0, 1), "cuff.stitches": (56, 56, 56)}
    assert codes(rows) == [("decreases_to_cuff", "L")]


def test_one_stitch_too_many_is_decreased_before_a_cuff_where_most_sizes_do_no_more() -> None:
    # 50 - 2 * 7 = 36, 54 - 2 * 8 = 38, and 62 - 2 * 9 = 44 before 42
    rows = {"sleeve.stitches": (50, 54, 62), "sleeve.decrease_rounds": (7, 8, 9), "cuff.stitches": (36, 38, 42)}
    assert codes(rows) == [("decreases_to_cuff", "L")]
    assert codes(rows | {"cuff.stitches": (32, 36, 40)}) == []


def test_the_front_is_as_long_as_the_back_where_it_is_in_most_sizes_and_no_darts_are_told() -> None:
    rows = {"finished.body_length": (36.5, 38, 40), "finished.front_length": (36.5, 40, 40)}
    assert codes(rows, gauges=GAUGES) == [("total_length", "M")]
    assert codes(rows | {"finished.front_length": (38.5, 40, 42)}, gauges=GAUGES) == []


@pytest.mark.parametrize(("doubled", "told"), [(2, []), (9, [("increase_rounds", "L")])])
def test_no_more_rounds_are_doubled_than_increases_are_left_over(doubled: int, told: list[tuple[str, str]]) -> None:
    # 21 rounds, of which the sleeve has all; 23 - 21 = 2 increases are left for the body
    rows = {"yoke.increase_rounds": (18, 20, 21), "yoke.doubled_rounds": (0, 0, doubled)}
    increases = {"yoke.back_increases": (18, 20, 23), "yoke.front_increases": (18, 20, 23)}
    assert sorted({*codes(rows | increases | {"yoke.sleeve_increases": (15, 17, 21)})}) == told


def test_the_multiple_of_a_cast_on_is_that_of_all_the_neck() -> None:
    # of 88, 92 and 96 stitches 18 of the front are cast on after the drop
    rows = {"neck.stitches": (88, 92, 96), "neck.cast_on": (70, 74, 78), "neck.front_drop": (8, 8, 8)}
    assert codes(rows, count_rules={"cast_on": CountRule(4)}) == []
    assert codes({"neck.cast_on": (88, 90, 96)}, count_rules={"cast_on": CountRule(4)}) == [("count_rule", "M")]


def test_a_length_that_is_no_whole_number_of_anything_is_corrected_all_the_same() -> None:
    # 78 stitches at 2.2 to the centimetre are 35.4545... cm
    gauges = Gauges(plain=Gauge(Fraction(22, 10), Fraction(3)))
    rows = {"sleeve.stitches": (70, 78, 84), "finished.upper_arm": (31.82, 53.45, 38.18)}
    assert corrections(rows, gauges=gauges) == [("finished.upper_arm", "M", "cm", 35.45)]


def test_a_band_may_have_more_or_fewer_stitches_than_are_picked_up_by_as_many_as_its_multiple_asks() -> None:
    # 89 + 10 = 99, a multiple of 11, and 99 + 11 = 110 is one too many; a rib that nobody tells needs 6 at most
    rows = {"neck.cast_on": (89, 99, 99), "band.stitches": (99, 99, 110)}
    assert codes(rows, count_rules={"band": CountRule(11)}) == [("pick_up", "L")]
    assert codes({"neck.cast_on": (92, 94, 99), "band.stitches": (98, 100, 106)}) == [("pick_up", "L")]


def test_a_band_that_grows_by_whole_ribs_may_be_one_off_whatever_multiple_is_told() -> None:
    # a rib of ten: 92 + 8
    rows = {"neck.cast_on": (76, 84, 92), "band.stitches": (80, 90, 100)}
    assert codes(rows, count_rules={"band": CountRule(1)}) == []


def test_a_width_that_is_printed_in_both_units_is_found_once() -> None:
    # 168 stitches are 84 cm, 33 inches; printed are 82 and 32 1/4
    proof = garment_proof({"body.stitches": (152, 168, 180)})
    assert [each.size for each in proof.findings if each.code == "width"] == ["M"]


def test_a_run_that_has_what_its_value_is_to_be_is_right() -> None:
    rows = {"neck.back": (30, 32, 32), "yoke.back_increases": (18, 20, 23)}
    printed = [row(*each) for each in rows.items()]
    printed.append(row("split.back", (66, 27, 78), run="66 (72, 78)"))
    proof = proofread(ProofRequest(labels=LABELS, rows=tuple(printed)))
    assert [each.code for each in found(proof)] == ["split_from_neck", "falls"]
