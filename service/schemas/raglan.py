"""Requests and answers about raglan yokes: increase schedules, and yokes made deeper or shallower."""

from __future__ import annotations

from typing import Any

from grading_core.limits import MAX_ROUNDS, MAX_STITCHES
from grading_core.sections import IncreaseRound, Sections
from grading_core.yoke.request import Adjustment, RaglanRequest, WrittenYokeRequest, YokeAdjustmentRequest, YokeRequest
from grading_core.yoke.result import (
    AdjustedYoke,
    RaglanLine,
    RaglanRuns,
    RaglanSchedules,
    RoundsAndDepth,
    Schedule,
    SizeSchedule,
    Way,
    YokeAdjustments,
    YokeStitches,
)
from service.schemas.base import StrictSchema, at_most_one_of, exactly_one_of
from service.schemas.codes import CodeField
from service.schemas.common import (
    MAX_LABEL,
    MAX_LENGTH,
    MAX_SIZES,
    AnswerSizesSchema,
    ComputedSchema,
    GaugeSchema,
    LengthSchema,
    NearestSchema,
)
from service.schemas.containers import Items, Nested
from service.schemas.fields import Choice, Flag, Length, Number, Spoken, Text, Whole
from service.schemas.printing import PrintedRequestSchema
from service.schemas.sentences import SentenceSchema
from service.schemas.writing import Write


class SectionsSchema(StrictSchema):
    """Stitches of the sections between the raglan lines."""

    example = '{"back": 34, "front": 34, "sleeve": 12}'

    record = Sections

    back = Whole("The back.", required=True, minimum=0, maximum=MAX_STITCHES, unit="stitches")
    front = Whole("The front.", required=True, minimum=0, maximum=MAX_STITCHES, unit="stitches")
    sleeve = Whole("Each sleeve.", required=True, minimum=0, maximum=MAX_STITCHES, unit="stitches")


class IncreaseRoundSchema(StrictSchema):
    """One increase round. The numbers are increases at each edge of that kind."""

    example = '{"round": 2, "body": 1, "sleeve": 1}'

    record = IncreaseRound
    body_or_back = at_most_one_of("body", "back")
    body_or_front = at_most_one_of("body", "front")

    round = Whole("Counted from 1, the first round after the neck.", required=True, minimum=1, maximum=MAX_ROUNDS)
    body = Whole("At each of the four body edges.", minimum=0, maximum=2, unit="increases")
    back = Whole("At each back edge, where the front needs another number.", minimum=0, maximum=2, unit="increases")
    front = Whole("At each front edge, where the back needs another number.", minimum=0, maximum=2, unit="increases")
    sleeve = Whole("At each of the four sleeve edges.", minimum=0, maximum=2, unit="increases")

    def build(self, loaded: dict[str, Any]) -> IncreaseRound:
        """The round; the body's increases are those of its back and of its front."""
        body = loaded.get("body", 0)
        return IncreaseRound(
            loaded["round"], loaded.get("back", body), loaded.get("front", body), loaded.get("sleeve", 0)
        )


class HandWritten(Items):
    """A list that its source writes: of so many objects that writing them field by field would cost a tenth of the
    operation.
    """

    def writer(self) -> Write:
        """Nothing is left to write."""
        return lambda written, _: written


class IncreaseOptionsSchema(StrictSchema):
    """How a yoke is increased: part of a record that holds `Options`."""

    line_stitches = Whole("Stitches of each of the four raglan lines.", minimum=0, maximum=8, unit="stitches")
    step = Whole(
        "The grid: 2 for increases in every second round at most, 1 for every round.",
        minimum=1,
        maximum=2,
        unit="rounds",
    )
    first_increase_round = Whole(
        "The first round that may have an increase; the step unless sent. Every later one lies a multiple of the "
        "step after it.",
        minimum=1,
        maximum=MAX_ROUNDS,
    )
    plain_rounds_at_end = Whole(
        "Rounds without increases wanted before the split.", minimum=0, maximum=MAX_ROUNDS, unit="rounds"
    )
    spacing = Choice(
        description="Two neighbouring intervals, the last increase as late as they allow, in the order named; or one "
        "interval only, the surplus rounds plain after or before it."
    )
    fewer_edge = Choice(
        description="Where the edges with fewer increases get them, always in rounds that the others use too."
    )
    double_body = Choice(
        description="Whether a body edge may get two increases in one round where the rounds don't suffice without."
    )
    double_where = Choice(description="In which increase rounds the body is doubled.")


