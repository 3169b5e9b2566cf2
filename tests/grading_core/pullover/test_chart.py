"""Pullovers with a chart."""

from __future__ import annotations

from dataclasses import replace
from fractions import Fraction

from grading_core.chart.grid import Anchor, Chart
from grading_core.errors import Impossible
from grading_core.pullover.grade import grade_pullover
from grading_core.pullover.request import ChartWishes, YokeWishes
from grading_core.pullover.result import KnittedSize
from tests.grading_core.pullover.knitted_pullovers import DIAMOND, PLAIN, REQUESTS, outcomes


def test_a_seam_that_takes_a_whole_cuff_makes_its_size_impossible_and_no_other():
    wide = Fraction(20)  # 44 stitches
    request = replace(PLAIN, chart=ChartWishes(chart=DIAMOND), yoke=YokeWishes(seam_stitches=40, underarm=wide))
    sizes = outcomes(grade_pullover(request))
    impossible = [size for size in sizes if isinstance(size, Impossible)]
    assert 0 < len(impossible) < len(sizes)
    (nearest,) = impossible[0].nearest
    assert nearest.field == "yoke.seam_stitches"
    mended = replace(request, yoke=YokeWishes(seam_stitches=nearest.value, underarm=wide))
    assert isinstance(outcomes(grade_pullover(mended))[0], KnittedSize)


def test_a_seam_wider_than_its_underarm_is_impossible_and_one_as_wide_is_not():
    request = replace(PLAIN, labels=("M",), yoke=YokeWishes(seam_stitches=31))
    (size,) = outcomes(grade_pullover(request))
    assert (size.code, size.reason.id) == ("seams_too_wide", "reason.seams_beyond_underarm")
    (nearest,) = size.nearest
    assert nearest.value == size.reason.values["stitches"]
    mended = replace(request, yoke=YokeWishes(seam_stitches=nearest.value))
    (size,) = outcomes(grade_pullover(mended))
    assert size.counts.underarm == nearest.value


def test_every_section_has_the_chart_on_its_centre():
    made = grade_pullover(REQUESTS["a chart that runs on"])
    for size in outcomes(made):
        for worked in [*size.chart.rounds][2:]:
            for section in (worked.back, worked.front, worked.sleeve):
                # the middle stitch of the section, columns counted from 1 to 5
                assert (section.first_column - 1 + section.stitches // 2) % 5 + 1 == 3


def test_a_chart_centred_between_two_stitches_makes_even_sections():
    halves = Anchor(*[Fraction(1, 2) + 2] * 3)
    made = grade_pullover(replace(PLAIN, chart=ChartWishes(chart=DIAMOND, anchor=halves)))
    assert {size.counts.neck.back % 2 for size in outcomes(made)} == {0}
    assert {size.counts.neck.sleeve % 2 for size in outcomes(made)} == {0}


def test_the_body_is_long_enough_to_finish_the_chart():
    tall = Chart(DIAMOND.rows * 50, DIAMOND.colours, repeat="once")
    made = grade_pullover(replace(PLAIN, chart=ChartWishes(chart=tall)))
    for size in made.sizes:
        assert size.outcome.counts.rounds + size.outcome.body.rounds >= 200
        assert any(remark.size == size.label and remark.code == "body_longer_for_chart" for remark in made.remarks)
