"""Any increase or decrease plan: along rows, or evenly across one row.

Sources: the shaping formula as handbooks print it (see `shaping`). For a flat row the first gap is
halved, so that no shaping falls on an edge; printed in teaching articles beside the other
convention, equal sections on both sides of every shaping.
"""

from __future__ import annotations

from collections import Counter
from collections.abc import Iterable, Iterator, Sequence
from dataclasses import dataclass
from itertools import accumulate, groupby, pairwise
from typing import Literal, NamedTuple

from grading_core.codes import ProblemCode, ReasonCode
from grading_core.errors import Check, Impossible, Nearest, Problem, Remark, check, sound, under
from grading_core.sentences import COUNT, COUNTS, SENTENCES, TOKEN, Saying, Sentence
from grading_core.shaping import Phase, Spacing, phases, spread
from grading_core.wording import counted

Change = Literal["increase", "decrease"]
Worked = Literal["round", "flat"]
Edge = Literal["half", "full"]

RIGHT_SIDE = Saying("shaping.right_side", side=TOKEN)
_SPAN = {"worked": TOKEN, "first": COUNT, "last": COUNT, "rows": COUNT}
"""Rows from one to another. worked: whether they are rounds."""
PLAIN = Saying("shaping.plain", **_SPAN)
_EVERY = {**_SPAN, "every": COUNT, "times": COUNT, "change": COUNT, "stitches": COUNT}
"""change: stitches gained or lost in a shaping row. stitches: after all of them."""
INCREASE = Saying("shaping.increase", **_EVERY)
DECREASE = Saying("shaping.decrease", **_EVERY)
_CYCLE = {**_SPAN, "cycle": COUNTS, "times": COUNT, "change": COUNT, "stitches": COUNT}
INCREASE_CYCLE = Saying("shaping.increase_cycle", **_CYCLE)
DECREASE_CYCLE = Saying("shaping.decrease_cycle", **_CYCLE)

ROW = Saying("across.row", worked=TOKEN, steps=SENTENCES, stitches=COUNT)
_STEP = {"gap": COUNT, "times": COUNT}
"""gap: stitches worked before each shaping."""
INCREASE_STEP = Saying("across.increase", **_STEP)
DECREASE_STEP = Saying("across.decrease", **_STEP)
WORK_STEP = Saying("across.work", stitches=COUNT)

_TOO_FEW = {"needed": COUNT, "rows": COUNT, "room": COUNT, "missing": COUNT}
TOO_FEW_ROWS = Saying("reason.too_few_rounds_for_shaping", worked=TOKEN, **_TOO_FEW)
TOO_FEW_STITCHES = Saying(
    "reason.too_few_stitches", worked=TOKEN, change=TOKEN, stitches=COUNT, most=COUNT, asked=COUNT
)


@dataclass(frozen=True, slots=True, kw_only=True)
class RowPlan:
    """Stitches to be gained or lost over rows.

    stitches, to: the count before and after. rows: how many rows there are. stitches_per_shaping: gained or
    lost in one shaping row. step: 2 for right-side rows only or every second round, 1 for every row or round.
    spacing: the order of the intervals. plain_before, plain_after: rows kept plain at either end. worked: for the
    words, in the round or flat; None is flat where the step is 2.
    """

    name: str
    stitches: int
    to: int
    rows: int
    stitches_per_shaping: int = 2
    step: int = 1
    spacing: Spacing = "closest_first"
    plain_before: int = 0
    plain_after: int = 0
    worked: Worked | None = None

    @property
    def flat(self) -> bool:
        """Whether it is worked in rows."""
        return self.step == 2 if self.worked is None else self.worked == "flat"


@dataclass(frozen=True, slots=True, kw_only=True)
class AcrossPlan:
    """Stitches to be gained or lost evenly across one row.

    stitches: on the needles. across: how many to increase or decrease. worked: in the round or flat. edge: for
    flat work, whether the gaps at the edges are half of the others or as large as they.
    """

    name: str
    stitches: int
    across: int
    change: Change
    worked: Worked = "round"
    edge: Edge = "half"


@dataclass(frozen=True, slots=True)
class ShapingRequest:
    """Plans to be scheduled, in the order of the answer."""

    plans: tuple[RowPlan | AcrossPlan, ...]


