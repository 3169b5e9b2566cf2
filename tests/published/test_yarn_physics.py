"""Yarn against published tables and worked examples."""

from __future__ import annotations

from fractions import Fraction

import pytest

from grading_core.yarn.amounts import Widths, Work, loops_of, need
from grading_core.yarn.request import Strand, StrandRequest, Yarn
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
    made = hold_together(StrandRequest(tuple(Strand(metres=Fraction(strand)) for strand in strands)))
    # the stranding table rounds to 5 m
    assert abs(made.metres_per_100g - together) <= Fraction(5, 2)


@pytest.mark.parametrize(
    ("metres_per_100g", "tex"),
    # tex = grams per 1000 m = 100,000 over the metres of 100 g (ISO 1144 for the unit), a table of yarn thickness
    [(400, 250), (840, "119.05"), (700, "142.86"), (425, "235.29"), (110, "909.09")],
)
def test_metres_to_100_grams_are_the_tex_of_the_table(metres_per_100g, tex):
    strand = Strand(metres_per_100g=Fraction(metres_per_100g))
    assert abs(strand.linear_density - Fraction(tex)) <= Fraction(1, 200)


@pytest.mark.parametrize(
    ("metres", "category"),
    # Spin Off magazine's chart, yards per pound to standard category; 1 yd/lb = 0.201591 m/100 g
    [(2600, 0), (2100, 1), (1500, 2), (1000, 3), (700, 4), (500, 5), (350, 6)],
)
def test_yards_per_pound_fall_in_the_category_that_the_magazines_chart_prints(metres, category):
    thickness = metres * M_PER_YARD / Fraction(45359237, 10**8) / 10
    found = [match for match in categories(thickness) if match.source.name.startswith("Spin Off")]
    assert [match.thickness.category for match in found] == [category]


def needed(stitches, yarn, width_cm):
    return need("oat", Work(plain=stitches), yarn, loops=loops_of(yarn, width_cm), widths=Widths(width_cm, width_cm))


def test_a_weighed_swatch_gives_the_yards_of_a_teaching_blogs_example():
    # 4 g for 36 square inches, a garment of 3600 square inches, 87 yards to a 50 g ball: 696 yards, and 8 balls
    # (teaching blog, 2016, which rounds to 720 on the way)
    strand = Strand(metres=87 * M_PER_YARD, grams=Fraction(50))
    made = needed(3600, Yarn(strands=(strand,), swatch_grams=Fraction(4), swatch_stitches=36), Fraction(1))
    assert (made.metres.likely / M_PER_YARD, made.balls) == (696, 8)


def test_the_estimate_gives_the_yards_of_the_knotted_yard_example():
    # 45 stitches from a yard at 5 stitches to the inch; 25,200 stitches take 560 yards (handspinner's blog, 2009)
    made = needed(25200, Yarn(metres_per_100g=Fraction(200)), Fraction(254, 100) / 5)
    assert made.metres.likely / M_PER_YARD == 560


def test_the_estimate_gives_the_weight_of_the_textile_handbooks_formula():
    # grams per square metre = loops per square cm x loop length in mm x tex / 100 (textile handbook):
    # 20 stitches and 28 rows to 10 cm, loops of 2 cm, 500 tex
    loops_per_cm2, loop_mm, tex = Fraction(56, 10), 20, 500
    made = needed(int(loops_per_cm2 * 10000), Yarn(strands=(Strand(tex=Fraction(tex)),)), Fraction(1, 2))
    assert made.grams.likely == loops_per_cm2 * loop_mm * tex / 100 == 560


def test_a_garments_printed_weight_and_length_agree_with_its_yarn():
    # drop-shoulder crew, worsted of 246 m to 100 g: 1180 yards, 15.5 ounces (published pattern)
    ounce = Fraction(28349523125, 10**9)
    weighed = Yarn(metres_per_100g=Fraction(246), swatch_grams=Fraction(31, 2) * ounce, swatch_stitches=1)
    assert abs(needed(1, weighed, Fraction(1)).metres.likely - 1180 * M_PER_YARD) < 3
