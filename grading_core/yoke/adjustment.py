"""The same yoke deeper or shallower: every way a knitter has, computed and compared.

The neck and the split keep their counts; only the rounds between change. The ways:

plain_rounds: rounds without increases after the last one are added or left out.
wider: for a deeper yoke, the same increases spaced wider.
closer: for a shallower yoke, the same increases spaced closer, down to every round.
double_body: for a shallower yoke, on the grid as written, two increases at a body edge in as many
rounds as it takes.

All of it is common practice, no source; that a yoke too deep for its wearer is mended by doubling body
increases, so that the counts at the split stay, among it.
"""

from __future__ import annotations

from collections.abc import Callable, Sequence
from dataclasses import dataclass, replace
from fractions import Fraction

from grading_core.codes import ProblemCode, ReasonCode
from grading_core.errors import Check, Impossible, Nearest, Problem, check
from grading_core.fabric import Fabric
from grading_core.units import to_places
from grading_core.unknown import is_unknown
from grading_core.wording import counted, repeated
from grading_core.yoke.request import Adjustment, Options, WrittenYoke, Yoke
from grading_core.yoke.result import (
    LONGEST_STREAK,
    METHODS,
    AdjustedYoke,
    Method,
    RoundsAndDepth,
    Schedule,
    SizeSchedule,
    Way,
)
from grading_core.yoke.schedule import finish, needed_rounds, respace, schedule

LONGEST_PLAIN_SHARE = Fraction(1, 4)
"""A larger share of a yoke left plain before the split shows as a straight piece (common practice, no
source)."""

_Attempt = tuple[Schedule | Impossible, int | None]
"""The schedule that a way comes to, and the fewest rounds that it can reach, None where they were not looked for."""


@dataclass(frozen=True, slots=True)
class _Change:
    """What every way has to do: from the yoke before to so many rounds, at the gauge of the adjusted yoke."""

    before: Schedule
    rounds: int
    gauge: Fabric

    @property
    def written(self) -> int:
        """The rounds as written."""
        return self.before.yoke.rounds


def written_problems(size: WrittenYoke) -> Check[None]:
    """Where written increase rounds don't lead from the neck to the split.

    size: any. Each increase round is named that is out of order, beyond the yoke or without an increase, and the list
    where its sum is not the difference of split and neck.
    """
    yield from _order_problems(size)
    for edge, section in enumerate(("back", "front", "sleeve")):
        yield from _sum_problems(size, edge, section)


@check
def _order_problems(size: WrittenYoke) -> Check[None]:
    previous = 0
    for place, each in enumerate(size.increase_rounds or ()):
        here = ("increase_rounds", place)
        if not is_unknown(each.round):
            if each.round <= previous:
                detail = f"doesn't come after round {previous}."
                yield Problem((*here, "round"), ProblemCode.ROUNDS_OUT_OF_ORDER, detail)
            elif not is_unknown(size.yoke.rounds) and each.round > size.yoke.rounds:
                detail = f"lies beyond the {size.yoke.rounds} rounds of the yoke."
                yield Problem((*here, "round"), ProblemCode.ROUND_OUT_OF_RANGE, detail)
            previous = max(previous, each.round)
        if not any(is_unknown(number) or number for number in each.increases):
            yield Problem(here, ProblemCode.ROUND_WITHOUT_INCREASE, "has no increase.")


@check
def _sum_problems(size: WrittenYoke, edge: int, section: str) -> Check[None]:
    if size.increase_rounds is None:
        return
    written = sum(each.increases[edge] for each in size.increase_rounds)
    needed = size.yoke.increases[edge]
    if written != needed:
        often = repeated(written) if written else "never"
        detail = f"increase each {section} edge {often}, and from neck to split it takes {needed}."
        yield Problem(("increase_rounds",), ProblemCode.INCREASES_DO_NOT_ADD_UP, detail)


