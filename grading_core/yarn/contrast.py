"""How light a colour is, and so whether two of them read apart."""

from __future__ import annotations

from decimal import Decimal, localcontext
from fractions import Fraction


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
