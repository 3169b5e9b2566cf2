"""The body below the split: rounds, shaping at the sides, hem.

Four stitches go or come in a shaping round, one on either side of both side markers, in at most two
neighbouring intervals (the shaping formula, see `shaping`). Levels such as waist and hip say which
circumference the body is to have how far below the underarm; between two levels the shaping is spread
over all rounds. That the shaping is worked at the sides, and in fours, is common practice, no source.
"""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass, replace
from fractions import Fraction
from itertools import pairwise
from typing import NamedTuple

from grading_core.errors import Impossible, Nearest, Path, Problem, Remark
from grading_core.fabric import Fabric
from grading_core.parts.ribbing import Rib, RibbedEdge, lengthened, run_edges
from grading_core.parts.tapers import run_tapers
from grading_core.rounding import CountRule
from grading_core.shaping import Event, Phase, Spacing, phases, spread
from grading_core.wording import counted, counted_run, phase_sentence

STITCHES_PER_SHAPING = 4

_END = "Bind off (cast off) loosely in rib."


@dataclass(frozen=True, slots=True)
class Level:
    """A circumference wanted at a height of the body.

    name: as in "waist". circumference_cm: finished. below_cm: distance below the underarm.
    """

    name: str
    circumference_cm: Fraction
    below_cm: Fraction


@dataclass(frozen=True, slots=True)
class ShapedLevel:
    """What the body has at a level.

    round: the last of its shaping rounds at the latest. stitches, circumference_cm: from that round on.
    """

    level: Level
    round: int
    stitches: int
    circumference_cm: Fraction

    @property
    def difference_cm(self) -> Fraction:
        """Finished less wanted circumference."""
        return self.circumference_cm - self.level.circumference_cm


@dataclass(frozen=True, slots=True, kw_only=True)
class Body:
    """The body of one size in numbers.

    stitches: at the split. rounds: before the hem. shaping: (round, stitches gained or lost), lost ones negative.
    phases: rounds 1 to the last, each kind the stitches gained or lost. levels: what was reached at each.
    hem: its rib and rounds. circumference_cm: at the split. length_cm: from underarm to edge, hem included.
    remarks: what deserves a word.
    """

    stitches: int
    rounds: int
    shaping: tuple[tuple[int, int], ...]
    phases: tuple[Phase[int], ...]
    levels: tuple[ShapedLevel, ...]
    hem: RibbedEdge
    circumference_cm: Fraction
    length_cm: Fraction
    remarks: tuple[Remark, ...]

    def instructions(self) -> tuple[str, ...]:
        """The body in sentences, with the stitches on the needle."""
        stitches = self.stitches
        sentences = list(_markers(bool(self.shaping)))
        for phase in self.phases:
            stitches += phase.times * sum(kind for _, kind in phase.cycle)
            total = counted(stitches, "stitch")
            sentences.append(f"{phase_sentence(phase, shaping_words)} {total} on the needle.")
        return (*sentences, *self.hem.instructions(), _END)


def level_problems(levels: Sequence[Level], path: Path = ("body", "levels")) -> list[Problem]:
    """Where levels contradict each other: each must lie below the one before.

    levels: from the underarm down. path: where they stand in the request.

    >>> levels = [Level("waist", Fraction(90), Fraction(20)), Level("hip", Fraction(100), Fraction(18))]
    >>> level_problems(levels)[0].path
    ('body', 'levels', 1, 'below')
    """
    return [
        Problem((*path, index, "below"), f"The {lower.name} must lie below the {upper.name}.")
        for index, (upper, lower) in enumerate(pairwise(levels), 1)
        if lower.below_cm <= upper.below_cm
    ]


def shape_body(
    stitches: int,
    *,
    length_cm: Fraction,
    gauge: Fabric,
    hem: Rib,
    levels: Sequence[Level] = (),
    spacing: Spacing = "closest_first",
    minimum_rounds: int = 0,
    size: str | None = None,
) -> Body | Impossible:
    """The body of one size, or why its shaping doesn't fit.

    stitches: at the split. length_cm: wanted from underarm to edge, hem included. gauge: of the body's rounds.
    hem: its rib; it has as many stitches as the body, put on the multiple. levels: from the underarm down, free of
    `level_problems`. spacing: the order of the intervals. minimum_rounds: before the hem, as a chart that runs on below
    the yoke needs; a shorter body is lengthened to it, and a remark says so. size: its label, for remarks.

    >>> from grading_core.gauge import Gauge
    >>> gauge = Gauge.over(Fraction(22), Fraction(31), Fraction(10))
    >>> hem = Rib(gauge, Fraction(5), CountRule(4))
    >>> body = shape_body(222, length_cm=Fraction(38), gauge=gauge, hem=hem)
    >>> body.rounds, body.hem.rounds, body.hem.stitches
    (102, 16, 224)
    """
    by_length = hem.rounds_before(length_cm, gauge)
    rounds = max(by_length, minimum_rounds)
    shaped = _shape(stitches, rounds, gauge, levels, spacing)
    if isinstance(shaped, _Misfit):
        return _impossible(shaped, stitches, rounds, gauge, levels, spacing)
    reached, shaping = shaped
    last = stitches + sum(change for _, change in shaping)
    edge = RibbedEdge(hem, last, hem.nearest(Fraction(last)), hem.rounds)
    return Body(
        stitches=stitches,
        rounds=rounds,
        shaping=shaping,
        phases=phases([Event(number, change) for number, change in shaping], rounds),
        levels=reached,
        hem=edge,
        circumference_cm=gauge.at(1).width_cm(stitches),
        length_cm=gauge.height_cm(rounds) + edge.height_cm,
        remarks=lengthened("body", by_length, minimum_rounds, size),
    )


