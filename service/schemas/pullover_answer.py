"""Answers about whole pullovers."""

from __future__ import annotations

from fractions import Fraction
from operator import itemgetter, methodcaller

from grading_core.counts.request import Targets
from grading_core.counts.result import Counts
from grading_core.gauge import Gauge, Swatch
from grading_core.parts.body import Body, ShapedLevel
from grading_core.parts.bust_darts import BustDarts, DartTurn
from grading_core.parts.neckband import Neckband
from grading_core.parts.neckline import FrontDrop, Gap, HeadCheck
from grading_core.parts.ribbing import RibbedEdge
from grading_core.parts.short_rows import BackRaise, Turn
from grading_core.parts.sleeve import Sleeve
from grading_core.pullover.request import Gauges
from grading_core.pullover.result import (
    AtOwnGauge,
    ChangedNumber,
    Corrections,
    Instructions,
    KnittedSize,
    Measured,
    Neck,
    Pullover,
    PulloverSize,
    Row,
)
from grading_core.units import cm_per_inch, to_places
from grading_core.wording import size_run
from grading_core.yoke.result import SizeSchedule
from service.schemas.base import StrictSchema
from service.schemas.chart_answer import DrawnChartSchema, SizePlacementSchema
from service.schemas.common import ComputedSchema, LengthSchema, NearestSchema
from service.schemas.containers import ByType, Items, Nested
from service.schemas.fields import Choice, Flag, Number, Prose, Whole
from service.schemas.raglan import RaglanScheduleSchema, SectionsSchema
from service.schemas.writing import Write
from service.schemas.yarn import YarnNeedSchema


class NeckPartSchema(StrictSchema):
    """Stitches of one part up to a marker."""

    name = Prose("As in `line` or `back`.", required=True, source=itemgetter(0))
    stitches = Whole(required=True, minimum=0, unit="stitches", source=itemgetter(1))


class NeckMarkerSchema(StrictSchema):
    """Stitches up to a marker."""

    record = Gap

    stitches = Whole("From the marker before, or from the beginning.", required=True, minimum=0, unit="stitches")
    parts = Items(Nested(NeckPartSchema), "What they are, in working order.", required=True)
    marker = ByType(
        "Its number, `start` for the start of the round, null at the end of a flat cast-on. Marker 1 follows the "
        "back, 2 the first sleeve, 3 the front, 4 the second sleeve.",
        number=Whole(minimum=1, maximum=4),
        text=Choice("start"),
        nullable=True,
        required=True,
    )


class TurnSchema(StrictSchema):
    """Where a short row turns."""

    record = Turn

    row = Whole("Counted from 1.", required=True, minimum=1)
    side = Choice(required=True, description="Which side of the fabric faces in that row.")
    stitches = Whole("Past the marker, counted in the direction of the row.", required=True, minimum=0, unit="stitches")
    marker = Whole("The last marker passed.", required=True, minimum=1, maximum=4)


class BackRaiseSchema(StrictSchema):
    """The raised back of the neck."""

    record = BackRaise

    rows = Whole("By which the back is higher.", required=True, minimum=0, unit="rows")
    height = Nested(LengthSchema, required=True)
    front_stitches = Whole(
        "How far the taper reaches into the front at each side.", required=True, minimum=0, unit="stitches"
    )


class FrontDropSchema(StrictSchema):
    """A front that lies lower than the back."""

    record = FrontDrop

    rows = Whole("Worked flat in place of as many rounds of the yoke.", required=True, minimum=0, unit="rows")
    height = Nested(LengthSchema, required=True)
    each_side = Whole("Cast on for the front at each side.", required=True, minimum=0, unit="stitches")
    increase_rows = Items(Whole(minimum=1), "The rows with an increase at each front edge.", required=True)
    centre = Whole("Cast on at the end of the last row.", required=True, minimum=0, unit="stitches")


class HeadCheckSchema(StrictSchema):
    """Whether the neck passes the head."""

    record = HeadCheck

    passes = Flag("With the stretch allowed.", required=True)
    tightest = Prose("The edge with the smallest circumference.", required=True, source="tightest.name")
    circumference = Nested(LengthSchema, "Of that edge, unstretched.", required=True, source="tightest.circumference")
    stretched = Nested(LengthSchema, "Of that edge, stretched as far as allowed.", required=True)
    stretch_needed = Number("As a part of the circumference.", required=True, minimum=0, places=2)


def _instructions() -> Items:
    return Items(Prose(), "For this size.", required=True, source=methodcaller("instructions"))


class PulloverNeckSchema(StrictSchema):
    """The neck of one size."""

    record = Neck

    cast_on = Whole("Stitches cast on.", required=True, minimum=0, unit="stitches", source="cast_on.stitches")
    way = Choice(required=True, description="How it is cast on.", source="cast_on.way")
    sections = Nested(SectionsSchema, "At the neck, once all is cast on.", required=True)
    line_stitches = Whole("Of each raglan line.", required=True, minimum=0, unit="stitches")
    markers = Items(Nested(NeckMarkerSchema), "In working order.", required=True, source="cast_on.gaps")
    turns = Items(Nested(TurnSchema), "Of the short rows, one for each row.", required=True)
    edge = Nested(LengthSchema, "Circumference of the edge before the band.", required=True)
    instructions = _instructions()
    back_raise = Nested(BackRaiseSchema, "Where the back is raised.", source="raised")
    front_drop = Nested(FrontDropSchema, "Where the front is dropped.", source="drop")
    head = Nested(HeadCheckSchema, "Where the size's head is known.")


