"""What is answered about yarn: strands held together, and the yarn of every colour and size."""

from __future__ import annotations

from dataclasses import dataclass
from fractions import Fraction
from typing import Literal

from grading_core.errors import Remark
from grading_core.standards.sources import Source
from grading_core.standards.yarn_weights import YarnThickness
from grading_core.wording import size_run

Basis = Literal["measured", "estimated"]


@dataclass(frozen=True, slots=True)
class CombinedStrand:
    """One strand of a combination. tex: grams per 1000 m. weight_share: its part of the weight."""

    name: str | None
    metres_per_100g: Fraction
    tex: Fraction
    weight_share: Fraction


@dataclass(frozen=True, slots=True)
class CategoryRow:
    """A row of a published chart that a thickness falls in.

    source: the chart. thickness: its row. standard_name: of the standard's category. between: True where the
    chart leaves a gap there and this is the nearer row.
    """

    source: Source
    thickness: YarnThickness
    standard_name: str
    between: bool


@dataclass(frozen=True, slots=True, kw_only=True)
class Combination:
    """Strands held together.

    metres_per_100g: of all of them. tex: the same as grams per 1000 m. strands: in the order of the request.
    categories: by every built-in chart.
    """

    metres_per_100g: Fraction
    tex: Fraction
    strands: tuple[CombinedStrand, ...]
    categories: tuple[CategoryRow, ...]
    remarks: tuple[Remark, ...] = ()

    @property
    def sources(self) -> tuple[Source, ...]:
        """The charts that name a category, each once."""
        return tuple(dict.fromkeys(row.source for row in self.categories))


@dataclass(frozen=True, slots=True)
class Amount:
    """How much yarn something takes, in grams.

    low, likely, high: alike where it was measured. basis: how it is known.
    """

    low: Fraction
    likely: Fraction
    high: Fraction
    basis: Basis

    def metres(self, metres_per_100g: Fraction) -> tuple[Fraction, Fraction, Fraction]:
        """Least, likely and most metres.

        metres_per_100g: of the yarn.

        >>> Amount(Fraction(50), Fraction(50), Fraction(50), "measured").metres(Fraction(240))[1]
        Fraction(120, 1)
        """
        per_gram = metres_per_100g / 100
        return self.low * per_gram, self.likely * per_gram, self.high * per_gram


@dataclass(frozen=True, slots=True, kw_only=True)
class Need:
    """How much of one yarn is needed. metres: the likely length. balls: to buy, with the margin."""

    yarn: str
    stitches: int
    grams: Amount
    metres: Fraction
    balls: int


@dataclass(frozen=True, slots=True)
class SizeNeeds:
    """What one size needs. yarns: in the order of the request, without those that the size has none of."""

    label: str
    yarns: tuple[Need, ...]


@dataclass(frozen=True, slots=True)
class Contrast:
    """Two yarns side by side. lightness: CIE L* of each, 0 to 100."""

    yarns: tuple[str, str]
    lightness: tuple[Fraction, Fraction]

    @property
    def difference(self) -> Fraction:
        """By how much they differ."""
        return abs(self.lightness[0] - self.lightness[1])


@dataclass(frozen=True, slots=True)
class YarnEstimates:
    """Every size's needs, in the order of the request, and every two yarns whose colours are told."""

    sizes: tuple[SizeNeeds, ...]
    contrasts: tuple[Contrast, ...]
    remarks: tuple[Remark, ...]

    @property
    def runs(self) -> dict[str, str]:
        """Balls to buy by yarn, as a size run; a dash where a size has none of it."""
        balls = [{need.yarn: need.balls for need in size.yarns} for size in self.sizes]
        names = dict.fromkeys(name for size in balls for name in size)
        return {name: size_run([size.get(name) for size in balls]) for name in names}
