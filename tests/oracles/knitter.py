"""A knitter: works a schedule edge by edge, or reads the written instructions and works those."""

import re
from collections.abc import Iterable, Sequence
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


INCREASES = re.compile(r"increase (?P<first>\d+) (?P<noun>stitch|stitches) at (?P<rest>.+) \((?P<more>\d+) more\)")
EDGE = re.compile(r"each (back|front|body|sleeve) edge")


def increases_said(what: str) -> tuple[int, int, int]:
    """Increases at each back, front and sleeve edge, from the words for one increase round."""
    found = INCREASES.fullmatch(what)
    assert found, what
    assert (found["noun"] == "stitch") == (found["first"] == "1"), what
    edges: dict[str, int] = {}
    for many, names in re.findall(
        r"(\d+) at ((?:each \w+ edge(?:, | and )?)+)", f"{found['first']} at {found['rest']}"
    ):
        for name in EDGE.findall(names):
            assert name not in edges, what
            edges[name] = int(many)
    back = edges.get("back", edges.get("body", 0))
    front = edges.get("front", edges.get("body", 0))
    sleeve = edges.get("sleeve", 0)
    assert int(found["more"]) == 2 * back + 2 * front + 4 * sleeve, what
    return back, front, sleeve


RUN_EVERY = re.compile(
    r"(?P<what>.+) every (?:(?P<nth>\d+)(?:st|nd|rd|th) )?(?:round|row) (?P<run>\S+(?: \([^()]+\))?) (?P<noun>times?)"
)
RUN_IN_TURN = re.compile(
    r"(?P<what>.+) at intervals of (?P<list>[\d, and]+) (?:rounds|rows) in turn "
    r"(?P<run>\S+(?: \([^()]+\))?) (?P<noun>times?) over"
)
RUN_PLAIN = re.compile(r"work (?P<run>\S+(?: \([^()]+\))?) (?P<noun>rounds?|rows?) without shaping")


def read_runs(sentences: Sequence[str], sizes: int) -> list[tuple[list[tuple[int, str]], int] | None]:
    """For each size what is worked, as (row, what), and the last row; None for a size with dashes only."""
    results: list[tuple[list[tuple[int, str]], int] | None] = []
    for size in range(sizes):
        row, worked, dashes = 0, [], 0
        for sentence in sentences:
            body = sentence.removesuffix(".")
            zero_said = body.endswith(" (at 0, skip this line)")
            body = body.removesuffix(" (at 0, skip this line)")
            body = body[0].lower() + body[1:]
            plain = RUN_PLAIN.fullmatch(body)
            in_turn = RUN_IN_TURN.fullmatch(body)
            every = None if in_turn else RUN_EVERY.fullmatch(body)
            found = plain or in_turn or every
            assert found, sentence
            values = run_values(found["run"])
            # a number that all sizes share is said once
            values = values * sizes if len(values) == 1 else values
            assert len(values) == sizes, sentence
            assert zero_said == (0 in values), sentence
            assert found["noun"].endswith("s") == any(value not in (1, None) for value in values), sentence
            amount = values[size]
            if amount is None:
                dashes += 1
                continue
            if plain:
                row += amount
                continue
            if in_turn:
                cycle = [int(number) for number in re.split(", | and ", in_turn["list"])]
            else:
                assert every
                cycle = [int(every["nth"] or 1)]
            for interval in cycle * amount:
                row += interval
                worked.append((row, found["what"]))
        assert dashes in (0, len(sentences))
        results.append(None if dashes else (worked, row))
    return results


def run_values(run: str) -> list[int | None]:
    """The values of a printed size run, None for a dash."""
    found = re.fullmatch(r"(\d+|\u2013)(?: \(((?:\d+|\u2013)(?:, (?:\d+|\u2013))*)\))?", run)
    assert found, run
    printed = [found[1], *(found[2].split(", ") if found[2] else [])]
    return [None if value == "\u2013" else int(value) for value in printed]
