"""The answers of operations that answer per size, as CSV and Markdown.

One walk over the JSON answer gives the rows of both, so that the numbers are the same. An item is
the dotted path of a value, list indexes counted from 1: `increase_rounds.1.round`. A length gives two
rows, one in cm and one in inch; a count has its unit from its name. An answer that brings a table of its
own has those rows first. After the sizes follows what the answer holds over all of them (size runs,
warnings, the version), as rows without a size.
"""

from __future__ import annotations

import csv as csv_writing
import io
from collections.abc import Sequence
from types import NoneType
from typing import Any, NamedTuple

DASH = "\u2013"

HEADER = ("size", "item", "unit", "value")

_LENGTH_UNITS = ("cm", "inch")
_COUNT_UNITS = frozenset(
    ("stitches", "rows", "rounds", "increases", "decreases", "columns", "colours", "balls", "grams", "metres")
)
_MANY = {dict, list, NoneType}
_FORMULA_STARTS = ("=", "+", "-", "@", "\t", "\r")


class Row(NamedTuple):
    """One item over several sizes. A tuple, since an answer may have a hundred thousand.

    item: its dotted path. unit: "" where it has none. values: one per size, None where it is missing.
    """

    item: str
    unit: str
    values: tuple[Any, ...]


def rows(answers: Sequence[Any]) -> list[Row]:
    """The items of several answers of one shape, side by side.

    >>> for row in rows([{"stitches": 96, "bust": {"cm": 88.0, "inch": 34.65}}, {"stitches": 104}]):
    ...     print(row.item, row.unit, row.values)
    stitches stitches (96, 104)
    bust cm (88.0, None)
    bust inch (34.65, None)
    """
    found: list[Row] = []
    _walk(found, "", "", answers)
    return found


def csv(answer: dict[str, Any]) -> str:
    """An answer as CSV (RFC 4180) in long form: one line per size and item.

    Text that a spreadsheet would take for a formula gets an apostrophe before it.
    """
    labels, per_size, overall = _parts(answer)
    page = io.StringIO()
    writer = csv_writing.writer(page, lineterminator="\r\n")
    writer.writerow(HEADER)
    for place, label in enumerate(map(_csv_cell, labels)):
        writer.writerows([(label, item, unit, _csv_cell(values[place])) for item, unit, values in per_size])
    writer.writerows([("", item, unit, _csv_cell(values[0])) for item, unit, values in overall])
    return page.getvalue()


def markdown(answer: dict[str, Any]) -> str:
    """An answer as Markdown: a table of items and sizes, and one of what holds for all sizes."""
    labels, per_size, overall = _parts(answer)
    lines = _table(("item", "unit", *labels), per_size)
    if overall:
        lines += ["", *_table(("all sizes", "unit", "value"), overall)]
    return "\n".join(lines) + "\n"


def _parts(answer: dict[str, Any]) -> tuple[list[str], list[Row], list[Row]]:
    sizes = answer["sizes"]
    labels = [size["label"] for size in sizes]
    tabled = [Row(f"table.{row['item']}", row["unit"], tuple(row["values"])) for row in answer.get("table", ())]
    per_size = rows([{name: value for name, value in size.items() if name != "label"} for size in sizes])
    overall = rows([{name: value for name, value in answer.items() if name not in ("sizes", "table")}])
    return labels, tabled + per_size, overall


def _walk(found: list[Row], path: str, unit: str, values: Sequence[Any]) -> None:
    """Add the rows below one path; unit is what a count here would have."""
    kinds = set(map(type, values))
    if dict not in kinds and list not in kinds:
        found.append(Row(path, unit, tuple(values)))
        return
    records = [value for value in values if isinstance(value, dict)]
    lists = [value for value in values if isinstance(value, list)]
    if kinds - _MANY:
        scalars = tuple(None if isinstance(value, dict | list) else value for value in values)
        found.append(Row(path, unit, scalars))
    if records and tuple(records[0]) == _LENGTH_UNITS:
        for name in _LENGTH_UNITS:
            found.append(Row(path, name, tuple(_below(values, name))))
    elif records:
        for name in dict.fromkeys(name for record in records for name in record):
            _walk(found, _join(path, name), _unit(name) or unit, _below(values, name))
    for place in range(max(map(len, lists), default=0)):
        below = [value[place] if isinstance(value, list) and place < len(value) else None for value in values]
        # What stands in a list is counted by its own name, not by the list's.
        inherited = "" if any(isinstance(value, dict) for value in below) else unit
        _walk(found, _join(path, str(place + 1)), inherited, below)


def _below(values: Sequence[Any], name: str) -> list[Any]:
    return [value.get(name) if isinstance(value, dict) else None for value in values]


def _join(path: str, step: str) -> str:
    return f"{path}.{step}" if path else step


def _unit(name: str) -> str:
    last = name.partition("_by_")[0].rpartition("_")[2]
    return last if last in _COUNT_UNITS else ""


def _plain(value: Any) -> str:
    if isinstance(value, bool):
        return "true" if value else "false"
    return str(value)


def _csv_cell(value: Any) -> Any:
    """A value as the writer takes it, which writes None as nothing and numbers as JSON does."""
    kind = type(value)
    if kind is int or kind is float or value is None:
        return value
    if isinstance(value, str) and value.startswith(_FORMULA_STARTS):
        return "'" + value
    return _plain(value)


def _table(head: Sequence[str], body: Sequence[Row]) -> list[str]:
    lines = [_line(head), _line(["---"] * 2 + ["---:"] * (len(head) - 2), escape=False)]
    return lines + [_line((row.item, row.unit, *row.values)) for row in body]


def _line(cells: Sequence[Any], escape: bool = True) -> str:
    return f"| {' | '.join(_markdown_cell(cell) if escape else cell for cell in cells)} |"


def _markdown_cell(value: Any) -> str:
    kind = type(value)
    if kind is int or kind is float:
        return str(value)
    if value is None:
        return DASH
    text = " ".join(_plain(value).splitlines())
    for character, written in (("\\", "\\\\"), ("|", "\\|"), ("<", "&lt;")):
        text = text.replace(character, written)
    return text
