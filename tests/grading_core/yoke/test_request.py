from fractions import Fraction
from math import floor

from hypothesis import given
from hypothesis import strategies as st

from grading_core.gauge import Gauge
from grading_core.sections import Sections
from grading_core.units import to_cm
from grading_core.yoke.request import Adjustment, Yoke, YokeRequest
from tests.grading_core.yoke.random_yokes import GAUGE, NECK


def half_up(value: Fraction) -> int:
    return floor(value + Fraction(1, 2))


def test_own_rows_are_counted_over_the_span_of_the_patterns_gauge() -> None:
    # 31 rows over 10 cm against 15.5 rows over 5 cm are the same gauge.
    short = Gauge.over(Fraction(22), Fraction(31, 2), Fraction(10), Fraction(5))
    assert Adjustment(own_rows=Fraction(31, 2)).new_rounds(60, short) == 60


@given(st.integers(1, 200), st.decimals(min_value=1, max_value=40, places=2))
def test_a_depth_becomes_the_nearest_round(written: int, depth: object) -> None:
    length = Fraction(str(depth))
    assert Adjustment(depth_cm=length).new_rounds(written, GAUGE) == half_up(length * Fraction(31, 10))


@given(st.integers(1, 200), st.decimals(min_value=-10, max_value=10, places=2))
def test_a_change_of_depth_is_the_same_as_the_depth_it_leads_to(written: int, change: object) -> None:
    length = Fraction(str(change))
    depth = GAUGE.height_cm(written) + length
    by_change = Adjustment(depth_change_cm=length).new_rounds(written, GAUGE)
    assert by_change == max(0, half_up(depth * Fraction(31, 10)))


def test_a_change_of_rounds_counts_from_the_written_ones() -> None:
    assert Adjustment(rounds_change=-7).new_rounds(60, GAUGE) == 53


def test_a_depth_in_inches_gives_the_rounds_of_the_same_depth_in_centimetres() -> None:
    for eighths in range(8, 160):
        inches, centimetres = to_cm(eighths / 8, "in"), to_cm(eighths * 0.3175)
        assert Adjustment(depth_cm=inches).new_rounds(60, GAUGE) == Adjustment(depth_cm=centimetres).new_rounds(
            60, GAUGE
        )


def test_a_yoke_of_a_depth_has_the_nearest_rounds() -> None:
    split = NECK.after((1, 1, 1))
    # 3.1 rounds per cm: 9.92 of them, and 46.5, where a tie goes up
    for depth, rounds in ((Fraction(32, 10), 10), (Fraction(15), 47)):
        assert YokeRequest(label="S", neck=NECK, split=split, depth_cm=depth).yoke(GAUGE).rounds == rounds


def test_each_edge_has_half_of_what_its_section_gains() -> None:
    assert Yoke("S", 60, Sections(34, 36, 12), Sections(82, 82, 50)).increases == (24, 23, 19)
