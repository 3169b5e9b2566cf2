"""How an answer's field gets its value from a record.

Where a schema has an outcome, `feasible`, `reason` and `nearest` say of it what they are called; fields of what was
made are left out where it is impossible.
"""

from __future__ import annotations

from collections.abc import Callable
from operator import attrgetter
from typing import Any, NamedTuple

from grading_core.errors import Impossible
from service.lengths import LengthWriter

Get = Callable[[Any], Any]

Write = Callable[[Any, LengthWriter], Any]
"""Makes JSON of a value of the core."""


RECORD, MADE, IMPOSSIBLE = range(3)
"""What a field's value is got from: the record itself, or its outcome, which is one of the two others."""


class Step(NamedTuple):
    """How one field is written.

    name: the field's. holder: what its value is got from; where there is no such thing the field is left out. get: gets
    it there. write: makes JSON of it, None where it is JSON already. left_out: whether the field is left out where
    there is no value; it is null otherwise.
    """

    name: str
    holder: int
    get: Get
    write: Write | None
    left_out: bool


def step(name: str, field: Any, path: tuple[str, ...] | None, outcome: str | None) -> Step:
    """How a field of an answer is written.

    path: of its attribute from the record, None where there is none. outcome: the attribute that holds what was made.
    """
    holder, get = RECORD, _getter(field.source or name, path)
    if outcome is not None and name == "feasible":
        get = _is_made(outcome)
    elif outcome is not None and name in ("reason", "nearest"):
        holder, get = IMPOSSIBLE, attrgetter(name)
    elif outcome is not None and (path is None or path[0] == outcome):
        holder, get = MADE, _getter(field.source or name, path and path[1:])
    return Step(name, holder, get, field.writer(), not (field.required and field.allow_none))


def _getter(source: str | Get, path: tuple[str, ...] | None) -> Get:
    return source if callable(source) else attrgetter(".".join(path or (source,)))


def _is_made(outcome: str) -> Get:
    of = attrgetter(outcome)
    return lambda record: not isinstance(of(record), Impossible)
