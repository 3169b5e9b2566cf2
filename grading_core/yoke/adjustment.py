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
from typing import Literal

from grading_core.errors import Impossible, Nearest, Path, Problem
from grading_core.gauge import Gauge
from grading_core.sections import IncreaseRound
from grading_core.units import to_places
from grading_core.wording import counted, repeated
from grading_core.yoke.schedule import Options, Schedule, Yoke, finish, needed_rounds, respace, schedule

Method = Literal["plain_rounds", "wider", "closer", "double_body"]
METHODS: tuple[Method, ...] = ("plain_rounds", "wider", "closer", "double_body")

LONGEST_PLAIN_SHARE = Fraction(1, 4)
"""A larger share of a yoke left plain before the split shows as a straight piece (common practice, no
source)."""


@dataclass(frozen=True, slots=True)
class WrittenYoke:
    """A yoke as a pattern gives it.

    increase_rounds: its own list, or None where it follows from counts and options.
    """

    yoke: Yoke
    increase_rounds: tuple[IncreaseRound, ...] | None = None


@dataclass(frozen=True, slots=True, kw_only=True)
class Adjustment:
    """How much deeper or shallower, in exactly one of five ways.

    depth_cm: the new depth. depth_change_cm: by how much it changes. rounds, rounds_change: the same
    in rounds. own_rows: a knitter's own rows over the span of the pattern's gauge, with which the written
    depth is wanted.
    """

    depth_cm: Fraction | None = None
    depth_change_cm: Fraction | None = None
    rounds: int | None = None
    rounds_change: int | None = None
    own_rows: Fraction | None = None

    def gauge(self, pattern: Gauge) -> Gauge:
        """The gauge at which the adjusted yoke is knitted: the knitter's own where her rows are given."""
        if self.own_rows is None:
            return pattern
        return replace(pattern, rows_per_cm=self.own_rows / pattern.rows_span_cm)

    def target_cm(self, written: int, gauge: Gauge) -> Fraction | None:
        """The depth that is wanted, None where rounds are.

        written: rounds as written. gauge: the pattern's.
        """
        if self.depth_cm is not None:
            return self.depth_cm
        if self.depth_change_cm is not None:
            return gauge.height_cm(written) + self.depth_change_cm
        return None if self.own_rows is None else gauge.height_cm(written)

    def new_rounds(self, written: int, gauge: Gauge) -> int:
        """The rounds of the adjusted yoke, which may be less than one where the change is too large.

        written: rounds as written. gauge: the pattern's. A depth is rounded to the nearest round.

        >>> gauge = Gauge.over(Fraction(22), Fraction(30), Fraction(10))
        >>> Adjustment(own_rows=Fraction(33)).new_rounds(60, gauge)
        66
        """
        target_cm = self.target_cm(written, gauge)
        if target_cm is not None:
            return self.gauge(gauge).rows(target_cm)
        return written + self.rounds_change if self.rounds_change is not None else self.rounds or 0


@dataclass(frozen=True, slots=True, kw_only=True)
class Way:
    """One way to adjust a yoke.

    rounds, depth_cm: of the adjusted yoke. adjusted: its schedule, or why this way is impossible.
    shallowest_rounds, shallowest_depth_cm: the least this way can reach, None where it was not looked for.
    """

    method: Method
    rounds: int
    depth_cm: Fraction
    adjusted: Schedule | Impossible
    shallowest_rounds: int | None = None
    shallowest_depth_cm: Fraction | None = None


@dataclass(frozen=True, slots=True, kw_only=True)
class AdjustedYoke:
    """Every way to adjust one size's yoke.

    written, depth_cm: the yoke as written. target_cm: the depth wanted, None where rounds are. before:
    the written schedule. ways: all methods, in the order of
    `METHODS`. recommended: one of them, or None. why: the reason, in a sentence.
    """

    written: Yoke
    depth_cm: Fraction
    target_cm: Fraction | None
    before: Schedule | Impossible
    ways: tuple[Way, ...]
    recommended: Method | None
    why: str


