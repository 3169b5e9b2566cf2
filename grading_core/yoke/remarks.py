"""Words of warning about a yoke whose increases can be worked, but not without a thought."""

from __future__ import annotations

from collections.abc import Iterator
from fractions import Fraction

from grading_core.codes import WarningCode
from grading_core.errors import Path, Remark
from grading_core.units import to_places
from grading_core.wording import counted
from grading_core.yoke.request import Options
from grading_core.yoke.result import LONGEST_STREAK, AdjustedYoke, Schedule

LONGEST_STRAIGHT_SHARE = Fraction(1, 5)
"""A larger share of the yoke without body increases before the split is seen as a straight line to the underarm (a
judgement, no source)."""


def early_end_remarks(schedule: Schedule, options: Options) -> Iterator[Remark]:
    """The remark on body increases that end far above the split; none where the options ask for that.

    schedule: of one size. options: how it was increased.
    """
    last = max((each.round for each in schedule.increase_rounds if each.back or each.front), default=None)
    if last is None:
        return
    rounds = schedule.yoke.rounds
    straight = rounds - last
    if straight <= LONGEST_STRAIGHT_SHARE * rounds or straight < options.plain_rounds_at_end + options.step:
        return
    straight_cm = to_places(schedule.depth_cm * straight / rounds, 1)
    label = schedule.yoke.label
    mend = (
        "space its increases wider"
        if schedule.increase_rounds[-1].round == last
        else "spread them over the rounds in which the sleeves are increased"
    )
    yield Remark(
        WarningCode.INCREASES_END_EARLY,
        f"Size {label}: the last body increase lies {counted(straight, 'round')} ({straight_cm} cm) above the split in "
        f"a yoke of {rounds}, so the body runs straight down to the underarm: {mend}.",
        label,
    )


def streak_remarks(schedule: Schedule, path: Path | None = None) -> Iterator[Remark]:
    """The remark on increases in many rounds one after another.

    schedule: of one size. path: what is to blame.
    """
    streak = schedule.consecutive_increase_rounds
    if streak > LONGEST_STREAK:
        label = schedule.yoke.label
        free = schedule.yoke.rounds > len(schedule.increase_rounds)
        yield Remark(
            WarningCode.MANY_INCREASE_ROUNDS_IN_A_ROW,
            f"Size {label}: {streak} increase rounds follow one another without a round between, which draws the "
            f"raglan line together; more than {LONGEST_STREAK} is much. A deeper yoke"
            f"{', or increases spaced evenly over this one,' if free else ''} has room between them.",
            label,
            path,
        )


def adjustment_remarks(adjusted: AdjustedYoke) -> Iterator[Remark]:
    """What deserves a word in one adjusted yoke: the way to take, and a way that is another one under its name.

    adjusted: one size.
    """
    made = {way.method: way.schedule for way in adjusted.options if isinstance(way.schedule, Schedule)}
    closer, double = made.get("closer"), made.get("double_body")
    if closer and double and closer.increase_rounds == double.increase_rounds:
        label = closer.yoke.label
        yield Remark(
            WarningCode.DOUBLE_BODY_EQUALS_CLOSER,
            f"Size {label}: no body increase has to be doubled, so double_body is the very same schedule as closer.",
            label,
        )
    if adjusted.recommended:
        yield from streak_remarks(made[adjusted.recommended])
