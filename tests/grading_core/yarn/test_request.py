"""Strands and yarns. Units: tex, ISO 1144; the metric count Nm, metres per gram (textile reference texts)."""

from fractions import Fraction

import pytest

from grading_core.yarn.request import Strand, Yarn

BALL = Fraction(50)


@pytest.mark.parametrize(
    "strand",
    [
        Strand(metres=Fraction(200), grams=Fraction(50)),
        Strand(metres=Fraction(400)),  # a label without a weight tells 100 g
        Strand(metres_per_100g=Fraction(400)),
        Strand(tex=Fraction(250)),
        Strand(nm=Fraction(4)),
    ],
)
def test_all_ways_to_tell_a_strands_thickness_agree(strand):
    assert strand.linear_density == 250
    assert Yarn(strands=(strand,)).linear_density == 250


def test_the_thickness_of_all_strands_is_told_in_one_way_or_strand_by_strand():
    strands = (Strand(metres=Fraction(400)), Strand(tex=Fraction(250)))
    assert Yarn(strands=strands).linear_density == Yarn(metres_per_100g=Fraction(200)).linear_density == 500


@pytest.mark.parametrize(
    ("yarn", "strand", "grams"),
    [
        (Yarn(ball_grams=Fraction(100)), Strand(metres=Fraction(210), grams=Fraction(25), ball_grams=BALL), 50),
        (Yarn(ball_grams=Fraction(100)), Strand(metres=Fraction(210), grams=Fraction(25)), 100),
        (Yarn(), Strand(metres=Fraction(210), grams=Fraction(25)), 25),
        (Yarn(), Strand(metres=Fraction(400)), 100),
        (Yarn(), Strand(tex=Fraction(250)), 50),
        (Yarn(), Strand(nm=Fraction(4)), 50),
        (Yarn(), Strand(metres_per_100g=Fraction(400)), 50),
    ],
)
def test_a_ball_is_the_strands_own_or_the_yarns_or_what_the_label_tells_or_the_usual_one(yarn, strand, grams):
    # 50 g is common practice, no source
    assert yarn.ball_of(strand) == grams
