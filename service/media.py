"""What the service answers as: every media type, and what writes an answer in it."""

from __future__ import annotations

import re
from collections.abc import Callable, Iterable
from dataclasses import dataclass
from typing import Any
from urllib.parse import quote

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

_NOT_IN_A_NAME = re.compile(r"[^\w.]+")


@dataclass(frozen=True, slots=True, kw_only=True)
class Medium:
    """A representation of an answer.

    content_type: its `Content-Type`. write: makes it of the answer, which is the JSON object or what an operation drew,
    as a request wants it printed. table: whether it is a table, which is made of exact lengths. ending: of the names of
    its files, where it has any. shown: whether a browser shows such a file, or saves it.
    """

    content_type: str
    write: Callable[[Any, PrintSettings], str | bytes]
    table: bool = False
    ending: str | None = None
    shown: bool = True

    def disposition(self, words: Iterable[str | None]) -> str:
        """`Content-Disposition`: whether a browser shows a file, and the name under which it saves it (RFC 6266).

        words: what the file is; those that are missing are left out.

        >>> MEDIA[SVG].disposition(["Lantern & wrack", "schematic", None, "2X"])
        'inline; filename=Lantern-wrack-schematic-2X.svg'
        """
        kept = (_NOT_IN_A_NAME.sub("-", word).strip("-.") for word in words if word)
        name = f"{'-'.join(filter(None, kept))}.{self.ending}"
        # RFC 8187
        told = f"filename={name}" if name.isascii() else f"filename*=UTF-8''{quote(name)}"
        return f"{'inline' if self.shown else 'attachment'}; {told}"


MEDIA = {
    JSON: Medium(content_type=JSON, write=lambda answer, _: orjson.dumps(answer)),
    CSV: Medium(content_type="text/csv; charset=utf-8; header=present", write=tables.csv, table=True),
    MARKDOWN: Medium(content_type="text/markdown; charset=utf-8", write=tables.markdown, table=True),
    SVG: Medium(content_type=SVG, write=lambda drawn, _: drawn, ending="svg"),
    HTML: Medium(content_type="text/html; charset=utf-8", write=lambda page, _: page, ending="html"),
    XLSX: Medium(content_type=XLSX, write=lambda file, _: file, ending="xlsx", shown=False),
}
"""By media type."""
