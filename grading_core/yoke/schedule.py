"""The increase schedule of a top-down raglan yoke: where every increase falls.

Words: a yoke has four sections (back, first sleeve, front, second sleeve) and four raglan lines between
them. An edge is where a section meets a line: four body edges, four sleeve edges. Round 1 is the
first round after the neck; a section's count in a round is the count after that round's increases.

The optimum: the fewest increase rounds (the smaller sets of increase rounds lie inside the largest), on the
grid, at most two neighbouring intervals between them, the last one as late as they allow. Doubling is
used only where the rounds don't suffice without it, and only so often as needed.
"""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import replace
from operator import add

from grading_core.codes import ProblemCode, ReasonCode
from grading_core.errors import Check, Impossible, Nearest, Problem, check
from grading_core.fabric import Fabric
from grading_core.fraction import Fraction
from grading_core.gauge import Gauge
from grading_core.sections import IncreaseRound, Increases
from grading_core.sentences import COUNT, TOKEN, Saying
from grading_core.shaping import Spacing, Where, choose, phases, spread
from grading_core.units import hypotenuse
from grading_core.unknown import told, unknown
from grading_core.yoke.request import Options, Yoke
from grading_core.yoke.result import RaglanLine, Schedule, increase_events

TOO_FEW_ROUNDS = Saying("reason.too_few_rounds", needed=COUNT, rounds=COUNT, available=COUNT, missing=COUNT, body=TOKEN)
"""body: whether its increases are doubled in it, or single."""


def yoke_problems(yoke: Yoke) -> Check[Yoke]:
    """Where the neck and the split of a yoke contradict each other; makes the yoke, without what is wrong of its split.

    yoke: any. Each section is named whose split is smaller than its neck, or differs by an odd number: two edges get
    the same number of increases.

    >>> from grading_core.sections import Sections
    >>> next(yoke_problems(Yoke("S", 20, Sections(30, 30, 10), Sections(41, 40, 10)))).path
    ('split', 'back')
    """
    split = yoke.split
    for section in ("back", "front", "sleeve"):
        if (
            yield from _section_problems(section, getattr(yoke.neck, section), getattr(yoke.split, section))
        ) is not False:
            split = told(replace, split, **{section: unknown()})
    return replace(yoke, split=split) if split is not yoke.split else yoke


@check
def _section_problems(section: str, neck: int, split: int) -> Check[bool]:
    """What is wrong with one section; makes whether anything is."""
    if split < neck:
        detail = f"has {split} stitches, fewer than the neck's {neck}."
        yield Problem(("split", section), ProblemCode.SPLIT_BELOW_NECK, detail)
        return True
    if (split - neck) % 2:
        detail = (
            f"has {split} stitches, an odd number more than the neck's {neck}; both edges of a "
            "section get the same increases, so the difference must be even."
        )
        yield Problem(("split", section), ProblemCode.ODD_DIFFERENCE, detail)
        return True
    return False


def grid_rounds(rounds: int, options: Options) -> range:
    """The rounds in which an increase may fall.

    rounds: of the yoke. options: the grid, the first round and the plain rounds at the end.

    >>> list(grid_rounds(9, Options(plain_rounds_at_end=1)))
    [2, 4, 6, 8]
    """
    return range(options.first, rounds - options.plain_rounds_at_end + 1, options.step)


def schedule(yoke: Yoke, options: Options, gauge: Fabric) -> Schedule | Impossible:
    """The increase schedule of one size, or why there is none.

    yoke: rounds and sections, free of contradictions (see `yoke_problems`). options: how to increase.
    gauge: for depth and slope only; the counts don't depend on it.

    Source: the shaping formula (see `shaping`); sharing rounds between body and sleeve and doubling
    the body are common practice, no source.

    >>> from grading_core.sections import Sections
    >>> gauge = Gauge.over(Fraction(22), Fraction(31), Fraction(10))
    >>> made = schedule(Yoke("S", 60, Sections(34, 34, 12), Sections(82, 82, 50)),
    ...                 Options(plain_rounds_at_end=1), gauge)
    >>> [(phase.every, phase.times) for phase in made.phases]
    [((2,), 19), ((4,), 5), ((), 0)]
    """
    available = grid_rounds(yoke.rounds, options)
    doubling = options.double_body == "if_needed"
    if needed_rounds(yoke.increases, doubling) > len(available):
        return why_impossible(yoke, options)
    rounds = _spaced(available, min(len(available), max(yoke.increases)), options.spacing)
    return finish(yoke, _fill(rounds, yoke.increases, options), options.line_stitches, gauge)


