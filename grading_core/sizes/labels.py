"""The order of sizes that their labels tell.

Letter sizes (XS, S, M, L, XL, 2X ...) and labels that differ by their numbers (34, 36; 6 months,
12 months; 2-4 years, 4-6 years) say which size is the larger, in whatever order they are sent. That
the letters rank so is common practice, no source.
"""

from __future__ import annotations

import re
from functools import lru_cache

from grading_core.fraction import Fraction

Rank = tuple[int | Fraction, ...]

_LETTERS = re.compile(r"(?:(?P<xs>X*)(?P<letter>[SML])|(?P<times>\d{1,2})X(?P<after>[SL]?))\Z")
_NUMBER = re.compile(r"\d+(?:\.\d+)?")


@lru_cache(maxsize=128)
def label_ranks(labels: tuple[str, ...]) -> tuple[Rank, ...] | None:
    """How the labels rank, or None where they tell no common order. Kept, since few sets of labels are in use.

    labels: of all sizes. Two labels may rank alike (XL and 1X).

    >>> ranks = label_ranks(("2X", "S", "XL"))
    >>> ranks[1] < ranks[2] < ranks[0]
    True
    >>> label_ranks(("short", "tall")) is None
    True
    """
    letters = [_letter_rank(label.strip().upper()) for label in labels]
    if all(letters):
        return tuple(rank for rank in letters if rank)
    if len({_NUMBER.sub("#", label) for label in labels}) == 1 and "#" not in labels:
        numbers = [tuple(map(_number, _NUMBER.findall(label))) for label in labels]
        return tuple(numbers) if all(numbers) else None
    return None


def _number(text: str) -> int | Fraction:
    return Fraction(text) if "." in text else int(text)


def _letter_rank(label: str) -> Rank | None:
    match = _LETTERS.match(label)
    if not match:
        return None
    steps = 1 + (int(match["times"]) if match["times"] else len(match["xs"]))
    letter = match["letter"] or match["after"] or "L"
    if letter == "M":
        return (0,) if steps == 1 else None
    return (steps if letter == "L" else -steps,)
