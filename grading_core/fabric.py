"""The fabrics of a garment round by round: a gauge that is the same in all rounds, or changes where a chart does.

Each round has the height of its own fabric, and a width is measured at the gauge of the round in which it is measured
(domain knowledge of the craft; that stranded colourwork differs from plain knitting in both is common practice).
"""

from __future__ import annotations

from dataclasses import dataclass, replace
from typing import Protocol, Self

from grading_core.fraction import Fraction
from grading_core.gauge import Gauge
from grading_core.rounding import NEAREST, CountRule


class Fabric(Protocol):
    """What rounds are knitted in, counted from 1. A `Gauge` is one: the same in all rounds."""

    def at(self, number: int, /) -> Gauge:
        """The gauge of a round."""

    def height_cm(self, rounds: int, /) -> Fraction:
        """The height of so many rounds, from the first one on."""

    def exact_rows(self, along_cm: Fraction, /) -> Fraction:
        """The rounds that a height comes to, not rounded."""

    def rows(self, along_cm: Fraction, /, rule: CountRule = ...) -> int:
        """The rounds for a height, rounded by a count rule."""

    def below(self, rounds: int, /) -> Fabric:
        """What follows so many rounds, counted from 1 again."""

    @property
    def span_rows(self) -> Fraction:
        """Rows over the span in which they are counted, which another knitter counts hers over."""

    def with_rows(self, rows: Fraction, /) -> Fabric:
        """The same with another knitter's rows, counted over the span of the gauge."""


@dataclass(frozen=True, slots=True, kw_only=True)
class ChartedFabric:
    """Plain rounds, the rounds of a chart, and plain rounds again where it is worked once.

    plain, charted: the two gauges. first: the first round of the chart; below 1 where it lies before what is counted.
    last: its last round, None where it runs on.

    >>> plain, charted = Gauge(Fraction(2), Fraction(3)), Gauge(Fraction(2), Fraction(2))
    >>> fabric = ChartedFabric(plain=plain, charted=charted, first=4, last=7)
    >>> fabric.height_cm(9), fabric.exact_rows(Fraction(2)), fabric.below(5).height_cm(2)
    (Fraction(11, 3), Fraction(5, 1), Fraction(1, 1))
    """

    plain: Gauge
    charted: Gauge
    first: int
    last: int | None

    def at(self, number: int) -> Gauge:
        """The gauge of a round."""
        return self.charted if self._charted(number) > self._charted(number - 1) else self.plain

    def height_cm(self, rounds: int) -> Fraction:
        """The height of so many rounds, from the first one on."""
        charted = self._charted(rounds)
        return self.plain.height_cm(rounds - charted) + self.charted.height_cm(charted)

    def exact_rows(self, along_cm: Fraction) -> Fraction:
        """The rounds that a height comes to, not rounded."""
        before = max(self.first, 1) - 1
        left = along_cm - self.plain.height_cm(before)
        if left <= 0:
            return self.plain.exact_rows(along_cm)
        charted = self.charted.exact_rows(left)
        if self.last is None:
            return before + charted
        chart_rows = max(self.last - before, 0)
        if charted <= chart_rows:
            return before + charted
        return before + chart_rows + self.plain.exact_rows(left - self.charted.height_cm(chart_rows))

    def rows(self, along_cm: Fraction, rule: CountRule = NEAREST) -> int:
        """The rounds for a height, rounded by a count rule."""
        return rule.round(self.exact_rows(along_cm))

    def below(self, rounds: int) -> Self:
        """What follows so many rounds, counted from 1 again."""
        return replace(self, first=self.first - rounds, last=None if self.last is None else self.last - rounds)

    @property
    def span_rows(self) -> Fraction:
        """Rows of the chart's fabric over the span in which they are counted."""
        return self.charted.span_rows

    def with_rows(self, rows: Fraction) -> Self:
        """The same with another knitter's rows of the chart's fabric; her plain rows differ as much."""
        charted = self.charted.with_rows(rows)
        plain_rows = self.plain.rows_per_cm * charted.rows_per_cm / self.charted.rows_per_cm
        return replace(self, charted=charted, plain=replace(self.plain, rows_per_cm=plain_rows))

    def _charted(self, rounds: int) -> int:
        """How many of the first rounds are worked from the chart."""
        last = rounds if self.last is None else min(rounds, self.last)
        return max(0, last - max(self.first, 1) + 1)
