"""What can be wrong with a request, as data.

Input that contradicts itself raises `ContradictionError`, which carries every wrong place at
once. A request that is sound but cannot be knitted in one size is not an error: its result
carries an `Impossible`, and the other sizes are computed. A right answer that deserves a word
carries a `Remark`.
"""

from __future__ import annotations

from collections.abc import Iterable, Sequence
from dataclasses import dataclass
from fractions import Fraction

Path = tuple[str | int, ...]
"""A place in a request: field names and zero-based indexes, as in ("sizes", 2, "rounds")."""


class GradingError(Exception):
    """Base of every error that the package raises on purpose."""


@dataclass(frozen=True, slots=True)
class Problem:
    """One wrong place in a request.

    path: where it is, from the request's root.
    detail: what is wrong there, in a sentence.
    """

    path: Path
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
class Nearest:
    """A change that alone would make the impossible possible.

    field: the request's field to change.
    value: what to set it to; a Fraction is a length in cm.
    """

    field: str
    value: int | str | Fraction


@dataclass(frozen=True, slots=True)
class Impossible:
    """Why a sound request cannot be knitted, and what would make it possible.

    reason: a sentence naming the limit and by how much it is missed.
    nearest: changes, each of which alone would do.
    """

    reason: str
    nearest: tuple[Nearest, ...] = ()


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
