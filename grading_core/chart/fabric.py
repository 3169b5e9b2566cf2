"""What stands in a round of colourwork: colours, floats and counts, without walking its stitches.

A float is the stretch of stitches not in a colour between two stitches of that colour, along the strand as
it is knitted: over sections, plain sections, raglan lines and seams alike. Rounds are a spiral: over the
round's start a float is the unused end of one round plus the unused beginning of the next, where both
use the colour, and counts for the next. (Common practice, no source.)

A window of a chart row, any number of repeats wide, is looked up by the places of each colour in the row: the
cost of a round is its sections times its colours, however many stitches it has.
"""

from __future__ import annotations

from bisect import bisect_left
from collections import defaultdict
from collections.abc import Iterable, Sequence
from dataclasses import dataclass
from typing import NamedTuple


class Stretch(NamedTuple):
    """Stitches of one round that lie side by side.

    stitches: how many, zero or more. start: the chart's column of the first that is worked from it, counted from 0;
    None for a plain stretch. colour: of plain stitches; empty where all are worked from the chart. before, after:
    plain stitches at either end of those that are worked from the chart.
    """

    stitches: int
    start: int | None
    colour: str
    before: int = 0
    after: int = 0


class WorkedRound(NamedTuple):
    """A round in working order: the chart row, counted from 0, None where the chart isn't worked."""

    row: int | None
    stretches: tuple[Stretch, ...]


class Run(NamedTuple):
    """One colour in a stretch that has it.

    used: how many stitches it has there. first, end: the place of its first one and the place after its last one,
    counted from 0 within the stretch. gap: the longest float between two of them.
    """

    colour: str
    used: int
    first: int
    end: int
    gap: int


class RoundSurvey(NamedTuple):
    """One round's colours and longest float.

    colours: how many the round uses. longest_float: in stitches, 0 for none. colour: of that float.
    """

    colours: int
    longest_float: int
    colour: str | None


@dataclass(frozen=True, slots=True, kw_only=True)
class Survey:
    """A spiral of rounds: each round's colours and longest float, each colour's stitches, and those of its floats.

    plain: of the stitches those in rounds in which the chart isn't worked.
    """

    rounds: tuple[RoundSurvey, ...]
    stitches: dict[str, int]
    plain: dict[str, int]
    carried: dict[str, int]


class _Places(NamedTuple):
    """Places of one colour in a chart row and the gaps after each, twice over; the widest and where it is."""

    places: list[int]
    gaps: list[int]
    widest: int
    where: int


class Windows:
    """What stands in any window of a chart's rows; a row is indexed when it is first asked for."""

    def __init__(self, rows: Sequence[str]) -> None:
        """rows: as worked, each from column 1."""
        self._rows: dict[int | None, RowWindows] = {None: RowWindows("")}
        self._texts = rows

    def row(self, row: int | None) -> RowWindows:
        """The windows of a chart row, counted from 0; None for a round in which no row is worked."""
        found = self._rows.get(row)
        if found is None:
            found = self._rows[row] = RowWindows("" if row is None else self._texts[row])
        return found


