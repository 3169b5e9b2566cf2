"""Yarn: strands held together, how thick that is, how much is needed, how light a colour is.

Linear densities in tex (g per 1000 m) add, so the reciprocals of metres per 100 g add (ISO 1144 for the
tex; textile calculation texts for the sum of parallel strands).

Amounts are best measured: swatch weight over swatch stitches. The estimate without a swatch rests on the loop
length of relaxed plain knit, 3.8 to 4.2 times the width of a stitch (constants of dry relaxed and fully
relaxed plain knit, the first from memory, the second from an examination question), 4 as the middle value.
"""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass
from decimal import Decimal, localcontext
from fractions import Fraction
from typing import Literal

from grading_core.standards.sources import Source
from grading_core.standards.yarn_weights import YARN_CATEGORIES, YARN_THICKNESSES, YarnThickness

Basis = Literal["measured", "estimated"]

LOOP_WIDTHS = (Fraction(38, 10), Fraction(4), Fraction(42, 10))
"""Yarn in one stitch over the width of that stitch: least, middle, most."""

ESTIMATE_ASSUMPTION = (
    "Estimated for stockinette: each stitch takes 3.8 to 4.2 times its width in yarn. Ribs, floats, cast-on and ends "
    "take more. Weigh a swatch to know better."
)


@dataclass(frozen=True, slots=True)
class Combination:
    """Strands held together.

    metres_per_100g: of all of them. tex: the same as grams per 1000 m. weight_shares: each strand's part of the
    weight, in the order given.
    """

    metres_per_100g: Fraction
    tex: Fraction
    weight_shares: tuple[Fraction, ...]


@dataclass(frozen=True, slots=True)
class Match:
    """A row of a published chart that a thickness falls in.

    source: the chart. thickness: its row. standard_name: of the standard's category. between: True where the
    chart leaves a gap there and this is the nearer row.
    """

    source: Source
    thickness: YarnThickness
    standard_name: str
    between: bool


@dataclass(frozen=True, slots=True)
class Amount:
    """How much yarn something takes, in grams.

    low_g, likely_g, high_g: alike where it was measured. basis: how it is known.
    """

    low_g: Fraction
    likely_g: Fraction
    high_g: Fraction
    basis: Basis

    def metres(self, metres_per_100g: Fraction) -> tuple[Fraction, Fraction, Fraction]:
        """Least, likely and most metres.

        metres_per_100g: of the yarn.

        >>> Amount(Fraction(50), Fraction(50), Fraction(50), "measured").metres(Fraction(240))[1]
        Fraction(120, 1)
        """
        per_gram = metres_per_100g / 100
        return self.low_g * per_gram, self.likely_g * per_gram, self.high_g * per_gram


def tex(metres_per_100g: Fraction) -> Fraction:
    """Grams per 1000 m of a yarn.

    >>> tex(Fraction(400))
    Fraction(250, 1)
    """
    return 100_000 / metres_per_100g


def held_together(metres_per_100g: Sequence[Fraction]) -> Combination:
    """What strands held together give.

    metres_per_100g: of each strand, at least one.

    >>> held_together([Fraction(400), Fraction(400)]).metres_per_100g
    Fraction(200, 1)
    """
    densities = [tex(metres) for metres in metres_per_100g]
    total = sum(densities, Fraction(0))
    return Combination(100_000 / total, total, tuple(density / total for density in densities))


def categories(metres_per_100g: Fraction) -> tuple[Match, ...]:
    """The published categories of a thickness, chart by chart.

    metres_per_100g: of the yarn, or of the strands together. Where a chart's rows overlap each of them is
    named; where it has a gap, the nearer row is, the thicker one at the same distance.

    >>> [match.thickness.name for match in categories(Fraction(200))]
    ['Light', 'DK (8 ply)', 'Aran / worsted (10-12 ply)', 'worsted (10 ply)']
    """
    names = {category.category: category.name for category in YARN_CATEGORIES}
    matches = []
    for source, rows in YARN_THICKNESSES.items():
        away = [_distance(metres_per_100g, row) for row in rows]
        nearest = min(away)
        found = [row for row, distance in zip(rows, away, strict=True) if distance == nearest]
        if nearest:
            found = found[-1:]
        matches += [Match(source, row, names[row.category], nearest > 0) for row in found]
    return tuple(matches)


