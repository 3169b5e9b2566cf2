"""What can be wrong with a request, as data.

Input that contradicts itself raises `ContradictionError`, which carries every wrong place at
once. A request that is sound but cannot be knitted in one size is not an error: its result
carries an `Impossible`, and the other sizes are computed. A right answer that deserves a word
carries a `Remark`.
"""

from __future__ import annotations

from collections.abc import Iterable, Sequence
from dataclasses import dataclass, replace
from fractions import Fraction
from typing import Self

Path = tuple[str | int, ...]
"""A place in a request: field names and zero-based indexes, as in ("sizes", 2, "rounds")."""


class GradingError(Exception):
    """Base of every error that the package raises on purpose."""


@dataclass(frozen=True, slots=True)
class Place:
    """What is said about a place in a request.

    path: where it is, from the root of the request, or of the part of it that is looked at.
    """

    path: Path

    def under(self, *prefix: str | int) -> Self:
        """The same in the whole request, of which the part is at a prefix.

        >>> Problem(("rounds",), "is missing.").under("sizes", 2).path
        ('sizes', 2, 'rounds')
        """
        return replace(self, path=(*prefix, *self.path))


@dataclass(frozen=True, slots=True)
class Problem(Place):
    """One wrong place in a request.

    detail: what is wrong there, in a sentence.
    """

    detail: str


class ContradictionError(GradingError):
    """A request that is well formed but contradicts itself.

    problems: every wrong place, in the order of the request.

    >>> error = ContradictionError([Problem(("sizes", 0, "split"), "is smaller than the neck.")])
    >>> error.problems[0].path
    ('sizes', 0, 'split')
    """

    def __init__(self, problems: Sequence[Problem]) -> None:
        self.problems = tuple(problems)
        super().__init__("; ".join(problem.detail for problem in self.problems))


@dataclass(frozen=True, slots=True)
class Nearest(Place):
    """A change of one field that alone would make the impossible possible.

    value: what to set it to; a Fraction is a length in cm.
    """

    value: int | str | Fraction

    @property
    def field(self) -> str:
        """The path as answers have it.

        >>> Nearest(("yoke", "depth"), Fraction(20)).field
        'yoke.depth'
        """
        return ".".join(map(str, self.path))


@dataclass(frozen=True, slots=True)
class Impossible:
    """Why a sound request cannot be knitted, and what would make it possible.

    reason: a sentence naming the limit and by how much it is missed.
    nearest: changes, each of which alone would do. together: changes that do so together, where none does alone.
    """

    reason: str
    nearest: tuple[Nearest, ...] = ()
    together: tuple[Nearest, ...] = ()


@dataclass(frozen=True, slots=True)
class Remark:
    """A word of warning beside a right answer.

    code: stable, for programs. message: for people. size: the size's label where it concerns
    one size. path: the request's field that it is about, where there is one.
    """

    code: str
    message: str
    size: str | None = None
    path: Path | None = None


def raise_if_any(problems: Iterable[Problem]) -> None:
    """Raise a `ContradictionError` holding every problem, or return when there is none.

    >>> raise_if_any([])
    """
    found = tuple(problems)
    if found:
        raise ContradictionError(found)


def duplicate_labels(labels: Sequence[str], path: Path = ("sizes",)) -> list[Problem]:
    """A problem for each size whose label another size before it has.

    labels: in the order of the sizes. path: where the sizes stand in the request.

    >>> duplicate_labels(["S", "M", "S"])[0].path
    ('sizes', 2, 'label')
    """
    seen: set[str] = set()
    problems = []
    for index, label in enumerate(labels):
        if label in seen:
            problems.append(Problem((*path, index, "label"), f"{label!r} is another size's label already."))
        seen.add(label)
    return problems
