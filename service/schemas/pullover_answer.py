"""Answers about whole pullovers."""

from __future__ import annotations

from dataclasses import replace
from functools import cached_property
from operator import methodcaller
from typing import Any, get_args

from grading_core.counts.request import Targets
from grading_core.pullover.request import AnswerPart, Gauges
from grading_core.pullover.result import (
    AtOwnGauge,
    ChangedNumber,
    Corrections,
    Instructions,
    KnittedSize,
    Measured,
    Pullover,
    PulloverSize,
    Row,
    as_answered,
)
from grading_core.pullover.table import TABLE_ITEMS, YARN_ITEM
from grading_core.yoke.result import SizeSchedule
from service.lengths import LengthWriter
from service.schemas.base import StrictSchema
from service.schemas.chart_answer import (
    BodyPlacementSchema,
    DrawnChartSchema,
    FloatsByRoundSchema,
    SizePlacementSchema,
    SleevePlacementSchema,
)
from service.schemas.chart_rounds import (
    CHART_ROUNDS,
    BodyRoundSchema,
    Rounds,
    SleeveRoundSchema,
    YokeRoundSchema,
    body_rounds,
    sleeve_rounds,
    yoke_rounds,
)
from service.schemas.codes import CodeField
from service.schemas.common import ComputedSchema, LengthSchema, NearestSchema
from service.schemas.containers import Items, Nested
from service.schemas.fields import Choice, Flag, Number, OpenChoice, Prose, Spoken, Whole
from service.schemas.gauge import UsedGaugeSchema
from service.schemas.pullover_parts import (
    HeadCheckSchema,
    PulloverBandSchema,
    PulloverBodySchema,
    PulloverNeckSchema,
    PulloverSleeveSchema,
    PulloverSplitSchema,
)
from service.schemas.raglan import RaglanScheduleSchema
from service.schemas.sentences import SentenceSchema
from service.schemas.writing import Write
from service.schemas.yarn import YarnNeedSchema


class ColourNameSchema(StrictSchema):
    """Whose yarn it is."""

    colour = Prose("Its name.", required=True, source="yarn")
    symbol = Prose("Its symbol, where the chart or the yarn has any.")


class ColourYarnSchema(YarnNeedSchema, ColourNameSchema):
    """Yarn of one colour."""


class MadeMeasurementSchema(StrictSchema):
    """A finished measurement, with what was wanted where something was."""

    record = Measured

    target = Nested(LengthSchema)
    finished = Nested(LengthSchema, required=True)
    difference = Nested(LengthSchema, "Finished minus target.")

    @cached_property
    def writer(self) -> Write:
        """Written by hand, since a size has more than a dozen: a difference is rounded without being made."""
        return _write_measured


def _write_measured(measured: Measured, length: LengthWriter) -> dict[str, Any]:
    finished, target = measured
    if target is None:
        return {"finished": length(finished)}
    return {"target": length(target), "finished": length(finished), "difference": length(finished, target)}


def _measured(measurement: str, description: str = "") -> Nested:
    return Nested(MadeMeasurementSchema, description, required=True, source=methodcaller("measured", measurement))


class FinishedPulloverSchema(StrictSchema):
    """What one size measures when it is done."""

    bust = _measured("bust", "Of back and front together.")
    upper_arm = _measured("upper_arm")
    neck = _measured("neck", "Of the cast-on round.")
    depth = _measured("depth", "Of the yoke, without the raised back.")
    underarm = _measured("underarm", "Each.")
    hem = _measured("hem")
    wrist = _measured("wrist")
    body_length = _measured("body_length")
    front_length = _measured("front_length", "Of the body over the bust, short rows included.")
    front_extra = _measured("front_extra", "By which the front is wider than the back.")
    sleeve_length = _measured("sleeve_length")
    total_length = _measured("total_length", "At the centre back, raise included.")
    reach = _measured(
        "reach",
        "From the centre back of the neck to the end of a sleeve: half of the neck's width, the circumference of the "
        "cast-on taken for a circle's; the yoke along the sleeve's centre; the sleeve. Its target is the body's, to "
        "the wrist, where it is known and the sleeve is a long one.",
    )


class CorrectionsSchema(StrictSchema):
    """Rounds to add, or where negative to leave out, so that lengths are the design's again."""

    record = Corrections

    yoke = Whole("Before the split.", required=True, unit="rounds")
    body = Whole("Before the hem.", required=True, unit="rounds")
    sleeve = Whole("Before the cuff.", required=True, unit="rounds")
    yoke_method = Choice(
        required=True, description="How the yoke takes them, one of the methods of `POST /v1/yoke-adjustments`."
    )


