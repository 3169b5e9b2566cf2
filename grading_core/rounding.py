"""How a length becomes a whole number of stitches or rows.

Every count in the package goes through a `CountRule`, so that how it was rounded is never
incidental. "A multiple of m plus p" is the trade's wording for the counts n with n mod m = p mod m.
"""

from __future__ import annotations

from dataclasses import dataclass
from typing import Literal

from grading_core.fraction import Fraction

Rounding = Literal["nearest", "up", "down"]


@dataclass(frozen=True, slots=True)
class CountRule:
    """A count must be a multiple of `multiple` plus `plus`, never less than zero.

    multiple: 1 or more. plus: 0 or more. rounding: "nearest" (a tie goes up), "up" or "down".

    >>> CountRule(4, 2).round(Fraction(248))
    250
    >>> CountRule(4, 2, "down").round(Fraction(2499, 10))
    246
    """

    multiple: int = 1
    plus: int = 0
    rounding: Rounding = "nearest"

    def round(self, value: Fraction) -> int:
        """The permitted count for an exact number of stitches or rows.

        value: the exact number. Where rounding down would go below zero, the smallest permitted
        count is taken.
        """
        return self.round_ratio(*value.as_integer_ratio())

    def round_ratio(self, numerator: int, denominator: int) -> int:
        """The same of a ratio of whole numbers, which needn't be in its lowest terms.

        >>> CountRule(4, 2).round_ratio(2 * 248, 2)
        250
        """
        multiple, remainder = self.multiple, self.plus % self.multiple
        # floor((value - remainder) / multiple), in whole numbers
        numerator -= remainder * denominator
        span = multiple * denominator
        if self.rounding == "down":
            steps = numerator // span
        elif self.rounding == "up":
            steps = -(-numerator // span)
        else:
            steps = (2 * numerator + span) // (2 * span)
        return max(steps, 0) * multiple + remainder

    def accepts(self, count: int) -> bool:
        """Whether a count fits the multiple.

        >>> CountRule(4, 2).accepts(250)
        True
        """
        return (count - self.plus) % self.multiple == 0


NEAREST = CountRule()
"""The default: the nearest whole number, a tie goes up."""
