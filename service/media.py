"""What the service answers as: every media type, and what writes an answer in it."""

from __future__ import annotations

import re
from collections.abc import Callable, Iterable
from dataclasses import dataclass
from typing import Any

import orjson

from service.printing import PrintSettings
from service.representations import tables

JSON = "application/json"
CSV = "text/csv"
MARKDOWN = "text/markdown"
SVG = "image/svg+xml"
HTML = "text/html"
PNG = "image/png"
XLSX = "application/vnd.openxmlformats-officedocument.spreadsheetml.sheet"

PER_SIZE = (JSON, CSV, MARKDOWN)
"""The representations of an operation whose answer has a list `sizes`."""

PICTURE = (SVG,)
"""The representation of an operation that draws."""

PAGE = (HTML,)
"""The representation of an operation that answers as a page to print."""

WORKBOOK = (XLSX,)
"""The representation of an operation that answers as a workbook."""

BINARY = frozenset((PNG, XLSX))
"""What is no text."""


@dataclass(frozen=True, slots=True)
class Medium:
    """A representation of an answer.

    content_type: its `Content-Type`. write: makes it of the answer, which is the JSON object or what an operation drew,
    as a request wants it printed. table: whether it is a table, which is made of exact lengths. ending: of the names of
    its files, where it has any. shown: whether a browser shows such a file, or saves it (RFC 6266).
    """

    content_type: str
    write: Callable[[Any, PrintSettings], str | bytes]
    table: bool = False
    ending: str | None = None
    shown: bool = True


MEDIA = {
    JSON: Medium(JSON, lambda answer, _: orjson.dumps(answer)),
    CSV: Medium("text/csv; charset=utf-8; header=present", tables.csv, table=True),
    MARKDOWN: Medium("text/markdown; charset=utf-8", tables.markdown, table=True),
    SVG: Medium(SVG, lambda drawn, _: drawn, ending="svg"),
    HTML: Medium("text/html; charset=utf-8", lambda page, _: page, ending="html"),
    XLSX: Medium(XLSX, lambda file, _: file, ending="xlsx", shown=False),
}
"""By media type."""

_NOT_IN_A_NAME = re.compile(r"[^\w.]+")


def file_name(words: Iterable[str | None]) -> str:
    """The name of a file, without its ending.

    words: what it is; those that are missing are left out.

    >>> file_name(["Lantern & wrack", "schematic", None, "2X"])
    'Lantern-wrack-schematic-2X'
    """
    kept = (_NOT_IN_A_NAME.sub("-", word).strip("-.") for word in words if word)
    return "-".join(filter(None, kept))
