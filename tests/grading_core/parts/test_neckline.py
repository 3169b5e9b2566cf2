from __future__ import annotations

from fractions import Fraction

import pytest
from hypothesis import assume, given
from hypothesis import strategies as st

from grading_core.errors import Impossible
from grading_core.gauge import Gauge
from grading_core.parts.neckline import (
    FrontDrop,
    Opening,
    cast_on,
    check_head,
    front_drop,
    neck_edge_cm,
    run_cast_on,
    run_drop,
)
from grading_core.printing import DASH
from grading_core.sections import Sections
from tests.floors import in_a_hundred_cases
from tests.oracles.short_row_knitter import NeckStitches

STRETCH = Fraction(2, 5)
GAUGE = Gauge.over(Fraction(22), Fraction(31), Fraction(10))
NECK = NeckStitches(33, 35, 12, 3)

necks = st.builds(NeckStitches, st.integers(1, 60), st.integers(1, 60), st.integers(0, 30), st.integers(0, 8))
starts = st.sampled_from(["before_back", "centre_back"])


@given(necks, starts, st.sampled_from(["joined", "flat"]))
def test_the_stitches_up_to_the_markers_and_after_them_are_the_whole_cast_on(neck, start, way):
    made = cast_on(neck.sections, neck.line_stitches, start=start, way=way)
    assert sum(gap.stitches for gap in made.gaps) == made.stitches
    assert made.stitches == neck.back + neck.front + 2 * neck.sleeve + 4 * neck.line_stitches


@given(necks, starts, st.sampled_from(["joined", "flat"]))
def test_from_marker_to_marker_lie_a_line_and_a_section_whatever_the_start(neck, start, way):
    made = cast_on(neck.sections, neck.line_stitches, start=start, way=way)
    needle: list[object] = []
    for gap in made.gaps:
        needle += [None] * gap.stitches
        if gap.marker is not None:
            needle.append(gap.marker)
    turned = needle.index(1)
    round_ = [item for item in needle[turned:] + needle[:turned] if item != "start"]
    between = [round_.index(marker) for marker in (2, 3, 4)]
    line, sleeve = neck.line_stitches, neck.sleeve
    assert between[0] - 1 == line + sleeve
    assert between[1] - between[0] - 1 == line + neck.front
    assert between[2] - between[1] - 1 == line + sleeve
    assert len(round_) - between[2] - 1 == line + neck.back


def test_each_marker_follows_its_section_and_stands_before_the_line():
    made = cast_on(NECK.sections, NECK.line_stitches)
    assert [(gap.parts[-1][0], gap.marker) for gap in made.gaps] == [
        ("back", 1),
        ("first sleeve", 2),
        ("front", 3),
        ("second sleeve", 4),
        ("line", None),
    ]


def test_a_start_at_the_centre_back_leaves_half_of_the_back_before_it_and_half_after_it():
    made = cast_on(NECK.sections, NECK.line_stitches, start="centre_back")
    assert made.gaps[0].parts == (("back", 17),)
    assert made.gaps[-1].parts == (("line", 3), ("back", 16))


def test_a_flat_cast_on_has_its_ends_in_the_middle_of_the_front():
    made = cast_on(NECK.sections, NECK.line_stitches, way="flat")
    assert (made.gaps[0].parts[0], made.gaps[-1].parts[-1]) == (("front", 18), ("front", 17))


def test_a_neck_without_line_stitches_has_the_last_marker_beside_the_start_of_the_round():
    (_, places) = cast_on(Sections(30, 30, 10), 0, way="flat").instructions()
    assert "10 stitches (second sleeve), marker 4; marker for the start of the round; 30 stitches (back)" in places


@in_a_hundred_cases(40)
@given(st.integers(3, 80), st.integers(1, 30), st.none() | st.integers(0, 80))
def test_the_parts_of_a_dropped_front_are_the_front(front, rows, centre):
    drop = front_drop(front, rows, GAUGE, centre)
    possible = centre is None or (centre <= front - 2 and (front - centre) % 2 == 0)
    assert isinstance(drop, FrontDrop) == possible
    assume(possible)
    assert 2 * (drop.each_side + len(drop.increase_rows)) + drop.centre == front
    assert drop.each_side >= 1


@given(st.integers(3, 80), st.integers(1, 30))
def test_front_edges_are_increased_in_rows_on_the_same_side_as_the_last_one(front, rows):
    drop = front_drop(front, rows, GAUGE)
    assert all(1 <= row <= rows and (rows - row) % 2 == 0 for row in drop.increase_rows)


