from __future__ import annotations

from fractions import Fraction

import pytest
from hypothesis import given
from hypothesis import strategies as st

from grading_core.gauge import Gauge
from grading_core.parts.neckband import neckband, pick_up, run_instructions
from grading_core.parts.ribbing import Rib
from grading_core.printing import DASH
from grading_core.rounding import CountRule

GAUGE = Gauge.over(Fraction(22), Fraction(31), Fraction(10))
RIB_GAUGE = Gauge.over(Fraction(24), Fraction(32), Fraction(10))
RIB = Rib(RIB_GAUGE, Fraction(3), CountRule(4))


def test_cast_on_stitches_are_picked_up_one_for_one():
    assert pick_up(100, GAUGE).stitches == 100


@given(st.integers(20, 200), st.integers(0, 60))
def test_both_sides_of_a_drop_give_the_same_stitches_within_half_a_stitch_of_the_gauges_ratio(along, rows):
    made = pick_up(along, GAUGE, rows)
    assert made.stitches == along + 2 * made.along_rows_each_side
    # the stitches at their gauge are as wide as the rows at theirs are high
    assert abs(GAUGE.width_cm(made.along_rows_each_side) - GAUGE.height_cm(rows)) <= GAUGE.width_cm(1) / 2


@given(st.integers(8, 300), st.integers(1, 8))
def test_the_band_is_on_its_multiple_and_changed_by_no_more_than_half_of_it(along, multiple):
    band = neckband(pick_up(along, GAUGE), Rib(RIB_GAUGE, Fraction(3), CountRule(multiple)))
    assert band.edge.stitches % multiple == 0
    assert abs(band.edge.change) <= multiple / 2 or band.edge.stitches == multiple


@pytest.mark.parametrize(("construction", "rounds"), [("single", 10), ("double", 20), ("double_with_fold_round", 21)])
def test_a_double_band_has_twice_the_rounds_and_one_more_for_a_fold_round(construction, rounds):
    # 3 cm at 32 rows to 10 cm are 9.6 rounds, nearest 10
    assert neckband(pick_up(100, GAUGE), RIB, construction).rounds == rounds


def test_a_double_band_is_worn_at_half_of_what_is_knitted():
    assert neckband(pick_up(100, GAUGE), RIB, "double").height_cm == Fraction(10) / Fraction(32, 10)


def test_the_last_edge_is_measured_at_the_gauge_of_the_rib():
    assert neckband(pick_up(98, GAUGE), RIB).last_edge_cm == Fraction(100) / Fraction(24, 10)


def test_all_rounds_of_a_double_band_are_told_the_adjusting_one_among_them():
    band = neckband(pick_up(98, GAUGE), RIB, "double_with_fold_round")
    told = band.instructions()
    assert (
        told[1] == "Work 1 round plain and increase 2 stitches evenly in it: (work 49, increase 1) twice. 100 stitches."
    )
    assert told[2:5] == (
        "Work 9 rounds in a rib that repeats over 4 stitches.",
        "Purl 1 round for the fold.",
        "Work 10 more rounds in rib for the inner layer.",
    )
    assert band.rounds == 1 + 9 + 1 + 10


def test_row_ends_are_told_with_how_many_to_pick_up_for_how_many_rows():
    band = neckband(pick_up(80, Gauge.over(Fraction(21), Fraction(28), Fraction(10)), 12), RIB)
    assert "9 stitches along the 12 row ends at each side of the front" in band.instructions()[0]
    assert "about 3 for every 4 rows: 98 stitches" in band.instructions()[0]


def test_the_bands_of_all_sizes_are_told_in_size_runs():
    bands = [neckband(pick_up(stitches, GAUGE), RIB) for stitches in (98, 104)]
    told = run_instructions(bands)
    assert told[0].endswith("98 (104) stitches.")
    assert told[1].startswith("Work 1 round plain and increase 2 (0) stitches evenly in it: 100 (104) stitches")
    assert told[2] == "Work 9 (10) rounds in a rib that repeats over 4 stitches."


def test_the_rhythm_along_a_drop_is_the_nearest_to_what_is_picked_up_there():
    # 22 stitches and 31 rounds make 4.26 stitches of 6 rows: 4 are picked up, 2 in 3, where the gauges alone are near
    # 5 in 7
    made = pick_up(90, GAUGE, 6)
    assert (made.along_rows_each_side, made.rhythm) == (4, Fraction(2, 3))


@given(st.integers(1, 60), st.integers(14, 34), st.integers(18, 50))
def test_no_short_rhythm_is_nearer_to_what_is_picked_up(rows, stitches, rounds):
    made = pick_up(90, Gauge(Fraction(stitches), Fraction(rounds)), rows)
    ratio = Fraction(made.along_rows_each_side, rows)
    short = [Fraction(many, of) for of in range(1, 9) for many in range(1, 3 * of + 1)]
    if made.along_rows_each_side:
        assert abs(made.rhythm - ratio) == min(abs(each - ratio) for each in short)


def test_a_neck_without_row_ends_has_no_rhythm():
    assert pick_up(90, GAUGE).rhythm is None


def test_a_ratio_that_is_no_short_one_is_not_rounded_to_none():
    assert pick_up(90, Gauge(Fraction(1), Fraction(30)), 30).rhythm == Fraction(1, 30)


def test_sizes_with_one_rhythm_are_told_it_once_and_others_each_their_own():
    rows = {6: "2 for every 3 rows", 7: "5 for every 7 rows"}
    bands = {many: neckband(pick_up(90, GAUGE, many), RIB) for many in (6, 7, 12)}
    for many, rhythm in rows.items():
        assert f"about {rhythm}: " in run_instructions([bands[many], bands[many]])[0]
    assert "about 2 (5) for every 3 (7) rows: " in run_instructions([bands[6], bands[7]])[0]


def test_for_a_size_without_a_band_or_row_ends_stands_a_dash():
    bands = [neckband(pick_up(80, GAUGE, rows), Rib(GAUGE, Fraction(3), CountRule(2))) for rows in (12, 0)]
    picked_up, *_ = run_instructions([bands[0], bands[1], None])
    assert f" along the 12 ({DASH}, {DASH}) row ends " in picked_up
    assert picked_up.endswith(f": {bands[0].picked_up.stitches} (80, {DASH}) stitches.")
