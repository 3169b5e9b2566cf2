"""Below one repeat of a chart: at which columns the sizes have their first stitches, and a table of all sizes."""

from __future__ import annotations

from collections import defaultdict
from collections.abc import Iterator, Mapping, Sequence
from math import ceil, isinf

import svg

from grading_core.chart.drawn_rounds import DrawnSection, FirstStart, RepeatView, SizeStarts
from grading_core.printing import printing
from grading_core.sentences import COUNT, NAMES, SENTENCES, TEXT, Saying, Sentence, word
from service.language import text as said
from service.representations.pictures.chart.cuts import Cell, Cut
from service.representations.pictures.chart.grid import texts
from service.representations.pictures.drawing import TEXT_COLOUR, rounded, text
from service.representations.pictures.lettering import width_of, wrapped
from service.representations.pictures.sheets import Drawing

SECTION = word("drawn_section")
FLAG = Saying("chart_sheet.flag", sizes=NAMES, section=SECTION)
FLAG_IN_ROW = Saying("chart_sheet.flag_in_row", sizes=NAMES, section=SECTION, row=COUNT)
SIZE, AT_SPLIT, ROWS_LEFT = (Saying(f"chart_sheet.{of}") for of in ("size", "at_split", "rows_left"))
OF_SECTION = Saying("chart_sheet.of_section", section=SECTION)
SPAN = Saying("chart_sheet.span", first=COUNT, last=COUNT)
SPAN_IN_ROW = Saying("chart_sheet.span_in_row", first=COUNT, last=COUNT, row=COUNT)
IN_ROW = Saying("chart_sheet.start_in_row", section=SECTION, column=COUNT, row=COUNT)
SIZE_DESCRIBED = Saying("chart_sheet.size_described", size=TEXT, starts=SENTENCES)

MOST_FLAGS = 24
"""Columns that get a line of words each; more are in the table only."""

_SIZE, _LINE = 11, 15
LEAST_WIDTH = 150
"""Of a line of words, in pixels."""

_ROW, _GAP = 17, 22
"""Of the table, in pixels: from row to row, and between columns."""


def flags(view: RepeatView, cut: Cut, cell: Cell, room: float) -> tuple[list[svg.Element], float]:
    """At each column in which sizes start, a line to the words that say which; and how high all are, in pixels.

    The rightmost columns have the upper words, so that no line crosses any. The drawing's upper left corner is the
    lower left corner of the stitches, their numbers included. room: from there to the right.
    """
    found = _by_column(view)
    here = [column for column in found if cut.first <= column <= cut.last]
    if len(here) > MOST_FLAGS:
        return [], 0
    drawn: list[svg.Element] = []
    y = 4.0
    for column in here:
        x = (cut.last - column + 0.5) * cell.width
        lines = wrapped(_flag(column, found[column]), max(80, room - x - 8), _SIZE)
        leader = f"M{rounded(x)} 0V{rounded(y + _LINE * 0.5)}h5"
        drawn.append(svg.Path(extra={"d": leader}, fill="none", stroke=TEXT_COLOUR, stroke_width=0.7))
        drawn.append(texts(((x + 8, y + _LINE * (n + 0.8), line) for n, line in enumerate(lines)), _SIZE))
        y += _LINE * len(lines)
    return drawn, y + 6


def table(view: RepeatView, height: float) -> Iterator[Drawing]:
    """The table of all sizes, in parts where it is higher than a sheet, each with its head.

    height: of a sheet, in pixels.
    """
    head, body = _cells(view)
    widths = [max(width_of(row[place], _SIZE) for row in (head, *body)) + _GAP for place in range(len(head))]
    fit = len(body) if isinf(height) else max(1, int(height / _ROW) - 1)
    each = ceil(len(body) / ceil(len(body) / fit)) if body else 1
    for start in range(0, len(body), each):
        yield _table_part(head, body[start : start + each], widths)


def described(view: RepeatView) -> Iterator[Sentence]:
    """Every size in words."""
    for size in view.sizes:
        if size.starts:
            starts = tuple(IN_ROW(section=each.section, column=each.first, row=each.row) for each in size.starts)
            yield SIZE_DESCRIBED(size=size.label, starts=starts)


def _by_column(view: RepeatView) -> dict[int, dict[tuple[int, DrawnSection], list[str]]]:
    """The labels that start at a column, by row and section, the rightmost column first."""
    found: defaultdict[int, defaultdict[tuple[int, DrawnSection], list[str]]] = defaultdict(lambda: defaultdict(list))
    for size in view.sizes:
        for start in size.starts:
            found[start.first][start.row, start.section].append(size.label)
    return {column: dict(sorted(found[column].items())) for column in sorted(found)}


def _flag(column: int, labels: Mapping[tuple[int, DrawnSection], Sequence[str]]) -> str:
    told = (
        FLAG(sizes=sizes, section=section) if row == 1 else FLAG_IN_ROW(sizes=sizes, section=section, row=row)
        for (row, section), sizes in labels.items()
    )
    return f"{column}: {'; '.join(map(said, told))}"


def _cells(view: RepeatView) -> tuple[list[str], list[list[str]]]:
    missing = printing().missing
    head = [SIZE(), *(OF_SECTION(section=section) for section in view.sections), AT_SPLIT(), ROWS_LEFT()]

    def row(size: SizeStarts) -> list[str]:
        starts = {start.section: start for start in size.starts}
        spans = [_span(starts[section]) if section in starts else missing for section in view.sections]
        at_split = missing if size.row_at_split is None else str(size.row_at_split)
        return [size.label, *spans, at_split, str(size.rows_left)]

    return [said(each) for each in head], [row(size) for size in view.sizes]


def _span(start: FirstStart) -> str:
    if start.row == 1:
        return said(SPAN(first=start.first, last=start.last))
    return said(SPAN_IN_ROW(first=start.first, last=start.last, row=start.row))


def _table_part(head: Sequence[str], body: Sequence[Sequence[str]], widths: Sequence[float]) -> Drawing:
    lefts = [sum(widths[:place]) for place in range(len(widths))]
    wide = sum(widths) - _GAP
    drawn: list[svg.Element] = [
        text(each, x, 12, _SIZE, font_weight="bold") for x, each in zip(lefts, head, strict=True)
    ]
    drawn.append(
        texts(
            (
                (x, 12 + _ROW * number, cell)
                for number, row in enumerate(body, 1)
                for x, cell in zip(lefts, row, strict=True)
            ),
            _SIZE,
        )
    )
    lines = "".join(f"M0 {rounded(17 + _ROW * number)}H{rounded(wide)}" for number in range(1, len(body)))
    drawn.append(svg.Path(extra={"d": f"M0 17H{rounded(wide)}"}, stroke=TEXT_COLOUR, stroke_width=1))
    if lines:
        drawn.append(svg.Path(extra={"d": lines}, stroke=TEXT_COLOUR, stroke_width=0.5, stroke_opacity=0.3))
    return Drawing(width=wide, height=_ROW * (1 + len(body)) + 8, elements=drawn)
