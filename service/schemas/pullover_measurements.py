"""Answers about what a pullover measures, as it is designed and at a maker's own gauge."""

from __future__ import annotations

from operator import methodcaller

from grading_core.parts.neckline import HeadCheck
from grading_core.pullover.result import AtOwnGauge, Corrections, Measured
from service.schemas.base import StrictSchema
from service.schemas.common import LengthSchema
from service.schemas.containers import Items, Nested
from service.schemas.fields import Choice, Flag, Number, Prose, Whole
from service.schemas.yarn import YarnNeedSchema


class HeadCheckSchema(StrictSchema):
    """Whether the neck passes the head."""

    record = HeadCheck

    passes = Flag("With the stretch allowed.", required=True)
    tightest = Prose("The edge with the smallest circumference.", required=True, source="tightest.name")
    circumference = Nested(LengthSchema, "Of that edge, unstretched.", required=True, source="tightest.circumference")
    stretched = Nested(LengthSchema, "Of that edge, stretched as far as allowed.", required=True)
    stretch_needed = Number("As a part of the circumference.", required=True, minimum=0, places=2)


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
