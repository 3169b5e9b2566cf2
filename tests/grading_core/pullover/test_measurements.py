"""What every size should measure, and what in it leaves nothing to knit, or too much; expected values by hand."""

from dataclasses import replace
from fractions import Fraction

import pytest

from grading_core.gauge import Gauge
from grading_core.pullover.bodies import Wearer
from grading_core.pullover.lengths import Asked
from grading_core.pullover.measurements import (
    extra_problems,
    fall_problems,
    nothing_to_knit,
    smallest_first,
    target_measurements,
)
from grading_core.pullover.request import Fabrics, LevelWish, NeckWishes, Shares
from grading_core.sizes.request import EvenSteps

BODY = {
    "bust": Fraction(94),
    "upper_arm": Fraction(28),
    "wrist": Fraction(16),
    "waist": Fraction(76),
    "arm_length": Fraction(43),
    "back_waist_length": Fraction(42),
}
WEARER = Wearer("M", BODY, child=False, young=False)
GAUGE = Gauge(Fraction(2), Fraction(3))
FABRICS = Fabrics(GAUGE, GAUGE, GAUGE)


def asked(**lengths):
    return {name: Asked(("asked", name), length) for name, length in lengths.items()}


def targets(lengths, neck=NeckWishes(), levels=(), wearers=(WEARER,)):  # noqa: B008
    return target_measurements(wearers, lengths, neck, levels)


def test_what_is_not_asked_follows_from_the_body():
    (target,) = targets({})
    # a tenth of 94; a fifth of 28; 31 and 16 %; 22.5 and a tenth of 13.4; 7 %
    assert target.bust == Fraction("103.4")
    assert target.upper_arm == Fraction("33.6")
    assert target.neck == Fraction("46.04")
    assert target.depth == Fraction("23.84")
    assert target.underarm == Fraction("7.238")
    assert target.wrist == Fraction("18.5")
    assert target.sleeve_length == 43
    # 6 in below the waist, less the yoke and a raise of 1 in
    assert target.body_length == 42 + Fraction("15.24") - Fraction("23.84") - Fraction("2.54")


def test_a_child_s_pullover_ends_4_in_below_the_waist():
    (adult,), (child,) = targets({}), targets({}, wearers=(replace(WEARER, child=True),))
    assert adult.body_length - child.body_length == Fraction("5.08")


def test_a_dropped_front_leaves_the_back_without_a_raise():
    (raised,), (dropped,) = targets({}), targets({}, NeckWishes(front_drop=Fraction(3)))
    assert dropped.body_length - raised.body_length == Fraction("2.54")


def test_an_ease_is_added_to_the_body_and_a_length_is_taken_as_it_is():
    (target,) = targets(asked(bust=Fraction(6), depth=Fraction(20), sleeve_length=Fraction(30)))
    assert (target.bust, target.depth, target.sleeve_length) == (100, 20, 30)
    # the proportions go by what is asked: 7 % of 100 cm, and the yoke's 20 cm leave more body
    assert target.underarm == 7
    assert target.body_length == 42 + Fraction("15.24") - 20 - Fraction("2.54")


def test_the_front_is_as_wide_and_as_long_as_the_back_unless_asked_otherwise():
    (usual,), (shaped,) = targets({}), targets(asked(front_extra=Fraction(3), bust_darts=Fraction(2)))
    assert (usual.front_extra, usual.front_length) == (0, usual.body_length)
    assert (shaped.front_extra, shaped.front_length, shaped.bust) == (3, usual.body_length + 2, usual.bust)


def test_even_steps_and_lists_give_each_size_its_own():
    three = [replace(WEARER, label=label) for label in "SML"]
    lengths = asked(depth=EvenSteps(Fraction(20), Fraction(24)), underarm=(Fraction(6), Fraction(8), Fraction(9)))
    made = targets(lengths, levels=[LevelWish("waist", (Fraction(14), Fraction(15), Fraction(16)))], wearers=three)
    assert [target.depth for target in made] == [20, 22, 24]
    assert [target.underarm for target in made] == [6, 8, 9]
    assert [target.levels[0].below_cm for target in made] == [14, 15, 16]


