"""The front of a garment as it will look, stitch by stitch.

A garment worked from the neck down is worn the other way up than it hangs from the needle: seen from outside,
what is worked first lies at the left, and row 1 at the top. So a chart, drawn with row 1 lowest and read from the
right, shows on the garment turned by half a circle, and the first sleeve is the wearer's right one.
"""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass

from grading_core.chart.fabric import Windows
from grading_core.chart.grid import Colour
from grading_core.chart.layout import PARTS, Layout, Part, StretchKind
from grading_core.chart.problems import picture_problems
from grading_core.chart.request import ChartPictureRequest, ChartRequest, ChartSize, PlainColours, SeamStitch
from grading_core.chart.views import stitches_drawn_problems
from grading_core.errors import Check, check, sound
from grading_core.fabric import Fabric
from grading_core.gauge import Gauge


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

    label: the size's. gauge, plain_gauge: of the rounds of the chart and of those without it, None where they have the
    same. fabric: what the rounds are knitted in, counted from the yoke's first. colours: by symbol. plain: of what
    isn't worked from the chart. yoke: the sections that are seen. body: the front half, and at either side the seam's
    half that is seen. first_sleeve, second_sleeve: their front halves, the first one's with half its seam at the end,
    the second one's with half at the start. body_seam, sleeve_seam: stitches of half a seam, the middle one included.
    seam: how they are worked. cast_on, body_stitches, sleeve_stitches: all stitches at the neck, and of body and
    sleeve at the split.
    """

    label: str
    gauge: Gauge
    plain_gauge: Gauge | None
    fabric: Fabric
    colours: Mapping[str, Colour]
    plain: PlainColours
    yoke: tuple[YokeView, ...]
    body: tuple[str, ...]
    first_sleeve: tuple[str, ...]
    second_sleeve: tuple[str, ...]
    body_seam: int
    sleeve_seam: int
    seam: SeamStitch
    cast_on: int
    body_stitches: int
    sleeve_stitches: int


def front_view(request: ChartPictureRequest) -> FrontView:
    """The colour of every stitch of one size's front.

    request: the size, and the chart on it.

    Raises ContradictionError for a label that no size has, as `place_size` does, and for more stitches than
    `MAX_STITCHES_DRAWN`.
    """
    index, layout = sound(front_problems(request))
    return seen_front(request.placements, request.placements.sizes[index], layout)


@check
def front_problems(request: ChartPictureRequest) -> Check[tuple[int, Layout]]:
    """As `picture_problems`, and a front of too many stitches to draw.

    request: any.
    """
    index, layout = yield from picture_problems(request)
    yield from stitches_drawn_problems(stitches_in_front(layout), ("sizes", index))
    return index, layout


def seen_front(placements: ChartRequest, size: ChartSize, layout: Layout) -> FrontView:
    """The front of a size that is laid out.

    placements: the chart. size: one that it is placed on. layout: of that size.
    """
    windows = Windows(placements.worked_chart.worked_rows())

    def seen(part: Part, section: StretchKind) -> list[str]:
        rows, stretches = layout.part(part).rows, layout.stretches(part, section)
        return [windows[row].stitches(each) for row, each in zip(rows, stretches, strict=True)]

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
    side, under = placements.seams(size)
    split = size.neck
    for step in size.increase_rounds:
        split = split.after(step.increases)
    to_body, to_sleeve = placements.line_share
    return FrontView(
        label=size.label,
        gauge=placements.gauge,
        plain_gauge=placements.plain_gauge,
        fabric=placements.fabric,
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
        cast_on=size.neck.total(placements.line_stitches),
        body_stitches=split.back + split.front + 4 * to_body + 2 * size.underarm,
        sleeve_stitches=split.sleeve + 2 * to_sleeve + size.underarm,
    )


def stitches_in_front(layout: Layout) -> int:
    """Half of every round of yoke and body, and the front halves of both sleeves.

    layout: of the size.
    """
    yoke, body, sleeve = (
        sum(stretch.stitches for column in layout.part(part).columns for stretch in column) for part in PARTS
    )
    return (yoke + body) // 2 + sleeve


def _last_half(sleeve: str) -> str:
    """The front half of the first sleeve, which is worked from back to front, and of a seam before a front half."""
    return sleeve[len(sleeve) // 2 :]


def _first_half(sleeve: str) -> str:
    """The front half of the second sleeve, which is worked from front to back, and of a seam after a front half."""
    return sleeve[: (len(sleeve) + 1) // 2]
