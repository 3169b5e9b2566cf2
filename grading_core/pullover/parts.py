"""The parts of one size from its counts: neck, yoke, body, sleeve and neckband, and what they measure."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import replace
from itertools import accumulate

from grading_core.chart.grid import progress
from grading_core.chart.request import usual_seam
from grading_core.codes import ReasonCode
from grading_core.counts.result import Counts
from grading_core.counts.solver import Solved
from grading_core.errors import Impossible, Nearest
from grading_core.fabric import Fabric
from grading_core.fraction import Fraction
from grading_core.gauge import Gauge
from grading_core.parts.body import Body, shape_body
from grading_core.parts.bust_darts import dart_front, dart_round
from grading_core.parts.neckband import Neckband
from grading_core.parts.ribbing import Rib
from grading_core.parts.short_rows import pairs_for
from grading_core.parts.sleeve import Sleeve, shape_sleeve
from grading_core.parts.underarm import Underarm
from grading_core.pullover.bodies import Wearer
from grading_core.pullover.changes import Version, nearest_adjustment
from grading_core.pullover.colours import GarmentColours
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
from grading_core.sentences import COUNT, Saying
from grading_core.yoke.adjustment import adjust
from grading_core.yoke.request import Adjustment, Options, WrittenYoke, Yoke
from grading_core.yoke.result import Schedule
from grading_core.yoke.schedule import schedule

BACK_TOO_NARROW = Saying("reason.back_too_narrow", stitches=COUNT)
SEAMS_TOO_WIDE = Saying("reason.seams_too_wide", seam=COUNT, stitches=COUNT)
SEAMS_BEYOND_UNDERARM = Saying("reason.seams_beyond_underarm", seam=COUNT, stitches=COUNT)


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
    colours: GarmentColours,
    level_stitches: Sequence[int],
) -> KnittedSize | Impossible:
    """One size, or why it can't be knitted; its chart and yarn are still to come.

    solved: its counts, or why it has none. target: its measurements. wearer: who it is for. version: of the garment.
    fabrics: the gauges. neck, yoke, body, sleeve, chart: the wishes for each part. colours: of the parts.
    level_stitches: of the body.
    """
    if isinstance(solved, Impossible):
        return without_counts(solved, wearer, target.depth, version.lengths, fabrics)
    written = solved.counts.yoke(wearer.label)
    increases = _knit_yoke(written, version.adjustment, yoke.options, fabrics.rounds)
    if isinstance(increases, Impossible):
        return increases
    deeper = increases.yoke.rounds - written.rounds
    counts = replace(solved.counts, rounds=increases.yoke.rounds) if deeper else solved.counts
    knitted_neck = shape_neck(counts, target, neck, yoke.options, fabrics)
    if isinstance(knitted_neck, Impossible):
        return knitted_neck
    least = progress(chart.chart, chart.first_round, counts.rounds).finishing_rounds if chart else 0
    below = replace(fabrics, rounds=fabrics.rounds.below(counts.rounds))
    seam = seam_stitches(counts.underarm, yoke, charted=chart is not None)
    underarm = Underarm(counts.underarm, seam, purled=yoke.seam == "purl")
    hem, cuff = (
        _rib(edge, fabrics.rib, young=wearer.young, colour=colours.told(symbol))
        for edge, symbol in ((body.hem, colours.hem), (sleeve.cuff, colours.cuff))
    )
    knitted_body = _knit_body(
        counts.body,
        target,
        body,
        version.lengths,
        below.rounds,
        hem=hem,
        level_stitches=level_stitches,
        underarm=underarm,
        least=least,
    )
    if isinstance(knitted_body, Impossible):
        return knitted_body
    no_back = _why_no_back(counts, knitted_body, version.lengths, below.rounds.at(1))
    if no_back:
        return no_back
    knitted_body = _dart_front(knitted_body, counts, target, version, below, chart)
    if isinstance(knitted_body, Impossible):
        return knitted_body
    knitted_sleeve = _knit_sleeve(
        counts.sleeve, target, sleeve, version.lengths, below.rounds, cuff=cuff, underarm=underarm, least=least
    )
    if isinstance(knitted_sleeve, Impossible):
        return knitted_sleeve
    if yoke.seam_stitches or yoke.seam == "purl":
        seam_too_wide = _why_too_wide(seam, counts, knitted_body, knitted_sleeve)
        if seam_too_wide:
            return seam_too_wide
    band = knit_band(knitted_neck, version.band, fabrics, colours.told(colours.band))
    differences = solved.differences
    if deeper:
        differences = replace(differences, rounds=differences.rounds + deeper)
    knitted_neck = replace(
        knitted_neck,
        head=pass_head(wearer, knitted_neck, band, neck.stretch),
        remarks=shoulder_remarks(wearer, fabrics.rounds.at(1).width_cm(counts.cast_on)),
    )
    return KnittedSize(
        to_fit=wearer.body["bust"],
        counts=counts,
        differences=differences,
        cost=solved.cost,
        neck=knitted_neck,
        yoke=replace(increases, missing=knitted_neck.drop.missing) if knitted_neck.drop else increases,
        body=knitted_body,
        sleeve=knitted_sleeve,
        band=band,
        target=target,
        finished=measure(
            counts, fabrics, knitted_neck, knitted_body, knitted_sleeve, band, depth_cm=increases.depth_cm
        ),
    )


def measure(
    counts: Counts, fabrics: Fabrics, neck: Neck, body: Body, sleeve: Sleeve, band: Neckband, *, depth_cm: Fraction
) -> FinishedMeasurements:
    """What one size measures, at the gauges that it was made for or at others.

    counts, neck, body, sleeve, band: of the size; only their stitches, rows and rounds count. fabrics: the gauges.
    depth_cm: of the yoke, whose rounds may have a row gauge of their own.
    """
    below, rib = fabrics.rounds.below(counts.rounds), fabrics.rib
    first_below, hem, cuff, darts = below.at(1), body.hem, sleeve.cuff, body.bust_darts
    body_cm = below.height_cm(body.rounds) + rib.height_cm(hem.rounds)
    sleeve_cm = below.height_cm(sleeve.rounds) + rib.height_cm(cuff.rounds)
    neck_cm = fabrics.rounds.at(1).width_cm(counts.cast_on)
    return FinishedMeasurements(
        bust=first_below.width_cm(body.stitches),
        upper_arm=first_below.width_cm(sleeve.stitches),
        neck=neck_cm,
        depth=depth_cm,
        underarm=first_below.width_cm(counts.underarm),
        hem=rib.width_cm(hem.stitches),
        wrist=rib.width_cm(cuff.stitches),
        body_length=body_cm,
        front_length=body_cm + fabrics.plain.height_cm(darts.rows) if darts else body_cm,
        front_extra=first_below.width_cm(counts.front_extra),
        sleeve_length=sleeve_cm,
        total_length=fabrics.plain.height_cm(neck.raised.rows if neck.raised else 0) + depth_cm + body_cm,
        reach=reach_cm(neck_cm, depth_cm, sleeve_cm),
        band=rib.width_cm(band.edge.stitches),
    )


def seam_stitches(underarm: int, yoke: YokeWishes, *, charted: bool) -> int:
    """The seam stitches in the middle of an underarm.

    underarm: its stitches. yoke: how many are asked for, and how they are worked. charted: whether a chart is there,
    which where nothing is asked is broken by `usual_seam`; without one there is nothing to break, unless they are to
    be seen.
    """
    if yoke.seam_stitches is not None:
        return yoke.seam_stitches
    return usual_seam(underarm, yoke.seam) if charted or yoke.seam == "purl" else 0


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
        return Impossible(ReasonCode.NO_WAY_TO_ADJUST, adjusted.why)
    nearest = nearest_adjustment(adjustment, min(reached), written.rounds, gauge)
    return Impossible(ReasonCode.NO_WAY_TO_ADJUST, adjusted.why, (nearest,))


def _knit_body(
    stitches: int,
    target: TargetMeasurements,
    wishes: BodyWishes,
    lengths: Lengths,
    gauge: Fabric,
    *,
    hem: Rib,
    level_stitches: Sequence[int],
    underarm: Underarm,
    least: int,
) -> Body | Impossible:
    """The body, or why its shaping doesn't fit; of a length that isn't asked, long enough to finish a chart."""
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
    return Impossible(body.code, body.reason, tuple(nearest))


def _knit_sleeve(
    stitches: int,
    target: TargetMeasurements,
    wishes: SleeveWishes,
    lengths: Lengths,
    gauge: Fabric,
    *,
    cuff: Rib,
    underarm: Underarm,
    least: int,
) -> Sleeve | Impossible:
    """Each sleeve, or why its decreases don't fit; of a length that isn't asked, long enough to finish a chart, and for
    its decreases where these have all of it."""
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
    return Impossible(first.code, first.reason, tuple(nearest))


def _dart_front(
    body: Body, counts: Counts, target: TargetMeasurements, version: Version, below: Fabrics, chart: ChartWishes | None
) -> Body | Impossible:
    """The body with its bust darts where any are asked for, or why they don't fit."""
    path = place(version.lengths, "bust_darts")
    pairs = pairs_for(target.bust_darts, below.plain)
    if not pairs:
        return body
    begun = chart.first_round - counts.rounds if chart else 0
    charted = range(begun, begun + chart.chart.height) if chart else range(0)
    shaped = [number for number, _ in body.shaping]
    number = dart_round(body.rounds, below.rounds, charted=charted, shaped=shaped)
    if isinstance(number, Impossible):
        hem_cm = body.hem.height_cm
        longer = (
            Nearest(place(version.lengths, "body_length"), below.rounds.height_cm(int(each.value)) + hem_cm)
            for each in number.nearest
        )
        return Impossible(number.code, number.reason, (*longer, Nearest(path, Fraction(0))))
    shaping = sum(change for place, change in body.shaping if place < number)
    front = _half(counts.split.front, counts, shaping) - counts.underarm % 2
    darts = dart_front(front, pairs, below.plain, in_round=number)
    if isinstance(darts, Impossible):
        fewer = (Nearest(path, below.plain.height_cm(2 * int(each.value))) for each in darts.nearest)
        return Impossible(darts.code, darts.reason, tuple(fewer))
    return replace(body, bust_darts=darts)


