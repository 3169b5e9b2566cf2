"""Operations about shaping plans."""

from __future__ import annotations

from grading_core.shaping_plans import shaping_problems, shaping_schedules
from service.operation import Operation
from service.schemas.shaping import ShapingSchedulesRequestSchema, ShapingSchedulesSchema

SHAPING_SCHEDULES = Operation(
    path="/v1/shaping-schedules",
    name="shaping-schedules",
    tag="Shaping",
    summary="Spread increases or decreases over rows, or across one row",
    description="""\
Along rows: n shapings over m rows in at most two neighbouring intervals, on every row or on right-side rows only.
Across a row: increases or decreases spread evenly, with the edge gaps right for flat work and for work in the round.

A plan whose shapings don't fit says so (`feasible: false`), with what alone would make them fit.""",
    request=ShapingSchedulesRequestSchema,
    answer=ShapingSchedulesSchema,
    call=shaping_schedules,
    check=shaping_problems,
)

OPERATIONS = (SHAPING_SCHEDULES,)
