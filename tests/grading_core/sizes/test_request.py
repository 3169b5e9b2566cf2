from fractions import Fraction

from grading_core.sizes.request import EvenSteps, per_size


def test_ease_may_be_one_number_one_per_size_or_even_steps():
    assert per_size(Fraction(5), 3) == (5, 5, 5)
    assert per_size((Fraction(1), Fraction(2)), 2) == (1, 2)
    assert per_size(EvenSteps(Fraction(20), Fraction(25)), 3) == (20, Fraction("22.5"), 25)
