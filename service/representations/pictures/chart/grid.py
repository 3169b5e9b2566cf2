"""A piece of a chart on one sheet: its stitches in their own colours, the grid, and in the margins all that is said.

Nothing lies over a stitch: a start is an outline round it, or a small triangle at its right edge. Lines are drawn
twice, pale below and dark above, so that they show on every colour.
"""

from __future__ import annotations

from collections.abc import Iterable, Iterator, Mapping, Sequence
from dataclasses import dataclass
from itertools import groupby
from textwrap import wrap
from typing import NamedTuple

import svg

from grading_core.chart.drawn_rounds import DrawnPart, DrawnSection, Sign
from grading_core.fraction import Fraction
from grading_core.sentences import COUNT, Saying
from service.language import text as said
from service.representations.pictures.chart.cuts import Cell, Cut
from service.representations.pictures.drawing import TEXT_COLOUR, Ink, rounded, safe, shape_at, stitches, text
from service.representations.pictures.lettering import width_of

DIMENSIONS = Saying("chart_sheet.dimensions", columns=COUNT, rows=COUNT)
ROUND, ROW, COLUMN = Saying("picture.round"), Saying("picture.row"), Saying("picture.column")
YOKE, SPLIT, BELOW = Saying("picture.yoke"), Saying("picture.split"), Saying("picture.below")

DARK, PALE = "#000000", "#ffffff"
"""Of lines that lie on stitches, whatever their colours are."""

_NUMBERS = 9.5
"""The size of numbers at the edges."""

_LEAST_NUMBERS = 8.0
"""Of those beside each row, where rows are low."""


_EVERY = 5
"""Columns from one that is numbered to the next."""

_ARROW, _LINE = 8, 13
"""Pixels that the centre's mark takes up between stitches and numbers, and a line of numbers or words."""

_PART_WIDTH = 10
"""How many characters there is room for beside the rounds of a part."""

_SIGN = 7
"""Pixels from one sign to the next."""


class Line(NamedTuple):
    """A row as it is drawn.

    row: of the chart. number: of the round in its part; None where no rounds are told. words: where sections start.
    starts: the sections that start in a column. plain_before: whether plain stitches come before any of these.
    """

    row: int
    part: DrawnPart | None
    number: int | None
    words: str
    starts: tuple[tuple[DrawnSection, int], ...]
    signs: tuple[Sign, ...] = ()
    plain_before: bool = False


class Centre(NamedTuple):
    """A column, or a half between two, that lies on the centre of sections, and the words for it."""

    column: Fraction
    words: str


@dataclass(frozen=True, slots=True, kw_only=True)
class Sheet:
    """What all sheets have in common.

    rows: of the chart as worked, from column 1. lines: all that are drawn, the lowest first. heading: over the words of
    the lines. right: room for these beside the stitches.
    """

    rows: Sequence[str]
    lines: Sequence[Line]
    ink: Mapping[str, Ink]
    key: str
    centres: Sequence[Centre]
    heading: str
    cell: Cell

    @property
    def numbers(self) -> float:
        """The size of what is written beside each row."""
        return max(_LEAST_NUMBERS, min(_NUMBERS, self.cell.height * 0.9))


class Margins(NamedTuple):
    """Round the stitches, in pixels."""

    left: float
    top: float
    right: float
    bottom: float


def margins(lines: Sequence[Line], centres: Sequence[Centre], heading: str) -> Margins:
    """The room for what is said round the stitches.

    lines, centres, heading: as a `Sheet` has them.
    """
    parted = any(line.part for line in lines)
    wide = max((width_of(line.words, _NUMBERS) for line in lines), default=0)
    words = max(wide, width_of(heading, _NUMBERS)) if wide else 0
    names = max(width_of(each, 11) for name in (YOKE, SPLIT, BELOW) for each in _wrapped(name))
    return Margins(
        left=names + 58 if parted else width_of(said(COLUMN()), _NUMBERS) + 14,
        top=_ARROW + _LINE * (1 + len(centres)) + 4,
        right=_words_at() + words,
        bottom=_ARROW + _LINE + 6,
    )


def draw(sheet: Sheet, cut: Cut) -> list[svg.Element]:
    """A piece of the chart, its stitches from the upper left corner on and what is said beside them around.

    cut: which rows and columns.
    """
    cell, lines = sheet.cell, [sheet.lines[place] for place in cut.rows]
    columns = cut.last - cut.first + 1
    seen = (
        (0, len(lines) - 1 - place, sheet.rows[line.row - 1][cut.first - 1 : cut.last][::-1])
        for place, line in enumerate(lines)
    )
    return [
        svg.G(
            transform=[svg.Scale(cell.width, cell.height)],
            class_=["stitches"],
            extra={"shape-rendering": "crispEdges"},
            elements=stitches(seen, sheet.ink, sheet.key),
        ),
        *_grid_lines(sheet, cut, columns, lines),
        *_marked(sheet, cut, lines),
        *_rows(sheet, columns, lines),
        *_columns(sheet, cut, len(lines)),
        *_parts(sheet, columns, lines),
    ]


