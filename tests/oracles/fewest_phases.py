"""The fewest phases of a schedule, by trying every cut."""

from collections.abc import Sequence
from functools import cache


def fewest_phases(events: Sequence[tuple[int, str]], rows: int, *, mix_kinds: bool = False, longest: int = 4) -> int:
    """How many phases a schedule needs at least.

    events: (row, kind) in rising order. A phase repeats a cycle of 1 to `longest` intervals (of one kind unless
    kinds may be mixed), one of several intervals at least twice; rows before the first interval and after the
    last event may be plain phases.
    """
    if not events:
        return int(rows > 0)
    starts = [0] + [row for row, _ in events[:-1]]
    tokens = [(row - start, kind) for (row, kind), start in zip(events, starts, strict=True)]
    trailing = int(events[-1][0] < rows)
    best = len(tokens)
    for lead in range(tokens[0][0]):
        led = ((tokens[0][0] - lead, tokens[0][1]), *tokens[1:])
        best = min(best, int(lead > 0) + _fewest_cycles(led, mix_kinds, longest))
    return best + trailing


def _fewest_cycles(tokens: tuple[tuple[int, str], ...], mix_kinds: bool, longest: int) -> int:
    @cache
    def from_place(place: int) -> int:
        if place == len(tokens):
            return 0
        tries = []
        for length in range(1, longest + 1):
            cycle = tokens[place : place + length]
            if len(cycle) < length or (not mix_kinds and len({kind for _, kind in cycle}) > 1):
                continue
            times, stop = 0, place
            while tokens[stop : stop + length] == cycle:
                times, stop = times + 1, stop + length
                if length == 1 or times > 1:
                    tries.append(1 + from_place(stop))
        return min(tries)

    return from_place(0)
