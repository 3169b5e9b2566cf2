"""Words of warning beside a garment that can be knitted."""

from __future__ import annotations

from collections.abc import Iterator, Mapping
from dataclasses import replace

from grading_core.chart.result import ChartPlacements
from grading_core.codes import WarningCode
from grading_core.counts.solver import Solved
from grading_core.errors import Impossible, Remark
from grading_core.parts.neckline import Start
from grading_core.pullover.causes import Inquiry
from grading_core.pullover.fit import fit_remarks
from grading_core.pullover.making import Making
from grading_core.pullover.result import KnittedSize
from grading_core.pullover.wanted import far_remarks
from grading_core.pullover.whole import depth_remarks, total_length_remarks
from grading_core.sentences import Saying
from grading_core.yoke.remarks import early_end_remarks, streak_remarks

STARTS_BEFORE_BACK = Saying("warning.chart_starts_before_back")


def garment_remarks(
    making: Making, counts: Mapping[str, Solved | Impossible], sizes: Mapping[str, KnittedSize]
) -> Iterator[Remark]:
    """What deserves a word about a garment: its parts, and where it isn't what was wanted or doesn't fit.

    making: as designed, or as a maker changes it. counts: its own, from `Making.solve`. sizes: those that are
    possible, by label.
    """
    for size in sizes.values():
        yield from streak_remarks(size.yoke)
        yield from early_end_remarks(size.yoke, making.yoke.options)
        yield from size.body.remarks
        yield from size.sleeve.remarks
        if size.neck.head:
            yield from size.neck.head.remarks
        yield from size.neck.remarks
    own = {label: _at_own_gauge(size) for label, size in sizes.items()}
    inquiry = Inquiry(making, counts, sizes if own != sizes else {})
    sizes = own
    yield from far_remarks(sizes, inquiry)
    yield from fit_remarks(sizes, inquiry)
    yield from depth_remarks(sizes, inquiry)
    yield from total_length_remarks(sizes, inquiry)


def chart_remarks(placements: ChartPlacements | None, start: Start) -> Iterator[Remark]:
    """What deserves a word about the chart, with places in the request for a pullover, which holds no counts of sizes.

    placements: None without a chart. start: of the yoke's rounds.
    """
    if placements is None:
        return
    if start == "centre_back":
        yield Remark(WarningCode.CHART_STARTS_BEFORE_BACK, STARTS_BEFORE_BACK(), path=("neck", "start"))
    for remark in placements.remarks:
        path = remark.path or ()
        yield replace(remark, path=("chart", *path) if path[:1] in (("anchor",), ("chart",)) else None)


def _at_own_gauge(size: KnittedSize) -> KnittedSize:
    """The size as wide as at a maker's own gauge; as long as designed, for which the rounds are corrected."""
    if size.at_own_gauge is None:
        return size
    own = size.at_own_gauge.finished
    finished = replace(
        size.finished,
        bust=own.bust,
        upper_arm=own.upper_arm,
        neck=own.neck,
        underarm=own.underarm,
        hem=own.hem,
        wrist=own.wrist,
    )
    return replace(size, finished=finished)
