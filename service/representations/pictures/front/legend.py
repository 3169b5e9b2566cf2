"""The legend of a garment's front: its colours and ribs in swatches of one size, and a scale."""

from __future__ import annotations

from collections.abc import Iterator, Mapping, Sequence
from dataclasses import dataclass

import svg

from grading_core.chart.grid import Colour
from grading_core.fraction import Fraction
from grading_core.pullover.front import EdgeName
from grading_core.sentences import NUMBER, TEXT, TOKEN, Saying, Sentence, words
from grading_core.units import INCHES_IN_CM, InchConvention
from service.language import text as said
from service.representations.pictures.drawing import (
    LEGEND_LINE,
    TEXT_COLOUR,
    Ink,
    mark_patterns,
    rounded,
    stitches,
    text,
)
from service.representations.pictures.front.textures import knit_texture, purl_texture
from service.representations.pictures.lettering import width_of
from service.representations.pictures.sheets import Drawing

EDGES = Saying("picture.edges", edges=words("ribbed"), colours=TOKEN, colour=TEXT)
KNIT, PURL, INSIDE = Saying("picture.knit"), Saying("picture.purl"), Saying("picture.inside")
CM, INCHES = Saying("picture.scale_cm", cm=NUMBER), Saying("picture.scale_inches", inches=NUMBER)

_STITCH = (8.0, 6.0)
_ACROSS, _DOWN = 4, 3
"""Of a swatch: pixels of a stitch, and how many stitches."""

_BETWEEN, _TOP = 20, 24
_SCALE_ROOM, _SCALE_HEIGHT = 130, 56
"""What the scale takes up, in pixels."""


@dataclass(frozen=True, slots=True, kw_only=True)
class Legend:
    """What a legend tells. edges: the ribs of each colour. named: whether colours have names. convention: of inches."""

    edges: Mapping[str, tuple[EdgeName, ...]]
    named: bool
    convention: InchConvention


@dataclass(frozen=True, slots=True, kw_only=True)
class _Entry:
    """symbol: of the colour, None for the paper. purled: columns that are. shade: of what lies inside."""

    symbol: str | None
    said: str
    purled: tuple[int, ...] = ()
    shade: float = 0


