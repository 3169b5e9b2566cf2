"""What pictures of colourwork share: text, the colours in ink, and runs of stitches as shapes.

Everything is drawn in the text colour of wherever the picture is shown, except stitches whose colour has a hex.
A colour that would print in nearly the same grey as one before it gets a small mark in every stitch.
"""

from __future__ import annotations

from collections.abc import Iterable, Mapping, Sequence
from dataclasses import dataclass
from itertools import groupby
from typing import Literal, NamedTuple
from xml.sax.saxutils import escape

import svg

from grading_core.chart.grid import Colour
from grading_core.chart.lightness import READS_APART, lightness
from grading_core.sentences import Sentence
from service.language import text as said
from service.representations.pictures.lettering import width_of

TEXT_COLOUR = "currentColor"

LEGEND_LINE, _LEGEND_SIZE = 22, 12
"""Pixels from one line of a legend to the next, and the size of its words."""

_DARK, _PALE = 0.8, 0.14
"""How much of the text colour a colour without hex gets: the first after the ground, and the others."""

_DARK_LIGHTNESS, _PALE_LIGHTNESS, _PAPER_LIGHTNESS = 22, 88, 100

_NOT_IN_XML = dict.fromkeys((0xFFFE, 0xFFFF), "\ufffd")

_SHAPES = ("dot", "square", "triangle", "open square", "open triangle", "hanging triangle", "open hanging triangle")
_PLACES = ((0, 0), (-1, -1), (1, 1), (1, -1), (-1, 1), (0, -1), (0, 1), (-1, 0), (1, 0))
"""Of marks: none of the shapes means anything in charts for knitters. Places are columns and rows from the middle,
where a mark is larger than elsewhere. Together they are enough for every colour of a chart."""


@dataclass(frozen=True, slots=True)
class Ink:
    """How the stitches of a colour are drawn.

    fill: a paint; None leaves the paper. opacity: of the fill. mark: the number of the mark in every stitch, from
    0: its shape and its place. mark_paint: what the mark is drawn in.
    """

    fill: str | None
    opacity: float | None = None
    mark: int | None = None
    mark_paint: str = TEXT_COLOUR


def text(written: str | Sentence, x: float, y: float, size: float, **options: object) -> svg.Text:
    """A line of text; options as the library has them.

    written: what is said, or anything else, from the request too. x, y, size: in pixels.
    """
    if isinstance(written, Sentence):
        written = said(written)
    anchor: Literal["start", "middle", "end"] = options.pop("anchor", "start")  # type: ignore[assignment]
    return svg.Text(
        text=safe(written),
        x=rounded(x),
        y=rounded(y),
        font_size=size,
        text_anchor=anchor,
        fill=TEXT_COLOUR,
        **options,  # type: ignore[arg-type]
    )


def safe(written: str) -> str:
    """Text as it stands in XML.

    >>> safe("R & B <2>")
    'R &amp; B &lt;2&gt;'
    """
    return escape(written.translate(_NOT_IN_XML))


def rounded(number: float) -> float | int:
    """A coordinate: two decimals are far finer than a screen.

    >>> rounded(3.0), rounded(1 / 3)
    (3, 0.33)
    """
    short = round(number, 2)
    return int(short) if short == int(short) else short


def inks(colours: Mapping[str, Colour], ground: str) -> dict[str, Ink]:
    """How each colour is drawn.

    colours: by symbol. ground: the symbol of the colour that lies behind the others; without a hex it is the paper.
    """
    found: dict[str, Ink] = {}
    seen: list[float] = []
    marks = 0
    for symbol in sorted(colours, key=lambda symbol: symbol != ground):
        hex = colours[symbol].hex
        if hex is not None:
            light = float(lightness(hex))
            ink = Ink(hex, mark_paint="#000000" if light > 50 else "#ffffff")
        elif symbol == ground:
            light, ink = _PAPER_LIGHTNESS, Ink(None)
        elif not any(abs(light - _DARK_LIGHTNESS) < READS_APART for light in seen):
            light, ink = _DARK_LIGHTNESS, Ink(TEXT_COLOUR, _DARK)
        else:
            light, ink = _PALE_LIGHTNESS, Ink(TEXT_COLOUR, _PALE)
        if any(abs(light - other) < READS_APART for other in seen):
            ink = Ink(ink.fill, ink.opacity, marks, ink.mark_paint)
            marks += 1
        seen.append(light)
        found[symbol] = ink
    return found


def stitches(rows: Iterable[tuple[float, float, str]], inks: Mapping[str, Ink], key: str) -> list[svg.Element]:
    """Stitches, each a unit square, as one shape a colour.

    rows: the place of each row's upper left corner, and its colours from the left. inks: of the colours. key: of
    the marks' patterns, as for `mark_patterns`.
    """
    runs: dict[str, list[str]] = {symbol: [] for symbol in inks}
    for x, y, row in rows:
        at = x
        for symbol, run in groupby(row):
            length = len(list(run))
            runs[symbol].append(f"M{at:g} {y + 0.5:g}h{length}")
            at += length
    drawn: list[svg.Element] = []
    for symbol, ink in inks.items():
        if not runs[symbol]:
            continue
        # Lines one row wide take half the text of rectangles.
        line = {"d": "".join(runs[symbol])}
        if ink.fill is not None:
            drawn.append(svg.Path(extra=line, stroke=ink.fill, stroke_width=1, stroke_opacity=ink.opacity))
        if ink.mark is not None:
            drawn.append(svg.Path(extra=line, stroke=_pattern(key, symbol, inks), stroke_width=1))
    return drawn


