"""Where a finished garment does not fit the body it is for: girths, armholes and cuffs, with the cause."""

from __future__ import annotations

from collections.abc import Callable, Iterator, Mapping
from fractions import Fraction

from grading_core.codes import WarningCode
from grading_core.errors import Path, Remark
from grading_core.pullover.bodies import Wearer
from grading_core.pullover.causes import Causes, Inquiry
from grading_core.pullover.proportions import USUAL_STRETCH, along_arm_cm
from grading_core.pullover.result import KnittedSize
from grading_core.standards import Measurement
from grading_core.units import to_places

HAND_TO_WRIST = Fraction(1866 + 2123, 1548 + 1759)
"""Girth of a hand by that of its wrist, 1.21. Of 1,986 women hands measure 18.66 cm and wrists 15.48 cm in the mean, of
4,082 men 21.23 and 17.59 (ANSUR II, the public data of a survey of US Army personnel, 2012, means of the raw records):
1.205 and 1.207."""


def fit_remarks(sizes: Mapping[str, KnittedSize], inquiry: Inquiry) -> Iterator[Remark]:
    """A word for each place at which a size does not fit its body.

    sizes: those that are possible, by label. inquiry: into their garment.
    """
    wearers = {wearer.label: wearer for wearer in inquiry.making.wearers}
    for label, size in sizes.items():
        yield from _girths(size, wearers[label], inquiry)
        yield from _armhole(size, wearers[label], inquiry)
        yield from _hand(size, wearers[label], inquiry)
        yield from _arm(size, wearers[label], inquiry)


def armhole_cm(size: KnittedSize) -> Fraction:
    """Depth of a size's armhole: of the yoke, and half the width of one sleeve's section at the neck.

    size: as it is knitted.

    Source: a teaching article on top-down raglans, 2013: armhole depth is that of the raglan shaping and half the width
    cast on for the top of the sleeve; 5.5 in and a top of 4 in make 7.5 in.
    """
    stitch_cm = size.finished.neck / size.counts.cast_on
    return size.finished.depth + size.counts.neck.sleeve * stitch_cm / 2


def _girths(size: KnittedSize, wearer: Wearer, inquiry: Inquiry) -> Iterator[Remark]:
    girths: list[tuple[Measurement, str, Callable[[KnittedSize], Fraction]]] = [
        ("bust", "bust", lambda size: size.finished.bust),
        ("upper_arm", "upper arm", lambda size: size.finished.upper_arm),
    ]
    girths += [
        (level.measurement, level.measurement, _level_girth(index))
        for index, level in enumerate(inquiry.making.body.levels)
    ]
    for name, words, around in girths:
        if around(size) < wearer.body[name]:
            yield _below_body(size, inquiry, name, words, around, wearer.body[name])


def _level_girth(index: int) -> Callable[[KnittedSize], Fraction]:
    return lambda size: size.body.levels[index].circumference_cm


def _below_body(
    size: KnittedSize,
    inquiry: Inquiry,
    name: str,
    words: str,
    around: Callable[[KnittedSize], Fraction],
    body: Fraction,
) -> Remark:
    """The remark on a girth that is less than the body's: for the ease, where that is negative, or else for a rule."""
    label, lengths = size.target.label, inquiry.making.version.lengths
    levels = {level.name: level.circumference_cm for level in size.target.levels}
    wanted: Fraction = levels[name] if name in levels else getattr(size.target, name)
    causes = inquiry.causes(name, [label], lambda size: around(size) >= body) if wanted >= body else Causes(())
    path: Path | None = causes.path
    ease = f"of the ease asked for, {to_places(wanted - body, 1)} cm"
    if causes.found:
        because = causes.words("")
    elif wanted < body:
        because, path = f"because {ease}", lengths[name].path
    elif name in lengths:
        because, path = f"because {ease}, which is less than whole stitches may take", lengths[name].path
    else:
        because = "because of the width of a stitch"
    return Remark(
        WarningCode.GIRTH_BELOW_BODY,
        f"The {words} comes to {to_places(around(size), 1)} cm and the body's is {to_places(body, 1)} cm, {because}: "
        "it is worn stretched.",
        label,
        path,
    )


def _armhole(size: KnittedSize, wearer: Wearer, inquiry: Inquiry) -> Iterator[Remark]:
    body = wearer.body.get("armhole_depth")
    if body is None or armhole_cm(size) >= body:
        return
    causes = inquiry.causes("armhole", [wearer.label], lambda size: armhole_cm(size) >= body)
    made = armhole_cm(size)
    yield Remark(
        WarningCode.ARMHOLE_BELOW_BODY,
        f"The armhole is {to_places(made, 1)} cm deep, a yoke of {to_places(size.finished.depth, 1)} cm and half the "
        f"sleeve's width at the neck, and the body's is {to_places(body, 1)} cm, "
        f"{causes.words('the usual depth is less than this body needs')}. A yoke of "
        f"{to_places(size.finished.depth + body - made, 1)} cm would do.",
        wearer.label,
        causes.path,
    )


def _hand(size: KnittedSize, wearer: Wearer, inquiry: Inquiry) -> Iterator[Remark]:
    hand = wearer.body["wrist"] * HAND_TO_WRIST

    def passes(size: KnittedSize) -> bool:
        return size.finished.wrist * (1 + USUAL_STRETCH) >= hand

    if passes(size):
        return
    causes = inquiry.causes("hand", [wearer.label], passes)
    child = " The ratio is that of adults: measure the child's hand." if wearer.child else ""
    yield Remark(
        WarningCode.CUFF_TOO_TIGHT_FOR_HAND,
        f"The cuff of {to_places(size.finished.wrist, 1)} cm stretches to "
        f"{to_places(size.finished.wrist * (1 + USUAL_STRETCH), 1)} cm, and the hand measures about "
        f"{to_places(hand, 1)} cm, by its wrist and the ratio of measured people, "
        f"{causes.words('the cuff is narrow beside the wrist')}.{child}",
        wearer.label,
        causes.path,
    )


def _arm(size: KnittedSize, wearer: Wearer, inquiry: Inquiry) -> Iterator[Remark]:
    body = wearer.body
    if "arm_length" not in body:
        return

    def bare(size: KnittedSize) -> Fraction:
        part = size.finished.sleeve_length / body["arm_length"]
        return along_arm_cm(body["upper_arm"], body["wrist"], part)

    def lies(size: KnittedSize) -> bool:
        return size.finished.wrist >= bare(size)

    if lies(size):
        return
    causes = inquiry.causes("arm", [wearer.label], lies)
    yield Remark(
        WarningCode.CUFF_BINDS,
        f"The cuff is {to_places(size.finished.wrist, 1)} cm round, and the bare arm about "
        f"{to_places(bare(size), 1)} cm where a sleeve of {to_places(size.finished.sleeve_length, 1)} cm ends, "
        f"{causes.words('the cuff is as wide as at the wrist')}: it binds, or slides down.",
        wearer.label,
        causes.path,
    )
