"""The neck of one size: cast on, raised at the back or dropped at the front, with its band, and passed by the head."""

from __future__ import annotations

from functools import partial

from grading_core.codes import ReasonCode, WarningCode
from grading_core.counts.result import Counts
from grading_core.errors import Impossible, Nearest, Remark
from grading_core.fabric import Fabric
from grading_core.fraction import Fraction
from grading_core.gauge import Gauge
from grading_core.parts.neckband import Neckband, neckband, pick_up
from grading_core.parts.neckline import (
    Edge,
    FrontDrop,
    HeadCheck,
    Opening,
    cast_on,
    check_head,
    front_drop,
    neck_edge_cm,
)
from grading_core.parts.ribbing import Rib
from grading_core.parts.short_rows import BackRaise, RowsOfDrop, pairs_for, raise_back
from grading_core.pullover.bodies import Wearer
from grading_core.pullover.measurements import TargetMeasurements
from grading_core.pullover.proportions import USUAL_BAND_HEIGHT_CM, neck_width_cm
from grading_core.pullover.request import BandWishes, Fabrics, NeckWishes
from grading_core.pullover.result import Neck
from grading_core.rounding import CountRule
from grading_core.sentences import CM, COUNT, Saying
from grading_core.yoke.request import Options

WIDER_THAN_SHOULDERS = Saying("warning.neck_wider_than_shoulders", neck=CM, width=CM, held=CM)
DROP_TOO_DEEP = Saying("reason.front_drop_too_deep", rows=COUNT, rounds=COUNT)


def shape_neck(
    counts: Counts, target: TargetMeasurements, wishes: NeckWishes, options: Options, fabrics: Fabrics
) -> Neck | Impossible:
    """The cast-on with a raised back, a dropped front or both, or why they don't fit; the head is still to come.

    counts: of the size, with the rounds of its yoke. target: its measurements. wishes: for the neck. options: how the
    yoke is increased. fabrics: the gauges; short rows are plain.

    A height that isn't asked is lowered to what fits.
    """
    drop: FrontDrop | None = None
    if target.front_drop:
        dropped = _drop_front(counts, target.front_drop, options, fabrics.rounds, asked=wishes.front_drop is not None)
        if isinstance(dropped, Impossible):
            return dropped
        drop = dropped
    raised: BackRaise | None = None
    if target.raise_height:
        short_rows = _raise_back(counts, target.raise_height, wishes, fabrics.plain, drop)
        if isinstance(short_rows, Impossible):
            return short_rows
        raised = short_rows
    sections = counts.neck
    # without a row that is worked flat there is nothing to wait for
    way = wishes.way if raised and raised.rows else "joined"
    begun = cast_on(sections, counts.line_stitches, start=wishes.start, way=way, drop=drop)
    return Neck(
        cast_on=begun,
        sections=sections,
        line_stitches=counts.line_stitches,
        raised=raised,
        drop=drop,
        edge_cm=neck_edge_cm(begun, fabrics.rounds, drop),
        head=None,
        remarks=(),
    )


def knit_band(neck: Neck, wishes: BandWishes, fabrics: Fabrics, colour: str | None) -> Neckband:
    """The neckband.

    neck: that it is picked up from. wishes: for the band. fabrics: the gauges. colour: its name, None where the garment
    has but one.
    """
    height_cm = USUAL_BAND_HEIGHT_CM if wishes.height is None else wishes.height
    rows, centre = (neck.drop.rows, neck.drop.centre) if neck.drop else (0, 0)
    picked_up = pick_up(neck.cast_on.stitches + centre, fabrics.rounds, rows)
    rib = Rib(gauge=fabrics.rib, height_cm=height_cm, rule=wishes.rule, repeat=wishes.rib, colour=colour)
    return neckband(picked_up, rib, wishes.construction)


def pass_head(wearer: Wearer, neck: Neck, band: Neckband, stretch: Fraction) -> HeadCheck | None:
    """Whether neck and band pass the head, None where it isn't known.

    wearer: of the size. neck, band: of the size. stretch: of their edges.
    """
    if "head" not in wearer.body:
        return None
    last: Edge = "bind_off" if band.construction == "single" else "join"
    openings = [Opening("cast_on", neck.edge_cm), Opening(last, band.last_edge_cm)]
    head_cm = wearer.body["head"]
    return check_head(openings, head_cm, stretch, young=wearer.young, size=wearer.label, path=("neck",))


def shoulder_remarks(wearer: Wearer, neck_cm: Fraction) -> tuple[Remark, ...]:
    """A word where the neck is wider than the shoulders hold: half of the cross back (common practice, no source).

    wearer: of the size. neck_cm: circumference of the finished cast-on.
    """
    if "cross_back" not in wearer.body:
        return ()
    width_cm, held_cm = neck_width_cm(neck_cm), wearer.body["cross_back"] / 2
    if width_cm <= held_cm:
        return ()
    message = WIDER_THAN_SHOULDERS(neck=neck_cm, width=width_cm, held=held_cm)
    return (Remark(WarningCode.NECK_WIDER_THAN_SHOULDERS, message, wearer.label, ("neck", "circumference")),)


def _drop_front(
    counts: Counts, height_cm: Fraction, options: Options, gauge: Fabric, *, asked: bool
) -> FrontDrop | Impossible | None:
    # the yoke's increases have to fall on right-side rows of the drop, of which the last is one
    rule = CountRule(2, options.first % 2 if options.step == 2 else 0)
    rows = gauge.rows(height_cm, rule) or 2
    if rows >= counts.rounds:
        if asked:
            return Impossible(
                ReasonCode.FRONT_DROP_TOO_DEEP,
                DROP_TOO_DEEP(rows=rows, rounds=counts.rounds),
                (Nearest(("neck", "front_drop"), gauge.height_cm(counts.rounds - 2)),),
            )
        rows = counts.rounds - 1 - (counts.rounds - 1 - rows) % 2
    drop = front_drop(counts.neck.front, rows, gauge) if rows > 0 else None
    if isinstance(drop, Impossible):
        # how the front is parted follows from its stitches: nothing to ask for
        return Impossible(drop.code, drop.reason) if asked else None
    return drop


def _raise_back(
    counts: Counts, height_cm: Fraction, wishes: NeckWishes, gauge: Gauge, drop: FrontDrop | None
) -> BackRaise | Impossible:
    shape = partial(
        raise_back,
        counts.neck,
        counts.line_stitches,
        gauge=gauge,
        way="flat" if drop else wishes.way,
        drop=RowsOfDrop(drop.rows, drop.each_side) if drop else None,
    )
    raised = shape(pairs_for(height_cm, gauge))
    if isinstance(raised, BackRaise):
        return raised
    (fitting,) = (int(each.value) for each in raised.nearest if each.field == "pairs")
    if wishes.raise_height is None:
        return shape(fitting)
    return Impossible(raised.code, raised.reason, (Nearest(("neck", "raise_height"), gauge.height_cm(2 * fitting)),))
