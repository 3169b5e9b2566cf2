"""Size runs, and schedules of all sizes side by side; English words for the details of what a request contradicts.

A size run is the trade's way to print one number for every size: `84 (88, 92, 96)`.
"""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass
from typing import Generic

from grading_core.printing import printing
from grading_core.sentences import Saying
from grading_core.shaping import Kind, Phase

APART = Saying("sizes.apart")

_MOST_MORE_LINES = 3
"""Sizes that side by side need more lines than this beyond the longest of them are clearer one at a time (a judgement,
no source)."""


def size_run(values: Sequence[str | int | None]) -> str:
    """One value per size, as patterns print it: once where all sizes agree.

    values: in the order of the sizes; for None stands what `printing` has for a missing number, a dash.

    >>> size_run([84, 88, 92, 96]), size_run([84, 84])
    ('84 (88, 92, 96)', '84')
    """
    distinct = set(values)
    if None in distinct:
        missing = printing().missing
        values = [missing if value is None else value for value in values]
    if len(distinct) < 2:
        return "".join(map(str, values[:1]))
    first, *others = map(str, values)
    return f"{first} ({', '.join(others)})"


def known_run(values: Sequence[str | int | None]) -> str | None:
    """A size run, None where no size has a value.

    values: as for `size_run`.

    >>> known_run([84, 88]), known_run([None, None])
    ('84 (88)', None)
    """
    return None if values.count(None) == len(values) else size_run(values)


def counted(number: int, noun: str) -> str:
    """A number with its noun, singular or plural.

    number: how many. noun: the singular.

    >>> counted(1, "stitch"), counted(2, "stitch"), counted(0, "round")
    ('1 stitch', '2 stitches', '0 rounds')
    """
    return f"{number} {noun if number == 1 else _plural(noun)}"


def listed(words: Sequence[str]) -> str:
    """Words joined as in a sentence.

    >>> listed(["back", "front", "sleeves"])
    'back, front and sleeves'
    """
    if len(words) < 2:
        return "".join(words)
    return f"{', '.join(words[:-1])} and {words[-1]}"


def some(words: Sequence[str], most: int = 10) -> str:
    """The first of some words, and how many more there are.

    words: one or more. most: of them that are told.

    >>> some(["a", "b", "c"], 2), some(["a"])
    ('a, b and 1 more', 'a')
    """
    told, more = ", ".join(words[:most]), len(words) - most
    return f"{told} and {more} more" if more > 0 else told


def repeated(times: int) -> str:
    """How often, in words a knitter reads.

    times: one or more.

    >>> repeated(1), repeated(2), repeated(19)
    ('once', 'twice', '19 times')
    """
    return {1: "once", 2: "twice"}.get(times, f"{times} times")


@dataclass(frozen=True, slots=True)
class Line(Generic[Kind]):
    """A stretch of a schedule that sizes have in common.

    cycle: as in `shaping.Phase`; empty for rows without shaping. amounts: how often each size works it, or how many
    rows without shaping; None in a size that doesn't.
    """

    cycle: tuple[tuple[int, Kind], ...]
    amounts: tuple[int | None, ...]


def side_by_side(sizes: Sequence[Sequence[Phase[Kind]] | None]) -> tuple[Line[Kind], ...]:
    """The phases of all sizes laid side by side in their order; none where the sizes are too unlike for that.

    sizes: the phases of each size (cycles of one kind only), None where the size has no schedule.

    >>> one, two = [Phase(1, 4, ((2, "x"),), 2)], [Phase(1, 6, ((2, "x"),), 3), Phase(7, 7, (), 0)]
    >>> [(line.cycle, line.amounts) for line in side_by_side([one, two])]
    [(((2, 'x'),), (2, 3)), ((), (None, 1))]
    """
    lines: list[tuple[tuple[tuple[int, Kind], ...], list[int | None]]] = []
    for index, size in enumerate(sizes):
        place = 0
        for phase in size or ():
            amount = phase.times or phase.to_row - phase.from_row + 1
            place = _slot(lines, phase.cycle, place, len(sizes)) + 1
            lines[place - 1][1][index] = amount
    if len(lines) > max((len(size) for size in sizes if size), default=0) + _MOST_MORE_LINES:
        return ()
    return tuple(Line(cycle, tuple(amounts)) for cycle, amounts in lines)


def _plural(noun: str) -> str:
    return noun + ("es" if noun.endswith("stitch") else "s")


def _slot(
    lines: list[tuple[tuple[tuple[int, Kind], ...], list[int | None]]],
    cycle: tuple[tuple[int, Kind], ...],
    place: int,
    sizes: int,
) -> int:
    """The line of a cycle at or after a place, made there where there is none."""
    for later in range(place, len(lines)):
        if lines[later][0] == cycle:
            return later
    lines.insert(place, (cycle, [None] * sizes))
    return place