def needed_rounds(increases: Increases, doubling: bool) -> int:
    """The fewest increase rounds in which so many increases per edge can be worked.

    increases: at each back, front and sleeve edge. doubling: whether a body edge may get two in one round.

    >>> needed_rounds((24, 24, 10), False), needed_rounds((25, 25, 10), True)
    (24, 13)
    """
    back, front, sleeve = increases
    body = max(back, front)
    return max(-(-body // 2) if doubling else body, sleeve)


def least_rounds(increase_rounds: int, options: Options) -> int:
    """The fewest rounds of a yoke in which so many may have increases.

    increase_rounds: 0 or more. options: the grid, the first round and the plain rounds at the end.

    >>> [least_rounds(many, Options(plain_rounds_at_end=3)) for many in (0, 1, 4)]
    [0, 5, 11]
    """
    if not increase_rounds:
        return 0
    return options.first + (increase_rounds - 1) * options.step + options.plain_rounds_at_end


def why_impossible(yoke: Yoke, options: Options) -> Impossible:
    """Why the increases don't fit, and every single change that makes them fit.

    yoke: with more increases than its rounds have room for. options: how to increase.

    >>> from grading_core.sections import Sections
    >>> impossible = why_impossible(Yoke("S", 40, Sections(34, 34, 12), Sections(82, 82, 50)), Options())
    >>> [(nearest.field, nearest.value) for nearest in impossible.nearest]
    [('rounds', 48), ('step', 1), ('double_body', 'if_needed')]
    """
    available = len(grid_rounds(yoke.rounds, options))
    doubling = options.double_body == "if_needed"
    needed = needed_rounds(yoke.increases, doubling)
    span = (needed - 1) * options.step
    nearest = [Nearest(("rounds",), least_rounds(needed, options))]
    if options.step == 2:
        every_round = replace(options, step=1)
        if needed <= len(grid_rounds(yoke.rounds, every_round)):
            nearest.append(Nearest(("step",), 1))
    plain = yoke.rounds - options.first - span
    if 0 <= plain < options.plain_rounds_at_end:
        nearest.append(Nearest(("plain_rounds_at_end",), plain))
    first = yoke.rounds - options.plain_rounds_at_end - span
    if 1 <= first < options.first:
        nearest.append(Nearest(("first_increase_round",), first))
    if not doubling and needed_rounds(yoke.increases, True) <= available:
        nearest.append(Nearest(("double_body",), "if_needed"))
    reason = TOO_FEW_ROUNDS(
        needed=needed,
        rounds=yoke.rounds,
        available=available,
        missing=needed - available,
        body="doubled" if doubling else "single",
    )
    return Impossible(ReasonCode.TOO_FEW_ROUNDS, reason, tuple(nearest))


def respace(increase_rounds: Sequence[IncreaseRound], yoke: Yoke, options: Options, gauge: Fabric) -> Schedule:
    """The same increase rounds in the same order, spaced anew over the rounds of the yoke.

    increase_rounds: what is worked in each. yoke: with its new rounds. options: the grid, which must have
    room for them. gauge: for depth and slope.
    """
    places = _spaced(grid_rounds(yoke.rounds, options), len(increase_rounds), options.spacing)
    moved = [
        IncreaseRound(place, old.back, old.front, old.sleeve)
        for old, place in zip(increase_rounds, places, strict=True)
    ]
    return finish(yoke, moved, options.line_stitches, gauge)


def finish(yoke: Yoke, increase_rounds: Sequence[IncreaseRound], line_stitches: int, gauge: Fabric) -> Schedule:
    """A schedule from its increase rounds: phases, depth and slope.

    yoke: rounds and sections that the increase rounds lead to. line_stitches: of each raglan line.
    gauge: for depth and slope.
    """
    depth_cm, at_split = gauge.height_cm(yoke.rounds), gauge.at(yoke.rounds)
    back, front, sleeve = yoke.increases
    alike = back == front
    worked = phases(increase_events(increase_rounds), yoke.rounds)
    return Schedule(
        yoke=yoke,
        line_stitches=line_stitches,
        body_increases=back if alike else None,
        back_increases=None if alike else back,
        front_increases=None if alike else front,
        sleeve_increases=sleeve,
        increase_rounds=tuple(increase_rounds),
        phases=worked,
        doubled_rounds=sum([phase.times * sum([max(kind[:2]) > 1 for _, kind in phase.cycle]) for phase in worked]),
        depth_cm=depth_cm,
        raglan_line=_line(back, depth_cm, at_split),
        front_raglan_line=None if alike else _line(front, depth_cm, at_split),
    )


def _spaced(available: range, count: int, spacing: Spacing) -> tuple[int, ...]:
    """So many rounds of the grid: the first one, then in at most two neighbouring intervals to its end."""
    if count == 0:
        return ()
    steps = len(available) - 1
    if count == 1:
        return (available[-1] if spacing == "plain_then_single" else available[0],)
    spaced = spread(count - 1, steps, spacing)
    return tuple([available[place] for place in (spaced.before, *spaced.positions())])


def _fill(rounds: Sequence[int], totals: Increases, options: Options) -> list[IncreaseRound]:
    """What is worked in each of the increase rounds, so that each edge gets its total."""
    many = len(rounds)
    once = _nested(many, [min(total, many) for total in totals], options.fewer_edge)
    twice = _nested(many, [max(total - many, 0) for total in totals], options.double_where)
    if any(map(any, twice)):
        once = [list(map(add, *pair)) for pair in zip(once, twice, strict=True)]
    return list(map(IncreaseRound, rounds, *once))


def _nested(many: int, counts: Sequence[int], where: Where) -> list[list[int]]:
    """For each count, 1 at so many of the places and 0 at the others; fewer always lie inside more."""
    chosen: dict[int, list[int]] = {}
    pool: Sequence[int] = range(many)
    for count in sorted(set(counts), reverse=True):
        pool = choose(pool, count, where)
        marked = [0] * many
        for place in pool:
            marked[place] = 1
        chosen[count] = marked
    return [chosen[count] for count in counts]


def _line(increases: int, depth_cm: Fraction, gauge: Gauge) -> RaglanLine:
    run_cm = gauge.width_cm(increases)
    length_cm = hypotenuse(depth_cm, run_cm)
    return RaglanLine(depth_cm / run_cm if run_cm else None, length_cm)
