"""Words of warning about a placed chart, and centres that lie half a stitch off."""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from itertools import pairwise
from typing import NamedTuple

from grading_core.chart.grid import neck_parity
from grading_core.chart.layout import SECTIONS, Part, Section
from grading_core.chart.request import COMMON_FLOAT_LIMIT, ChartRequest
from grading_core.chart.result import BodyPlacement, LongestFloat, SizePlacement, SleevePlacement
from grading_core.codes import ProblemCode, WarningCode
from grading_core.errors import Problem, Remark
from grading_core.fraction import Fraction
from grading_core.sentences import CM, COUNT, NUMBER, NUMBERS, TEXT, TOKEN, Saying, Sentence
from grading_core.wording import counted

COMMON_FLOAT_LIMIT_CM = Fraction(5, 2)
_HALF = Fraction(1, 2)

HALF_STITCH_OFF = Saying(
    "warning.half_stitch_off_centre",
    section=TOKEN, stitches=COUNT, column=NUMBER, fitting=TOKEN, below=NUMBER, above=NUMBER,
)  # fmt: skip
"""fitting: whether the column takes an odd or an even number of stitches. below, above: columns that take the other."""
UNDERARM_HALF_OFF = Saying("warning.half_stitch_off_centre_underarm", part=TOKEN, underarm=COUNT, seam=COUNT)
OFF_MIRROR_AXIS = Saying("warning.anchor_off_mirror_axis", axes=NUMBERS, more=COUNT, section=TOKEN, column=NUMBER)
_CUT = {"rounds": COUNT, "row": COUNT, "rows": COUNT, "finishing": COUNT}
BODY_CUTS = Saying("warning.body_cuts_chart", **_CUT)
SLEEVE_CUTS = Saying("warning.sleeve_cuts_chart", **_CUT)
_UNBEGUN = {"rounds": COUNT, "finishing": COUNT}
BODY_CUTS_ALL = Saying("warning.body_cuts_chart_unbegun", **_UNBEGUN)
SLEEVE_CUTS_ALL = Saying("warning.sleeve_cuts_chart_unbegun", **_UNBEGUN)
PLAIN_AGAIN = Saying("warning.sleeve_plain_again", round=COUNT, lacks=TOKEN)
"""lacks: what the sleeve has no more: the least "width" for the chart, or room for a whole "motif"."""
OVER_TWO_COLOURS = Saying("warning.more_than_two_colours", rounds=COUNT)
_FLOAT = {"stitches": COUNT, "length": CM}
LONG_FLOAT = Saying("warning.long_float", **_FLOAT, colour=TEXT, part=TOKEN, round=COUNT)
CATCHES_FINGERS = Saying("warning.float_can_catch_fingers", **_FLOAT)

_MOST_AXES = 4
"""Mirror axes that are named."""


class HalfStitch(NamedTuple):
    """A section that lies half a stitch off its anchor. problem: where that is refused. message: where it isn't."""

    problem: Problem
    message: Sentence


def half_stitches(request: ChartRequest, index: int, off_centre: Sequence[tuple[Part, Section]]) -> list[HalfStitch]:
    """What puts sections of one size half a stitch off their anchor.

    request: the chart and the sizes. index: of the size. off_centre: the sections, from the size's layout.
    """
    size = request.sizes[index]
    found: dict[Problem, Sentence] = {}
    for part, section in off_centre:
        anchor, stitches = getattr(request.anchor, section), getattr(size.neck, section)
        fitting = neck_parity(anchor)
        if (stitches % 2 == 1) != (fitting == "odd"):
            other = "even" if fitting == "odd" else "odd"
            below, above = anchor - _HALF, anchor + _HALF
            problem = Problem(
                ("sizes", index, "neck", section),
                ProblemCode.HALF_STITCH_OFF_CENTRE,
                f"{counted(stitches, 'stitch')} cannot be centred on column {_column(anchor)}, "
                f"which takes an {fitting} number; {_column(below)} and {_column(above)} take an {other} one.",
            )
            found[problem] = HALF_STITCH_OFF(
                section=section, stitches=stitches, column=anchor, fitting=fitting, below=below, above=above
            )
        else:
            seam = request.seams(size)[part == "sleeve"]
            problem = Problem(
                ("sizes", index, "underarm"),
                ProblemCode.HALF_STITCH_OFF_CENTRE,
                f"{counted(size.underarm, 'stitch')} less a seam of {seam} cannot be shared "
                f"evenly: the {part} would lie half a stitch off its centre.",
            )
            found[problem] = UNDERARM_HALF_OFF(part=part, underarm=size.underarm, seam=seam)
    return [HalfStitch(problem, message) for problem, message in found.items()]