class Interval(NamedTuple):
    """Rows, or stitches of a row, from one shaping to the next, with how often they come."""

    every: int
    times: int


@dataclass(frozen=True, slots=True, kw_only=True)
class RowSchedule:
    """Where the shaping rows of a plan fall.

    shaping_rows: counted from 1. phases: all rows without gap or overlap. plain_before, plain_after: rows outside the
    intervals.
    """

    plan: RowPlan
    shaping_rows: tuple[int, ...]
    phases: tuple[Phase[int], ...]
    plain_before: int
    plain_after: int

    @property
    def intervals(self) -> tuple[Interval, ...]:
        """In the order of first use."""
        return _intervals(stop - start for start, stop in pairwise((self.plain_before, *self.shaping_rows)))

    @property
    def rows(self) -> int:
        """How many rows there are."""
        return self.plan.rows

    @property
    def plain(self) -> int:
        """Rows outside the intervals."""
        return self.plain_before + self.plain_after

    @property
    def result(self) -> int:
        """Stitches after the last row."""
        return self.plan.to

    def instructions(self) -> tuple[Sentence, ...]:
        """The schedule in sentences, with the count after each; for right-side rows, first which they are."""
        return tuple(self._sentences())

    def _sentences(self) -> Iterator[Sentence]:
        plan = self.plan
        if plan.flat and plan.step == 2 and self.shaping_rows:
            yield RIGHT_SIDE(side="right" if self.shaping_rows[0] % 2 else "wrong")
        stitches, grows = plan.stitches, plan.to > plan.stitches
        for phase in self.phases:
            first, last = phase.from_row, phase.to_row
            span = {"worked": _worked(plan), "first": first, "last": last, "rows": last - first + 1}
            if not phase.times:
                yield PLAIN(**span)
                continue
            change = plan.stitches_per_shaping
            stitches += (1 if grows else -1) * phase.times * len(phase.cycle) * change
            done = {"times": phase.times, "change": change, "stitches": stitches}
            if len(phase.every) > 1:
                yield (INCREASE_CYCLE if grows else DECREASE_CYCLE)(**span, cycle=phase.every, **done)
            else:
                yield (INCREASE if grows else DECREASE)(**span, every=phase.every[0], **done)


@dataclass(frozen=True, slots=True, kw_only=True)
class AcrossSchedule:
    """Where the shapings of a row fall.

    after: for every shaping, how many of the old stitches are worked when it is done. intervals: distances between
    shapings, in the order of first use; in the round the first one counts from the start of the round. first, last: in
    flat work, stitches worked when the first shaping is done, and left after the last. result: stitches after the row.
    """

    plan: AcrossPlan
    after: tuple[int, ...]
    intervals: tuple[Interval, ...]
    first: int
    last: int
    result: int

    @property
    def rows(self) -> int:
        """One."""
        return 1

    @property
    def plain(self) -> int:
        """The stitches of both edge gaps."""
        return self.first + self.last

    def instructions(self) -> tuple[Sentence, ...]:
        """The row in one sentence, with the count after it."""
        return (ROW(worked=self.plan.worked, steps=self.steps(), stitches=self.result),)

    def steps(self) -> tuple[Sentence, ...]:
        """What is worked one after the other across the row."""
        decrease = self.plan.change == "decrease"
        step = DECREASE_STEP if decrease else INCREASE_STEP
        gaps = [stop - start - 2 * decrease for start, stop in pairwise((0, *self.after))]
        runs = [(gap, len([*run])) for gap, run in groupby(gaps)]
        # thousands of them, few unlike: one sentence for all alike
        told = {run: step(gap=run[0], times=run[1]) for run in dict.fromkeys(runs)}
        shaped = tuple([told[run] for run in runs])
        return (*shaped, WORK_STEP(stitches=self.last)) if self.last else shaped


@dataclass(frozen=True, slots=True)
class ShapingSchedule:
    """A plan with its schedule, or why there is none."""

    plan: RowPlan | AcrossPlan
    schedule: RowSchedule | AcrossSchedule | Impossible


@dataclass(frozen=True, slots=True)
class ShapingSchedules:
    """The schedules of all plans, in the order of the request."""

    plans: tuple[ShapingSchedule, ...]
    remarks: tuple[Remark, ...] = ()


