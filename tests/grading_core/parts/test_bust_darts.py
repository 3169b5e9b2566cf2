"""The short rows are knitted stitch by stitch, from the turns as they are listed and as they are told."""

from __future__ import annotations

from fractions import Fraction
from itertools import pairwise

import pytest
from hypothesis import assume, given
from hypothesis import strategies as st

from grading_core.errors import Impossible
from grading_core.gauge import Gauge
from grading_core.parts.bust_darts import BustDarts, DartTurn, dart_front, dart_round, run_instructions
from tests.floors import in_a_hundred_cases
from tests.oracles.short_row_knitter import knit_darts
from tests.oracles.told import Told, only, told_alone, told_each

GAUGE = Gauge.over(Fraction(22), Fraction(31), Fraction(10))
BACK = 40

fronts, pairs = st.integers(6, 300), st.integers(1, 40)


def made(front: int, many: int) -> BustDarts:
    darts = dart_front(front, many, GAUGE, in_round=9)
    # as many turns as a third of the front has stitches
    assert isinstance(darts, BustDarts) == (3 * many <= front)
    assume(isinstance(darts, BustDarts))
    return darts


@in_a_hundred_cases(60)
@given(fronts, pairs)
def test_the_middle_third_gains_every_row_and_back_and_sides_gain_none(front, many):
    back, heights, _, _ = knit_darts(BACK, front, made(front, many).turns)
    assert set(back) == {1}
    assert heights[0] == heights[-1] == 1
    third = front // 3
    assert set(heights[third : front - third]) == {1 + 2 * many}
    assert front - 2 * third >= front / 3


@in_a_hundred_cases(60)
@given(fronts, pairs)
def test_both_sides_rise_alike_in_even_steps_of_two_rows(front, many):
    _, heights, _, _ = knit_darts(BACK, front, made(front, many).turns)
    assert heights == heights[::-1]
    third = front // 3
    rising = heights[: third + 1]
    steps = [place for place, (here, beyond) in enumerate(pairwise(rising), 1) if here != beyond]
    assert {beyond - here for here, beyond in pairwise(rising)} <= {0, 2}
    assert len(steps) == many
    for count, place in enumerate(steps, 1):
        assert abs(place - Fraction(third * count, many)) < 1


@in_a_hundred_cases(60)
@given(fronts, pairs)
def test_each_row_is_narrower_than_the_one_before_on_its_side(front, many):
    turns = made(front, many).turns
    assert [turn.row for turn in turns] == [*range(1, 2 * many + 1)]
    assert [turn.side for turn in turns] == ["right", "wrong"] * many
    for side in (turns[::2], turns[1::2]):
        assert all(before.stitches < turn.stitches for before, turn in pairwise(side))


@in_a_hundred_cases(60)
@given(fronts, pairs)
def test_the_turns_at_the_beginning_of_the_front_are_closed_in_the_round_after_and_the_others_at_once(front, many):
    darts = made(front, many)
    _, _, after_round, after_next = knit_darts(BACK, front, darts.turns)
    assert after_round == {turn.stitches for turn in darts.turns if turn.side == "wrong"}
    assert after_next == set()


@in_a_hundred_cases(60)
@given(fronts, pairs)
def test_the_stitches_of_the_rows_are_those_knitted_beyond_the_round(front, many):
    darts = made(front, many)
    back, heights, _, _ = knit_darts(BACK, front, darts.turns)
    assert darts.stitches == sum(back) + sum(heights) - BACK - front


def test_the_height_is_two_rows_a_pair_at_the_row_gauge():
    darts = dart_front(110, 4, GAUGE, in_round=9)
    assert (darts.rows, darts.height_cm) == (8, Fraction(8) / Fraction(31, 10))


