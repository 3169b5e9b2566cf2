"""Who wears each size, and what the pullover needs of the bodies."""

from fractions import Fraction

import pytest

from grading_core.pullover.bodies import find_wearers, missing_measurements
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
    problems = [*missing_measurements([body(**GIRTHS, **measurements)], lengths, [])]
    assert [problem.detail.split(":")[0] for problem in problems] == ([f"lacks {lacking}"] if lacking else [])


def test_a_level_needs_its_measurement_in_every_size():
    lengths = {name: Asked((name,), Fraction(40)) for name in ("body_length", "sleeve_length")}
    bodies = [body(**GIRTHS, waist="76"), body(**GIRTHS)]
    problems = [*missing_measurements(bodies, lengths, [LevelWish("waist", Fraction(16))])]
    assert [problem.path for problem in problems] == [("sizes", 1)]
