"""Whole pullovers, knitted from their instructions and counted."""

from __future__ import annotations

import re
from dataclasses import replace
from fractions import Fraction

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from grading_core.chart.grid import Anchor, Chart
from grading_core.errors import ContradictionError, Impossible
from grading_core.gauge import Gauge
from grading_core.pullover.grade import grade_pullover
from grading_core.pullover.proportions import USUAL_INCREASES
from grading_core.pullover.request import (
    BandWishes,
    BodyWishes,
    Changes,
    ChartWishes,
    EdgeWishes,
    Gauges,
    LevelWish,
    NeckWishes,
    PulloverRequest,
    Shares,
    SleeveWishes,
    YarnWishes,
    YokeWishes,
)
from grading_core.pullover.result import KnittedSize, Pullover
from grading_core.pullover.yarn import raise_stitches, rib_stitches, stitches_by_colour
from grading_core.rounding import CountRule
from grading_core.sizes.bodies import SentSize
from grading_core.sizes.grading import EvenSteps
from grading_core.yoke.adjustment import Adjustment
from grading_core.yoke.schedule import Options
from tests.oracles.knitter import increases_said, knit_to_split, read

GAUGE = Gauge.over(Fraction(22), Fraction(31), Fraction(10))
BULKY = Gauge.over(Fraction(12), Fraction(17), Fraction(10))
FINE = Gauge.over(Fraction(32), Fraction(44), Fraction(10))
DIAMOND = Chart(("..#..", ".###.", "#####", ".###."), {".": "ground", "#": "motif"})


def outcomes(made: Pullover) -> list[KnittedSize | Impossible]:
    return [size.outcome for size in made.sizes]


def yoke(**options) -> YokeWishes:
    """The usual yoke, increased otherwise."""
    return YokeWishes(options=replace(USUAL_INCREASES, **options))


PLAIN = PulloverRequest(gauges=Gauges(GAUGE))
REQUESTS = {
    "nothing but a gauge": PLAIN,
    "a bulky yarn": PulloverRequest(gauges=Gauges(BULKY)),
    "a fine yarn for men": PulloverRequest(gauges=Gauges(FINE), body_table="men"),
    "children": PulloverRequest(gauges=Gauges(GAUGE), body_table="children"),
    "babies with a dropped front": PulloverRequest(
        gauges=Gauges(GAUGE),
        body_table="babies",
        neck=NeckWishes(front_drop=Fraction(3)),
        band=BandWishes(construction="double_with_fold_round"),
    ),
    "wide lines, all of them to the sleeves": PulloverRequest(
        gauges=Gauges(GAUGE), yoke=replace(yoke(line_stitches=3), line_to_body=0)
    ),
    "no line, every round, from the centre back": PulloverRequest(
        gauges=Gauges(GAUGE),
        neck=NeckWishes(start="centre_back", way="flat"),
        yoke=yoke(line_stitches=0, step=1, spacing="even"),
    ),
    "everything on a multiple": PulloverRequest(
        gauges=Gauges(GAUGE),
        neck=NeckWishes(count_rule=CountRule(4)),
        body=BodyWishes(count_rule=CountRule(4), hem=EdgeWishes(count_rule=CountRule(4))),
        sleeve=SleeveWishes(count_rule=CountRule(4), cuff=EdgeWishes(count_rule=CountRule(4))),
    ),
    "a narrower front": PulloverRequest(
        gauges=Gauges(GAUGE), neck=NeckWishes(shares=Shares(Fraction(36), Fraction(30), Fraction(17)))
    ),
    "a chart that runs on": PulloverRequest(
        gauges=Gauges(GAUGE),
        chart=ChartWishes(chart=DIAMOND, first_round=3),
        yoke=YokeWishes(seam_stitches=1),
    ),
    "a waist": PulloverRequest(
        gauges=Gauges(GAUGE),
        ease={"waist": Fraction(18), "hip": Fraction(8)},
        body=BodyWishes(
            length=Fraction(45),
            levels=(LevelWish("waist", Fraction(16)), LevelWish("hip", Fraction(36))),
        ),
    ),
}


@pytest.fixture(scope="module", params=REQUESTS)
def made(request) -> Pullover:
    return grade_pullover(REQUESTS[request.param])


def sizes_of(made: Pullover) -> list[KnittedSize]:
    sizes = [size for size in outcomes(made) if isinstance(size, KnittedSize)]
    assert sizes
    return sizes


