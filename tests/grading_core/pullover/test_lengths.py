"""Where lengths are asked for, in the design and among a maker's changes."""

from fractions import Fraction

import pytest

from grading_core.pullover.lengths import (
    asked_lengths,
    changed_lengths,
    ease_problems,
    length_problems,
    level_lengths,
    place,
)
from grading_core.pullover.request import BodyWishes, Changes, LevelWish, NeckWishes, SleeveWishes, YokeWishes

TWO = (Fraction(40), Fraction(42))
DESIGN = asked_lengths({"bust": Fraction(10)}, NeckWishes(), YokeWishes(), BodyWishes(length=TWO), SleeveWishes())
CHANGED = {
    **DESIGN,
    **changed_lengths(Changes(ease={"bust": Fraction(4), "wrist": Fraction(3)}, sleeve_length=Fraction(40))),
}


@pytest.mark.parametrize(
    ("measurement", "design", "changed"),
    [
        ("bust", ("ease", "bust"), ("changes", "ease", "bust")),
        ("wrist", ("ease", "wrist"), ("changes", "ease", "wrist")),
        ("body_length", ("body", "length"), ("body", "length")),
        ("sleeve_length", ("sleeve", "length"), ("changes", "sleeve_length")),
        ("underarm", ("yoke", "underarm"), ("yoke", "underarm")),
    ],
)
def test_a_measurement_is_asked_for_where_it_takes_effect(measurement, design, changed):
    assert place(DESIGN, measurement) == design
    assert place(CHANGED, measurement) == changed


def test_a_change_takes_the_place_of_the_design_s_wish():
    assert CHANGED["bust"].length == 4
    assert CHANGED["body_length"].length == TWO


def test_only_a_list_must_have_a_length_for_each_size():
    levels = level_lengths([LevelWish("waist", Fraction(16)), LevelWish("hip", (Fraction(30),))])
    problems = [problem for asked in (*DESIGN.values(), *levels) for problem in length_problems(asked, 3)]
    assert [(problem.path, problem.detail) for problem in problems] == [
        (("body", "length"), "has 2 values for 3 sizes."),
        (("body", "levels", 1, "below"), "has 1 value for 3 sizes."),
    ]


def test_waist_and_hip_have_ease_only_where_the_body_is_shaped_to_them():
    levels = [LevelWish("waist", Fraction(16))]
    assert [problem.path for problem in ease_problems(["bust", "waist", "hip"], levels)] == [("ease", "hip")]
