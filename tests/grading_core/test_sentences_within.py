"""Sentences are values that can be looked through: what is within them, and where a dash stands."""

import pytest

from grading_core.sentences import for_sizes, has_gap, throughout
from grading_core.yoke.words import PLAIN, ROUNDS_STEPS, STEP

EDGES = {"kind": "once", "once": ("back",), "twice": (), "more": 4}


def test_parts_of_a_sentence_follow_it():
    step = STEP(rounds=1, **EDGES)
    steps = ROUNDS_STEPS(first=1, last=4, steps=(step, step), times=2, stitches=90, rounds=4)
    plain = PLAIN(rounds=(1,))
    assert [*throughout([steps, plain])] == [steps, step, step, plain]


@pytest.mark.parametrize(("rounds", "gap"), [((3, None), True), ((3, 4), False), ((None,), True), (3, False)], ids=str)
def test_a_gap_is_a_size_without_a_value(rounds, gap):
    assert has_gap(PLAIN(rounds=rounds)) == gap


def test_a_list_has_no_gap_whatever_is_in_it():
    assert not has_gap(STEP(rounds=1, **{**EDGES, "once": (None,)}))


@pytest.mark.parametrize(("place", "gap"), [(0, False), (1, True)])
def test_a_sentence_for_some_sizes_has_only_their_gaps(place, gap):
    assert has_gap(for_sizes(PLAIN(rounds=(3, None)), ("S", "M"), [place])) == gap
