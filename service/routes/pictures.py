"""Pictures of a whole pullover, and pages to print."""

from __future__ import annotations

from collections.abc import Callable
from typing import Any

from grading_core.chart.views import MAX_STITCHES_DRAWN
from grading_core.pullover.front import picture_front
from grading_core.pullover.pictures import (
    PicturedPullover,
    PictureRequest,
    chart_picture_problems,
    pattern_problems,
    picture_chart,
    picture_pattern,
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


def _operation(kind: str, summary: str, about: str, **own: Any) -> Operation[PictureRequest, PicturedPullover]:
    """An operation that answers a pullover's request with a picture or a page.

    kind: what it shows, in a word of its address. about: the description, but for what is the same in all. own: what
    is its own.
    """
    return Operation(
        **{
            "path": f"/v1/pullovers/{kind}",
            "name": f"pullovers-{kind}",
            "tag": "Garment",
            "summary": summary,
            "description": f"{about}\n\n{_SAME_PAGE if own['media'] == PAGE else _SAME}",
            "request": PulloverPicturesRequestSchema,
            "answer": None,
            "call": picture_pullover,
            "check": picture_problems,
            "saved_as": lambda request: (request.picture.title or "pullover", kind, request.picture.size),
            "drawn_of": lambda request: request.pullover,
            **own,
        }
    )


def _file(draw: Callable[[Any, LengthWriter], Picture]) -> Callable[[Any, LengthWriter], str]:
    """Makes a picture as a file.

    draw: makes the picture.
    """
    return lambda view, length: picture_file(draw(view, length), view.picture.page)


SCHEMATIC = _operation(
    "schematic",
    "Draw a pullover's outline with its measurements",
    """\
Draws the pullover flat and true to scale, with every finished measurement of its table: each has the letter that its
row has in the table, and its value in cm and inches. Without a size all of them lie one inside the other.""",
    represent=_file(schematic),
    media=PICTURE,
)

FRONT = _operation(
    "front",
    "Draw the front of one size as it will look",
    f"""\
Draws every stitch of one size as the garment lies flat, seen from the front: yoke and raglan lines, body and sleeves,
the back of the neck behind the front, ribs in their colours, with or without a chart. At most {MAX_STITCHES_DRAWN:,}
stitches.""",
    request=PulloverSizePicturesRequestSchema,
    call=picture_front,
    represent=_file(front),
    media=PICTURE,
)

CHART = _operation(
    "chart",
    "Draw a pullover's chart, with where every size starts in it",
    """\
Draws the chart as it is knitted. With a size it goes round by round through the whole yoke and on below, every start
marked with its column; without one a single repeat shows where body and sleeves of every size have their first
stitch.""",
    call=picture_chart,
    check=chart_picture_problems,
    represent=_file(chart),
    media=PICTURE,
)

YOKE_PLOT = _operation(
    "yoke-plot",
    "Plot the stitches of a pullover's yoke over its rounds",
    """\
Plots how many stitches back, front and each sleeve have in every round of the yoke: of all sizes, or of one, before and
after a maker's changes where there are any.""",
    represent=_file(yoke_plot),
    media=PICTURE,
)

PATTERN = _operation(
    "pattern",
    "A pullover's pattern as a page to print",
    """\
The whole pattern in all sizes or in one, ready to be printed from a browser: sizes, finished measurements, gauge,
needles, yarn, notions, terms, and every part in sentences with size runs, the schematic and the chart in their
places.""",
    call=picture_pattern,
    check=pattern_problems,
    represent=pattern,
    media=PAGE,
)

WORKSHEET = _operation(
    "worksheet",
    "One size round by round, to tick off",
    """\
Every round of one size's yoke, body and sleeve as a page to print, with its increases or decreases, the stitches then
on the needles, and where the chart has its row and its starts; rounds that are worked alike stand in one line.""",
    request=PulloverSizePicturesRequestSchema,
    represent=worksheet,
    media=PAGE,
)

OPERATIONS = (SCHEMATIC, FRONT, CHART, YOKE_PLOT, PATTERN, WORKSHEET)
