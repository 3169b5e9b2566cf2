"""How light a colour is, which grey is as light, and so whether two colours read apart.

Two colours of one lightness look alike in a grey copy whatever their hues, and a motif in one hardly shows on the
other: knitters try colours by a grey photograph of them (common practice, no source).
"""

from __future__ import annotations

from bisect import bisect_left
from decimal import Decimal, localcontext
from functools import cache
from math import floor
from typing import Literal

from grading_core.fraction import Fraction

READS_CLEARLY = 40
"""From this difference of lightness on two colours read apart clearly: their luminances then have a contrast ratio of
at least 3:1, which WCAG 2.2 asks of what is to be made out in graphics (success criterion 1.4.11, W3C)."""

READS_APART = 20
"""Colours whose lightness differs by less are hard to tell apart in a chart (common practice, no source)."""

Reads = Literal["clearly", "softly", "hardly"]


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


def grey(light: Fraction) -> str:
    """The sRGB grey, as "#rrggbb", whose lightness is nearest; of two as near the darker.

    light: a lightness, 0 to 100.

    >>> grey(lightness("#777777")), grey(lightness("#ff0000"))
    ('#777777', '#7f7f7f')
    """
    greys = _greys()
    place = bisect_left(greys, light)
    near = range(max(0, place - 1), min(place + 1, len(greys)))
    return "#" + 3 * f"{min(near, key=lambda channel: abs(greys[channel] - light)):02x}"


def reads(difference: Fraction) -> Reads:
    """How two colours read beside each other.

    difference: of their lightnesses.

    >>> reads(Fraction(40)), reads(Fraction(399, 10)), reads(Fraction(199, 10))
    ('clearly', 'softly', 'hardly')
    """
    if difference >= READS_CLEARLY:
        return "clearly"
    return "softly" if difference >= READS_APART else "hardly"


def tenths(light: Fraction) -> Fraction:
    """A lightness, or a difference of two, to one decimal, as people are told it; halves go up.

    >>> tenths(Fraction("1.25"))
    Fraction(13, 10)
    """
    return Fraction(floor(10 * light + Fraction(1, 2)), 10)


@cache
def _linear(value: int) -> Decimal:
    """The linear part of light for one channel of 0 to 255."""
    part = Decimal(value) / 255
    if part <= Decimal("0.04045"):
        return part / Decimal("12.92")
    return ((part + Decimal("0.055")) / Decimal("1.055")) ** Decimal("2.4")


@cache
def _greys() -> tuple[Fraction, ...]:
    """The lightness of every grey, the darkest first."""
    return tuple(lightness(f"{channel:02x}" * 3) for channel in range(256))
