"""The front of one size as it will look: the yoke's front with its raglan lines, the body, the sleeves, and of a
pullover its ribs and the neck.

Every stitch has its own colour and the proportions of its fabric. The front and each sleeve are flat pieces; a sleeve
is turned so that its raglan edge runs along the front's, as in a garment that lies on a table. Where a yoke curves,
straight pieces cannot meet everywhere: the plain colour fills the gaps.
"""

from __future__ import annotations

from collections.abc import Iterable, Iterator, Mapping, Sequence
from dataclasses import dataclass, replace
from itertools import groupby
from math import ceil, degrees, floor

import svg

from grading_core.chart.front import FrontView
from grading_core.gauge import Gauge
from grading_core.pullover.front import Finish
from service.representations.pictures.drawing import TEXT_COLOUR, Ink, inks, mark_patterns, rounded, stitches
from service.representations.pictures.front.legend import Legend, legend
from service.representations.pictures.front.neck import NeckView, Strip, neck_view
from service.representations.pictures.front.pieces import (
    RIBS,
    Band,
    Box,
    Piece,
    Point,
    box_around,
    front_piece,
    sleeve_pieces,
)
from service.representations.pictures.front.textures import knit_texture, purl_texture
from service.representations.pictures.sheets import Drawing, Room

_MOST_HEIGHT = 1400
"""In pixels, of a garment whose sheet is as high as it takes."""

_PALE = "#ffffff"

_SLEEVES = ("first-sleeve", "second-sleeve")

_EDGE = 3
"""Pixels around the garment, for its outline."""


@dataclass(frozen=True, slots=True, kw_only=True)
class GarmentDrawing:
    """A garment drawn.

    definitions: of its patterns. drawings: with its legend, one a sheet. symbols: of the colours that are seen.
    """

    definitions: Sequence[svg.Element]
    drawings: Sequence[Drawing]
    symbols: Sequence[str]


def garment_drawing(view: FrontView, finish: Finish | None, room: Room, key: str, told: Legend) -> GarmentDrawing:
    """The drawing.

    view: what is drawn. finish: of a pullover, None of a garment without ribs. room: on the sheet. key: the picture's.
    told: what its legend says.
    """
    front, sleeves = front_piece(view, finish), sleeve_pieces(view, finish)
    neck = neck_view(view, finish, front, sleeves) if finish else None
    pieces = (*sleeves, front)
    fabric = {view.plain.plain}.union(
        *(run.stitches for piece in pieces for band in piece.bands if band.kind not in RIBS for run in band.runs)
    )
    symbols = fabric.union(finish.edges if finish else ())
    ink = inks({symbol: view.colours[symbol] for symbol in view.colours if symbol in symbols}, view.plain.plain)
    purled = any(band.purled for piece in pieces for band in piece.bands if band.kind in ("body", "sleeve"))
    worked = [symbol for symbol in ink if symbol in fabric]
    foot = legend(told, view.colours, ink, worked, room.width, key, purled=purled)
    strips = (neck.band, neck.band_behind) if neck else ()
    box = box_around(
        point for shape in (*(each.placed for each in pieces), *(each.end for each in strips)) for point in shape
    )
    stitch = float(view.fabric.at(1).width_cm(1))
    height = min(room.height - foot.drawn(1, room.height).height, _MOST_HEIGHT) - 2 * _EDGE
    scale = min((room.width - 2 * _EDGE) / max(box.width, stitch), height / max(box.height, stitch))
    drawer = _Drawer(view=view, ink=ink, key=key, scale=scale, box=box, textures={})
    garment = [*drawer.garment(front, sleeves, neck)]
    top, below = box.height * scale + 2 * _EDGE, foot.drawn(scale, room.height)
    middle = room.width / 2 - (box.left + box.width / 2) * scale, _EDGE - box.top * scale
    return GarmentDrawing(
        definitions=[
            *mark_patterns(ink, stitch * scale, float(view.fabric.at(1).height_cm(1)) * scale, key),
            *foot.definitions,
            *drawer.textures.values(),
        ],
        drawings=[
            Drawing(
                width=room.width,
                height=top + below.height,
                elements=[
                    svg.G(
                        transform=[svg.Translate(*map(rounded, middle)), svg.Scale(round(scale, 4))], elements=garment
                    ),
                    svg.G(transform=[svg.Translate(0, rounded(top))], elements=list(below.elements)),
                ],
            ),
            *foot.sheets(room.height),
        ],
        symbols=[*ink],
    )


