"""The short rows are knitted stitch by stitch, from the places at which the turns and markers are told."""

from __future__ import annotations

from fractions import Fraction
from itertools import pairwise

import pytest
from hypothesis import assume, given
from hypothesis import strategies as st

from grading_core.errors import Impossible
from grading_core.gauge import Gauge
from grading_core.parts.short_rows import BackRaise, RowsOfDrop, pairs_for, raise_back, run_instructions
from tests.floors import in_a_hundred_cases
from tests.oracles.short_row_knitter import NeckStitches, knit
from tests.oracles.told import Told, ids, only, told_alone, told_each

GAUGE = Gauge.over(Fraction(22), Fraction(31), Fraction(10))

necks = st.builds(NeckStitches, st.integers(4, 60), st.integers(4, 60), st.integers(1, 30), st.integers(0, 8))


def made(neck: NeckStitches, pairs: int, way: str, front_stitches: int | None = None) -> BackRaise | Impossible:
    return raise_back(neck.sections, neck.line_stitches, pairs, GAUGE, way=way, front_stitches=front_stitches)


@in_a_hundred_cases(80)
@given(necks, st.integers(0, 12), st.sampled_from(["joined", "flat"]))
def test_the_back_rises_by_every_row_and_the_front_centre_by_none(neck, pairs, way):
    raised = made(neck, pairs, way)
    assert isinstance(raised, BackRaise) or pairs > neck.sleeve + neck.line_stitches
    assume(isinstance(raised, BackRaise))
    heights, _, _ = knit(neck, raised)
    base = 0 if way == "joined" else 1
    assert {heights[stitch] for stitch in range(neck.back)} == {base + 2 * pairs}
    assert heights[min(heights)] == heights[max(heights)] == base


@in_a_hundred_cases(80)
@given(necks, st.integers(1, 12), st.sampled_from(["joined", "flat"]))
def test_left_and_right_of_the_back_are_equally_high(neck, pairs, way):
    raised = made(neck, pairs, way)
    assume(isinstance(raised, BackRaise))
    heights, _, _ = knit(neck, raised)
    reach = neck.sleeve + 2 * neck.line_stitches + neck.front // 2
    left = [heights[neck.back + away] for away in range(reach)]
    right = [heights[-1 - away] for away in range(reach)]
    assert left == right
    assert left == sorted(left, reverse=True)


@in_a_hundred_cases(80)
@given(necks, st.integers(1, 12), st.sampled_from(["joined", "flat"]))
def test_each_turn_lies_beyond_the_one_before_on_its_side_at_even_distances(neck, pairs, way):
    raised = made(neck, pairs, way)
    assume(isinstance(raised, BackRaise))
    _, turns, _ = knit(neck, raised)
    left, right = turns[::2], [-turn for turn in turns[1::2]]
    for ends, edge in ((left, neck.back + neck.line_stitches), (right, neck.line_stitches)):
        steps = [beyond - before for before, beyond in pairwise([edge, *ends])]
        assert min(steps) >= 1
        taper = ends[-1] - edge
        for count, end in enumerate(ends, 1):
            assert abs(end - edge - Fraction(taper * count, pairs)) < 1


@in_a_hundred_cases(50)
@given(necks, st.integers(1, 12), st.integers(0, 40), st.sampled_from(["joined", "flat"]))
def test_no_turn_crosses_the_centre_of_the_front(neck, pairs, front_stitches, way):
    raised = made(neck, pairs, way, front_stitches)
    assume(isinstance(raised, BackRaise))
    heights, turns, _ = knit(neck, raised)
    assert min(heights) <= min(turns)
    assert max(turns) <= max(heights) + 1