RUN = r"(\d+(?: \(\d+(?:, \d+)*\))?)"


def said(made: Pullover, part: str, pattern: str) -> list[list[int]]:
    """For each size the numbers that a part's sentences tell where the pattern has RUN."""
    (sentences,) = [" ".join(each.sentences) for each in made.instructions if each.part == part]
    found = re.search(pattern.replace("RUN", RUN), sentences)
    assert found, sentences
    columns = [[int(number) for number in re.findall(r"\d+", run)] for run in found.groups()]
    return [list(numbers) for numbers in zip(*columns, strict=True)]


def knit_yoke(size: KnittedSize) -> list[str]:
    """The needle after the yoke as written: a letter for each stitch, from the start of the round."""
    back, front, sleeve = size.counts.neck.back, size.counts.neck.front, size.counts.neck.sleeve
    for sentence in size.yoke.instructions():
        told = read(sentence)
        for _, what in told.worked:
            to_back, to_front, to_sleeve = increases_said(what)
            back, front, sleeve = back + 2 * to_back, front + 2 * to_front, sleeve + 2 * to_sleeve
        assert told.stitches == back + front + 2 * sleeve + 4 * size.counts.line_stitches
    line = "l" * size.counts.line_stitches
    return [*("b" * back), *line, *("s" * sleeve), *line, *("f" * front), *line, *("t" * sleeve), *line]


def test_the_yoke_as_written_leads_to_the_stitches_that_the_split_begins_with(made):
    before = said(made, "split", "There are RUN stitches on the needle")
    for size, (total,) in zip(sizes_of(made), before, strict=True):
        assert len(knit_yoke(size)) == total == size.counts.yoke_total


def test_the_split_as_written_makes_the_body_and_the_sleeves(made):
    pattern = (
        r"Work to marker 1(?: and (?:\d+) stitch(?:es)? past it)?, put the next RUN stitch\w* on hold .*? "
        r"cast on RUN stitch\w* .*? work RUN stitch\w* for the front, put the next RUN stitch\w* on hold .*? "
        r"cast on RUN stitch\w* .*? The body has RUN stitch\w*\. .*? at its underarm: RUN stitch"
    )
    for size, (held, under, front, other, under_too, body, arm) in zip(
        sizes_of(made), said(made, "split", pattern), strict=True
    ):
        needle = knit_yoke(size)
        start = needle.index("s") - size.counts.line_to_sleeve
        first, needle_after = needle[start : start + held], needle[start + held :]
        middle, second, end = (
            needle_after[:front],
            needle_after[front : front + other],
            needle_after[front + other :],
        )
        assert first.count("s") == second.count("t") == size.counts.split.sleeve
        assert set(middle) <= {"l", "f"}
        assert middle.count("f") == size.counts.split.front
        assert set(end) <= {"l"}
        assert start + under + len(middle) + under_too + len(end) == body == size.counts.body
        assert held + under == other + under_too == arm == size.counts.sleeve


def test_the_line_stitches_past_marker_1_are_those_of_the_body(made):
    for part in made.instructions:
        if part.part == "split":
            told = re.search(r"and (\d+) stitch(?:es)? past it", part.sentences[1])
            assert (int(told[1]) if told else 0) == sizes_of(made)[0].counts.line_to_body


def test_the_cast_on_and_what_is_added_to_it_is_the_neck(made):
    for size in sizes_of(made):
        drop = size.neck.drop
        added = drop.centre + 2 * drop.edge_increases if drop else 0
        assert size.neck.cast_on.stitches + added == size.counts.cast_on


def test_the_schedule_knitted_edge_by_edge_arrives_at_the_split(made):
    for size in sizes_of(made):
        assert knit_to_split(size.yoke) == size.counts.split


def test_the_body_arrives_at_its_hem(made):
    for size in sizes_of(made):
        stitches = size.counts.body + sum(change for _, change in size.body.shaping)
        assert stitches + size.body.hem.change == size.body.hem.stitches


def test_the_sleeve_arrives_at_its_cuff(made):
    for size in sizes_of(made):
        stitches = size.counts.sleeve - 2 * len(size.sleeve.decrease_rounds)
        assert stitches + size.sleeve.cuff.change == size.sleeve.cuff.stitches


