"""How an answer's schema writes a record.

Where a schema has an outcome, `feasible`, `code`, `reason`, `nearest` and `together` say of it what they are called;
fields of what was made are left out where it is impossible.

A writer is compiled once per schema, as the standard library's dataclasses compile their `__init__`: an answer has
hundreds of objects, and a loop over their fields takes three times as long as the display of a dict.
"""

from __future__ import annotations

from collections.abc import Callable, Mapping
from textwrap import indent
from typing import Any

from grading_core.errors import Impossible
from service.lengths import LengthWriter

Write = Callable[[Any, LengthWriter], Any]
"""Makes JSON of a value of the core."""

_START = """\
def write(record, length):
    made, why = record.{outcome}, None
    if isinstance(made, Impossible):
        made, why = None, made
    written = {{}}
"""


def added_later(_record: Any) -> None:
    """The source of a field that no record has: the service adds it to what is written."""


def write_length(length_cm: Any, length: LengthWriter) -> Any:
    """A length in cm, in both units."""
    return length(length_cm)


def compiled_writer(fields: Mapping[str, Any], paths: Mapping[str, tuple[str, ...]], outcome: str | None) -> Write:
    """What makes the JSON object of a record.

    fields: of the schema. paths: of their attributes from the record. outcome: the attribute that holds what was made.
    """
    bound: dict[str, Any] = {"Impossible": Impossible}
    lines = [_START.format(outcome=outcome) if outcome else "def write(record, length):\n    written = {}\n"]
    for number, (name, field) in enumerate(fields.items()):
        if field.source is added_later:
            continue
        holder, get = _value(name, field.source, paths.get(name), outcome)
        if callable(field.source):
            bound[f"get{number}"] = field.source
            get = f"get{number}({holder})"
        bound[f"write{number}"] = write = field.writer()
        put = {None: "held", write_length: "length(held)"}.get(write, f"write{number}(held, length)")
        target = f"written[{name!r}] = "
        if holder == "record" and field.required and not field.allow_none:
            line = f"    {target}{put.replace('held', get)}\n"
        elif holder == "record" and field.required:
            line = f"    held = {get}\n    {target}None if held is None else {put}\n"
        else:
            there = "" if holder == "record" else f" if {holder} is not None else None"
            line = f"    held = {get}{there}\n    if held is not None:\n        {target}{put}\n"
        if field.part is not None:
            line = f"    if {field.part!r} not in length.without:\n{indent(line, '    ')}"
        lines.append(line)
    lines.append("    return written\n")
    exec("".join(lines), bound)
    made: Write = bound["write"]
    return made


def _value(name: str, source: Any, path: tuple[str, ...] | None, outcome: str | None) -> tuple[str, str]:
    """What a field's value is got from, and how: of the record, of what was made, or of why that is impossible."""
    if outcome is not None:
        if name == "feasible":
            return "record", "why is None"
        if name in ("code", "reason", "nearest"):
            return "why", f"why.{name}"
        if name == "together":
            return "why", "(why.together or None)"
        if path is None or path[0] == outcome:
            return "made", ".".join(("made", *(path or (str(source or name),))[path is not None :]))
    return "record", ".".join(("record", *(path or (str(source or name),))))
