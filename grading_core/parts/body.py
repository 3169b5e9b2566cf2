"""The body below the split: rounds, shaping at the sides, hem.

Four stitches go or come in a shaping round, one on either side of the middle of each underarm, in at most two
neighbouring intervals (the shaping formula, see `shaping`). Levels such as waist and hip say which
circumference the body is to have how far below the underarm; between two levels the shaping is spread
over all rounds but round 1, which divides body and sleeves, as far as there is room. That the shaping is worked at the
sides, and in fours, is common practice, no source.
"""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass
from itertools import pairwise
from typing import NamedTuple

from grading_core.codes import ProblemCode, ReasonCode
from grading_core.errors import Check, Impossible, Nearest, Path, Problem, Remark, check, under
from grading_core.fabric import Fabric
from grading_core.fraction import Fraction
from grading_core.gauge import Gauge
from grading_core.parts import bust_darts
from grading_core.parts.bust_darts import BustDarts
from grading_core.parts.ribbing import BIND_OFF, Rib, RibbedEdge, edge_colour, lengthened, run_edges
from grading_core.parts.tapers import ShapingSayings, shaping_sentences
from grading_core.parts.underarm import NO_UNDERARM, PLACE, Underarm, shaped_at, start_place
from grading_core.rounding import CountRule
from grading_core.sentences import COUNT, LENGTH, TOKEN, Saying, Sentence, alone, run_of, word
from grading_core.shaping import Phase, Spacing, phases, spread

STITCHES_PER_SHAPING = 4

