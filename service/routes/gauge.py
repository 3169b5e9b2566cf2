"""Operations about gauge."""

from __future__ import annotations

from grading_core.conversions import convert
from service.operation import Operation
from service.schemas.gauge import GaugeConversionsRequestSchema, GaugeConversionsSchema

GAUGE_CONVERSIONS = Operation(
    path="/v1/gauge-conversions",
    name="gauge-conversions",
    tag="Gauge",
    summary="Convert lengths and counts at a gauge",
    description="""\
Turns widths and lengths into stitches and rows, and written counts into lengths. Every count is said with the
length that it really makes and the difference from what was asked.

With `pattern_gauge`, a written count is also regauged: the count that keeps the pattern's length at your
gauge, beside the length that the unchanged count would make. The two gauges are compared, with advice on the
needle.""",
    request=GaugeConversionsRequestSchema,
    answer=GaugeConversionsSchema,
    call=convert,
)

OPERATIONS = (GAUGE_CONVERSIONS,)
