"""Requests and answers about yarn."""

from __future__ import annotations

from collections.abc import Mapping as MappingType
from dataclasses import dataclass
from fractions import Fraction

from grading_core.gauge import Gauge
from grading_core.yarn.estimates import SizeStitches, Yarn
from service.schemas.base import StrictSchema
from service.schemas.common import MAX_SIZES, ComputedSchema, GaugeSchema, RequestSchema
from service.schemas.fields import Choice, Flag, Hex, Items, Mapping, Nested, Number, Prose, Text, Whole
from service.schemas.standards import SourceSchema

MAX_STRANDS = 20

MAX_YARNS = 62

MAX_GARMENT_STITCHES = 10_000_000


@dataclass(frozen=True, slots=True)
class Strand:
    """A strand as its label tells it: so many metres weigh so many grams."""

    metres: Fraction
    grams: Fraction
    name: str | None = None

    @property
    def metres_per_100g(self) -> Fraction:
        """Its thickness."""
        return 100 * self.metres / self.grams


@dataclass(frozen=True, slots=True)
class StrandsQuery:
    """Strands to hold together."""

    strands: tuple[Strand, ...]


@dataclass(frozen=True, slots=True)
class YarnEstimatesQuery:
    """What `grading_core.yarn.estimates.yarn_estimates` takes."""

    yarns: MappingType[str, Yarn]
    sizes: tuple[SizeStitches, ...]
    margin: Fraction
    gauge: Gauge | None = None


class StrandSchema(StrictSchema):
    """A strand, as its label tells it."""

    builds = Strand

    name = Text("Comes back with the answer.", most=100)
    metres = Number("So many metres ...", required=True, minimum=1, maximum=100_000, unit="metres")
    grams = Number("... weigh so many grams.", minimum=1, maximum=100_000, default=100, unit="grams")


class StrandCombinationsRequestSchema(StrictSchema):
    """Strands to be held together."""

    builds = StrandsQuery

    strands = Items(Nested(StrandSchema), "One or more.", required=True, least=1, most=MAX_STRANDS)


class StrandInCombinationSchema(StrictSchema):
    """One strand of a combination."""

    name = Prose("As sent.")
    metres_per_100g = Number("Of this strand.", required=True, minimum=0, unit="metres")
    tex = Number("Grams per 1000 m.", required=True, minimum=0)
    weight_share = Number("Its part of the weight.", required=True, minimum=0)


class YarnCategoryMatchSchema(StrictSchema):
    """A row of a published chart that the thickness falls in."""

    source = Prose("The chart's key in `sources`.", required=True)
    category = Whole("Of the standard, 0 to 7.", required=True, minimum=0)
    standard_name = Prose("Of that category.", required=True)
    name = Prose("The chart's own name.", required=True)
    between = Flag("Whether the chart leaves a gap there, and this is the nearer row.", required=True)


class StrandCombinationsSchema(ComputedSchema):
    """What the strands give together."""

    metres_per_100g = Number("Of all strands together.", required=True, minimum=0, unit="metres")
    tex = Number("Grams per 1000 m: the sum of the strands'.", required=True, minimum=0)
    strands = Items(Nested(StrandInCombinationSchema), "In the order of the request.", required=True)
    categories = Items(
        Nested(YarnCategoryMatchSchema), "By every built-in chart; charts overlap and differ.", required=True
    )
    sources = Items(Nested(SourceSchema), "Of the charts.", required=True)


class YarnSchema(StrictSchema):
    """A yarn, or strands held together."""

    builds = Yarn

    metres_per_100g = Number(
        "Of all strands together.", required=True, minimum=1, maximum=100_000, unit="metres"
    )
    ball_grams = Number("The weight of a ball.", minimum=1, maximum=10_000, default=50, unit="grams")
    swatch_grams = Number(
        "The weight of a swatch: of this colour's yarn in it.", minimum=0.01, maximum=10_000, unit="grams"
    )
    swatch_stitches = Whole(
        "All stitches of this colour in that swatch.",
        minimum=1,
        maximum=MAX_GARMENT_STITCHES,
        unit="stitches",
    )
    hex = Hex("Its sRGB colour, to compare lightness.")


class SizeStitchesSchema(StrictSchema):
    """The stitches of one size."""

    builds = SizeStitches

    label = Text("The size's name, unique in the request.", required=True, most=40)
    stitches = Mapping(
        Text("The name of a yarn.", most=60),
        Whole(minimum=0, maximum=MAX_GARMENT_STITCHES, unit="stitches"),
        "Stitches worked in each yarn, as `POST /v1/chart-placements` counts them.",
        required=True,
        least=1,
        most=MAX_YARNS,
    )


class YarnEstimatesRequestSchema(RequestSchema):
    """Yarns, and the stitches of every size."""

    builds = YarnEstimatesQuery

    yarns = Mapping(
        Text("A name for the yarn.", most=60),
        Nested(YarnSchema),
        "The yarns by name.",
        required=True,
        least=1,
        most=MAX_YARNS,
    )
    gauge = Nested(GaugeSchema, "Of the fabric; required where a yarn has no weighed swatch.")
    margin = Number("Bought beyond what is needed, as a part of it.", minimum=0, maximum=2, default=0.1)
    sizes = Items(
        Nested(SizeStitchesSchema), "In the order of the answer.", required=True, least=1, most=MAX_SIZES
    )


class GramsSchema(StrictSchema):
    """Grams: alike where they were measured, a range where they are an estimate."""

    low = Number(required=True, minimum=0, unit="grams")
    likely = Number(required=True, minimum=0, unit="grams")
    high = Number(required=True, minimum=0, unit="grams")


class YarnNeedSchema(StrictSchema):
    """How much of one yarn is needed."""

    stitches = Whole("Worked in it.", required=True, minimum=0, unit="stitches")
    basis = Choice("measured", "estimated", required=True, description="How the amount is known.")
    grams = Nested(GramsSchema, required=True)
    metres = Number("The likely length.", required=True, minimum=0, unit="metres")
    balls = Whole("To buy, with the margin.", required=True, minimum=0, unit="balls")


class NamedYarnNeedSchema(YarnNeedSchema):
    """How much of one yarn a size needs."""

    yarn = Prose("Its name.", required=True)


class SizeYarnSchema(StrictSchema):
    """The yarns of one size."""

    label = Prose("As sent.", required=True)
    yarns = Items(Nested(NamedYarnNeedSchema), "In the order of their names.", required=True)


class ContrastSchema(StrictSchema):
    """Two yarns side by side. They read apart when their lightness differs, whatever their hues."""

    yarns = Items(Prose(), "Their names.", required=True)
    lightness = Items(
        Number(minimum=0, maximum=100), "CIE 1976 L* of each, 0 for black to 100 for white.", required=True
    )
    difference = Number("By how much they differ.", required=True, minimum=0)


class YarnEstimatesSchema(ComputedSchema):
    """The yarn of every size, in the order of the request."""

    sizes = Items(Nested(SizeYarnSchema), "One per size.", required=True)
    runs = Mapping(
        Text("The name of a yarn."),
        Prose(),
        "Balls to buy by yarn, as a size run; a dash where a size has none of it.",
        required=True,
        most=MAX_YARNS,
    )
    contrasts = Items(Nested(ContrastSchema), "Every two yarns whose `hex` was sent.", required=True)
