"""The proportions of a wearable pullover: what every size should come to unless told otherwise.

Published rules and garments stand behind each default; they are named beside it. Each is a line or a share, so that
any size between and beyond the published ones has one too, and none of them falls as sizes rise.
"""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass
from types import MappingProxyType
from typing import Literal

from grading_core.fraction import Fraction
from grading_core.rounding import CountRule
from grading_core.standards import Measurement
from grading_core.units import CM_PER_INCH
from grading_core.yoke.request import Options

Age = Literal["baby", "child", "adult"]

SleeveStyle = Literal["long", "three_quarter", "elbow", "short"]

SLEEVE_PARTS: Mapping[SleeveStyle, Fraction] = MappingProxyType(
    {"long": Fraction(1), "three_quarter": Fraction(3, 4), "elbow": Fraction(1, 2), "short": Fraction(1, 4)}
)
"""The part of a long sleeve, from underarm to wrist, that a sleeve of each style has (common practice, no source)."""

QUARTER_DEPTH_UP_TO_CM = Fraction(90)
"""Finished bust up to which a yoke is a quarter of it deep."""

YOUNG_CHILD_BUST_CM = Fraction(66)
"""Below it the wearer is a baby or a young child: the published chest of 6 years is 63.5 cm, of 8 years 67 cm."""

BABY_BUST_CM = Fraction(52)
"""Below it the wearer is a baby: the published chest of 24 months is 50.8 cm, of 2 years 53.3 cm."""

LEAST_ADULT_LENGTH_CM = 23 * CM_PER_INCH
"""Of an adult's pullover, from the back of the neck to the hem: a woman's S as its chart has it, 17 in to the waist and
6 in. The rule for men makes their S an inch shorter than that."""

AT_THE_WRIST = Fraction(9, 10)
"""From this part of a long sleeve on a sleeve ends at the wrist (a judgement, no source)."""

ARMHOLE_ROOM_CM = Fraction(5, 2)
"""By which an armhole is deeper than the body's (common practice, no source)."""

REACH_WITHIN_CM = Fraction(3)
"""How far a sleeve's end may lie from the wrist (a judgement, no source)."""

USUAL_STRETCH = Fraction(2, 5)
"""A neck of 16 in, 40 % of a 40 in body as a published system has it, must stretch by 0.375 to pass a head of 22 in,
the middle of the published women's range."""

USUAL_BAND_HEIGHT_CM = CM_PER_INCH
"""Of the neckband as worn: 1 in (common practice, no source)."""

USUAL_RIB = CountRule(2)
"""Knit 1, purl 1 (common practice, no source)."""

USUAL_INCREASES = Options(double_body="if_needed")
"""Increases are doubled at the body where a yoke that fits has too few rounds: the way to mend one that would be too
deep for its wearer (common practice, no source)."""

_NOTHING, _WHOLE = Fraction(0), Fraction(1)


def usual_ease(measurement: Measurement, body_cm: Fraction) -> Fraction:
    """Ease in cm: finished less body.

    measurement: "bust", "upper_arm" or "wrist". body_cm: the body's.

    Bust: a tenth, from 5 to 10 cm, the range of the published classic fit. Upper arm: a fifth, from 3 to 7 cm, so that
    the sleeve holds the arm of 95 in 100 people of that bust (see the tests). Wrist: 2.5 cm, a published worksheet.

    >>> float(usual_ease("bust", Fraction(94))), float(usual_ease("upper_arm", Fraction(28)))
    (9.4, 5.6)
    """
    if measurement == "bust":
        return _between(_LEAST_EASE_CM, body_cm / 10, _MOST_EASE_CM)
    if measurement == "upper_arm":
        return _between(_LEAST_ARM_EASE_CM, body_cm / 5, _MOST_ARM_EASE_CM)
    return _WRIST_EASE_CM


_LEAST_EASE_CM, _MOST_EASE_CM = Fraction(5), Fraction(10)
_LEAST_ARM_EASE_CM, _MOST_ARM_EASE_CM = Fraction(3), Fraction(7)
_WRIST_EASE_CM = Fraction(5, 2)


