"""The colourwork chart on a pullover: what is asked of it beside the rest, and where it lies on every size."""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import fields, replace

from grading_core.chart.fabric import Windows
from grading_core.chart.grid import Anchor, default_anchor
from grading_core.chart.placement import place_charts
from grading_core.chart.problems import request_problems
from grading_core.chart.request import BodyShaping, ChartOptions, ChartRequest, ChartSize, SeamStitches
from grading_core.chart.result import ChartPlacements
from grading_core.codes import ProblemCode
from grading_core.errors import Check, ContradictionError, Problem, check
from grading_core.fraction import Fraction
from grading_core.gauge import Gauge
from grading_core.pullover.request import ChartWishes, Gauges, YokeWishes
from grading_core.pullover.result import KnittedSize


def chart_problems(wishes: ChartWishes) -> Check[None]:
    """What contradicts itself in the wishes for the chart.

    wishes: any.
    """
    column = Fraction(1)
    anchor = Anchor(column, column, column) if wishes.anchor is None else wishes.anchor
    yield from request_problems(_plan(wishes, anchor, Gauge(column, column)))
    yield from _parity_problems(anchor)


@check
def _parity_problems(anchor: Anchor) -> Check[None]:
    if anchor.back.denominator != anchor.front.denominator:
        detail = "Back and front have as many stitches, so both take a whole column or both a half."
        yield Problem(("anchor", "front"), ProblemCode.ANCHORS_DISAGREE, detail)


def chart_anchor(wishes: ChartWishes | None) -> Anchor | None:
    """The anchor as asked, or the chart's default one for every section; None without a chart.

    wishes: free of `chart_problems`.
    """
    if wishes is None:
        return None
    if wishes.anchor:
        return wishes.anchor
    centre = default_anchor(wishes.chart)
    return Anchor(centre, centre, centre)


def plan_chart(
    wishes: ChartWishes | None, anchor: Anchor | None, yoke: YokeWishes, gauges: Gauges
) -> ChartRequest | None:
    """The chart as it is placed, without sizes; None without one.

    wishes: for the chart. anchor: from `chart_anchor`. yoke: its lines and seams. gauges: as asked.
    """
    if wishes is None or anchor is None:
        return None
    return replace(
        _plan(wishes, anchor, gauges.stranded or gauges.plain),
        # told once: it takes a look at every stitch of the chart
        plain_colour=wishes.plain_colours().plain,
        plain_gauge=gauges.plain,
        line_stitches=yoke.options.line_stitches,
        line_to_body=yoke.line_to_body,
        seam_stitches=SeamStitches(yoke.seam_stitches, yoke.seam_stitches),
        seam=yoke.seam,
    )


def lay_chart(
    plan: ChartRequest | None,
    sizes: Mapping[str, KnittedSize],
    windows: Windows | None = None,
    *,
    for_children: bool = False,
) -> ChartPlacements | None:
    """Where the chart lies on every size; None where there is no chart, or no size to lay it on.

    plan: from `plan_chart`. sizes: those that are possible, by label. windows: of the plan's chart, where it is laid
    more than once. for_children: whether any size is for a baby or a child.

    Raises ContradictionError for sizes that are too much for one answer.
    """
    if plan is None or not sizes:
        return None
    charted = replace(plan, sizes=tuple(charted_sizes(sizes).values()), for_children=for_children)
    try:
        return place_charts(charted, windows)
    except ContradictionError as error:
        # only the answer's length is left to contradict: what the chart and the garment have in common is planned
        problems = [Problem(("chart",), each.code, f"The sizes {each.detail}") for each in error.problems]
        raise ContradictionError(problems) from error


def charted_sizes(sizes: Mapping[str, KnittedSize]) -> dict[str, ChartSize]:
    """The counts of sizes that a chart's place depends on, by label.

    sizes: by label.
    """
    return {
        label: ChartSize(
            label=label,
            rounds=size.counts.rounds,
            neck=size.counts.neck,
            increase_rounds=size.yoke.increase_rounds,
            underarm=size.counts.underarm,
            body_rounds=size.body.rounds,
            body_shaping=[BodyShaping(number, stitches) for number, stitches in size.body.shaping],
            sleeve_rounds=size.sleeve.rounds,
            sleeve_decrease_rounds=size.sleeve.decrease_rounds,
        )
        for label, size in sizes.items()
    }


def with_chart(sizes: Mapping[str, KnittedSize], placements: ChartPlacements | None) -> dict[str, KnittedSize]:
    """Sizes with the chart where it lies on them; as they are without one.

    sizes: by label. placements: from `lay_chart`.
    """
    if placements is None:
        return dict(sizes)
    placed = {each.label: each for each in placements.sizes}
    return {label: replace(size, chart=placed.get(label)) for label, size in sizes.items()}


def _plan(wishes: ChartWishes, anchor: Anchor, gauge: Gauge) -> ChartRequest:
    options = {each.name: getattr(wishes, each.name) for each in fields(ChartOptions)}
    return ChartRequest(**options, anchor=anchor, gauge=gauge, sizes=())
