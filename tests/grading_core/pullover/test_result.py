from fractions import Fraction

from grading_core.pullover.result import Measured, Row
from grading_core.wording import DASH


def test_a_run_has_counts_as_they_are_centimetres_to_the_nearest_half_and_a_dash_for_nothing():
    assert Row("cast_on", "stitches", (96, None, 104)).run == f"96 ({DASH}, 104)"
    # 91.82 lies nearer to 92 than to 91.5, 91.74 nearer to 91.5, and a tie goes up
    centimetres = tuple(Fraction(text) for text in ("91.82", "91.74", "91.75"))
    assert Row("finished_bust", "cm", centimetres).run == "92 (91.5, 92)"


def test_a_difference_is_finished_minus_target_and_none_where_nothing_was_asked():
    assert Measured(Fraction(91), Fraction(92)).difference_cm == -1
    assert Measured(Fraction(91), None).difference_cm is None
