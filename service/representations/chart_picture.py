"""The chart round by round as one size works it, the columns in which its sections start traced over it.

Rounds go upwards from the chart's first one to the end of the repeat that the yoke has begun, so that every
round has a row of its own and no trace lies upon another repeat's. A stitch has the proportions of the gauge.
"""

from __future__ import annotations

from collections.abc import Iterable, Iterator, Sequence
from dataclasses import dataclass
from decimal import Decimal
from textwrap import wrap
from zlib import crc32

import svg

from grading_core.chart.grid import Chart
from grading_core.chart.views import ChartView, Trace
from grading_core.sentences import COUNT, NAMES, TEXT, TOKEN, Saying, Sentence
from service.language import text as said
from service.lengths import LengthWriter
from service.representations.drawing import (
    LEGEND_LINE,
    TEXT_COLOUR,
    Ink,
    colour_legend,
    inks,
    mark_patterns,
    page,
    rounded,
    stitches,
    text,
)

TITLE = Saying("picture.chart", size=TEXT)
READING = Saying("picture.reading")
ROUND, ROW, COLUMN = Saying("picture.round"), Saying("picture.row"), Saying("picture.column")
YOKE, SPLIT, BELOW = Saying("picture.yoke"), Saying("picture.split"), Saying("picture.below")
FIRST_STITCH, FIRST_MOTIF = Saying("picture.first_stitch", of=TOKEN), Saying("picture.first_motif", of=TOKEN)
CHART = Saying("picture.chart_described", columns=COUNT, rows=COUNT, colours=NAMES, rounds=COUNT)
TRACE = Saying("picture.trace", part=TOKEN, of=TOKEN, first=COUNT, start=COUNT, last=COUNT, end=COUNT)
"""What is said of a chart. of: the section that starts: back, front, both of them, or sleeve."""

_WIDEST, _NARROWEST, _ROOM = 20, 6, 640
"""A stitch's width in pixels, and the width that a chart should take up between these."""

_LEFT, _RIGHT, _TOP, _BELOW = 116, 100, 76, 46
_NUMBERS = 10
"""The size of the numbers at the edges."""

_PART_WIDTH = 9
"""How many characters there is room for beside the rounds of a part."""


@dataclass(frozen=True, slots=True)
class _Line:
    """How a section's starts are traced.

    kind: by which lines and dots are chosen. of: the section, as sentences have it.
    """

    kind: str
    of: str
    dashes: list[Decimal | float | int] | None
    traces: tuple[Trace, ...]


@dataclass(frozen=True, slots=True, kw_only=True)
class _Grid:
    """Where everything lies, in pixels from the grid's upper left corner.

    yoke: the rounds of the yoke. first: the number of the lowest round, counted through the split. rounds: how
    many are drawn.
    """

    chart: Chart
    cell_width: float
    cell_height: float
    yoke: int
    first: int
    rounds: int

    @property
    def width(self) -> float:
        return self.chart.width * self.cell_width

    @property
    def height(self) -> float:
        return self.rounds * self.cell_height

    def across(self, column: int) -> float:
        """The middle of a column, counted from the right."""
        return rounded((self.chart.width - column + 0.5) * self.cell_width)

    def along(self, number: int) -> float:
        """The middle of a round counted through the split."""
        return rounded((self.rounds - (number - self.first) - 0.5) * self.cell_height)

    def below(self, number: int) -> float:
        """The lower edge of a round counted through the split."""
        return rounded((self.rounds - (number - self.first)) * self.cell_height)


