"""Charts placed by hand: every expected picture, row and column was drawn on paper from the craft's rules.

Where each stitch shows the number of its own column, a picture is its own proof: columns run straight up and
down, read from right to left.
"""

from fractions import Fraction
from textwrap import dedent

import pytest

from grading_core.chart.grid import Anchor, Chart, Colour
from grading_core.chart.placement import place_charts
from grading_core.chart.request import ChartRequest
from grading_core.errors import ContradictionError
from grading_core.gauge import Gauge

GAUGE = Gauge.over(Fraction(20), Fraction(30), Fraction(10))
NUMBERED = Chart(("54321",), {symbol: Colour(symbol) for symbol in "12345-"})
"""Each stitch shows its column; it is read from the right, so column 1 is drawn last."""
ARROW = Chart(("..#..", ".###.", "#####"), {".": Colour("ground"), "#": Colour("motif")})


def middle(column):
    return Anchor(Fraction(column), Fraction(column), Fraction(column))


ON_COLUMN_3 = middle(3)


def plan_of(size, chart=NUMBERED, anchor=ON_COLUMN_3, **options):
    return ChartRequest(
        chart=chart,
        anchor=anchor,
        gauge=GAUGE,
        sizes=[size],
        **{"plain_colour": "-", "line_stitches": 0, "half_stitch": "refuse", **options},
    )


def motif_plan(size, **options):
    return plan_of(size, ARROW, plain_colour=".", **options)


def picture(text):
    """Rounds drawn as they hang from the needle, the first worked topmost; worn, they run to the right."""
    return [line.strip()[::-1] for line in dedent(text).strip().splitlines()]


def problems(plan):
    with pytest.raises(ContradictionError) as caught:
        place_charts(plan)
    return [problem.path for problem in caught.value.problems]


def remarks(plan):
    return [(remark.code, remark.path) for remark in place_charts(plan).remarks]
