"""Sleeves against printed patterns and teaching articles."""

from __future__ import annotations

from fractions import Fraction

import pytest

from grading_core.gauge import Gauge
from grading_core.parts.ribbing import Rib
from grading_core.parts.sleeve import Sleeve, shape_sleeve
from grading_core.rounding import CountRule

PER_CM = Gauge(Fraction(1), Fraction(1))
CUFF = Rib(gauge=PER_CM, height_cm=Fraction(10), rule=CountRule(2))


def sleeve(stitches: int, left: int, rounds: int, **options) -> Sleeve:
    """A sleeve in a fabric of one stitch and one row to the cm, so that lengths are counts."""
    made = shape_sleeve(
        stitches, length_cm=Fraction(rounds + 10), gauge=PER_CM, cuff=CUFF, wrist_cm=Fraction(left), **options
    )
    assert isinstance(made, Sleeve)
    return made


@pytest.mark.parametrize(
    ("stitches", "plain", "every", "times", "left"),
    # a magazine's errata for a raglan in 12 sizes (Yarn Forward no. 7)
    list(
        zip(
            (48, 52, 56, 60, 66, 70, 74, 80, 84, 88, 92, 98),
            (0, 0, 0, 0, 7, 7, 7, 0, 8, 8, 0, 11),
            (13, 13, 10, 10, 7, 7, 6, 6, 5, 5, 5, 4),
            (7, 7, 9, 9, 12, 12, 14, 15, 17, 17, 19, 20),
            (34, 38, 38, 42, 42, 46, 46, 50, 50, 54, 54, 58),
            strict=True,
        )
    ),
)
def test_one_interval_with_the_surplus_worked_first_is_the_magazines_schedule(stitches, plain, every, times, left):
    made = sleeve(stitches, left, plain + every * times, spacing="plain_then_single")
    assert made.decrease_rounds == tuple(plain + every * count for count in range(1, times + 1))
    assert (made.cuff.before, made.cuff.change) == (left, 0)


def test_eight_decrease_rounds_in_78_are_spaced_by_the_shaping_formula():
    # 62 to 46 stitches over 9.5 in of 8.25 rounds (set-up of a teaching article; the answer is the formula's)
    made = sleeve(62, 46, 78)
    assert [(phase.every, phase.times) for phase in made.phases] == [((9,), 2), ((10,), 6)]


def test_an_inch_plain_at_the_top_and_before_the_cuff_leaves_84_rounds_for_the_shaping():
    # 18 in long, 2 in of cuff, 6 rounds to the inch (a teaching article on sleeves)
    inch = Fraction(254, 100)
    six = Gauge(5 / inch, 6 / inch)
    cuff = Rib(gauge=six, height_cm=2 * inch, rule=CountRule(2))
    made = shape_sleeve(64, length_cm=18 * inch, gauge=six, cuff=cuff, wrist_cm=8 * inch, plain_before=6, plain_after=6)
    assert isinstance(made, Sleeve)
    assert (made.rounds, made.rounds - 6 - 6) == (96, 84)
    assert made.decrease_rounds == tuple(range(13, 91, 7))
