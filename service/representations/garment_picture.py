"""The front of one size as it will look: the yoke's front with its raglan lines, the body, and the sleeves.

Every stitch has its own colour and the gauge's proportions. The front and each sleeve are flat pieces; a sleeve is
turned so that its raglan edge runs along the front's, as in a garment that lies on a table. Where a yoke
curves, straight pieces cannot meet everywhere: the raglan line's colour fills the gaps.
"""

from __future__ import annotations

from collections.abc import Iterable, Iterator, Sequence
from dataclasses import dataclass
from fractions import Fraction
from math import atan2, cos, degrees, radians, sin
from typing import NamedTuple
from zlib import crc32

import svg

from grading_core.chart.views import FrontView
from grading_core.sentences import COUNT, NAMES, NUMBER, TEXT, Saying, Sentence
from grading_core.units import exact
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

TITLE = Saying("picture.front", size=TEXT)
WITHOUT = Saying("picture.without_bands")
SCALE = Saying("picture.scale", cm=NUMBER, inch=NUMBER)
YOKE = Saying("picture.front_described", colours=NAMES, rounds=COUNT, narrow=COUNT, wide=COUNT)
BODY = Saying("picture.body_described", rounds=COUNT, stitches=COUNT)

_ROOM, _MOST_HEIGHT = 900, 1400
"""The width in pixels that the garment takes up, unless it is too long for it."""

_EDGE, _TOP = 24, 64
_MOST_INCREASED = 2.01
"""Stitches that an edge gains or loses from one round to the next, and a hair."""

_EVENED = 6
"""Rows at either end of a straight stretch over which an edge is evened out."""

_LEAST_ANGLE, _GREATEST_ANGLE = radians(12), radians(75)

Point = tuple[float, float]


@dataclass(frozen=True, slots=True)
class _Piece:
    """A flat piece: rows of stitches, one below the other, from a place of its own to the page's.

    rows: as seen, the first worked topmost. left: where each row begins, in stitches from the piece's own axis.
    angle: in radians, clockwise on the page. origin: where the top of the axis lies, in cm.
    """

    rows: tuple[str, ...]
    left: tuple[float, ...]
    angle: float
    origin: Point

    def place(self, x: float, y: float) -> Point:
        """Where a point of the piece lies, in cm."""
        across, down = cos(self.angle), sin(self.angle)
        return self.origin[0] + x * across - y * down, self.origin[1] + x * down + y * across

    def outline(self, stitch: float, row: float) -> list[Point]:
        """The piece's corners, in cm from its own axis: down its right edge and up its left one."""
        right = [(at + len(text)) * stitch for at, text in zip(self.left, self.rows, strict=True)]
        left = [at * stitch for at in self.left]
        return [*_edge(right, row, stitch), *reversed(_edge(left, row, stitch))]


class _Box(NamedTuple):
    """The smallest upright rectangle around everything, in cm."""

    left: float
    top: float
    width: float
    height: float


def garment_picture(view: FrontView, length: LengthWriter) -> str:
    """The picture as SVG.

    view: what is drawn. length: writes the scale.
    """
    stitch, row = float(view.gauge.width_cm(1)), float(view.gauge.height_cm(1))
    front = _front(view)
    sleeves = _sleeves(view, stitch, row)
    pieces = (*sleeves, front)
    shapes = [[piece.place(*point) for point in piece.outline(stitch, row)] for piece in pieces]
    box = _box(point for shape in shapes for point in shape)
    scale = min(_ROOM / max(box.width, stitch), _MOST_HEIGHT / box.height)
    symbols = {view.plain.line}.union(*(text for piece in pieces for text in piece.rows))
    used = {symbol: colour for symbol, colour in view.colours.items() if symbol in symbols}
    ink = inks(used, view.plain.plain)
    key = f"front-{crc32(repr((view.label, view.body, view.yoke)).encode()):08x}"
    title = TITLE(size=view.label)
    names = {symbol: used[symbol].name for symbol in ink}
    sample = (min(stitch * scale * 2, 14), min(row * scale * 2, 14))
    legend = colour_legend(names, ink, _ROOM - 200, sample, key)
    foot = _TOP + box.height * scale + 34
    return page(
        key,
        title,
        [*_described(view, names.values())],
        _ROOM + 2 * _EDGE,
        foot + max(LEGEND_LINE * len(legend), 30) + 12,
        [
            svg.Defs(
                elements=[
                    *mark_patterns(ink, stitch * scale, row * scale, key),
                    _loops(stitch * scale, row * scale, key),
                    _mask(f"{key}-beside-front", box, shapes[-1:]),
                    _mask(f"{key}-beside-all", box, shapes),
                ]
            ),
            text(title, _EDGE, 26, 16, font_weight="bold"),
            text(WITHOUT(), _EDGE, 46, 12),
            svg.G(
                transform=[
                    svg.Translate(rounded(_EDGE + _ROOM / 2), rounded(_TOP - box.top * scale)),
                    svg.Scale(round(scale, 4)),
                ],
                elements=[
                    svg.G(
                        mask=f"url(#{key}-beside-all)",
                        elements=[
                            _seam(front, sleeve, len(view.yoke), stitch, row, ink[view.plain.line])
                            for sleeve in sleeves
                        ],
                    ),
                    svg.G(
                        mask=f"url(#{key}-beside-front)",
                        elements=[_drawn(sleeve, stitch, row, ink, key) for sleeve in sleeves],
                    ),
                    _drawn(front, stitch, row, ink, key),
                ],
            ),
            svg.G(transform=[svg.Translate(_EDGE, rounded(foot))], elements=list(legend)),
            *_scale_bar(scale, foot, length),
        ],
    )


