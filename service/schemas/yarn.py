"""Requests and answers about the yarn of every size."""

from __future__ import annotations

from typing import get_args

from grading_core.yarn.amounts import Purpose
from grading_core.yarn.request import SizeStitches, Yarn, YarnEstimateRequest
from grading_core.yarn.result import Estimate, Need, SizeNeeds, StrandNeed, YarnEstimates
from service.schemas.base import StrictSchema, exactly_one_of
from service.schemas.common import MAX_LABEL, MAX_SIZES, AnswerSizesSchema, ComputedSchema, GaugeSchema
from service.schemas.containers import Items, Mapping, Nested
from service.schemas.fields import Choice, Number, Prose, Text, Whole
from service.schemas.printing import PrintedRequestSchema
from service.schemas.strands import StrandSchema

MAX_HELD = 6
"""Strands of one yarn of many in many sizes, each of which is answered; nobody holds more."""

MAX_YARNS = 62

MAX_GARMENT_STITCHES = 10_000_000


class HeldYarnFieldsSchema(StrictSchema):
    """How thick a yarn is, and its balls: the fields that are the same wherever one is sent."""

    metres_per_100g = Number("Of all strands together.", minimum=1, maximum=100_000, unit="metres")
    strands = Items(
        Nested(StrandSchema),
        "The strands held together, each counted in balls of its own.",
        least=1,
        most=MAX_HELD,
        example='[{"metres": 200, "grams": 50}]',
    )
    ball_grams = Number(
        "The weight of a ball of every strand that has no `ball_grams` of its own. Unless sent it is what the strand's "
        "`metres` weigh, and 50 where its thickness is told in another way.",
        minimum=1,
        maximum=10_000,
        unit="grams",
    )


class YarnFieldsSchema(HeldYarnFieldsSchema):
    """A yarn, or strands held together, with a swatch."""

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

    record = Estimate

    low = Number(required=True, minimum=0, unit="grams", places=1)
    likely = Number(required=True, minimum=0, unit="grams", places=1)
    high = Number(required=True, minimum=0, unit="grams", places=1)


class StrandNeedSchema(StrictSchema):
    """How much of one strand is needed; it is as long as all of them."""

    record = StrandNeed

    strand = Whole("Its place, from 1.", required=True, minimum=1)
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
    metres = Number("The likely length.", required=True, minimum=0, unit="metres", places=1, source="likely_metres")
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
