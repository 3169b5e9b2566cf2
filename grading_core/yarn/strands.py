"""Strands held together, and how thick that is.

Linear densities in tex (g per 1000 m) add, so the reciprocals of metres per 100 g add (ISO 1144 for the
tex; textile calculation texts for the sum of parallel strands).
"""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass
from fractions import Fraction

from grading_core.standards.sources import Source
from grading_core.standards.yarn_weights import YARN_CATEGORIES, YARN_THICKNESSES, YarnThickness


@dataclass(frozen=True, slots=True)
class Combination:
    """Strands held together.

    metres_per_100g: of all of them. tex: the same as grams per 1000 m. weight_shares: each strand's part of the
    weight, in the order given.
    """

    metres_per_100g: Fraction
    tex: Fraction
    weight_shares: tuple[Fraction, ...]


@dataclass(frozen=True, slots=True)
class Match:
    """A row of a published chart that a thickness falls in.

    source: the chart. thickness: its row. standard_name: of the standard's category. between: True where the
    chart leaves a gap there and this is the nearer row.
    """

    source: Source
    thickness: YarnThickness
    standard_name: str
    between: bool


def tex(metres_per_100g: Fraction) -> Fraction:
    """Grams per 1000 m of a yarn.

    >>> tex(Fraction(400))
    Fraction(250, 1)
    """
    return 100_000 / metres_per_100g


def held_together(metres_per_100g: Sequence[Fraction]) -> Combination:
    """What strands held together give.

    metres_per_100g: of each strand, at least one.

    >>> held_together([Fraction(400), Fraction(400)]).metres_per_100g
    Fraction(200, 1)
    """
    densities = [tex(metres) for metres in metres_per_100g]
    total = sum(densities, Fraction(0))
    return Combination(100_000 / total, total, tuple(density / total for density in densities))


def categories(metres_per_100g: Fraction) -> tuple[Match, ...]:
    """The published categories of a thickness, chart by chart.

    metres_per_100g: of the yarn, or of the strands together. Where a chart's rows overlap each of them is
    named; where it has a gap, the nearer row is, the thicker one at the same distance.

    >>> [match.thickness.name for match in categories(Fraction(200))]
    ['Light', 'DK (8 ply)', 'Aran / worsted (10-12 ply)', 'worsted (10 ply)']
    """
    names = {category.category: category.name for category in YARN_CATEGORIES}
    matches = []
    for source, rows in YARN_THICKNESSES.items():
        away = [_distance(metres_per_100g, row) for row in rows]
        nearest = min(away)
        found = [row for row, distance in zip(rows, away, strict=True) if distance == nearest]
        if nearest:
            found = found[-1:]
        matches += [Match(source, row, names[row.category], nearest > 0) for row in found]
    return tuple(matches)


def _distance(metres_per_100g: Fraction, row: YarnThickness) -> Fraction:
    """How far a thickness lies outside a chart's row, 0 inside it."""
    low, high = row.metres_per_100g.low, row.metres_per_100g.high
    below = max(Fraction(0), low - metres_per_100g) if low is not None else Fraction(0)
    above = max(Fraction(0), metres_per_100g - high) if high is not None else Fraction(0)
    return below + above
