"""What the core's records say of themselves: the attributes behind a schema's fields, their defaults and choices.

Names are the same in the core and in the contract, except that a length in the core may carry its unit: `depth_cm`
there is `depth` in the contract, whose lengths are in the request's unit.
"""

from __future__ import annotations

from collections.abc import Callable, Hashable, Sequence
from dataclasses import MISSING, fields, is_dataclass, replace
from fractions import Fraction
from functools import cache, partial
from types import NoneType, UnionType
from typing import Any, Literal, NamedTuple, Union, get_args, get_origin, get_type_hints

from grading_core.errors import Impossible


class Attribute(NamedTuple):
    """An attribute of a record. default: MISSING where it has none."""

    name: str
    hint: Any
    default: Any


def attribute(record: type[Any], name: str) -> Attribute | None:
    """The attribute of a record behind a field of the contract; None where there is none.

    record: a dataclass or a named tuple. name: the field's.
    """
    for candidate in (name, f"{name}_cm"):
        if candidate in getattr(record, "__dataclass_fields__", ()) or hasattr(record, candidate):
            return Attribute(candidate, _hint(record, candidate), _defaults(record).get(candidate, MISSING))  # type: ignore[arg-type]
    return None


def choices_of(hint: Any) -> tuple[Any, ...]:
    """The values that a type allows, where it is literal or a union with literals."""
    if get_origin(hint) is Literal:
        return get_args(hint)
    return tuple(choice for member in _members(hint) for choice in choices_of(member))


def record_of(hint: Any) -> type[Any] | None:
    """The one record in a union with what is impossible or missing; None where there is none."""
    found = [each for each in _members(hint) or (hint,) if _is_record(each) and each is not Impossible]
    return found[0] if len(found) == 1 and isinstance(found[0], type) else None


def sent_as(value: Any) -> Any:
    """A record's default as a request would send it; MISSING for what a request leaves out or has no number for."""
    if isinstance(value, Fraction):
        return value.numerator if value.denominator == 1 else float(value)
    if isinstance(value, tuple):
        return [sent_as(each) for each in value] if not hasattr(value, "_fields") else MISSING
    return value if isinstance(value, bool | int | str) else MISSING


def path_to(record: type[Any], source: str, within: Sequence[str | None]) -> tuple[Attribute, ...]:
    """The attributes that lead from a record to a field's; none where it isn't there.

    source: the field's name, or another attribute, dotted for one of an attribute's. within: attributes that are
    records, where it may be as well.
    """
    for prefix in ("", *(f"{name}." for name in within if name)):
        path = _attributes(record, prefix + source)
        if path:
            return path
    return ()


def part_builders(record: type[Any], inline: Sequence[str]) -> dict[str, Callable[..., Any]]:
    """What makes each attribute of a record that is a record itself, of those of its values that were sent."""
    builders: dict[str, Callable[..., Any]] = {}
    for name in inline:
        found = attribute(record, name)
        assert found is not None
        kind = record_of(found.hint)
        assert kind is not None
        builders[name] = kind if found.default is MISSING else partial(replace, found.default)
    return builders


def _attributes(record: type[Any], path: str) -> tuple[Attribute, ...]:
    """The attributes along a dotted path, as far as types tell; none where one is missing."""
    found: list[Attribute] = []
    here: type[Any] | None = record
    for step in path.split("."):
        each = Attribute(step, Any, MISSING) if here is None else attribute(here, step)
        if each is None:
            return ()
        if found and found[-1].default is not MISSING:
            # a record that is a default itself has what it was made with
            each = each._replace(default=getattr(found[-1].default, each.name, MISSING))
        found.append(each)
        here = record_of(each.hint)
    return tuple(found)


def _is_record(kind: Any) -> bool:
    return is_dataclass(kind) or hasattr(kind, "_field_defaults")


def _members(hint: Any) -> tuple[Any, ...]:
    if get_origin(hint) in (Union, UnionType):
        return tuple(member for member in get_args(hint) if member is not NoneType)
    return ()


@cache
def _hints(record: Hashable) -> dict[str, Any]:
    return get_type_hints(record)


def _hint(record: type[Any], name: str) -> Any:
    found = getattr(record, name, None)
    if isinstance(found, property):
        return get_type_hints(found.fget).get("return", Any)
    return _hints(record).get(name, Any)  # type: ignore[arg-type]


@cache
def _defaults(record: Hashable) -> dict[str, Any]:
    if not is_dataclass(record):
        return getattr(record, "_field_defaults", {})
    found = {}
    for each in fields(record):
        if each.default is not MISSING:
            found[each.name] = each.default
        elif each.default_factory is not MISSING:
            found[each.name] = each.default_factory()
    return found
