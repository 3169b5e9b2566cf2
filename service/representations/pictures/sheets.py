"""Pictures on sheets: a heading that says what is drawn, the drawing, and an imprint that says what made it.

A picture has one sheet as large as it takes, or sheets of paper that a printer puts out one by one. As a file they
stand one below the other; a page of HTML has each by itself. Sizes are in pixels, of which 96 make an inch.
"""

from __future__ import annotations

from collections.abc import Iterator, Mapping, Sequence
from dataclasses import dataclass
from itertools import chain
from math import inf
from types import MappingProxyType

import svg

from grading_core.pullover.pictures import Paper
from grading_core.sentences import COUNT, TEXT, Saying, Sentence
from service import VERSION
from service.language import language
from service.language import text as said
from service.origin import input_digest
from service.representations.pictures.drawing import rounded, safe, text
from service.representations.pictures.lettering import wrapped

IMPRINT = Saying("picture.imprint", version=TEXT, digest=TEXT)
SHEET = Saying("picture.sheet", number=COUNT, sheets=COUNT)

_PIXELS_PER_MM = 96 / 25.4

_MM: Mapping[Paper, tuple[float, float]] = MappingProxyType({"a4": (210, 297), "letter": (215.9, 279.4)})
"""Of sheets, ISO 216 and ANSI/ASME Y14.1: width and height."""

_MARGIN = 38
"""Of paper: the centimetre that printers need."""

_EDGE = 24
"""Round a picture that isn't on paper."""

_TITLE_SIZE, _LINE_SIZE, _IMPRINT_SIZE = 18, 12, 9
_TITLE_LINE, _LINE, _IMPRINT_LINE = 22, 16, 12

_NARROWEST = 560
"""Of a sheet that isn't paper: its imprint is to find room."""


@dataclass(frozen=True, slots=True)
class Heading:
    """What stands above a drawing on every sheet. title: what is shown. lines: below it."""

    title: str
    lines: Sequence[str]


@dataclass(frozen=True, slots=True, kw_only=True)
class Drawing:
    """What stands on one sheet between heading and imprint, drawn from its upper left corner on."""

    width: float
    height: float
    elements: Sequence[svg.Element]


@dataclass(frozen=True, slots=True, kw_only=True)
class Picture:
    """A picture, not yet on paper.

    key: by which its parts are told apart from those of other pictures on a page. heading: of every sheet. about: what
    it shows, for those who cannot see it. definitions: of the patterns, clippings and masks of all drawings. drawings:
    one a sheet.
    """

    key: str
    heading: Heading
    about: Sequence[Sentence]
    definitions: Sequence[svg.Element] = ()
    drawings: Sequence[Drawing]


@dataclass(frozen=True, slots=True)
class Room:
    """What a drawing may take up; a height may be without end."""

    width: float
    height: float


def room(paper: Paper, heading: Heading) -> Room:
    """What a drawing on a sheet may take up.

    paper: that the picture is laid out for. heading: of every sheet.
    """
    if paper == "single":
        return Room(900, inf)
    width, height = _sheet(paper)
    width -= 2 * _MARGIN
    return Room(width, height - 2 * _MARGIN - _heading(heading, width).height - _imprint_height())


def picture_file(picture: Picture, paper: Paper) -> str:
    """The picture as a file: its sheets one below the other, which a printer puts out one by one."""
    sheets = [*_sheets(picture, paper)]
    width = max(sheet.width for sheet in sheets)
    height = sum(sheet.height for sheet in sheets)
    elements: list[svg.Element] = []
    if paper != "single":
        page = f"@page{{size:{_MM[paper][0]}mm {_MM[paper][1]}mm;margin:0}}"
        elements.append(svg.Style(text=page))
    elements.append(svg.Defs(elements=list(picture.definitions)))
    top = 0.0
    for sheet in sheets:
        elements.append(svg.G(transform=[svg.Translate(0, rounded(top))], elements=list(sheet.elements)))
        top += sheet.height
    return _svg(picture, width, height, elements, paper, len(sheets)).as_str()


