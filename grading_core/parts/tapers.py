"""Shaping at the sides of a body or a sleeve, told for every size at once.

Patterns print both the interval and how often it is worked as size runs: "every 13th (12th, 9th)
round 2 (6, 6) times, then every 14th (13th, 10th) round 7 (4, 7) times".
"""

from __future__ import annotations

from collections.abc import Callable, Sequence
from dataclasses import dataclass

from grading_core.shaping import Phase
from grading_core.wording import counted_run, ordinal, run_sentences, size_run

_LEAVE_OUT = " (leave out what is worked 0 times in your size)"


@dataclass(frozen=True, slots=True)
class _Taper:
    """One size: plain rounds, then intervals with how often, then plain rounds."""

    before: int
    steps: tuple[tuple[int, int], ...]
    after: int


def run_tapers(sizes: Sequence[Sequence[Phase[int]] | None], describe: Callable[[int], str]) -> tuple[str, ...]:
    """The shaping of every size in sentences with size runs; none where the sizes are too unlike.

    sizes: the phases of each size, None where the size has none. describe: what is done in a shaping round.

    >>> one = [Phase(1, 26, ((13, 2),), 2), Phase(27, 124, ((14, 2),), 7)]
    >>> two = [Phase(1, 40, ((10, 2),), 4), Phase(41, 84, ((11, 2),), 4), Phase(85, 88, (), 0)]
    >>> for sentence in run_tapers([one, two], lambda stitches: f"decrease {stitches}"):
    ...     print(sentence)
    Decrease 2 every 13th (10th) round 2 (4) times, then every 14th (11th) round 7 (4) times.
    Work 0 (4) rounds without shaping.
    """
    kinds = {kind for size in sizes for phase in size or () for _, kind in phase.cycle}
    mixed = any(len(phase.cycle) > 1 for size in sizes for phase in size or ())
    if mixed or len(kinds) > 1:
        return run_sentences(sizes, describe)
    tapers = [None if size is None else _taper(size) for size in sizes]
    sentences = [*_plain([taper.before if taper else None for taper in tapers])]
    if kinds:
        sentences.append(_shaped(tapers, describe(kinds.pop())))
    return (*sentences, *_plain([taper.after if taper else None for taper in tapers]))


def _taper(size: Sequence[Phase[int]]) -> _Taper:
    shaped = [phase for phase in size if phase.times]
    plain = [0 if phase.times else phase.to_row - phase.from_row + 1 for phase in size]
    before = plain[0] if plain and shaped else 0
    return _Taper(before, tuple((phase.every[0], phase.times) for phase in shaped), sum(plain) - before)


def _shaped(tapers: Sequence[_Taper | None], what: str) -> str:
    parts, zero = [], False
    for place in range(max(len(taper.steps) for taper in tapers if taper)):
        every: list[str | None] = []
        times: list[int | None] = []
        for taper in tapers:
            interval, many = _step(taper, place) if taper else (None, 0)
            every.append(ordinal(interval) if interval else None)
            times.append(many if taper else None)
        zero = zero or 0 in times
        which = "" if set(every) == {"1st"} else f"{size_run(every)} "
        parts.append(f"every {which}round {counted_run(times, 'time')}")
    return f"{what[0].upper()}{what[1:]} {', then '.join(parts)}{_LEAVE_OUT if zero else ''}."


def _step(taper: _Taper, place: int) -> tuple[int | None, int]:
    """The interval of a step and how often it is worked; none where the size has no shaping at all.

    A size that gets by with one interval works the next wider one 0 times, as the shaping formula has it.
    """
    if place < len(taper.steps):
        return taper.steps[place]
    return (taper.steps[-1][0] + 1 if taper.steps else None), 0


def _plain(rounds: Sequence[int | None]) -> tuple[str, ...]:
    return (f"Work {counted_run(rounds, 'round')} without shaping.",) if any(rounds) else ()
