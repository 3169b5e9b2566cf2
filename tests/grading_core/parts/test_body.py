from __future__ import annotations

from dataclasses import replace
from fractions import Fraction

import pytest
from hypothesis import assume, given
from hypothesis import strategies as st

from grading_core.errors import Impossible
from grading_core.gauge import Gauge
from grading_core.parts.body import Body, Level, level_problems, run_instructions, shape_body
from grading_core.parts.bust_darts import dart_front
from grading_core.parts.ribbing import Rib
from grading_core.rounding import CountRule
from tests.floors import in_a_hundred_cases
from tests.oracles.edge_knitter import adjust
from tests.oracles.knitter import read

GAUGE = Gauge.over(Fraction(22), Fraction(31), Fraction(10))
HEM = Rib(Gauge.over(Fraction(24), Fraction(32), Fraction(10)), Fraction(5), CountRule(4))
SPACINGS = st.sampled_from(["closest_first", "widest_first", "even", "single_then_plain", "plain_then_single"])

circumferences = st.integers(70, 130).map(Fraction)


def shaped(stitches, waist, hip, spacing="closest_first", length=42) -> Body | Impossible:
    levels = [Level("waist", waist, Fraction(16)), Level("hip", hip, Fraction(34))]
    return shape_body(stitches, length_cm=Fraction(length), gauge=GAUGE, hem=HEM, levels=levels, spacing=spacing)


@in_a_hundred_cases(90)
@given(st.integers(160, 300), circumferences, circumferences, SPACINGS)
def test_knitting_every_shaping_round_gives_the_stitches_of_each_level_and_of_the_hem(stitches, waist, hip, spacing):
    body = shaped(stitches, waist, hip, spacing)
    assume(isinstance(body, Body))
    changes = dict(body.shaping)
    on_needle = stitches
    reached = {level.round: level for level in body.levels}
    for number in range(1, body.rounds + 1):
        on_needle += changes.get(number, 0)
        if number in reached:
            assert reached[number].stitches == on_needle
    assert body.hem.before == on_needle
    assert body.hem.stitches % 4 == 0
    assert abs(body.hem.change) <= 2


@in_a_hundred_cases(90)
@given(st.integers(160, 300), circumferences, circumferences)
def test_no_other_count_that_fours_can_reach_is_nearer_to_the_circumference_wanted(stitches, waist, hip):
    body = shaped(stitches, waist, hip)
    assume(isinstance(body, Body))
    reachable = range(stitches % 4, 500, 4)
    for level in body.levels:
        nearest = min(abs(GAUGE.width_cm(count) - level.level.circumference_cm) for count in reachable)
        assert abs(level.difference_cm) == nearest


@in_a_hundred_cases(90)
@given(st.integers(160, 300), circumferences, circumferences, SPACINGS)
def test_the_sentences_knitted_as_told_end_with_the_hem(stitches, waist, hip, spacing):
    body = shaped(stitches, waist, hip, spacing)
    assume(isinstance(body, Body))
    sentences = [sentence for sentence in body.instructions() if sentence.startswith("Round")]
    on_needle, row = stitches, 0
    for sentence in sentences:
        said = read(sentence)
        assert said.first == row + 1
        row = said.last
        for _, what in said.worked:
            assert what.endswith("1 stitch on either side of each side marker (4 fewer)") or what.endswith("(4 more)")
            on_needle += 4 if what.startswith("increase") else -4
        assert said.stitches == on_needle
    assert (row, on_needle) == (body.rounds, body.hem.before)
    adjusting = [sentence for sentence in body.instructions() if sentence.startswith("Work 1 round plain")]
    assert [adjust(sentence) for sentence in adjusting] == ([(on_needle, body.hem.stitches)] if body.hem.change else [])


def test_a_body_without_levels_has_no_shaping_and_keeps_its_width():
    body = shape_body(224, length_cm=Fraction(38), gauge=GAUGE, hem=HEM)
    assert (body.shaping, body.hem.before, body.circumference_cm) == ((), 224, Fraction(224) / Fraction(22, 10))
    assert not any("marker" in sentence for sentence in body.instructions())


def test_the_length_is_that_of_the_rounds_and_the_hem_at_their_own_gauges():
    body = shape_body(224, length_cm=Fraction(38), gauge=GAUGE, hem=HEM)
    # hem: 5 cm are 16 rounds of 3.2; 33 cm of 3.1 rounds are 102.3, nearest 102
    assert (body.rounds, body.hem.rounds) == (102, 16)
    assert body.length_cm == Fraction(1020, 31) + 5


def test_a_chart_that_runs_on_makes_the_body_as_long_as_it_needs_and_says_so():
    body = shape_body(224, length_cm=Fraction(12), gauge=GAUGE, hem=HEM, minimum_rounds=60, size="S")
    assert body.rounds == 60
    assert [remark.code for remark in body.remarks] == ["body_longer_for_chart"]


