"""What is answered about yarn: strands held together, and the yarn of every colour and size."""

from __future__ import annotations

from collections.abc import Mapping
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
    """How much yarn something takes, in grams or metres: the least, the likely and the most."""

    low: Fraction
    likely: Fraction
    high: Fraction

    def times(self, factor: Fraction) -> Amount:
        """All three times a factor."""
        return Amount(self.low * factor, self.likely * factor, self.high * factor)


@dataclass(frozen=True, slots=True)
class StrandNeed:
    """How much of one strand is needed, as long as the yarn that it is held with. balls: to buy, with the margin."""

    name: str | None
    grams: Amount
    ball_grams: Fraction
    balls: int


@dataclass(frozen=True, slots=True, kw_only=True)
class Need:
    """How much of one yarn is needed.

    symbol: of the colour that it is for, None where it is for none. stitches: worked in it. basis: how the amount is
    known. metres: of all strands held together, and metres_for: the likely ones by what takes them. grams: of all
    strands together. strands: in their order, at least one.
    """

    yarn: str
    symbol: str | None = None
    stitches: int
    basis: Basis
    metres: Amount
    metres_for: Mapping[str, Fraction]
    grams: Amount
    strands: tuple[StrandNeed, ...]

    @property
    def balls(self) -> int:
        """Balls of its first strand."""
        return self.strands[0].balls


@dataclass(frozen=True, slots=True)
class SizeNeeds:
    """What one size needs. yarns: in the order of the request, without those that the size has none of."""

    label: str
    yarns: tuple[Need, ...]


@dataclass(frozen=True, slots=True)
class YarnEstimates:
    """Every size's needs, in the order of the request."""

    sizes: tuple[SizeNeeds, ...]
    remarks: tuple[Remark, ...]

    @property
    def runs(self) -> dict[str, str]:
        """Balls to buy by yarn, as a size run; a dash where a size has none of it."""
        balls = [{need.yarn: need.balls for need in size.yarns} for size in self.sizes]
        names = dict.fromkeys(name for size in balls for name in size)
        return {name: size_run([size.get(name) for size in balls]) for name in names}
