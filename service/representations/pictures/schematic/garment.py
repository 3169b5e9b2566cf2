"""The garment of a schematic: the outlines of all sizes, and the dimensions of one of them with their names."""

from __future__ import annotations

from collections.abc import Iterable, Iterator, Mapping, Sequence
from dataclasses import dataclass
from itertools import pairwise
from math import dist, hypot

import svg

from grading_core.pullover.result import KnittedSize, Row
from grading_core.sentences import TEXT, Saying
from service.language import text as said
from service.representations.pictures.drawing import TEXT_COLOUR, rounded, text
from service.representations.pictures.lettering import width_of
from service.representations.pictures.schematic.dimensions import Dimension, dimensions
from service.representations.pictures.schematic.labels import Box, Place, Point, along, around, best_place
from service.representations.pictures.schematic.legend import RING, letter_ring
from service.representations.pictures.schematic.outline import Outline, evenly, mirrored

CM = Saying("schematic.cm", number=TEXT)
INCHES = Saying("schematic.inches", number=TEXT)

_TOP, _BOTTOM, _LEFT, _RIGHT = 34, 36, 26, 84
"""Round the garment: for what lies beside it."""

_RIGHT_OF_MANY = 34
_SIZE, _LABEL = 10.5, 12
_MOST_LABELS = 12
"""Sizes that are named at their outlines."""

_BOLD, _MIDDLE, _THIN, _HAIR = 1.8, 1.2, 0.8, 0.6
_DASHES = [5.0, 3.0]
_BENT = 4
"""Points that a line has at the most, unless it is a curve, which has its name at its middle."""

_RIB = 6
"""From one fine line of a rib to the next."""


KEY = "schematic"


@dataclass(frozen=True, slots=True, kw_only=True)
class Sizes:
    """What is drawn.

    shapes: the outlines by label. drawn: the label of that with its measurements, which are those of size. rows: of the
    table. column: of the size in them, where its values stand beside the lines; None for the letters alone.
    """

    shapes: Mapping[str, Outline]
    drawn: str
    size: KnittedSize
    rows: Sequence[Row]
    column: int | None

    @property
    def smallest(self) -> str:
        """The label of the narrowest body."""
        return min(self.shapes, key=lambda label: self.shapes[label].underarm[0])

    def of(self, dimension: Dimension) -> list[Row]:
        """The rows of the table that a line shows."""
        return [row for row in self.rows if row.letter and row.item in dimension.items]


@dataclass(frozen=True, slots=True)
class Garment:
    """The drawing. mask: keeps its lines out of names. scale: pixels of a cm. bottom: where it ends."""

    mask: svg.Mask
    elements: list[svg.Element]
    scale: float
    bottom: float


@dataclass(frozen=True, slots=True, kw_only=True)
class _View:
    """The garment on the sheet: where a place of the outline lies, in pixels.

    left, top: of the outlines' box, in cm. scale: pixels of a cm. frame: of the whole.
    """

    left: float
    top: float
    scale: float
    frame: Box

    @classmethod
    def of(cls, sizes: Sizes, width: float, height: float) -> _View:
        """The largest that a width and a height hold."""
        lefts, rights, tops, bottoms = zip(*(shape.box for shape in sizes.shapes.values()), strict=True)
        left, right, top, bottom = min(lefts), max(rights), min(tops), max(bottoms)
        beside, over = _LEFT + (_RIGHT_OF_MANY if sizes.column is None else _RIGHT), _TOP + _BOTTOM
        scale = min((width - beside) / (right - left), (height - over) / (bottom - top))
        more = (width - beside) / scale - (right - left)
        frame = Box(0, 0, width, (bottom - top) * scale + over)
        return cls(left=left - more / 2, top=top, scale=scale, frame=frame)

    def at(self, point: Point) -> Point:
        return _LEFT + (point[0] - self.left) * self.scale, _TOP + (point[1] - self.top) * self.scale

    def all_at(self, points: Iterable[Point]) -> list[Point]:
        return [self.at(point) for point in points]


@dataclass(frozen=True, slots=True)
class _Name:
    """The name of a dimension: its letters, and below one another what it measures."""

    letters: tuple[str, ...]
    values: tuple[str, ...]

    @property
    def width(self) -> float:
        wide = max((width_of(value, _SIZE) for value in self.values), default=0)
        return self.head + (wide + 5 if wide else 0)

    @property
    def head(self) -> float:
        return len(self.letters) * (2 * RING + 2)

    @property
    def height(self) -> float:
        return max(2 * RING + 2, len(self.values) * _LABEL + 2)

    def places(self, dimension: Dimension, line: Sequence[Point]) -> Iterator[Place]:
        if dimension.shown == "around":
            return around(line[0], self.width, self.height)
        if len(line) > _BENT:
            middle = len(line) // 2
            line = line[middle - 1], line[middle + 1]
        return along(line, self.width, self.height, 2 * RING + 2)

    def elements(self, place: Place) -> Iterator[svg.Element]:
        left, middle = place.box.left, place.box.top + place.box.height / 2
        for number, letter in enumerate(self.letters):
            yield from letter_ring(letter, left + RING + 1 + number * (2 * RING + 2), middle)
        for number, value in enumerate(self.values):
            below = (number - (len(self.values) - 1) / 2) * _LABEL
            yield text(value, left + self.head + 4, middle + below + 3.8, _SIZE)
        if place.leader:
            yield _line(place.leader, _HAIR)