@dataclass(frozen=True, slots=True)
class NeckRange:
    """The circumference of a cast-on in cm: the usual one, and from where to where published shares let it lie."""

    least: Fraction
    usual: Fraction
    most: Fraction


def usual_neck(body: Mapping[Measurement, Fraction], finished_bust_cm: Fraction, age: Age) -> NeckRange:
    """The cast-on for a body.

    body: in cm. finished_bust_cm: of the garment. age: whom it is for.

    Adults: 31 cm and 16 % of the bust. It isn't a share of the girth, since measured neck bases grow by 0.16 cm per cm
    of chest (women of a public survey) and the head hardly grows; a published nine-size raglan is cast on to 42 cm in
    its smallest size. It stays within 33 to 45 % of the finished bust. Children: 50 %, and not more than an adult of
    that bust has. Babies: 60 % at 3 months to 50 % at 24 months, in a straight line along the bust. The shares are
    those of a published system of percentages, as reported for adults, children and infants.

    Where the body has a head that a cast-on stretched by a third (common practice, no source) wouldn't pass, three
    quarters of the head instead.

    >>> float(usual_neck({"bust": Fraction(94)}, Fraction(103), "adult").usual)
    46.04
    >>> float(usual_neck({"bust": Fraction(41), "head": Fraction(40)}, Fraction(46), "baby").usual)
    30.0
    """
    of_adult = 31 + body["bust"] * _NECK_GROWTH
    if age == "adult":
        least, most = finished_bust_cm * _LEAST_NECK, finished_bust_cm * _MOST_NECK
        usual = _between(least, of_adult, most)
    elif age == "child":
        usual = most = min(finished_bust_cm / 2, of_adult)
        least = min(finished_bust_cm * _MOST_NECK, usual)
    else:
        least, most = finished_bust_cm / 2, finished_bust_cm * 60 / 100
        usual = _between(least, _BABY_NECK_CM + (finished_bust_cm - _BABY_FINISHED_CM) * _BABY_NECK_SLOPE, most)
    passing = body["head"] * _PASSING_HEAD if "head" in body else _NOTHING
    usual = max(usual, passing)
    return NeckRange(min(usual, max(least, passing)), usual, max(usual, most))


_NECK_GROWTH = Fraction(16, 100)
_LEAST_NECK, _MOST_NECK = Fraction(33, 100), Fraction(45, 100)
_PASSING_HEAD = Fraction(3, 4)


_BABY_FINISHED_CM = 16 * CM_PER_INCH + 5
_BABY_NECK_CM = _BABY_FINISHED_CM * 60 / 100
_BABY_NECK_SLOPE = ((20 * CM_PER_INCH + 5) / 2 - _BABY_NECK_CM) / (4 * CM_PER_INCH)
"""A baby's finished bust at 3 months, with the least ease, and its neck there; and how that grows to 24 months."""


def usual_lower_front_cm(bust_cm: Fraction, age: Age) -> Fraction:
    """How much lower the front of the neck lies than the back.

    bust_cm: of the body. age: whom it is for.

    Published: necks are 2 to 4 in higher at the back for adults and 1 to 2 in for children (an article on short-row
    necks); 1 to 2 in, and six rows, in others. So 3 cm in the smallest published adult, of a bust of 29 in, to 6 cm in
    the largest, of 63 in; 2 cm at 3 months, of 16 in, to 3.5 cm at 16 years, of 32.5 in.

    >>> float(usual_lower_front_cm(29 * CM_PER_INCH, "adult")), float(usual_lower_front_cm(Fraction(82), "child"))
    (3.0, 3.48...)
    """
    smallest, per_cm, least, most = _ADULT_FRONTS if age == "adult" else _CHILD_FRONTS
    return _between(least, least + (bust_cm - smallest) * per_cm, most)


def _lower_fronts(low: Fraction, high: Fraction, least: Fraction, most: Fraction) -> tuple[Fraction, ...]:
    """A straight line of heights in cm along busts in inches: where it begins in cm, its rise, and its ends."""
    return low * CM_PER_INCH, (most - least) / ((high - low) * CM_PER_INCH), least, most


