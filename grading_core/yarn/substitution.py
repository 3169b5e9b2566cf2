"""Another yarn in place of a pattern's.

The garment has the same stitches, and where the gauge is the pattern's each takes as long a loop: so as many metres are
needed, however thick the yarn is. That is the trade's rule for substitution (common practice, no source).

Fabric is as firm where the tightness factor is the same, the square root of the tex over the length of a loop. As
stitches and rows per cm go as one over that length (Munden's laws of relaxed plain knit), a likely gauge goes as one
over the square root of the tex: double the yarn, and 28 stitches become about 20.
"""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import replace

from grading_core.answer_sizes import is_answered, label_problems
from grading_core.codes import WarningCode
from grading_core.errors import Check, Remark, check, sound
from grading_core.fraction import Fraction
from grading_core.gauge import Gauge
from grading_core.sentences import Saying
from grading_core.units import square_root
from grading_core.yarn.amounts import strand_needs
from grading_core.yarn.request import METRES_PER_YARD, TEX_TIMES_METRES, SizeAmount, SubstitutionRequest, Yarn
from grading_core.yarn.result import ComparedYarn, Estimate, SizeSubstitute, Substitution, YarnComparison
from grading_core.yarn.strands import categories

SWATCH_DECIDES = Saying("warning.swatch_decides")
OTHER_CATEGORY = Saying("warning.other_yarn_category")


def substitute_yarn(request: SubstitutionRequest) -> Substitution:
    """How much of another yarn every size needs, and how the two yarns compare.

    Raises ContradictionError for labels used twice or not at all.

    >>> sizes = (SizeAmount(label="S", balls=Fraction(10)),)
    >>> pattern, own = (Yarn(metres_per_100g=Fraction(metres)) for metres in (200, 220))
    >>> made = substitute_yarn(SubstitutionRequest(pattern_yarn=pattern, own_yarn=own, sizes=sizes))
    >>> made.sizes[0].metres, made.sizes[0].balls
    (Fraction(1000, 1), 10)
    """
    sound(substitution_problems(request))
    comparison = _comparison(request)
    return Substitution(
        sizes=tuple(
            _substitute(size.label, metres_of(size, request.pattern_yarn), request.own_yarn, request.margin)
            for size in request.sizes
            if is_answered(size.label, request.answer_sizes)
        ),
        comparison=comparison,
        remarks=tuple(_remarks(comparison)),
    )


@check
def substitution_problems(request: SubstitutionRequest) -> Check[None]:
    """What contradicts itself in the sizes.

    request: any.
    """
    yield from label_problems(request.answer_sizes, [size.label for size in request.sizes])


def metres_of(size: SizeAmount, yarn: Yarn) -> Fraction:
    """The metres that a size needs, of all strands held together.

    size: as the pattern prints it. yarn: the pattern's.

    >>> metres_of(SizeAmount(label="S", yards=Fraction(1000)), Yarn(metres_per_100g=Fraction(200)))
    Fraction(4572, 5)
    """
    if size.metres is not None:
        return size.metres
    if size.yards is not None:
        return size.yards * METRES_PER_YARD
    if size.grams is not None:
        return size.grams * 1000 / yarn.linear_density
    assert size.balls is not None
    # strands held together are as long as one another, so that the first one tells the length of all
    first = yarn.held[0]
    return size.balls * yarn.ball_of(first) * 1000 / first.linear_density


def _substitute(label: str, metres: Fraction, yarn: Yarn, margin: Fraction) -> SizeSubstitute:
    grams = metres * yarn.linear_density / 1000
    return SizeSubstitute(label, metres, grams, strand_needs(yarn, Estimate.of(metres), margin))


def _comparison(request: SubstitutionRequest) -> YarnComparison:
    pattern, own = (_thickness(yarn) for yarn in (request.pattern_yarn, request.own_yarn))
    gauge = request.gauge
    return YarnComparison(pattern, own, gauge and likely_gauge(gauge, pattern.tex, own.tex))


def _thickness(yarn: Yarn) -> ComparedYarn:
    metres_per_100g = TEX_TIMES_METRES / yarn.linear_density
    return ComparedYarn(metres_per_100g, yarn.linear_density, categories(metres_per_100g))


def likely_gauge(gauge: Gauge, tex: Fraction, own_tex: Fraction) -> Gauge:
    """The gauge at which another yarn makes as firm a fabric; a start for a swatch.

    gauge, tex: of the pattern's fabric and yarn. own_tex: of the other yarn.

    >>> likely_gauge(Gauge(Fraction(28, 10), Fraction(4)), Fraction(250), Fraction(1000))
    Gauge(stitches_per_cm=Fraction(7, 5), rows_per_cm=Fraction(2, 1), rows_span_cm=Fraction(10, 1))
    """
    finer = square_root(tex / own_tex)
    return replace(gauge, stitches_per_cm=gauge.stitches_per_cm * finer, rows_per_cm=gauge.rows_per_cm * finer)


def _remarks(comparison: YarnComparison) -> Iterator[Remark]:
    yield Remark(WarningCode.SWATCH_DECIDES, SWATCH_DECIDES())
    if not comparison.common_category:
        yield Remark(WarningCode.OTHER_YARN_CATEGORY, OTHER_CATEGORY(), path=("own_yarn",))
