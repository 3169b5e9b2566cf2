"""Where the wishes for the parts contradict each other, whatever the bodies are."""

from __future__ import annotations

from grading_core.codes import ProblemCode
from grading_core.errors import Check, Problem, check, under
from grading_core.pullover.chart import chart_problems
from grading_core.pullover.colours import colour_problems
from grading_core.pullover.request import NeckWishes, PulloverRequest, YokeWishes
from grading_core.pullover.yarn import yarn_problems
from grading_core.sizes.request import EvenSteps, PerSize
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
