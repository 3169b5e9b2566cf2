"""The neckband: how many stitches are picked up, the rib's count, and its rounds.

Sources: 1 for 1 along cast-on stitches, and stitches to rows in the ratio of the gauges along row ends (four
teaching articles, 2009 to 2021: 3 for 4 rows at 21 stitches and 28 rows, 2 for 3 at 16 and 24, 5 for 8 at
5 and 8 to the inch). A double band is worked to twice its height and joined loosely on the inside, with one
more round where a fold round is worked (knitting handbooks).
"""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass
from fractions import Fraction
from typing import Literal

from grading_core.fabric import Fabric
from grading_core.parts.ribbing import Rib, RibbedEdge, run_edges
from grading_core.rounding import NEAREST
from grading_core.wording import counted_run, size_run

Construction = Literal["single", "double", "double_with_fold_round"]

LONGEST_RHYTHM = 8
"""A knitter counts no more rows than this between skipped ones (common practice, no source)."""


@dataclass(frozen=True, slots=True)
class PickUp:
    """Stitches picked up round a neck.

    along_stitches: 1 for each stitch cast on or held. rows_each_side: row ends at each side of a front
    drop, 0 where there is none. along_rows_each_side: stitches picked up along them.
    """

    along_stitches: int
    rows_each_side: int
    along_rows_each_side: int

    @property
    def rhythm(self) -> Fraction | None:
        """What is picked up along row ends as a short ratio of stitches to rows, None where there are none.

        The nearest to the stitches that really are picked up, which a ratio of the gauges need not be.

        >>> PickUp(80, 6, 4).rhythm
        Fraction(2, 3)
        """
        if not self.rows_each_side:
            return None
        made = Fraction(self.along_rows_each_side, self.rows_each_side)
        return made.limit_denominator(LONGEST_RHYTHM) or made

    @property
    def stitches(self) -> int:
        """All stitches picked up."""
        return self.along_stitches + 2 * self.along_rows_each_side


@dataclass(frozen=True, slots=True)
class Neckband:
    """A neckband in numbers.

    picked_up: where the stitches come from. edge: the rib that is seen, with the adjusting round where it needs
    one. construction: single or folded double.
    """

    picked_up: PickUp
    edge: RibbedEdge
    construction: Construction

    @property
    def rounds(self) -> int:
        """All rounds: of a double band both layers, and the fold round where there is one."""
        layers = 1 if self.construction == "single" else 2
        return layers * self.edge.rounds + (self.construction == "double_with_fold_round")

    @property
    def height_cm(self) -> Fraction:
        """As worn: of one layer."""
        return self.edge.height_cm

    @property
    def last_edge_cm(self) -> Fraction:
        """Circumference of the bind-off, or of a double band's join, unstretched and at the rib's gauge."""
        return self.edge.circumference_cm

    def instructions(self) -> tuple[str, ...]:
        """The band in sentences, for one size.

        >>> from grading_core.gauge import Gauge
        >>> from grading_core.rounding import CountRule
        >>> gauge = Gauge.over(Fraction(22), Fraction(31), Fraction(10))
        >>> for sentence in neckband(pick_up(100, gauge), Rib(gauge, Fraction(3), CountRule(2))).instructions():
        ...     print(sentence)
        With the right side facing, from the start of the round pick up 1 stitch for each cast-on stitch: 100 stitches.
        Work 9 rounds in a rib that repeats over 2 stitches.
        Bind off (cast off) loosely in rib.
        """
        ribbed = self.edge.instructions()
        return (*_pick_ups([self.picked_up]), *ribbed, *_finish([self]))


def pick_up(along_stitches: int, gauge: Fabric, rows_each_side: int = 0) -> PickUp:
    """Stitches to pick up round a neck.

    along_stitches: cast on, or held, round the neck. gauge: of the rounds that the row ends are of. rows_each_side: row
    ends at each side of a front drop.

    Source: see the module's docstring.

    >>> from grading_core.gauge import Gauge
    >>> made = pick_up(80, Gauge.over(Fraction(21), Fraction(28), Fraction(10)), 12)
    >>> made.along_rows_each_side, made.rhythm, made.stitches
    (9, Fraction(3, 4), 98)
    """
    rows = (gauge.at(number) for number in range(1, rows_each_side + 1))
    exact = sum((row.stitches_per_cm / row.rows_per_cm for row in rows), Fraction(0))
    return PickUp(along_stitches, rows_each_side, NEAREST.round(exact))


def neckband(picked_up: PickUp, rib: Rib, construction: Construction = "single") -> Neckband:
    """The band on stitches that are picked up.

    picked_up: from `pick_up`. rib: its gauge, height as worn and multiple. construction: "single", "double", or
    "double_with_fold_round".

    Source: see the module's docstring; 10 rows, a fold row, 10 rows is a published example.

    >>> from grading_core.gauge import Gauge
    >>> from grading_core.rounding import CountRule
    >>> gauge = Gauge(Fraction(2), Fraction(4))
    >>> rib = Rib(gauge, Fraction(5, 2), CountRule(4))
    >>> made = neckband(pick_up(98, gauge), rib, "double_with_fold_round")
    >>> made.edge.stitches, made.rounds
    (100, 21)
    """
    edge = RibbedEdge(rib, picked_up.stitches, rib.nearest(Fraction(picked_up.stitches)), rib.rounds)
    return Neckband(picked_up, edge, construction)


def run_instructions(bands: Sequence[Neckband | None]) -> tuple[str, ...]:
    """The bands of all sizes in sentences with size runs.

    bands: one per size, all of one construction and one multiple, None where the size has none; at least one has.
    """
    pick_ups = _pick_ups([band.picked_up if band else None for band in bands])
    return (*pick_ups, *run_edges([band.edge if band else None for band in bands]), *_finish(bands))


def _pick_ups(pick_ups: Sequence[PickUp | None]) -> tuple[str, ...]:
    """How the stitches of every size are picked up, in sentences with size runs.

    pick_ups: one per size, None where it has none.
    """
    along = "1 stitch for each cast-on stitch"
    along_rows = [each if each and each.rows_each_side else None for each in pick_ups]
    rhythms = [each.rhythm if each else None for each in along_rows]
    if any(rhythms):
        sides = counted_run([each.along_rows_each_side if each else None for each in along_rows], "stitch")
        rows = size_run([each.rows_each_side if each else None for each in along_rows])
        along += (
            f" and {sides} along the {rows} row ends at each side of the front, that is about {_rhythm_words(rhythms)}"
        )
    total = counted_run([each.stitches if each else None for each in pick_ups], "stitch")
    return (f"With the right side facing, from the start of the round pick up {along}: {total}.",)


def _rhythm_words(rhythms: Sequence[Fraction | None]) -> str:
    """So many stitches for so many rows."""
    stitches = size_run([each.numerator if each else None for each in rhythms])
    return f"{stitches} for every {counted_run([each.denominator if each else None for each in rhythms], 'row')}"


def _finish(bands: Sequence[Neckband | None]) -> tuple[str, ...]:
    construction = next(band.construction for band in bands if band)
    if construction == "single":
        return ("Bind off (cast off) loosely in rib.",)
    rounds = counted_run([band.edge.rounds if band else None for band in bands], "more round")
    inner = f"Work {rounds} in rib for the inner layer."
    join = (
        "Fold the band to the inside and join each stitch loosely to the band's first round, so that the neck "
        "still stretches over the head."
    )
    if construction == "double":
        return (inner, join)
    return ("Purl 1 round for the fold.", inner, join)
