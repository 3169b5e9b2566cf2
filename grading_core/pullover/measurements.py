"""The finished measurements that every size should have, and what in them leaves nothing to knit, or too much."""

from __future__ import annotations

from collections.abc import Iterator, Mapping, Sequence
from dataclasses import dataclass
from fractions import Fraction
from itertools import pairwise
from math import floor

from grading_core.errors import Impossible, Nearest, Path, Problem
from grading_core.limits import MAX_ROUNDS_IN_ALL, MAX_STITCHES
from grading_core.parts.body import Level, level_problems
from grading_core.pullover.bodies import Wearer
from grading_core.pullover.lengths import Lengths, place
from grading_core.pullover.proportions import (
    usual_back_share,
    usual_depth_cm,
    usual_ease,
    usual_neck_cm,
    usual_total_length_cm,
    usual_underarm_cm,
)
from grading_core.pullover.request import Fabrics, LevelWish, NeckWishes, Shares
from grading_core.sizes.request import per_size
from grading_core.standards import Measurement
from grading_core.units import to_places

A_LITTLE_CM = Fraction(1)
"""Of a length that must not come to nothing: what is offered first instead (a judgement, no source)."""

FEWEST_NECK_STITCHES = 8
"""Between the raglan lines, two to a section."""

RISING = ("bust", "upper_arm", "neck", "depth", "underarm", "front_extra")
"""What must not fall from a size to a larger one."""

EXTRAS = ("front_extra", "bust_darts")
"""What the front may have more of than the back, and never less."""


@dataclass(frozen=True, slots=True, kw_only=True)
class TargetMeasurements:
    """The finished measurements that one size should have, in cm.

    bust, upper_arm, neck: circumferences; the neck's is the cast-on's. depth: of the yoke, without a raised back.
    underarm: width of one. wrist: circumference of the cuff. body_length, sleeve_length: from the underarm, rib
    included. levels: of the body's shaping, from the underarm down. front_extra: width of the front beyond that of the
    back. bust_darts: length of the front beyond that of the back. back_share, front_share: of the neck's stitches
    without the raglan lines; the sleeves have the rest.
    """

    label: str
    bust: Fraction
    upper_arm: Fraction
    neck: Fraction
    depth: Fraction
    underarm: Fraction
    wrist: Fraction
    body_length: Fraction
    sleeve_length: Fraction
    levels: tuple[Level, ...]
    front_extra: Fraction = Fraction(0)
    bust_darts: Fraction = Fraction(0)
    back_share: Fraction
    front_share: Fraction

    @property
    def front_length(self) -> Fraction:
        """Of the front from the underarm, over the bust."""
        return self.body_length + self.bust_darts


def target_measurements(
    wearers: Sequence[Wearer], lengths: Lengths, neck: NeckWishes, levels: Sequence[LevelWish]
) -> tuple[TargetMeasurements, ...]:
    """What every size should measure.

    wearers: of all sizes. lengths: as asked, free of `length_problems`; the proportions say the rest. neck: its shares
    and its raise. levels: of the body's shaping.

    >>> body = {"bust": Fraction(94), "upper_arm": Fraction(28), "wrist": Fraction(16)}
    >>> body |= {"arm_length": Fraction(43), "back_waist_length": Fraction(42)}
    >>> (target,) = target_measurements([Wearer("M", body, False, False)], {}, NeckWishes(), [])
    >>> [float(round(cm, 1)) for cm in (target.bust, target.upper_arm, target.neck, target.depth)]
    [103.4, 33.6, 46.0, 23.8]
    """
    sizes = len(wearers)
    asked = {name: per_size(each.length, sizes) for name, each in lengths.items()}
    below = [(level.measurement, per_size(level.below, sizes)) for level in levels]
    return tuple(
        _target(
            wearer,
            {name: of_sizes[index] for name, of_sizes in asked.items()},
            [(name, of_sizes[index]) for name, of_sizes in below],
            neck,
        )
        for index, wearer in enumerate(wearers)
    )


def smallest_first(wearers: Sequence[Wearer], targets: Sequence[TargetMeasurements]) -> tuple[TargetMeasurements, ...]:
    """The sizes from the smallest to the largest, by the body's bust, its upper arm, and the label.

    wearers, targets: of all sizes, in the same order.
    """
    ranks = [(wearer.body["bust"], wearer.body["upper_arm"], wearer.label) for wearer in wearers]
    return tuple(targets[index] for index in sorted(range(len(targets)), key=ranks.__getitem__))


def measurement_problems(targets: Sequence[TargetMeasurements], fabrics: Fabrics) -> Iterator[Problem]:
    """Measurements that are too much to knit, or whose levels contradict each other.

    targets: of all sizes. fabrics: the gauges.
    """
    found: dict[Path, Problem] = {}
    too_large: dict[str, str] = {}
    rounds = Fraction(0)
    for target in targets:
        yoke_rounds = fabrics.rounds.rows(max(target.depth, Fraction(0)))
        below = fabrics.rounds.below(yoke_rounds)
        if (target.bust + target.front_extra) * below.at(1).stitches_per_cm > 2 * MAX_STITCHES:
            detail = f"At this gauge half the body of size {target.label} has more than {MAX_STITCHES} stitches."
            too_large.setdefault("stitches", detail)
        lengths = (target.front_length, target.sleeve_length)
        rounds += yoke_rounds + sum(below.exact_rows(max(length, Fraction(0))) for length in lengths)
        for problem in level_problems(target.levels):
            found.setdefault(problem.path, problem)
    if rounds > MAX_ROUNDS_IN_ALL:
        too_large["rounds"] = too_many_rounds(round(rounds))
    yield from found.values()
    yield from (Problem((), detail) for detail in too_large.values())


