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


def test_each_size_has_what_its_own_stitches_take_of_each_yarn_that_it_has():
    sizes = [SizeStitches("S", {"oat": 40_000}), SizeStitches("L", {"oat": 50_000, "kelp": 1_000})]
    small, large = [size.yarns for size in estimates({"oat": WEIGHED, "kelp": WEIGHED}, sizes).sizes]
    # 400 g are 800 m, and with a tenth more 8.8 balls of 50 g; 500 g are 11 balls, and 10 g one
    assert [(need.yarn, need.grams.likely, need.metres.likely, need.balls) for need in small] == [("oat", 400, 800, 9)]
    assert [(need.yarn, need.metres.likely, need.balls) for need in large] == [("oat", 1000, 11), ("kelp", 20, 1)]


def test_a_yarn_without_a_swatch_is_estimated_from_the_width_of_a_stitch_and_says_so():
    made = estimates({"oat": UNWEIGHED}, [SizeStitches("S", {"oat": 1_000})], Fraction(0), GAUGE)
    # stitches of half a cm take 4 times that: 20 m, which are 10 g
    ((need,),) = [size.yarns for size in made.sizes]
    assert (need.metres.likely, need.grams.likely, need.basis) == (20, 10, "estimated")
    # edges and ends of strands aren't reckoned here, and the sentence says so
    assert [(remark.code, remark.message.id) for remark in made.remarks] == [
        ("estimated_yarn", "warning.estimated_yarn_of_stitches")
    ]


def test_a_swatch_of_every_yarn_leaves_nothing_to_say():
    made = estimates({"oat": WEIGHED}, [SizeStitches("S", {"oat": 1_000})], gauge=GAUGE)
    assert made.remarks == ()


def test_floats_take_yarn_beside_the_stitches():
    sizes = [SizeStitches("S", {"oat": 1_000}, {"oat": 400, "kelp": 400})]
    made = estimates({"oat": UNWEIGHED, "kelp": UNWEIGHED}, sizes, gauge=GAUGE)
    # stitches of half a cm: 20 m, and 1.1 times the 2 m that the floats pass over
    ((oat, kelp),) = [size.yarns for size in made.sizes]
    assert oat.metres_for == {"stitches": 20, "floats": Fraction("2.2")}
    # a strand may be carried behind stitches of a size without being worked in any
    assert (kelp.stitches, kelp.metres.likely) == (0, Fraction("2.2"))


def test_floats_need_a_gauge():
    with pytest.raises(ContradictionError) as refused:
        estimates({"oat": replace(WEIGHED, swatch_floats=3)}, [SizeStitches("S", {"oat": 1}, {"oat": 1, "moss": 1})])
    assert [(problem.path, problem.code) for problem in refused.value.problems] == [
        (("yarns", "oat", "swatch_floats"), "floats_need_gauge"),
        (("sizes", 0, "floats", "moss"), "unknown_yarn"),
        (("sizes", 0, "floats", "oat"), "floats_need_gauge"),
    ]


def test_a_swatch_lighter_than_its_floats_is_refused():
    # 10 g are 20 m, and 4,000 stitches of half a cm take 22 m of float
    with pytest.raises(ContradictionError) as refused:
        estimates({"oat": replace(WEIGHED, swatch_floats=4_000)}, gauge=GAUGE)
    assert [(problem.path, problem.code) for problem in refused.value.problems] == [
        (("yarns", "oat", "swatch_grams"), "swatch_too_light")
    ]


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