class RowWindows(dict[Stretch, tuple[Run, ...]]):
    """The colours of any stretch of a round that works one chart row, looked up once each.

    >>> RowWindows("..#..")[Stretch(7, 4, "")]
    (Run(colour='.', used=6, first=0, end=7, gap=1), Run(colour='#', used=1, first=3, end=4, gap=0))
    """

    def __init__(self, text: str) -> None:
        """text: the row from column 1; empty where no row is worked."""
        self._text = text
        self._indexed: list[tuple[str, _Places]] | None = None

    def __missing__(self, stretch: Stretch) -> tuple[Run, ...]:
        """Look a stretch up and remember it."""
        found = self[stretch] = self._look_up(stretch)
        return found

    def stitches(self, stretch: Stretch) -> str:
        """The colours of a stretch, stitch by stitch in working order."""
        count, start, colour, before, after = stretch
        if start is None:
            return colour * count
        end = start + count - before - after
        repeats = -(-end // len(self._text))
        return colour * before + (self._text * repeats)[start:end] + colour * after

    def _look_up(self, stretch: Stretch) -> tuple[Run, ...]:
        stitches, start, colour, before, after = stretch
        if not stitches:
            return ()
        if start is None:
            return (Run(colour, stitches, 0, stitches, 0),)
        if before or after:
            charted = self[Stretch(stitches - before - after, start, "")]
            return _with_plain_ends(charted, stretch)
        if self._indexed is None:
            self._indexed = _index(self._text)
        width = len(self._text)
        periods, end = divmod(start + stitches, width)
        found = []
        for symbol, (places, gaps, widest, where) in self._indexed:
            per_row = len(places)
            low = bisect_left(places, start)
            high = periods * per_row + bisect_left(places, end)
            used = high - low
            if used == 0:
                continue
            first = places[low] if low < per_row else places[0] + width
            period, place = divmod(high - 1, per_row)
            last = period * width + places[place]
            if used > per_row or low <= where < high - 1 or where + per_row < high - 1:
                gap = widest
            elif used == 1:
                gap = 0
            else:
                gap = max(gaps[low : high - 1])
            found.append(Run(symbol, used, first - start, last - start + 1, gap))
        return tuple(found)


def survey(windows: Windows, rounds: Iterable[WorkedRound]) -> Survey:
    """Colours, floats and counts of a spiral of rounds.

    windows: of the chart. rounds: in working order; the first one begins the spiral. A float is carried behind as many
    stitches as it is long.

    >>> windows = Windows(["..#.."])
    >>> survey(windows, [WorkedRound(0, (Stretch(10, 0, ""),))] * 2).rounds[1]
    RoundSurvey(colours=2, longest_float=4, colour='#')
    """
    found = []
    total: defaultdict[str, int] = defaultdict(int)
    plain: defaultdict[str, int] = defaultdict(int)
    # how far each colour reaches, from its first stitch in a round, or its last in the round before, to its last one
    reach: defaultdict[str, int] = defaultdict(int)
    before: dict[str, int] = {}
    for row, stretches in rounds:
        known = windows.row(row)
        ends: dict[str, int] = {}
        at = longest = 0
        float_colour = None
        for stretch in stretches:
            for colour, used, first, end, gap in known[stretch]:
                if colour in ends:
                    float_here = at + first - ends[colour]
                elif colour in before:
                    unused = before[colour]
                    float_here = at + first + unused
                    reach[colour] += unused
                else:
                    float_here = 0
                    reach[colour] -= at + first
                if gap > float_here:
                    float_here = gap
                if float_here > longest:
                    longest, float_colour = float_here, colour
                ends[colour] = at + end
                total[colour] += used
            at += stretch[0]
        # What each colour leaves unused at the round's end.
        before = {}
        for colour, end in ends.items():
            before[colour] = at - end
            reach[colour] += end
        if row is None:
            for stretch in stretches:
                plain[stretch[2]] += stretch[0]
        found.append(RoundSurvey(len(ends), longest, float_colour))
    # what a colour reaches over and isn't worked in it, its strand is carried behind
    carried = {colour: reach[colour] - used for colour, used in total.items()}
    return Survey(rounds=tuple(found), stitches=dict(total), plain=dict(plain), carried=carried)


def find_float(before: str, stitches: str, colour: str, length: int) -> tuple[int, int]:
    """Where a float of a known length lies.

    before, stitches: the colours of the round before ("" for none) and of the round that the float counts
    for. colour, length: of the float. The answer is the places of the two stitches that hold it, counted from
    the round's first stitch; the first is negative where the float begins in the round before.

    >>> find_float("#....", "..#..", "#", 6)
    (-5, 2)
    """
    start = before.rfind(colour) - len(before) if colour in before else None
    end = stitches.index(colour)
    while start is None or end - start - 1 != length:
        start, end = end, stitches.index(colour, end + 1)
    return start, end


def _with_plain_ends(charted: Iterable[Run], stretch: Stretch) -> tuple[Run, ...]:
    """The runs of a stretch whose ends are plain, from those of its middle."""
    stitches, _, colour, before, after = stretch
    found = {symbol: Run(symbol, used, first + before, end + before, gap) for symbol, used, first, end, gap in charted}
    for plain, at in ((before, 0), (after, stitches - after)):
        if not plain:
            continue
        here = Run(colour, plain, at, at + plain, 0)
        other = found.get(colour)
        if other is None:
            found[colour] = here
            continue
        first, last = (here, other) if at == 0 else (other, here)
        between = max(first.gap, last.gap, last.first - first.end)
        found[colour] = Run(colour, first.used + last.used, first.first, last.end, between)
    return tuple(found.values())


def _index(text: str) -> list[tuple[str, _Places]]:
    places: dict[str, list[int]] = {}
    for place, symbol in enumerate(text):
        if symbol in places:
            places[symbol].append(place)
        else:
            places[symbol] = [place]
    return [(symbol, _index_colour(found, len(text))) for symbol, found in places.items()]


def _index_colour(places: list[int], width: int) -> _Places:
    following = [*places[1:], places[0] + width]
    gaps = [after - place - 1 for place, after in zip(places, following, strict=True)]
    widest = max(gaps)
    return _Places(places, gaps * 2, widest, gaps.index(widest))
