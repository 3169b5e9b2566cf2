"""The lengths that may differ from size to size: what is asked of each measurement, and where in the request."""

from __future__ import annotations

from collections.abc import Iterable, Mapping, Sequence
from dataclasses import dataclass, replace

from grading_core.codes import ProblemCode
from grading_core.errors import Check, Path, Problem, check
from grading_core.pullover.request import BodyWishes, Changes, LevelWish, NeckWishes, SleeveWishes, YokeWishes
from grading_core.sizes.request import PerSize
from grading_core.standards import Measurement
from grading_core.unknown import is_unknown, unknown
from grading_core.wording import counted

PLACES: Mapping[str, Path] = {
    "bust": ("ease", "bust"),
    "upper_arm": ("ease", "upper_arm"),
    "neck": ("neck", "circumference"),
    "depth": ("yoke", "depth"),
    "underarm": ("yoke", "underarm"),
    "wrist": ("ease", "wrist"),
    "body_length": ("body", "length"),
    "sleeve_length": ("sleeve", "length"),
    "front_extra": ("body", "front_extra"),
    "bust_darts": ("body", "bust_darts", "extra"),
}
"""Where each measurement can be asked for in the request: its ease, or the length itself."""


EASED: tuple[Measurement, ...] = ("bust", "upper_arm", "wrist")
"""What has ease in every pullover; waist and hip only where the body is shaped to them."""


@dataclass(frozen=True, slots=True)
class Asked:
    """A length that is asked for, and its place in the request."""

    path: Path
    length: PerSize


Lengths = Mapping[str, Asked]
"""What is asked, by measurement: the ease of the body's girths, for all others the length itself."""


def asked_lengths(
    ease: Mapping[Measurement, PerSize], neck: NeckWishes, yoke: YokeWishes, body: BodyWishes, sleeve: SleeveWishes
) -> Lengths:
    """What a design asks for.

    ease: by measurement. neck, yoke, body, sleeve: the wishes for each part.

    >>> from fractions import Fraction
    >>> yoke = YokeWishes(depth=Fraction(24))
    >>> asked_lengths({}, NeckWishes(), yoke, BodyWishes(), SleeveWishes())
    {'depth': Asked(path=('yoke', 'depth'), length=Fraction(24, 1))}
    """
    lengths = {
        "neck": neck.circumference,
        "depth": yoke.depth,
        "underarm": yoke.underarm,
        "body_length": body.length,
        "sleeve_length": sleeve.length,
        "front_extra": body.front_extra,
        "bust_darts": body.bust_darts.extra,
    }
    eases = dict.fromkeys(EASED, unknown()) if is_unknown(ease) else ease
    return {name: Asked(("ease", name), cm) for name, cm in eases.items()} | {
        name: Asked(PLACES[name], length) for name, length in lengths.items() if length is not None
    }


def changed_lengths(changes: Changes | None) -> Lengths:
    """What a maker asks for instead.

    changes: None where nothing changes.
    """
    if changes is None:
        return {}
    lengths = {"body_length": changes.body_length, "sleeve_length": changes.sleeve_length}
    return {name: Asked(("changes", "ease", name), cm) for name, cm in changes.ease.items()} | {
        name: Asked(("changes", name), length) for name, length in lengths.items() if length is not None
    }


def level_lengths(levels: Sequence[LevelWish]) -> list[Asked]:
    """How far below the underarm each level is asked for.

    levels: of the body's shaping.
    """
    return [Asked(("body", "levels", index, "below"), level.below) for index, level in enumerate(levels)]


def place(lengths: Lengths, measurement: str) -> Path:
    """Where a measurement is asked for, or can be.

    lengths: as asked. measurement: one of `PLACES`.

    >>> place({}, "neck")
    ('neck', 'circumference')
    """
    asked = lengths.get(measurement)
    return PLACES[measurement] if asked is None else asked.path


@check
def length_problems(asked: Asked, sizes: int) -> Check[Asked]:
    """A list that has another number of lengths than there are sizes; makes what is asked, unknown where it is wrong.

    asked: any. sizes: how many there are.
    """
    if isinstance(asked.length, tuple) and len(asked.length) != sizes:
        detail = f"has {counted(len(asked.length), 'value')} for {counted(sizes, 'size')}."
        yield Problem(asked.path, ProblemCode.WRONG_NUMBER_OF_VALUES, detail)
        return replace(asked, length=unknown())
    return asked


@check
def ease_problems(ease: Iterable[Measurement], levels: Sequence[LevelWish]) -> Check[None]:
    """Eases on what this pullover has no measurement of.

    ease: the measurements that have one. levels: of the body's shaping.
    """
    used = [*EASED, *(level.measurement for level in levels)]
    for name in ease:
        if name not in used:
            detail = f"Nothing in this pullover has the {name} of the body."
            yield Problem(("ease", name), ProblemCode.UNUSED_MEASUREMENT, detail)
