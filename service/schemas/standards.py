"""Answers about the built-in published tables."""

from __future__ import annotations

from grading_core.sizes.grading import CountUnit
from grading_core.standards import BODY_TABLES
from grading_core.standards.body import MEASUREMENTS
from service.schemas.base import StrictSchema
from service.schemas.common import AnswerSchema, LengthSchema
from service.schemas.fields import Choice, Flag, Items, Mapping, Nested, Number, Text, Whole

_COUNT_UNITS: tuple[CountUnit, ...] = ("stitches", "rows")


class BodyTableParametersSchema(StrictSchema):
    """Which body table."""

    name = Choice(*BODY_TABLES, required=True, description="The table's name.")


class RangeSchema(StrictSchema):
    """A published figure: a range, a single number (both ends alike), or a range open at the end that is missing."""

    low = Number("The lower end.")
    high = Number("The upper end.")


class SourceSchema(StrictSchema):
    """A publication."""

    key = Text("What rows name it by.", required=True)
    name = Text("The publication.", required=True, most=500)
    edition = Text("Which edition, and how it was read.", required=True, most=1000)
    credit = Text("The credit line that the publisher asks for.", most=500)


class SourcedSchema(AnswerSchema):
    """Base of the tables: every row names its source by key."""

    sources = Items(Nested(SourceSchema), "The publications that rows name.", required=True, most=50)


class MeasurementMeaningSchema(StrictSchema):
    """A measurement that the service knows."""

    name = Choice(*MEASUREMENTS, required=True, description="As requests name it.")
    meaning = Text("How it is taken.", required=True, most=500)
    counted_in = Choice(*_COUNT_UNITS, required=True, description="Stitches across, rows along.")


class BodyTableSummarySchema(StrictSchema):
    """A body table in brief."""

    name = Text("As requests name it.", required=True)
    title = Text("In words.", required=True)
    labels = Items(Text(most=40), "Its sizes, smallest first.", required=True, most=40)
    href = Text("Where the table is.", required=True)


class TableLinkSchema(StrictSchema):
    """Another table."""

    title = Text("In words.", required=True)
    href = Text("Where it is.", required=True)


class StandardsSchema(AnswerSchema):
    """What is built in."""

    body_tables = Items(Nested(BodyTableSummarySchema), "Body measurements by size.", required=True, most=20)
    measurements = Items(
        Nested(MeasurementMeaningSchema),
        "The measurements that tables and requests have.",
        required=True,
        most=50,
    )
    other_tables = Items(Nested(TableLinkSchema), "The other tables of the trade.", required=True, most=20)


class BodyRowSchema(StrictSchema):
    """One measurement of one size."""

    inch = Nested(RangeSchema, "Inches as published; where they are, they count.")
    cm = Nested(RangeSchema, "Centimetres as published.")
    middle = Nested(
        LengthSchema, "What counts unless a request says `within`, exactly converted.", required=True
    )
    origin = Choice(
        "published",
        "derived",
        "estimated",
        required=True,
        description="Published in the size chart or another chart of the trade; derived from a survey; or an "
        "estimate where no publication reaches.",
    )
    source = Text("The key of its source.", required=True)
    note = Text("A contradiction and how it was resolved, or how the figure was made.", most=1000)


class BodySizeSchema(StrictSchema):
    """One size of a body table."""

    label = Text("The size.", required=True, most=40)
    measurements = Mapping(
        Choice(*MEASUREMENTS), Nested(BodyRowSchema), "By name.", required=True, most=len(MEASUREMENTS)
    )


class BodyTableSchema(SourcedSchema):
    """A body table as published, in inches and centimetres."""

    name = Text("As requests name it.", required=True)
    title = Text("In words.", required=True)
    sizes = Items(Nested(BodySizeSchema), "Smallest first.", required=True, most=40)
    notes = Items(Text(most=1000), "What holds for the table as a whole.", required=True, most=20)


class FitBandSchema(StrictSchema):
    """A band of ease at the bust or chest."""

    fit = Text("Its name.", required=True)
    inch = Nested(RangeSchema, "As published.", required=True)
    cm = Nested(RangeSchema, "As published.", required=True)
    current = Flag("Whether it is of the edition that names fits in answers.", required=True)
    source = Text("The key of its source.", required=True)


class FitsSchema(SourcedSchema):
    """How a garment sits, by its ease."""

    bands = Items(Nested(FitBandSchema), "Per edition, closest first.", required=True, most=50)
    notes = Items(Text(most=1000), "How gaps between bands are resolved.", required=True, most=20)


class HeadSchema(StrictSchema):
    """The head girth of an age group."""

    group = Text("The age group.", required=True)
    inch = Nested(RangeSchema, "As published.", required=True)
    source = Text("The key of its source.", required=True)


class HeadsSchema(SourcedSchema):
    """Head girth by age group. No centimetres were published."""

    heads = Items(Nested(HeadSchema), "Youngest first.", required=True, most=50)


class NeedleSchema(StrictSchema):
    """One needle size."""

    mm = Number("The diameter.", required=True, unit="mm")
    us = Text("The US number; null where it has none.", required=True, nullable=True)
    uk = Text("The old UK and Canadian number; null where it has none.", required=True, nullable=True)
    source = Text("The key of its source.", required=True)
    note = Text("Where charts disagree.", most=500)


class NeedlesSchema(SourcedSchema):
    """Knitting needle sizes."""

    needles = Items(Nested(NeedleSchema), "Thinnest first.", required=True, most=100)


class NeedleNumbersSchema(StrictSchema):
    """A range of US needle numbers."""

    low = Text("The first; missing where the range is open.")
    high = Text("The last; missing where the range is open.")


class YarnCategorySchema(StrictSchema):
    """A category of the standard."""

    category = Whole("0 to 7, thinnest first.", required=True)
    name = Text("As published.", required=True)
    yarn_types = Text("The trade's names.", required=True, most=500)
    stitches_per_4_inches = Nested(RangeSchema, "Of stockinette.", required=True)
    needle_mm = Nested(RangeSchema, "Recommended.", required=True)
    needle_us = Nested(NeedleNumbersSchema, "The same in US numbers.", required=True)
    source = Text("The key of its source.", required=True)
    note = Text("Where editions disagree.", most=500)


class YarnThicknessSchema(StrictSchema):
    """One row of a chart of yarn thickness."""

    category = Whole("Of the standard.", required=True)
    name = Text("The chart's own.", required=True)
    metres_per_100g = Nested(RangeSchema, "As published, or converted from `yards_per_pound`.", required=True)
    wraps_per_inch = Nested(RangeSchema, "As published.", required=True)
    yards_per_pound = Nested(RangeSchema, "As published, where the chart has them.")


class YarnChartSchema(StrictSchema):
    """A chart that says how thick the yarn of a category is. Charts overlap and disagree; each is whole."""

    source = Text("The key of its source.", required=True)
    rows = Items(Nested(YarnThicknessSchema), "Thinnest first.", required=True, most=50)


class YarnWeightsSchema(SourcedSchema):
    """Yarn weights."""

    categories = Items(Nested(YarnCategorySchema), "Thinnest first.", required=True, most=20)
    charts = Items(Nested(YarnChartSchema), "Metres per 100 g and wraps per inch.", required=True, most=10)
