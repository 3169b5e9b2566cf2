"""Answers about colourwork charts."""

from __future__ import annotations

from grading_core.chart.grid import MAX_COLOURS, MAX_COLUMNS, MAX_ROWS, ChartDescription
from grading_core.chart.result import (
    BodyPlacement,
    ByPart,
    ChartPlacements,
    ColourStitches,
    DepthChange,
    FloatEnd,
    LongestFloat,
    Motifs,
    SectionChanges,
    SectionMotifs,
    SizePlacement,
    SleevePlacement,
    Span,
)
from grading_core.limits import MAX_ROUNDS
from service.schemas.base import StrictSchema
from service.schemas.chart_request import ChartColourSchema, ChartSchema, Column
from service.schemas.chart_rounds import (
    CHART_ROUNDS,
    BodyRoundSchema,
    Rounds,
    SleeveRoundSchema,
    YokeRoundSchema,
    body_rounds,
    column_field,
    round_field,
    sleeve_rounds,
    yoke_rounds,
)
from service.schemas.common import MAX_SIZES, ComputedSchema, LengthSchema
from service.schemas.containers import Items, Mapping, Nested
from service.schemas.fields import Choice, Prose, Text, Whole


def _rounds_field(description: str, required: bool = True) -> Items:
    return Items(Whole(minimum=1), description, required=required, most=MAX_ROUNDS)


class SectionChangesSchema(StrictSchema):
    """Per section, the rounds whose first column differs from that of the round before."""

    record = SectionChanges

    back = _rounds_field("Of the back.")
    front = _rounds_field("Of the front.")
    sleeve = _rounds_field("Of each sleeve; none in a body.", required=False)


class MotifsSchema(StrictSchema):
    """Whole motifs side by side in a section, from a round on."""

    record = Motifs

    motifs = Whole("How many.", required=True, minimum=0, unit="motifs")
    from_round = Whole("Counted from 1 in its part.", required=True, minimum=1)


def _motifs_field(description: str, required: bool = True) -> Items:
    return Items(Nested(MotifsSchema), description, required=required, most=MAX_ROUNDS)


class SectionMotifsSchema(StrictSchema):
    """Where partial motifs are plain: each section's whole motifs, wherever their number changes."""

    record = SectionMotifs

    back = _motifs_field("Of the back.")
    front = _motifs_field("Of the front.")
    sleeve = _motifs_field("Of each sleeve; none in a body.", required=False)


def _last_row_field() -> Whole:
    return Whole(
        "The chart row of the last round; null where that works none.", required=True, nullable=True, minimum=1
    )


def _plain_field() -> Whole:
    return Whole("Rounds after a chart that is worked once.", required=True, minimum=0, unit="rounds")


class BodyPlacementSchema(StrictSchema):
    """The body below the split."""

    record = BodyPlacement

    rounds = Rounds(BodyRoundSchema, body_rounds, "Every round.", required=True)
    changes = Nested(SectionChangesSchema, required=True)
    motifs = Nested(SectionMotifsSchema)
    last_chart_row = _last_row_field()
    plain_rounds = _plain_field()


class SleevePlacementSchema(StrictSchema):
    """Each sleeve below the split."""

    record = SleevePlacement

    rounds = Rounds(SleeveRoundSchema, sleeve_rounds, "Every round.", required=True)
    changes = _rounds_field("The rounds whose first column differs from that of the round before.")
    motifs = _motifs_field(
        "Where partial motifs are plain: the whole motifs, wherever their number changes.", required=False
    )
    last_chart_row = _last_row_field()
    plain_rounds = _plain_field()


class RoundsAndLengthSchema(StrictSchema):
    """Rounds, and the length that they make."""

    record = Span

    rounds = Whole(required=True, minimum=0, unit="rounds")
    length = Nested(LengthSchema, required=True)


class ChartEndsAtSplitSchema(StrictSchema):
    """By how much the yoke's depth would have to change for the split to fall on the chart's last row."""

    record = DepthChange

    shallower_by = Nested(RoundsAndLengthSchema, "Missing where no such depth holds the whole chart.")
    deeper_by = Nested(RoundsAndLengthSchema, required=True)


class FloatEndSchema(StrictSchema):
    """A stitch that holds a float."""

    record = FloatEnd

    round = round_field()
    section = Choice(required=True, description="Where it lies.")
    column = column_field()


class LongestFloatSchema(StrictSchema):
    """The longest float, the first in working order where several are as long.

    A float is the run of stitches not in a colour between two stitches of that colour, along the strand as it is
    knitted. Rounds are a spiral, so it may begin in the round before; it counts for the round in which it ends.
    """

    record = LongestFloat

    stitches = Whole("That it passes over.", required=True, minimum=1, unit="stitches")
    length = Nested(LengthSchema, required=True)
    part = Choice(required=True)
    round = round_field()
    colour = Prose("The symbol of its strand.", required=True)
    start = Nested(FloatEndSchema, "The stitch from which it comes.", required=True)
    end = Nested(FloatEndSchema, "The stitch to which it goes.", required=True)


