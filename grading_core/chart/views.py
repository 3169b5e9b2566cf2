"""What pictures of colourwork need: the front of a garment as it will look, and a chart beside its greys.

A garment worked from the neck down is worn the other way up than it hangs from the needle: seen from outside,
what is worked first lies at the left, and row 1 at the top. So a chart, drawn with row 1 lowest and read from the
right, shows on the garment turned by half a circle, and the first sleeve is the wearer's right one.
"""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass

from grading_core.chart.contrast import colour_contrasts, contrast_problems
from grading_core.chart.fabric import Windows
from grading_core.chart.grid import Chart, Colour
from grading_core.chart.layout import PARTS, WORKING_ORDER, Layout, Part, StretchKind
from grading_core.chart.problems import picture_problems
from grading_core.chart.request import ChartPictureRequest, ContrastRequest, PlainColours, SeamStitch
from grading_core.chart.result import ColourContrasts
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
        yield from stitches_drawn_problems(request.chart.width * request.chart.height, ("chart",))


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
    yield from stitches_drawn_problems(_stitches_in_front(layout), ("sizes", index))
    return index, layout


def _stitches_in_front(layout: Layout) -> int:
    """Half of every round of yoke and body, and the front halves of both sleeves."""
    yoke, body, sleeve = (
        sum(stretch.stitches for worked in layout.rounds(part) for stretch in worked.stretches) for part in PARTS
    )
    return (yoke + body) // 2 + sleeve


@check
def stitches_drawn_problems(stitches: int, path: Path) -> Check[None]:
    """More stitches than a picture holds.

    stitches: that are to be drawn. path: of what has them.
    """
    if stitches > MAX_STITCHES_DRAWN:
        detail = f"has {stitches} stitches to draw, and a picture holds at most {MAX_STITCHES_DRAWN}."
        yield Problem(path, ProblemCode.TOO_MANY_STITCHES, detail)


def _last_half(sleeve: str) -> str:
    """The front half of the first sleeve, which is worked from back to front, and of a seam before a front half."""
    return sleeve[len(sleeve) // 2 :]


def _first_half(sleeve: str) -> str:
    """The front half of the second sleeve, which is worked from front to back, and of a seam after a front half."""
    return sleeve[: (len(sleeve) + 1) // 2]