@in_a_hundred_cases(60)
@given(st.integers(3, 80), st.integers(1, 30), st.integers(0, 80))
def test_the_named_middle_makes_an_impossible_front_possible(front, rows, centre):
    drop = front_drop(front, rows, GAUGE, centre)
    assume(isinstance(drop, Impossible))
    (nearest,) = drop.nearest
    assert isinstance(front_drop(front, rows, GAUGE, nearest.value), FrontDrop)


def test_a_front_of_two_stitches_has_no_middle_to_offer():
    assert front_drop(2, 8, GAUGE).nearest == ()


def test_a_dropped_front_is_cast_on_with_the_same_stitches_at_both_ends():
    drop = front_drop(35, 8, GAUGE)
    made = cast_on(NECK.sections, NECK.line_stitches, drop=drop)
    assert made.way == "flat"
    assert made.gaps[0].stitches == made.gaps[-1].stitches - 3 == drop.each_side
    assert made.stitches == 33 + 24 + 12 + 2 * drop.each_side


def test_the_edge_of_a_dropped_neck_has_its_stitches_and_both_heights():
    drop = FrontDrop(rows=8, height_cm=Fraction(2), each_side=4, edge_increases=4, centre=19)
    made = cast_on(NECK.sections, NECK.line_stitches, drop=drop)
    gauge = Gauge(Fraction(2), Fraction(4))
    assert neck_edge_cm(made, gauge, drop) == Fraction(made.stitches + 19, 2) + 4


def test_the_drop_is_told_with_its_rows_increases_and_middle():
    first, second = front_drop(34, 8, GAUGE).instructions()
    assert "Work the first 8 rounds of the yoke back and forth as rows" in first
    assert "row 1 is a wrong-side row" in first
    assert "each of the last 4 right-side rows" in first
    assert "cast on 18 stitches for the centre front" in second
    assert "go on with round 9" in second


def test_a_drop_of_an_odd_number_of_rows_begins_on_the_right_side():
    assert "row 1 is a right-side row" in front_drop(34, 7, GAUGE).instructions()[0]


def test_sizes_whose_drops_begin_on_different_sides_are_told_by_their_last_row():
    drops = [front_drop(34, 7, GAUGE), front_drop(34, 8, GAUGE)]
    assert "the last of them is a right-side row" in run_drop(drops)[0]


def test_the_cast_on_of_all_sizes_is_told_in_size_runs():
    (first, places) = run_cast_on([cast_on(Sections(34, 34, 12), 2), cast_on(Sections(36, 38, 13), 2)])
    assert first.startswith("Cast on 100 (108) stitches and join in the round")
    assert "36 (40) stitches (line and front), marker 3" in places


@pytest.mark.parametrize(("head", "passes"), [(Fraction(56), True), (Fraction(561, 10), False)])
def test_the_tightest_edge_stretched_as_allowed_must_reach_the_head(head, passes):
    openings = [Opening("bind_off", Fraction(45)), Opening("cast_on", Fraction(40))]
    made = check_head(openings, head, STRETCH)
    assert made.tightest.edge == "cast_on"
    assert made.passes is passes
    assert [remark.code for remark in made.remarks] == ([] if passes else ["neck_does_not_pass_head"])


def test_the_stretch_that_is_needed_is_the_head_over_the_neck_less_one():
    assert check_head([Opening("join", Fraction(40))], Fraction(50), STRETCH).stretch_needed == Fraction(1, 4)
    assert check_head([Opening("join", Fraction(60))], Fraction(50), STRETCH).stretch_needed == 0


def test_a_neck_for_a_young_child_always_carries_the_caution_about_cords():
    made = check_head([Opening("join", Fraction(60))], Fraction(50), STRETCH, young=True, size="2 years")
    (remark,) = made.remarks
    assert (remark.code, remark.size, remark.message.id) == ("young_child_neck", "2 years", "warning.young_child_neck")


def test_for_a_size_without_a_cast_on_or_a_drop_stands_a_dash():
    made = cast_on(Sections(33, 35, 12), 2)
    first, places = run_cast_on([None, made])
    assert first.startswith(f"Cast on {DASH} ({made.stitches}) stitches and join")
    assert f": {DASH} ({made.gaps[0].stitches}) stitches (back), marker 1;" in places
    drop = front_drop(34, 8, GAUGE)
    work, join = run_drop([drop, None])
    assert work.startswith(f"Work the first 8 ({DASH}) rounds of the yoke")
    assert join.endswith(f"go on with round 9 ({DASH}).")
    assert run_drop([None, None]) == ()


def test_cast_ons_that_are_worked_in_different_ways_are_not_told_together():
    assert run_cast_on([cast_on(Sections(33, 35, 12), 2), cast_on(Sections(33, 35, 12), 2, way="flat")]) == ()
