"""Stitches and yarn of a whole pullover."""

from __future__ import annotations

from dataclasses import replace
from fractions import Fraction

from grading_core.pullover.grade import grade_pullover
from grading_core.pullover.request import ChartWishes, YarnWishes
from grading_core.pullover.result import KnittedSize
from grading_core.pullover.yarn import stitches_by_colour
from tests.grading_core.pullover.knitted_pullovers import DIAMOND, PLAIN, outcomes, sizes_of
from tests.oracles.short_row_knitter import NeckStitches, knit, knit_darts


def knit_yoke_stitches(size: KnittedSize) -> int:
    """Round by round; what is still missing of a dropped front is not worked."""
    sections, worked = size.counts.neck, 0
    increases = {each.round: each.increases for each in size.yoke.increase_rounds}
    drop = size.neck.drop
    for number in range(1, size.counts.rounds + 1):
        sections = sections.after(increases.get(number, (0, 0, 0)))
        worked += sections.total(size.counts.line_stitches)
        if drop and number <= drop.rows:
            worked -= drop.centre + 2 * sum(row > number for row in drop.increase_rows)
    return worked


def knit_short_rows(size: KnittedSize) -> int:
    neck, raised = size.counts.neck, size.neck.raised
    if not raised or not raised.turns:
        return 0
    on_needle = NeckStitches(neck.back, neck.front, neck.sleeve, size.counts.line_stitches)
    rows_above, _, _ = knit(on_needle, raised)
    return sum(rows_above.values())


def knit_dart_rows(size: KnittedSize) -> int:
    """What the short rows over the bust add to the round that they belong to."""
    darts = size.body.bust_darts
    if darts is None:
        return 0
    back, front, _, _ = knit_darts(30, darts.front, darts.turns)
    return sum(back) + sum(front) - 30 - darts.front


def test_all_colours_together_are_every_stitch_worked(made):
    for size in sizes_of(made):
        yoke = knit_yoke_stitches(size)
        body, shaping = [size.counts.body], dict(size.body.shaping)
        for number in range(1, size.body.rounds + 1):
            body.append(body[-1] + shaping.get(number, 0))
        sleeve = [size.counts.sleeve]
        for number in range(1, size.sleeve.rounds + 1):
            sleeve.append(sleeve[-1] - 2 * (number in size.sleeve.decrease_rounds))
        fabric = yoke + sum(body[1:]) + 2 * sum(sleeve[1:])
        hem, cuff, band = size.body.hem, size.sleeve.cuff, size.band
        ribs = hem.rounds * hem.stitches + 2 * cuff.rounds * cuff.stitches + band.rounds * band.edge.stitches
        short_rows = knit_short_rows(size) + knit_dart_rows(size)
        assert sum(stitches_by_colour(size, None).values()) == fabric + short_rows + ribs
        if size.chart:
            assert sum(size.chart.stitches_by_colour.total.values()) == fabric


def test_a_weighed_swatch_tells_the_yarn_exactly():
    yarn = YarnWishes(metres_per_100g=Fraction(200), swatch_grams=Fraction(10), swatch_stitches=1000)
    for size in outcomes(grade_pullover(replace(PLAIN, yarn=yarn))):
        (colour,) = size.yarn
        assert colour.grams.likely == Fraction(colour.stitches, 100)
        assert colour.balls == -(-colour.stitches * 11 // 50_000)


def left_out(request_):
    return [remark for remark in grade_pullover(request_).remarks if remark.code == "yarn_leaves_out"]


def test_what_the_yarn_leaves_out_is_said_with_the_stitches_of_rib_that_the_parts_have():
    plain = replace(PLAIN, labels=("S", "M"), yarn=YarnWishes(metres_per_100g=Fraction(200)))
    (remark,) = left_out(plain)
    assert remark.path == ("yarn",)
    # hem, both cuffs and band as the answer has them, each stitches times rounds
    ribs = [
        size.body.hem.stitches * size.body.hem.rounds
        + 2 * size.sleeve.cuff.stitches * size.sleeve.cuff.rounds
        + size.band.edge.stitches * size.band.rounds
        for size in sizes_of(grade_pullover(plain))
    ]
    assert remark.message.values == {"ribs": tuple(ribs), "margin": 10, "chart": "none"}
    (charted,) = left_out(replace(plain, chart=ChartWishes(chart=DIAMOND)))
    assert charted.message.values["chart"] == "floats"
    assert left_out(replace(plain, yarn=None)) == []
