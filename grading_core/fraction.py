"""Exact numbers: the standard library's fractions, whose commonest operations go straight to the point.

The standard class asks of every operand which kind of number it is, which costs more than the arithmetic and was a
fifth of a pullover's time. Here two fractions, or a fraction and an int, take a way of their own; all else goes the
standard way. Results are the same. Translations of the class to C would save a twelfth more; those there are lose
memory or overwrite it.
"""

from __future__ import annotations

import fractions
from math import gcd
from typing import TYPE_CHECKING, Any

_new = object.__new__


class StraightFraction(fractions.Fraction):
    """A standard fraction; with standard ones it computes and compares as they do, and sums and products are its like.

    >>> StraightFraction(1, 2) + fractions.Fraction(1, 3)
    Fraction(5, 6)
    """

    __slots__ = ()

    _numerator: int
    _denominator: int

    def __new__(cls, numerator: Any = 0, denominator: Any = None) -> StraightFraction:
        """A number, or the ratio of two, in any form that the standard class reads.

        numerator: int, str, float, Decimal or Fraction. denominator: an int or a Fraction, 1 by default.

        Raises what the standard class raises.
        """
        if type(numerator) is int:
            if denominator is None:
                return _made(numerator, 1)
            if type(denominator) is int and denominator:
                return _ratio(numerator, denominator)
        elif denominator is None and type(numerator) is StraightFraction:
            return numerator
        return _made(*fractions.Fraction(numerator, denominator).as_integer_ratio())

    def __repr__(self) -> str:
        return f"Fraction({self._numerator}, {self._denominator})"

    # the slots themselves: a property is a call
    numerator: Any = vars(fractions.Fraction)["_numerator"]
    denominator: Any = vars(fractions.Fraction)["_denominator"]

    def as_integer_ratio(self) -> tuple[int, int]:
        """Numerator and denominator."""
        return self._numerator, self._denominator

    def __add__(self, other: Any) -> Any:
        if type(other) is StraightFraction:
            below, below_other = self._denominator, other._denominator
            return _ratio(self._numerator * below_other + other._numerator * below, below * below_other)
        if type(other) is int:
            return _made(self._numerator + other * self._denominator, self._denominator)
        return _alike(super().__add__(other))

    def __radd__(self, other: Any) -> Any:
        if type(other) is int:
            return _made(other * self._denominator + self._numerator, self._denominator)
        return _alike(super().__radd__(other))

    def __sub__(self, other: Any) -> Any:
        if type(other) is StraightFraction:
            below, below_other = self._denominator, other._denominator
            return _ratio(self._numerator * below_other - other._numerator * below, below * below_other)
        if type(other) is int:
            return _made(self._numerator - other * self._denominator, self._denominator)
        return _alike(super().__sub__(other))

    def __rsub__(self, other: Any) -> Any:
        if type(other) is int:
            return _made(other * self._denominator - self._numerator, self._denominator)
        return _alike(super().__rsub__(other))

    def __mul__(self, other: Any) -> Any:
        if type(other) is StraightFraction:
            return _ratio(self._numerator * other._numerator, self._denominator * other._denominator)
        if type(other) is int:
            return _ratio(self._numerator * other, self._denominator)
        return _alike(super().__mul__(other))

    def __rmul__(self, other: Any) -> Any:
        if type(other) is int:
            return _ratio(other * self._numerator, self._denominator)
        return _alike(super().__rmul__(other))

    def __truediv__(self, other: Any) -> Any:
        if type(other) is StraightFraction and other._numerator:
            return _ratio(self._numerator * other._denominator, self._denominator * other._numerator)
        if type(other) is int and other:
            return _ratio(self._numerator, self._denominator * other)
        return _alike(super().__truediv__(other))

    def __rtruediv__(self, other: Any) -> Any:
        if type(other) is int and self._numerator:
            return _ratio(other * self._denominator, self._numerator)
        return _alike(super().__rtruediv__(other))

    def __mod__(self, other: Any) -> Any:
        return _alike(super().__mod__(other))

    def __rmod__(self, other: Any) -> Any:
        return _alike(super().__rmod__(other))

    def __pow__(self, other: Any) -> Any:
        return _alike(super().__pow__(other))

    def __pos__(self) -> StraightFraction:
        return self

    def __neg__(self) -> StraightFraction:
        return _made(-self._numerator, self._denominator)

    def __abs__(self) -> StraightFraction:
        return _made(abs(self._numerator), self._denominator)

    def __round__(self, ndigits: Any = None) -> Any:
        return _alike(super().__round__(ndigits))

    def __floor__(self) -> int:
        return self._numerator // self._denominator

    def __ceil__(self) -> int:
        return -(-self._numerator // self._denominator)

    def __bool__(self) -> bool:
        return self._numerator != 0

    def __eq__(self, other: object) -> bool:
        if type(other) is StraightFraction:
            return self._numerator == other._numerator and self._denominator == other._denominator
        return super().__eq__(other)

    __hash__ = fractions.Fraction.__hash__

    def __lt__(self, other: Any) -> bool:
        if type(other) is StraightFraction:
            return self._numerator * other._denominator < other._numerator * self._denominator
        if type(other) is int:
            return self._numerator < other * self._denominator
        return super().__lt__(other)

    def __le__(self, other: Any) -> bool:
        if type(other) is StraightFraction:
            return self._numerator * other._denominator <= other._numerator * self._denominator
        if type(other) is int:
            return self._numerator <= other * self._denominator
        return super().__le__(other)

    def __gt__(self, other: Any) -> bool:
        if type(other) is StraightFraction:
            return self._numerator * other._denominator > other._numerator * self._denominator
        if type(other) is int:
            return self._numerator > other * self._denominator
        return super().__gt__(other)

    def __ge__(self, other: Any) -> bool:
        if type(other) is StraightFraction:
            return self._numerator * other._denominator >= other._numerator * self._denominator
        if type(other) is int:
            return self._numerator >= other * self._denominator
        return super().__ge__(other)


def _made(numerator: int, denominator: int) -> StraightFraction:
    """A number that is in lowest terms."""
    made = _new(StraightFraction)
    made._numerator = numerator
    made._denominator = denominator
    return made


def _ratio(numerator: int, denominator: int) -> StraightFraction:
    """A number in lowest terms. denominator: not 0."""
    common = gcd(numerator, denominator)
    if denominator < 0:
        common = -common
    made = _new(StraightFraction)
    made._numerator = numerator // common
    made._denominator = denominator // common
    return made


def _alike(result: Any) -> Any:
    """What the standard class makes, as this one has it where it is a fraction."""
    if isinstance(result, fractions.Fraction):
        return _made(*result.as_integer_ratio())
    return result


# Programs that use the core may send standard fractions, and so do its tests.
if TYPE_CHECKING:
    from fractions import Fraction
else:
    Fraction = StraightFraction

__all__ = ["Fraction", "StraightFraction"]
