"""The steps of a yoke's sections, against yokes counted by hand and increases added up one round after the other."""

import itertools
from fractions import Fraction

import pytest

from grading_core.gauge import Gauge
from grading_core.pullover.grade import grade_pullover
from grading_core.pullover.request import Gauges, NeckWishes, PulloverRequest
from grading_core.pullover.yoke_stitches import doubled_rounds, yoke_stitches

GAUGE = Gauge.over(Fraction(22), Fraction(31), Fraction(10))


@pytest.fixture(scope="module", params=["short_rows", "front_drop"])
def size(request):
    neck = NeckWishes(lower_front=request.param)
    pullover = grade_pullover(PulloverRequest(gauges=Gauges(GAUGE), labels=("XS", "5X"), neck=neck))
    return pullover.sizes[-1].outcome


def test_a_section_starts_and_ends_as_it_is_cast_on_and_divided(size):
    steps = yoke_stitches(size)
    assert [steps[name][0] for name in ("back", "sleeve")] == [(0, size.counts.neck.back), (0, size.counts.neck.sleeve)]
    split = size.counts.split
    assert [steps[name][-1].stitches for name in ("back", "front", "sleeve")] == [split.back, split.front, split.sleeve]


def test_every_step_changes_the_stitches(size):
    for steps in yoke_stitches(size).values():
        assert all(before.round < after.round for before, after in itertools.pairwise(steps))
        assert all(before.stitches < after.stitches for before, after in itertools.pairwise(steps))


def test_a_front_that_is_cast_on_lower_begins_with_its_two_ends(size):
    drop = size.neck.drop
    first = yoke_stitches(size)["front"][0].stitches
    assert first == (2 * drop.each_side if drop else size.counts.neck.front)


def test_doubled_rounds_have_four_stitches_more_in_the_back(size):
    steps = yoke_stitches(size)["back"]
    fours = [after.round for before, after in itertools.pairwise(steps) if after[1] - before[1] == 4]
    assert fours == list(doubled_rounds(size))
    assert fours
