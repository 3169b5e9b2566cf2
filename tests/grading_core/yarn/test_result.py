from fractions import Fraction

from grading_core.printing import DASH
from grading_core.yarn.result import Estimate, Need, SizeNeeds, StrandNeed, YarnEstimates

NOTHING = Estimate.of(Fraction(0))


def need(yarn: str, *balls: int) -> Need:
    strands = tuple(
        StrandNeed(strand=place, name=None, grams=NOTHING, ball_grams=Fraction(50), balls=each)
        for place, each in enumerate(balls, 1)
    )
    return Need(
        yarn=yarn,
        stitches=0,
        basis="measured",
        likely_metres=Fraction(0),
        metres_for={},
        grams=NOTHING,
        tex=Fraction(1),
        strands=strands,
    )


def test_balls_are_told_as_a_size_run_with_a_dash_where_a_size_has_none_of_a_yarn():
    sizes = (SizeNeeds("S", (need("oat", 5),)), SizeNeeds("M", (need("oat", 6), need("kelp", 1))))
    assert YarnEstimates(sizes, ()).runs == {"oat": "5 (6)", "kelp": f"{DASH} (1)"}


def test_a_yarns_balls_are_those_of_its_first_strand():
    assert need("oat", 5, 2).balls == 5


def test_the_least_the_likely_and_the_most_are_reckoned_each_for_itself():
    one, other = Estimate(*map(Fraction, (1, 2, 4))), Estimate(*map(Fraction, (3, 5, 7)))
    assert one.times_each(other) == (3, 10, 28)
