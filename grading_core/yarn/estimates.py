"""Yarn for every colour and size of a garment, and whether its colours read apart."""

from __future__ import annotations

from collections.abc import Iterator, Mapping, Sequence
from fractions import Fraction
from itertools import combinations

from grading_core.answer_sizes import is_answered, label_problems
from grading_core.codes import ProblemCode, WarningCode
from grading_core.errors import Check, Problem, Remark, check, sound, under
from grading_core.gauge import Gauge
from grading_core.lightness import READS_APART, lightness
from grading_core.sentences import NUMBER, TEXT, Saying
from grading_core.yarn.amounts import LOOP_WIDTHS, balls, estimated, measured
from grading_core.yarn.request import SizeStitches, Yarn, YarnEstimateRequest
from grading_core.yarn.result import Contrast, Need, SizeNeeds, YarnEstimates

ESTIMATED = Saying("warning.estimated_yarn", least=NUMBER, most=NUMBER)
ALIKE = Saying("warning.colours_alike", first=TEXT, second=TEXT)


def yarn_estimates(request: YarnEstimateRequest) -> YarnEstimates:
    """The yarn of every colour and size.

    Raises ContradictionError for labels used twice or not at all, stitches in a yarn that isn't there, half a swatch,
    and a yarn with neither swatch nor gauge.

    >>> yarn = Yarn(metres_per_100g=Fraction(200), swatch_grams=Fraction(10), swatch_stitches=1000)
    >>> request = YarnEstimateRequest(yarns={"oat": yarn}, sizes=(SizeStitches("S", {"oat": 40000}),))
    >>> yarn_estimates(request).runs
    {'oat': '9'}
    """
    yarns, gauge = request.yarns, request.gauge
    sound(estimate_problems(request))
    sizes = tuple(
        SizeNeeds(
            size.label,
            tuple(
                need(name, size.stitches[name], yarn, request.margin, gauge)
                for name, yarn in yarns.items()
                if name in size.stitches
            ),
        )
        for size in request.sizes
        if is_answered(size.label, request.answer_sizes)
    )
    contrasts = tuple(_contrasts(yarns))
    return YarnEstimates(sizes, contrasts, tuple(_remarks(yarns, contrasts)))


def need(name: str, stitches: int, yarn: Yarn, margin: Fraction, gauge: Gauge | None) -> Need:
    """How much of one yarn so many stitches need.

    name: of the yarn. margin, gauge: as in a `YarnEstimateRequest`; the gauge may be None where a swatch was weighed.
    """
    if yarn.swatch_grams is not None and yarn.swatch_stitches is not None:
        amount = measured(stitches, yarn.swatch_grams, yarn.swatch_stitches)
    else:
        assert gauge is not None
        amount = estimated(stitches, gauge.width_cm(1), yarn.metres_per_100g)
    return Need(
        yarn=name,
        stitches=stitches,
        grams=amount,
        metres=amount.metres(yarn.metres_per_100g)[1],
        balls=balls(amount, yarn.ball_grams, margin),
    )


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
    half = yarn.half_a_swatch()
    if half:
        yield half
    elif yarn.swatch_grams is None and gauge is None:
        detail = "has no weighed swatch, and the request no gauge to estimate from."
        yield Problem((), ProblemCode.NO_BASIS_FOR_YARN, detail)


@check
def _sizes_problems(request: YarnEstimateRequest) -> Check[None]:
    yield from label_problems(request.answer_sizes, [size.label for size in request.sizes])
    for index, size in enumerate(request.sizes):
        yield from under(("sizes", index), _stitches_problems(size, request.yarns))


@check
def _stitches_problems(size: SizeStitches, yarns: Mapping[str, Yarn]) -> Check[None]:
    for name in size.stitches:
        if name not in yarns:
            detail = "is the name of no yarn in `yarns`."
            yield Problem(("stitches", name), ProblemCode.UNKNOWN_YARN, detail)


def _contrasts(yarns: Mapping[str, Yarn]) -> Iterator[Contrast]:
    light = {name: lightness(yarn.hex) for name, yarn in yarns.items() if yarn.hex}
    for pair in combinations(light, 2):
        yield Contrast(pair, (light[pair[0]], light[pair[1]]))


def _remarks(yarns: Mapping[str, Yarn], contrasts: Sequence[Contrast]) -> Iterator[Remark]:
    if any(yarn.swatch_grams is None for yarn in yarns.values()):
        yield Remark(WarningCode.ESTIMATED_YARN, ESTIMATED(least=LOOP_WIDTHS[0], most=LOOP_WIDTHS[-1]))
    for contrast in contrasts:
        if contrast.difference < READS_APART:
            first, second = contrast.yarns
            message = ALIKE(first=first, second=second)
            yield Remark(WarningCode.LOW_CONTRAST, message, path=("yarns", second, "hex"))
