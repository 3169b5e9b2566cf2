"""Yarn by colour and size, by hand."""

from __future__ import annotations

from dataclasses import replace
from fractions import Fraction

import pytest

from grading_core.errors import ContradictionError
from grading_core.gauge import Gauge
from grading_core.yarn.estimates import yarn_estimates
from grading_core.yarn.request import SizeStitches, Yarn, YarnEstimateRequest

GAUGE = Gauge.over(Fraction(20), Fraction(28), Fraction(10))
TENTH = Fraction(1, 10)
# a hundredth of a gram a stitch
WEIGHED = Yarn(metres_per_100g=Fraction(200), swatch_grams=Fraction(10), swatch_stitches=1000)
UNWEIGHED = Yarn(metres_per_100g=Fraction(200))


def estimates(yarns, sizes=(), margin=TENTH, gauge=None):
    return yarn_estimates(YarnEstimateRequest(yarns=yarns, sizes=tuple(sizes), margin=margin, gauge=gauge))


def codes(yarns, gauge=None):
    return [remark.code for remark in estimates(yarns, gauge=gauge).remarks]


def test_each_size_has_what_its_own_stitches_take_of_each_yarn_that_it_has():
    sizes = [SizeStitches("S", {"oat": 40_000}), SizeStitches("L", {"oat": 50_000, "kelp": 1_000})]
    small, large = [size.yarns for size in estimates({"oat": WEIGHED, "kelp": WEIGHED}, sizes).sizes]
    # 400 g are 800 m, and with a tenth more 8.8 balls of 50 g; 500 g are 11 balls, and 10 g one
    assert [(need.yarn, need.grams.likely, need.metres, need.balls) for need in small] == [("oat", 400, 800, 9)]
    assert [(need.yarn, need.metres, need.balls) for need in large] == [("oat", 1000, 11), ("kelp", 20, 1)]


def test_a_yarn_without_a_swatch_is_estimated_from_the_width_of_a_stitch_and_says_so():
    made = estimates({"oat": UNWEIGHED}, [SizeStitches("S", {"oat": 1_000})], Fraction(0), GAUGE)
    # stitches of half a cm take 4 times that: 20 m, which are 10 g
    ((need,),) = [size.yarns for size in made.sizes]
    assert (need.metres, need.grams.likely, need.grams.basis) == (20, 10, "estimated")
    assert [remark.code for remark in made.remarks] == ["estimated_yarn"]


def test_every_two_told_colours_are_compared_and_those_alike_in_lightness_get_a_word():
    # CIE L* of black and white are 0 and 100, and of #777777 50.03 (colour reference pages)
    black, white, grey = (replace(WEIGHED, hex=colour) for colour in ("#000000", "#ffffff", "#777777"))
    made = estimates({"a": black, "b": white, "c": WEIGHED, "d": grey})
    assert [(each.yarns, round(each.difference)) for each in made.contrasts] == [
        (("a", "b"), 100),
        (("a", "d"), 50),
        (("b", "d"), 50),
    ]
    assert made.remarks == ()
    # L* of #444444 is 28.9 and of #1b1b1b 9.5: 19.4 apart; of #191919 8.7: 20.2 apart
    dark = replace(WEIGHED, hex="#444444")
    assert codes({"a": dark, "b": replace(WEIGHED, hex="#1b1b1b")}) == ["colours_alike"]
    assert codes({"a": dark, "b": replace(WEIGHED, hex="#191919")}) == []


def test_every_wrong_place_is_named():
    yarns = {
        "half": replace(WEIGHED, swatch_stitches=None),
        "other half": replace(WEIGHED, swatch_grams=None),
        "neither": UNWEIGHED,
    }
    sizes = [SizeStitches("S", {"half": 1, "moss": 1}), SizeStitches("S", {"half": 1})]
    with pytest.raises(ContradictionError) as refused:
        estimates(yarns, sizes)
    assert [problem.path for problem in refused.value.problems] == [
        ("yarns", "half", "swatch_stitches"),
        ("yarns", "other half", "swatch_grams"),
        ("yarns", "neither"),
        ("sizes", 1, "label"),
        ("sizes", 0, "stitches", "moss"),
    ]
