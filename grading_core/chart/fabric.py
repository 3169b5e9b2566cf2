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
from itertools import accumulate, count
from operator import add
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


WorkedRound = tuple[int | None, tuple[Stretch, ...], tuple[Stretch, ...]]
"""A round in working order: the chart row, counted from 0, None where the chart isn't worked; and what its halves are
made of, which in most rounds are alike.

A plain tuple, since thousands of them are zipped together."""

Run = tuple[str, int, int, int, int]
"""One colour in a stretch that has it: its symbol; how many stitches it has there; the place of its first one and the
place after its last one, counted from 0 within the stretch; the longest float between two of them."""


@dataclass(frozen=True, slots=True, kw_only=True)
class Survey:
    """A spiral of rounds, and each colour's stitches and those of its floats.

    colours: how many each round uses. floats: the longest of each round in stitches, 0 for none. float_colours: of
    these. plain: of the stitches those in rounds in which the chart isn't worked.
    """

    colours: list[int]
    floats: list[int]
    float_colours: list[str | None]
    stitches: dict[str, int]
    plain: dict[str, int]
    carried: dict[str, int]


class _Places(NamedTuple):
    """Where one colour is in a chart row.

    many: how often. places: in order. following, preceding: the first place at or after each of them, and the last one
    before, which may lie in the next row or in the one before. gaps: after each place, twice over; the widest of them,
    and where it is.
    """

    symbol: str
    many: int
    places: list[int]
    following: list[int]
    preceding: list[int]
    gaps: list[int]
    widest: int
    where: int


class Windows(dict[int | None, "RowWindows"]):
    """What stands in any window of a chart's rows, by the row counted from 0; None where no row is worked.

    A row is indexed when it is first asked for; rows that are alike, as in most motifs, have the same windows.
    """

    def __init__(self, rows: Sequence[str]) -> None:
        """rows: as worked, each from column 1."""
        self._rows = rows
        self._alike: dict[str, RowWindows] = {}

    def __missing__(self, row: int | None) -> RowWindows:
        """Make a row's windows and keep them."""
        text = "" if row is None else self._rows[row]
        found = self[row] = self._alike.setdefault(text, RowWindows(text))
        return found


