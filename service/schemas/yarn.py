"""Requests and answers about yarn."""

from __future__ import annotations

from grading_core.yarn.request import SizeStitches, Strand, StrandRequest, Yarn, YarnEstimateRequest
from grading_core.yarn.result import (
    Amount,
    CategoryRow,
    Combination,
    CombinedStrand,
    Contrast,
    Need,
    SizeNeeds,
    YarnEstimates,
)
from service.schemas.base import StrictSchema
from service.schemas.common import MAX_LABEL, MAX_SIZES, AnswerSizesSchema, ComputedSchema, GaugeSchema
from service.schemas.containers import Items, Mapping, Nested
from service.schemas.fields import Choice, Flag, Hex, Number, Prose, Text, Whole
from service.schemas.printing import PrintedRequestSchema
from service.schemas.standards import SourceSchema

MAX_STRANDS = 20

MAX_YARNS = 62

MAX_GARMENT_STITCHES = 10_000_000


class StrandSchema(StrictSchema):
    """A strand, as its label tells it."""

    example = '{"metres": 200, "grams": 50}'

    record = Strand

    name = Text("Comes back with the answer.", most=100)
    metres = Number("So many metres ...", required=True, minimum=1, maximum=100_000, unit="metres")
    grams = Number("... weigh so many grams.", minimum=1, maximum=100_000, unit="grams")


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


class YarnSchema(StrictSchema):
    """A yarn, or strands held together."""

    example = '{"metres_per_100g": 400}'

    record = Yarn

    metres_per_100g = Number("Of all strands together.", required=True, minimum=1, maximum=100_000, unit="metres")
    ball_grams = Number("The weight of a ball.", minimum=1, maximum=10_000, unit="grams")
    swatch_grams = Number(
        "The weight of a swatch: of this colour's yarn in it.", minimum=0.01, maximum=10_000, unit="grams"
    )
    swatch_stitches = Whole(
        "All stitches of this colour in that swatch.", minimum=1, maximum=MAX_GARMENT_STITCHES, unit="stitches"
    )
    hex = Hex("Its sRGB colour, to compare lightness.")


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
    gauge = Nested(GaugeSchema, "Of the fabric; required where a yarn has no weighed swatch.")
    margin = Number("Bought beyond what is needed, as a part of it.", minimum=0, maximum=2)
    sizes = Items(Nested(SizeStitchesSchema), "In the order of the answer.", required=True, least=1, most=MAX_SIZES)


class GramsSchema(StrictSchema):
    """Grams: alike where they were measured, a range where they are an estimate."""

    record = Amount

    low = Number(required=True, minimum=0, unit="grams", places=1)
    likely = Number(required=True, minimum=0, unit="grams", places=1)
    high = Number(required=True, minimum=0, unit="grams", places=1)


class YarnNeedSchema(StrictSchema):
    """How much of one yarn is needed."""

    record = Need

    stitches = Whole("Worked in it.", required=True, minimum=0, unit="stitches")
    basis = Choice(required=True, description="How the amount is known.", source="grams.basis")
    grams = Nested(GramsSchema, required=True)
    metres = Number("The likely length.", required=True, minimum=0, unit="metres", places=1)
    balls = Whole("To buy, with the margin.", required=True, minimum=0, unit="balls")


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


class ContrastSchema(StrictSchema):
    """Two yarns side by side. They read apart when their lightness differs, whatever their hues."""

    record = Contrast

    yarns = Items(Prose(), "Their names.", required=True)
    lightness = Items(
        Number(minimum=0, maximum=100, places=1), "CIE 1976 L* of each, 0 for black to 100 for white.", required=True
    )
    difference = Number("By how much they differ.", required=True, minimum=0, places=1)


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
    contrasts = Items(Nested(ContrastSchema), "Every two yarns whose `hex` was sent.", required=True)