class RoundsByPartSchema(StrictSchema):
    """Rounds of each part."""

    record = ByPart

    yoke = _rounds_field("Of the yoke.")
    body = _rounds_field("Of the body.")
    sleeve = _rounds_field("Of each sleeve.")


def _floats_field(description: str) -> Items:
    return Items(Whole(minimum=0, unit="stitches"), description, required=True, most=MAX_ROUNDS)


class FloatsByRoundSchema(StrictSchema):
    """The longest float of every round in stitches, round 1 first; 0 where there is none."""

    record = ByPart

    yoke = _floats_field("Of the yoke.")
    body = _floats_field("Of the body.")
    sleeve = _floats_field("Of each sleeve.")


def _counts_field(part: str) -> Mapping:
    return Mapping(
        Text("A colour's symbol.", least=1, most=1),
        Whole(minimum=0, unit="stitches"),
        f"Each colour's stitches {part}.",
        required=True,
        most=MAX_COLOURS,
    )


class StitchesByColourSchema(StrictSchema):
    """Stitches of each colour, from the very same placement; cast-on, hem, cuffs and neckband are not in it.

    Those of floats are the stitches that a colour's strand is carried behind, between two of its own.
    """

    record = ColourStitches

    total = _counts_field("in all")
    yoke = _counts_field("in the yoke")
    body = _counts_field("in the body")
    sleeves = _counts_field("in both sleeves below the split")


class SizePlacementSchema(StrictSchema):
    """Where the chart lies on one size."""

    record = SizePlacement
    inline = ("progress",)

    label = Prose("As sent.", required=True)
    rounds = Rounds(YokeRoundSchema, yoke_rounds, "Every round of the yoke.", required=True)
    changes = Nested(SectionChangesSchema, "In the yoke.", required=True)
    motifs = Nested(SectionMotifsSchema, "In the yoke.")
    body = Nested(BodyPlacementSchema, required=True)
    sleeve = Nested(SleevePlacementSchema, required=True)
    yoke_chart_rows = Whole(
        "Rows of the chart worked when the yoke ends, every repeat counted.", required=True, minimum=0, unit="rows"
    )
    last_chart_row = _last_row_field()
    rows_left = Whole(
        "Rows that finish the chart, or the repeat that the yoke has begun, in body and sleeve alike.",
        required=True,
        minimum=0,
        unit="rows",
    )
    shortest_body = Nested(
        RoundsAndLengthSchema, "The shortest body that ends with the chart's last row, without hem.", required=True
    )
    shortest_sleeve = Nested(
        RoundsAndLengthSchema, "The shortest sleeve that ends with it, without cuff.", required=True
    )
    chart_ends_at_split = Nested(ChartEndsAtSplitSchema, required=True)
    longest_float = Nested(
        LongestFloatSchema, "Null where no colour pauses between two of its stitches.", required=True, nullable=True
    )
    floats_by_round = Nested(FloatsByRoundSchema, required=True, part=CHART_ROUNDS)
    long_float_rounds = Nested(RoundsByPartSchema, "Rounds with a float longer than `float_limit`.", required=True)
    rounds_over_two_colours = Nested(
        RoundsByPartSchema, "Rounds that use more than two colours at once.", required=True
    )
    stitches_by_colour = Nested(StitchesByColourSchema, required=True)
    float_stitches_by_colour = Nested(
        StitchesByColourSchema, "The stitches that each colour's strand is carried behind.", required=True
    )


def _symmetry_field() -> Choice:
    return Choice(required=True, description="What the chart, repeated across, is mirrored about.")


def _axes_field() -> Items:
    return Items(
        Column("A column, or a half between two columns.", minimum=1),
        "Every anchor that makes a section's two sides mirror images.",
        required=True,
        most=2 * MAX_COLUMNS,
    )


class DrawnChartSchema(StrictSchema):
    """The chart itself."""

    record = ChartDescription

    columns = Whole("Its width.", required=True, minimum=1, maximum=MAX_COLUMNS, unit="columns", source="chart.width")
    rows = Whole("Its height.", required=True, minimum=1, maximum=MAX_ROWS, unit="rows", source="chart.height")
    colours = Mapping(
        Text("A symbol.", least=1, most=1),
        Nested(ChartColourSchema),
        "Each symbol's colour.",
        required=True,
        most=MAX_COLOURS,
        source="chart.colours",
    )
    symmetry = _symmetry_field()
    mirror_axes = _axes_field()


class ReadChartSchema(ComputedSchema):
    """A chart read from a picture, and what it is mirrored about."""

    record = ChartDescription

    chart = Nested(ChartSchema, "As the other operations take it.", required=True)
    symmetry = _symmetry_field()
    mirror_axes = _axes_field()


class ChartPlacementsSchema(ComputedSchema):
    """Where the chart lies on every size, in the order of the request."""

    record = ChartPlacements

    chart = Nested(DrawnChartSchema, required=True)
    sizes = Items(Nested(SizePlacementSchema), "One per size.", required=True, least=1, most=MAX_SIZES)
