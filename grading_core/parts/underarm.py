"""The middle of an underarm: where the rounds below the split start and the sides are shaped, told in one way.

A round ends with the seam stitches in the middle of its underarm, as a placed chart has it; without any it ends in the
middle, and where the underarm is odd with the middle stitch. That shaping is worked on either side of the seam
stitches, or of a marker where there are none, is common practice, no source.
"""

from __future__ import annotations

from collections.abc import Iterable, Iterator, Sequence
from dataclasses import dataclass
from typing import Any

from grading_core.sentences import COUNT, TOKEN, Kind, Saying, Sentence, run_of

PLACE: dict[str, Kind] = {"before": COUNT, "seams": TOKEN, "seam": COUNT}
"""Of a place in an underarm. before: stitches of it that lie before the place. seams: whether it has seam stitches,
"none" or "all". seam: how many, just before the place."""


@dataclass(frozen=True, slots=True)
class Underarm:
    """The stitches cast on at each side at the split, and how many in their middle are seam stitches.

    purled: whether these are purled, so that they stand as a line in the fabric.

    >>> Underarm(15, 3).before_start, Underarm(14, 0).before_start
    (9, 7)
    """

    stitches: int
    seam: int
    purled: bool = False

    @property
    def before_start(self) -> int:
        """Stitches of the underarm that end a round; the others begin it."""
        return (self.stitches + self.seam + 1) // 2


NO_UNDERARM = Underarm(0, 0)
"""Where nothing is cast on at the split."""


def start_place(underarms: Sequence[Underarm | None]) -> dict[str, Any]:
    """Where in the underarm a round starts and ends, as values of a sentence.

    underarms: one per size, None in a size that is not told.

    >>> start_place([Underarm(15, 3), None])
    {'before': (9, None), 'seams': 'all', 'seam': (3, None)}
    """
    return {
        "before": run_of(underarms, lambda each: each.before_start),
        "seams": "all" if any_seams(underarms) else "none",
        "seam": seam_run(underarms),
    }


def seam_run(underarms: Sequence[Underarm | None]) -> tuple[int | None, ...]:
    """The seam stitches of every size.

    underarms: as for `start_place`.
    """
    return run_of(underarms, lambda each: each.seam)


def any_seams(underarms: Iterable[Underarm | None]) -> bool:
    """Whether any size has seam stitches.

    underarms: as for `start_place`.
    """
    return any(each and each.seam for each in underarms)


def purled_seams(saying: Saying, underarms: Sequence[Underarm | None]) -> Iterator[Sentence]:
    """That the seam stitches are purled, where any size has some and they are.

    saying: with `seam`, how many they are. underarms: as for `start_place`.
    """
    seams = run_of(underarms, lambda each: each.seam if each.purled else None)
    if any(seams):
        yield saying(seam=tuple([seam or None for seam in seams]))


def shaped_at(underarms: Sequence[Underarm | None]) -> str:
    """Around what shaping is worked: the "seam" stitches, a "marker", or "either" where not all sizes have seams.

    underarms: as for `start_place`.

    >>> shaped_at([Underarm(15, 1), Underarm(16, 0)]), shaped_at([Underarm(16, 0)])
    ('either', 'marker')
    """
    if not any_seams(underarms):
        return "marker"
    return "either" if any(each and not each.seam for each in underarms) else "seam"
