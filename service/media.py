"""What the service answers as: every media type, and what writes an answer in it."""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import dataclass
from typing import Any

import orjson

from service.representations import tables

JSON = "application/json"
CSV = "text/csv"
MARKDOWN = "text/markdown"
SVG = "image/svg+xml"
PNG = "image/png"

PER_SIZE = (JSON, CSV, MARKDOWN)
"""The representations of an operation whose answer has a list `sizes`."""

PICTURE = (SVG,)
"""The representation of an operation that draws."""


@dataclass(frozen=True, slots=True)
class Medium:
    """A representation of an answer.

    content_type: its `Content-Type`. write: makes it of the answer: of the JSON object, or of what an operation drew.
    """

    content_type: str
    write: Callable[[Any], str | bytes]


MEDIA = {
    JSON: Medium(JSON, orjson.dumps),
    CSV: Medium("text/csv; charset=utf-8; header=present", tables.csv),
    MARKDOWN: Medium("text/markdown; charset=utf-8", tables.markdown),
    SVG: Medium(SVG, lambda drawn: drawn),
}
"""By media type."""