_ADULT_FRONTS = _lower_fronts(Fraction(29), Fraction(63), Fraction(3), Fraction(6))
_CHILD_FRONTS = _lower_fronts(Fraction(16), Fraction(65, 2), Fraction(2), Fraction(7, 2))


def usual_depth_cm(finished_bust_cm: Fraction) -> Fraction:
    """Depth of a yoke for a finished bust.

    A quarter up to 90 cm (a published system of percentages), and beyond only a tenth more of each cm, as published
    graded garments have it: five of them, 83 to 193 cm round, grow by 0.06 to 0.25 cm per cm.

    >>> float(usual_depth_cm(Fraction(60))), float(usual_depth_cm(Fraction(150)))
    (15.0, 28.5)
    """
    if finished_bust_cm <= QUARTER_DEPTH_UP_TO_CM:
        return finished_bust_cm / 4
    return _DEEPEST_QUARTER_CM + (finished_bust_cm - QUARTER_DEPTH_UP_TO_CM) / 10


_DEEPEST_QUARTER_CM = QUARTER_DEPTH_UP_TO_CM / 4


def least_depth_cm(body: Mapping[Measurement, Fraction], sleeve_top_cm: Fraction) -> Fraction:
    """Depth that a yoke needs for the body's armhole; 0 where the body has none.

    body: in cm. sleeve_top_cm: width of one sleeve at the neck. An armhole is as deep as the raglan and half of that
    width (a published article on designing top-down raglans).

    >>> float(least_depth_cm({"armhole_depth": Fraction(20)}, Fraction(6)))
    19.5
    """
    if "armhole_depth" not in body:
        return _NOTHING
    return body["armhole_depth"] + ARMHOLE_ROOM_CM - sleeve_top_cm / 2


def usual_underarm_cm(finished_bust_cm: Fraction) -> Fraction:
    """Width of one underarm: 7 %, between the 8 % of a published system and the 5 % of its later version.

    >>> float(usual_underarm_cm(Fraction(100)))
    7.0
    """
    return finished_bust_cm * _UNDERARM


_UNDERARM = Fraction(7, 100)


def usual_back_share(bust_cm: Fraction) -> Fraction:
    """The back's part of the neck's stitches, without the raglan lines; the front has as many.

    From a little over a third in small sizes to a little under it in large ones, so that the sleeves' part grows: a
    published nine-size raglan goes from 40 to 29 %, other rules give a third in all sizes.

    >>> float(usual_back_share(Fraction(75))), float(usual_back_share(Fraction(155)))
    (0.37, 0.31)
    """
    return _between(_LEAST_BACK, _BACK_AT_NOTHING - bust_cm * _BACK_LOST, _MOST_BACK)


_LEAST_BACK, _MOST_BACK, _BACK_LOST = Fraction(30, 100), Fraction(38, 100), Fraction(75, 100_000)
_BACK_AT_NOTHING = Fraction(37, 100) + 75 * _BACK_LOST
"""Within what the share stays, what it loses with each cm of bust, and what a bust of 0 would have: 37 % at 75 cm."""


def usual_total_length_cm(body: Mapping[Measurement, Fraction], *, child: bool) -> Fraction | None:
    """From the back of the neck to the hem; None where the body doesn't say.

    body: in cm, with a back hip length or a back waist length. child: whether it is a child's.

    Published length chart: women's hip length 6 in below the waist; children's hip length 2 in and tunic length 6 in,
    the middle of which is taken; men's sweaters end 1 to 2 in above the back hip length, and here not higher than a
    woman's of size S.
    """
    if "back_hip_length" in body:
        length = body["back_hip_length"] - _ABOVE_HIP_CM
        return length if child else max(length, LEAST_ADULT_LENGTH_CM)
    if "back_waist_length" in body:
        return body["back_waist_length"] + CM_PER_INCH * (4 if child else 6)
    return None


_ABOVE_HIP_CM = CM_PER_INCH * 3 / 2


