"""The neck of a garment that lies flat: a neckband along its edge, and what is seen of the back through it.

In the picture the band's ribs stand upright on the edge, evened out, and its columns grow narrower where it bends.
"""

from __future__ import annotations

from bisect import bisect_right
from collections.abc import Iterator, Sequence
from dataclasses import dataclass
from itertools import accumulate, pairwise
from math import cos, hypot, sin

from grading_core.chart.front import FrontView
from grading_core.pullover.front import Finish, RibView
from service.representations.pictures.front.pieces import Piece, Point

_TIMES_EVENED = 3
"""How often the corners of an edge are cut before a band stands on it."""

_PARTS = 64
"""Into which an edge is parted along its length."""

_FLAT = 0.7
"""How much of the back's edge lies straight."""

_TURN = 1.1
"""Over how many of its own heights, to either side, a band turns where its edge bends."""


@dataclass(frozen=True, slots=True, kw_only=True)
class Strip:
    """A band along an edge.

    rib: what it is. edge: that it is picked up from, from the viewer's left. base, end: its two sides, the same evened
    out and its last edge; as many points.
    """

    rib: RibView
    edge: tuple[Point, ...]
    base: tuple[Point, ...]
    end: tuple[Point, ...]

    @property
    def shape(self) -> list[Point]:
        """Its corners."""
        return [*self.base, *reversed(self.end)]

    @property
    def rest(self) -> list[Point]:
        """The corners of what evening its edge out leaves below it."""
        return [*self.edge, *reversed(self.base)]

    def columns(self) -> Iterator[tuple[str, list[Point]]]:
        """The corners of each column of stitches, and whether these are knitted ("k") or purled ("p")."""
        parts = max(len(self.rib.stitches), 1)
        marks = [self._mark(number * _PARTS / parts) for number in range(parts + 1)]
        for kind, ((base, end), (next_base, next_end)) in zip(self.rib.stitches, pairwise(marks), strict=True):
            yield kind, [base, next_base, next_end, end]

    def rounds(self) -> Iterator[list[Point]]:
        """The lines between its rounds."""
        for number in range(1, self.rib.rounds):
            part = number / self.rib.rounds
            yield [_between(base, end, part) for base, end in zip(self.base, self.end, strict=True)]

    def _mark(self, at: float) -> tuple[Point, Point]:
        """A point of its base and the one beside it at its end. at: so many parts along it."""
        place = min(int(at), _PARTS - 1)
        base, end = (_between(line[place], line[place + 1], at - place) for line in (self.base, self.end))
        return base, end


@dataclass(frozen=True, slots=True, kw_only=True)
class NeckView:
    """The neck. band: before it. band_behind: of the back. inside: the corners of what is seen of the back below it."""

    band: Strip
    band_behind: Strip
    inside: tuple[Point, ...]


def neck_view(view: FrontView, finish: Finish, front: Piece, sleeves: tuple[Piece, Piece]) -> NeckView:
    """The neck of a front.

    front, sleeves: its pieces, as they lie.
    """
    first, second = ([piece.place(*point) for point in piece.top] for piece in sleeves)
    edge = _round_edge([*first, *(front.place(*point) for point in front.top), *second])
    half = min(finish.back / 2 * float(view.fabric.at(1).width_cm(1)), abs(edge[0][0]))
    top = -float(finish.raised_cm)
    back = [edge[0], (-_FLAT * half, top), (_FLAT * half, top), edge[-1]]
    folds = tuple((sin(piece.angle), -cos(piece.angle)) for piece in sleeves)
    behind = _strip(finish.band_behind, back, folds)
    return NeckView(band=_strip(finish.band, edge, folds), band_behind=behind, inside=(*edge, *reversed(behind.base)))


def _round_edge(points: Sequence[Point]) -> list[Point]:
    """The edge of a neck, without what pieces that are flat would bend it to.

    points: from the middle of one sleeve to that of the other.
    """
    left, right = points[0], points[-1]
    line = [left]
    for point in points[1:]:
        if point is not right and not left[0] <= point[0] <= right[0]:
            continue
        while len(line) > 1 and _turn(line[-2], line[-1], point) > 0:
            line.pop()
        line.append(point)
    return line


def _strip(rib: RibView, edge: Sequence[Point], folds: Sequence[Point]) -> Strip:
    """A band on an edge. folds: the direction of the sleeves' folds, where it ends at either side."""
    height = float(rib.gauge.height_cm(rib.rounds))
    base = _parted(_evened(edge))
    return Strip(rib=rib, edge=tuple(edge), base=tuple(base), end=tuple(_beside(base, height, folds)))


def _evened(points: Sequence[Point]) -> list[Point]:
    """A line with its corners cut, its ends where they were."""
    line = [*points]
    for _ in range(_TIMES_EVENED):
        cut = [point for a, b in pairwise(line) for point in (_between(a, b, 0.25), _between(a, b, 0.75))]
        line = [line[0], *cut, line[-1]]
    return line


def _parted(line: Sequence[Point]) -> list[Point]:
    """The same line, by points that are equally far from one another along it."""
    reached = [0.0, *accumulate(hypot(b[0] - a[0], b[1] - a[1]) for a, b in pairwise(line))]
    points = []
    for number in range(_PARTS + 1):
        at = reached[-1] * number / _PARTS
        place = min(bisect_right(reached, at), len(line) - 1) - 1
        length = reached[place + 1] - reached[place]
        points.append(_between(line[place], line[place + 1], (at - reached[place]) / length if length else 0.0))
    return points


def _beside(line: Sequence[Point], distance: float, folds: Sequence[Point]) -> Iterator[Point]:
    """A line at the left hand of another, as seen from its start, and at its ends in the direction of the folds.

    Where the line bends, the direction turns little by little, so that nothing crosses.
    """
    steps = hypot(line[1][0] - line[0][0], line[1][1] - line[0][1]) or 1.0
    reach = max(1, min(round(_TURN * distance / steps), _PARTS // 4))
    for number, here in enumerate(line):
        before, after = line[max(number - reach, 0)], line[min(number + reach, _PARTS)]
        x, y = _unit(after[1] - before[1], before[0] - after[0])
        for fold, from_end in zip(folds, (number, _PARTS - number), strict=True):
            part = max(0.0, 1 - from_end / reach)
            x, y = _unit(x + (fold[0] - x) * part, y + (fold[1] - y) * part)
        yield here[0] + x * distance, here[1] + y * distance


def _unit(x: float, y: float) -> Point:
    length = hypot(x, y) or 1.0
    return x / length, y / length


def _turn(a: Point, b: Point, c: Point) -> float:
    """Above 0 where the way from a over b to c turns clockwise."""
    return (b[0] - a[0]) * (c[1] - b[1]) - (b[1] - a[1]) * (c[0] - b[0])


def _between(a: Point, b: Point, part: float) -> Point:
    return a[0] + (b[0] - a[0]) * part, a[1] + (b[1] - a[1]) * part
