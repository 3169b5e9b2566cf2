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

from grading_core.codes import ProblemCode, ReasonCode
from grading_core.errors import Check, Impossible, Nearest, Problem, check
from grading_core.fabric import Fabric
from grading_core.fraction import Fraction
from grading_core.sentences import CM, COUNT, SENTENCE, TOKEN, Saying, Sentence
from grading_core.unknown import is_unknown
from grading_core.wording import repeated
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

WRITTEN_IMPOSSIBLE = Saying("reason.written_yoke_impossible", reason=SENTENCE)
FOR_DEEPER = Saying("reason.for_deeper_yokes")
FOR_SHALLOWER = Saying("reason.for_shallower_yokes", method=TOKEN)
TOO_SHALLOW = Saying("reason.yoke_too_shallow", limit=SENTENCE, rounds=COUNT, depth=CM, asked=COUNT)
NO_SPARE_ROUNDS = Saying("reason.yoke_too_shallow_plain_rounds", spare=COUNT)
NO_WIDER_GRID = Saying("reason.yoke_too_shallow_wider")
NO_CLOSER_GRID = Saying("reason.yoke_too_shallow_closer", needed=COUNT)
NO_ROUNDS_TO_DOUBLE = Saying("reason.yoke_too_shallow_double_body", needed=COUNT, limit=TOKEN)
"""limit: whether the increases of the sleeves need so many rounds, or those of the body."""

AS_WRITTEN = Saying("why.as_written")
FEWER_PLAIN = Saying("why.fewer_plain_rounds")
MORE_PLAIN = Saying("why.more_plain_rounds")
WIDER = Saying("why.wider", plain=COUNT, rounds=COUNT)
CLOSER = Saying("why.closer")
CLOSER_THAN_DOUBLED = Saying("why.closer_than_doubled", streak=COUNT)
CLOSER_ALONE = Saying("why.closer_alone")
TOGETHER = Saying("why.together")
DOUBLED = Saying("why.double_body", rounds=COUNT)
NO_WAY = Saying("why.no_way", rounds=COUNT, shallowest=COUNT)

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
        reason = WRITTEN_IMPOSSIBLE(reason=before.reason)
        refused = Impossible(ReasonCode.WRITTEN_YOKE_IMPOSSIBLE, reason, before.nearest)
        attempts = [(refused, None)] * len(METHODS)
        recommended, why = None, reason
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
        NO_SPARE_ROUNDS(spare=spare),
    )


def _wider(change: _Change, grid: Options) -> _Attempt:
    if change.rounds <= change.written:
        return Impossible(ReasonCode.FOR_DEEPER_YOKES, FOR_DEEPER()), None
    increase_rounds = change.before.increase_rounds
    return _attempt(
        change,
        max(change.written + 1, _fewest_rounds(len(increase_rounds), grid)),
        lambda yoke: respace(increase_rounds, yoke, grid, change.gauge),
        NO_WIDER_GRID(),
    )


def _closer(change: _Change, grid: Options, every_round: Options) -> _Attempt:
    if change.rounds >= change.written:
        return Impossible(ReasonCode.FOR_SHALLOWER_YOKES, FOR_SHALLOWER(method="closer")), None
    increase_rounds = change.before.increase_rounds
    count = len(increase_rounds)
    roomy = change.rounds >= _fewest_rounds(count, grid)
    return _attempt(
        change,
        _fewest_rounds(count, every_round),
        lambda yoke: respace(increase_rounds, yoke, grid if roomy else every_round, change.gauge),
        NO_CLOSER_GRID(needed=count),
    )


def _double_body(change: _Change, grid: Options) -> _Attempt:
    if change.rounds >= change.written:
        return Impossible(ReasonCode.FOR_SHALLOWER_YOKES, FOR_SHALLOWER(method="double_body")), None
    doubling = replace(grid, double_body="if_needed")

    def plan(yoke: Yoke) -> Schedule:
        found = schedule(yoke, doubling, change.gauge)
        assert isinstance(found, Schedule)  # the fewest rounds below are those that it needs
        return found

    increases = change.before.yoke.increases
    needed = needed_rounds(increases, doubling=True)
    back, front, sleeve = increases
    limit = "sleeve" if sleeve * 2 >= max(back, front) else "body"
    return _attempt(change, _fewest_rounds(needed, doubling), plan, NO_ROUNDS_TO_DOUBLE(needed=needed, limit=limit))


def _fewest_rounds(increase_rounds: int, grid: Options) -> int:
    """The fewest rounds of a yoke whose grid has room for so many increase rounds."""
    if increase_rounds == 0:
        return max(1, grid.plain_rounds_at_end)
    return grid.first + (increase_rounds - 1) * grid.step + grid.plain_rounds_at_end


def _attempt(change: _Change, shallowest: int, plan: Callable[[Yoke], Schedule], limit: Sentence) -> _Attempt:
    """One way, planned where the rounds allow it; otherwise why not, with the shallowest yoke that it can reach."""
    if change.rounds >= shallowest:
        return plan(replace(change.before.yoke, rounds=change.rounds)), shallowest
    depth = change.gauge.height_cm(shallowest)
    reason = TOO_SHALLOW(limit=limit, rounds=shallowest, depth=depth, asked=change.rounds)
    return Impossible(ReasonCode.YOKE_TOO_SHALLOW, reason, (Nearest(("rounds",), shallowest),)), shallowest


def _short(schedule: Schedule) -> bool:
    """Whether no more increase rounds follow one another than a raglan line bears."""
    return schedule.consecutive_increase_rounds <= LONGEST_STREAK


def _recommend(change: _Change, attempts: Sequence[_Attempt]) -> tuple[Method | None, Sentence]:
    """The way that disturbs the yoke least, and why."""
    plain, wider, closer, double = (found if isinstance(found, Schedule) else None for found, _ in attempts)
    rounds, written = change.rounds, change.written
    if rounds == written:
        return "plain_rounds", AS_WRITTEN()
    if plain and rounds < written:
        return "plain_rounds", FEWER_PLAIN()
    if plain and (wider is None or plain.plain_rounds_at_end <= LONGEST_PLAIN_SHARE * rounds):
        return "plain_rounds", MORE_PLAIN()
    if wider:
        return "wider", WIDER(plain=plain.plain_rounds_at_end if plain else 0, rounds=rounds)
    if double and not double.doubled_rounds:
        if closer and (_short(closer) or closer.consecutive_increase_rounds <= double.consecutive_increase_rounds):
            return "closer", CLOSER()
        return "double_body", TOGETHER()
    if double and closer and _short(closer) and not _short(double):
        return "closer", CLOSER_THAN_DOUBLED(streak=double.consecutive_increase_rounds)
    if double:
        return "double_body", DOUBLED(rounds=double.doubled_rounds)
    if closer:
        return "closer", CLOSER_ALONE()
    reachable = [shallowest for _, shallowest in attempts if shallowest is not None]
    return None, NO_WAY(rounds=rounds, shallowest=min(reachable))
