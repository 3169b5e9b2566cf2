"""What is asked about yarn: strands to hold together, the stitches of every size and yarn, a yarn for another."""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass, field

from grading_core.answer_sizes import AnswerSizes
from grading_core.fraction import Fraction
from grading_core.gauge import Gauge
from grading_core.units import CM_PER_INCH

USUAL_LABEL_GRAMS = Fraction(100)
"""What the metres of a yarn are told for, where its label says no weight (common practice, no source)."""

USUAL_BALL_GRAMS = Fraction(50)
"""The weight of a ball (common practice, no source)."""

USUAL_MARGIN = Fraction(1, 10)
"""Bought beyond what is needed, as a part of it (common practice, no source)."""

METRES_PER_YARD = 36 * CM_PER_INCH / 100

TEX_TIMES_METRES = 100_000
"""Tex times metres per 100 g: tex are grams per 1000 m (ISO 1144)."""


@dataclass(frozen=True, slots=True, kw_only=True)
class Strand:
    """A strand, its thickness in one of the ways in which labels and mills tell it.

    metres, grams: so many metres weigh so many grams. metres_per_100g, tex: grams per 1000 m. nm: the metric count,
    metres per gram. ball_grams: weight of a ball. name: comes back with the answer.
    """

    metres: Fraction | None = None
    grams: Fraction | None = None
    metres_per_100g: Fraction | None = None
    tex: Fraction | None = None
    nm: Fraction | None = None
    ball_grams: Fraction | None = None
    name: str | None = None

    @property
    def linear_density(self) -> Fraction:
        """Its tex, grams per 1000 m.

        >>> Strand(metres=Fraction(200), grams=Fraction(50)).linear_density, Strand(nm=Fraction(4)).linear_density
        (Fraction(250, 1), Fraction(250, 1))
        """
        if self.tex is not None:
            return self.tex
        if self.nm is not None:
            return 1000 / self.nm
        if self.metres_per_100g is not None:
            return TEX_TIMES_METRES / self.metres_per_100g
        assert self.metres is not None
        return 1000 * (USUAL_LABEL_GRAMS if self.grams is None else self.grams) / self.metres


@dataclass(frozen=True, slots=True, kw_only=True)
class Yarn:
    """A yarn, or strands held together.

    metres_per_100g: of all strands, which then needn't be told one by one. strands: each of them. ball_grams: weight of
    a ball of what has none of its own. swatch_grams, swatch_stitches: of a weighed swatch, both or neither.
    swatch_floats: stitches of that swatch that the strand is carried behind.
    """

    metres_per_100g: Fraction | None = None
    strands: tuple[Strand, ...] | None = None
    ball_grams: Fraction | None = None
    swatch_grams: Fraction | None = None
    swatch_stitches: int | None = None
    swatch_floats: int = 0

    @property
    def held(self) -> tuple[Strand, ...]:
        """What is held together, at least one strand."""
        return self.strands or (Strand(metres_per_100g=self.metres_per_100g),)

    @property
    def linear_density(self) -> Fraction:
        """The tex of all strands together, which add (ISO 1144 for the unit; textile calculation texts for the sum).

        >>> Yarn(strands=(Strand(metres=Fraction(400)), Strand(metres=Fraction(400)))).linear_density
        Fraction(500, 1)
        """
        return sum((strand.linear_density for strand in self.held), Fraction(0))

    def ball_of(self, strand: Strand) -> Fraction:
        """The grams of a ball of a strand: its own, the yarn's, what its label is told for, or the usual.

        >>> [int(Yarn(ball_grams=ball).ball_of(Strand(grams=Fraction(25)))) for ball in (Fraction(100), None)]
        [100, 25]
        """
        told = (strand.ball_grams, self.ball_grams, strand.grams)
        usual = USUAL_BALL_GRAMS if strand.metres is None else USUAL_LABEL_GRAMS
        return next((grams for grams in told if grams is not None), usual)


@dataclass(frozen=True, slots=True)
class StrandRequest:
    """Strands to hold together, at least one.

    wanted_category: of the standard, as thick as which another strand is to make them; None asks for none.
    """

    strands: tuple[Strand, ...]
    wanted_category: int | None = None


@dataclass(frozen=True, slots=True)
class SizeStitches:
    """The stitches of one size, by the name of the yarn.

    stitches: exactly as worked. floats: those that the yarn's strand is carried behind.
    """

    label: str
    stitches: Mapping[str, int]
    floats: Mapping[str, int] = field(default_factory=dict)


@dataclass(frozen=True, slots=True, kw_only=True)
class YarnEstimateRequest:
    """Yarns, and the stitches of every size.

    yarns: by name. margin: bought beyond what is needed, as a part of it. gauge: for yarns without a weighed swatch,
    which are estimated from the width of a stitch, and for floats. answer_sizes: labels of those that are answered.
    """

    yarns: Mapping[str, Yarn]
    sizes: tuple[SizeStitches, ...]
    margin: Fraction = USUAL_MARGIN
    gauge: Gauge | None = None
    answer_sizes: AnswerSizes = None


@dataclass(frozen=True, slots=True, kw_only=True)
class SizeAmount:
    """What one size needs as a pattern prints it, in one of these ways.

    metres, yards, grams: of all strands together. balls: of the first strand.
    """

    label: str
    metres: Fraction | None = None
    yards: Fraction | None = None
    grams: Fraction | None = None
    balls: Fraction | None = None


@dataclass(frozen=True, slots=True, kw_only=True)
class SubstitutionRequest:
    """A yarn in place of a pattern's.

    pattern_yarn, own_yarn: the two. sizes: what the pattern says they need of its yarn. gauge: the pattern's, for a
    likely one of the other yarn. margin: bought beyond what is needed, as a part of it; none, since what patterns print
    has one. answer_sizes: labels of those that are answered.
    """

    pattern_yarn: Yarn
    own_yarn: Yarn
    sizes: tuple[SizeAmount, ...]
    gauge: Gauge | None = None
    margin: Fraction = Fraction(0)
    answer_sizes: AnswerSizes = None
