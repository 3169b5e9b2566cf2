"""The garment in every size, as far as its parts: its stages in the order of the craft.

Bodies; finished measurements; targets and rules; the counts of all sizes from cast-on to split; the parts of each size.
A size that can't be knitted says why, and the others are made. A maker's changes are a second version that goes through
the same stages from the measurements on, with the design's counts where its targets are the same.
"""

from __future__ import annotations

from collections.abc import Collection, Mapping, Sequence
from dataclasses import dataclass, replace
from itertools import chain

from grading_core.answer_sizes import answer_size_problems, is_answered
from grading_core.chart.problems import NO_COUNTS
from grading_core.counts.request import Rules
from grading_core.errors import Check, Impossible, check, places, raise_if_any, sound, under
from grading_core.pullover.bodies import Wearer, find_wearers, missing_measurements, needed_measurements
from grading_core.pullover.changes import Version, adjustment_problems, change_problems, versions
from grading_core.pullover.chart import chart_anchor
from grading_core.pullover.lengths import (
    Lengths,
    asked_lengths,
    changed_lengths,
    ease_problems,
    length_problems,
    level_lengths,
)
from grading_core.pullover.making import Making
from grading_core.pullover.measurements import extra_problems, fall_problems, measurement_problems, nothing_to_knit
from grading_core.pullover.problems import wish_problems
from grading_core.pullover.request import LevelWish, PulloverRequest
from grading_core.pullover.result import KnittedSize
from grading_core.pullover.targets import SolvedTargets, count_rules, rule_problems
from grading_core.pullover.yarn import strand_problems
from grading_core.sizes.bodies import SizeBody, body_problems
from grading_core.unknown import is_unknown, told, unknown

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


@dataclass(frozen=True, slots=True)
class Prepared:
    """All that is known before counts are chosen.

    bodies: of all sizes. makings: of the design and, where a maker changes it, of the changed garment.
    """

    bodies: tuple[SizeBody, ...]
    makings: tuple[Making, ...]


@check
def garment_problems(request: PulloverRequest, bodies: tuple[SizeBody, ...] | None = None) -> Check[Prepared]:
    """What contradicts itself in a request, as far as it shows before counts are chosen; makes what they need.

    request: any. What a problem is about counts as unknown in what is looked at after it. bodies: its own, where they
    are known from a request that differs in other things.
    """
    if bodies is None:
        bodies = yield from body_problems(told(lambda: request.bodies))
    labels = told(lambda: [each.label for each in bodies])
    yield from answer_size_problems(request.answer_sizes, labels)
    yield from _strand_problems(request, labels)
    request = yield from _sound_wishes(request)
    yield from ease_problems(request.ease, request.body.levels)
    yield from change_problems(request.changes, request.body.levels)
    lengths = asked_lengths(request.ease, request.neck, request.yoke, request.body, request.sleeve)
    lengths = yield from _sound_lengths(lengths, bodies)
    levels = yield from _sound_levels(request.body.levels, bodies)
    if not is_unknown(request.body):
        request = replace(request, body=replace(request.body, levels=levels))
    changed = yield from _sound_lengths(told(changed_lengths, request.changes), bodies)
    wearers = yield from _wearers(request, bodies, lengths)
    rules = yield from _rules(request)

    style, band = request.sleeve.style, request.band
    design = Version(gauges=request.gauges, lengths=lengths, sleeve_style=style, band=band)
    makings = []
    for version in versions(design, request.changes, changed):
        makings.append(told(Making.of, request, wearers, version, rules))
        if (yield from places(_making_problems(makings[-1]))):
            break  # a maker's changes aren't to blame for what is wrong in the design
    return Prepared(bodies, tuple(makings))


@check
def _strand_problems(request: PulloverRequest, labels: Sequence[str]) -> Check[None]:
    """More strands than one answer holds, in the yarns of the design or of a maker."""
    answered = sum(is_answered(label, request.answer_sizes) for label in labels)
    yield from under(("yarn",), strand_problems(request.yarn, request.chart, answered))
    yield from under(("changes", "yarn"), strand_problems(request.own_yarn, request.chart, answered))