def test_more_pairs_than_a_third_of_the_front_has_stitches_are_impossible_and_the_most_is_named():
    refused = dart_front(101, 34, GAUGE, in_round=9)
    assert isinstance(refused, Impossible)
    assert [(near.field, near.value) for near in refused.nearest] == [("pairs", 33)]
    assert isinstance(dart_front(101, 33, GAUGE, in_round=9), BustDarts)


@pytest.mark.parametrize(
    ("charted", "shaped", "expected"),
    [
        # 2.5 cm of 3.1 rounds are 7.75, nearest 8: they lie above round 9
        (range(0), (), 9),
        (range(-20, 9), (), 9),
        (range(-20, 10), (), 10),
        (range(9, 12), (), 12),
        (range(10, 12), (), 9),
        (range(-20, 12), (12, 14), 13),
        (range(0), (5, 9, 10), 11),
        # 10 cm are 31 rounds, above round 32
        (range(-20, 32), (), 32),
    ],
)
def test_the_rows_lie_in_the_first_round_from_2_5_cm_on_that_neither_works_the_chart_nor_shapes(
    charted, shaped, expected
):
    assert dart_round(90, GAUGE, charted=charted, shaped=shaped) == expected


@pytest.mark.parametrize(("charted", "shaped"), [(range(-20, 33), ()), (range(0), range(9, 33)), (range(31), (31, 32))])
def test_deeper_than_10_cm_they_are_impossible(charted, shaped):
    refused = dart_round(90, GAUGE, charted=charted, shaped=shaped)
    assert isinstance(refused, Impossible)
    assert refused.reason.values == {"deepest": 10, "first": 9, "last": 32}


def test_a_body_that_ends_above_them_is_impossible_and_the_rounds_that_reach_them_are_named():
    refused = dart_round(11, GAUGE, charted=range(12), shaped=())
    assert isinstance(refused, Impossible)
    assert [(near.field, near.value) for near in refused.nearest] == [("rounds", 12)]
    assert dart_round(12, GAUGE, charted=range(12), shaped=()) == 12


def turns_of(told: list[Told]) -> list[DartTurn]:
    """The turns that one size is told."""
    turns: list[DartTurn] = []
    for id, values in told:
        if id == "body.dart_turns":
            turns.append(DartTurn(row=values["row"], side="right", stitches=values["stitches"]))
            turns.append(DartTurn(row=values["next"], side="wrong", stitches=values["stitches"]))
    return turns


@in_a_hundred_cases(60)
@given(fronts, pairs)
def test_the_sentences_of_one_size_tell_its_round_its_rows_and_every_turn(front, many):
    darts = made(front, many)
    told = told_alone(darts.instructions())
    assert told[0] == ("body.darts", {"round": 9, "rows": 2 * many})
    assert turns_of(told) == [*darts.turns]
    assert told[-1] == ("body.darts_end", {})


def test_the_front_worked_as_told_is_higher_by_the_rows_told():
    told = told_alone(dart_front(90, 5, GAUGE, in_round=9).instructions())
    back, heights, _, open_turns = knit_darts(BACK, 90, turns_of(told))
    assert max(heights) - max(back) == only(told, "body.darts")["rows"] == 10
    assert open_turns == set()


def test_in_the_sentences_of_all_sizes_a_size_skips_the_rows_that_it_has_not():
    sizes = [dart_front(90, 1, GAUGE, in_round=9), None, dart_front(120, 3, GAUGE, in_round=10)]
    sentences = run_instructions(sizes)
    assert sentences[0].values == {"round": (9, None, 10), "rows": (2, None, 6)}
    told = told_each(sentences, ["S", "M", "L"])
    assert [turns_of(own) for own in told.values()] == [[*size.turns] if size else [] for size in sizes]


def test_sizes_that_are_alike_have_no_gap():
    sizes = [dart_front(front, 2, GAUGE, in_round=9) for front in (90, 120)]
    assert not any(
        type(run) is tuple and None in run for each in run_instructions(sizes) for run in each.values.values()
    )


def test_no_short_rows_need_no_sentence():
    assert run_instructions([None, None]) == ()
