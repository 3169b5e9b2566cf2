"""Requests that contradict themselves."""

from __future__ import annotations

from dataclasses import replace
from fractions import Fraction

import pytest

from grading_core.chart.grid import Anchor, Chart, Colour
from grading_core.errors import ContradictionError
from grading_core.gauge import Gauge
from grading_core.parts.ribbing import RibRepeat
from grading_core.pullover.grade import grade_pullover
from grading_core.pullover.request import (
    BandChange,
    BandWishes,
    BodyWishes,
    Changes,
    ChartWishes,
    DartWishes,
    EdgeWishes,
    Gauges,
    NeckWishes,
    PulloverRequest,
    RuleChange,
    Shares,
    YarnWishes,
    YokeWishes,
)
from grading_core.rounding import CountRule
from grading_core.sizes.request import EvenSteps, SentSize
from grading_core.yoke.request import Adjustment
from tests.grading_core.pullover.knitted_pullovers import DIAMOND, PLAIN

K2P2 = RibRepeat(2, 2)

HEM = ("body", "hem", "count_rule")


def two(**measurements):
    return SentSize("two", {"bust": Fraction(100), "upper_arm": Fraction(30), **measurements})


@pytest.mark.parametrize(
    ("request_", "path"),
    [
        (replace(PLAIN, ease={"bust": (Fraction(10), Fraction(12))}), ("ease", "bust")),
        (replace(PLAIN, ease={"hip": Fraction(4)}), ("ease", "hip")),
        (replace(PLAIN, ease={"bust": EvenSteps(Fraction(90), Fraction(0))}), ("ease", "bust")),
        (
            replace(PLAIN, labels=("M", "L"), neck=NeckWishes(circumference=(Fraction(50), Fraction(48)))),
            ("neck", "circumference"),
        ),
        (replace(PLAIN, neck=NeckWishes(shares=Shares(*map(Fraction, (3, 4, 1))))), ("neck", "shares", "front")),
        (replace(PLAIN, yoke=YokeWishes(line_to_body=3)), ("yoke", "line_to_body")),
        (replace(PLAIN, body=BodyWishes(count_rule=CountRule(4, 1))), ("body", "count_rule")),
        (replace(PLAIN, sizes=(two(),)), ("sizes", 0)),
        (
            replace(PLAIN, chart=ChartWishes(chart=Chart(("..", "."), {".": Colour("ground")}))),
            ("chart", "chart", "rows", 1),
        ),
        (
            replace(PLAIN, chart=ChartWishes(chart=DIAMOND, anchor=Anchor(Fraction(3), Fraction(5, 2), Fraction(3)))),
            ("chart", "anchor", "front"),
        ),
        (
            replace(PLAIN, yarn=YarnWishes(metres_per_100g=Fraction(200), swatch_grams=Fraction(4))),
            ("yarn", "swatch_stitches"),
        ),
        (
            replace(PLAIN, labels=("M", "L"), body=BodyWishes(front_extra=(Fraction(4), Fraction(3)))),
            ("body", "front_extra"),
        ),
        (replace(PLAIN, body=BodyWishes(front_extra=Fraction(-1))), ("body", "front_extra")),
        (
            replace(PLAIN, body=BodyWishes(bust_darts=DartWishes(EvenSteps(Fraction(1), Fraction(-1))))),
            ("body", "bust_darts", "extra"),
        ),
        *(
            (
                replace(
                    PLAIN,
                    labels=("M", "L"),
                    chart=ChartWishes(chart=DIAMOND),
                    body=BodyWishes(bust_darts=DartWishes(extra)),
                ),
                ("body", "bust_darts"),
            )
            for extra in (Fraction(2), (Fraction(0), Fraction(2)), EvenSteps(Fraction(0), Fraction(2)))
        ),
        (replace(PLAIN, body=BodyWishes(hem=EdgeWishes(rib=K2P2, count_rule=CountRule(6)))), (*HEM, "multiple")),
        (replace(PLAIN, body=BodyWishes(hem=EdgeWishes(rib=K2P2, count_rule=CountRule(1, 2)))), (*HEM, "plus")),
        *(
            (replace(PLAIN, band=BandWishes(rib=K2P2), changes=Changes(band=change)), ("changes", "band", *path))
            for change, path in (
                (BandChange(count_rule=RuleChange(plus=3)), ("count_rule", "plus")),
                (BandChange(rib=K2P2, count_rule=RuleChange(multiple=6)), ("count_rule", "multiple")),
            )
        ),
        # what a maker's rib leaves over of the design's counts
        (
            replace(PLAIN, band=BandWishes(count_rule=CountRule(2, 1)), changes=Changes(band=BandChange(rib=K2P2))),
            ("changes", "band", "rib"),
        ),
        (replace(PLAIN, changes=Changes(sleeve_length=(Fraction(40), Fraction(41)))), ("changes", "sleeve_length")),
        (PulloverRequest(gauges=Gauges(Gauge(Fraction(100), Fraction(3)))), ()),
        (PulloverRequest(gauges=Gauges(Gauge(Fraction(2), Fraction(40)))), ()),
        (replace(PLAIN, changes=Changes(gauges=Gauges(Gauge(Fraction(2), Fraction(40))))), ("changes",)),
        (replace(PLAIN, changes=Changes(yoke=Adjustment(rounds=4000))), ("changes", "yoke")),
    ],
)
def test_a_contradiction_names_its_place(request_, path):
    with pytest.raises(ContradictionError) as error:
        grade_pullover(request_)
    assert path in [problem.path for problem in error.value.problems]


@pytest.mark.parametrize("extra", [Fraction(0), (Fraction(0), Fraction(0)), EvenSteps(Fraction(0), Fraction(0)), None])
def test_no_darts_contradict_no_chart(extra):
    body = BodyWishes(bust_darts=DartWishes(extra))
    assert grade_pullover(replace(PLAIN, labels=("M", "L"), chart=ChartWishes(chart=DIAMOND), body=body)).sizes
