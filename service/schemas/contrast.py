"""Requests and answers about how colours read beside each other."""

from __future__ import annotations

from grading_core.chart.contrast import MAX_PLACES
from grading_core.chart.grid import MAX_COLOURS, MAX_COLUMNS, MAX_ROWS
from grading_core.chart.lightness import READS_APART, READS_CLEARLY
from grading_core.chart.request import ContrastRequest, ToldColour
from grading_core.chart.result import ColourContrasts, ColourPair, ComparedColour, Meetings, MeetingStitch
from service.schemas.base import StrictSchema
from service.schemas.chart_request import ChartSchema
from service.schemas.common import ComputedSchema
from service.schemas.containers import Items, Mapping, Nested
from service.schemas.fields import Choice, Hex, Number, Prose, Text, Whole

_MOST_PAIRS = MAX_COLOURS * (MAX_COLOURS - 1) // 2


class ToldColourSchema(StrictSchema):
    """A colour that is told by its hex."""

    example = '{"name": "sand", "hex": "#e8d9b5"}'

    record = ToldColour

    name = Text("For people.", required=True, most=60)
    hex = Hex("Its sRGB value as six hexadecimal digits after #.", required=True)


class ColourContrastsRequestSchema(StrictSchema):
    """Colours, and a chart in which they are worked."""

    record = ContrastRequest

    colours = Mapping(
        Text("A symbol: the character that stands for the colour.", least=1, most=1),
        Nested(ToldColourSchema),
        "Each symbol's colour.",
        required=True,
        least=1,
        most=MAX_COLOURS,
        example='{".": {"name": "sand", "hex": "#e8d9b5"}, "#": {"name": "rust", "hex": "#a0522d"}}',
    )
    chart = Nested(
        ChartSchema,
        "Each of its symbols is one of `colours` above, and has the name and hex that it has there: its own `colours` "
        "may be left out, or stay as they are while others are tried. Those of `png` only tell its pixels; without "
        "them the symbols are A, B, C ... as `POST /v1/charts` gives them.",
    )


class ComparedColourSchema(StrictSchema):
    """A colour by its lightness."""

    record = ComparedColour

    name = Prose("As sent.", required=True)
    hex = Prose("As sent, in small letters.", required=True)
    lightness = Number("CIE 1976 L*, 0 for black to 100 for white.", required=True, minimum=0, maximum=100, places=1)
    grey = Prose("The sRGB grey of the same lightness: what a grey copy shows.", required=True)


class MeetingStitchSchema(StrictSchema):
    """A stitch whose neighbour has the other colour."""

    record = MeetingStitch

    row = Whole("Of the chart; row 1 is worked first.", required=True, minimum=1, maximum=MAX_ROWS)
    column = Whole("Of the chart, counted from the right.", required=True, minimum=1, maximum=MAX_COLUMNS)
    direction = Choice(
        required=True,
        description="Where the neighbour lies: in the next column, which after the last is column 1, or in the next "
        "row, which after the last is row 1.",
    )


class MeetingsSchema(StrictSchema):
    """How often stitches of two colours are neighbours in one repeat of the chart, and where."""

    record = Meetings

    side_by_side = Whole("Neighbours within a row.", required=True, minimum=0)
    one_above_other = Whole(
        "Neighbours in two rows that follow one another; the last and the first do unless `repeat` is `once`.",
        required=True,
        minimum=0,
    )
    places = Items(
        Nested(MeetingStitchSchema),
        f"The first {MAX_PLACES} of them, row by row as they are worked.",
        required=True,
        most=MAX_PLACES,
    )


class ColourPairSchema(StrictSchema):
    """Two colours beside each other."""

    record = ColourPair

    colours = Items(Prose(), "Their symbols.", required=True, least=2, most=2)
    difference = Number("By how much their lightness differs.", required=True, minimum=0, maximum=100, places=1)
    reads = Choice(
        required=True,
        description=f"Whether they read apart: clearly from a difference of {READS_CLEARLY} on, hardly below one of "
        f"{READS_APART}.",
    )
    meetings = Nested(MeetingsSchema, "Where a pair that hardly reads apart meets in the chart, if one was sent.")


class ColourContrastsSchema(ComputedSchema):
    """How every two colours read beside each other."""

    record = ColourContrasts

    colours = Mapping(
        Text("A symbol."), Nested(ComparedColourSchema), "Each symbol's colour.", required=True, most=MAX_COLOURS
    )
    pairs = Items(Nested(ColourPairSchema), "Every two colours.", required=True, most=_MOST_PAIRS)
