"""Operations about colourwork charts."""

from __future__ import annotations

from grading_core.chart.contrast import MAX_LOW, colour_contrasts, contrast_problems
from grading_core.chart.drawn_rounds import MAX_ROUNDS_DRAWN, chart_view, chart_view_problems
from grading_core.chart.front import front_problems, front_view
from grading_core.chart.grid import MAX_COLOURS, MAX_COLUMNS, MAX_ROWS
from grading_core.chart.lightness import READS_APART, READS_CLEARLY
from grading_core.chart.placement import place_charts
from grading_core.chart.problems import placement_problems
from grading_core.chart.request import MAX_LOOKUPS
from grading_core.chart.views import MAX_STITCHES_DRAWN, contrast_view, contrast_view_problems
from grading_core.limits import MAX_ROUNDS_IN_ALL
from service.charts import read_chart
from service.media import PER_SIZE, PICTURE, PNG
from service.operation import Operation
from service.png_chart import MAX_BYTES
from service.representations.pictures.chart.contrast import contrast_picture
from service.representations.pictures.chart.placement import chart_picture
from service.representations.pictures.front.placement import garment_picture
from service.schemas.base import NothingSchema
from service.schemas.chart_answer import ChartPlacementsSchema, ReadChartSchema
from service.schemas.chart_request import ChartPictureRequestSchema, ChartPlacementsRequestSchema
from service.schemas.contrast import ColourContrastsRequestSchema, ColourContrastsSchema

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
    summary="Draw the chart with the starts of one size marked in it",
    description=f"""\
Draws the chart round by round as one size works it, in the stitch proportions of the gauge, through the yoke and on
below the split to the end of the repeat. In every round the stitch in which back, front and sleeves start is marked,
and its column stands in the margin; stitches keep their own colours.

Everything can be told apart in black and white: the starts by the shape of their marks, the colours by their greys, and
by a small mark in each stitch where two greys would be alike. What has no `hex` is drawn in the text colour of the
page. A picture has at most {MAX_ROUNDS_DRAWN:,} rounds and {MAX_STITCHES_DRAWN:,} stitches.""",
    request=ChartPictureRequestSchema,
    answer=None,
    call=chart_view,
    check=chart_view_problems,
    represent=chart_picture,
    media=PICTURE,
    saved_as=lambda request: ("chart", request.size),
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
    saved_as=lambda request: ("front", request.size or request.placements.sizes[0].label),
    drawn_of=lambda request: request.placements,
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

COLOUR_CONTRASTS = Operation(
    path="/v1/colour-contrasts",
    name="colour-contrasts",
    tag="Colourwork",
    summary="Tell whether colours read apart",
    description=f"""\
Compares every two colours by lightness (CIE L*), as knitters do by a grey photograph: two that are equally light look
alike in it whatever their hues, and a motif in one hardly shows on the other. From a difference of {READS_CLEARLY} on
they read apart `clearly`: their contrast ratio is then at least 3:1, which WCAG 2.2 asks of what is to be made out in
graphics (1.4.11). Below {READS_APART} they `hardly` do (common practice, no source), and between the two `softly`.

With a chart, each pair that hardly reads apart has `meetings`: how often its stitches lie side by side and one above
the other in one repeat, and the first places. A word (`low_contrast`) is given of at most {MAX_LOW} pairs, the most
alike, and with a chart only of those that meet in it. `POST /v1/chart-placements` and `POST /v1/pullovers` give the
same word.""",
    request=ColourContrastsRequestSchema,
    answer=ColourContrastsSchema,
    call=colour_contrasts,
    check=contrast_problems,
)

CONTRAST_PICTURE = Operation(
    path="/v1/colour-contrasts/picture",
    name="colour-contrasts-picture",
    tag="Colourwork",
    summary="Draw a chart in its colours and in greys",
    description=f"""\
Draws the chart as it was sent and, beside it, the same in greys of the same lightness, as a grey photograph of the
fabric would show it. Below stand each colour with its grey and its lightness, and the pairs that hardly read apart.
Without a chart, only these. The chart has at most {MAX_STITCHES_DRAWN:,} stitches.""",
    request=ColourContrastsRequestSchema,
    answer=None,
    call=contrast_view,
    check=contrast_view_problems,
    represent=contrast_picture,
    media=PICTURE,
    saved_as=lambda request: ("colours",),
)

OPERATIONS = (CHARTS, CHART_PLACEMENTS, CHART_PICTURE, GARMENT_PICTURE, COLOUR_CONTRASTS, CONTRAST_PICTURE)
