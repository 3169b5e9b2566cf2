"""The outline of one size as the pullover lies flat, seen from the front, in cm of the finished garment.

The centre of the front is 0 across; the level of the cast-on, where nothing is raised or dropped, is 0 down. The right
half is told, the left one is its mirror image. The body is half of its circumference wide, and a sleeve half of its
own, with a straight fold on top. How far a sleeve spreads from the body follows from the yoke: at the neck its half
lies beside the front, as far as that comes out.
"""

from __future__ import annotations

from bisect import bisect_right
from collections.abc import Iterable, Sequence
from dataclasses import dataclass
from functools import cached_property
from itertools import accumulate, pairwise
from math import acos, atan2, cos, dist, hypot, radians, sin

from grading_core.pullover.result import KnittedSize

_LEAST_ANGLE, _GREATEST_ANGLE = radians(30), radians(72)
"""Of a sleeve with the vertical."""

_LEANS_IN = 0.35
"""How far a neckband leans inwards, as a part of its height."""

_LEAST_TOP = 0.4
"""What the short rows leave of a sleeve's top, as a part of it."""

_CURVE = 12
"""Points that a curve is drawn through."""

Point = tuple[float, float]


@dataclass(frozen=True, slots=True)
class Neckline:
    """One edge of the neck.

    side: its end on the fold of the sleeve. front, back: the ends of their stitches, and the level they are on.
    centre: the end of what is cast on last of the front.
    """

    side: Point
    front: Point
    centre: Point
    back: Point

    def above(self, height: float) -> Neckline:
        """The other edge of a band of a height in cm."""

        def moved(point: Point) -> Point:
            return max(point[0] - _LEANS_IN * height, 0.0), point[1] - height

        return Neckline(moved(self.side), moved(self.front), moved(self.centre), moved(self.back))

    def front_edge(self) -> list[Point]:
        """From the left side along the front to the right one."""
        if self.centre[1] > self.front[1]:
            low = _bent(self.front, (0.8 * self.front[0] + 0.2 * self.centre[0], self.centre[1]), self.centre)
            half = [self.side, *low]
        else:
            corner = (self.front[0] + 0.3 * (self.side[0] - self.front[0]), self.front[1])
            half = _bent(self.side, corner, self.front)
        return [*map(mirrored, half), *reversed(half)]

    def back_edge(self) -> list[Point]:
        """From the left side along the back to the right one."""
        corner = (self.back[0] + 0.5 * (self.side[0] - self.back[0]), self.back[1])
        half = _bent(self.side, corner, self.back)
        return [*map(mirrored, half), *reversed(half)]


@dataclass(frozen=True, kw_only=True)
class Outline:
    """One size.

    angle: of the sleeve with the vertical, in radians. neck: its edge before the band. band: the band's last edge.
    raglan: the end of the raglan line, on the front. body: the right side from the underarm down; the hem is between
    the last two points. sleeve: as (distance along the sleeve from the underarm, width); the cuff is between the last
    two.
    """

    angle: float
    neck: Neckline
    band: Neckline
    raglan: Point
    body: tuple[Point, ...]
    sleeve: tuple[Point, ...]

    @property
    def underarm(self) -> Point:
        """Where body and sleeve meet, at the side."""
        return self.body[0]

    @property
    def along(self) -> Point:
        """One cm along the sleeve."""
        return sin(self.angle), cos(self.angle)

    def on_sleeve(self, along: float, below_fold: float) -> Point:
        """A place on the right sleeve.

        along: from the underarm towards the cuff. below_fold: from the fold. Both in cm.
        """
        across = self.sleeve[0][1] - below_fold
        (x, y), (down_x, down_y) = self.underarm, self.along
        return x + along * down_x + across * down_y, y + along * down_y - across * down_x

    @cached_property
    def under_sleeve(self) -> list[Point]:
        """The lower edge of the right sleeve, from the underarm on."""
        return [self.on_sleeve(along, width) for along, width in self.sleeve]

    @cached_property
    def silhouette(self) -> list[Point]:
        """The whole way round, below the neckband."""
        right = [self.neck.side, self.on_sleeve(self.sleeve[-1][0], 0), *reversed(self.under_sleeve), *self.body[1:]]
        return [*self.neck.back_edge(), *right[1:], *map(mirrored, reversed(right[1:]))]

    @property
    def box(self) -> tuple[float, float, float, float]:
        """The least and the greatest place across, and down, the band included."""
        across, down = zip(*self.silhouette, *self.band.back_edge(), *self.band.front_edge(), strict=True)
        return min(across), max(across), min(down), max(down)


