"""A whole top-down raglan pullover in every size: the parts joined.

The counts from cast-on to split are chosen for all sizes at once (see `solver`); neck, yoke, body, sleeves and
neckband follow from them, and a chart is laid over what there is. A size that can't be knitted says why, and the others
are made.
"""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from dataclasses import replace

from grading_core.chart.placement import place_charts
from grading_core.chart.request import BodyShaping, ChartRequest, ChartSize
from grading_core.chart.result import ChartPlacements
from grading_core.counts.solver import Solution, Solved, solve
from grading_core.errors import ContradictionError, Impossible, Nearest, Path, Problem, Remark, raise_if_any
from grading_core.limits import MAX_ROUNDS_IN_ALL
from grading_core.pullover.plan import Plan, plan_pullover, too_many_rounds
from grading_core.pullover.request import Changes, PulloverRequest
from grading_core.pullover.result import Changed, MadeSize, Pullover, Row
from grading_core.pullover.sizes import in_wishes, make_size, size_remarks
from grading_core.pullover.words import instructions, table
from grading_core.pullover.yarn import colour_yarn, stitches_by_colour
from grading_core.sizes.request import PerSize
from grading_core.yarn.result import Need
from grading_core.yoke.request import Adjustment


def pullover(request: PulloverRequest) -> Pullover:
    """The pullover in every size; with a maker's changes the changed one, and what they changed.

    Raises ContradictionError for everything in the request that contradicts itself.

    >>> from fractions import Fraction
    >>> from grading_core.gauge import Gauge
    >>> from grading_core.pullover.request import Gauges
    >>> gauge = Gauge.over(Fraction(22), Fraction(31), Fraction(10))
    >>> made = pullover(PulloverRequest(gauges=Gauges(gauge), labels=("S", "M", "L")))
    >>> {(row.item, row.unit): row.values for row in made.table}["body", "stitches"]
    (202, 226, 250)
    """
    plan = plan_pullover(request)
    solution = solve(plan.targets, plan.rules)
    design = _sizes(plan, solution, None)
    changes = request.changes
    if changes is None:
        return _finish(plan, solution, design)
    changed_plan = _changed_plan(request, changes)
    if changes.gauges or changes.ease:
        solution = solve(changed_plan.targets, changed_plan.rules)
    if changes.yoke:
        raise_if_any(_yoke_problems(changed_plan, solution, changes.yoke))
    changed = [
        replace(size, nearest=tuple(_nearest_changed(each, changes) for each in size.nearest))
        if isinstance(size, Impossible)
        else size
        for size in _sizes(changed_plan, solution, changes.yoke)
    ]
    made = _finish(changed_plan, solution, changed)
    return replace(made, changed=tuple(_differences(made.labels, table(design), made.table)))


def _changed_plan(request: PulloverRequest, changes: Changes) -> Plan:
    """The plan with a maker's changes in place of the design's own wishes."""
    changed = replace(
        request,
        gauges=changes.gauges or request.gauges,
        ease={**request.ease, **(changes.ease or {})},
        body=replace(request.body, length=changes.body_length)
        if changes.body_length is not None
        else request.body,
        sleeve=replace(request.sleeve, length=changes.sleeve_length)
        if changes.sleeve_length is not None
        else request.sleeve,
        band=changes.band or request.band,
        changes=None,
    )
    try:
        return plan_pullover(changed)
    except ContradictionError as error:
        raise ContradictionError(
            [replace(problem, path=_where_changed(problem.path)) for problem in error.problems]
        ) from error


def _where_changed(path: Path) -> Path:
    """Where a wish stands among the changes that replaced it."""
    if path[:2] in (("body", "length"), ("sleeve", "length")):
        return ("changes", f"{path[0]}_length", *path[2:])
    return ("changes", *path) if path[:1] in (("ease",), ("band",)) else ("changes",)


def _nearest_changed(nearest: Nearest, changes: Changes) -> Nearest:
    """A nearest change where it takes effect: among the changes, where they replace the design's own wish."""
    part, name = nearest.path[0], nearest.path[-1]
    if part == "ease" and name in (changes.ease or {}):
        return nearest.under("changes")
    replaced: dict[Path, PerSize | None] = {
        ("body", "length"): changes.body_length,
        ("sleeve", "length"): changes.sleeve_length,
    }
    if replaced.get(nearest.path) is not None:
        return replace(nearest, path=("changes", f"{part}_{name}"))
    return nearest


