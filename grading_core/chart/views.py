"""What pictures of colourwork share, and a chart beside its greys."""

from __future__ import annotations

from dataclasses import dataclass

from grading_core.chart.contrast import colour_contrasts, contrast_problems
from grading_core.chart.grid import Chart
from grading_core.chart.request import ContrastRequest
from grading_core.chart.result import ColourContrasts
from grading_core.codes import ProblemCode
from grading_core.errors import Check, Path, Problem, check, places, sound

MAX_STITCHES_DRAWN = 100_000
"""Of a chart, or of one front, in a picture."""


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


@check
def stitches_drawn_problems(stitches: int, path: Path) -> Check[None]:
    """More stitches than a picture holds.

    stitches: that are to be drawn. path: of what has them.
    """
    if stitches > MAX_STITCHES_DRAWN:
        detail = f"has {stitches} stitches to draw, and a picture holds at most {MAX_STITCHES_DRAWN}."
        yield Problem(path, ProblemCode.TOO_MANY_STITCHES, detail)
