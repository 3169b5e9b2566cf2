"""Answers about the built-in published tables."""

from __future__ import annotations

from typing import Any, get_args

from grading_core.standards import BODY_TABLES, BodyRow, BodyTable
from grading_core.standards.body import MEANINGS, MEASUREMENTS, BodySize, CountUnit, count_unit
from grading_core.standards.fit import FitBand
from grading_core.standards.heads import HeadRow
from grading_core.standards.needles import Needle
from grading_core.standards.ranges import Range
from grading_core.standards.sources import Source, Table
from grading_core.standards.yarn_weights import NeedleNumbers, YarnCategory, YarnChart, YarnThickness, YarnWeights
from service.schemas.base import StrictSchema
from service.schemas.common import MAX_LABEL, MAX_SIZES, AnswerSchema, LengthSchema
from service.schemas.containers import Items, Mapping, Nested
from service.schemas.fields import Choice, Flag, Number, Text, Whole
from service.schemas.printing import PrintParametersSchema
from service.schemas.records import sent_as
from service.schemas.writing import Write

BODY_TABLE_PATH = "/v1/standards/body-tables/{name}"


class Figure(Number):
    """A number as a publication prints it, with every decimal and none to spare."""

    def writer(self) -> Write:
        """Writes the number exactly."""
        return lambda value, _: sent_as(value)


class BodyTableParametersSchema(PrintParametersSchema):
    """Which body table, and how it is printed."""

    name = Choice(*BODY_TABLES, required=True, description="The table's name.")

    def build(self, loaded: dict[str, Any]) -> str:
        """Its name."""
        name: str = loaded["name"]
        return name


class RangeSchema(StrictSchema):
    """A published figure: a range, a single number (both ends alike), or a range open at the end that is missing."""

    record = Range

    low = Figure("The lower end.")
    high = Figure("The upper end.")


class SourceSchema(StrictSchema):
    """A publication."""

    record = Source

    key = Text("What rows name it by.", required=True)
    name = Text("The publication.", required=True, most=500)
    edition = Text("Which edition, and how it was read.", required=True, most=1000)
    credit = Text("The credit line that the publisher asks for.", most=500)


class SourcedSchema(AnswerSchema):
    """Base of the tables: every row names its source by key."""

    sources = Items(Nested(SourceSchema), "The publications that rows name.", required=True, most=50)


class MeasurementMeaningSchema(StrictSchema):
    """A measurement that the service knows."""

    name = Choice(*MEASUREMENTS, required=True, description="As requests name it.", source=str)
    meaning = Text("How it is taken.", required=True, most=500, source=MEANINGS.__getitem__)
    counted_in = Choice(
        *get_args(CountUnit), required=True, description="Stitches across, rows along.", source=count_unit
    )


class BodyTableSummarySchema(StrictSchema):
    """A body table in brief."""

    record = BodyTable

    name = Text("As requests name it.", required=True)
    title = Text("In words.", required=True)
    labels = Items(Text(most=MAX_LABEL), "Its sizes, smallest first.", required=True, most=MAX_SIZES)
    href = Text("Where the table is.", required=True, source=lambda table: BODY_TABLE_PATH.format(name=table.name))


class TableLinkSchema(StrictSchema):
    """Another table."""

    # written from the operation that answers the table
    title = Text("In words.", required=True, source="summary")
    href = Text("Where it is.", required=True, source="path")


class StandardsSchema(AnswerSchema):
    """What is built in."""

    body_tables = Items(Nested(BodyTableSummarySchema), "Body measurements by size.", required=True, most=20)
    measurements = Items(
        Nested(MeasurementMeaningSchema), "The measurements that tables and requests have.", required=True, most=50
    )
    other_tables = Items(Nested(TableLinkSchema), "The other tables of the trade.", required=True, most=20)


class BodyRowSchema(StrictSchema):
    """One measurement of one size."""

    record = BodyRow

    inch = Nested(RangeSchema, "Inches as published; where they are, they count.")
    cm = Nested(RangeSchema, "Centimetres as published.")
    middle = Nested(
        LengthSchema,
        "What counts unless a request says `within`, exactly converted.",
        required=True,
        source=BodyRow.value_cm,
    )
    origin = Choice(
        required=True,
        description="Published in the size chart or another chart of the trade; derived from a survey; or an "
        "estimate where no publication reaches.",
    )
    source = Text("The key of its source.", required=True, source="source.key")
    note = Text("A contradiction and how it was resolved, or how the figure was made.", most=1000)


