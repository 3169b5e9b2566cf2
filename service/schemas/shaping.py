"""Requests and answers about shaping plans."""

from __future__ import annotations

from collections.abc import Callable
from operator import methodcaller
from typing import Any

from grading_core.limits import MAX_ROUNDS, MAX_STITCHES
from grading_core.shaping import Phase
from grading_core.shaping_plans import (
    AcrossPlan,
    AcrossSchedule,
    Interval,
    RowPlan,
    RowSchedule,
    ShapingRequest,
    ShapingSchedule,
    ShapingSchedules,
)
from service.schemas.base import StrictSchema
from service.schemas.codes import CodeField
from service.schemas.common import ComputedSchema, NearestSchema
from service.schemas.containers import ByField, Items, Nested
from service.schemas.fields import Choice, Flag, Spoken, Text, Whole
from service.schemas.sentences import SentenceSchema

MAX_PLANS = 100


def _where_it_has(name: str) -> Callable[[RowSchedule | AcrossSchedule], Any]:
    """Gets what schedules of one of the two kinds have, and the others leave out."""
    return lambda schedule: getattr(schedule, name, None)


class RowPlanSchema(StrictSchema):
    """Stitches to be gained or lost over rows or rounds."""

    example = '{"name": "sleeve", "stitches": 60, "to": 46, "rows": 90}'

    record = RowPlan

    name = Text("Comes back with the answer.", required=True, most=100)
    stitches = Whole("Before the first shaping.", required=True, minimum=0, maximum=MAX_STITCHES, unit="stitches")
    to = Whole("After the last shaping.", required=True, minimum=0, maximum=MAX_STITCHES, unit="stitches")
    rows = Whole("How many rows there are.", required=True, minimum=1, maximum=MAX_ROUNDS, unit="rows")
    stitches_per_shaping = Whole("Gained or lost in one shaping row.", minimum=1, maximum=100, unit="stitches")
    step = Whole(
        "1 for every row or round, 2 for right-side rows only or every second round.", minimum=1, maximum=2, unit="rows"
    )
    spacing = Choice(
        description="Two neighbouring intervals in the order named, or one interval only, the surplus rows plain "
        "after or before it."
    )
    plain_before = Whole("Rows kept plain at the start.", minimum=0, maximum=MAX_ROUNDS, unit="rows")
    plain_after = Whole("Rows kept plain at the end.", minimum=0, maximum=MAX_ROUNDS, unit="rows")
    worked = Choice(
        description="In the round, or flat, for the words of the answer; unless sent, flat where `step` is 2."
    )


class AcrossPlanSchema(StrictSchema):
    """Stitches to be gained or lost evenly across one row or round."""

    example = '{"name": "hem", "stitches": 112, "across": 16, "change": "increase"}'

    record = AcrossPlan

    name = Text("Comes back with the answer.", required=True, most=100)
    stitches = Whole("On the needle.", required=True, minimum=1, maximum=MAX_STITCHES, unit="stitches")
    across = Whole("How many to gain or lose.", required=True, minimum=1, maximum=MAX_STITCHES, unit="stitches")
    change = Choice(required=True, description="Which of the two.")
    worked = Choice(description="In the round, or flat.")
    edge = Choice(description="Flat only: whether the gaps at the edges are half of the others, or as large as they.")


class ShapingSchedulesRequestSchema(StrictSchema):
    """Shaping plans, along rows or across one row. Counts only: no unit, no gauge."""

    record = ShapingRequest

    plans = Items(
        ByField("across", having=Nested(AcrossPlanSchema), lacking=Nested(RowPlanSchema), type_name="Plan"),
        "In the order of the answer. A plan with `across` is across one row.",
        required=True,
        least=1,
        most=MAX_PLANS,
    )


class IntervalSchema(StrictSchema):
    """An interval with how often it is worked."""

    record = Interval

    every = Whole(
        "Rows from one shaping row to the next, that row included; across a row, stitches.", required=True, minimum=1
    )
    times = Whole("How often.", required=True, minimum=1)


class ShapingPhaseSchema(StrictSchema):
    """Rows that repeat one interval, or a short cycle of intervals."""

    record = Phase

    from_row = Whole("The first row of the phase.", required=True, minimum=1, unit="rows")
    to_row = Whole("The last row of the phase.", required=True, minimum=1, unit="rows")
    every = Items(
        Whole(minimum=1, unit="rows"),
        "One interval, or a short cycle of them; empty for a plain stretch.",
        required=True,
        most=4,
    )
    times = Whole("How often the cycle is worked; 0 for a plain stretch.", required=True, minimum=0)


class ShapingScheduleSchema(StrictSchema):
    """One plan's schedule; for a plan that is not feasible, why and what would make it so."""

    record = ShapingSchedule
    outcome = "schedule"

    name = Text("As sent.", required=True, most=100, source="plan.name")
    feasible = Flag("Whether the shapings fit.", required=True)
    code = CodeField("ReasonCode", "The kind of reason, for programs.")
    reason = Spoken("Why they don't.")
    nearest = Items(Nested(NearestSchema), "What alone would make them fit.", most=20)
    intervals = Items(
        Nested(IntervalSchema),
        "The intervals in the order of their first use. Across a flat row, between the shapings only.",
        most=10,
    )
    rows = Whole("Rows of the plan; 1 across a row.", minimum=1, unit="rows")
    plain = Whole("Rows outside the intervals; across a flat row, the stitches of both edge gaps.", minimum=0)
    plain_before = Whole(
        "Plain rows before the first interval.", minimum=0, unit="rows", source=_where_it_has("plain_before")
    )
    plain_after = Whole(
        "Plain rows after the last shaping row.", minimum=0, unit="rows", source=_where_it_has("plain_after")
    )
    shaping_rows = Items(
        Whole(minimum=1, unit="rows"),
        "Every shaping row, counted from 1. The first interval counts from the row before it, so that with right-side "
        "rows only, row 1 is a wrong-side row unless an odd number of plain rows stand before.",
        most=MAX_ROUNDS,
        source=_where_it_has("shaping_rows"),
    )
    phases = Items(
        Nested(ShapingPhaseSchema), "All rows without gap or overlap.", most=MAX_ROUNDS, source=_where_it_has("phases")
    )
    first = Whole(
        "Across a row: stitches worked when the first shaping is done; 0 in the round, where it is an interval.",
        minimum=0,
        unit="stitches",
        source=_where_it_has("first"),
    )
    last = Whole(
        "Across a row: stitches left after the last shaping.", minimum=0, unit="stitches", source=_where_it_has("last")
    )
    after = Items(
        Whole(minimum=1, unit="stitches"),
        "Across a row: for every shaping, how many of the old stitches are worked when it is done.",
        most=MAX_STITCHES,
        source=_where_it_has("after"),
    )
    result = Whole("Stitches at the end.", minimum=0, unit="stitches")
    instructions = Items(
        Nested(SentenceSchema), "The schedule in sentences.", most=MAX_ROUNDS, source=methodcaller("instructions")
    )


class ShapingSchedulesSchema(ComputedSchema):
    """The schedules, in the order of the request."""

    record = ShapingSchedules

    plans = Items(Nested(ShapingScheduleSchema), "One per plan.", required=True, least=1, most=MAX_PLANS)
