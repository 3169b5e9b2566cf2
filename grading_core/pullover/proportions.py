"""The proportions of a wearable pullover: what every size should come to unless told otherwise.

Published rules and garments stand behind each default; they are named beside it. Each is a line or a share, so that
any size between and beyond the published ones has one too, and none of them falls as sizes rise.
"""

from __future__ import annotations

from collections.abc import Mapping
from fractions import Fraction

from grading_core.rounding import CountRule
from grading_core.standards import Measurement
from grading_core.units import CM_PER_INCH
from grading_core.yoke.request import Options

QUARTER_DEPTH_UP_TO_CM = Fraction(90)
"""Finished bust up to which a yoke is a quarter of it deep."""

YOUNG_CHILD_BUST_CM = Fraction(66)
"""Below it the wearer is a baby or a young child: the published chest of 6 years is 63.5 cm, of 8 years 67 cm."""

USUAL_RAISE_CM = CM_PER_INCH
"""By which the back of the neck is raised: 1 in, within the 1 to 2 in published for adults and for children."""

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


def usual_ease(measurement: Measurement, body_cm: Fraction) -> Fraction:
    """Ease in cm: finished less body.

    measurement: "bust", "upper_arm" or "wrist". body_cm: the body's.

    Bust: a tenth, from 5 to 10 cm, the range of the published classic fit. Upper arm: a fifth, from 3 to 7 cm, so that
    the sleeve holds the arm of 95 in 100 people of that bust (see the tests). Wrist: 2.5 cm, a published worksheet.

    >>> float(usual_ease("bust", Fraction(94))), float(usual_ease("upper_arm", Fraction(28)))
    (9.4, 5.6)
    """
    if measurement == "bust":
        return _between(5, body_cm / 10, 10)
    if measurement == "upper_arm":
        return _between(3, body_cm / 5, 7)
    return Fraction(5, 2)


def usual_neck_cm(bust_cm: Fraction) -> Fraction:
    """Circumference of the cast-on for a body's bust.

    The neck must not be graded in proportion to the bust: it has to pass the head, which hardly grows, and measured
    neck bases grow by 0.16 cm per cm of chest (women of a public survey). That is the slope; a published
    nine-size raglan is cast on to 42 cm in its smallest size.

    >>> float(usual_neck_cm(Fraction(94)))
    46.04
    """
    return 31 + bust_cm * 16 / 100


def usual_depth_cm(finished_bust_cm: Fraction) -> Fraction:
    """Depth of a yoke for a finished bust.

    A quarter up to 90 cm (a published system of percentages), and beyond only a tenth more of each cm, as published
    graded garments have it: five of them, 83 to 193 cm round, grow by 0.06 to 0.25 cm per cm.

    >>> float(usual_depth_cm(Fraction(60))), float(usual_depth_cm(Fraction(150)))
    (15.0, 28.5)
    """
    small = min(finished_bust_cm, QUARTER_DEPTH_UP_TO_CM)
    return small / 4 + (finished_bust_cm - small) / 10


def usual_underarm_cm(finished_bust_cm: Fraction) -> Fraction:
    """Width of one underarm: 7 %, between the 8 % of a published system and the 5 % of its later version.

    >>> float(usual_underarm_cm(Fraction(100)))
    7.0
    """
    return finished_bust_cm * 7 / 100


def usual_back_share(bust_cm: Fraction) -> Fraction:
    """The back's part of the neck's stitches, without the raglan lines; the front has as many.

    From a little over a third in small sizes to a little under it in large ones, so that the sleeves' part grows: a
    published nine-size raglan goes from 40 to 29 %, other rules give a third in all sizes.

    >>> float(usual_back_share(Fraction(75))), float(usual_back_share(Fraction(155)))
    (0.37, 0.31)
    """
    return _between(Fraction(30, 100), Fraction(37, 100) - (bust_cm - 75) * 75 / 100_000, Fraction(38, 100))


def usual_total_length_cm(body: Mapping[Measurement, Fraction], *, child: bool) -> Fraction | None:
    """From the back of the neck to the hem; None where the body doesn't say.

    body: in cm, with a back hip length or a back waist length. child: whether it is a child's.

    Published length chart: women's hip length 6 in below the waist; children's hip length 2 in and tunic length 6 in,
    the middle of which is taken; men's sweaters end 1 to 2 in above the back hip length.
    """
    if "back_hip_length" in body:
        return body["back_hip_length"] - CM_PER_INCH * 3 / 2
    if "back_waist_length" in body:
        return body["back_waist_length"] + CM_PER_INCH * (4 if child else 6)
    return None


def usual_edge_height_cm(*, young: bool) -> Fraction:
    """Height of a hem or cuff: 2 in, for a baby or a young child 1 in (common practice, no source).

    >>> float(usual_edge_height_cm(young=True))
    2.54
    """
    return CM_PER_INCH if young else 2 * CM_PER_INCH


def _between(least: Fraction | int, value: Fraction, most: Fraction | int) -> Fraction:
    return max(Fraction(least), min(value, Fraction(most)))
