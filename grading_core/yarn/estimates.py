"""Yarn for every colour and size of a garment, from its stitches."""

from __future__ import annotations

from collections.abc import Callable, Iterator, Mapping

from grading_core.answer_sizes import is_answered, label_problems
from grading_core.codes import ProblemCode, WarningCode
from grading_core.errors import Check, Problem, Remark, check, sound, under
from grading_core.fraction import Fraction
from grading_core.gauge import Gauge
from grading_core.sentences import NUMBER, Saying
from grading_core.unknown import told
from grading_core.yarn.amounts import STITCH, Widths, Work, loops_of, needs_of, swatch_problems
from grading_core.yarn.request import SizeStitches, Yarn, YarnEstimateRequest
from grading_core.yarn.result import Need, SizeNeeds, YarnEstimates

ESTIMATED = Saying("warning.estimated_yarn", least=NUMBER, most=NUMBER)
"""Of a whole garment."""

ESTIMATED_STITCHES = Saying("warning.estimated_yarn_of_stitches", least=NUMBER, most=NUMBER)
"""Of stitches and floats alone."""


def yarn_estimates(request: YarnEstimateRequest) -> YarnEstimates:
    """The yarn of every colour and size.

    Raises ContradictionError for labels used twice or not at all, stitches or floats of a yarn that isn't there, a
    swatch that lacks something or weighs too little, a yarn with neither swatch nor gauge, and floats without a gauge.

    >>> yarn = Yarn(metres_per_100g=Fraction(200), swatch_grams=Fraction(10), swatch_stitches=1000)
    >>> request = YarnEstimateRequest(yarns={"oat": yarn}, sizes=(SizeStitches("S", {"oat": 40000}),))
    >>> yarn_estimates(request).runs
    {'oat': '9'}
    """
    sound(estimate_problems(request))
    # without a gauge a stitch's width says nothing, and nothing is asked of it
    width = request.gauge.width_cm(1) if request.gauge else Fraction(1)
    widths = Widths(width, width)
    needs = {
        name: needs_of(name, yarn, loops=loops_of(yarn, width), widths=widths, margin=request.margin)
        for name, yarn in request.yarns.items()
    }
    sizes = tuple(
        SizeNeeds(size.label, tuple(_needs(size, needs)))
        for size in request.sizes
        if is_answered(size.label, request.answer_sizes)
    )
    return YarnEstimates(sizes, tuple(_remarks(request.yarns)))


def _needs(size: SizeStitches, needs: Mapping[str, Callable[[Work], Need]]) -> Iterator[Need]:
    for name, need_of in needs.items():
        if name in size.stitches or name in size.floats:
            yield need_of(Work(plain=size.stitches.get(name, 0), floats=size.floats.get(name, 0)))


def estimate_problems(request: YarnEstimateRequest) -> Check[None]:
    """What contradicts itself in the yarns and in the stitches of the sizes.

    request: any.
    """
    yield from _yarns_problems(request)
    yield from _sizes_problems(request)


@check
def _yarns_problems(request: YarnEstimateRequest) -> Check[None]:
    for name, yarn in request.yarns.items():
        yield from under(("yarns", name), _yarn_problems(yarn, request.gauge))


@check
def _yarn_problems(yarn: Yarn, gauge: Gauge | None) -> Check[None]:
    yield from swatch_problems(yarn, told(lambda: gauge.width_cm(1) if gauge else None))
    if gauge is None and yarn.swatch_grams is None and yarn.swatch_stitches is None:
        detail = "has no weighed swatch, and the request no gauge to estimate from."
        yield Problem((), ProblemCode.NO_BASIS_FOR_YARN, detail)
    if gauge is None and yarn.swatch_floats:
        yield _lacks_gauge("swatch_floats")


@check
def _sizes_problems(request: YarnEstimateRequest) -> Check[None]:
    yield from label_problems(request.answer_sizes, [size.label for size in request.sizes])
    for index, size in enumerate(request.sizes):
        yield from under(("sizes", index, "stitches"), _names_problems(size.stitches, request.yarns))
        yield from under(("sizes", index, "floats"), _names_problems(size.floats, request.yarns))
        if request.gauge is None:
            yield from under(("sizes", index, "floats"), _floats_problems(size.floats, request.yarns))


@check
def _names_problems(amounts: Mapping[str, int], yarns: Mapping[str, Yarn]) -> Check[None]:
    for name in amounts:
        if name not in yarns:
            yield Problem((name,), ProblemCode.UNKNOWN_YARN, "is the name of no yarn in `yarns`.")


@check
def _floats_problems(floats: Mapping[str, int], yarns: Mapping[str, Yarn]) -> Check[None]:
    """Floats of a request without a gauge."""
    for name in floats:
        if name in yarns:
            yield _lacks_gauge(name)


def _lacks_gauge(*path: str) -> Problem:
    detail = "needs the request's `gauge`: a float is as long as the stitches that it passes over are wide."
    return Problem(path, ProblemCode.FLOATS_NEED_GAUGE, detail)


def _remarks(yarns: Mapping[str, Yarn]) -> Iterator[Remark]:
    if any(yarn.swatch_grams is None for yarn in yarns.values()):
        yield Remark(WarningCode.ESTIMATED_YARN, ESTIMATED_STITCHES(least=STITCH.low, most=STITCH.high))
