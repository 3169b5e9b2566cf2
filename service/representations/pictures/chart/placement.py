"""The chart of a placement round by round as one size works it, with the columns in which its sections start."""

from __future__ import annotations

from zlib import crc32

from grading_core.chart.drawn_rounds import SizeView
from grading_core.pullover.front_matter import STRANDED_GAUGE, swatch
from grading_core.sentences import TEXT, Saying
from service.language import text as said
from service.lengths import LengthWriter
from service.representations.pictures.chart.chart import chart_sheets
from service.representations.pictures.heading import SIZES
from service.representations.pictures.sheets import Heading, picture_file

TITLE = Saying("picture.chart", size=TEXT)


def chart_picture(view: SizeView, _: LengthWriter) -> str:
    """The picture as SVG, on one sheet as large as it takes."""
    picture = chart_sheets(
        view,
        f"chart-{crc32(repr((view.label, view.chart.rows)).encode()):08x}",
        Heading(
            said(TITLE(size=view.label)), [said(SIZES(sizes=(view.label,))), said(STRANDED_GAUGE(**swatch(view.gauge)))]
        ),
        "single",
    )
    return picture_file(picture, "single")
