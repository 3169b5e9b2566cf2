"""Yarn for every colour and size of a garment, from its stitches."""

from __future__ import annotations

from collections.abc import Iterator, Mapping
from fractions import Fraction

from grading_core.answer_sizes import is_answered, label_problems
from grading_core.codes import ProblemCode, WarningCode
from grading_core.errors import Check, Problem, Remark, check, sound, under
from grading_core.gauge import Gauge
from grading_core.sentences import NUMBER, Saying
from grading_core.unknown import told
from grading_core.yarn.amounts import STITCH, Widths, Work, loops_of, need, swatch_problems
from grading_core.yarn.request import SizeStitches, Yarn, YarnEstimateRequest
from grading_core.yarn.result import Need, SizeNeeds, YarnEstimates

ESTIMATED = Saying("warning.estimated_yarn", least=NUMBER, most=NUMBER)

_NO_SUCH_YARN = "is the name of no yarn in `yarns`."
_FLOATS_NEED_GAUGE = "needs the request's `gauge`: a float is as long as the stitches that it passes over are wide."


def yarn_estimates(request: YarnEstimateRequest) -> YarnEstimates:
    """The yarn of every colour and size.

    Raises ContradictionError for labels used twice or not at all, stitches in a yarn that isn't there, half a swatch,
    a yarn with neither swatch nor gauge, and floats without a gauge.

    >>> yarn = Yarn(metres_per_100g=Fraction(200), swatch_grams=Fraction(10), swatch_stitches=1000)
    >>> request = YarnEstimateRequest(yarns={"oat": yarn}, sizes=(SizeStitches("S", {"oat": 40000}),))
    >>> yarn_estimates(request).runs
    {'oat': '9'}
    """
    sound(estimate_problems(request))
    sizes = tuple(
        SizeNeeds(size.label, tuple(_needs(request, size)))
        for size in request.sizes
        if is_answered(size.label, request.answer_sizes)
    )
    return YarnEstimates(sizes, tuple(_remarks(request.yarns)))


def _needs(request: YarnEstimateRequest, size: SizeStitches) -> Iterator[Need]:
    # without a gauge a stitch's width says nothing, and nothing is asked of it
    width = request.gauge.width_cm(1) if request.gauge else Fraction(1)
    for name, yarn in request.yarns.items():
        if name in size.stitches:
            work = Work(plain=size.stitches[name], floats=size.floats.get(name, 0))
            loops = loops_of(yarn, width)
            yield need(name, work, yarn, loops=loops, widths=Widths(width, width), margin=request.margin)


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
        yield Problem(("swatch_floats",), ProblemCode.NO_BASIS_FOR_YARN, _FLOATS_NEED_GAUGE)


@check
def _sizes_problems(request: YarnEstimateRequest) -> Check[None]:
    yield from label_problems(request.answer_sizes, [size.label for size in request.sizes])
    for index, size in enumerate(request.sizes):
        yield from under(("sizes", index), _stitches_problems(size, request.yarns))
        yield from under(("sizes", index), _floats_problems(size, request.yarns, request.gauge))


@check
def _stitches_problems(size: SizeStitches, yarns: Mapping[str, Yarn]) -> Check[None]:
    for name in size.stitches:
        if name not in yarns:
            yield Problem(("stitches", name), ProblemCode.UNKNOWN_YARN, _NO_SUCH_YARN)


@check
def _floats_problems(size: SizeStitches, yarns: Mapping[str, Yarn], gauge: Gauge | None) -> Check[None]:
    for name in size.floats:
        if name not in yarns:
            yield Problem(("floats", name), ProblemCode.UNKNOWN_YARN, _NO_SUCH_YARN)
        elif gauge is None:
            yield Problem(("floats", name), ProblemCode.NO_BASIS_FOR_YARN, _FLOATS_NEED_GAUGE)


def _remarks(yarns: Mapping[str, Yarn]) -> Iterator[Remark]:
    if any(yarn.swatch_grams is None for yarn in yarns.values()):
        yield Remark(WarningCode.ESTIMATED_YARN, ESTIMATED(least=STITCH.low, most=STITCH.high))
