"""The counts of a top-down raglan from the cast-on to the split: wanted, ruled and chosen.

The identities of the trade, with L line stitches of which some go to the body and some to the sleeve:

    cast-on = back + front + 2 sleeves + 4 L                    (sections at the neck)
    body    = back + front + 4 line to body + 2 underarms       (sections at the split)
    sleeve  = sleeve + 2 line to sleeve + underarm
    body + 2 sleeves = yoke total before the split + 4 underarms
"""

from __future__ import annotations

from dataclasses import dataclass, field, fields
from fractions import Fraction
from typing import Literal

from grading_core.raglan import Options, Sections, Yoke
from grading_core.rounding import NEAREST, CountRule

Parity = Literal["even", "odd"]


@dataclass(frozen=True, slots=True)
class Targets:
    """What one size should come to, in exact stitches and rounds.

    neck: all stitches of the cast-on. neck_back, neck_front, neck_sleeve: its sections, without the raglan
    lines. body, sleeve: all stitches below the split. underarm: cast on at each side. rounds: of the yoke.
    """

    label: str
    neck: Fraction
    neck_back: Fraction
    neck_front: Fraction
    neck_sleeve: Fraction
    body: Fraction
    sleeve: Fraction
    underarm: Fraction
    rounds: Fraction


QUANTITIES = tuple(each.name for each in fields(Targets))[1:]
"""What has a target: every field but the label."""


@dataclass(frozen=True, slots=True)
class Rules:
    """What every size must obey.

    neck, body, sleeve: count rules of the cast-on, of the body and of each sleeve below the split.
    back_parity, sleeve_parity: of the sections, for instance as a chart demands it; the front goes with the
    back. None leaves it open; it is then the same in all sizes, so that one chart and one set of words
    serve them all. seam_stitches: of the breaks below the split, so that underarm minus seam is even; None takes 0
    or 1 as the underarm has it. narrower_front: whether the front may have fewer stitches than the back at the
    neck; at the split they are equal. line_to_body: stitches of each raglan line that go to the body. yoke: how it
    is increased.
    """

    neck: CountRule = NEAREST
    body: CountRule = NEAREST
    sleeve: CountRule = NEAREST
    back_parity: Parity | None = None
    sleeve_parity: Parity | None = None
    seam_stitches: int | None = None
    narrower_front: bool = False
    line_to_body: int = 1
    yoke: Options = field(default_factory=Options)

    @property
    def line_to_sleeve(self) -> int:
        """Stitches of each raglan line that go to the sleeve."""
        return self.yoke.line_stitches - self.line_to_body

    @property
    def underarm(self) -> CountRule:
        """The count rule of the underarm."""
        return NEAREST if self.seam_stitches is None else CountRule(2, self.seam_stitches)


@dataclass(frozen=True, slots=True)
class Counts:
    """The stitches and rounds of one size from the cast-on to the split.

    neck, split: the sections between the raglan lines. underarm: stitches cast on at each side.
    rounds: of the yoke. line_to_body, line_to_sleeve: how each raglan line is shared at the split.

    >>> counts = Counts(Sections(34, 34, 14), Sections(96, 96, 56), 16, 74, 1, 1)
    >>> counts.cast_on, counts.yoke_total, counts.body, counts.sleeve
    (104, 312, 228, 74)
    """

    neck: Sections
    split: Sections
    underarm: int
    rounds: int
    line_to_body: int
    line_to_sleeve: int

    @property
    def line_stitches(self) -> int:
        """Stitches of each raglan line."""
        return self.line_to_body + self.line_to_sleeve

    @property
    def cast_on(self) -> int:
        """All stitches at the neck."""
        return self.neck.total(self.line_stitches)

    @property
    def yoke_total(self) -> int:
        """All stitches in the yoke's last round."""
        return self.split.total(self.line_stitches)

    @property
    def body(self) -> int:
        """Stitches of the body after the split."""
        return self.split.back + self.split.front + 4 * self.line_to_body + 2 * self.underarm

    @property
    def sleeve(self) -> int:
        """Stitches of each sleeve after the split."""
        return self.split.sleeve + 2 * self.line_to_sleeve + self.underarm

    def yoke(self, label: str) -> Yoke:
        """The yoke that leads from the neck to the split."""
        return Yoke(label, self.rounds, self.neck, self.split)

    def less(self, targets: Targets) -> Targets:
        """Each count less its target, under the target's name.

        targets: of the size.
        """
        return Targets(
            targets.label,
            self.cast_on - targets.neck,
            self.neck.back - targets.neck_back,
            self.neck.front - targets.neck_front,
            self.neck.sleeve - targets.neck_sleeve,
            self.body - targets.body,
            self.sleeve - targets.sleeve,
            self.underarm - targets.underarm,
            self.rounds - targets.rounds,
        )
