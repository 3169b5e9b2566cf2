"""How numbers are printed: their steps, the decimal mark, fractions of inches, and what stands where there is none.

As with the standard library's decimal context, the settings hold for as long as a block lasts: a number is printed deep
inside a sentence, and nothing that is computed depends on how.
"""

from __future__ import annotations

from collections.abc import Iterator
from contextlib import contextmanager
from contextvars import ContextVar
from dataclasses import dataclass
from fractions import Fraction
from math import gcd
from typing import Literal

from grading_core.units import INCHES_IN_CM, USUAL_INCH_CONVENTION, InchConvention, nearest_whole, to_printed_decimal

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

    def cm(self, length_cm: int | Fraction) -> str:
        """A length in cm."""
        return self.decimal(length_cm, self.cm_step)

    def inches(self, length_cm: int | Fraction) -> str:
        """A length of so many cm in inches, as a knitter reads it.

        >>> tenths, characters = Printing(inch_step=Fraction(1, 10)), Printing(fractions="unicode")
        >>> tenths.inches(Fraction(101)), characters.inches(Fraction(101)) == "39\\N{VULGAR FRACTION THREE QUARTERS}"
        ('39.8', True)
        """
        step, (inches, cm) = self.inch_step, INCHES_IN_CM[self.inch_convention]
        finest = step.denominator
        if finest > FINEST_FRACTION or finest & (finest - 1):
            return self.decimal(Fraction(length_cm * inches) / cm, step)
        # in whole numbers, since a table prints hundreds of lengths
        above, below = length_cm.as_integer_ratio()
        steps = nearest_whole(above * inches * finest, below * cm * step.numerator)
        return self._mixed(steps * step.numerator, finest)

    def fractional(self, value: int | Fraction) -> str:
        """A number with its fraction, or with decimals where no 64th of an inch is as fine.

        >>> Printing().fractional(Fraction(145, 4)), Printing().fractional(Fraction(363, 10))
        ('36 1/4', '36.3')
        """
        exact = FINEST_FRACTION % value.denominator == 0
        return self._mixed(value.numerator, value.denominator) if exact else self.decimal(value)

    def _mixed(self, parts: int, finest: int) -> str:
        """So many parts of an inch, of which it has so many."""
        whole, rest = divmod(abs(parts), finest)
        sign = "-" if parts < 0 else ""
        if rest == 0:
            return f"{sign}{whole}"
        common = gcd(rest, finest)
        fraction = self._fraction(rest // common, finest // common)
        return f"{sign}{whole or ''}{' ' if whole and self.fractions == 'plain' else ''}{fraction}"

    def decimal(self, value: int | Fraction, step: Fraction = Fraction(1, 100)) -> str:
        """A number to the nearest step, without trailing zeros.

        >>> Printing().decimal(Fraction(45, 2)), Printing(decimal_mark=",").decimal(Fraction(45, 2))
        ('22.5', '22,5')
        """
        return to_printed_decimal(value, step).replace(".", self.decimal_mark)

    def _fraction(self, numerator: int, denominator: int) -> str:
        if self.fractions == "plain":
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
