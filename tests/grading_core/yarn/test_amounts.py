"""Amounts of yarn, by hand. Factors that nothing is published about are common practice, no source."""

from __future__ import annotations

from fractions import Fraction
from itertools import count

import pytest
from hypothesis import given
from hypothesis import strategies as st

from grading_core.codes import ProblemCode
from grading_core.yarn.amounts import ESTIMATED, Widths, Work, balls, lengths_cm, loops_of, need, swatch_problems
from grading_core.yarn.request import Strand, Yarn

HALF_CM = Fraction(1, 2)
SAME = Widths(HALF_CM, HALF_CM)
YARN = Yarn(metres_per_100g=Fraction(200))  # half a gram a metre

works = st.builds(
    Work,
    **dict.fromkeys(("plain", "stranded", "rib", "floats"), st.integers(0, 50_000)),
    **dict.fromkeys(("cast_on", "picked_up", "bound_off", "ends"), st.integers(0, 500)),
)
widths = st.builds(
    Widths, st.fractions(Fraction(1, 10), 2, max_denominator=30), st.fractions(Fraction(1, 10), 2, max_denominator=30)
)


def needed(work, yarn=YARN, widths=SAME, margin=Fraction(0), swatch_width=HALF_CM):
    loops = loops_of(yarn, swatch_width)
    return need("oat", work, yarn, loops=loops, widths=widths, margin=margin)


@pytest.mark.parametrize(
    ("work", "purpose", "low", "likely", "high"),
    [
        # 100 stitches of half a cm are 50 cm wide; 3.8 to 4.2 times that of plain knit (constants of relaxed knit)
        (Work(plain=100), "stitches", 190, 200, 210),
        # thinner needles, and steps from knit to purl: nine tenths of the least to 1.15 of the most
        (Work(rib=100), "ribs", 171, 200, Fraction("241.5")),
        (Work(floats=100), "floats", 50, 55, 60),
        # a loop alone; a stitch and a tail of 3 widths and a tenth (a knitting teacher's rule); two stitches' worth
        (Work(cast_on=100), "edges", 190, 365, 420),
        (Work(picked_up=100), "edges", 190, 200, 210),
        (Work(bound_off=100), "edges", 150, 200, 250),
        (Work(ends=4), "ends", 40, 60, 80),
    ],
)
def test_each_kind_of_work_takes_its_own_part(work, purpose, low, likely, high):
    assert lengths_cm(work, ESTIMATED, SAME) == {purpose: (low, likely, high)}


def test_what_is_worked_from_a_chart_takes_the_width_of_its_own_fabric():
    lengths = lengths_cm(Work(plain=100, stranded=10, floats=10), ESTIMATED, Widths(HALF_CM, Fraction(1)))
    # 50 cm and 10 cm of stitches, 10 cm of floats
    assert (lengths["stitches"].likely, lengths["floats"].likely) == (240, 11)


@given(works, widths)
def test_all_parts_together_are_the_whole_and_the_least_is_no_more_than_the_most(work, widths):
    made = needed(work, widths=widths)
    assert sum(made.metres_for.values()) == made.metres.likely
    assert made.metres.low <= made.metres.likely <= made.metres.high
    # half a gram a metre
    assert [2 * grams for grams in made.grams] == [*made.metres]
    assert made.stitches == work.plain + work.stranded + work.rib


@given(works, works)
def test_more_work_takes_no_less(work, more):
    both = Work(**{name: getattr(work, name) + getattr(more, name) for name in Work._fields})
    alone, together = needed(work), needed(both)
    assert all(less <= most for less, most in zip(alone.metres, together.metres, strict=True))
    assert alone.balls <= together.balls


@given(st.integers(1, 30), st.integers(1, 5000), st.integers(0, 5000), st.booleans())
def test_a_swatch_worked_again_takes_what_it_weighs(tens_of_grams, stitches, floats, stranded):
    grams, width = Fraction(10 * tens_of_grams), Fraction(1, 3)
    yarn = Yarn(metres_per_100g=Fraction(150), swatch_grams=grams, swatch_stitches=stitches, swatch_floats=floats)
    # 150 m in 100 g; 1.1 widths of a third of a cm for a stitch of a float
    if grams * Fraction(3, 2) * 100 <= floats * Fraction("1.1") / 3:
        assert [problem.path for problem in swatch_problems(yarn, width)] == [("swatch_grams",)]
        return
    assert not [*swatch_problems(yarn, width)]
    work = Work(stranded=stitches, floats=floats) if stranded else Work(plain=stitches, floats=floats)
    made = needed(work, yarn, Widths(width, width), swatch_width=width)
    assert made.grams == (grams, grams, grams)
    assert made.basis == "measured"


