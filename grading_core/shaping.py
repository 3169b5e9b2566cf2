"""n shapings over m rows in at most two neighbouring intervals, and schedules in few phases.

Source of the arithmetic: the trade's shaping formula, printed in many handbooks: with q = m div n
and r = m mod n, shape every q rows n - r times and every q + 1 rows r times. An interval counts
the shaping row itself, and the first one counts from the row before the first.
"""

from __future__ import annotations

from collections.abc import Hashable, Sequence
from itertools import accumulate, groupby, pairwise
from typing import Generic, Literal, NamedTuple, TypeVar

Spacing = Literal["closest_first", "widest_first", "even", "single_then_plain", "plain_then_single"]
Where = Literal["early", "even", "late"]

LONGEST_CYCLE = 4
"""A cycle of more intervals than this is no longer read as one thing (common practice, no source)."""

Kind = TypeVar("Kind", bound=Hashable)


class Spread(NamedTuple):
    """How events are spread over a span.

    before, after: what is left plain before the first interval and after the last event.
    intervals: one for each event, in order. Together they are the span.
    """

    before: int
    intervals: tuple[int, ...]
    after: int

    def positions(self) -> tuple[int, ...]:
        """Where the events fall, counted from 1.

        >>> Spread(1, (2, 2), 0).positions()
        (3, 5)
        """
        return tuple(accumulate(self.intervals, initial=self.before))[1:]


class Phase(NamedTuple, Generic[Kind]):
    """Rows that repeat one interval, or a short cycle of intervals.

    from_row, to_row: the rows it covers. cycle: the intervals with what is done at the end of
    each; empty for a plain stretch. times: how often the cycle is worked, 0 for a plain stretch.
    """

    from_row: int
    to_row: int
    cycle: tuple[tuple[int, Kind], ...]
    times: int

    @property
    def every(self) -> tuple[int, ...]:
        """The intervals alone."""
        return tuple([interval for interval, _ in self.cycle])


