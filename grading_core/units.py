"""Exact lengths, and lengths as they are printed.

Inside the package a length is a `fractions.Fraction` of centimetres. 1 in = 2.54 cm exactly
(international yard and pound agreement of 1959). Some publishers print 4 in beside 10 cm as
though they were equal; that nominal convention is offered for the inches of an answer only.
Nothing here uses binary floats before the last formatting step, so that 40 in and 101.6 cm are
the same length.
"""

from __future__ import annotations

from collections.abc import Callable, Mapping, Sequence
from decimal import Decimal
from functools import lru_cache
from math import isqrt, lcm
from types import MappingProxyType
from typing import Literal

from grading_core.fraction import Fraction

Unit = Literal["cm", "in"]
InchConvention = Literal["exact", "nominal"]
USUAL_UNIT: Unit = "cm"
USUAL_INCH_CONVENTION: InchConvention = "exact"
"""What lengths are in, and how centimetres become inches, where nothing else is asked."""

Number = int | float | Decimal | Fraction

CM_PER_INCH = Fraction(254, 100)
NOMINAL_CM_PER_INCH = Fraction(10, 4)

INCHES_IN_CM: Mapping[InchConvention, tuple[int, int]] = MappingProxyType({"exact": (50, 127), "nominal": (2, 5)})
"""So many inches are so many cm."""


def exact(number: Number) -> Fraction:
    """The rational number that was written down.

    number: an int, Decimal or Fraction, or a float, which is read as its shortest decimal
    notation: 101.6 means 1016/10 and not the binary number nearest to it.

    Raises ValueError for a float that is not finite.

    >>> exact(101.6)
    Fraction(508, 5)
    """
    if not isinstance(number, float):
        return Fraction(number)
    # as Fraction reads it, without its regular expression
    whole, _, decimals = repr(number).partition(".")
    if not decimals.isdigit():
        return Fraction(repr(number))
    return Fraction(int(whole + decimals), 10 ** len(decimals))


def to_cm(number: Number, unit: Unit = "cm") -> Fraction:
    """A length in centimetres, exactly.

    number: the length. unit: the unit in which it is given, "cm" or "in".

    >>> to_cm(40, "in") == to_cm(101.6, "cm")
    True
    """
    value = exact(number)
    if unit != "in":
        return value
    # as Fraction multiplies, without its detours: a request holds hundreds of lengths
    inches, cm = INCHES_IN_CM["exact"]
    return Fraction(value.numerator * cm, value.denominator * inches)


def to_inches(length_cm: Fraction, convention: InchConvention = "exact") -> Fraction:
    """A length in inches.

    length_cm: the length in cm. convention: "exact" (1 in = 2.54 cm) or "nominal" (4 in = 10 cm,
    as some publishers print).

    >>> to_inches(Fraction(10), "nominal")
    Fraction(4, 1)
    """
    return length_cm / cm_per_inch(convention)


def cm_per_inch(convention: InchConvention) -> Fraction:
    """The centimetres of an inch.

    convention: "exact", or "nominal" where 4 in are 10 cm.

    >>> cm_per_inch("nominal")
    Fraction(5, 2)
    """
    return CM_PER_INCH if convention == "exact" else NOMINAL_CM_PER_INCH


