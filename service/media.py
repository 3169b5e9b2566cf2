"""What the service answers as: every media type, and what writes an answer in it."""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import dataclass
from typing import Any

import orjson

from service.printing import PrintSettings
from service.representations import tables

JSON = "application/json"
CSV = "text/csv"
MARKDOWN = "text/markdown"
SVG = "image/svg+xml"
PNG = "image/png"
XLSX = "application/vnd.openxmlformats-officedocument.spreadsheetml.sheet"

PER_SIZE = (JSON, CSV, MARKDOWN)
"""The representations of an operation whose answer has a list `sizes`."""

PICTURE = (SVG,)
"""The representation of an operation that draws."""

WORKBOOK = (XLSX,)
"""The representation of an operation that answers as a workbook."""

BINARY = frozenset((PNG, XLSX))
"""What is no text."""


@dataclass(frozen=True, slots=True)
class Medium:
    """A representation of an answer.

    content_type: its `Content-Type`. write: makes it of the answer, which is the JSON object or what an operation drew,
    as a request wants it printed. table: whether it is a table, which is made of exact lengths. file_name: under which
    a browser saves what it can't show.
    """

    content_type: str
    write: Callable[[Any, PrintSettings], str | bytes]
    table: bool = False
    file_name: str | None = None


MEDIA = {
    JSON: Medium(JSON, lambda answer, _: orjson.dumps(answer)),
    CSV: Medium("text/csv; charset=utf-8; header=present", tables.csv, table=True),
    MARKDOWN: Medium("text/markdown; charset=utf-8", tables.markdown, table=True),
    SVG: Medium(SVG, lambda drawn, _: drawn),
    XLSX: Medium(XLSX, lambda file, _: file, file_name="pullover.xlsx"),
}
"""By media type."""
