"""A table in CSV (RFC 4180) as the JSON that it stands for: a row for each quantity, a column for each size."""

from __future__ import annotations

import csv
import io
import re
from itertools import islice
from typing import Any

from service.errors import UNPROCESSABLE_CONTENT, Refusal, Wrong
from service.flaws import FormCode

_KEYS = ("part", "item", "unit")
_TEXTS = ("run", "run_inch", "title")
_NUMBER = re.compile(r"-?\d{1,7}(\.\d+)?")
_MOST_LINES = 2000
"""What is beyond isn't read: no table that a request may have is as long."""

_MISSING = "\N{EN DASH}"


def read_wide_table(body: bytes) -> dict[str, Any]:
    """The labels and rows of a table in the wide layout, as a request in JSON would have them.

    body: with a header: `part`, `item`, perhaps `unit`, a column for each size, perhaps `run`, `run_inch` and `title`;
    parted by commas, semicolons or tabs. A cell without a number says that the size has none.

    Raises Refusal for what is no such table.

    >>> read_wide_table(b"part;item;S;M\\r\\nfinished;bust;92,5;\\r\\n")["rows"]
    [{'part': 'finished', 'item': 'bust', 'run': '92,5; \N{EN DASH}'}]
    """
    try:
        text = body.decode("utf-8-sig")
        delimiter = next((sign for sign in ",;\t" if sign in text.partition("\n")[0]), ",")
        table = csv.reader(io.StringIO(text, newline=""), delimiter=delimiter, strict=True)
        header, *lines = [line for line in islice(table, _MOST_LINES) if line] or [[]]
    except (UnicodeDecodeError, csv.Error) as error:
        raise _refused(f"is no CSV in UTF-8: {error}.") from None
    columns = [name.strip() for name in header]
    if not {"part", "item"} <= set(columns):
        raise _refused("must have a header with `part`, `item` and a column for each size.")
    told = {name: columns.index(name) for name in (*_KEYS, *_TEXTS) if name in columns}
    sizes = [place for place in range(len(columns)) if place not in told.values()]
    wrong = [
        Wrong(FormCode.WRONG_FORMAT, f"must have {len(columns)} cells and has {len(line)}.", ("rows", place))
        for place, line in enumerate(lines)
        if len(line) != len(columns)
    ]
    if wrong:
        raise Refusal.unprocessable(wrong)
    return {
        "labels": [_undisguised(columns[place]) for place in sizes],
        "rows": [_row(line, told, sizes) for line in lines],
    }


def _row(line: list[str], told: dict[str, int], sizes: list[int]) -> dict[str, Any]:
    """A line as a row; empty texts count as not sent."""
    row: dict[str, Any] = {name: text for name, place in told.items() if (text := _undisguised(line[place].strip()))}
    cells = [line[place].strip() for place in sizes]
    if all(not cell or _NUMBER.fullmatch(cell) for cell in cells):
        if any(cells):
            row["values"] = [_number(cell) for cell in cells]
    else:
        # as printed: fractions, decimal commas, dashes
        row["run"] = "; ".join(cell or _MISSING for cell in cells)
    return row


def _number(cell: str) -> int | float | None:
    if not cell:
        return None
    value = float(cell)
    return int(value) if value.is_integer() else value


def _undisguised(text: str) -> str:
    """Text without the apostrophe that keeps a spreadsheet from taking it for a formula, and a size's label alone."""
    return re.sub(r"^'(?=[=+\-@\t\r])|^(?:size )+(?=(?:part|item|unit|run|run_inch)$)", "", text)


def _refused(detail: str) -> Refusal:
    wrong = Wrong(FormCode.WRONG_FORMAT, detail)
    return Refusal(UNPROCESSABLE_CONTENT, "The body is no table in the wide layout.", [wrong])
