"""The finished measurements that every size should have, and what in them leaves nothing to knit, or too much."""

from __future__ import annotations

from collections.abc import Iterator, Mapping, Sequence
from dataclasses import dataclass
from fractions import Fraction
from itertools import pairwise

from grading_core.errors import Path, Problem
from grading_core.limits import MAX_ROUNDS_IN_ALL, MAX_STITCHES
from grading_core.parts.body import Level, level_problems
from grading_core.pullover.bodies import Wearer
from grading_core.pullover.lengths import PLACES, Lengths, place
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

FEWEST_NECK_STITCHES = 8
"""Between the raglan lines, two to a section."""

RISING = ("bust", "upper_arm", "neck", "depth", "underarm", "front_extra")
"""What must not fall from a size to a larger one."""

EXTRAS = ("front_extra", "bust_darts")
"""What a garment may do without, and cannot have less of than nothing."""


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


def measurement_problems(
    targets: Sequence[TargetMeasurements], lengths: Lengths, neck: NeckWishes, line_stitches: int, fabrics: Fabrics
) -> Iterator[Problem]:
    """Measurements that leave nothing to knit, or too much.

    targets: of all sizes. lengths, neck: as asked. line_stitches: of each raglan line. fabrics: the gauges.
    """
    found: dict[Path, Problem] = {}
    too_large: dict[str, str] = {}
    rounds = Fraction(0)
    left_to_knit = [*_left_to_knit(lengths, raised=neck.raise_height is not None)]
    neck_path = place(lengths, "neck") if "neck" in lengths else ("yoke", "line_stitches")
    for target in targets:
        for name, path in left_to_knit:
            cm = getattr(target, name)
            if cm <= 0:
                detail = f"leaves no {name.replace('_', ' ')} in size {target.label}: {to_places(cm)} cm."
                found.setdefault(path, Problem(path, detail))
        for name in EXTRAS:
            cm = getattr(target, name)
            if cm < 0:
                path = place(lengths, name)
                found.setdefault(path, Problem(path, f"must not be less than 0, and is in size {target.label}."))
        sections = target.neck * fabrics.rounds.at(1).stitches_per_cm - 4 * line_stitches
        if sections < FEWEST_NECK_STITCHES:
            detail = (
                f"The neck of size {target.label} has room for {to_places(sections, 1)} stitches beside the raglan "
                f"lines, and needs {FEWEST_NECK_STITCHES}."
            )
            found.setdefault(neck_path, Problem(neck_path, detail))
        yoke_rounds = fabrics.rounds.rows(max(target.depth, Fraction(0)))
        below = fabrics.rounds.below(yoke_rounds)
        if (target.bust + target.front_extra) * below.at(1).stitches_per_cm > 2 * MAX_STITCHES:
            detail = f"At this gauge half the body of size {target.label} has more than {MAX_STITCHES} stitches."
            too_large.setdefault("stitches", detail)
        rounds += yoke_rounds + below.exact_rows(target.front_length) + below.exact_rows(target.sleeve_length)
        for problem in level_problems(target.levels):
            found.setdefault(problem.path, problem)
    if rounds > MAX_ROUNDS_IN_ALL:
        too_large["rounds"] = too_many_rounds(round(rounds))
    yield from found.values()
    yield from (Problem((), detail) for detail in too_large.values())


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


def _left_to_knit(lengths: Lengths, *, raised: bool) -> Iterator[tuple[str, Path]]:
    """The measurements that may come to nothing, each with what is to blame."""
    for name, path in PLACES.items():
        if name in EXTRAS:
            continue
        if name in lengths or path[0] == "ease":
            yield name, place(lengths, name)
        elif name == "body_length":
            # what the yoke and the raise leave of the total length
            if "depth" in lengths:
                yield name, place(lengths, "depth")
            else:
                yield name, ("neck", "raise_height") if raised else path