def adjust(size: WrittenYoke, adjustment: Adjustment, options: Options, gauge: Fabric) -> AdjustedYoke:
    """Every way to make one size's yoke deeper or shallower, and the one to take.

    size: the yoke as written, free of contradictions. adjustment: how much. options: the grid and
    the orders asked for; whether doubling is allowed there does not restrict the ways. gauge: the pattern's.

    >>> from grading_core.gauge import Gauge
    >>> from grading_core.sections import Sections
    >>> gauge = Gauge.over(Fraction(22), Fraction(31), Fraction(10))
    >>> written = WrittenYoke(Yoke("S", 60, Sections(34, 34, 12), Sections(82, 82, 50)))
    >>> adjusted = adjust(written, Adjustment(rounds=42), Options(), gauge)
    >>> adjusted.recommended, adjusted.options[3].schedule.doubled_rounds
    ('double_body', 3)
    """
    written = size.yoke.rounds
    rounds, own_gauge = adjustment.new_rounds(written, gauge), adjustment.fabric(gauge)
    before: Schedule | Impossible
    if size.increase_rounds is None:
        before = schedule(size.yoke, options, gauge)
    else:
        before = finish(size.yoke, size.increase_rounds, options.line_stitches, gauge)
    attempts: Sequence[_Attempt]
    recommended: Method | None
    if isinstance(before, Impossible):
        refused = Impossible(
            ReasonCode.WRITTEN_YOKE_IMPOSSIBLE,
            "The yoke as written is impossible itself: " + before.reason,
            before.nearest,
        )
        attempts = [(refused, None)] * len(METHODS)
        recommended, why = None, refused.reason
    else:
        change, grid = _Change(before, rounds, own_gauge), _written_grid(size, options)
        attempts = (
            _plain_rounds(change, options),
            _wider(change, grid),
            _closer(change, grid, replace(options, step=1)),
            _double_body(change, grid),
        )
        recommended, why = _recommend(change, attempts)
    depth_cm, target_cm = own_gauge.height_cm(rounds), adjustment.target_cm(written, gauge)
    ways = tuple(
        Way(
            method=method,
            rounds=rounds,
            depth_cm=depth_cm,
            difference_cm=None if target_cm is None else depth_cm - target_cm,
            chart_rows_change=rounds - written,
            schedule=found,
            shallowest=None if fewest is None else RoundsAndDepth(fewest, own_gauge.height_cm(fewest)),
        )
        for method, (found, fewest) in zip(METHODS, attempts, strict=True)
    )
    return AdjustedYoke(SizeSchedule(size.yoke, gauge.height_cm(written), before), ways, recommended, why)


def _written_grid(size: WrittenYoke, options: Options) -> Options:
    """The grid on which the yoke is written: that of its own increase rounds where it has a list."""
    if not size.increase_rounds:
        return options
    if options.first_increase_round is None:
        options = replace(options, first_increase_round=size.increase_rounds[0].round)
    on_grid = all((each.round - options.first) % options.step == 0 for each in size.increase_rounds)
    return options if on_grid else replace(options, step=1)


def _plain_rounds(change: _Change, options: Options) -> _Attempt:
    before = change.before
    spare = max(0, before.plain_rounds_at_end - options.plain_rounds_at_end)
    return _attempt(
        change,
        max(1, change.written - spare),
        lambda yoke: finish(yoke, before.increase_rounds, before.line_stitches, change.gauge),
        f"Only {counted(spare, 'plain round')} can be left out after the last increase."
        if spare
        else "No plain round can be left out after the last increase.",
    )


def _wider(change: _Change, grid: Options) -> _Attempt:
    if change.rounds <= change.written:
        return Impossible(ReasonCode.FOR_DEEPER_YOKES, "Spacing the increases wider is for a deeper yoke."), None
    increase_rounds = change.before.increase_rounds
    return _attempt(
        change,
        max(change.written + 1, _fewest_rounds(len(increase_rounds), grid)),
        lambda yoke: respace(increase_rounds, yoke, grid, change.gauge),
        "The plain rounds wanted before the split leave too few rounds on the grid.",
    )


def _closer(change: _Change, grid: Options, every_round: Options) -> _Attempt:
    if change.rounds >= change.written:
        return Impossible(ReasonCode.FOR_SHALLOWER_YOKES, "Spacing the increases closer is for a shallower yoke."), None
    increase_rounds = change.before.increase_rounds
    count = len(increase_rounds)
    roomy = change.rounds >= _fewest_rounds(count, grid)
    return _attempt(
        change,
        _fewest_rounds(count, every_round),
        lambda yoke: respace(increase_rounds, yoke, grid if roomy else every_round, change.gauge),
        f"{counted(count, 'increase round')} don't fit, not even with one in every round.",
    )


