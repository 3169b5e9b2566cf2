"""Shaping at the sides of a body or a sleeve, laid side by side for every size.

Patterns print both the interval and how often it is worked as size runs: "every 13 (12, 9) rounds 2 (6, 6) times, then
every 14 (13, 10) rounds 7 (4, 7) times".
"""

from __future__ import annotations

from collections.abc import Iterable, Iterator, Sequence
from dataclasses import dataclass

from grading_core.sentences import COUNT, COUNTS, Saying, Sentence, for_size, for_sizes
from grading_core.shaping import Phase
from grading_core.wording import APART, Line, side_by_side

Run = tuple[int | None, ...]
"""One value per size, None in a size that doesn't have it."""


@dataclass(frozen=True, slots=True)
class Plain:
    """Rounds without shaping, in the sizes that have some."""

    rounds: Run


@dataclass(frozen=True, slots=True)
class Shaped:
    """Shaping rounds in the sizes that have some.

    change: stitches gained or lost in one. every: the interval of each size, or a cycle of several intervals that all
    sizes share. times: how often, cycles where there are any.
    """

    change: int
    every: Run
    times: Run
    cycle: tuple[int, ...] = ()

    def changes(self) -> tuple[int, ...]:
        """Stitches that each size gains or loses by it."""
        per_time = self.change * (len(self.cycle) or 1)
        return tuple([per_time * (times or 0) for times in self.times])


def run_tapers(sizes: Sequence[Sequence[Phase[int]] | None]) -> tuple[Plain | Shaped, ...] | None:
    """The shaping of every size side by side; None where the sizes are too unlike.

    sizes: the phases of each size, of which each kind is the stitches gained or lost; None where the size has none.

    >>> one = [Phase(1, 26, ((13, -2),), 2), Phase(27, 124, ((14, -2),), 7)]
    >>> two = [Phase(1, 44, ((11, -2),), 4), Phase(45, 48, (), 0)]
    >>> for step in run_tapers([one, two]):
    ...     print(step)
    Shaped(change=-2, every=(13, 11), times=(2, 4), cycle=())
    Shaped(change=-2, every=(14, None), times=(7, None), cycle=())
    Plain(rounds=(None, 4))
    """
    kinds = {kind for size in sizes for phase in size or () for _, kind in phase.cycle}
    mixed = any(len(phase.cycle) > 1 for size in sizes for phase in size or ())
    if mixed or len(kinds) > 1:
        lines = side_by_side(sizes)
        return tuple(map(_step, lines)) if lines or not any(sizes) else None
    tapers = [None if size is None else _taper(size) for size in sizes]
    steps: list[Plain | Shaped] = [*_plain([taper.before if taper else None for taper in tapers])]
    if kinds:
        steps += _shaped(tapers, kinds.pop())
    return (*steps, *_plain([taper.after if taper else None for taper in tapers]))


class ShapingSayings:
    """How shaping is told in one part of the garment.

    part: what its ids begin with. increases: whether there are any.
    """

    def __init__(self, part: str, *, increases: bool) -> None:
        self.plain = Saying(f"{part}.plain", rounds=COUNT)
        self.decrease = Saying(f"{part}.decrease", **_EVERY)
        self.decrease_cycle = Saying(f"{part}.decrease_cycle", **_CYCLE)
        if increases:
            self.increase = Saying(f"{part}.increase", **_EVERY)
            self.increase_cycle = Saying(f"{part}.increase_cycle", **_CYCLE)


def shaping_sentences(
    sizes: Sequence[Sequence[Sequence[Phase[int]]] | None],
    stitches: Sequence[int | None],
    sayings: ShapingSayings,
    labels: Sequence[str],
) -> Iterator[Sentence]:
    """The shaping of all sizes in sentences, each with the stitches that it leads to.

    sizes: of each size its stages, as many in every size, and of each stage its phases; None where the size has none.
    stitches: of each size before them. sayings: of the part. labels: of the sizes, which are told one by one where they
    are too unlike.
    """
    steps: list[Plain | Shaped] = []
    for stage in range(max((len(size) for size in sizes if size), default=0)):
        found = run_tapers([None if size is None else size[stage] for size in sizes])
        if found is None:
            yield APART()
            for size, before, label in zip(sizes, stitches, labels, strict=True):
                if size:
                    yield from for_size(shaping_sentences([size], [before], sayings, [label]), label)
            return
        steps += found
    yield from _told(steps, stitches, sayings, labels)


def _told(
    steps: Iterable[Plain | Shaped], stitches: Sequence[int | None], sayings: ShapingSayings, labels: Sequence[str]
) -> Iterator[Sentence]:
    now = list(stitches)
    for step in steps:
        if isinstance(step, Plain):
            yield sayings.plain(rounds=step.rounds)
            continue
        now = [None if count is None else count + change for count, change in zip(now, step.changes(), strict=True)]
        values = {
            "times": step.times,
            "change": abs(step.change),
            "stitches": tuple([count if times else None for count, times in zip(now, step.times, strict=True)]),
        }
        grows = step.change > 0
        if step.cycle:
            yield (sayings.increase_cycle if grows else sayings.decrease_cycle)(cycle=step.cycle, **values)
        else:
            told = (sayings.increase if grows else sayings.decrease)(every=step.every, **values)
            yield from _told_apart(told, step.every, labels)


def _told_apart(told: Sentence, every: Run, labels: Sequence[str]) -> Iterator[Sentence]:
    """The sentence, but one for sizes that shape in every round and one for the others: "every 1 round" is no words."""
    each_round = [place for place, interval in enumerate(every) if interval == 1]
    if not each_round or len(each_round) == len(every):
        yield told
        return
    yield for_sizes(told, labels, each_round)
    others = [place for place, interval in enumerate(every) if interval and interval != 1]
    if others:
        yield for_sizes(told, labels, others)


_DONE = {"times": COUNT, "change": COUNT, "stitches": COUNT}
_EVERY = {"every": COUNT, **_DONE}
_CYCLE = {"cycle": COUNTS, **_DONE}


@dataclass(frozen=True, slots=True)
class _Taper:
    """One size: plain rounds, then intervals with how often, then plain rounds."""

    before: int
    steps: tuple[tuple[int, int], ...]
    after: int


def _step(line: Line[int]) -> Plain | Shaped:
    if not line.cycle:
        return Plain(line.amounts)
    intervals = tuple(interval for interval, _ in line.cycle)
    every = tuple([None if times is None else intervals[0] for times in line.amounts])
    return Shaped(line.cycle[0][1], every, line.amounts, intervals if len(intervals) > 1 else ())


def _taper(size: Sequence[Phase[int]]) -> _Taper:
    shaped = [phase for phase in size if phase.times]
    plain = [0 if phase.times else phase.to_row - phase.from_row + 1 for phase in size]
    before = plain[0] if plain and shaped else 0
    return _Taper(before, tuple((phase.every[0], phase.times) for phase in shaped), sum(plain) - before)


def _shaped(tapers: Sequence[_Taper | None], change: int) -> list[Plain | Shaped]:
    steps: list[Plain | Shaped] = []
    for place in range(max(len(taper.steps) for taper in tapers if taper)):
        own = [taper.steps[place] if taper and place < len(taper.steps) else None for taper in tapers]
        every, times = (tuple([each[part] if each else None for each in own]) for part in (0, 1))
        steps.append(Shaped(change, every, times))
    return steps


def _plain(rounds: Sequence[int | None]) -> list[Plain]:
    return [Plain(tuple([many or None for many in rounds]))] if any(rounds) else []
