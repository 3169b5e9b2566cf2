"""The garment in every size, as far as its parts: its stages in the order of the craft.

Bodies; finished measurements; targets and rules; the counts of all sizes from cast-on to split; the parts of each size.
A size that can't be knitted says why, and the others are made. A maker's changes are a second version that goes through
the same stages from the measurements on, with the design's counts where its targets are the same.
"""

from __future__ import annotations

from collections.abc import Collection, Mapping
from dataclasses import dataclass, replace

from grading_core.answer_sizes import answer_size_problems
from grading_core.errors import Impossible, raise_if_any
from grading_core.pullover.bodies import find_wearers, missing_measurements
from grading_core.pullover.changes import Version, adjustment_problems, keep_counts_problems, versions
from grading_core.pullover.chart import chart_anchor
from grading_core.pullover.lengths import asked_lengths, changed_lengths, ease_problems, length_problems, level_lengths
from grading_core.pullover.making import Making
from grading_core.pullover.measurements import extra_problems, fall_problems, measurement_problems, nothing_to_knit
from grading_core.pullover.problems import wish_problems
from grading_core.pullover.request import PulloverRequest
from grading_core.pullover.result import KnittedSize
from grading_core.pullover.targets import SolvedTargets, count_rules, rule_problems
from grading_core.sizes.bodies import SizeBody, size_bodies

Outcomes = Mapping[str, KnittedSize | Impossible]
"""By label, in the order asked."""


@dataclass(frozen=True, slots=True, kw_only=True)
class Garment:
    """All sizes, as far as their parts.

    bodies: of all sizes. rising: the labels from the smallest size to the largest. designed, outcomes: the
    sizes as designed, and with a maker's changes; the same without any. making, solved: of the latter.
    """

    bodies: tuple[SizeBody, ...]
    rising: tuple[str, ...]
    designed: Outcomes
    outcomes: Outcomes
    making: Making
    solved: SolvedTargets


def knit_garment(request: PulloverRequest, among: Collection[str] | None = None) -> Garment:
    """The parts of every size as designed, and with a maker's changes.

    request: what is asked. among: labels of the sizes to knit, whose counts are then chosen without the others; None
    for all.

    Raises ContradictionError for everything in the request that contradicts itself, apart from the length of the
    chart's answer.

    >>> from fractions import Fraction
    >>> from grading_core.gauge import Gauge
    >>> from grading_core.pullover.request import Gauges
    >>> gauge = Gauge.over(Fraction(22), Fraction(31), Fraction(10))
    >>> knit_garment(PulloverRequest(gauges=Gauges(gauge), labels=("S", "M"))).outcomes["M"].counts.body
    228
    """
    neck, yoke, body, sleeve, chart = request.neck, request.yoke, request.body, request.sleeve, request.chart
    levels, changes, lines = body.levels, request.changes, yoke.options.line_stitches

    bodies = size_bodies(request.bodies)
    lengths = asked_lengths(request.ease, neck, yoke, body, sleeve)
    all_lengths = (*lengths.values(), *level_lengths(levels), *changed_lengths(changes).values())
    raise_if_any(
        [
            *answer_size_problems(request.answer_sizes, [each.label for each in bodies]),
            *length_problems(all_lengths, len(bodies)),
            *ease_problems(request.ease, levels),
            *wish_problems(neck, yoke, body, request.yarn, chart),
            *keep_counts_problems(changes),
            *missing_measurements(bodies, lengths, levels, changes),
        ]
    )
    wearers = find_wearers(bodies, request.bodies.body_table)
    rules = count_rules(neck, yoke, body, sleeve, chart_anchor(chart))

    solved: SolvedTargets | None = None
    outcomes: list[Outcomes] = []
    design = Version(gauges=request.gauges, lengths=lengths, sleeve_style=sleeve.style, band=request.band)
    for version in versions(design, levels, changes):
        making = Making.of(request, wearers, version, rules)
        measurements, rising, fabrics = making.measurements, making.rising, making.fabrics
        problems = [
            *measurement_problems(measurements, fabrics),
            *extra_problems(measurements, version.lengths),
            *fall_problems(rising, version.lengths),
            *rule_problems(rules, anchor_asked=bool(chart and chart.anchor)),
        ]
        raise_if_any(version.blame(problem) for problem in problems)

        empty = {
            wearer.label: nothing_to_knit(target, wearer, version.lengths, lines, fabrics)
            for wearer, target in zip(wearers, measurements, strict=True)
        }
        possible = frozenset(label for label, why in empty.items() if not why and (not among or label in among))
        making = replace(making, labels=possible)
        solved = making.solve(solved)
        raise_if_any(adjustment_problems(version.adjustment, solved.solution, fabrics.rounds))

        counts = solved.by_label
        levelled = making.level_stitches(counts)
        made = {
            label: why or making.knit(counts, levelled, label)
            for label, why in empty.items()
            if why or label in making.labels
        }
        outcomes.append(
            {label: version.offer(size) if isinstance(size, Impossible) else size for label, size in made.items()}
        )

    assert solved is not None  # there is always the design
    return Garment(
        bodies=tuple(bodies),
        rising=tuple(target.label for target in rising),
        designed=outcomes[0],
        outcomes=outcomes[-1],
        making=making,
        solved=solved,
    )
