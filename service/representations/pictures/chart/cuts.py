"""How a chart is cut into sheets: how large its stitches are drawn, and which rows and columns stand on each sheet.

No sheet cuts a row in its height. Where a repeat of the chart finds room on a sheet, sheets end with a repeat; where it
doesn't, each repeat is cut into as few parts as it takes. What is worked first comes first: the lowest rows, and of
these the rightmost columns.
"""

from __future__ import annotations

from collections.abc import Iterator
from math import ceil, floor, isinf
from typing import NamedTuple

from service.representations.pictures.sheets import Room

_WIDEST, _NARROWEST = 20.0, 8.5
"""Of a stitch, in pixels; the narrower are 2.25 mm."""

_LOWEST = 9.2
"""Of a row, in pixels: each has numbers beside it."""

_USUAL_WIDTH = 640
"""That a chart takes up on a sheet without end, as far as its stitches may be so wide."""

_SHRUNK = 0.7
"""Of a stitch that makes one sheet of what would be two."""

_MARKED = 5
"""Columns from one that is numbered to the next, at which a chart is best cut."""


class Cell(NamedTuple):
    """A stitch, in pixels."""

    width: float
    height: float


class Cut(NamedTuple):
    """What stands on one sheet.

    rows: places of rows, counted from 0, the lowest first. first, last: columns, from the right.
    """

    rows: range
    first: int
    last: int


def cut(columns: int, rows: int, repeat: int, ratio: float, room: Room) -> tuple[Cell, list[Cut]]:
    """The size of a stitch, and what stands on each sheet.

    columns, rows: that are drawn. repeat: rows of one repeat, the lowest of which begins one. ratio: height of a stitch
    by its width. room: for the stitches of a sheet, in pixels.

    >>> cell, cuts = cut(10, 70, 7, 0.75, Room(400, 500))
    >>> [(each.rows, each.first, each.last) for each in cuts]
    [(range(0, 28), 1, 10), (range(28, 56), 1, 10), (range(56, 70), 1, 10)]
    """
    least = max(_NARROWEST, _LOWEST / ratio)
    most = max(_WIDEST, least)
    if isinf(room.height):
        width = max(least, min(most, _USUAL_WIDTH / columns))
        return _cell(width, ratio), [Cut(range(rows), 1, columns)]
    across = _columns_a_sheet(columns, least, room.width)
    width = max(least, min(most, room.width / across))
    lower = room.height / rows / ratio
    whole = room.height / min(repeat, rows) / ratio
    if lower < width and lower >= max(least, _SHRUNK * width):
        width = lower
    elif whole < width:
        width = max(least, whole)
    cell = _cell(width, ratio)
    bands = [*_bands(rows, repeat, max(1, floor(room.height / cell.height + 0.001)))]
    sides = range(1, columns + 1, across)
    return cell, [Cut(band, first, min(columns, first + across - 1)) for band in bands for first in sides]


def _cell(width: float, ratio: float) -> Cell:
    """Downwards to hundredths, so that what fits still does."""
    return Cell(floor(100 * width) / 100, floor(100 * width * ratio) / 100)


def _columns_a_sheet(columns: int, least: float, room: float) -> int:
    """As few sheets side by side as it takes, of about as many columns each."""
    fit = max(1, floor(room / least))
    across = ceil(columns / ceil(columns / fit))
    marked = ceil(across / _MARKED) * _MARKED
    return marked if marked <= fit else across


def _bands(rows: int, repeat: int, fit: int) -> Iterator[range]:
    """The rows of each sheet, of as many that find room on it."""
    if rows <= fit:
        yield range(rows)
    elif repeat <= fit:
        repeats = ceil(rows / repeat)
        each = ceil(repeats / ceil(repeats / (fit // repeat))) * repeat
        yield from (range(start, min(rows, start + each)) for start in range(0, rows, each))
    else:
        for start in range(0, rows, repeat):
            of_repeat = min(repeat, rows - start)
            each = ceil(of_repeat / ceil(of_repeat / fit))
            for part in range(start, start + of_repeat, each):
                yield range(part, min(start + of_repeat, part + each))
