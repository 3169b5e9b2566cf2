"""Requests about colourwork charts."""

from __future__ import annotations

from base64 import b64decode
from collections.abc import Sequence
from typing import Any, ClassVar

from grading_core.chart.grid import MAX_COLOURS, MAX_COLUMNS, MAX_ROWS, Anchor, Chart, Colour
from grading_core.chart.request import (
    BodyShaping,
    ChartPictureRequest,
    ChartRequest,
    ChartSize,
    MinimumWidth,
    SeamStitches,
)
from grading_core.limits import MAX_ROUNDS, MAX_STITCHES
from grading_core.unknown import known, told
from service.charts import chart_of_pixels
from service.flaws import FormError
from service.lengths import LengthWriter
from service.png_chart import MAX_BYTES, read_png
from service.schemas.base import StrictSchema, exactly_one_of
from service.schemas.common import MAX_LABEL, MAX_SIZES, AnswerSizesSchema, GaugeSchema
from service.schemas.containers import Items, Mapping, Nested
from service.schemas.fields import Choice, Describe, Flag, Hex, Number, Text, Whole
from service.schemas.printing import PrintedRequestSchema
from service.schemas.raglan import IncreaseRoundSchema, SectionsSchema
from service.schemas.records import sent_as
from service.schemas.writing import Write