def measured(stitches: int, swatch_grams: Fraction, swatch_stitches: int) -> Amount:
    """Yarn for so many stitches from a weighed swatch of the same fabric.

    stitches: of one colour, or of all. swatch_grams: weight of the swatch, of that colour's yarn in it.
    swatch_stitches: stitches of that colour in it, edge stitches too, without the cast-on's tail.

    >>> measured(25200, Fraction(4), 240).likely_g
    Fraction(420, 1)
    """
    grams = stitches * swatch_grams / swatch_stitches
    return Amount(grams, grams, grams, "measured")


def estimated(stitches: int, stitch_width_cm: Fraction, metres_per_100g: Fraction) -> Amount:
    """Yarn for so many stitches of stockinette where no swatch was weighed; see `ESTIMATE_ASSUMPTION`.

    stitches: of one colour, or of all. stitch_width_cm: one over the stitches per cm. metres_per_100g: of
    the yarn, or of the strands together.

    >>> amount = estimated(1000, Fraction(1, 2), Fraction(200))
    >>> [int(metres * 10) for metres in amount.metres(Fraction(200))]
    [190, 200, 210]
    """
    low, likely, high = (
        stitches * width * stitch_width_cm / metres_per_100g  # cm over 100 and per 100 g cancel
        for width in LOOP_WIDTHS
    )
    return Amount(low, likely, high, "estimated")


def balls(amount: Amount, ball_grams: Fraction, margin: Fraction = Fraction(0)) -> int:
    """Whole balls that suffice for the most that an amount may be, with a margin on top.

    amount: of one yarn. ball_grams: weight of a ball. margin: as a part of the amount, 1/10 for ten percent more.

    >>> balls(measured(1000, Fraction(10), 100), Fraction(50), Fraction(1, 10))
    3
    """
    return -(-(amount.high_g * (1 + margin)) // ball_grams)


def lightness(srgb: str) -> Fraction:
    """CIE 1976 lightness L* of a colour, 0 for black to 100 for white, to ten decimals.

    srgb: "#rrggbb" or "rrggbb", in hexadecimal.

    Raises ValueError for anything else.

    Sources: transfer function and luminance weights of IEC 61966-2-1 (sRGB); L* of CIE 15.

    >>> float(lightness("#ffffff")), round(float(lightness("#777777")), 2)
    (100.0, 50.03)
    """
    digits = srgb.removeprefix("#")
    if len(digits) != 6 or not set(digits) <= set("0123456789abcdefABCDEF"):
        raise ValueError(f"{srgb!r} is not a colour in six hexadecimal digits")
    with localcontext() as context:
        context.prec = 28
        red, green, blue = (_linear(int(digits[place : place + 2], 16)) for place in (0, 2, 4))
        luminance = Decimal("0.2126") * red + Decimal("0.7152") * green + Decimal("0.0722") * blue
        if luminance > Decimal(216) / 24389:
            value = 116 * luminance ** (Decimal(1) / 3) - 16
        else:
            value = Decimal(24389) / 27 * luminance
        return Fraction(round(value, 10))


def _linear(value: int) -> Decimal:
    """The linear part of light for one channel of 0 to 255."""
    part = Decimal(value) / 255
    if part <= Decimal("0.04045"):
        return part / Decimal("12.92")
    return ((part + Decimal("0.055")) / Decimal("1.055")) ** Decimal("2.4")


def _distance(metres_per_100g: Fraction, row: YarnThickness) -> Fraction:
    """How far a thickness lies outside a chart's row, 0 inside it."""
    low, high = row.metres_per_100g.low, row.metres_per_100g.high
    below = max(Fraction(0), low - metres_per_100g) if low is not None else Fraction(0)
    above = max(Fraction(0), metres_per_100g - high) if high is not None else Fraction(0)
    return below + above
