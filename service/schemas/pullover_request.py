"""Requests about whole pullovers."""

from __future__ import annotations

from typing import Any, ClassVar, get_args

from grading_core.chart.grid import MAX_COLOURS
from grading_core.limits import MAX_ROUNDS, MAX_STITCHES
from grading_core.pullover.request import (
    AnswerPart,
    BodyWishes,
    Changes,
    ChartWishes,
    ColourYarn,
    DartWishes,
    Gauges,
    LevelWish,
    NeckWishes,
    PulloverRequest,
    Shares,
    SleeveWishes,
    YarnWishes,
    YokeWishes,
)
from grading_core.pullover.size_run import GIRTHS
from grading_core.unknown import told
from service.schemas.base import StrictSchema, at_most_one_of, exactly_one_of
from service.schemas.chart_request import ChartAnchorSchema, ChartOptionsSchema
from service.schemas.common import MAX_LENGTH, MAX_SIZES, CountRuleSchema, GaugeSchema
from service.schemas.containers import ByType, Items, Mapping, Nested
from service.schemas.edges import BandChangeSchema, BandWishesSchema, RibbedEdgeWishesSchema
from service.schemas.fields import Choice, Flag, Hex, Length, Number, Text, Whole
from service.schemas.printing import PrintedRequestSchema
from service.schemas.raglan import AdjustmentSchema, IncreaseOptionsSchema
from service.schemas.sizing import BodiesSchema, EaseStepsSchema, ease_field
from service.schemas.yarn import YarnFieldsSchema


def _length(description: str = "", **options: Any) -> Length:
    return Length(description, above=0, maximum=MAX_LENGTH, **options)


def _per_size(description: str, **options: Any) -> ByType:
    return ByType(
        f"{description} One length, one per size, or even steps from the first size to the last.",
        number=_length(example="24"),
        items=Items(_length(), least=1, most=MAX_SIZES, example="[22, 23, 24]"),
        record=Nested(EaseStepsSchema),
        type_name="LengthPerSize",
        **options,
    )


def _extra_per_size(description: str) -> ByType:
    length = Length(minimum=0, maximum=MAX_LENGTH, example="3")
    return ByType(
        f"{description} One length, one per size, or even steps from the first size to the last; 0 for none.",
        number=length,
        items=Items(length, least=1, most=MAX_SIZES, example="[0, 2, 3]"),
        record=Nested(EaseStepsSchema),
        type_name="ExtraPerSize",
    )


def _count_rule(of: str) -> Nested:
    return Nested(CountRuleSchema, f"Which counts are permitted for {of}.")


class PulloverGaugesSchema(StrictSchema):
    """The gauges of the fabrics, each measured in the round and blocked; each part uses its own."""

    example = '{"plain": {"stitches": 22, "rows": 31}}'

    record = Gauges

    plain = Nested(GaugeSchema, "Of everything that no other gauge is sent for.", required=True)
    stranded = Nested(GaugeSchema, "Of what is worked from a chart.")
    rib = Nested(GaugeSchema, "Of hem, cuffs and neckband.")


class NeckSharesSchema(StrictSchema):
    """How the neck's stitches without the raglan lines are shared, in any measure: 3, 3 and 1, or 33, 33 and 17."""

    example = '{"back": 3, "front": 3, "sleeve": 1}'

    record = Shares

    back = Number("Of the back.", required=True, minimum=0.01, maximum=1000)
    front = Number("Of the front; not more than the back.", required=True, minimum=0.01, maximum=1000)
    sleeve = Number("Of each sleeve.", required=True, minimum=0.01, maximum=1000)


class NeckWishesSchema(StrictSchema):
    """The neck."""

    example = '{"circumference": 48}'

    record = NeckWishes

    circumference = _per_size(
        "Of the cast-on. Unless sent 31 cm and 16 % of the body's bust, within 33 to 45 % of the finished bust; for "
        "children 50 % of it and for babies 60 to 50 %; three quarters of the head where that is more."
    )
    shares = Nested(NeckSharesSchema)
    count_rule = _count_rule("the cast-on")
    lower_front = Choice(
        description="How the front comes to lie lower than the back: by short rows, by a front drop, by half of each, "
        "or not at all. By 3 to 6 cm for adults and 2 to 3.5 cm for children, by size, where no height is sent."
    )
    raise_height = Length(
        "The height by which short rows raise the back; 0 for none. As `lower_front` has it unless sent, and none "
        "beside a `front_drop` that is sent without `both`.",
        minimum=0,
        maximum=MAX_LENGTH,
    )
    way = Choice(
        description="Whether the cast-on is joined first and the short rows are turned about the start of the "
        "round, or is worked flat with its ends at the centre front and joined after the last row. With a front drop "
        "always flat; where nothing is worked flat, joined first."
    )
    start = Choice(description="Where the round starts.")
    front_drop = Length(
        "The height by which the front lies lower than the back: its first stitches are cast on while the yoke is "
        "worked flat. 0 for none; as `lower_front` has it unless sent.",
        minimum=0,
        maximum=MAX_LENGTH,
    )
    stretch = Number(
        "How far the neck's edges stretch to pass the head, as a part of their circumference.", minimum=0, maximum=3
    )


