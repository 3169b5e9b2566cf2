from __future__ import annotations

from fractions import Fraction
from itertools import pairwise

import pytest
from hypothesis import assume, given
from hypothesis import strategies as st

from grading_core.errors import Impossible
from grading_core.gauge import Gauge
from grading_core.parts.ribbing import Rib
from grading_core.parts.sleeve import Sleeve, run_instructions, shape_sleeve
from grading_core.parts.underarm import Underarm
from grading_core.rounding import CountRule
from tests.floors import in_a_hundred_cases
from tests.oracles.told import ids, only, told_alone, told_each, work_edge, work_shaping

GAUGE = Gauge.over(Fraction(22), Fraction(31), Fraction(10))
RIB_GAUGE = Gauge.over(Fraction(24), Fraction(32), Fraction(10))
SPACINGS = st.sampled_from(["closest_first", "widest_first", "even", "single_then_plain", "plain_then_single"])

plans = st.fixed_dictionaries(
    {
        "stitches": st.integers(30, 120),
        "length_cm": st.integers(10, 55).map(Fraction),
        "wrist_cm": st.integers(14, 30).map(Fraction),
        "spacing": SPACINGS,
        "plain_before": st.integers(0, 12),
        "plain_after": st.integers(0, 12),
        "multiple": st.sampled_from([1, 2, 3, 4, 6]),
    }
)


# too short for most decreases
short_plans = st.fixed_dictionaries(
    {
        "stitches": st.integers(60, 120),
        "length_cm": st.integers(8, 18).map(Fraction),
        "wrist_cm": st.integers(14, 20).map(Fraction),
        "spacing": SPACINGS,
        "plain_before": st.integers(0, 12),
        "plain_after": st.integers(0, 12),
        "multiple": st.sampled_from([1, 2, 3, 4, 6]),
    }
)


def planned(stitches, length_cm, wrist_cm, multiple=4, **options) -> Sleeve | Impossible:
    cuff = Rib(gauge=RIB_GAUGE, height_cm=Fraction(5), rule=CountRule(multiple))
    return shape_sleeve(stitches, length_cm=length_cm, gauge=GAUGE, cuff=cuff, wrist_cm=wrist_cm, **options)


@in_a_hundred_cases(60)
@given(plans)
def test_taking_two_in_every_decrease_round_and_adjusting_gives_the_cuff(plan):
    sleeve = planned(**plan)
    assume(isinstance(sleeve, Sleeve))
    on_needle = plan["stitches"]
    for number in range(1, sleeve.rounds + 1):
        on_needle -= 2 * (number in sleeve.decrease_rounds)
    assert sleeve.cuff.before == on_needle
    assert sleeve.cuff.stitches % plan["multiple"] == 0
    # decreases alone reach the cuff, or miss it by the one stitch that parity leaves
    assert 0 <= on_needle - sleeve.cuff.stitches <= 1 or not sleeve.decrease_rounds


@in_a_hundred_cases(15)
@given(st.integers(50, 90), st.integers(6, 10).map(Fraction), SPACINGS)
def test_round_1_which_picks_up_the_underarm_decreases_only_where_every_round_has_to(stitches, length_cm, spacing):
    sleeve = planned(stitches, length_cm, Fraction(16), spacing=spacing)
    assume(isinstance(sleeve, Sleeve))
    assert 1 not in sleeve.decrease_rounds or len(sleeve.decrease_rounds) == sleeve.rounds


@in_a_hundred_cases(50)
@given(plans)
def test_decreases_keep_clear_of_the_plain_rounds_and_use_two_neighbouring_intervals(plan):
    sleeve = planned(**plan)
    assume(isinstance(sleeve, Sleeve) and sleeve.decrease_rounds)
    assert min(sleeve.decrease_rounds) > plan["plain_before"]
    assert max(sleeve.decrease_rounds) <= sleeve.rounds - plan["plain_after"]
    intervals = {later - sooner for sooner, later in pairwise(sleeve.decrease_rounds)}
    assert not intervals or max(intervals) - min(intervals) <= 1


@in_a_hundred_cases(60)
@given(plans)
def test_the_sentences_knitted_as_told_end_with_the_cuff(plan):
    sleeve = planned(**plan)
    assume(isinstance(sleeve, Sleeve))
    told = told_alone(sleeve.instructions())
    worked, last, on_needles = work_shaping(told, "sleeve", plan["stitches"])
    assert worked == [(number, -2) for number in sleeve.decrease_rounds]
    assert (last, on_needles) == (sleeve.rounds, sleeve.cuff.before)
    assert only(told, "sleeve.rounds") == {"rounds": sleeve.rounds, "length": GAUGE.height_cm(sleeve.rounds)}
    assert work_edge(told, on_needles)[:2] == (sleeve.cuff.stitches, sleeve.cuff.rounds)
    # a cuff of 5 cm has 16 rounds of 3.2
    assert only(told, "sleeve.length")["length"] == GAUGE.height_cm(sleeve.rounds) + RIB_GAUGE.height_cm(16)


@in_a_hundred_cases(70)
@given(st.lists(plans, min_size=2, max_size=4), st.sampled_from([1, 2, 4]))
def test_the_sentences_of_all_sizes_knitted_as_told_are_each_its_own_sleeve(plan, multiple):
    sleeves = [planned(**{**each, "multiple": multiple}) for each in plan]
    possible = [sleeve if isinstance(sleeve, Sleeve) else None for sleeve in sleeves]
    assume(any(possible))
    labels = [str(place) for place in range(len(plan))]
    told = told_each(run_instructions(possible, labels), labels)
    for sleeve, each, own in zip(possible, plan, told.values(), strict=True):
        if sleeve is None:
            assert all(not sentence.values or sentence.id == "sleeve.decreases" for sentence in own)
            continue
        worked, last, on_needles = work_shaping(own, "sleeve", each["stitches"])
        assert worked == [(number, -2) for number in sleeve.decrease_rounds]
        assert (last, on_needles) == (sleeve.rounds, sleeve.cuff.before)
        assert work_edge(own, on_needles)[:2] == (sleeve.cuff.stitches, sleeve.cuff.rounds)


