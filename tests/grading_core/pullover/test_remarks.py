"""What the answer says beside its numbers."""

from __future__ import annotations

from dataclasses import replace
from fractions import Fraction

import pytest

from grading_core.pullover.grade import grade_pullover
from grading_core.pullover.request import BandWishes, BodyWishes, EdgeWishes
from grading_core.rounding import CountRule
from tests.grading_core.pullover.knitted_pullovers import PLAIN


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
    assert ["wrist" in each.message for each in estimated(grade_pullover(replace(PLAIN, body_table="men")))] == [True]
