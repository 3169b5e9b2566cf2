from __future__ import annotations

import pytest

from grading_core.chart.layout import WORKING_ORDER
from grading_core.parts.underarm import Underarm, any_seams, seam_run, sides_words, start_words
from grading_core.printing import DASH


@pytest.mark.parametrize(("stitches", "seam"), [(15, 3), (14, 0), (15, 1), (8, 4), (9, 9)])
def test_a_round_ends_with_the_seam_stitches_in_the_middle(stitches, seam):
    # drawn stitch by stitch: as many beside the seam on either side, and the start behind it, as a chart's rounds have
    # it, which end with their seam
    side = (stitches - seam) // 2
    drawn = "-" * side + "s" * seam + "|" + "-" * side
    assert Underarm(stitches, seam).before_start == drawn.index("|")
    assert all(order[-1] == "seam" for part, order in WORKING_ORDER.items() if part != "yoke")


def test_an_odd_underarm_without_a_seam_starts_behind_its_middle_stitch():
    assert Underarm(7, 0).before_start == 4


def test_sizes_with_and_without_a_seam_are_told_apart():
    sizes = [Underarm(15, 1), Underarm(16, 0), None]
    assert start_words(sizes, "the underarm") == (
        f"8 (8, {DASH}) stitches after the beginning of the underarm, behind its 1 (0, {DASH}) seam stitches"
    )
    assert sides_words(sizes, "the seam", "the marker").endswith("of the seam, or of the marker where there are none")
    assert any_seams(sizes)
    assert seam_run([Underarm(15, 3)]) == "3 seam stitches"


def test_where_the_underarm_is_not_known_its_middle_is_said():
    assert start_words([None], "the underarm") == "in the middle of the underarm"
    assert sides_words([], "the seam", "the marker") == "on either side of the marker"
