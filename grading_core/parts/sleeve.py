"""The sleeve below the split: decreases from the upper arm to the cuff, and the cuff.

Two stitches go in a decrease round, in at most two neighbouring intervals (the shaping formula, see
`shaping`). Two at a time never change parity, so where the cuff needs the other parity its first round
takes one stitch (parity: two teaching articles on sleeves; the round that mends it: common practice, no source).
"""

from __future__ import annotations

from collections.abc import Iterable, Sequence
from dataclasses import dataclass, replace

from grading_core.codes import ReasonCode
from grading_core.errors import Impossible, Nearest, Remark
from grading_core.fabric import Fabric
from grading_core.fraction import Fraction
from grading_core.parts.ribbing import BIND_OFF, Rib, RibbedEdge, edge_colour, lengthened, run_edges
from grading_core.parts.tapers import ShapingSayings, shaping_sentences
from grading_core.parts.underarm import NO_UNDERARM, PLACE, Underarm, purled_seams, shaped_at, start_place
from grading_core.sentences import COUNT, LENGTH, TOKEN, Saying, Sentence, alone, run_of
from grading_core.shaping import Phase, Spacing
from grading_core.shaping_plans import RowPlan, along_rows

STITCHES_PER_DECREASE = 2

START = Saying("sleeve.start", **PLACE)
SEAM_PURL = Saying("sleeve.seam_purl", seam=COUNT)
DECREASES = Saying("sleeve.decreases", at=TOKEN)
SHAPING = ShapingSayings("sleeve", increases=False)
ROUNDS = Saying("sleeve.rounds", rounds=COUNT, length=LENGTH)
LENGTH_DONE = Saying("sleeve.length", length=LENGTH)
SECOND = Saying("sleeve.second")
TOO_FEW_ROUNDS = Saying("reason.too_few_rounds_in_sleeve", needed=COUNT, room=COUNT)


@dataclass(frozen=True, slots=True, kw_only=True)
class Sleeve:
    """The sleeve of one size in numbers.

    stitches: at the upper arm. rounds: before the cuff. decrease_rounds: each takes two stitches. phases: rounds 1
    to the last, each kind the stitches lost. cuff: its rib and rounds. upper_arm_cm: circumference at the split.
    wrist_difference_cm: finished less wanted wrist. length_cm: from underarm to edge, cuff included. underarm: in whose
    middle its rounds start. remarks: what deserves a word.
    """

    stitches: int
    rounds: int
    decrease_rounds: tuple[int, ...]
    phases: tuple[Phase[int], ...]
    cuff: RibbedEdge
    upper_arm_cm: Fraction
    wrist_difference_cm: Fraction
    length_cm: Fraction
    underarm: Underarm
    remarks: tuple[Remark, ...]

    def instructions(self) -> tuple[Sentence, ...]:
        """The sleeve in sentences, for one size."""
        return tuple(alone(run_instructions([self], [""])))


