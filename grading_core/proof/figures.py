"""The numbers of a proof, as whole numbers of grains: what each printed one can stand for."""

from __future__ import annotations

from collections.abc import Iterable, Mapping
from functools import lru_cache
from typing import NamedTuple

from grading_core.fraction import Fraction

GRAINS = 63_000_000
"""To one. Decimals to the sixth, fractions down to a 64th, thirds, sevenths and ninths are whole numbers of them, and
a proof adds thousands of numbers."""


class Key(NamedTuple):
    """A row of the table, and whether its numbers are the inches that are printed beside its centimetres."""

    part: str
    item: str
    inches: bool = False


@lru_cache(maxsize=1024)
def key_of(part: str, item: str) -> Key:
    """The key of a row that a pullover's table has: one object for all that name it, which is found at once.

    part, item: as that table has them.

    >>> key_of("neck", "back") is key_of("neck", "back")
    True
    """
    return Key(part, item)


class Numbers(NamedTuple):
    """The numbers of a row.

    values: of each size in grains, None where it has none. half: half the step that they were rounded to, 0 where
    nothing was rounded. unit: what they count.
    """

    values: tuple[int | None, ...]
    half: int
    unit: str


class Figure(NamedTuple):
    """A number of one size, in grains: what is printed, and how far from it what was meant may lie."""

    printed: int
    half: int = 0


Figures = Mapping[Key, Figure]
"""Of one size, without those that it doesn't have."""


def grains(value: float | Fraction) -> int:
    """A number in grains.

    value: as it was written down, with at most six decimals, or a fraction.

    >>> grains(92.5) == 92 * GRAINS + GRAINS // 2
    True
    """
    return round(value * GRAINS)


def all_grains(values: Iterable[float | Fraction | None]) -> tuple[int | None, ...]:
    """Many numbers in grains, None for None.

    values: as `grains` takes them.

    >>> all_grains((92, 92.5, None)) == (grains(92), grains(92.5), None)
    True
    """
    return tuple(
        [value * GRAINS if type(value) is int else None if value is None else round(value * GRAINS) for value in values]
    )


def number(value: int) -> Fraction:
    """The number of so many grains.

    >>> number(grains(92.5))
    Fraction(185, 2)
    """
    return Fraction(value, GRAINS)


def as_printed(value: int, half: int) -> int:
    """What a length would be printed as.

    value: in grains. half: of the step to which lengths of its row are rounded.
    """
    return (value + half) // (2 * half) * (2 * half) if half else value


_STEPS_CM = tuple([grains(step) for step in (5, 1, 0.5, 0.25, 0.1, 0.05, 0.01, 0.001)])
_STEPS_INCH = (
    *[GRAINS // parts for parts in (1, 2, 4, 8, 16, 32, 64)],
    *[grains(step) for step in (0.1, 0.05, 0.01, 0.001)],
)
_MANY = 12
"""Fewer lengths in cm may all be fives without having been rounded to them: busts, an ease of 10. Yarn mostly was."""

_DIFFERENT = 3
"""Fewer numbers of a row may be multiples of a step by chance."""

_STRAY = 10
"""One number in so many may be none of the step's, for it may be the one that is wrong."""


def printed_step(values: Iterable[int], *, unit: str = "cm") -> int:
    """The step that printed lengths were rounded to: the coarsest that nearly all of them are multiples of.

    values: of a whole table in grains, since a few of one row may all be multiples of what they were not rounded to.
    unit: of them.

    >>> number(printed_step(map(grains, (92.5, 104, 114.5))))
    Fraction(1, 2)
    """
    told = list(values)
    steps = _STEPS_INCH if unit == "inch" else _STEPS_CM
    if unit == "cm" and len(told) < _MANY:
        steps = steps[1:]
    few = len(told) // _STRAY
    return next((step for step in steps if _is_step(step, told, few)), steps[-1])


def step_of_row(values: Iterable[int | None], step: int) -> int:
    """The step of one row: many patterns print a width to a quarter of an inch and a length beside it to half an inch.

    values: in grains. step: that of all rows; a coarser one that all numbers of the row are multiples of is hers, where
    three sizes or more have a number of their own.

    >>> halves, quarter = [grains(length) for length in (14, 14.5, 15)], GRAINS // 4
    >>> number(step_of_row(halves, quarter)), number(step_of_row(halves[:2], quarter))
    (Fraction(1, 2), Fraction(1, 4))
    """
    if step >= GRAINS or len(told := {*values} - {None}) < _DIFFERENT:
        return step
    return next((each for each in (GRAINS, GRAINS // 2) if each > step and _is_step(each, told, 0)), step)  # type: ignore[arg-type]


def _is_step(step: int, values: Iterable[int], few: int) -> bool:
    """Whether all values but a few are its multiples."""
    stray = 0
    for value in values:
        if value % step:
            stray += 1
            if stray > few:
                return False
    return True