@check
def plan_problems(plans: Sequence[RowPlan | AcrossPlan]) -> Check[None]:
    """Where plans contradict themselves.

    plans: in the order of the request. Named are a difference that is not a
    multiple of the stitches per shaping, plain rows that are more than all rows, and decreases that
    leave nothing.

    >>> next(plan_problems([RowPlan(name="sleeve", stitches=60, to=45, rows=90)])).path
    ('plans', 0, 'to')
    """
    for index, plan in enumerate(plans):
        yield from under(("plans", index), _plan_problems(plan))


@check
def _plan_problems(plan: RowPlan | AcrossPlan) -> Check[None]:
    if isinstance(plan, AcrossPlan):
        yield from _across_problems(plan)
    else:
        yield from _difference_problems(plan)
        yield from _plain_row_problems(plan)


@check
def _across_problems(plan: AcrossPlan) -> Check[None]:
    if plan.change == "decrease" and plan.across >= plan.stitches:
        detail = f"decreases leave nothing of {counted(plan.stitches, 'stitch')}."
        yield Problem(("across",), ProblemCode.NOTHING_LEFT, detail)


@check
def _difference_problems(plan: RowPlan) -> Check[None]:
    if (plan.to - plan.stitches) % plan.stitches_per_shaping:
        detail = (
            f"differs from {plan.stitches} by no multiple of the {plan.stitches_per_shaping} stitches of one shaping "
            "row."
        )
        yield Problem(("to",), ProblemCode.NOT_A_MULTIPLE, detail)


@check
def _plain_row_problems(plan: RowPlan) -> Check[None]:
    plain = plan.plain_before + plan.plain_after
    if plain > plan.rows:
        detail = f"are fewer than the {plain} that are to stay plain."
        yield Problem(("rows",), ProblemCode.PLAIN_EXCEEDS_ROWS, detail)


def shaping_problems(request: ShapingRequest) -> Check[None]:
    """Where the plans of a request contradict themselves.

    request: any.
    """
    return plan_problems(request.plans)


def shaping_schedules(request: ShapingRequest) -> ShapingSchedules:
    """The schedule of every plan, or why there is none.

    Raises ContradictionError for plans that contradict themselves (see `plan_problems`).

    >>> plan = AcrossPlan(name="hem", stitches=48, across=6, change="increase")
    >>> shaping_schedules(ShapingRequest((plan,))).plans[0].schedule.result
    54
    """
    sound(shaping_problems(request))
    return ShapingSchedules(
        tuple(
            ShapingSchedule(plan, across_row(plan) if isinstance(plan, AcrossPlan) else along_rows(plan))
            for plan in request.plans
        )
    )


def along_rows(plan: RowPlan) -> RowSchedule | Impossible:
    """The shaping rows of a plan: at most two neighbouring intervals on the grid.

    plan: free of contradictions (see `plan_problems`).

    Source: "every 3rd row 4 times, every 4th row 32 times" for 36 over 140 rows, a teaching article on the
    formula (about 2006).

    >>> along_rows(RowPlan(name="side", stitches=36, to=0, rows=140, stitches_per_shaping=1)).intervals
    (Interval(every=3, times=4), Interval(every=4, times=32))
    """
    shapings = abs(plan.to - plan.stitches) // plan.stitches_per_shaping
    room = plan.rows - plan.plain_before - plan.plain_after
    steps, surplus = divmod(room, plan.step)
    if shapings > steps:
        return _too_many(plan, shapings, room)
    spaced = spread(shapings, steps, plan.spacing)
    before = plan.plain_before + spaced.before * plan.step
    rows = tuple([before + (place - spaced.before) * plan.step for place in spaced.positions()])
    return RowSchedule(
        plan=plan,
        shaping_rows=rows,
        phases=_phases_after(before, rows, plan),
        plain_before=before,
        plain_after=plan.plain_after + spaced.after * plan.step + surplus,
    )


