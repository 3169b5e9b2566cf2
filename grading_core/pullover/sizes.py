"""One size of a pullover from its counts: neck, yoke, body, sleeve, neckband, and what it measures."""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import replace
from fractions import Fraction
from itertools import accumulate

from grading_core.chart.grid import progress
from grading_core.counts.result import Counts
from grading_core.counts.solver import Solved
from grading_core.errors import Impossible, Nearest, Remark
from grading_core.gauge import Gauge
from grading_core.parts.body import Body, plan_body
from grading_core.parts.neckband import Neckband, neckband, pick_up
from grading_core.parts.neckline import (
    FrontDrop,
    HeadCheck,
    NeckStitches,
    Opening,
    cast_on,
    check_head,
    front_drop,
    neck_edge_cm,
)
from grading_core.parts.ribbing import Rib
from grading_core.parts.short_rows import BackRaise, pairs_for, raise_back
from grading_core.parts.sleeve import Sleeve, plan_sleeve
from grading_core.pullover.plan import Plan, SizePlan
from grading_core.pullover.result import Finished, MadeSize, Neck
from grading_core.rounding import CountRule
from grading_core.units import to_places
from grading_core.wording import counted
from grading_core.yoke.adjustment import adjust
from grading_core.yoke.request import Adjustment, WrittenYoke
from grading_core.yoke.result import Schedule
from grading_core.yoke.schedule import schedule

FAR_FROM_WANTED_CM = Fraction(2)
"""A circumference further than this from what was asked deserves a word (a judgement, no source)."""


def make_size(plan: Plan, size: SizePlan, solved: Solved, change: Adjustment | None) -> MadeSize | Impossible:
    """One size, or why it can't be made; its chart and yarn are still to come.

    plan: of all sizes. size: this one. solved: its counts. change: a maker's own of the yoke's depth.
    """
    yoke = _yoke(plan, size, solved.counts, change)
    if isinstance(yoke, Impossible):
        return yoke
    counts = replace(solved.counts, rounds=yoke.yoke.rounds)
    neck = _neck(plan, counts)
    if isinstance(neck, Impossible):
        return neck
    least = 0
    if plan.chart:
        least = progress(plan.chart.chart, plan.chart.first_round, counts.rounds).finishing_rounds
    body = _body(plan, size, counts, least)
    if isinstance(body, Impossible):
        return body
    sleeve = _sleeve(plan, size, counts, least)
    if isinstance(sleeve, Impossible):
        return sleeve
    seam = _seam(plan, counts, body, sleeve)
    if seam:
        return seam
    band = _band(plan, neck)
    return MadeSize(
        label=size.label,
        counts=counts,
        differences=replace(
            solved.differences, rounds=solved.differences.rounds + counts.rounds - solved.counts.rounds
        ),
        cost=solved.cost,
        neck=replace(neck, head=_head(plan, size, neck, band)),
        yoke=yoke,
        body=body,
        sleeve=sleeve,
        band=band,
        wanted=size.wanted,
        finished=_finished(plan, counts, neck, yoke, body, sleeve),
        chart=None,
        yarn=(),
    )


def in_wishes(impossible: Impossible, plan: Plan, size: SizePlan) -> Impossible:
    """Why the solver has no counts for a size, with the nearest changes as the request has them.

    impossible: from `solver`. plan, size: what was asked.
    """
    fabrics, nearest = plan.fabrics, []
    for each in impossible.nearest:
        if each.field == "rounds":
            nearest.append(Nearest(("yoke", "depth"), fabrics.yoke.height_cm(int(each.value))))
        elif each.field == "underarm":
            nearest.append(Nearest(("yoke", "underarm"), fabrics.below.width_cm(int(each.value))))
        elif each.field == "body":
            around = fabrics.below.width_cm(int(each.value))
            nearest.append(Nearest(("ease", "bust"), around - size.body["bust"]))
        elif each.field == "sleeve":
            around = fabrics.below.width_cm(int(each.value))
            nearest.append(Nearest(("ease", "upper_arm"), around - size.body["upper_arm"]))
        elif len(each.path) > 1:
            nearest.append(each)
        else:
            nearest.append(Nearest(("yoke", *each.path), each.value))
    return Impossible(impossible.reason, tuple(nearest))


