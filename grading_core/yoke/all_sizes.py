"""The yokes of every size in one go: increase schedules, and yokes made deeper or shallower.

What contradicts itself is refused as a whole, every wrong place at once. What is sound but cannot be
knitted in one size is answered as such, and the other sizes are computed.
"""

from __future__ import annotations

from collections.abc import Callable, Sequence
from dataclasses import replace

from grading_core.answer_sizes import is_answered, label_problems
from grading_core.codes import ProblemCode
from grading_core.errors import Check, Problem, check, sound, under
from grading_core.limits import MAX_ROUNDS, MAX_ROUNDS_IN_ALL
from grading_core.sentences import Sentence
from grading_core.unknown import UnknownError, shown, told
from grading_core.wording import known_run
from grading_core.yoke.adjustment import adjust, written_problems
from grading_core.yoke.remarks import adjustment_remarks, early_end_remarks
from grading_core.yoke.request import RaglanRequest, WrittenYoke, Yoke, YokeAdjustmentRequest
from grading_core.yoke.result import RaglanRuns, RaglanSchedules, Schedule, SizeSchedule, YokeAdjustments
from grading_core.yoke.schedule import schedule, yoke_problems
from grading_core.yoke.words import explained, run_instructions

MOST_WAYS = 3
"""So many of the ways to adjust a yoke can be possible at a time: none is for both a deeper and a shallower one.
An adjusted yoke counts its rounds as written, and once for each of them."""


def raglan_schedules(request: RaglanRequest) -> RaglanSchedules:
    """Where every increase falls, in every size that is answered.

    Raises ContradictionError for labels used twice or not at all, a neck and a split that contradict each other, and
    yokes of no or too many rounds.

    >>> from fractions import Fraction
    >>> from grading_core.gauge import Gauge
    >>> from grading_core.sections import Sections
    >>> from grading_core.yoke.request import YokeRequest
    >>> gauge = Gauge.over(Fraction(22), Fraction(31), Fraction(10))
    >>> small = YokeRequest(label="S", neck=Sections(34, 34, 12), split=Sections(40, 40, 16), depth_cm=Fraction(3))
    >>> raglan_schedules(RaglanRequest(gauge, (small,))).sizes[0].yoke.rounds
    9
    """
    gauge, options = request.gauge, request.options
    yokes = sound(raglan_problems(request))
    sizes = []
    for yoke, size in zip(yokes, request.sizes, strict=True):
        if not is_answered(yoke.label, request.answer_sizes):
            continue
        depth_cm = gauge.height_cm(yoke.rounds)
        difference_cm = None if size.depth_cm is None else depth_cm - size.depth_cm
        sizes.append(SizeSchedule(yoke, depth_cm, schedule(yoke, options, gauge), difference_cm))
    schedules = [size.schedule if isinstance(size.schedule, Schedule) else None for size in sizes]
    told = _told(schedules, options.line_stitches) if len(sizes) > 1 else ()
    remarks = [remark for each in schedules if each for remark in early_end_remarks(each, options)]
    runs = _runs([size.yoke for size in sizes], schedules, options.line_stitches)
    return RaglanSchedules(tuple(sizes), runs, told, tuple(remarks))


def yoke_adjustments(request: YokeAdjustmentRequest) -> YokeAdjustments:
    """Every way to make the yokes deeper or shallower, in every size that is answered.

    Raises ContradictionError as `raglan_schedules`, and for written increase rounds that don't lead from
    neck to split, sizes without an adjustment, and adjustments to too many rounds. One to no rounds at all is
    not wrong but impossible in every way.

    >>> from fractions import Fraction
    >>> from grading_core.gauge import Gauge
    >>> from grading_core.sections import Sections
    >>> from grading_core.yoke.request import Adjustment, WrittenYokeRequest
    >>> gauge = Gauge.over(Fraction(22), Fraction(31), Fraction(10))
    >>> small = WrittenYokeRequest(label="S", neck=Sections(34, 34, 12), split=Sections(40, 40, 16), rounds=9)
    >>> deeper = YokeAdjustmentRequest(gauge=gauge, sizes=(small,), adjust=Adjustment(rounds_change=1))
    >>> yoke_adjustments(deeper).sizes[0].recommended
    'plain_rounds'
    """
    yokes = sound(adjustment_problems(request))
    adjusted = tuple(
        adjust(WrittenYoke(yoke, sent.increase_rounds), adjustment, request.options, request.gauge)
        for yoke, sent in zip(yokes, request.sizes, strict=True)
        if is_answered(sent.label, request.answer_sizes)
        and (adjustment := sent.adjust or request.adjust)  # every size has one, or is refused above
    )
    return YokeAdjustments(adjusted, tuple(remark for size in adjusted for remark in adjustment_remarks(size)))


