"""Which strand makes others as thick as a category: sums of tex by hand, and every strand tried."""

from __future__ import annotations

from fractions import Fraction

import pytest
from hypothesis import given
from hypothesis import strategies as st

from grading_core.standards.yarn_weights import YARN_WEIGHTS
from grading_core.yarn.reach import ways_to_reach
from grading_core.yarn.request import Strand, StrandRequest
from grading_core.yarn.strands import categories, hold_together

TRIED = [Fraction(tex) for tex in (*range(1, 1500), *range(1500, 20000, 50))]
"""Strands in tex."""


def way(category, tex, source, place=0):
    return [each for each in ways_to_reach(category, Fraction(tex)) if each.source.key == source][place]


def test_a_strand_makes_up_what_the_others_lack():
    # the chart's light yarn has 240 to 300 m in 100 g, 416.67 to 333.33 tex: 250 tex lack 83.33 to 166.67, and
    # 100,000 over these are 1200 and 600 m
    found = way(3, 250, "southern_usage")
    assert found.state == "needs_strand"
    assert (found.strand.thinnest, found.strand.thickest) == (1200, 600)


def test_two_strands_of_the_stranding_tables_reach_what_they_give():
    # 400 and 400 m give 200, 300 and 300 give 150 (a yarn maker's stranding table and designers' articles)
    for metres, together, category, source in ((400, 200, 4, "southern_usage"), (300, 150, 4, "uk_trade")):
        found = way(category, Fraction(100_000, metres), source)
        low, high = found.thickness.metres_per_100g.low, found.thickness.metres_per_100g.high
        assert low <= together <= high
        assert found.strand.thickest <= metres <= found.strand.thinnest


def test_a_row_that_is_open_at_its_thick_end_takes_any_strand_that_is_thick_enough():
    # super bulky has 81 m and less, 1234.57 tex and more; 1000 tex lack 234.57, which are 426.3 m
    found = way(6, 1000, "spinners_chart")
    assert (found.state, found.strand.thickest) == ("needs_strand", None)
    assert round(found.strand.thinnest, 1) == Fraction("426.3")


def test_strands_that_are_there_already_stay_there_with_any_strand_that_is_thin_enough():
    # lace has 484 m and more, 206.6 tex and less: 125 tex leave room for 81.6, which are 1225 m
    found = way(0, 125, "spinners_chart")
    assert (found.state, found.strand.thinnest) == ("already_there", None)
    assert round(found.strand.thickest) == 1225


def test_strands_at_a_rows_thick_end_have_no_room_for_another():
    # 200 m are 500 tex, the thick end of the guide's double knitting
    found = way(3, 500, "uk_trade")
    assert (found.state, found.strand) == ("already_there", None)


def test_strands_that_are_there_in_a_row_without_a_thick_end_take_any_strand():
    found = way(6, 2000, "spinners_chart")
    assert (found.state, found.strand.thinnest, found.strand.thickest) == ("already_there", None, None)


def test_no_strand_makes_others_thinner():
    found = way(3, 501, "uk_trade")
    assert (found.state, found.strand) == ("too_thick", None)


def test_every_row_of_every_chart_is_told_in_the_charts_order():
    told = [(each.source, each.thickness) for category in range(8) for each in ways_to_reach(category, Fraction(1))]
    rows = [(chart.source, row) for chart in YARN_WEIGHTS.charts for row in chart.rows]
    assert len(told) == len(rows)
    for category in range(8):
        assert [each.thickness for each in ways_to_reach(category, Fraction(1))] == [
            row for _, row in rows if row.category == category
        ]


def does(strand, tex):
    """Whether a strand lies within what was told."""
    if strand is None:
        return False
    metres = 100_000 / tex
    return (strand.thinnest is None or metres <= strand.thinnest) and (
        strand.thickest is None or metres >= strand.thickest
    )


@pytest.mark.parametrize("category", range(7))
@pytest.mark.parametrize("have", [50, 125, 250, Fraction("369.05"), 500, 800, 1300])
def test_just_the_strands_within_what_is_told_bring_the_others_into_the_row(category, have):
    for each in ways_to_reach(category, Fraction(have)):
        low, high = each.thickness.metres_per_100g.low, each.thickness.metres_per_100g.high
        for tex in TRIED:
            # a length of both weighs what they weigh together
            metres = 100 / ((have + tex) / 1000)
            within = (low is None or metres >= low) and (high is None or metres <= high)
            assert within == does(each.strand, tex), (each, tex)


@given(st.integers(40, 2000), st.integers(40, 100_000), st.integers(0, 6))
def test_what_is_told_agrees_with_the_category_that_the_strands_have_together(have, strand, category):
    ways = ways_to_reach(category, Fraction(100_000, have))
    made = hold_together(StrandRequest((Strand(metres=Fraction(have)), Strand(metres=Fraction(strand)))))
    rows = [(row.source, row.thickness) for row in made.categories if not row.between]
    for each in ways:
        assert ((each.source, each.thickness) in rows) == does(each.strand, Fraction(100_000, strand))
        there = any(row.thickness is each.thickness and not row.between for row in categories(Fraction(have)))
        assert there == (each.state == "already_there")


def test_a_wanted_category_is_answered_by_the_operation():
    made = hold_together(StrandRequest((Strand(metres=Fraction(400)),), wanted_category=3))
    assert made.to_reach == ways_to_reach(3, Fraction(250))
    assert made.remarks == ()
