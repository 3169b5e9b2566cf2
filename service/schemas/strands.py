"""Requests and answers about strands held together."""

from __future__ import annotations

from math import ceil, floor

from grading_core.standards.ranges import Range
from grading_core.yarn.request import Strand, StrandRequest
from grading_core.yarn.result import CategoryRow, Combination, CombinedStrand, FittingStrand, Reach
from service.schemas.base import StrictSchema, exactly_one_of
from service.schemas.common import ComputedSchema
from service.schemas.containers import Items, Nested
from service.schemas.fields import Choice, Flag, Number, Prose, Text, Whole
from service.schemas.standards import NeedleNumbersSchema, RangeSchema, SourceSchema

MAX_STRANDS = 20


class StrandSchema(StrictSchema):
    """A strand, its thickness in one of the ways in which labels and mills tell it."""

    example = '{"metres": 200, "grams": 50}'

    record = Strand
    one_thickness = exactly_one_of("metres", "metres_per_100g", "tex", "nm")

    name = Text("Comes back with the answer.", most=100)
    metres = Number("So many metres ...", minimum=1, maximum=100_000, unit="metres")
    grams = Number(
        "... weigh so many grams, 100 unless sent; that is a ball, where no `ball_grams` says another weight.",
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
    wanted_category = Whole(
        "A category of the standard: which further strand makes these as thick, if any does.", minimum=0, maximum=7
    )


class StrandInCombinationSchema(StrictSchema):
    """One strand of a combination."""

    record = CombinedStrand

    name = Prose("As sent.")
    metres_per_100g = Number("Of this strand.", required=True, minimum=0, unit="metres", places=2)
    tex = Number("Grams per 1000 m.", required=True, minimum=0, places=2)
    weight_share = Number("Its part of the weight.", required=True, minimum=0, places=4)


class StitchRangeSchema(StrictSchema):
    """A published range converted, to one decimal; an end that is missing is open."""

    record = Range

    low = Number("The lower end.", minimum=0, unit="stitches", places=1)
    high = Number("The upper end.", minimum=0, unit="stitches", places=1)


class YarnCategoryMatchSchema(StrictSchema):
    """A row of a published chart that the thickness falls in."""

    record = CategoryRow

    source = Prose("The chart's key in `sources`.", required=True, source="source.key")
    category = Whole("Of the standard, 0 to 7.", required=True, minimum=0, source="thickness.category")
    standard_name = Prose("Of that category.", required=True, source="standard.name")
    name = Prose("The chart's own name.", required=True, source="thickness.name")
    between = Flag("Whether the chart leaves a gap there, and this is the nearer row.", required=True)
    metres_per_100g = Nested(
        RangeSchema, "The row, as the chart has it.", required=True, source="thickness.metres_per_100g"
    )
    stitches_per_4_inches = Nested(
        RangeSchema,
        "Of stockinette, as the standard has it for the category: where a swatch starts, not what it will give.",
        required=True,
        source="standard.stitches_per_4_inches",
    )
    stitches_per_10_cm = Nested(
        StitchRangeSchema, "The same, exactly converted.", required=True, source="standard.stitches_per_10_cm"
    )
    needle_mm = Nested(
        RangeSchema,
        "Needles that the standard recommends for it, a start likewise.",
        required=True,
        source="standard.needle_mm",
    )
    needle_us = Nested(NeedleNumbersSchema, "The same in US numbers.", required=True, source="standard.needle_us")


class FittingStrandSchema(StrictSchema):
    """Which strands do, to two decimals within the range; any that is thinner or thicker where an end is missing."""

    record = FittingStrand

    thinnest = Number(
        "Metres per 100 g of the thinnest.",
        minimum=0,
        unit="metres",
        source=lambda strand: None if strand.thinnest is None else floor(strand.thinnest * 100) / 100,
    )
    thickest = Number(
        "Metres per 100 g of the thickest.",
        minimum=0,
        unit="metres",
        source=lambda strand: None if strand.thickest is None else ceil(strand.thickest * 100) / 100,
    )


class ReachSchema(StrictSchema):
    """What it takes for the strands to be as thick as a row of a chart."""

    record = Reach

    source = Prose("The chart's key in `sources`.", required=True, source="source.key")
    name = Prose("The chart's own name of the row.", required=True, source="thickness.name")
    metres_per_100g = Nested(
        RangeSchema, "The row, as the chart has it.", required=True, source="thickness.metres_per_100g"
    )
    state = Choice(
        required=True,
        description="Whether another strand is needed, none is, or the strands are thicker already: a strand makes "
        "them thicker, never thinner.",
    )
    strand = Nested(
        FittingStrandSchema,
        "The strand that, held with these, brings them there, or leaves them there; left out where every one makes "
        "them too thick.",
    )


class StrandCombinationsSchema(ComputedSchema):
    """What the strands give together."""

    record = Combination

    metres_per_100g = Number("Of all strands together.", required=True, minimum=0, unit="metres", places=2)
    tex = Number("Grams per 1000 m: the sum of the strands'.", required=True, minimum=0, places=2)
    strands = Items(Nested(StrandInCombinationSchema), "In the order of the request.", required=True)
    categories = Items(
        Nested(YarnCategoryMatchSchema), "By every built-in chart; charts overlap and differ.", required=True
    )
    to_reach = Items(
        Nested(ReachSchema),
        "Where `wanted_category` is sent: by each row that a chart has of it, thinnest first; charts overlap and "
        "differ, and none has category 7.",
    )
    sources = Items(Nested(SourceSchema), "Of the charts and the standard.", required=True)
