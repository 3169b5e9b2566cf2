"""Who wears each size, and what the pullover needs of the bodies."""

from fractions import Fraction

import pytest

from grading_core.pullover.bodies import find_wearers, missing_measurements, needed_measurements
from grading_core.pullover.lengths import Asked
from grading_core.pullover.request import LevelWish
from grading_core.sizes.bodies import BodyValue, SizeBody


def body(**measurements: str) -> SizeBody:
    return SizeBody("one", {name: BodyValue(Fraction(cm), "sent") for name, cm in measurements.items()})


# the published chest of 6 years is 63.5 cm, of 8 years 67 cm
@pytest.mark.parametrize(
    ("table", "bust", "child", "young"),
    [
        ("children", "63.5", True, True),
        ("children", "67", True, False),
        ("babies", "41", True, True),
        (None, "63.5", True, True),
        ("women", "76", False, False),
    ],
)
def test_a_young_child_has_a_small_bust_and_a_child_a_table_of_children(table, bust, child, young):
    (wearer,) = find_wearers([body(bust=bust)], table)
    assert (wearer.child, wearer.young) == (child, young)


@pytest.mark.parametrize(("arm", "to_wrist", "known"), [("sent", "published", False), ("sent", "sent", True)])
def test_the_reach_of_a_table_is_not_that_of_an_arm_that_is_sent(arm, to_wrist, known):
    values = {
        "bust": BodyValue(Fraction(94), "sent"),
        "arm_length": BodyValue(Fraction(60), arm),
        "back_neck_to_wrist": BodyValue(Fraction(72), to_wrist),
    }
    (wearer,) = find_wearers([SizeBody("one", values)], "women")
    assert ("back_neck_to_wrist" in wearer.body) is known


@pytest.mark.parametrize(
    ("table", "bust", "age"),
    # the published chest of 24 months is 50.8 cm, of 2 years 53.3 cm
    [("babies", "50.8", "baby"), ("children", "53.3", "child"), ("women", "73", "adult"), (None, "50", "baby")],
)
def test_an_age_follows_from_the_bust_and_the_table(table, bust, age):
    (wearer,) = find_wearers([body(bust=bust)], table)
    assert wearer.age == age


GIRTHS = {"bust": "94", "upper_arm": "28", "wrist": "16"}


@pytest.mark.parametrize(
    ("measurements", "asked", "lacking"),
    [
        ({}, (), "arm_length and back_waist_length"),
        ({"arm_length": "43", "back_hip_length": "60"}, (), ""),
        ({"arm_length": "43"}, ("body_length",), ""),
        ({"back_waist_length": "42"}, ("sleeve_length",), ""),
        ({}, ("body_length", "sleeve_length"), ""),
    ],
)
def test_a_length_that_is_asked_needs_no_measurement(measurements, asked, lacking):
    lengths = {name: Asked((name,), Fraction(40)) for name in asked}
    problems = [*missing_measurements(body(**GIRTHS, **measurements), needed_measurements(lengths, []))]
    assert [problem.detail.split(":")[0] for problem in problems] == ([f"lacks {lacking}"] if lacking else [])


def test_a_level_needs_its_measurement_in_every_size():
    lengths = {name: Asked((name,), Fraction(40)) for name in ("body_length", "sleeve_length")}
    needed = needed_measurements(lengths, [LevelWish("waist", Fraction(16))])
    assert [*missing_measurements(body(**GIRTHS, waist="76"), needed)] == []
    (problem,) = missing_measurements(body(**GIRTHS), needed)
    assert problem.detail.startswith("lacks waist:")
