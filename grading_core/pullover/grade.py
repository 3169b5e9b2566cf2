"""A whole top-down raglan pullover in every size, as a recipe: its stages in the order of the craft.

The garment as far as its parts (see `garment`), and what the counts come to at the gauge of a maker who keeps them, in
all sizes, since each has a say in the others. Of those that are answered: what would make an impossible size possible;
the chart laid over what there is; yarn; table and words; words of warning.
"""

from __future__ import annotations

from collections.abc import Collection, Iterator
from types import NoneType

from grading_core.answer_sizes import is_answered
from grading_core.chart.fabric import Windows
from grading_core.chart.request import ChartRequest
from grading_core.errors import sound
from grading_core.pullover.bodies import body_remarks
from grading_core.pullover.changes import changed_numbers
from grading_core.pullover.chart import chart_anchor, lay_chart, plan_chart, with_chart
from grading_core.pullover.colours import GarmentColours, garment_colours
from grading_core.pullover.garment import Outcomes, Prepared, garment_problems, knit_garment
from grading_core.pullover.nearest import with_nearest
from grading_core.pullover.own_gauge import at_own_gauge, own_gauge_remarks, own_gauge_table
from grading_core.pullover.remarks import chart_remarks, garment_remarks
from grading_core.pullover.request import PulloverRequest
from grading_core.pullover.result import ChangedNumber, Instructions, KnittedSize, Pullover, PulloverSize, Row
from grading_core.pullover.table import garment_table, yarn_table
from grading_core.pullover.words import instructions, word_remarks
from grading_core.pullover.yarn import spinning_of, with_yarn, yarn_remarks
from grading_core.standards.body_tables import body_table


def grade_pullover(request: PulloverRequest, prepared: Prepared | None = None) -> Pullover:
    """The pullover in every size; with a maker's changes the changed one, and what they changed.

    request: what is asked. prepared: what `garment_problems` makes of it, where it was asked already.

    Raises ContradictionError for everything in the request that contradicts itself.

    >>> from fractions import Fraction
    >>> from grading_core.gauge import Gauge
    >>> from grading_core.pullover.request import Gauges
    >>> gauge = Gauge.over(Fraction(22), Fraction(31), Fraction(10))
    >>> pullover = grade_pullover(PulloverRequest(gauges=Gauges(gauge), labels=("S", "M", "L")))
    >>> {(row.part, row.item): row.values for row in pullover.table}["body", "stitches"]
    (204, 228, 252)
    """
    garment = knit_garment(request, prepared=prepared)

    def knit(changed: PulloverRequest, among: Collection[str] | None) -> Outcomes:
        return knit_garment(changed, among, sound(garment_problems(changed, garment.bodies))).outcomes

    outcomes = with_nearest(request, garment, knit)
    knitted = {label: size for label, size in outcomes.items() if isinstance(size, KnittedSize)}
    labels = [label for label in outcomes if is_answered(label, request.answer_sizes)]

    making, neck = garment.making, request.neck
    version = making.version
    plan = plan_chart(request.chart, chart_anchor(request.chart), request.yoke, version.gauges)
    young = any(wearer.young for wearer in making.wearers)
    children = any(wearer.child for wearer in making.wearers)
    answerable = {label: knitted[label] for label in labels if label in knitted}
    windows = Windows(plan.worked_chart.worked_rows()) if plan else None
    placements = lay_chart(plan, answerable, windows, for_children=children)
    colours, own_yarn = making.colours, None if request.kept_at else request.own_yarn
    spinning = spinning_of(request, colours, version.gauges, own_yarn)
    knitted |= with_yarn(with_chart(answerable, placements), plan, colours, spinning)

    gauges = version.gauges.used(charted=request.chart is not None)
    knitted = at_own_gauge(knitted, making.wearers, request, plan, colours)
    answered = {label: knitted[label] for label in labels if label in knitted}
    told = {label: answered.get(label, outcomes[label]) for label in labels}
    sizes = tuple(PulloverSize(label, outcome) for label, outcome in told.items())

    instructed: tuple[Instructions, ...] = ()
    if "instructions" in request.parts:
        yarn = spinning.yarns if spinning else None
        instructed = instructions(
            told, gauges, neck.start, plan, request.kept_at, colours=colours, yarn=yarn, young=young, children=children
        )
    bodies = [body for body in garment.bodies if body.label in labels]
    remarks = (
        *body_remarks(bodies, version.lengths, request.body.levels, request.body_table),
        *garment_remarks(making, garment.solved.by_label, knitted),
        *yarn_remarks(told.values()),
        *chart_remarks(placements, neck.start),
        *own_gauge_remarks(answered.values()),
        *word_remarks(instructed),
    )
    return Pullover(
        parts=request.parts,
        sizes=sizes,
        body_table=body_table(table) if (table := request.bodies.body_table) else None,
        gauges=gauges,
        plan=plan,
        colours=colours,
        cost=garment.solved.solution.cost,
        unevenness=garment.solved.solution.unevenness,
        table=tuple(_table(told, colours)) if "table" in request.parts else (),
        instructions=instructed,
        designed=tuple(PulloverSize(label, garment.designed[label]) for label in labels) if request.changes else (),
        changed=tuple(_changed(request, garment.designed, told, colours, plan, windows)) if request.changes else (),
        remarks=tuple(remark for remark in remarks if remark.size is None or remark.size in labels),
    )


def _table(outcomes: Outcomes, colours: GarmentColours) -> Iterator[Row]:
    """The rows of the table in which any size has a number."""
    for row in _numbers(outcomes, colours):
        if {*map(type, row.values)} != {NoneType}:  # not by comparing: values may be fractions
            yield row


def _changed(
    request: PulloverRequest,
    designed: Outcomes,
    told: Outcomes,
    colours: GarmentColours,
    plan: ChartRequest | None,
    windows: Windows | None,
) -> Iterator[ChangedNumber]:
    """What a maker's changes have changed in the sizes that are answered."""
    as_designed = garment_colours(request, changed=False)
    if request.kept_at:
        before, after = told, own_gauge_table(told.values(), colours)
    else:
        before = _with_design_yarn(request, {label: designed[label] for label in told}, as_designed, plan, windows)
        after = _numbers(told, colours)
    return changed_numbers([*told], _numbers(before, as_designed), after)


def _with_design_yarn(
    request: PulloverRequest,
    designed: Outcomes,
    colours: GarmentColours,
    plan: ChartRequest | None,
    windows: Windows | None,
) -> Outcomes:
    """The sizes as designed with their yarn, for which the chart is laid over them."""
    spinning = spinning_of(request, colours, request.gauges, None)
    if spinning is None:
        return designed
    knitted = {label: size for label, size in designed.items() if isinstance(size, KnittedSize)}
    knitted = with_chart(knitted, lay_chart(plan, knitted, windows))
    return {**designed, **with_yarn(knitted, plan, colours, spinning)}


def _numbers(outcomes: Outcomes, colours: GarmentColours) -> tuple[Row, ...]:
    return (*garment_table(outcomes.values()), *yarn_table(outcomes.values(), colours))
