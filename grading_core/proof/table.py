"""The rows of a proof as they are read: the numbers of each, and the step that they were rounded to."""

from __future__ import annotations

from collections.abc import Iterable, Mapping, Sequence
from typing import NamedTuple

from grading_core.codes import ProblemCode
from grading_core.errors import Check, Problem, check
from grading_core.proof.columns import Columns
from grading_core.proof.figures import Key, Numbers, all_grains, key_of, printed_step, step_of_row
from grading_core.proof.reading import PrintedUnit, UnreadableError, read_run, read_usual_runs
from grading_core.proof.request import PrintedRow
from grading_core.pullover.table import LINES
from grading_core.unknown import UnknownError, is_unknown

KEYS: Mapping[tuple[str, str], tuple[Key, str]] = {
    (line.part, line.item): (key_of(line.part, line.item), line.unit) for line in LINES
}
"""Of the rows that a pullover's table has, with their units, yarn left out."""

COUNTING = frozenset(("stitches", "rows", "rounds", "times", "balls"))
ROUNDED = frozenset(("cm", "inch", "grams", "metres", "yards"))
"""Units of counts, and of what is printed rounded."""

Values = tuple[int | None, ...]


class Row(NamedTuple):
    """A row as it was read.

    unit: of its numbers. values, run: exact ones and as printed, at least one of the two, in grains, one for each size
    or for all.
    """

    key: Key
    unit: str
    values: Values | None
    run: Values | None


Steps = Mapping[tuple[str, bool], int]
"""What numbers that are no counts were rounded to, in grains: by their unit, and whether they are exact ones."""


@check
def read_rows(rows: Sequence[PrintedRow], sizes: int) -> Check[tuple[Row, ...]]:
    """The rows, inches as rows of their own; a problem for each that can't be read or stands there twice.

    rows: as sent. sizes: how many the pattern has.
    """
    read: dict[Key, Row] = {}
    known = [(place, sent) for place, sent in enumerate(rows) if not is_unknown(sent)]
    usual = read_usual_runs([sent.run for _, sent in known if type(sent.run) is str])
    for place, sent in known:
        problems: list[Problem] = []
        for row in _read_row(sent, sizes, usual, problems):
            if read.setdefault(row.key, row) is not row:
                detail = f"has the part and item of a row above, {row.key.part} and {row.key.item}."
                problems.append(Problem((), ProblemCode.DUPLICATE_ROW, detail))
        if problems:
            yield from [problem.under("rows", place) for problem in problems]
    return tuple(read.values())


def _read_row(sent: PrintedRow, sizes: int, usual: Mapping[str, Values], problems: list[Problem]) -> Sequence[Row]:
    """The row, with its inches as another one.

    usual: the values of runs that have been read. problems: where what is wrong with the row goes.
    """
    part, item, unit, values, run, run_inch = sent
    printed = told_unit = None
    if type(run) is str and (printed := usual.get(run)) is None:
        printed, told_unit = _read("run", run, sizes, problems)
    in_inches = None if run_inch is None else _read("run_inch", run_inch, sizes, problems)[0]
    try:
        key, of_table = KEYS.get((part, item)) or (None, item.partition("_")[0] if part == "yarn" else None)
        if unit != of_table and unit is not None and of_table is not None and (unit, of_table) != ("inch", "cm"):
            problems.append(Problem(("unit",), ProblemCode.OTHER_UNIT, f"must be {of_table}, or left out."))
            return ()
        if values is None and run is None and run_inch is None:
            problems.append(Problem((), ProblemCode.NO_NUMBERS, "has no numbers: send values, run or run_inch."))
            return ()
        exact = None if values is None else all_grains(values)
    except UnknownError:
        return ()
    told = unit or of_table or ""
    if told_unit == "inch" and told != "inch":
        printed, in_inches = None, in_inches or printed
    rows = []
    if exact is not None or printed is not None:
        if key is None or told == "inch":
            key = Key(part, item, told == "inch")
        rows.append(Row(key, told, exact, printed))
    if in_inches is not None:
        rows.append(Row(Key(part, item, True), "inch", None, in_inches))
    return rows


def _read(
    name: str, text: str, sizes: int, problems: list[Problem]
) -> tuple[Values, PrintedUnit | None] | tuple[None, None]:
    """The run of a field, and the unit that it names; None where it can't be read."""
    try:
        return read_run(text, sizes)
    except UnknownError:
        return None, None
    except UnreadableError as error:
        problems.append(Problem((name,), ProblemCode.UNREADABLE_RUN, str(error)))
        return None, None


def printed_steps(rows: Iterable[Row]) -> Steps:
    """The steps of numbers, by their unit and by whether they are exact ones or printed.

    rows: of the whole pattern.
    """
    groups: dict[tuple[str, bool], list[int]] = {}
    for _, unit, values, run in rows:
        if unit in ROUNDED:
            for numbers, exact in ((values, True), (run, False)):
                if numbers is not None:
                    told = groups.setdefault((unit, exact), [])
                    told += [value for value in numbers if value is not None] if None in numbers else numbers  # type: ignore[arg-type]
    return {(unit, exact): printed_step(values, unit=unit) for (unit, exact), values in groups.items()}


def numbers_of(rows: Iterable[Row], sizes: int, steps: Steps) -> Columns:
    """The numbers of each row.

    rows: whose runs are as long as they should be. sizes: how many the pattern has. steps: of the rows.
    """
    numbers = Columns()
    for key, unit, values, run in rows:
        told, half = run if values is None else values, 0
        assert told is not None
        if unit in ROUNDED and (step := steps.get((unit, values is not None), 0)):
            half = (step_of_row(told, step) if values is None else step) // 2
        numbers[key] = Numbers(told if len(told) == sizes else told * sizes, half, unit)
    return numbers