def test_finished_measurements_are_counts_over_gauge(made):
    for size in sizes_of(made):
        gauge = size.yoke.depth_cm / size.counts.rounds
        assert size.finished.depth == gauge * size.counts.rounds
        assert size.finished.bust * size.counts.sleeve == size.finished.upper_arm * size.counts.body
        raised = size.neck.raised.height_cm if size.neck.raised else 0
        assert size.finished.total_length == raised + size.finished.depth + size.finished.body_length


def test_no_circumference_is_further_off_than_the_multiple_asked(made):
    # sections of one parity leave the neck steps of 4 stitches, and an even run moves a count a little more
    for size in sizes_of(made):
        assert abs(size.differences.neck) <= 4
        assert abs(size.differences.body) <= 4
        assert abs(size.differences.sleeve) <= 3
        assert abs(size.differences.underarm) <= 4


def test_every_default_size_is_possible_and_passes_the_head():
    for request in (PLAIN, REQUESTS["a fine yarn for men"], REQUESTS["children"]):
        made = grade_pullover(request)
        assert all(isinstance(size, KnittedSize) and size.neck.head.passes for size in outcomes(made))


def test_the_order_of_the_sizes_changes_no_size():
    labels = ("L", "XS", "5X", "M")
    mixed = grade_pullover(replace(PLAIN, labels=labels))
    ordered = grade_pullover(replace(PLAIN, labels=("XS", "M", "L", "5X")))
    assert tuple(size.label for size in mixed.sizes) == labels
    assert {size.label: size for size in mixed.sizes} == {size.label: size for size in ordered.sizes}


def test_scaling_the_gauge_and_the_body_together_changes_no_count():
    body = {"bust": 94, "upper_arm": 28, "wrist": 16}
    wishes = {"ease": {"bust": Fraction(8), "upper_arm": Fraction(6), "wrist": Fraction(2)}}
    lengths = {
        "circumference": 46,
        "depth": 24,
        "underarm": 7,
        "body": 35,
        "sleeve": 44,
        "raise": 3,
        "rib": 5,
    }

    def counts(scale: int):
        gauge = Gauge(GAUGE.stitches_per_cm / scale, GAUGE.rows_per_cm / scale)
        cm = {name: Fraction(length * scale) for name, length in lengths.items()}
        rib = EdgeWishes(cm["rib"])
        request = PulloverRequest(
            gauges=Gauges(gauge),
            sizes=(SentSize("one", {name: Fraction(girth * scale) for name, girth in body.items()}),),
            ease={name: cm * scale for name, cm in wishes["ease"].items()},
            neck=NeckWishes(circumference=cm["circumference"], raise_height=cm["raise"]),
            yoke=YokeWishes(depth=cm["depth"], underarm=cm["underarm"]),
            body=BodyWishes(length=cm["body"], hem=rib),
            sleeve=SleeveWishes(length=cm["sleeve"], cuff=rib),
            band=BandWishes(cm["rib"]),
        )
        (size,) = outcomes(grade_pullover(request))
        return size.counts, size.body.rounds, size.sleeve.decrease_rounds, size.sleeve.cuff.stitches

    # a share of the neck depends on the bust: twice the size is compared from where the share no longer falls
    small, large = counts(2), counts(3)
    assert small == large


def test_a_size_that_is_impossible_leaves_the_others_as_they_are():
    made = grade_pullover(replace(PLAIN, yoke=yoke(double_body="never")))
    assert isinstance(outcomes(made)[-1], Impossible)
    assert isinstance(outcomes(made)[0], KnittedSize)
    assert {row.values[-1] for row in made.table} == {None}


@pytest.mark.parametrize("field", ["yoke.depth", "yoke.step", "yoke.double_body"])
def test_the_nearest_change_alone_makes_an_impossible_size_possible(field):
    request = replace(PLAIN, labels=("5X",), yoke=yoke(double_body="never"))
    (impossible,) = outcomes(grade_pullover(request))
    (value,) = [each.value for each in impossible.nearest if each.field == field]
    name = field.removeprefix("yoke.")
    if name == "depth":
        mended = replace(request.yoke, depth=value)
    else:
        mended = replace(request.yoke, options=replace(request.yoke.options, **{name: value}))
    (size,) = outcomes(grade_pullover(replace(request, yoke=mended)))
    assert isinstance(size, KnittedSize)


# a maker's own changes