def outline(size: KnittedSize, angle: float | None = None) -> Outline:
    """The outline of a size.

    angle: of the sleeves with the vertical in radians; None for what follows from the yoke.
    """
    counts, finished = size.counts, size.finished
    depth, upper_arm = float(finished.depth), float(finished.upper_arm) / 2
    of_neck, of_bust = float(finished.neck) / counts.cast_on, float(finished.bust) / counts.body
    front = (counts.neck.front / 2 + counts.line_to_body) * of_neck
    back = (counts.neck.back / 2 + counts.line_to_body) * of_neck
    top = (counts.neck.sleeve / 2 + counts.line_to_sleeve) * of_neck
    underarm = (float(finished.bust) / 4, depth)
    if angle is None:
        angle = sleeve_angle(front - underarm[0], depth, upper_arm, top)
    raised = float(size.neck.raised.height_cm) if size.neck.raised else 0.0
    neck = Neckline(
        side=_side(underarm, angle, upper_arm, raised, front, top),
        front=(front, 0.0),
        centre=(size.neck.drop.centre / 2 * of_neck, float(size.neck.drop.height_cm)) if size.neck.drop else (0.0, 0.0),
        back=(back, -raised),
    )
    return Outline(
        angle=angle,
        neck=neck,
        band=neck.above(float(size.band.height_cm)),
        raglan=(underarm[0] - counts.underarm / 2 * of_bust, depth),
        body=tuple(_body(size)),
        sleeve=tuple(_sleeve(size)),
    )


def sleeve_angle(run: float, depth: float, upper_arm: float, top: float) -> float:
    """How far a sleeve spreads from the vertical, in radians, for its top to lie beside the front at the neck.

    run: from the underarm to the front's end at the neck, across; negative. depth: of the yoke. upper_arm: half of the
    sleeve's circumference. top: half of its width at the neck. All in cm.
    """
    to_front, to_fold = hypot(run, depth), hypot(upper_arm, depth)
    near = (to_front**2 + to_fold**2 - top**2) / (2 * to_front * to_fold)
    angle = atan2(depth, run) - acos(min(max(near, -1), 1)) - atan2(depth, upper_arm)
    return min(max(angle, _LEAST_ANGLE), _GREATEST_ANGLE)


def mirrored(point: Point) -> Point:
    """The same place on the left."""
    return -point[0], point[1]


def _side(underarm: Point, angle: float, upper_arm: float, raised: float, front: float, top: float) -> Point:
    """Where the fold of the sleeve begins: short rows lengthen it by half of what they raise the back."""
    x = underarm[0] + upper_arm * cos(angle) - underarm[1] * sin(angle)
    y = underarm[1] - upper_arm * sin(angle) - underarm[1] * cos(angle)
    room = max(x - front - _LEAST_TOP * top, 0.0) / sin(angle)
    more = min(raised / 2, room)
    return max(x - more * sin(angle), front), y - more * cos(angle)


def _body(size: KnittedSize) -> Iterable[Point]:
    body, finished = size.body, size.finished
    depth, length = float(finished.depth), float(finished.body_length)
    hem = depth + length - float(body.hem.height_cm)
    around = float(finished.bust)
    yield around / 4, depth
    for reached in body.levels:
        around = float(reached.circumference_cm)
        yield around / 4, min(depth + float(reached.level.below_cm), hem)
    yield around / 4, hem
    yield float(finished.hem) / 4, depth + length


def _sleeve(size: KnittedSize) -> Iterable[Point]:
    sleeve, finished = size.sleeve, size.finished
    length, upper_arm = float(finished.sleeve_length), float(finished.upper_arm) / 2
    cuff = length - float(sleeve.cuff.height_cm)
    narrow = upper_arm * sleeve.cuff.before / sleeve.stitches
    yield 0.0, upper_arm
    if sleeve.decrease_rounds:
        first, *others = sleeve.decrease_rounds
        last = others[-1] if others else first
        # a decrease narrows the rounds since the one before
        plain = max(2 * first - others[0], 0) if others else first - 1
        yield cuff * plain / sleeve.rounds, upper_arm
        yield cuff * last / sleeve.rounds, narrow
    yield cuff, narrow
    yield length, float(finished.wrist) / 2


def evenly(line: Sequence[Point], parts: int) -> list[Point]:
    """The points between so many parts of a line, each as long as the others.

    line: its points.

    >>> evenly([(0, 0), (4, 0), (4, 2)], 3)
    [(2.0, 0.0), (4.0, 0.0)]
    """
    ends = [0.0, *accumulate(dist(*piece) for piece in pairwise(line))]
    points = []
    for number in range(1, parts):
        place = ends[-1] * number / parts
        piece = min(bisect_right(ends, place), len(ends) - 1)
        part = (place - ends[piece - 1]) / ((ends[piece] - ends[piece - 1]) or 1)
        points.append(_between(line[piece - 1], line[piece], part))
    return points


def _bent(start: Point, corner: Point, end: Point) -> list[Point]:
    """A curve that leaves its start, and comes to its end, on the way to a corner."""
    return [
        _between(_between(start, corner, step / _CURVE), _between(corner, end, step / _CURVE), step / _CURVE)
        for step in range(_CURVE + 1)
    ]


def _between(start: Point, end: Point, part: float) -> Point:
    return start[0] + part * (end[0] - start[0]), start[1] + part * (end[1] - start[1])