def test_stitches_of_another_fabric_take_a_swatchs_yarn_in_the_proportion_of_their_widths():
    yarn = Yarn(metres_per_100g=Fraction(200), swatch_grams=Fraction(10), swatch_stitches=1000)
    # stitches of half a cm weigh a hundredth of a gram each, and those of 0.6 cm a fifth more
    made = needed(Work(plain=1000, stranded=1000), yarn, Widths(HALF_CM, Fraction(6, 10)))
    assert made.grams.likely == 22


def test_floats_beside_a_swatch_without_any_keep_their_range():
    yarn = Yarn(metres_per_100g=Fraction(200), swatch_grams=Fraction(10), swatch_stitches=1000)
    # 2000 stitches of half a cm are 10 m wide: 10 to 12 m, 5 to 6 g, beside 10 g of stitches
    assert needed(Work(plain=1000, floats=2000), yarn).grams == (15, Fraction("15.5"), 16)


@pytest.mark.parametrize(
    ("swatch", "lacking"),
    [
        ({}, []),
        ({"swatch_grams": Fraction(10), "swatch_stitches": 1000}, []),
        ({"swatch_grams": Fraction(10)}, ["swatch_stitches"]),
        ({"swatch_stitches": 1000}, ["swatch_grams"]),
        ({"swatch_floats": 10}, ["swatch_grams", "swatch_stitches"]),
    ],
)
def test_a_swatch_in_part_is_told_by_what_it_lacks(swatch, lacking):
    problems = [*swatch_problems(Yarn(metres_per_100g=Fraction(200), **swatch), HALF_CM)]
    assert [problem.path for problem in problems] == [(name,) for name in lacking]
    assert {problem.code for problem in problems} <= {ProblemCode.HALF_A_SWATCH}


@pytest.mark.parametrize(("floats", "wrong"), [(3636, []), (3637, ["swatch_too_light"])])
def test_a_swatch_that_weighs_no_more_than_its_floats_is_too_light(floats, wrong):
    # 10 g are 20 m; a stitch of a float takes 1.1 times half a cm: 3636.4 of them take it all
    yarn = Yarn(metres_per_100g=Fraction(200), swatch_grams=Fraction(10), swatch_stitches=1000, swatch_floats=floats)
    assert [problem.code for problem in swatch_problems(yarn, HALF_CM)] == wrong


def test_nothing_is_said_of_a_swatchs_floats_where_their_width_is_not_known():
    yarn = Yarn(metres_per_100g=Fraction(200), swatch_grams=Fraction(1), swatch_stitches=1, swatch_floats=10**6)
    assert not [*swatch_problems(yarn, None)]


@given(st.integers(0, 3000), st.integers(1, 200), st.integers(0, 50))
def test_the_balls_hold_the_weight_with_its_margin_and_one_ball_less_does_not(grams, ball, percent):
    enough = next(number for number in count() if number * ball * 100 >= grams * (100 + percent))
    assert balls(Fraction(grams), Fraction(ball), Fraction(percent, 100)) == enough


def test_balls_for_an_estimate_hold_the_most_of_its_range():
    # 10,000 stitches of half a cm take 200 m, which are 100 g, and at most 105
    made = needed(Work(plain=10_000))
    assert (made.grams.likely, made.grams.high, made.balls) == (100, 105, 3)


def test_each_strand_is_bought_in_balls_of_its_own():
    thick, thin = Strand(metres=Fraction(100), grams=Fraction(50)), Strand(metres=Fraction(210), grams=Fraction(25))
    yarn = Yarn(strands=(thick, thin, Strand(tex=Fraction(100), ball_grams=Fraction(7))))
    made = needed(Work(plain=10_000), yarn)
    # at most 210 m: 105 g in balls of 50; 25 g, which are one ball to the gram; 21 g in balls of 7
    assert [(strand.grams.high, strand.balls) for strand in made.strands] == [(105, 3), (25, 1), (21, 3)]
    assert sum(strand.grams.likely for strand in made.strands) == made.grams.likely
    assert made.balls == 3
