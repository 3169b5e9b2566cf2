"""Whole pullovers, knitted again from their numbers and counted."""

from __future__ import annotations

from dataclasses import replace
from fractions import Fraction

import pytest
from hypothesis import assume, given, reject, settings
from hypothesis import strategies as st

from grading_core.errors import ContradictionError, Impossible
from grading_core.gauge import Gauge
from grading_core.pullover.grade import grade_pullover
from grading_core.pullover.request import (
    BandWishes,
    BodyWishes,
    EdgeWishes,
    Gauges,
    NeckWishes,
    PulloverRequest,
    SleeveWishes,
    YarnWishes,
    YokeWishes,
)
from grading_core.pullover.result import KnittedSize
from grading_core.rounding import CountRule
from grading_core.sizes.request import SentSize
from grading_core.yoke.request import Options
from tests.floors import in_a_hundred_cases
from tests.grading_core.pullover.knitted_pullovers import GAUGE, PLAIN, REQUESTS, outcomes, sizes_of, yoke
from tests.oracles.knitter import knit_to_split


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


def test_finished_measurements_are_counts_over_gauge(asked, made):
    stitches, rows = asked.gauges.plain.stitches_per_cm, asked.gauges.plain.rows_per_cm
    for size in sizes_of(made):
        finished, counts = size.finished, size.counts
        assert (finished.bust, finished.upper_arm) == (counts.body / stitches, counts.sleeve / stitches)
        assert (finished.neck, finished.underarm) == (counts.cast_on / stitches, counts.underarm / stitches)
        assert finished.depth == counts.rounds / rows
        assert finished.body_length == (size.body.rounds + size.body.hem.rounds) / rows
        assert finished.sleeve_length == (size.sleeve.rounds + size.sleeve.cuff.rounds) / rows
        short_rows = len(size.neck.raised.turns) if size.neck.raised else 0
        assert finished.total_length == short_rows / rows + finished.depth + finished.body_length


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


@pytest.mark.parametrize("smoothing", [None, "none", "steps"])
def test_the_order_of_the_sizes_changes_no_size(smoothing):
    labels = ("L", "XS", "5X", "M")
    mixed = grade_pullover(replace(PLAIN, labels=labels, smoothing=smoothing))
    ordered = grade_pullover(replace(PLAIN, labels=("XS", "M", "L", "5X"), smoothing=smoothing))
    assert tuple(size.label for size in mixed.sizes) == labels
    assert {size.label: size for size in mixed.sizes} == {size.label: size for size in ordered.sizes}


def test_scaling_the_gauge_and_the_body_together_changes_no_count():
    body = {"bust": 94, "upper_arm": 28, "wrist": 16}
    wishes = {"ease": {"bust": Fraction(8), "upper_arm": Fraction(6), "wrist": Fraction(2)}}
    lengths = {"circumference": 46, "depth": 24, "underarm": 7, "body": 35, "sleeve": 44, "raise": 3, "rib": 5}

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
            band=BandWishes(height=cm["rib"]),
        )
        (size,) = outcomes(grade_pullover(request))
        return size.counts, size.body.rounds, size.sleeve.decrease_rounds, size.sleeve.cuff.stitches

    # a share of the neck depends on the bust: twice the size is compared from where the share no longer falls
    small, large = counts(2), counts(3)
    assert small == large


def test_the_sizes_that_are_impossible_are_the_largest_and_alone_have_no_numbers():
    # the body grows faster than the yoke that has to hold its increases
    made = grade_pullover(replace(PLAIN, yoke=yoke(double_body="never")))
    impossible = [isinstance(size, Impossible) for size in outcomes(made)]
    assert 0 < sum(impossible) < len(impossible)
    assert impossible == sorted(impossible)
    # a plain pullover has neither a front drop nor bust darts, in any size
    without = {("neck", "front_drop"), ("body", "bust_dart_rows")}
    for row in made.table:
        if (row.part, row.item) not in without:
            assert [value is None for value in row.values] == impossible


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


def cm(least: int, most: int):
    return st.integers(least * 10, most * 10).map(lambda tenths: Fraction(tenths, 10))


@in_a_hundred_cases(50)
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
        body=st.builds(BodyWishes, length=st.none() | cm(1, 60), count_rule=st.builds(CountRule, st.integers(1, 40))),
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
        reject()
    for size in outcomes(made):
        if isinstance(size, Impossible):
            assert size.reason
        else:
            assert knit_to_split(size.yoke) == size.counts.split
            assert size.counts.body + 2 * size.counts.sleeve == size.counts.yoke_total + 4 * size.counts.underarm
    assume(any(isinstance(size, KnittedSize) for size in outcomes(made)))