class RaglanOptionsSchema(IncreaseOptionsSchema, AnswerSizesSchema, PrintedRequestSchema):
    """How a yoke is increased; the same for all sizes."""

    gauge = Nested(GaugeSchema, "The gauge of the yoke, for depths and slopes.", required=True)


class YokeSchema(StrictSchema):
    """One size's yoke, from the neck to the split."""

    example = (
        '{"label": "S", "rounds": 60, "neck": {"back": 34, "front": 34, "sleeve": 12}, '
        '"split": {"back": 82, "front": 82, "sleeve": 50}}'
    )

    record = YokeRequest
    one_height = exactly_one_of("rounds", "depth")

    label = Text("The size's name, unique in the request.", required=True, most=MAX_LABEL)
    rounds = Whole("Rounds of the yoke.", minimum=1, maximum=MAX_ROUNDS, unit="rounds")
    depth = Length("Its depth instead, rounded to the nearest round.", above=0, maximum=MAX_LENGTH)
    neck = Nested(SectionsSchema, "The sections at the neck.", required=True)
    split = Nested(SectionsSchema, "The sections before the sleeves are set aside.", required=True)


class RaglanSchedulesRequestSchema(RaglanOptionsSchema):
    """The yokes for which increases are to be scheduled."""

    record = RaglanRequest
    inline = ("options",)

    sizes = Items(Nested(YokeSchema), "In the order of the answer.", required=True, least=1, most=MAX_SIZES)


class AdjustmentSchema(StrictSchema):
    """How much deeper or shallower."""

    example = '{"rounds_change": -4}'

    record = Adjustment
    one_amount = exactly_one_of("depth", "depth_change", "rounds", "rounds_change", "own_rows")

    depth = Length("The new depth.", above=0, maximum=MAX_LENGTH)
    depth_change = Length("Added to the depth; negative is shallower.", minimum=-MAX_LENGTH, maximum=MAX_LENGTH)
    rounds = Whole("The new rounds.", minimum=1, maximum=MAX_ROUNDS, unit="rounds")
    rounds_change = Whole(
        "Added to the rounds; negative is shallower.", minimum=-MAX_ROUNDS, maximum=MAX_ROUNDS, unit="rounds"
    )
    own_rows = Number(
        "A knitter's own rows over the span of the gauge: the written depth is kept at that row gauge.",
        minimum=0.5,
        maximum=1000,
        unit="rows",
    )


class WrittenYokeSchema(YokeSchema):
    """One size's yoke as it is written, and how much it is to change."""

    record = WrittenYokeRequest

    increase_rounds = Items(
        Nested(IncreaseRoundSchema),
        "The yoke's own increase rounds, in rising order; without them they follow from counts and options.",
        most=MAX_ROUNDS,
    )
    adjust = Nested(AdjustmentSchema, "For this size; without it that of the request holds.")


class YokeAdjustmentsRequestSchema(RaglanOptionsSchema):
    """Yokes to be made deeper or shallower."""

    record = YokeAdjustmentRequest
    inline = ("options",)

    adjust = Nested(AdjustmentSchema, "For every size that brings none of its own.")
    sizes = Items(Nested(WrittenYokeSchema), "In the order of the answer.", required=True, least=1, most=MAX_SIZES)


class PhaseStitchesSchema(StrictSchema):
    """Stitches after a phase."""

    back = Whole(required=True, minimum=0, unit="stitches")
    front = Whole(required=True, minimum=0, unit="stitches")
    sleeve = Whole("Each sleeve.", required=True, minimum=0, unit="stitches")
    total = Whole("On the needles, raglan lines included.", required=True, minimum=0, unit="stitches")


