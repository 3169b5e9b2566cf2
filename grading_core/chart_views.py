"""What a picture of a placed chart needs: the front as it will look, and the starts traced on the chart."""

from __future__ import annotations

from collections.abc import Iterable
from dataclasses import dataclass

from grading_core.chart_fabric import Windows
from grading_core.chart_layout import WORKING_ORDER, Part, Section, lay_out
from grading_core.chart_plan import ChartPlan, plan_problems
from grading_core.chart_remarks import half_stitch_problems
from grading_core.chart_result import SizePlacement
from grading_core.errors import raise_if_any


@dataclass(frozen=True, slots=True)
class YokeView:
    """A yoke round seen from the front, each part from the viewer's left to right, so the right sleeve first.

    right_sleeve, left_sleeve: their front halves, the middle stitch included. line: one raglan line.
    """

    right_sleeve: str
    line: str
    front: str
    left_sleeve: str


@dataclass(frozen=True, slots=True)
class FrontView:
    """The front of one size, a string of colour symbols a round, round 1 first.

    yoke: the sections that are seen. body: the front half. right_sleeve, left_sleeve: their front halves.
    """

    yoke: tuple[YokeView, ...]
    body: tuple[str, ...]
    right_sleeve: tuple[str, ...]
    left_sleeve: tuple[str, ...]


@dataclass(frozen=True, slots=True)
class Trace:
    """The starts of one section on the chart, for a line drawn over it.

    part, section: whose. pieces: unbroken lines of (chart row, first column); a new one begins where the line
    leaves the chart at an edge and comes in at the opposite one, or the section was plain.
    """

    part: Part
    section: Section
    pieces: tuple[tuple[tuple[int, int], ...], ...]


def front_view(plan: ChartPlan, index: int) -> FrontView:
    """The colour of every stitch of one size's front.

    plan: the request. index: of the size.

    Raises ContradictionError as `place_charts` does, for this size's half stitches.
    """
    raise_if_any(plan_problems(plan))
    layout = lay_out(plan, plan.sizes[index], plan.plain_colours())
    if plan.half_stitch == "refuse":
        raise_if_any(half_stitch_problems(plan, index, layout.off_centre))
    windows = Windows(plan.chart.worked_rows())

    def seen(part: Part, section: str) -> list[str]:
        place = WORKING_ORDER[part].index(section)
        return [
            windows.row(worked.row).stitches(worked.stretches[place])[::-1] for worked in layout.rounds(part)
        ]

    yoke = zip(
        seen("yoke", "right_sleeve"),
        seen("yoke", "line"),
        seen("yoke", "front"),
        seen("yoke", "left_sleeve"),
        strict=True,
    )
    sleeves = seen("sleeve", "sleeve")
    return FrontView(
        tuple(
            YokeView(_right_front(right), line, front, _left_front(left)) for right, line, front, left in yoke
        ),
        tuple(seen("body", "front")),
        tuple(map(_right_front, sleeves)),
        tuple(map(_left_front, sleeves)),
    )


def start_traces(placed: SizePlacement) -> tuple[Trace, ...]:
    """Where each section starts, traced over the chart.

    placed: one size of an answer.
    """
    yoke, body, sleeve = placed.rounds, placed.body.rounds, placed.sleeve.rounds
    return (
        _trace("yoke", "back", ((r.chart_row, r.back.first_column, r.back.stitches) for r in yoke)),
        _trace("yoke", "front", ((r.chart_row, r.front.first_column, r.front.stitches) for r in yoke)),
        _trace("yoke", "sleeve", ((r.chart_row, r.sleeve.first_column, r.sleeve.stitches) for r in yoke)),
        _trace("body", "back", ((r.chart_row, r.back.first_column, r.back.stitches) for r in body)),
        _trace("body", "front", ((r.chart_row, r.front.first_column, r.front.stitches) for r in body)),
        _trace("sleeve", "sleeve", ((r.chart_row, r.first_column, r.stitches) for r in sleeve)),
    )


def _right_front(sleeve: str) -> str:
    """The front half of the right sleeve: worked first, so at the right of its string as seen."""
    return sleeve[len(sleeve) // 2 :]


def _left_front(sleeve: str) -> str:
    """The front half of the left sleeve: worked last, so at the left of its string as seen."""
    return sleeve[: (len(sleeve) + 1) // 2]


def _trace(part: Part, section: Section, starts: Iterable[tuple[int | None, int | None, int]]) -> Trace:
    pieces: list[list[tuple[int, int]]] = []
    width = 0
    for row, column, stitches in starts:
        if row is None or column is None:
            width = 0
            continue
        # Half the stitches that a section gains lie before its start.
        follows = width and pieces[-1][-1] == (row - 1, column + (stitches - width) // 2)
        if follows:
            pieces[-1].append((row, column))
        else:
            pieces.append([(row, column)])
        width = stitches
    return Trace(part, section, tuple(map(tuple, pieces)))