def test_a_shallower_yoke_keeps_the_neck_and_the_split():
    design = grade_pullover(PLAIN)
    made = grade_pullover(replace(PLAIN, changes=Changes(yoke=Adjustment(depth_change_cm=Fraction(-2)))))
    for before, after in zip(outcomes(design), outcomes(made), strict=True):
        assert after.counts == replace(before.counts, rounds=before.counts.rounds - 6)
        assert knit_to_split(after.yoke) == before.counts.split


def test_another_gauge_makes_the_counts_anew():
    made = grade_pullover(replace(PLAIN, changes=Changes(gauges=Gauges(BULKY))))
    assert outcomes(made) == outcomes(grade_pullover(REQUESTS["a bulky yarn"]))


def test_another_ease_makes_the_counts_anew():
    ease = {"bust": EvenSteps(Fraction(4), Fraction(8))}
    made = grade_pullover(replace(PLAIN, changes=Changes(ease=ease)))
    assert outcomes(made) == outcomes(grade_pullover(replace(PLAIN, ease=ease)))


def test_longer_sleeves_and_another_band_change_nothing_above_them():
    changes = Changes(sleeve_length=Fraction(50), band=BandWishes(Fraction(3), construction="double"))
    made = grade_pullover(replace(PLAIN, changes=changes))
    changed = {(change.item, change.unit) for change in made.changed}
    assert changed <= {
        ("sleeve", "rounds"),
        ("finished_sleeve_length", "cm"),
        ("band", "rounds"),
    }
    assert [size.counts for size in outcomes(made)] == [
        size.counts for size in outcomes(grade_pullover(PLAIN))
    ]


def test_what_changed_is_every_number_that_differs_from_the_design_and_no_other():
    design = grade_pullover(PLAIN)
    made = grade_pullover(replace(PLAIN, changes=Changes(body_length=Fraction(40))))
    expected = [
        (label, before.item, before.unit, before.values[index], after.values[index])
        for index, label in enumerate(size.label for size in made.sizes)
        for before, after in zip(design.table, made.table, strict=True)
        if before.values[index] != after.values[index]
    ]
    assert expected
    found = [(each.size, each.item, each.unit, each.designed, each.changed) for each in made.changed]
    assert found == expected


@pytest.mark.parametrize(
    ("asked", "field"),
    [
        (Adjustment(rounds=20), "rounds"),
        (Adjustment(rounds_change=-60), "rounds_change"),
        (Adjustment(depth_cm=Fraction(5)), "depth_cm"),
        (Adjustment(depth_change_cm=Fraction(-20)), "depth_change_cm"),
    ],
)
def test_a_yoke_too_shallow_for_its_increases_says_in_the_way_asked_how_shallow_it_can_be(asked, field):
    request = replace(PLAIN, labels=("M",), changes=Changes(yoke=asked))
    (impossible,) = outcomes(grade_pullover(request))
    (nearest,) = impossible.nearest
    assert nearest.field == f"changes.yoke.{field.removesuffix('_cm')}"
    for rounds, possible in ((0, True), (-1, False)):
        amount = nearest.value + (rounds if isinstance(nearest.value, int) else GAUGE.height_cm(rounds))
        (size,) = outcomes(
            grade_pullover(replace(request, changes=Changes(yoke=Adjustment(**{field: amount}))))
        )
        assert isinstance(size, KnittedSize) is possible


def test_what_would_make_a_changed_size_possible_is_named_among_the_changes():
    request = replace(PLAIN, labels=("M",), changes=Changes(sleeve_length=Fraction(6)))
    (impossible,) = outcomes(grade_pullover(request))
    (nearest,) = impossible.nearest
    assert nearest.field == "changes.sleeve_length"
    (size,) = outcomes(grade_pullover(replace(request, changes=Changes(sleeve_length=nearest.value))))
    assert isinstance(size, KnittedSize)


def test_a_seam_that_takes_a_whole_cuff_makes_its_size_impossible_and_no_other():
    request = replace(PLAIN, chart=ChartWishes(chart=DIAMOND), yoke=YokeWishes(seam_stitches=40))
    sizes = outcomes(grade_pullover(request))
    impossible = [size for size in sizes if isinstance(size, Impossible)]
    assert 0 < len(impossible) < len(sizes)
    (nearest,) = impossible[0].nearest
    assert nearest.field == "yoke.seam_stitches"
    mended = replace(request, yoke=YokeWishes(seam_stitches=nearest.value))
    assert isinstance(outcomes(grade_pullover(mended))[0], KnittedSize)