def mark_patterns(inks: Mapping[str, Ink], width: float, height: float, key: str) -> list[svg.Element]:
    """The marks in stitches of a width and height in pixels, for drawings whose unit is the stitch.

    key: distinguishes the patterns of one picture from those of others on the same page.
    """
    return [
        svg.Pattern(
            id=f"{key}-mark-{number}",
            patternUnits="userSpaceOnUse",
            width=rounded(width),
            height=rounded(height),
            patternTransform=[svg.Scale(round(1 / width, 5), round(1 / height, 5))],
            elements=[_mark(ink, width, height)],
        )
        for number, ink in enumerate(inks.values())
        if ink.mark is not None
    ]


class Entry(NamedTuple):
    """What a legend has: a sample, drawn from its left end on the middle of its line, and what it is.

    wide: the sample, in pixels.
    """

    sample: Sequence[svg.Element]
    wide: float
    words: str


def legend_lines(entries: Iterable[Entry], room: float) -> list[svg.G]:
    """Entries side by side in as many lines as they need, `LEGEND_LINE` apart.

    room: the width of a line, in pixels.
    """
    lines: list[list[svg.Element]] = []
    at = room
    for entry in entries:
        needed = entry.wide + 26 + width_of(entry.words, _LEGEND_SIZE)
        if at + needed > room:
            lines.append([])
            at = 0
        move: list[svg.Transform] = [svg.Translate(rounded(at), 0)]
        lines[-1].append(
            svg.G(
                transform=move,
                elements=[*entry.sample, text(entry.words, entry.wide and entry.wide + 8, 4, _LEGEND_SIZE)],
            )
        )
        at += needed
    return [
        svg.G(transform=[svg.Translate(0, LEGEND_LINE * number)], elements=line) for number, line in enumerate(lines)
    ]


def colour_entries(
    names: Mapping[str, str], inks: Mapping[str, Ink], size: tuple[float, float], key: str
) -> list[Entry]:
    """Two stitches of each colour and its name.

    names: of the colours, by symbol. size: of a stitch, in pixels.
    """
    return [Entry([_swatch(symbol, inks, 0, size, key)], 2 * size[0], name) for symbol, name in names.items()]


def colour_legend(
    names: Mapping[str, str], inks: Mapping[str, Ink], room: float, size: tuple[float, float], key: str
) -> list[svg.G]:
    """Two stitches of each colour and its name, in as many lines as they need, `LEGEND_LINE` apart.

    names: of the colours, by symbol. room: the width of a line. size: of a stitch. All in pixels.
    """
    return legend_lines(colour_entries(names, inks, size, key), room)


def _swatch(symbol: str, inks: Mapping[str, Ink], x: float, size: tuple[float, float], key: str) -> svg.G:
    width, height = size
    frame = svg.Rect(
        width=2, height=1, fill="none", stroke=TEXT_COLOUR, stroke_width=1, vector_effect="non-scaling-stroke"
    )
    return svg.G(
        transform=[svg.Translate(rounded(x), rounded(-height / 2)), svg.Scale(rounded(width), rounded(height))],
        elements=[*stitches([(0, 0, symbol * 2)], inks, key), frame],
    )


def _pattern(key: str, symbol: str, inks: Mapping[str, Ink]) -> str:
    return f"url(#{key}-mark-{list(inks).index(symbol)})"


def _mark(ink: Ink, width: float, height: float) -> svg.Element:
    place, shape = divmod(ink.mark or 0, len(_SHAPES))
    across, along = _PLACES[place % len(_PLACES)]
    x, y, small = width / 2 * (1 + across * 0.56), height / 2 * (1 + along * 0.56), min(width, height)
    reach = small * (0.15 if place else 0.25)
    return shape_at(_SHAPES[shape], x, y, reach, ink.mark_paint)


def shape_at(shape: str, x: float, y: float, reach: float, paint: str = TEXT_COLOUR) -> svg.Element:
    """A mark: a dot, a square or a triangle, filled or "open", standing or "hanging".

    x, y: of its middle. reach: from there to its edges. paint: that it is drawn in.
    """
    left, right, top, bottom = (rounded(v) for v in (x - reach, x + reach, y - reach, y + reach))
    if shape.endswith("dot"):
        return svg.Circle(cx=rounded(x), cy=rounded(y), r=rounded(reach), fill=paint)
    if shape.endswith("square"):
        outline = f"M{left} {top}H{right}V{bottom}H{left}z"
    elif shape.endswith("hanging triangle"):
        outline = f"M{left} {top}H{right}L{rounded(x)} {bottom}z"
    else:
        outline = f"M{left} {bottom}H{right}L{rounded(x)} {top}z"
    if shape.startswith("open"):
        return svg.Path(extra={"d": outline}, fill="none", stroke=paint, stroke_width=rounded(max(0.5, reach * 0.35)))
    return svg.Path(extra={"d": outline}, fill=paint)
