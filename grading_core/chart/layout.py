"""The rounds of one size as they are knitted: which chart columns every stretch of every round shows.

Working order, right side out: the yoke's round starts with the back; below the split the body's round
starts at a side with the back, the sleeve's under the arm, and each ends with its seam stitches. Columns stay
where they are from row to row: underarm stitches continue the chart on either side of a section, and a seam
breaks it. Where motifs are only worked whole, the stitches of those that a section cuts are plain at its ends.
"""

from __future__ import annotations

from collections.abc import Iterable, Iterator, Mapping, Sequence
from dataclasses import dataclass
from itertools import accumulate, repeat
from typing import Literal, NamedTuple

from grading_core.chart.fabric import Stretch, WorkedRound
from grading_core.chart.request import ChartRequest, ChartSize, PlainColours
from grading_core.sections import IncreaseRound

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


class LaidPart(NamedTuple):
    """The rounds of one part, round 1 first.

    rows: of the chart, counted from 0, None where it isn't worked. columns: its stretches in working order, each round
    by round.
    """

    rows: Sequence[int | None]
    columns: tuple[Sequence[Stretch], ...]

    def rounds(self) -> Iterator[WorkedRound]:
        """Every round, without stretches that have no stitch in any."""
        worked = [column for column in self.columns if any(stretch[0] for stretch in column)]
        half = len(worked) // 2
        first, second = (
            zip(*columns, strict=True) if columns else repeat(()) for columns in (worked[:half], worked[half:])
        )
        return zip(self.rows, first, second, strict=False)

    def stretches(self, place: int) -> list[Stretch]:
        """What a round is made of, in working order. place: of the round, counted from 0."""
        return [column[place] for column in self.columns]


@dataclass(frozen=True, slots=True)
class Layout:
    """Every round of one size: the yoke, the body and one sleeve.

    off_centre: the sections, as (part, section), whose centre lies half a stitch from their anchor in a round
    that works the chart.
    """

    yoke: LaidPart
    body: LaidPart
    sleeve: LaidPart
    off_centre: tuple[tuple[Part, Section], ...]

    def part(self, part: Part) -> LaidPart:
        """One part."""
        return {"yoke": self.yoke, "body": self.body, "sleeve": self.sleeve}[part]

    def stretches(self, part: Part, kind: StretchKind) -> Sequence[Stretch]:
        """One stretch of a part, round by round; of two of a kind the first."""
        return self.part(part).columns[WORKING_ORDER[part].index(kind)]


class _Plain(dict[int, Stretch]):
    """Plain stretches by their count."""

    def __init__(self, colour: str) -> None:
        self.colour = colour

    def __missing__(self, count: int) -> Stretch:
        found = self[count] = Stretch(count, None, self.colour)
        return found


class _Charted(dict[int, Stretch]):
    """By their count, the stretches of a section where a row is worked: plain where it is too narrow for that."""

    def __init__(self, request: ChartRequest, plain: _Plain, centre: int, minimum: int) -> None:
        """centre: the column on the section's centre, in half columns. minimum: stitches that the chart needs."""
        self._width = request.chart.width
        self._motif = request.whole_motif
        self._plain = plain
        self._centre = centre
        self._minimum = max(minimum, 1)

    def __missing__(self, count: int) -> Stretch:
        charted = self._charted(count) if count >= self._minimum else None
        found = self[count] = charted or self._plain[count]
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
        return Stretch(
            count, (start + before) % self._width, self._plain.colour if before or after else "", before, after
        )


class Stretches:
    """What the sections of a request are made of; one object for all stretches alike, in whatever round and size."""

    def __init__(self, request: ChartRequest, colours: PlainColours) -> None:
        """request: any. colours: its `plain_colours`."""
        self.colours = colours
        self.plain, self.last = _Plain(colours.plain), _Plain(colours.last.plain)
        self._request = request
        self._charted: dict[tuple[int, int], _Charted] = {}

    def charted(self, centre: int, minimum: int) -> _Charted:
        """Of sections with a column on their centre, in half columns, that need so many stitches for the chart."""
        found = self._charted.get((centre, minimum))
        if found is None:
            found = self._charted[centre, minimum] = _Charted(self._request, self.plain, centre, minimum)
        return found


