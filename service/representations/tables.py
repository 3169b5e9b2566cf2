"""The answers of operations that answer per size as one table, in CSV and Markdown.

A row is a quantity, and a column a size. An answer that brings a table of its own is that table. Of every other answer
the rows are the numbers that its sizes have, keyed by where they stand in the JSON: `part` is the first step, `item`
the others with dots between; a number that stands in the size itself is of the part `size`. Where a list holds what has
a name of its own, that name is the step; other lists (rounds, phases, sentences, changes that would help) are no
quantities of a size and left out, and so is what isn't feasible. Lengths are in cm. What proofreading found is a table
of its own, a row for each number to correct and each finding.
"""

from __future__ import annotations

import csv as csv_writing
import io
import re
from collections.abc import Iterator, Mapping, Sequence
from fractions import Fraction
from typing import Any, NamedTuple

from grading_core.printing import printing
from grading_core.units import exact, to_places
from grading_core.wording import known_run
from service.printing import PrintSettings

Number = int | float

KEYS = ("part", "item", "unit")
RUNS = ("run", "run_inch")
LONG = ("size", *KEYS, "value")

FOUND = ("kind", "code", "severity", "size", "rows", "unit", "printed", "expected", "likely_cause", "because")
"""Of what doesn't add up: each number to correct, and then each finding."""

OF_THE_SIZE = "size"
"""The part of what stands in a size itself."""

_NAMES = ("method", "yarn", "colour", "strand")
"""Fields by which the objects of a list are told apart."""

_UNITS = frozenset(
    ("cm", "inch", "stitches", "rows", "rounds", "increases", "decreases", "columns", "balls", "grams", "metres")
)
_FORMULA_STARTS = ("=", "+", "-", "@", "\t", "\r")
_NUMBER = re.compile(r"-?[0-9]+([.,][0-9]+)?")
_FINEST = Fraction(1, 10**4)


class Row(NamedTuple):
    """One quantity. cells: one per size, None where it is missing. run, run_inch: as patterns print it, else empty."""

    part: str
    item: str
    unit: str
    cells: Sequence[Number | None]
    run: str
    run_inch: str


def rows(answer: Mapping[str, Any]) -> list[Row]:
    """The table of an answer whose lengths are still exact.

    >>> sizes = [{"label": "S", "bust": {"finished": Fraction(88)}}, {"label": "M", "bust": {"finished": Fraction(96)}}]
    >>> rows({"sizes": sizes})
    [Row(part='bust', item='finished', unit='cm', cells=[88.0, 96.0], run='88 (96)', run_inch='34 3/4 (37 3/4)')]
    """
    if "table" in answer:
        return [
            Row(row["part"], row["item"], row["unit"], row["values"], row.get("run", ""), row.get("run_inch", ""))
            for row in answer["table"]
        ]
    sizes = answer["sizes"]
    by_path: dict[tuple[str, ...], tuple[str, list[Any]]] = {}
    for place, size in enumerate(sizes):
        for path, unit, value in _quantities(size, (), ""):
            by_path.setdefault(path, (unit, [None] * len(sizes)))[1][place] = value
    return [_row(path, unit, values) for path, (unit, values) in by_path.items()]


def found(answer: Mapping[str, Any]) -> Iterator[Sequence[str]]:
    """The lines below `FOUND` of an answer that has findings."""
    for kind, told in (("correction", answer["corrections"]), ("finding", answer["findings"])):
        for each in told:
            rows = each["rows"] if "rows" in each else [each["row"]]
            cells = {**each, "kind": kind, "rows": "; ".join(f"{row['part']} {row['item']}" for row in rows)}
            yield ["" if cells.get(name) is None else str(cells[name]) for name in FOUND]


def labels_of(answer: Mapping[str, Any]) -> list[str]:
    """The labels of the sizes that an answer has."""
    return answer["labels"] if "labels" in answer else [size["label"] for size in answer["sizes"]]


