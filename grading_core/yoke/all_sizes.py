"""The yokes of every size in one go: increase schedules, and yokes made deeper or shallower.

What contradicts itself is refused as a whole, every wrong place at once. What is sound but cannot be
knitted in one size is answered as such, and the other sizes are computed.
"""

from __future__ import annotations

from collections.abc import Callable, Iterator, Sequence
from dataclasses import dataclass
from fractions import Fraction

from grading_core.errors import Impossible, Problem, duplicate_labels, raise_if_any
from grading_core.gauge import Gauge
from grading_core.limits import MAX_ROUNDS, MAX_ROUNDS_IN_ALL
from grading_core.sections import IncreaseRound, Sections
from grading_core.yoke.adjustment import AdjustedYoke, Adjustment, WrittenYoke, adjust, written_problems
from grading_core.yoke.schedule import Options, Schedule, Yoke, run_instructions, schedule, yoke_problems

MOST_WAYS = 3
"""So many of the ways to adjust a yoke can be possible at a time: none is for both a deeper and a shallower one.
An adjusted yoke counts its rounds as written, and once for each of them."""


@dataclass(frozen=True, slots=True, kw_only=True)
class YokeRequest:
    """One size's yoke as it is sent.

    Exactly one of rounds and depth_cm. increase_rounds: the yoke's own list, where it has one. change: how
    much deeper or shallower, where it isn't the same for all sizes.
    """

    label: str
    neck: Sections
    split: Sections
    rounds: int | None = None
    depth_cm: Fraction | None = None
    increase_rounds: tuple[IncreaseRound, ...] | None = None
    change: Adjustment | None = None


@dataclass(frozen=True, slots=True)
class SizeSchedule:
    """One size's yoke and its schedule, or why there is none.

    difference_cm: the depth made minus the depth asked for, None where rounds were asked for.
    """

    yoke: Yoke
    depth_cm: Fraction
    schedule: Schedule | Impossible
    difference_cm: Fraction | None = None


@dataclass(frozen=True, slots=True)
class RaglanSchedules:
    """The schedules of all sizes. instructions: with size runs, none where the sizes are too unlike."""

    sizes: tuple[SizeSchedule, ...]
    line_stitches: int
    instructions: tuple[str, ...]


def raglan_schedules(gauge: Gauge, options: Options, sizes: Sequence[YokeRequest]) -> RaglanSchedules:
    """Where every increase falls, in every size.

    gauge: for depths. options: the same for all sizes. sizes: in the order of the answer.

    Raises ContradictionError for labels used twice, a neck and a split that contradict each other, and yokes
    of no or too many rounds.

    >>> gauge = Gauge.over(Fraction(22), Fraction(31), Fraction(10))
    >>> small = YokeRequest(label="S", neck=Sections(34, 34, 12), split=Sections(40, 40, 16), depth_cm=Fraction(3))
    >>> raglan_schedules(gauge, Options(), [small]).sizes[0].yoke.rounds
    9
    """
    yokes = _checked(gauge, sizes)
    made = []
    for yoke, size in zip(yokes, sizes, strict=True):
        depth_cm = gauge.height_cm(yoke.rounds)
        difference_cm = None if size.depth_cm is None else depth_cm - size.depth_cm
        made.append(SizeSchedule(yoke, depth_cm, schedule(yoke, options, gauge), difference_cm))
    instructions = run_instructions([size.schedule for size in made]) if len(made) > 1 else ()
    return RaglanSchedules(tuple(made), options.line_stitches, instructions)


def yoke_adjustments(
    gauge: Gauge, options: Options, sizes: Sequence[YokeRequest], change: Adjustment | None = None
) -> tuple[AdjustedYoke, ...]:
    """Every way to make the yokes deeper or shallower, in every size.

    gauge, options, sizes: as for `raglan_schedules`. change: for sizes that bring none of their own.

    Raises ContradictionError as `raglan_schedules`, and for written increase rounds that don't lead from
    neck to split, sizes without a change, and changes to too many rounds. A change to no rounds at all is
    not wrong but impossible in every way.
    """

    def wrong(yokes: Sequence[Yoke]) -> Iterator[Problem]:
        yield from written_problems(
            [WrittenYoke(yoke, size.increase_rounds) for yoke, size in zip(yokes, sizes, strict=True)]
        )
        in_all = 0
        for index, (yoke, size) in enumerate(zip(yokes, sizes, strict=True)):
            wanted = size.change or change
            if wanted is None:
                detail = "is required where the request has none for all sizes."
                yield Problem(("sizes", index, "adjust"), detail)
                continue
            rounds = wanted.new_rounds(yoke.rounds, gauge)
            in_all += yoke.rounds + MOST_WAYS * rounds
            if rounds > MAX_ROUNDS:
                path = ("sizes", index, "adjust") if size.change else ("adjust",)
                yield Problem(path, f"gives size {size.label} more than {MAX_ROUNDS} rounds.")
        yield from _too_many_rounds(in_all, "as written and adjusted in every way")

    yokes = _checked(gauge, sizes, wrong)
    return tuple(
        adjust(WrittenYoke(yoke, size.increase_rounds), size.change or change or Adjustment(), options, gauge)
        for yoke, size in zip(yokes, sizes, strict=True)
    )


def _checked(
    gauge: Gauge,
    sizes: Sequence[YokeRequest],
    further: Callable[[Sequence[Yoke]], Iterator[Problem]] = lambda yokes: iter(()),
) -> list[Yoke]:
    """The yokes with their rounds, free of contradictions."""
    problems = duplicate_labels([size.label for size in sizes])
    yokes = []
    for index, size in enumerate(sizes):
        rounds = size.rounds if size.rounds is not None else gauge.rows(size.depth_cm or Fraction(0))
        if not 1 <= rounds <= MAX_ROUNDS:
            detail = f"comes to {rounds} rounds, and a yoke has 1 to {MAX_ROUNDS}."
            problems.append(Problem(("sizes", index, "depth"), detail))
        yokes.append(Yoke(size.label, rounds, size.neck, size.split))
    problems += _too_many_rounds(sum(yoke.rounds for yoke in yokes), "together")
    problems += yoke_problems(yokes)
    problems += further(yokes)
    raise_if_any(problems)
    return yokes


def _too_many_rounds(in_all: int, which: str) -> list[Problem]:
    if in_all <= MAX_ROUNDS_IN_ALL:
        return []
    detail = f"have {in_all} rounds {which}, and one answer holds at most {MAX_ROUNDS_IN_ALL}."
    return [Problem(("sizes",), detail)]
