"""The flat pieces that a garment's front is drawn from: rows of stitches, and where they lie on the page.

The front and each sleeve are such pieces. A sleeve is turned so that its raglan edge runs along the front's. All
lengths are in cm, and heights are counted downwards from where the yoke's first round begins.
"""

from __future__ import annotations

from collections.abc import Iterable, Iterator, Mapping, Sequence
from dataclasses import dataclass, replace
from itertools import groupby
from math import atan2, cos, radians, sin
from typing import NamedTuple

from grading_core.chart.front import FrontView
from grading_core.fabric import Fabric
from grading_core.gauge import Gauge
from grading_core.pullover.front import Finish, RibView

_MOST_INCREASED = 2.01
"""Stitches that an edge gains or loses from one round to the next, and a hair."""

RIBS = ("hem", "cuff")
"""What ribbed bands of rows are."""

_EVENED = 6
"""Rows at either end of a straight stretch over which an edge is evened out."""

_LEAST_ANGLE, _GREATEST_ANGLE = radians(12), radians(75)

Point = tuple[float, float]


class Box(NamedTuple):
    """An upright rectangle."""

    left: float
    top: float
    width: float
    height: float


class Run(NamedTuple):
    """Stitches of one row that lie side by side. row: counted from 0. left: where they begin, in stitches."""

    row: int
    left: float
    stitches: str

    @property
    def width(self) -> int:
        """How many they are."""
        return len(self.stitches)


@dataclass(frozen=True, slots=True, kw_only=True)
class Band:
    """Rows of one gauge, one below the other.

    kind: what they are. top: where they begin, in cm. stitch, row: the size of a stitch in cm. rows: how many. runs:
    their stitches. purled: rectangles of purl stitches, in stitches and rows.
    """

    kind: str
    top: float
    stitch: float
    row: float
    rows: int
    runs: tuple[Run, ...]
    purled: tuple[Box, ...] = ()

    @property
    def bottom(self) -> float:
        """Where they end, in cm."""
        return self.top + self.rows * self.row

    @property
    def phase(self) -> float:
        """How far its stitches lie from whole stitches beside the axis."""
        return self.runs[-1].left % 1 if self.runs else 0.0

    @property
    def box(self) -> Box:
        """What its stitches take up, in stitches and rows."""
        left = min((run.left for run in self.runs), default=0.0)
        right = max((run.left + len(run.stitches) for run in self.runs), default=0.0)
        return Box(left, 0, right - left, self.rows)


@dataclass(frozen=True, slots=True, kw_only=True)
class Piece:
    """A flat piece: bands of rows, the first worked topmost, from a place of its own to the page's.

    bands: from the top. top: the points of its upper edge, from the piece's left to its right, in cm from its axis.
    fold: whether that side of it, "left" or "right", is the fold of a sleeve. angle: in radians, clockwise on the page.
    origin: where the axis meets the first round, in cm.
    """

    bands: tuple[Band, ...]
    top: tuple[Point, ...]
    fold: str = ""
    angle: float = 0
    origin: Point = (0, 0)

    def place(self, x: float, y: float) -> Point:
        """Where a point of the piece lies, in cm."""
        across, down = cos(self.angle), sin(self.angle)
        return self.origin[0] + x * across - y * down, self.origin[1] + x * down + y * across

    @property
    def outline(self) -> list[Point]:
        """The piece's corners, in cm from its own axis: over its upper edge, down its right one and up its left one."""
        return [*self.top, *self.sides]

    @property
    def sides(self) -> list[Point]:
        """The corners without those of the upper edge: down the right side and up the left one."""
        return [*self._edge("right"), *reversed(self._edge("left"))]

    @property
    def placed(self) -> list[Point]:
        """The corners where they lie on the page."""
        return [self.place(*point) for point in self.outline]

    def _edge(self, side: str) -> list[Point]:
        ends: list[tuple[float, float, float]] = []
        for band in self.bands:
            if band.kind == "short_rows":
                continue
            found: dict[int, list[float]] = {}
            for row, left, stitches in band.runs:
                found.setdefault(row, []).append(left if side == "left" else left + len(stitches))
            choose = min if side == "left" else max
            for row, places in found.items():
                ends.append((choose(places) * band.stitch, band.top + row * band.row, band.row))
        stitch = max((band.stitch for band in self.bands), default=1.0)
        return edge(ends, stitch)


