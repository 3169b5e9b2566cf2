"""The flat pieces that a garment's front is drawn from: rows of stitches, and where they lie on the page.

The front and each sleeve are such pieces. A sleeve is turned so that its raglan edge runs along the front's.
"""

from __future__ import annotations

from collections.abc import Iterable, Iterator, Sequence
from dataclasses import dataclass, replace
from itertools import groupby
from math import atan2, cos, radians, sin
from typing import NamedTuple

from grading_core.chart.views import FrontView

_MOST_INCREASED = 2.01
"""Stitches that an edge gains or loses from one round to the next, and a hair."""

_EVENED = 6
"""Rows at either end of a straight stretch over which an edge is evened out."""

_LEAST_ANGLE, _GREATEST_ANGLE = radians(12), radians(75)

Point = tuple[float, float]


class Box(NamedTuple):
    """An upright rectangle."""

    left: float
    top: float
    width: float
    height: float


@dataclass(frozen=True, slots=True, kw_only=True)
class Piece:
    """A flat piece: rows of stitches, one below the other, from a place of its own to the page's.

    rows: as seen, the first worked topmost. left: where each row begins, in stitches from the piece's own axis.
    angle: in radians, clockwise on the page. origin: where the top of the axis lies, in cm. purled: purl stitches at
    the start and at the end of each row from the split on. split: the rows before it.
    """

    rows: tuple[str, ...]
    left: tuple[float, ...]
    angle: float
    origin: Point
    purled: tuple[int, int] = (0, 0)
    split: int = 0

    def place(self, x: float, y: float) -> Point:
        """Where a point of the piece lies, in cm."""
        across, down = cos(self.angle), sin(self.angle)
        return self.origin[0] + x * across - y * down, self.origin[1] + x * down + y * across

    def outline(self, stitch: float, row: float) -> list[Point]:
        """The piece's corners, in cm from its own axis: down its right edge and up its left one."""
        right = [(at + len(text)) * stitch for at, text in zip(self.left, self.rows, strict=True)]
        left = [at * stitch for at in self.left]
        return [*edge(right, row, stitch), *reversed(edge(left, row, stitch))]

    @property
    def phase(self) -> float:
        """How far the lower rows' stitches lie from whole stitches beside the axis."""
        return self.left[-1] % 1

    def purl_columns(self) -> Iterator[Box]:
        """Rectangles of purl stitches, in stitches and rows from the piece's own axis."""
        start, end = self.purled
        below = zip(self.left[self.split :], self.rows[self.split :], strict=True)
        ends = ((at, at + len(text) - end) for at, text in below)
        number = self.split
        for (first, last), alike in groupby(ends):
            rows = len(list(alike))
            yield from (Box(at, number, width, rows) for at, width in ((first, start), (last, end)) if width)
            number += rows


def box_around(points: Iterable[Point]) -> Box:
    """The smallest one around everything."""
    across, along = zip(*points, strict=True)
    return Box(min(across), min(along), max(across) - min(across), max(along) - min(along))


def front_piece(view: FrontView) -> Piece:
    """The front between its two raglan lines, and the body below."""
    rows = (*(seen.line + seen.front + seen.line for seen in view.yoke), *view.body)
    purl = view.body_seam if view.seam == "purl" else 0
    return Piece(
        rows=rows,
        left=tuple(-len(text) / 2 for text in rows),
        angle=0,
        origin=(0, 0),
        purled=(purl, purl),
        split=len(view.yoke),
    )


def sleeve_pieces(view: FrontView, stitch: float, row: float) -> tuple[Piece, Piece]:
    """Each sleeve's front half, its fold a straight line, turned and moved to the front's raglan edge."""
    height = len(view.yoke) * row
    edges = [len(seen.front) / 2 + len(seen.line) for seen in view.yoke]
    widths = [len(seen.second_sleeve) for seen in view.yoke]
    lean = atan2((edges[-1] - edges[0]) * stitch, height) + atan2((widths[-1] - widths[0]) * stitch, height)
    angle = min(max(lean, _LEAST_ANGLE), _GREATEST_ANGLE)
    second = (*(seen.second_sleeve for seen in view.yoke), *view.second_sleeve)
    first = (*(seen.first_sleeve for seen in view.yoke), *view.first_sleeve)
    corner, reach = (edges[-1] * stitch, height), (widths[-1] * stitch, height)
    # The lower end of the sleeve's raglan edge comes to lie on that of the front's.
    purl = view.sleeve_seam if view.seam == "purl" else 0
    split = len(view.yoke)
    turned = Piece(
        rows=second,
        left=tuple(-float(len(text)) for text in second),
        angle=-angle,
        origin=(0, 0),
        purled=(purl, 0),
        split=split,
    )
    x, y = turned.place(-reach[0], reach[1])
    origin = (corner[0] - x, corner[1] - y)
    return (
        Piece(
            rows=first,
            left=(0.0,) * len(first),
            angle=angle,
            origin=(-origin[0], origin[1]),
            purled=(0, purl),
            split=split,
        ),
        replace(turned, origin=origin),
    )


def edge(places: Sequence[float], row: float, stitch: float) -> list[Point]:
    """An edge of a piece, evened out: through the middle of the few rows that end alike.

    places: where each row ends. A step of more stitches than an increase makes, such as an underarm's, stays one.
    """
    runs: list[tuple[float, int, int]] = []
    for number, x in enumerate(places):
        if runs and runs[-1][0] == x:
            runs[-1] = (x, runs[-1][1], number + 1)
        else:
            runs.append((x, number, number + 1))
    points: list[Point] = []
    for place, (x, start, end) in enumerate(runs):
        steep_before = place == 0 or abs(x - runs[place - 1][0]) > _MOST_INCREASED * stitch
        steep_after = place == len(runs) - 1 or abs(x - runs[place + 1][0]) > _MOST_INCREASED * stitch
        middle = (start + end) / 2
        first = start if steep_before else min(middle, start + _EVENED)
        last = end if steep_after else max(middle, end - _EVENED)
        points += [(x, at * row) for at in dict.fromkeys((first, last))]
    return points
