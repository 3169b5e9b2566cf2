"""Finished measurements that are far from what was asked, or from what the proportions make of it, and why."""

from __future__ import annotations

from collections.abc import Callable, Iterator, Mapping
from dataclasses import dataclass

from grading_core.codes import WarningCode
from grading_core.errors import Path, Remark
from grading_core.fraction import Fraction
from grading_core.parts.body import STITCHES_PER_SHAPING
from grading_core.pullover.causes import Inquiry
from grading_core.pullover.making import Making
from grading_core.pullover.result import KnittedSize
from grading_core.sentences import CM, COUNT, NUMBER, SENTENCE, Saying, Sentence, word
from grading_core.units import is_within

_FAR = {"measure": word("measure"), "finished": CM, "wanted": CM, "because": SENTENCE}
FAR_FROM_WANTED = Saying("warning.far_from_wanted", **_FAR)
FAR_STRAIGHT = Saying("warning.far_from_wanted_straight", **_FAR)
FAR_TOTAL = Saying("warning.far_from_wanted_total", **_FAR, body=CM)
INCREASES_NEED = Saying("cause.increases_need_rounds", rounds=COUNT)
WHOLE_ROUNDS = Saying("cause.whole_rounds")
WHOLE_STITCHES = Saying("cause.whole_stitches", stitch=NUMBER)
SHAPED_BY = Saying("cause.shaped_by", stitches=COUNT, stitch=NUMBER)

FAR_CM = Fraction(1)
"""A measurement further than this from what was wanted deserves a word (a judgement, no source)."""

_MEASUREMENTS = (
    "bust",
    "upper_arm",
    "neck",
    "depth",
    "underarm",
    "hem",
    "wrist",
    "neckband",
    "body_length",
    "sleeve_length",
    "total_length",
)
"""What is looked at."""

_CALLED = {"wrist": "cuff"}
"""What is called otherwise where it is finished."""


@dataclass(frozen=True, slots=True, kw_only=True)
class Far:
    """A measurement far from what was wanted.

    name: of the measurement. finished_cm, wanted_cm: what it comes to, and what it should. because: the causes of the
    difference. path: of what is to blame, None where it isn't one place.
    """

    name: str
    finished_cm: Fraction
    wanted_cm: Fraction
    because: Sentence
    path: Path | None


def far_remarks(sizes: Mapping[str, KnittedSize], inquiry: Inquiry) -> Iterator[Remark]:
    """A word for each measurement of each size that is far from what was wanted.

    sizes: those that are possible, by label. inquiry: into their garment.
    """
    for label, size in sizes.items():
        for far in _far(label, size, inquiry):
            yield Remark(WarningCode.FAR_FROM_WANTED, _message(far, size), label, far.path)


def _message(far: Far, size: KnittedSize) -> Sentence:
    values = {
        "measure": _CALLED.get(far.name, far.name),
        "finished": far.finished_cm,
        "wanted": far.wanted_cm,
        "because": far.because,
    }
    if far.name == "bust" and _is_straight(size):
        return FAR_STRAIGHT(**values)
    if far.name == "total_length":
        restored = size.finished.body_length + far.wanted_cm - far.finished_cm
        if restored > size.body.hem.height_cm:
            return FAR_TOTAL(**values, body=restored)
    return FAR_FROM_WANTED(**values)


def wanted_cm(measurement: str, size: KnittedSize, making: Making) -> Fraction | None:
    """What a measurement of one size should come to, in cm; None where a maker's yoke says otherwise.

    measurement: one of `_MEASUREMENTS`. size: as it is knitted. making: that it is of.

    Ribs keep the stitches of the fabric before them, so a hem or a band at another gauge is wanted as wide as these
    stitches are in rib.
    """
    target, adjusted = size.target, making.version.adjustment is not None
    if measurement == "hem":
        body = size.body
        last = body.levels[-1] if body.levels else body
        around = target.levels[-1].circumference_cm if target.levels else target.bust
        stitches = around * last.stitches / last.circumference_cm
        return stitches / body.hem.rib.gauge.stitches_per_cm
    if measurement == "neckband":
        return size.band.edge.rib.gauge.width_cm(size.band.edge.before)
    if measurement == "depth":
        return None if adjusted else target.depth
    if measurement == "total_length":
        asked = making.version.lengths.get("body_length")
        if adjusted and asked and asked.path[0] == "changes":
            return None
        return target.raise_height + target.depth + target.body_length
    wanted: Fraction | None = getattr(target, measurement)
    return wanted


