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


class Step(NamedTuple):
    """How one field is written.

    name: the field's. get: gets its value from a record. write: makes JSON of it, None where it is JSON already.
    left_out: whether the field is left out where there is no value; it is null otherwise.
    """

    name: str
    get: Get
    write: Write | None
    left_out: bool


def step(name: str, field: Any, path: tuple[str, ...] | None, outcome: str | None) -> Step:
    """How a field of an answer is written.

    path: of its attribute from the record, None where there is none. outcome: the attribute that holds what was made.
    """
    get = _getter(field.source or name, path) if outcome is None else _beside(name, field, path, outcome)
    return Step(name, get, field.writer(), not (field.required and field.allow_none))


def _getter(source: str | Get, path: tuple[str, ...] | None) -> Get:
    return source if callable(source) else attrgetter(".".join(path or (source,)))


def _beside(name: str, field: Any, path: tuple[str, ...] | None, outcome: str) -> Get:
    """Gets a field's value where the record has an outcome."""
    of = attrgetter(outcome)
    if name == "feasible":
        return lambda record: not isinstance(of(record), Impossible)
    if name in ("reason", "nearest"):
        why = attrgetter(name)
        return lambda record: why(made) if isinstance(made := of(record), Impossible) else None
    if path and path[0] != outcome:
        return attrgetter(".".join(path))
    get = _getter(field.source or name, path and path[1:])
    return lambda record: None if isinstance(made := of(record), Impossible) else get(made)
