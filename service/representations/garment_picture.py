"""The front of one size as it will look: the yoke's front with its raglan lines, the body, and the sleeves.

Every stitch has its own colour and the gauge's proportions; seam stitches that are purled show a bump instead of the
legs of a knit stitch. The front and each sleeve are flat pieces; a sleeve is
turned so that its raglan edge runs along the front's, as in a garment that lies on a table. Where a yoke
curves, straight pieces cannot meet everywhere: the raglan line's colour fills the gaps.
"""

from __future__ import annotations

from collections.abc import Iterable, Iterator
from fractions import Fraction
from math import degrees
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
from service.representations.garment_pieces import Box, Piece, Point, box_around, edge, front_piece, sleeve_pieces
from service.representations.textures import knit_texture, purl_legend, purl_texture

TITLE = Saying("picture.front", size=TEXT)
WITHOUT = Saying("picture.without_bands")
SCALE = Saying("picture.scale", cm=NUMBER, inch=NUMBER)
YOKE = Saying("picture.front_described", colours=NAMES, rounds=COUNT, narrow=COUNT, wide=COUNT)
BODY = Saying("picture.body_described", rounds=COUNT, stitches=COUNT)
SEAMS = Saying("picture.seams_described")

_ROOM, _MOST_HEIGHT = 900, 1400
"""The width in pixels that the garment takes up, unless it is too long for it."""

_EDGE, _TOP = 24, 64


def garment_picture(view: FrontView, length: LengthWriter) -> str:
    """The picture as SVG.

    view: what is drawn. length: writes the scale.
    """
    stitch, row = float(view.gauge.width_cm(1)), float(view.gauge.height_cm(1))
    front = front_piece(view)
    sleeves = sleeve_pieces(view, stitch, row)
    pieces = (*sleeves, front)
    shapes = [[piece.place(*point) for point in piece.outline(stitch, row)] for piece in pieces]
    box = box_around(point for shape in shapes for point in shape)
    scale = min(_ROOM / max(box.width, stitch), _MOST_HEIGHT / box.height)
    symbols = {view.plain.line}.union(*(text for piece in pieces for text in piece.rows))
    used = {symbol: colour for symbol, colour in view.colours.items() if symbol in symbols}
    ink = inks(used, view.plain.plain)
    key = f"front-{crc32(repr((view.label, view.body, view.yoke, view.seam)).encode()):08x}"
    title = TITLE(size=view.label)
    names = {symbol: used[symbol].name for symbol in ink}
    sample = (min(stitch * scale * 2, 14), min(row * scale * 2, 14))
    legend = colour_legend(names, ink, _ROOM - 200, sample, key)
    purled = any(any(piece.purl_columns()) for piece in pieces)
    if purled:
        legend.append(purl_legend(len(legend), sample, key))
    foot = _TOP + box.height * scale + 34
    return page(
        key,
        title,
        [*_described(view, names.values(), purled=purled)],
        _ROOM + 2 * _EDGE,
        foot + max(LEGEND_LINE * len(legend), 30) + 12,
        [
            svg.Defs(
                elements=[
                    *mark_patterns(ink, stitch * scale, row * scale, key),
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
                        elements=[_drawn(sleeve, stitch, row, scale, ink, key) for sleeve in sleeves],
                    ),
                    _drawn(front, stitch, row, scale, ink, key),
                ],
            ),
            svg.G(transform=[svg.Translate(_EDGE, rounded(foot))], elements=list(legend)),
            *_scale_bar(scale, foot, length),
        ],
    )


def _seam(front: Piece, sleeve: Piece, rounds: int, stitch: float, row: float, ink: Ink) -> svg.Polygon:
    """What lies between the raglan edges of front and sleeve."""
    side = 1 if sleeve.angle < 0 else -1
    ends = [-side * at * stitch for at in front.left[:rounds]]
    widths = [-side * len(text) * stitch for text in sleeve.rows[:rounds]]
    along_front = [front.place(*point) for point in edge(ends, row, stitch)]
    along_sleeve = [sleeve.place(*point) for point in edge(widths, row, stitch)]
    return svg.Polygon(
        points=_points([*along_front, *reversed(along_sleeve)]), fill=ink.fill or "none", fill_opacity=ink.opacity
    )


def _mask(name: str, box: Box, shapes: Iterable[Iterable[Point]]) -> svg.Mask:
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


def _drawn(piece: Piece, stitch: float, row: float, scale: float, ink: dict[str, Ink], key: str) -> svg.G:
    name = f"{key}-piece-{piece.angle:.3f}"
    rows = ((at, number, seen) for number, (at, seen) in enumerate(zip(piece.left, piece.rows, strict=True)))
    outline = piece.outline(stitch, row)
    in_stitches = _points((x / stitch, y / row) for x, y in outline)
    whole = f"M{'L'.join(f'{point.x:g} {point.y:g}' for point in in_stitches)}z"
    purl = "".join(f"M{x:g} {y:g}h{width:g}v{height:g}h-{width:g}z" for x, y, width, height in piece.purl_columns())
    return svg.G(
        transform=[svg.Translate(*map(_short, piece.origin)), svg.Rotate(rounded(degrees(piece.angle)))],
        elements=[
            svg.ClipPath(id=name, elements=[svg.Polygon(points=in_stitches)]),
            knit_texture(f"{name}-knit", stitch * scale, row * scale, piece.phase),
            *([purl_texture(f"{name}-purl", stitch * scale, row * scale, piece.phase)] if purl else []),
            svg.G(
                transform=[svg.Scale(round(stitch, 5), round(row, 5))],
                clip_path=f"url(#{name})",
                elements=[
                    *stitches(rows, ink, key),
                    # what lies in the purl stitches' rectangles as well is inside twice, and so not filled
                    svg.Path(extra={"d": whole + purl}, fill=f"url(#{name}-knit)", fill_rule="evenodd"),
                    *([svg.Path(extra={"d": purl}, fill=f"url(#{name}-purl)")] if purl else []),
                ],
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


def _described(view: FrontView, names: Iterable[str], *, purled: bool) -> Iterator[Sentence]:
    """The picture in words."""
    yoke, body = view.yoke, view.body
    yield YOKE(colours=tuple(names), rounds=len(yoke), narrow=len(yoke[0].front), wide=len(yoke[-1].front))
    if body:
        yield BODY(rounds=len(body), stitches=len(body[-1]))
    if purled:
        yield SEAMS()


def _points(points: Iterable[Point]) -> list[svg.Point]:
    return [svg.Point(_short(x), _short(y)) for x, y in points]


def _short(number: float) -> float:
    """In cm or stitches, fine enough for any zoom."""
    return round(number, 4)
