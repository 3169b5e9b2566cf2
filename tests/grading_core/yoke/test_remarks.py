from __future__ import annotations

from dataclasses import replace
from fractions import Fraction

import pytest

from grading_core.sections import IncreaseRound, Sections
from grading_core.yoke.adjustment import adjust
from grading_core.yoke.remarks import adjustment_remarks, early_end_remarks, streak_remarks
from grading_core.yoke.request import Adjustment, Options, WrittenYoke, Yoke
from grading_core.yoke.schedule import schedule
from tests.grading_core.yoke.random_yokes import GAUGE

YOKE = Yoke("S", 71, Sections(34, 34, 12), Sections(82, 82, 50))
"""24 increases at each body edge and 19 at each sleeve edge."""


def codes(remarks):
    return [remark.code for remark in remarks]


def adjusted(written, **how):
    return adjust(written, Adjustment(**how), Options(), GAUGE)


def test_body_increases_that_end_more_than_a_fifth_of_the_yoke_above_the_split_are_said():
    # every 2nd round 24 times ends with round 48: 23 of 71 rounds are left
    options = Options(spacing="single_then_plain")
    (remark,) = early_end_remarks(schedule(YOKE, options, GAUGE), options)
    assert (remark.code, remark.size) == ("increases_end_early", "S")
    # 23 rounds of 10 / 31 cm
    assert remark.message.values == {"straight": 23, "length": Fraction(230, 31), "rounds": 71, "mend": "wider"}


@pytest.mark.parametrize(
    ("rounds", "said"),
    # 48 rounds and 12 or 13 more, on the grid in one interval: 12 are a fifth of 60
    [(60, False), (61, True)],
)
def test_a_fifth_of_the_yoke_itself_is_not_said(rounds, said):
    options = Options(spacing="single_then_plain")
    made = schedule(replace(YOKE, rounds=rounds), options, GAUGE)
    assert bool([*early_end_remarks(made, options)]) == said


def test_plain_rounds_that_are_asked_for_are_not_said():
    options = Options(spacing="single_then_plain", plain_rounds_at_end=22)
    assert not [*early_end_remarks(schedule(YOKE, options, GAUGE), options)]


def test_where_the_sleeves_go_on_the_body_is_to_go_with_them():
    # 6 body increases, early among the 19 rounds of the sleeves: the last in round 20 or so of 71
    yoke = replace(YOKE, split=Sections(46, 46, 50))
    (remark,) = early_end_remarks(schedule(yoke, Options(), GAUGE), Options())
    assert remark.message.values["mend"] == "with_sleeves"
    assert not [*early_end_remarks(schedule(yoke, Options(fewer_edge="late"), GAUGE), Options())]


def test_a_body_without_increases_has_none_that_end_early():
    straight = replace(YOKE, split=Sections(34, 34, 50))
    assert not [*early_end_remarks(schedule(straight, Options(), GAUGE), Options())]


@pytest.mark.parametrize(("in_a_row", "said"), [(8, False), (9, True)])
def test_more_than_eight_increase_rounds_in_a_row_are_said(in_a_row, said):
    split = Sections(34 + 2 * in_a_row, 34 + 2 * in_a_row, 12)
    made = schedule(replace(YOKE, rounds=in_a_row, split=split), Options(step=1), GAUGE)
    remarks = [*streak_remarks(made, ("yoke", "depth"))]
    assert codes(remarks) == ["many_increase_rounds_in_a_row"] * said
    assert all((remark.size, remark.message.values["streak"]) == ("S", 9) for remark in remarks)
    assert all(remark.path == ("yoke", "depth") for remark in remarks)


def test_doubling_that_doubles_nothing_is_the_closer_schedule_and_said_to_be():
    # 25 rounds on the grid of 50 hold all 24 increases
    found = adjusted(WrittenYoke(YOKE), rounds=50)
    assert codes(adjustment_remarks(found)) == ["double_body_equals_closer"]
    assert found.options[2].schedule.increase_rounds == found.options[3].schedule.increase_rounds


def test_doubling_that_doubles_is_another_schedule():
    # 21 rounds on the grid of 42: 3 of 24 body increases are doubled
    assert not [*adjustment_remarks(adjusted(WrittenYoke(YOKE), rounds=42))]


def test_a_recommended_way_with_increases_in_every_round_is_said_with_their_number():
    # 31 increases at every edge in 31 rounds: nothing but every round is left
    yoke = Yoke("S", 62, Sections(34, 34, 12), Sections(96, 96, 74))
    found = adjusted(WrittenYoke(yoke), rounds=31)
    assert found.recommended == "closer"
    (remark,) = adjustment_remarks(found)
    assert (remark.code, remark.size) == ("many_increase_rounds_in_a_row", "S")
    assert (remark.message.values["streak"], remark.message.values["room"]) == (31, "deeper")


def test_a_way_with_a_shorter_streak_is_taken_where_one_is_feasible():
    # body and sleeve take turns, each 20 times in rounds 21 to 60: spaced closer, 40 increase rounds are in 58; worked
    # together, 20 of them have room
    turns = [IncreaseRound(number, *((1, 1, 0) if number % 2 else (0, 0, 1))) for number in range(21, 61)]
    yoke = Yoke("S", 62, Sections(34, 34, 12), Sections(74, 74, 52))
    found = adjusted(WrittenYoke(yoke, tuple(turns)), rounds=58)
    assert found.options[2].schedule.consecutive_increase_rounds > 8
    assert found.recommended == "double_body"
    assert not [*adjustment_remarks(found)]
