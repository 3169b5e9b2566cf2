from __future__ import annotations

from fractions import Fraction

from hypothesis import given
from hypothesis import strategies as st

from grading_core.yarn.amounts import balls, estimated, measured


def test_a_swatch_of_the_garments_own_stitches_weighs_what_it_weighs():
    assert measured(240, Fraction(4), 240).likely == 4


def test_an_estimate_reaches_a_twentieth_to_either_side():
    amount = estimated(20000, Fraction(10, 22), Fraction(240))
    assert amount.low / amount.likely == Fraction(95, 100)
    assert amount.high / amount.likely == Fraction(105, 100)


@given(st.integers(1, 3000), st.integers(1, 200), st.integers(0, 50))
def test_the_balls_hold_the_amount_with_its_margin_and_one_ball_less_does_not(grams, ball, percent):
    needed = Fraction(grams * (100 + percent), 100)
    bought = balls(measured(grams, Fraction(1), 1), Fraction(ball), Fraction(percent, 100))
    assert bought * ball >= needed > (bought - 1) * ball


def test_balls_for_an_estimate_hold_the_most_of_its_range():
    amount = estimated(10000, Fraction(1, 2), Fraction(200))  # 100 g, at most 105 g
    assert (amount.likely, balls(amount, Fraction(50))) == (100, 3)
