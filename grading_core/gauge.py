"""Gauge: stitches and rows counted over a span, and what follows from it.

Sources: the arithmetic is domain knowledge of the craft (count = length x gauge). That fewer
stitches per cm than the pattern's mean a looser fabric and a smaller needle, and that only a new
swatch settles it, is common practice, no source.
"""

from __future__ import annotations

from dataclasses import dataclass, field, replace
from typing import Literal, Self

from grading_core.fraction import Fraction
from grading_core.rounding import NEAREST, CountRule
from grading_core.sentences import TOKEN, Saying, Sentence

FARTHEST_BY_NEEDLE = Fraction(1, 10)
"""Stitches that differ by more than this part are beyond what another needle mends (common practice, no source).

Beside it: from the thinnest to the thickest needle that the published yarn standard recommends for one category, the
stitches fall by 4 % a needle size (super fine), 6 % (fine), 7 % (light) and 12 % (medium), the range of the yarns in
it. With one yarn a size or two are therefore worth about a tenth at most.
"""

Tightness = Literal["tighter", "looser", "same"]
NeedleChange = Literal["larger", "smaller", "none"]

AS_WRITTEN = Saying("advice.as_written")
ROWS_DIFFER = Saying("advice.rows_differ")
BEYOND_NEEDLES = Saying("advice.beyond_needles", fabric=TOKEN)
ANOTHER_NEEDLE = Saying("advice.another_needle", fabric=TOKEN)


@dataclass(frozen=True, slots=True)
class Swatch:
    """Stitches and rows over a span, exactly."""

    stitches: Fraction
    rows: Fraction


@dataclass(frozen=True, slots=True)
class Gauge:
    """Stitches and rows per centimetre of blocked fabric, exactly.

    >>> gauge = Gauge.over(Fraction(22), Fraction(31), Fraction(10))
    >>> gauge.width_cm(220)
    Fraction(100, 1)
    """

    stitches_per_cm: Fraction
    rows_per_cm: Fraction
    rows_span_cm: Fraction = field(default=Fraction(10), compare=False)
    """The span over which rows were counted, for another knitter's count over the same span."""

    @classmethod
    def over(cls, stitches: Fraction, rows: Fraction, span_cm: Fraction, rows_span_cm: Fraction | None = None) -> Gauge:
        """The gauge of a swatch.

        stitches, rows: what was counted. span_cm: the length over which both were counted, in cm.
        rows_span_cm: the length over which the rows were counted where it is another one.
        """
        rows_span_cm = rows_span_cm or span_cm
        return cls(stitches / span_cm, rows / rows_span_cm, rows_span_cm)

    def swatch(self, span_cm: Fraction) -> Swatch:
        """What is counted over a span in cm.

        >>> Gauge(Fraction(2), Fraction(3)).swatch(Fraction(10))
        Swatch(stitches=Fraction(20, 1), rows=Fraction(30, 1))
        """
        return Swatch(self.stitches_per_cm * span_cm, self.rows_per_cm * span_cm)

    def stitches(self, across_cm: Fraction, rule: CountRule = NEAREST) -> int:
        """The stitches for a width in cm, rounded by a count rule."""
        (over, under), (stitches, span) = across_cm.as_integer_ratio(), self.stitches_per_cm.as_integer_ratio()
        return rule.round_ratio(over * stitches, under * span)

    def rows(self, along_cm: Fraction, rule: CountRule = NEAREST) -> int:
        """The rows for a length in cm, rounded by a count rule."""
        rows_per_cm = self.rows_per_cm
        return rule.round_ratio(
            along_cm.numerator * rows_per_cm.numerator, along_cm.denominator * rows_per_cm.denominator
        )

    def exact_rows(self, along_cm: Fraction) -> Fraction:
        """The rows that a length in cm comes to, not rounded."""
        return along_cm * self.rows_per_cm

    def width_cm(self, stitches: int) -> Fraction:
        """The width in cm of so many stitches."""
        # As Fraction divides, without its detours: an answer holds hundreds of lengths.
        return Fraction(stitches * self.stitches_per_cm.denominator, self.stitches_per_cm.numerator)

    def height_cm(self, rows: int) -> Fraction:
        """The height in cm of so many rows."""
        return Fraction(rows * self.rows_per_cm.denominator, self.rows_per_cm.numerator)

    def at(self, number: int) -> Self:
        """The gauge of a round, which is the same in all: what makes a gauge a `fabric.Fabric`."""
        return self

    def below(self, rounds: int) -> Self:
        """What follows so many rounds: the same."""
        return self

    @property
    def span_rows(self) -> Fraction:
        """Rows over the span in which they were counted."""
        return self.rows_per_cm * self.rows_span_cm

    def with_rows(self, rows: Fraction) -> Self:
        """The same with another count of rows over the span in which rows were counted."""
        return replace(self, rows_per_cm=rows / self.rows_span_cm)


