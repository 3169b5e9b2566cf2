"""What every size of a top-down raglan should come to, and the rules that its counts obey."""

from __future__ import annotations

from dataclasses import dataclass, field, fields
from typing import Literal

from grading_core.fraction import Fraction
from grading_core.rounding import NEAREST, CountRule
from grading_core.yoke.request import Options

Parity = Literal["even", "odd"]


@dataclass(frozen=True, slots=True, kw_only=True)
class Targets:
    """What one size should come to, in exact stitches and rounds.

    neck: all stitches of the cast-on. neck_back, neck_front, neck_sleeve: its sections, without the raglan
    lines. body, sleeve: all stitches below the split. underarm: cast on at each side. rounds: of the yoke. front_extra:
    by which the front is wider than the back below the split, 0 or more, rising with the size.
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
    front_extra: Fraction = Fraction(0)

    @property
    def front_share(self) -> int:
        """Stitches that the front has more, and the back fewer, than half of both at the split.

        An even number, so that the sections keep their parity from the neck on and the body its remainder modulo 4:
        the nearest to half of `front_extra`.
        """
        return CountRule(2).round(self.front_extra / 2)


QUANTITIES = tuple(each.name for each in fields(Targets))[1:-1]
"""What is weighed: every field but the label and `front_extra`, which is met as nearly as the parity allows."""


@dataclass(frozen=True, slots=True, kw_only=True)
class Rules:
    """What every size must obey.

    neck, body, sleeve: count rules of the cast-on, of the body and of each sleeve below the split.
    back_parity, sleeve_parity: of the sections, for instance as a chart demands it; the front goes with the
    back. None leaves it open; it is then the same in all sizes, so that one chart and one set of words
    serve them all. seam_stitches: of the breaks below the split, so that underarm minus seam is even; None takes 0
    or 1 as the underarm has it. narrower_front: whether the front may have fewer stitches than the back at the
    neck; at the split they differ as the targets' `front_extra` says. line_to_body: stitches of each raglan line that
    go to the body. yoke: how it is increased.
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