def shape_sleeve(
    stitches: int,
    *,
    length_cm: Fraction,
    gauge: Fabric,
    cuff: Rib,
    wrist_cm: Fraction,
    spacing: Spacing = "closest_first",
    plain_before: int = 0,
    plain_after: int = 0,
    minimum_rounds: int = 0,
    underarm: Underarm = NO_UNDERARM,
    size: str | None = None,
) -> Sleeve | Impossible:
    """The sleeve of one size, or why its decreases don't fit.

    stitches: at the upper arm. length_cm: wanted from underarm to edge, cuff included. gauge: of the sleeve's
    rounds. cuff: its rib. wrist_cm: finished circumference of the cuff, at the rib's gauge. spacing: the
    order of the intervals. plain_before, plain_after: rounds without decreases wanted at the top and
    before the cuff. minimum_rounds: before the cuff, as a chart that runs on below the yoke needs; a shorter
    sleeve is lengthened to it, and a remark says so. underarm: for the words. size: its label, for remarks.

    >>> from grading_core.gauge import Gauge
    >>> from grading_core.rounding import CountRule
    >>> gauge = Gauge.over(Fraction(22), Fraction(31), Fraction(10))
    >>> cuff = Rib(gauge=gauge, height_cm=Fraction(5), rule=CountRule(4))
    >>> sleeve = shape_sleeve(67, length_cm=Fraction(45), gauge=gauge, cuff=cuff, wrist_cm=Fraction(20))
    >>> sleeve.rounds, len(sleeve.decrease_rounds), sleeve.cuff.before, sleeve.cuff.stitches
    (124, 11, 45, 44)
    """
    by_length = cuff.rounds_before(length_cm, gauge)
    rounds = max(by_length, minimum_rounds)
    cuff_stitches = cuff.for_circumference(wrist_cm)
    times = max(0, stitches - cuff_stitches) // STITCHES_PER_DECREASE
    if not times:
        plain_before = plain_after = 0
    last = stitches - STITCHES_PER_DECREASE * times
    plan = RowPlan(
        name="sleeve",
        stitches=stitches,
        to=last,
        rows=rounds,
        stitches_per_shaping=STITCHES_PER_DECREASE,
        step=1,
        spacing=spacing,
        plain_before=plain_before,
        plain_after=plain_after,
    )
    taper = along_rows(plan)
    if isinstance(taper, Impossible):
        return _impossible(times, rounds, plain_before, plain_after)
    if taper.shaping_rows[:1] == (1,):
        # the underarm is picked up in round 1: better without decreases
        later = along_rows(replace(plan, plain_before=1))
        taper = taper if isinstance(later, Impossible) else later
    edge = RibbedEdge(cuff, last, cuff_stitches, cuff.rounds)
    return Sleeve(
        stitches=stitches,
        rounds=rounds,
        decrease_rounds=taper.shaping_rows,
        phases=taper.phases,
        cuff=edge,
        upper_arm_cm=gauge.at(1).width_cm(stitches),
        wrist_difference_cm=edge.circumference_cm - wrist_cm,
        length_cm=gauge.height_cm(rounds) + edge.height_cm,
        underarm=underarm,
        remarks=lengthened("sleeve", by_length, minimum_rounds, size),
    )


def run_instructions(sleeves: Sequence[Sleeve | None], labels: Sequence[str]) -> tuple[Sentence, ...]:
    """The sleeves of all sizes in sentences with size runs, their shaping size by size where it is too unlike.

    sleeves: one per size; None, for which a dash stands, where the size has none. labels: of the sizes.
    """
    underarms = [sleeve.underarm if sleeve else None for sleeve in sleeves]
    sentences = [START(**start_place(underarms)), *purled_seams(SEAM_PURL, underarms)]
    if any(sleeve.decrease_rounds for sleeve in sleeves if sleeve):
        sentences.append(DECREASES(at=shaped_at(underarms)))
    phases = [[_losses(sleeve.phases)] if sleeve else None for sleeve in sleeves]
    sentences += shaping_sentences(phases, [sleeve.stitches if sleeve else None for sleeve in sleeves], SHAPING, labels)

    cuffs = [sleeve.cuff if sleeve else None for sleeve in sleeves]
    return (
        *sentences,
        ROUNDS(
            rounds=run_of(sleeves, lambda each: each.rounds),
            length=run_of(sleeves, lambda each: each.length_cm - each.cuff.height_cm),
        ),
        *edge_colour("cuff", cuffs),
        *run_edges(cuffs),
        BIND_OFF(),
        LENGTH_DONE(length=run_of(sleeves, lambda each: each.length_cm)),
        SECOND(),
    )


def _losses(decreases: Iterable[Phase[int]]) -> tuple[Phase[int], ...]:
    """Phases of which each kind is the stitches lost, with these negative."""
    return tuple(
        [
            Phase(phase.from_row, phase.to_row, tuple([(every, -lost) for every, lost in phase.cycle]), phase.times)
            for phase in decreases
        ]
    )


def _impossible(times: int, rounds: int, plain_before: int, plain_after: int) -> Impossible:
    """Why the decreases don't fit, and every single change that makes them fit."""
    room = max(0, rounds - plain_before - plain_after)
    missing = times - (rounds - plain_before - plain_after)
    nearest = [Nearest(("rounds",), rounds + missing)]
    nearest += [
        Nearest((field,), plain - missing)
        for field, plain in (("plain_before", plain_before), ("plain_after", plain_after))
        if plain >= missing
    ]
    return Impossible(ReasonCode.TOO_FEW_ROUNDS, TOO_FEW_ROUNDS(needed=times, room=room), tuple(nearest))