def finished_cm(measurement: str, size: KnittedSize) -> Fraction:
    """What a measurement of one size comes to, in cm.

    measurement: one of `_MEASUREMENTS`. size: as it is knitted.
    """
    if measurement == "neckband":
        return size.band.edge.circumference_cm
    finished: Fraction = getattr(size.finished, measurement)
    return finished


def _far(label: str, size: KnittedSize, inquiry: Inquiry) -> Iterator[Far]:
    for measurement in _MEASUREMENTS:
        if measurement == "hem" and _is_straight(size):
            continue
        wanted = wanted_cm(measurement, size, inquiry.making)
        if wanted is None:
            continue
        tolerance = _tolerance_cm(measurement, size)
        if not is_within(tolerance, finished_cm(measurement, size), wanted):
            near = _near(measurement, wanted, tolerance)
            unasked = measurement not in inquiry.making.version.lengths
            step_away = unasked and _near(measurement, wanted, _step_cm(measurement, size))(size)
            if step_away and not inquiry.demands({"bust": "body"}.get(measurement, measurement)):
                continue
            causes = inquiry.causes(measurement, [label], near)
            if step_away and not any(each.path for each in causes.found):
                continue
            yield Far(
                name=measurement,
                finished_cm=finished_cm(measurement, size),
                wanted_cm=wanted,
                because=causes.told(_otherwise(measurement, size)),
                path=causes.path,
            )
    for index, reached in enumerate(size.body.levels):
        if abs(reached.difference_cm) > FAR_CM:
            yield Far(
                name=reached.level.name,
                finished_cm=reached.circumference_cm,
                wanted_cm=reached.level.circumference_cm,
                because=SHAPED_BY(stitches=STITCHES_PER_SHAPING, stitch=_stitch_cm(size)),
                path=("body", "levels", index),
            )


def _is_straight(size: KnittedSize) -> bool:
    """Whether the hem has the stitches of the bust, so that the one says what the other would."""
    return size.body.hem.stitches == size.body.stitches


def _near(measurement: str, wanted: Fraction, tolerance: Fraction) -> Callable[[KnittedSize], bool]:
    return lambda size: is_within(tolerance, finished_cm(measurement, size), wanted)


def _tolerance_cm(measurement: str, size: KnittedSize) -> Fraction:
    """Of a neck half a step of its counts, where that is more: as near as it can come."""
    return max(FAR_CM, _step_cm("neck", size) / 2) if measurement == "neck" else FAR_CM


def _step_cm(measurement: str, size: KnittedSize) -> Fraction:
    """What counts leave where nothing is asked: sections keep their parity in all sizes, so that cast-ons lie four
    stitches apart and bodies two."""
    stitches, neck = {"neck": 4, "bust": 2}.get(measurement, 0), size.finished.neck
    return Fraction(stitches * neck.numerator, neck.denominator * size.counts.cast_on)


def _stitch_cm(size: KnittedSize) -> Fraction:
    """The width of a stitch of the body."""
    return size.body.circumference_cm / size.body.stitches


def _otherwise(measurement: str, size: KnittedSize) -> Sentence:
    """The reason where nothing that is asked for is the cause."""
    if measurement == "depth" and size.finished.depth > size.target.depth:
        return INCREASES_NEED(rounds=size.counts.rounds)
    if measurement in ("depth", "body_length", "sleeve_length", "total_length"):
        return WHOLE_ROUNDS()
    return WHOLE_STITCHES(stitch=_stitch_cm(size))
