"""Answers about gauge."""

from __future__ import annotations

from typing import Any

from grading_core.conversions import Conversions, Converted
from grading_core.gauge import Comparison
from grading_core.units import to_places
from service.representations.common import LengthWriter, warnings


def conversions(result: Conversions, length: LengthWriter) -> dict[str, Any]:
    """The answer of `POST /v1/gauge-conversions`."""
    answer: dict[str, Any] = {"items": [_item(item, length) for item in result.items]}
    if result.comparison:
        answer["comparison"] = _comparison(result.comparison)
    answer["warnings"] = warnings(result.remarks)
    return answer


def _item(item: Converted, length: LengthWriter) -> dict[str, Any]:
    written: dict[str, Any] = {} if item.name is None else {"name": item.name}
    written[item.unit] = item.count
    if item.exact is not None:
        written["exact"] = to_places(item.exact, 4)
    written["length"] = length(item.length_cm)
    if item.difference_cm is not None:
        written["difference"] = length(item.difference_cm)
    if item.regauged:
        written["pattern_length"] = length(item.regauged.pattern_length_cm)
        written["regauged"] = item.regauged.count
        written["regauged_length"] = length(item.regauged.length_cm)
        written["regauged_difference"] = length(item.regauged.difference_cm)
    return written


def _comparison(comparison: Comparison) -> dict[str, Any]:
    return {
        "stitches_ratio": to_places(comparison.stitches_ratio, 4),
        "rows_ratio": to_places(comparison.rows_ratio, 4),
        "fabric": comparison.fabric,
        "needle": comparison.needle,
        "advice": comparison.advice,
    }