def start_marks(section: DrawnSection, places: Iterable[tuple[float, float]], cell: Cell) -> Iterator[svg.Element]:
    """The marks of starts: an outline round the cell, its corners where the front starts by itself, or a triangle.

    places: upper left corners of cells, in pixels.
    """
    width, height = cell
    low = min(width, height)
    if section == "sleeve":
        wide, high = rounded(low * 0.42), rounded(low * 0.32)
        dx, dy, shape = width, height / 2 - high, f"v{2 * high:g}l-{wide} -{high}z"
    elif section == "front":
        w, h = rounded(width * 0.3), rounded(height * 0.3)
        across, along = rounded(width - 2 * w), rounded(height - 2 * h)
        dx, dy = 0.0, float(h)
        shape = f"v-{h}h{w}m{across} 0h{w}v{h}m0 {along}v{h}h-{w}m-{across} 0h-{w}v-{h}"
    else:
        dx, dy, shape = 0.0, 0.0, f"h{width:g}v{height:g}h-{width:g}z"
    drawn = {"d": "".join(f"M{rounded(x + dx)} {rounded(y + dy)}{shape}" for x, y in places)}
    if not drawn["d"]:
        return
    filled, thick = section == "sleeve", rounded(max(1.1, min(1.9, width / 9)))
    yield svg.Path(extra=drawn, fill="none", stroke=PALE, stroke_width=thick + 1.6, stroke_linejoin="round")
    yield svg.Path(
        extra=drawn,
        class_=[f"starts-{section}"],
        fill=DARK if filled else "none",
        stroke=DARK,
        stroke_width=0.4 if filled else thick,
        stroke_linejoin="round",
    )


def sign_marks(sign: Sign, x: float, y: float) -> list[svg.Element]:
    """The sign of a round that shapes: one dot for an increase, two where it is doubled, a square for a decrease.

    x: its right end.
    """
    if sign == "decrease":
        return [shape_at("open square", x - 2.5, y, 2.2)]
    return [shape_at("dot", x - 2.5 - _SIGN * place, y, 2) for place in range(2 if sign == "double" else 1)]


def centre_mark(x: float, y: float, *, hanging: bool) -> svg.Element:
    """What shows the centre: a triangle that points to it."""
    return shape_at("hanging triangle" if hanging else "triangle", x, y, 3)


def texts(written: Iterable[tuple[float, float, str]], size: float, anchor: str = "start") -> svg.G:
    """Many lines of text of one size.

    written: places in pixels, and what stands there.
    """
    return svg.G(
        fill=TEXT_COLOUR,
        extra={"font-size": f"{size:g}", "text-anchor": anchor},
        elements=[svg.Text(text=safe(each), x=rounded(x), y=rounded(y)) for x, y, each in written],
    )


def _grid_lines(sheet: Sheet, cut: Cut, columns: int, lines: Sequence[Line]) -> Iterator[svg.Element]:
    """Every line thin, those of every fifth column and between repeats stronger."""
    across, along = rounded(columns * sheet.cell.width), rounded(len(lines) * sheet.cell.height)
    thin: list[str] = []
    strong: list[str] = []
    for place in range(columns + 1):
        column = cut.last - place
        kept = strong if column % _EVERY == 0 or place in (0, columns) else thin
        kept.append(f"M{rounded(place * sheet.cell.width)} 0V{along}")
    for place in range(len(lines) + 1):
        # the lower edge of the row above, and the upper one of the uppermost
        starts = place in (0, len(lines)) or lines[len(lines) - place].row != 1 + lines[len(lines) - place - 1].row
        kept = strong if starts else thin
        kept.append(f"M0 {rounded(place * sheet.cell.height)}H{across}")
    for path, pale, dark in ((thin, 1.2, 0.4), (strong, 2, 0.9)):
        drawn = {"d": "".join(path)}
        yield svg.Path(extra=drawn, fill="none", stroke=PALE, stroke_width=pale, stroke_opacity=0.55)
        yield svg.Path(extra=drawn, fill="none", stroke=DARK, stroke_width=dark, stroke_opacity=0.75)


def _marked(sheet: Sheet, cut: Cut, lines: Sequence[Line]) -> Iterator[svg.Element]:
    """The starts on this sheet."""
    for section in ("body", "back", "front", "sleeve"):
        places = (
            ((cut.last - column) * sheet.cell.width, (len(lines) - 1 - place) * sheet.cell.height)
            for place, line in enumerate(lines)
            for of, column in line.starts
            if of == section and cut.first <= column <= cut.last
        )
        yield from start_marks(section, places, sheet.cell)


