"""Operations about whole pullovers."""

from __future__ import annotations

from dataclasses import replace

from grading_core.pullover.garment import garment_problems
from grading_core.pullover.grade import grade_pullover
from grading_core.pullover.request import PulloverRequest
from grading_core.pullover.result import Pullover
from service.media import PER_SIZE, WORKBOOK
from service.operation import Operation
from service.representations.workbook import workbook
from service.schemas.pullover_answer import PulloversSchema
from service.schemas.pullover_request import PulloversRequestSchema

PULLOVERS = Operation(
    path="/v1/pullovers",
    name="pullovers",
    tag="Garment",
    summary="Grade a whole pullover, in every size",
    description="""\
From a gauge, bodies and ease to every number of a seamless top-down raglan pullover in all sizes: neck with markers and
short rows, yoke, split, body, sleeves and bands, a colourwork chart on all of it, the yarn for each colour, and the
pattern's sentences. A gauge alone gives nine sizes of a wearable women's pullover; every choice can be overridden.

The counts of all sizes are chosen together. Hard: every total closes and lands on its multiple, sections have the
parity that a chart needs, the increases fit in the rounds, and no count falls from a size to a larger one. Soft, in one
cost that is brought to its minimum and told: the distance from every target, and uneven steps from size to size.

`changes` holds what a maker does differently later: another gauge, ease, yoke depth, lengths or neckband. The answer is
then the changed pullover, and `changed` lists every number that differs from the design, size by size. With
`keep_counts` beside a gauge the written counts stay: each size says what it measures at that gauge, which written size
comes nearest to its bust, and how many rounds make its lengths again (`at_own_gauge`).

A size that can't be knitted says so (`feasible: false`), with what would make it possible; the others are computed.""",
    request=PulloversRequestSchema,
    answer=PulloversSchema,
    call=grade_pullover,
    check=garment_problems,
    media=PER_SIZE,
    tabled=lambda request: replace(request, include=("table",)),
)

PULLOVERS_WORKBOOK: Operation[PulloverRequest, Pullover] = Operation(
    path="/v1/pullovers/workbook",
    name="pullovers-workbook",
    tag="Garment",
    summary="A whole pullover as a workbook",
    description="""\
Takes the very same request as `POST /v1/pullovers` and answers a workbook (XLSX) with a sheet each for the table, the
sizes, the instructions, the warnings and the sources. `include` makes no difference: it has all of them.

Numbers are numbers: a length has a row in cm and one in inches, which are shown as fractions of the printed inch step
(`print.inch_step`). Text is never a formula. The same request gives the same bytes. Where the bodies are a built-in
table, the sources have the credit line that its publisher asks for.""",
    request=PulloversRequestSchema,
    answer=None,
    call=lambda request: grade_pullover(replace(request, include=("table", "instructions", "sizes"))),
    check=garment_problems,
    represent=workbook,
    media=WORKBOOK,
    saved_as=lambda _: ("pullover",),
)