def across_row(plan: AcrossPlan) -> AcrossSchedule | Impossible:
    """Increases or decreases spread evenly across one row.

    plan: free of contradictions (see `plan_problems`). In the round the distances are the whole row
    in at most two neighbouring numbers, the larger first. Flat with half gaps at the edges, each shaping
    stands in the middle of its share of the row; with full gaps, n shapings stand between n + 1 sections.

    Source: increase 4 in 51 stitches, in the round after 13, 26, 39 and 51, flat after 6, 19, 32 and 45
    (a yarn shop's teaching article).

    >>> plan = AcrossPlan(name="yoke", stitches=51, across=4, change="increase")
    >>> across_row(plan).after
    (13, 26, 39, 51)
    >>> from dataclasses import replace
    >>> across_row(replace(plan, worked="flat")).after
    (6, 19, 32, 45)
    """
    most = _most_across(plan)
    if plan.across > most:
        reason = TOO_FEW_STITCHES(
            worked=plan.worked, change=plan.change, stitches=plan.stitches, most=most, asked=plan.across
        )
        return Impossible(ReasonCode.TOO_FEW_STITCHES, reason, (Nearest(("across",), most),) if most else ())
    after = _places(plan)
    first = after[0] if plan.worked == "flat" and after else 0
    distances = pairwise(after if plan.worked == "flat" else (0, *after))
    change = plan.across if plan.change == "increase" else -plan.across
    return AcrossSchedule(
        plan=plan,
        after=after,
        intervals=_intervals(stop - start for start, stop in distances),
        first=first,
        last=plan.stitches - (after[-1] if after else 0),
        result=plan.stitches + change,
    )


def _worked(plan: RowPlan) -> Worked:
    return "flat" if plan.flat else "round"


def _phases_after(before: int, rows: Sequence[int], plan: RowPlan) -> tuple[Phase[int], ...]:
    """Phases in which the rows before the first interval belong to a plain stretch."""
    events = [(row - before, plan.stitches_per_shaping) for row in rows]
    found = [
        Phase(phase.from_row + before, phase.to_row + before, phase.cycle, phase.times)
        for phase in phases(events, plan.rows - before)
    ]
    if before and found and not found[0].times:
        return (found[0]._replace(from_row=1), *found[1:])
    return (Phase(1, before, (), 0), *found) if before else tuple(found)


def _too_many(plan: RowPlan, shapings: int, room: int) -> Impossible:
    missing = shapings * plan.step - room
    nearest = [Nearest(("rows",), plan.rows + missing)]
    if plan.step == 2 and shapings <= room:
        nearest.append(Nearest(("step",), 1))
    if plan.plain_before >= missing:
        nearest.append(Nearest(("plain_before",), plan.plain_before - missing))
    if plan.plain_after >= missing:
        nearest.append(Nearest(("plain_after",), plan.plain_after - missing))
    reason = TOO_FEW_ROWS(worked=_worked(plan), needed=shapings, rows=shapings * plan.step, room=room, missing=missing)
    return Impossible(ReasonCode.TOO_FEW_ROUNDS, reason, tuple(nearest))


def _places(plan: AcrossPlan) -> tuple[int, ...]:
    """For each shaping, how many old stitches are worked when it is done."""
    stitches, many, used = plan.stitches, plan.across, 2 if plan.change == "decrease" else 0
    if plan.worked == "round":
        return spread(many, stitches, "widest_first").positions()
    if plan.edge == "half":
        # the middle of each share, halves up; a decrease takes one stitch on either side of it
        after = [(stitches * (2 * i + 1) + many) // (2 * many) + used // 2 for i in range(many)]
    else:
        plain = stitches - used * many
        after = [(2 * plain * i + many + 1) // (2 * (many + 1)) + used * i for i in range(1, many + 1)]
    return _off_edges(after, stitches) if used else tuple(after)


def _off_edges(after: Sequence[int], stitches: int) -> tuple[int, ...]:
    """Decreases of a flat row moved as little as it takes to keep a stitch plain at either edge."""
    from_first = list(accumulate(after, lambda before, place: max(place, before + 2), initial=1))[1:]
    from_last = accumulate(reversed(from_first), lambda later, place: min(place, later - 2), initial=stitches + 1)
    return tuple(from_last)[:0:-1]


def _most_across(plan: AcrossPlan) -> int:
    """The most shapings that fit: a decrease takes two stitches, and flat work keeps its edge stitches plain."""
    if plan.change == "decrease":
        return max(0, plan.stitches - 2 * (plan.worked == "flat")) // 2
    return plan.stitches - (plan.worked == "flat")


def _intervals(distances: Iterable[int]) -> tuple[Interval, ...]:
    """Each distance with how often it comes, in the order of first use."""
    return tuple(Interval(every, times) for every, times in Counter(distances).items())