class Base64(Text):
    """A file, written in base64 (RFC 4648, section 4)."""

    def __init__(self, description: str, *, media_type: str, most_bytes: int, **options: Any) -> None:
        self.media_type = media_type
        super().__init__(
            description,
            least=4,
            most=-(-most_bytes // 3) * 4,
            pattern="(?:[A-Za-z0-9+/]{4})*(?:[A-Za-z0-9+/]{2}==|[A-Za-z0-9+/]{3}=)?",
            pattern_detail="base64 with its padding and without line breaks",
            **options,
        )

    def contract(self, describe: Describe) -> dict[str, Any]:
        """The JSON Schema of what the field enforces."""
        return super().contract(describe) | {"contentEncoding": "base64", "contentMediaType": self.media_type}


class Column(Number):
    """A column of a chart, or a half between two columns."""

    def __init__(self, description: str, **options: Any) -> None:
        super().__init__(description, maximum=MAX_COLUMNS + 0.5, **options)

    def writer(self) -> Write:
        """Writes a whole column as a whole number."""
        return lambda column, _: sent_as(column)


class ChartColourSchema(StrictSchema):
    """A colour of a chart."""

    example = '{"name": "sand", "hex": "#e8d9b5"}'

    record = Colour

    name = Text("For people.", required=True, most=60)
    hex = Hex(
        "Its sRGB value as six hexadecimal digits after #: for pictures, to tell the pixels of a PNG, and to warn of "
        "colours that hardly read apart."
    )


class ChartSchema(StrictSchema):
    """A colourwork chart, as it is seen: rows of characters, or a PNG of one pixel a stitch."""

    example = '{"rows": ["..#..", ".###.", "#####"]}'

    record = Chart
    one_drawing = exactly_one_of("rows", "png")

    rows = Items(
        Text(least=1, most=MAX_COLUMNS),
        "One string a row, one character a stitch; the first string is topmost, and the last character of a "
        "string is column 1. All rows are equally long.",
        least=1,
        most=MAX_ROWS,
        example='["..#..", ".###.", "#####"]',
    )
    png = Base64(
        f"A PNG file in base64, one pixel a stitch, of at most {MAX_BYTES // 1024} KiB, {MAX_COLUMNS} x "
        f"{MAX_ROWS} pixels and {MAX_COLOURS} colours; 8 bits a sample, not animated, nothing transparent. Each "
        "pixel's colour has to be the `hex` of one of `colours`. Without `colours` the colours get the symbols "
        "A, B, C ... in the order in which they are met, row by row from the top left.",
        media_type="image/png",
        most_bytes=MAX_BYTES,
    )
    first_row = Choice(description="The end that is worked first: row 1.")
    repeat = Choice(description="Whether the rows are worked again and again, or once and plain after them.")
    colours = Mapping(
        Text("A symbol: the character that stands for the colour.", least=1, most=1),
        Nested(ChartColourSchema),
        "Each symbol's colour. Without it, a symbol of `rows` is its own name, and a colour of `png` is named by "
        "its hex.",
        least=1,
        most=MAX_COLOURS,
        example='{".": {"name": "sand"}}',
    )

    def build(self, loaded: dict[str, Any]) -> Chart:
        """The chart, whichever way it was drawn."""
        png, colours = loaded.pop("png", None), loaded.pop("colours", None)
        if png is None:
            if colours is None:
                colours = told(_named_by_themselves, loaded["rows"])
            return Chart(colours=colours, **loaded)
        try:
            pixels = read_png(b64decode(png))
        except FormError as error:
            raise FormError({"png": error.wrong}) from None
        return chart_of_pixels(pixels, colours, **loaded)

    def write(self, value: Chart, length: LengthWriter) -> dict[str, Any]:
        """The chart as a request would have it that leaves out what is usual."""
        colours = self.fields["colours"]
        assert isinstance(colours, Mapping)
        return {"rows": list(value.rows), "colours": colours.writer()(value.colours, length)}


def _named_by_themselves(rows: Sequence[str]) -> dict[str, Colour]:
    """The colours of rows whose symbols nobody named."""
    return {symbol: Colour(symbol) for symbol in dict.fromkeys("".join(map(known, rows)))}


def _anchor_field(section: str) -> Column:
    return Column(
        f"The column on the centre of {section}; a half lies between two columns.",
        required=True,
        minimum=0.5,
        unit="columns",
    )


class ChartAnchorSchema(StrictSchema):
    """The chart column that sits on the centre of each section.

    A whole number needs an odd count of stitches, a half an even one.
    """

    example = '{"back": 3, "front": 3, "sleeve": 3}'

    record = Anchor

    back = _anchor_field("the back")
    front = _anchor_field("the front")
    sleeve = _anchor_field("each sleeve")


def _width_field(section: str) -> Whole:
    return Whole(f"Of {section}.", minimum=0, maximum=MAX_STITCHES, unit="stitches")


class MinimumWidthSchema(StrictSchema):
    """The stitches, inclusive, from which a section is wide enough for the motif; narrower it stays plain."""

    example = '{"body": 20, "sleeve": 20}'

    record = MinimumWidth

    body = _width_field("the back and the front")
    sleeve = _width_field("each sleeve")


def _seam_field(place: str) -> Whole:
    return Whole(
        f"{place}; unless sent, 1 where the underarm is odd, and where it is even 0, or 2 if they are purled.",
        minimum=0,
        maximum=MAX_STITCHES,
        unit="stitches",
    )


class SeamStitchesSchema(StrictSchema):
    """Plain stitches that break the chart below the split. They are part of the underarm."""

    example = '{"body": 1, "sleeve": 1}'

    record = SeamStitches

    body = _seam_field("At each side of the body")
    sleeve = _seam_field("Under each sleeve")


class BodyShapingSchema(StrictSchema):
    """A body round that changes the body, the same at either side of back and front."""

    example = '{"round": 12, "stitches": -4}'

    record = BodyShaping

    round = Whole("Counted from 1 after the split.", required=True, minimum=1, maximum=MAX_ROUNDS)
    stitches = Whole(
        "Added to the whole body; negative for decreases. A multiple of 4.",
        required=True,
        minimum=-MAX_STITCHES,
        maximum=MAX_STITCHES,
        unit="stitches",
    )


class ChartSizeSchema(StrictSchema):
    """One size: all counts that the chart's place depends on."""

    example = '{"label": "S", "rounds": 60, "neck": {"back": 35, "front": 35, "sleeve": 13}}'

    record = ChartSize

    label = Text("The size's name, unique in the request.", required=True, most=MAX_LABEL)
    rounds = Whole("Rounds of the yoke.", required=True, minimum=1, maximum=MAX_ROUNDS, unit="rounds")
    neck = Nested(SectionsSchema, "The sections at the neck.", required=True)
    increase_rounds = Items(
        Nested(IncreaseRoundSchema),
        "Every yoke round that has an increase, as `POST /v1/raglan-schedules` answers them.",
        most=MAX_ROUNDS,
    )
    underarm = Whole("Stitches cast on at each side at the split.", minimum=0, maximum=MAX_STITCHES, unit="stitches")
    body_rounds = Whole(
        "Rounds of the body below the split, without the hem.", minimum=0, maximum=MAX_ROUNDS, unit="rounds"
    )
    body_shaping = Items(Nested(BodyShapingSchema), "The body rounds that change the body.", most=MAX_ROUNDS)
    sleeve_rounds = Whole(
        "Rounds of each sleeve below the split, without the cuff.", minimum=0, maximum=MAX_ROUNDS, unit="rounds"
    )
    sleeve_decrease_rounds = Items(
        Whole("Counted from 1 after the split.", minimum=1, maximum=MAX_ROUNDS),
        "The sleeve rounds that take two stitches from the sleeve, one at either side of its underarm.",
        most=MAX_ROUNDS,
        example="[12, 24]",
    )


def _symbol_field(stitches: str, default: str) -> Text:
    return Text(f"The symbol of {stitches}; {default} unless sent.", least=1, most=1)


class ChartOptionsSchema(StrictSchema):
    """A chart, and how it is worked whatever the garment's counts are."""

    chart = Nested(ChartSchema, required=True)
    exchange = Items(
        Text(least=1, most=1),
        "Two symbols of the chart that change places in its rows; a colour that is sent beside the rows stays as sent.",
        least=2,
        most=2,
        example='[".", "#"]',
    )
    first_round = Whole(
        "The yoke round that works chart row 1. Later than the yoke's last, it lies in body and sleeve.",
        minimum=1,
        maximum=2 * MAX_ROUNDS,
    )
    minimum_width = Nested(MinimumWidthSchema)
    partial_motifs = Choice(
        description="Whether a motif that a section cuts is worked as far as it goes, or its stitches are worked in "
        "the plain colour until it fits whole."
    )
    motif_columns = Whole(
        "The columns of one motif: from column 1 on so many are a motif, the next so many another, and so on. They "
        "divide the chart's width, which they are unless sent.",
        minimum=1,
        maximum=MAX_COLUMNS,
        unit="columns",
    )
    plain_colour = _symbol_field("plain sections and rounds", "the colour that the chart uses most")
    below_colour = _symbol_field(
        "all that is plain after the last row of a chart that is worked once, of no use if its rows repeat",
        "the plain colour",
    )
    line_colour = _symbol_field("the raglan lines", "the plain colour of the round")
    seam_colour = _symbol_field("the seam stitches", "the plain colour of the round")
    float_limit = Whole(
        "The longest float that needs no word. That about 5 stitches (2.5 cm) need none is common practice.",
        minimum=0,
        maximum=MAX_STITCHES,
        unit="stitches",
    )


class ChartPlacementsRequestSchema(ChartOptionsSchema, AnswerSizesSchema, PrintedRequestSchema):
    """A chart, and the sizes that it is to be placed on."""

    record: ClassVar[type[Any] | None] = ChartRequest

    gauge = Nested(GaugeSchema, "The gauge of the colourwork, measured in the round.", required=True)
    plain_gauge = Nested(GaugeSchema, "Of the rounds before and after the chart, where it is another one.")
    anchor = Nested(ChartAnchorSchema, required=True)
    line_stitches = Whole("Stitches of each of the four raglan lines.", minimum=0, maximum=8, unit="stitches")
    line_to_body = Whole(
        "How many of them go to the body at the split, and the others to the sleeve; the half, rounded down, "
        "unless sent.",
        minimum=0,
        maximum=8,
        unit="stitches",
    )
    seam_stitches = Nested(SeamStitchesSchema)
    seam = Choice(description="How the seam stitches are worked: purled, they stand as a line in the fabric.")
    half_stitch = Choice(
        description="What becomes of a section whose count doesn't agree with its anchor, so that the two lie half a "
        "stitch apart: the request is refused, or the section's centre lies half a stitch before the anchor, and a "
        "warning says so."
    )
    for_children = Flag("Whether the garment is for a baby or a young child, whose fingers long floats can catch.")
    sizes = Items(Nested(ChartSizeSchema), "In the order of the answer.", required=True, least=1, most=MAX_SIZES)


class ChartPictureRequestSchema(ChartPlacementsRequestSchema):
    """A request as for `POST /v1/chart-placements`, and the size to draw."""

    record = ChartPictureRequest
    inline = ("placements",)

    size = Text("The label of the size to draw; the first one unless sent.", most=MAX_LABEL)