def to_places(value: Fraction, places: int = 2) -> float:
    """A number for printing: so many decimals, halves away from zero.

    value: an exact number. places: decimals kept.

    >>> to_places(Fraction(1, 8)), to_places(Fraction(-1, 8))
    (0.13, -0.13)
    """
    scale: int = 10**places
    numerator, denominator = value.numerator, value.denominator
    if numerator < 0:
        return -((denominator - 2 * numerator * scale) // (2 * denominator)) / scale
    return (2 * numerator * scale + denominator) // (2 * denominator) / scale


def to_answer(
    length_cm: Fraction, convention: InchConvention = "exact", less_cm: Fraction | None = None
) -> tuple[float, float]:
    """A length as it is answered: cm and inches to two decimals, each from the exact value.

    length_cm: the length in cm. convention: how it becomes inches, as for `to_inches`. less_cm: what is taken from it.

    >>> to_answer(Fraction(10)), to_answer(Fraction(10), "nominal")
    ((10.0, 3.94), (10.0, 4.0))
    """
    # In whole numbers throughout and without a call for each, since an answer holds hundreds of lengths.
    numerator, denominator = length_cm.numerator, length_cm.denominator
    if less_cm is not None:
        over, under = less_cm.numerator, less_cm.denominator
        numerator, denominator = numerator * under - over * denominator, denominator * under
    inches, per_cm = INCHES_IN_CM[convention]
    twice = 2 * denominator
    if numerator < 0:
        return (
            -((denominator - 200 * numerator) // twice) / 100,
            -((denominator * per_cm - 200 * numerator * inches) // (twice * per_cm)) / 100,
        )
    return (
        (200 * numerator + denominator) // twice / 100,
        (200 * numerator * inches + denominator * per_cm) // (twice * per_cm) / 100,
    )


def is_within(most: Fraction, one: Fraction, other: Fraction) -> bool:
    """Whether two numbers lie no further apart than a third.

    >>> half = Fraction(1, 2)
    >>> is_within(half, Fraction(1, 3), Fraction(5, 6)), is_within(half, Fraction(1, 4), Fraction(1))
    (True, False)
    """
    # in whole numbers, since every measurement of every size is looked at
    one_under, other_under = one.denominator, other.denominator
    apart = abs(one.numerator * other_under - other.numerator * one_under)
    return apart * most.denominator <= most.numerator * one_under * other_under


def square_root(value: Fraction, places: int = 6) -> Fraction:
    """The square root of a number, rounded down to so many decimals.

    value: zero or more. places: decimals kept; the default is far finer than any printed length.

    Raises ValueError for a negative number.

    >>> square_root(Fraction(2), 4)
    Fraction(7071, 5000)
    """
    scale = 10**places
    return Fraction(isqrt(value.numerator * scale * scale // value.denominator), scale)


def hypotenuse(one: Fraction, other: Fraction, places: int = 6) -> Fraction:
    """The square root of the sum of two squares, rounded down as `square_root` rounds.

    >>> hypotenuse(Fraction(3, 2), Fraction(2))
    Fraction(5, 2)
    """
    (over, under), (other_over, other_under) = one.as_integer_ratio(), other.as_integer_ratio()
    scale: int = 10**places
    squares = (over * other_under) ** 2 + (other_over * under) ** 2
    return Fraction(isqrt(squares * scale * scale // (under * other_under) ** 2), scale)


def to_printed_decimal(value: int | Fraction, step: Fraction) -> str:
    """A number rounded to a step and written without trailing zeros.

    value: for instance a length in cm. step: what it is rounded to, such as half a centimetre.
    A tie goes up.

    >>> [to_printed_decimal(Fraction(length), Fraction(1, 2)) for length in ("101.11", "101.3")]
    ['101', '101.5']
    """
    return decimal_printer(step)(value)


def decimal_printer(step: Fraction) -> Callable[[int | Fraction], str]:
    """What prints numbers as `to_printed_decimal` does, for many of them.

    step: what they are rounded to.

    >>> list(map(decimal_printer(Fraction(1, 2)), (Fraction(1, 4), 3)))
    ['0.5', '3']
    """
    step_over, step_under = step.as_integer_ratio()
    twice_over, twice_under = 2 * step_over, 2 * step_under

    def printed(value: int | Fraction) -> str:
        over, under = value.numerator, value.denominator
        # as `nearest_whole` has it, without a call for each
        steps = (over * twice_under + under * step_over) // (under * twice_over)
        return _decimal(steps * step_over, step_under)

    return printed


@lru_cache(4096)
def _decimal(numerator: int, denominator: int) -> str:
    """A fraction as a decimal. What is printed is rounded, so that the same numbers come again and again."""
    whole, rest = divmod(numerator, denominator)
    if rest == 0:
        return str(whole)
    return f"{Decimal(numerator) / Decimal(denominator):f}"


def whole_parts(values: Sequence[Fraction]) -> list[int]:
    """Numbers as whole numbers of one part that they all share: these compare as they do, and far faster.

    >>> whole_parts([Fraction(1, 2), Fraction(2, 3), Fraction(2)])
    [3, 4, 12]
    """
    ratios = [value.as_integer_ratio() for value in values]
    parts = lcm(*[denominator for _, denominator in ratios])
    return [numerator * (parts // denominator) for numerator, denominator in ratios]


def nearest_whole(numerator: int, denominator: int) -> int:
    """The nearest whole number to a fraction, a tie upwards.

    numerator, denominator: of the fraction, the latter above zero.

    >>> nearest_whole(5, 2), nearest_whole(-5, 2)
    (3, -2)
    """
    return (2 * numerator + denominator) // (2 * denominator)
