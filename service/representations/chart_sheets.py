"""A pullover's chart: one size traced over it, or one repeat with where every size starts."""

from __future__ import annotations

from grading_core.pullover.pictures import PicturedPullover
from grading_core.sentences import Saying
from service.lengths import LengthWriter
from service.representations.pullover_heading import lines, title
from service.representations.sheets import Drawing, Picture

TITLE = Saying("picture.whole_chart")


def chart(view: PicturedPullover, length: LengthWriter) -> Picture:
    """The picture.

    view: what is drawn. length: writes lengths.
    """
    return Picture(
        key="chart",
        title=title(view, TITLE()),
        lines=lines(view),
        about=[],
        drawings=[Drawing(width=0, height=0, elements=[])],
    )