def _box(points: Iterable[Point]) -> _Box:
    across, along = zip(*points, strict=True)
    return _Box(min(across), min(along), max(across) - min(across), max(along) - min(along))


def _front(view: FrontView) -> _Piece:
    """The front between its two raglan lines, and the body below."""
    rows = (*(seen.line + seen.front + seen.line for seen in view.yoke), *view.body)
    return _Piece(rows, tuple(-len(text) / 2 for text in rows), 0, (0, 0))


def _sleeves(view: FrontView, stitch: float, row: float) -> tuple[_Piece, _Piece]:
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
    turned = _Piece(second, tuple(-float(len(text)) for text in second), -angle, (0, 0))
    x, y = turned.place(-reach[0], reach[1])
    origin = (corner[0] - x, corner[1] - y)
    return (
        _Piece(first, (0.0,) * len(first), angle, (-origin[0], origin[1])),
        _Piece(second, turned.left, -angle, origin),
    )


def _edge(places: Sequence[float], row: float, stitch: float) -> list[Point]:
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


def _seam(front: _Piece, sleeve: _Piece, rounds: int, stitch: float, row: float, ink: Ink) -> svg.Polygon:
    """What lies between the raglan edges of front and sleeve."""
    side = 1 if sleeve.angle < 0 else -1
    ends = [-side * at * stitch for at in front.left[:rounds]]
    widths = [-side * len(text) * stitch for text in sleeve.rows[:rounds]]
    along_front = [front.place(*point) for point in _edge(ends, row, stitch)]
    along_sleeve = [sleeve.place(*point) for point in _edge(widths, row, stitch)]
    return svg.Polygon(
        points=_points([*along_front, *reversed(along_sleeve)]), fill=ink.fill or "none", fill_opacity=ink.opacity
    )


def _mask(name: str, box: _Box, shapes: Iterable[Iterable[Point]]) -> svg.Mask:
    """Leaves undrawn what other pieces lie over; they need not be opaque, for their colour may be the paper's."""
    left, top = _short(box.left - 1), _short(box.top - 1)
    width, height = _short(box.width + 2), _short(box.height + 2)
    return svg.Mask(
        id=name,
        maskUnits="userSpaceOnUse",
        x=left,
        y=top,
        width=width,
        height=height,
        elements=[
            svg.Rect(x=left, y=top, width=width, height=height, fill="white"),
            *(svg.Polygon(points=_points(shape), fill="black") for shape in shapes),
        ],
    )


def _drawn(piece: _Piece, stitch: float, row: float, ink: dict[str, Ink], key: str) -> svg.G:
    name = f"{key}-piece-{piece.angle:.3f}"
    rows = ((at, number, seen) for number, (at, seen) in enumerate(zip(piece.left, piece.rows, strict=True)))
    outline = piece.outline(stitch, row)
    in_stitches = _points((x / stitch, y / row) for x, y in outline)
    return svg.G(
        transform=[svg.Translate(*map(_short, piece.origin)), svg.Rotate(rounded(degrees(piece.angle)))],
        elements=[
            svg.ClipPath(id=name, elements=[svg.Polygon(points=in_stitches)]),
            svg.G(
                transform=[svg.Scale(round(stitch, 5), round(row, 5))],
                clip_path=f"url(#{name})",
                elements=[*stitches(rows, ink, key), svg.Polygon(points=in_stitches, fill=f"url(#{key}-loops)")],
            ),
            svg.Polygon(
                points=_points(outline),
                fill="none",
                stroke=TEXT_COLOUR,
                stroke_width=1,
                stroke_linejoin="round",
                vector_effect="non-scaling-stroke",
            ),
        ],
    )


def _loops(width: float, height: float, key: str) -> svg.Pattern:
    """The legs of a stitch, which stand on their heads in a garment knitted from the top."""
    w, h = width, height
    legs = f"M{0.06 * w:.3f} {h:.3f}L{0.5 * w:.3f} {0.12 * h:.3f}L{0.94 * w:.3f} {h:.3f}M{0.5 * w:.3f} 0V{0.12 * h:.3f}"
    return svg.Pattern(
        id=f"{key}-loops",
        patternUnits="userSpaceOnUse",
        width=round(w, 4),
        height=round(h, 4),
        patternTransform=[svg.Scale(round(1 / w, 6), round(1 / h, 6))],
        elements=[
            svg.Path(
                extra={"d": legs}, fill="none", stroke=TEXT_COLOUR, stroke_width=round(w * 0.1, 3), stroke_opacity=0.3
            )
        ],
    )


def _scale_bar(scale: float, top: float, length: LengthWriter) -> Iterator[svg.Element]:
    right = _EDGE + _ROOM
    left = rounded(right - 10 * scale)
    yield svg.Path(
        extra={"d": f"M{left} {rounded(top - 4)}v8M{left} {rounded(top)}H{right}m0 -4v8"},
        fill="none",
        stroke=TEXT_COLOUR,
        stroke_width=1.5,
    )
    cm = Fraction(10)
    yield text(SCALE(cm=cm, inch=exact(length(cm)["inch"])), right, top + 20, 12, anchor="end")


def _described(view: FrontView, names: Iterable[str]) -> Iterator[Sentence]:
    """The picture in words."""
    yoke, body = view.yoke, view.body
    yield YOKE(colours=tuple(names), rounds=len(yoke), narrow=len(yoke[0].front), wide=len(yoke[-1].front))
    if body:
        yield BODY(rounds=len(body), stitches=len(body[-1]))


def _points(points: Iterable[Point]) -> list[svg.Point]:
    return [svg.Point(_short(x), _short(y)) for x, y in points]


def _short(number: float) -> float:
    """In cm or stitches, fine enough for any zoom."""
    return round(number, 4)
