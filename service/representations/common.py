"""The pieces of an answer that every operation writes the same way."""

from __future__ import annotations

from collections.abc import Iterable
from fractions import Fraction
from typing import Any

from grading_core.errors import Impossible, Remark
from grading_core.units import to_inches, to_places
from service.errors import pointer
from service.lengths import REQUEST_UNIT


def warnings(remarks: Iterable[Remark]) -> list[dict[str, str]]:
    """The `warnings` of an answer."""
    return [_warning(remark) for remark in remarks]


def impossible(why: Impossible) -> dict[str, Any]:
    """`reason` and `nearest` of a size that cannot be knitted as asked."""
    return {
        "reason": why.reason,
        "nearest": [{"field": change.field, "value": _sent(change.value)} for change in why.nearest],
    }


def _sent(value: int | str | Fraction) -> int | float | str:
    """A value as the request would have it: a length in its unit."""
    if isinstance(value, Fraction):
        return to_places(to_inches(value) if REQUEST_UNIT.get() == "in" else value)
    return value


def _warning(remark: Remark) -> dict[str, str]:
    written = {"code": remark.code, "message": remark.message}
    if remark.size is not None:
        written["size"] = remark.size
    if remark.path is not None:
        written["pointer"] = pointer(remark.path)
    return written
