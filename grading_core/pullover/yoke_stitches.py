"""The stitches of each section of a yoke, round by round."""

from __future__ import annotations

from collections.abc import Iterator, Mapping
from itertools import groupby
from typing import Literal, NamedTuple, get_args

from grading_core.pullover.result import KnittedSize
from grading_core.sections import Sections

Section = Literal["back", "front", "sleeve"]

SECTIONS: tuple[Section, ...] = get_args(Section)


class Step(NamedTuple):
    """From a round on a section has so many stitches; round 0 is the cast-on."""

    round: int
    stitches: int


def yoke_stitches(size: KnittedSize) -> Mapping[Section, tuple[Step, ...]]:
    """The rounds after which the stitches of a section are others than before: of back, front and each sleeve.

    size: of a front that is cast on lower, what is on the needles yet.
    """
    rounds = [*_rounds(size)]
    return {
        section: tuple(
            next(steps)
            for _, steps in groupby((Step(at, getattr(each, section)) for at, each in rounds), key=lambda step: step[1])
        )
        for section in SECTIONS
    }


def doubled_rounds(size: KnittedSize) -> tuple[int, ...]:
    """The rounds of the yoke with more than one increase at a body edge."""
    return tuple(each.round for each in size.yoke.increase_rounds if max(each.back, each.front) > 1)


def _rounds(size: KnittedSize) -> Iterator[tuple[int, Sections]]:
    """The cast-on, and every round in which anything may change."""
    increases = {each.round: each.increases for each in size.yoke.increase_rounds}
    drop, sections = size.neck.drop, size.counts.neck
    missing = (drop.centre + 2 * drop.edge_increases, *drop.missing, 0) if drop else (0,)
    for number in sorted({*increases, *range(len(missing))}):
        if number in increases:
            sections = sections.after(increases[number])
        lacking = missing[number] if number < len(missing) else 0
        yield number, Sections(sections.back, sections.front - lacking, sections.sleeve)
