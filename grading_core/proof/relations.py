"""What holds between the numbers of a pullover: sums that close, lengths that counts come to, rounds that suffice.

Most are linear: a sum of numbers, each so many times, lies between two bounds. Each is judged with what the printed
numbers can stand for, so that a right pattern keeps all of them however coarsely it is printed.
"""

from __future__ import annotations

from collections.abc import Iterable, Mapping, Sequence
from dataclasses import dataclass, field
from functools import cache
from itertools import repeat
from math import lcm
from operator import add, mul, sub
from typing import NamedTuple, Protocol

from grading_core.codes import ProofCode
from grading_core.fraction import Fraction
from grading_core.proof.columns import BOUND_BITS, FACTOR_BITS, Columns
from grading_core.proof.figures import GRAINS, Figures, Key, number
from grading_core.rounding import CountRule

Term = tuple[Key, Fraction | int]
"""A number, and how many times it stands in a sum."""


class Span(NamedTuple):
    """What a number may be, in grains. least, most: None where there is no bound."""

    least: int | None
    most: int | None


class Judged(NamedTuple):
    """In how many sizes a relation was computed, and the places of those in which it doesn't hold."""

    times: int
    broken: Sequence[int]


@cache
def _all_hold(sizes: int) -> Judged:
    """What most relations are judged as."""
    return Judged(sizes, ())


class Relation(Protocol):
    """What holds between numbers of one size."""

    @property
    def code(self) -> ProofCode:
        """What it is called."""

    @property
    def keys(self) -> tuple[Key, ...]:
        """Of its numbers."""

    def judged(self, columns: Columns) -> Judged:
        """In which sizes it doesn't hold. columns: that have all its numbers."""

    def holds(self, figures: Figures) -> bool:
        """Whether it holds in a size. figures: that have all its numbers."""

    def implied(self, key: Key, figures: Figures) -> Span | None:
        """What one of the numbers may be, going by the others; None where they don't tell."""


