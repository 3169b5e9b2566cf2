"""Words of warning about a placed chart, and centres that lie half a stitch off."""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from fractions import Fraction
from itertools import pairwise

from grading_core.chart.grid import neck_parity
from grading_core.chart.layout import SECTIONS, Part, Section
from grading_core.chart.request import COMMON_FLOAT_LIMIT, ChartRequest
from grading_core.chart.result import BodyPlacement, LongestFloat, SizePlacement, SleevePlacement
from grading_core.codes import ProblemCode, WarningCode
from grading_core.errors import Problem, Remark
from grading_core.units import to_places
from grading_core.wording import counted, listed

COMMON_FLOAT_LIMIT_CM = Fraction(5, 2)


def half_stitch_problems(
    request: ChartRequest, index: int, off_centre: Sequence[tuple[Part, Section]]
) -> list[Problem]:
    """What puts sections of one size half a stitch off their anchor.

    request: the chart and the sizes. index: of the size. off_centre: the sections, from the size's layout.
    """
    size = request.sizes[index]
    found: dict[Problem, None] = {}
    for part, section in off_centre:
        anchor, stitches = getattr(request.anchor, section), getattr(size.neck, section)
        fitting = neck_parity(anchor)
        if (stitches % 2 == 1) != (fitting == "odd"):
            other = "even" if fitting == "odd" else "odd"
            half = Fraction(1, 2)
            problem = Problem(
                ("sizes", index, "neck", section),
                ProblemCode.HALF_STITCH_OFF_CENTRE,
                f"{counted(stitches, 'stitch')} cannot be centred on column {_column(anchor)}, "
                f"which takes an {fitting} number; {_column(anchor - half)} and {_column(anchor + half)} take an "
                f"{other} one.",
            )
        else:
            seam = request.seams(size)[part == "sleeve"]
            problem = Problem(
                ("sizes", index, "underarm"),
                ProblemCode.HALF_STITCH_OFF_CENTRE,
                f"{counted(size.underarm, 'stitch')} less a seam of {seam} cannot be shared "
                f"evenly: the {part} would lie half a stitch off its centre.",
            )
        found[problem] = None
    return list(found)


def chart_remarks(request: ChartRequest, axes: Sequence[Fraction], off_centre: Sequence[Problem]) -> Iterator[Remark]:
    """Words about the chart on its sections.

    request: the chart and the sizes. axes: the chart's mirror axes. off_centre: accepted shifts by half a stitch.
    """
    for problem in off_centre:
        label = request.sizes[int(problem.path[1])].label
        yield Remark(WarningCode.HALF_STITCH_OFF_CENTRE, f"Size {label}: {problem.detail}", label, problem.path)
    around = {axis % request.chart.width for axis in axes}
    for section in SECTIONS:
        anchor = getattr(request.anchor, section)
        if around and anchor % request.chart.width not in around:
            yield Remark(
                WarningCode.ANCHOR_OFF_MIRROR_AXIS,
                f"The chart is mirrored about {_columns(axes)} and the {section} is centred on "
                f"column {_column(anchor)}, so its two sides differ.",
                path=("anchor", section),
            )


def size_remarks(request: ChartRequest, index: int, placed: SizePlacement) -> Iterator[Remark]:
    """Words about one size.

    request: the chart and the sizes. index: of the size. placed: the answer for it.
    """
    label, path = placed.label, ("sizes", index)
    parts: tuple[tuple[Part, BodyPlacement | SleevePlacement, WarningCode], ...] = (
        ("body", placed.body, WarningCode.BODY_CUTS_CHART),
        ("sleeve", placed.sleeve, WarningCode.SLEEVE_CUTS_CHART),
    )
    for part, below, code in parts:
        rounds = len(below.rounds)
        if 0 < rounds < placed.progress.finishing_rounds:
            stops = (
                "before the chart begins"
                if below.last_chart_row is None
                else f"the chart at row {below.last_chart_row} of {request.chart.height}"
            )
            yield Remark(
                code,
                f"Size {label}: a {part} of {counted(rounds, 'round')} stops {stops}; "
                f"{counted(placed.progress.finishing_rounds, 'round')} would finish it.",
                label,
                (*path, f"{part}_rounds"),
            )
    again = next(
        (
            after.round
            for before, after in pairwise(placed.sleeve.rounds)
            if before.first_column is not None and after.first_column is None and after.chart_row is not None
        ),
        None,
    )
    if again is not None:
        yield Remark(
            WarningCode.SLEEVE_PLAIN_AGAIN,
            f"Size {label}: from sleeve round {again} the sleeve is narrower than the minimum width and plain again.",
            label,
            (*path, "sleeve_decrease_rounds"),
        )
    over_two = placed.rounds_over_two_colours
    many = len(over_two.yoke) + len(over_two.body) + len(over_two.sleeve)
    if many:
        yield Remark(
            WarningCode.MORE_THAN_TWO_COLOURS,
            f"Size {label}: {counted(many, 'round')} of yoke, body and sleeve "
            f"{'uses' if many == 1 else 'use'} more than two colours at once.",
            label,
        )
    if placed.longest_float is not None:
        yield from _float_remarks(request, label, placed.longest_float)


def _float_remarks(request: ChartRequest, label: str, longest: LongestFloat) -> Iterator[Remark]:
    long = f"{counted(longest.stitches, 'stitch')} ({to_places(longest.length_cm)} cm)"
    name = request.chart.colours[longest.colour].name
    if longest.stitches > request.float_limit:
        yield Remark(
            WarningCode.LONG_FLOAT,
            f"Size {label}: the longest float is {long} of {name}, in {longest.part} round {longest.round}; "
            f"catch it at the back, not at the same place in rounds that follow each other.",
            label,
        )
    if request.for_children and (
        longest.stitches > min(request.float_limit, COMMON_FLOAT_LIMIT) or longest.length_cm > COMMON_FLOAT_LIMIT_CM
    ):
        yield Remark(
            WarningCode.FLOAT_CAN_CATCH_FINGERS,
            f"Size {label}: a float of {long} inside a baby's or young child's garment can catch fingers and "
            "toes; catch every long float at the back, choose a chart with shorter ones, or line the "
            "garment.",
            label,
        )


def _column(anchor: Fraction) -> str:
    return str(anchor.numerator) if anchor.denominator == 1 else f"{anchor.numerator // 2}.5"


def _columns(axes: Sequence[Fraction]) -> str:
    words = [_column(axis) for axis in axes[:4]]
    if len(axes) > 4:
        words.append("others")
    return f"column{'' if len(words) == 1 else 's'} {listed(words)}"
