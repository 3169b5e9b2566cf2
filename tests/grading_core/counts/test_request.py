from grading_core.counts.request import Rules
from grading_core.yoke.request import Options


def test_a_lines_stitches_are_shared_between_body_and_sleeve():
    assert Rules(line_to_body=1, yoke=Options(line_stitches=3)).line_to_sleeve == 2


def test_an_underarm_less_its_seam_is_even():
    assert [count for count in range(10) if Rules(seam_stitches=3).underarm.accepts(count)] == [1, 3, 5, 7, 9]
    assert [count for count in range(5) if Rules(seam_stitches=0).underarm.accepts(count)] == [0, 2, 4]
    assert all(Rules().underarm.accepts(count) for count in range(10))