def box_around(points: Iterable[Point]) -> Box:
    """The smallest one around everything."""
    across, along = zip(*points, strict=True)
    return Box(min(across), min(along), max(across) - min(across), max(along) - min(along))


def front_piece(view: FrontView, finish: Finish | None) -> Piece:
    """The front between its two raglan lines, the body below and its hem."""
    missing = dict(enumerate(finish.missing)) if finish else {}
    yoke = [_dropped(seen.line, seen.front, missing.get(row, 0)) for row, seen in enumerate(view.yoke)]
    body = [[(-len(text) / 2, text)] for text in view.body]
    purl = view.body_seam if view.seam == "purl" else 0
    bands = [*_bands("yoke", yoke, view.fabric, 0.0, 0)]
    top = bands[-1].bottom if bands else 0.0
    bands += _bands("body", body, view.fabric, top, len(yoke), purled=(purl, purl))
    edge_of_neck = len(view.yoke[0].front) / 2 + len(view.yoke[0].line) if view.yoke else 0.0
    if finish:
        bands += _ribbed("hem", finish.hem, bands, 0.5)
        bands = [*_short_rows_of_front(view, finish, edge_of_neck), *bands]
    return Piece(bands=tuple(bands), top=tuple(_neckline(view, finish, edge_of_neck)))


def _lean(view: FrontView) -> float:
    """How much the front grows wider at either side for its height."""
    rounds = len(view.yoke)
    first, last = (
        (len(seen.front) / 2 + len(seen.line)) * float(view.fabric.at(number).width_cm(1))
        for number, seen in ((1, view.yoke[0]), (rounds, view.yoke[-1]))
    )
    return (last - first) / float(view.fabric.height_cm(rounds))


def sleeve_pieces(view: FrontView, finish: Finish | None) -> tuple[Piece, Piece]:
    """Each sleeve's front half with its cuff, its fold a straight line, turned and moved to the front's raglan edge."""
    rounds = len(view.yoke)
    height = float(view.fabric.height_cm(rounds))
    above, below = (float(view.fabric.at(number).width_cm(1)) for number in (1, max(rounds, 1)))
    edges = [len(seen.front) / 2 + len(seen.line) for seen in view.yoke]
    widths = [len(seen.second_sleeve) for seen in view.yoke]
    lean = sum(atan2(stitches[-1] * below - stitches[0] * above, height) for stitches in (edges, widths))
    angle = min(max(lean, _LEAST_ANGLE), _GREATEST_ANGLE)
    purl = view.sleeve_seam if view.seam == "purl" else 0
    first = [[(0.0, text)] for text in (*(seen.first_sleeve for seen in view.yoke), *view.first_sleeve)]
    second = [
        [(-float(len(text)), text)] for text in (*(seen.second_sleeve for seen in view.yoke), *view.second_sleeve)
    ]
    left, right = (
        _sleeve(view, finish, rows, place, purled)
        for rows, place, purled in ((first, 0, (0, purl)), (second, 1, (purl, 0)))
    )
    # The upper end of the sleeve's raglan edge lies at that of the front's; what is left over hides under the arm.
    right = replace(right, angle=-angle)
    x, y = right.place(-widths[0] * above, 0)
    origin = (edges[0] * above - x, -y)
    return replace(left, angle=angle, origin=(-origin[0], origin[1])), replace(right, origin=origin)


