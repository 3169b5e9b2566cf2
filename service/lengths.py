"""Lengths as requests and answers have them: in the request's unit, and as centimetres and inches."""

from __future__ import annotations

from collections.abc import Iterator
from contextlib import contextmanager
from contextvars import ContextVar
from dataclasses import dataclass
from typing import Any, get_args

from grading_core.fraction import Fraction
from grading_core.units import USUAL_UNIT, InchConvention, Unit, to_answer, to_inches, to_places
from grading_core.unknown import unknown

UNITS: tuple[Unit, ...] = get_args(Unit)

REQUEST_UNIT: ContextVar[Unit] = ContextVar("request_unit", default=USUAL_UNIT)
"""The unit of every length in the request that is being answered."""


@contextmanager
def lengths_in(unit: Any) -> Iterator[None]:
    """Read and write lengths of a request in its unit while this lasts.

    unit: as it was sent; centimetres where it is missing. What is no unit leaves every length unknown.
    """
    token = REQUEST_UNIT.set(USUAL_UNIT if unit is None else unit if type(unit) is str and unit in UNITS else unknown())
    try:
        yield
    finally:
        REQUEST_UNIT.reset(token)


def in_request_unit(length_cm: Fraction, inch_places: int = 2) -> float:
    """A length as the request would have it.

    inch_places: decimals of inches; centimetres have two.

    >>> in_request_unit(Fraction(254, 10))
    25.4
    """
    if REQUEST_UNIT.get() == "in":
        return to_places(to_inches(length_cm), inch_places)
    return to_places(length_cm)


@dataclass(frozen=True, slots=True)
class LengthWriter:
    """Writes lengths by the inch convention of the request.

    without: the parts of the answer that are left out of it, by the names that fields carry.

    >>> LengthWriter("nominal")(Fraction(10))
    {'cm': 10.0, 'inch': 4.0}
    """

    convention: InchConvention
    without: frozenset[str] = frozenset()

    def __call__(self, length_cm: Fraction, less_cm: Fraction | None = None) -> dict[str, float]:
        """A length in cm as {"cm", "inch"}. less_cm: what is taken from it."""
        cm, inch = to_answer(length_cm, self.convention, less_cm)
        return {"cm": cm, "inch": inch}


NOT_IN_A_TABLE = frozenset(("size_instructions", "chart_rounds", "increase_rounds", "phases"))
"""Parts of an answer that are no quantities of a size."""


@dataclass(frozen=True, slots=True)
class ExactLengths(LengthWriter):
    """Leaves lengths exact and lists of rounds out, for a table that prints them itself."""

    without: frozenset[str] = NOT_IN_A_TABLE

    def __call__(self, length_cm: Fraction, less_cm: Fraction | None = None) -> Any:
        """The length in cm as it is."""
        return length_cm if less_cm is None else length_cm - less_cm
