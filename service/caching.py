"""What makes two requests the same request and two answers the same answer, and how long an answer holds."""

from __future__ import annotations

from collections.abc import Callable, Mapping
from dataclasses import fields, is_dataclass
from fractions import Fraction
from functools import cache
from hashlib import sha256
from operator import attrgetter
from typing import Any

import orjson
from flask import request

from service import VERSION

KEPT_BRIEFLY = "public, max-age=300"
"""How long a computed answer holds: the same request has the same answer, but a release may mend numbers."""

KEPT_LONGER = "public, max-age=3600"
"""How long a built-in table holds."""

NEVER_KEPT = "no-store"
"""For what says how things stand just now."""


def digest(*asked: Any) -> str:
    """The digest of what is asked, the same however it was written down.

    asked: what an answer is computed from: the core's request, and what it is written by. What was left out has its
    default there, and exact numbers are in their lowest terms.

    >>> digest(Fraction(3), {"unit": "cm"}) == digest(Fraction(6, 2), {"unit": "cm"})
    True
    """
    return "sha256:" + sha256(orjson.dumps(asked, _plain, orjson.OPT_PASSTHROUGH_DATACLASS)).hexdigest()


def answer_tag(*told_apart_by: str) -> str:
    """The entity tag, without quotes, of an answer of this version.

    told_apart_by: what the answer depends on beside the version: what is asked, and its representation.
    """
    return sha256("\n".join((VERSION, *told_apart_by)).encode()).hexdigest()[:32]


def is_known(tag: str) -> bool:
    """Whether the client has sent the tag of an answer that it has (RFC 9110, section 13.1.2).

    A star, which means any answer, says so only when it is known that there is one.
    """
    known = request.if_none_match
    return not known.star_tag and known.contains_weak(tag)


def _plain(value: Any) -> Any:
    """Of a value that is no JSON, JSON that no other value has."""
    kind = type(value)
    if isinstance(value, Fraction):
        # not as two numbers: they may be longer than 64 bits
        above, below = value.as_integer_ratio()
        return f"{above}/{below}"
    return _writer(kind)(value)  # type: ignore[arg-type]


@cache
def _writer(kind: Any) -> Callable[[Any], Any]:
    if is_dataclass(kind):
        # a third of the time that orjson's own way with records of slots takes
        return attrgetter("__class__.__name__", *(each.name for each in fields(kind)))
    if issubclass(kind, tuple):
        name = kind.__name__
        return lambda record: (name, *record)
    if issubclass(kind, Mapping):
        return dict
    if kind is bytes:
        return bytes.hex
    raise TypeError(f"A request holds no {kind.__name__}.")