def edge(ends: Sequence[tuple[float, float, float]], stitch: float) -> list[Point]:
    """An edge of a piece, evened out: through the middle of the few rows that end alike.

    ends: where each row ends, where it begins, and its height. stitch: the width of one; a step of more than an
    increase makes, such as an underarm's, stays one. All in cm.
    """
    runs: list[list[tuple[float, float, float]]] = []
    for end in ends:
        if runs and runs[-1][0][0] == end[0]:
            runs[-1].append(end)
        else:
            runs.append([end])
    points: list[Point] = []
    for place, run in enumerate(runs):
        x, start, _ = run[0]
        bottom = run[-1][1] + run[-1][2]
        evened = _EVENED * run[0][2]
        steep_before = place == 0 or abs(x - runs[place - 1][0][0]) > _MOST_INCREASED * stitch
        steep_after = place == len(runs) - 1 or abs(x - runs[place + 1][0][0]) > _MOST_INCREASED * stitch
        middle = (start + bottom) / 2
        first = start if steep_before else min(middle, start + evened)
        last = bottom if steep_after else max(middle, bottom - evened)
        points += [(x, y) for y in dict.fromkeys((first, last))]
    return points


def _bands(
    kind: str,
    rows: Sequence[Sequence[tuple[float, str]]],
    fabric: Fabric,
    top: float,
    before: int,
    purled: tuple[int, int] = (0, 0),
) -> Iterator[Band]:
    """Rounds, in as many bands as they have gauges.

    before: rounds above them, counted from the yoke's first. purled: stitches at the start and at the end of each.
    """
    for gauge, group in groupby(enumerate(rows), lambda each: fabric.at(before + each[0] + 1)):
        found = [stretches for _, stretches in group]
        runs = tuple(Run(row, left, text) for row, stretches in enumerate(found) for left, text in stretches)
        band = _band(kind, gauge, top, len(found), runs, tuple(_purl_columns(runs, *purled)))
        yield band
        top = band.bottom


def _band(kind: str, gauge: Gauge, top: float, rows: int, runs: tuple[Run, ...], purled: tuple[Box, ...] = ()) -> Band:
    stitch, row = float(gauge.width_cm(1)), float(gauge.height_cm(1))
    return Band(kind=kind, top=top, stitch=stitch, row=row, rows=rows, runs=runs, purled=purled)


def _purl_columns(runs: Iterable[Run], start: int, end: int) -> Iterator[Box]:
    number = 0
    for (first, last), alike in groupby(runs, lambda run: (run.left, run.left + len(run.stitches) - end)):
        rows = len([*alike])
        yield from (Box(at, number, width, rows) for at, width in ((first, start), (last, end)) if width)
        number += rows


def _ribbed(kind: str, rib: RibView, above: Sequence[Band], side: float) -> Iterator[Band]:
    """A rib, whose upper half draws in from the width above to its own; an adjusting round is knitted plain.

    above: what it is worked on. side: how much of its width lies left of the axis.
    """
    top, count = above[-1].bottom if above else 0.0, len(rib.stitches)
    stitch, row = float(rib.gauge.width_cm(1)), float(rib.gauge.height_cm(1))
    wide = above[-1].runs[-1].width * above[-1].stitch / max(count, 1) if above else stitch
    drawn_in = 0 if abs(wide - stitch) * count < _MOST_INCREASED * stitch else rib.rounds // 2
    widths = [wide + (stitch - wide) * (number + 1) / (drawn_in + 1) for number in range(drawn_in)]
    widths += [stitch] * (rib.rounds - drawn_in)
    left = -count * side
    for (width, ribbed), same in groupby(
        zip(widths, (number >= rib.adjusted for number in range(rib.rounds)), strict=True)
    ):
        rows = len([*same])
        runs = tuple(Run(number, left, rib.colour * count) for number in range(rows))
        purled = tuple(_purl_of_rib(rib.stitches, left, rows)) if ribbed else ()
        band = Band(kind=kind, top=top, stitch=width, row=row, rows=rows, runs=runs, purled=purled)
        yield band
        top = band.bottom


def _purl_of_rib(stitches: str, left: float, rows: int) -> Iterator[Box]:
    for kind, same in groupby(stitches):
        width = len([*same])
        if kind == "p":
            yield Box(left, 0, width, rows)
        left += width


def _dropped(line: str, front: str, missing: int) -> list[tuple[float, str]]:
    """A round of the front, without what it lacks in its middle."""
    whole = line + front + line
    if not missing:
        return [(-len(whole) / 2, whole)]
    side = len(line) + (len(front) - missing) // 2
    return [(-len(whole) / 2, whole[:side]), (missing / 2, whole[len(whole) - side :])]