@dataclass(frozen=True, slots=True, kw_only=True)
class Linear:
    """The sum of some numbers, each so many times, lies between two bounds.

    times: how often each stands in it, by number. least, most: of the sum in grains; None where there is no bound.
    """

    code: ProofCode
    times: Mapping[Key, int]
    least: int | None
    most: int | None
    keys: tuple[Key, ...] = field(init=False, repr=False, compare=False)
    _short: bool = field(init=False, repr=False, compare=False)

    def __post_init__(self) -> None:
        object.__setattr__(self, "keys", tuple(self.times))
        bounds = [bound for bound in (self.least, self.most) if bound is not None]
        factors = sum(map(abs, self.times.values())).bit_length() <= FACTOR_BITS
        object.__setattr__(self, "_short", factors and all(bound.bit_length() <= BOUND_BITS for bound in bounds))

    def judged(self, columns: Columns) -> Judged:
        """In which sizes the sum can't lie between the bounds."""
        if self._short and columns.lies_within(self.times, self.least, self.most):
            return _all_hold(columns.sizes)
        places, numbers = complete([columns[key].values for key in self.keys])
        sums: Iterable[int] = repeat(0, len(places))
        slack = 0
        for (key, times), column in zip(self.times.items(), numbers, strict=True):
            sums = added(sums, times, column)
            slack += abs(times) * columns[key].half
        low = None if self.least is None else self.least - slack
        high = None if self.most is None else self.most + slack
        broken = [
            place
            for place, total in zip(places, sums, strict=True)
            if (low is not None and total < low) or (high is not None and total > high)
        ]
        return Judged(len(places), broken)

    def holds(self, figures: Figures) -> bool:
        """Whether the sum can lie between the bounds."""
        total, slack = self._sum(figures)
        return (self.most is None or total - slack <= self.most) and (self.least is None or total + slack >= self.least)

    def implied(self, key: Key, figures: Figures) -> Span | None:
        """What a number may be, going by the others."""
        own = self.times[key]
        total, slack = self._sum(figures)
        total -= own * figures[key].printed
        slack -= abs(own) * figures[key].half
        low = None if self.least is None else self.least - total - slack
        high = None if self.most is None else self.most - total + slack
        if own < 0:
            own, low, high = -own, None if high is None else -high, None if low is None else -low
        # a part of a grain more, since a length need not be whole grains
        return Span(None if low is None else low // own, None if high is None else -(-high // own))

    def _sum(self, figures: Figures) -> tuple[int, int]:
        """The sum of what is printed, and how far from it what was meant may lie."""
        total = slack = 0
        for key, times in self.times.items():
            printed, half = figures[key]
            total += times * printed
            slack += abs(times) * half
        return total, slack


def linear(code: ProofCode, *terms: Term, least: int | None = 0, most: int | None = 0) -> Linear:
    """A linear relation in whole numbers.

    terms: its sum. least, most: its bounds; None where there is none.
    """
    scale = lcm(*[times.denominator for _, times in terms])
    return Linear(
        code=code,
        times={key: times.numerator * (scale // times.denominator) for key, times in terms},
        least=None if least is None else least * scale * GRAINS,
        most=None if most is None else most * scale * GRAINS,
    )


@dataclass(frozen=True, slots=True, kw_only=True)
class Multiple:
    """A count is one that a rule permits."""

    code: ProofCode
    key: Key
    rule: CountRule

    @property
    def keys(self) -> tuple[Key, ...]:
        """Of the count."""
        return (self.key,)

    def judged(self, columns: Columns) -> Judged:
        """In which sizes it isn't."""
        places, (counts,) = complete([columns[self.key].values])
        return Judged(len(places), [p for p, count in zip(places, counts, strict=True) if not self._accepts(count)])

    def holds(self, figures: Figures) -> bool:
        """Whether it is."""
        return self._accepts(figures[self.key].printed)

    def implied(self, key: Key, figures: Figures) -> Span | None:
        """The nearest count that the rule permits."""
        nearest = CountRule(self.rule.multiple, self.rule.plus).round(number(figures[key].printed)) * GRAINS
        return Span(nearest, nearest)

    def _accepts(self, count: int) -> bool:
        return self.rule.accepts(count // GRAINS)


@dataclass(frozen=True, slots=True, kw_only=True)
class Largest:
    """A count is the largest of some sums. of: each sum's numbers, and how often each stands in it."""

    code: ProofCode
    key: Key
    of: tuple[Mapping[Key, int], ...]
    keys: tuple[Key, ...] = field(init=False, repr=False, compare=False)

    def __post_init__(self) -> None:
        object.__setattr__(self, "keys", tuple(dict.fromkeys((self.key, *(key for terms in self.of for key in terms)))))

    def judged(self, columns: Columns) -> Judged:
        """In which sizes it isn't."""
        places, numbers = complete([columns[key].values for key in self.keys])
        told = dict(zip(self.keys, numbers, strict=True))
        sums = []
        for terms in self.of:
            of_terms: Iterable[int] = repeat(0, len(places))
            for key, times in terms.items():
                of_terms = added(of_terms, times, told[key])
            sums.append(of_terms)
        counted = zip(places, told[self.key], map(max, *sums), strict=True)
        return Judged(len(places), [place for place, count, largest in counted if count != largest])

    def holds(self, figures: Figures) -> bool:
        """Whether it is."""
        return self._holds({key: figures[key].printed for key in self.keys})

    def implied(self, key: Key, figures: Figures) -> Span | None:
        """The largest; of the others that one may be more, or less, which makes it so."""
        printed = {each: figures[each].printed for each in self.keys}
        if key == self.key:
            largest = self._largest(printed)
            return Span(largest, largest)
        wanted = printed[self.key]
        for terms in self.of:
            if key in terms:
                rest = _sum_of({each: times for each, times in terms.items() if each != key}, printed)
                meant = (wanted - rest) // terms[key]
                if self._holds({**printed, key: meant}):
                    return Span(meant, meant)
        return None

    def _holds(self, printed: Mapping[Key, int]) -> bool:
        return printed[self.key] == self._largest(printed)

    def _largest(self, printed: Mapping[Key, int]) -> int:
        return max(_sum_of(terms, printed) for terms in self.of)


def _sum_of(terms: Mapping[Key, int], printed: Mapping[Key, int]) -> int:
    return sum(printed[key] * times for key, times in terms.items())


def added(sums: Iterable[int], times: int, column: Sequence[int]) -> Iterable[int]:
    """Sums of sizes, and so many times a number of each."""
    if times == -1:
        return map(sub, sums, column)
    return map(add, sums, column if times == 1 else map(mul, repeat(times), column))


def complete(rows: Sequence[Sequence[int | None]]) -> tuple[Sequence[int], Sequence[Sequence[int]]]:
    """The places of the sizes that have a number in every row, and the rows' numbers there.

    rows: the numbers of each, one or more.
    """
    places: Sequence[int] = range(len(rows[0]))
    if any(None in row for row in rows):
        places = [place for place in places if all(row[place] is not None for row in rows)]
        rows = [[row[place] for place in places] for row in rows]
    return places, rows  # type: ignore[return-value]


def computable(relations: Iterable[Relation], keys: Iterable[Key]) -> list[Relation]:
    """Those between numbers that are there.

    keys: of these.
    """
    return parted(relations, keys)[0]


def parted(relations: Iterable[Relation], keys: Iterable[Key]) -> tuple[list[Relation], list[Relation]]:
    """Those between numbers that are there, and those that lack one.

    keys: of these.
    """
    there = frozenset(keys)
    computed: list[Relation] = []
    lacking: list[Relation] = []
    for relation in relations:
        (computed if there.issuperset(relation.keys) else lacking).append(relation)
    return computed, lacking
