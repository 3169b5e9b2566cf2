"""Operations about colourwork charts."""

from __future__ import annotations

from grading_core.chart_placement import place_charts
from grading_core.chart_result import ChartPlacements
from grading_core.gauge import Gauge
from service.charts import DrawnChart
from service.operation import PER_SIZE, Operation
from service.representations import chart as representations
from service.schemas.chart import ChartPlacementsQuery, ChartPlacementsRequestSchema, ChartPlacementsSchema


def _place(query: ChartPlacementsQuery) -> tuple[DrawnChart, Gauge, ChartPlacements]:
    drawn, plan = query.plan()
    return drawn, plan.gauge, place_charts(plan)


CHART_PLACEMENTS: Operation[ChartPlacementsQuery, tuple[DrawnChart, Gauge, ChartPlacements]] = Operation(
    path="/v1/chart-placements",
    name="chart-placements",
    tag="Colourwork",
    summary="Place a colourwork chart on every round, section and size",
    description="""\
Says for every round, section and size where the chart starts: the chart row, the first column, the stitches and the
last column, through the yoke and on into body and sleeves. `changes` lists the rounds in which a start moves.

Columns are counted from the right, row 1 is worked first. Each section keeps its anchor, the column on its centre,
through every increase: a section of n stitches starts with column ((c - (n + 1) / 2) mod W) + 1. The row never
restarts, not even at the split. A section may stay plain until it is wide enough for the motif (`minimum_width`).

The longest float is found over what is really worked: sections, plain sections, raglan lines, seams, and the step from
each round to the next. The stitches of each colour come from the very same placement.

The chart comes as rows of characters, or as a PNG of one pixel a stitch in base64; both give the same answer.""",
    request=ChartPlacementsRequestSchema,
    answer=ChartPlacementsSchema,
    call=_place,
    represent=representations.chart_placements,
    media=PER_SIZE,
)

OPERATIONS = (CHART_PLACEMENTS,)
