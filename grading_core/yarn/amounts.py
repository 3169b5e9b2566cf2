"""How much yarn something takes.

Amounts are best measured: swatch weight over swatch stitches. The estimate without a swatch rests on the loop
length of relaxed plain knit, 3.8 to 4.2 times the width of a stitch (constants of dry relaxed and fully
relaxed plain knit, the first from memory, the second from an examination question), 4 as the middle value.
"""

from __future__ import annotations

from fractions import Fraction

from grading_core.yarn.result import Amount

LOOP_WIDTHS = (Fraction(38, 10), Fraction(4), Fraction(42, 10))
"""Yarn in one stitch over the width of that stitch: least, middle, most."""


def measured(stitches: int, swatch_grams: Fraction, swatch_stitches: int) -> Amount:
    """Yarn for so many stitches from a weighed swatch of the same fabric.

    stitches: of one colour, or of all. swatch_grams: weight of the swatch, of that colour's yarn in it.
    swatch_stitches: stitches of that colour in it, edge stitches too, without the cast-on's tail.

    >>> measured(25200, Fraction(4), 240).likely
    Fraction(420, 1)
    """
    grams = stitches * swatch_grams / swatch_stitches
    return Amount(grams, grams, grams, "measured")


def estimated(stitches: int, stitch_width_cm: Fraction, metres_per_100g: Fraction) -> Amount:
    """Yarn for so many stitches of stockinette where no swatch was weighed; ribs, floats, cast-on and ends take more.

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
    return -(-(amount.high * (1 + margin)) // ball_grams)
