"""Requests and answers about yarn."""

from __future__ import annotations

from typing import get_args

from grading_core.yarn.amounts import Purpose
from grading_core.yarn.request import SizeStitches, Strand, StrandRequest, Yarn, YarnEstimateRequest
from grading_core.yarn.result import (
    Amount,
    CategoryRow,
    Combination,
    CombinedStrand,
    Need,
    SizeNeeds,
    StrandNeed,
    YarnEstimates,
)
from service.schemas.base import StrictSchema, exactly_one_of
from service.schemas.common import MAX_LABEL, MAX_SIZES, AnswerSizesSchema, ComputedSchema, GaugeSchema
from service.schemas.containers import Items, Mapping, Nested
from service.schemas.fields import Choice, Flag, Number, Prose, Text, Whole
from service.schemas.printing import PrintedRequestSchema
from service.schemas.standards import SourceSchema

MAX_STRANDS = 20

MAX_YARNS = 62

MAX_GARMENT_STITCHES = 10_000_000


class StrandSchema(StrictSchema):
    """A strand, its thickness in one of the ways in which labels and mills tell it."""

    example = '{"metres": 200, "grams": 50}'

    record = Strand
    one_thickness = exactly_one_of("metres", "metres_per_100g", "tex", "nm")

    name = Text("Comes back with the answer.", most=100)
    metres = Number("So many metres ...", minimum=1, maximum=100_000, unit="metres")
    grams = Number(
        "... weigh so many grams, 100 unless sent; the weight of a ball where no `ball_grams` says it.",
        minimum=1,
        maximum=100_000,
        unit="grams",
    )
    metres_per_100g = Number(minimum=1, maximum=100_000, unit="metres")
    tex = Number("Grams per 1000 m.", minimum=1, maximum=100_000)
    nm = Number("The metric count Nm: metres per gram.", minimum=0.01, maximum=1000)
    ball_grams = Number("The weight of a ball of this strand.", minimum=1, maximum=10_000, unit="grams")


class StrandCombinationsRequestSchema(StrictSchema):
    """Strands to be held together."""

    record = StrandRequest

    strands = Items(Nested(StrandSchema), "One or more.", required=True, least=1, most=MAX_STRANDS)


class StrandInCombinationSchema(StrictSchema):
    """One strand of a combination."""

    record = CombinedStrand

    name = Prose("As sent.")
    metres_per_100g = Number("Of this strand.", required=True, minimum=0, unit="metres", places=2)
    tex = Number("Grams per 1000 m.", required=True, minimum=0, places=2)
    weight_share = Number("Its part of the weight.", required=True, minimum=0, places=4)


class YarnCategoryMatchSchema(StrictSchema):
    """A row of a published chart that the thickness falls in."""

    record = CategoryRow

    source = Prose("The chart's key in `sources`.", required=True, source="source.key")
    category = Whole("Of the standard, 0 to 7.", required=True, minimum=0, source="thickness.category")
    standard_name = Prose("Of that category.", required=True)
    name = Prose("The chart's own name.", required=True, source="thickness.name")
    between = Flag("Whether the chart leaves a gap there, and this is the nearer row.", required=True)


class StrandCombinationsSchema(ComputedSchema):
    """What the strands give together."""

    record = Combination

    metres_per_100g = Number("Of all strands together.", required=True, minimum=0, unit="metres", places=2)
    tex = Number("Grams per 1000 m: the sum of the strands'.", required=True, minimum=0, places=2)
    strands = Items(Nested(StrandInCombinationSchema), "In the order of the request.", required=True)
    categories = Items(
        Nested(YarnCategoryMatchSchema), "By every built-in chart; charts overlap and differ.", required=True
    )
    sources = Items(Nested(SourceSchema), "Of the charts.", required=True)


class YarnFieldsSchema(StrictSchema):
    """A yarn, or strands held together: the fields that are the same wherever one is sent."""

    metres_per_100g = Number("Of all strands together.", minimum=1, maximum=100_000, unit="metres")
    strands = Items(
        Nested(StrandSchema),
        "The strands held together, each counted in balls of its own.",
        least=1,
        most=MAX_STRANDS,
        example='[{"metres": 200, "grams": 50}]',
    )
    ball_grams = Number(
        "The weight of a ball of what has none of its own; 50 unless sent, where no `grams` of a strand say it.",
        minimum=1,
        maximum=10_000,
        unit="grams",
    )
    swatch_grams = Number(
        "The weight of a swatch: of this colour's yarn in it.", minimum=0.01, maximum=10_000, unit="grams"
    )
    swatch_stitches = Whole(
        "All stitches of this colour in that swatch, rows times stitches in a swatch of one colour.",
        minimum=1,
        maximum=MAX_GARMENT_STITCHES,
        unit="stitches",
    )
    swatch_floats = Whole(
        "Stitches of that swatch that this colour's strand is carried behind.",
        minimum=0,
        maximum=MAX_GARMENT_STITCHES,
        unit="stitches",
    )


