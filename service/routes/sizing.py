"""Operations about sizes."""

from __future__ import annotations

from grading_core.sizes.choice import match_problems, match_sizes
from grading_core.sizes.grading import grade_sizes, grading_problems
from service.media import PER_SIZE
from service.operation import Operation
from service.schemas.sizing import (
    SizeGradingsRequestSchema,
    SizeGradingsSchema,
    SizeMatchesRequestSchema,
    SizeMatchesSchema,
)

SIZE_GRADINGS = Operation(
    path="/v1/size-gradings",
    name="size-gradings",
    tag="Sizing",
    summary="Grade sizes: body plus ease at a gauge",
    description="""\
Turns the bodies of up to 40 sizes into stitches or rows and finished measurements: `target` is body plus ease,
the count is the target at the gauge by its count rule, and `finished` is what that count really makes.

The bodies come from a built-in table (`body_table`, see `GET /v1/standards`), from your own `sizes`, or from both:
then each measurement that a size lacks is interpolated on its bust between the table's two nearest sizes. With
`sizes` alone only what was sent is answered. A table's inches count wherever it has both columns.

Sizes have to rise: a girth or armhole of a larger size that is smaller than that of a smaller size is refused,
both sizes named. Which size is the larger is told by labels such as S, M, L or 34, 36, and otherwise by the bust;
the order of sending has no say in it.""",
    request=SizeGradingsRequestSchema,
    answer=SizeGradingsSchema,
    call=grade_sizes,
    check=grading_problems,
    media=PER_SIZE,
)

SIZE_MATCHES = Operation(
    path="/v1/size-matches",
    name="size-matches",
    tag="Sizing",
    summary="Choose a size",
    description="""\
Which size to knit for a garment that fits, or for a body and a wanted ease: the one whose finished circumference is
nearest, of two equally near ones the larger. The neighbours stand beside it, each with its ease and its
difference from what is wanted.

With your own gauge beside the written one, `at_own_gauge` says the same for the circumferences that the written
counts make in your fabric: finished x written stitches per cm / own stitches per cm.""",
    request=SizeMatchesRequestSchema,
    answer=SizeMatchesSchema,
    call=match_sizes,
    check=match_problems,
)

OPERATIONS = (SIZE_GRADINGS, SIZE_MATCHES)
