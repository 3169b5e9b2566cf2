from __future__ import annotations

from fractions import Fraction

import pytest
from hypothesis import given
from hypothesis import strategies as st

from grading_core.standards.ranges import figure
from grading_core.standards.yarn_weights import SPINNERS_CHART, NeedleNumbers
from grading_core.yarn.request import Strand, StrandRequest
from grading_core.yarn.strands import categories, hold_together

metres = st.integers(40, 2000).map(Fraction)


def together(strands):
    return hold_together(StrandRequest(tuple(Strand(metres=strand) for strand in strands)))


@given(st.lists(metres, min_size=1, max_size=6))
def test_a_length_of_strands_held_together_weighs_what_its_strands_weigh(strands):
    made = together(strands)
    weight_of_a_kilometre = sum(100 * 1000 / strand for strand in strands)
    assert 100 * 1000 / made.metres_per_100g == weight_of_a_kilometre == made.tex


@given(st.lists(metres, min_size=1, max_size=6))
def test_the_shares_are_the_whole_weight_and_each_strand_is_as_long_as_the_other(strands):
    made = together(strands)
    assert sum(strand.weight_share for strand in made.strands) == 1
    lengths = {made.weight_share * strand for made, strand in zip(made.strands, strands, strict=True)}
    assert len(lengths) == 1


@given(metres)
def test_every_chart_names_a_category_for_every_thickness(thickness):
    assert len({match.source for match in categories(thickness)}) == 3


def test_a_thickness_in_a_charts_gap_takes_the_nearer_row_and_says_so():
    # the chart has 181 as the upper end of Medium and 182 as the lower end of Light
    for thickness, category in ((Fraction(1812, 10), 4), (Fraction(1818, 10), 3), (Fraction(1815, 10), 4)):
        (match,) = [match for match in categories(thickness) if match.source == SPINNERS_CHART]
        assert (match.thickness.category, match.between) == (category, True)


@pytest.mark.parametrize(("thickness", "category"), [(20, 6), (3000, 0)])
def test_the_thickest_and_the_thinnest_row_are_open_ended(thickness, category):
    (match,) = [match for match in categories(Fraction(thickness)) if match.source == SPINNERS_CHART]
    assert (match.thickness.category, match.between) == (category, False)


def test_a_thickness_on_the_border_of_two_rows_is_named_by_both():
    found = [match for match in categories(Fraction(242)) if match.source == SPINNERS_CHART]
    assert [(match.thickness.category, match.between) for match in found] == [(2, False), (3, False)]


def test_the_standards_own_name_stands_beside_the_charts():
    (match,) = [match for match in categories(Fraction(225)) if match.thickness.name.startswith("DK")]
    assert (match.standard.name, match.thickness.name) == ("Light", "DK (8 ply)")


def test_a_category_has_the_gauge_and_the_needle_of_the_published_standard():
    # Standard Yarn Weight System: category 3, light, 21 to 24 stitches to 4 in on 3.75 to 4.5 mm, US 5 to 7
    (match,) = [match for match in categories(Fraction(225)) if match.source == SPINNERS_CHART]
    assert match.standard.stitches_per_4_inches == figure("21-24")
    assert match.standard.needle_mm == figure("3.75-4.5")
    assert match.standard.needle_us == NeedleNumbers("5", "7")
    # 4 in are 10.16 cm
    assert match.standard.stitches_per_10_cm.times(Fraction(1016, 1000)) == figure("21-24")


def test_the_standard_is_among_the_sources():
    assert [source.key for source in together([400]).sources] == [
        "spinners_chart",
        "uk_trade",
        "southern_usage",
        "cyc_yarn",
    ]
