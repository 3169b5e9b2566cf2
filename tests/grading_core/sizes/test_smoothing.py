"""Even steps, against a brute force over a grid and against what a straight line does."""

from __future__ import annotations

from fractions import Fraction
from itertools import pairwise, product
from unittest import mock

import pytest
from hypothesis import assume, given, settings
from hypothesis import strategies as st

from grading_core.sizes import smoothing
from grading_core.sizes.smoothing import even_out


def unevenness(values):
    steps = [after - before for before, after in pairwise(values)]
    return sum((after - before) ** 2 for before, after in pairwise(steps))


def movement(values, targets):
    return sum((value - target) ** 2 for value, target in zip(values, targets, strict=True))


def bounds(targets, room):
    return [cm - room for cm in targets], [cm + room for cm in targets]


def centimetres(least, most):
    return st.integers(least * 2, most * 2).map(lambda halves: Fraction(halves, 2))


@settings(max_examples=60, deadline=None)
@given(st.lists(st.tuples(centimetres(20, 40), centimetres(0, 2), centimetres(0, 2)), min_size=3, max_size=4))
def test_no_choice_on_a_grid_between_the_bounds_is_more_even_or_as_even_and_moves_less(sizes):
    targets = [target for target, _, _ in sizes]
    least, most = [target - down for target, down, _ in sizes], [target + up for target, _, up in sizes]
    made = even_out(targets, least, most)
    # where one would fall below the one before it, it is held there, which the grid doesn't know
    assume(targets != sorted(targets) or len(set(made)) == len(made))
    assert all(low <= cm <= high for low, cm, high in zip(least, made, most, strict=True))
    grid = [
        [low + Fraction(step, 4) for step in range(int((high - low) * 4) + 1)]
        for low, high in zip(least, most, strict=True)
    ]
    # to a hundredth of a millimetre, in each of four terms
    near = Fraction(2, 100)
    best = min(unevenness(choice) for choice in product(*grid))
    assert unevenness(made) <= best + near
    equals = [movement(choice, targets) for choice in product(*grid) if unevenness(choice) <= unevenness(made) - near]
    assert not equals
    if unevenness(made) < Fraction(1, 10**5):
        straight = [movement(choice, targets) for choice in product(*grid) if unevenness(choice) == 0]
        assert movement(made, targets) <= min(straight, default=movement(made, targets)) + near


def test_what_a_line_can_hold_is_the_least_squares_line():
    # 30, 32, 36, 38: the mean is 34, the slope (1.5 x 4 x 2 + 0.5 x 2 x 2) / (2 x (1.5^2 + 0.5^2)) = 2.8
    targets = [Fraction(cm) for cm in (30, 32, 36, 38)]
    assert even_out(targets, *bounds(targets, 2)) == tuple(Fraction(tenths, 10) for tenths in (298, 326, 354, 382))


@pytest.mark.parametrize("targets", [(30,), (30, 35), (30, 33, 36, 39)])
def test_two_sizes_and_even_steps_stay_as_they_are(targets):
    targets = tuple(Fraction(cm) + Fraction(1, 3) for cm in targets)
    assert even_out(targets, *bounds(targets, Fraction(3, 2))) == targets


def test_bounds_that_leave_no_room_are_kept():
    targets = tuple(Fraction(cm) for cm in (30, 30, 40, 41))
    assert even_out(targets, targets, targets) == targets


@given(st.lists(centimetres(20, 60), min_size=3, max_size=12).map(sorted))
def test_what_rises_goes_on_rising(targets):
    made = even_out(targets, *bounds(targets, Fraction(3, 2)))
    assert list(made) == sorted(made)


@settings(max_examples=20, deadline=None)
@given(st.lists(st.integers(0, 700), min_size=40, max_size=40))
def test_the_search_takes_less_than_four_turns_a_size(steps):
    targets = [70 + Fraction(sum(steps[:place]), 100) for place in range(40)]
    with mock.patch.object(smoothing._Steps, "solve", autospec=True, side_effect=smoothing._Steps.solve) as solve:
        even_out(targets, *bounds(targets, Fraction(3, 2)))
    assert solve.call_count < 4 * len(targets)
