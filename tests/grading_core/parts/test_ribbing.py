from __future__ import annotations

from fractions import Fraction

import pytest
from hypothesis import assume, given
from hypothesis import strategies as st

from grading_core.gauge import Gauge
from grading_core.parts.ribbing import Rib, RibbedEdge, RibRepeat, edge_colour, lengthened, run_edges
from grading_core.rounding import CountRule
from tests.floors import in_a_hundred_cases
from tests.oracles.told import ids, told_alone, told_each, work_edge

GAUGE = Gauge(Fraction(2), Fraction(3))


def rib(multiple: int = 4, height: int = 5) -> Rib:
    return Rib(gauge=GAUGE, height_cm=Fraction(height), rule=CountRule(multiple))


# from half the stitches, every two of them worked together, to twice as many
adjusted = st.integers(2, 200).flatmap(
    lambda before: st.tuples(st.just(before), st.integers((before + 1) // 2, 2 * before))
)


@in_a_hundred_cases(90)
@given(adjusted)
def test_the_edge_worked_as_told_has_the_ribs_count_and_all_its_rounds(counts):
    before, after = counts
    edge = RibbedEdge(rib(1), before, after, 15)
    stitches, rounds, _ = work_edge(told_alone(edge.instructions()), before)
    assert (stitches, rounds) == (after, 15)


def test_the_adjusting_round_is_one_of_the_edges_rounds():
    adjusting, _, ribbed = told_alone(RibbedEdge(rib(), 46, 44, 15).instructions())
    assert adjusting == ("rib.decrease", {"many": 2, "stitches": 44})
    assert (ribbed.id, ribbed.values["rounds"]) == ("rib.work", 14)


def test_an_edge_that_gains_stitches_increases():
    adjusting, *_ = told_alone(RibbedEdge(rib(), 45, 48, 15).instructions())
    assert adjusting == ("rib.increase", {"many": 3, "stitches": 48})


def test_an_edge_that_needs_no_adjusting_round_has_none():
    (ribbed,) = told_alone(RibbedEdge(rib(), 44, 44, 15).instructions())
    assert (ribbed.id, ribbed.values["rounds"]) == ("rib.work", 15)


def test_an_edge_of_a_single_round_that_adjusts_has_nothing_else():
    assert ids(RibbedEdge(rib(), 46, 44, 1).instructions()) == ["rib.decrease", "rib.spread"]


def test_where_the_adjusting_round_changes_is_told_for_one_size_and_not_for_several():
    one, other = RibbedEdge(rib(), 46, 44, 1), RibbedEdge(rib(), 50, 48, 1)
    assert [ids(run_edges(edges)) for edges in ([one], [one, other])] == [
        ["rib.decrease", "rib.spread"],
        ["rib.decrease"],
    ]


@pytest.mark.parametrize(
    ("multiple", "knit", "purl"), [(2, 1, 1), (3, 2, 1), (4, 2, 2), (5, 4, 1), (6, 3, 3), (8, 7, 1)]
)
def test_a_rib_is_named_by_its_knit_and_purl_stitches(multiple, knit, purl):
    # Common practice, no source.
    assert told_alone([rib(multiple).sentence()]) == [("ribbing.knit_purl", {"knit": knit, "purl": purl})]


def test_a_rib_of_any_number_of_stitches_has_no_name_of_its_own():
    assert told_alone([rib(1).sentence()]) == [("ribbing.any", {})]


@given(st.integers(2, 12), st.integers(0, 12), st.integers(20, 300))
def test_a_rib_that_is_named_goes_round_the_edge_without_a_rest(multiple, plus, around):
    permitted = Rib(gauge=GAUGE, height_cm=Fraction(5), rule=CountRule(multiple, plus))
    edge = RibbedEdge(permitted, around, permitted.nearest(around), 15)
    _, _, named = work_edge(told_alone(edge.instructions()), edge.before)
    assert (named is None) is (edge.stitches % multiple > 0)
    if named:
        assert sum(named) == multiple
        assert edge.stitches % sum(named) == 0


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


def test_sizes_that_gain_and_sizes_that_lose_are_each_told_their_own():
    edges = [RibbedEdge(rib(), 46, 44, 15), None, RibbedEdge(rib(), 51, 52, 16), RibbedEdge(rib(), 44, 44, 15)]
    decrease, increase, work = run_edges(edges)
    assert (decrease.id, decrease.values) == (
        "rib.decrease",
        {"many": (2, None, None, None), "stitches": (44, None, None, None)},
    )
    assert (increase.id, increase.values) == (
        "rib.increase",
        {"many": (None, None, 1, None), "stitches": (None, None, 52, None)},
    )
    assert work.values["rounds"] == (14, None, 15, 15)


@given(st.lists(st.none() | st.tuples(adjusted, st.integers(1, 3)), min_size=1, max_size=5))
def test_the_edges_of_all_sizes_worked_as_told_are_each_its_own(sizes):
    edges = [None if size is None else RibbedEdge(rib(1), *size[0], size[1]) for size in sizes]
    told = told_each(run_edges(edges), [str(place) for place in range(len(edges))])
    for edge, own in zip(edges, told.values(), strict=True):
        if edge is None:
            assert own == []
            continue
        stitches, rounds, _ = work_edge(own, edge.before)
        assert (stitches, rounds) == (edge.stitches, edge.rounds)


def test_no_edges_need_no_sentence():
    assert run_edges([None, None]) == ()


def test_a_part_as_long_as_its_chart_needs_no_remark():
    assert lengthened("body", 64, 64, "S") == ()


def test_a_part_that_its_chart_makes_longer_carries_a_remark_with_the_rounds():
    (remark,) = lengthened("sleeve", 60, 64, "S")
    assert (remark.code, remark.size) == ("sleeve_longer_for_chart", "S")
    assert remark.message.values == {"rounds": 60, "needed": 64, "more": 4}


@pytest.mark.parametrize(("knit", "purl"), [(2, 2), (1, 3), (5, 1)])
def test_a_rib_that_is_asked_for_is_told_as_it_is(knit, purl):
    asked = Rib(gauge=GAUGE, height_cm=Fraction(5), rule=CountRule(knit + purl), repeat=RibRepeat(knit, purl))
    assert dict(asked.sentence().values) == {"knit": knit, "purl": purl}


def test_the_colour_of_an_edge_is_told_where_it_has_one():
    oat = RibbedEdge(Rib(gauge=GAUGE, height_cm=Fraction(5), rule=CountRule(4), colour="oat"), 44, 44, 15)
    (told,) = told_alone(edge_colour("cuff", [None, oat]))
    assert told == ("rib.colour", {"edge": "cuff", "colour": "oat"})
    assert [*edge_colour("cuff", [RibbedEdge(rib(), 44, 44, 15), None])] == []
