"""The finished measurements that every size should have, and what in them leaves nothing to knit, or too much."""

from __future__ import annotations

from collections.abc import Callable, Collection, Sequence
from dataclasses import dataclass
from itertools import pairwise
from math import floor
from typing import ParamSpec, TypeVar

from grading_core.codes import ProblemCode, ReasonCode
from grading_core.errors import Check, Impossible, Nearest, Path, Problem, check
from grading_core.fraction import Fraction
from grading_core.limits import MAX_ROUNDS_IN_ALL, MAX_STITCHES
from grading_core.parts.body import Level, level_problems
from grading_core.pullover.bodies import Wearer
from grading_core.pullover.lengths import Lengths, place
from grading_core.pullover.proportions import (
    SLEEVE_PARTS,
    SleeveStyle,
    cuff_cm,
    usual_back_share,
    usual_lower_front_cm,
    usual_underarm_cm,
)
from grading_core.pullover.request import Fabrics, LevelWish, NeckWishes, Shares
from grading_core.pullover.size_run import (
    body_lengths,
    girths,
    neck_circumferences,
    sleeve_lengths,
    smallest_first,
    yoke_depths,
)
from grading_core.sentences import COUNT, NUMBER, Saying, Sentence, word
from grading_core.sizes.request import PerSize, per_size
from grading_core.standards import Measurement
from grading_core.units import to_places, whole_parts
from grading_core.unknown import is_unknown, known, shown, told, unknown

Given = ParamSpec("Given")
Made = TypeVar("Made")

NOTHING_LEFT = Saying("reason.nothing_left", measure=word("measure"), length=NUMBER)
NECK_TOO_NARROW = Saying("reason.neck_too_narrow", stitches=NUMBER, fewest=COUNT)

A_LITTLE_CM = Fraction(1)
"""Of a length that must not come to nothing: what is offered first instead (a judgement, no source)."""

FEWEST_NECK_STITCHES = 8
"""Between the raglan lines, two to a section."""

RISING = ("bust", "upper_arm", "neck", "depth", "underarm", "front_extra")
"""What must not fall from a size to a larger one."""

EXTRAS = ("front_extra", "bust_darts")
"""What the front may have more of than the back, and never less."""

_NOTHING, _WHOLE = Fraction(0), Fraction(1)


@dataclass(frozen=True, slots=True, kw_only=True)
class TargetMeasurements:
    """The finished measurements that one size should have, in cm.

    bust, upper_arm, neck: circumferences; the neck's is the cast-on's. depth: of the yoke, without a raised back.
    underarm: width of one. raise_height, front_drop: of the back and the front of the neck. wrist: circumference of the
    cuff, where it is. body_length, sleeve_length: from the underarm, rib included. long_wrist, long_sleeve: of a long
    sleeve, the latter None where the body has no arm length. reach: from the back of the neck to the wrist, None where
    the body doesn't say or the sleeve isn't to end there. levels: of the body's shaping, from the underarm down.
    front_extra: width of the front beyond that of the back. bust_darts: length of the front beyond that of the back.
    back_share, front_share: of the neck's stitches without the raglan lines; the sleeves have the rest.
    """

    label: str
    bust: Fraction
    upper_arm: Fraction
    neck: Fraction
    depth: Fraction
    underarm: Fraction
    raise_height: Fraction
    front_drop: Fraction
    wrist: Fraction
    body_length: Fraction
    sleeve_length: Fraction
    long_wrist: Fraction
    long_sleeve: Fraction | None
    reach: Fraction | None
    levels: tuple[Level, ...]
    front_extra: Fraction = Fraction(0)
    bust_darts: Fraction = Fraction(0)
    back_share: Fraction
    front_share: Fraction

    @property
    def front_length(self) -> Fraction:
        """Of the front from the underarm, over the bust."""
        return self.body_length + self.bust_darts

    def cuff_cm(self, sleeve_length_cm: Fraction) -> Fraction:
        """Circumference of the cuff of a sleeve of another length.

        sleeve_length_cm: from the underarm; where the length of the arm isn't known, the cuff stays as it is.
        """
        if self.long_sleeve is None:
            return self.wrist
        return cuff_cm(self.upper_arm, self.long_wrist, sleeve_length_cm / self.long_sleeve)