def lay_out(request: ChartRequest, size: ChartSize, known: Stretches) -> Layout:
    """Where the chart lies in every round of one size.

    request: free of `request_problems`. size: one of its sizes. known: the request's stretches. A section
    whose count doesn't agree with its anchor is shifted: its centre lies half a stitch before it. Where an
    underarm less its seam is odd, the odd stitch goes to the end of each half, so that columns still run
    straight through the split.
    """
    rounds = _rounds(request, size.rounds + max(size.body_rounds, size.sleeve_rounds))
    below = rounds.after(size.rounds)
    back, front, sleeve = (_lay_section(request, size, section, rounds, below, known) for section in SECTIONS)
    both = (known.colours, known.colours.last)
    line = rounds.each(*(Stretch(request.line_stitches, None, here.line) for here in both))[: size.rounds]
    side, under = (below.each(*(Stretch(seam, None, here.seam) for here in both)) for seam in request.seams(size))
    side, under = side[: size.body_rounds], under[: size.sleeve_rounds]
    yoke = (back.yoke, line, sleeve.yoke, line, front.yoke, line, sleeve.yoke, line)
    return Layout(
        LaidPart(rounds.rows[: size.rounds], yoke),
        LaidPart(below.rows[: size.body_rounds], (back.below, side, front.below, side)),
        LaidPart(below.rows[: size.sleeve_rounds], (sleeve.below, under)),
        (*back.off_centre, *front.off_centre, *sleeve.off_centre),
    )


class _Rounds(NamedTuple):
    """Rounds of any part.

    rows: of the chart, counted from 0, None where none is worked. begin, end: how many rounds come before the chart's
    first one, and how many until it is over.
    """

    rows: Sequence[int | None]
    begin: int
    end: int

    def after(self, rounds: int) -> _Rounds:
        """Without the first ones."""
        return _Rounds(self.rows[rounds:], max(self.begin - rounds, 0), max(self.end - rounds, 0))

    def each(self, stretch: Stretch, last: Stretch) -> list[Stretch]:
        """A stretch for every round, and another one where the chart is over."""
        return [stretch] * self.end + [last] * (len(self.rows) - self.end)


class _LaidSection(NamedTuple):
    yoke: list[Stretch]
    below: list[Stretch]
    off_centre: list[tuple[Part, Section]]


def _rounds(request: ChartRequest, many: int) -> _Rounds:
    """As many rounds from the yoke's first one on."""
    height = request.chart.height
    begin = min(request.first_round - 1, many)
    end = many if request.last_round is None else min(request.last_round, many)
    worked = [*range(height)] * -(-(end - begin) // height)
    return _Rounds([*repeat(None, begin), *worked[: end - begin], *repeat(None, many - end)], begin, end)


def _lay_section(
    request: ChartRequest, size: ChartSize, section: Section, rounds: _Rounds, lower: _Rounds, known: Stretches
) -> _LaidSection:
    """rounds: from the yoke's first one on. lower: those below the split."""
    part: Part = "sleeve" if section == "sleeve" else "body"
    neck, anchor = getattr(size.neck, section), getattr(request.anchor, section)
    changes: Iterable[tuple[int, int]]
    if part == "body":
        share, seam = request.line_share[0], request.seams(size)[0]
        minimum, count = request.minimum_width.body, size.body_rounds
        changes = [(step.round, step.stitches // 2) for step in size.body_shaping]
    else:
        share, seam = request.line_share[1], request.seams(size)[1]
        minimum, count = request.minimum_width.sleeve, size.sleeve_rounds
        changes = zip(size.sleeve_decrease_rounds, repeat(-2))
    gained = size.underarm - seam
    place = IncreaseRound._fields.index(section)
    above = _widths(neck, size.rounds, [(step[0], 2 * step[place]) for step in size.increase_rounds])
    below = _widths(above[-1] + 2 * share + gained, count, changes)
    # Centres are counted in half columns.
    asked = int(2 * anchor)
    centre = asked - (asked - neck - 1) % 2
    lower_centre = centre + gained % 2
    found: tuple[tuple[Part, int, list[Stretch]], ...] = (
        ("yoke", centre, _stretches(above, rounds, known, known.charted(centre, minimum))),
        (part, lower_centre, _stretches(below, lower, known, known.charted(lower_centre, minimum))),
    )
    off_centre: list[tuple[Part, Section]] = [
        (where, section)
        for where, middle, stretches in found
        if middle != asked and any(stretch.start is not None for stretch in stretches)
    ]
    return _LaidSection(found[0][2], found[1][2], off_centre)


def _widths(first: int, rounds: int, changes: Iterable[tuple[int, int]]) -> list[int]:
    """The count after each round, given rounds and what changes in them."""
    gained = [0] * rounds
    for number, change in changes:
        gained[number - 1] = change
    return [*accumulate(gained, initial=first)][1:]


def _stretches(widths: Sequence[int], rounds: _Rounds, known: Stretches, charted: _Charted) -> list[Stretch]:
    """One section's stretches in a part: the chart where it is worked and wide enough, else plain."""
    begin, end = rounds.begin, rounds.end
    return [
        *map(known.plain.__getitem__, widths[:begin]),
        *map(charted.__getitem__, widths[begin:end]),
        *map(known.last.__getitem__, widths[end:]),
    ]
