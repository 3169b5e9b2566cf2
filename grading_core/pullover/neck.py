"""The neck of one size: cast on, raised at the back or dropped at the front, with its band, and passed by the head."""

from __future__ import annotations

from fractions import Fraction

from grading_core.counts.result import Counts
from grading_core.errors import Impossible, Nearest
from grading_core.fabric import Fabric
from grading_core.gauge import Gauge
from grading_core.parts.neckband import Neckband, neckband, pick_up
from grading_core.parts.neckline import FrontDrop, HeadCheck, Opening, cast_on, check_head, front_drop, neck_edge_cm
from grading_core.parts.ribbing import Rib
from grading_core.parts.short_rows import BackRaise, pairs_for, raise_back
from grading_core.pullover.bodies import Wearer
from grading_core.pullover.proportions import USUAL_BAND_HEIGHT_CM
from grading_core.pullover.request import BandWishes, Fabrics, NeckWishes
from grading_core.pullover.result import Neck
from grading_core.rounding import CountRule
from grading_core.wording import counted
from grading_core.yoke.request import Options


def shape_neck(counts: Counts, wishes: NeckWishes, options: Options, fabrics: Fabrics) -> Neck | Impossible:
    """The cast-on with a raised back or a dropped front, or why they don't fit; the head is still to come.

    counts: of the size, with the rounds of its yoke. wishes: for the neck. options: how the yoke is increased.
    fabrics: the gauges; short rows are plain.
    """
    raised: BackRaise | None = None
    drop: FrontDrop | None = None
    if wishes.front_drop:
        dropped = _drop_front(counts, wishes.front_drop, options, fabrics.rounds)
        if isinstance(dropped, Impossible):
            return dropped
        drop = dropped
    elif wishes.raise_cm:
        short_rows = _raise_back(counts, wishes, fabrics.plain)
        if isinstance(short_rows, Impossible):
            return short_rows
        raised = short_rows
    sections = counts.neck
    begun = cast_on(sections, counts.line_stitches, start=wishes.start, way=wishes.way, drop=drop)
    return Neck(
        cast_on=begun,
        sections=sections,
        line_stitches=counts.line_stitches,
        raised=raised,
        drop=drop,
        edge_cm=neck_edge_cm(begun, fabrics.rounds, drop),
        head=None,
    )


def knit_band(neck: Neck, wishes: BandWishes, fabrics: Fabrics) -> Neckband:
    """The neckband.

    neck: that it is picked up from. wishes: for the band. fabrics: the gauges.
    """
    height_cm = USUAL_BAND_HEIGHT_CM if wishes.height is None else wishes.height
    rows, centre = (neck.drop.rows, neck.drop.centre) if neck.drop else (0, 0)
    picked_up = pick_up(neck.cast_on.stitches + centre, fabrics.rounds, rows)
    return neckband(picked_up, Rib(fabrics.rib, height_cm, wishes.count_rule), wishes.construction)


def pass_head(wearer: Wearer, neck: Neck, band: Neckband, stretch: Fraction) -> HeadCheck | None:
    """Whether neck and band pass the head, None where it isn't known.

    wearer: of the size. neck, band: of the size. stretch: of their edges.
    """
    if "head" not in wearer.body:
        return None
    last = "band's bind-off" if band.construction == "single" else "join of the folded band"
    openings = [Opening("cast-on edge", neck.edge_cm), Opening(last, band.last_edge_cm)]
    head_cm = wearer.body["head"]
    return check_head(openings, head_cm, stretch, young=wearer.young, size=wearer.label, path=("neck",))


def _drop_front(counts: Counts, height_cm: Fraction, options: Options, gauge: Fabric) -> FrontDrop | Impossible:
    # the yoke's increases have to fall on right-side rows of the drop, of which the last is one
    rule = CountRule(2, options.first % 2 if options.step == 2 else 0)
    rows = gauge.rows(height_cm, rule) or 2
    if rows >= counts.rounds:
        reason = f"{counted(rows, 'row')} of front drop don't fit in a yoke of {counted(counts.rounds, 'round')}."
        return Impossible(reason, (Nearest(("neck", "front_drop"), gauge.height_cm(counts.rounds - 2)),))
    drop = front_drop(counts.neck.front, rows, gauge)
    # how the front is parted follows from its stitches: nothing to ask for
    return Impossible(drop.reason) if isinstance(drop, Impossible) else drop


def _raise_back(counts: Counts, wishes: NeckWishes, gauge: Gauge) -> BackRaise | Impossible:
    pairs = pairs_for(wishes.raise_cm, gauge)
    neck = counts.neck
    raised = raise_back(neck, counts.line_stitches, pairs, gauge, way=wishes.way)
    if isinstance(raised, BackRaise):
        return raised
    nearest = (
        Nearest(("neck", "raise_height"), gauge.height_cm(2 * int(each.value)))
        for each in raised.nearest
        if each.field == "pairs"
    )
    return Impossible(raised.reason, tuple(nearest))