class YokeWishesSchema(IncreaseOptionsSchema):
    """The yoke and the split."""

    example = '{"depth": 24}'

    record = YokeWishes
    inline = ("options",)

    depth = _per_size(
        "From the neck to the split, without the raised back. A quarter of the finished bust up to 90 cm, and a "
        "tenth of what lies beyond, or what the body's armhole needs, unless sent."
    )
    underarm = _per_size("The width cast on at each side at the split; 7 % of the finished bust unless sent.")
    line_to_body = Whole(
        "How many stitches of each raglan line go to the body at the split; the half, rounded down, unless sent.",
        minimum=0,
        maximum=8,
        unit="stitches",
    )
    seam_stitches = Whole(
        "Plain stitches that break a chart at each side below the split. Unless sent, as few as the underarm allows, "
        "and none without a chart; where they are purled, at least 1 with or without a chart.",
        minimum=0,
        maximum=MAX_STITCHES,
        unit="stitches",
    )
    seam = Choice(description="How the seam stitches are worked: purled, they stand as a line in the fabric.")


class BodyLevelSchema(StrictSchema):
    """A height at which the body is to have its own circumference."""

    example = '{"measurement": "waist", "below": 16}'

    record = LevelWish

    measurement = Choice(required=True, description="Whose body measurement and ease make it.")
    below = _per_size("The distance below the underarm.", required=True)


class BustDartsWishesSchema(StrictSchema):
    """Short rows over the front that make room for the bust: none unless sent, and none beside a chart that runs on."""

    example = '{"extra": 3}'

    record = DartWishes

    extra = _extra_per_size("The length that they add to the front.")


class BodyWishesSchema(StrictSchema):
    """The body."""

    example = '{"length": 38}'

    record = BodyWishes

    length = _per_size("From the underarm, hem included; the usual one, or what finishes a chart, unless sent.")
    count_rule = _count_rule("its stitches below the split")
    hem = Nested(RibbedEdgeWishesSchema, "The hem.")
    levels = Items(Nested(BodyLevelSchema), "Waist and hip, from the underarm down; straight unless sent.", most=2)
    spacing = Choice(description="As in `POST /v1/shaping-schedules`.")
    bust_darts = Nested(BustDartsWishesSchema)
    front_extra = _extra_per_size(
        "By which the front is wider than the back from the split on; the bust is that of both together, and no size "
        "has less than a smaller one."
    )


class SleeveWishesSchema(StrictSchema):
    """Each sleeve."""

    example = '{"style": "short"}'

    record = SleeveWishes

    style = Choice(
        description="How far down the arm it ends: a long one at the wrist, others after three quarters, half or a "
        "quarter of that. The cuff is as wide as the arm is there, with the eases of upper arm and wrist."
    )
    length = _per_size(
        "From the underarm, cuff included; as the style has it, or what finishes a chart, unless sent. A shorter one "
        "than a long one ends in a wider cuff."
    )
    count_rule = _count_rule("its stitches at the upper arm")
    cuff = Nested(RibbedEdgeWishesSchema, "The cuff.")
    spacing = Choice(description="As in `POST /v1/shaping-schedules`.")
    plain_before = Whole("Rounds without decreases at the top.", minimum=0, maximum=MAX_ROUNDS, unit="rounds")
    plain_after = Whole("Rounds without decreases before the cuff.", minimum=0, maximum=MAX_ROUNDS, unit="rounds")


class PulloverChartSchema(ChartOptionsSchema):
    """A colourwork chart on the pullover; the fields are those of `POST /v1/chart-placements`."""

    example = '{"chart": {"rows": ["..#..", ".###.", "#####"]}}'

    record = ChartWishes

    anchor = Nested(
        ChartAnchorSchema,
        "Unless sent, the chart's mirror axis nearest to its middle, for every section. The sections get the "
        "parity that it needs.",
    )


class PulloverYarnFieldsSchema(YarnFieldsSchema):
    """A yarn of a pullover."""

    swatch_fabric = Choice(
        description="What its swatch is of, and so which gauge it has: plain, or worked from the chart, where "
        "`swatch_floats` count too."
    )


class ColourYarnWishesSchema(PulloverYarnFieldsSchema):
    """The yarn of one colour."""

    example = '{"strands": [{"metres": 200, "grams": 50}]}'

    record = ColourYarn
    one_thickness = exactly_one_of("metres_per_100g", "strands")

    name = Text("For people, of a colour that the chart doesn't have; its symbol unless sent.", most=60)
    hex = Hex("For pictures, as in a chart's colours; of a colour that has one there, that one is taken.")


