"""Operations about whole pullovers."""

from __future__ import annotations

from grading_core.pullover.garment import garment_problems
from grading_core.pullover.grade import grade_pullover
from service.media import PER_SIZE
from service.operation import Operation
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
)

OPERATIONS = (PULLOVERS,)
