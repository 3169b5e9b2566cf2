"""A knitter of short rows, who works every stitch of every row."""

from __future__ import annotations

from collections.abc import Sequence
from typing import NamedTuple

from grading_core.parts.bust_darts import DartTurn
from grading_core.parts.neckline import cast_on
from grading_core.parts.short_rows import BackRaise
from grading_core.sections import Sections


class NeckStitches(NamedTuple):
    """Stitches of the back, the front, each sleeve and each raglan line at the neck."""

    back: int
    front: int
    sleeve: int
    line_stitches: int

    @property
    def sections(self) -> Sections:
        return Sections(self.back, self.front, self.sleeve)

    @property
    def total(self) -> int:
        return self.back + self.front + 2 * self.sleeve + 4 * self.line_stitches


def knit(neck: NeckStitches, raised: BackRaise) -> tuple[dict[int, int], list[int], set[int]]:
    """Rows above each stitch, where each row turns, and the turns still open after the last row.

    Places are counted in working order from the start of the round; those before it are negative. Before a front drop
    the front of the neck is what is cast on of it.
    """
    markers, place = {}, 0
    for gap in cast_on(neck.sections, neck.line_stitches).gaps:
        place += gap.stitches
        markers[gap.marker] = place
    centre_front = markers[2] + neck.line_stitches + neck.front // 2
    heights = dict.fromkeys(range(centre_front - neck.total, centre_front), 0)
    here, stop = (0, 0) if raised.way == "joined" else (min(heights), centre_front)
    if raised.begins == "wrong":
        here, stop = stop, here
    turns, unclosed = [], set()
    for turn in raised.turns:
        if turn.side == "right":
            there = markers[turn.marker] + turn.stitches
        else:
            there = markers[turn.marker] - neck.total - turn.stitches
        work(heights, unclosed, here, there)
        turns.append(there)
        unclosed.add(there)
        here = there
    work(heights, unclosed, here, stop)
    return heights, turns, unclosed


def knit_darts(back: int, front: int, turns: Sequence[DartTurn]) -> tuple[list[int], list[int], set[int], set[int]]:
    """A round of the body with short rows over its front: back and front, rows above each stitch of both.

    Besides the turns that are open after the round, as places from the front's first stitch, and those that still are
    after one round more.
    """
    heights, unclosed = dict.fromkeys(range(back + front), 0), set[int]()
    here = 0
    for turn in turns:
        there = back + front - turn.stitches if turn.side == "right" else back + turn.stitches
        assert (there > here) == (turn.side == "right"), turn
        work(heights, unclosed, here, there)
        unclosed.add(there)
        here = there
    work(heights, unclosed, here, back + front)
    rows = [heights[stitch] for stitch in range(back + front)]
    after_round = {place - back for place in unclosed}
    work(heights, unclosed, 0, back + front)
    return rows[:back], rows[back:], after_round, unclosed


def work(heights: dict[int, int], unclosed: set[int], here: int, there: int) -> None:
    """One row from place to place: every stitch on the way gets higher, every turn strictly on the way is closed."""
    first, last = sorted((here, there))
    for stitch in range(first, last):
        heights[stitch] += 1
    unclosed.difference_update(range(first + 1, last))
