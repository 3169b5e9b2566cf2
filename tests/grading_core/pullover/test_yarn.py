"""Stitches and yarn of a whole pullover."""

from __future__ import annotations

from dataclasses import replace
from fractions import Fraction

from grading_core.pullover.grade import pullover
from grading_core.pullover.request import YarnWishes
from grading_core.pullover.yarn import raise_stitches, rib_stitches, stitches_by_colour
from tests.grading_core.pullover.knitted_pullovers import PLAIN, sizes_of


def test_all_colours_together_are_every_stitch_worked(made):
    for size in sizes_of(made):
        if size.neck.drop:
            continue
        sections = size.counts.neck
        yoke, increases = 0, {worked.round: worked for worked in size.yoke.increase_rounds}
        for number in range(1, size.counts.rounds + 1):
            if number in increases:
                sections = sections.after(increases[number].increases)
            yoke += sections.total(size.counts.line_stitches)
        body, shaping = [size.counts.body], dict(size.body.shaping)
        for number in range(1, size.body.rounds + 1):
            body.append(body[-1] + shaping.get(number, 0))
        sleeve = [size.counts.sleeve]
        for number in range(1, size.sleeve.rounds + 1):
            sleeve.append(sleeve[-1] - 2 * (number in size.sleeve.decrease_rounds))
        fabric = yoke + sum(body[1:]) + 2 * sum(sleeve[1:])
        rest = raise_stitches(size.neck, size.counts) + rib_stitches(size.body, size.sleeve, size.band)
        assert sum(stitches_by_colour(size, None).values()) == fabric + rest
        if size.chart:
            assert sum(size.chart.stitches_by_colour.total.values()) == fabric


def test_a_weighed_swatch_tells_the_yarn_exactly():
    yarn = YarnWishes(metres_per_100g=Fraction(200), swatch_grams=Fraction(10), swatch_stitches=1000)
    for size in pullover(replace(PLAIN, yarn=yarn)).sizes:
        (colour,) = size.yarn
        assert colour.amount.likely_g == Fraction(colour.stitches, 100)
        assert colour.balls == -(-colour.stitches * 11 // 50_000)
