"""A chart in its colours and, beside it, in greys of the same lightness: what a grey photograph of the fabric shows.

Stitches are squares. No marks tell like greys apart, as in other pictures: that they look alike is what is shown.
"""

from __future__ import annotations

from collections.abc import Mapping
from zlib import crc32

import svg

from grading_core.chart.grid import Chart
from grading_core.chart.lightness import tenths
from grading_core.chart.result import ColourContrasts, ComparedColour
from grading_core.chart.views import ContrastView
from grading_core.sentences import COUNT, NUMBER, TEXT, Saying, Sentence
from service.language import text as said
from service.lengths import LengthWriter
from service.representations.pictures.chart.grid import DIMENSIONS
from service.representations.pictures.drawing import LEGEND_LINE, TEXT_COLOUR, Ink, rounded, stitches, text
from service.representations.pictures.lettering import width_of
from service.representations.pictures.sheets import Drawing, Heading, Picture, picture_file

TITLE = Saying("picture.contrast")
IN_COLOURS, IN_GREYS = Saying("picture.in_colours"), Saying("picture.in_greys")
LIGHTNESS = Saying("picture.lightness", colour=TEXT, lightness=NUMBER)
HARDLY = Saying("picture.hardly_apart", first=TEXT, second=TEXT, difference=NUMBER)
CHART = Saying("picture.contrast_described", columns=COUNT, rows=COUNT)

_ROOM, _WIDEST, _NARROWEST = 420, 16, 2
"""The width in pixels that each chart should take up, and a stitch's between these."""

_TOP, _BETWEEN, _BELOW = 20, 28, 30
_CAPTION, _SIZE = 150, 12
"""Pixels that a chart's caption and a letter of the legend take up."""

_SWATCH, _SWATCH_HEIGHT = 34, 14


def contrast_picture(view: ContrastView, _: LengthWriter) -> str:
    """The picture as SVG."""
    contrasts, chart = view.contrasts, view.chart
    used = set().union(*chart.rows) if chart else contrasts.colours.keys()
    colours = {symbol: colour for symbol, colour in contrasts.colours.items() if symbol in used}
    key = f"contrast-{crc32(repr((chart and chart.rows, colours)).encode()):08x}"
    charts, width, foot = _charts(chart, colours, key) if chart else ([], 0.0, LEGEND_LINE / 2)
    of_colours = [LIGHTNESS(colour=each.name, lightness=tenths(each.lightness)) for each in colours.values()]
    of_pairs = _hardly(contrasts)
    start = 2 * _SWATCH + 10
    lines = [(start, sentence) for sentence in of_colours] + [(0, sentence) for sentence in of_pairs]
    legend: list[svg.Element] = [
        *(text(sentence, indent, LEGEND_LINE * n + 4, _SIZE) for n, (indent, sentence) in enumerate(lines)),
        *(
            _swatch(hex, _SWATCH * place, LEGEND_LINE * n)
            for n, colour in enumerate(colours.values())
            for place, hex in enumerate((colour.hex, colour.grey))
        ),
    ]
    size = {"columns": chart.width, "rows": chart.height} if chart else {}
    picture = Picture(
        key=key,
        heading=Heading(said(TITLE()), [said(DIMENSIONS(**size))] if chart else []),
        about=[*([CHART(**size)] if chart else []), *of_colours, *of_pairs],
        drawings=[
            Drawing(
                width=max(width, *(indent + width_of(said(sentence), _SIZE) for indent, sentence in lines)),
                height=foot + LEGEND_LINE * len(lines),
                elements=[*charts, svg.G(transform=[svg.Translate(0, rounded(foot))], elements=legend)],
            )
        ],
    )
    return picture_file(picture, "single")


def _charts(chart: Chart, colours: Mapping[str, ComparedColour], key: str) -> tuple[list[svg.Element], float, float]:
    """The chart twice, side by side, with captions; how wide both are, and where what is below them begins."""
    cell = max(_NARROWEST, min(_WIDEST, _ROOM / chart.width))
    width, height = chart.width * cell, chart.height * cell
    second = max(width, _CAPTION) + _BETWEEN
    rows = [(0, row, text) for row, text in enumerate(chart.rows)]
    drawn: list[svg.Element] = []
    for x, caption, inks in (
        (0, IN_COLOURS(), {symbol: Ink(colour.hex) for symbol, colour in colours.items()}),
        (second, IN_GREYS(), {symbol: Ink(colour.grey) for symbol, colour in colours.items()}),
    ):
        frame = svg.Rect(width=rounded(width), height=rounded(height), fill="none", stroke=TEXT_COLOUR)
        scaled = svg.G(
            transform=[svg.Scale(rounded(cell))],
            extra={"shape-rendering": "crispEdges"},
            elements=stitches(rows, inks, key),
        )
        drawn.append(
            svg.G(transform=[svg.Translate(rounded(x), _TOP)], elements=[text(caption, 0, -10, _SIZE), scaled, frame])
        )
    return drawn, second + max(width, _CAPTION), _TOP + height + _BELOW


def _hardly(contrasts: ColourContrasts) -> list[Sentence]:
    """The pairs that hardly read apart."""
    names = {symbol: colour.name for symbol, colour in contrasts.colours.items()}
    return [
        HARDLY(first=names[first], second=names[second], difference=tenths(pair.difference))
        for pair in contrasts.low
        for first, second in [pair.colours]
    ]


def _swatch(hex: str, x: float, y: float) -> svg.Rect:
    return svg.Rect(x=x, y=y - _SWATCH_HEIGHT / 2, width=_SWATCH, height=_SWATCH_HEIGHT, fill=hex, stroke=TEXT_COLOUR)
