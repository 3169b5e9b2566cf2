from fractions import Fraction

import pytest

from grading_core.yarn.request import Strand, Yarn


def test_a_label_of_another_weight_comes_to_metres_per_100_grams():
    # 175 m in a ball of 50 g are 350 m in 100 g; a label without a weight tells 100 g
    assert Strand(Fraction(175), Fraction(50)).metres_per_100g == 350
    assert Strand(Fraction(350)).metres_per_100g == 350


@pytest.mark.parametrize(
    ("grams", "stitches", "lacking"),
    [(None, None, None), (10, 1000, None), (10, None, "swatch_stitches"), (None, 1000, "swatch_grams")],
)
def test_half_a_swatch_is_told_by_what_it_lacks(grams, stitches, lacking):
    yarn = Yarn(
        metres_per_100g=Fraction(200), swatch_grams=None if grams is None else Fraction(grams), swatch_stitches=stitches
    )
    problem = yarn.half_a_swatch()
    assert (problem.path if problem else None) == (None if lacking is None else (lacking,))