@check
def _making_problems(making: Making) -> Check[None]:
    version = making.version
    found = chain(
        measurement_problems(making.measurements, making.fabrics),
        extra_problems(making.measurements, version.lengths),
        fall_problems(told(lambda: making.rising), version.lengths),
    )
    for problem in found:
        yield version.blame(problem)


def _sound_wishes(request: PulloverRequest) -> Check[PulloverRequest]:
    """The request without what is wrong in the wishes for one part."""
    found = yield from places(wish_problems(request))
    if ("neck", "shares", "front") in found:
        request = replace(request, neck=replace(request.neck, shares=unknown()))
    if any(path[0] == "chart" and path[1] not in NO_COUNTS for path in found):
        request = replace(request, chart=unknown())
    return request


def _sound_lengths(lengths: Lengths, bodies: Sequence[SizeBody]) -> Check[Lengths]:
    """What is asked, without lists of a wrong length."""
    if is_unknown(lengths):
        return lengths
    sound_ones = {}
    for name, asked in lengths.items():
        sound_ones[name] = yield from length_problems(asked, told(len, bodies))
    return sound_ones


@check
def _sound_levels(levels: Sequence[LevelWish], bodies: Sequence[SizeBody]) -> Check[tuple[LevelWish, ...]]:
    """The same of the levels of the body."""
    sound_ones = []
    for level, asked in zip(levels, level_lengths(levels), strict=True):
        checked = yield from length_problems(asked, told(len, bodies))
        sound_ones.append(level if checked is asked or is_unknown(level) else replace(level, below=checked.length))
    return tuple(sound_ones)


@check
def _wearers(request: PulloverRequest, bodies: Sequence[SizeBody], lengths: Lengths) -> Check[tuple[Wearer, ...]]:
    needed = needed_measurements(lengths, request.body.levels, request.changes)
    complete = []
    for index, body in enumerate(bodies):
        complete.append((yield from under(("sizes", index), missing_measurements(body, needed))))
    return find_wearers(complete, request.bodies.body_table)


@check
def _rules(request: PulloverRequest) -> Check[Rules]:
    chart = request.chart
    rules = count_rules(request.neck, request.yoke, request.body, request.sleeve, chart_anchor(chart))
    yield from rule_problems(rules, anchor_asked=bool(chart and chart.anchor))
    return rules


def knit_garment(
    request: PulloverRequest, among: Collection[str] | None = None, prepared: Prepared | None = None
) -> Garment:
    """The parts of every size as designed, and with a maker's changes.

    request: what is asked. among: labels of the sizes to knit, whose counts are then chosen without the others; None
    for all. prepared: what `garment_problems` makes of the request, where it was asked already.

    Raises ContradictionError for everything in the request that contradicts itself, apart from the length of the
    chart's answer.

    >>> from fractions import Fraction
    >>> from grading_core.gauge import Gauge
    >>> from grading_core.pullover.request import Gauges
    >>> gauge = Gauge.over(Fraction(22), Fraction(31), Fraction(10))
    >>> knit_garment(PulloverRequest(gauges=Gauges(gauge), labels=("S", "M"))).outcomes["M"].counts.body
    228
    """
    if prepared is None:
        prepared = sound(garment_problems(request))
    solved: SolvedTargets | None = None
    outcomes: list[Outcomes] = []
    for making in prepared.makings:
        version, fabrics = making.version, making.fabrics
        empty = {
            wearer.label: nothing_to_knit(target, wearer, version.lengths, request.yoke.options.line_stitches, fabrics)
            for wearer, target in zip(making.wearers, making.measurements, strict=True)
        }
        possible = frozenset(label for label, why in empty.items() if not why and (not among or label in among))
        rising = tuple(target.label for target in making.rising)
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
        bodies=prepared.bodies, rising=rising, designed=outcomes[0], outcomes=outcomes[-1], making=making, solved=solved
    )