def written_problems(sizes: Sequence[WrittenYoke], path: Path = ("sizes",)) -> list[Problem]:
    """Where written increase rounds don't lead from the neck to the split.

    sizes: one per size. path: where they stand in the request. Each increase round is named that is out
    of order, beyond the yoke or without an increase, and each list whose sum is not the difference of split
    and neck.
    """
    problems: list[Problem] = []
    for index, size in enumerate(sizes):
        if size.increase_rounds is None:
            continue
        here = (*path, index, "increase_rounds")
        previous = 0
        for place, worked in enumerate(size.increase_rounds):
            if worked.round <= previous:
                detail = f"doesn't come after round {previous}."
                problems.append(Problem((*here, place, "round"), detail))
            elif worked.round > size.yoke.rounds:
                detail = f"lies beyond the {size.yoke.rounds} rounds of the yoke."
                problems.append(Problem((*here, place, "round"), detail))
            if not any(worked.increases):
                problems.append(Problem((*here, place), "has no increase."))
            previous = max(previous, worked.round)
        for edge, section in enumerate(("back", "front", "sleeve")):
            written = sum(worked.increases[edge] for worked in size.increase_rounds)
            wanted = size.yoke.increases[edge]
            if written != wanted:
                often = repeated(written) if written else "never"
                detail = f"increase each {section} edge {often}, and from neck to split it takes {wanted}."
                problems.append(Problem(here, detail))
    return problems


def adjust(size: WrittenYoke, change: Adjustment, options: Options, gauge: Gauge) -> AdjustedYoke:
    """Every way to make one size's yoke deeper or shallower, and the one to take.

    size: the yoke as written, free of contradictions. change: how much. options: the grid and
    the orders asked for; whether doubling is allowed there does not restrict the ways. gauge: the pattern's.

    >>> from grading_core.sections import Sections
    >>> gauge = Gauge.over(Fraction(22), Fraction(31), Fraction(10))
    >>> written = WrittenYoke(Yoke("S", 60, Sections(34, 34, 12), Sections(82, 82, 50)))
    >>> made = adjust(written, Adjustment(rounds=42), Options(), gauge)
    >>> made.recommended, made.ways[3].adjusted.doubled_rounds
    ('double_body', 3)
    """
    rounds = change.new_rounds(size.yoke.rounds, gauge)
    depth_cm, target_cm = gauge.height_cm(size.yoke.rounds), change.target_cm(size.yoke.rounds, gauge)
    knitted = change.gauge(gauge)
    grid = _written_grid(size, options)
    before: Schedule | Impossible
    if size.increase_rounds is None:
        before = schedule(size.yoke, options, gauge)
    else:
        before = finish(size.yoke, size.increase_rounds, options.line_stitches, gauge)
    if isinstance(before, Impossible):
        refused = Impossible("The yoke as written is impossible itself: " + before.reason, before.nearest)
        ways = tuple(
            Way(method=method, rounds=rounds, depth_cm=knitted.height_cm(rounds), adjusted=refused)
            for method in METHODS
        )
        return AdjustedYoke(
            written=size.yoke,
            depth_cm=depth_cm,
            target_cm=target_cm,
            before=before,
            ways=ways,
            recommended=None,
            why=refused.reason,
        )
    ways = (
        _plain_rounds(before, rounds, options, knitted),
        _wider(before, rounds, grid, knitted),
        _closer(before, rounds, grid, replace(options, step=1), knitted),
        _double_body(before, rounds, grid, knitted),
    )
    recommended, why = _recommend(before, rounds, ways)
    return AdjustedYoke(
        written=size.yoke,
        depth_cm=depth_cm,
        target_cm=target_cm,
        before=before,
        ways=ways,
        recommended=recommended,
        why=why,
    )


def _written_grid(size: WrittenYoke, options: Options) -> Options:
    """The grid on which the yoke is written: that of its own increase rounds where it has a list."""
    if not size.increase_rounds:
        return options
    if options.first_increase_round is None:
        options = replace(options, first_increase_round=size.increase_rounds[0].round)
    on_grid = all((worked.round - options.first) % options.step == 0 for worked in size.increase_rounds)
    return options if on_grid else replace(options, step=1)


def _plain_rounds(before: Schedule, rounds: int, options: Options, gauge: Gauge) -> Way:
    spare = max(0, before.plain_rounds_at_end - options.plain_rounds_at_end)
    shallowest = max(1, before.yoke.rounds - spare)
    return _way(
        "plain_rounds",
        before,
        rounds,
        gauge,
        shallowest,
        lambda yoke: finish(yoke, before.increase_rounds, before.line_stitches, gauge),
        f"Only {counted(spare, 'plain round')} can be left out after the last increase."
        if spare
        else "No plain round can be left out after the last increase.",
    )


def _wider(before: Schedule, rounds: int, grid: Options, gauge: Gauge) -> Way:
    if rounds <= before.yoke.rounds:
        return _refused("wider", rounds, gauge, "Spacing the increases wider is for a deeper yoke.")
    return _way(
        "wider",
        before,
        rounds,
        gauge,
        max(before.yoke.rounds + 1, _fewest_rounds(len(before.increase_rounds), grid)),
        lambda yoke: respace(before.increase_rounds, yoke, grid, gauge),
        "The plain rounds wanted before the split leave too few rounds on the grid.",
    )