def size_remarks(size: MadeSize) -> Iterator[Remark]:
    """What deserves a word in one size: its lengths, its neck, and circumferences far from what was asked.

    size: as made.
    """
    yield from size.body.remarks
    yield from size.sleeve.remarks
    if size.neck.head:
        yield from size.neck.head.remarks
    for name, words in (("bust", "bust"), ("upper_arm", "upper arm"), ("neck", "neck"), ("wrist", "wrist")):
        wanted, finished = getattr(size.wanted, name), getattr(size.finished, name)
        if abs(finished - wanted) > FAR_FROM_WANTED_CM:
            yield Remark(
                "far_from_wanted",
                f"The {words} comes to {to_places(finished, 1)} cm where {to_places(wanted, 1)} cm is asked: a smaller "
                "multiple would come nearer.",
                size.label,
            )
    for edge, words in ((size.body.hem, "hem"), (size.sleeve.cuff, "cuff"), (size.band.edge, "neckband")):
        if edge.rib.gauge.width_cm(abs(edge.change)) > FAR_FROM_WANTED_CM:
            yield Remark(
                "rib_far_from_fabric",
                f"The multiple of the {words} takes it from {edge.before} stitches to {edge.stitches}: a smaller one "
                "would come nearer.",
                size.label,
            )
    for part, asked, edge, words in (
        (size.body, size.wanted.body_length, size.body.hem, "body"),
        (size.sleeve, size.wanted.sleeve_length, size.sleeve.cuff, "sleeve"),
    ):
        if not part.rounds and edge.height_cm - asked > FAR_FROM_WANTED_CM:
            yield Remark(
                f"{words}_longer_than_asked",
                f"The rib alone is {to_places(edge.height_cm, 1)} cm high where a {words} of {to_places(asked, 1)} cm "
                "is asked.",
                size.label,
            )


def _yoke(plan: Plan, size: SizePlan, counts: Counts, change: Adjustment | None) -> Schedule | Impossible:
    """The increases, adjusted where a maker asks for it in the way that disturbs the yoke least."""
    written, options, gauge = counts.yoke(size.label), plan.rules.yoke, plan.fabrics.yoke
    if change is None:
        return schedule(written, options, gauge)
    adjusted = adjust(WrittenYoke(written), change, options, gauge)
    for way in adjusted.options:
        if way.method == adjusted.recommended:
            return way.schedule
    shallowest = [way.shallowest.rounds for way in adjusted.options if way.shallowest is not None]
    return Impossible(
        adjusted.why, tuple(_as_asked(change, min(shallowest), written.rounds, gauge) for _ in shallowest[:1])
    )


def _as_asked(change: Adjustment, rounds: int, written: int, gauge: Gauge) -> Nearest:
    """A number of rounds in the way in which a maker asked for the yoke."""
    if change.depth_cm is not None:
        return Nearest(("changes", "yoke", "depth"), gauge.height_cm(rounds))
    if change.depth_change_cm is not None:
        return Nearest(("changes", "yoke", "depth_change"), gauge.height_cm(rounds - written))
    if change.rounds_change is not None:
        return Nearest(("changes", "yoke", "rounds_change"), rounds - written)
    return Nearest(("changes", "yoke", "rounds"), rounds)


def _neck(plan: Plan, counts: Counts) -> Neck | Impossible:
    """Cast-on with a raised back or a dropped front."""
    wishes, gauge, sections = plan.request.neck, plan.fabrics.yoke, counts.neck
    raised: BackRaise | None = None
    drop: FrontDrop | None = None
    if wishes.front_drop:
        rows = _drop_rows(plan)
        if rows >= counts.rounds:
            reason = f"{counted(rows, 'row')} of front drop don't fit in a yoke of {counted(counts.rounds, 'round')}."
            return Impossible(reason, (Nearest(("neck", "front_drop"), gauge.height_cm(counts.rounds - 2)),))
        dropped = front_drop(sections.front, rows, gauge)
        if isinstance(dropped, Impossible):
            return Impossible(dropped.reason)
        drop = dropped
    elif wishes.raise_cm:
        pairs = pairs_for(wishes.raise_cm, gauge)
        short = raise_back(sections.front, sections.sleeve, counts.line_stitches, pairs, gauge, wishes.way)
        if isinstance(short, Impossible):
            most = [each.value for each in short.nearest if each.field == "pairs"]
            return Impossible(
                short.reason,
                tuple(Nearest(("neck", "raise_height"), gauge.height_cm(2 * int(pairs))) for pairs in most),
            )
        raised = short
    stitches = NeckStitches(sections.back, sections.front, sections.sleeve, counts.line_stitches)
    made = cast_on(stitches, wishes.start, wishes.way, drop)
    return Neck(cast_on=made, raised=raised, drop=drop, edge_cm=neck_edge_cm(made, gauge, drop), head=None)


