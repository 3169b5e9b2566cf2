"""Necks, short rows, pick-up ratios and bands against printed patterns and teaching articles."""

from __future__ import annotations

from fractions import Fraction

import pytest

from grading_core.gauge import Gauge
from grading_core.parts.neckband import neckband, pick_up
from grading_core.parts.neckline import FrontDrop, Opening, cast_on, check_head
from grading_core.parts.ribbing import Rib
from grading_core.parts.short_rows import pairs_for, raise_back
from grading_core.pullover.proportions import USUAL_STRETCH
from grading_core.rounding import CountRule
from grading_core.sections import Sections
from grading_core.standards.heads import HEADS

INCH = Fraction(254, 100)


@pytest.mark.parametrize(
    ("body", "sleeve", "total"),
    # a free raglan pattern in 9 sizes, front and back alike
    list(
        zip(
            (23, 23, 24, 24, 22, 22, 20, 20, 20),
            (6, 7, 7, 7, 10, 10, 12, 13, 14),
            (58, 60, 62, 62, 64, 64, 64, 66, 68),
            strict=True,
        )
    ),
)
def test_the_sections_of_a_printed_neck_are_its_cast_on(body, sleeve, total):
    assert cast_on(Sections(body, body, sleeve), 0).stitches == total


def test_an_open_front_is_cast_on_as_its_pattern_prints_it():
    # cast on 64 as 1, 14, 34, 14, 1 (Knitty, spring 2007)
    drop = FrontDrop(rows=8, height_cm=Fraction(3), each_side=1, edge_increases=0, centre=32)
    made = cast_on(Sections(34, 34, 14), 0, drop=drop)
    assert made.stitches == 64
    assert [gap.stitches for gap in made.gaps if gap.stitches] == [1, 14, 34, 14, 1]


@pytest.mark.parametrize(("rows_per_inch", "pairs"), [(6, 3), (8, 4)])
def test_a_raise_of_an_inch_takes_three_or_four_pairs(rows_per_inch, pairs):
    # three or four short rows in the last couple of inches of the back (a designer's teaching article): an inch
    assert pairs_for(INCH, Gauge(5 / INCH, rows_per_inch / INCH)) == pairs


def test_six_rows_are_three_pairs():
    # 6 rows of back-neck shaping (a comparison of yokes after a handbook)
    assert raise_back(Sections(30, 30, 10), 2, 3, Gauge(Fraction(2), Fraction(3))).rows == 6


@pytest.mark.parametrize(
    ("stitches", "rows", "rhythm"),
    # four teaching articles (2009 to 2021)
    [(21, 28, Fraction(3, 4)), (18, 24, Fraction(3, 4)), (16, 24, Fraction(2, 3)), (5, 8, Fraction(5, 8))],
)
def test_row_ends_are_picked_up_in_the_ratio_that_teaching_articles_print(stitches, rows, rhythm):
    made = pick_up(0, Gauge(Fraction(stitches), Fraction(rows)), 48)
    assert made.rhythm == rhythm
    assert made.along_rows_each_side == 48 * rhythm


def test_an_edge_of_120_rows_gives_80_stitches():
    # 20 in at 16 stitches and 24 rows to 4 in, 2 of every 3 (a forum, after a knitting handbook)
    assert 2 * pick_up(0, Gauge(Fraction(4), Fraction(6)), 60).along_rows_each_side == 80


def test_a_band_with_a_fold_row_has_ten_rows_on_either_side_of_it():
    # 10 rows, one purl fold row, 10 rows (a designer's blog)
    gauge = Gauge(Fraction(2), Fraction(4))
    band = neckband(
        pick_up(80, gauge), Rib(gauge=gauge, height_cm=Fraction(5, 2), rule=CountRule(2)), "double_with_fold_round"
    )
    assert (band.edge.rounds, band.rounds) == (10, 21)


def test_three_inches_of_rib_fold_to_one_and_a_half():
    # a top-down tutorial (2013, later edition)
    gauge = Gauge(5 / INCH, 8 / INCH)
    band = neckband(pick_up(80, gauge), Rib(gauge=gauge, height_cm=3 * INCH / 2, rule=CountRule(2)), "double")
    assert gauge.height_cm(band.rounds) == 3 * INCH
    assert band.height_cm == 3 * INCH / 2


def test_a_neck_of_the_percentage_system_passes_the_middle_head_of_the_published_range():
    # 40 % of a body of 40 in (a published percentage system); heads of the standard's hat chart
    (women,) = [row.inch.middle for row in HEADS.rows if row.group == "adult woman"]
    edge = Opening("cast_on", Fraction(40, 100) * 40 * INCH)
    made = check_head([edge], women * INCH, USUAL_STRETCH)
    assert made.passes
    assert made.stretch_needed == Fraction(3, 8)
