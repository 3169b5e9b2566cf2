"""What is asked about yarn: strands to hold together, and the stitches of every size and yarn."""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass
from fractions import Fraction

from grading_core.answer_sizes import AnswerSizes
from grading_core.codes import ProblemCode
from grading_core.errors import Problem
from grading_core.gauge import Gauge
from grading_core.unknown import known

USUAL_LABEL_GRAMS = Fraction(100)
"""What the metres of a yarn are told for, where its label says no weight (common practice, no source)."""

USUAL_BALL_GRAMS = Fraction(50)
"""The weight of a ball (common practice, no source)."""

USUAL_MARGIN = Fraction(1, 10)
"""Bought beyond what is needed, as a part of it (common practice, no source)."""


@dataclass(frozen=True, slots=True)
class Strand:
    """A strand as its label tells it: so many metres weigh so many grams. name: comes back with the answer."""

    metres: Fraction
    grams: Fraction = USUAL_LABEL_GRAMS
    name: str | None = None

    @property
    def metres_per_100g(self) -> Fraction:
        """Its thickness."""
        return 100 * self.metres / self.grams


@dataclass(frozen=True, slots=True)
class StrandRequest:
    """Strands to hold together, at least one."""

    strands: tuple[Strand, ...]


@dataclass(frozen=True, slots=True, kw_only=True)
class Yarn:
    """A yarn, or strands held together.

    metres_per_100g: of all strands. ball_grams: weight of a ball. swatch_grams, swatch_stitches: of a weighed swatch,
    both or neither. hex: its colour as "#rrggbb", None where it isn't told.
    """

    metres_per_100g: Fraction
    ball_grams: Fraction = USUAL_BALL_GRAMS
    swatch_grams: Fraction | None = None
    swatch_stitches: int | None = None
    hex: str | None = None

    def half_a_swatch(self) -> Problem | None:
        """What is wrong with a swatch of which only the weight is sent, or only the stitches; None where nothing is.

        >>> Yarn(metres_per_100g=Fraction(200), swatch_grams=Fraction(10)).half_a_swatch().path
        ('swatch_stitches',)
        """
        if (known(self.swatch_grams) is None) == (known(self.swatch_stitches) is None):
            return None
        lacking = "swatch_grams" if self.swatch_grams is None else "swatch_stitches"
        return Problem(
            (lacking,), ProblemCode.HALF_A_SWATCH, "is missing: a swatch needs both its weight and its stitches."
        )


@dataclass(frozen=True, slots=True)
class SizeStitches:
    """The stitches of one size. stitches: by the name of the yarn, exactly as worked."""

    label: str
    stitches: Mapping[str, int]


@dataclass(frozen=True, slots=True, kw_only=True)
class YarnEstimateRequest:
    """Yarns, and the stitches of every size.

    yarns: by name. margin: bought beyond what is needed, as a part of it. gauge: for yarns without a weighed swatch,
    which are estimated from the width of a stitch. answer_sizes: labels of those that are answered.
    """

    yarns: Mapping[str, Yarn]
    sizes: tuple[SizeStitches, ...]
    margin: Fraction = USUAL_MARGIN
    gauge: Gauge | None = None
    answer_sizes: AnswerSizes = None
