"""The four sections of a raglan round, and increases at their edges.

A round has a back, a first sleeve, a front and a second sleeve, with a raglan line between each two. An edge is where
a section meets a line.
"""

from __future__ import annotations

from dataclasses import dataclass
from typing import NamedTuple

Increases = tuple[int, int, int]
"""Increases at each back edge, each front edge and each sleeve edge in one round."""


@dataclass(frozen=True, slots=True)
class Sections:
    """Stitches of the back, the front and each sleeve between the raglan lines."""

    back: int
    front: int
    sleeve: int

    def total(self, line_stitches: int = 0) -> int:
        """All stitches of the round, with four raglan lines of so many stitches.

        >>> Sections(34, 34, 12).total(2)
        100
        """
        return self.back + self.front + 2 * self.sleeve + 4 * line_stitches

    def after(self, increases: Increases) -> Sections:
        """The sections after increases at each of their edges.

        >>> Sections(34, 34, 12).after((1, 1, 0))
        Sections(back=36, front=36, sleeve=12)
        """
        back, front, sleeve = increases
        return Sections(self.back + 2 * back, self.front + 2 * front, self.sleeve + 2 * sleeve)


class IncreaseRound(NamedTuple):
    """Increases at each back, front and sleeve edge in one round. A tuple, since an answer holds thousands."""

    round: int
    back: int
    front: int
    sleeve: int

    @property
    def increases(self) -> Increases:
        """The three numbers without the round."""
        return (self.back, self.front, self.sleeve)
