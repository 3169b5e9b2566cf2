"""Yokes unlike the usual ones, and total lengths that jump or fall."""

from __future__ import annotations

from dataclasses import replace
from fractions import Fraction

import pytest

from grading_core.pullover.grade import grade_pullover
from grading_core.pullover.proportions import usual_depth_cm
from grading_core.pullover.request import BodyWishes, Changes, YokeWishes
from grading_core.sizes.request import SentSize
from grading_core.yoke.request import Adjustment
from tests.grading_core.pullover.knitted_pullovers import PLAIN

M = replace(PLAIN, labels=("M",))

LENGTHS = {"yoke_shallower_than_usual", "yoke_deeper_than_usual", "total_length_falls", "total_length_jumps"}


def said(request_):
    return [remark for remark in grade_pullover(request_).remarks if remark.code in LENGTHS]


def deep(depth):
    return replace(M, yoke=YokeWishes(depth=Fraction(depth)))


def changed(**adjustment):
    return replace(M, changes=Changes(yoke=Adjustment(**{name: Fraction(cm) for name, cm in adjustment.items()})))


# the usual depth of M is asked of the proportions, and an eighth of it goes either way
USUAL = usual_depth_cm(Fraction("93.98") * Fraction(11, 10))


@pytest.mark.parametrize(
    ("request_", "code", "path", "near"),
    [
        (deep(USUAL * 85 / 100), "yoke_shallower_than_usual", ("yoke", "depth"), deep(USUAL * 90 / 100)),
        (deep(USUAL * 115 / 100), "yoke_deeper_than_usual", ("yoke", "depth"), deep(USUAL * 110 / 100)),
        (
            changed(depth_cm=USUAL * 85 / 100),
            "yoke_shallower_than_usual",
            ("changes", "yoke"),
            changed(depth_cm=USUAL * 90 / 100),
        ),
        (changed(depth_change_cm=4), "yoke_deeper_than_usual", ("changes", "yoke"), changed(depth_change_cm=2)),
    ],
)
def test_a_yoke_is_unusual_from_an_eighth_on(request_, code, path, near):
    (remark,) = said(request_)
    assert (remark.code, remark.size, remark.path) == (code, "M", path)
    assert remark.message.values["usual"] == USUAL
    assert said(near) == []


def test_the_body_length_that_is_offered_restores_the_usual_total_length():
    request_ = changed(depth_change_cm=-4)
    (remark,) = said(request_)
    (usual,) = grade_pullover(M).sizes
    offered = remark.message.values["total"].values["restored"]
    changes = replace(request_.changes, body_length=offered)
    (size,) = grade_pullover(replace(request_, changes=changes)).sizes
    total = size.outcome.finished.total_length
    assert abs(total - usual.outcome.finished.total_length) <= Fraction(1, 2)
    # without it the whole garment is as much shorter as the yoke
    (shorter,) = grade_pullover(request_).sizes
    assert remark.message.values["total"].values["total"] == shorter.outcome.finished.total_length


def test_a_body_that_makes_up_for_the_yoke_is_said_to():
    (remark,) = said(deep(30))
    assert remark.message.values["total"].id == "warning.total_kept"
    (kept,) = said(replace(deep(30), body=BodyWishes(length=Fraction(35))))
    assert kept.message.values["total"].id != "warning.total_kept"


def test_a_depth_that_nobody_asked_for_is_usual():
    assert said(PLAIN) == []


def lengths(*cm):
    return replace(PLAIN, labels=("S", "M", "L"), body=BodyWishes(length=tuple(map(Fraction, cm))))


def test_a_total_length_that_falls_names_both_sizes_and_what_makes_it_fall():
    (remark,) = said(lengths(40, 37, 37))
    assert (remark.code, remark.size, remark.path) == ("total_length_falls", "M", ("body", "length"))
    assert (remark.message.values["smaller"], remark.message.values["larger"]) == ("S", "M")
    assert [cause.id for cause in remark.message.values["because"].values["causes"]] == ["cause.length"]
    assert remark.message.values["steps"].id == "warning.length_steps_and_back"
    # the yoke grows by more than a centimetre from size to size, so that a body may lose as much
    assert said(lengths(40, 39, 39)) == []


def test_a_total_length_that_jumps_names_both_sizes_and_what_makes_it_jump():
    (remark,) = said(lengths(38, 38, 42))
    assert (remark.code, remark.size, remark.path) == ("total_length_jumps", "L", ("body", "length"))
    # a yoke that grows by 1, a body by 2: less than 3 beyond the body's own back, which grows by a quarter of an inch
    assert said(lengths(38, 38, 40)) == []


def test_sizes_far_apart_grow_by_more_and_make_no_jump():
    assert said(replace(PLAIN, labels=("XS", "M", "5X"))) == []


def sent(label, bust, **lengths):
    body = {"bust": bust, "upper_arm": bust * 3 // 10, "wrist": 16, "arm_length": 43, **lengths}
    return SentSize(label, {name: Fraction(cm) for name, cm in body.items()})


def test_where_the_growth_of_the_back_is_not_known_a_jump_is_more_than_six_centimetres():
    def jumps(larger):
        sizes = (sent("one", 90), sent("two", 94))
        return said(replace(PLAIN, sizes=sizes, body=BodyWishes(length=(Fraction(38), Fraction(larger)))))

    assert jumps(42) == []
    (remark,) = jumps(45)
    assert (remark.code, remark.path) == ("total_length_jumps", ("body", "length"))
    assert remark.message.values["steps"].id == "warning.length_steps"


def test_a_back_that_is_sent_longer_makes_no_jump():
    sizes = (sent("one", 90, back_waist_length=40), sent("two", 94, back_waist_length=48))
    assert said(replace(PLAIN, sizes=sizes)) == []


def test_backs_that_fall_make_no_usual_total_length_fall():
    sizes = (sent("one", 90, back_waist_length=44), sent("two", 94, back_waist_length=40))
    assert said(replace(PLAIN, sizes=sizes)) == []