def chart_picture(view: ChartView, _: LengthWriter) -> str:
    """The picture as SVG."""
    grid = _grid(view)
    lines = _lines(view.traces)
    label, rows = view.size.label, view.chart.rows
    symbols = set("".join(rows))
    used = {symbol: colour for symbol, colour in view.chart.colours.items() if symbol in symbols}
    ink = inks(used, view.plain.plain)
    key = f"chart-{crc32(repr((label, rows)).encode()):08x}"
    names = {symbol: used[symbol].name for symbol in ink}
    width = _LEFT + max(grid.width, 300) + _RIGHT
    sample = (min(grid.cell_width, 14), min(grid.cell_height, 14))
    colours = colour_legend(names, ink, width - _LEFT, sample, key)
    kinds = _trace_legend(lines, key, FIRST_MOTIF if view.size.motifs else FIRST_STITCH)
    foot = _TOP + grid.height + _BELOW
    height = foot + LEGEND_LINE * (len(colours) + len(kinds)) + 8
    title = TITLE(size=label)
    return page(
        key,
        title,
        [*_described(grid, lines, names.values())],
        width,
        height,
        [
            svg.Defs(elements=[*_definitions(grid, lines, ink, key)]),
            text(title, _LEFT, 26, 16, font_weight="bold"),
            text(READING(), _LEFT, 46, 12),
            svg.G(
                transform=[svg.Translate(_LEFT, _TOP)],
                elements=[
                    *_chart(grid, ink, key),
                    *_grid_lines(grid),
                    *_numbers(grid),
                    *_parts(grid),
                    *(polyline for line in lines for polyline in _traced(grid, line, key)),
                ],
            ),
            svg.G(transform=[svg.Translate(_LEFT, rounded(foot))], elements=list(colours)),
            svg.G(transform=[svg.Translate(_LEFT, rounded(foot + LEGEND_LINE * len(colours)))], elements=list(kinds)),
        ],
    )


def _grid(view: ChartView) -> _Grid:
    chart, size = view.chart, view.size
    come, yoke = size.progress, len(size.rounds)
    below = max(len(size.body.rounds), len(size.sleeve.rounds))
    worked = max(0, yoke - view.first_round + 1)
    if chart.repeat == "once":
        worked = come.yoke_chart_rows
    # Where the split falls on the chart's last row, the next repeat shows how body and sleeves begin.
    more = come.rows_left or (min(chart.height, below) if chart.repeat == "rows" else 0)
    width = max(_NARROWEST, min(_WIDEST, _ROOM / chart.width))
    ratio = float(view.gauge.stitches_per_cm / view.gauge.rows_per_cm)
    return _Grid(
        chart=chart,
        cell_width=rounded(width),
        cell_height=rounded(width * ratio),
        yoke=yoke,
        first=view.first_round,
        rounds=worked + more,
    )


def _lines(traces: Iterable[Trace]) -> list[_Line]:
    """Back and front as one line where they start alike."""
    back, front, sleeve = (
        tuple(trace for trace in traces if trace.section == section) for section in ("back", "front", "sleeve")
    )
    if [trace.pieces for trace in back] == [trace.pieces for trace in front]:
        bodies = [_Line("body", "both", None, back)]
    else:
        bodies = [_Line("body", "back", None, back), _Line("front", "front", [9, 4], front)]
    return [*bodies, _Line("sleeve", "sleeve", [2, 3], sleeve)]


def _definitions(grid: _Grid, lines: Iterable[_Line], ink: dict[str, Ink], key: str) -> Iterator[svg.Element]:
    yield from mark_patterns(ink, grid.cell_width, grid.cell_height, key)
    rows = grid.chart.worked_rows()
    drawn = ((0, len(rows) - 1 - number, row[::-1]) for number, row in enumerate(rows))
    yield svg.G(id=f"{key}-repeat", elements=stitches(drawn, ink, key))
    yield svg.ClipPath(id=f"{key}-rounds", elements=[svg.Rect(width=rounded(grid.width), height=rounded(grid.height))])
    # The traces get a clear edge by leaving the stitches under it undrawn, whatever the paper is.
    yield svg.Mask(
        id=f"{key}-clear",
        maskUnits="userSpaceOnUse",
        x=0,
        y=0,
        width=rounded(grid.width),
        height=rounded(grid.height),
        elements=[
            svg.Rect(width=rounded(grid.width), height=rounded(grid.height), fill="white"),
            *(
                svg.Polyline(
                    points=points,
                    fill="none",
                    stroke="black",
                    stroke_width=rounded(min(8, grid.cell_width * 0.6)),
                    stroke_linecap="round",
                    stroke_linejoin="round",
                )
                for line in lines
                for points in _points(grid, line)
            ),
        ],
    )
    size = min(3.0, grid.cell_width / 4)
    yield _marker(f"{key}-body", svg.Circle(cx=4, cy=4, r=rounded(size), fill=TEXT_COLOUR))
    yield _marker(
        f"{key}-front",
        svg.Path(extra={"d": f"M4 {4 - size:g}L{4 + size:g} 4L4 {4 + size:g}L{4 - size:g} 4z"}, fill=TEXT_COLOUR),
    )
    yield _marker(
        f"{key}-sleeve",
        svg.Rect(
            x=rounded(4 - size),
            y=rounded(4 - size),
            width=rounded(2 * size),
            height=rounded(2 * size),
            fill="none",
            stroke=TEXT_COLOUR,
            stroke_width=1.2,
        ),
    )


