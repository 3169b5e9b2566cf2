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
from grading_core.parts.underarm import Underarm
from grading_core.rounding import CountRule
from tests.floors import in_a_hundred_cases
from tests.oracles.told import ids, only, told_alone, told_each, work_edge, work_shaping

GAUGE = Gauge.over(Fraction(22), Fraction(31), Fraction(10))
HEM = Rib(gauge=Gauge.over(Fraction(24), Fraction(32), Fraction(10)), height_cm=Fraction(5), rule=CountRule(4))
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
    told = told_alone(body.instructions())
    worked, last, on_needles = work_shaping(told, "body", stitches)
    assert worked == [*body.shaping]
    assert (last, on_needles) == (body.rounds, body.hem.before)
    assert only(told, "body.rounds") == {"rounds": body.rounds, "length": GAUGE.height_cm(body.rounds)}
    assert work_edge(told, on_needles)[:2] == (body.hem.stitches, body.hem.rounds)
    # a hem of 5 cm has 16 rounds of 3.2
    assert only(told, "body.length")["length"] == GAUGE.height_cm(body.rounds) + 5
    assert ids(told)[-2:] == ["rib.bind_off", "body.length"]


@in_a_hundred_cases(70)
@given(st.lists(st.tuples(st.integers(160, 300), circumferences, circumferences, SPACINGS), min_size=2, max_size=4))
def test_the_sentences_of_all_sizes_knitted_as_told_are_each_its_own_body(sizes):
    bodies = [body if isinstance(body := shaped(*size), Body) else None for size in sizes]
    assume(any(bodies))
    labels = [str(place) for place in range(len(sizes))]
    told = told_each(run_instructions(bodies, labels), labels)
    for body, own in zip(bodies, told.values(), strict=True):
        if body is None:
            assert not any("stitches" in values or "rounds" in values or "length" in values for _, values in own)
            continue
        worked, last, on_needles = work_shaping(own, "body", body.stitches)
        assert worked == [*body.shaping]
        assert (last, on_needles) == (body.rounds, body.hem.before)
        assert work_edge(own, on_needles)[:2] == (body.hem.stitches, body.hem.rounds)


@in_a_hundred_cases(90)
@given(st.integers(160, 300), circumferences, circumferences)
def test_decrease_and_increase_rounds_are_explained_where_there_are_any(stitches, waist, hip):
    body = shaped(stitches, waist, hip)
    assume(isinstance(body, Body))
    told = ids(body.instructions())
    assert ("body.decreases" in told) is any(change < 0 for _, change in body.shaping)
    assert ("body.increases" in told) is any(change > 0 for _, change in body.shaping)
    assert ("body.side_markers" in told) is bool(body.shaping)


def test_a_body_without_levels_has_no_shaping_and_keeps_its_width():
    body = shape_body(224, length_cm=Fraction(38), gauge=GAUGE, hem=HEM)
    assert (body.shaping, body.hem.before, body.circumference_cm) == ((), 224, Fraction(224) / Fraction(22, 10))
    assert ids(body.instructions()) == ["body.plain", "body.rounds", "rib.work", "rib.bind_off", "body.length"]


def test_the_length_is_that_of_the_rounds_and_the_hem_at_their_own_gauges():
    body = shape_body(224, length_cm=Fraction(38), gauge=GAUGE, hem=HEM)
    # hem: 5 cm are 16 rounds of 3.2; 33 cm of 3.1 rounds are 102.3, nearest 102
    assert (body.rounds, body.hem.rounds) == (102, 16)
    assert body.length_cm == Fraction(1020, 31) + 5


def test_a_chart_that_runs_on_makes_the_body_as_long_as_it_needs_and_says_so():
    body = shape_body(224, length_cm=Fraction(12), gauge=GAUGE, hem=HEM, minimum_rounds=60, size="S")
    assert body.rounds == 60
    assert [remark.code for remark in body.remarks] == ["body_longer_for_chart"]


@in_a_hundred_cases(50)
@given(st.integers(160, 300), st.integers(20, 40).map(Fraction), SPACINGS)
def test_round_1_which_divides_body_and_sleeves_shapes_only_where_every_round_has_to(stitches, below, spacing):
    levels = [Level("waist", Fraction(60), below / 4)]
    body = shape_body(stitches, length_cm=Fraction(42), gauge=GAUGE, hem=HEM, levels=levels, spacing=spacing)
    assume(isinstance(body, Body))
    rounds = {number for number, _ in body.shaping}
    assert 1 not in rounds or rounds == {*range(1, body.levels[0].round + 1)}


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
    told = run_instructions(bodies, ["S", "M"])
    # 222 to 198 and 262 to 242 stitches in the 50 rounds above the waist, by fours: 6 and 5 decrease rounds; then 56
    # rounds to the hip, at which 224.4 and 264 stitches are wanted: 226 and 266 by 7 and 6 increase rounds
    assert [sentence.id for sentence in told[:3]] == ["body.side_markers", "body.decreases", "body.increases"]
    down, up = ([each.values for each in told if each.id == f"body.{way}"] for way in ("decrease", "increase"))
    assert [sum(runs["times"][size] or 0 for runs in down) for size in (0, 1)] == [6, 5]
    assert [sum(runs["times"][size] or 0 for runs in up) for size in (0, 1)] == [7, 6]
    assert (down[0]["every"], up[-1]["stitches"]) == ((8, 10), (226, 266))
    assert {runs["change"] for runs in (*down, *up)} == {4}


def test_darts_are_told_before_the_rounds():
    body = shape_body(224, length_cm=Fraction(38), gauge=GAUGE, hem=HEM)
    darts = dart_front(112, 3, GAUGE, in_round=9)
    darted = replace(body, bust_darts=darts)
    marker, *sentences = darted.instructions()
    assert marker.id == "body.side_markers"
    assert tuple(sentences) == (*darts.instructions(), *body.instructions())


@pytest.mark.parametrize(
    ("underarm", "place", "at"),
    [
        (Underarm(15, 3), {"before": 9, "seams": "all", "seam": 3}, "seam"),
        (Underarm(16, 0), {"before": 8, "seams": "none", "seam": 0}, "marker"),
    ],
)
def test_shaping_is_worked_in_the_middle_of_each_underarm(underarm, place, at):
    levels = [Level("waist", Fraction(90), Fraction(16)), Level("hip", Fraction(102), Fraction(34))]
    body = shape_body(222, length_cm=Fraction(42), gauge=GAUGE, hem=HEM, levels=levels, underarm=underarm)
    told = told_alone(body.instructions())
    assert only(told, "body.side_markers") == place
    assert only(told, "body.decreases") == only(told, "body.increases") == {"at": at}


def test_a_size_that_is_impossible_has_nothing_in_any_run():
    told = run_instructions([shape_body(224, length_cm=Fraction(38), gauge=GAUGE, hem=HEM), None], ["S", "M"])
    assert told[0].values == {"rounds": (102, None)}
    assert {*ids(told_each(told, ["S", "M"])["M"])} == {"rib.bind_off"}
