from fractions import Fraction

from grading_core.yarn.request import Strand


def test_a_label_of_another_weight_comes_to_metres_per_100_grams():
    # 175 m in a ball of 50 g are 350 m in 100 g; a label without a weight tells 100 g
    assert Strand(Fraction(175), Fraction(50)).metres_per_100g == 350
    assert Strand(Fraction(350)).metres_per_100g == 350