@in_a_hundred_cases(50)
@given(short_plans)
def test_an_impossible_sleeve_becomes_possible_by_each_change_that_is_named(plan):
    refused = planned(**plan)
    assume(isinstance(refused, Impossible))
    assert refused.nearest
    for near in refused.nearest:
        assert near.value >= 0
        if near.field == "rounds":
            changed = planned(**plan, minimum_rounds=near.value)
        else:
            changed = planned(**{**plan, near.field: near.value})
        assert isinstance(changed, Sleeve)


@in_a_hundred_cases(50)
@given(short_plans)
def test_one_round_less_than_the_named_rounds_is_still_impossible(plan):
    refused = planned(**plan)
    assume(isinstance(refused, Impossible))
    (rounds,) = [near.value for near in refused.nearest if near.field == "rounds"]
    assert isinstance(planned(**plan, minimum_rounds=rounds - 1), Impossible)


def test_an_odd_difference_leaves_one_stitch_to_the_adjusting_round_and_it_is_told():
    sleeve = planned(67, Fraction(45), Fraction(20))
    assert (sleeve.cuff.before, sleeve.cuff.stitches) == (49, 48)
    assert only(told_alone(sleeve.instructions()), "rib.decrease") == {"many": 1, "stitches": 48}


def test_the_cuff_is_counted_at_the_gauge_of_the_rib_and_the_difference_is_reported():
    sleeve = planned(67, Fraction(45), Fraction(21))
    # 21 cm of 2.4 stitches are 50.4, and the nearest multiple of 4 is 52, which makes 21.67 cm
    assert sleeve.cuff.stitches == 52
    assert sleeve.wrist_difference_cm == Fraction(52) / Fraction(24, 10) - 21


def test_a_wrist_as_wide_as_the_arm_needs_no_decreases():
    sleeve = planned(48, Fraction(45), Fraction(20), plain_before=500)
    assert (sleeve.decrease_rounds, sleeve.cuff.change) == ((), 0)


def test_a_wrist_wider_than_the_arm_is_reached_by_the_adjusting_round_alone():
    sleeve = planned(40, Fraction(45), Fraction(20))
    assert (sleeve.decrease_rounds, sleeve.cuff.change) == ((), 8)


def test_another_length_moves_the_decreases_and_keeps_the_counts():
    short, long = planned(67, Fraction(40), Fraction(20)), planned(67, Fraction(46), Fraction(20))
    assert len(short.decrease_rounds) == len(long.decrease_rounds)
    assert short.cuff.stitches == long.cuff.stitches
    assert max(short.decrease_rounds) < max(long.decrease_rounds)


def test_a_chart_that_runs_on_makes_the_sleeve_as_long_as_it_needs_and_says_so():
    sleeve = planned(67, Fraction(20), Fraction(20), minimum_rounds=90, size="S")
    assert sleeve.rounds == 90
    assert [remark.code for remark in sleeve.remarks] == ["sleeve_longer_for_chart"]


def test_the_sleeves_of_all_sizes_are_told_with_intervals_and_times_as_size_runs():
    told = run_instructions(
        [planned(67, Fraction(45), Fraction(20)), planned(79, Fraction(45), Fraction(22))], ["S", "M"]
    )
    often, seldom = [sentence.values for sentence in told if sentence.id == "sleeve.decrease"]
    # 124 rounds hold 9 decrease rounds as twice 13 and 7 times 14, and 13 as 6 times 9 and 7 times 10
    assert (often["every"], often["times"]) == ((13, 9), (2, 6))
    assert (seldom["every"], seldom["times"]) == ((14, 10), (7, 7))
    assert seldom["stitches"] == (49, 53)
    assert (often["change"], seldom["change"]) == (2, 2)


def test_a_size_without_decreases_skips_them():
    told = run_instructions(
        [planned(68, Fraction(45), Fraction(20)), planned(48, Fraction(45), Fraction(20))], ["S", "M"]
    )
    read = told_each(told, ["S", "M"])
    assert "sleeve.decrease" in ids(read["S"])
    assert "sleeve.decrease" not in ids(read["M"])
    assert only(read["M"], "sleeve.plain") == {"rounds": 124}


def test_decreases_are_explained_only_where_there_are_any():
    assert "sleeve.decreases" in ids(planned(68, Fraction(45), Fraction(20)).instructions())
    assert "sleeve.decreases" not in ids(planned(48, Fraction(45), Fraction(20)).instructions())


@pytest.mark.parametrize(
    ("underarm", "place", "at"),
    [
        (Underarm(15, 3), {"before": 9, "seams": "all", "seam": 3}, "seam"),
        (Underarm(16, 0), {"before": 8, "seams": "none", "seam": 0}, "marker"),
    ],
)
def test_rounds_start_and_decreases_are_worked_in_the_middle_of_the_underarm(underarm, place, at):
    told = told_alone(planned(68, Fraction(45), Fraction(20), underarm=underarm).instructions())
    assert only(told, "sleeve.start") == place
    assert only(told, "sleeve.decreases") == {"at": at}


def test_the_end_of_the_sleeve_is_its_cuff_bound_off_and_a_second_one():
    assert ids(planned(67, Fraction(45), Fraction(20)).instructions())[-6:] == [
        "rib.decrease",
        "rib.spread",
        "rib.work",
        "rib.bind_off",
        "sleeve.length",
        "sleeve.second",
    ]
