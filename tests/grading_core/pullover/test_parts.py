"""The parts of one size, where the pullover decides what they are asked; expected values by hand."""

from dataclasses import replace
from fractions import Fraction

import pytest

from grading_core.gauge import Gauge
from grading_core.pullover.grade import grade_pullover
from grading_core.pullover.request import BodyWishes, Changes, EdgeWishes, Gauges, PulloverRequest, SleeveWishes

REQUEST = PulloverRequest(
    gauges=Gauges(Gauge.over(Fraction(22), Fraction(31), Fraction(10)), rib=Gauge(Fraction(2), Fraction(4)))
)


def knit(request: PulloverRequest):
    (size,) = grade_pullover(request).sizes
    return size.outcome


# 2.54 and 5.08 cm at 4 rounds to the cm
@pytest.mark.parametrize(("label", "rounds"), [("4", 10), ("16", 20)])
def test_hem_and_cuff_are_2_in_high_and_1_in_for_a_young_child(label, rounds):
    size = knit(replace(REQUEST, body_table="children", labels=(label,)))
    assert size.body.hem.rounds == size.sleeve.cuff.rounds == rounds


def test_hem_and_cuff_are_as_high_as_asked():
    hem, cuff = EdgeWishes(Fraction(3)), EdgeWishes(Fraction(7))
    size = knit(replace(REQUEST, labels=("M",), body=BodyWishes(hem=hem), sleeve=SleeveWishes(cuff=cuff)))
    assert (size.body.hem.rounds, size.sleeve.cuff.rounds) == (12, 28)


def test_a_length_in_a_nearest_change_has_its_rib():
    short = replace(REQUEST, labels=("M",), sleeve=SleeveWishes(length=Fraction(8), plain_after=12))
    (nearest,) = [each for each in knit(short).nearest if each.field == "sleeve.length"]
    mended = knit(replace(short, sleeve=SleeveWishes(length=nearest.value, plain_after=12)))
    # not a round to spare, though a longer sleeve ends in a narrower cuff
    assert len(mended.sleeve.decrease_rounds) + 12 == mended.sleeve.rounds
    assert mended.finished.sleeve_length == nearest.value


def test_a_sleeve_of_12_cm_is_not_drawn_in_to_the_wrist():
    size = knit(replace(REQUEST, labels=("M",), sleeve=SleeveWishes(length=Fraction(12))))
    arm, wrist, part = size.target.upper_arm, size.target.long_wrist, 12 / size.target.long_sleeve
    # a rib of two stitches to the cm, on a multiple of two
    assert abs(size.finished.wrist - (arm + (wrist - arm) * part)) <= Fraction(1, 2)
    assert len(size.sleeve.decrease_rounds) < size.sleeve.rounds / 2


def test_a_change_of_ease_that_leaves_no_body_offers_a_body_length_among_the_changes():
    impossible = knit(replace(REQUEST, labels=("M",), changes=Changes(ease={"bust": Fraction(400)})))
    assert ("changes", "body_length") in [each.path for each in (*impossible.nearest, *impossible.together)]