@dataclass(frozen=True, slots=True, kw_only=True)
class _Drawer:
    """Draws in cm. textures: patterns as they are needed, by id."""

    view: FrontView
    ink: Mapping[str, Ink]
    key: str
    scale: float
    box: Box
    textures: dict[str, svg.Element]

    def garment(self, front: Piece, sleeves: tuple[Piece, Piece], neck: NeckView | None) -> Iterator[svg.Element]:
        """Everything, what lies over other things last."""
        named = dict(zip(_SLEEVES, sleeves, strict=True))
        shapes = {name: sleeve.placed for name, sleeve in named.items()} | {"front": front.placed}
        if neck:
            shapes["band"] = neck.band.shape
        yield svg.Defs(elements=[self._beside(name, shape) for name, shape in shapes.items()])
        banded = neck is not None
        over = ["band"] if banded else []
        if neck:
            yield self._below([*shapes], [*self._behind(neck)])
            # a hair wider, so that nothing shines through where the front begins
            yield self._below(over, [self._filled(neck.band.rest, self.view.plain.plain, hair=1.5)])
        yield self._below([*shapes], [self._seam(front, sleeve) for sleeve in sleeves])
        drawn: list[svg.Element] = [self._piece(sleeve, name, banded=banded) for name, sleeve in named.items()]
        yield self._below(["front", *over], drawn)
        yield self._below(over, [self._piece(front, "front", banded=banded)])
        if neck:
            yield svg.G(class_=["band"], elements=[*self._strip(neck.band, "band")])

    def _below(self, names: Iterable[str], elements: list[svg.Element]) -> svg.G:
        """Elements as far as nothing lies over them. names: of what does.

        They are clipped and not masked: printed, patterns in a mask become huge.
        """
        group = svg.G(elements=elements)
        for name in names:
            group = svg.G(clip_path=f"url(#{self.key}-beside-{name})", elements=[group])
        return group

    def _beside(self, name: str, shape: Iterable[Point]) -> svg.ClipPath:
        """Leaves undrawn what a shape lies over; it need not be opaque, for its colour may be the paper's."""
        left, top, width, height = map(_short, self.box)
        whole = f"M{left - 1:g} {top - 1:g}h{width + 2:g}v{height + 2:g}h-{width + 2:g}z"
        around = svg.Path(extra={"d": f"{whole}M{_joined(shape)}z"}, clip_rule="evenodd")
        return svg.ClipPath(id=f"{self.key}-beside-{name}", elements=[around])

    def _seam(self, front: Piece, sleeve: Piece) -> svg.Polygon:
        """What lies between the raglan edges of front and sleeve."""
        side = -1 if sleeve.fold == "left" else 1
        yoke = [band for band in front.bands if band.kind == "yoke"]
        beside = [band for band in sleeve.bands if band.kind == "yoke"]
        along = [front.place(*point) for point in _side(yoke, side)]
        along_sleeve = [sleeve.place(*point) for point in _side(beside, -side)]
        return self._filled([*along, *reversed(along_sleeve)], self.view.plain.plain)

    def _filled(self, shape: Iterable[Point], symbol: str, hair: float = 0) -> svg.Polygon:
        """A shape in the colour of a yarn. hair: pixels of a line round it, in the same colour."""
        ink = self.ink[symbol]
        edge = {"stroke": ink.fill, "stroke_width": hair, "vector_effect": "non-scaling-stroke"} if hair else {}
        return svg.Polygon(points=_points(shape), fill=ink.fill or "none", fill_opacity=ink.opacity, **edge)  # type: ignore[arg-type]

    def _marked(self, shape: Sequence[Point], symbol: str, gauge: Gauge, name: str) -> Iterator[svg.Element]:
        """The marks in the stitches of a shape, where its colour has any. name: of the shape."""
        if self.ink[symbol].mark is None:
            return
        stitch, row = float(gauge.width_cm(1)), float(gauge.height_cm(1))
        box = box_around((x / stitch, y / row) for x, y in shape)
        text = symbol * (ceil(box.width) + 2)
        rows = [(floor(box.left), floor(box.top) + number, text) for number in range(ceil(box.height) + 2)]
        only_marks = {each: replace(ink, fill=None) for each, ink in self.ink.items()}
        yield svg.ClipPath(id=f"{self.key}-{name}", elements=[svg.Polygon(points=_points(shape))])
        scaled = svg.G(
            transform=[svg.Scale(round(stitch, 5), round(row, 5))], elements=[*stitches(rows, only_marks, self.key)]
        )
        yield svg.G(class_=["marks"], clip_path=f"url(#{self.key}-{name})", elements=[scaled])

    def _shade(self, symbol: str) -> str:
        """The paint that darkens a yarn: on a page that is dark too, where the yarn's own colour is told."""
        return TEXT_COLOUR if self.ink[symbol].fill in (None, TEXT_COLOUR) else "#000000"

    def _piece(self, piece: Piece, name: str, *, banded: bool) -> svg.G:
        """A piece. banded: whether a band lies along its upper edge, which has an outline of its own."""
        clip = f"{self.key}-{name}"
        outline = _points(piece.outline)
        return svg.G(
            class_=[name],
            transform=[svg.Translate(*map(_short, piece.origin)), svg.Rotate(rounded(degrees(piece.angle)))],
            elements=[
                svg.ClipPath(id=clip, elements=[svg.Polygon(points=outline)]),
                svg.G(clip_path=f"url(#{clip})", elements=[self._band(band, piece) for band in piece.bands]),
                *_outlined(_points([piece.top[-1], *piece.sides, piece.top[0]]), closed=not banded),
            ],
        )

    def _band(self, band: Band, piece: Piece) -> svg.G:
        """Rows of stitches, in stitches and rows."""
        box = band.box
        purl = "".join(f"M{x:g} {y:g}h{width:g}v{height:g}h-{width:g}z" for x, y, width, height in band.purled)
        # what lies in the purl stitches' rectangles as well is inside twice, and so not filled
        whole = f"M{box.left - 2:g} 0h{box.width + 4:g}v{band.rows}h-{box.width + 4:g}z{purl}"
        return svg.G(
            class_=[band.kind],
            transform=[svg.Translate(0, _short(band.top)), svg.Scale(round(band.stitch, 5), round(band.row, 5))],
            elements=[
                svg.G(class_=["beyond"], elements=[*stitches(_beyond(band, piece.fold), self.ink, self.key)]),
                *stitches(((run.left, run.row, run.stitches) for run in band.runs), self.ink, self.key),
                svg.Path(extra={"d": whole}, fill=self._texture("knit", band), fill_rule="evenodd"),
                *([svg.Path(extra={"d": purl}, fill=self._texture("purl", band))] if purl else []),
            ],
        )

    def _texture(self, kind: str, band: Band) -> str:
        name = f"{self.key}-{kind}-{band.stitch:.4f}-{band.row:.4f}-{band.phase:g}".replace(".", "_")
        if name not in self.textures:
            make = knit_texture if kind == "knit" else purl_texture
            self.textures[name] = make(name, band.stitch * self.scale, band.row * self.scale, band.phase)
        return f"url(#{name})"

    def _behind(self, neck: NeckView) -> Iterator[svg.Element]:
        """The inside of the back, and the neckband above it."""
        inside = _points(neck.inside)
        gauge = self.view.plain_gauge or self.view.gauge
        inner = Band(
            kind="inside", top=0, stitch=float(gauge.width_cm(1)), row=float(gauge.height_cm(1)), rows=0, runs=()
        )
        in_stitches = [svg.Point(_short(x / inner.stitch), _short(y / inner.row)) for x, y in neck.inside]
        yield svg.G(
            class_=["inside"],
            elements=[
                self._filled(neck.inside, self.view.plain.plain),
                svg.Polygon(points=inside, fill=self._shade(self.view.plain.plain), fill_opacity=0.3),
                svg.G(
                    transform=[svg.Scale(round(inner.stitch, 5), round(inner.row, 5))],
                    elements=[svg.Polygon(points=in_stitches, fill=self._texture("purl", inner))],
                ),
            ],
        )
        band = neck.band_behind
        shade = svg.Polygon(points=_points(band.shape), fill=self._shade(band.rib.colour), fill_opacity=0.3)
        yield svg.G(class_=["band-behind"], elements=[*self._strip(band, "behind"), shade])

    def _strip(self, strip: Strip, name: str) -> Iterator[svg.Element]:
        """A rib along an edge, its purl stitches in the shade."""
        symbol = strip.rib.colour
        yield self._filled(strip.shape, symbol)
        yield from self._marked(strip.shape, symbol, strip.rib.gauge, name)
        columns = [*strip.columns()]
        for kind, opacity in (("k", 0.0), ("p", 0.26)):
            shapes = "".join(f"M{_joined(corners)}z" for each, corners in columns if each == kind)
            if shapes:
                yield svg.Path(
                    class_=["knit" if kind == "k" else "purl"],
                    extra={"d": shapes},
                    fill=self._shade(symbol),
                    fill_opacity=opacity,
                )
        lines = "".join(f"M{_joined(line)}" for line in strip.rounds())
        yield svg.Path(
            extra={"d": lines},
            fill="none",
            stroke=TEXT_COLOUR,
            stroke_width=0.6,
            stroke_opacity=0.25,
            vector_effect="non-scaling-stroke",
        )
        yield from _outlined(_points(strip.shape))


