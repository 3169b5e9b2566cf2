"""What the sizes of a pullover make of one another: none falls, steps are even, every body and sleeve fits its yoke.

Everything here goes from the smallest size to the largest.
"""

from __future__ import annotations

from collections.abc import Collection, Mapping, Sequence
from itertools import accumulate

from grading_core.fraction import Fraction
from grading_core.pullover.bodies import Wearer
from grading_core.pullover.lengths import Lengths
from grading_core.pullover.proportions import (
    least_depth_cm,
    reach_cm,
    usual_depth_cm,
    usual_ease,
    usual_neck,
    usual_sleeve_cm,
    usual_total_length_cm,
)
from grading_core.sizes.smoothing import even_out
from grading_core.standards import Measurement

GIRTHS = ("bust", "upper_arm", "wrist", "waist", "hip")
"""Around what steps can be even besides the neck: the body's girths, finished."""

MOST_MOVED_CM = Fraction(3, 2)
"""By which a girth is moved at most to make the steps even (a judgement, no source)."""

CLASSIC_FIT_CM = (Fraction(5), Fraction(10))
"""Ease at the bust which isn't asked stays within it (a published chart of fits)."""

BODY_MAY_FALL_CM = Fraction(2)
"""How much shorter a larger size may be from underarm to hem (a judgement, no source)."""


def smallest_first(wearers: Sequence[Wearer]) -> tuple[int, ...]:
    """The places of the sizes from the smallest to the largest, by the body's bust, its upper arm, and the label.

    wearers: of all sizes.
    """
    ranks = [(wearer.body["bust"], wearer.body["upper_arm"], wearer.label) for wearer in wearers]
    return tuple(sorted(range(len(wearers)), key=ranks.__getitem__))


def evened_girths(lengths: Lengths, smooths: tuple[bool, bool]) -> frozenset[str]:
    """The girths whose steps from size to size are made even.

    lengths: as asked. smooths: whether those are whose ease isn't asked, and whether those whose ease is. An asked neck
    never is.

    >>> sorted(evened_girths({}, (True, False)))
    ['bust', 'hip', 'neck', 'upper_arm', 'waist', 'wrist']
    """
    unasked, asked = smooths
    girths = {name for name in GIRTHS if (asked if name in lengths else unasked)}
    return frozenset(girths | {"neck"} if unasked and "neck" not in lengths else girths)


def girths(
    name: Measurement, rising: Sequence[Wearer], asked: Mapping[str, Sequence[Fraction]], evened: Collection[str]
) -> list[Fraction]:
    """What all sizes should measure around a girth of the body.

    name: one of `GIRTHS`. rising: the wearers. asked: ease by girth, where it is asked. evened: see `evened_girths`;
    none is moved below the body, or further below it than asked.
    """
    bodies = [wearer.body[name] for wearer in rising]
    eases = asked.get(name) or [usual_ease(name, cm) for cm in bodies]
    made = [cm + ease for cm, ease in zip(bodies, eases, strict=True)]
    if name not in evened:
        return made
    least = [max(cm - MOST_MOVED_CM, min(cm, body)) for cm, body in zip(made, bodies, strict=True)]
    most = [cm + MOST_MOVED_CM for cm in made]
    if name == "bust" and name not in asked:
        low, high = CLASSIC_FIT_CM
        least = [max(cm, body + low) for cm, body in zip(least, bodies, strict=True)]
        most = [min(cm, body + high) for cm, body in zip(most, bodies, strict=True)]
    return [*even_out(made, least, most)]


def neck_circumferences(
    rising: Sequence[Wearer], bust_cm: Sequence[Fraction], evened: Collection[str]
) -> list[Fraction]:
    """The cast-on of all sizes, none smaller than the one before it.

    rising: the wearers. bust_cm: finished. evened: see `evened_girths`; none is moved out of its published share.
    """
    ranges = [usual_neck(wearer.body, cm, wearer.age) for wearer, cm in zip(rising, bust_cm, strict=True)]
    usual = [*accumulate((each.usual for each in ranges), max)]
    if "neck" not in evened:
        return usual
    least = [*accumulate((each.least for each in ranges), max)]
    most = [*accumulate((each.most for each in ranges), max)]
    return [
        *even_out(
            usual,
            [max(low, cm - MOST_MOVED_CM) for low, cm in zip(least, usual, strict=True)],
            [min(high, cm + MOST_MOVED_CM) for high, cm in zip(most, usual, strict=True)],
        )
    ]


def yoke_depths(
    rising: Sequence[Wearer], bust_cm: Sequence[Fraction], sleeve_tops_cm: Sequence[Fraction]
) -> list[Fraction]:
    """The depth of all yokes, none less than the armhole needs, or than the one before it.

    rising: the wearers. bust_cm: finished. sleeve_tops_cm: width of one sleeve at the neck.
    """
    return [
        *accumulate(
            (
                max(usual_depth_cm(cm), least_depth_cm(wearer.body, top))
                for wearer, cm, top in zip(rising, bust_cm, sleeve_tops_cm, strict=True)
            ),
            max,
        )
    ]


def body_lengths(rising: Sequence[Wearer], above_cm: Sequence[Fraction]) -> list[Fraction]:
    """From underarm to hem in all sizes: what the yoke leaves of the usual total length, or more.

    rising: the wearers. above_cm: of the yoke and the raised back.

    A size is lengthened, as little as needed, until it isn't shorter in all than the one before it, and from the
    underarm not more than 2 cm shorter than any smaller one. Where the yoke leaves nothing it isn't: that is refused.
    """
    made: list[Fraction] = []
    longest_body = longest = Fraction(0)
    for wearer, above in zip(rising, above_cm, strict=True):
        total = usual_total_length_cm(wearer.body, child=wearer.child) or Fraction(0)
        body = total - above
        if body > 0:
            body = max(body, longest - above, longest_body - BODY_MAY_FALL_CM)
            longest, longest_body = body + above, max(body, longest_body)
        made.append(body)
    return made


def sleeve_lengths(
    rising: Sequence[Wearer], necks_cm: Sequence[Fraction], depths_cm: Sequence[Fraction]
) -> list[Fraction | None]:
    """A long sleeve of all sizes from the underarm; None where the body has no arm length.

    rising: the wearers. necks_cm: circumferences of the cast-ons. depths_cm: of the yokes.
    """
    made: list[Fraction | None] = []
    for wearer, neck, depth in zip(rising, necks_cm, depths_cm, strict=True):
        arm, to_underarm = wearer.body.get("arm_length"), reach_cm(neck, depth, Fraction(0))
        made.append(None if arm is None else usual_sleeve_cm(arm, wearer.body, to_underarm, wearer.age))
    return made