def _yoke_problems(plan: Plan, solution: Solution, change: Adjustment) -> Iterator[Problem]:
    """A yoke that is made too deep for one answer."""
    written = [size.counts.rounds for size in solution.sizes if isinstance(size, Solved)]
    rounds = sum(change.new_rounds(number, plan.fabrics.yoke) for number in written)
    if rounds > MAX_ROUNDS_IN_ALL:
        yield Problem(("changes", "yoke"), too_many_rounds(rounds))


def _differences(labels: Sequence[str], design: Sequence[Row], made: Sequence[Row]) -> Iterator[Changed]:
    """Every number of the table that the changes changed, size by size."""
    for index, label in enumerate(labels):
        for before, after in zip(design, made, strict=True):
            if before.values[index] != after.values[index]:
                yield Changed(
                    size=label,
                    item=before.item,
                    unit=before.unit,
                    designed=before.values[index],
                    changed=after.values[index],
                )


def _sizes(plan: Plan, solution: Solution, change: Adjustment | None) -> list[MadeSize | Impossible]:
    """Every size from its counts, without chart and yarn; the yoke deeper or shallower where a maker asks for it."""
    by_size = dict(zip(plan.ascending, solution.sizes, strict=True))
    sizes: list[MadeSize | Impossible] = []
    for index, size in enumerate(plan.sizes):
        counts = by_size[index]
        if isinstance(counts, Impossible):
            sizes.append(in_wishes(counts, plan, size))
        else:
            sizes.append(make_size(plan, size, counts, change))
    return sizes


def _finish(plan: Plan, solution: Solution, sizes: Sequence[MadeSize | Impossible]) -> Pullover:
    """The answer: chart and yarn of every size, and what all of them have in common."""
    made = [size for size in sizes if isinstance(size, MadeSize)]
    remarks = [*plan.remarks, *(remark for size in made for remark in size_remarks(size))]
    if plan.chart and made:
        placements = _place(plan.chart, made, children=any(size.child for size in plan.sizes))
        made = [replace(size, chart=placed) for size, placed in zip(made, placements.sizes, strict=True)]
        remarks += [*_start_remarks(plan), *(_in_pullover(remark) for remark in placements.remarks)]
    if plan.request.yarn:
        made = [replace(size, yarn=_yarn(plan, size)) for size in made]
    finished = iter(made)
    return Pullover(
        labels=tuple(size.label for size in plan.sizes),
        sizes=tuple(next(finished) if isinstance(size, MadeSize) else size for size in sizes),
        cost=solution.cost,
        unevenness=solution.unevenness,
        table=table(sizes),
        instructions=instructions(made, plan.request, plan.chart),
        changed=(),
        remarks=tuple(remarks),
    )


def _place(plan: ChartRequest, sizes: Sequence[MadeSize], *, children: bool) -> ChartPlacements:
    """Where the chart lies on every size."""
    charted = [
        ChartSize(
            label=size.label,
            rounds=size.counts.rounds,
            neck=size.counts.neck,
            increase_rounds=size.yoke.increase_rounds,
            underarm=size.counts.underarm,
            body_rounds=size.body.rounds,
            body_shaping=[BodyShaping(number, stitches) for number, stitches in size.body.shaping],
            sleeve_rounds=size.sleeve.rounds,
            sleeve_decrease_rounds=size.sleeve.decrease_rounds,
        )
        for size in sizes
    ]
    try:
        return place_charts(replace(plan, sizes=charted, for_children=children))
    except ContradictionError as error:
        # only the answer's length is left to contradict: what the chart and the garment have in common is planned
        raise ContradictionError(
            [Problem(("chart",), f"The sizes {each.detail}") for each in error.problems]
        ) from error


def _in_pullover(remark: Remark) -> Remark:
    """A word about the placed chart with its place in the request for a pullover, which holds no counts of sizes."""
    anchor = remark.path is not None and remark.path[0] == "anchor"
    return replace(remark, path=("chart", *remark.path) if anchor and remark.path else None)


def _start_remarks(plan: Plan) -> Iterator[Remark]:
    """A word where the rounds of the chart start elsewhere than those of the yoke."""
    if plan.request.neck.start == "centre_back":
        yield Remark(
            "chart_starts_before_back",
            "The chart's floats are measured in rounds that start before the back. In rounds that start at the centre "
            "back those over the start of the round lie there, and may be shorter or longer.",
            path=("neck", "start"),
        )


def _yarn(plan: Plan, size: MadeSize) -> tuple[Need, ...]:
    """Yarn of each colour of one size."""
    wishes = plan.request.yarn
    assert wishes is not None
    return colour_yarn(stitches_by_colour(size, plan.chart), wishes, plan.fabrics.below)
