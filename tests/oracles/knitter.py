"""A knitter: works a schedule edge by edge, or reads the written instructions and works those."""

import re
from collections.abc import Iterable
from dataclasses import dataclass

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


@dataclass(frozen=True)
class Said:
    """What one sentence tells: its first and last row, the (row, what) worked in it, the stitches after it."""

    first: int
    last: int
    worked: tuple[tuple[int, str], ...]
    stitches: int


HEADED = re.compile(
    r"(?:Round|Row)(?P<many>s?) (?P<first>\d+)(?: (?P<to>to|and) (?P<last>\d+))?: (?P<body>.+)\. "
    r"(?P<stitches>\d+) (?P<noun>stitch|stitches)(?: on the needle)?\."
)
TIMES = r"(?P<times>once|twice|\d+ times)"
IN_TURN = re.compile(rf"(?P<what>.+) at intervals of (?P<list>[\d, and]+) (?:rounds|rows) in turn, {TIMES} over")
EVERY = re.compile(rf"(?P<what>.+) every (?:(?P<nth>\d+)(?:st|nd|rd|th) )?(?:round|row), {TIMES}")
STEPS = re.compile(rf"work these (?P<many>\d+) steps {TIMES}: (?P<steps>.+)")
STEP = re.compile(
    r"(?:work (?P<plain>\d+) (?P<noun>rounds?|rows?) plain, then )?in the next (?:round|row) (?P<what>.+)"
)


def read(sentence: str) -> Said:
    """One sentence of the instructions of one size."""
    headed = HEADED.fullmatch(sentence)
    assert headed, sentence
    first = int(headed["first"])
    last = int(headed["last"] or first)
    assert bool(headed["many"]) == (last > first), sentence
    assert (headed["to"] == "and") == (last == first + 1), sentence
    stitches = int(headed["stitches"])
    assert (headed["noun"] == "stitch") == (stitches == 1), sentence
    worked: list[tuple[int, str]] = []
    row = first - 1
    for interval, what in _intervals(headed["body"]):
        row += interval
        worked.append((row, what))
    # a sentence that shapes ends with its last shaping row
    assert not worked or row == last, sentence
    return Said(first, last, tuple(worked), stitches)


def _intervals(body: str) -> list[tuple[int, str]]:
    if body == "work without shaping":
        return []
    if found := STEPS.fullmatch(body):
        steps = [_step(step) for step in found["steps"].split("; ")]
        assert len(steps) == int(found["many"]), body
        return steps * _times(found["times"])
    if found := IN_TURN.fullmatch(body):
        intervals = [int(number) for number in re.split(", | and ", found["list"])]
        return [(interval, found["what"]) for interval in intervals] * _times(found["times"])
    if found := EVERY.fullmatch(body):
        return [(int(found["nth"] or 1), found["what"])] * _times(found["times"])
    if STEP.fullmatch(body):
        return [_step(body)]
    return [(1, body)]


def _step(step: str) -> tuple[int, str]:
    found = STEP.fullmatch(step)
    assert found, step
    plain = int(found["plain"] or 0)
    if plain:
        assert found["noun"].endswith("s") == (plain > 1), step
    return plain + 1, found["what"]


def _times(words: str) -> int:
    return {"once": 1, "twice": 2}.get(words) or int(words.split()[0])


def run_values(run: str) -> list[int | None]:
    """The values of a printed size run, None for a dash."""
    found = re.fullmatch(r"(\d+|\u2013)(?: \(((?:\d+|\u2013)(?:, (?:\d+|\u2013))*)\))?", run)
    assert found, run
    printed = [found[1], *(found[2].split(", ") if found[2] else [])]
    return [None if value == "\u2013" else int(value) for value in printed]
