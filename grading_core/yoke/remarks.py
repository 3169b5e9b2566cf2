"""Words of warning about a yoke whose increases can be worked, but not without a thought."""

from __future__ import annotations

from collections.abc import Iterator

from grading_core.codes import WarningCode
from grading_core.errors import Path, Remark
from grading_core.fraction import Fraction
from grading_core.sentences import CM, COUNT, TOKEN, Saying
from grading_core.yoke.request import Options
from grading_core.yoke.result import LONGEST_STREAK, AdjustedYoke, Schedule

ENDS_EARLY = Saying("warning.increases_end_early", straight=COUNT, length=CM, rounds=COUNT, mend=TOKEN)
IN_A_ROW = Saying("warning.many_increase_rounds_in_a_row", streak=COUNT, most=COUNT, room=TOKEN)
DOUBLE_EQUALS_CLOSER = Saying("warning.double_body_equals_closer")

LONGEST_STRAIGHT_SHARE = Fraction(1, 5)
"""A larger share of the yoke without body increases before the split is seen as a straight line to the underarm (a
judgement, no source)."""


def early_end_remarks(schedule: Schedule, options: Options) -> Iterator[Remark]:
    """The remark on body increases that end far above the split; none where the options ask for that.

    schedule: of one size. options: how it was increased.
    """
    last = next((each.round for each in reversed(schedule.increase_rounds) if each.back or each.front), None)
    if last is None:
        return
    rounds = schedule.yoke.rounds
    straight = rounds - last
    if straight < options.plain_rounds_at_end + options.step or straight <= LONGEST_STRAIGHT_SHARE * rounds:
        return
    message = ENDS_EARLY(
        straight=straight,
        length=schedule.depth_cm * straight / rounds,
        rounds=rounds,
        mend="wider" if schedule.increase_rounds[-1].round == last else "with_sleeves",
    )
    yield Remark(WarningCode.INCREASES_END_EARLY, message, schedule.yoke.label)


def streak_remarks(schedule: Schedule, path: Path | None = None) -> Iterator[Remark]:
    """The remark on increases in many rounds one after another.

    schedule: of one size. path: what is to blame.
    """
    streak = schedule.consecutive_increase_rounds
    if streak > LONGEST_STREAK:
        room = "here" if schedule.yoke.rounds > len(schedule.increase_rounds) else "deeper"
        message = IN_A_ROW(streak=streak, most=LONGEST_STREAK, room=room)
        yield Remark(WarningCode.MANY_INCREASE_ROUNDS_IN_A_ROW, message, schedule.yoke.label, path)


def adjustment_remarks(adjusted: AdjustedYoke) -> Iterator[Remark]:
    """What deserves a word in one adjusted yoke: the way to take, and a way that is another one under its name.

    adjusted: one size.
    """
    made = {way.method: way.schedule for way in adjusted.options if isinstance(way.schedule, Schedule)}
    closer, double = made.get("closer"), made.get("double_body")
    if closer and double and closer.increase_rounds == double.increase_rounds:
        yield Remark(WarningCode.DOUBLE_BODY_EQUALS_CLOSER, DOUBLE_EQUALS_CLOSER(), closer.yoke.label)
    if adjusted.recommended:
        yield from streak_remarks(made[adjusted.recommended])