def spread(events: int, span: int, spacing: Spacing = "closest_first") -> Spread:
    """Spread events over a span in at most two neighbouring intervals.

    events: how many, 0 to span. span: rows, or steps of a grid. spacing: the order of the two
    intervals ("closest_first", "widest_first", "even"), which end exactly with the span; or one
    interval only, the surplus left plain after ("single_then_plain") or before it
    ("plain_then_single").

    Raises ValueError where there are more events than the span has room for.

    Source: the shaping formula of the module's docstring.

    >>> spread(36, 140).intervals.count(4)
    32
    """
    if not 0 <= events <= span:
        raise ValueError(f"{events} events do not fit in {span}")
    if events == 0:
        return Spread(0, (), span)
    closest, wider = divmod(span, events)
    if spacing == "single_then_plain":
        return Spread(0, (closest,) * events, wider)
    if spacing == "plain_then_single":
        return Spread(wider, (closest,) * events, 0)
    if spacing == "closest_first":
        intervals = (closest,) * (events - wider) + (closest + 1,) * wider
    elif spacing == "widest_first":
        intervals = (closest + 1,) * wider + (closest,) * (events - wider)
    else:
        ends = [event * span // events for event in range(events + 1)]
        intervals = tuple(end - start for start, end in pairwise(ends))
    return Spread(0, intervals, 0)


def choose(pool: Sequence[int], count: int, where: Where) -> tuple[int, ...]:
    """Take so many of a sequence: the first, the last, or evenly from it, beginning with the first.

    pool: in order. count: 0 to the length of the pool. where: "early", "even" or "late".

    >>> choose(range(6), 3, "even")
    (0, 2, 4)
    """
    if where == "early":
        return tuple(pool[:count])
    if where == "late":
        return tuple(pool[len(pool) - count :])
    return tuple(pool[taken * len(pool) // count] for taken in range(count))


def phases(events: Sequence[tuple[int, Kind]], rows: int, *, mix_kinds: bool = False) -> tuple[Phase[Kind], ...]:
    """A schedule in the fewest phases, which cover every row without gap or overlap.

    events: the shaping rows in rising order, each its number, counted from 1, and what is done in it. rows: how many
    rows there are in all. mix_kinds: whether one cycle may hold shaping rows of different kinds.

    A phase repeats a cycle of at most `LONGEST_CYCLE` intervals, and one of more than one interval at
    least twice. Among equally few phases the one with the shorter cycles is taken. Where the
    first interval is longer than the next one, or than the one in its place in the next cycle, its surplus is a
    plain phase of its own, provided that this makes no phase more.

    >>> [(p.from_row, p.to_row, p.every, p.times)
    ...  for p in phases([(2, "a"), (4, "a"), (6, "a")], 8)]
    [(1, 6, (2,), 3), (7, 8, (), 0)]
    """
    if not events:
        return (Phase(1, rows, (), 0),) if rows else ()
    tokens: list[tuple[int, Kind]] = []
    previous = 0
    for row, kind in events:
        tokens.append((row - previous, kind))
        previous = row
    lead, cut = 0, _fewest_cycles(tokens, mix_kinds)
    first, kind = tokens[0]
    for surplus in _surpluses(tokens):
        joined = [(first - surplus, kind), *tokens[1:]]
        recut = _fewest_cycles(joined, mix_kinds)
        # fewer by one makes up for the plain phase
        if len(recut) < len(cut):
            lead, cut = surplus, recut
    if lead:
        tokens[0] = (first - lead, kind)
    found: list[Phase[Kind]] = [Phase(1, lead, (), 0)] if lead else []
    row = lead
    start = 0
    for length, times in cut:
        cycle = tuple(tokens[start : start + length])
        end = row + times * sum(interval for interval, _ in cycle)
        found.append(Phase(row + 1, end, cycle, times))
        row = end
        start += length * times
    if row < rows:
        found.append(Phase(row + 1, rows, (), 0))
    return tuple(found)


def _surpluses(tokens: Sequence[tuple[int, Kind]]) -> list[int]:
    """What may be taken off the first interval so that it begins a repeated cycle, for the shortest cycle first."""
    first, kind = tokens[0]
    surpluses = []
    for length in range(1, min(LONGEST_CYCLE, len(tokens) - 1) + 1):
        interval, repeated = tokens[length]
        same = repeated == kind and tokens[1:length] == tokens[length + 1 : 2 * length]
        if same and interval < first and first - interval not in surpluses:
            surpluses.append(first - interval)
    return surpluses


def _fewest_cycles(tokens: Sequence[tuple[int, Kind]], mix_kinds: bool) -> list[tuple[int, int]]:
    """The tokens cut into the fewest repeated cycles, as (length of the cycle, times)."""
    runs = [len(list(run)) for _, run in groupby(tokens)]
    if len(runs) <= 3:
        # a repeated cycle of two different tokens holds at least four runs
        return [(1, times) for times in runs]
    count = len(tokens)
    # best[i] = (phases, sum of cycle lengths) for the tokens before i, with how that was reached
    best: list[tuple[int, int] | None] = [None] * (count + 1)
    reached: list[tuple[int, int]] = [(0, 0)] * (count + 1)
    best[0] = (0, 0)
    same_from = [_repeat_ends(tokens, length) for length in range(1, LONGEST_CYCLE + 1)]
    uniform_from = _kind_ends(tokens)
    for start in range(count):
        so_far = best[start]
        if so_far is None:
            continue
        for length in range(1, LONGEST_CYCLE + 1):
            end = same_from[length - 1][start]
            if not mix_kinds:
                end = min(end, uniform_from[start])
            most = (end - start) // length
            # Stretches that repeat different cycles of p and q tokens share at most p + q - 2 of them (Fine and
            # Wilf), so a cut further than that before the end of this stretch is never better.
            fewest = max(most - (length + LONGEST_CYCLE - 2) // length, 1 if length == 1 else 2)
            for times in range(most, fewest - 1, -1):
                stop = start + times * length
                candidate = (so_far[0] + 1, so_far[1] + length)
                held = best[stop]
                if held is None or candidate < held:
                    best[stop] = candidate
                    reached[stop] = (length, times)
    cut: list[tuple[int, int]] = []
    stop = count
    while stop:
        length, times = reached[stop]
        cut.append((length, times))
        stop -= length * times
    return cut[::-1]


def _repeat_ends(tokens: Sequence[tuple[int, Kind]], length: int) -> list[int]:
    """For each start, where the longest stretch of that period ends (exclusive)."""
    count = len(tokens)
    ends = [0] * count
    for start in range(count - 1, -1, -1):
        if start + length < count and tokens[start] == tokens[start + length]:
            ends[start] = ends[start + 1]
        else:
            ends[start] = min(start + length, count)
    return ends


def _kind_ends(tokens: Sequence[tuple[int, Kind]]) -> list[int]:
    """For each start, where the stretch of one kind ends (exclusive)."""
    count = len(tokens)
    ends = [count] * count
    for start in range(count - 2, -1, -1):
        ends[start] = ends[start + 1] if tokens[start][1] == tokens[start + 1][1] else start + 1
    return ends
