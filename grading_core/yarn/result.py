"""What is answered about yarn: strands held together, the yarn of every colour and size, a yarn for another."""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass
from math import ceil
from typing import Literal, NamedTuple, Self

from grading_core.errors import Remark
from grading_core.fraction import Fraction
from grading_core.gauge import Gauge
from grading_core.standards.sources import Source
from grading_core.standards.yarn_weights import YarnCategory, YarnThickness
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

    source: the chart. thickness: its row. standard: the category of the standard, with the gauge and the needle at
    which such yarn is usually knitted. between: True where the chart leaves a gap there and this is the nearer row.
    """

    source: Source
    thickness: YarnThickness
    standard: YarnCategory
    between: bool


ReachState = Literal["needs_strand", "already_there", "too_thick"]


@dataclass(frozen=True, slots=True)
class FittingStrand:
    """Which strands do, in metres per 100 g: from the thinnest to the thickest, None where none is too thin or too
    thick.
    """

    thinnest: Fraction | None
    thickest: Fraction | None


@dataclass(frozen=True, slots=True)
class Reach:
    """What it takes for strands to be as thick as a row of a chart.

    source: the chart. thickness: its row. state: whether they need another strand, are as thick without one, or are
    too thick already. strand: which strand makes or leaves them as thick, None where every one makes them too thick.
    """

    source: Source
    thickness: YarnThickness
    state: ReachState
    strand: FittingStrand | None = None


@dataclass(frozen=True, slots=True, kw_only=True)
class Combination:
    """Strands held together.

    metres_per_100g: of all of them. tex: the same as grams per 1000 m. strands: in the order of the request.
    categories: by every built-in chart. to_reach: what it takes to be as thick as the wanted category, chart by chart;
    None where none is wanted.
    """

    metres_per_100g: Fraction
    tex: Fraction
    strands: tuple[CombinedStrand, ...]
    categories: tuple[CategoryRow, ...]
    to_reach: tuple[Reach, ...] | None
    remarks: tuple[Remark, ...]

    @property
    def sources(self) -> tuple[Source, ...]:
        """The charts that name a category, and the standard, each once."""
        charts = [row.source for row in self.categories] + [way.source for way in self.to_reach or ()]
        return tuple(dict.fromkeys((*charts, *(row.standard.source for row in self.categories))))


class Estimate(NamedTuple):
    """What something takes: the least, the likely and the most, in whatever it is told in."""

    low: Fraction
    likely: Fraction
    high: Fraction

    @classmethod
    def of(cls, exact: Fraction) -> Self:
        """What is known exactly."""
        return cls(exact, exact, exact)

    def times_each(self, factors: Estimate) -> Estimate:
        """Each of the three times its own factor, none of which is below zero."""
        return Estimate(self.low * factors.low, self.likely * factors.likely, self.high * factors.high)


class StrandNeed(NamedTuple):
    """How much of one strand is needed, as long as the yarn that it is held with.

    strand: its place, from 1. balls: to buy, with the margin.
    """

    strand: int
    name: str | None
    grams: Estimate
    ball_grams: Fraction
    balls: int


class Need(NamedTuple):
    """How much of one yarn is needed.

    stitches: worked in it. basis: how the amount is known. likely_metres: of all strands held together, and
    metres_for: the same by what takes them. grams, tex: of all strands together. strands: in their order, at least one.
    symbol: of the colour that it is for, None where it is for none.
    """

    yarn: str
    stitches: int
    basis: Basis
    likely_metres: Fraction
    metres_for: Mapping[str, Fraction]
    grams: Estimate
    tex: Fraction
    strands: tuple[StrandNeed, ...]
    symbol: str | None = None

    @property
    def metres(self) -> Estimate:
        """Of all strands held together."""
        low, likely, high = (1000 * grams / self.tex for grams in self.grams)
        return Estimate(low, likely, high)

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


Thickness = Literal["thinner", "same", "thicker"]


@dataclass(frozen=True, slots=True)
class ComparedYarn:
    """How thick a yarn is, all its strands together. categories: by every built-in chart."""

    metres_per_100g: Fraction
    tex: Fraction
    categories: tuple[CategoryRow, ...]


@dataclass(frozen=True, slots=True)
class YarnComparison:
    """A yarn beside the pattern's.

    pattern, own: the two. likely_gauge: at which the fabric is as firm, where the pattern's gauge is known.
    """

    pattern: ComparedYarn
    own: ComparedYarn
    likely_gauge: Gauge | None

    @property
    def tex_ratio(self) -> Fraction:
        """The own yarn's tex over the pattern's: how much as heavy the same length is."""
        return self.own.tex / self.pattern.tex

    @property
    def thickness(self) -> Thickness:
        """How the own yarn is beside the pattern's."""
        if self.tex_ratio == 1:
            return "same"
        return "thicker" if self.tex_ratio > 1 else "thinner"

    @property
    def common_category(self) -> bool:
        """Whether by any chart the two may be of one category."""
        return not {(row.source, row.thickness.category) for row in self.pattern.categories}.isdisjoint(
            (row.source, row.thickness.category) for row in self.own.categories
        )

    @property
    def sources(self) -> tuple[Source, ...]:
        """The charts and the standard, each once."""
        rows = (*self.pattern.categories, *self.own.categories)
        return tuple(dict.fromkeys([row.source for row in rows] + [row.standard.source for row in rows]))


@dataclass(frozen=True, slots=True)
class SizeSubstitute:
    """What one size needs. metres: of all strands together, as much as of the pattern's yarn; grams likewise.

    strands: each of them, its grams as exact as the metres.
    """

    label: str
    metres: Fraction
    grams: Fraction
    strands: tuple[StrandNeed, ...]

    @property
    def balls(self) -> int:
        """Balls of its first strand."""
        return self.strands[0].balls


@dataclass(frozen=True, slots=True)
class AmountRuns:
    """Amounts as size runs, metres and grams to the next whole one. balls: of each strand."""

    metres: str
    grams: str
    balls: tuple[str, ...]


@dataclass(frozen=True, slots=True)
class Substitution:
    """What every size needs of another yarn, in the order of the request, and how the yarns compare."""

    sizes: tuple[SizeSubstitute, ...]
    comparison: YarnComparison
    remarks: tuple[Remark, ...]

    @property
    def sources(self) -> tuple[Source, ...]:
        """What the categories are from."""
        return self.comparison.sources

    @property
    def runs(self) -> AmountRuns:
        """All sizes side by side."""
        by_strand = zip(*([strand.balls for strand in size.strands] for size in self.sizes), strict=True)
        return AmountRuns(
            size_run([ceil(size.metres) for size in self.sizes]),
            size_run([ceil(size.grams) for size in self.sizes]),
            tuple(size_run(balls) for balls in by_strand),
        )
