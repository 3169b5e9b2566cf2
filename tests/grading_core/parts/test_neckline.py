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
from grading_core.sections import Sections
from tests.floors import in_a_hundred_cases
from tests.oracles.short_row_knitter import NeckStitches
from tests.oracles.told import Told, ids, only, told_alone, told_each

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
        ("first_sleeve", 2),
        ("front", 3),
        ("second_sleeve", 4),
        ("line", None),
    ]


def test_a_start_at_the_centre_back_leaves_half_of_the_back_before_it_and_half_after_it():
    made = cast_on(NECK.sections, NECK.line_stitches, start="centre_back")
    assert made.gaps[0].parts == (("half_back", 17),)
    assert made.gaps[-1].parts == (("line", 3), ("half_back", 16))


def test_a_flat_cast_on_has_its_ends_in_the_middle_of_the_front():
    made = cast_on(NECK.sections, NECK.line_stitches, way="flat")
    assert (made.gaps[0].parts[0], made.gaps[-1].parts[-1]) == (("half_front", 18), ("half_front", 17))


def needle_of(told: list[Told]) -> list[object]:
    """The needle as it is told: a word for each stitch that lies between two markers, and the markers between them."""
    begin, way, *gaps = told
    needle: list[object] = []
    for id, values in gaps:
        if id in ("neck.marker", "neck.start_marker", "neck.rest"):
            needle += ["+".join(values["parts"])] * values["stitches"]
        if id != "neck.rest":
            needle.append("start" if id in ("neck.start_marker", "neck.start_here") else values["marker"])
    assert places_of(needle).count("") == begin.values["stitches"]
    assert way == ("neck.place_markers", {"way": begin.id.removeprefix("neck.cast_on_")})
    return needle


def places_of(needle: list[object]) -> list[object]:
    """The same, all stitches alike."""
    return [item if item in (1, 2, 3, 4, "start") else "" for item in needle]


