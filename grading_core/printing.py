"""How numbers are printed: their steps, the decimal mark, fractions of inches, and what stands where there is none.

As with the standard library's decimal context, the settings hold for as long as a block lasts: a number is printed deep
inside a sentence, and nothing that is computed depends on how.
"""

from __future__ import annotations

from collections.abc import Callable, Iterator
from contextlib import contextmanager
from contextvars import ContextVar
from dataclasses import dataclass
from functools import lru_cache
from math import gcd
from typing import Literal

from grading_core.fraction import Fraction
from grading_core.units import (
    INCHES_IN_CM,
    USUAL_INCH_CONVENTION,
    InchConvention,
    decimal_printer,
    nearest_whole,
    to_printed_decimal,
)

DecimalMark = Literal[".", ","]
FractionStyle = Literal["plain", "unicode"]

DASH = "\u2013"
"""What stands where a size has no number."""

FINEST_FRACTION = 64
"""An inch is parted into halves, quarters and so on, down to this; another step is printed as a decimal."""

_VULGAR = {
    (1, 2): "\u00bd", (1, 4): "\u00bc", (3, 4): "\u00be",
    (1, 8): "\u215b", (3, 8): "\u215c", (5, 8): "\u215d", (7, 8): "\u215e",
}  # fmt: skip
_RAISED = str.maketrans("0123456789", "\u2070\u00b9\u00b2\u00b3\u2074\u2075\u2076\u2077\u2078\u2079")
_LOWERED = str.maketrans("0123456789", "\u2080\u2081\u2082\u2083\u2084\u2085\u2086\u2087\u2088\u2089")
_SLASH = "\u2044"


@dataclass(frozen=True, slots=True, kw_only=True)
class Printing:
    """How numbers are printed.

    cm_step, inch_step: to what lengths are rounded, a tie upwards. decimal_mark: between a number and its decimals.
    fractions: of inches, "plain" for 15 3/4 or "unicode" for the same with one character. missing: stands where a
    size has no number. inch_convention: how cm become inches.

    >>> length_cm = Fraction(4001, 100)
    >>> Printing().cm(length_cm), Printing().inches(length_cm)
    ('40', '15 3/4')
    >>> Printing(cm_step=Fraction(1, 100), decimal_mark=",").cm(length_cm)
    '40,01'
    """

    cm_step: Fraction = Fraction(1, 2)
    inch_step: Fraction = Fraction(1, 4)
    decimal_mark: DecimalMark = "."
    fractions: FractionStyle = "plain"
    missing: str = DASH
    inch_convention: InchConvention = USUAL_INCH_CONVENTION

    @property
    def cm(self) -> Callable[[int | Fraction], str]:
        """What prints a length in cm: got once for a run of them."""
        write, mark = decimal_printer(self.cm_step), self.decimal_mark
        return write if mark == "." else lambda length_cm: write(length_cm).replace(".", mark)

    @property
    def inches(self) -> Callable[[int | Fraction], str]:
        """What prints a length of so many cm in inches, as a knitter reads it: got once for a run of them.

        >>> tenths, characters = Printing(inch_step=Fraction(1, 10)), Printing(fractions="unicode")
        >>> tenths.inches(Fraction(101)), characters.inches(Fraction(101)) == "39\\N{VULGAR FRACTION THREE QUARTERS}"
        ('39.8', True)
        """
        inches, cm = INCHES_IN_CM[self.inch_convention]
        step_over, finest = self.inch_step.as_integer_ratio()
        if finest > FINEST_FRACTION or finest & (finest - 1):
            return lambda length_cm: self.decimal(Fraction(length_cm * inches) / cm, self.inch_step)
        # in whole numbers, since a table prints hundreds of lengths
        steps_over, steps_under, style = inches * finest, cm * step_over, self.fractions

        def printed(length_cm: int | Fraction) -> str:
            over, under = length_cm.numerator * steps_over, length_cm.denominator * steps_under
            return _mixed(nearest_whole(over, under) * step_over, finest, style)

        return printed

    def fractional(self, value: int | Fraction) -> str:
        """A number with its fraction, or with decimals where no 64th of an inch is as fine.

        >>> Printing().fractional(Fraction(145, 4)), Printing().fractional(Fraction(363, 10))
        ('36 1/4', '36.3')
        """
        exact = FINEST_FRACTION % value.denominator == 0
        return _mixed(value.numerator, value.denominator, self.fractions) if exact else self.decimal(value)

    def decimal(self, value: int | Fraction, step: Fraction = Fraction(1, 100)) -> str:
        """A number to the nearest step, without trailing zeros.

        >>> Printing().decimal(Fraction(45, 2)), Printing(decimal_mark=",").decimal(Fraction(45, 2))
        ('22.5', '22,5')
        """
        printed = to_printed_decimal(value, step)
        return printed if self.decimal_mark == "." else printed.replace(".", self.decimal_mark)


@lru_cache(4096)
def _mixed(parts: int, finest: int, style: FractionStyle) -> str:
    """So many parts of an inch, of which it has so many."""
    whole, rest = divmod(abs(parts), finest)
    sign = "-" if parts < 0 else ""
    if rest == 0:
        return f"{sign}{whole}"
    common = gcd(rest, finest)
    fraction = _fraction(rest // common, finest // common, style)
    return f"{sign}{whole or ''}{' ' if whole and style == 'plain' else ''}{fraction}"


def _fraction(numerator: int, denominator: int, style: FractionStyle) -> str:
    if style == "plain":
        return f"{numerator}/{denominator}"
    parts = str(numerator).translate(_RAISED), str(denominator).translate(_LOWERED)
    return _VULGAR.get((numerator, denominator)) or _SLASH.join(parts)


_USUAL = Printing()
_CURRENT: ContextVar[Printing] = ContextVar("printing", default=_USUAL)


@contextmanager
def printed_as(printing: Printing) -> Iterator[None]:
    """Print so while this lasts.

    >>> with printed_as(Printing(missing="x")):
    ...     printing().missing
    'x'
    """
    token = _CURRENT.set(printing)
    try:
        yield
    finally:
        _CURRENT.reset(token)


def printing() -> Printing:
    """How numbers are printed now; as `Printing()` has it where nothing else is said."""
    return _CURRENT.get()
