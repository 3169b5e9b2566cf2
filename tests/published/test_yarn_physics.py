"""Yarn against published tables and worked examples."""

from __future__ import annotations

from fractions import Fraction

import pytest

from grading_core.yarn.amounts import balls, estimated, measured
from grading_core.yarn.request import Strand, StrandRequest
from grading_core.yarn.strands import categories, hold_together

M_PER_YARD = Fraction(9144, 10000)


@pytest.mark.parametrize(
    ("strands", "together"),
    [
        ((400, 400), 200),  # two designers' articles (2019 and later)
        ((800, 800), 400),  # a designer's article and a yarn maker's stranding table
        ((300, 300), 150),  # a designer's article
        ((600, 600, 600, 600), 150),  # a yarn maker's stranding table, as the three below
        ((800, 800, 800), 265),
        ((700, 700, 700), 235),
        ((425, 425), 210),
    ],
)
def test_strands_held_together_are_as_thick_as_stranding_tables_print(strands, together):
    made = hold_together(StrandRequest(tuple(Strand(Fraction(strand)) for strand in strands)))
    # the stranding table rounds to 5 m
    assert abs(made.metres_per_100g - together) <= Fraction(5, 2)


@pytest.mark.parametrize(
    ("metres", "category"),
    # Spin Off magazine's chart, yards per pound to standard category; 1 yd/lb = 0.201591 m/100 g
    [(2600, 0), (2100, 1), (1500, 2), (1000, 3), (700, 4), (500, 5), (350, 6)],
)
def test_yards_per_pound_fall_in_the_category_that_the_magazines_chart_prints(metres, category):
    thickness = metres * M_PER_YARD / Fraction(45359237, 10**8) / 10
    found = [match for match in categories(thickness) if match.source.name.startswith("Spin Off")]
    assert [match.thickness.category for match in found] == [category]


def test_a_weighed_swatch_gives_the_yards_of_a_teaching_blogs_example():
    # 4 g for 36 square inches, a garment of 3600 square inches, 87 yards to a 50 g ball: 696 yards, and 8 balls
    # (teaching blog, 2016, which rounds to 720 on the way)
    amount = measured(3600, Fraction(4), 36)
    yards = amount.metres(Fraction(87 * 2) * M_PER_YARD)[1] / M_PER_YARD
    assert (yards, balls(amount, Fraction(50))) == (696, 8)


def test_the_estimate_gives_the_yards_of_the_knotted_yard_example():
    # 45 stitches from a yard at 5 stitches to the inch; 25,200 stitches take 560 yards (handspinner's blog, 2009)
    inch = Fraction(254, 100)
    amount = estimated(25200, inch / 5, Fraction(200))
    assert amount.metres(Fraction(200))[1] / M_PER_YARD == 560


def test_the_estimate_gives_the_weight_of_the_textile_handbooks_formula():
    # grams per square metre = loops per square cm x loop length in mm x tex / 100 (textile handbook):
    # 20 stitches and 28 rows to 10 cm, loops of 2 cm, 500 tex
    loops_per_cm2, loop_mm, tex = Fraction(56, 10), 20, 500
    amount = estimated(int(loops_per_cm2 * 10000), Fraction(1, 2), Fraction(200))
    assert amount.likely == loops_per_cm2 * loop_mm * tex / 100 == 560


def test_a_garments_printed_weight_and_length_agree_with_its_yarn():
    # drop-shoulder crew, worsted of 246 m to 100 g: 1180 yards, 15.5 ounces (published pattern)
    ounce = Fraction(28349523125, 10**9)
    amount = measured(1, Fraction(31, 2) * ounce, 1)
    assert abs(amount.metres(Fraction(246))[1] - 1180 * M_PER_YARD) < 3
