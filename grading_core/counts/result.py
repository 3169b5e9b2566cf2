"""The counts of a top-down raglan from the cast-on to the split, as chosen.

The identities of the trade, with L line stitches of which some go to the body and some to the sleeve:

    cast-on = back + front + 2 sleeves + 4 L                    (sections at the neck)
    body    = back + front + 4 line to body + 2 underarms       (sections at the split)
    sleeve  = sleeve + 2 line to sleeve + underarm
    body + 2 sleeves = yoke total before the split + 4 underarms
"""

from __future__ import annotations

from dataclasses import dataclass

from grading_core.counts.request import Targets
from grading_core.sections import Sections
from grading_core.yoke.request import Yoke


@dataclass(frozen=True, slots=True, kw_only=True)
class Counts:
    """The stitches and rounds of one size from the cast-on to the split.

    neck, split: the sections between the raglan lines. underarm: stitches cast on at each side.
    rounds: of the yoke. line_to_body, line_to_sleeve: how each raglan line is shared at the split.

    >>> counts = Counts(neck=Sections(34, 34, 14), split=Sections(96, 96, 56), underarm=16, rounds=74,
    ...                 line_to_body=1, line_to_sleeve=1)
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

    @property
    def front_extra(self) -> int:
        """Stitches that the front has more than the back below the split."""
        return self.split.front - self.split.back

    def yoke(self, label: str) -> Yoke:
        """The yoke that leads from the neck to the split."""
        return Yoke(label, self.rounds, self.neck, self.split)

    def less(self, targets: Targets) -> Targets:
        """Each count less its target, under the target's name.

        targets: of the size.
        """
        return Targets(
            label=targets.label,
            neck=self.cast_on - targets.neck,
            neck_back=self.neck.back - targets.neck_back,
            neck_front=self.neck.front - targets.neck_front,
            neck_sleeve=self.neck.sleeve - targets.neck_sleeve,
            body=self.body - targets.body,
            sleeve=self.sleeve - targets.sleeve,
            underarm=self.underarm - targets.underarm,
            rounds=self.rounds - targets.rounds,
            front_extra=self.front_extra - targets.front_extra,
        )