class RowWindows(dict[Stretch, tuple[Run, ...]]):
    """The colours of any stretch of a round that works one chart row, looked up once each.

    >>> RowWindows("..#..")[Stretch(7, 4, "")]
    (('.', 6, 0, 7, 1), ('#', 1, 3, 4, 0))
    """

    def __init__(self, text: str) -> None:
        """text: the row from column 1; empty where no row is worked."""
        self._text = text
        self._indexed: list[_Places] | None = None

    def __missing__(self, stretch: Stretch) -> tuple[Run, ...]:
        """Look a stretch up and remember it."""
        found = self[stretch] = self._look_up(stretch)
        return found

    def stitches(self, stretch: Stretch) -> str:
        """The colours of a stretch, stitch by stitch in working order."""
        many, start, colour, before, after = stretch
        if start is None:
            return colour * many
        end = start + many - before - after
        repeats = -(-end // len(self._text))
        return colour * before + (self._text * repeats)[start:end] + colour * after

    def _look_up(self, stretch: Stretch) -> tuple[Run, ...]:
        stitches, start, colour, before, after = stretch
        if not stitches:
            return ()
        if start is None:
            return ((colour, stitches, 0, stitches, 0),)
        if before or after:
            charted = self[Stretch(stitches - before - after, start, "")]
            return _with_plain_ends(charted, stretch)
        if self._indexed is None:
            self._indexed = _index(self._text)
        width = len(self._text)
        periods, end = divmod(start + stitches, width)
        columns = periods * width - start
        found = []
        for symbol, many, places, following, preceding, gaps, widest, where in self._indexed:
            low, past = bisect_left(places, start), bisect_left(places, end)
            high = periods * many + past
            used = high - low
            if used == 0:
                continue
            if used > many or low <= where < high - 1 or where + many < high - 1:
                gap = widest
            elif used == 1:
                gap = 0
            else:
                gap = max(gaps[low : high - 1])
            found.append((symbol, used, following[low] - start, columns + preceding[past] + 1, gap))
        return tuple(found)


def survey(windows: Windows, rounds: Iterable[WorkedRound]) -> Survey:
    """Colours, floats and counts of a spiral of rounds.

    windows: of the chart. rounds: in working order; the first one begins the spiral. A float is carried behind as many
    stitches as it is long. Where several floats of a round are its longest, the first one met names the colour. A round
    whose second half repeats the first, as most do, is walked half.

    >>> found = survey(Windows(["..#.."]), [(0, (Stretch(10, 0, ""),), ())] * 2)
    >>> found.floats, found.float_colours
    ([4, 4], ['#', '#'])
    """
    colours: list[int] = []
    floats: list[int] = []
    float_colours: list[str | None] = []
    walked: defaultdict[str, int] = defaultdict(int)
    repeated: defaultdict[str, int] = defaultdict(int)
    plain: defaultdict[str, int] = defaultdict(int)
    # Places are counted through the whole spiral. ends: the place after each colour's last stitch so far.
    ends: defaultdict[str, int] = defaultdict(int)
    # what lies before a colour's first stitch and wherever a whole round is without it: there its strand isn't carried
    absent: defaultdict[str, int] = defaultdict(int)
    at = before = 0
    for row, once, again in rounds:
        known = windows[row]
        begin, longest, float_colour = at, 0, None
        # the first stitch of each of the round's colours
        firsts: dict[str, int] = {}
        twice = once == again
        counted = repeated if twice else walked
        for stretch in once if twice else once + again:
            for colour, used, first, end, gap in known[stretch]:
                first += at
                last = ends[colour]
                if last <= begin:
                    firsts[colour] = first
                    if last <= before:
                        absent[colour] += first - last
                        last = first
                if first - last > gap:
                    gap = first - last
                if gap > longest:
                    longest, float_colour = gap, colour
                ends[colour] = at + end
                counted[colour] += used
            at += stretch[0]
        if twice:
            length = at - begin
            for colour, first in firsts.items():
                last = ends[colour]
                gap = first + length - last
                if gap > longest:
                    longest, float_colour = gap, colour
                ends[colour] = last + length
            at += length
        if row is None:
            for stretch in once + again:
                plain[stretch[2]] += stretch[0]
        before = begin
        colours.append(len(firsts))
        floats.append(longest)
        float_colours.append(float_colour)
    total = {colour: walked[colour] + 2 * repeated[colour] for colour in ends}
    # what a colour reaches over and isn't worked in it, its strand is carried behind
    carried = {colour: end - absent[colour] - total[colour] for colour, end in ends.items()}
    return Survey(
        colours=colours, floats=floats, float_colours=float_colours, stitches=total, plain=dict(plain), carried=carried
    )


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
    found = {symbol: (symbol, used, first + before, end + before, gap) for symbol, used, first, end, gap in charted}
    for plain, at in ((before, 0), (after, stitches - after)):
        if not plain:
            continue
        here: Run = (colour, plain, at, at + plain, 0)
        other = found.get(colour)
        if other is None:
            found[colour] = here
            continue
        (_, one, first, from_, gap), (_, more, to, end, wider) = (here, other) if at == 0 else (other, here)
        found[colour] = (colour, one + more, first, end, max(gap, wider, to - from_))
    return tuple(found.values())


def _index(text: str) -> list[_Places]:
    return [_index_colour(symbol, text) for symbol in dict.fromkeys(text)]


def _index_colour(symbol: str, text: str) -> _Places:
    before, *between = map(len, text.split(symbol))
    width, after = len(text), between.pop()
    places = [*map(add, accumulate(between, initial=before), count())]
    gaps = [*between, after + before]
    widest = max(gaps)
    following, preceding = [*places, places[0] + width], [places[-1] - width, *places]
    return _Places(symbol, len(places), places, following, preceding, gaps * 2, widest, gaps.index(widest))
