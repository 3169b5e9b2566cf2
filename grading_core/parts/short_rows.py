"""Raising the back of a neck with short rows.

The rows are worked back and forth about the back in pairs, a right-side and a wrong-side row, without
increases. Each turn lies beyond the one before on its side. The first ones lie beyond the back and its
raglan lines, so the back gets the full height; from there it tapers evenly over the sleeves and a
little of the front to the last turns, which never cross the front's centre. The raise is no part of the yoke's depth.

Marker m stands after the m-th section (back, first sleeve, front, second sleeve) and before its line, so a
turn past marker 1 or 2 counts the line's stitches and one past marker 4 or 3, worked the other way, doesn't.

Sources: two rows a pair, height = rows / row gauge (domain arithmetic). Necks of 1 to 2 in raised at the back,
three or four pairs each about 8 stitches further than the one before (a designer's teaching article); 6 rows
(a comparison of yokes after a handbook of 1971). How far the taper reaches into the front is
common practice, no source.

Before a front drop the rows are worked flat over what is cast on, between the ends at the front. The drop's first row
follows the last of them, and its last row is a right-side one; so where the drop has an odd number of rows the short
rows begin with a wrong-side row.
"""

from __future__ import annotations

from collections.abc import Callable, Hashable, Iterator, Sequence
from dataclasses import dataclass
from functools import partial
from typing import Literal, NamedTuple, TypeVar

from grading_core.codes import ReasonCode
from grading_core.errors import Impossible, Nearest
from grading_core.fraction import Fraction
from grading_core.gauge import Gauge
from grading_core.rounding import NEAREST
from grading_core.sections import Sections
from grading_core.sentences import COUNT, LENGTH, TOKEN, Saying, Sentence, alone, for_sizes, run_of
from grading_core.shaping import spread

Way = Literal["joined", "flat"]
Side = Literal["right", "wrong"]
Kind = TypeVar("Kind", bound=Hashable)

SHORT_ROWS = Saying("neck.short_rows", rows=COUNT, begin=TOKEN)
METHOD = Saying("neck.short_row_method")
TURN = Saying("neck.turn", row=COUNT, side=TOKEN, stitches=COUNT, marker=COUNT)
LAST_ROW = Saying("neck.last_row", kind=TOKEN)
RAISED = Saying("neck.raised", length=LENGTH)
TURNS_TOO_FAR = Saying("reason.back_too_high_front", reach=COUNT, front=COUNT, most=COUNT)
TOO_MANY_TURNS = Saying("reason.back_too_high", pairs=COUNT, stitches=COUNT)

FRONT_SHARE = Fraction(1, 8)
"""Of the front's stitches, how many the taper takes at each side unless told otherwise."""


class Turn(NamedTuple):
    """Where a short row ends. A tuple, since a neck has many.

    row: counted from 1. side: which side of the fabric faces in that row. stitches, marker: the turn comes so many
    stitches past that marker, counted in the direction of the row. beyond_back: the same counted from the back's
    last stitch, raglan line included.
    """

    row: int
    side: Side
    stitches: int
    marker: int
    beyond_back: int


@dataclass(frozen=True, slots=True)
class RowsOfDrop:
    """A front drop that follows the short rows.

    rows: of the drop. each_side: stitches cast on for the front at each side.
    """

    rows: int
    each_side: int


@dataclass(frozen=True, slots=True, kw_only=True)
class BackRaise:
    """The short rows of one size.

    way: "joined", turned about the start of a round that is already joined, or "flat", with the cast-on's ends
    at the centre front, joined there after the last row, or after a front drop. pairs: of rows. front_stitches: how far
    the taper reaches into the front at each side. height_cm: of the raise. turns: one for each row. begins: the side of
    the first row and of the last. before_drop: whether a front drop follows.
    """

    way: Way
    pairs: int
    front_stitches: int
    height_cm: Fraction
    turns: tuple[Turn, ...]
    begins: Side
    before_drop: bool

    @property
    def rows(self) -> int:
        """Rows by which the back is higher than the front."""
        return 2 * self.pairs

    def instructions(self) -> tuple[Sentence, ...]:
        """The short rows in sentences, for one size."""
        return tuple(alone(run_instructions([self], [""])))


def pairs_for(height_cm: Fraction, gauge: Gauge) -> int:
    """The pairs of short rows for a height, the nearest number.

    >>> pairs_for(Fraction(5, 2), Gauge.over(Fraction(22), Fraction(31), Fraction(10)))
    4
    """
    (over, under), (rows, span) = height_cm.as_integer_ratio(), gauge.rows_per_cm.as_integer_ratio()
    return NEAREST.round_ratio(over * rows, 2 * under * span)


