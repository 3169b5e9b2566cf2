"""Where a finished garment does not fit the body it is for: girths, armholes and cuffs, with the cause."""

from __future__ import annotations

from collections.abc import Callable, Iterator, Mapping

from grading_core.codes import WarningCode
from grading_core.errors import Path, Remark
from grading_core.fraction import Fraction
from grading_core.pullover.bodies import Wearer
from grading_core.pullover.causes import Causes, Inquiry
from grading_core.pullover.proportions import USUAL_STRETCH, along_arm_cm
from grading_core.pullover.result import KnittedSize
from grading_core.sentences import CM, SENTENCE, Saying, word
from grading_core.standards import Measurement

BELOW_BODY = Saying("warning.girth_below_body", measure=word("measure"), finished=CM, body=CM, because=SENTENCE)
ARMHOLE = Saying("warning.armhole_below_body", armhole=CM, yoke=CM, body=CM, needed=CM, because=SENTENCE)
_HAND = {"cuff": CM, "stretched": CM, "hand": CM, "because": SENTENCE}
HAND = Saying("warning.cuff_too_tight_for_hand", **_HAND)
CHILDS_HAND = Saying("warning.cuff_too_tight_for_hand_child", **_HAND)
BINDS = Saying("warning.cuff_binds", cuff=CM, arm=CM, sleeve=CM, because=SENTENCE)
NEGATIVE_EASE = Saying("cause.negative_ease", ease=CM)
LITTLE_EASE = Saying("cause.little_ease", ease=CM)
STITCH_WIDTH = Saying("cause.stitch_width")
USUAL_DEPTH = Saying("cause.usual_depth")
NARROW_CUFF = Saying("cause.narrow_cuff")
CUFF_OF_WRIST = Saying("cause.cuff_of_wrist")

HAND_TO_WRIST = Fraction(1866 + 2123, 1548 + 1759)
"""Girth of a hand by that of its wrist, 1.21. Of 1,986 women hands measure 18.66 cm and wrists 15.48 cm in the mean, of
4,082 men 21.23 and 17.59 (ANSUR II, the public data of a survey of US Army personnel, 2012, means of the raw records):
1.205 and 1.207."""

_STRETCHED = 1 + USUAL_STRETCH


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
    counts, neck = size.counts, size.finished.neck
    top_cm = Fraction(neck.numerator * counts.neck.sleeve, neck.denominator * counts.cast_on * 2)
    return size.finished.depth + top_cm


def _girths(size: KnittedSize, wearer: Wearer, inquiry: Inquiry) -> Iterator[Remark]:
    girths: list[tuple[Measurement, Callable[[KnittedSize], Fraction]]] = [
        ("bust", lambda size: size.finished.bust),
        ("upper_arm", lambda size: size.finished.upper_arm),
    ]
    girths += [(level.measurement, _level_girth(index)) for index, level in enumerate(inquiry.making.body.levels)]
    for name, around in girths:
        if around(size) < wearer.body[name]:
            yield _below_body(size, inquiry, name, around, wearer.body[name])


def _level_girth(index: int) -> Callable[[KnittedSize], Fraction]:
    return lambda size: size.body.levels[index].circumference_cm


def _below_body(
    size: KnittedSize, inquiry: Inquiry, name: str, around: Callable[[KnittedSize], Fraction], body: Fraction
) -> Remark:
    """The remark on a girth that is less than the body's: for the ease, where that is negative, or else for a rule."""
    label, lengths = size.target.label, inquiry.making.version.lengths
    levels = {level.name: level.circumference_cm for level in size.target.levels}
    wanted: Fraction = levels[name] if name in levels else getattr(size.target, name)
    causes = inquiry.causes(name, [label], lambda size: around(size) >= body) if wanted >= body else Causes(())
    path: Path | None = causes.path
    because = causes.told(STITCH_WIDTH())
    if not causes.found and (wanted < body or name in lengths):
        because, path = (NEGATIVE_EASE if wanted < body else LITTLE_EASE)(ease=wanted - body), lengths[name].path
    message = BELOW_BODY(measure=name, finished=around(size), body=body, because=because)
    return Remark(WarningCode.GIRTH_BELOW_BODY, message, label, path)


def _armhole(size: KnittedSize, wearer: Wearer, inquiry: Inquiry) -> Iterator[Remark]:
    body = wearer.body.get("armhole_depth")
    if body is None or armhole_cm(size) >= body:
        return
    causes = inquiry.causes("armhole", [wearer.label], lambda size: armhole_cm(size) >= body)
    made, depth = armhole_cm(size), size.finished.depth
    message = ARMHOLE(
        armhole=made, yoke=depth, body=body, needed=depth + body - made, because=causes.told(USUAL_DEPTH())
    )
    yield Remark(WarningCode.ARMHOLE_BELOW_BODY, message, wearer.label, causes.path)


def _hand(size: KnittedSize, wearer: Wearer, inquiry: Inquiry) -> Iterator[Remark]:
    hand = wearer.body["wrist"] * HAND_TO_WRIST

    def passes(size: KnittedSize) -> bool:
        return size.finished.wrist * _STRETCHED >= hand

    if passes(size):
        return
    causes = inquiry.causes("hand", [wearer.label], passes)
    cuff = size.finished.wrist
    message = (CHILDS_HAND if wearer.child else HAND)(
        cuff=cuff, stretched=cuff * _STRETCHED, hand=hand, because=causes.told(NARROW_CUFF())
    )
    yield Remark(WarningCode.CUFF_TOO_TIGHT_FOR_HAND, message, wearer.label, causes.path)


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
    finished = size.finished
    message = BINDS(
        cuff=finished.wrist, arm=bare(size), sleeve=finished.sleeve_length, because=causes.told(CUFF_OF_WRIST())
    )
    yield Remark(WarningCode.CUFF_BINDS, message, wearer.label, causes.path)
