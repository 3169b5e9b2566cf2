from __future__ import annotations

import pytest

from grading_core.chart.layout import WORKING_ORDER
from grading_core.parts.sleeve import SEAM_PURL
from grading_core.parts.underarm import Underarm, any_seams, purled_seams, seam_run, shaped_at, start_place


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


def test_sizes_with_and_without_a_seam_are_told_apart_and_a_size_that_is_not_told_has_nothing():
    sizes = [Underarm(15, 1), Underarm(16, 0), None]
    assert start_place(sizes) == {"before": (8, 8, None), "seams": "all", "seam": (1, 0, None)}
    assert shaped_at(sizes) == "either"
    assert any_seams(sizes)
    assert seam_run(sizes) == (1, 0, None)


@pytest.mark.parametrize(
    ("underarms", "at"),
    [
        ([Underarm(15, 1), None, Underarm(17, 3)], "seam"),
        ([Underarm(16, 0), None], "marker"),
        ([None, Underarm(16, 0), Underarm(15, 1)], "either"),
        ([], "marker"),
    ],
)
def test_shaping_is_worked_around_the_seam_stitches_or_a_marker(underarms, at):
    assert shaped_at(underarms) == at


def test_sizes_without_a_seam_are_told_none():
    assert start_place([Underarm(16, 0), Underarm(7, 0)]) == {"before": (8, 4), "seams": "none", "seam": (0, 0)}
    assert not any_seams([Underarm(16, 0), None])


def test_purled_seams_are_told_in_the_sizes_that_have_some():
    sizes = [Underarm(15, 1, purled=True), Underarm(16, 0, purled=True), None]
    (told,) = purled_seams(SEAM_PURL, sizes)
    assert dict(told.values) == {"seam": (1, None, None)}
    assert [*purled_seams(SEAM_PURL, [Underarm(15, 1)])] == []
