"""The garment's length: a yoke unlike the usual one and what it leaves, and totals that jump or fall with size."""

from __future__ import annotations

from collections.abc import Iterator, Mapping
from itertools import pairwise

from grading_core.codes import WarningCode
from grading_core.errors import Remark
from grading_core.fraction import Fraction
from grading_core.pullover.bodies import Wearer
from grading_core.pullover.causes import Inquiry
from grading_core.pullover.lengths import place
from grading_core.pullover.measurements import TargetMeasurements
from grading_core.pullover.result import KnittedSize
from grading_core.sentences import CM, SENTENCE, TEXT, Saying, Sentence
from grading_core.standards import Measurement

_DEPTH = {"depth": CM, "usual": CM, "total": SENTENCE}
SHALLOWER = Saying("warning.yoke_shallower_than_usual", **_DEPTH)
DEEPER = Saying("warning.yoke_deeper_than_usual", **_DEPTH)
TOTAL = Saying("warning.total", total=CM)
TOTAL_KEPT = Saying("warning.total_kept", total=CM, body=CM)
TOTAL_RESTORED = Saying("warning.total_restored", total=CM, body=CM, restored=CM, usual=CM)
_STEP = {"smaller": TEXT, "before": CM, "larger": TEXT, "after": CM, "steps": SENTENCE, "because": SENTENCE}
FALLS = Saying("warning.total_length_falls", **_STEP)
JUMPS = Saying("warning.total_length_jumps", **_STEP)
STEPS = Saying("warning.length_steps", yoke=CM, body=CM)
STEPS_AND_BACK = Saying("warning.length_steps_and_back", yoke=CM, body=CM, back=CM)
USUAL_LENGTHS = Saying("cause.usual_lengths")

UNUSUAL_DEPTH = Fraction(1, 8)
"""The part of its usual depth by which a yoke differs so that its wearer feels it (a judgement, no source)."""

SAME_TOTAL_CM = Fraction(1, 2)
"""Within it two total lengths are the same to a wearer (a judgement, no source)."""

FALL_CM = Fraction(1, 2)
"""By which a larger size may be shorter: rounds are whole (a judgement, no source)."""

JUMP_BEYOND_BODY_CM = Fraction(3)
"""By which a size may grow longer beyond the growth of the body's back (a judgement, no source)."""

JUMP_CM = Fraction(6)
"""By which it may where the growth of the back isn't known (a judgement, no source)."""

_BACKS: tuple[Measurement, ...] = ("back_hip_length", "back_waist_length")


def depth_remarks(sizes: Mapping[str, KnittedSize], inquiry: Inquiry) -> Iterator[Remark]:
    """A word for each yoke that is asked for, or that a maker changes, and is much unlike the usual one.

    sizes: those that are possible, by label. inquiry: into their garment.
    """
    making = inquiry.making
    version = making.version
    if version.adjustment is None and "depth" not in version.lengths:
        return
    path = ("changes", "yoke") if version.adjustment else place(version.lengths, "depth")
    for usual in making.usual("depth", "body_length"):
        size = sizes.get(usual.label)
        if size is None:
            continue
        depth = size.finished.depth
        if abs(depth - usual.depth) <= usual.depth * UNUSUAL_DEPTH:
            continue
        shallow = depth < usual.depth
        code = WarningCode.YOKE_SHALLOWER_THAN_USUAL if shallow else WarningCode.YOKE_DEEPER_THAN_USUAL
        message = (SHALLOWER if shallow else DEEPER)(depth=depth, usual=usual.depth, total=_total(size, usual))
        yield Remark(code, message, usual.label, path)


def _total(size: KnittedSize, usual: TargetMeasurements) -> Sentence:
    """What a yoke makes of the total length, and what would make it the usual one again."""
    finished = size.finished
    made, now = finished.total_length, finished.body_length
    total = usual.raise_height + usual.depth + usual.body_length
    restored = now + total - made
    if usual.body_length > 0 and abs(restored - now) <= SAME_TOTAL_CM:
        return TOTAL_KEPT(total=made, body=now)
    if usual.body_length > 0 and restored > size.body.hem.height_cm:
        return TOTAL_RESTORED(total=made, body=now, restored=restored, usual=total)
    return TOTAL(total=made)


def total_length_remarks(sizes: Mapping[str, KnittedSize], inquiry: Inquiry) -> Iterator[Remark]:
    """A word for each size whose total length falls from the size before it, or jumps.

    sizes: those that are possible, by label. inquiry: into their garment.
    """
    wearers = {wearer.label: wearer for wearer in inquiry.making.wearers}
    rising = [target.label for target in inquiry.making.rising if target.label in sizes]
    usual: dict[str, Fraction] = {}
    for smaller, larger in pairwise(rising):
        growth = _growth(sizes[smaller], sizes[larger])
        back = _back_growth(wearers[smaller], wearers[larger])
        most = JUMP_CM if back is None else max(Fraction(0), back) + JUMP_BEYOND_BODY_CM
        if -FALL_CM <= growth <= most:
            continue
        # sizes that lie far apart in girth have yokes that differ as much
        usual = usual or {
            each.label: each.raise_height + each.depth + each.body_length
            for each in inquiry.making.usual("depth", "body_length")
        }
        most = max(most, usual[larger] - usual[smaller] + JUMP_BEYOND_BODY_CM)
        if -FALL_CM <= growth <= most:
            continue
        causes = inquiry.causes(
            "total_steps", [smaller, larger], lambda small, large, most=most: -FALL_CM <= _growth(small, large) <= most
        )
        before, after = sizes[smaller].finished, sizes[larger].finished
        steps = {"yoke": after.depth - before.depth, "body": after.body_length - before.body_length}
        falls = growth < 0
        message = (FALLS if falls else JUMPS)(
            smaller=smaller,
            before=before.total_length,
            larger=larger,
            after=after.total_length,
            steps=STEPS(**steps) if back is None else STEPS_AND_BACK(**steps, back=back),
            because=causes.told(USUAL_LENGTHS()),
        )
        code = WarningCode.TOTAL_LENGTH_FALLS if falls else WarningCode.TOTAL_LENGTH_JUMPS
        yield Remark(code, message, larger, causes.path)


def _growth(smaller: KnittedSize, larger: KnittedSize) -> Fraction:
    return larger.finished.total_length - smaller.finished.total_length


def _back_growth(smaller: Wearer, larger: Wearer) -> Fraction | None:
    """How much longer the body's own back is, by the first length that both have; None where they share none."""
    for name in _BACKS:
        if name in smaller.body and name in larger.body:
            return larger.body[name] - smaller.body[name]
    return None
