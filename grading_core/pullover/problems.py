"""Where the wishes for the parts contradict each other, whatever the bodies are."""

from __future__ import annotations

from collections.abc import Iterator

from grading_core.errors import Problem
from grading_core.pullover.chart import chart_problems
from grading_core.pullover.request import BodyWishes, ChartWishes, NeckWishes, YarnWishes, YokeWishes
from grading_core.sizes.request import EvenSteps, PerSize
from grading_core.wording import counted


def wish_problems(
    neck: NeckWishes, yoke: YokeWishes, body: BodyWishes, yarn: YarnWishes | None, chart: ChartWishes | None
) -> Iterator[Problem]:
    """What contradicts itself in the wishes for one part.

    neck, yoke, body, yarn, chart: any; None where there is none.

    >>> [problem.path for problem in wish_problems(NeckWishes(), YokeWishes(line_to_body=3), BodyWishes(), None, None)]
    [('yoke', 'line_to_body')]
    """
    if neck.shares and neck.shares.front > neck.shares.back:
        yield Problem(("neck", "shares", "front"), "The front must not be wider than the back at the neck.")
    lines = yoke.options.line_stitches
    if yoke.line_to_body is not None and yoke.line_to_body > lines:
        detail = f"is more than the raglan line has: {counted(lines, 'stitch')}."
        yield Problem(("yoke", "line_to_body"), detail)
    half = yarn.half_a_swatch() if yarn else None
    if half:
        yield half.under("yarn")
    if chart:
        if chart.chart.repeat == "rows" and _any(body.bust_darts.extra):
            yield Problem(
                ("body", "bust_darts"),
                "Short rows would cut a chart that runs on over the body; one that is worked once leaves them room.",
            )
        yield from chart_problems(chart)


def _any(length: PerSize | None) -> bool:
    """Whether any size has some of it."""
    match length:
        case EvenSteps(first, last):
            return bool(first or last)
        case tuple():
            return any(length)
    return bool(length)
