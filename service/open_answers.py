"""Requests are closed and answers open, so that the service can grow without breaking a client.

What reaches a schema decides: one that a request reaches has no other fields than its own, and its enumerations and
recurring choices between types are types of their own; one that an answer reaches may get more fields, and an
enumeration more members. A schema that both reach is two.
"""

from __future__ import annotations

from collections.abc import Callable, Iterable, Iterator, Mapping
from typing import Any

from service.schemas.containers import TYPE_NAME
from service.schemas.enumerations import ENUMERATIONS

_SCHEMAS = "#/components/schemas/"
_NAMES = {choices: name for name, choices in ENUMERATIONS.items()}
_NO_SCHEMAS = ("default", "example", "examples")


def open_answers(document: dict[str, Any]) -> None:
    """Tell the schemas of requests from those of answers, in an OpenAPI document whose objects are all closed.

    Adds the named enumerations to its schemas, and what requests have of a schema that answers reach too: `Sent` and
    its name.
    """
    components: dict[str, Any] = document["components"]
    schemas: dict[str, Any] = components["schemas"]
    operations = [operation for path in document["paths"].values() for operation in path.values()]
    asking = [each for operation in operations for each in (operation.get("requestBody"), operation.get("parameters"))]
    answering = [operation["responses"] for operation in operations] + [components.get("responses")]
    asked, answered = _reached(schemas, asking), _reached(schemas, answering)
    twins = {name: f"Sent{name}" for name in schemas if name in asked and name in answered}
    sent = {twins.get(name, name): _refer(schemas[name], twins) for name in schemas if name in asked}
    named: dict[str, Any] = {}
    for operation in operations:
        for place in ("requestBody", "parameters"):
            if place in operation:
                operation[place] = _name_types(_refer(operation[place], twins), named)
    sent = {name: _name_types(schema, named) for name, schema in sent.items()}
    opened = {name: _open(schema) for name, schema in schemas.items() if name not in asked or name in answered}
    components["schemas"] = dict(sorted({**opened, **sent, **named}.items()))


def _reached(schemas: Mapping[str, Any], starts: Iterable[Any]) -> set[str]:
    """The names of the schemas that some parts of a document lead to."""
    found: set[str] = set()
    todo = [name for start in starts for name in _references(start)]
    while todo:
        name = todo.pop()
        if name not in found:
            found.add(name)
            todo += _references(schemas[name])
    return found


def _references(node: Any) -> Iterator[str]:
    if isinstance(node, list):
        for below in node:
            yield from _references(below)
    elif isinstance(node, dict):
        reference = node.get("$ref")
        if isinstance(reference, str) and reference.startswith(_SCHEMAS):
            yield reference.removeprefix(_SCHEMAS)
        for name, below in node.items():
            if name not in _NO_SCHEMAS:
                yield from _references(below)


def _refer(node: Any, names: Mapping[str, str]) -> Any:
    """A part of a document whose references go to schemas of other names."""

    def other(written: dict[str, Any]) -> None:
        reference = written.get("$ref")
        if isinstance(reference, str) and (name := reference.removeprefix(_SCHEMAS)) in names:
            written["$ref"] = _SCHEMAS + names[name]

    return _rewritten(node, other)


def _name_types(node: Any, named: dict[str, Any]) -> Any:
    """A part of a request that refers to its enumerations and named types, which are put into `named`."""

    def by_name(written: dict[str, Any]) -> None:
        choices = written.get("enum")
        if isinstance(choices, list) and (name := _NAMES.get(tuple(choices))):
            named[name] = {"type": written.pop("type"), "enum": written.pop("enum")}
            written["$ref"] = _SCHEMAS + name
        if name := written.pop(TYPE_NAME, None):
            named[name] = {"oneOf": written.pop("oneOf")}
            written["$ref"] = _SCHEMAS + name

    return _rewritten(node, by_name)


def _rewritten(node: Any, change: Callable[[dict[str, Any]], None]) -> Any:
    """A copy of a part of a document in which every object was changed, those within it first; values stay."""
    if isinstance(node, list):
        return [_rewritten(below, change) for below in node]
    if not isinstance(node, dict):
        return node
    written = {name: below if name in _NO_SCHEMAS else _rewritten(below, change) for name, below in node.items()}
    change(written)
    return written


def _open(node: Any) -> Any:
    """A part of an answer that may grow. What isn't there is not the default either."""
    if isinstance(node, list):
        return [_open(below) for below in node]
    if not isinstance(node, dict):
        return node
    opened = {name: _open(below) for name, below in node.items() if name != "default"}
    if opened.get("additionalProperties") is False:
        del opened["additionalProperties"]
    if "x-extensible-enum" in opened.get("propertyNames", {}):
        opened.pop("maxProperties", None)
    if isinstance(opened.get("enum"), list):
        opened["x-extensible-enum"] = [choice for choice in opened.pop("enum") if choice is not None]
    return opened
