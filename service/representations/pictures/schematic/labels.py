"""Where the names of a drawing's lines go: each where it hides least, and never upon another. In pixels."""

from __future__ import annotations

from collections.abc import Iterable, Iterator, Sequence
from dataclasses import dataclass
from itertools import pairwise
from math import cos, hypot, pi, sin

Point = tuple[float, float]
Segment = tuple[Point, Point]

_UPON, _OUTSIDE, _CROSSED, _LATER = 10_000, 3_000, 60, 1
"""What it costs to lie upon another name, outside, on each line, and further down the list of places."""

_CLEAR = 26
"""How much of a line is to be seen beside a name on it."""

_ALONG = (0.5, 0.4, 0.6, 0.3, 0.7, 0.22, 0.78, 0.15, 0.85)
_BESIDE = (14, 26, 44, 70)
_TURNS = 16


@dataclass(frozen=True, slots=True)
class Box:
    """An upright rectangle."""

    left: float
    top: float
    width: float
    height: float

    @property
    def right(self) -> float:
        """Its right edge."""
        return self.left + self.width

    @property
    def bottom(self) -> float:
        """Its lower edge."""
        return self.top + self.height

    def overlaps(self, other: Box) -> bool:
        """Whether they share any place."""
        return (
            self.left < other.right and other.left < self.right and self.top < other.bottom and other.top < self.bottom
        )

    def crossed_by(self, segment: Segment) -> bool:
        """Whether a line goes through it."""
        (x1, y1), (x2, y2) = segment
        if max(x1, x2) < self.left or min(x1, x2) > self.right or max(y1, y2) < self.top or min(y1, y2) > self.bottom:
            return False
        sides = [
            (x2 - x1) * (y - y1) - (y2 - y1) * (x - x1)
            for x in (self.left, self.right)
            for y in (self.top, self.bottom)
        ]
        return min(sides) <= 0 <= max(sides)


@dataclass(frozen=True, slots=True)
class Place:
    """Where a name may go. leader: to what it names, None where it lies on it."""

    box: Box
    leader: Segment | None


def best_place(places: Iterable[Place], taken: Sequence[Box], lines: Sequence[Segment], frame: Box) -> Place:
    """The place that costs least; the first of equal ones.

    places: at least one. taken: by other names. lines: better not hidden. frame: the drawing.
    """
    best, least = None, float("inf")
    for number, place in enumerate(places):
        box = place.box
        cost = _LATER * number
        if box.left < frame.left or box.top < frame.top or box.right > frame.right or box.bottom > frame.bottom:
            cost += _OUTSIDE
        cost += _UPON * sum(box.overlaps(other) for other in taken)
        if cost >= least:
            continue
        cost += _CROSSED * sum(map(box.crossed_by, lines))
        if cost < least:
            best, least = place, cost
    assert best is not None
    return best


def along(line: Sequence[Point], width: float, height: float, head: float) -> Iterator[Place]:
    """Places for a name on a line, where it is long enough, and beside it.

    line: its points; the longest part of it is taken. width, height: of the name. head: the width of its first sign,
    which lies on a line that goes down.
    """
    start, end = max(pairwise(line), key=lambda part: hypot(part[1][0] - part[0][0], part[1][1] - part[0][1]))
    across, down = end[0] - start[0], end[1] - start[1]
    length = hypot(across, down) or 1
    across, down = across / length, down / length
    middles = [(start[0] + part * (end[0] - start[0]), start[1] + part * (end[1] - start[1])) for part in _ALONG]
    hidden = min(width / max(abs(across), 0.01), height / max(abs(down), 0.01))
    if length >= hidden + _CLEAR:
        for x, y in middles:
            left = x - head / 2 if abs(down) > 0.8 else x - width / 2
            yield Place(Box(left, y - height / 2, width, height), None)
    for gap in _BESIDE:
        for x, y in middles:
            for side in (1, -1):
                yield _towards((x, y), (-side * down, side * across), gap, width, height)


def around(point: Point, width: float, height: float) -> Iterator[Place]:
    """Places for a name some way off a point, the first ones to its upper left.

    width, height: of the name.
    """
    for gap in (*_BESIDE[1:], 100):
        for turn in sorted(range(_TURNS), key=lambda turn: abs(turn - _TURNS * 5 / 8)):
            angle = 2 * pi * turn / _TURNS
            yield _towards(point, (cos(angle), sin(angle)), gap, width, height)


def _towards(point: Point, direction: Point, gap: float, width: float, height: float) -> Place:
    """A name a gap away from a point, in a direction of length 1."""
    (x, y), (across, down) = point, direction
    near = x + across * gap, y + down * gap
    middle = near[0] + across * width / 2, near[1] + down * height / 2
    return Place(Box(middle[0] - width / 2, middle[1] - height / 2, width, height), (point, near))
