from fractions import Fraction

from grading_core.counts.request import QUANTITIES, Rules, Targets
from grading_core.yoke.request import Options


def test_a_lines_stitches_are_shared_between_body_and_sleeve():
    assert Rules(line_to_body=1, yoke=Options(line_stitches=3)).line_to_sleeve == 2


def test_an_underarm_less_its_seam_is_even():
    assert [count for count in range(10) if Rules(seam_stitches=3).underarm.accepts(count)] == [1, 3, 5, 7, 9]
    assert [count for count in range(5) if Rules(seam_stitches=0).underarm.accepts(count)] == [0, 2, 4]
    assert all(Rules().underarm.accepts(count) for count in range(10))


def test_the_front_has_an_even_number_more_than_half_the_nearest_to_half_the_extra():
    weighed = dict.fromkeys(QUANTITIES, Fraction(1))
    shares = [Targets(label="M", **weighed, front_extra=Fraction(extra)).front_share for extra in (0, 1, 2, 5, 6, 9)]
    # 0, 0.5, 1, 2.5, 3 and 4.5 stitches; a tie goes up
    assert shares == [0, 0, 2, 2, 4, 4]