@dataclass(frozen=True, slots=True, kw_only=True)
class Comparison:
    """A knitter's gauge against the pattern's.

    stitches_ratio, rows_ratio: own over pattern's, exactly. fabric: how the knitter's fabric is,
    judged by stitches. needle: what to try, "none" where the needle is right or too little. advice: the same in a
    sentence.
    """

    stitches_ratio: Fraction
    rows_ratio: Fraction
    fabric: Tightness
    needle: NeedleChange
    advice: Sentence

    @property
    def difference(self) -> Fraction:
        """By which part of the pattern's stitches the knitter's are more, or fewer where it is negative."""
        return self.stitches_ratio - 1

    @property
    def beyond_needles(self) -> bool:
        """Whether another needle is too little to meet the pattern's stitches."""
        return abs(self.difference) > FARTHEST_BY_NEEDLE


def regauge_stitches(stitches: int, own: Gauge, pattern: Gauge, rule: CountRule = NEAREST) -> int:
    """The stitches that keep a written width at another gauge.

    stitches: the pattern's count. own, pattern: the two gauges. rule: how it is rounded.

    >>> own = Gauge.over(Fraction(23), Fraction(32), Fraction(10))
    >>> regauge_stitches(96, own, Gauge.over(Fraction(22), Fraction(31), Fraction(10)))
    100
    """
    return rule.round(stitches * own.stitches_per_cm / pattern.stitches_per_cm)


def regauge_rows(rows: int, own: Gauge, pattern: Gauge, rule: CountRule = NEAREST) -> int:
    """The rows that keep a written length at another gauge.

    rows: the pattern's count. own, pattern: the two gauges. rule: how it is rounded.

    >>> own = Gauge.over(Fraction(23), Fraction(32), Fraction(10))
    >>> regauge_rows(74, own, Gauge.over(Fraction(22), Fraction(31), Fraction(10)))
    76
    """
    return rule.round(rows * own.rows_per_cm / pattern.rows_per_cm)


def compare(own: Gauge, pattern: Gauge) -> Comparison:
    """How a knitter's fabric differs from the pattern's, and what to try.

    own, pattern: the two gauges.

    >>> own = Gauge.over(Fraction(23), Fraction(32), Fraction(10))
    >>> compare(own, Gauge.over(Fraction(22), Fraction(31), Fraction(10))).fabric
    'tighter'
    """
    stitches_ratio = own.stitches_per_cm / pattern.stitches_per_cm
    rows_ratio = own.rows_per_cm / pattern.rows_per_cm
    fabric, needle, advice = _judge(stitches_ratio, rows_ratio)
    return Comparison(stitches_ratio=stitches_ratio, rows_ratio=rows_ratio, fabric=fabric, needle=needle, advice=advice)


def _judge(stitches_ratio: Fraction, rows_ratio: Fraction) -> tuple[Tightness, NeedleChange, Sentence]:
    """How the fabric is, the needle to try, and the advice."""
    if stitches_ratio == 1:
        return "same", "none", AS_WRITTEN() if rows_ratio == 1 else ROWS_DIFFER()
    fabric: Tightness = "tighter" if stitches_ratio > 1 else "looser"
    if abs(stitches_ratio - 1) > FARTHEST_BY_NEEDLE:
        return fabric, "none", BEYOND_NEEDLES(fabric=fabric)
    return fabric, "larger" if stitches_ratio > 1 else "smaller", ANOTHER_NEEDLE(fabric=fabric)
