"""Bust darts: short rows that make the front of the body longer than its back.

They are worked within one round of the body, which begins with the back: over the back, then back and forth over the
front in pairs, a right-side and a wrong-side row, then on to the end of the round. The widest row comes first, and each
turn lies short of the one before on its side. So the front gains two rows a pair in its middle third, which lies
between the last turns, and nothing at the sides, with even steps from there.

A side is the middle of an underarm; of an odd underarm the middle stitch counts to neither half. The rows are plain:
they come 2.5 cm below the underarm, or in the first round from there on that neither works a chart nor shapes the body.

Two rows a pair, height = rows / row gauge (domain arithmetic). How far below the underarm the rows lie, that the widest
comes first and that a third of the front stays between the last turns is common practice, no source.
"""

from __future__ import annotations

from collections.abc import Container, Sequence
from dataclasses import dataclass
from math import floor

from grading_core.codes import ReasonCode
from grading_core.errors import Impossible, Nearest
from grading_core.fabric import Fabric
from grading_core.fraction import Fraction
from grading_core.gauge import Gauge
from grading_core.parts.short_rows import Side
from grading_core.sentences import CM, COUNT, Saying, Sentence, alone, run_of
from grading_core.shaping import spread

DARTS = Saying("body.darts", round=COUNT, rows=COUNT)
DART_TURNS = Saying("body.dart_turns", row=COUNT, next=COUNT, stitches=COUNT)
DARTS_END = Saying("body.darts_end")
NO_PLAIN_ROUND = Saying("reason.darts_without_round", deepest=CM, first=COUNT, last=COUNT)
DARTS_BELOW_BODY = Saying("reason.body_too_short_for_darts", round=COUNT, rounds=COUNT)
DARTS_TOO_DEEP = Saying("reason.darts_too_deep", pairs=COUNT, stitches=COUNT)

BELOW_UNDERARM_CM = Fraction(5, 2)
"""Where the rows lie if nothing is in the way (common practice, no source)."""

DEEPEST_CM = Fraction(10)
"""How far below the underarm they may lie at most: further down they shape no bust (a judgement, no source)."""


@dataclass(frozen=True, slots=True, kw_only=True)
class DartTurn:
    """Where a short row ends.

    row: counted from 1. side: which side of the fabric faces in that row. stitches: that lie between the turn and the
    side of the body ahead.
    """

    row: int
    side: Side
    stitches: int


@dataclass(frozen=True, slots=True, kw_only=True)
class BustDarts:
    """The short rows over the front of one size.

    round: of the body, within which they are worked. front: its stitches from side to side there. height_cm: that the
    front gains. turns: one for each row.
    """

    round: int
    front: int
    height_cm: Fraction
    turns: tuple[DartTurn, ...]

    @property
    def rows(self) -> int:
        """Rows by which the front is longer than the back."""
        return len(self.turns)

    @property
    def stitches(self) -> int:
        """Stitches worked in them beyond those of the round.

        >>> gauge = Gauge.over(Fraction(22), Fraction(31), Fraction(10))
        >>> dart_front(110, 1, gauge, in_round=9).stitches
        76
        """
        return sum(self.front - 2 * turn.stitches for turn in self.turns)

    def instructions(self) -> tuple[Sentence, ...]:
        """The short rows in sentences, for one size."""
        return tuple(alone(run_instructions([self])))


def dart_round(rounds: int, gauge: Fabric, *, charted: Container[int], shaped: Container[int]) -> int | Impossible:
    """The round of the body within which the short rows are worked, or why there is none.

    rounds: of the body before its hem. gauge: of the body, round by round. charted, shaped: its rounds that work a
    chart, and that shape it.

    >>> gauge = Gauge.over(Fraction(22), Fraction(31), Fraction(10))
    >>> dart_round(100, gauge, charted=range(0), shaped=()), dart_round(100, gauge, charted=range(1, 21), shaped=(21,))
    (9, 22)
    """
    first, last = gauge.rows(BELOW_UNDERARM_CM) + 1, floor(gauge.exact_rows(DEEPEST_CM)) + 1
    free = next((number for number in range(first, last + 1) if number not in charted and number not in shaped), None)
    if free is None:
        reason = NO_PLAIN_ROUND(deepest=DEEPEST_CM, first=first, last=last)
        return Impossible(ReasonCode.DARTS_WITHOUT_ROUND, reason)
    if free > rounds:
        reason = DARTS_BELOW_BODY(round=free, rounds=rounds)
        return Impossible(ReasonCode.BODY_TOO_SHORT, reason, (Nearest(("rounds",), free),))
    return free


def dart_front(front: int, pairs: int, gauge: Gauge, *, in_round: int) -> BustDarts | Impossible:
    """The short rows over a front, or why they don't fit.

    front: its stitches from side to side. pairs: of rows, 1 or more. gauge: of plain fabric, for the height. in_round:
    from `dart_round`.

    >>> gauge = Gauge.over(Fraction(22), Fraction(31), Fraction(10))
    >>> [(turn.side, turn.stitches) for turn in dart_front(110, 2, gauge, in_round=9).turns]
    [('right', 18), ('wrong', 18), ('right', 36), ('wrong', 36)]
    """
    third = front // 3
    if pairs > third:
        reason = DARTS_TOO_DEEP(pairs=pairs, stitches=third)
        return Impossible(ReasonCode.DARTS_TOO_DEEP, reason, (Nearest(("pairs",), third),))
    turns: list[DartTurn] = []
    for stitches in spread(pairs, third, "even").positions():
        turns.append(DartTurn(row=len(turns) + 1, side="right", stitches=stitches))
        turns.append(DartTurn(row=len(turns) + 1, side="wrong", stitches=stitches))
    return BustDarts(round=in_round, front=front, height_cm=gauge.height_cm(2 * pairs), turns=tuple(turns))


def run_instructions(darts: Sequence[BustDarts | None]) -> tuple[Sentence, ...]:
    """The short rows of all sizes in sentences with size runs; none where no size has any.

    darts: one per size, None where the size has none.
    """
    most = max((each.rows for each in darts if each), default=0)
    if not most:
        return ()
    sentences = [DARTS(round=run_of(darts, lambda each: each.round), rows=run_of(darts, lambda each: each.rows))]
    for row in range(0, most, 2):
        stitches = tuple([each.turns[row].stitches if each and row < each.rows else None for each in darts])
        sentences.append(DART_TURNS(row=row + 1, next=row + 2, stitches=stitches))
    return (*sentences, DARTS_END())
