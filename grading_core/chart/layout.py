"""The rounds of one size as they are knitted: which chart columns every stretch of every round shows.

Working order, right side out: the yoke's round starts with the back; below the split the body's round
starts at a side with the back, the sleeve's under the arm, and each ends with its seam stitches. Columns stay
where they are from row to row: underarm stitches continue the chart on either side of a section, and a seam
breaks it.
"""

from __future__ import annotations

from collections.abc import Iterable, Mapping, Sequence
from dataclasses import dataclass
from itertools import accumulate
from typing import Literal, NamedTuple

from grading_core.chart.fabric import Stretch, WorkedRound
from grading_core.chart.request import ChartRequest, ChartSize, PlainColours

Part = Literal["yoke", "body", "sleeve"]
Section = Literal["back", "front", "sleeve"]
StretchKind = Literal["back", "front", "first_sleeve", "second_sleeve", "sleeve", "line", "seam"]
PARTS: tuple[Part, ...] = ("yoke", "body", "sleeve")
SECTIONS: tuple[Section, ...] = ("back", "front", "sleeve")

WORKING_ORDER: Mapping[Part, tuple[StretchKind, ...]] = {
    "yoke": ("back", "line", "first_sleeve", "line", "front", "line", "second_sleeve", "line"),
    "body": ("back", "seam", "front", "seam"),
    "sleeve": ("sleeve", "seam"),
}
"""What the stretches of a round are, in each part."""


@dataclass(frozen=True, slots=True)
class Layout:
    """Every round of one size: the yoke, the body and one sleeve, round 1 first.

    off_centre: the sections, as (part, section), whose centre lies half a stitch from their anchor in a round
    that works the chart.
    """

    yoke: tuple[WorkedRound, ...]
    body: tuple[WorkedRound, ...]
    sleeve: tuple[WorkedRound, ...]
    off_centre: tuple[tuple[Part, Section], ...]

    def rounds(self, part: Part) -> tuple[WorkedRound, ...]:
        """The rounds of one part."""
        return {"yoke": self.yoke, "body": self.body, "sleeve": self.sleeve}[part]


def lay_out(request: ChartRequest, size: ChartSize, colours: PlainColours) -> Layout:
    """Where the chart lies in every round of one size.

    request: free of `request_problems`. size: one of its sizes. colours: the request's `plain_colours`. A section
    whose count doesn't agree with its anchor is shifted: its centre lies half a stitch before it. Where an
    underarm less its seam is odd, the odd stitch goes to the end of each half, so that columns still run
    straight through the split.
    """
    rows = _rows(request, size)
    back, front, sleeve = (_lay_section(request, size, section, rows, colours.plain) for section in SECTIONS)
    line = Stretch(request.line_stitches, None, colours.line)
    side, under = (Stretch(seam, None, colours.seam) for seam in request.seams(size))
    yoke = zip(rows, back.yoke, front.yoke, sleeve.yoke, strict=False)
    below = rows[size.rounds :]
    return Layout(
        tuple(WorkedRound(row, (b, line, s, line, f, line, s, line)) for row, b, f, s in yoke),
        tuple(WorkedRound(row, (b, side, f, side)) for row, b, f in zip(below, back.below, front.below, strict=False)),
        tuple(WorkedRound(row, (s, under)) for row, s in zip(below, sleeve.below, strict=False)),
        (*back.off_centre, *front.off_centre, *sleeve.off_centre),
    )


class _LaidSection(NamedTuple):
    yoke: list[Stretch]
    below: list[Stretch]
    off_centre: list[tuple[Part, Section]]


def _rows(request: ChartRequest, size: ChartSize) -> list[int | None]:
    """The chart row of every round from the yoke's first to the longest part's last, counted from 0."""
    last = size.rounds + max(size.body_rounds, size.sleeve_rounds)
    worked = (request.chart.row_worked(number - request.first_round + 1) for number in range(1, last + 1))
    return [None if row is None else row - 1 for row in worked]


def _lay_section(
    request: ChartRequest, size: ChartSize, section: Section, rows: Sequence[int | None], plain: str
) -> _LaidSection:
    part: Part = "sleeve" if section == "sleeve" else "body"
    neck, anchor = getattr(size.neck, section), getattr(request.anchor, section)
    if part == "body":
        share, seam = request.line_share[0], request.seams(size)[0]
        minimum, count = request.minimum_width.body, size.body_rounds
        changes = {step.round: step.stitches // 2 for step in size.body_shaping}
    else:
        share, seam = request.line_share[1], request.seams(size)[1]
        minimum, count = request.minimum_width.sleeve, size.sleeve_rounds
        changes = dict.fromkeys(size.sleeve_decrease_rounds, -2)
    gained = size.underarm - seam
    increases = {step.round: 2 * getattr(step, section) for step in size.increase_rounds}
    above = _widths(neck, size.rounds, increases)
    below = _widths(above[-1] + 2 * share + gained, count, changes)
    # Centres are counted in half columns.
    asked = int(2 * anchor)
    centre = asked - (asked - neck - 1) % 2
    lower_centre = centre + gained % 2
    width, least = request.chart.width, max(minimum, 1)
    yoke = _stretches(above, rows, width, centre, least, plain)
    lower = _stretches(below, rows[size.rounds :], width, lower_centre, least, plain)
    found: tuple[tuple[Part, int, list[Stretch]], ...] = (("yoke", centre, yoke), (part, lower_centre, lower))
    off_centre: list[tuple[Part, Section]] = [
        (where, section)
        for where, middle, stretches in found
        if middle != asked and any(stretch.start is not None for stretch in stretches)
    ]
    return _LaidSection(yoke, lower, off_centre)


def _widths(first: int, rounds: int, changes: Mapping[int, int]) -> list[int]:
    """The count after each round, given the changes by round."""
    return list(accumulate((changes.get(number, 0) for number in range(1, rounds + 1)), initial=first))[1:]


def _stretches(
    widths: Sequence[int], rows: Iterable[int | None], width: int, centre: int, minimum: int, colour: str
) -> list[Stretch]:
    """One section's stretches in a part: the chart where it is worked and wide enough, else plain."""
    charted = {count: Stretch(count, (centre - count - 1) // 2 % width, "") for count in set(widths)}
    plain = {count: Stretch(count, None, colour) for count in set(widths)}
    return [
        plain[count] if row is None or count < minimum else charted[count]
        for count, row in zip(widths, rows, strict=False)
    ]
