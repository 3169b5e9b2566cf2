"""What can be wrong with a request, as data.

Input that contradicts itself raises `ContradictionError`, which carries every wrong place at
once. A request that is sound but cannot be knitted in one size is not an error: its result
carries an `Impossible`, and the other sizes are computed. A right answer that deserves a word
carries a `Remark`.

Contradictions are found by checks. They go on where they can: what a check makes of a part is `unknown` where the part
is wrong, and a check that would tell something from an unknown value ends without a word. So every place that is wrong
by itself is found in one go, and none that is only wrong because another is.
"""

from __future__ import annotations

from collections.abc import Callable, Generator, Iterable, Sequence
from dataclasses import dataclass, replace
from functools import wraps
from typing import ParamSpec, Self, TypeVar

from grading_core.codes import ProblemCode, ReasonCode, WarningCode
from grading_core.fraction import Fraction
from grading_core.sentences import Sentence
from grading_core.unknown import UnknownError, is_unknown, unknown

Asked = ParamSpec("Asked")
Made = TypeVar("Made")

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

        >>> Problem(("rounds",), ProblemCode.ROUND_OUT_OF_RANGE, "is too large.").under("sizes", 2).path
        ('sizes', 2, 'rounds')
        """
        return replace(self, path=(*prefix, *self.path))


@dataclass(frozen=True, slots=True)
class Problem(Place):
    """One wrong place in a request.

    code: which kind of contradiction, for programs. detail: what is wrong there, in a sentence.
    """

    code: ProblemCode
    detail: str


class ContradictionError(GradingError):
    """A request that is well formed but contradicts itself.

    problems: every wrong place, in the order of the request.

    >>> problem = Problem(("sizes", 0, "split"), ProblemCode.SPLIT_BELOW_NECK, "is smaller than the neck.")
    >>> ContradictionError([problem]).problems[0].path
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

    code: which kind of obstacle, for programs. reason: names the limit and by how much it is missed.
    nearest: changes, each of which alone would do. together: changes that do so together, where none does alone.
    """

    code: ReasonCode
    reason: Sentence
    nearest: tuple[Nearest, ...] = ()
    together: tuple[Nearest, ...] = ()


@dataclass(frozen=True, slots=True)
class Remark:
    """A word of warning beside a right answer.

    code: of what is warned, for programs. message: for people. size: the size's label where it concerns
    one size. path: the request's field that it is about, where there is one.
    """

    code: WarningCode
    message: Sentence
    size: str | None = None
    path: Path | None = None


Check = Generator[Problem, None, Made]
"""Yields the problems of a part of a request, and returns what it made of the part in finding them."""


def check(find: Callable[Asked, Check[Made]]) -> Callable[Asked, Check[Made]]:
    """A check that ends where it comes to an unknown value, and then returns one.

    find: yields the problems. It raises UnknownError where a problem leaves it nothing to return.

    >>> @check
    ... def too_long(rounds: int, most: int) -> Check[None]:
    ...     if rounds > most:
    ...         yield Problem(("rounds",), ProblemCode.TOO_MANY_ROUNDS, "are too many.")
    >>> len(list(too_long(30, 20))), len(list(too_long(30, unknown())))
    (1, 0)
    """

    @wraps(find)
    def find_known(*args: Asked.args, **named: Asked.kwargs) -> Check[Made]:
        try:
            return (yield from find(*args, **named))
        except UnknownError:
            made: Made = unknown()
            return made

    return find_known


def under(prefix: Path, found: Check[Made]) -> Check[Made]:
    """A check of a part, with its problems where they stand in the whole request.

    prefix: where the part stands. found: the check.
    """
    while True:
        try:
            problem = next(found)
        except StopIteration as end:
            made: Made = end.value
            return made
        yield problem.under(*prefix)


def places(found: Check[object]) -> Check[list[Path]]:
    """A check that makes the places of its problems.

    found: the check.
    """
    _, paths = yield from placed(found)
    return paths


def placed(found: Check[Made]) -> Check[tuple[Made, list[Path]]]:
    """A check that makes the places of its problems beside what it makes.

    found: the check.
    """
    paths: list[Path] = []
    while True:
        try:
            problem = next(found)
        except StopIteration as end:
            return end.value, paths
        paths.append(problem.path)
        yield problem


def sound(found: Check[Made]) -> Made:
    """What a check made of a request without problems.

    Raises ContradictionError with every problem that the check yields.
    """
    problems = []
    while True:
        try:
            problems.append(next(found))
        except StopIteration as end:
            raise_if_any(problems)
            made: Made = end.value
            return made


def made(found: Check[Made]) -> Made:
    """What a check makes of a request whose problems are told elsewhere.

    found: the check.
    """
    while True:
        try:
            next(found)
        except StopIteration as end:
            of: Made = end.value
            return of


def raise_if_any(problems: Iterable[Problem]) -> None:
    """Raise a `ContradictionError` holding every problem, or return when there is none.

    >>> raise_if_any([])
    """
    found = tuple(problems)
    if found:
        raise ContradictionError(found)


def duplicate_labels(labels: Sequence[str], path: Path = ("sizes",), within: Path = ("label",)) -> list[Problem]:
    """A problem for each size whose label another size before it has.

    labels: in the order of the sizes; unknown ones are passed over. path: where the sizes stand in the request. within:
    where the label stands in each.

    >>> duplicate_labels(["S", "M", "S"])[0].path
    ('sizes', 2, 'label')
    """
    seen: set[str] = set()
    problems = []
    for index, label in enumerate(labels):
        if is_unknown(label):
            continue
        if label in seen:
            detail = f"{label!r} is another size's label already."
            problems.append(Problem((*path, index, *within), ProblemCode.DUPLICATE_LABEL, detail))
        seen.add(label)
    return problems