@check
def raglan_problems(request: RaglanRequest | YokeAdjustmentRequest) -> Check[list[Yoke]]:
    """Where the yokes of a request contradict themselves or are too large; makes the yokes.

    request: any. What a problem is about is unknown in the yokes.
    """
    sizes = request.sizes
    yield from label_problems(request.answer_sizes, [size.label for size in sizes])
    sent = [told(size.yoke, request.gauge) for size in sizes]
    yield from _too_many_rounds([yoke.rounds for yoke in sent], "together")
    yokes = []
    for index, yoke in enumerate(sent):
        yokes.append((yield from under(("sizes", index), _yoke_problems(yoke))))
    return yokes


def adjustment_problems(request: YokeAdjustmentRequest) -> Check[list[Yoke]]:
    """The same, and written increase rounds that don't lead from neck to split, sizes without an adjustment, and
    adjustments to too many rounds.

    request: any.
    """
    yokes = yield from raglan_problems(request)
    yield from _size_problems(request, yokes)
    return yokes


@check
def _yoke_problems(yoke: Yoke) -> Check[Yoke]:
    rounds = yield from _height_problems(yoke)
    whole = yield from yoke_problems(yoke)
    return whole if rounds is yoke.rounds else replace(whole, rounds=rounds)


@check
def _height_problems(yoke: Yoke) -> Check[int]:
    if not 1 <= yoke.rounds <= MAX_ROUNDS:
        detail = f"comes to {yoke.rounds} rounds, and a yoke has 1 to {MAX_ROUNDS}."
        yield Problem(("depth",), ProblemCode.ROUND_OUT_OF_RANGE, detail)
        raise UnknownError
    return yoke.rounds


@check
def _size_problems(request: YokeAdjustmentRequest, yokes: Sequence[Yoke]) -> Check[None]:
    in_all = []
    for index, (yoke, size) in enumerate(zip(yokes, request.sizes, strict=True)):
        yield from under(("sizes", index), written_problems(WrittenYoke(yoke, size.increase_rounds)))
        rounds = yield from _new_rounds(request, index, yoke)
        in_all.append(told(lambda written, new: written + MOST_WAYS * new, yoke.rounds, rounds))
    yield from _too_many_rounds(in_all, "as written and adjusted in every way")


@check
def _new_rounds(request: YokeAdjustmentRequest, index: int, yoke: Yoke) -> Check[int]:
    """The rounds that a size is adjusted to."""
    size = request.sizes[index]
    adjustment = size.adjust or request.adjust
    if adjustment is None:
        detail = "is required where the request has none for all sizes."
        yield Problem(("sizes", index, "adjust"), ProblemCode.MISSING_ADJUSTMENT, detail)
        raise UnknownError
    rounds = adjustment.new_rounds(yoke.rounds, request.gauge)
    if rounds > MAX_ROUNDS:
        path = ("sizes", index, "adjust") if size.adjust else ("adjust",)
        detail = f"gives size {shown(size.label)} more than {MAX_ROUNDS} rounds."
        yield Problem(path, ProblemCode.TOO_MANY_ROUNDS, detail)
        raise UnknownError
    return rounds


@check
def _too_many_rounds(rounds: Sequence[int], which: str) -> Check[None]:
    in_all = sum(rounds)
    if in_all > MAX_ROUNDS_IN_ALL:
        detail = f"have {in_all} rounds {which}, and one answer holds at most {MAX_ROUNDS_IN_ALL}."
        yield Problem(("sizes",), ProblemCode.TOO_MANY_ROUNDS, detail)


def _told(schedules: Sequence[Schedule | None], line_stitches: int) -> tuple[Sentence, ...]:
    told = run_instructions([each.told if each else None for each in schedules])
    doubled = any(each.doubled_rounds for each in schedules if each)
    return (*explained(line_stitches, doubled=doubled), *told) if told else ()


def _runs(yokes: Sequence[Yoke], schedules: Sequence[Schedule | None], line_stitches: int) -> RaglanRuns:
    """The numbers of all sizes side by side; a size without a schedule shows a dash."""

    def run(of: Callable[[Schedule], int]) -> str | None:
        return known_run([of(each) if each else None for each in schedules])

    alike = all(back == front for back, front, _ in (yoke.increases for yoke in yokes))
    back, front, sleeve = (
        known_run([each.yoke.increases[edge] if each else None for each in schedules]) for edge in range(3)
    )
    return RaglanRuns(
        rounds=run(lambda each: each.yoke.rounds),
        body_increases=back if alike else None,
        back_increases=None if alike else back,
        front_increases=None if alike else front,
        sleeve_increases=sleeve,
        doubled_rounds=run(lambda each: each.doubled_rounds),
        neck_stitches=run(lambda each: each.yoke.neck.total(line_stitches)),
        split_stitches=run(lambda each: each.yoke.split.total(line_stitches)),
    )
