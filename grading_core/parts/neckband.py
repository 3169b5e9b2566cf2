"""The neckband: how many stitches are picked up, the rib's count, and its rounds.

Sources: 1 for 1 along cast-on stitches, and stitches to rows in the ratio of the gauges along row ends (four
teaching articles, 2009 to 2021: 3 for 4 rows at 21 stitches and 28 rows, 2 for 3 at 16 and 24, 5 for 8 at
5 and 8 to the inch). A double band is worked to twice its height and joined loosely on the inside, with one
more round where a fold round is worked (knitting handbooks).
"""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass
from typing import Literal

from grading_core.fabric import Fabric
from grading_core.fraction import Fraction
from grading_core.parts.ribbing import BIND_OFF, Rib, RibbedEdge, colour_of, run_edges
from grading_core.rounding import NEAREST
from grading_core.sentences import COUNT, LENGTH, TEXT, Saying, Sentence, alone, run_of

Construction = Literal["single", "double", "double_with_fold_round"]

COLOUR = Saying("band.colour", colour=TEXT)
PICK_UP = Saying("band.pick_up", stitches=COUNT)
PICK_UP_DROP = Saying("band.pick_up_drop", side=COUNT, rows=COUNT, rate=COUNT, per=COUNT, stitches=COUNT)
FOLD = Saying("band.fold")
INNER = Saying("band.inner", rounds=COUNT)
JOIN = Saying("band.join")
HEIGHT = Saying("band.height", length=LENGTH)

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

    def instructions(self) -> tuple[Sentence, ...]:
        """The band in sentences, for one size."""
        return tuple(alone(run_instructions([self])))


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
    >>> rib = Rib(gauge=gauge, height_cm=Fraction(5, 2), rule=CountRule(4))
    >>> made = neckband(pick_up(98, gauge), rib, "double_with_fold_round")
    >>> made.edge.stitches, made.rounds
    (100, 21)
    """
    edge = RibbedEdge(rib, picked_up.stitches, rib.nearest(picked_up.stitches), rib.rounds)
    return Neckband(picked_up, edge, construction)


def run_instructions(bands: Sequence[Neckband | None]) -> tuple[Sentence, ...]:
    """The bands of all sizes in sentences with size runs.

    bands: one per size, all of one construction and one multiple, None where the size has none; at least one has.
    """
    edges = [band.edge if band else None for band in bands]
    colour = colour_of(edges)
    return (
        *([] if colour is None else [COLOUR(colour=colour)]),
        *_pick_ups([band.picked_up if band else None for band in bands]),
        *run_edges(edges),
        *_finish(bands),
        HEIGHT(length=run_of(bands, lambda band: band.height_cm)),
    )


def _pick_ups(pick_ups: Sequence[PickUp | None]) -> tuple[Sentence, ...]:
    """How the stitches are picked up: in two ways where some sizes have row ends and others none."""
    with_rows = [each if each and each.rows_each_side else None for each in pick_ups]
    without = [each if each and not each.rows_each_side else None for each in pick_ups]
    sentences = []
    if any(without):
        sentences.append(PICK_UP(stitches=run_of(without, lambda each: each.stitches)))
    if any(with_rows):
        rhythms = [each.rhythm if each else None for each in with_rows]
        sentences.append(
            PICK_UP_DROP(
                side=run_of(with_rows, lambda each: each.along_rows_each_side),
                rows=run_of(with_rows, lambda each: each.rows_each_side),
                rate=run_of(rhythms, lambda each: each.numerator),
                per=run_of(rhythms, lambda each: each.denominator),
                stitches=run_of(with_rows, lambda each: each.stitches),
            )
        )
    return tuple(sentences)


def _finish(bands: Sequence[Neckband | None]) -> tuple[Sentence, ...]:
    construction = next(band.construction for band in bands if band)
    if construction == "single":
        return (BIND_OFF(),)
    fold = (FOLD(),) if construction == "double_with_fold_round" else ()
    return (*fold, INNER(rounds=run_of(bands, lambda band: band.edge.rounds)), JOIN())