class PulloverSplitSchema(StrictSchema):
    """What the yoke's last round has, and what becomes of it."""

    record = Counts

    sections = Nested(SectionsSchema, "Between the raglan lines.", required=True, source="split")
    yoke_total = Whole("On the needle.", required=True, minimum=0, unit="stitches")
    underarm = Whole("Cast on at each side.", required=True, minimum=0, unit="stitches")
    line_to_body = Whole("Stitches of each line that go to the body.", required=True, minimum=0, unit="stitches")
    line_to_sleeve = Whole("Stitches of each line that go to the sleeve.", required=True, minimum=0, unit="stitches")
    body = Whole("Below the split.", required=True, minimum=0, unit="stitches")
    sleeve = Whole("Each, below the split.", required=True, minimum=0, unit="stitches")


class RibbedEdgeSchema(StrictSchema):
    """A ribbed edge. Where its multiple needs one, its first round adjusts the count."""

    record = RibbedEdge

    before = Whole("On the needle before it.", required=True, minimum=0, unit="stitches")
    change = Whole("Added evenly by the adjusting round, negative where taken; 0 where there is none.", required=True)
    stitches = Whole("Of the rib.", required=True, minimum=0, unit="stitches")
    rounds = Whole("The adjusting round among them.", required=True, minimum=0, unit="rounds")
    circumference = Nested(LengthSchema, "At the gauge of the rib.", required=True)
    height = Nested(LengthSchema, "At the gauge of the rib.", required=True)


class BodyShapingRoundSchema(StrictSchema):
    """A round that changes the body, the same at either side."""

    round = Whole("Counted from 1 after the split.", required=True, minimum=1, source=itemgetter(0))
    stitches = Whole("Added to the whole body; negative where taken.", required=True, source=itemgetter(1))


class ReachedLevelSchema(StrictSchema):
    """What the body has at a height."""

    record = ShapedLevel

    name = Prose("The measurement.", required=True, source="level.name")
    round = Whole("From which it has it.", required=True, minimum=0)
    stitches = Whole(required=True, minimum=0, unit="stitches")
    circumference = Nested(LengthSchema, required=True)
    difference = Nested(LengthSchema, "From the circumference wanted.", required=True)


class DartTurnSchema(StrictSchema):
    """Where a short row over the bust turns."""

    record = DartTurn

    row = Whole("Counted from 1.", required=True, minimum=1)
    side = Choice(required=True, description="Which side of the fabric faces in that row.")
    stitches = Whole(
        "Left before the side of the body ahead, which is the middle of an underarm.",
        required=True,
        minimum=0,
        unit="stitches",
    )


class BustDartsSchema(StrictSchema):
    """Short rows over the front, worked within a round of the body: the back first, then they, then the rest."""

    record = BustDarts

    round = Whole("Counted from 1 after the split.", required=True, minimum=1)
    front = Whole(
        "The front there, from side to side; a stitch in the middle of an underarm counts to neither half.",
        required=True,
        minimum=0,
        unit="stitches",
    )
    rows = Whole("By which the front is longer.", required=True, minimum=0, unit="rows")
    height = Nested(LengthSchema, required=True)
    turns = Items(Nested(DartTurnSchema), "One for each row.", required=True)


class PulloverBodySchema(StrictSchema):
    """The body of one size."""

    record = Body

    stitches = Whole("After the split.", required=True, minimum=0, unit="stitches")
    rounds = Whole("Before the hem.", required=True, minimum=0, unit="rounds")
    length = Nested(LengthSchema, "From underarm to edge.", required=True)
    shaping = Items(Nested(BodyShapingRoundSchema), required=True)
    levels = Items(Nested(ReachedLevelSchema), required=True)
    hem = Nested(RibbedEdgeSchema, required=True)
    bust_darts = Nested(BustDartsSchema, "Where short rows lengthen the front.")
    instructions = _instructions()


class PulloverSleeveSchema(StrictSchema):
    """Each sleeve of one size."""

    record = Sleeve

    stitches = Whole("At the upper arm.", required=True, minimum=0, unit="stitches")
    rounds = Whole("Before the cuff.", required=True, minimum=0, unit="rounds")
    length = Nested(LengthSchema, "From underarm to edge.", required=True)
    decrease_rounds = Items(
        Whole(minimum=1), "The rounds that take two stitches, counted from 1 after the split.", required=True
    )
    cuff = Nested(RibbedEdgeSchema, required=True)
    instructions = _instructions()