def test_shares_of_the_neck_are_in_any_measure():
    (target,) = targets({}, NeckWishes(shares=Shares(Fraction(3), Fraction(2), Fraction(1))))
    assert (target.back_share, target.front_share) == (Fraction(3, 7), Fraction(2, 7))


def test_sizes_rank_by_bust_then_by_upper_arm():
    stout = Wearer("B", BODY | {"upper_arm": Fraction(30)}, child=False, young=False)
    small = Wearer("small", BODY | {"bust": Fraction(80), "upper_arm": Fraction(35)}, child=False, young=False)
    wearers = [stout, WEARER, small]
    assert [target.label for target in smallest_first(wearers, targets({}, wearers=wearers))] == ["small", "M", "B"]


@pytest.mark.parametrize(
    ("lengths", "neck", "paths"),
    [
        ({"bust": Fraction(-94)}, NeckWishes(), [("asked", "bust")]),
        ({"sleeve_length": Fraction(0)}, NeckWishes(), [("asked", "sleeve_length")]),
        ({"depth": Fraction(60)}, NeckWishes(), [("body", "length"), ("asked", "depth")]),
        ({}, NeckWishes(raise_height=Fraction(40)), [("body", "length"), ("yoke", "depth"), ("neck", "raise_height")]),
        ({"neck": Fraction(7)}, NeckWishes(), [("asked", "neck"), ("yoke", "line_stitches")]),
    ],
)
def test_what_leaves_nothing_to_knit_is_told_with_the_wishes_that_would_mend_it(lengths, neck, paths):
    lengths = asked(**lengths)
    (target,) = targets(lengths, neck)
    impossible = nothing_to_knit(target, WEARER, lengths, neck, 2, FABRICS)
    assert [nearest.path for nearest in impossible.nearest] == paths


@pytest.mark.parametrize("name", ["front_extra", "bust_darts"])
def test_an_extra_of_less_than_nothing_is_told(name):
    two = [replace(WEARER, label="S"), replace(WEARER, label="M")]
    lengths = asked(**{name: EvenSteps(Fraction(1), Fraction(-1))})
    (problem,) = extra_problems(targets(lengths, wearers=two), lengths)
    assert problem.path == ("asked", name)
    assert "size M" in problem.detail


def test_a_neck_that_is_too_narrow_for_its_lines_says_which_have_room():
    # 46.04 cm have 11.5 stitches at 4 cm each: 3.5 beside four lines of two, and no line leaves 8
    wide = Gauge(Fraction(1, 4), Fraction(1, 4))
    (target,) = targets({})
    impossible = nothing_to_knit(target, WEARER, {}, NeckWishes(), 2, Fabrics(wide, wide, wide))
    assert "3.5 stitches" in impossible.reason
    assert ("yoke", "line_stitches") in [each.path for each in impossible.nearest]
    assert [each.value for each in impossible.nearest] == [Fraction(65), 0]


def test_what_can_be_knitted_leaves_something_everywhere():
    (target,) = targets({})
    assert nothing_to_knit(target, WEARER, {}, NeckWishes(), 2, FABRICS) is None


def test_a_length_that_makes_a_measurement_fall_is_told_and_one_that_follows_is_not():
    two = [replace(WEARER, label="S"), replace(WEARER, label="M")]
    lengths = asked(bust=(Fraction(10), Fraction(8)))
    rising = targets(lengths, wearers=two)
    assert rising[1].depth < rising[0].depth
    (problem,) = fall_problems(rising, lengths)
    assert (problem.path, problem.detail) == (
        ("asked", "bust"),
        "makes the bust fall from 104.0 cm in S to 102.0 cm in M.",
    )