@given(necks, starts, st.sampled_from(["joined", "flat"]))
def test_the_markers_as_told_stand_where_a_line_or_a_section_follows_them(neck, start, way):
    made = cast_on(neck.sections, neck.line_stitches, start=start, way=way)
    needle = needle_of(told_alone(made.instructions()))
    # drawn stitch by stitch: a letter for each stitch of the round, from the start of the round, the markers after
    # back, first sleeve, front and second sleeve
    halves = (neck.back, 0) if start == "before_back" else (neck.back - neck.back // 2, neck.back // 2)
    line = ["l"] * neck.line_stitches
    sleeve, front = neck.sleeve, neck.front
    round_ = [*"b" * halves[0], 1, *line, *"s" * sleeve, 2, *line, *"f" * front, 3, *line, *"t" * sleeve, 4, *line]
    round_ += [*"b" * halves[1]]
    if way == "flat":
        middle = round_.index(2) + 1 + len(line) + front // 2
        round_ = [*round_[middle:], "start", *round_[:middle]]
    assert places_of(needle) == places_of(round_)


def test_what_lies_before_a_marker_is_named():
    told = told_alone(cast_on(NECK.sections, NECK.line_stitches).instructions())
    assert [values["parts"] for _, values in told[2:]] == [
        ("back",),
        ("line", "first_sleeve"),
        ("line", "front"),
        ("line", "second_sleeve"),
        ("line",),
    ]
    assert told[-1] == ("neck.rest", {"stitches": 3, "parts": ("line",), "way": "joined"})


def test_a_neck_without_line_stitches_has_the_last_marker_beside_the_start_of_the_round():
    told = told_alone(cast_on(Sections(30, 30, 10), 0, way="flat").instructions())
    assert told[2:7] == [
        ("neck.marker", {"stitches": 15, "parts": ("half_front",), "marker": 3}),
        ("neck.marker", {"stitches": 10, "parts": ("second_sleeve",), "marker": 4}),
        ("neck.start_here", {}),
        ("neck.marker", {"stitches": 30, "parts": ("back",), "marker": 1}),
        ("neck.marker", {"stitches": 10, "parts": ("first_sleeve",), "marker": 2}),
    ]


def test_a_sleeve_without_stitches_has_its_marker_beside_the_one_before():
    told = told_alone(cast_on(Sections(30, 30, 0), 0).instructions())
    assert told[3] == ("neck.marker_here", {"marker": 2})


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


def test_what_a_dropped_front_begins_with_is_not_called_half_of_it():
    told = told_alone(cast_on(NECK.sections, NECK.line_stitches, drop=front_drop(35, 8, GAUGE)).instructions())
    assert told[2].values["parts"] == ("front",)
    assert told[-1].values["parts"] == ("line", "front")


def test_the_edge_of_a_dropped_neck_has_its_stitches_and_both_heights():
    drop = FrontDrop(rows=8, height_cm=Fraction(2), each_side=4, edge_increases=4, centre=19)
    made = cast_on(NECK.sections, NECK.line_stitches, drop=drop)
    gauge = Gauge(Fraction(2), Fraction(4))
    assert neck_edge_cm(made, gauge, drop) == Fraction(made.stitches + 19, 2) + 4


def test_the_drop_is_told_with_its_rows_increases_and_middle():
    assert told_alone(front_drop(34, 8, GAUGE).instructions()) == [
        ("neck.drop", {"rows": 8, "side": "wrong"}),
        ("neck.drop_edges", {"times": 4}),
        ("neck.drop_join", {"stitches": 18, "round": 9}),
    ]


@in_a_hundred_cases(95)
@given(st.integers(3, 80), st.integers(1, 30))
def test_the_front_worked_as_the_drop_tells_is_the_whole_front(front, rows):
    drop = front_drop(front, rows, GAUGE)
    assume(isinstance(drop, FrontDrop))
    told = told_alone(drop.instructions())
    first_side = only(told, "neck.drop")["side"]
    right_side_rows = [row for row in range(1, rows + 1) if (row % 2 == 1) == (first_side == "right")]
    # the round is joined at the end of the last row, with the right side facing
    assert right_side_rows[-1] == rows
    edges = [values["times"] for id, values in told if id == "neck.drop_edges"]
    increased = right_side_rows[len(right_side_rows) - sum(edges) :]
    assert increased == [*drop.increase_rows]
    joined = only(told, "neck.drop_join")
    assert (2 * drop.each_side + 2 * len(increased) + joined["stitches"], joined["round"]) == (front, rows + 1)


def test_a_drop_of_an_odd_number_of_rows_begins_on_the_right_side():
    assert only(told_alone(front_drop(34, 7, GAUGE).instructions()), "neck.drop")["side"] == "right"


def test_a_drop_without_increases_at_its_edges_tells_none():
    drop = front_drop(20, 8, GAUGE, 18)
    assert drop.edge_increases == 0
    assert ids(drop.instructions()) == ["neck.drop", "neck.drop_join"]


def test_sizes_whose_drops_begin_on_different_sides_are_told_by_their_last_row():
    drops = [front_drop(34, 7, GAUGE), front_drop(34, 8, GAUGE)]
    assert run_drop(drops)[0].values == {"rows": (7, 8), "side": "last"}


def test_the_cast_on_of_all_sizes_is_told_in_size_runs():
    told = run_cast_on([cast_on(Sections(34, 34, 12), 2), cast_on(Sections(36, 38, 13), 2)])
    assert told[0].values == {"stitches": (100, 108)}
    assert told[4].values == {"stitches": (36, 40), "parts": ("line", "front"), "marker": 3}


@given(st.lists(st.none() | necks, min_size=1, max_size=4).filter(any), starts, st.sampled_from(["joined", "flat"]))
def test_the_cast_ons_of_all_sizes_are_told_as_each_alone(sizes, start, way):
    made = [size and cast_on(size.sections, size.line_stitches, start=start, way=way) for size in sizes]
    sentences = run_cast_on(made)
    assume(sentences)
    told = told_each(sentences, [str(place) for place in range(len(sizes))])
    for each, own in zip(made, told.values(), strict=True):
        if each is not None:
            assert places_of(needle_of(own)) == places_of(needle_of(told_alone(each.instructions())))


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


def test_a_size_without_a_cast_on_or_a_drop_has_nothing_in_its_runs():
    made = cast_on(Sections(33, 35, 12), 2)
    first, _, marker, *_ = run_cast_on([None, made])
    assert first.values == {"stitches": (None, made.stitches)}
    assert marker.values == {"stitches": (None, 33), "parts": ("back",), "marker": 1}
    work, edges, join = run_drop([front_drop(34, 8, GAUGE), None])
    assert work.values == {"rows": (8, None), "side": "wrong"}
    assert edges.values == {"times": (4, None)}
    assert join.values == {"stitches": (18, None), "round": (9, None)}
    assert run_drop([None, None]) == ()


def test_cast_ons_that_are_worked_in_different_ways_are_not_told_together():
    assert run_cast_on([cast_on(Sections(33, 35, 12), 2), cast_on(Sections(33, 35, 12), 2, way="flat")]) == ()