def picture_parts(picture: Picture, paper: Paper) -> list[str]:
    """The picture for a page of HTML: each sheet's drawing by itself, without heading and imprint, which the page has.

    The first one has the definitions for all.
    """
    parts = []
    for number, drawing in enumerate(picture.drawings):
        definitions = [svg.Defs(elements=list(picture.definitions))] if number == 0 else []
        elements = [*definitions, *drawing.elements]
        parts.append(_svg(picture, drawing.width, drawing.height, elements, "single", 1, number).as_str())
    return parts


def _svg(
    picture: Picture,
    width: float,
    height: float,
    elements: Sequence[svg.Element],
    paper: Paper,
    sheets: int,
    part: int = 0,
) -> svg.SVG:
    tag, key = language().tag, picture.key if part == 0 else f"{picture.key}-{part}"
    in_mm = None if paper == "single" else (_MM[paper][0], _MM[paper][1] * sheets)
    return svg.SVG(
        viewBox=svg.ViewBoxSpec(0, 0, rounded(width), rounded(height)),
        width=rounded(width) if in_mm is None else svg.Length(in_mm[0], "mm"),
        height=rounded(height) if in_mm is None else svg.Length(in_mm[1], "mm"),
        lang=tag,
        extra={
            "xml:lang": tag,
            "font-family": "sans-serif",
            "role": "img",
            "aria-labelledby": f"{key}-title {key}-desc",
        },
        elements=[
            svg.Title(id=f"{key}-title", text=safe(picture.heading.title)),
            svg.Desc(id=f"{key}-desc", text=safe(" ".join(map(said, picture.about)))),
            *elements,
        ],
    )


def _sheets(picture: Picture, paper: Paper) -> Iterator[Drawing]:
    """Each drawing with heading and imprint round it."""
    many = len(picture.drawings)
    for number, drawing in enumerate(picture.drawings, 1):
        if paper == "single":
            edge, inner = _EDGE, max(drawing.width, _NARROWEST)
            heading = _heading(picture.heading, inner)
            width, height = inner + 2 * edge, heading.height + drawing.height + _imprint_height() + 2 * edge
        else:
            (width, height), edge = _sheet(paper), _MARGIN
            heading = _heading(picture.heading, width - 2 * edge)
        below = rounded(edge + heading.height)
        yield Drawing(
            width=width,
            height=height,
            elements=[
                svg.G(transform=[svg.Translate(edge, edge)], elements=list(heading.elements)),
                svg.G(transform=[svg.Translate(edge, below)], elements=list(drawing.elements)),
                *_imprint(edge, width - edge, height - edge, number, many),
            ],
        )


def _heading(heading: Heading, width: float) -> Drawing:
    """The title and what is said below it, in as many lines as they need."""
    drawn: list[svg.Element] = []
    y = 0
    for line in wrapped(heading.title, width, _TITLE_SIZE):
        y += _TITLE_LINE
        drawn.append(text(line, 0, y - 4, _TITLE_SIZE, font_weight="bold"))
    y += 4
    for part in chain.from_iterable(wrapped(line, width, _LINE_SIZE) for line in heading.lines):
        y += _LINE
        drawn.append(text(part, 0, y - 4, _LINE_SIZE))
    return Drawing(width=width, height=y + 14, elements=drawn)


def _imprint(left: float, right: float, bottom: float, number: int, many: int) -> Iterator[svg.Element]:
    """What made the picture, and which sheet of how many it is."""
    yield text(IMPRINT(version=VERSION, digest=input_digest()), left, bottom - 2, _IMPRINT_SIZE)
    if many > 1:
        yield text(SHEET(number=number, sheets=many), right, bottom - 2, _IMPRINT_SIZE, anchor="end")


def _imprint_height() -> float:
    return _IMPRINT_LINE + 10


def _sheet(paper: Paper) -> tuple[float, float]:
    width, height = _MM[paper]
    return width * _PIXELS_PER_MM, height * _PIXELS_PER_MM
