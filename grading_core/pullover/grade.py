"""A whole top-down raglan pullover in every size, as a recipe: its stages in the order of the craft.

The garment as far as its parts (see `garment`); what would make an impossible size possible; the chart laid over what
there is; yarn; what the counts come to at the gauge of a maker who keeps them; table and words; words of warning.
"""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import replace

from grading_core.chart.grid import describe
from grading_core.pullover.bodies import body_remarks
from grading_core.pullover.changes import changed_numbers
from grading_core.pullover.chart import chart_anchor, lay_chart, plan_chart
from grading_core.pullover.garment import knit_garment
from grading_core.pullover.nearest import with_nearest
from grading_core.pullover.own_gauge import at_own_gauge, own_gauge_remarks, own_gauge_table
from grading_core.pullover.remarks import chart_remarks, garment_remarks
from grading_core.pullover.request import PulloverRequest
from grading_core.pullover.result import ChangedNumber, KnittedSize, Pullover, PulloverSize
from grading_core.pullover.table import garment_table, yarn_table
from grading_core.pullover.words import instructions
from grading_core.pullover.yarn import colour_yarn, yarn_remarks


def grade_pullover(request: PulloverRequest) -> Pullover:
    """The pullover in every size; with a maker's changes the changed one, and what they changed.

    Raises ContradictionError for everything in the request that contradicts itself.

    >>> from fractions import Fraction
    >>> from grading_core.gauge import Gauge
    >>> from grading_core.pullover.request import Gauges
    >>> gauge = Gauge.over(Fraction(22), Fraction(31), Fraction(10))
    >>> pullover = grade_pullover(PulloverRequest(gauges=Gauges(gauge), labels=("S", "M", "L")))
    >>> {(row.part, row.item): row.values for row in pullover.table}["body", "stitches"]
    (204, 228, 252)
    """
    garment = knit_garment(request)
    outcomes = with_nearest(request, garment, lambda changed, among: knit_garment(changed, among).outcomes)

    knitted = {label: size for label, size in outcomes.items() if isinstance(size, KnittedSize)}
    making, neck, yoke = garment.making, request.neck, request.yoke
    version = making.version
    plan = plan_chart(request.chart, chart_anchor(request.chart), yoke, version.gauges)
    placements = lay_chart(plan, knitted, for_children=any(wearer.child for wearer in making.wearers))
    for placed in placements.sizes if placements else ():
        knitted[placed.label] = replace(knitted[placed.label], chart=placed)
    if request.yarn:
        for label, size in knitted.items():
            yarn = colour_yarn(size, plan, request.yarn, making.fabrics.rounds)
            knitted[label] = replace(size, yarn=yarn)

    gauges = version.gauges.used(charted=request.chart is not None)
    knitted = at_own_gauge(knitted, making.wearers, request, plan)
    answered = {label: knitted.get(label, outcome) for label, outcome in outcomes.items()}
    made = garment_table(answered.values())
    changed: Iterator[ChangedNumber] = iter(())
    if request.changes:
        compared = own_gauge_table(answered.values()) if request.kept_at else made
        changed = changed_numbers([*outcomes], garment_table(garment.designed.values()), compared)

    return Pullover(
        sizes=tuple(PulloverSize(label, outcome) for label, outcome in answered.items()),
        gauges=gauges,
        chart=describe(request.chart.chart) if request.chart else None,
        cost=garment.solved.solution.cost,
        unevenness=garment.solved.solution.unevenness,
        table=(*made, *yarn_table(answered.values())),
        instructions=instructions(answered, gauges, neck.start, plan, request.kept_at),
        changed=tuple(changed),
        remarks=(
            *body_remarks(garment.bodies, version.lengths, request.body.levels, request.body_table),
            *garment_remarks(making, garment.solved.by_label, knitted),
            *(yarn_remarks(request.yarn, answered.values(), charted=plan is not None) if request.yarn else ()),
            *chart_remarks(placements, neck.start),
            *own_gauge_remarks(knitted.values()),
        ),
    )
