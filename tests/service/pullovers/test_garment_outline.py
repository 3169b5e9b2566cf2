"""The outline of a size, against its finished measurements."""

from fractions import Fraction
from math import cos, dist, pi, sin

import pytest

from grading_core.gauge import Gauge
from grading_core.pullover.grade import grade_pullover
from grading_core.pullover.request import Gauges, PulloverRequest
from service.representations.pictures.schematic.outline import outline, sleeve_angle


@pytest.fixture(scope="module")
def size():
    gauge = Gauge.over(Fraction(22), Fraction(31), Fraction(10))
    return grade_pullover(PulloverRequest(gauges=Gauges(gauge), labels=("M",))).sizes[0].outcome


def test_a_sleeve_is_as_long_and_wide_as_it_measures(size):
    shape, finished = outline(size), size.finished
    (top, wide), (end, narrow) = shape.sleeve[0], shape.sleeve[-1]
    assert dist(shape.on_sleeve(top, 0), shape.on_sleeve(end, 0)) == pytest.approx(float(finished.sleeve_length))
    assert dist(shape.on_sleeve(0, 0), shape.on_sleeve(0, wide)) == pytest.approx(float(finished.upper_arm) / 2)
    assert dist(shape.on_sleeve(end, 0), shape.on_sleeve(end, narrow)) == pytest.approx(float(finished.wrist) / 2)


def test_a_sleeve_begins_at_the_underarm(size):
    shape = outline(size)
    assert shape.on_sleeve(0, shape.sleeve[0][1]) == pytest.approx(shape.underarm)


def test_the_outline_is_the_same_on_both_sides(size):
    points = {(round(x, 6), round(y, 6)) for x, y in outline(size).silhouette}
    assert {(-x, y) for x, y in points} == points


def test_the_raglan_line_leaves_half_of_the_underarm_to_the_side(size):
    shape = outline(size)
    assert dist(shape.raglan, shape.underarm) == pytest.approx(float(size.finished.underarm) / 2)


def test_a_sleeves_top_lies_beside_the_front_at_the_neck():
    run, depth, upper_arm, top = -5, 10, 5, 3
    angle = sleeve_angle(run, depth, upper_arm, top)
    # from the underarm across to the fold, and up along it to the neck
    fold = upper_arm * cos(angle) - depth * sin(angle), upper_arm * sin(angle) + depth * cos(angle)
    assert dist(fold, (run, depth)) == pytest.approx(top)
    assert fold[0] > run


def test_a_sleeve_spreads_at_least_by_30_degrees_and_at_most_by_72():
    assert sleeve_angle(-1, 30, 1, 5) == pytest.approx(pi / 6)
    assert sleeve_angle(-30, 5, 30, 0) == pytest.approx(pi * 72 / 180)
