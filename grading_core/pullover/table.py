"""A graded pullover as a table: every number of the garment in all sizes."""

from __future__ import annotations

from collections.abc import Callable, Iterable
from fractions import Fraction

from grading_core.errors import Impossible
from grading_core.pullover.result import KnittedSize, Row, Unit

_ROWS: tuple[tuple[str, Unit, Callable[[KnittedSize], int | Fraction]], ...] = (
    ("cast_on", "stitches", lambda size: size.neck.cast_on.stitches),
    ("neck", "stitches", lambda size: size.counts.cast_on),
    ("neck_back", "stitches", lambda size: size.counts.neck.back),
    ("neck_front", "stitches", lambda size: size.counts.neck.front),
    ("neck_sleeve", "stitches", lambda size: size.counts.neck.sleeve),
    ("short_rows", "rows", lambda size: size.neck.raised.rows if size.neck.raised else 0),
    ("front_drop", "rows", lambda size: size.neck.drop.rows if size.neck.drop else 0),
    ("yoke", "rounds", lambda size: size.counts.rounds),
    ("increase_rounds", "rounds", lambda size: len(size.yoke.increase_rounds)),
    ("back_increases", "times", lambda size: size.yoke.yoke.increases[0]),
    ("front_increases", "times", lambda size: size.yoke.yoke.increases[1]),
    ("sleeve_increases", "times", lambda size: size.yoke.yoke.increases[2]),
    ("doubled_rounds", "rounds", lambda size: size.yoke.doubled_rounds),
    ("split_back", "stitches", lambda size: size.counts.split.back),
    ("split_front", "stitches", lambda size: size.counts.split.front),
    ("split_sleeve", "stitches", lambda size: size.counts.split.sleeve),
    ("yoke_total", "stitches", lambda size: size.counts.yoke_total),
    ("underarm", "stitches", lambda size: size.counts.underarm),
    ("body", "stitches", lambda size: size.counts.body),
    ("body", "rounds", lambda size: size.body.rounds),
    ("bust_darts", "rows", lambda size: size.body.bust_darts.rows if size.body.bust_darts else 0),
    ("hem", "stitches", lambda size: size.body.hem.stitches),
    ("hem", "rounds", lambda size: size.body.hem.rounds),
    ("sleeve", "stitches", lambda size: size.counts.sleeve),
    ("sleeve", "rounds", lambda size: size.sleeve.rounds),
    ("sleeve_decrease_rounds", "rounds", lambda size: len(size.sleeve.decrease_rounds)),
    ("cuff", "stitches", lambda size: size.sleeve.cuff.stitches),
    ("cuff", "rounds", lambda size: size.sleeve.cuff.rounds),
    ("band", "stitches", lambda size: size.band.edge.stitches),
    ("band", "rounds", lambda size: size.band.rounds),
    ("finished_bust", "cm", lambda size: size.finished.bust),
    ("finished_upper_arm", "cm", lambda size: size.finished.upper_arm),
    ("finished_neck", "cm", lambda size: size.finished.neck),
    ("finished_yoke_depth", "cm", lambda size: size.finished.depth),
    ("finished_underarm", "cm", lambda size: size.finished.underarm),
    ("finished_hem", "cm", lambda size: size.finished.hem),
    ("finished_wrist", "cm", lambda size: size.finished.wrist),
    ("finished_body_length", "cm", lambda size: size.finished.body_length),
    ("finished_front_length", "cm", lambda size: size.finished.front_length),
    ("finished_front_extra", "cm", lambda size: size.finished.front_extra),
    ("finished_sleeve_length", "cm", lambda size: size.finished.sleeve_length),
    ("finished_total_length", "cm", lambda size: size.finished.total_length),
    ("finished_reach", "cm", lambda size: size.finished.reach),
)


def table(outcomes: Iterable[KnittedSize | Impossible]) -> tuple[Row, ...]:
    """Every number of the garment, a row each, with one value per size.

    outcomes: of all sizes in order; an impossible one has no value.
    """
    sizes = tuple(outcomes)
    return tuple(
        Row(item, unit, tuple(None if isinstance(size, Impossible) else value(size) for size in sizes))
        for item, unit, value in _ROWS
    )
