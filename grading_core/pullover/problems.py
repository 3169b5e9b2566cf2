"""Where the wishes for the parts contradict each other, whatever the bodies are."""

from __future__ import annotations

from dataclasses import replace

from grading_core.codes import ProblemCode
from grading_core.errors import Check, Problem, check, places, under
from grading_core.pullover.chart import chart_problems
from grading_core.pullover.colours import colour_problems
from grading_core.pullover.request import NeckWishes, PulloverRequest, Ribbed, YokeWishes
from grading_core.pullover.yarn import yarn_problems
from grading_core.sizes.request import EvenSteps, PerSize
from grading_core.unknown import told
from grading_core.wording import counted


def wish_problems(request: PulloverRequest) -> Check[None]:
    """What contradicts itself in the wishes for one part.

    request: any.

    >>> from fractions import Fraction
    >>> from grading_core.gauge import Gauge
    >>> from grading_core.pullover.request import Gauges, YokeWishes
    >>> request = PulloverRequest(gauges=Gauges(Gauge(Fraction(2), Fraction(3))), yoke=YokeWishes(line_to_body=3))
    >>> [problem.path for problem in wish_problems(request)]
    [('yoke', 'line_to_body')]
    """
    yield from _share_problems(request.neck)
    yield from _line_problems(request.yoke)
    yield from _edge_problems(request)
    yield from under(("yarn",), yarn_problems(request.yarn, request.gauges))
    yield from _own_yarn_problems(request)
    yield from _dart_problems(request)
    if request.chart is not None:
        yield from under(("chart",), chart_problems(request.chart))
    yield from colour_problems(request)


@check
def _share_problems(neck: NeckWishes) -> Check[None]:
    if neck.shares is not None and neck.shares.front > neck.shares.back:
        detail = "The front must not be wider than the back at the neck."
        yield Problem(("neck", "shares", "front"), ProblemCode.FRONT_WIDER_THAN_BACK, detail)


@check
def _line_problems(yoke: YokeWishes) -> Check[None]:
    lines = yoke.options.line_stitches
    if yoke.line_to_body is not None and yoke.line_to_body > lines:
        detail = f"is more than the raglan line has: {counted(lines, 'stitch')}."
        yield Problem(("yoke", "line_to_body"), ProblemCode.MORE_THAN_LINE_HAS, detail)


@check
def _edge_problems(request: PulloverRequest) -> Check[None]:
    yield from under(("body", "hem"), _rib_problems(told(lambda: request.body.hem)))
    yield from under(("sleeve", "cuff"), _rib_problems(told(lambda: request.sleeve.cuff)))
    if not (yield from places(under(("band",), _rib_problems(request.band)))):
        yield from _band_change_problems(request)


@check
def _band_change_problems(request: PulloverRequest) -> Check[None]:
    """A rib of the changed band against its count rule, where a maker changes one of them."""
    sent = request.changes.band if request.changes else None
    if sent and sent.told_by:
        for problem in _rib_problems(sent.of(request.band)):
            (name,) = problem.path[1:]
            path = problem.path if getattr(sent.count_rule, str(name)) is not None else ("rib",)
            yield replace(problem, path=("changes", "band", *path))


@check
def _rib_problems(edge: Ribbed) -> Check[None]:
    """Counts that a rib doesn't go up into: in the round it has to come out even."""
    rule, rib = edge.count_rule, edge.rib
    if rule is None or rib is None:
        return
    if rule.multiple not in (1, rib.stitches):
        detail = f"is not what the rib repeats over: {rib.knit} knit and {rib.purl} purl stitches."
        yield Problem(("count_rule", "multiple"), ProblemCode.RIB_OFF_COUNT_RULE, detail)
    if rule.plus % rib.stitches:
        detail = f"leaves {counted(rule.plus % rib.stitches, 'stitch')} over at the end of the round, beyond the rib."
        yield Problem(("count_rule", "plus"), ProblemCode.RIB_OFF_COUNT_RULE, detail)


@check
def _own_yarn_problems(request: PulloverRequest) -> Check[None]:
    if changes := request.changes:
        yield from under(("changes", "yarn"), yarn_problems(changes.yarn, changes.gauges or request.gauges))


@check
def _dart_problems(request: PulloverRequest) -> Check[None]:
    if request.chart and request.chart.chart.repeat == "rows" and _any(request.body.bust_darts.extra):
        detail = "Short rows would cut a chart that runs on over the body; one that is worked once leaves them room."
        yield Problem(("body", "bust_darts"), ProblemCode.DARTS_CUT_CHART, detail)


def _any(length: PerSize | None) -> bool:
    """Whether any size has some of it."""
    match length:
        case EvenSteps(first, last):
            return bool(first or last)
        case tuple():
            return any(length)
    return bool(length)
