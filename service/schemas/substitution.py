"""Requests and answers about a yarn in place of a pattern's."""

from __future__ import annotations

from grading_core.yarn.request import SizeAmount, SubstitutionRequest, Yarn
from grading_core.yarn.result import AmountRuns, ComparedYarn, SizeSubstitute, StrandNeed, Substitution, YarnComparison
from service.schemas.base import StrictSchema, exactly_one_of
from service.schemas.common import MAX_LABEL, MAX_SIZES, AnswerSizesSchema, ComputedSchema, GaugeSchema
from service.schemas.containers import Items, Nested
from service.schemas.fields import Choice, Number, Prose, Text, Whole
from service.schemas.gauge import UsedGaugeSchema
from service.schemas.printing import PrintedRequestSchema
from service.schemas.standards import SourceSchema
from service.schemas.strands import YarnCategoryMatchSchema
from service.schemas.yarn import HeldYarnFieldsSchema

MAX_AMOUNT = 1_000_000
"""Of yarn in one size, however it is told."""


class HeldYarnSchema(HeldYarnFieldsSchema):
    """A yarn, or strands held together, as its label tells it."""

    example = '{"metres_per_100g": 400}'

    record = Yarn
    one_thickness = exactly_one_of("metres_per_100g", "strands")


class SizeAmountSchema(StrictSchema):
    """What one size needs, as the pattern prints it."""

    example = '{"label": "S", "metres": 1000}'

    record = SizeAmount
    one_amount = exactly_one_of("metres", "yards", "grams", "balls")

    label = Text("The size's name, unique in the request.", required=True, most=MAX_LABEL)
    metres = Number("Of all strands together.", minimum=0, maximum=MAX_AMOUNT, unit="metres")
    yards = Number("Likewise, 0.9144 m each.", minimum=0, maximum=MAX_AMOUNT, unit="yards")
    grams = Number("Of all strands together.", minimum=0, maximum=MAX_AMOUNT, unit="grams")
    balls = Number("Of the pattern yarn's first strand.", minimum=0, maximum=MAX_AMOUNT, unit="balls")


class YarnSubstitutionsRequestSchema(AnswerSizesSchema, PrintedRequestSchema):
    """A pattern's yarn, another in its place, and what every size needs."""

    record = SubstitutionRequest

    pattern_yarn = Nested(HeldYarnSchema, "What the pattern is written for.", required=True)
    own_yarn = Nested(HeldYarnSchema, "What is to take its place.", required=True)
    gauge = Nested(GaugeSchema, "The pattern's, for the likely gauge of the other yarn.")
    margin = Number(
        "Bought beyond what is needed, as a part of it: none unless sent, since the amounts that patterns print have "
        "one already.",
        minimum=0,
        maximum=2,
    )
    sizes = Items(Nested(SizeAmountSchema), "In the order of the answer.", required=True, least=1, most=MAX_SIZES)


class StrandSubstituteSchema(StrictSchema):
    """How much of one strand is needed; it is as long as all of them."""

    record = StrandNeed

    strand = Whole("Its place, from 1.", required=True, minimum=1)
    name = Prose("As sent.")
    grams = Number(required=True, minimum=0, unit="grams", places=1, source="grams.likely")
    ball_grams = Number("The weight of a ball.", required=True, minimum=0, unit="grams", places=2)
    balls = Whole("To buy, with the margin.", required=True, minimum=0, unit="balls")


class SizeSubstituteSchema(StrictSchema):
    """How much of the other yarn one size needs."""

    record = SizeSubstitute

    label = Prose("As sent.", required=True)
    metres = Number("As many as of the pattern's yarn.", required=True, minimum=0, unit="metres", places=1)
    grams = Number("Of all strands together.", required=True, minimum=0, unit="grams", places=1)
    strands = Items(Nested(StrandSubstituteSchema), "Each strand.", required=True)


class AmountRunsSchema(StrictSchema):
    """The amounts as size runs; metres and grams to the next whole one."""

    record = AmountRuns

    metres = Prose(required=True)
    grams = Prose(required=True)
    balls = Items(Prose(), "Of each strand, to buy.", required=True)


class ComparedYarnSchema(StrictSchema):
    """How thick a yarn is, all its strands together."""

    record = ComparedYarn

    metres_per_100g = Number(required=True, minimum=0, unit="metres", places=2)
    tex = Number("Grams per 1000 m.", required=True, minimum=0, places=2)
    categories = Items(
        Nested(YarnCategoryMatchSchema), "By every built-in chart; charts overlap and differ.", required=True
    )


class YarnComparisonSchema(StrictSchema):
    """The other yarn beside the pattern's."""

    record = YarnComparison

    pattern = Nested(ComparedYarnSchema, required=True)
    own = Nested(ComparedYarnSchema, required=True)
    thickness = Choice(required=True, description="How the other yarn is beside the pattern's.")
    tex_ratio = Number("Its tex over that of the pattern's: above 1 it is thicker.", required=True, minimum=0, places=4)
    likely_gauge = Nested(
        UsedGaugeSchema,
        "At which it makes as firm a fabric, where `gauge` is sent: stitches and rows go as one over the square root "
        "of the tex. A start for a swatch.",
    )


class YarnSubstitutionsSchema(ComputedSchema):
    """How much of another yarn every size needs, in the order of the request, and how the two compare."""

    record = Substitution

    sizes = Items(Nested(SizeSubstituteSchema), "One per size.", required=True)
    runs = Nested(AmountRunsSchema, required=True)
    comparison = Nested(YarnComparisonSchema, required=True)
    sources = Items(Nested(SourceSchema), "Of the charts and the standard.", required=True)