def csv(answer: Mapping[str, Any], settings: PrintSettings) -> str:
    """An answer as CSV (RFC 4180), with a header.

    Text that a spreadsheet would take for a formula gets an apostrophe before it.
    """
    page = io.StringIO()
    writer = csv_writing.writer(page, lineterminator="\r\n")
    if "findings" in answer:
        writer.writerow(FOUND)
        writer.writerows([_disarmed(cell) for cell in line] for line in found(answer))
        return page.getvalue()
    table, labels = rows(answer), [_disarmed(label) for label in labels_of(answer)]
    keyed = [(row.part, _disarmed(row.item), row.unit) for row in table]
    if settings.csv_layout == "long":
        writer.writerow(LONG)
        for place, label in enumerate(labels):
            writer.writerows((label, *key, row.cells[place]) for key, row in zip(keyed, table, strict=True))
    else:
        writer.writerow((*KEYS, *_columns(labels), *RUNS))
        for key, row in zip(keyed, table, strict=True):
            writer.writerow((*key, *row.cells, _disarmed(row.run), _disarmed(row.run_inch)))
    return page.getvalue()


def markdown(answer: Mapping[str, Any], _: PrintSettings) -> str:
    """An answer as Markdown: the table that CSV has, with what is printed for a missing number in empty cells."""
    if "findings" in answer:
        return "\n".join((_line(FOUND), _line_of(["---"] * len(FOUND)), *map(_line, found(answer)))) + "\n"
    columns = _columns(labels_of(answer))
    lines = [
        _line((*KEYS, *columns, *RUNS)),
        _line_of(("---",) * len(KEYS) + ("---:",) * len(columns) + ("---",) * len(RUNS)),
    ]
    missing = printing().missing
    for row in rows(answer):
        cells = [missing if cell is None else str(cell) for cell in row.cells]
        lines.append(_line((row.part, row.item, row.unit, *cells, row.run, row.run_inch)))
    return "\n".join(lines) + "\n"


def _quantities(value: Any, path: tuple[str, ...], unit: str) -> Iterator[tuple[tuple[str, ...], str, Any]]:
    """The numbers below one place of a size, with their paths; unit is what a count here would have."""
    kind = type(value)
    if isinstance(value, Fraction):
        yield path, "cm", value
    elif kind is int or kind is float:
        yield path, unit, value
    elif kind is dict and value.get("feasible", True):
        for name, below in value.items():
            yield from _quantities(below, (*path, name), _unit(name) or unit)
    elif kind is list and value and type(value[0]) is dict:
        named = next((name for name in _NAMES if name in value[0]), None)
        for each in value if named else ():
            told = {name: below for name, below in each.items() if name != named}
            yield from _quantities(told, (*path, str(each[named])), "")


def _row(path: tuple[str, ...], unit: str, values: Sequence[Any]) -> Row:
    printed = printing()
    part, *item = path if len(path) > 1 else (OF_THE_SIZE, *path)
    if unit == "cm" and any(isinstance(value, Fraction) for value in values):
        run, run_inch = (
            known_run([None if value is None else write(value) for value in values])
            for write in (printed.cm, printed.inches)
        )
        cells = [None if value is None else to_places(value) for value in values]
    else:
        run = known_run([None if value is None else printed.decimal(exact(value), _FINEST) for value in values])
        run_inch, cells = None, list(values)
    return Row(part, ".".join(item), unit, cells, run or "", run_inch or "")


def _unit(name: str) -> str:
    last = name.partition("_by_")[0].rpartition("_")[2]
    return last if last in _UNITS else ""


def _columns(labels: Sequence[str]) -> list[str]:
    """The names of the sizes' columns: a label that is another column's name already has `size` before it."""
    columns: list[str] = []
    for place, label in enumerate(labels, 1):
        while label in (*KEYS, *RUNS, *columns, *labels[place:]):
            label = f"size {label}"
        columns.append(label)
    return columns


def _disarmed(text: str) -> str:
    """Text that no spreadsheet takes for a formula."""
    return f"'{text}" if text.startswith(_FORMULA_STARTS) and not _NUMBER.fullmatch(text) else text


def _line(cells: Sequence[str]) -> str:
    return _line_of([_markdown_cell(cell) for cell in cells])


def _line_of(cells: Sequence[str]) -> str:
    return f"| {' | '.join(cells)} |"


def _markdown_cell(value: str) -> str:
    text = " ".join(value.splitlines())
    for character, written in (("\\", "\\\\"), ("|", "\\|"), ("<", "&lt;")):
        text = text.replace(character, written)
    return text
