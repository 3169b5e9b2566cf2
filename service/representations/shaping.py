"""Answers about shaping plans."""

from __future__ import annotations

from collections.abc import Sequence
from typing import Any

from grading_core.errors import Impossible
from grading_core.shaping_plans import AcrossSchedule, Planned, RowSchedule
from service.lengths import LengthWriter
from service.representations.common import impossible


def shaping_schedules(result: Sequence[Planned], _length: LengthWriter) -> dict[str, Any]:
    """The answer of `POST /v1/shaping-schedules`."""
    return {"plans": [_plan(planned) for planned in result], "warnings": []}


def _plan(planned: Planned) -> dict[str, Any]:
    made = planned.schedule
    if isinstance(made, Impossible):
        return {"name": planned.plan.name, "feasible": False, **impossible(made)}
    written = {
        "name": planned.plan.name,
        "feasible": True,
        "intervals": [{"every": every, "times": times} for every, times in made.intervals],
    }
    return written | (_along(made) if isinstance(made, RowSchedule) else _across(made))


def _along(made: RowSchedule) -> dict[str, Any]:
    return {
        "rows": made.plan.rows,
        "plain": made.plain_before + made.plain_after,
        "plain_before": made.plain_before,
        "plain_after": made.plain_after,
        "shaping_rows": list(made.shaping_rows),
        "phases": [
            {
                "from_row": phase.from_row,
                "to_row": phase.to_row,
                "every": list(phase.every),
                "times": phase.times,
            }
            for phase in made.phases
        ],
        "result": made.plan.to,
        "instructions": list(made.instructions()),
    }


def _across(made: AcrossSchedule) -> dict[str, Any]:
    return {
        "rows": 1,
        "plain": made.first + made.last,
        "first": made.first,
        "last": made.last,
        "after": list(made.after),
        "result": made.result,
        "instructions": list(made.instructions()),
    }
