"""The garment's length: a yoke unlike the usual one and what it leaves, and totals that jump or fall with size."""

from __future__ import annotations

from collections.abc import Iterator, Mapping
from fractions import Fraction
from itertools import pairwise

from grading_core.codes import WarningCode
from grading_core.errors import Remark
from grading_core.pullover.bodies import Wearer
from grading_core.pullover.causes import Inquiry
from grading_core.pullover.lengths import place
from grading_core.pullover.result import KnittedSize
from grading_core.standards import Measurement
from grading_core.units import to_places

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
        message = (
            f"The yoke is {to_places(depth, 1)} cm deep, {'shallow' if shallow else 'deep'} for this size, whose usual "
            f"depth is {to_places(usual.depth, 1)} cm. The total length is then "
            f"{to_places(size.finished.total_length, 1)} cm"
        )
        total = usual.raise_height + usual.depth + usual.body_length
        now = size.finished.body_length
        restored = now + total - size.finished.total_length
        if usual.body_length > 0 and abs(restored - now) <= SAME_TOTAL_CM:
            message += f", the usual one: the body of {to_places(now, 1)} cm makes up for the yoke"
        elif usual.body_length > 0 and restored > size.body.hem.height_cm:
            message += (
                f"; a body length of {to_places(restored, 1)} cm, now {to_places(now, 1)} cm, restores the usual "
                f"{to_places(total, 1)} cm"
            )
        yield Remark(code, f"{message}.", usual.label, path)


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
        totals = [to_places(finished.total_length, 1) for finished in (before, after)]
        steps = ", ".join(
            f"{words} by {to_places(getattr(after, name) - getattr(before, name), 1):+}"
            for name, words in (("depth", "the yoke's depth"), ("body_length", "the body's length"))
        )
        known = "" if back is None else f", the body's own back by {to_places(back, 1):+}"
        falls = growth < 0
        because = causes.words("the usual lengths follow the measurements of the bodies")
        yield Remark(
            WarningCode.TOTAL_LENGTH_FALLS if falls else WarningCode.TOTAL_LENGTH_JUMPS,
            f"The total length {'falls' if falls else 'jumps'} from {totals[0]} cm in {smaller} to {totals[1]} cm in "
            f"{larger} ({steps}{known} cm), {because}.",
            larger,
            causes.path,
        )


def _growth(smaller: KnittedSize, larger: KnittedSize) -> Fraction:
    return larger.finished.total_length - smaller.finished.total_length


def _back_growth(smaller: Wearer, larger: Wearer) -> Fraction | None:
    """How much longer the body's own back is, by the first length that both have; None where they share none."""
    for name in _BACKS:
        if name in smaller.body and name in larger.body:
            return larger.body[name] - smaller.body[name]
    return None
