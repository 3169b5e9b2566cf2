"""A published figure: one number, a range, or a range that is open at one end."""

from __future__ import annotations

from dataclasses import dataclass

from grading_core.fraction import Fraction


@dataclass(frozen=True, slots=True)
class Range:
    """What a table prints in one cell, exactly. A single number has low = high.

    low, high: None at an end that the publication leaves open.
    """

    low: Fraction | None
    high: Fraction | None

    @property
    def middle(self) -> Fraction:
        """Halfway between the ends.

        Raises ValueError for a range with an open end.

        >>> figure("36-38").middle
        Fraction(37, 1)
        """
        if self.low is None or self.high is None:
            raise ValueError("a range with an open end has no middle")
        return (self.low + self.high) / 2

    def times(self, factor: Fraction) -> Range:
        """The same in another unit; an open end stays open.

        factor: of the units.

        >>> figure("6-").times(Fraction(1, 2))
        Range(low=None, high=Fraction(3, 1))
        """
        low, high = (None if end is None else end * factor for end in (self.low, self.high))
        return Range(low, high)


def figure(text: str) -> Range:
    """A cell as it is printed.

    text: "9.75", a range "36-38", or "6+" and "6-" for six and more, six and fewer.

    >>> figure("9.75").high, figure("6+").high
    (Fraction(39, 4), None)
    """
    if text.endswith("+"):
        return Range(Fraction(text[:-1]), None)
    if text.endswith("-"):
        return Range(None, Fraction(text[:-1]))
    low, _, high = text.partition("-")
    return Range(Fraction(low), Fraction(high or low))
