"""A knitter, who works a schedule edge by edge, and a reader of printed size runs."""

import re
from collections.abc import Iterable

from grading_core.sections import IncreaseRound, Sections
from grading_core.yoke.result import Schedule


def knit(neck: Sections, increase_rounds: Iterable[IncreaseRound]) -> list[tuple[int, Sections]]:
    """The sections after each increase round, worked at all eight edges one by one."""
    back, left, front, right = neck.back, neck.sleeve, neck.front, neck.sleeve
    reached = []
    for worked in increase_rounds:
        for _edge in ("right", "left"):
            back += worked.back
            front += worked.front
            left += worked.sleeve
            right += worked.sleeve
        assert left == right
        reached.append((worked.round, Sections(back, front, left)))
    return reached


def knit_to_split(made: Schedule) -> Sections:
    """The sections after the last round of a schedule."""
    reached = knit(made.yoke.neck, made.increase_rounds)
    return reached[-1][1] if reached else made.yoke.neck


def run_values(run: str) -> list[int | None]:
    """The values of a printed size run, None for a dash."""
    found = re.fullmatch(r"(\d+|\u2013)(?: \(((?:\d+|\u2013)(?:, (?:\d+|\u2013))*)\))?", run)
    assert found, run
    printed = [found[1], *(found[2].split(", ") if found[2] else [])]
    return [None if value == "\u2013" else int(value) for value in printed]
