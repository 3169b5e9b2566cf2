"""The middle of an underarm: where the rounds below the split start and the sides are shaped, told in one way.

A round ends with the seam stitches in the middle of its underarm, as a placed chart has it; without any it ends in the
middle, and where the underarm is odd with the middle stitch. That shaping is worked on either side of the seam
stitches, or of a marker where there are none, is common practice, no source.
"""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass

from grading_core.wording import counted_run


@dataclass(frozen=True, slots=True)
class Underarm:
    """The stitches cast on at each side at the split, and how many in their middle are seam stitches.

    >>> Underarm(15, 3).before_start, Underarm(14, 0).before_start
    (9, 7)
    """

    stitches: int
    seam: int

    @property
    def before_start(self) -> int:
        """Stitches of the underarm that end a round; the others begin it."""
        return (self.stitches + self.seam + 1) // 2


def start_words(underarms: Sequence[Underarm | None], name: str) -> str:
    """Where in the underarm a round starts and ends, with size runs.

    underarms: one per size, None where it isn't known. name: of the underarm, as in "the underarm".

    >>> start_words([Underarm(15, 3)], "the underarm")
    '9 stitches after the beginning of the underarm, behind its 3 seam stitches'
    >>> start_words([Underarm(14, 0), Underarm(16, 0)], "each underarm")
    '7 (8) stitches after the beginning of each underarm'
    """
    if not any(underarms):
        return f"in the middle of {name}"
    place = counted_run([each.before_start if each else None for each in underarms], "stitch")
    behind = f", behind its {seam_run(underarms)}" if any_seams(underarms) else ""
    return f"{place} after the beginning of {name}{behind}"


def seam_run(underarms: Sequence[Underarm | None]) -> str:
    """The seam stitches of every size.

    underarms: as for `start_words`.
    """
    return counted_run([each.seam if each else None for each in underarms], "seam stitch")


def any_seams(underarms: Sequence[Underarm | None]) -> bool:
    """Whether any size has seam stitches.

    underarms: as for `start_words`.
    """
    return any(each and each.seam for each in underarms)


def sides_words(underarms: Sequence[Underarm | None], seam: str, marker: str) -> str:
    """Around what shaping is worked.

    underarms: as for `start_words`. seam: the words for the seam stitches. marker: those for the marker without them.

    >>> sides_words([Underarm(15, 1), Underarm(16, 0)], "the seam stitches", "the marker")
    'on either side of the seam stitches, or of the marker where there are none'
    """
    if not any_seams(underarms):
        return f"on either side of {marker}"
    without = any(each and not each.seam for each in underarms)
    return f"on either side of {seam}" + (f", or of {marker} where there are none" if without else "")
