"""The proportions of a wearable pullover: what every size should come to unless told otherwise.

Published rules and garments stand behind each default; they are named beside it. Each is a line or a share, so that
any size between and beyond the published ones has one too, and none of them falls as sizes rise.
"""

from __future__ import annotations

from collections.abc import Iterator, Mapping, Sequence
from dataclasses import dataclass
from fractions import Fraction
from itertools import pairwise

from grading_core.counts.request import Targets
from grading_core.gauge import Gauge
from grading_core.standards import Measurement

Body = Mapping[Measurement, Fraction]
"""A body's measurements in cm."""

QUARTER_DEPTH_UP_TO_CM = Fraction(90)
"""Finished bust up to which a yoke is a quarter of it deep."""

CHILD_BUST_CM = Fraction(66)
"""Below this bust the wearer is a young child: the published chest of 6 years is 63.5 cm, of 8 years 67 cm."""


@dataclass(frozen=True, slots=True, kw_only=True)
class Wanted:
    """The finished measurements that one size should have, in cm.

    bust, upper_arm, neck: circumferences; the neck's is the cast-on's. depth: of the yoke, without a raised back.
    underarm: width of one. wrist: circumference of the cuff. body_length, sleeve_length: from the underarm, rib
    included. back, front: their parts of the neck's stitches without the raglan lines; the sleeves have the rest.
    """

    label: str
    bust: Fraction
    upper_arm: Fraction
    neck: Fraction
    depth: Fraction
    underarm: Fraction
    wrist: Fraction
    body_length: Fraction
    sleeve_length: Fraction
    back: Fraction
    front: Fraction


RISING = ("bust", "upper_arm", "neck", "depth", "underarm")
"""What must not fall from a size to a larger one."""


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


def usual_total_length_cm(body: Body, *, child: bool) -> Fraction | None:
    """From the back of the neck to the hem; None where the body doesn't say.

    body: with a back hip length, or a back waist length. child: whether the body is a child's.

    Published length chart: women's hip length 6 in below the waist; children's hip length 2 in and tunic length 6 in,
    the middle of which is taken; men's sweaters end 1 to 2 in above the back hip length.
    """
    if "back_hip_length" in body:
        return body["back_hip_length"] - Fraction(381, 100)
    if "back_waist_length" in body:
        return body["back_waist_length"] + (Fraction(1016, 100) if child else Fraction(1524, 100))
    return None


def falls(sizes: Sequence[Wanted]) -> Iterator[tuple[str, Wanted, Wanted]]:
    """Each measurement that falls, with the smaller size and the larger one in which it does.

    sizes: from the smallest to the largest.
    """
    for name in RISING:
        for smaller, larger in pairwise(sizes):
            if getattr(larger, name) < getattr(smaller, name):
                yield name, smaller, larger


def stitch_targets(
    sizes: Sequence[Wanted], yoke: Gauge, below: Gauge, line_stitches: int
) -> tuple[Targets, ...]:
    """What was wanted in exact stitches and rounds.

    sizes: from the smallest to the largest, free of `falls`. yoke: gauge of the yoke's fabric. below: of body and
    sleeves. line_stitches: of each raglan line.

    No section of the neck falls either: where a share falls faster than the neck grows, the section stays.
    """
    made: list[Targets] = []
    for size in sizes:
        neck = size.neck * yoke.stitches_per_cm
        sections = neck - 4 * line_stitches
        back, front = sections * size.back, sections * size.front
        if made:
            before = made[-1]
            growth = neck - before.neck
            back = _between(before.neck_back, back, before.neck_back + growth / 2)
            front = _between(before.neck_front, front, before.neck_front + growth / 2)
        made.append(
            Targets(
                label=size.label,
                neck=neck,
                neck_back=back,
                neck_front=front,
                neck_sleeve=(sections - back - front) / 2,
                body=size.bust * below.stitches_per_cm,
                sleeve=size.upper_arm * below.stitches_per_cm,
                underarm=size.underarm * below.stitches_per_cm,
                rounds=size.depth * yoke.rows_per_cm,
            )
        )
    return tuple(made)


def _between(least: Fraction | int, value: Fraction, most: Fraction | int) -> Fraction:
    return max(Fraction(least), min(value, Fraction(most)))
