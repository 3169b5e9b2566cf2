"""The rounds of one size as they are knitted: which chart columns every stretch of every round shows.

Working order, right side out: the yoke's round starts with the back; below the split the body's round
starts at a side with the back, the sleeve's under the arm, and each ends with its seam stitches. Columns stay
where they are from row to row: underarm stitches continue the chart on either side of a section, and a seam
breaks it. Where motifs are only worked whole, the stitches of those that a section cuts are plain at its ends.
"""

from __future__ import annotations

from collections.abc import Mapping, Sequence
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
    rounds = _rounds(request, size)
    both = (colours, colours.last)
    back, front, sleeve = (_lay_section(request, size, section, rounds, both) for section in SECTIONS)
    lines = [Stretch(request.line_stitches, None, here.line) for here in both]
    sides, unders = ([Stretch(seam, None, here.seam) for here in both] for seam in request.seams(size))
    yoke = []
    for (row, over), b, f, s in zip(rounds, back.yoke, front.yoke, sleeve.yoke, strict=False):
        line = lines[over]
        yoke.append(WorkedRound(row, (b, line, s, line, f, line, s, line)))
    body = []
    for (row, over), b, f in zip(rounds[size.rounds :], back.below, front.below, strict=False):
        side = sides[over]
        body.append(WorkedRound(row, (b, side, f, side)))
    below = zip(rounds[size.rounds :], sleeve.below, strict=False)
    return Layout(
        tuple(yoke),
        tuple(body),
        tuple(WorkedRound(row, (s, unders[over])) for (row, over), s in below),
        (*back.off_centre, *front.off_centre, *sleeve.off_centre),
    )


class _Round(NamedTuple):
    """A round of any part: its chart row, counted from 0, None where none is worked; whether the chart is over."""

    row: int | None
    over: bool


class _LaidSection(NamedTuple):
    yoke: list[Stretch]
    below: list[Stretch]
    off_centre: list[tuple[Part, Section]]


class _Stretches(dict[tuple[int, bool, bool], Stretch]):
    """A section's stretches in a part: by its count, whether a row is worked, and whether the chart is over."""

    def __init__(
        self, request: ChartRequest, centre: int, minimum: int, colours: tuple[PlainColours, PlainColours]
    ) -> None:
        """centre: the column on the section's centre, in half columns. minimum: stitches that the chart needs."""
        self._width = request.chart.width
        self._motif = request.whole_motif
        self._centre = centre
        self._minimum = max(minimum, 1)
        self._colours = colours

    def __missing__(self, key: tuple[int, bool, bool]) -> Stretch:
        count, worked, over = key
        charted = self._charted(count) if worked and count >= self._minimum else None
        found = self[key] = charted or Stretch(count, None, self._colours[over].plain)
        return found

    def _charted(self, count: int) -> Stretch | None:
        """What is worked from the chart; None where no motif fits whole that has to."""
        start = (self._centre - count - 1) // 2 % self._width
        if self._motif is None:
            return Stretch(count, start, "")
        before = -start % self._motif
        motifs, after = divmod(count - before, self._motif)
        if motifs < 1:
            return None
        plain = self._colours[0].plain if before or after else ""
        return Stretch(count, (start + before) % self._width, plain, before, after)


def _rounds(request: ChartRequest, size: ChartSize) -> list[_Round]:
    """Every round from the yoke's first to the longest part's last."""
    ends, found = request.last_round, []
    for number in range(1, size.rounds + max(size.body_rounds, size.sleeve_rounds) + 1):
        row = request.chart.row_worked(number - request.first_round + 1)
        found.append(_Round(None if row is None else row - 1, ends is not None and number > ends))
    return found


def _lay_section(
    request: ChartRequest,
    size: ChartSize,
    section: Section,
    rounds: Sequence[_Round],
    colours: tuple[PlainColours, PlainColours],
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
    yoke = _stretches(above, rounds, _Stretches(request, centre, minimum, colours))
    lower = _stretches(below, rounds[size.rounds :], _Stretches(request, lower_centre, minimum, colours))
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


def _stretches(widths: Sequence[int], rounds: Sequence[_Round], known: _Stretches) -> list[Stretch]:
    """One section's stretches in a part: the chart where it is worked and wide enough, else plain."""
    return [known[count, row is not None, over] for count, (row, over) in zip(widths, rounds, strict=False)]
