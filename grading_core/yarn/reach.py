"""The strand that, held with others, makes them as thick as a published category."""

from __future__ import annotations

from grading_core.fraction import Fraction
from grading_core.standards.ranges import Range
from grading_core.standards.yarn_weights import YARN_WEIGHTS, YarnChart, YarnThickness
from grading_core.yarn.request import TEX_TIMES_METRES
from grading_core.yarn.result import FittingStrand, Reach


def ways_to_reach(category: int, tex: Fraction) -> tuple[Reach, ...]:
    """What it takes by each row that a chart has of a category: charts disagree, and all of them are told.

    category: of the standard. tex: of what is held together already.

    >>> [way.state for way in ways_to_reach(3, Fraction(250))]
    ['needs_strand', 'needs_strand', 'needs_strand']
    """
    return tuple(
        _way(chart, row, tex) for chart in YARN_WEIGHTS.charts for row in chart.rows if row.category == category
    )


def _way(chart: YarnChart, row: YarnThickness, tex: Fraction) -> Reach:
    thinnest, thickest = _tex_of(row.metres_per_100g)
    if thickest is not None and tex > thickest:
        return Reach(chart.source, row, "too_thick")
    # a strand's tex adds to the others', so that it has to make up what they lack, and no more than there is room for
    lacks, room = thinnest - tex, None if thickest is None else thickest - tex
    if lacks > 0:
        return Reach(chart.source, row, "needs_strand", FittingStrand(_metres(lacks), _metres(room)))
    strand = None if room == 0 else FittingStrand(None, _metres(room))
    return Reach(chart.source, row, "already_there", strand)


def _tex_of(metres_per_100g: Range) -> tuple[Fraction, Fraction | None]:
    """The thinnest and the thickest tex of a row, 0 and None at an end that it leaves open."""
    low, high = metres_per_100g.low, metres_per_100g.high
    return Fraction(0) if high is None else TEX_TIMES_METRES / high, None if low is None else TEX_TIMES_METRES / low


def _metres(tex: Fraction | None) -> Fraction | None:
    return None if tex is None else TEX_TIMES_METRES / tex
