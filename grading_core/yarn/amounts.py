"""How much yarn something takes: a length for every stitch, and for what its stitches don't say.

The yarn in a stitch goes with the stitch's width: 3.8 to 4.2 times it in relaxed plain knit (constants of dry relaxed
and fully relaxed plain knit, the first from memory, the second from an examination question), 4 as the middle value and
in a handspinner's worked example. A weighed swatch tells it exactly, and for other fabrics of the garment in the
proportion of their stitches' widths. Lengths are in widths of a stitch where nothing else is said.
"""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass
from fractions import Fraction
from functools import reduce
from types import MappingProxyType
from typing import Literal, NamedTuple

from grading_core.codes import ProblemCode
from grading_core.errors import Check, Problem, check
from grading_core.unknown import known
from grading_core.yarn.request import Yarn
from grading_core.yarn.result import NOTHING, Basis, Estimate, Need, StrandNeed

Purpose = Literal["stitches", "ribs", "floats", "edges", "ends"]
"""What takes yarn. edges: casting on, picking up and binding off."""


def _estimate(low: str, likely: str, high: str) -> Estimate:
    return Estimate(Fraction(low), Fraction(likely), Fraction(high))


STITCH = _estimate("3.8", "4", "4.2")
"""Of a stitch, where no swatch was weighed: see the module's docstring."""

RIB = _estimate("0.9", "1", "1.15")
"""A stitch of rib as a part of one of plain knit: thinner needles take less, the steps from knit to purl more (common
practice, no source)."""

FLOAT = _estimate("1", "1.1", "1.2")
"""For every stitch that a strand is carried behind: the stitch's width, and ease (common practice, no source)."""

CAST_ON = _estimate("3.8", "7.3", "8.4")
"""Of a stitch cast on: a loop alone, or a stitch of 4 widths and a tail of three and a tenth more, 3.3 (a knitting
teacher's rule for the long tail); the most is two stitches' worth (common practice, no source)."""

BIND_OFF = _estimate("3", "4", "5")
"""Of a stitch bound off: about a stitch's worth (common practice, no source)."""

END_CM = _estimate("10", "15", "20")
"""Left at each end of a strand, to be woven in (common practice, no source)."""


class Widths(NamedTuple):
    """How wide a stitch of each fabric is, in cm. stranded: of what is worked from a chart."""

    plain: Fraction
    stranded: Fraction


@dataclass(frozen=True, slots=True, kw_only=True)
class Work:
    """What is done with one colour.

    plain, stranded, rib: stitches worked in each fabric. floats: stitches that its strand is carried behind. cast_on,
    picked_up, bound_off: stitches, at underarms and neckband too. ends: of strands, at the start and the end of each
    piece.
    """

    plain: int = 0
    stranded: int = 0
    rib: int = 0
    floats: int = 0
    cast_on: int = 0
    picked_up: int = 0
    bound_off: int = 0
    ends: int = 0

    @property
    def stitches(self) -> int:
        """All stitches worked."""
        return self.plain + self.stranded + self.rib


@dataclass(frozen=True, slots=True, kw_only=True)
class Loops:
    """What a stitch and a float take, in widths of a stitch.

    stitch, rib, float_over: of one stitch each. basis: how they are known.
    """

    stitch: Estimate
    rib: Estimate
    float_over: Estimate
    basis: Basis


ESTIMATED = Loops(stitch=STITCH, rib=STITCH.times_each(RIB), float_over=FLOAT, basis="estimated")


def loops_of(yarn: Yarn, width_cm: Fraction) -> Loops:
    """What a stitch takes of a yarn: measured where a swatch was weighed, else estimated.

    yarn: with its swatch, all of it or none. width_cm: of a stitch of that swatch.

    >>> yarn = Yarn(metres_per_100g=Fraction(200), swatch_grams=Fraction(10), swatch_stitches=1000)
    >>> loops_of(yarn, Fraction(1, 2)).stitch.likely
    Fraction(4, 1)
    """
    if yarn.swatch_grams is None or yarn.swatch_stitches is None:
        return ESTIMATED
    stitch = Estimate.of(_stitches_cm(yarn, width_cm) / width_cm / yarn.swatch_stitches)
    # floats weighed with their stitches: taken as more, they leave less for these
    float_over = Estimate.of(FLOAT.likely) if yarn.swatch_floats else FLOAT
    return Loops(stitch=stitch, rib=stitch.times_each(RIB), float_over=float_over, basis="measured")


