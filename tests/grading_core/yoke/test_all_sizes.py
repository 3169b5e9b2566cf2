"""The yokes of every size in one go."""

from dataclasses import replace
from fractions import Fraction

import pytest

from grading_core.errors import ContradictionError, Impossible
from grading_core.gauge import Gauge
from grading_core.sections import IncreaseRound, Sections
from grading_core.yoke.adjustment import Adjustment
from grading_core.yoke.all_sizes import YokeRequest, raglan_schedules, yoke_adjustments
from grading_core.yoke.schedule import Options, Schedule

GAUGE = Gauge.over(Fraction(22), Fraction(31), Fraction(10))
SMALL = YokeRequest(label="S", neck=Sections(34, 34, 12), split=Sections(74, 74, 44), rounds=50)
LARGE = YokeRequest(label="L", neck=Sections(36, 36, 12), split=Sections(88, 88, 52), rounds=60)


def problems(call, *arguments):
    with pytest.raises(ContradictionError) as refused:
        call(GAUGE, Options(), *arguments)
    return [problem.path for problem in refused.value.problems]


def test_a_depth_becomes_the_nearest_rounds_and_is_told_what_it_misses_by():
    # 16.1 x 3.1 = 49.91; 50 / 3.1 = 16.129
    (size,) = raglan_schedules(
        GAUGE, Options(), [replace(SMALL, rounds=None, depth_cm=Fraction("16.1"))]
    ).sizes
    assert (size.yoke.rounds, size.depth_cm) == (50, Fraction(500, 31))
    assert size.difference_cm == Fraction(500, 31) - Fraction("16.1")


def test_rounds_that_were_asked_for_miss_nothing():
    (size,) = raglan_schedules(GAUGE, Options(), [SMALL]).sizes
    assert (size.yoke.rounds, size.difference_cm) == (50, None)


def test_an_impossible_size_leaves_the_others_their_schedules():
    # 20 body increases in every second round need 40 rounds
    tight, roomy = raglan_schedules(
        GAUGE, Options(double_body="never"), [replace(SMALL, rounds=39), LARGE]
    ).sizes
    assert isinstance(tight.schedule, Impossible)
    assert isinstance(roomy.schedule, Schedule)


def test_size_runs_are_told_of_several_sizes_and_not_of_one():
    # 10 increases at every edge in 20 rounds, and 12 in 24
    small = replace(SMALL, split=Sections(54, 54, 32), rounds=20)
    large = replace(LARGE, split=Sections(60, 60, 36), rounds=24)
    assert raglan_schedules(GAUGE, Options(), [small]).instructions == ()
    assert raglan_schedules(GAUGE, Options(), [small, large]).instructions[1:] == (
        "Increase 1 stitch at each body edge and each sleeve edge (8 more) every 2nd round 10 (12) times.",
    )


def test_every_wrong_place_is_named():
    wrong = [
        replace(SMALL, rounds=0),
        replace(SMALL, label="M", rounds=5001),
        replace(SMALL, split=Sections(75, 74, 10)),
    ]
    assert problems(raglan_schedules, wrong) == [
        ("sizes", 2, "label"),
        ("sizes", 0, "depth"),
        ("sizes", 1, "depth"),
        ("sizes", 2, "split", "back"),
        ("sizes", 2, "split", "sleeve"),
    ]


def test_all_sizes_together_have_at_most_20000_rounds():
    sizes = [replace(SMALL, label=str(place), rounds=5000) for place in range(5)]
    assert len(raglan_schedules(GAUGE, Options(), sizes[:4]).sizes) == 4
    assert problems(raglan_schedules, sizes) == [("sizes",)]


def test_a_sizes_own_change_comes_before_that_of_the_request():
    first, second = yoke_adjustments(
        GAUGE,
        Options(),
        [replace(SMALL, change=Adjustment(rounds=55)), LARGE],
        Adjustment(rounds_change=4),
    )
    assert {way.rounds for way in first.ways} == {55}
    assert {way.rounds for way in second.ways} == {64}


def test_an_adjustment_needs_a_change_for_every_size():
    sizes = [replace(SMALL, change=Adjustment(rounds=55)), LARGE]
    assert problems(yoke_adjustments, sizes) == [("sizes", 1, "adjust")]


def test_a_change_to_too_many_rounds_is_named_where_it_was_sent():
    deep = Adjustment(rounds=5001)
    assert problems(yoke_adjustments, [replace(SMALL, change=deep)]) == [("sizes", 0, "adjust")]
    assert problems(yoke_adjustments, [SMALL], deep) == [("adjust",)]


def test_written_increase_rounds_must_lead_from_neck_to_split_at_every_edge():
    # 20 times at back and front and 16 times at the sleeves
    written = tuple(IncreaseRound(number, 1, 1, int(number <= 32)) for number in range(2, 40, 2))
    change = Adjustment(rounds=50)
    assert (
        problems(yoke_adjustments, [replace(SMALL, increase_rounds=written)], change)
        == [("sizes", 0, "increase_rounds")] * 2
    )
    whole = (*written, IncreaseRound(40, 1, 1, 0))
    (adjusted,) = yoke_adjustments(GAUGE, Options(), [replace(SMALL, increase_rounds=whole)], change)
    assert adjusted.before.increase_rounds == whole
