"""Operations about colourwork charts."""

from __future__ import annotations

from grading_core.chart.grid import MAX_COLOURS, MAX_COLUMNS, MAX_ROWS
from grading_core.chart.placement import place_charts
from grading_core.chart.problems import placement_problems
from grading_core.chart.request import MAX_LOOKUPS
from grading_core.chart.views import MAX_STITCHES_DRAWN, chart_view, chart_view_problems, front_problems, front_view
from grading_core.limits import MAX_ROUNDS_IN_ALL
from service.charts import read_chart
from service.media import PER_SIZE, PICTURE, PNG
from service.operation import Operation
from service.png_chart import MAX_BYTES
from service.representations.chart_picture import chart_picture
from service.representations.garment_picture import garment_picture
from service.schemas.base import NothingSchema
from service.schemas.chart_answer import ChartPlacementsSchema, ReadChartSchema
from service.schemas.chart_request import ChartPictureRequestSchema, ChartPlacementsRequestSchema

CHART_PLACEMENTS = Operation(
    path="/v1/chart-placements",
    name="chart-placements",
    tag="Colourwork",
    summary="Place a colourwork chart on every round, section and size",
    description=f"""\
Says for every round, section and size where the chart starts: the chart row, the first column, the stitches and the
last column, through the yoke and on into body and sleeves. `changes` lists the rounds in which a start moves.

Columns are counted from the right, row 1 is worked first. Each section keeps its anchor, the column on its centre,
through every increase: a section of n stitches starts with column ((c - (n + 1) / 2) mod W) + 1. The row never
restarts, not even at the split. A section may stay plain until it is wide enough for the motif (`minimum_width`).

The longest float is found over what is really worked: sections, plain sections, raglan lines, seams, and the step from
each round to the next. The stitches of each colour come from the very same placement.

The chart comes as rows of characters, or as a PNG of one pixel a stitch in base64; both give the same answer. An answer
holds at most {MAX_ROUNDS_IN_ALL:,} rounds of yoke, body and sleeve over all sizes, and fewer where one chart row has
more than {MAX_LOOKUPS // MAX_ROUNDS_IN_ALL} colours: their product is at most {MAX_LOOKUPS:,}.""",
    request=ChartPlacementsRequestSchema,
    answer=ChartPlacementsSchema,
    call=place_charts,
    check=placement_problems,
    media=PER_SIZE,
)

CHART_PICTURE = Operation(
    path="/v1/chart-placements/picture",
    name="chart-placements-picture",
    tag="Colourwork",
    summary="Draw the chart with the starts of one size traced on it",
    description=f"""\
Draws the chart round by round as one size works it, in the stitch proportions of the gauge, and traces over it the
column in which back, front and sleeves start: through the yoke, and on below the split to the end of the repeat.

Everything can be told apart in black and white: the traces by their lines and dots, the colours by their greys, and by
a mark in each stitch where two greys would be alike. What has no `hex` is drawn in the text colour of the page. The
chart has at most {MAX_STITCHES_DRAWN:,} stitches.""",
    request=ChartPictureRequestSchema,
    answer=None,
    call=chart_view,
    check=chart_view_problems,
    represent=chart_picture,
    media=PICTURE,
)

GARMENT_PICTURE = Operation(
    path="/v1/chart-placements/garment-picture",
    name="chart-placements-garment-picture",
    tag="Colourwork",
    summary="Draw the front of one size as it will look",
    description=f"""\
Draws every stitch of one size's front in its own colour and in the proportions of the gauge: the yoke's front with the
chart cut by its raglan lines, the body, and the sleeves, as the garment lies flat. Neckband, hem and cuffs are not
drawn. A front has at most {MAX_STITCHES_DRAWN:,} stitches.

Colours without `hex` are drawn as greys of the page's text colour; two that would be alike in grey differ by a mark in
each stitch.""",
    request=ChartPictureRequestSchema,
    answer=None,
    call=front_view,
    check=front_problems,
    represent=garment_picture,
    media=PICTURE,
)

CHARTS = Operation(
    path="/v1/charts",
    name="charts",
    tag="Colourwork",
    summary="Read a chart from a PNG",
    description=f"""\
Takes a PNG file (`Content-Type: image/png`), one pixel a stitch, and answers the chart as rows of characters, ready to
be sent as `chart` to the other operations. The colours get the symbols A, B, C ... in the order in which they are met,
row by row from the top left, and their hex as their name: name them as you like.

The file has at most {MAX_BYTES // 1024} KiB, {MAX_COLUMNS} x {MAX_ROWS} pixels and {MAX_COLOURS} colours, 8 bits a
sample; it is not animated and nothing in it is transparent. The other operations take the same file in base64, as
`chart.png`.""",
    request=NothingSchema,
    answer=ReadChartSchema,
    call=read_chart,
    takes=PNG,
)

OPERATIONS = (CHARTS, CHART_PLACEMENTS, CHART_PICTURE, GARMENT_PICTURE)