def chart_remarks(
    request: ChartRequest, axes: Sequence[Fraction], off_centre: Sequence[HalfStitch]
) -> Iterator[Remark]:
    """Words about the chart on its sections.

    request: the chart and the sizes. axes: the chart's mirror axes. off_centre: accepted shifts by half a stitch.
    """
    for problem, message in off_centre:
        label = request.sizes[int(problem.path[1])].label
        yield Remark(WarningCode.HALF_STITCH_OFF_CENTRE, message, label, problem.path)
    around = {axis % request.chart.width for axis in axes}
    for section in SECTIONS:
        anchor = getattr(request.anchor, section)
        if around and anchor % request.chart.width not in around:
            message = OFF_MIRROR_AXIS(
                axes=tuple(axes[:_MOST_AXES]), more=max(0, len(axes) - _MOST_AXES), section=section, column=anchor
            )
            yield Remark(WarningCode.ANCHOR_OFF_MIRROR_AXIS, message, path=("anchor", section))


def size_remarks(request: ChartRequest, index: int, placed: SizePlacement) -> Iterator[Remark]:
    """Words about one size.

    request: the chart and the sizes. index: of the size. placed: the answer for it.
    """
    label, path = placed.label, ("sizes", index)
    parts: tuple[tuple[Part, BodyPlacement | SleevePlacement, WarningCode, Saying, Saying], ...] = (
        ("body", placed.body, WarningCode.BODY_CUTS_CHART, BODY_CUTS, BODY_CUTS_ALL),
        ("sleeve", placed.sleeve, WarningCode.SLEEVE_CUTS_CHART, SLEEVE_CUTS, SLEEVE_CUTS_ALL),
    )
    finishing = placed.progress.finishing_rounds
    for part, below, code, cuts, cuts_all in parts:
        rounds, row = len(below.rounds), below.last_chart_row
        if 0 < rounds < finishing:
            message = (
                cuts_all(rounds=rounds, finishing=finishing)
                if row is None
                else cuts(rounds=rounds, row=row, rows=request.chart.height, finishing=finishing)
            )
            yield Remark(code, message, label, (*path, f"{part}_rounds"))
    sleeve = placed.sleeve.rounds
    place = next(
        (
            place
            for place, (before, here) in enumerate(pairwise(sleeve.starts[0]), 1)
            if before is not here
            if before.first_column is not None and here.first_column is None and sleeve.rows[place] is not None
        ),
        None,
    )
    if place is not None:
        again = sleeve[place]
        lacks = "width" if again.stitches < request.minimum_width.sleeve else "motif"
        message = PLAIN_AGAIN(round=again.round, lacks=lacks)
        yield Remark(WarningCode.SLEEVE_PLAIN_AGAIN, message, label, (*path, "sleeve_decrease_rounds"))
    over_two = placed.rounds_over_two_colours
    many = len(over_two.yoke) + len(over_two.body) + len(over_two.sleeve)
    if many:
        yield Remark(WarningCode.MORE_THAN_TWO_COLOURS, OVER_TWO_COLOURS(rounds=many), label)
    if placed.longest_float is not None:
        yield from _float_remarks(request, label, placed.longest_float)


def _float_remarks(request: ChartRequest, label: str, longest: LongestFloat) -> Iterator[Remark]:
    long = {"stitches": longest.stitches, "length": longest.length_cm}
    if longest.stitches > request.float_limit:
        name = request.chart.colours[longest.colour].name
        message = LONG_FLOAT(**long, colour=name, part=longest.part, round=longest.round)
        yield Remark(WarningCode.LONG_FLOAT, message, label)
    if request.for_children and (
        longest.stitches > min(request.float_limit, COMMON_FLOAT_LIMIT) or longest.length_cm > COMMON_FLOAT_LIMIT_CM
    ):
        yield Remark(WarningCode.FLOAT_CAN_CATCH_FINGERS, CATCHES_FINGERS(**long), label)


def _column(anchor: Fraction) -> str:
    return str(anchor.numerator) if anchor.denominator == 1 else f"{anchor.numerator // 2}.5"