@in_a_hundred_cases(80)
@given(necks, st.integers(1, 12), st.sampled_from(["joined", "flat"]))
def test_only_the_last_turn_at_each_side_is_left_for_the_round_that_follows(neck, pairs, way):
    raised = made(neck, pairs, way)
    assume(isinstance(raised, BackRaise))
    _, turns, unclosed = knit(neck, raised)
    past_front = neck.back + 2 * neck.line_stitches + neck.sleeve + neck.front // 2
    last = set(turns[-2:]) if way == "joined" else {turns[-1]}
    # flat, the last row ends at the centre front: a turn that lies exactly there is at the row's end
    assert unclosed - {past_front} == last - {past_front}


@in_a_hundred_cases(80)
@given(necks, st.integers(1, 12), st.integers(1, 12), st.integers(1, 20))
def test_before_a_front_drop_they_are_worked_flat_over_what_is_cast_on(neck, pairs, each_side, rows):
    cast_on = neck._replace(front=2 * each_side)
    whole = neck._replace(front=neck.front + 2 * each_side)
    drop = RowsOfDrop(rows, each_side)
    raised = raise_back(whole.sections, whole.line_stitches, pairs, GAUGE, way="flat", drop=drop)
    assume(isinstance(raised, BackRaise))
    heights, turns, unclosed = knit(cast_on, raised)
    # one row lies over the whole, and the back is higher by the short rows
    assert heights[min(heights)] == heights[max(heights)] == 1
    assert {heights[stitch] for stitch in range(neck.back)} == {1 + 2 * pairs}
    # every turn lies before the ends
    assert min(heights) < min(turns)
    assert max(turns) < max(heights) + 1
    # the last row ends where the drop's first row begins: of an even number of rows the first is a wrong-side row
    assert raised.begins == ("right" if rows % 2 == 0 else "wrong")
    assert unclosed == {turns[-1]}
    told = told_alone(raised.instructions())
    assert only(told, "neck.short_rows")["begin"] == only(told, "neck.last_row")["kind"] == raised.begins


def test_more_pairs_than_stitches_for_their_turns_are_impossible_and_the_most_is_named():
    refused = made(NeckStitches(30, 30, 5, 1), 11, "joined", 4)
    assert isinstance(refused, Impossible)
    assert [(near.field, near.value) for near in refused.nearest] == [("pairs", 10)]
    assert isinstance(made(NeckStitches(30, 30, 5, 1), 10, "joined", 4), BackRaise)


def test_a_taper_past_the_centre_of_the_front_is_impossible_and_the_furthest_is_named():
    refused = made(NeckStitches(30, 31, 5, 1), 3, "joined", 16)
    assert isinstance(refused, Impossible)
    assert [(near.field, near.value) for near in refused.nearest] == [("front_stitches", 15)]


def test_the_height_is_two_rows_a_pair_at_the_row_gauge():
    assert made(NeckStitches(34, 34, 12, 2), 3, "joined").height_cm == Fraction(6, 1) / Fraction(31, 10)


def test_a_height_gives_the_nearest_number_of_pairs():
    # 31 rows to 10 cm: 3 pairs are 1.94 cm and 4 pairs 2.58 cm, so 2.3 cm is nearer to the latter
    assert [pairs_for(Fraction(height, 10), GAUGE) for height in (0, 19, 22, 23)] == [0, 3, 3, 4]


def turns_of(told: list[Told]) -> list[tuple[int, str, int, int]]:
    return [(v["row"], v["side"], v["stitches"], v["marker"]) for id, v in told if id == "neck.turn"]


def listed(raised: BackRaise) -> list[tuple[int, str, int, int]]:
    return [(turn.row, turn.side, turn.stitches, turn.marker) for turn in raised.turns]


@pytest.mark.parametrize(("way", "begin", "last"), [("joined", "start", "joined"), ("flat", "right", "flat")])
def test_every_turn_is_told_in_the_sentences_between_where_the_rows_begin_and_end(way, begin, last):
    raised = made(NeckStitches(34, 34, 12, 2), 3, way)
    told = told_alone(raised.instructions())
    assert told[0] == ("neck.short_rows", {"rows": 6, "begin": begin})
    assert ids(told) == ["neck.short_rows", "neck.short_row_method", *["neck.turn"] * 6, "neck.last_row", "neck.raised"]
    assert turns_of(told) == listed(raised)
    assert told[-2:] == [("neck.last_row", {"kind": last}), ("neck.raised", {"length": Fraction(60, 31)})]


