"""The parts of a pullover in an answer: neck, split, body, sleeve and band."""

from __future__ import annotations

from operator import itemgetter, methodcaller
from typing import get_args

from grading_core.counts.result import Counts
from grading_core.parts.body import Body, ShapedLevel
from grading_core.parts.bust_darts import BustDarts, DartTurn
from grading_core.parts.neckband import Neckband
from grading_core.parts.neckline import Edge, FrontDrop, Gap, HeadCheck
from grading_core.parts.ribbing import RibbedEdge
from grading_core.parts.short_rows import BackRaise, Turn
from grading_core.parts.sleeve import Sleeve
from grading_core.pullover.result import Neck
from service.schemas.base import StrictSchema
from service.schemas.common import LengthSchema
from service.schemas.containers import ByType, Items, Nested
from service.schemas.fields import Choice, Flag, Number, Prose, Whole
from service.schemas.raglan import SectionsSchema
from service.schemas.sentences import SentenceSchema


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
    tightest = Choice(
        *get_args(Edge), description="The edge with the smallest circumference.", required=True, source="tightest.edge"
    )
    circumference = Nested(LengthSchema, "Of that edge, unstretched.", required=True, source="tightest.circumference")
    stretched = Nested(LengthSchema, "Of that edge, stretched as far as allowed.", required=True)
    stretch_needed = Number("As a part of the circumference.", required=True, minimum=0, places=2)


def _instructions() -> Items:
    return Items(
        Nested(SentenceSchema),
        "For this size, where `include` names `size_instructions`.",
        source=methodcaller("instructions"),
        part="size_instructions",
    )


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
