from __future__ import annotations

import re
from fractions import Fraction

import pytest
from hypothesis import assume, given
from hypothesis import strategies as st

from grading_core.gauge import Gauge
from grading_core.parts.ribbing import Rib, RibbedEdge, lengthened, run_edges
from grading_core.rounding import CountRule
from tests.floors import in_a_hundred_cases
from tests.oracles.edge_knitter import adjust

GAUGE = Gauge(Fraction(2), Fraction(3))


def rib(multiple: int = 4, height: int = 5) -> Rib:
    return Rib(GAUGE, Fraction(height), CountRule(multiple))


# from half the stitches, every two of them worked together, to twice as many
adjusted = st.integers(2, 200).flatmap(
    lambda before: st.tuples(st.just(before), st.integers((before + 1) // 2, 2 * before))
)


@in_a_hundred_cases(35)
@given(adjusted)
def test_the_adjusting_round_worked_as_told_uses_every_stitch_and_gives_the_ribs_count(counts):
    before, after = counts
    assume(before != after)
    edge = RibbedEdge(rib(1), before, after, 15)
    assert adjust(edge.instructions()[0]) == (before, after)


def test_more_stitches_than_one_in_each_place_are_told_without_their_places():
    assert RibbedEdge(rib(1), 10, 30, 15).instructions()[0] == (
        "Work 1 round plain and increase 20 stitches evenly in it. 30 stitches."
    )


def test_the_adjusting_round_is_one_of_the_edges_rounds():
    told = RibbedEdge(rib(), 46, 44, 15).instructions()
    assert told[1] == "Work 14 rounds in a rib that repeats over 4 stitches."


def test_an_edge_that_needs_no_adjusting_round_has_none():
    assert RibbedEdge(rib(), 44, 44, 15).instructions() == ("Work 15 rounds in a rib that repeats over 4 stitches.",)


def test_an_edge_of_a_single_round_that_adjusts_has_nothing_else():
    assert len(RibbedEdge(rib(), 46, 44, 1).instructions()) == 1


def test_an_edge_has_a_round_and_a_repeat_at_least():
    small = rib(height=0)
    assert (small.rounds, small.for_circumference(Fraction(1, 10))) == (1, 4)


@given(st.integers(1, 400), st.sampled_from([1, 2, 3, 4, 6]))
def test_the_circumference_is_met_within_half_a_repeat(around, multiple):
    edge = rib(multiple)
    stitches = edge.for_circumference(Fraction(around, 4))
    assert stitches % multiple == 0
    assert abs(stitches - Fraction(around, 2)) <= Fraction(multiple, 2) or stitches == multiple


@in_a_hundred_cases(60)
@given(st.integers(0, 300), st.integers(1, 60))
def test_fabric_and_rib_together_miss_a_length_by_half_a_row_at_most(length, height):
    fabric = Gauge(Fraction(2), Fraction(7, 2))
    edge = rib(height=height)
    rounds = edge.rounds_before(Fraction(length), fabric)
    made = fabric.height_cm(rounds) + GAUGE.height_cm(edge.rounds)
    assert (rounds == 0) == (length < GAUGE.height_cm(edge.rounds) + fabric.height_cm(1) / 2)
    assume(rounds)
    assert abs(made - length) <= fabric.height_cm(1) / 2


def test_sizes_that_gain_and_sizes_that_lose_stand_in_one_sentence():
    told = run_edges([RibbedEdge(rib(), 46, 44, 15), None, RibbedEdge(rib(), 51, 52, 16)])
    assert told[0].startswith(
        "Work 1 round plain and decrease 2 (–, 0) stitches evenly in it or increase 0 (–, 1) stitches evenly in it: "  # noqa: RUF001
        "44 (–, 52) stitches"  # noqa: RUF001
    )
    assert told[1] == "Work 14 (–, 15) rounds in a rib that repeats over 4 stitches."  # noqa: RUF001


@pytest.mark.parametrize(("before", "skip"), [(44, True), (45, False)])
def test_a_size_that_adjusts_nothing_is_told_to_leave_the_round_out(before, skip):
    told = run_edges([RibbedEdge(rib(), 46, 44, 15), RibbedEdge(rib(), before, 44, 15)])
    assert bool(re.search("skip this round", told[0])) is skip


def test_a_part_as_long_as_its_chart_needs_no_remark():
    assert lengthened("body", 64, 64, "S") == ()


def test_a_part_that_its_chart_makes_longer_carries_a_remark_with_the_rounds():
    (remark,) = lengthened("sleeve", 60, 64, "S")
    assert (remark.code, remark.size) == ("sleeve_longer_for_chart", "S")
    assert remark.message.values == {"rounds": 60, "needed": 64, "more": 4}