def target_measurements(
    wearers: Sequence[Wearer],
    lengths: Lengths,
    neck: NeckWishes,
    levels: Sequence[LevelWish],
    *,
    style: SleeveStyle = "long",
    lines_cm: Fraction = Fraction(0),
    evened: Collection[str] = (),
) -> tuple[TargetMeasurements, ...]:
    """What every size should measure.

    wearers: of all sizes. lengths: as asked, free of `length_problems`; the proportions say the rest. neck: its shares
    and how its front lies lower. levels: of the body's shaping. style: of the sleeves. lines_cm: width of the four
    raglan lines. evened: the girths whose steps from size to size are made even.

    >>> body = {"bust": Fraction(94), "upper_arm": Fraction(28), "wrist": Fraction(16)}
    >>> body |= {"arm_length": Fraction(43), "back_waist_length": Fraction(42)}
    >>> (target,) = target_measurements([Wearer("M", body, False, False)], {}, NeckWishes(), [])
    >>> [float(round(cm, 1)) for cm in (target.bust, target.upper_arm, target.neck, target.depth)]
    [103.4, 33.6, 46.0, 23.8]
    """
    sizes = len(wearers)
    order = smallest_first(wearers)
    rising = [wearers[index] for index in order]

    def of_sizes(make: Callable[Given, Sequence[Made]], *args: Given.args, **named: Given.kwargs) -> Sequence[Made]:
        """Something of every size, all of it unknown where it would follow from what isn't known."""
        values = told(make, *args, **named)
        return [unknown()] * sizes if is_unknown(values) else values

    asked = {name: of_sizes(_in_order, each.length, sizes, order) for name, each in lengths.items()}
    shaped = told(lambda: [known(level.measurement) for level in levels])
    below = [] if is_unknown(shaped) else [of_sizes(_in_order, level.below, sizes, order) for level in levels]

    names: tuple[Measurement, ...] = ("bust", "upper_arm", "wrist", *([] if is_unknown(shaped) else shaped))
    around = {name: of_sizes(girths, name, rising, asked, evened) for name in names}
    bust, upper_arm, wrist = around["bust"], around["upper_arm"], around["wrist"]
    shares = of_sizes(_all_neck_shares, neck.shares, rising)
    necks = asked.get("neck") or of_sizes(neck_circumferences, rising, bust, evened)
    tops = of_sizes(_sleeve_tops, necks, shares, lines_cm)
    depths = asked.get("depth") or of_sizes(yoke_depths, rising, bust, tops)
    heights = of_sizes(_neck_heights, neck, rising)
    bodies = asked.get("body_length") or of_sizes(_usual_bodies, rising, depths, heights)
    long_sleeves = of_sizes(sleeve_lengths, rising, necks, depths)
    part = told(SLEEVE_PARTS.__getitem__, style)
    sleeves = asked.get("sleeve_length") or of_sizes(_usual_sleeves, long_sleeves, part)
    underarms = asked.get("underarm") or of_sizes(_usual_underarms, bust)
    cuffs = of_sizes(_cuffs, upper_arm, wrist, sleeves, long_sleeves, part)

    front_extras, darts = (asked.get(name) or [Fraction(0)] * sizes for name in EXTRAS)

    made: dict[int, TargetMeasurements] = {}
    for index, wearer in enumerate(rising):
        made[order[index]] = TargetMeasurements(
            label=wearer.label,
            bust=bust[index],
            upper_arm=upper_arm[index],
            neck=necks[index],
            depth=depths[index],
            underarm=underarms[index],
            raise_height=heights[index][0],
            front_drop=heights[index][1],
            wrist=cuffs[index],
            body_length=bodies[index],
            sleeve_length=sleeves[index],
            long_wrist=wrist[index],
            long_sleeve=long_sleeves[index],
            reach=told(_reach, wearer, style),
            levels=told(
                lambda at: tuple(Level(name, around[name][at], cm[at]) for name, cm in zip(shaped, below, strict=True)),
                index,
            ),
            front_extra=front_extras[index],
            bust_darts=darts[index],
            back_share=shares[index][0],
            front_share=shares[index][1],
        )
    return tuple(made[index] for index in range(sizes))


def measurement_problems(targets: Sequence[TargetMeasurements], fabrics: Fabrics) -> Check[None]:
    """Measurements that are too much to knit, or whose levels contradict each other.

    targets: of all sizes. fabrics: the gauges.
    """
    yield from _order_problems(targets)
    yield from _width_problems(targets, fabrics)
    yield from _length_problems(targets, fabrics)


@check
def _order_problems(targets: Sequence[TargetMeasurements]) -> Check[None]:
    found: set[Path] = set()
    for target in targets:
        for problem in level_problems(target.levels):
            if problem.path not in found:
                found.add(problem.path)
                yield problem


