"""The rows of a proof as they are read: the numbers of each, and the step that they were rounded to."""

from __future__ import annotations

from collections.abc import Iterable, Mapping, Sequence
from typing import NamedTuple

from grading_core.codes import ProblemCode
from grading_core.errors import Check, Problem, check
from grading_core.proof.figures import Key, Numbers, grains, printed_step, step_of_row
from grading_core.proof.reading import PrintedRun, UnreadableError, read_run
from grading_core.proof.request import PrintedRow
from grading_core.pullover.table import LINES
from grading_core.unknown import UnknownError, is_unknown

UNITS: Mapping[tuple[str, str], str] = {(line.part, line.item): line.unit for line in LINES}
"""Of the rows that a pullover's table has, yarn left out."""

COUNTING = frozenset(("stitches", "rows", "rounds", "times", "balls"))
ROUNDED = frozenset(("cm", "inch", "grams", "metres", "yards"))
"""Units of counts, and of what is printed rounded."""

Values = tuple[int | None, ...]


class Rounding(NamedTuple):
    """How numbers were rounded: what they count, and whether they are exact ones or printed."""

    unit: str
    exact: bool


class Row(NamedTuple):
    """A row as it was read. unit: of its numbers. values, run: in grains, one for each size or for all."""

    key: Key
    unit: str
    values: Values | None
    run: Values | None

    @property
    def told(self) -> Values:
        """Its numbers: exact ones where they are sent, and else as printed."""
        told = self.run if self.values is None else self.values
        assert told is not None
        return told

    @property
    def rounding(self) -> Rounding:
        """With which other rows its numbers were rounded alike."""
        return Rounding(self.unit, self.values is not None)


Steps = Mapping[Rounding, int]
"""What numbers that are no counts were rounded to, in grains."""


@check
def read_rows(rows: Sequence[PrintedRow], sizes: int) -> Check[tuple[Row, ...]]:
    """The rows, inches as rows of their own; a problem for each that can't be read or stands there twice.

    rows: as sent. sizes: how many the pattern has.
    """
    read: dict[Key, Row] = {}
    for place, sent in enumerate(rows):
        if is_unknown(sent):
            continue
        found, problems = _read_row(sent, sizes)
        for row in found:
            if row.key in read:
                detail = f"has the part and item of a row above, {row.key.part} and {row.key.item}."
                problems.append(Problem((), ProblemCode.DUPLICATE_ROW, detail))
            read[row.key] = row
        yield from [problem.under("rows", place) for problem in problems]
    return tuple(read.values())


def _read_row(sent: PrintedRow, sizes: int) -> tuple[Sequence[Row], list[Problem]]:
    """The row, with its inches as another one, and what is wrong with it."""
    problems: list[Problem] = []
    printed = _read("run", sent.run, sizes, problems)
    in_inches = _read("run_inch", sent.run_inch, sizes, problems)
    try:
        return _rows(sent, printed, in_inches, problems), problems
    except UnknownError:
        return (), problems


def _rows(
    sent: PrintedRow, printed: PrintedRun | None, in_inches: PrintedRun | None, problems: list[Problem]
) -> Sequence[Row]:
    part, item, unit, values, run, run_inch = sent
    usual = UNITS.get((part, item)) or (item.partition("_")[0] if part == "yarn" else None)
    if unit is not None and usual is not None and unit != usual and (unit, usual) != ("inch", "cm"):
        problems.append(Problem(("unit",), ProblemCode.OTHER_UNIT, f"must be {usual}, or left out."))
        return ()
    if values is None and run is None and run_inch is None:
        problems.append(Problem((), ProblemCode.NO_NUMBERS, "has no numbers: send values, run or run_inch."))
        return ()
    told = unit or usual or ""
    if printed is not None and printed.unit == "inch" and told != "inch":
        printed, in_inches = None, in_inches or printed
    rows = []
    if values is not None or printed is not None:
        exact = None if values is None else tuple([None if value is None else grains(value) for value in values])
        rows.append(Row(Key(part, item, told == "inch"), told, exact, None if printed is None else printed.values))
    if in_inches is not None:
        rows.append(Row(Key(part, item, True), "inch", None, in_inches.values))
    return rows


def _read(name: str, text: str | None, sizes: int, problems: list[Problem]) -> PrintedRun | None:
    """The run of a field, None where it isn't sent or can't be read."""
    if text is None or is_unknown(text):
        return None
    try:
        return read_run(text, sizes)
    except UnreadableError as error:
        problems.append(Problem((name,), ProblemCode.UNREADABLE_RUN, str(error)))
        return None


def printed_steps(rows: Iterable[Row]) -> Steps:
    """The steps of numbers, by their unit and by whether they are exact ones or printed.

    rows: of the whole pattern.
    """
    groups: dict[Rounding, list[int]] = {}
    for row in rows:
        if row.unit in ROUNDED:
            for values, exact in ((row.values, True), (row.run, False)):
                if values is not None:
                    told = groups.setdefault(Rounding(row.unit, exact), [])
                    told += [value for value in values if value is not None]
    return {kind: printed_step(values, unit=kind.unit) for kind, values in groups.items()}


def numbers_of(rows: Iterable[Row], sizes: int, steps: Steps) -> dict[Key, Numbers]:
    """The numbers of each row.

    rows: whose runs are as long as they should be. sizes: how many the pattern has. steps: of the rows.
    """
    numbers = {}
    for row in rows:
        told = row.told
        step = steps.get(row.rounding, 0) if row.unit in ROUNDED else 0
        if step and row.values is None:
            step = step_of_row(told, step)
        if len(told) != sizes:
            told *= sizes
        numbers[row.key] = Numbers(told, step // 2, row.unit)
    return numbers
