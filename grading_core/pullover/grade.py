"""A whole top-down raglan pullover in every size, as a recipe: its stages in the order of the craft.

Bodies; finished measurements; targets and rules; the counts of all sizes from cast-on to split; the parts of each
size; the chart laid over what there is; yarn; table and words; words of warning. A size that can't be knitted says why,
and the others are made. A maker's changes are a second version that goes through the same stages from the measurements
on, with the design's counts where its targets are the same.
"""

from __future__ import annotations

from dataclasses import replace
from functools import partial

from grading_core.chart.grid import describe
from grading_core.counts.solver import solve
from grading_core.errors import raise_if_any
from grading_core.pullover.bodies import body_remarks, find_wearers, missing_measurements
from grading_core.pullover.changes import Version, adjustment_problems, changed_numbers, versions
from grading_core.pullover.chart import chart_anchor, lay_chart, plan_chart
from grading_core.pullover.fit import evened_girths, smallest_first
from grading_core.pullover.lengths import asked_lengths, changed_lengths, ease_problems, length_problems, level_lengths
from grading_core.pullover.measurements import fall_problems, measurement_problems, target_measurements
from grading_core.pullover.parts import knit_size
from grading_core.pullover.problems import wish_problems
from grading_core.pullover.remarks import chart_remarks, size_remarks
from grading_core.pullover.request import PulloverRequest
from grading_core.pullover.result import KnittedSize, Pullover, PulloverSize
from grading_core.pullover.table import table
from grading_core.pullover.targets import count_rules, rule_problems, stitch_targets
from grading_core.pullover.words import instructions
from grading_core.pullover.yarn import colour_yarn
from grading_core.sizes.bodies import size_bodies


def grade_pullover(request: PulloverRequest) -> Pullover:
    """The pullover in every size; with a maker's changes the changed one, and what they changed.

    Raises ContradictionError for everything in the request that contradicts itself.

    >>> from fractions import Fraction
    >>> from grading_core.gauge import Gauge
    >>> from grading_core.pullover.request import Gauges
    >>> gauge = Gauge.over(Fraction(22), Fraction(31), Fraction(10))
    >>> pullover = grade_pullover(PulloverRequest(gauges=Gauges(gauge), labels=("S", "M", "L")))
    >>> {(row.item, row.unit): row.values for row in pullover.table}["body", "stitches"]
    (204, 228, 252)
    """
    neck, yoke, body, sleeve, chart = request.neck, request.yoke, request.body, request.sleeve, request.chart
    levels, changes, lines = body.levels, request.changes, yoke.options.line_stitches

    bodies = size_bodies(request.bodies)
    lengths = asked_lengths(request.ease, neck, yoke, body, sleeve)
    all_lengths = (*lengths.values(), *level_lengths(levels), *changed_lengths(changes).values())
    raise_if_any(
        [
            *length_problems(all_lengths, len(bodies)),
            *ease_problems(request.ease, levels),
            *wish_problems(neck, yoke, request.yarn, chart),
            *missing_measurements(bodies, lengths, levels, changes),
        ]
    )
    wearers = find_wearers(bodies, request.bodies.body_table)
    anchor = chart_anchor(chart)
    rules = count_rules(neck, yoke, body, sleeve, anchor)

    counted, tables = None, []
    design = Version(gauges=request.gauges, lengths=lengths, sleeve_style=sleeve.style, band=request.band)
    for version in versions(design, levels, changes):
        fabrics = version.gauges.fabrics(chart.chart if chart else None)
        measurements = target_measurements(
            wearers,
            version.lengths,
            neck,
            levels,
            style=version.sleeve_style,
            lines_cm=fabrics.yoke.width_cm(4 * lines),
            evened=evened_girths(version.lengths, request.smooths),
        )
        rising = [measurements[place] for place in smallest_first(wearers)]
        problems = [
            *measurement_problems(measurements, version.lengths, neck, lines, fabrics),
            *fall_problems(rising, version.lengths),
            *rule_problems(rules, anchor_asked=bool(chart and chart.anchor)),
        ]
        raise_if_any(version.blame(problem) for problem in problems)

        targets = stitch_targets(rising, fabrics, lines)
        if targets != counted:
            counted, solution = targets, solve(targets, rules)
        raise_if_any(adjustment_problems(version.adjustment, solution, fabrics.yoke))

        counts = {target.label: solved for target, solved in zip(targets, solution.sizes, strict=True)}
        knit = partial(knit_size, neck=neck, yoke=yoke, body=body, sleeve=sleeve, chart=chart)
        outcomes = {
            wearer.label: knit(counts[wearer.label], target, wearer, version, fabrics)
            for wearer, target in zip(wearers, measurements, strict=True)
        }
        tables.append(table(outcomes.values()))

    knitted = {label: size for label, size in outcomes.items() if isinstance(size, KnittedSize)}
    plan = plan_chart(chart, anchor, yoke, fabrics.yoke)
    placements = lay_chart(plan, knitted, for_children=any(wearer.child for wearer in wearers))
    for placed in placements.sizes if placements else ():
        knitted[placed.label] = replace(knitted[placed.label], chart=placed)
    if request.yarn:
        for label, size in knitted.items():
            yarn = colour_yarn(size, plan, request.yarn, fabrics.below)
            knitted[label] = replace(size, yarn=yarn)

    return Pullover(
        sizes=tuple(PulloverSize(label, knitted.get(label, outcome)) for label, outcome in outcomes.items()),
        chart=describe(chart.chart) if chart else None,
        cost=solution.cost,
        unevenness=solution.unevenness,
        table=tables[-1],
        instructions=instructions(knitted, version.gauges, neck.start, yoke.seam_stitches, plan),
        changed=tuple(changed_numbers([*outcomes], tables[0], tables[-1])),
        remarks=(
            *body_remarks(bodies, version.lengths, levels, request.body_table),
            *size_remarks(knitted),
            *chart_remarks(placements, neck.start),
        ),
    )
