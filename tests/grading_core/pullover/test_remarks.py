"""What the answer says beside its numbers."""

from __future__ import annotations

from dataclasses import replace
from fractions import Fraction

import pytest

from grading_core.gauge import Gauge
from grading_core.pullover.grade import grade_pullover
from grading_core.pullover.request import (
    BandWishes,
    BodyWishes,
    Changes,
    EdgeWishes,
    Gauges,
    PulloverRequest,
    RuleChange,
)
from grading_core.standards import BODY_TABLES
from tests.grading_core.pullover.knitted_pullovers import PLAIN

MISFITS = {
    "far_from_wanted",
    "girth_below_body",
    "cuff_too_tight_for_hand",
    "cuff_binds",
    "yoke_shallower_than_usual",
    "yoke_deeper_than_usual",
}
"""What a garment of the usual proportions has in no published size."""


@pytest.mark.parametrize(
    "wishes",
    [
        {"band": BandWishes(count_rule=RuleChange(300))},
        {"body": BodyWishes(hem=EdgeWishes(count_rule=RuleChange(300)))},
        {"body": BodyWishes(length=Fraction(1))},
    ],
)
def test_what_comes_out_far_from_what_was_asked_is_said(wishes):
    codes = {remark.code for remark in grade_pullover(replace(PLAIN, labels=("M",), **wishes)).remarks}
    assert codes == {"far_from_wanted"}


@pytest.mark.parametrize("table", BODY_TABLES)
@pytest.mark.parametrize(("stitches", "rounds"), [(16, 22), (22, 31), (30, 42)])
def test_a_garment_of_the_usual_proportions_fits_every_published_size(table, stitches, rounds):
    gauges = Gauges(Gauge.over(Fraction(stitches), Fraction(rounds), Fraction(10)))
    remarks = grade_pullover(PulloverRequest(gauges=gauges, body_table=table)).remarks
    assert [remark for remark in remarks if remark.code in MISFITS] == []


def test_estimated_bodies_are_named_once_for_each_measurement_that_is_used():
    def estimated(made):
        return [remark for remark in made.remarks if remark.code == "estimated_body"]

    (remark,) = estimated(grade_pullover(PLAIN))
    assert remark.message.values == {"measure": "wrist", "sizes": ("XS", "2X", "3X", "4X", "5X")}
    assert estimated(grade_pullover(replace(PLAIN, labels=("S", "M")))) == []
    # the men's back waist is estimated in large sizes, but the hip length makes the body
    (men,) = estimated(grade_pullover(replace(PLAIN, body_table="men")))
    assert men.message.values["measure"] == "wrist"


def test_counts_that_a_maker_keeps_are_warned_of_as_they_come_out_at_the_makers_gauge():
    def kept(stitches):
        gauges = Gauges(Gauge.over(Fraction(stitches), Fraction(31), Fraction(10)))
        return replace(PLAIN, labels=("M",), changes=Changes(gauges=gauges, keep_counts=True))

    # 226 stitches at 22 to 10 cm are 102.7 cm, at 25 90.4 cm, and the bust is 93.98 cm
    said = {(each.code, each.path) for each in grade_pullover(kept(25)).remarks if each.code in MISFITS}
    assert ("girth_below_body", ("changes",)) in said
    assert {path for _, path in said} == {("changes",)}
    assert [each for each in grade_pullover(kept(22)).remarks if each.code in MISFITS] == []