class PhaseSchema(StrictSchema):
    """Rounds that repeat one interval, or a short cycle of intervals, with the same increases at the end of each."""

    from_round = Whole("The first round of the phase.", required=True, minimum=1, unit="rounds")
    to_round = Whole("The last round of the phase.", required=True, minimum=1, unit="rounds")
    every = Items(
        Whole("Rounds from one increase round to the next, that round included.", minimum=1, unit="rounds"),
        "One interval, or a short cycle of them; empty for a plain stretch.",
        required=True,
        most=4,
    )
    times = Whole("How often the cycle is worked; 0 for a plain stretch.", required=True, minimum=0)
    body = Whole("Increases at each body edge in each of its increase rounds.", minimum=0, unit="increases")
    back = Whole("At each back edge, where the front needs another number.", minimum=0, unit="increases")
    front = Whole("At each front edge, where the back needs another number.", minimum=0, unit="increases")
    sleeve = Whole("At each sleeve edge.", required=True, minimum=0, unit="increases")
    stitches = Nested(PhaseStitchesSchema, required=True)


class YokeStitchesSchema(StrictSchema):
    """Stitches on the needles, raglan lines included."""

    record = YokeStitches

    neck = Whole(required=True, minimum=0, unit="stitches")
    split = Whole(required=True, minimum=0, unit="stitches")


class RaglanLineSchema(StrictSchema):
    """The raglan line in the fabric."""

    record = RaglanLine

    rise_over_run = Number(
        "The yoke's depth over the width of the body increases at one line; null where there are none.",
        required=True,
        nullable=True,
        places=2,
    )
    length = Nested(LengthSchema, "The length of the line.", required=True)


def _increase_rounds(schedule: Schedule) -> list[dict[str, int]]:
    if schedule.body_as_one:
        return [
            {"round": number, "body": body, "sleeve": sleeve} for number, body, _, sleeve in schedule.increase_rounds
        ]
    return [
        {"round": number, "back": back, "front": front, "sleeve": sleeve}
        for number, back, front, sleeve in schedule.increase_rounds
    ]


def _phases(schedule: Schedule) -> list[dict[str, Any]]:
    as_one = schedule.body_as_one
    written = []
    for phase, sections in zip(schedule.phases, schedule.sections_after_phases(), strict=True):
        back, front, sleeve = phase.cycle[0][1] if phase.cycle else (0, 0, 0)
        written.append(
            {
                "from_round": phase.from_row,
                "to_round": phase.to_row,
                "every": list(phase.every),
                "times": phase.times,
                **({"body": back} if as_one else {"back": back, "front": front}),
                "sleeve": sleeve,
                "stitches": {
                    "back": sections.back,
                    "front": sections.front,
                    "sleeve": sections.sleeve,
                    "total": sections.total(schedule.line_stitches),
                },
            }
        )
    return written


class RaglanScheduleSchema(StrictSchema):
    """Where every increase of one size falls; for a size that is not feasible, why and what would make it so."""

    record = SizeSchedule
    outcome = "schedule"

    label = Text("As sent.", required=True, most=MAX_LABEL, source="yoke.label")
    feasible = Flag("Whether the increases can be worked as asked.", required=True)
    rounds = Whole("Of the yoke.", required=True, minimum=1, unit="rounds", source="yoke.rounds")
    depth = Nested(LengthSchema, "Of the yoke.", required=True)
    difference = Nested(LengthSchema, "`depth` minus the depth asked for, where one was.")
    code = CodeField("ReasonCode", "The kind of reason, for programs.")
    reason = Spoken("Why it is not feasible.")
    nearest = Items(Nested(NearestSchema), "What alone would make it feasible.", most=20)
    body_increases = Whole("At each body edge over the yoke.", minimum=0, unit="increases")
    back_increases = Whole("At each back edge, where the front needs another number.", minimum=0, unit="increases")
    front_increases = Whole("At each front edge, where the back needs another number.", minimum=0, unit="increases")
    sleeve_increases = Whole("At each sleeve edge over the yoke.", minimum=0, unit="increases")
    doubled_rounds = Whole("Rounds with two increases at a body edge.", minimum=0, unit="rounds")
    plain_rounds_at_end = Whole("Rounds after the last increase.", minimum=0, unit="rounds")
    increase_rounds = HandWritten(
        Nested(IncreaseRoundSchema),
        "Every round that has an increase, in order.",
        most=MAX_ROUNDS,
        source=_increase_rounds,
        part="increase_rounds",
    )
    phases = HandWritten(
        Nested(PhaseSchema),
        "All rounds without gap or overlap, in the fewest phases.",
        most=MAX_ROUNDS,
        source=_phases,
        part="phases",
    )
    instructions = Items(
        Nested(SentenceSchema),
        "The schedule in sentences.",
        most=MAX_ROUNDS,
        source=Schedule.instructions,
        part="size_instructions",
    )
    stitches = Nested(YokeStitchesSchema, "On the needles.")
    raglan_line = Nested(RaglanLineSchema, "Seen on the back.")
    front_raglan_line = Nested(RaglanLineSchema, "Seen on the front, where it differs.")