def _drop_rows(plan: Plan) -> int:
    """Rows of the drop: the yoke's increases have to fall on its right-side rows, of which the last is one."""
    options = plan.rules.yoke
    rule = CountRule(2, options.first % 2 if options.step == 2 else 0)
    return plan.fabrics.yoke.rows(plan.request.neck.front_drop, rule) or 2


def _body(plan: Plan, size: SizePlan, counts: Counts, least: int) -> Body | Impossible:
    wishes, gauge = plan.request.body, plan.fabrics.below
    hem = plan.rib(wishes.hem, size)
    made = plan_body(
        counts.body,
        size.wanted.body_length,
        gauge,
        hem,
        levels=size.levels,
        spacing=wishes.spacing,
        minimum_rounds=least if wishes.length is None else 0,
        size=size.label,
    )
    if isinstance(made, Body):
        return made
    hem_cm = hem.gauge.height_cm(hem.rounds)
    nearest = tuple(
        Nearest(("body", "length"), gauge.height_cm(int(each.value)) + hem_cm)
        if each.field == "rounds"
        else Nearest(("body", "levels", "below"), gauge.height_cm(int(each.value)))
        for each in made.nearest
    )
    return Impossible(made.reason, nearest)


def _sleeve(plan: Plan, size: SizePlan, counts: Counts, least: int) -> Sleeve | Impossible:
    wishes, gauge = plan.request.sleeve, plan.fabrics.below
    cuff = plan.rib(wishes.cuff, size)
    made = plan_sleeve(
        counts.sleeve,
        size.wanted.sleeve_length,
        gauge,
        cuff,
        size.wanted.wrist,
        spacing=wishes.spacing,
        plain_before=wishes.plain_before,
        plain_after=wishes.plain_after,
        minimum_rounds=least if wishes.length is None else 0,
        size=size.label,
    )
    if isinstance(made, Sleeve):
        return made
    cuff_cm = cuff.gauge.height_cm(cuff.rounds)
    nearest = tuple(
        Nearest(("sleeve", "length"), gauge.height_cm(int(each.value)) + cuff_cm)
        if each.field == "rounds"
        else Nearest(("sleeve", *each.path), each.value)
        for each in made.nearest
    )
    return Impossible(made.reason, nearest)


def _seam(plan: Plan, counts: Counts, body: Body, sleeve: Sleeve) -> Impossible | None:
    """Why the breaks of the chart take a whole part of the garment, or None."""
    seam = plan.rules.seam_stitches
    if plan.chart is None or seam is None:
        return None
    narrowest = min(accumulate((stitches for _, stitches in body.shaping), initial=body.stitches))
    # a break at each side of the body, one under the sleeve
    room = min(narrowest // 2, sleeve.cuff.before) - 1
    if seam <= room:
        return None
    reason = f"{counted(seam, 'seam stitch')} leave nothing of a part that has {room + 1}."
    return Impossible(reason, (Nearest(("yoke", "seam_stitches"), room - (seam - room) % 2),))


def _band(plan: Plan, neck: Neck) -> Neckband:
    wishes = plan.request.band
    rib = Rib(plan.fabrics.rib, plan.band_height_cm, wishes.count_rule)
    rows, centre = (neck.drop.rows, neck.drop.centre) if neck.drop else (0, 0)
    picked_up = pick_up(neck.cast_on.stitches + centre, plan.fabrics.yoke, rows)
    return neckband(picked_up, rib, wishes.build)


def _head(plan: Plan, size: SizePlan, neck: Neck, band: Neckband) -> HeadCheck | None:
    if "head" not in size.body:
        return None
    last = "band's bind-off" if band.build == "single" else "join of the folded band"
    openings = [Opening("cast-on edge", neck.edge_cm), Opening(last, band.last_edge_cm)]
    stretch = plan.request.neck.stretch
    return check_head(openings, size.body["head"], stretch, young=size.young, size=size.label, path=("neck",))


def _finished(plan: Plan, counts: Counts, neck: Neck, yoke: Schedule, body: Body, sleeve: Sleeve) -> Finished:
    raise_cm = neck.raised.height_cm if neck.raised else Fraction(0)
    return Finished(
        bust=body.circumference_cm,
        upper_arm=sleeve.upper_arm_cm,
        neck=plan.fabrics.yoke.width_cm(counts.cast_on),
        depth=yoke.depth_cm,
        underarm=plan.fabrics.below.width_cm(counts.underarm),
        hem=body.hem.circumference_cm,
        wrist=sleeve.cuff.circumference_cm,
        body_length=body.length_cm,
        sleeve_length=sleeve.length_cm,
        total_length=raise_cm + yoke.depth_cm + body.length_cm,
    )