class BodySizeSchema(StrictSchema):
    """One size of a body table."""

    record = BodySize

    label = Text("The size.", required=True, most=MAX_LABEL)
    measurements = Mapping(
        Choice(*MEASUREMENTS), Nested(BodyRowSchema), "By name.", required=True, most=len(MEASUREMENTS)
    )


class BodyTableSchema(SourcedSchema):
    """A body table as published, in inches and centimetres."""

    record = BodyTable

    name = Text("As requests name it.", required=True)
    title = Text("In words.", required=True)
    sizes = Items(Nested(BodySizeSchema), "Smallest first.", required=True, most=MAX_SIZES)
    notes = Items(Text(most=1000), "What holds for the table as a whole.", required=True, most=20)


class FitBandSchema(StrictSchema):
    """A band of ease at the bust or chest."""

    record = FitBand

    fit = Text("Its name.", required=True)
    inch = Nested(RangeSchema, "As published.", required=True)
    cm = Nested(RangeSchema, "As published.", required=True)
    current = Flag("Whether it is of the edition that names fits in answers.", required=True)
    source = Text("The key of its source.", required=True, source="source.key")


class FitsSchema(SourcedSchema):
    """How a garment sits, by its ease."""

    record = Table

    bands = Items(Nested(FitBandSchema), "Per edition, closest first.", required=True, most=50, source="rows")
    notes = Items(Text(most=1000), "How gaps between bands are resolved.", required=True, most=20)


class HeadSchema(StrictSchema):
    """The head girth of an age group."""

    record = HeadRow

    group = Text("The age group.", required=True)
    inch = Nested(RangeSchema, "As published.", required=True)
    source = Text("The key of its source.", required=True, source="source.key")


class HeadsSchema(SourcedSchema):
    """Head girth by age group. No centimetres were published."""

    record = Table

    heads = Items(Nested(HeadSchema), "Youngest first.", required=True, most=50, source="rows")


class NeedleSchema(StrictSchema):
    """One needle size."""

    record = Needle

    mm = Figure("The diameter.", required=True, unit="mm")
    us = Text("The US number; null where it has none.", required=True, nullable=True)
    uk = Text("The old UK and Canadian number; null where it has none.", required=True, nullable=True)
    source = Text("The key of its source.", required=True, source="source.key")
    note = Text("Where charts disagree.", most=500)


class NeedlesSchema(SourcedSchema):
    """Knitting needle sizes."""

    record = Table

    needles = Items(Nested(NeedleSchema), "Thinnest first.", required=True, most=100, source="rows")


class NeedleNumbersSchema(StrictSchema):
    """A range of US needle numbers."""

    record = NeedleNumbers

    low = Text("The first; missing where the range is open.")
    high = Text("The last; missing where the range is open.")


class YarnCategorySchema(StrictSchema):
    """A category of the standard."""

    record = YarnCategory

    category = Whole("0 to 7, thinnest first.", required=True)
    name = Text("As published.", required=True)
    yarn_types = Text("The trade's names.", required=True, most=500)
    stitches_per_4_inches = Nested(RangeSchema, "Of stockinette.", required=True)
    needle_mm = Nested(RangeSchema, "Recommended.", required=True)
    needle_us = Nested(NeedleNumbersSchema, "The same in US numbers.", required=True)
    source = Text("The key of its source.", required=True, source="source.key")
    note = Text("Where editions disagree.", most=500)


class YarnThicknessSchema(StrictSchema):
    """One row of a chart of yarn thickness."""

    record = YarnThickness

    category = Whole("Of the standard.", required=True)
    name = Text("The chart's own.", required=True)
    metres_per_100g = Nested(RangeSchema, "As published, or converted from `yards_per_pound`.", required=True)
    wraps_per_inch = Nested(RangeSchema, "As published.", required=True)
    yards_per_pound = Nested(RangeSchema, "As published, where the chart has them.")


class YarnChartSchema(StrictSchema):
    """A chart that says how thick the yarn of a category is. Charts overlap and disagree; each is whole."""

    record = YarnChart

    source = Text("The key of its source.", required=True, source="source.key")
    rows = Items(Nested(YarnThicknessSchema), "Thinnest first.", required=True, most=50)


class YarnWeightsSchema(SourcedSchema):
    """Yarn weights."""

    record = YarnWeights

    categories = Items(Nested(YarnCategorySchema), "Thinnest first.", required=True, most=20)
    charts = Items(Nested(YarnChartSchema), "Metres per 100 g and wraps per inch.", required=True, most=10)