@check
def _width_problems(targets: Sequence[TargetMeasurements], fabrics: Fabrics) -> Check[None]:
    for target in targets:
        below = fabrics.rounds.below(_yoke_rounds(target, fabrics))
        if (target.bust + target.front_extra) * below.at(1).stitches_per_cm > 2 * MAX_STITCHES:
            detail = f"At this gauge half the body of size {shown(target.label)} has more than {MAX_STITCHES} stitches."
            yield Problem((), ProblemCode.TOO_MANY_STITCHES, detail)
            return


@check
def _length_problems(targets: Sequence[TargetMeasurements], fabrics: Fabrics) -> Check[None]:
    made = [_WHOLE]
    yokes = 0
    for target in targets:
        yoke_rounds = _yoke_rounds(target, fabrics)
        yokes += yoke_rounds
        below = fabrics.rounds.below(yoke_rounds)
        made += [below.exact_rows(max(length, _NOTHING)) for length in (target.front_length, target.sleeve_length)]
    one, *parts = whole_parts(made)
    rounds = yokes + Fraction(sum(parts), one)
    if rounds > MAX_ROUNDS_IN_ALL:
        yield Problem((), ProblemCode.TOO_MANY_ROUNDS, too_many_rounds(round(rounds)))


def _yoke_rounds(target: TargetMeasurements, fabrics: Fabrics) -> int:
    return fabrics.rounds.rows(max(target.depth, _NOTHING))


def extra_problems(targets: Sequence[TargetMeasurements], lengths: Lengths) -> Check[None]:
    """Extras of the front that are less than nothing.

    targets: of all sizes. lengths: as asked.
    """
    for name in EXTRAS:
        yield from _extra_problems(targets, name, lengths)


@check
def _extra_problems(targets: Sequence[TargetMeasurements], name: str, lengths: Lengths) -> Check[None]:
    lacking = next((target for target in targets if getattr(target, name) < 0), None)
    if lacking:
        detail = f"must not be less than 0, and is in size {shown(lacking.label)}."
        yield Problem(place(lengths, name), ProblemCode.LESS_THAN_NOTHING, detail)


def nothing_to_knit(
    target: TargetMeasurements, wearer: Wearer, lengths: Lengths, line_stitches: int, fabrics: Fabrics
) -> Impossible | None:
    """Why the measurements of a size leave nothing to knit somewhere; None where they don't.

    target, wearer: of the size. lengths: as asked. line_stitches: of each raglan line. fabrics: the gauges.
    """
    for name in ("bust", "upper_arm", "wrist"):
        if getattr(target, name).numerator <= 0:
            nearest = Nearest(place(lengths, name), A_LITTLE_CM - wearer.body[name])
            return Impossible(ReasonCode.NOTHING_LEFT, _nothing_left(name, target), (nearest,))
    for name in ("neck", "depth", "underarm", "sleeve_length"):
        if getattr(target, name).numerator <= 0:
            return Impossible(
                ReasonCode.NOTHING_LEFT, _nothing_left(name, target), (Nearest(place(lengths, name), A_LITTLE_CM),)
            )
    across = fabrics.rounds.at(1).stitches_per_cm
    sections = target.neck * across - 4 * line_stitches
    if sections < FEWEST_NECK_STITCHES:
        fewest = FEWEST_NECK_STITCHES + Fraction(1, 4)
        narrower = floor((target.neck * across - FEWEST_NECK_STITCHES) / 4)
        return Impossible(
            ReasonCode.NECK_TOO_NARROW,
            NECK_TOO_NARROW(stitches=Fraction(floor(sections * 10), 10), fewest=FEWEST_NECK_STITCHES),
            (
                Nearest(place(lengths, "neck"), (fewest + 4 * line_stitches) / across),
                *((Nearest(("yoke", "line_stitches"), narrower),) if narrower >= 0 else ()),
            ),
        )
    if target.body_length <= 0:
        missing = A_LITTLE_CM - target.body_length
        nearest_changes = [Nearest(place(lengths, "body_length"), A_LITTLE_CM)]
        if "body_length" not in lengths:
            if target.depth > missing:
                nearest_changes.append(Nearest(place(lengths, "depth"), target.depth - missing))
            if target.raise_height >= missing:
                nearest_changes.append(Nearest(("neck", "raise_height"), target.raise_height - missing))
        return Impossible(ReasonCode.NOTHING_LEFT, _nothing_left("body_length", target), tuple(nearest_changes))
    return None


