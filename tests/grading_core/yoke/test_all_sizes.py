from dataclasses import replace
from fractions import Fraction

import pytest

from grading_core.errors import ContradictionError, Impossible
from grading_core.limits import MAX_ROUNDS, MAX_ROUNDS_IN_ALL
from grading_core.sections import IncreaseRound, Increases
from grading_core.yoke.all_sizes import MOST_WAYS, raglan_schedules, yoke_adjustments
from grading_core.yoke.request import (
    Adjustment,
    Options,
    RaglanRequest,
    WrittenYokeRequest,
    YokeAdjustmentRequest,
    YokeRequest,
)
from tests.grading_core.yoke.random_yokes import GAUGE, NECK
from tests.oracles.told import ids, told_each, work_yoke


def size(label: str, rounds: int = 20, increases: Increases = (5, 5, 3)) -> YokeRequest:
    return YokeRequest(label=label, neck=NECK, split=NECK.after(increases), rounds=rounds)


def written(label: str, rounds: int = 20, **more: object) -> WrittenYokeRequest:
    return WrittenYokeRequest(label=label, neck=NECK, split=NECK.after((5, 5, 3)), rounds=rounds, **more)


def wrong_places(request: RaglanRequest | YokeAdjustmentRequest) -> list[tuple[str | int, ...]]:
    compute = raglan_schedules if isinstance(request, RaglanRequest) else yoke_adjustments
    with pytest.raises(ContradictionError) as error:
        compute(request)
    return [problem.path for problem in error.value.problems]


# Schedules


def test_a_size_that_is_impossible_leaves_the_others_as_they_are() -> None:
    both = raglan_schedules(RaglanRequest(GAUGE, (size("S"), size("M", rounds=4))))
    assert isinstance(both.sizes[1].schedule, Impossible)
    assert both.sizes[0] == raglan_schedules(RaglanRequest(GAUGE, (size("S"),))).sizes[0]


def test_a_depth_is_compared_with_what_its_rounds_come_to_and_rounds_with_nothing() -> None:
    deep = replace(size("S"), rounds=None, depth_cm=Fraction(10))
    by_depth, by_rounds = raglan_schedules(RaglanRequest(GAUGE, (deep, size("M")))).sizes
    assert (by_depth.yoke.rounds, by_depth.difference_cm) == (31, 0)
    assert by_rounds.difference_cm is None


def test_size_runs_have_one_value_per_size_and_a_dash_for_an_impossible_one() -> None:
    sizes = (size("S"), size("M", rounds=4), size("L", increases=(7, 7, 4)))
    runs = raglan_schedules(RaglanRequest(GAUGE, sizes, Options(line_stitches=2))).runs
    assert (runs.rounds, runs.body_increases, runs.sleeve_increases) == (
        "20 (\u2013, 20)",
        "5 (\u2013, 7)",
        "3 (\u2013, 4)",
    )
    # 34 + 36 + 2 x 11 stitches and four lines of two; then 2 x 5 + 2 x 5 + 4 x 3 more
    assert (runs.neck_stitches, runs.split_stitches) == ("100 (\u2013, 100)", "132 (\u2013, 144)")
    assert runs.back_increases is runs.front_increases is None


def test_one_size_whose_front_differs_gives_runs_of_back_and_front() -> None:
    sizes = (size("S"), size("M", increases=(6, 5, 3)))
    runs = raglan_schedules(RaglanRequest(GAUGE, sizes)).runs
    assert (runs.body_increases, runs.back_increases, runs.front_increases) == (None, "5 (6)", "5")


def test_one_size_alone_has_no_instructions_with_size_runs() -> None:
    assert raglan_schedules(RaglanRequest(GAUGE, (size("S"),))).instructions == ()
    assert raglan_schedules(RaglanRequest(GAUGE, (size("S"), size("M")))).instructions


def test_the_instructions_of_all_sizes_lead_each_to_its_split_and_pass_over_an_impossible_one() -> None:
    sizes = (size("S"), size("M", rounds=4), size("L", rounds=24, increases=(7, 7, 4)))
    made = raglan_schedules(RaglanRequest(GAUGE, sizes, Options(line_stitches=2)))
    told = told_each(made.instructions, ["S", "M", "L"])
    for label, rounds, split in (("S", 20, 132), ("L", 24, 144)):
        worked, last = work_yoke(told[label], NECK, 2)
        assert last == rounds
        # a full round adds 8 stitches to the 100 of the neck, one at the body edges alone 4
        assert 100 + sum(2 * (each.back + each.front) + 4 * each.sleeve for each in worked) == split
    assert {*ids(told["M"])} == {"yoke.lines", "yoke.leaning"}


