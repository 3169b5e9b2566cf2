"""The bodies that the pullover is for: what it needs of them, and who wears it."""

from __future__ import annotations

from collections.abc import Iterator, Mapping, Sequence
from dataclasses import dataclass

from grading_core.codes import ProblemCode
from grading_core.errors import Check, Problem, Remark, check
from grading_core.fraction import Fraction
from grading_core.pullover.lengths import Lengths
from grading_core.pullover.proportions import BABY_BUST_CM, YOUNG_CHILD_BUST_CM, Age
from grading_core.pullover.request import Changes, LevelWish
from grading_core.sizes.bodies import SizeBody
from grading_core.sizes.grading import estimate_remarks
from grading_core.standards import Measurement
from grading_core.unknown import is_unknown, told, unknown
from grading_core.wording import listed


@dataclass(frozen=True, slots=True)
class Wearer:
    """Who wears one size.

    label: of the size. body: measurements in cm. child: whether it is a child or a baby. young: whether it is a baby
    or a young child.
    """

    label: str
    body: Mapping[Measurement, Fraction]
    child: bool
    young: bool

    @property
    def age(self) -> Age:
        """Whom the proportions are for."""
        if self.child and self.body["bust"] < BABY_BUST_CM:
            return "baby"
        return "child" if self.child else "adult"


def needed_measurements(
    lengths: Lengths, levels: Sequence[LevelWish], changes: Changes | None = None
) -> list[tuple[Measurement, ...]]:
    """What the pullover needs of every body: of each tuple, one of its measurements.

    lengths: as asked. levels: of the body's shaping. changes: a maker's. What isn't known to be needed isn't.
    """
    needed: list[tuple[Measurement, ...]] = [("bust",), ("upper_arm",), ("wrist",)]
    if "sleeve_length" not in lengths or told(_restyled, changes) is True:
        needed.append(("arm_length",))
    if "body_length" not in lengths:
        needed.append(("back_waist_length", "back_hip_length"))
    if not is_unknown(levels):
        needed += [(level.measurement,) for level in levels if not is_unknown(level.measurement)]
    return needed


@check
def missing_measurements(body: SizeBody, needed: Sequence[tuple[Measurement, ...]]) -> Check[SizeBody]:
    """Measurements that a size lacks; makes the body, with these unknown.

    body: of the size. needed: from `needed_measurements`.

    >>> [problem.detail for problem in missing_measurements(SizeBody("S", {}), needed_measurements({}, []))]
    ['lacks bust, upper_arm, wrist, arm_length and back_waist_length: send them, or name a body_table that \
completes the size.']
    """
    lacking = [names[0] for names in needed if not any(name in body.values for name in names)]
    if not lacking:
        return body
    detail = f"lacks {listed(lacking)}: send them, or name a body_table that completes the size."
    yield Problem((), ProblemCode.MISSING_MEASUREMENT, detail)
    return SizeBody(body.label, {**body.values, **dict.fromkeys(lacking, unknown())})


def find_wearers(bodies: Sequence[SizeBody], table: str | None) -> tuple[Wearer, ...]:
    """Who wears each size.

    bodies: with all that is needed of them. table: that they are from.
    """
    return tuple(told(_wearer, body, table) for body in bodies)


def body_remarks(
    bodies: Sequence[SizeBody], lengths: Lengths, levels: Sequence[LevelWish], table: str | None
) -> Iterator[Remark]:
    """A word for each measurement of the bodies that the pullover uses and no published table reaches.

    bodies, lengths, levels: as for `missing_measurements`. table: as the request names it.
    """
    used: list[Measurement] = ["bust", "upper_arm", "wrist", "head"]
    if "sleeve_length" not in lengths:
        used += ["arm_length", "back_neck_to_wrist"]
    if "body_length" not in lengths:
        hip = all("back_hip_length" in body.values for body in bodies)
        used.append("back_hip_length" if hip else "back_waist_length")
    used += [level.measurement for level in levels]
    path = ("body_table",) if table else None
    yield from estimate_remarks({body.label: body.values for body in bodies}, used, path)


def _restyled(changes: Changes | None) -> bool:
    """Whether a maker's sleeves are of another style, and as long as that usually is."""
    return changes is not None and changes.sleeve_style is not None and changes.sleeve_length is None


def _wearer(size: SizeBody, table: str | None) -> Wearer:
    body = {name: value.cm for name, value in size.values.items()}
    arm, to_wrist = (size.values.get(name) for name in ("arm_length", "back_neck_to_wrist"))
    if told(lambda: arm and to_wrist and arm.origin == "sent" != to_wrist.origin) is True:
        # a table's reach is that of another arm
        del body["back_neck_to_wrist"]
    young = body["bust"] < YOUNG_CHILD_BUST_CM
    return Wearer(size.label, body, child=young or table == "children", young=young)
