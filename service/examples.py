"""The named examples of every operation: requests with the answers they get.

They are files of the `openapi` package, one directory an operation; the contract shows them, the
docs page offers them and the tests replay them.
"""

from __future__ import annotations

from dataclasses import dataclass
from importlib.resources import files
from typing import Any

import orjson


@dataclass(frozen=True, slots=True)
class Seen:
    """What is to be known of a picture by a page that shows it.

    title, about: what it shows, and the same in words for those who cannot see it. width, height: in pixels.
    """

    title: str
    about: str
    width: int
    height: int


@dataclass(frozen=True, slots=True, kw_only=True)
class Example:
    """One named example.

    name: its file's name. summary: what it shows, in a line. place: where it stands among those of its operation; None
    after those that have one. request: the body, or the parameters of
    a GET; a body that is a file stands in base64 in a field `file`. answer: what it is answered with; None
    until it has been recorded. tables: an operation's first example as it is answered in other media types. pictures:
    those that the example is answered with at addresses of their own, by these.
    """

    name: str
    summary: str
    place: int | None
    request: dict[str, Any]
    answer: Any
    tables: dict[str, str]
    pictures: dict[str, Seen]


def examples_of(operation: str) -> list[Example]:
    """The examples of an operation, in the order of their places, and then of their names."""
    directory = files("openapi") / "examples" / operation
    if not directory.is_dir():
        return []
    files_of_it = (file for file in directory.iterdir() if file.name.endswith(".json"))
    found = [_read(file.name.removesuffix(".json"), file.read_bytes()) for file in files_of_it]
    return sorted(found, key=lambda example: (example.place is None, example.place, example.name))


def _read(name: str, content: bytes) -> Example:
    held = orjson.loads(content)
    return Example(
        name=name,
        summary=held["summary"],
        place=held.get("place"),
        request=held["request"],
        answer=held.get("answer"),
        tables=held.get("tables", {}),
        pictures={address: Seen(**seen) for address, seen in held.get("pictures", {}).items()},
    )


SIZES_SHOWN = 2
ITEMS_SHOWN = 4
LINES_SHOWN = 20


def shortened(answer: Any) -> dict[str, Any]:
    """What the contract shows of an answer, as an OpenAPI example: its first sizes and items, or lines of a text."""
    if isinstance(answer, str):
        lines = answer.splitlines(keepends=True)
        return _told(answer, "".join(lines[:LINES_SHOWN]), f"The first {LINES_SHOWN} of {len(lines)} lines.")
    sizes = answer.get("sizes", ())
    shown = _first_items({**answer, "sizes": sizes[:SIZES_SHOWN]} if sizes else answer)
    of_sizes = f"of {len(sizes)} sizes the first {SIZES_SHOWN}, " if len(sizes) > SIZES_SHOWN else ""
    return _told(answer, shown, f"In short: {of_sizes}of longer lists the first {ITEMS_SHOWN} items.")


def _told(whole: Any, shown: Any, in_short: str) -> dict[str, Any]:
    return {"value": shown} if shown == whole else {"description": in_short, "value": shown}


def _first_items(value: Any) -> Any:
    if isinstance(value, dict):
        return {name: _first_items(below) for name, below in value.items()}
    return [_first_items(below) for below in value[:ITEMS_SHOWN]] if isinstance(value, list) else value
