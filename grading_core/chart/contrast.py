"""Whether the colours of a chart read apart, and where stitches of two that hardly do meet.

Stitches meet side by side in a row and one above the other, in the chart as it is worked again and again: column 1
follows the last column, and row 1 the last row unless the chart is worked once.
"""

from __future__ import annotations

from collections import Counter
from collections.abc import Iterable, Iterator, Mapping, Sequence
from itertools import combinations

from grading_core.chart.grid import Chart
from grading_core.chart.lightness import grey, lightness, reads, tenths
from grading_core.chart.problems import chart_problems
from grading_core.chart.request import ChartRequest, ContrastRequest
from grading_core.chart.result import ColourContrasts, ColourPair, ComparedColour, Direction, Meetings, MeetingStitch
from grading_core.codes import WarningCode
from grading_core.errors import Check, Path, Remark, check, sound, under
from grading_core.sentences import NUMBER, TEXT, Saying

LOW_CONTRAST = Saying("warning.low_contrast", first=TEXT, second=TEXT, difference=NUMBER)

MAX_PLACES = 20
"""Of one pair that are told; all are counted."""

MAX_LOW = 20
"""Pairs that hardly read apart and get a word each: the most alike."""

Symbols = tuple[str, str]


def colour_contrasts(request: ContrastRequest) -> ColourContrasts:
    """Every two colours compared by lightness, and where those that hardly read apart meet.

    request: the colours, and the chart.

    Raises ContradictionError for a chart that is empty or uneven, or has other symbols than the colours.

    >>> from grading_core.chart.request import ToldColour
    >>> hexes = {"#": "#a0522d", "o": "#556b2f", ".": "#e8d9b5"}
    >>> colours = {symbol: ToldColour(hex, hex) for symbol, hex in hexes.items()}
    >>> made = colour_contrasts(ContrastRequest(colours, Chart(("#o.", "#.o"), {})))
    >>> [(pair.colours, round(float(pair.difference), 1), pair.reads) for pair in made.pairs]
    [(('#', '.'), 43.3, 'clearly'), (('#', 'o'), 1.6, 'hardly'), (('.', 'o'), 44.8, 'clearly')]
    >>> made.pairs[1].meetings.side_by_side, made.pairs[1].meetings.one_above_other
    (2, 0)
    """
    sound(contrast_problems(request))
    colours, chart = request.colours, request.chart
    compared = {symbol: _compared(told.name, told.hex) for symbol, told in sorted(colours.items())}
    pairs = _pairs(compared, chart)
    low = _lowest(pair for pair in pairs if pair.is_low)
    remarks = [_remark(pair, compared, ("colours", pair.colours[1])) for pair in low]
    return ColourContrasts(compared, pairs, low, tuple(remarks))


@check
def contrast_problems(request: ContrastRequest) -> Check[None]:
    """Where a chart contradicts itself, or has symbols that no colour is told of.

    request: any.
    """
    if request.chart is not None:
        yield from under(("chart",), chart_problems(request.chart, request.colours))


def contrast_remarks(request: ChartRequest) -> Iterator[Remark]:
    """Words about colours of a placed chart that meet and hardly read apart.

    request: the chart and the sizes. Beside each other lie what meets in the chart, and the colours of plain stretches,
    raglan lines and seams beside every other. Colours without a hex are passed over.
    """
    chart, plain = request.worked_chart, request.plain_colours()
    around = {symbol for here in (plain, plain.last) for symbol in (here.plain, here.line, here.seam)}
    used = {
        symbol: _compared(colour.name, colour.hex)
        for symbol, colour in sorted(chart.colours.items())
        if colour.hex is not None and (symbol in around or any(symbol in row for row in chart.rows))
    }
    pairs = _pairs(used, chart)
    for pair in _lowest(pair for pair in pairs if pair.is_low or (pair.reads == "hardly" and around & {*pair.colours})):
        yield _remark(pair, used, ("chart",))


def _compared(name: str, hex: str) -> ComparedColour:
    light = lightness(hex)
    return ComparedColour(name=name, hex=hex, lightness=light, grey=grey(light))


def _pairs(colours: Mapping[str, ComparedColour], chart: Chart | None) -> tuple[ColourPair, ...]:
    """Every two colours; of those that hardly read apart, where they meet in a chart."""
    differences = {
        pair: abs(colours[pair[0]].lightness - colours[pair[1]].lightness) for pair in combinations(colours, 2)
    }
    hardly = [pair for pair, difference in differences.items() if reads(difference) == "hardly"]
    met = _meetings(chart, hardly) if chart else {}
    return tuple(ColourPair(pair, difference, met.get(pair)) for pair, difference in differences.items())


def _meetings(chart: Chart, pairs: Sequence[Symbols]) -> dict[Symbols, Meetings]:
    """Where stitches of each pair meet."""
    counts: dict[Direction, Counter[Symbols]] = {"next_column": Counter(), "next_row": Counter()}
    for _, direction, stitches, others in _neighbours(chart) if pairs else ():
        counts[direction].update(zip(stitches, others, strict=True))
    beside, above = ({pair: times[pair] + times[pair[::-1]] for pair in pairs} for times in counts.values())
    places = _places(chart, {pair: min(MAX_PLACES, beside[pair] + above[pair]) for pair in pairs})
    return {pair: Meetings(beside[pair], above[pair], tuple(places[pair])) for pair in pairs}


def _places(chart: Chart, wanted: Mapping[Symbols, int]) -> dict[Symbols, list[MeetingStitch]]:
    """The first places, as many as are wanted, at which each pair meets. wanted: no more than there are."""
    found: dict[Symbols, list[MeetingStitch]] = {pair: [] for pair in wanted}
    open_ = {order: pair for pair, many in wanted.items() if many for order in (pair, pair[::-1])}
    for row, direction, stitches, others in _neighbours(chart):
        if not open_:
            break
        for column, order in enumerate(zip(stitches, others, strict=True), 1):
            if pair := open_.get(order):
                found[pair].append(MeetingStitch(row, column, direction))
                if len(found[pair]) == wanted[pair]:
                    del open_[pair], open_[pair[::-1]]
    return found


def _neighbours(chart: Chart) -> Iterator[tuple[int, Direction, str, str]]:
    """All stitches that meet, in working order: the chart row, where the others lie, its stitches, and these others."""
    rows = chart.worked_rows()
    for number, row in enumerate(rows, 1):
        yield number, "next_column", row, row[1:] + row[:1]
        if number < len(rows) or chart.repeat == "rows":
            yield number, "next_row", row, rows[number % len(rows)]


def _lowest(pairs: Iterable[ColourPair]) -> tuple[ColourPair, ...]:
    return tuple(sorted(pairs, key=lambda pair: (pair.difference, pair.colours))[:MAX_LOW])


def _remark(pair: ColourPair, colours: Mapping[str, ComparedColour], path: Path) -> Remark:
    first, second = (colours[symbol].name for symbol in pair.colours)
    message = LOW_CONTRAST(first=first, second=second, difference=tenths(pair.difference))
    return Remark(WarningCode.LOW_CONTRAST, message, path=path)