def _closer(before: Schedule, rounds: int, grid: Options, every_round: Options, gauge: Gauge) -> Way:
    if rounds >= before.yoke.rounds:
        return _refused("closer", rounds, gauge, "Spacing the increases closer is for a shallower yoke.")
    count = len(before.increase_rounds)
    roomy = rounds >= _fewest_rounds(count, grid)
    return _way(
        "closer",
        before,
        rounds,
        gauge,
        _fewest_rounds(count, every_round),
        lambda yoke: respace(before.increase_rounds, yoke, grid if roomy else every_round, gauge),
        f"{counted(count, 'increase round')} don't fit, not even with one in every round.",
    )


def _double_body(before: Schedule, rounds: int, grid: Options, gauge: Gauge) -> Way:
    if rounds >= before.yoke.rounds:
        return _refused("double_body", rounds, gauge, "Doubling body increases is for a shallower yoke.")
    doubling = replace(grid, double_body="if_needed")

    def plan(yoke: Yoke) -> Schedule:
        made = schedule(yoke, doubling, gauge)
        assert isinstance(made, Schedule)  # the fewest rounds below are those that it needs
        return made

    needed = needed_rounds(before.yoke.increases, doubling=True)
    back, front, sleeve = before.yoke.increases
    limit = (
        "the sleeve increases, which are not doubled,"
        if sleeve * 2 >= max(back, front)
        else ("the body increases, two at an edge in every increase round,")
    )
    return _way(
        "double_body",
        before,
        rounds,
        gauge,
        _fewest_rounds(needed, doubling),
        plan,
        f"On the written grid {limit} need {counted(needed, 'increase round')}.",
    )


def _fewest_rounds(increase_rounds: int, grid: Options) -> int:
    """The fewest rounds of a yoke whose grid has room for so many increase rounds."""
    if increase_rounds == 0:
        return max(1, grid.plain_rounds_at_end)
    return grid.first + (increase_rounds - 1) * grid.step + grid.plain_rounds_at_end


def _way(
    method: Method,
    before: Schedule,
    rounds: int,
    gauge: Gauge,
    shallowest: int,
    plan: Callable[[Yoke], Schedule],
    reason: str,
) -> Way:
    """One way, planned where the rounds allow it; otherwise with the shallowest yoke that it can reach."""
    adjusted: Schedule | Impossible
    if rounds >= shallowest:
        adjusted = plan(replace(before.yoke, rounds=rounds))
    else:
        reached = to_places(gauge.height_cm(shallowest))
        adjusted = Impossible(
            f"{reason} The shallowest yoke this way has {counted(shallowest, 'round')} ({reached} cm), "
            f"and {rounds} are asked.",
            (Nearest(("rounds",), shallowest),),
        )
    return Way(
        method=method,
        rounds=rounds,
        depth_cm=gauge.height_cm(rounds),
        adjusted=adjusted,
        shallowest_rounds=shallowest,
        shallowest_depth_cm=gauge.height_cm(shallowest),
    )


def _refused(method: Method, rounds: int, gauge: Gauge, reason: str) -> Way:
    return Way(method=method, rounds=rounds, depth_cm=gauge.height_cm(rounds), adjusted=Impossible(reason))


def _recommend(before: Schedule, rounds: int, ways: Sequence[Way]) -> tuple[Method | None, str]:
    """The way that disturbs the yoke least, and why."""
    plain, wider, closer, double = (
        way.adjusted if isinstance(way.adjusted, Schedule) else None for way in ways
    )
    written = before.yoke.rounds
    if rounds == written:
        return "plain_rounds", "The rounds stay as they are: work the yoke as written."
    if plain and rounds < written:
        return "plain_rounds", "Leaving out plain rounds after the last increase changes nothing else."
    if plain and (wider is None or plain.plain_rounds_at_end <= LONGEST_PLAIN_SHARE * rounds):
        return (
            "plain_rounds",
            "Plain rounds after the last increase change no increase and let the chart run on.",
        )
    if wider:
        return "wider", (
            f"Plain rounds alone would leave {plain.plain_rounds_at_end if plain else 0} of "
            f"{rounds} rounds straight before the split; spaced wider, the raglan line stays even."
        )
    if double and not double.doubled_rounds:
        if closer:
            return "closer", "The increases still fit, none of them doubled, when spaced closer."
        return "double_body", (
            "Worked in the same rounds, body and sleeve increases fit on the written grid, none of them doubled."
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
    reachable = [way.shallowest_rounds for way in ways if way.shallowest_rounds is not None]
    return None, f"No way reaches {rounds} rounds; the shallowest yoke possible has {min(reachable)}."