def usual_sleeve_cm(
    arm_cm: Fraction, body: Mapping[Measurement, Fraction], to_underarm_cm: Fraction, age: Age
) -> Fraction:
    """Length of a long sleeve from the underarm.

    arm_cm: the body's, from armpit to wrist. body: in cm. to_underarm_cm: of the garment, from the centre back of the
    neck over the sleeve. age: whom it is for.

    The arm, moved as little as needed for the sleeve to end within 3 cm of the wrist, where the body says how far it is
    from the neck, and a baby's hand to be free; by not more than half of the arm, beyond which the yoke doesn't fit.

    >>> float(usual_sleeve_cm(Fraction(43), {"back_neck_to_wrist": Fraction(70)}, Fraction(31), "adult"))
    42.0
    """
    if "back_neck_to_wrist" not in body:
        return arm_cm
    to_wrist = body["back_neck_to_wrist"] - to_underarm_cm
    longest = to_wrist if age == "baby" else to_wrist + REACH_WITHIN_CM
    return _between(arm_cm / 2, _between(to_wrist - REACH_WITHIN_CM, arm_cm, longest), arm_cm * 3 / 2)


def along_arm_cm(upper_arm_cm: Fraction, wrist_cm: Fraction, part: Fraction) -> Fraction:
    """Girth of an arm, or of a sleeve on it, in a straight line from the upper arm to the wrist.

    upper_arm_cm, wrist_cm: girths. part: of the way from the armpit to the wrist, beyond which it is the wrist's.

    >>> [float(along_arm_cm(Fraction(28), Fraction(16), Fraction(part, 2))) for part in range(4)]
    [28.0, 22.0, 16.0, 16.0]
    """
    if part >= 1:
        return wrist_cm
    return upper_arm_cm + (wrist_cm - upper_arm_cm) * max(_NOTHING, part)


def cuff_cm(upper_arm_cm: Fraction, wrist_cm: Fraction, part: Fraction) -> Fraction:
    """Circumference of a sleeve's end, which follows the arm.

    upper_arm_cm, wrist_cm: of a long sleeve. part: of a long sleeve that it has; one that ends near the wrist is as
    wide as there, for a shorter arm has its wrist there.

    >>> [float(cuff_cm(Fraction(34), Fraction(18), Fraction(part, 20))) for part in (5, 10, 18, 20)]
    [30.0, 26.0, 18.0, 18.0]
    """
    return along_arm_cm(upper_arm_cm, wrist_cm, _WHOLE if part >= AT_THE_WRIST else part)


def reach_cm(neck_cm: Fraction, depth_cm: Fraction, sleeve_cm: Fraction) -> Fraction:
    """From the centre back of the neck to the end of a sleeve: half of the neck's width, the yoke along the sleeve's
    centre, the sleeve.

    neck_cm: circumference of the cast-on, taken for a circle's. depth_cm: of the yoke. sleeve_cm: from the underarm.

    >>> float(reach_cm(Fraction(44), Fraction(24), Fraction(43)))
    74.0
    """
    return neck_cm * _HALF_WIDTH_OF_ROUND + depth_cm + sleeve_cm


def neck_width_cm(neck_cm: Fraction) -> Fraction:
    """Across a neck of a circumference, taken for a circle's, with 22/7 for its ratio to that.

    >>> neck_width_cm(Fraction(44))
    Fraction(14, 1)
    """
    return neck_cm * _WIDTH_OF_ROUND


_WIDTH_OF_ROUND = Fraction(7, 22)
_HALF_WIDTH_OF_ROUND = _WIDTH_OF_ROUND / 2


def usual_edge_height_cm(*, young: bool) -> Fraction:
    """Height of a hem or cuff: 2 in, for a baby or a young child 1 in (common practice, no source).

    >>> float(usual_edge_height_cm(young=True))
    2.54
    """
    return CM_PER_INCH if young else 2 * CM_PER_INCH


def _between(least: Fraction, value: Fraction, most: Fraction) -> Fraction:
    return max(least, min(value, most))
