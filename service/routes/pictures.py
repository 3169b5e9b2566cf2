"""Pictures of a whole pullover, and pages to print."""

from __future__ import annotations

from collections.abc import Callable, Iterator
from typing import TypeVar

from grading_core.chart.views import MAX_STITCHES_DRAWN
from grading_core.pullover.front import picture_front
from grading_core.pullover.pictures import (
    PicturedPullover,
    PictureRequest,
    chart_picture_problems,
    picture_chart,
    picture_problems,
    picture_pullover,
)
from service.lengths import LengthWriter
from service.media import PAGE, PICTURE
from service.operation import Operation
from service.representations.pages.pattern import pattern
from service.representations.pages.worksheet import worksheet
from service.representations.pictures.chart.chart import chart
from service.representations.pictures.front.front import front
from service.representations.pictures.schematic.schematic import schematic
from service.representations.pictures.sheets import Picture, picture_file
from service.representations.pictures.yoke_plot import yoke_plot
from service.schemas.picture import PulloverPicturesRequestSchema, PulloverSizePicturesRequestSchema

_SAME = """\
Takes the very same request as `POST /v1/pullovers`, and in `picture` which size is drawn, on what paper, and the
design's name. Every sheet says size, gauge and main counts, the version that made it, and the digest that
`POST /v1/pullovers` answers the same numbers with. It can be read in black and white; a size that can't be knitted is
left out, and the heading says why."""

_SAME_PAGE = """\
Takes the very same request as `POST /v1/pullovers`, and in `picture` which size is printed, on what paper, and the
design's name. The page brings along all that it needs. Every printed sheet says name and gauge, the version that made
it, and the digest that `POST /v1/pullovers` answers the same numbers with. It can be read in black and white; a size
that can't be knitted is left out, and the page says why."""


Pictured = TypeVar("Pictured", bound=PicturedPullover)


def _file(draw: Callable[[Pictured, LengthWriter], Picture]) -> Callable[[Pictured, LengthWriter], str]:
    """Makes a picture as a file.

    draw: makes the picture.
    """
    return lambda view, length: picture_file(draw(view, length), view.picture.page)


def _saved_as(kind: str) -> Callable[[PictureRequest], Iterator[str | None]]:
    """Tells the words of a file's name: the design's, what it shows, and of which size.

    kind: what it shows.
    """

    def words(request: PictureRequest) -> Iterator[str | None]:
        yield request.picture.title or "pullover"
        yield kind
        yield request.picture.size

    return words


SCHEMATIC = Operation(
    path="/v1/pullovers/schematic",
    name="pullovers-schematic",
    tag="Garment",
    summary="Draw a pullover's outline with its measurements",
    description=f"""\
Draws the pullover flat and true to scale, with every finished measurement of its table: each has the letter that its
row has in the table, and its value in cm and inches. Without a size all of them lie one inside the other.

{_SAME}""",
    request=PulloverPicturesRequestSchema,
    answer=None,
    call=picture_pullover,
    check=picture_problems,
    represent=_file(schematic),
    media=PICTURE,
    saved_as=_saved_as("schematic"),
    drawn_of=lambda request: request.pullover,
)

FRONT = Operation(
    path="/v1/pullovers/front",
    name="pullovers-front",
    tag="Garment",
    summary="Draw the front of one size as it will look",
    description=f"""\
Draws every stitch of one size as the garment lies flat, seen from the front: yoke and raglan lines, body and sleeves,
the back of the neck behind the front, ribs in their colours, with or without a chart. At most {MAX_STITCHES_DRAWN:,}
stitches.

{_SAME}""",
    request=PulloverSizePicturesRequestSchema,
    answer=None,
    call=picture_front,
    check=picture_problems,
    represent=_file(front),
    media=PICTURE,
    saved_as=_saved_as("front"),
    drawn_of=lambda request: request.pullover,
)

CHART = Operation(
    path="/v1/pullovers/chart",
    name="pullovers-chart",
    tag="Garment",
    summary="Draw a pullover's chart, with where every size starts in it",
    description=f"""\
Draws the chart as it is knitted. With a size it goes round by round through the whole yoke and on below, every start
marked with its column; without one a single repeat shows where body and sleeves of every size have their first stitch.

{_SAME}""",
    request=PulloverPicturesRequestSchema,
    answer=None,
    call=picture_chart,
    check=chart_picture_problems,
    represent=_file(chart),
    media=PICTURE,
    saved_as=_saved_as("chart"),
    drawn_of=lambda request: request.pullover,
)

YOKE_PLOT = Operation(
    path="/v1/pullovers/yoke-plot",
    name="pullovers-yoke-plot",
    tag="Garment",
    summary="Plot the stitches of a pullover's yoke over its rounds",
    description=f"""\
Plots how many stitches back, front and each sleeve have in every round of the yoke: of all sizes, or of one, before and
after a maker's changes where there are any.

{_SAME}""",
    request=PulloverPicturesRequestSchema,
    answer=None,
    call=picture_pullover,
    check=picture_problems,
    represent=_file(yoke_plot),
    media=PICTURE,
    saved_as=_saved_as("yoke-plot"),
    drawn_of=lambda request: request.pullover,
)

PATTERN = Operation(
    path="/v1/pullovers/pattern",
    name="pullovers-pattern",
    tag="Garment",
    summary="A pullover's pattern as a page to print",
    description=f"""\
The whole pattern in all sizes or in one, ready to be printed from a browser: sizes, finished measurements, gauge,
needles, yarn, notions, terms, and every part in sentences with size runs, the schematic and the chart in their places.

{_SAME_PAGE}""",
    request=PulloverPicturesRequestSchema,
    answer=None,
    call=picture_pullover,
    check=picture_problems,
    represent=pattern,
    media=PAGE,
    saved_as=_saved_as("pattern"),
    drawn_of=lambda request: request.pullover,
)

WORKSHEET = Operation(
    path="/v1/pullovers/worksheet",
    name="pullovers-worksheet",
    tag="Garment",
    summary="One size round by round, to tick off",
    description=f"""\
Every round of one size's yoke, body and sleeve as a page to print, with its increases or decreases, the stitches then
on the needles, and where the chart has its row and its starts; rounds that are worked alike stand in one line.

{_SAME_PAGE}""",
    request=PulloverSizePicturesRequestSchema,
    answer=None,
    call=picture_pullover,
    check=picture_problems,
    represent=worksheet,
    media=PAGE,
    saved_as=_saved_as("worksheet"),
    drawn_of=lambda request: request.pullover,
)

OPERATIONS = (SCHEMATIC, FRONT, CHART, YOKE_PLOT, PATTERN, WORKSHEET)