@pytest.mark.parametrize(
    ("wishes", "code"),
    [
        ({"band": BandWishes(count_rule=CountRule(300))}, "rib_far_from_fabric"),
        ({"body": BodyWishes(hem=EdgeWishes(count_rule=CountRule(300)))}, "rib_far_from_fabric"),
        ({"body": BodyWishes(length=Fraction(1))}, "body_longer_than_asked"),
    ],
)
def test_what_comes_out_far_from_what_was_asked_is_said(wishes, code):
    codes = {remark.code for remark in grade_pullover(replace(PLAIN, labels=("M",), **wishes)).remarks}
    assert codes == {code}


def test_estimated_bodies_are_named_once_for_each_measurement_that_is_used():
    def estimated(made):
        return [remark for remark in made.remarks if remark.code == "estimated_body"]

    (remark,) = estimated(grade_pullover(PLAIN))
    assert "wrist of XS, 2X, 3X, 4X and 5X" in remark.message
    assert estimated(grade_pullover(replace(PLAIN, labels=("S", "M")))) == []
    # the men's back waist is estimated in large sizes, but the hip length makes the body
    assert [
        "wrist" in each.message for each in estimated(grade_pullover(replace(PLAIN, body_table="men")))
    ] == [True]


# charts


def test_every_section_has_the_chart_on_its_centre():
    made = grade_pullover(REQUESTS["a chart that runs on"])
    for size in outcomes(made):
        for worked in size.chart.rounds[2:]:
            for section in (worked.back, worked.front, worked.sleeve):
                # the middle stitch of the section, columns counted from 1 to 5
                assert (section.first_column - 1 + section.stitches // 2) % 5 + 1 == 3


def test_the_columns_as_told_run_straight_from_the_yoke_over_the_underarm_into_the_body():
    made = grade_pullover(REQUESTS["a chart that runs on"])
    (begun,) = zip(
        *said(made, "chart", "In round .*? the back and the front begin with column RUN"), strict=True
    )
    (lower,) = zip(
        *said(made, "chart", "of the body .*? or its seam, the back and the front begin with column RUN"),
        strict=True,
    )
    split = said(
        made,
        "split",
        r"cast on RUN stitches .* Place a marker RUN stitches after the beginning of the underarm",
    )
    for size, above, below, (under, before_marker) in zip(sizes_of(made), begun, lower, split, strict=True):
        # every increase after round 3 moves the start back, and round 2 had one before
        later = sum(worked.back for worked in size.yoke.increase_rounds if worked.round > 3)
        # from the marker the rest of the underarm and one line stitch lead to the back
        assert (above - later - (below + under - before_marker + 1)) % DIAMOND.width == 0


def test_the_sleeves_as_told_begin_as_far_before_their_section_as_the_body_does():
    made = grade_pullover(REQUESTS["a chart that runs on"])
    pattern = "cast on RUN stitches .* Its rounds start and end RUN stitches after the beginning"
    (begun,) = zip(*said(made, "chart", "In round [^.]* each sleeve begins with column RUN"), strict=True)
    (lower,) = zip(*said(made, "chart", "the sleeve begins with column RUN"), strict=True)
    for size, above, below, (under, last) in zip(
        sizes_of(made), begun, lower, said(made, "split", pattern), strict=True
    ):
        later = sum(worked.sleeve for worked in size.yoke.increase_rounds if worked.round > 3)
        assert (above - later - (below + under - last + 1)) % DIAMOND.width == 0


def test_the_words_begin_with_sizes_and_gauges():
    made = grade_pullover(replace(PLAIN, gauges=Gauges(GAUGE, rib=FINE), labels=("S", "M")))
    assert made.instructions[0].sentences[:3] == (
        "Sizes: S (M).",
        "Gauge, in the round and blocked: 22 stitches and 31 rounds to 10 cm (22.35 stitches and 31.5 rounds to 4 in).",
        "Gauge of the rib: 32 stitches and 44 rounds to 10 cm (32.51 stitches and 44.7 rounds to 4 in). Work hem, "
        "cuffs and neckband with the needle that gives it to you.",
    )


def test_a_round_that_starts_at_the_centre_back_goes_on_to_start_there():
    made = grade_pullover(REQUESTS["no line, every round, from the centre back"])
    assert "Work on to the start of the round at the centre back" in " ".join(made.instructions[2].sentences)
    charted = replace(PLAIN, chart=ChartWishes(chart=DIAMOND), neck=NeckWishes(start="centre_back"))
    assert "chart_starts_before_back" in {remark.code for remark in grade_pullover(charted).remarks}


def test_a_chart_centred_between_two_stitches_makes_even_sections():
    halves = Anchor(*[Fraction(1, 2) + 2] * 3)
    made = grade_pullover(replace(PLAIN, chart=ChartWishes(chart=DIAMOND, anchor=halves)))
    assert {size.counts.neck.back % 2 for size in outcomes(made)} == {0}
    assert {size.counts.neck.sleeve % 2 for size in outcomes(made)} == {0}


def test_the_body_is_long_enough_to_finish_the_chart():
    tall = Chart(DIAMOND.rows * 50, DIAMOND.colours, repeat="once")
    made = grade_pullover(replace(PLAIN, chart=ChartWishes(chart=tall)))
    for size in made.sizes:
        assert size.outcome.counts.rounds + size.outcome.body.rounds >= 200
        assert any(
            remark.size == size.label and remark.code == "body_longer_for_chart" for remark in made.remarks
        )


# yarn


def test_all_colours_together_are_every_stitch_worked(made):
    for size in sizes_of(made):
        if size.neck.drop:
            continue
        sections = size.counts.neck
        yoke, increases = 0, {worked.round: worked for worked in size.yoke.increase_rounds}
        for number in range(1, size.counts.rounds + 1):
            if number in increases:
                sections = sections.after(increases[number].increases)
            yoke += sections.total(size.counts.line_stitches)
        body, shaping = [size.counts.body], dict(size.body.shaping)
        for number in range(1, size.body.rounds + 1):
            body.append(body[-1] + shaping.get(number, 0))
        sleeve = [size.counts.sleeve]
        for number in range(1, size.sleeve.rounds + 1):
            sleeve.append(sleeve[-1] - 2 * (number in size.sleeve.decrease_rounds))
        fabric = yoke + sum(body[1:]) + 2 * sum(sleeve[1:])
        rest = raise_stitches(size.neck, size.counts) + rib_stitches(size.body, size.sleeve, size.band)
        assert sum(stitches_by_colour(size, None).values()) == fabric + rest
        if size.chart:
            assert sum(size.chart.stitches_by_colour.total.values()) == fabric


def test_a_weighed_swatch_tells_the_yarn_exactly():
    yarn = YarnWishes(metres_per_100g=Fraction(200), swatch_grams=Fraction(10), swatch_stitches=1000)
    for size in outcomes(grade_pullover(replace(PLAIN, yarn=yarn))):
        (colour,) = size.yarn
        assert colour.amount.likely_g == Fraction(colour.stitches, 100)
        assert colour.balls == -(-colour.stitches * 11 // 50_000)


# what contradicts itself


def two(**measurements):
    return SentSize("two", {"bust": Fraction(100), "upper_arm": Fraction(30), **measurements})


@pytest.mark.parametrize(
    ("request_", "path"),
    [
        (replace(PLAIN, ease={"bust": (Fraction(10), Fraction(12))}), ("ease", "bust")),
        (replace(PLAIN, ease={"hip": Fraction(4)}), ("ease", "hip")),
        (replace(PLAIN, ease={"bust": Fraction(-150)}), ("ease", "bust")),
        (replace(PLAIN, ease={"bust": EvenSteps(Fraction(90), Fraction(0))}), ("ease", "bust")),
        (
            replace(PLAIN, labels=("M", "L"), neck=NeckWishes(circumference=(Fraction(50), Fraction(48)))),
            ("neck", "circumference"),
        ),
        (
            replace(PLAIN, neck=NeckWishes(shares=Shares(*map(Fraction, (3, 4, 1))))),
            ("neck", "shares", "front"),
        ),
        (
            replace(PLAIN, neck=NeckWishes(raise_height=Fraction(2), front_drop=Fraction(2))),
            ("neck", "raise_height"),
        ),
        (replace(PLAIN, neck=NeckWishes(circumference=Fraction(4))), ("neck", "circumference")),
        (replace(PLAIN, yoke=YokeWishes(line_to_body=3)), ("yoke", "line_to_body")),
        (replace(PLAIN, body=BodyWishes(count_rule=CountRule(4, 1))), ("body", "count_rule")),
        (replace(PLAIN, body=BodyWishes(length=Fraction(0))), ("body", "length")),
        (replace(PLAIN, sizes=(two(),)), ("sizes", 0)),
        (
            replace(PLAIN, chart=ChartWishes(chart=Chart(("..", "."), {".": "ground"}))),
            ("chart", "chart", "rows", 1),
        ),
        (
            replace(
                PLAIN,
                chart=ChartWishes(chart=DIAMOND, anchor=Anchor(Fraction(3), Fraction(5, 2), Fraction(3))),
            ),
            ("chart", "anchor", "front"),
        ),
        (
            replace(PLAIN, yarn=YarnWishes(metres_per_100g=Fraction(200), swatch_grams=Fraction(4))),
            ("yarn", "swatch_stitches"),
        ),
        (replace(PLAIN, changes=Changes(ease={"bust": Fraction(-150)})), ("changes", "ease", "bust")),
        (replace(PLAIN, changes=Changes(body_length=Fraction(0))), ("changes", "body_length")),
        (
            replace(PLAIN, changes=Changes(sleeve_length=(Fraction(40), Fraction(41)))),
            ("changes", "sleeve_length"),
        ),
        (PulloverRequest(gauges=Gauges(Gauge(Fraction(100), Fraction(3)))), ()),
        (PulloverRequest(gauges=Gauges(Gauge(Fraction(2), Fraction(40)))), ()),
        (replace(PLAIN, changes=Changes(gauges=Gauges(Gauge(Fraction(2), Fraction(40))))), ("changes",)),
        (replace(PLAIN, changes=Changes(yoke=Adjustment(rounds=4000))), ("changes", "yoke")),
        (replace(PLAIN, yoke=YokeWishes(depth=Fraction(90))), ("yoke", "depth")),
    ],
)
def test_a_contradiction_names_its_place(request_, path):
    with pytest.raises(ContradictionError) as error:
        grade_pullover(request_)
    assert path in [problem.path for problem in error.value.problems]


def cm(least: int, most: int):
    return st.integers(least * 10, most * 10).map(lambda tenths: Fraction(tenths, 10))


@settings(max_examples=60)
@given(
    st.builds(
        PulloverRequest,
        gauges=st.builds(Gauges, st.builds(Gauge, cm(1, 4), cm(1, 5))),
        body_table=st.sampled_from(["women", "men", "children", "babies"]),
        ease=st.fixed_dictionaries({"bust": cm(-15, 30), "upper_arm": cm(-4, 12), "wrist": cm(-2, 5)}),
        neck=st.builds(
            NeckWishes,
            circumference=st.none() | cm(20, 80),
            count_rule=st.builds(CountRule, st.integers(1, 12)),
            front_drop=st.just(Fraction(0)) | cm(1, 6),
        ),
        yoke=st.builds(
            YokeWishes,
            depth=st.none() | cm(8, 40),
            underarm=st.none() | cm(0, 15),
            seam_stitches=st.none() | st.integers(0, 3),
            options=st.builds(
                Options,
                line_stitches=st.integers(0, 8),
                step=st.integers(1, 2),
                plain_rounds_at_end=st.integers(0, 6),
                double_body=st.sampled_from(["never", "if_needed"]),
            ),
        ),
        body=st.builds(
            BodyWishes, length=st.none() | cm(1, 60), count_rule=st.builds(CountRule, st.integers(1, 40))
        ),
        sleeve=st.builds(
            SleeveWishes, length=st.none() | cm(1, 60), count_rule=st.builds(CountRule, st.integers(1, 30))
        ),
        yarn=st.none() | st.builds(YarnWishes, metres_per_100g=cm(50, 800)),
    )
)
def test_whatever_is_asked_is_made_or_refused_in_words(request_):
    try:
        made = grade_pullover(request_)
    except ContradictionError:
        return
    for size in outcomes(made):
        if isinstance(size, Impossible):
            assert size.reason
        else:
            assert knit_to_split(size.yoke) == size.counts.split
            assert (
                size.counts.body + 2 * size.counts.sleeve == size.counts.yoke_total + 4 * size.counts.underarm
            )
