"""The parts of one size from its counts: neck, yoke, body, sleeve and neckband, and what they measure."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import replace
from fractions import Fraction
from itertools import accumulate

from grading_core.chart.grid import progress
from grading_core.counts.result import Counts
from grading_core.counts.solver import Solved
from grading_core.errors import Impossible, Nearest
from grading_core.fabric import Fabric
from grading_core.gauge import Gauge
from grading_core.parts.body import Body, shape_body
from grading_core.parts.ribbing import Rib
from grading_core.parts.sleeve import Sleeve, shape_sleeve
from grading_core.parts.underarm import Underarm
from grading_core.pullover.bodies import Wearer
from grading_core.pullover.changes import Version, nearest_adjustment
from grading_core.pullover.lengths import Lengths, place
from grading_core.pullover.measurements import TargetMeasurements
from grading_core.pullover.neck import knit_band, pass_head, shape_neck, shoulder_remarks
from grading_core.pullover.proportions import reach_cm, usual_edge_height_cm
from grading_core.pullover.request import (
    BodyWishes,
    ChartWishes,
    EdgeWishes,
    Fabrics,
    NeckWishes,
    SleeveWishes,
    YokeWishes,
)
from grading_core.pullover.result import FinishedMeasurements, KnittedSize, Neck
from grading_core.pullover.targets import without_counts
from grading_core.wording import counted
from grading_core.yoke.adjustment import adjust
from grading_core.yoke.request import Adjustment, Options, WrittenYoke, Yoke
from grading_core.yoke.result import Schedule
from grading_core.yoke.schedule import schedule


def knit_size(
    solved: Solved | Impossible,
    target: TargetMeasurements,
    wearer: Wearer,
    version: Version,
    fabrics: Fabrics,
    *,
    neck: NeckWishes,
    yoke: YokeWishes,
    body: BodyWishes,
    sleeve: SleeveWishes,
    chart: ChartWishes | None,
    level_stitches: Sequence[int],
) -> KnittedSize | Impossible:
    """One size, or why it can't be knitted; its chart and yarn are still to come.

    solved: its counts, or why it has none. target: its measurements. wearer: who it is for. version: of the garment.
    fabrics: the gauges. neck, yoke, body, sleeve, chart: the wishes for each part. level_stitches: of the body.
    """
    if isinstance(solved, Impossible):
        return without_counts(solved, wearer, target.depth, version.lengths, fabrics)
    written = solved.counts.yoke(wearer.label)
    increases = _knit_yoke(written, version.adjustment, yoke.options, fabrics.rounds)
    if isinstance(increases, Impossible):
        return increases
    counts = replace(solved.counts, rounds=increases.yoke.rounds)
    knitted_neck = shape_neck(counts, target, neck, yoke.options, fabrics)
    if isinstance(knitted_neck, Impossible):
        return knitted_neck
    least = progress(chart.chart, chart.first_round, counts.rounds).finishing_rounds if chart else 0
    below = replace(fabrics, rounds=fabrics.rounds.below(counts.rounds))
    underarm = Underarm(counts.underarm, seam_stitches(counts.underarm, yoke.seam_stitches, charted=chart is not None))
    knitted_body = _knit_body(
        counts.body,
        target,
        body,
        version.lengths,
        below,
        level_stitches=level_stitches,
        underarm=underarm,
        young=wearer.young,
        least=least,
    )
    if isinstance(knitted_body, Impossible):
        return knitted_body
    knitted_sleeve = _knit_sleeve(
        counts.sleeve, target, sleeve, version.lengths, below, underarm=underarm, young=wearer.young, least=least
    )
    if isinstance(knitted_sleeve, Impossible):
        return knitted_sleeve
    if yoke.seam_stitches:
        seam_too_wide = _why_too_wide(yoke.seam_stitches, knitted_body, knitted_sleeve)
        if seam_too_wide:
            return seam_too_wide
    band = knit_band(knitted_neck, version.band, fabrics)
    deeper = counts.rounds - written.rounds
    knitted_neck = replace(
        knitted_neck,
        head=pass_head(wearer, knitted_neck, band, neck.stretch),
        remarks=shoulder_remarks(wearer, fabrics.rounds.at(1).width_cm(counts.cast_on)),
    )
    return KnittedSize(
        counts=counts,
        differences=replace(solved.differences, rounds=solved.differences.rounds + deeper),
        cost=solved.cost,
        neck=knitted_neck,
        yoke=increases,
        body=knitted_body,
        sleeve=knitted_sleeve,
        band=band,
        target=target,
        finished=_finished(counts, fabrics, knitted_neck, increases, knitted_body, knitted_sleeve),
    )


def seam_stitches(underarm: int, asked: int | None, *, charted: bool) -> int:
    """The seam stitches in the middle of an underarm.

    underarm: its stitches. asked: None where they aren't. charted: whether a chart is there, which where nothing is
    asked is broken by as few as the underarm's parity allows; without one there is nothing to break.
    """
    return (underarm % 2 if charted else 0) if asked is None else asked


def _knit_yoke(written: Yoke, adjustment: Adjustment | None, options: Options, gauge: Fabric) -> Schedule | Impossible:
    """The increases, adjusted where a maker asks for it in the way that disturbs the yoke least."""
    if adjustment is None:
        return schedule(written, options, gauge)
    adjusted = adjust(WrittenYoke(written), adjustment, options, gauge)
    for way in adjusted.options:
        if way.method == adjusted.recommended:
            return way.schedule
    reached = [way.shallowest.rounds for way in adjusted.options if way.shallowest is not None]
    if not reached:
        return Impossible(adjusted.why)
    nearest = nearest_adjustment(adjustment, min(reached), written.rounds, gauge)
    return Impossible(adjusted.why, (nearest,))


def _knit_body(
    stitches: int,
    target: TargetMeasurements,
    wishes: BodyWishes,
    lengths: Lengths,
    below: Fabrics,
    *,
    level_stitches: Sequence[int],
    underarm: Underarm,
    young: bool,
    least: int,
) -> Body | Impossible:
    """The body, or why its shaping doesn't fit; of a length that isn't asked, long enough to finish a chart."""
    gauge, hem = below.rounds, _rib(wishes.hem, below.rib, young=young)
    body = shape_body(
        stitches,
        length_cm=target.body_length,
        gauge=gauge,
        hem=hem,
        levels=target.levels,
        level_stitches=level_stitches,
        spacing=wishes.spacing,
        minimum_rounds=0 if "body_length" in lengths else least,
        underarm=underarm,
        size=target.label,
    )
    if isinstance(body, Body):
        return body
    hem_cm = hem.gauge.height_cm(hem.rounds)
    nearest = (
        Nearest(place(lengths, "body_length"), gauge.height_cm(int(each.value)) + hem_cm)
        if each.field == "rounds"
        else Nearest(("body", *each.path[:2], "below"), gauge.height_cm(int(each.value)))
        for each in body.nearest
    )
    return Impossible(body.reason, tuple(nearest))


def _knit_sleeve(
    stitches: int,
    target: TargetMeasurements,
    wishes: SleeveWishes,
    lengths: Lengths,
    below: Fabrics,
    *,
    underarm: Underarm,
    young: bool,
    least: int,
) -> Sleeve | Impossible:
    """Each sleeve, or why its decreases don't fit; of a length that isn't asked, long enough to finish a chart, and for
    its decreases where these have all of it."""
    gauge, cuff = below.rounds, _rib(wishes.cuff, below.rib, young=young)
    cuff_height_cm = cuff.gauge.height_cm(cuff.rounds)

    def shape(length_cm: Fraction, wrist_cm: Fraction) -> Sleeve | Impossible:
        return shape_sleeve(
            stitches,
            length_cm=length_cm,
            gauge=gauge,
            cuff=cuff,
            wrist_cm=wrist_cm,
            spacing=wishes.spacing,
            plain_before=wishes.plain_before,
            plain_after=wishes.plain_after,
            minimum_rounds=0 if "sleeve_length" in lengths else least,
            underarm=underarm,
            size=target.label,
        )

    first = made = shape(target.sleeve_length, target.wrist)
    length_cm = target.sleeve_length
    while isinstance(made, Impossible):
        # a longer sleeve ends in a narrower cuff, which may need more rounds again
        length_cm = next(
            gauge.height_cm(int(each.value)) + cuff_height_cm for each in made.nearest if each.field == "rounds"
        )
        made = shape(length_cm, target.cuff_cm(length_cm))
    asked = wishes.plain_before or wishes.plain_after or wishes.cuff.height is not None
    if isinstance(first, Sleeve) or not (asked or "sleeve_length" in lengths):
        return made
    nearest = (
        Nearest(place(lengths, "sleeve_length"), length_cm) if each.field == "rounds" else each.under("sleeve")
        for each in first.nearest
    )
    return Impossible(first.reason, tuple(nearest))


def _rib(edge: EdgeWishes, gauge: Gauge, *, young: bool) -> Rib:
    """The rib of a hem or cuff."""
    height_cm = usual_edge_height_cm(young=young) if edge.height is None else edge.height
    return Rib(gauge, height_cm, edge.count_rule)


def _why_too_wide(seam: int, body: Body, sleeve: Sleeve) -> Impossible | None:
    """Why the seams take a whole part of the garment, or None."""
    narrowest = min(accumulate((stitches for _, stitches in body.shaping), initial=body.stitches))
    # one at each side of the body, one under the sleeve
    room = min(narrowest // 2, sleeve.cuff.before) - 1
    if seam <= room:
        return None
    reason = f"{counted(seam, 'seam stitch')} leave nothing of a part that has {room + 1}."
    widest = room - (seam - room) % 2  # the underarm keeps its parity
    return Impossible(reason, (Nearest(("yoke", "seam_stitches"), widest),) if widest >= 0 else ())


def _finished(
    counts: Counts, fabrics: Fabrics, neck: Neck, yoke: Schedule, body: Body, sleeve: Sleeve
) -> FinishedMeasurements:
    raise_cm = neck.raised.height_cm if neck.raised else Fraction(0)
    return FinishedMeasurements(
        bust=body.circumference_cm,
        upper_arm=sleeve.upper_arm_cm,
        neck=fabrics.rounds.at(1).width_cm(counts.cast_on),
        depth=yoke.depth_cm,
        underarm=fabrics.rounds.at(counts.rounds + 1).width_cm(counts.underarm),
        hem=body.hem.circumference_cm,
        wrist=sleeve.cuff.circumference_cm,
        body_length=body.length_cm,
        sleeve_length=sleeve.length_cm,
        total_length=raise_cm + yoke.depth_cm + body.length_cm,
        reach=reach_cm(fabrics.rounds.at(1).width_cm(counts.cast_on), yoke.depth_cm, sleeve.length_cm),
    )