def raise_back(
    neck: Sections,
    line_stitches: int,
    pairs: int,
    gauge: Gauge,
    *,
    way: Way = "joined",
    front_stitches: int | None = None,
    drop: RowsOfDrop | None = None,
) -> BackRaise | Impossible:
    """The short rows that raise the back of a neck, or why they don't fit.

    neck: the sections at the neck. line_stitches: of each raglan line. pairs: of rows, 0 for no raise. gauge: for the
    height. way: how it is worked. front_stitches: how far into the front the last turns lie at each side, at most to
    its centre; None for the usual share. drop: that follows, with a way of "flat"; the last turns lie before the ends.

    >>> gauge = Gauge.over(Fraction(22), Fraction(31), Fraction(10))
    >>> [(turn.side, turn.stitches, turn.marker) for turn in raise_back(Sections(34, 34, 12), 2, 3, gauge).turns]
    [('right', 8, 1), ('wrong', 6, 4), ('right', 14, 1), ('wrong', 12, 4), ('right', 6, 2), ('wrong', 4, 3)]
    """
    front, sleeve = neck.front, neck.sleeve
    most = drop.each_side - 1 if drop else front // 2
    reach = min(NEAREST.round(front * FRONT_SHARE), most) if front_stitches is None else front_stitches
    if reach > most:
        reason = TURNS_TOO_FAR(reach=reach, front=front, most=most)
        return Impossible(ReasonCode.BACK_TOO_HIGH, reason, (Nearest(("front_stitches",), most),))
    taper = sleeve + line_stitches + reach
    if pairs > taper:
        reason = TOO_MANY_TURNS(pairs=pairs, stitches=taper)
        return Impossible(ReasonCode.BACK_TOO_HIGH, reason, (Nearest(("pairs",), taper),))
    begins: Side = "wrong" if drop and drop.rows % 2 else "right"
    pair = (_right_side_turn, _wrong_side_turn) if begins == "right" else (_wrong_side_turn, _right_side_turn)
    turns: list[Turn] = []
    for place in spread(pairs, taper, "even").positions():
        for turn_at in pair:
            turns.append(turn_at(len(turns) + 1, line_stitches + place, sleeve, line_stitches))
    return BackRaise(
        way=way,
        pairs=pairs,
        front_stitches=reach,
        height_cm=gauge.height_cm(2 * pairs),
        turns=tuple(turns),
        begins=begins,
        before_drop=drop is not None,
    )


def run_instructions(raises: Sequence[BackRaise | None], labels: Sequence[str]) -> tuple[Sentence, ...]:
    """The short rows of all sizes in sentences with size runs; none where no size has any.

    raises: one per size, all worked in one way, None where the size has none to tell. labels: of the sizes.

    A row that turns past unlike markers is told marker by marker, for the sizes that turn there, and so are unlike ways
    to begin and to end.
    """
    most = max((each.rows for each in raises if each), default=0)
    if not most:
        return ()
    working = [each if each and each.rows else None for each in raises]
    told = [
        *_by_kind([_begin(each) if each else None for each in working], labels, partial(_begins, working)),
        METHOD(),
    ]
    for row in range(most):
        turns = [each.turns[row] if each and row < each.rows else None for each in working]
        told += _by_kind([(turn.side, turn.marker) if turn else None for turn in turns], labels, partial(_turns, turns))
    # there is no run in it in which a size without short rows could have a dash
    some = any(each and not each.rows for each in raises)
    told += _by_kind([_end(each) if each else None for each in working], labels, _ends, named=some)
    return (*told, RAISED(length=run_of(working, lambda each: each.height_cm)))


def _by_kind(
    kinds: Sequence[Kind | None], labels: Sequence[str], say: Callable[[Kind], Sentence], *, named: bool = False
) -> Iterator[Sentence]:
    """A sentence for each kind of size, with the names of its sizes where there are several kinds.

    kinds: of the sizes, None where one is not told. labels: of the sizes. say: the sentence of a kind, with values of
    all sizes. named: whether a single kind has to name its sizes, too.
    """
    different = [kind for kind in dict.fromkeys(kinds) if kind is not None]
    for kind in different:
        if named or len(different) > 1:
            yield for_sizes(say(kind), labels, [place for place, own in enumerate(kinds) if own == kind])
        else:
            yield say(kind)


def _begin(raised: BackRaise) -> str:
    return "start" if raised.way == "joined" else raised.begins


def _begins(raises: Sequence[BackRaise | None], begin: str) -> Sentence:
    return SHORT_ROWS(rows=run_of(raises, lambda each: each.rows), begin=begin)


def _turns(turns: Sequence[Turn | None], at: tuple[Side, int]) -> Sentence:
    (row,) = {turn.row for turn in turns if turn}
    side, marker = at
    return TURN(row=row, side=side, stitches=run_of(turns, lambda turn: turn.stitches), marker=marker)


def _end(raised: BackRaise) -> str:
    return raised.begins if raised.before_drop else raised.way


def _ends(kind: str) -> Sentence:
    return LAST_ROW(kind=kind)


def _right_side_turn(row: int, beyond: int, sleeve: int, line: int) -> Turn:
    """Past marker 1 come a line and the first sleeve, past marker 2 a line and the front."""
    past_sleeve = beyond - line - sleeve
    if past_sleeve > 0:
        return Turn(row, "right", past_sleeve, 2, beyond)
    return Turn(row, "right", beyond, 1, beyond)


def _wrong_side_turn(row: int, beyond: int, sleeve: int, line: int) -> Turn:
    """Past marker 4 come the second sleeve and the line before it, past marker 3 the front."""
    past_line = beyond - 2 * line - sleeve
    if past_line > 0:
        return Turn(row, "wrong", past_line, 3, beyond)
    return Turn(row, "wrong", beyond - line, 4, beyond)
