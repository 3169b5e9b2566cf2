"""What the signs of a chart mean: its colours, the marks of starts, and the signs of rounds that shape."""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from typing import get_args

import svg

from grading_core.chart.drawn_rounds import ChartView, DrawnSection, Sign
from grading_core.sentences import TOKEN, Saying
from service.language import text as said
from service.representations.pictures.chart.cuts import Cell
from service.representations.pictures.chart.grid import Line, sign_marks, start_marks
from service.representations.pictures.drawing import TEXT_COLOUR, Entry, Ink, colour_entries, rounded

FIRST_STITCH, FIRST_MOTIF = Saying("picture.first_stitch", of=TOKEN), Saying("picture.first_motif", of=TOKEN)
"""of: the section that starts: back, front, both of them, or sleeve."""
AFTER = Saying("chart_sheet.after")
SIGNS = {sign: Saying(f"chart_sheet.{sign}") for sign in get_args(Sign)}

_SAMPLE = 18.0
"""Of a stitch, in pixels, its longer side."""


def entries(view: ChartView, lines: Sequence[Line], ink: dict[str, Ink], ratio: float, key: str) -> Iterator[Entry]:
    """What is drawn, and nothing else.

    lines: that are drawn. ink: of the colours in them. ratio: height of a stitch by its width. key: the picture's.
    """
    cell = Cell(rounded(min(_SAMPLE, _SAMPLE / ratio)), rounded(min(_SAMPLE, _SAMPLE * ratio)))
    yield from colour_entries({symbol: view.chart.colours[symbol].name for symbol in ink}, ink, cell, key)
    starting = {section for line in lines for section, _ in line.starts}
    what = FIRST_MOTIF if view.whole_motifs else FIRST_STITCH
    for section in view.sections:
        if section in starting:
            yield Entry(_start(section, cell), cell.width, said(what(of=of_token(section))))
    signs = {sign for line in lines for sign in line.signs}
    for sign, saying in SIGNS.items():
        if sign in signs:
            yield Entry(sign_marks(sign, 14, 0), 14, said(saying()))
    if any(line.plain_before for line in lines):
        yield Entry([], 0, said(AFTER()))


def of_token(section: DrawnSection) -> str:
    """A section as sentences have it."""
    return "both" if section == "body" else section


def _start(section: DrawnSection, cell: Cell) -> list[svg.Element]:
    frame = svg.Rect(
        y=rounded(-cell.height / 2),
        width=cell.width,
        height=cell.height,
        fill="none",
        stroke=TEXT_COLOUR,
        stroke_width=0.5,
        stroke_opacity=0.6,
    )
    return [frame, *start_marks(section, [(0, -cell.height / 2)], cell)]
