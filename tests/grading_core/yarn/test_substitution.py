"""Another yarn in place of a pattern's, by hand."""

from __future__ import annotations

from fractions import Fraction

import pytest
from hypothesis import given
from hypothesis import strategies as st

from grading_core.errors import ContradictionError
from grading_core.gauge import Gauge
from grading_core.yarn.request import SizeAmount, Strand, SubstitutionRequest, Yarn
from grading_core.yarn.substitution import substitute_yarn

WORSTED = Yarn(metres_per_100g=Fraction(200))
LIGHT = Yarn(metres_per_100g=Fraction(250))
GAUGE = Gauge.over(Fraction(20), Fraction(28), Fraction(10))


def substituted(*sizes, pattern=WORSTED, own=LIGHT, **more):
    return substitute_yarn(SubstitutionRequest(pattern_yarn=pattern, own_yarn=own, sizes=sizes, **more))


def compared(pattern, own, gauge=None):
    return substituted(SizeAmount(label="S", metres=Fraction(1)), pattern=pattern, own=own, gauge=gauge).comparison


@pytest.mark.parametrize(
    ("amount", "metres"),
    [
        ({"metres": 1000}, 1000),
        ({"yards": 1000}, Fraction("914.4")),  # the international yard is 0.9144 m
        ({"grams": 300}, 600),
        ({"balls": 6}, 600),  # of 50 g, 100 m each
        ({"balls": Fraction("5.5")}, 550),
    ],
)
def test_a_size_needs_as_many_metres_as_the_pattern_says_in_its_own_yarn(amount, metres):
    name, number = amount.popitem()
    (size,) = substituted(SizeAmount(label="S", **{name: Fraction(number)})).sizes
    assert size.metres == metres
    # 250 m weigh 100 g
    assert size.grams == Fraction(metres) * 100 / 250


def test_balls_of_a_pattern_are_of_its_first_strand():
    # 210 m of lace in a ball of 25 g beside 100 m of worsted in one of 50: as long as the first alone
    lace, worsted = Strand(metres=Fraction(210), grams=Fraction(25)), Strand(metres=Fraction(100), grams=Fraction(50))
    (size,) = substituted(SizeAmount(label="S", balls=Fraction(4)), pattern=Yarn(strands=(lace, worsted))).sizes
    assert size.metres == 840


def test_each_strand_is_as_long_as_the_yarn_and_bought_in_its_own_balls():
    strands = (Strand(metres=Fraction(200), grams=Fraction(50)), Strand(metres=Fraction(210), grams=Fraction(25)))
    (size,) = substituted(SizeAmount(label="S", metres=Fraction(840)), own=Yarn(strands=strands)).sizes
    # 840 m are 210 g and 100 g
    assert [(strand.strand, strand.grams.likely, strand.balls) for strand in size.strands] == [(1, 210, 5), (2, 100, 4)]
    assert size.grams == 310


@pytest.mark.parametrize(("margin", "balls"), [({}, 8), ({"margin": Fraction(1, 10)}, 9)])
def test_nothing_is_bought_beyond_what_the_pattern_says_unless_it_is_asked(margin, balls):
    # 1000 m are 400 g, and with a tenth more 440
    (size,) = substituted(SizeAmount(label="S", metres=Fraction(1000)), **margin).sizes
    assert [strand.balls for strand in size.strands] == [balls]


def test_sizes_stand_side_by_side_and_one_is_answered_alone_where_it_is_asked():
    sizes = [SizeAmount(label=label, yards=Fraction(yards)) for label, yards in (("S", 1000), ("M", 1100))]
    runs = substituted(*sizes).runs
    # 914.4 and 1005.84 m, 365.76 and 402.34 g
    assert (runs.metres, runs.grams, runs.balls) == ("915 (1006)", "366 (403)", ("8 (9)",))
    assert [size.label for size in substituted(*sizes, answer_sizes=("M",)).sizes] == ["M"]