def _rib(edge: EdgeWishes, gauge: Gauge, *, young: bool, colour: str | None) -> Rib:
    """The rib of a hem or cuff."""
    height_cm = usual_edge_height_cm(young=young) if edge.height is None else edge.height
    return Rib(gauge=gauge, height_cm=height_cm, rule=edge.rule, repeat=edge.rib, colour=colour)


def _half(section: int, counts: Counts, shaping: int) -> int:
    """Stitches of back or front below the split, from the middle of one underarm to that of the other.

    section: its stitches at the split. shaping: what the body has gained or lost since.
    """
    return section + 2 * counts.line_to_body + counts.underarm + shaping // 2


def _narrowest_back(counts: Counts, body: Body) -> int:
    """The back, which is never wider than the front, where the body's shaping leaves it least."""
    return _half(counts.split.back, counts, min(accumulate((change for _, change in body.shaping), initial=0)))


def _why_no_back(counts: Counts, body: Body, lengths: Lengths, gauge: Gauge) -> Impossible | None:
    """Why a front that is so much wider leaves the back no stitch where the body is narrowest, or None."""
    share, middle = counts.front_extra // 2, counts.underarm % 2
    lacking = middle + 1 - _narrowest_back(counts, body)
    if lacking <= 0 or not share:
        return None
    narrower = share - lacking - lacking % 2
    nearest = (Nearest(place(lengths, "front_extra"), gauge.width_cm(2 * narrower)),) if narrower >= 0 else ()
    return Impossible(ReasonCode.BACK_TOO_NARROW, BACK_TOO_NARROW(stitches=lacking), nearest)


def _why_too_wide(seam: int, counts: Counts, body: Body, sleeve: Sleeve) -> Impossible | None:
    """Why the seams take a whole part of the garment, or more than the underarm in whose middle they lie; or None."""
    if seam > counts.underarm:
        reason = SEAMS_BEYOND_UNDERARM(seam=seam, stitches=counts.underarm)
        return Impossible(ReasonCode.SEAMS_TOO_WIDE, reason, (Nearest(("yoke", "seam_stitches"), counts.underarm),))
    # one at each side of the body, one under the sleeve
    room = min(_narrowest_back(counts, body), sleeve.cuff.before) - 1
    if seam <= room:
        return None
    reason = SEAMS_TOO_WIDE(seam=seam, stitches=room + 1)
    widest = room - (seam - room) % 2  # the underarm keeps its parity
    return Impossible(
        ReasonCode.SEAMS_TOO_WIDE, reason, (Nearest(("yoke", "seam_stitches"), widest),) if widest >= 0 else ()
    )
