"""How much yarn something takes: a length for every stitch, and for what its stitches don't say.

The yarn in a stitch goes with the stitch's width: 3.8 to 4.2 times it in relaxed plain knit (constants of dry relaxed
and fully relaxed plain knit, the first from memory, the second from an examination question), 4 as the middle value and
in a handspinner's worked example. A weighed swatch tells it exactly, and for other fabrics of the garment in the
proportion of their stitches' widths. Lengths are in widths of a stitch where nothing else is said.
"""

from __future__ import annotations

from collections.abc import Callable, Mapping
from dataclasses import dataclass
from math import lcm
from operator import attrgetter
from types import MappingProxyType
from typing import Literal, NamedTuple, Self

from grading_core.codes import ProblemCode
from grading_core.errors import Check, Problem, check
from grading_core.fraction import Fraction
from grading_core.unknown import known
from grading_core.yarn.request import Strand, Yarn
from grading_core.yarn.result import Basis, Estimate, Need, StrandNeed

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


class _Parts(NamedTuple):
    """An estimate in whole numbers: so many parts of one, of which there are `of`. An answer reckons hundreds of them.

    They needn't be in their lowest terms.
    """

    low: int
    likely: int
    high: int
    of: int

    @classmethod
    def from_estimate(cls, estimate: Estimate) -> Self:
        (low, a), (likely, b), (high, c) = [value.as_integer_ratio() for value in estimate]
        of = lcm(a, b, c)
        return cls(low * (of // a), likely * (of // b), high * (of // c), of)

    def scaled(self, times: int) -> tuple[int, int, int]:
        """The three numbers so many times."""
        return self.low * times, self.likely * times, self.high * times

    def estimate(self, times: int = 1, shared: int = 1) -> Estimate:
        """The same exactly, so many times over so many, in the lowest terms."""
        low, likely, high, of = self
        of *= shared
        exact = Fraction(likely * times, of)
        if low == high:
            return Estimate(exact, exact, exact)
        return Estimate(Fraction(low * times, of), exact, Fraction(high * times, of))


_Length = tuple[int, int, int]
"""The least, the likely and the most, in whole numbers."""

_CAST_ON, _BIND_OFF, _END_CM = map(_Parts.from_estimate, (CAST_ON, BIND_OFF, END_CM))


class Widths(NamedTuple):
    """How wide a stitch of each fabric is, in cm. stranded: of what is worked from a chart."""

    plain: Fraction
    stranded: Fraction


class Work(NamedTuple):
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
    lengths_in, parts = _lengths_in(loops, widths)
    lengths, _ = lengths_in(work)
    return MappingProxyType({purpose: _Parts(*length, parts).estimate() for purpose, length in lengths.items()})


def _lengths_in(loops: Loops, widths: Widths) -> tuple[Callable[[Work], tuple[dict[Purpose, _Length], _Length]], int]:
    """What tells the length that each part of some work takes, and all of it; and how many of its parts a cm has."""
    plain, stranded = [width.as_integer_ratio() for width in widths]
    stitch, rib, float_over = map(_Parts.from_estimate, (loops.stitch, loops.rib, loops.float_over))
    takes: tuple[tuple[Purpose, str, _Parts, tuple[int, int]], ...] = (
        ("stitches", "plain", stitch, plain),
        ("stitches", "stranded", stitch, stranded),
        ("ribs", "rib", rib, plain),
        ("floats", "floats", float_over, stranded),
        ("edges", "cast_on", _CAST_ON, plain),
        ("edges", "picked_up", stitch, plain),
        ("edges", "bound_off", _BIND_OFF, plain),
        ("ends", "ends", _END_CM, (1, 1)),
    )
    parts = lcm(*[each.of * of for _, _, each, (_, of) in takes])
    of_one = [(purpose, *each.scaled(width * (parts // (each.of * of)))) for purpose, _, each, (width, of) in takes]
    amounts = attrgetter(*[counted for _, counted, _, _ in takes])

    def lengths_in(work: Work) -> tuple[dict[Purpose, _Length], _Length]:
        lengths: dict[Purpose, _Length] = {}
        low = likely = high = 0
        for (purpose, least, usual, most), amount in zip(of_one, amounts(work), strict=True):
            if amount:
                here = (least * amount, usual * amount, most * amount)
                low, likely, high = low + here[0], likely + here[1], high + here[2]
                before = lengths.get(purpose)
                lengths[purpose] = (before[0] + here[0], before[1] + here[1], before[2] + here[2]) if before else here
        return lengths, (low, likely, high)

    return lengths_in, parts


def need(name: str, work: Work, yarn: Yarn, *, loops: Loops, widths: Widths, margin: Fraction = Fraction(0)) -> Need:
    """How much of one yarn some work needs.

    name: of the yarn. work, loops, widths: as for `lengths_cm`. yarn: its strands and balls. margin: as a part of what
    is needed, 1/10 for ten percent more, on top of the most that it may be.

    >>> yarn = Yarn(metres_per_100g=Fraction(200), swatch_grams=Fraction(10), swatch_stitches=1000)
    >>> widths = Widths(Fraction(1, 2), Fraction(1, 2))
    >>> made = need("oat", Work(plain=40000), yarn, loops=loops_of(yarn, Fraction(1, 2)), widths=widths)
    >>> made.grams.likely, made.likely_metres, made.balls
    (Fraction(400, 1), Fraction(800, 1), 8)
    """
    return needs_of(name, yarn, loops=loops, widths=widths, margin=margin)(work)


def needs_of(
    name: str, yarn: Yarn, *, loops: Loops, widths: Widths, margin: Fraction = Fraction(0)
) -> Callable[[Work], Need]:
    """What tells how much of one yarn some work needs: what is the same for all sizes is reckoned once.

    name, yarn, loops, widths, margin: as for `need`.
    """
    (lengths_in, parts_of_cm), held, tex = _lengths_in(loops, widths), _held(yarn), yarn.linear_density
    parts = 100 * parts_of_cm

    def need_of(work: Work) -> Need:
        lengths, (low, likely, high) = lengths_in(work)
        metres = _Parts(low, likely, high, parts)
        strands = _strand_needs(held, metres, margin)
        # one strand weighs what all of them do
        return Need(
            yarn=name,
            stitches=work.stitches,
            basis=loops.basis,
            likely_metres=Fraction(likely, parts),
            metres_for={purpose: Fraction(usual, parts) for purpose, (_, usual, _) in lengths.items()},
            grams=strands[0].grams if len(held) == 1 else _grams(metres, tex),
            tex=tex,
            strands=strands,
        )

    return need_of


def strand_needs(yarn: Yarn, metres: Estimate, margin: Fraction) -> tuple[StrandNeed, ...]:
    """How much of each strand of a yarn some metres need, which are as long as one another.

    yarn: its strands and balls. metres: of all strands held together. margin: as for `need`.
    """
    return _strand_needs(_held(yarn), _Parts.from_estimate(metres), margin)


_Held = tuple[Strand, Fraction, Fraction]
"""A strand, its tex, and the grams of a ball of it."""


def _held(yarn: Yarn) -> tuple[_Held, ...]:
    return tuple([(strand, strand.linear_density, yarn.ball_of(strand)) for strand in yarn.held])


def _strand_needs(held: tuple[_Held, ...], metres: _Parts, margin: Fraction) -> tuple[StrandNeed, ...]:
    needs = []
    for place, (strand, tex, ball) in enumerate(held, 1):
        grams = _grams(metres, tex)
        bought = balls(grams.high, ball, margin)
        needs.append(StrandNeed(strand=place, name=strand.name, grams=grams, ball_grams=ball, balls=bought))
    return tuple(needs)


def _grams(metres: _Parts, tex: Fraction) -> Estimate:
    return metres.estimate(tex.numerator, 1000 * tex.denominator)


def balls(grams: Fraction, ball_grams: Fraction, margin: Fraction = Fraction(0)) -> int:
    """Whole balls that suffice for a weight, with a margin on top.

    grams: the most that may be needed. ball_grams: weight of a ball. margin: as a part of it.

    >>> balls(Fraction(100), Fraction(50), Fraction(1, 10))
    3
    """
    (weight, of_weight), (ball, of_ball) = grams.as_integer_ratio(), ball_grams.as_integer_ratio()
    more, of_more = margin.as_integer_ratio()
    return -(-weight * (of_more + more) * of_ball // (of_weight * of_more * ball))
