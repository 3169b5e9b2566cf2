"""Answers about sizes."""

from __future__ import annotations

from typing import Any

from grading_core.sizes.choice import Choice, Match, SizeMatch
from grading_core.sizes.grading import GradedMeasurement, PrintedRuns, SizeGrading, count_unit
from grading_core.standards import Measurement
from service.lengths import LengthWriter
from service.representations.common import warnings


def size_gradings(
    result: tuple[SizeGrading, dict[Measurement, PrintedRuns]], length: LengthWriter
) -> dict[str, Any]:
    """The answer of `POST /v1/size-gradings`."""
    grading, runs = result
    units = {name: count_unit(name) for name in grading.measurements}
    return {
        "sizes": [
            {
                "label": size.label,
                **({"fit": size.fit} if size.fit else {}),
                "measurements": {
                    name: _measurement(cell, units[name], length) for name, cell in size.measurements.items()
                },
            }
            for size in grading.sizes
        ],
        "runs": {
            name: {
                units[name]: run.counts,
                "finished_cm": run.finished_cm,
                "finished_inch": run.finished_inch,
            }
            for name, run in runs.items()
        },
        "warnings": warnings(grading.remarks),
    }


def size_matches(result: SizeMatch, length: LengthWriter) -> dict[str, Any]:
    """The answer of `POST /v1/size-matches`."""
    answer = {"wanted": length(result.wanted), **_choice(result.written, length)}
    if result.at_own_gauge:
        answer["at_own_gauge"] = _choice(result.at_own_gauge, length)
    answer["warnings"] = warnings(result.remarks)
    return answer


def _measurement(cell: GradedMeasurement, unit: str, length: LengthWriter) -> dict[str, Any]:
    written: dict[str, Any] = {
        "body": length(cell.body.cm),
        "ease": length(cell.ease),
        "target": length(cell.target),
        unit: cell.count,
        "finished": length(cell.finished),
        "difference": length(cell.difference),
        "origin": cell.body.origin,
    }
    if cell.body.interpolated:
        written["interpolated"] = True
    return written


def _choice(choice: Choice, length: LengthWriter) -> dict[str, Any]:
    return {
        "best": _match(choice.best, length),
        "neighbours": {
            "smaller": None if choice.smaller is None else _match(choice.smaller, length),
            "larger": None if choice.larger is None else _match(choice.larger, length),
        },
    }


def _match(match: Match, length: LengthWriter) -> dict[str, Any]:
    return {
        "label": match.label,
        "finished": length(match.finished),
        "ease": None if match.ease is None else length(match.ease),
        "difference": length(match.difference),
    }