@dataclass(frozen=True, slots=True, kw_only=True)
class Foot:
    """A scale, and a legend beside it or, where that takes the whole width, below.

    lines: of the legend. beside: whether it is beside the scale. width: in pixels. definitions: of patterns.
    convention: of inches.
    """

    lines: Sequence[Sequence[svg.Element]]
    beside: bool
    width: float
    definitions: Sequence[svg.Element]
    convention: InchConvention

    @property
    def height(self) -> float:
        """In pixels, of both."""
        below = LEGEND_LINE * len(self.lines)
        return _TOP + (max(below, _SCALE_HEIGHT) if self.beside else _SCALE_HEIGHT + below)

    def apart(self, most: float) -> bool:
        """Whether the legend is so long that it has sheets of its own. most: height of a sheet in pixels."""
        return self.height > most / 2

    def drawn(self, scale: float, most: float) -> Drawing:
        """What stands below a garment. scale: pixels of a cm. most: height of a sheet in pixels."""
        bars = [*_scale_bars(self.width, scale, self.convention)]
        if self.apart(most):
            return Drawing(width=self.width, height=_TOP + _SCALE_HEIGHT, elements=bars)
        top = _TOP if self.beside else _TOP + _SCALE_HEIGHT
        return Drawing(width=self.width, height=self.height, elements=[_column(self.lines, top), *bars])

    def sheets(self, most: float) -> Iterator[Drawing]:
        """The legend's own sheets. most: height of one in pixels."""
        if not self.apart(most):
            return
        fit = max(int((most - _TOP) // LEGEND_LINE), 1)
        for first in range(0, len(self.lines), fit):
            lines = self.lines[first : first + fit]
            height = _TOP + LEGEND_LINE * len(lines)
            yield Drawing(width=self.width, height=height, elements=[_column(lines, _TOP)])


def legend(
    told: Legend,
    colours: Mapping[str, Colour],
    ink: Mapping[str, Ink],
    worked: Sequence[str],
    width: float,
    key: str,
    *,
    purled: bool,
) -> Foot:
    """The legend.

    told: what it tells. colours: by symbol. ink: how they are drawn. worked: symbols of those that aren't only in ribs.
    width: in pixels. key: the picture's. purled: whether seam stitches are.
    """
    entries = [(entry, _needed(entry)) for entry in _entries(told, colours, worked, purled=purled)]
    beside = max(needed for _, needed in entries) <= width - _SCALE_ROOM
    room = at = width - _SCALE_ROOM if beside else width
    lines: list[list[svg.Element]] = []
    for entry, needed in entries:
        if at + needed > room:
            lines.append([])
            at = 0
        lines[-1].append(svg.G(transform=[svg.Translate(rounded(at), 0)], elements=[*_drawn(entry, ink, key)]))
        at += needed
    return Foot(
        lines=lines,
        beside=beside,
        width=width,
        definitions=[
            knit_texture(f"{key}-swatch-knit", *_STITCH),
            purl_texture(f"{key}-swatch-purl", *_STITCH),
            *mark_patterns(ink, *_STITCH, f"{key}-swatch"),
        ],
        convention=told.convention,
    )


def _needed(entry: _Entry) -> float:
    """Pixels across."""
    return _ACROSS * _STITCH[0] + 8 + width_of(entry.said, 12) + _BETWEEN


def _column(lines: Sequence[Sequence[svg.Element]], top: float) -> svg.G:
    return svg.G(
        class_=["legend"],
        transform=[svg.Translate(0, top)],
        elements=[
            svg.G(transform=[svg.Translate(0, LEGEND_LINE * number)], elements=list(line))
            for number, line in enumerate(lines)
        ],
    )


def _entries(told: Legend, colours: Mapping[str, Colour], worked: Sequence[str], *, purled: bool) -> Iterator[_Entry]:
    for symbol in worked:
        yield _Entry(symbol=symbol, said=colours[symbol].name if told.named else said(KNIT()))
    for symbol, edges in told.edges.items():
        kind = "named" if told.named else "nameless"
        line = EDGES(edges=edges, colours=kind, colour=colours[symbol].name)
        yield _Entry(symbol=symbol, said=said(line), purled=(2, 3))
    if told.edges:
        yield _Entry(symbol=worked[0], said=said(INSIDE()), purled=(0, 1, 2, 3), shade=0.3)
    if purled:
        yield _Entry(symbol=None, said=said(PURL()), purled=(0, 1, 2, 3))


def _drawn(entry: _Entry, ink: Mapping[str, Ink], key: str) -> Iterator[svg.Element]:
    width, height = _STITCH
    rows = [(0.0, float(row), (entry.symbol or "") * _ACROSS) for row in range(_DOWN)]
    knit = "".join(f"M{column} 0h1v{_DOWN}h-1z" for column in range(_ACROSS) if column not in entry.purled)
    purl = "".join(f"M{column} 0h1v{_DOWN}h-1z" for column in entry.purled)
    yield svg.G(
        class_=["swatch"],
        transform=[svg.Translate(0, rounded(-_DOWN * height / 2)), svg.Scale(width, height)],
        elements=[
            *(stitches(rows, ink, f"{key}-swatch") if entry.symbol else []),
            *(
                [svg.Rect(width=_ACROSS, height=_DOWN, fill=TEXT_COLOUR, fill_opacity=entry.shade)]
                if entry.shade
                else []
            ),
            *([svg.Path(extra={"d": knit}, fill=f"url(#{key}-swatch-knit)")] if knit else []),
            *([svg.Path(extra={"d": purl}, fill=f"url(#{key}-swatch-purl)")] if purl else []),
            svg.Rect(
                width=_ACROSS,
                height=_DOWN,
                fill="none",
                stroke=TEXT_COLOUR,
                stroke_width=1,
                vector_effect="non-scaling-stroke",
            ),
        ],
    )
    yield text(entry.said, _ACROSS * width + 8, 4, 12)


def _scale_bars(right: float, scale: float, convention: InchConvention) -> Iterator[svg.Element]:
    """So many cm, and below so many inches, both ending at the right."""
    inches_of, cm_of = INCHES_IN_CM[convention]
    cm, inches = _lengths(scale)
    bars: tuple[tuple[Sentence, Fraction], ...] = ((CM(cm=cm), cm), (INCHES(inches=inches), inches * cm_of / inches_of))
    for number, (label, length) in enumerate(bars):
        y = _TOP + number * 24
        left = rounded(right - float(length) * scale)
        yield svg.Path(
            class_=["scale"],
            extra={"d": f"M{left} {y - 4}v8M{left} {y}H{rounded(right)}m0 -4v8"},
            fill="none",
            stroke=TEXT_COLOUR,
            stroke_width=1.5,
        )
        yield text(label, right, y + 15, 11, anchor="end")


def _lengths(scale: float) -> tuple[Fraction, Fraction]:
    """Centimetres and inches of which a bar has room."""
    return next(
        ((Fraction(cm), Fraction(inches)) for cm, inches in ((10, 4), (5, 2)) if cm * scale * 1.02 < _SCALE_ROOM - 10),
        (Fraction(2), Fraction(1)),
    )