def garment(sizes: Sizes, width: float, height: float) -> Garment:
    """The outlines with dimensions and their names.

    width, height: in pixels, which it had better not exceed.
    """
    view, shape = _View.of(sizes, width, height), sizes.shapes[sizes.drawn]
    found = dimensions(sizes.size, shape, 1 / view.scale)
    taken: list[Box] = []
    named: list[svg.Element] = []
    if 1 < len(sizes.shapes) <= _MOST_LABELS:
        for box, elements in _size_labels(sizes.shapes, view):
            taken.append(box)
            named += elements
    edges = [[*shape.silhouette, shape.silhouette[0]], *_inner_edges(shape), *(each.line for each in found)]
    lined = [segment for edge in edges for segment in pairwise(view.all_at(edge))]
    for dimension in found:
        name, line = _name(dimension, sizes), view.all_at(dimension.line)
        own = {*pairwise(line)}
        others = [segment for segment in lined if segment not in own]
        place = best_place(name.places(dimension, line), taken, others, view.frame)
        taken.append(place.box)
        named += name.elements(place)
    lines = [*_others(sizes, view), *_largest(shape, view)]
    for dimension in found:
        lines += _dimension(dimension, [row.letter for row in sizes.of(dimension)], view)
    return Garment(
        _mask(taken, view.frame),
        [svg.G(mask=f"url(#{KEY}-names)", elements=lines), *named],
        view.scale,
        max(view.frame.bottom, *(box.bottom for box in taken)),
    )


def _others(sizes: Sizes, view: _View) -> Iterator[svg.Element]:
    """The sizes without their measurements."""
    for label, shape in sizes.shapes.items():
        if label != sizes.drawn:
            yield _path(view.all_at(shape.silhouette), _THIN, closed=True, dashed=label == sizes.smallest)


def _inner_edges(shape: Outline) -> Iterator[list[Point]]:
    """What is seen of a size inside its silhouette: neck and band, raglan lines, and where ribs begin."""
    yield shape.neck.front_edge()
    yield [*shape.band.front_edge()]
    yield [*shape.band.back_edge()]
    for side in (lambda point: point), mirrored:
        yield [side(shape.neck.side), side(shape.band.side)]
        yield [side(shape.neck.front), side(shape.raglan), side(shape.underarm)]
        cuff, width = shape.sleeve[-2]
        yield [side(shape.on_sleeve(cuff, 0)), side(shape.on_sleeve(cuff, width))]
    hem = shape.body[-2]
    yield [mirrored(hem), hem]


def _largest(shape: Outline, view: _View) -> Iterator[svg.Element]:
    yield _path(view.all_at(shape.silhouette), _BOLD, closed=True)
    for edge in _inner_edges(shape):
        yield _path(view.all_at(edge), _MIDDLE)
    yield from _ribs(shape, view)


def _ribs(shape: Outline, view: _View) -> Iterator[svg.Element]:
    """Fine lines along the ribs of hem, cuffs and neckband."""
    (top_x, top_y), (end_x, end_y) = shape.body[-2:]
    (cuff, wide), (end, narrow) = shape.sleeve[-2:]
    corners = [shape.on_sleeve(*place) for place in ((cuff, 0.0), (cuff, wide), (end, 0.0), (end, narrow))]
    hem = [(-top_x, top_y), (top_x, top_y), (-end_x, end_y), (end_x, end_y)]
    segments: list[tuple[Point, ...]] = []
    for first, second, below_first, below_second in (hem, corners, [*map(mirrored, corners)]):
        many = max(2, round(dist(first, second) * view.scale / _RIB))
        segments += zip(evenly([first, second], many), evenly([below_first, below_second], many), strict=True)
    edges = shape.neck.front_edge(), shape.band.front_edge()
    many = max(2, round(2 * shape.neck.side[0] * view.scale / _RIB))
    segments += zip(*(evenly(edge, many) for edge in edges), strict=True)
    drawn = "".join(_moves(view.all_at(segment)) for segment in segments)
    yield svg.Path(extra={"d": drawn}, stroke=TEXT_COLOUR, stroke_width=_HAIR, stroke_opacity=0.45)


