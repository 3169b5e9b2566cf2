"""The legend of a schematic: every finished measurement with its letter, its title, and its run in cm and inches."""

from __future__ import annotations

import re
from collections.abc import Iterator, Sequence
from dataclasses import dataclass

import svg

from grading_core.pullover.result import Row
from grading_core.sentences import Saying
from service.language import text as said
from service.representations.pictures.drawing import TEXT_COLOUR, rounded, text
from service.representations.pictures.lettering import wrapped

MEASUREMENT = Saying("schematic.measurement")
IN_CM = Saying("schematic.in_cm")
IN_INCHES = Saying("schematic.in_inches")

RING = 7.5
"""The radius of the ring round a letter."""

_SIZE, _LINE = 10.5, 13
_PAD, _LEAST_PAD = 7, 3
"""Between two rows, where there is room, and where there is little."""

_LETTER = 28
_PARTS = (0.32, 0.31, 0.37)
"""Of the room beside the letters: titles, cm, inches."""

_GAP = 12

_FRACTION, _NO_BREAK = re.compile(r"(?<=\d) (?=\d+/)"), "\u2060"


@dataclass(frozen=True, slots=True)
class Line:
    """A row of the legend.

    columns: of lines of text. pad: between it and the next.
    """

    letter: str | None
    columns: tuple[list[str], list[str], list[str]]
    pad: float

    @property
    def height(self) -> float:
        """In pixels."""
        return max(map(len, self.columns)) * _LINE + self.pad


def letter_ring(letter: str, x: float, y: float) -> list[svg.Element]:
    """A letter in its ring.

    x, y: of its middle.
    """
    ring = svg.Circle(cx=rounded(x), cy=rounded(y), r=RING, fill="none", stroke=TEXT_COLOUR, stroke_width=1)
    return [ring, text(letter, x, y + 3.8, 10.5, anchor="middle", font_weight="bold")]


def legend_lines(rows: Sequence[Row], width: float, height: float) -> list[Line]:
    """Rows of the table as rows of the legend, below the one that names the columns.

    width: of the legend in pixels. height: that it had better not exceed.
    """
    title, cm, inches = _widths(width)
    cells: list[tuple[str | None, tuple[list[str], list[str], list[str]]]] = [
        (None, ([said(MEASUREMENT())], [said(IN_CM())], [said(IN_INCHES())]))
    ]
    for row in rows:
        runs = _run_lines(row.run, cm), _run_lines(row.run_inch, inches)
        cells.append((row.letter, (wrapped(said(row.title), title, _SIZE), *runs)))
    for pad in (_PAD, _LEAST_PAD):
        lines = [Line(letter, columns, pad) for letter, columns in cells]
        if sum(line.height for line in lines) <= height:
            break
    return lines


def _run_lines(run: str | None, room: float) -> list[str]:
    """A size run in lines that part no number from its fraction."""
    joined = _FRACTION.sub(_NO_BREAK, run or "")
    return [line.replace(_NO_BREAK, " ") for line in wrapped(joined, room, _SIZE)]


def legend(lines: Sequence[Line], width: float, top: float) -> Iterator[svg.Element]:
    """The rows one below the other.

    lines: that which names the columns first. width: of the legend. top: where it begins.
    """
    title, cm, _ = _widths(width)
    places = (_LETTER, _LETTER + title + _GAP, _LETTER + title + cm + 2 * _GAP)
    for number, line in enumerate(lines):
        weight = "bold" if number == 0 else "normal"
        first = top + line.pad / 2 + _LINE - 3
        if line.letter:
            yield from letter_ring(line.letter, RING + 1, first - 3.6)
        for column, x in zip(line.columns, places, strict=True):
            for place, written in enumerate(column):
                yield text(written, x, first + _LINE * place, _SIZE, font_weight=weight)
        top += line.height
        yield svg.Path(
            extra={"d": f"M0 {rounded(top)}H{rounded(width)}"},
            stroke=TEXT_COLOUR,
            stroke_width=1 if number == 0 else 0.5,
            stroke_opacity=1 if number == 0 else 0.3,
        )


def _widths(width: float) -> list[float]:
    """Of titles, cm and inches."""
    return [(width - _LETTER - 2 * _GAP) * part for part in _PARTS]