def _beyond(band: Band, fold: str) -> Iterator[tuple[float, float, str]]:
    """What lies below the stitches: two more at the sides of a piece, where its evened outline lies beyond them, and a
    hair more below the last row, so that nothing shines through where the next band begins.
    """
    for row, left, text in band.runs:
        if row == band.rows - 1:
            yield left, row + 0.2, text
        if text and fold != "left":
            yield left - 2, row, text[0] * 2
        if text and fold != "right":
            yield left + len(text), row, text[-1] * 2


def _side(bands: Sequence[Band], side: int) -> list[Point]:
    """The raglan edge of a yoke, row by row. side: 1 for its right edge, -1 for its left one."""
    points = []
    for band in bands:
        for row, runs in groupby(band.runs, lambda run: run.row):
            x = max(side * (run.left + run.width * (side > 0)) for run in runs) * side * band.stitch
            points += [(x, band.top + row * band.row), (x, band.top + (row + 1) * band.row)]
    return points


def _outlined(points: list[svg.Point], *, closed: bool = True) -> Iterator[svg.Polygon | svg.Polyline]:
    """An outline that shows on dark yarn too."""
    for name, paint, width in (("halo", _PALE, 2.6), ("outline", TEXT_COLOUR, 1.1)):
        yield (svg.Polygon if closed else svg.Polyline)(
            class_=[name],
            points=points,
            fill="none",
            stroke=paint,
            stroke_width=width,
            stroke_linejoin="round",
            vector_effect="non-scaling-stroke",
        )


def _points(points: Iterable[Point]) -> list[svg.Point]:
    return [svg.Point(_short(x), _short(y)) for x, y in points]


def _joined(points: Iterable[Point]) -> str:
    return "L".join(f"{_short(x):g} {_short(y):g}" for x, y in points)


def _short(number: float) -> float:
    """In cm or stitches, fine enough for any zoom."""
    return round(number, 4)
