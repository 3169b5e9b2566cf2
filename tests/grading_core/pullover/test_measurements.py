"""What every size should measure, and what in it leaves nothing to knit, or too much; expected values by hand."""

from dataclasses import replace
from fractions import Fraction

import pytest

from grading_core.gauge import Gauge
from grading_core.pullover.bodies import Wearer
from grading_core.pullover.lengths import Asked
from grading_core.pullover.measurements import extra_problems, fall_problems, nothing_to_knit, target_measurements
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
RAISE = 3 + (94 / Fraction("2.54") - 29) * Fraction(3, 63 - 29)
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
    # 3 cm at a bust of 29 in to 6 cm at 63 in
    assert target.raise_height == RAISE
    # 6 in below the waist, less the yoke and the raise
    assert target.body_length == 42 + Fraction("15.24") - Fraction("23.84") - RAISE


def test_a_child_s_pullover_ends_4_in_below_the_waist():
    level = NeckWishes(lower_front="none")
    (adult,), (child,) = targets({}, level), targets({}, level, wearers=(replace(WEARER, child=True),))
    assert adult.body_length - child.body_length == Fraction("5.08")


@pytest.mark.parametrize(
    ("wishes", "raised", "dropped"),
    [
        ({"lower_front": "front_drop"}, 0, RAISE),
        ({"lower_front": "both"}, RAISE / 2, RAISE / 2),
        ({"lower_front": "none"}, 0, 0),
        ({"front_drop": Fraction(3)}, 0, 3),
    ],
)
def test_the_front_lies_lower_by_the_way_asked_and_the_body_begins_below_the_raise(wishes, raised, dropped):
    (target,) = targets({}, NeckWishes(**wishes))
    assert (target.raise_height, target.front_drop) == (raised, dropped)
    assert target.body_length == 42 + Fraction("15.24") - Fraction("23.84") - raised


@pytest.mark.parametrize(("style", "part"), [("three_quarter", "0.75"), ("elbow", "0.5"), ("short", "0.25")])
def test_a_shorter_style_ends_in_a_cuff_as_wide_as_the_arm_is_there(style, part):
    (target,) = target_measurements((WEARER,), {}, NeckWishes(), (), style=style)
    assert target.sleeve_length == 43 * Fraction(part)
    assert target.wrist == Fraction("33.6") + (Fraction("18.5") - Fraction("33.6")) * Fraction(part)
    # an asked length ends where it ends, whatever the style
    (asked_for,) = target_measurements((WEARER,), asked(sleeve_length=target.sleeve_length), NeckWishes(), ())
    assert asked_for.wrist == target.wrist == asked_for.cuff_cm(target.sleeve_length)


def test_without_an_arm_length_the_cuff_goes_by_the_style_alone():
    wearer = replace(WEARER, body={name: cm for name, cm in BODY.items() if name != "arm_length"})
    lengths = asked(sleeve_length=Fraction(40))
    for style, wrist in (("long", "18.5"), ("elbow", "26.05")):
        (target,) = target_measurements((wearer,), lengths, NeckWishes(), (), style=style)
        assert target.wrist == target.cuff_cm(Fraction(9)) == Fraction(wrist)


def test_a_longer_sleeve_than_a_long_one_ends_as_a_long_one_does():
    (target,) = targets(asked(sleeve_length=Fraction(60)))
    assert target.wrist == Fraction("18.5")


def test_an_ease_is_added_to_the_body_and_a_length_is_taken_as_it_is():
    (target,) = targets(asked(bust=Fraction(6), depth=Fraction(20), sleeve_length=Fraction(30)))
    assert (target.bust, target.depth, target.sleeve_length) == (100, 20, 30)
    # the proportions go by what is asked: 7 % of 100 cm, and the yoke's 20 cm leave more body
    assert target.underarm == 7
    assert target.body_length == 42 + Fraction("15.24") - 20 - RAISE


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
    impossible = nothing_to_knit(target, WEARER, lengths, 2, FABRICS)
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
    impossible = nothing_to_knit(target, WEARER, {}, 2, Fabrics(wide, wide, wide))
    assert round(impossible.reason.values["stitches"], 1) == Fraction("3.5")
    assert ("yoke", "line_stitches") in [each.path for each in impossible.nearest]
    assert [each.value for each in impossible.nearest] == [Fraction(65), 0]


def test_what_can_be_knitted_leaves_something_everywhere():
    (target,) = targets({})
    assert nothing_to_knit(target, WEARER, {}, 2, FABRICS) is None


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