def _nothing_left(name: str, target: TargetMeasurements) -> Sentence:
    return NOTHING_LEFT(measure=name, length=getattr(target, name))


def too_many_rounds(rounds: int) -> str:
    """What is wrong with a request whose answer is too long.

    rounds: of yoke, body and sleeve in all sizes.
    """
    return f"The sizes have {rounds} rounds in all, and one answer holds at most {MAX_ROUNDS_IN_ALL}."


def fall_problems(rising: Sequence[TargetMeasurements], lengths: Lengths) -> Check[None]:
    """Lengths asked for that make a measurement fall.

    rising: from the smallest size to the largest. lengths: as asked.
    """
    for name in RISING:
        if name in lengths:
            yield from _fall_problems(rising, name, lengths[name].path)


@check
def _fall_problems(rising: Sequence[TargetMeasurements], name: str, path: Path) -> Check[None]:
    for smaller, larger in pairwise(rising):
        low, high = getattr(smaller, name), getattr(larger, name)
        if high < low:
            detail = (
                f"makes the {name} fall from {to_places(low)} cm in {shown(smaller.label)} to {to_places(high)} cm in "
                f"{shown(larger.label)}."
            )
            yield Problem(path, ProblemCode.MEASUREMENT_FALLS, detail)


def _in_order(length: PerSize, sizes: int, order: Sequence[int]) -> list[Fraction]:
    """The length of each size, smallest first."""
    of_sizes = per_size(length, sizes)
    return [of_sizes[index] for index in order]


def _neck_shares(shares: Shares | None, bust_cm: Fraction) -> tuple[Fraction, Fraction]:
    """The parts of back and front in the neck's stitches."""
    if shares is None:
        usual = usual_back_share(bust_cm)
        return usual, usual
    in_all = shares.back + shares.front + 2 * shares.sleeve
    return shares.back / in_all, shares.front / in_all


def _all_neck_shares(shares: Shares | None, rising: Sequence[Wearer]) -> list[tuple[Fraction, Fraction]]:
    return [_neck_shares(shares, wearer.body["bust"]) for wearer in rising]


def _sleeve_tops(
    necks_cm: Sequence[Fraction], shares: Sequence[tuple[Fraction, Fraction]], lines_cm: Fraction
) -> list[Fraction]:
    """The width of one sleeve at the neck."""
    return [(cm - lines_cm) * _sleeve_share(*of_size) for cm, of_size in zip(necks_cm, shares, strict=True)]


def _sleeve_share(back: Fraction, front: Fraction) -> Fraction:
    """The part of each sleeve in the neck's stitches: half of what back and front leave."""
    whole, back_parts, front_parts = whole_parts((_WHOLE, back, front))
    return Fraction(whole - back_parts - front_parts, 2 * whole)


def _neck_heights(neck: NeckWishes, rising: Sequence[Wearer]) -> list[tuple[Fraction, Fraction]]:
    """By how much the back is raised and the front dropped."""
    return [neck.heights_cm(usual_lower_front_cm(each.body["bust"], each.age)) for each in rising]


def _usual_bodies(
    rising: Sequence[Wearer], depths_cm: Sequence[Fraction], heights_cm: Sequence[tuple[Fraction, Fraction]]
) -> list[Fraction]:
    above = [depth + raised for depth, (raised, _) in zip(depths_cm, heights_cm, strict=True)]
    return body_lengths(rising, above)


def _usual_sleeves(long_cm: Sequence[Fraction | None], part: Fraction) -> list[Fraction]:
    return [(length or Fraction(0)) * part for length in long_cm]


def _usual_underarms(bust_cm: Sequence[Fraction]) -> list[Fraction]:
    return [usual_underarm_cm(cm) for cm in bust_cm]


def _cuffs(
    upper_arm_cm: Sequence[Fraction],
    wrist_cm: Sequence[Fraction],
    sleeves_cm: Sequence[Fraction],
    long_cm: Sequence[Fraction | None],
    part: Fraction,
) -> list[Fraction]:
    return [
        cuff_cm(upper_arm, wrist, length / long if long else part)
        for upper_arm, wrist, length, long in zip(upper_arm_cm, wrist_cm, sleeves_cm, long_cm, strict=True)
    ]


def _reach(wearer: Wearer, style: SleeveStyle) -> Fraction | None:
    return wearer.body.get("back_neck_to_wrist") if style == "long" else None