class RaglanRunsSchema(StrictSchema):
    """Size runs as patterns print them: a number once where all sizes agree, a dash where a size can't be knitted.

    Where none can, they are left out.
    """

    record = RaglanRuns

    rounds = Text(most=2000)
    body_increases = Text(most=2000)
    back_increases = Text(most=2000)
    front_increases = Text(most=2000)
    sleeve_increases = Text(most=2000)
    doubled_rounds = Text(most=2000)
    neck_stitches = Text(most=2000)
    split_stitches = Text(most=2000)


class RaglanSchedulesSchema(ComputedSchema):
    """The schedules, in the order of the request."""

    record = RaglanSchedules

    sizes = Items(Nested(RaglanScheduleSchema), "One per size.", required=True, least=1, most=MAX_SIZES)
    runs = Nested(RaglanRunsSchema, required=True)
    instructions = Items(
        Nested(SentenceSchema),
        "The schedule of all sizes in sentences with size runs; empty for one size, and where the sizes are too "
        "unlike to stand side by side.",
        required=True,
        most=50,
    )


class RoundsAndDepthSchema(StrictSchema):
    """Rounds, and the depth that they make."""

    record = RoundsAndDepth

    rounds = Whole(required=True, minimum=1, unit="rounds")
    depth = Nested(LengthSchema, required=True)


class YokeOptionSchema(StrictSchema):
    """One way to adjust a yoke."""

    record = Way
    outcome = "schedule"

    method = Choice(required=True, description="The way.")
    feasible = Flag("Whether it can be done.", required=True)
    rounds = Whole("Of the adjusted yoke.", required=True, minimum=0, unit="rounds")
    depth = Nested(
        LengthSchema, "Of the adjusted yoke, at the knitter's own row gauge where it was sent.", required=True
    )
    chart_rows_change = Whole(
        "Rows of a colourwork chart gained (or lost, negative) before the split.", required=True, unit="rows"
    )
    difference = Nested(LengthSchema, "`depth` minus the depth wanted, where one is.")
    shallowest = Nested(RoundsAndDepthSchema, "The shallowest yoke that this way can reach.")
    code = CodeField("ReasonCode", "The kind of reason, for programs.")
    reason = Spoken("Why it can't be done.")
    nearest = Items(Nested(NearestSchema), "What alone would make it possible.", most=20)
    doubled_rounds = Whole("Rounds with two increases at a body edge.", minimum=0, unit="rounds")
    consecutive_increase_rounds = Whole(
        "The most increase rounds that follow one another without a round between.", minimum=0, unit="rounds"
    )
    schedule = Nested(RaglanScheduleSchema, "The adjusted yoke.", source=SizeSchedule.of)


class AdjustedYokeSchema(StrictSchema):
    """Every way to adjust one size's yoke. The neck and the split keep their counts."""

    record = AdjustedYoke

    label = Text("As sent.", required=True, most=MAX_LABEL, source="before.yoke.label")
    feasible = Flag("Whether any way can be done.", required=True)
    before = Nested(RaglanScheduleSchema, "The yoke as written.", required=True)
    options = Items(Nested(YokeOptionSchema), "Every way, one of each method.", required=True)
    recommended = Choice(required=True, nullable=True, description="The way that disturbs the yoke least.")
    why = Spoken("Why that one, or why none.", required=True)


class YokeAdjustmentsSchema(ComputedSchema):
    """The adjusted yokes, in the order of the request."""

    record = YokeAdjustments

    sizes = Items(Nested(AdjustedYokeSchema), "One per size.", required=True, least=1, most=MAX_SIZES)
