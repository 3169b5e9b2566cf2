"""Relations that are made of others: one of several holds, or one is asked for only where a number is there or not."""

from __future__ import annotations

from dataclasses import dataclass

from grading_core.codes import ProofCode
from grading_core.proof.columns import Columns
from grading_core.proof.figures import Figures, Key
from grading_core.proof.relations import Judged, Linear, Relation, Span


@dataclass(frozen=True, slots=True)
class Either:
    """At least one of some relations between the same numbers holds.

    of: these, one or more, of one code.
    """

    of: tuple[Linear, ...]

    @property
    def code(self) -> ProofCode:
        """What they are called."""
        return self.of[0].code

    @property
    def keys(self) -> tuple[Key, ...]:
        """Of the numbers."""
        return self.of[0].keys

    def judged(self, columns: Columns) -> Judged:
        """In which sizes none holds."""
        first, *others = [each.judged(columns) for each in self.of]
        broken = set(first.broken).intersection(*[each.broken for each in others])
        return Judged(first.times, sorted(broken))

    def holds(self, figures: Figures) -> bool:
        """Whether any does."""
        return any(each.holds(figures) for each in self.of)

    def implied(self, key: Key, figures: Figures) -> Span | None:
        """What a number may be by the relation that asks for the least change of it."""
        printed = figures[key].printed
        spans = [each.implied(key, figures) for each in self.of]
        return min((span for span in spans if span), key=lambda span: _away(printed, span), default=None)


@dataclass(frozen=True, slots=True)
class _AskedFor:
    """A relation that is asked for in some sizes only, by what they have in a row.

    relation: between numbers. key: of the row.
    """

    relation: Relation
    key: Key

    @property
    def code(self) -> ProofCode:
        """What it is called."""
        return self.relation.code

    @property
    def keys(self) -> tuple[Key, ...]:
        """Of the numbers."""
        return self.relation.keys

    def implied(self, key: Key, figures: Figures) -> Span | None:
        """What a number may be, going by the others."""
        return self.relation.implied(key, figures)


class Unless(_AskedFor):
    """A relation that is not asked for where one of its numbers, that of the row, is nothing."""

    __slots__ = ()

    def judged(self, columns: Columns) -> Judged:
        """In which sizes it is asked for and doesn't hold."""
        times, broken = self.relation.judged(columns)
        return Judged(times, [place for place in broken if columns[self.key].values[place]])

    def holds(self, figures: Figures) -> bool:
        """Whether it does, or is not asked for."""
        return not figures[self.key].printed or self.relation.holds(figures)


class Without(_AskedFor):
    """A relation that is asked for only in sizes that have no number of the row, which is none of its own."""

    __slots__ = ()

    def judged(self, columns: Columns) -> Judged:
        """In which sizes it is asked for and doesn't hold."""
        beside = columns[self.key].values
        if None not in beside:
            return Judged(0, ())
        told = zip(beside, *[columns[key].values for key in self.keys], strict=True)
        times = sum(beside_it is None and None not in numbers for beside_it, *numbers in told)
        return Judged(times, [place for place in self.relation.judged(columns).broken if beside[place] is None])

    def holds(self, figures: Figures) -> bool:
        """Whether it does, or is not asked for."""
        return self.key in figures or self.relation.holds(figures)


def mostly_holds(relation: Relation, columns: Columns) -> bool:
    """Whether a relation holds in more than half of the sizes that have its numbers.

    columns: that the pattern has.
    """
    if not all(key in columns for key in relation.keys):
        return False
    times, broken = relation.judged(columns)
    return 2 * len(broken) < times


def _away(value: int, span: Span) -> int:
    """How far a value lies outside of a span."""
    below = 0 if span.least is None else span.least - value
    above = 0 if span.most is None else value - span.most
    return max(0, below, above)