def shaping_words(change: int) -> str:
    """What is done in a shaping round of the body, in words.

    change: stitches gained or lost, 4 or -4.

    >>> shaping_words(-4)
    'decrease 1 stitch on either side of each side marker (4 fewer)'
    """
    verb, more = ("increase", "more") if change > 0 else ("decrease", "fewer")
    return f"{verb} 1 stitch on either side of each side marker ({abs(change)} {more})"


def run_instructions(bodies: Sequence[Body | Impossible]) -> tuple[str, ...]:
    """The bodies of all sizes in sentences with size runs; none where the sizes are too unlike.

    bodies: one per size, all with the same levels; a size that is impossible shows a dash.
    """
    known = [body if isinstance(body, Body) else None for body in bodies]
    stages = [None if body is None else _stages(body) for body in known]
    sentences: list[str] = []
    for stage in range(max((len(size) for size in stages if size), default=0)):
        phases_of_sizes = [None if size is None else size[stage] for size in stages]
        sentences_of_stage = run_tapers(phases_of_sizes, shaping_words)
        if not sentences_of_stage and any(phases_of_sizes):
            return ()
        sentences += sentences_of_stage
    shaped = any(body.shaping for body in known if body)
    if shaped:
        run = counted_run([body.hem.before if body else None for body in known], "stitch")
        sentences.append(f"There are {run} on the needle.")
    edges = run_edges([body.hem if body else None for body in known])
    return (*_markers(shaped), *sentences, *edges, _END)


class _Misfit(NamedTuple):
    """The first level that doesn't fit: its place, its shaping rounds, the round it starts after, its own."""

    place: int
    times: int
    above: int
    at: int


def _markers(shaped: bool) -> tuple[str, ...]:
    return ("Place a side marker in the middle of each underarm.",) if shaped else ()


def _stages(body: Body) -> list[tuple[Phase[int], ...]]:
    """The phases down to each level, and those below the last one, each counted from its own round 1."""
    stages, above = [], 0
    for below in (*(reached.round for reached in body.levels), body.rounds):
        events = [Event(number - above, change) for number, change in body.shaping if above < number <= below]
        stages.append(phases(events, below - above))
        above = below
    return stages


def _shape(
    stitches: int, rounds: int, gauge: Fabric, levels: Sequence[Level], spacing: Spacing
) -> tuple[tuple[ShapedLevel, ...], tuple[tuple[int, int], ...]] | _Misfit:
    """The levels as reached and every shaping round, or the first level that doesn't fit."""
    reached: list[ShapedLevel] = []
    shaping: list[tuple[int, int]] = []
    four = CountRule(STITCHES_PER_SHAPING, stitches)
    above = 0
    for index, level in enumerate(levels):
        at = gauge.rows(level.below_cm)
        here = gauge.at(max(at, 1))
        target = four.round(level.circumference_cm * here.stitches_per_cm)
        times = abs(target - stitches) // STITCHES_PER_SHAPING
        if times > at - above or at > rounds:
            return _Misfit(index, times, above, at)
        change = STITCHES_PER_SHAPING if target > stitches else -STITCHES_PER_SHAPING
        places = spread(times, at - above, spacing).positions()
        shaping += [(above + place, change) for place in places]
        stitches, above = target, at
        reached.append(ShapedLevel(level, at, stitches, here.width_cm(stitches)))
    return tuple(reached), tuple(shaping)


def _impossible(
    misfit: _Misfit, stitches: int, rounds: int, gauge: Fabric, levels: Sequence[Level], spacing: Spacing
) -> Impossible:
    """Why a level doesn't fit, with those single changes that make the whole body fit."""
    place, times, above, at = misfit
    name = levels[place].name
    if times > at - above:
        room = counted(at - above, "round")
        reason = f"The {name} needs {counted(times, 'shaping round')}, and above it there is room for {room}."
        lower = replace(levels[place], below_cm=gauge.height_cm(above + times))
        moved = [*levels[:place], lower, *levels[place + 1 :]]
        nearest = Nearest(("below_rounds",), above + times)
        fits = not isinstance(_shape(stitches, rounds, gauge, moved, spacing), _Misfit)
    else:
        before = counted(rounds, "round")
        reason = f"The {name} lies at round {at}, and the body has {before} before the hem."
        deepest = gauge.rows(levels[-1].below_cm)
        nearest = Nearest(("rounds",), deepest)
        fits = not isinstance(_shape(stitches, deepest, gauge, levels, spacing), _Misfit)
    return Impossible(reason, (nearest,) if fits else ())