def _dimension(dimension: Dimension, letters: Sequence[str | None], view: _View) -> Iterator[svg.Element]:
    if dimension.shown == "around":
        x, y = view.at(dimension.line[0])
        yield svg.Circle(cx=rounded(x), cy=rounded(y), r=2.2, fill=TEXT_COLOUR)
        return
    line = view.all_at(dimension.line)
    yield svg.Polyline(
        points=[svg.Point(rounded(x), rounded(y)) for x, y in line],
        class_=[f"shown-{dimension.shown}", *(f"measures-{letter}" for letter in letters)],
        fill="none",
        stroke=TEXT_COLOUR,
        stroke_width=_THIN,
    )
    for end, before in ((line[0], line[1]), (line[-1], line[-2])):
        yield _arrow(end, before)
    for extension in dimension.extensions:
        yield _line(view.all_at(extension), _HAIR)


def _arrow(end: Point, before: Point) -> svg.Element:
    """An arrow's head; on a line that is too short for two of them a small one."""
    across, down = end[0] - before[0], end[1] - before[1]
    length = hypot(across, down) or 1
    long = min(7.0, length / 2.5)
    across, down = across / length * long, down / length * long
    x, y = end[0] - across, end[1] - down
    corners = (end, (x - down * 0.33, y + across * 0.33), (x + down * 0.33, y - across * 0.33))
    return svg.Polygon(points=[svg.Point(rounded(x), rounded(y)) for x, y in corners], fill=TEXT_COLOUR)


def _name(dimension: Dimension, sizes: Sizes) -> _Name:
    """Letters, and the values of one size."""
    rows, column = sizes.of(dimension), sizes.column
    letters = tuple(row.letter or "" for row in rows)
    if column is None:
        return _Name(letters, ())
    inches = rows[0].printed_inch or ()
    return _Name(letters, (said(CM(number=rows[0].printed[column])), said(INCHES(number=inches[column]))))


def _size_labels(shapes: Mapping[str, Outline], view: _View) -> Iterator[tuple[Box, list[svg.Element]]]:
    """The label of each size, with a line to its side."""
    rising = sorted(shapes.items(), key=lambda item: item[1].underarm[0])
    x = view.at((max(place for shape in shapes.values() for place, _ in shape.body), 0))[0] + 26
    widest_label = max(width_of(label, _SIZE) for label in shapes)
    below = max(_under_sleeves(shape, x + widest_label, view) for shape in shapes.values()) + 10
    bottom = max(view.at(shape.body[-1])[1] for shape in shapes.values())
    top = max(below, (below + bottom - _LABEL * len(rising)) / 2)
    for number, (label, shape) in enumerate(rising):
        y = top + _LABEL * (number + 0.5)
        side = _side_at(shape, y, view)
        yield (
            Box(x + 2, y - 6, width_of(label, _SIZE) + 4, _LABEL),
            [
                text(label, x + 4, y + 3.8, _SIZE),
                _line(((x, y), side), _HAIR),
                svg.Circle(cx=rounded(side[0]), cy=rounded(side[1]), r=2, fill=TEXT_COLOUR),
            ],
        )


def _under_sleeves(shape: Outline, x: float, view: _View) -> float:
    """Where the line below a sleeve is, so far to the right."""
    start, across = view.at(shape.underarm), shape.along
    return start[1] + max(x - start[0], 0) * across[1] / across[0]


def _side_at(shape: Outline, y: float, view: _View) -> Point:
    """Where the right side of the body is at a height of the picture, or as near to it as it reaches."""
    body = view.all_at(shape.body[:-1])
    y = min(max(y, body[0][1] + _LABEL), body[-1][1] - 2)
    for start, end in pairwise(body):
        if y <= end[1]:
            part = (y - start[1]) / ((end[1] - start[1]) or 1)
            return start[0] + part * (end[0] - start[0]), y
    return body[-1]


def _mask(boxes: Iterable[Box], frame: Box) -> svg.Mask:
    """Leaves lines out where names are."""
    whole = {"x": -10, "y": -10, "width": rounded(frame.width + 20), "height": rounded(frame.height + 20)}
    return svg.Mask(
        id=f"{KEY}-names",
        maskUnits="userSpaceOnUse",
        **whole,  # type: ignore[arg-type]
        elements=[
            svg.Rect(**whole, fill="white"),  # type: ignore[arg-type]
            *(
                svg.Rect(
                    x=rounded(box.left - 1),
                    y=rounded(box.top - 1),
                    width=rounded(box.width + 2),
                    height=rounded(box.height + 2),
                    rx=6,
                    fill="black",
                )
                for box in boxes
            ),
        ],
    )


def _path(points: Sequence[Point], width: float, *, closed: bool = False, dashed: bool = False) -> svg.Path:
    return svg.Path(
        extra={"d": _moves(points) + ("z" if closed else "")},
        fill="none",
        stroke=TEXT_COLOUR,
        stroke_width=width,
        stroke_linejoin="round",
        stroke_dasharray=_DASHES if dashed else None,  # type: ignore[arg-type]
    )


def _line(ends: Sequence[Point], width: float) -> svg.Path:
    return svg.Path(extra={"d": _moves(ends)}, stroke=TEXT_COLOUR, stroke_width=width)


def _moves(points: Sequence[Point]) -> str:
    return "M" + "L".join(f"{rounded(x)} {rounded(y)}" for x, y in points)
