"""The short rows are knitted stitch by stitch, from the turns as they are listed and as they are told."""

from __future__ import annotations

import re
from fractions import Fraction
from itertools import pairwise

import pytest
from hypothesis import assume, given
from hypothesis import strategies as st

from grading_core.errors import Impossible
from grading_core.gauge import Gauge
from grading_core.parts.bust_darts import BustDarts, DartTurn, dart_front, dart_round, run_instructions
from grading_core.printing import DASH
from tests.floors import in_a_hundred_cases
from tests.oracles.knitter import run_values
from tests.oracles.short_row_knitter import knit_darts

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


TOLD = re.compile(
    r"Short row (\d+) \(right side\) and short row (\d+) \(wrong side\): work to (.+) stitch(?:es)? before the middle "
    r"of the underarm ahead, turn\."
)


def read(sentences: tuple[str, ...], sizes: int) -> list[list[DartTurn]]:
    """The turns of each size as they are told."""
    turns: list[list[DartTurn]] = [[] for _ in range(sizes)]
    for sentence in sentences:
        if told := TOLD.fullmatch(sentence):
            for size, stitches in zip(turns, run_values(told[3]), strict=True):
                if stitches is not None:
                    size.append(DartTurn(row=int(told[1]), side="right", stitches=stitches))
                    size.append(DartTurn(row=int(told[2]), side="wrong", stitches=stitches))
    return turns


@in_a_hundred_cases(60)
@given(fronts, pairs)
def test_the_sentences_of_one_size_tell_its_round_its_rows_and_every_turn(front, many):
    darts = made(front, many)
    told = darts.instructions()
    assert told[0].startswith(f"In round 9 lengthen the front over the bust with {2 * many} short rows,")
    assert read(told, 1) == [[*darts.turns]]


def test_the_sentences_of_all_sizes_have_a_dash_where_a_size_has_no_such_row():
    sizes = [dart_front(90, 1, GAUGE, in_round=9), None, dart_front(120, 3, GAUGE, in_round=10)]
    told = run_instructions(sizes)
    assert told[0].startswith(
        f"In round 9 ({DASH}, 10) lengthen the front over the bust with 2 ({DASH}, 6) short rows, without"
    )
    assert told[1] == "A dash means that your size has no such row: go on to the last sentence about short rows."
    assert read(told, 3) == [[*size.turns] if size else [] for size in sizes]
    assert "The turns at the beginning of the front are closed in the round after it." in told[-1]


def test_sizes_that_are_alike_need_no_word_about_dashes():
    sizes = [dart_front(front, 2, GAUGE, in_round=9) for front in (90, 120)]
    assert not any(DASH in sentence or "dash" in sentence for sentence in run_instructions(sizes))


def test_no_short_rows_need_no_sentence():
    assert run_instructions([None, None]) == ()
