"""Operations about raglan yokes."""

from __future__ import annotations

from grading_core.yoke.all_sizes import adjustment_problems, raglan_problems, raglan_schedules, yoke_adjustments
from service.media import PER_SIZE
from service.operation import Operation
from service.schemas.raglan import (
    RaglanSchedulesRequestSchema,
    RaglanSchedulesSchema,
    YokeAdjustmentsRequestSchema,
    YokeAdjustmentsSchema,
)

RAGLAN_SCHEDULES = Operation(
    path="/v1/raglan-schedules",
    name="raglan-schedules",
    tag="Shaping",
    summary="Schedule the increases of a raglan yoke",
    description="""\
Takes, for every size, the sections at the neck and at the split and the rounds (or the depth) between, and answers
where every increase falls: body and sleeves at their own rates, sharing rounds wherever they can.

The schedule has the fewest increase rounds, at most two neighbouring intervals between them, and the last one as late
as they allow. Body increases are doubled only where `double_body` allows it and the rounds don't suffice without.
A size whose increases don't fit says so (`feasible: false`), with what alone would make them fit; the other sizes
are computed.""",
    request=RaglanSchedulesRequestSchema,
    answer=RaglanSchedulesSchema,
    call=raglan_schedules,
    check=raglan_problems,
    media=PER_SIZE,
)

YOKE_ADJUSTMENTS = Operation(
    path="/v1/yoke-adjustments",
    name="yoke-adjustments",
    tag="Shaping",
    summary="Make a yoke deeper or shallower",
    description="""\
Keeps the counts at the neck and at the split and changes the rounds between: by a depth, a change of depth, rounds, a
change of rounds, or a knitter's own row gauge. Every way is computed and compared: plain rounds after the last
increase, increases spaced wider (deeper) or closer (shallower), and doubled body increases (shallower). One is
recommended, with the reason; a way that is impossible says why, and what the shallowest yoke is that it can reach.

`double_body` doesn't restrict the ways; `double_where` says where doubled rounds lie.""",
    request=YokeAdjustmentsRequestSchema,
    answer=YokeAdjustmentsSchema,
    call=yoke_adjustments,
    check=adjustment_problems,
    media=PER_SIZE,
)

OPERATIONS = (RAGLAN_SCHEDULES, YOKE_ADJUSTMENTS)
