"""A pattern that is proofread: its numbers, and what holds between them."""

from __future__ import annotations

from collections import Counter
from collections.abc import Iterator, Sequence
from dataclasses import dataclass
from functools import cached_property
from itertools import chain

from grading_core.chart.grid import default_anchor
from grading_core.fraction import Fraction
from grading_core.proof import garment
from grading_core.proof.columns import Columns
from grading_core.proof.figures import GRAINS, Figure, Figures, Key, key_of
from grading_core.proof.relations import Relation, added, complete, computable
from grading_core.proof.request import ProofRequest
from grading_core.proof.table import COUNTING, Row
from grading_core.units import InchConvention

_MOST_ON_LINES = 4 * 8 * GRAINS


@dataclass(frozen=True)
class Pattern:
    """A pattern that is proofread.

    request: what was asked. rows: as read, those whose runs are as long as they should be. columns: their numbers.
    """

    request: ProofRequest
    rows: tuple[Row, ...]
    columns: Columns

    @cached_property
    def line_stitches(self) -> int | None:
        """Of each raglan line: as told, or what most sums of neck and split agree on."""
        if self.request.line_stitches is not None:
            return self.request.line_stitches
        left = Counter(chain.from_iterable(map(self._left_by_sections, _SUMS)))
        lines = {stitches: left[stitches] for stitches in left if stitches % (4 * GRAINS) == 0}
        agreed = max((each for each in lines if 0 <= each <= _MOST_ON_LINES), key=lines.__getitem__, default=None)
        return None if agreed is None else agreed // (4 * GRAINS)

    @cached_property
    def inch_convention(self) -> InchConvention:
        """By which most inches agree with what they can be compared with."""

        def broken(relations: Sequence[Relation]) -> int:
            there = computable(relations, self.columns)
            of_inches = (relation for relation in there if any(key.inches for key in relation.keys))
            return sum(len(relation.judged(self.columns).broken) for relation in of_inches)

        if not self.columns.has_inches:
            return "exact"
        exact = broken(self._exact)
        return "nominal" if exact and broken(self._nominal) < exact else "exact"

    @cached_property
    def counts(self) -> frozenset[Key]:
        """Numbers that are whole."""
        return frozenset([row.key for row in self.rows if row.unit in COUNTING])

    @property
    def relations(self) -> Sequence[Relation]:
        """Those that the request allows, whichever numbers there are."""
        return self._exact if self.inch_convention == "exact" else self._nominal

    @cached_property
    def _exact(self) -> Sequence[Relation]:
        return tuple(self._relations("exact"))

    @cached_property
    def _nominal(self) -> Sequence[Relation]:
        return tuple(self._relations("nominal"))

    def _relations(self, convention: InchConvention) -> Iterator[Relation]:
        """Those by a convention of inches."""
        request = self.request
        yield from garment.sum_relations(self.line_stitches)
        yield garment.round_relation(request.step)
        yield from garment.cast_on_relations(self.columns, request.count_rules)
        yield from garment.decrease_relations(self.columns)
        yield from garment.length_relations(request.gauges, self.columns, convention)
        if self.columns.has_inches:
            yield from garment.inch_relations(self.columns, convention)
        yield from garment.yarn_relations(self.columns)
        yield from garment.rule_relations(request.count_rules, self.columns)
        yield from garment.parity_relations(_odd_sections(request))

    def figures(self, place: int) -> Figures:
        """The numbers of a size."""
        if place not in self._looked_at:
            told = ((key, row.values[place], row.half) for key, row in self.columns.items())
            self._looked_at[place] = {key: Figure(value, half) for key, value, half in told if value is not None}
        return self._looked_at[place]

    @cached_property
    def _looked_at(self) -> dict[int, Figures]:
        """The numbers of sizes in which something is wrong, which are asked for again and again."""
        return {}

    def _left_by_sections(self, part: str) -> Sequence[int]:
        """What the total of neck or split has beside its sections, size by size."""
        if not all(key in self.columns for key in _SUMS[part]):
            return ()
        _, (total, back, front, sleeve) = complete([self.columns[key].values for key in _SUMS[part]])
        return [*added(added(added(total, -1, back), -1, front), -2, sleeve)]


_SUMS = {
    part: [key_of(part, item) for item in (total, *garment.SECTIONS)]
    for part, total in (("neck", "stitches"), ("split", "yoke_total"))
}
"""The rows of a total and of its sections."""


def _odd_sections(request: ProofRequest) -> dict[str, bool]:
    """By section, whether its count has to be odd for the chart."""
    anchor = request.anchor
    if anchor is None and request.chart is None:
        return {}
    centre = None if request.chart is None else default_anchor(request.chart)
    columns = {section: getattr(anchor, section) if anchor else centre for section in garment.SECTIONS}
    return {section: Fraction(column).denominator == 1 for section, column in columns.items() if column is not None}