def _rows(sheet: Sheet, columns: int, lines: Sequence[Line]) -> Iterator[svg.Element]:
    """Beside each row its round and signs at the left, its number in the chart and the starts at the right."""
    cell, size, right = sheet.cell, sheet.numbers, columns * sheet.cell.width
    middles = [(len(lines) - place - 0.5) * cell.height for place in range(len(lines))]
    placed = [(line, y, y + size * 0.35) for line, y in zip(lines, middles, strict=True)]
    yield texts(((-22, y, str(line.number)) for line, _, y in placed if line.number is not None), size, "end")
    yield texts(((right + 6, y, str(line.row)) for line, _, y in placed), size)
    yield texts(((right + _words_at(), y, line.words) for line, _, y in placed if line.words), size)
    for sign in ("increase", "double", "decrease"):
        drawn = [
            element
            for line, y, _ in placed
            if sign in line.signs
            for element in sign_marks(sign, -4 - _SIGN * line.signs.index(sign), y)
        ]
        if drawn:
            yield svg.G(class_=[sign], elements=drawn)


def _words_at() -> float:
    """How far right of the stitches it is told where sections start."""
    return 6 + max(18, width_of(said(ROW()), _NUMBERS)) + 10


def _columns(sheet: Sheet, cut: Cut, rows: int) -> Iterator[svg.Element]:
    """Column numbers and centres above and below."""
    width, foot = (cut.last - cut.first + 1) * sheet.cell.width, rows * sheet.cell.height
    above, below = -_ARROW - 3, foot + _ARROW + _LINE - 3
    numbers = [((cut.last - column + 0.5) * sheet.cell.width, column) for column in _numbered(sheet.cell, cut)]
    for y in (above, below):
        yield texts(((x, y, str(column)) for x, column in numbers), _NUMBERS, "middle")
    yield texts([(-6, below, said(COLUMN()))], _NUMBERS, "end")
    if any(line.number is not None for line in sheet.lines):
        yield texts([(-22, above, said(ROUND()))], _NUMBERS, "end")
    yield texts([(width + 6, above, said(ROW()))], _NUMBERS)
    if sheet.heading:
        yield texts([(width + _words_at(), above, sheet.heading)], _NUMBERS)
    for place, centre in enumerate(sheet.centres):
        if not cut.first - 0.5 <= centre.column < cut.last + (0.5 if cut.last < len(sheet.rows[0]) else 1):
            continue
        x = min(width, (cut.last - float(centre.column) + 0.5) * sheet.cell.width)
        yield svg.G(
            class_=["centre"], elements=[centre_mark(x, -4, hanging=True), centre_mark(x, foot + 5, hanging=False)]
        )
        half = width_of(centre.words, _NUMBERS) / 2
        yield texts([(max(half - 40, x), above - _LINE * (place + 1), centre.words)], _NUMBERS, "middle")


def _numbered(cell: Cell, cut: Cut) -> list[int]:
    """First, last and every fifth column, or every tenth and so on where there is no room; the rightmost first."""
    width = width_of(str(cut.last), _NUMBERS) + 3
    every = next(step for step in (_EVERY, 10, 20, 50, 100) if step * cell.width >= width)
    found = [cut.first]
    for column in range(cut.first + 1, cut.last):
        apart = min(column - found[-1], cut.last - column) * cell.width
        if column % every == 0 and apart >= width:
            found.append(column)
    return [*found, cut.last] if cut.last > cut.first else found


def _parts(sheet: Sheet, columns: int, lines: Sequence[Line]) -> Iterator[svg.Element]:
    """Which rounds are yoke, and which are body and sleeves, and where these divide."""
    at, bottom = -52, len(lines) * sheet.cell.height
    split = any(line.part == "yoke" for line in sheet.lines)
    for part, rounds in groupby(lines, lambda line: line.part):
        if part is None:
            return
        here = [*rounds]
        top = bottom - len(here) * sheet.cell.height
        yield svg.Path(
            extra={"d": f"M{at + 4} {rounded(bottom - 1.5)}H{at}V{rounded(top + 1.5)}H{at + 4}"},
            fill="none",
            stroke=TEXT_COLOUR,
        )
        y = bottom - 4
        if split and part == "below" and here[0].number == 1:
            y0, right = rounded(bottom), rounded(columns * sheet.cell.width)
            yield svg.Path(extra={"d": f"M0 {y0}H{right}"}, stroke=PALE, stroke_width=3.4, stroke_opacity=0.8)
            yield svg.Path(extra={"d": f"M0 {y0}H{right}"}, class_=["split"], stroke=DARK, stroke_width=1.8)
            yield svg.Path(extra={"d": f"M{at - 50} {y0}H0M{right} {y0}h30"}, stroke=TEXT_COLOUR, stroke_width=1.8)
            for words in reversed(_wrapped(SPLIT)):
                yield text(words, at - 5, y, 10, anchor="end", font_weight="bold")
                y -= _LINE
        for words in reversed(_wrapped(YOKE if part == "yoke" else BELOW)):
            yield text(words, at - 5, y, 10, anchor="end")
            y -= _LINE
        bottom = top


def _wrapped(name: Saying) -> list[str]:
    return wrap(said(name()), _PART_WIDTH, break_long_words=False)
