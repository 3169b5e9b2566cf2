"""What a picture of a placed chart needs: the front as it will look, and the starts traced over the rounds.

A garment worked from the neck down is worn the other way up than it hangs from the needle: seen from outside,
what is worked first lies at the left, and row 1 at the top. So a chart, drawn with row 1 lowest and read from the
right, shows on the garment turned by half a circle, and the first sleeve is the wearer's right one.
"""

from __future__ import annotations

from collections.abc import Mapping, Sequence
from dataclasses import dataclass

from grading_core.chart.contrast import colour_contrasts, contrast_problems
from grading_core.chart.fabric import Windows
from grading_core.chart.grid import Chart, Colour
from grading_core.chart.layout import PARTS, WORKING_ORDER, Layout, Part, Section, StretchKind
from grading_core.chart.placement import place_size
from grading_core.chart.problems import picture_problems
from grading_core.chart.request import ChartPictureRequest, ContrastRequest, PlainColours, SeamStitch
from grading_core.chart.result import ColourContrasts, SectionStart, SizePlacement, SleeveRound
from grading_core.codes import ProblemCode
from grading_core.errors import Check, Path, Problem, check, places, sound
from grading_core.gauge import Gauge

MAX_STITCHES_DRAWN = 100_000
"""Of the chart, or of one front, in a picture."""


@dataclass(frozen=True, slots=True)
class YokeView:
    """A yoke round seen from the front, each part from the viewer's left to right, as it is worked.

    first_sleeve, second_sleeve: their front halves, the middle stitch included. line: one raglan line.
    """

    first_sleeve: str
    line: str
    front: str
    second_sleeve: str


@dataclass(frozen=True, slots=True, kw_only=True)
class FrontView:
    """The front of one size, a string of colour symbols a round, round 1 first.

    label: the size's. gauge: that the stitches are drawn at. colours: by symbol. plain: of what isn't worked from the
    chart. yoke: the sections that are seen. body: the front half, and at either side the seam's half that is seen.
    first_sleeve, second_sleeve: their front halves, the first one's with half its seam at the end, the second one's
    with half at the start. body_seam, sleeve_seam: stitches of half a seam, the middle one included. seam: how they are
    worked.
    """

    label: str
    gauge: Gauge
    colours: Mapping[str, Colour]
    plain: PlainColours
    yoke: tuple[YokeView, ...]
    body: tuple[str, ...]
    first_sleeve: tuple[str, ...]
    second_sleeve: tuple[str, ...]
    body_seam: int
    sleeve_seam: int
    seam: SeamStitch


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
        yield from _too_many_problems(request.chart.width * request.chart.height, ("chart",))


def front_view(request: ChartPictureRequest) -> FrontView:
    """The colour of every stitch of one size's front.

    request: the size, and the chart on it.

    Raises ContradictionError for a label that no size has, as `place_size` does, and for more stitches than
    `MAX_STITCHES_DRAWN`.
    """
    placements = request.placements
    index, layout = sound(front_problems(request))
    windows = Windows(placements.worked_chart.worked_rows())

    def seen(part: Part, section: StretchKind) -> list[str]:
        place = WORKING_ORDER[part].index(section)
        return [windows.row(worked.row).stitches(worked.stretches[place]) for worked in layout.rounds(part)]

    yoke = zip(
        seen("yoke", "first_sleeve"),
        seen("yoke", "line"),
        seen("yoke", "front"),
        seen("yoke", "second_sleeve"),
        strict=True,
    )
    # Of the stitches between two sections those before their middle lie at the side of the one worked first.
    body = zip(seen("body", "front"), seen("body", "seam"), strict=True)
    sleeves = [*zip(seen("sleeve", "sleeve"), seen("sleeve", "seam"), strict=True)]
    side, under = placements.seams(placements.sizes[index])
    return FrontView(
        label=placements.sizes[index].label,
        gauge=placements.gauge,
        colours=placements.chart.colours,
        plain=placements.plain_colours(),
        yoke=tuple(
            YokeView(_last_half(first), line, front, _first_half(second)) for first, line, front, second in yoke
        ),
        body=tuple(_last_half(seam) + front + _first_half(seam) for front, seam in body),
        first_sleeve=tuple(_last_half(sleeve) + _first_half(seam) for sleeve, seam in sleeves),
        second_sleeve=tuple(_last_half(seam) + _first_half(sleeve) for sleeve, seam in sleeves),
        body_seam=-(-side // 2),
        sleeve_seam=-(-under // 2),
        seam=placements.seam,
    )


@check
def front_problems(request: ChartPictureRequest) -> Check[tuple[int, Layout]]:
    """As `picture_problems`, and a front of too many stitches to draw.

    request: any.
    """
    index, layout = yield from picture_problems(request)
    yield from _too_many_problems(_stitches_in_front(layout), ("sizes", index))
    return index, layout


@check
def chart_view_problems(request: ChartPictureRequest) -> Check[tuple[int, Layout]]:
    """As `picture_problems`, and a chart of too many stitches to draw.

    request: any.
    """
    index, layout = yield from picture_problems(request)
    chart = request.placements.chart
    yield from _too_many_problems(chart.width * chart.height, ("chart",))
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


def _stitches_in_front(layout: Layout) -> int:
    """Half of every round of yoke and body, and the front halves of both sleeves."""
    yoke, body, sleeve = (
        sum(stretch.stitches for worked in layout.rounds(part) for stretch in worked.stretches) for part in PARTS
    )
    return (yoke + body) // 2 + sleeve


@check
def _too_many_problems(stitches: int, path: Path) -> Check[None]:
    if stitches > MAX_STITCHES_DRAWN:
        detail = f"has {stitches} stitches to draw, and a picture holds at most {MAX_STITCHES_DRAWN}."
        yield Problem(path, ProblemCode.TOO_MANY_STITCHES, detail)


def _last_half(sleeve: str) -> str:
    """The front half of the first sleeve, which is worked from back to front, and of a seam before a front half."""
    return sleeve[len(sleeve) // 2 :]


def _first_half(sleeve: str) -> str:
    """The front half of the second sleeve, which is worked from front to back, and of a seam after a front half."""
    return sleeve[: (len(sleeve) + 1) // 2]


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