@in_a_hundred_cases(60)
@given(st.lists(st.tuples(necks, st.integers(0, 8)), min_size=1, max_size=4), st.sampled_from(["joined", "flat"]))
def test_the_rows_of_all_sizes_as_told_are_each_its_own_whatever_markers_they_turn_past(sizes, way):
    raises = [raised if isinstance(raised := made(*size, way), BackRaise) else None for size in sizes]
    assume(any(raised and raised.rows for raised in raises))
    labels = [str(place) for place in range(len(sizes))]
    told = told_each(run_instructions(raises, labels), labels)
    for raised, own in zip(raises, told.values(), strict=True):
        assert turns_of(own) == (listed(raised) if raised else [])
        if raised and raised.rows:
            assert only(own, "neck.short_rows")["rows"] == raised.rows
            assert only(own, "neck.raised")["length"] == GAUGE.height_cm(raised.rows)


def test_a_size_without_a_row_has_nothing_there():
    sizes = [made(NeckStitches(34, 34, 12, 2), pairs, "joined") for pairs in (1, 2)]
    third = [sentence for sentence in run_instructions(sizes, ["S", "M"]) if sentence.values.get("row") == 3]
    assert [each.values["stitches"][0] for each in third] == [None]


def test_turns_past_unlike_markers_are_told_marker_by_marker_for_the_sizes_that_turn_there():
    sizes = [made(neck, 3, "joined") for neck in (NeckStitches(34, 34, 4, 1), NeckStitches(34, 34, 20, 1))]
    third = [raised.turns[2] for raised in sizes]
    assert [turn.marker for turn in third] == [2, 1]
    told = [each for each in run_instructions([*sizes, None], ["S", "M", "L"]) if each.values.get("row") == 3]
    assert [(each.values["marker"], each.labels, each.places) for each in told] == [
        (2, ("S",), (0,)),
        (1, ("M",), (1,)),
    ]
    assert [each.values["stitches"] for each in told] == [
        (third[0].stitches, None, None),
        (None, third[1].stitches, None),
    ]


def test_turns_past_one_marker_are_for_all_sizes():
    sizes = [made(NeckStitches(34, 34, 12, 2), 1, "joined"), made(NeckStitches(36, 34, 12, 2), 1, "joined")]
    assert {each.labels for each in run_instructions(sizes, ["S", "M"])} == {None}


def test_sizes_whose_rows_begin_and_end_otherwise_are_named():
    neck = NeckStitches(34, 34, 12, 2).sections
    drops = [None, RowsOfDrop(8, 5), RowsOfDrop(7, 5)]
    sizes = [raise_back(neck, 2, 2, GAUGE, way="flat", drop=drop) for drop in drops]
    sentences = run_instructions(sizes, ["S", "M", "L"])
    begun = {each.values["begin"]: each.labels for each in sentences if each.id == "neck.short_rows"}
    assert begun == {"right": ("S", "M"), "wrong": ("L",)}
    ended = {each.values["kind"]: each.labels for each in sentences if each.id == "neck.last_row"}
    assert ended == {"flat": ("S",), "right": ("M",), "wrong": ("L",)}
    for raised, own in zip(sizes, told_each(sentences, ["S", "M", "L"]).values(), strict=True):
        assert turns_of(own) == listed(raised)


def test_a_size_without_short_rows_is_not_told_of_a_last_one():
    neck = NeckStitches(34, 34, 12, 2)
    sentences = run_instructions([made(neck, 0, "joined"), made(neck, 2, "joined"), None], ["S", "M", "L"])
    (last,) = [each for each in sentences if each.id == "neck.last_row"]
    assert last.labels == ("M",)


def test_no_short_rows_need_no_sentence():
    assert made(NeckStitches(34, 34, 12, 2), 0, "joined").instructions() == ()