class AtOwnGaugeSchema(StrictSchema):
    """The size as written, knitted at the maker's own gauge."""

    record = AtOwnGauge

    finished = Nested(
        FinishedPulloverSchema, "Against what the design asks for.", required=True, source=lambda size: size
    )
    nearest_size = Prose(
        "The written size whose finished bust at this gauge comes nearest to the one wanted here; of two equally near "
        "ones the larger.",
        required=True,
    )
    corrections = Nested(
        CorrectionsSchema,
        "For depth, body length and sleeve length of the design; no more are left out than increases, decreases and "
        "chart allow.",
        required=True,
    )
    head = Nested(HeadCheckSchema, "Where the size's head is known.")
    yarn = Items(
        Nested(ColourYarnSchema),
        "By colour, where yarn is asked for: as long as the stitches of this gauge are wide.",
        source=lambda size: size.yarn or None,
    )


def _difference(of: str, unit: str = "stitches") -> Number:
    return Number(of, required=True, unit=unit, places=2)


class CountDifferencesSchema(StrictSchema):
    """Each count less its target, the exact count that what was wanted comes to: what the cost is made of."""

    record = Targets

    neck = _difference("All stitches of the neck.")
    neck_back = _difference("The back at the neck, from its share.")
    neck_front = _difference("The front at the neck, from its share.")
    neck_sleeve = _difference("Each sleeve at the neck, from its share.")
    body = _difference("The body below the split.")
    sleeve = _difference("Each sleeve below the split.")
    underarm = _difference("Each underarm.")
    rounds = _difference("The yoke.", "rounds")


def _yoke(size: KnittedSize) -> SizeSchedule:
    return SizeSchedule.of(size.yoke)


class PulloverBodyPlacementSchema(BodyPlacementSchema):
    """The body below the split; its rounds where they are asked for."""

    rounds = Rounds(BodyRoundSchema, body_rounds, "Every round.")


class PulloverSleevePlacementSchema(SleevePlacementSchema):
    """Each sleeve below the split; its rounds where they are asked for."""

    rounds = Rounds(SleeveRoundSchema, sleeve_rounds, "Every round.")


class PulloverPlacementSchema(SizePlacementSchema):
    """Where the chart lies on one size; what it has for each round where that is asked for."""

    rounds = Rounds(YokeRoundSchema, yoke_rounds, "Every round of the yoke.")
    body = Nested(PulloverBodyPlacementSchema, required=True)
    sleeve = Nested(PulloverSleevePlacementSchema, required=True)
    floats_by_round = Nested(FloatsByRoundSchema, part=CHART_ROUNDS)


class PulloverSizeSchema(StrictSchema):
    """One size; for a size that is not feasible, why and what would make it so."""

    record = PulloverSize
    outcome = "outcome"

    label = Prose("The size's name.", required=True)
    feasible = Flag("Whether the size can be knitted as asked.", required=True)
    code = CodeField("ReasonCode", "The kind of reason, for programs.")
    reason = Spoken("Why it can't.")
    nearest = Items(
        Nested(NearestSchema), "Each alone makes it feasible as it stands, all obstacles in its way considered."
    )
    together = Items(
        Nested(NearestSchema),
        "Where nothing alone does: the smallest combination found that makes it feasible.",
        least=2,
        most=3,
    )
    neck = Nested(PulloverNeckSchema)
    yoke = Nested(RaglanScheduleSchema, "As `POST /v1/raglan-schedules` answers it.", source=_yoke)
    split = Nested(PulloverSplitSchema, source="counts")
    body = Nested(PulloverBodySchema)
    sleeve = Nested(PulloverSleeveSchema)
    band = Nested(PulloverBandSchema)
    finished = Nested(FinishedPulloverSchema, source=lambda size: size)
    differences = Nested(CountDifferencesSchema)
    cost = Number("What this size adds to the cost.", minimum=0, places=2)
    chart = Nested(
        PulloverPlacementSchema,
        "As `POST /v1/chart-placements` answers it; round by round where `include` names `chart_rounds`.",
    )
    yarn = Items(Nested(ColourYarnSchema), "By colour, where yarn is asked for.", source=lambda size: size.yarn or None)
    at_own_gauge = Nested(AtOwnGaugeSchema, "Where `changes.keep_counts` is sent.")