class YarnSchema(YarnFieldsSchema):
    """A yarn, or strands held together."""

    example = '{"metres_per_100g": 400}'

    record = Yarn
    one_thickness = exactly_one_of("metres_per_100g", "strands")


class SizeStitchesSchema(StrictSchema):
    """The stitches of one size."""

    example = '{"label": "S", "stitches": {"oat": 40000}}'

    record = SizeStitches

    label = Text("The size's name, unique in the request.", required=True, most=MAX_LABEL)
    stitches = Mapping(
        Text("The name of a yarn.", most=60),
        Whole(minimum=0, maximum=MAX_GARMENT_STITCHES, unit="stitches"),
        "Stitches worked in each yarn, as `POST /v1/chart-placements` counts them.",
        required=True,
        least=1,
        most=MAX_YARNS,
        example='{"oat": 40000}',
    )
    floats = Mapping(
        Text("The name of a yarn.", most=60),
        Whole(minimum=0, maximum=MAX_GARMENT_STITCHES, unit="stitches"),
        "Stitches that each yarn's strand is carried behind, as `POST /v1/chart-placements` counts them.",
        most=MAX_YARNS,
        example='{"oat": 9000}',
    )


class YarnEstimatesRequestSchema(AnswerSizesSchema, PrintedRequestSchema):
    """Yarns, and the stitches of every size."""

    record = YarnEstimateRequest

    yarns = Mapping(
        Text("A name for the yarn.", most=60),
        Nested(YarnSchema),
        "The yarns by name.",
        required=True,
        least=1,
        most=MAX_YARNS,
        example='{"oat": {"metres_per_100g": 400}}',
    )
    gauge = Nested(GaugeSchema, "Of the fabric; required for floats, and where a yarn has no weighed swatch.")
    margin = Number("Bought beyond what is needed, as a part of it.", minimum=0, maximum=2)
    sizes = Items(Nested(SizeStitchesSchema), "In the order of the answer.", required=True, least=1, most=MAX_SIZES)


class GramsSchema(StrictSchema):
    """Grams, as a range; ends and edges make one even where a swatch was weighed."""

    record = Amount

    low = Number(required=True, minimum=0, unit="grams", places=1)
    likely = Number(required=True, minimum=0, unit="grams", places=1)
    high = Number(required=True, minimum=0, unit="grams", places=1)


class StrandNeedSchema(StrictSchema):
    """How much of one strand is needed; it is as long as all of them."""

    record = StrandNeed

    name = Prose("As sent.")
    grams = Nested(GramsSchema, required=True)
    ball_grams = Number("The weight of a ball.", required=True, minimum=0, unit="grams", places=2)
    balls = Whole("To buy, with the margin.", required=True, minimum=0, unit="balls")


class YarnNeedSchema(StrictSchema):
    """How much of one yarn is needed."""

    record = Need

    stitches = Whole("Worked in it.", required=True, minimum=0, unit="stitches")
    basis = Choice(required=True, description="How a stitch's yarn is known.")
    grams = Nested(GramsSchema, "Of all strands together.", required=True)
    metres = Number("The likely length.", required=True, minimum=0, unit="metres", places=1, source="metres.likely")
    metres_for = Mapping(
        Choice(*get_args(Purpose)),
        Number(minimum=0, unit="metres", places=1),
        "The likely length by what takes it; edges are cast on, picked up and bound off.",
        required=True,
        most=len(get_args(Purpose)),
    )
    balls = Whole(
        "To buy, with the margin: of the first strand, where there are several.", required=True, minimum=0, unit="balls"
    )
    strands = Items(
        Nested(StrandNeedSchema),
        "Each strand, where several are held together.",
        source=lambda need: need.strands if len(need.strands) > 1 else None,
    )


class YarnNameSchema(StrictSchema):
    """Which yarn. A base of its own, since a schema's fields come in the order of its bases, the last one's first."""

    yarn = Prose("Its name.", required=True)


class NamedYarnNeedSchema(YarnNeedSchema, YarnNameSchema):
    """How much of one yarn a size needs."""


class SizeYarnSchema(StrictSchema):
    """The yarns of one size."""

    record = SizeNeeds

    label = Prose("As sent.", required=True)
    yarns = Items(Nested(NamedYarnNeedSchema), "In the order of their names.", required=True)


class YarnEstimatesSchema(ComputedSchema):
    """The yarn of every size, in the order of the request."""

    record = YarnEstimates

    sizes = Items(Nested(SizeYarnSchema), "One per size.", required=True)
    runs = Mapping(
        Text("The name of a yarn."),
        Prose(),
        "Balls to buy by yarn, as a size run; a dash where a size has none of it.",
        required=True,
        most=MAX_YARNS,
    )