def _double_body(change: _Change, grid: Options) -> _Attempt:
    if change.rounds >= change.written:
        return Impossible(ReasonCode.FOR_SHALLOWER_YOKES, "Doubling body increases is for a shallower yoke."), None
    doubling = replace(grid, double_body="if_needed")

    def plan(yoke: Yoke) -> Schedule:
        found = schedule(yoke, doubling, change.gauge)
        assert isinstance(found, Schedule)  # the fewest rounds below are those that it needs
        return found

    increases = change.before.yoke.increases
    needed = needed_rounds(increases, doubling=True)
    back, front, sleeve = increases
    limit = (
        "the sleeve increases, which are not doubled,"
        if sleeve * 2 >= max(back, front)
        else "the body increases, two at an edge in every increase round,"
    )
    return _attempt(
        change,
        _fewest_rounds(needed, doubling),
        plan,
        f"On the written grid {limit} need {counted(needed, 'increase round')}.",
    )


def _fewest_rounds(increase_rounds: int, grid: Options) -> int:
    """The fewest rounds of a yoke whose grid has room for so many increase rounds."""
    if increase_rounds == 0:
        return max(1, grid.plain_rounds_at_end)
    return grid.first + (increase_rounds - 1) * grid.step + grid.plain_rounds_at_end


def _attempt(change: _Change, shallowest: int, plan: Callable[[Yoke], Schedule], reason: str) -> _Attempt:
    """One way, planned where the rounds allow it; otherwise why not, with the shallowest yoke that it can reach."""
    if change.rounds >= shallowest:
        return plan(replace(change.before.yoke, rounds=change.rounds)), shallowest
    reached = to_places(change.gauge.height_cm(shallowest))
    impossible = Impossible(
        ReasonCode.YOKE_TOO_SHALLOW,
        f"{reason} The shallowest yoke this way has {counted(shallowest, 'round')} ({reached} cm), "
        f"and {change.rounds} are asked.",
        (Nearest(("rounds",), shallowest),),
    )
    return impossible, shallowest


def _short(schedule: Schedule) -> bool:
    """Whether no more increase rounds follow one another than a raglan line bears."""
    return schedule.consecutive_increase_rounds <= LONGEST_STREAK


def _recommend(change: _Change, attempts: Sequence[_Attempt]) -> tuple[Method | None, str]:
    """The way that disturbs the yoke least, and why."""
    plain, wider, closer, double = (found if isinstance(found, Schedule) else None for found, _ in attempts)
    rounds, written = change.rounds, change.written
    if rounds == written:
        return "plain_rounds", "The rounds stay as they are: work the yoke as written."
    if plain and rounds < written:
        return "plain_rounds", "Leaving out plain rounds after the last increase changes nothing else."
    if plain and (wider is None or plain.plain_rounds_at_end <= LONGEST_PLAIN_SHARE * rounds):
        return ("plain_rounds", "Plain rounds after the last increase change no increase and let the chart run on.")
    if wider:
        return "wider", (
            f"Plain rounds alone would leave {plain.plain_rounds_at_end if plain else 0} of "
            f"{rounds} rounds straight before the split; spaced wider, the raglan line stays even."
        )
    if double and not double.doubled_rounds:
        if closer and (_short(closer) or closer.consecutive_increase_rounds <= double.consecutive_increase_rounds):
            return "closer", "The increases still fit, none of them doubled, when spaced closer."
        return "double_body", (
            "Worked in the same rounds, body and sleeve increases fit on the written grid, none of them doubled."
        )
    if double and closer and _short(closer) and not _short(double):
        return "closer", (
            f"Doubled, the increases would follow one another in {double.consecutive_increase_rounds} rounds; spaced "
            "closer they have room between them."
        )
    if double:
        doubled = counted(double.doubled_rounds, "round")
        return "double_body", (
            f"Two body increases at an edge in {doubled} keep the increases on the written grid, the sleeves "
            "single and every count at the split."
        )
    if closer:
        return (
            "closer",
            "The written grid has too few rounds even with doubled body increases, so the increases come closer.",
        )
    reachable = [shallowest for _, shallowest in attempts if shallowest is not None]
    return None, f"No way reaches {rounds} rounds; the shallowest yoke possible has {min(reachable)}."