class YarnWishesSchema(PulloverYarnFieldsSchema):
    """The yarn: one for all colours, or one for each of `colours`."""

    example = '{"metres_per_100g": 400}'

    record = YarnWishes
    one_thickness = exactly_one_of("metres_per_100g", "strands", "colours")
    own_balls = at_most_one_of("colours", "ball_grams")
    own_swatches = at_most_one_of("colours", "swatch_grams")
    own_counts = at_most_one_of("colours", "swatch_stitches")

    colours = Mapping(
        Text("A symbol of the chart, or of a colour that only edges have.", least=1, most=1),
        Nested(ColourYarnWishesSchema),
        "The yarn of each colour of the pullover.",
        least=1,
        most=MAX_COLOURS,
        example='{"#": {"strands": [{"metres": 200, "grams": 50}]}}',
    )
    main_colour = Text(
        "The symbol of the pullover's own colour where there is no chart; the only one of `colours` that neither hem, "
        "cuffs nor neckband have, unless sent.",
        least=1,
        most=1,
    )
    margin = Number("Bought beyond what is needed, as a part of it.", minimum=0, maximum=2)


def _ease() -> Mapping:
    return ease_field(
        *GIRTHS, description="A wearable ease unless sent. Waist and hip only where the body is shaped to them."
    )


def _with_gauges(loaded: dict[str, Any]) -> dict[str, Any]:
    """A gauge alone is that of every fabric."""
    if "gauge" in loaded:
        loaded["gauges"] = Gauges(loaded.pop("gauge"))
    return loaded


class PulloverChangesSchema(StrictSchema):
    """A maker's own changes to the design.

    Another gauge or ease makes the counts anew, unless `keep_counts` keeps the written ones at the other gauge.
    Everything else keeps the design's counts at neck and split.
    """

    example = '{"yoke": {"rounds_change": -4}}'

    record = Changes
    one_gauge = at_most_one_of("gauge", "gauges")

    gauge = Nested(GaugeSchema, "The maker's gauge, for every fabric.")
    gauges = Nested(PulloverGaugesSchema)
    keep_counts = Flag(
        "Whether the written stitches and rounds stay and are knitted at the gauge sent beside it: the answer is the "
        "design, with `at_own_gauge` in each size. No other change may stand beside it."
    )
    ease = _ease()
    yoke = Nested(AdjustmentSchema, "How much deeper or shallower.")
    body_length = _per_size("From the underarm.")
    sleeve_length = _per_size("From the underarm.")
    sleeve_style = Choice(
        description="Another style of sleeve, as long as it usually is unless `sleeve_length` is sent; the design's "
        "unless sent."
    )
    band = Nested(BandChangeSchema, "Another neckband.")
    yarn = Nested(
        YarnWishesSchema,
        "Another yarn in place of the design's: as many metres are needed of it, unless a swatch of it was weighed.",
    )

    def build(self, loaded: dict[str, Any]) -> Changes:
        """The changes."""
        return Changes(**_with_gauges(loaded))


class PulloversRequestSchema(BodiesSchema, PrintedRequestSchema):
    """A pullover to grade. Only a gauge is required; everything else has a default that makes a wearable garment.

    With neither `body_table` nor `sizes` it is graded for all women's sizes.
    """

    record: ClassVar[type[Any] | None] = PulloverRequest
    one_gauge = exactly_one_of("gauge", "gauges")

    gauge = Nested(GaugeSchema, "Of every fabric, measured in the round and blocked.")
    gauges = Nested(PulloverGaugesSchema)
    ease = _ease()
    smoothing = Choice(
        description="Whether published tables' uneven steps from size to size are evened. `steps`: girths, asked eases "
        "included, have the least sum of squared second differences, none moved by more than 1.5 cm or below the body; "
        "asked lengths stay. `none`: as body and ease have them. Unless sent, as `steps` for what isn't asked where "
        "the bodies are a built-in table, and else as `none`."
    )
    neck = Nested(NeckWishesSchema)
    yoke = Nested(YokeWishesSchema)
    body = Nested(BodyWishesSchema)
    sleeve = Nested(SleeveWishesSchema)
    band = Nested(BandWishesSchema)
    chart = Nested(PulloverChartSchema)
    yarn = Nested(YarnWishesSchema)
    changes = Nested(PulloverChangesSchema, "What a maker changes.")
    include = Items(
        Choice(*get_args(AnswerPart)),
        "The parts of the answer that are wanted. `size_instructions`: each size's own sentences; `chart_rounds`: its "
        "chart round by round; both stand in `sizes` and imply it. Warnings and changed numbers are always there.",
        least=1,
        most=len(get_args(AnswerPart)),
        example='["table", "instructions"]',
    )

    def build(self, loaded: dict[str, Any]) -> Any:
        """The request; changes that change nothing are none."""
        if told(lambda: loaded.get("changes") == Changes()) is True:
            del loaded["changes"]
        return super().build(_with_gauges(loaded))