def _sleeve(
    view: FrontView,
    finish: Finish | None,
    rows: Sequence[Sequence[tuple[float, str]]],
    place: int,
    purled: tuple[int, int],
) -> Piece:
    """A sleeve that isn't turned yet. place: 0 for the first one, whose fold is at its left, 1 for the second one."""
    rounds, side = len(view.yoke), (1, -1)[place]
    bands = [*_bands("yoke", rows[:rounds], view.fabric, 0.0, 0)]
    top = bands[-1].bottom if bands else 0.0
    bands += _bands("sleeve", rows[rounds:], view.fabric, top, rounds, purled)
    neck = len(view.yoke[0].first_sleeve) if view.yoke else 0
    stitch = float(view.fabric.at(1).width_cm(1))
    points: list[Point] = [(0.0, 0.0), (side * neck * stitch, 0.0)]
    if finish:
        cuff = finish.cuffs[place]
        bands += _ribbed("cuff", cuff, bands, float(place))
        reached = [row.sleeve for row in finish.short_rows if row.sleeve]
        runs = [
            Run(row, 0.0 if place == 0 else -float(stitches), view.plain.plain * stitches)
            for row, stitches in enumerate(reached)
        ]
        height = float(finish.plain.height_cm(1))
        if runs:
            bands.insert(0, _band("short_rows", finish.plain, -len(reached) * height, len(reached), tuple(runs)))
        points = [(side * x * stitch, -y * height) for x, y in _slope(reached, neck)]
    return Piece(bands=tuple(bands), top=tuple(points[::side]), fold=("left", "right")[place])


def _short_rows_of_front(view: FrontView, finish: Finish, outer: float) -> Iterator[Band]:
    """At both sides; their outer ends go on in the direction of the raglan lines."""
    reached = [row.line + row.front for row in finish.short_rows if row.line + row.front]
    height, symbol = float(finish.plain.height_cm(1)), view.plain.plain
    lean = _lean(view) * height / float(finish.plain.width_cm(1))
    runs = []
    for row, stitches in enumerate(reached):
        end = round(outer - (len(reached) - row - 0.5) * lean, 3)
        runs += [Run(row, -end, symbol * stitches), Run(row, end - stitches, symbol * stitches)]
    if runs:
        yield _band("short_rows", finish.plain, -len(reached) * height, len(reached), tuple(runs))


def _neckline(view: FrontView, finish: Finish | None, outer: float) -> Iterator[Point]:
    """The upper edge of the front: over the short rows at its sides, and through what is dropped in its middle."""
    stitch = float(view.fabric.at(1).width_cm(1))
    if finish is None:
        yield from ((-outer * stitch, 0.0), (outer * stitch, 0.0))
        return
    reached = [row.line + row.front for row in finish.short_rows if row.line + row.front]
    height = float(finish.plain.height_cm(1))
    lean = _lean(view) if reached else 0.0
    half = [((x - outer) * stitch + y * height * lean, -y * height) for x, y in _slope(reached, None)]
    before = None
    for row, missing in enumerate(finish.missing):
        if missing != before:
            wide = float(view.fabric.at(row + 1).width_cm(1))
            half.append((-missing / 2 * wide, float(view.fabric.height_cm(row))))
            before = missing
    if finish.missing:
        half.append((half[-1][0], float(view.fabric.height_cm(len(finish.missing)))))
    yield from half
    yield from ((-x, y) for x, y in reversed(half))


def _slope(reached: Sequence[int], whole: int | None) -> Iterator[tuple[float, float]]:
    """The upper edge of short rows, through the middle of their ends: in stitches from where they all begin, and rows.

    reached: stitches of each row, the first worked first. whole: that some reach, which go on beyond; None where all
    end.
    """
    yield 0.0, len(reached)
    ends: Mapping[int, int] = {stitches: reached.count(stitches) for stitches in sorted(set(reached))}
    left = len(reached)
    for stitches, rows in ends.items():
        if stitches == whole:
            break
        left -= rows
        yield stitches, left + rows / 2
    if whole is not None:
        yield whole, left
    elif ends:
        yield max(ends) + 1, 0.0
