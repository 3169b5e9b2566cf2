"""Words of warning beside a garment that can be knitted."""

from __future__ import annotations

from collections.abc import Iterator, Mapping
from dataclasses import replace
from fractions import Fraction

from grading_core.chart.result import ChartPlacements
from grading_core.errors import Remark
from grading_core.parts.neckline import Start
from grading_core.pullover.result import KnittedSize
from grading_core.units import to_places
from grading_core.yoke.remarks import early_end_remarks, streak_remarks
from grading_core.yoke.request import Options

FAR_FROM_TARGET_CM = Fraction(2)
"""A circumference further than this from what was asked deserves a word (a judgement, no source)."""


def size_remarks(sizes: Mapping[str, KnittedSize], options: Options) -> Iterator[Remark]:
    """What deserves a word in each size: its yoke, lengths, neck, and circumferences far from what was asked.

    sizes: those that are possible, by label. options: how their yokes are increased.
    """
    for label, size in sizes.items():
        yield from streak_remarks(size.yoke)
        yield from early_end_remarks(size.yoke, options)
        yield from _size_remarks(label, size)


def chart_remarks(placements: ChartPlacements | None, start: Start) -> Iterator[Remark]:
    """What deserves a word about the chart, with places in the request for a pullover, which holds no counts of sizes.

    placements: None without a chart. start: of the yoke's rounds.
    """
    if placements is None:
        return
    if start == "centre_back":
        yield Remark(
            "chart_starts_before_back",
            "The chart's floats are measured in rounds that start before the back. In rounds that start at the centre "
            "back those over the start of the round lie there, and may be shorter or longer.",
            path=("neck", "start"),
        )
    for remark in placements.remarks:
        path = remark.path or ()
        yield replace(remark, path=("chart", *path) if path[:1] == ("anchor",) else None)


def _size_remarks(label: str, size: KnittedSize) -> Iterator[Remark]:
    yield from size.body.remarks
    yield from size.sleeve.remarks
    if size.neck.head:
        yield from size.neck.head.remarks
    yield from size.neck.remarks
    for name, words in (("bust", "bust"), ("upper_arm", "upper arm"), ("neck", "neck"), ("wrist", "wrist")):
        target, finished = getattr(size.target, name), getattr(size.finished, name)
        if abs(finished - target) > FAR_FROM_TARGET_CM:
            yield Remark(
                "far_from_wanted",
                f"The {words} comes to {to_places(finished, 1)} cm where {to_places(target, 1)} cm is asked: a smaller "
                "multiple would come nearer.",
                label,
            )
    for edge, words in ((size.body.hem, "hem"), (size.sleeve.cuff, "cuff"), (size.band.edge, "neckband")):
        if edge.rib.gauge.width_cm(abs(edge.change)) > FAR_FROM_TARGET_CM:
            yield Remark(
                "rib_far_from_fabric",
                f"The multiple of the {words} takes it from {edge.before} stitches to {edge.stitches}: a smaller one "
                "would come nearer.",
                label,
            )
    for part, target, edge, words in (
        (size.body, size.target.body_length, size.body.hem, "body"),
        (size.sleeve, size.target.sleeve_length, size.sleeve.cuff, "sleeve"),
    ):
        if not part.rounds and edge.height_cm - target > FAR_FROM_TARGET_CM:
            yield Remark(
                f"{words}_longer_than_asked",
                f"The rib alone is {to_places(edge.height_cm, 1)} cm high where a {words} of {to_places(target, 1)} cm "
                "is asked.",
                label,
            )
