"""The making of one version, as a whole and otherwise."""

from __future__ import annotations

from dataclasses import replace
from fractions import Fraction

import pytest

from grading_core.pullover.bodies import find_wearers
from grading_core.pullover.changes import Version
from grading_core.pullover.grade import grade_pullover
from grading_core.pullover.lengths import asked_lengths
from grading_core.pullover.making import Making
from grading_core.pullover.request import BodyWishes, SleeveWishes, YokeWishes
from grading_core.pullover.targets import count_rules
from grading_core.sizes.bodies import size_bodies
from tests.grading_core.pullover.knitted_pullovers import PLAIN, outcomes

SIZES = replace(PLAIN, labels=("L", "S"))


def making_of(asked) -> Making:
    neck, yoke, body, sleeve = asked.neck, asked.yoke, asked.body, asked.sleeve
    lengths = asked_lengths(asked.ease, neck, yoke, body, sleeve)
    version = Version(gauges=asked.gauges, lengths=lengths, sleeve_style=sleeve.style, band=asked.band)
    wearers = find_wearers(size_bodies(asked.bodies), "women")
    return Making.of(asked, wearers, version, count_rules(neck, yoke, body, sleeve, None))


@pytest.fixture(scope="module")
def making() -> Making:
    return making_of(replace(SIZES, yoke=YokeWishes(depth=Fraction(21)), sleeve=SleeveWishes(length=Fraction(40))))


def test_it_is_knitted_as_the_answer_has_it_whatever_the_order_of_its_sizes():
    making = making_of(SIZES)
    assert [target.label for target in making.targets] == ["S", "L"]
    counts = making.solve().by_label
    levels = making.level_stitches(counts)
    knitted = [making.knit(counts, levels, label) for label in ("L", "S")]
    assert [size.counts for size in knitted] == [size.counts for size in outcomes(grade_pullover(SIZES))]


def test_a_length_that_is_not_asked_for_is_the_usual_one_and_leaves_what_it_leaves(making):
    plain = making_of(SIZES)
    freed = making.with_length("depth", making.usual("depth"))
    for size, usual in zip(freed.measurements, plain.measurements, strict=True):
        assert (size.depth, size.body_length) == (usual.depth, usual.body_length)
        assert size.sleeve_length == 40


def test_what_a_length_leaves_stays_where_it_is_asked_for():
    asked = making_of(replace(SIZES, yoke=YokeWishes(depth=Fraction(21)), body=BodyWishes(length=Fraction(36))))
    freed = asked.with_length("depth", asked.usual("depth"))
    assert {size.body_length for size in freed.measurements} == {36}


def test_some_sizes_are_made_without_the_others(making):
    alone = replace(making, labels=frozenset({"S"}))
    assert alone.rising == making.measurements[1:]
    assert [*alone.solve().by_label] == ["S"]