SIDE_MARKERS = Saying("body.side_markers", **PLACE)
DECREASES = Saying("body.decreases", at=TOKEN)
INCREASES = Saying("body.increases", at=TOKEN)
SHAPING = ShapingSayings("body", increases=True)
ROUNDS = Saying("body.rounds", rounds=COUNT, length=LENGTH)
LENGTH_DONE = Saying("body.length", length=LENGTH)
TOO_FEW_ROUNDS = Saying("reason.too_few_rounds_above_level", measure=word("measure"), needed=COUNT, room=COUNT)
TOO_SHORT = Saying("reason.body_too_short", measure=word("measure"), round=COUNT, rounds=COUNT)


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
    underarm: at each side. remarks: what deserves a word. bust_darts: short rows over the
    front, None without any.
    """

    stitches: int
    rounds: int
    shaping: tuple[tuple[int, int], ...]
    phases: tuple[Phase[int], ...]
    levels: tuple[ShapedLevel, ...]
    hem: RibbedEdge
    circumference_cm: Fraction
    length_cm: Fraction
    underarm: Underarm
    remarks: tuple[Remark, ...]
    bust_darts: BustDarts | None = None

    def instructions(self) -> tuple[Sentence, ...]:
        """The body in sentences, for one size."""
        return tuple(alone(run_instructions([self], [""])))


def level_problems(levels: Sequence[Level], path: Path = ("body", "levels")) -> Check[None]:
    """Where levels contradict each other: each must lie below the one before.

    levels: from the underarm down. path: where they stand in the request.

    >>> levels = [Level("waist", Fraction(90), Fraction(20)), Level("hip", Fraction(100), Fraction(18))]
    >>> next(level_problems(levels)).path
    ('body', 'levels', 1, 'below')
    """
    for index, (upper, lower) in enumerate(pairwise(levels), 1):
        yield from under((*path, index), _level_problems(upper, lower))


@check
def _level_problems(upper: Level, lower: Level) -> Check[None]:
    if lower.below_cm <= upper.below_cm:
        detail = f"The {lower.name} must lie below the {upper.name}."
        yield Problem(("below",), ProblemCode.LEVELS_OUT_OF_ORDER, detail)


def shape_body(
    stitches: int,
    *,
    length_cm: Fraction,
    gauge: Fabric,
    hem: Rib,
    levels: Sequence[Level] = (),
    level_stitches: Sequence[int] | None = None,
    spacing: Spacing = "closest_first",
    minimum_rounds: int = 0,
    underarm: Underarm = NO_UNDERARM,
    size: str | None = None,
) -> Body | Impossible:
    """The body of one size, or why its shaping doesn't fit.

    stitches: at the split. length_cm: wanted from underarm to edge, hem included. gauge: of the body's rounds.
    hem: its rib; it has as many stitches as the body, put on the multiple. levels: from the underarm down, free of
    `level_problems`. level_stitches: at each of them, reached by fours; None takes the nearest. spacing: the order of
    the intervals. minimum_rounds: before the hem, as a chart that runs on below the yoke needs; a shorter body is
    lengthened to it, and a remark says so. underarm: at each side, for the words. size: its label, for remarks.

    >>> gauge = Gauge.over(Fraction(22), Fraction(31), Fraction(10))
    >>> hem = Rib(gauge=gauge, height_cm=Fraction(5), rule=CountRule(4))
    >>> body = shape_body(222, length_cm=Fraction(38), gauge=gauge, hem=hem)
    >>> body.rounds, body.hem.rounds, body.hem.stitches
    (102, 16, 224)
    """
    by_length = hem.rounds_before(length_cm, gauge)
    rounds = max(by_length, minimum_rounds)
    if level_stitches is None:
        level_stitches = [nearest_at_level(stitches, level, gauge) for level in levels]
    legs = _legs(stitches, level_stitches, levels, gauge, spacing)
    misfit = _misfit(legs, rounds)
    if misfit:
        return misfit
    shaping = tuple(
        (leg.above + place, leg.change) for leg in legs for place in spread(leg.times, leg.room, spacing).positions()
    )
    reached = tuple(
        ShapedLevel(leg.level, leg.at, count, gauge_at_level(leg.level, gauge).width_cm(count))
        for leg, count in zip(legs, level_stitches, strict=True)
    )
    last = stitches + sum(change for _, change in shaping)
    edge = RibbedEdge(hem, last, hem.nearest(last), hem.rounds)
    return Body(
        stitches=stitches,
        rounds=rounds,
        shaping=shaping,
        phases=phases(shaping, rounds),
        levels=reached,
        hem=edge,
        circumference_cm=gauge.at(1).width_cm(stitches),
        length_cm=gauge.height_cm(rounds) + edge.height_cm,
        underarm=underarm,
        remarks=lengthened("body", by_length, minimum_rounds, size),
    )


def gauge_at_level(level: Level, gauge: Fabric) -> Gauge:
    """The gauge at which a level is measured: that of its round.

    level: of the body. gauge: of the body's rounds.
    """
    return gauge.at(max(gauge.rows(level.below_cm), 1))


def nearest_at_level(stitches: int, level: Level, gauge: Fabric) -> int:
    """The count nearest to a level's circumference that shaping by fours reaches; a tie goes up.

    stitches: from which it is reached. level: with what is wanted. gauge: of the body's rounds.

    >>> nearest_at_level(222, Level("waist", Fraction(90), Fraction(18)), Gauge(Fraction(2), Fraction(3)))
    182
    """
    exact = level.circumference_cm * gauge_at_level(level, gauge).stitches_per_cm
    return CountRule(STITCHES_PER_SHAPING, stitches).round(exact)


def run_instructions(bodies: Sequence[Body | None], labels: Sequence[str]) -> tuple[Sentence, ...]:
    """The bodies of all sizes in sentences with size runs, their shaping size by size where it is too unlike.

    bodies: one per size, all with the same levels; None, for which a dash stands, where the size has none. labels: of
    the sizes.
    """
    known = [body for body in bodies if body]
    underarms = [body.underarm if body else None for body in bodies]
    darts = bust_darts.run_instructions([body.bust_darts if body else None for body in bodies])
    changes = {change for body in known for _, change in body.shaping}
    sentences: list[Sentence] = []
    if changes or darts:
        sentences.append(SIDE_MARKERS(**start_place(underarms)))
    sentences += darts
    for saying, sign in ((DECREASES, -1), (INCREASES, 1)):
        if sign * STITCHES_PER_SHAPING in changes:
            sentences.append(saying(at=shaped_at(underarms)))
    stages = [None if body is None else _stages(body) for body in bodies]
    sentences += shaping_sentences(stages, [body.stitches if body else None for body in bodies], SHAPING, labels)

    hems = [body.hem if body else None for body in bodies]
    return (
        *sentences,
        ROUNDS(
            rounds=run_of(bodies, lambda each: each.rounds),
            length=run_of(bodies, lambda each: each.length_cm - each.hem.height_cm),
        ),
        *edge_colour("hem", hems),
        *run_edges(hems),
        BIND_OFF(),
        LENGTH_DONE(length=run_of(bodies, lambda each: each.length_cm)),
    )


class _Leg(NamedTuple):
    """The way to a level: the last rounds above it and of its own, its shaping rounds, and what each changes."""

    level: Level
    above: int
    at: int
    times: int
    change: int

    @property
    def room(self) -> int:
        """Its rounds."""
        return self.at - self.above


def _stages(body: Body) -> list[tuple[Phase[int], ...]]:
    """The phases down to each level, and those below the last one, each counted from its own round 1."""
    stages, above = [], 0
    for below in (*(reached.round for reached in body.levels), body.rounds):
        events = [(number - above, change) for number, change in body.shaping if above < number <= below]
        stages.append(phases(events, below - above))
        above = below
    return stages


def _legs(stitches: int, counts: Sequence[int], levels: Sequence[Level], gauge: Fabric, spacing: Spacing) -> list[_Leg]:
    """What has to be shaped on the way to each level; where there is room for it, nothing in round 1, which divides
    body and sleeves."""
    legs: list[_Leg] = []
    above = 0
    for level, count in zip(levels, counts, strict=True):
        times, at = abs(count - stitches) // STITCHES_PER_SHAPING, gauge.rows(level.below_cm)
        change = STITCHES_PER_SHAPING if count > stitches else -STITCHES_PER_SHAPING
        if not legs and 0 < times < at and spread(times, at, spacing).positions()[0] == 1:
            above = 1
        legs.append(_Leg(level, above, at, times, change))
        stitches, above = count, at
    return legs


def _misfit(legs: Sequence[_Leg], rounds: int) -> Impossible | None:
    """Why the first level that doesn't fit doesn't, with the single changes that make the whole body fit, or None."""
    for leg in legs:
        name = leg.level.name
        if leg.times > leg.room:
            code = ReasonCode.TOO_FEW_ROUNDS
            reason = TOO_FEW_ROUNDS(measure=name, needed=leg.times, room=leg.room)
        elif leg.at > rounds:
            code = ReasonCode.BODY_TOO_SHORT
            reason = TOO_SHORT(measure=name, round=leg.at, rounds=rounds)
        else:
            continue
        moved = [_moved(legs, place, rounds) for place in range(len(legs))]
        nearest = [Nearest(("levels", place, "rounds"), at) for place, at in enumerate(moved) if at is not None]
        if all(each.times <= each.room for each in legs):
            nearest.insert(0, Nearest(("rounds",), legs[-1].at))
        return Impossible(code, reason, tuple(nearest))
    return None


def _moved(legs: Sequence[_Leg], place: int, rounds: int) -> int | None:
    """The round nearest to its own at which a level would make all of them fit, None where none would."""
    leg, below = legs[place], legs[place + 1 :]
    # a level stays below the one before, in rounds too
    least = leg.above + max(1, leg.times)
    most = below[0].at - max(1, below[0].times) if below else rounds
    others = (*legs[:place], *below[1:])
    fit = all(each.times <= each.room for each in others) and (not below or below[-1].at <= rounds)
    return min(max(leg.at, least), most) if fit and least <= most else None