@check
def swatch_problems(yarn: Yarn, width_cm: Fraction | None) -> Check[None]:
    """What is wrong with a swatch: it lacks its weight or its stitches, or its floats alone would weigh more.

    yarn: any. width_cm: of a stitch of the swatch, None where it isn't known.

    >>> yarn = Yarn(metres_per_100g=Fraction(200), swatch_grams=Fraction(10))
    >>> [problem.path for problem in swatch_problems(yarn, None)]
    [('swatch_stitches',)]
    """
    told = {"swatch_grams": known(yarn.swatch_grams), "swatch_stitches": known(yarn.swatch_stitches)}
    lacking = [name for name, amount in told.items() if amount is None]
    if len(lacking) == 1 or (lacking and yarn.swatch_floats):
        detail = "is missing: a swatch needs both its weight and its stitches."
        for name in lacking:
            yield Problem((name,), ProblemCode.HALF_A_SWATCH, detail)
    elif not lacking and width_cm is not None and _stitches_cm(yarn, width_cm) <= 0:
        detail = f"is less than {yarn.swatch_floats} stitches of floats weigh without any stitch."
        yield Problem(("swatch_grams",), ProblemCode.SWATCH_TOO_LIGHT, detail)


def _stitches_cm(yarn: Yarn, width_cm: Fraction) -> Fraction:
    """The yarn in all stitches of a swatch, its floats left out."""
    assert yarn.swatch_grams is not None
    return yarn.swatch_grams * 100_000 / yarn.linear_density - yarn.swatch_floats * FLOAT.likely * width_cm


def lengths_cm(work: Work, loops: Loops, widths: Widths) -> Mapping[Purpose, Estimate]:
    """The length in cm that each part of the work takes.

    work: of one colour. loops: of its yarn. widths: of the fabrics that are worked.

    >>> widths = Widths(Fraction(1, 2), Fraction(1, 2))
    >>> lengths = lengths_cm(Work(plain=100, ends=2), ESTIMATED, widths)
    >>> {purpose: int(length.likely) for purpose, length in lengths.items()}
    {'stitches': 200, 'ends': 30}
    """
    plain, stranded = widths
    takes: tuple[tuple[Purpose, Estimate, Fraction | int], ...] = (
        ("stitches", loops.stitch, work.plain * plain + work.stranded * stranded),
        ("ribs", loops.rib, work.rib * plain),
        ("floats", loops.float_over, work.floats * stranded),
        ("edges", CAST_ON, work.cast_on * plain),
        ("edges", loops.stitch, work.picked_up * plain),
        ("edges", BIND_OFF, work.bound_off * plain),
        ("ends", END_CM, work.ends),
    )
    lengths: dict[Purpose, Estimate] = {}
    for purpose, each, amount in takes:
        if amount:
            length = each.times(amount)
            lengths[purpose] = lengths[purpose].plus(length) if purpose in lengths else length
    return MappingProxyType(lengths)


def need(name: str, work: Work, yarn: Yarn, *, loops: Loops, widths: Widths, margin: Fraction = Fraction(0)) -> Need:
    """How much of one yarn some work needs.

    name: of the yarn. work, loops, widths: as for `lengths_cm`. yarn: its strands and balls. margin: as a part of what
    is needed, 1/10 for ten percent more, on top of the most that it may be.

    >>> yarn = Yarn(metres_per_100g=Fraction(200), swatch_grams=Fraction(10), swatch_stitches=1000)
    >>> widths = Widths(Fraction(1, 2), Fraction(1, 2))
    >>> made = need("oat", Work(plain=40000), yarn, loops=loops_of(yarn, Fraction(1, 2)), widths=widths)
    >>> made.grams.likely, made.metres.likely, made.balls
    (Fraction(400, 1), Fraction(800, 1), 8)
    """
    lengths = lengths_cm(work, loops, widths)
    metres = reduce(Estimate.plus, lengths.values(), NOTHING).times(Fraction(1, 100))
    return Need(
        yarn=name,
        stitches=work.stitches,
        basis=loops.basis,
        metres=metres,
        metres_for={purpose: length.likely / 100 for purpose, length in lengths.items()},
        grams=metres.times(yarn.linear_density / 1000),
        strands=strand_needs(yarn, metres, margin),
    )


def strand_needs(yarn: Yarn, metres: Estimate, margin: Fraction) -> tuple[StrandNeed, ...]:
    """How much of each strand of a yarn some metres need, which are as long as one another.

    yarn: its strands and balls. metres: of all strands held together. margin: as for `need`.
    """
    needs = []
    for place, strand in enumerate(yarn.held, 1):
        grams, ball = metres.times(strand.linear_density / 1000), yarn.ball_of(strand)
        bought = balls(grams.high, ball, margin)
        needs.append(StrandNeed(strand=place, name=strand.name, grams=grams, ball_grams=ball, balls=bought))
    return tuple(needs)


def balls(grams: Fraction, ball_grams: Fraction, margin: Fraction = Fraction(0)) -> int:
    """Whole balls that suffice for a weight, with a margin on top.

    grams: the most that may be needed. ball_grams: weight of a ball. margin: as a part of it.

    >>> balls(Fraction(100), Fraction(50), Fraction(1, 10))
    3
    """
    return -(-(grams * (1 + margin)) // ball_grams)