def test_a_level_below_the_hem_is_impossible_and_the_rounds_that_reach_it_are_named():
    refused = shaped(224, Fraction(90), Fraction(100), length=30)
    assert isinstance(refused, Impossible)
    assert refused.reason.values == {"measure": "hip", "round": 105, "rounds": 78}
    # 34 cm of 3.1 rounds are 105.4; 30 cm less a hem of 5 leave 77.5 rounds
    assert [(near.field, near.value) for near in refused.nearest] == [("rounds", 105), ("levels.1.rounds", 78)]


def test_more_shaping_rounds_than_rounds_are_impossible_and_a_lower_level_is_named():
    levels = [Level("waist", Fraction(60), Fraction(5))]
    refused = shape_body(222, length_cm=Fraction(38), gauge=GAUGE, hem=HEM, levels=levels)
    assert isinstance(refused, Impossible)
    (nearest,) = refused.nearest
    assert (nearest.field, nearest.value) == (
        "levels.0.rounds",
        22,
    )  # from 222 to 134 by fours: nearest to 132 stitches
    lower = [Level("waist", Fraction(60), GAUGE.height_cm(22))]
    assert isinstance(shape_body(222, length_cm=Fraction(38), gauge=GAUGE, hem=HEM, levels=lower), Body)


@in_a_hundred_cases(10)
@given(st.integers(160, 300), circumferences, circumferences, st.tuples(*[st.integers(1, 40)] * 2), st.integers(5, 45))
def test_a_nearest_level_is_the_first_round_up_or_down_at_which_all_levels_fit(stitches, waist, hip, places, rounds):
    places = (places[0], places[0] + places[1])

    def shape(*at):
        levels = [
            Level(name, wanted, GAUGE.height_cm(round_))
            for name, wanted, round_ in zip(("waist", "hip"), (waist, hip), at, strict=True)
        ]
        length_cm = GAUGE.height_cm(rounds) + HEM.gauge.height_cm(HEM.rounds)
        return shape_body(stitches, length_cm=length_cm, gauge=GAUGE, hem=HEM, levels=levels)

    refused = shape(*places)
    assume(isinstance(refused, Impossible))
    named = {near.path[1]: near.value for near in refused.nearest if near.path[0] == "levels"}
    # every round that either level could lie at, tried one after the other
    tried = {
        0: [at for at in range(1, places[1]) if isinstance(shape(at, places[1]), Body)],
        1: [at for at in range(places[0] + 1, rounds + 1) if isinstance(shape(places[0], at), Body)],
    }
    nearest = {level: min(found, key=lambda at: abs(at - places[level])) for level, found in tried.items() if found}
    assert named == nearest


def test_no_change_is_named_where_none_alone_would_do():
    levels = [Level("waist", Fraction(60), Fraction(5)), Level("hip", Fraction(100), Fraction(60))]
    assert shape_body(222, length_cm=Fraction(38), gauge=GAUGE, hem=HEM, levels=levels).nearest == ()


@pytest.mark.parametrize("below", [16, 15])
def test_a_level_that_lies_no_lower_than_the_one_before_is_a_contradiction(below):
    levels = [Level("waist", Fraction(90), Fraction(16)), Level("hip", Fraction(100), Fraction(below))]
    assert [problem.path for problem in level_problems(levels)] == [("body", "levels", 1, "below")]


def test_levels_in_order_contradict_nothing():
    assert not [*level_problems([Level("waist", Fraction(90), Fraction(16)), Level("hip", Fraction(90), Fraction(17))])]


def test_the_bodies_of_all_sizes_are_told_stage_by_stage_in_size_runs():
    bodies = [shaped(222, Fraction(90), Fraction(102)), shaped(262, Fraction(110), Fraction(120))]
    told = run_instructions(bodies)
    assert told[1].startswith("Decrease 1 stitch on either side of each side marker (4 fewer) every 8th (10th) round")
    assert told[2].startswith("Increase 1 stitch on either side of each side marker (4 more)")
    assert f"There are {bodies[0].hem.before} ({bodies[1].hem.before}) stitches on the needle." in told


def test_darts_are_told_before_the_rounds():
    body = shape_body(224, length_cm=Fraction(38), gauge=GAUGE, hem=HEM)
    darts = dart_front(112, 3, GAUGE, in_round=9)
    darted = replace(body, bust_darts=darts)
    marker, *sentences = darted.instructions()
    assert marker.startswith("Place a side marker in the middle of each underarm;")
    assert tuple(sentences) == (*darts.instructions(), *body.instructions())
    assert run_instructions([darted]) == (marker, *darts.instructions(), *run_instructions([body]))


def test_for_a_size_that_is_impossible_stands_a_dash():
    told = run_instructions([shape_body(224, length_cm=Fraction(38), gauge=GAUGE, hem=HEM), None])
    assert told[0] == "Work 102 (–) rounds without shaping."  # noqa: RUF001
