"""Relations made of others, on numbers made by hand."""

from fractions import Fraction

import pytest

from grading_core.codes import ProofCode
from grading_core.gauge import Gauge
from grading_core.proof.columns import Columns
from grading_core.proof.combined import Either, Unless, mostly_holds
from grading_core.proof.figures import GRAINS, Figure, Key, Numbers
from grading_core.proof.relations import linear
from grading_core.pullover.request import Gauges
from tests.grading_core.proof.hand_garment import proof_of

A, B = Key("part", "a"), Key("part", "b")
CODE = ProofCode.WIDTH
TWICE, THRICE = linear(CODE, (A, 1), (B, -2)), linear(CODE, (A, 1), (B, -3))
EITHER = Either((TWICE, THRICE))
UNLESS = Unless(TWICE, B)


def of(a: int, b: int) -> dict[Key, Figure]:
    return {A: Figure(a * GRAINS), B: Figure(b * GRAINS)}


def rows(a: tuple[int, ...], b: tuple[int, ...]) -> Columns:
    return Columns({key: Numbers(tuple(n * GRAINS for n in run), 0, "cm") for key, run in ((A, a), (B, b))})


@pytest.mark.parametrize(("a", "holds"), [(20, True), (30, True), (25, False), (19, False), (31, False)])
def test_either_of_two_holds_where_one_does(a: int, holds: bool) -> None:
    assert EITHER.holds(of(a, 10)) is holds


def test_either_of_two_is_broken_in_sizes_where_both_are() -> None:
    assert EITHER.judged(rows((20, 30, 25, 31), (10, 10, 10, 10))) == (4, [2, 3])


@pytest.mark.parametrize(("a", "nearer"), [(19, 20), (24, 20), (26, 30), (33, 30)])
def test_either_of_two_implies_the_nearer(a: int, nearer: int) -> None:
    assert EITHER.implied(A, of(a, 10)) == (nearer * GRAINS, nearer * GRAINS)


def test_what_is_asked_unless_a_number_is_nothing_holds_where_it_is() -> None:
    assert UNLESS.holds(of(5, 0))
    assert UNLESS.holds(of(20, 10))
    assert not UNLESS.holds(of(5, 1))
    assert UNLESS.judged(rows((5, 20, 5), (0, 10, 1))) == (3, [2])
    assert UNLESS.implied(A, of(5, 1)) == (2 * GRAINS, 2 * GRAINS)


@pytest.mark.parametrize(
    ("a", "mostly"), [((2, 4, 6), True), ((2, 4, 7), True), ((2, 5, 7), False), ((2, 4, 5, 5), False)]
)
def test_what_holds_in_more_than_half_of_the_sizes_mostly_holds(a: tuple[int, ...], mostly: bool) -> None:
    assert mostly_holds(TWICE, rows(a, tuple(range(1, len(a) + 1)))) is mostly


def test_what_lacks_a_row_does_not_mostly_hold() -> None:
    assert not mostly_holds(TWICE, Columns({A: Numbers((2,), 0, "cm")}))


def test_a_size_without_short_rows_has_a_length_that_is_the_sum_of_its_parts() -> None:
    """20 + 30 cm: 50 where no short rows are worked, and 52 with 6 rows at 3 a cm."""
    rows = {
        "finished.total_length": "50 (52)",
        "finished.depth": "20",
        "finished.body_length": "30",
        "neck.short_rows": "- (6)",
    }
    gauges = Gauges(plain=Gauge(Fraction(2), Fraction(3)))
    assert proof_of(("S", "M"), rows, gauges=gauges).findings == ()
    (found,) = proof_of(("S", "M"), rows | {"finished.total_length": "56 (52)"}, gauges=gauges).findings
    assert (found.size, found.code) == ("S", "total_length")


def test_a_band_of_another_number_in_most_sizes_is_meant_so() -> None:
    """A rib of ten stitches may need nine more than are cast on; 150, 150 and 170 for 142, 146 and 162."""
    cast_on = {"neck.cast_on": "142 (146, 162)"}
    assert proof_of(("S", "M", "L"), cast_on | {"band.stitches": "150 (150, 170)"}).findings == ()
    (found,) = proof_of(("S", "M", "L"), cast_on | {"band.stitches": "150 (152, 166)"}).findings
    assert (found.size, found.code) == ("S", "pick_up")


def test_a_band_whose_steps_show_a_wide_rib_may_be_off_by_less_than_its_repeat() -> None:
    """Repeats of ten: 100, 110, 120 for 98, 101, 118 are off by up to nine; 111 shows no repeat, and is ten off."""
    cast_on = {"neck.cast_on": "98 (101, 118)"}
    assert proof_of(("S", "M", "L"), cast_on | {"band.stitches": "100 (110, 120)"}).findings == ()
    (found,) = proof_of(("S", "M", "L"), cast_on | {"band.stitches": "100 (111, 120)"}).findings
    assert (found.size, found.code) == ("M", "pick_up")
