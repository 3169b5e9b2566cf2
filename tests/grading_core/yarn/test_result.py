from fractions import Fraction

from grading_core.printing import DASH
from grading_core.yarn.result import Amount, Contrast, Need, SizeNeeds, YarnEstimates


def need(yarn: str, balls: int) -> Need:
    nothing = Amount(Fraction(0), Fraction(0), Fraction(0), "measured")
    return Need(yarn=yarn, stitches=0, grams=nothing, metres=Fraction(0), balls=balls)


def test_balls_are_told_as_a_size_run_with_a_dash_where_a_size_has_none_of_a_yarn():
    sizes = (SizeNeeds("S", (need("oat", 5),)), SizeNeeds("M", (need("oat", 6), need("kelp", 1))))
    assert YarnEstimates(sizes, (), ()).runs == {"oat": "5 (6)", "kelp": f"{DASH} (1)"}


def test_a_contrast_is_how_far_two_lightnesses_lie_apart_whichever_is_the_lighter():
    assert Contrast(("a", "b"), (Fraction(20), Fraction(75))).difference == 55
    assert Contrast(("b", "a"), (Fraction(75), Fraction(20))).difference == 55