class PulloverBandSchema(StrictSchema):
    """The neckband of one size."""

    record = Neckband

    construction = Choice(required=True, description="As asked.")
    picked_up = Whole("All stitches picked up.", required=True, minimum=0, unit="stitches", source="picked_up.stitches")
    stitches = Whole("Of the rib.", required=True, minimum=0, unit="stitches", source="edge.stitches")
    rounds = Whole("Both layers and the fold round included.", required=True, minimum=0, unit="rounds")
    height = Nested(LengthSchema, "As worn.", required=True)
    change = Whole("Added evenly by the adjusting round, negative where taken.", required=True, source="edge.change")
    instructions = _instructions()


class ColourNameSchema(StrictSchema):
    """Whose yarn it is."""

    colour = Prose("Its name.", required=True, source="yarn")


class ColourYarnSchema(YarnNeedSchema, ColourNameSchema):
    """Yarn of one colour."""


class MadeMeasurementSchema(StrictSchema):
    """A finished measurement, with what was wanted where something was."""

    record = Measured

    target = Nested(LengthSchema)
    finished = Nested(LengthSchema, required=True)
    difference = Nested(LengthSchema, "Finished minus target.")


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
        "By colour, where yarn is asked for: a swatch's weight stays, an estimate goes by the stitches of this gauge.",
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


class PulloverSizeSchema(StrictSchema):
    """One size; for a size that is not feasible, why and what would make it so."""

    record = PulloverSize
    outcome = "outcome"

    label = Prose("The size's name.", required=True)
    feasible = Flag("Whether the size can be knitted as asked.", required=True)
    reason = Prose("Why it can't.")
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
    chart = Nested(SizePlacementSchema, "As `POST /v1/chart-placements` answers it.")
    yarn = Items(Nested(ColourYarnSchema), "By colour, where yarn is asked for.", source=lambda size: size.yarn or None)
    at_own_gauge = Nested(AtOwnGaugeSchema, "Where `changes.keep_counts` is sent.")


class CostSchema(StrictSchema):
    """What the counts of all sizes cost, in squared stitches: the optimum of what is minimised.

    The squared distances from the targets, weighted, and the unevenness of the steps from size to size.
    """

    record = Pullover

    total = Number(required=True, minimum=0, places=2, source="cost")
    unevenness = Number("The part that uneven steps cost.", required=True, minimum=0, places=2)


def _number(value: int | Fraction | None) -> int | float | None:
    return to_places(value) if isinstance(value, Fraction) else value


class InchRun(Prose):
    """Lengths in cm as a size run in inches, by the convention of the request."""

    def writer(self) -> Write:
        """Writes the run."""
        return lambda values, length: size_run(
            [None if value is None else length.printed_inches(value) for value in values]
        )


class TableRowSchema(StrictSchema):
    """One number of the garment in every size."""

    record = Row

    item = Prose("What it is.", required=True)
    unit = Choice(required=True, description="What it counts.")
    values = Items(
        Number(nullable=True),
        "One per size; null where the size is not feasible.",
        required=True,
        source=lambda row: [_number(value) for value in row.values],
    )
    run = Prose("The same as patterns print it, centimetres to the nearest half.", required=True)
    run_inch = InchRun(
        "For centimetres, the same in inches to the nearest quarter, by `inch_convention`.",
        source=lambda row: row.values if row.unit == "cm" else None,
    )


class PartInstructionsSchema(StrictSchema):
    """One part of the garment in words."""

    record = Instructions

    part = Choice(required=True, description="In the order of work; the chart's only where one was sent.")
    sentences = Items(Prose(), "With size runs of the sizes that are feasible.", required=True)


class ChangedNumberSchema(StrictSchema):
    """One number that the changes have changed in one size."""

    record = ChangedNumber

    size = Prose("The size.", required=True)
    item = Prose("The row of the table.", required=True)
    unit = Choice(required=True, description="What it counts.")
    designed = Number(
        "As published; null where the size is not feasible.",
        required=True,
        nullable=True,
        source=lambda number: _number(number.designed),
    )
    changed = Number(
        "With the changes; null where the size is not feasible.",
        required=True,
        nullable=True,
        source=lambda number: _number(number.changed),
    )


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


class UsedGaugesSchema(StrictSchema):
    """The gauges of the fabrics that are used; the instructions print them as the trade does, 10 cm = 4 in."""

    record = Gauges

    plain = Nested(UsedGaugeSchema, "Of everything that has no other one.", required=True)
    stranded = Nested(UsedGaugeSchema, "Of what is worked from a chart.")
    rib = Nested(UsedGaugeSchema, "Of hem, cuffs and neckband.")


class PulloversSchema(ComputedSchema):
    """The pullover in every size, in the order asked."""

    record = Pullover

    sizes = Items(Nested(PulloverSizeSchema), "One per size.", required=True)
    gauges = Nested(UsedGaugesSchema, required=True)
    cost = Nested(CostSchema, required=True, source=lambda pullover: pullover)
    table = Items(Nested(TableRowSchema), "Rows and sizes: every number of the garment.", required=True)
    instructions = Items(
        Nested(PartInstructionsSchema), "The pattern, part by part, in the order of work.", required=True
    )
    changed = Items(
        Nested(ChangedNumberSchema), "What `changes` changed against the design, size by size.", required=True
    )
    chart = Nested(DrawnChartSchema, "Where one was sent.")