def _marker(name: str, shape: svg.Element) -> svg.Marker:
    return svg.Marker(
        id=name,
        viewBox=svg.ViewBoxSpec(0, 0, 8, 8),
        refX=4,
        refY=4,
        markerWidth=8,
        markerHeight=8,
        markerUnits="userSpaceOnUse",
        elements=[shape],
    )


def _points(grid: _Grid, line: _Line) -> Iterator[list[svg.Point]]:
    """The lines to draw."""
    for trace in line.traces:
        before = 0 if trace.part == "yoke" else grid.yoke
        for piece in trace.pieces:
            seen = [
                svg.Point(grid.across(column), grid.along(number + before))
                for number, column in piece
                if 0 <= number + before - grid.first < grid.rounds
            ]
            if seen:
                yield seen


def _chart(grid: _Grid, ink: dict[str, Ink], key: str) -> Iterator[svg.Element]:
    height = len(grid.chart.rows)
    repeats = range(-(-grid.rounds // height))
    yield svg.G(
        mask=f"url(#{key}-clear)",
        clip_path=f"url(#{key}-rounds)",
        extra={"shape-rendering": "crispEdges"},
        elements=[
            svg.Use(
                href=f"#{key}-repeat",
                transform=[
                    svg.Translate(0, rounded((grid.rounds - (repeat + 1) * height) * grid.cell_height)),
                    svg.Scale(grid.cell_width, grid.cell_height),
                ],
            )
            for repeat in repeats
        ],
    )


def _grid_lines(grid: _Grid) -> Iterator[svg.Element]:
    """Every line thin, every fifth column and every first row of a repeat stronger."""
    across, along = rounded(grid.width), rounded(grid.height)
    columns = {rounded((grid.chart.width - n) * grid.cell_width): n for n in range(grid.chart.width + 1)}
    rows = {grid.below(grid.first + n): n for n in range(grid.rounds + 1)}
    ends = (0, grid.rounds)

    def lines(strong: bool) -> str:
        upright = [f"M{x} 0V{along}" for x, n in columns.items() if strong == (n % 5 == 0 or n == grid.chart.width)]
        level = [f"M0 {y}H{across}" for y, n in rows.items() if strong == (n % grid.chart.height == 0 or n in ends)]
        return "".join(upright + level)

    for strong, width, opacity in ((False, 0.5, 0.3), (True, 1, 0.7)):
        yield svg.Path(
            extra={"d": lines(strong)}, fill="none", stroke=TEXT_COLOUR, stroke_width=width, stroke_opacity=opacity
        )


def _numbers(grid: _Grid) -> Iterator[svg.Element]:
    """Rounds at the left, chart rows at the right, columns below."""
    by = _step(grid.cell_height, 12)
    for number in range(grid.first, grid.first + grid.rounds):
        in_part = number if number <= grid.yoke else number - grid.yoke
        row = (number - grid.first) % grid.chart.height + 1
        y = grid.along(number) + _NUMBERS * 0.35
        if in_part % by == 0 or in_part == 1 or number == grid.first:
            yield text(str(in_part), -6, y, _NUMBERS, anchor="end")
        if row % by == 0 or row == 1:
            yield text(str(row), grid.width + 6, y, _NUMBERS)
    by = _step(grid.cell_width, 18)
    for column in range(1, grid.chart.width + 1):
        if column == 1 or column % by == 0:
            x = grid.across(column)
            yield text(str(column), x, grid.height + 14, _NUMBERS, anchor="middle")
    yield text(ROUND(), -6, -8, _NUMBERS, anchor="end", font_style="italic")
    yield text(ROW(), grid.width + 6, -8, _NUMBERS, font_style="italic")
    yield text(COLUMN(), -6, grid.height + 14, _NUMBERS, anchor="end", font_style="italic")


def _step(size: float, room: float) -> int:
    """How many rows or columns from one number to the next."""
    return next(step for step in (5, 10, 20, 50, 100) if step * size >= room)


def _parts(grid: _Grid) -> Iterator[svg.Element]:
    """Which rounds are yoke, and which are body and sleeves."""
    last = grid.first + grid.rounds - 1
    if grid.first <= grid.yoke < last:
        y = grid.below(grid.yoke + 1)
        yield svg.Line(x1=-90, x2=rounded(grid.width + 86), y1=y, y2=y, stroke=TEXT_COLOUR, stroke_width=2)
        yield text(SPLIT(), grid.width + 86, y - 4, _NUMBERS, anchor="end", font_weight="bold")
    for name, lowest, highest in (
        (YOKE, grid.first, min(last, grid.yoke)),
        (BELOW, max(grid.first, grid.yoke + 1), last),
    ):
        if lowest > highest:
            continue
        bottom, top = grid.below(lowest), grid.below(highest + 1)
        yield svg.Path(
            extra={"d": f"M-36 {rounded(bottom - 1)}H-40V{rounded(top + 1)}H-36"}, fill="none", stroke=TEXT_COLOUR
        )
        written = wrap(said(name()), _PART_WIDTH, break_long_words=False)
        middle = (bottom + top) / 2 + 4 - 6 * (len(written) - 1)
        for row, words in enumerate(written):
            yield text(words, -45, middle + 12 * row, 11, anchor="end")


def _traced(grid: _Grid, line: _Line, key: str) -> Iterator[svg.Element]:
    marker = f"url(#{key}-{line.kind})"
    for points in _points(grid, line):
        yield svg.Polyline(
            points=points,
            fill="none",
            stroke=TEXT_COLOUR,
            stroke_width=1.8,
            stroke_dasharray=line.dashes,
            marker_start=marker,
            marker_mid=marker,
            marker_end=marker,
            class_=[f"starts-{line.kind}"],
        )


def _trace_legend(lines: Sequence[_Line], key: str, what: Saying) -> list[svg.G]:
    """What the traces are, a line each."""
    return [
        svg.G(
            transform=[svg.Translate(0, LEGEND_LINE * number)],
            elements=[
                svg.Polyline(
                    points=[svg.Point(0, 0), svg.Point(14, 0), svg.Point(28, 0)],
                    fill="none",
                    stroke=TEXT_COLOUR,
                    stroke_width=1.8,
                    stroke_dasharray=line.dashes,
                    marker_start=f"url(#{key}-{line.kind})",
                    marker_mid=f"url(#{key}-{line.kind})",
                    marker_end=f"url(#{key}-{line.kind})",
                ),
                text(what(of=line.of), 36, 4, 12),
            ],
        )
        for number, line in enumerate(lines)
    ]


def _described(grid: _Grid, lines: Iterable[_Line], names: Iterable[str]) -> Iterator[Sentence]:
    """The picture in words."""
    chart = grid.chart
    yield CHART(columns=chart.width, rows=chart.height, colours=tuple(names), rounds=grid.rounds)
    for line in lines:
        for trace in line.traces:
            if trace.pieces:
                (first, start), (last, end) = trace.pieces[0][0], trace.pieces[-1][-1]
                yield TRACE(part=trace.part, of=line.of, first=first, start=start, last=last, end=end)