def test_two_increases_at_an_edge_are_explained_where_any_size_has_them() -> None:
    sizes = (size("S"), size("M", rounds=8, increases=(6, 6, 4)))
    made = raglan_schedules(RaglanRequest(GAUGE, sizes, Options(double_body="if_needed")))
    assert [each.schedule.doubled_rounds > 0 for each in made.sizes] == [False, True]
    assert ids(made.instructions)[:3] == ["yoke.lines", "yoke.leaning", "yoke.doubled"]


def test_every_wrong_place_is_named_at_once() -> None:
    none = replace(size("M"), rounds=None, depth_cm=Fraction(1, 100))
    odd = replace(size("S"), split=replace(NECK, back=NECK.back + 1))
    assert wrong_places(RaglanRequest(GAUGE, (size("S"), none, odd))) == [
        ("sizes", 2, "label"),
        ("sizes", 1, "depth"),
        ("sizes", 2, "split", "back"),
    ]


def test_all_sizes_together_have_a_limit() -> None:
    most = MAX_ROUNDS_IN_ALL // MAX_ROUNDS
    sizes = tuple(size(str(place), rounds=MAX_ROUNDS) for place in range(most))
    assert len(raglan_schedules(RaglanRequest(GAUGE, sizes)).sizes) == most
    assert wrong_places(RaglanRequest(GAUGE, (*sizes, size("one more")))) == [("sizes",)]


# Adjustments


def test_a_size_takes_its_own_adjustment_before_that_of_the_request() -> None:
    sizes = (written("S"), written("M", adjust=Adjustment(rounds=30)))
    adjusted = yoke_adjustments(YokeAdjustmentRequest(gauge=GAUGE, sizes=sizes, adjust=Adjustment(rounds=25))).sizes
    assert [each.options[0].rounds for each in adjusted] == [25, 30]
    assert [each.options[0].chart_rows_change for each in adjusted] == [5, 10]


def test_a_size_without_any_adjustment_is_named() -> None:
    sizes = (written("S", adjust=Adjustment(rounds=30)), written("M"))
    assert wrong_places(YokeAdjustmentRequest(gauge=GAUGE, sizes=sizes)) == [("sizes", 1, "adjust")]


def test_an_adjustment_to_too_many_rounds_is_named_where_it_stands() -> None:
    beyond = Adjustment(rounds=MAX_ROUNDS + 1)
    sizes = (written("S"), written("M", adjust=beyond))
    assert wrong_places(YokeAdjustmentRequest(gauge=GAUGE, sizes=sizes, adjust=Adjustment(rounds=30))) == [
        ("sizes", 1, "adjust")
    ]
    assert wrong_places(YokeAdjustmentRequest(gauge=GAUGE, sizes=sizes[:1], adjust=beyond)) == [("adjust",)]


def test_an_adjusted_yoke_counts_its_rounds_as_written_and_once_for_each_way_that_may_be_possible() -> None:
    each = MAX_ROUNDS_IN_ALL // (1 + MOST_WAYS) // 2
    sizes = (written("S", rounds=each), written("M", rounds=each))
    same = YokeAdjustmentRequest(gauge=GAUGE, sizes=sizes, adjust=Adjustment(rounds_change=0))
    assert len(yoke_adjustments(same).sizes) == 2
    assert wrong_places(replace(same, adjust=Adjustment(rounds_change=1))) == [("sizes",)]


def test_increase_rounds_that_lead_elsewhere_are_refused_with_all_else_that_is_wrong() -> None:
    sizes = (written("S", increase_rounds=(IncreaseRound(2, 1, 1, 1),)), written("S"))
    assert wrong_places(YokeAdjustmentRequest(gauge=GAUGE, sizes=sizes)) == [
        ("sizes", 1, "label"),
        *[("sizes", 0, "increase_rounds")] * 3,
        ("sizes", 0, "adjust"),
        ("sizes", 1, "adjust"),
    ]


def test_the_difference_is_the_adjusted_depth_minus_the_depth_wanted() -> None:
    sizes = (written("S", adjust=Adjustment(depth_cm=Fraction(10))), written("M"))
    request = YokeAdjustmentRequest(gauge=GAUGE, sizes=sizes, adjust=Adjustment(rounds=25))
    by_depth, by_rounds = yoke_adjustments(request).sizes
    assert [way.difference_cm for way in by_depth.options] == [0] * 4
    assert [way.difference_cm for way in by_rounds.options] == [None] * 4
