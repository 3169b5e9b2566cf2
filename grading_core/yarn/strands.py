"""Strands held together, and how thick that is.

Linear densities in tex (g per 1000 m) add, so the reciprocals of metres per 100 g add (ISO 1144 for the
tex; textile calculation texts for the sum of parallel strands).
"""

from __future__ import annotations

from collections.abc import Iterator, Sequence

from grading_core.codes import WarningCode
from grading_core.errors import Remark
from grading_core.fraction import Fraction
from grading_core.sentences import NUMBER, Saying
from grading_core.standards.yarn_weights import YARN_WEIGHTS, YarnThickness
from grading_core.yarn.reach import ways_to_reach
from grading_core.yarn.request import TEX_TIMES_METRES, StrandRequest
from grading_core.yarn.result import CategoryRow, Combination, CombinedStrand, Reach

NOT_CHARTED = Saying("warning.category_not_charted", category=NUMBER)


def hold_together(request: StrandRequest) -> Combination:
    """What strands held together give.

    >>> from grading_core.yarn.request import Strand
    >>> hold_together(StrandRequest((Strand(metres=Fraction(400)), Strand(tex=Fraction(250))))).metres_per_100g
    Fraction(200, 1)
    """
    densities = [strand.linear_density for strand in request.strands]
    total = sum(densities, Fraction(0))
    wanted = request.wanted_category
    to_reach = None if wanted is None else ways_to_reach(wanted, total)
    metres_per_100g = TEX_TIMES_METRES / total
    return Combination(
        metres_per_100g=metres_per_100g,
        tex=total,
        strands=tuple(
            CombinedStrand(strand.name, TEX_TIMES_METRES / density, density, density / total)
            for strand, density in zip(request.strands, densities, strict=True)
        ),
        categories=categories(metres_per_100g),
        to_reach=to_reach,
        remarks=tuple(_remarks(request, to_reach)),
    )


def _remarks(request: StrandRequest, to_reach: Sequence[Reach] | None) -> Iterator[Remark]:
    if request.wanted_category is not None and not to_reach:
        message = NOT_CHARTED(category=request.wanted_category)
        yield Remark(WarningCode.CATEGORY_NOT_CHARTED, message, path=("wanted_category",))


def categories(metres_per_100g: Fraction) -> tuple[CategoryRow, ...]:
    """The published categories of a thickness, chart by chart.

    metres_per_100g: of the yarn, or of the strands together. Where a chart's rows overlap each of them is
    named; where it has a gap, the nearer row is, the thicker one at the same distance.

    >>> [row.thickness.name for row in categories(Fraction(200))]
    ['Light', 'DK (8 ply)', 'Aran / worsted (10-12 ply)', 'worsted (10 ply)']
    """
    standard = {category.category: category for category in YARN_WEIGHTS.categories}
    named = []
    for chart in YARN_WEIGHTS.charts:
        away = [_distance(metres_per_100g, row) for row in chart.rows]
        nearest = min(away)
        found = [row for row, distance in zip(chart.rows, away, strict=True) if distance == nearest]
        if nearest:
            found = found[-1:]
        named += [CategoryRow(chart.source, row, standard[row.category], nearest > 0) for row in found]
    return tuple(named)


def _distance(metres_per_100g: Fraction, row: YarnThickness) -> Fraction:
    """How far a thickness lies outside a chart's row, 0 inside it."""
    low, high = row.metres_per_100g.low, row.metres_per_100g.high
    below = max(Fraction(0), low - metres_per_100g) if low is not None else Fraction(0)
    above = max(Fraction(0), metres_per_100g - high) if high is not None else Fraction(0)
    return below + above
