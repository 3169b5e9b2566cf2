"""Where the request for a pullover contradicts itself, seen from the request alone."""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from fractions import Fraction

from grading_core.chart.grid import Anchor
from grading_core.chart.request import ChartRequest, request_problems
from grading_core.errors import Path, Problem
from grading_core.gauge import Gauge
from grading_core.pullover.request import ChartWishes, PulloverRequest
from grading_core.sizes.bodies import SizeBody
from grading_core.sizes.request import PerSize
from grading_core.standards import Measurement
from grading_core.wording import counted, listed


def wish_problems(request: PulloverRequest, sizes: int) -> Iterator[Problem]:
    """What contradicts itself whatever the bodies are.

    request: any. sizes: how many there are.
    """
    for path, length in varying_lengths(request):
        if isinstance(length, tuple) and len(length) != sizes:
            yield Problem(path, f"has {counted(len(length), 'value')} for {counted(sizes, 'size')}.")
    shaped = {level.measurement for level in request.body.levels}
    for name in request.ease:
        if name not in ("bust", "upper_arm", "wrist", *shaped):
            yield Problem(("ease", name), f"Nothing in this pullover has the {name} of the body.")
    neck, yoke, shares = request.neck, request.yoke, request.neck.shares
    if shares and shares.front > shares.back:
        yield Problem(("neck", "shares", "front"), "The front must not be wider than the back at the neck.")
    if neck.front_drop and neck.raise_height:
        yield Problem(
            ("neck", "raise_height"),
            "Either the back is raised with short rows or the front is dropped, not both.",
        )
    if yoke.line_to_body is not None and yoke.line_to_body > yoke.line_stitches:
        yield Problem(
            ("yoke", "line_to_body"),
            f"is more than the raglan line has: {counted(yoke.line_stitches, 'stitch')}.",
        )
    yarn = request.yarn
    if yarn and (yarn.swatch_grams is None) != (yarn.swatch_stitches is None):
        lacking = "swatch_grams" if yarn.swatch_grams is None else "swatch_stitches"
        yield Problem(("yarn", lacking), "is missing: a swatch needs both its weight and its stitches.")
    if request.chart:
        yield from _chart_problems(request.chart)


def varying_lengths(request: PulloverRequest) -> Iterator[tuple[Path, PerSize | None]]:
    """Every length that may differ from size to size, with its place.

    request: any.
    """
    yield from ((("ease", name), ease) for name, ease in request.ease.items())
    yield ("neck", "circumference"), request.neck.circumference
    yield ("yoke", "depth"), request.yoke.depth
    yield ("yoke", "underarm"), request.yoke.underarm
    yield ("body", "length"), request.body.length
    yield ("sleeve", "length"), request.sleeve.length
    for index, level in enumerate(request.body.levels):
        yield ("body", "levels", index, "below"), level.below
    changes = request.changes
    if changes:
        yield from ((("changes", "ease", name), ease) for name, ease in (changes.ease or {}).items())
        yield ("changes", "body_length"), changes.body_length
        yield ("changes", "sleeve_length"), changes.sleeve_length


def missing_measurements(request: PulloverRequest, bodies: Sequence[SizeBody]) -> Iterator[Problem]:
    """Sizes that lack a measurement which nothing replaces.

    request: any. bodies: of all sizes.
    """
    needed: list[tuple[Measurement, ...]] = [("bust",), ("upper_arm",), ("wrist",)]
    if request.sleeve.length is None:
        needed.append(("arm_length",))
    if request.body.length is None:
        needed.append(("back_waist_length", "back_hip_length"))
    needed += [(level.measurement,) for level in request.body.levels]
    for index, body in enumerate(bodies):
        lacking = [names[0] for names in needed if not any(name in body.values for name in names)]
        if lacking:
            yield Problem(
                ("sizes", index),
                f"lacks {listed(lacking)}: send them, or name a body_table that completes the size.",
            )


def _chart_problems(wishes: ChartWishes) -> Iterator[Problem]:
    column = Fraction(1)
    anchor = wishes.anchor or Anchor(column, column, column)
    bare = ChartRequest(
        chart=wishes.chart,
        anchor=anchor,
        gauge=Gauge(column, column),
        sizes=(),
        first_round=wishes.first_round,
        plain_colour=wishes.plain_colour,
        line_colour=wishes.line_colour,
        seam_colour=wishes.seam_colour,
    )
    for problem in request_problems(bare):
        yield problem.under("chart")
    if anchor.back.denominator != anchor.front.denominator:
        yield Problem(
            ("chart", "anchor", "front"),
            "Back and front have as many stitches, so both take a whole column or both a half.",
        )
