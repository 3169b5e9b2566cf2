"""What a picture of a placed chart needs: the starts traced over the rounds, and the colours compared."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass

from grading_core.chart.contrast import colour_contrasts, contrast_problems
from grading_core.chart.grid import Chart
from grading_core.chart.layout import Layout, Part, Section
from grading_core.chart.placement import place_size
from grading_core.chart.problems import picture_problems
from grading_core.chart.request import ChartPictureRequest, ContrastRequest, PlainColours
from grading_core.chart.result import ColourContrasts, SectionStart, SizePlacement, SleeveRound
from grading_core.codes import ProblemCode
from grading_core.errors import Check, Path, Problem, check, places, sound
from grading_core.gauge import Gauge

MAX_STITCHES_DRAWN = 100_000
"""Of a chart, or of one front, in a picture."""


@dataclass(frozen=True, slots=True)
class Trace:
    """The starts of one section, for a line drawn over the chart round by round.

    part, section: whose. pieces: unbroken lines of (round, first column), the rounds counted in the part; a new
    one begins where the line leaves the chart at one side and comes in at the other, or the section was plain.
    """

    part: Part
    section: Section
    pieces: tuple[tuple[tuple[int, int], ...], ...]


@dataclass(frozen=True, slots=True, kw_only=True)
class ChartView:
    """A chart, and where one size starts in it.

    gauge: that its stitches are drawn at. first_round: the yoke round that works its row 1. plain: the colours of
    what isn't worked from it. size: where it lies. traces: of the size's sections.
    """

    chart: Chart
    gauge: Gauge
    first_round: int
    plain: PlainColours
    size: SizePlacement
    traces: tuple[Trace, ...]


@dataclass(frozen=True, slots=True)
class ContrastView:
    """Colours beside their greys. chart: drawn in both; None where there is none."""

    contrasts: ColourContrasts
    chart: Chart | None


def contrast_view(request: ContrastRequest) -> ContrastView:
    """The colours compared, and the chart that is drawn in them.

    request: the colours, and the chart.

    Raises ContradictionError as `colour_contrasts` does, and for a chart of more stitches than `MAX_STITCHES_DRAWN`.
    """
    sound(contrast_view_problems(request))
    return ContrastView(colour_contrasts(request), request.chart)


@check
def contrast_view_problems(request: ContrastRequest) -> Check[None]:
    """As `contrast_problems`, and a chart of too many stitches to draw.

    request: any.
    """
    found = yield from places(contrast_problems(request))
    if request.chart is not None and not found:
        yield from too_many_problems(request.chart.width * request.chart.height, ("chart",))


@check
def chart_view_problems(request: ChartPictureRequest) -> Check[tuple[int, Layout]]:
    """As `picture_problems`, and a chart of too many stitches to draw.

    request: any.
    """
    index, layout = yield from picture_problems(request)
    chart = request.placements.chart
    yield from too_many_problems(chart.width * chart.height, ("chart",))
    return index, layout


def chart_view(request: ChartPictureRequest) -> ChartView:
    """The chart, and where each section of one size starts in it, traced round by round.

    request: the size, and the chart on it.

    Raises ContradictionError for a label that no size has, as `place_size` does, and for a chart of more stitches than
    `MAX_STITCHES_DRAWN`.
    """
    placements = request.placements
    index, layout = sound(chart_view_problems(request))
    chart, size = placements.worked_chart, place_size(placements, index, layout)
    return ChartView(
        chart=chart,
        gauge=placements.gauge,
        first_round=placements.first_round,
        plain=placements.plain_colours(),
        size=size,
        traces=start_traces(size),
    )


def start_traces(placed: SizePlacement) -> tuple[Trace, ...]:
    """Where each section starts, traced round by round.

    placed: one size of an answer.
    """
    yoke, body, sleeve = placed.rounds, placed.body.rounds, placed.sleeve.rounds
    return (
        _trace("yoke", "back", [here.back for here in yoke]),
        _trace("yoke", "front", [here.front for here in yoke]),
        _trace("yoke", "sleeve", [here.sleeve for here in yoke]),
        _trace("body", "back", [here.back for here in body]),
        _trace("body", "front", [here.front for here in body]),
        _trace("sleeve", "sleeve", sleeve),
    )


@check
def too_many_problems(stitches: int, path: Path) -> Check[None]:
    """More stitches than a picture holds.

    stitches: to draw. path: of what has them.
    """
    if stitches > MAX_STITCHES_DRAWN:
        detail = f"has {stitches} stitches to draw, and a picture holds at most {MAX_STITCHES_DRAWN}."
        yield Problem(path, ProblemCode.TOO_MANY_STITCHES, detail)


def _trace(part: Part, section: Section, starts: Sequence[SectionStart | SleeveRound]) -> Trace:
    pieces: list[list[tuple[int, int]]] = []
    width = plain = 0
    for number, here in enumerate(starts, 1):
        if here.first_column is None:
            width = plain = 0
            continue
        # Half the stitches that a section gains lie before its start, and the more of them the fewer are plain there.
        follows = (number - 1, here.first_column + (here.stitches - width) // 2 + plain - (here.plain_before or 0))
        if width and pieces[-1][-1] == follows:
            pieces[-1].append((number, here.first_column))
        else:
            pieces.append([(number, here.first_column)])
        width, plain = here.stitches, here.plain_before or 0
    return Trace(part, section, tuple(map(tuple, pieces)))
