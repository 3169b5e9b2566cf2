"""Requests and answers about gauge."""

from __future__ import annotations

from typing import Any, get_args

from grading_core.conversions import Conversion, ConversionRequest, Conversions, Item, Kind
from grading_core.fraction import Fraction
from grading_core.gauge import Comparison, Gauge, Swatch
from grading_core.units import cm_per_inch
from service.schemas.base import StrictSchema, exactly_one_of
from service.schemas.common import (
    MAX_COUNT,
    MAX_LENGTH,
    ComputedSchema,
    CountRuleSchema,
    GaugeSchema,
    LengthSchema,
    RequestSchema,
)
from service.schemas.containers import Items, Nested
from service.schemas.fields import Choice, Length, Number, Spoken, Text, Whole
from service.schemas.writing import Write

KINDS: tuple[Kind, ...] = get_args(Kind)

MAX_ITEMS = 500


class SwatchSchema(StrictSchema):
    """What is counted over a span, to two decimals."""

    record = Swatch

    stitches = Number(required=True, minimum=0, unit="stitches", places=2)
    rows = Number(required=True, minimum=0, unit="rows", places=2)


class OverFourInches(Nested):
    """What a gauge counts over 4 in, by the convention of the request."""

    def writer(self) -> Write:
        """Writes the counts."""
        write = super().writer()
        return lambda gauge, length: write(gauge.swatch(4 * cm_per_inch(length.convention)), length)


class UsedGaugeSchema(StrictSchema):
    """One gauge over the usual spans."""

    record = Gauge

    per_10_cm = Nested(SwatchSchema, required=True, source=lambda gauge: gauge.swatch(Fraction(10)))
    per_4_in = OverFourInches(SwatchSchema, "By `inch_convention`.", required=True, source=lambda gauge: gauge)


class ConversionItemSchema(StrictSchema):
    """One thing to convert: a width, a length along the rows, or a written count."""

    example = '{"across": 107}'

    record = Item
    one_amount = exactly_one_of(*KINDS)

    name = Text("Comes back with the answer.", most=100)
    across = Length("A width, across the stitches.", above=0, maximum=MAX_LENGTH)
    along = Length("A length, along the rows.", above=0, maximum=MAX_LENGTH)
    stitches = Whole("A written count of stitches.", minimum=1, maximum=MAX_COUNT, unit="stitches")
    rows = Whole("A written count of rows or rounds.", minimum=1, maximum=MAX_COUNT, unit="rows")
    count_rule = Nested(CountRuleSchema, "How the computed or the regauged count is rounded.")

    def build(self, loaded: dict[str, Any]) -> Item:
        """The item, its amount under what it is an amount of."""
        kind = next(kind for kind in KINDS if kind in loaded)
        return Item(kind, Fraction(loaded.pop(kind)), **loaded)


class GaugeConversionsRequestSchema(RequestSchema):
    """Lengths and counts to convert at a gauge."""

    record = ConversionRequest

    gauge = Nested(GaugeSchema, "The fabric's own gauge.", required=True)
    pattern_gauge = Nested(GaugeSchema, "The gauge for which written counts are meant, where there is another one.")
    items = Items(Nested(ConversionItemSchema), "What to convert.", least=1, most=MAX_ITEMS, required=True)


class ConvertedItemSchema(StrictSchema):
    """One item's answer, with `stitches` or `rows`."""

    record = Conversion
    one_count = exactly_one_of("stitches", "rows")

    name = Text("As sent.", most=100)
    stitches = Whole("As computed, or as written.", minimum=0, unit="stitches")
    rows = Whole("As computed, or as written.", minimum=0, unit="rows")
    exact = Number("The count before rounding, to four decimals; for a length.", minimum=0, places=4)
    length = Nested(LengthSchema, "What the count makes at `gauge`.", required=True)
    difference = Nested(LengthSchema, "`length` minus the length asked for, or minus `pattern_length`.")
    pattern_length = Nested(LengthSchema, "What a written count makes at `pattern_gauge`.")
    regauged = Whole("The count that keeps `pattern_length` at `gauge`.", minimum=0)
    regauged_length = Nested(LengthSchema, "What the regauged count makes at `gauge`.")
    regauged_difference = Nested(LengthSchema, "`regauged_length` minus `pattern_length`.")


class GaugeComparisonSchema(StrictSchema):
    """The fabric's gauge against the pattern's."""

    record = Comparison

    stitches_ratio = Number("Own stitches per length over the pattern's, to four decimals.", required=True, places=4)
    rows_ratio = Number("Likewise by rows.", required=True, places=4)
    fabric = Choice(required=True, description="Judged by stitches.")
    needle = Choice(required=True, description="What to try.")
    advice = Spoken("The same in a sentence, in the language asked.", required=True)


class GaugeConversionsSchema(ComputedSchema):
    """The converted items, in the order of the request."""

    record = Conversions

    items = Items(Nested(ConvertedItemSchema), "One per item.", required=True, least=1, most=MAX_ITEMS)
    comparison = Nested(GaugeComparisonSchema, "Where `pattern_gauge` was sent.")
