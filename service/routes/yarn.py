"""Operations about yarn."""

from __future__ import annotations

from grading_core.yarn.estimates import estimate_problems, yarn_estimates
from grading_core.yarn.strands import hold_together
from grading_core.yarn.substitution import substitute_yarn, substitution_problems
from service.media import PER_SIZE
from service.operation import Operation
from service.schemas.strands import StrandCombinationsRequestSchema, StrandCombinationsSchema
from service.schemas.substitution import YarnSubstitutionsRequestSchema, YarnSubstitutionsSchema
from service.schemas.yarn import YarnEstimatesRequestSchema, YarnEstimatesSchema

STRAND_COMBINATIONS = Operation(
    path="/v1/strand-combinations",
    name="strand-combinations",
    tag="Yarn",
    summary="Hold strands together",
    description="""\
How thick strands are together: their linear densities in tex add, so two yarns of 400 m per 100 g give 200, and 400
and 840 give 271, never the 620 of their average. With it the yarn category by every built-in chart (retail usage
overlaps), the gauge and the needle at which such yarn is usually knitted, and each strand's part of the weight. With
`wanted_category` also which further strand makes them as thick. What gauge the fabric gets, only a swatch tells.""",
    request=StrandCombinationsRequestSchema,
    answer=StrandCombinationsSchema,
    call=hold_together,
)

YARN_ESTIMATES = Operation(
    path="/v1/yarn-estimates",
    name="yarn-estimates",
    tag="Yarn",
    summary="Estimate the yarn of every colour and size",
    description="""\
From the exact stitches of every size and yarn: grams, metres, and balls to buy with a margin. Best from a weighed
swatch (its weight over its stitches, times the garment's); without one an estimate from the width of a stitch, with
its range and a word on what it assumes. Floats take yarn too, and are told apart in a swatch that has some. Casting on,
binding off and ends aren't reckoned here, since stitches don't tell them; `POST /v1/pullovers` does that.""",
    request=YarnEstimatesRequestSchema,
    answer=YarnEstimatesSchema,
    call=yarn_estimates,
    check=estimate_problems,
    media=PER_SIZE,
)

YARN_SUBSTITUTIONS = Operation(
    path="/v1/yarn-substitutions",
    name="yarn-substitutions",
    tag="Yarn",
    summary="Put another yarn in place of a pattern's",
    description="""\
What a pattern says in metres, yards, grams or balls of its own yarn, in grams and balls of another: the length stays,
and the weight follows from how thick the yarn is. With it both yarns' thickness and categories, and the gauge at which
the other one makes as firm a fabric. It is a place to start a swatch from, which alone decides.""",
    request=YarnSubstitutionsRequestSchema,
    answer=YarnSubstitutionsSchema,
    call=substitute_yarn,
    check=substitution_problems,
    media=PER_SIZE,
)

OPERATIONS = (STRAND_COMBINATIONS, YARN_ESTIMATES, YARN_SUBSTITUTIONS)