@given(st.integers(50, 900), st.integers(1, 5000))
def test_the_patterns_own_yarn_is_needed_as_it_is_printed(metres_per_100g, grams):
    yarn = Yarn(metres_per_100g=Fraction(metres_per_100g))
    made = substituted(SizeAmount(label="S", grams=Fraction(grams)), pattern=yarn, own=yarn, gauge=GAUGE)
    assert made.sizes[0].grams == grams
    assert (made.comparison.thickness, made.comparison.likely_gauge) == ("same", GAUGE)
    assert [remark.code for remark in made.remarks] == ["swatch_decides"]


@pytest.mark.parametrize(("own", "thickness"), [(199, "thicker"), (200, "same"), (201, "thinner")])
def test_fewer_metres_to_a_weight_are_a_thicker_yarn(own, thickness):
    comparison = compared(WORSTED, Yarn(metres_per_100g=Fraction(own)))
    assert (comparison.thickness, comparison.tex_ratio) == (thickness, Fraction(200, own))


# Gauges and metres of ordinary labels, which all have about the same tightness factor, sqrt(tex) over loop length (a
# table of yarn physics, after Munden's laws)
LABELS = [(28, 400), (24, 300), (22, 240), (20, 200), (18, 160), (14, 110)]


@pytest.mark.parametrize(("stitches", "metres"), LABELS)
def test_a_likely_gauge_is_near_that_of_the_other_yarns_label(stitches, metres):
    for own_stitches, own_metres in LABELS:
        gauge = Gauge.over(Fraction(stitches), Fraction(30), Fraction(10))
        yarns = (Yarn(metres_per_100g=Fraction(each)) for each in (metres, own_metres))
        likely = compared(*yarns, gauge).likely_gauge
        # within 7 %: the table's factors lie between 10.6 and 11.3
        assert abs(likely.swatch(Fraction(10)).stitches / own_stitches - 1) < Fraction(7, 100)


def test_a_yarn_held_double_has_0_707_times_the_stitches_and_rows():
    gauge = Gauge.over(Fraction(28), Fraction(40), Fraction(10))
    likely = compared(Yarn(metres_per_100g=Fraction(400)), WORSTED, gauge).likely_gauge.swatch(Fraction(10))
    assert [round(float(each), 2) for each in (likely.stitches, likely.rows)] == [19.8, 28.28]


def test_no_gauge_is_likely_where_the_patterns_is_not_known():
    assert compared(WORSTED, LIGHT).likely_gauge is None


@pytest.mark.parametrize(
    ("pattern", "own", "codes"),
    [
        # by two charts 200 and 240 m share a category: light, double knitting, worsted
        (200, 240, ["swatch_decides"]),
        # 400 m are super fine, fingering; 200 m light to worsted
        (400, 200, ["swatch_decides", "other_yarn_category"]),
    ],
)
def test_only_a_swatch_decides_and_a_yarn_of_another_category_by_every_chart_gets_a_word(pattern, own, codes):
    yarns = {name: Yarn(metres_per_100g=Fraction(metres)) for name, metres in (("pattern", pattern), ("own", own))}
    made = substituted(SizeAmount(label="S", metres=Fraction(1)), **yarns)
    assert [remark.code for remark in made.remarks] == codes


def test_charts_that_disagree_about_one_yarn_are_not_another_category_of_the_other():
    # 245 m: fine by the magazine, light by the guides; 235 m: light by the magazine and a guide, worsted by another
    comparison = compared(Yarn(metres_per_100g=Fraction(245)), Yarn(metres_per_100g=Fraction(235)))
    assert comparison.common_category


def test_labels_used_twice_and_sizes_that_are_not_there_are_named():
    sizes = [SizeAmount(label="S", metres=Fraction(1))] * 2
    with pytest.raises(ContradictionError) as refused:
        substituted(*sizes, answer_sizes=("Q",))
    assert [problem.path for problem in refused.value.problems] == [("sizes", 1, "label"), ("answer_sizes", 0)]