class CostSchema(StrictSchema):
    """What the counts of all sizes cost, in squared stitches: the optimum of what is minimised.

    The squared distances from the targets, weighted, and the unevenness of the steps from size to size.
    """

    record = Pullover

    total = Number(required=True, minimum=0, places=2, source="cost")
    unevenness = Number("The part that uneven steps cost.", required=True, minimum=0, places=2)


class TableRowSchema(StrictSchema):
    """One number of the garment in every size; `part` and `item` together are its key."""

    record = Row

    part = Choice(required=True, description="What it is a part of.")
    item = OpenChoice(
        *TABLE_ITEMS,
        others=YARN_ITEM,
        required=True,
        description="What it is. Of `yarn`: `grams_1`, `metres_1`, `yards_1` and `balls_1`, with the place of the "
        "colour, counted from 1; `balls_1_2` of its second strand.",
    )
    unit = Choice(required=True, description="What it counts.")
    title = Spoken("For people, in the language asked.", required=True)
    values = Items(
        Number(nullable=True),
        "One per size; null where the size is not feasible or doesn't have it. Counts are whole numbers, lengths are "
        "exact to two decimals, grams, metres and yards to one.",
        required=True,
        source="answered",
    )
    printed = Items(Prose(), "The same as patterns print them, by the request's `print`.", required=True)
    printed_inch = Items(Prose(), "Lengths likewise in inches, by `inch_convention`.")
    run = Prose("The same as a size run: a number once where all sizes agree, a dash where a size has none.")
    run_inch = Prose("Lengths likewise in inches.")
    letter = Prose("Of `finished`, by which the schematic refers to it.")
    colour = Prose("Of `yarn`, the colour's name.")
    strand = Whole("Of `yarn`, which of several strands held together, counted from 1.", minimum=1)


class PartInstructionsSchema(StrictSchema):
    """One part of the garment in words."""

    record = Instructions

    part = Choice(required=True, description="In the order of work; the chart's only where one was sent.")
    title = Spoken("For people, in the language asked.")
    sentences = Items(
        Nested(SentenceSchema), "With size runs; a dash stands for a size that does not have it.", required=True
    )


class ChangedNumberSchema(StrictSchema):
    """One number that the changes have changed in one size."""

    record = ChangedNumber

    size = Prose("The size.", required=True)
    part = Choice(required=True, description="Of the table.")
    item = OpenChoice(*TABLE_ITEMS, others=YARN_ITEM, required=True, description="Of that part.")
    unit = Choice(required=True, description="What it counts.")
    designed = Number(
        "As published; null where the size is not feasible or doesn't have it.",
        required=True,
        nullable=True,
        source=lambda number: as_answered(number.designed, number.unit),
    )
    changed = Number(
        "With the changes; null where the size is not feasible or doesn't have it.",
        required=True,
        nullable=True,
        source=lambda number: as_answered(number.changed, number.unit),
    )


class UsedGaugesSchema(StrictSchema):
    """The gauges of the fabrics that are used; the instructions print them as the trade does, 10 cm = 4 in."""

    record = Gauges

    plain = Nested(UsedGaugeSchema, "Of everything that has no other one.", required=True)
    stranded = Nested(UsedGaugeSchema, "Of what is worked from a chart.")
    rib = Nested(UsedGaugeSchema, "Of hem, cuffs and neckband.")


class PulloversSchema(ComputedSchema):
    """The pullover in every size that is answered, in the order asked; what one reads first stands first."""

    record = Pullover
    ending = ("table", "instructions", "warnings", "changed", "cost", "labels", "gauges", "chart", "sizes", "meta")

    table = Items(
        Nested(TableRowSchema), "Rows and sizes: every number of the garment that any size has.", part="table"
    )
    instructions = Items(
        Nested(PartInstructionsSchema), "The pattern, part by part, in the order of work.", part="instructions"
    )
    changed = Items(
        Nested(ChangedNumberSchema), "What `changes` changed against the design, size by size.", required=True
    )
    cost = Nested(CostSchema, required=True, source=lambda pullover: pullover)
    labels = Items(Prose(), "Of the sizes that are answered, in the order of every list of values.", required=True)
    gauges = Nested(UsedGaugesSchema, required=True)
    chart = Nested(DrawnChartSchema, "Where one was sent.")
    sizes = Items(Nested(PulloverSizeSchema), "One per size.", part="sizes")

    @cached_property
    def writer(self) -> Write:
        """Writes the parts of the answer that are wanted."""
        write, parts = super().writer, frozenset(get_args(AnswerPart))
        return lambda pullover, length: write(
            pullover, replace(length, without=length.without | (parts - pullover.parts))
        )
