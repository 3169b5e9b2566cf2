"""Requests for pullovers, and their instructions read and knitted again."""

from __future__ import annotations

from dataclasses import replace
from fractions import Fraction

from grading_core.chart.grid import Chart, Colour
from grading_core.errors import Impossible
from grading_core.gauge import Gauge
from grading_core.pullover.proportions import USUAL_INCREASES
from grading_core.pullover.request import (
    BandWishes,
    BodyWishes,
    ChartWishes,
    DartWishes,
    EdgeWishes,
    Gauges,
    LevelWish,
    NeckWishes,
    PulloverRequest,
    RuleChange,
    Shares,
    SleeveWishes,
    YokeWishes,
)
from grading_core.pullover.result import KnittedSize, Pullover
from grading_core.rounding import CountRule
from grading_core.sizes.request import EvenSteps
from tests.oracles.told import DropTold, Told, told_each, work_yoke

GAUGE = Gauge.over(Fraction(22), Fraction(31), Fraction(10))

BULKY = Gauge.over(Fraction(12), Fraction(17), Fraction(10))

FINE = Gauge.over(Fraction(32), Fraction(44), Fraction(10))

DIAMOND = Chart(("..#..", ".###.", "#####", ".###."), {".": Colour("ground"), "#": Colour("motif")})


def outcomes(made: Pullover) -> list[KnittedSize | Impossible]:
    return [size.outcome for size in made.sizes]


def yoke(**options) -> YokeWishes:
    """The usual yoke, increased otherwise."""
    return YokeWishes(options=replace(USUAL_INCREASES, **options))


PLAIN = PulloverRequest(gauges=Gauges(GAUGE))

REQUESTS = {
    "nothing but a gauge": PLAIN,
    "a bulky yarn": PulloverRequest(gauges=Gauges(BULKY)),
    "a fine yarn for men": PulloverRequest(gauges=Gauges(FINE), body_table="men"),
    "children": PulloverRequest(gauges=Gauges(GAUGE), body_table="children"),
    "babies with a dropped front": PulloverRequest(
        gauges=Gauges(GAUGE),
        body_table="babies",
        neck=NeckWishes(front_drop=Fraction(3)),
        band=BandWishes(construction="double_with_fold_round"),
    ),
    "wide lines, all of them to the sleeves": PulloverRequest(
        gauges=Gauges(GAUGE), yoke=replace(yoke(line_stitches=3), line_to_body=0)
    ),
    "no line, every round, from the centre back": PulloverRequest(
        gauges=Gauges(GAUGE),
        neck=NeckWishes(start="centre_back", way="flat"),
        yoke=yoke(line_stitches=0, step=1, spacing="even"),
    ),
    "everything on a multiple": PulloverRequest(
        gauges=Gauges(GAUGE),
        neck=NeckWishes(count_rule=CountRule(4)),
        body=BodyWishes(count_rule=CountRule(4), hem=EdgeWishes(count_rule=RuleChange(4))),
        sleeve=SleeveWishes(count_rule=CountRule(4), cuff=EdgeWishes(count_rule=RuleChange(4))),
    ),
    "a narrower front": PulloverRequest(
        gauges=Gauges(GAUGE), neck=NeckWishes(shares=Shares(Fraction(36), Fraction(30), Fraction(17)))
    ),
    "a chart that runs on": PulloverRequest(
        gauges=Gauges(GAUGE), chart=ChartWishes(chart=DIAMOND, first_round=3), yoke=YokeWishes(seam_stitches=1)
    ),
    "a waist": PulloverRequest(
        gauges=Gauges(GAUGE),
        ease={"waist": Fraction(18), "hip": Fraction(8)},
        body=BodyWishes(length=Fraction(45), levels=(LevelWish("waist", Fraction(16)), LevelWish("hip", Fraction(36)))),
    ),
    "a wider front with darts, and a waist": PulloverRequest(
        gauges=Gauges(GAUGE),
        ease={"waist": Fraction(18)},
        body=BodyWishes(
            levels=(LevelWish("waist", Fraction(16)),),
            bust_darts=DartWishes(EvenSteps(Fraction(0), Fraction(5))),
            front_extra=EvenSteps(Fraction(0), Fraction(8)),
        ),
    ),
    "darts below a chart worked once": PulloverRequest(
        gauges=Gauges(GAUGE),
        chart=ChartWishes(chart=replace(DIAMOND, rows=DIAMOND.rows * 5, repeat="once"), first_round=70),
        body=BodyWishes(bust_darts=DartWishes(Fraction(3)), front_extra=Fraction(4)),
    ),
}


def sizes_of(made: Pullover) -> list[KnittedSize]:
    sizes = [size for size in outcomes(made) if isinstance(size, KnittedSize)]
    assert sizes
    return sizes


PATTERN = ("neck", "yoke", "split", "body", "sleeve", "band", "finishing")
"""The parts that a garment is knitted from."""


def told_sizes(made: Pullover) -> list[tuple[KnittedSize, dict[str, list[Told]]]]:
    """The sizes that can be knitted, each with what it reads in each part of the pattern."""
    parts = {each.part: told_each(each.sentences, made.labels) for each in made.instructions if each.part in PATTERN}
    assert {*parts} == {*PATTERN}
    return [
        (size.outcome, {part: read[size.label] for part, read in parts.items()})
        for size in made.sizes
        if isinstance(size.outcome, KnittedSize)
    ]


def knit_yoke(size: KnittedSize, neck: list[Told], yoke: list[Told]) -> list[str]:
    """The needles after a yoke as it is told: a letter for each stitch, from the start of the round."""
    line_stitches = size.counts.line_stitches
    worked, last = work_yoke(yoke, size.counts.neck, line_stitches, DropTold.of(neck))
    assert last == size.counts.rounds
    back, front, sleeve = size.counts.neck.back, size.counts.neck.front, size.counts.neck.sleeve
    for _, to_back, to_front, to_sleeve in worked:
        back, front, sleeve = back + 2 * to_back, front + 2 * to_front, sleeve + 2 * to_sleeve
    line = "l" * line_stitches
    return [*("b" * back), *line, *("s" * sleeve), *line, *("f" * front), *line, *("t" * sleeve), *line]