def extra_problems(targets: Sequence[TargetMeasurements], lengths: Lengths) -> Iterator[Problem]:
    """Extras of the front that are less than nothing.

    targets: of all sizes. lengths: as asked.
    """
    for name in EXTRAS:
        lacking = next((target for target in targets if getattr(target, name) < 0), None)
        if lacking:
            yield Problem(place(lengths, name), f"must not be less than 0, and is in size {lacking.label}.")


def nothing_to_knit(
    target: TargetMeasurements, wearer: Wearer, lengths: Lengths, neck: NeckWishes, line_stitches: int, fabrics: Fabrics
) -> Impossible | None:
    """Why the measurements of a size leave nothing to knit somewhere; None where they don't.

    target: of the size. wearer: of the size. lengths, neck: as asked. line_stitches: of each raglan line. fabrics: the
    gauges.
    """
    for name in ("bust", "upper_arm", "wrist"):
        if getattr(target, name) <= 0:
            nearest = Nearest(place(lengths, name), A_LITTLE_CM - wearer.body[name])
            return Impossible(_leaves_none(name, target), (nearest,))
    for name in ("neck", "depth", "underarm", "sleeve_length"):
        if getattr(target, name) <= 0:
            return Impossible(_leaves_none(name, target), (Nearest(place(lengths, name), A_LITTLE_CM),))
    across = fabrics.rounds.at(1).stitches_per_cm
    sections = target.neck * across - 4 * line_stitches
    if sections < FEWEST_NECK_STITCHES:
        fewest = FEWEST_NECK_STITCHES + Fraction(1, 4)
        narrower = floor((target.neck * across - FEWEST_NECK_STITCHES) / 4)
        return Impossible(
            f"The neck has room for {to_places(sections, 1)} stitches beside the raglan lines, and needs "
            f"{FEWEST_NECK_STITCHES}.",
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
            if neck.raise_cm >= missing:
                nearest_changes.append(Nearest(("neck", "raise_height"), neck.raise_cm - missing))
        return Impossible(_leaves_none("body_length", target), tuple(nearest_changes))
    return None


def _leaves_none(name: str, target: TargetMeasurements) -> str:
    words = name.replace("_", " ")
    return f"What is asked leaves no {words}: {to_places(getattr(target, name))} cm."


def too_many_rounds(rounds: int) -> str:
    """What is wrong with a request whose answer is too long.

    rounds: of yoke, body and sleeve in all sizes.
    """
    return f"The sizes have {rounds} rounds in all, and one answer holds at most {MAX_ROUNDS_IN_ALL}."


def fall_problems(rising: Sequence[TargetMeasurements], lengths: Lengths) -> Iterator[Problem]:
    """Lengths asked for that make a measurement fall.

    rising: from the smallest size to the largest. lengths: as asked.
    """
    for name in RISING:
        asked = lengths.get(name)
        if asked is None:
            continue
        for smaller, larger in pairwise(rising):
            low, high = getattr(smaller, name), getattr(larger, name)
            if high < low:
                yield Problem(
                    asked.path,
                    f"makes the {name} fall from {to_places(low)} cm in {smaller.label} to {to_places(high)} cm in "
                    f"{larger.label}.",
                )


def _target(
    wearer: Wearer, asked: Mapping[str, Fraction], levels: Sequence[tuple[Measurement, Fraction]], neck: NeckWishes
) -> TargetMeasurements:
    body = wearer.body

    def around(name: Measurement) -> Fraction:
        return body[name] + (asked[name] if name in asked else usual_ease(name, body[name]))

    bust = around("bust")
    depth = asked.get("depth", usual_depth_cm(bust))
    total = usual_total_length_cm(body, child=wearer.child) or Fraction(0)
    back_share, front_share = _neck_shares(neck.shares, body["bust"])
    return TargetMeasurements(
        label=wearer.label,
        bust=bust,
        upper_arm=around("upper_arm"),
        neck=asked.get("neck", usual_neck_cm(body["bust"])),
        depth=depth,
        underarm=asked.get("underarm", usual_underarm_cm(bust)),
        wrist=around("wrist"),
        body_length=asked.get("body_length", total - depth - neck.raise_cm),
        sleeve_length=asked.get("sleeve_length", body.get("arm_length", Fraction(0))),
        levels=tuple(Level(name, around(name), below) for name, below in levels),
        front_extra=asked.get("front_extra", Fraction(0)),
        bust_darts=asked.get("bust_darts", Fraction(0)),
        back_share=back_share,
        front_share=front_share,
    )


def _neck_shares(shares: Shares | None, bust_cm: Fraction) -> tuple[Fraction, Fraction]:
    """The parts of back and front in the neck's stitches."""
    if shares is None:
        usual = usual_back_share(bust_cm)
        return usual, usual
    in_all = shares.back + shares.front + 2 * shares.sleeve
    return shares.back / in_all, shares.front / in_all
