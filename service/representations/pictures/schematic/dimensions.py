"""Where a schematic shows each finished measurement on the outline, in cm as the outline has it."""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import dataclass
from math import cos, pi, sin
from typing import Literal

from grading_core.pullover.result import KnittedSize
from service.representations.pictures.schematic.outline import Outline, Point, mirrored

_FROM_CENTRE = 0.25
"""Where lengths down the front are drawn, as a part of its half."""

_EXTRA_BELOW = 0.2
"""Where the front's extra width is drawn, as a part of the body's length."""

_ARC_STEPS = 24

Shown = Literal["length", "half", "path", "around"]
"""How a line shows its measurement: as long as it; half as long, for what lies flat; along a way that the garment takes
as it is worn; or not at all, but the edge that is measured around."""


@dataclass(frozen=True, slots=True, kw_only=True)
class Dimension:
    """A line that shows measurements.

    items: of the table, that it shows. shown: how. line: its points; of an edge the one point that is pointed at.
    extensions: lines from the garment to its ends, where it lies beside.
    """

    items: tuple[str, ...]
    shown: Shown
    line: tuple[Point, ...]
    extensions: tuple[tuple[Point, Point], ...] = ()


def dimensions(size: KnittedSize, drawn: Outline, pixel: float) -> tuple[Dimension, ...]:
    """Every measurement of a size, those with least room for their names first.

    drawn: its outline. pixel: of the picture, in cm.
    """
    return tuple(_dimensions(size, drawn, pixel))


def _dimensions(size: KnittedSize, drawn: Outline, pixel: float) -> Iterator[Dimension]:
    finished = size.finished
    (side, depth), neck = drawn.underarm, drawn.neck
    bottom, hem, wrist, length = drawn.body[-1][1], drawn.body[-1][0], drawn.sleeve[-1][1], drawn.sleeve[-1][0]
    middle = min(_FROM_CENTRE * side, neck.front[0] / 2, neck.back[0] / 2)

    above = depth - 9 * pixel
    yield Dimension(
        items=("underarm",),
        shown="half",
        line=((-side, above), (-drawn.raglan[0], above)),
        extensions=(((-side, depth), (-side, above)), ((-drawn.raglan[0], depth), (-drawn.raglan[0], above))),
    )
    beyond = length + 14 * pixel
    ends = drawn.on_sleeve(beyond, wrist), drawn.on_sleeve(beyond, 0)
    yield Dimension(
        items=("wrist",),
        shown="half",
        line=ends,
        extensions=((drawn.on_sleeve(length, wrist), ends[0]), (drawn.on_sleeve(length, 0), ends[1])),
    )
    if finished.front_extra:
        half, down = float(abs(finished.front_extra)) / 2, depth + _EXTRA_BELOW * float(finished.body_length)
        beside = -(side + middle) / 2
        yield Dimension(items=("front_extra",), shown="length", line=((beside - half, down), (beside + half, down)))
    yield Dimension(items=("upper_arm",), shown="half", line=(drawn.underarm, drawn.on_sleeve(0, 0)))
    yield Dimension(items=("band",), shown="around", line=(mirrored(_halfway(drawn.band.front_edge())),))
    yield Dimension(items=("neck",), shown="around", line=(mirrored(_halfway(neck.front_edge())),))
    yield Dimension(items=("depth",), shown="length", line=((middle, 0.0), (middle, depth)))
    end = _moved(drawn.underarm, drawn.along, length)
    yield Dimension(
        items=("sleeve_length",),
        shown="length",
        line=(drawn.underarm, end),
        extensions=((drawn.on_sleeve(length, wrist), end),),
    )
    yield Dimension(items=("bust",), shown="half", line=((-side, depth), (side, depth)))
    below = bottom + 16 * pixel
    yield Dimension(
        items=("hem",),
        shown="half",
        line=((-hem, below), (hem, below)),
        extensions=(((-hem, bottom), (-hem, below)), ((hem, bottom), (hem, below))),
    )
    bowed = float(finished.front_length)
    same = finished.front_length == finished.body_length
    yield Dimension(
        items=("body_length", "front_length") if same else ("body_length",),
        shown="length",
        line=((middle, depth), (middle, bottom)),
    )
    if not same:
        yield Dimension(
            items=("front_length",), shown="length", line=tuple(_bowed((2 * middle, depth), bottom - depth, bowed))
        )
    yield Dimension(items=("total_length",), shown="length", line=((-middle, neck.back[1]), (-middle, bottom)))
    over = tuple(_reach(drawn, 14 * pixel))
    end = drawn.on_sleeve(length, 0)
    yield Dimension(
        items=("reach",), shown="path", line=over, extensions=(((0.0, neck.back[1]), over[0]), (end, over[-1]))
    )


def _reach(drawn: Outline, gap: float) -> Iterator[Point]:
    """From the centre over the shoulder to the end of the sleeve, a gap away from the garment."""
    out = cos(drawn.angle), -sin(drawn.angle)
    top = min(drawn.band.back[1], drawn.band.side[1]) - gap
    yield 0.0, top
    yield drawn.band.back[0], top
    yield _moved(drawn.neck.side, out, gap)
    yield _moved(drawn.on_sleeve(drawn.sleeve[-1][0], 0), out, gap)


def _bowed(top: Point, chord: float, length: float) -> Iterator[Point]:
    """An arc of a circle from a point down, to the right of its chord.

    chord, length: of the arc, in cm; it may be so long that no arc below a half circle has it.
    """
    low, high = 0.0, pi / 2
    for _ in range(50):
        half = (low + high) / 2
        low, high = (half, high) if chord * half < length * sin(half) else (low, half)
    radius = length / (2 * half)
    for step in range(_ARC_STEPS + 1):
        turn = half * (2 * step / _ARC_STEPS - 1)
        yield top[0] + radius * (cos(turn) - cos(half)), top[1] + chord / 2 + radius * sin(turn)


def _halfway(edge: list[Point]) -> Point:
    """A place on the right half of an edge of the neck, between fold and front."""
    return edge[-5]


def _moved(point: Point, direction: Point, by: float) -> Point:
    return point[0] + by * direction[0], point[1] + by * direction[1]
