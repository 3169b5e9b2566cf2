"""The schematic of a pullover: its outline flat, with every measurement of its table."""

from __future__ import annotations

from collections.abc import Iterator, Mapping, Sequence
from statistics import median

import svg

from grading_core.fraction import Fraction
from grading_core.pullover.pictures import PicturedPullover
from grading_core.pullover.result import KnittedSize, Row
from grading_core.sentences import LENGTH, NAMES, NUMBER, SENTENCE, TEXT, TOKEN, Saying, Sentence
from grading_core.units import exact
from service.language import text as said
from service.lengths import LengthWriter
from service.representations.pictures.drawing import TEXT_COLOUR, rounded, text
from service.representations.pictures.heading import heading
from service.representations.pictures.lettering import wrapped
from service.representations.pictures.schematic.garment import KEY, Garment, Sizes, garment
from service.representations.pictures.schematic.legend import Line, legend, legend_lines
from service.representations.pictures.schematic.outline import outline
from service.representations.pictures.sheets import Drawing, Picture, Room, room

TITLE = Saying("picture.schematic")
SCALE = Saying("picture.scale", cm=NUMBER, inch=NUMBER)
OUTLINE = Saying("schematic.outline", sizes=TOKEN)
MEASURED = Saying("schematic.measured", letter=TEXT, title=SENTENCE, length=LENGTH)
UNLETTERED = Saying("schematic.unlettered", title=SENTENCE, length=LENGTH)
DRAWN = Saying("schematic.drawn", size=TEXT, smallest=TEXT)
FLAT = Saying("schematic.flat", letters=NAMES)
AS_WORN = Saying("schematic.as_worn", letter=TEXT)

_MOST_HEIGHT, _LEAST_HEIGHT = 620, 230
"""Of the garment: on a sheet without end, and on one that its legend needs."""

_SIZE, _LINE = 10.5, 13
_ROUND_NOTES, _BELOW_NOTES = 24, 10
_SCALE_ROOM = 190


def schematic(view: PicturedPullover, length: LengthWriter, *, alone: bool = True) -> Picture:
    """The picture.

    view: what is drawn. length: writes lengths. alone: whether it brings along what its letters mean, which a page has
    in a table of its own.
    """
    knit, above = view.knitted, heading(view, TITLE())
    rows = [row for row in view.pullover.table if row.part == "to_fit" or row.letter]
    sizes = _sizes(knit, rows, view.pullover.labels) if knit else None
    space = room(view.picture.page, above)
    drawn = garment(sizes, space.width, _height(sizes, space)) if sizes else None
    return Picture(
        key=KEY,
        heading=above,
        about=[*_described(sizes)] if sizes else [],
        definitions=[drawn.mask] if drawn else [],
        drawings=[*_drawings(sizes, drawn, space, length, alone=alone)] if sizes and drawn else [_NOTHING],
    )


_NOTHING = Drawing(width=0, height=0, elements=[])


def _sizes(knit: Mapping[str, KnittedSize], rows: Sequence[Row], labels: Sequence[str]) -> Sizes:
    """The outlines, all with sleeves that spread as much, and the largest size for its measurements."""
    angle = median(outline(size).angle for size in knit.values())
    drawn = max(knit, key=lambda label: (knit[label].finished.bust, knit[label].finished.total_length))
    return Sizes(
        shapes={label: outline(size, angle) for label, size in knit.items()},
        drawn=drawn,
        size=knit[drawn],
        rows=rows,
        column=labels.index(drawn) if len(knit) == 1 else None,
    )


def _height(sizes: Sizes, space: Room) -> float:
    """What the garment may take up, so that the legend finds room below it."""
    room = space.height - _LINE * len(_note_lines(sizes, space)) - _ROUND_NOTES
    left = room - sum(line.height for line in legend_lines(sizes.rows, space.width, room - _LEAST_HEIGHT))
    return min(_MOST_HEIGHT, max(left, _LEAST_HEIGHT))


def _note_lines(sizes: Sizes, space: Room) -> list[str]:
    return [line for note in _notes(sizes) for line in wrapped(said(note), space.width - _SCALE_ROOM, _SIZE)]


def _drawings(sizes: Sizes, drawn: Garment, space: Room, length: LengthWriter, *, alone: bool) -> Iterator[Drawing]:
    """The garment with as much of the legend as finds room below it, and the rest on further sheets."""
    width, foot, notes = space.width, drawn.bottom + _ROUND_NOTES - _BELOW_NOTES, _note_lines(sizes, space)
    elements = [*drawn.elements, *_scale(drawn.scale, foot, width, length)]
    elements += [text(note, 0, foot + _LINE * number, _SIZE) for number, note in enumerate(notes, 1)]
    top = foot + _LINE * len(notes) + _BELOW_NOTES
    if not alone:
        yield Drawing(width=width, height=top, elements=elements)
        return
    head, *rest = legend_lines(sizes.rows, width, space.height - top)
    while rest:
        fitting = _fitting(rest, space.height - top - head.height)
        shown = [head, *rest[:fitting]]
        bottom = top + sum(line.height for line in shown)
        yield Drawing(width=width, height=bottom, elements=[*elements, *legend(shown, width, top)])
        elements, top, rest = [], 0.0, rest[fitting:]


def _fitting(lines: Sequence[Line], height: float) -> int:
    """How many of the lines go into a height, one of them at least."""
    for number, line in enumerate(lines):
        height -= line.height
        if height < 0:
            return max(number, 1)
    return len(lines)


def _scale(scale: float, top: float, width: float, length: LengthWriter) -> Iterator[svg.Element]:
    """How long 10 cm are.

    scale: pixels of a cm.
    """
    cm = Fraction(10)
    left, right = rounded(width - 10 * scale), rounded(width)
    yield svg.Polyline(
        points=[svg.Point(left, rounded(top - 4)), svg.Point(right, rounded(top - 4))],
        class_=["scale"],
        stroke=TEXT_COLOUR,
        stroke_width=1.5,
    )
    ticks = f"M{left} {rounded(top - 8)}v8M{right} {rounded(top - 8)}v8"
    yield svg.Path(extra={"d": ticks}, stroke=TEXT_COLOUR, stroke_width=1.5)
    yield text(SCALE(cm=cm, inch=exact(length(cm)["inch"])), left - 8, top, _SIZE, anchor="end")


def _notes(sizes: Sizes) -> Iterator[Sentence]:
    if len(sizes.shapes) > 1:
        yield DRAWN(size=sizes.drawn, smallest=sizes.smallest)
    letters = {row.item: row.letter for row in sizes.rows if row.letter}
    yield FLAT(letters=tuple(letters[item] for item in ("bust", "upper_arm", "underarm", "hem", "wrist")))
    yield AS_WORN(letter=letters["reach"])


def _described(sizes: Sizes) -> Iterator[Sentence]:
    """The picture in words."""
    yield OUTLINE(sizes="one" if len(sizes.shapes) == 1 else "several")
    for row in sizes.rows:
        values = row.values[0] if len(row.values) == 1 else row.values
        if row.letter:
            yield MEASURED(letter=row.letter, title=row.title, length=values)
        else:
            yield UNLETTERED(title=row.title, length=values)
