"""Requests and answers about sizes: grading them and choosing one."""

from __future__ import annotations

from collections.abc import Mapping as MappingType
from dataclasses import dataclass
from fractions import Fraction
from typing import Any

from grading_core.sizes.bodies import SentSize
from grading_core.sizes.choice import FinishedSize, SizeMatchRequest
from grading_core.sizes.grading import EvenSteps, SizeGradingRequest
from grading_core.standards import BODY_TABLES
from grading_core.standards.body import MEANINGS, MEASUREMENTS
from grading_core.standards.fit import FIT_NAMES
from grading_core.units import InchConvention
from service.lengths import REQUEST_UNIT, lengths_in
from service.schemas.base import StrictSchema, at_least_one_of, exactly_one_of
from service.schemas.common import (
    MAX_SIZES,
    ComputedSchema,
    CountRuleSchema,
    GaugeSchema,
    LengthSchema,
    RequestSchema,
)
from service.schemas.fields import (
    ByType,
    Choice,
    Flag,
    Items,
    Length,
    Mapping,
    Nested,
    Number,
    Text,
    Whole,
)

MAX_BODY = 1000
"""No body measurement is longer, in either unit."""

ORIGINS = ("sent", "published", "derived", "estimated")


@dataclass(frozen=True, slots=True)
class SizeGradingsQuery:
    """A grading, and how its size runs are printed."""

    grading: SizeGradingRequest
    cm_step: Fraction
    inch_denominator: int
    inch_convention: InchConvention


def _sent_size(label: str, **measurements: Fraction) -> SentSize:
    return SentSize(label, measurements)  # type: ignore[arg-type]


def _even_steps(**ends: Fraction) -> EvenSteps:
    return EvenSteps(ends["from"], ends["to"])


def _body(name: str) -> Length:
    return Length(f"{MEANINGS[name][0].upper()}{MEANINGS[name][1:]}.", minimum=0.1, maximum=MAX_BODY)  # type: ignore[index]


def _ease(description: str = "", **options: Any) -> Length:
    return Length(description, minimum=-MAX_BODY, maximum=MAX_BODY, **options)


class EaseStepsSchema(StrictSchema):
    """Ease in even steps over the sizes, in the order they are sent."""

    builds = staticmethod(_even_steps)

    class Meta(StrictSchema.Meta):
        """Fields whose names are Python's own words."""

        include = {  # noqa: RUF012
            "from": _ease("At the first size.", required=True),
            "to": _ease("At the last size.", required=True),
        }


class CustomSizeSchema(StrictSchema):
    """A size of your own table: its label and the body measurements that you know."""

    builds = staticmethod(_sent_size)
    some_measurement = at_least_one_of(*MEASUREMENTS)

    label = Text("Unique among the sizes.", required=True, most=40)
    bust = _body("bust")
    waist = _body("waist")
    hip = _body("hip")
    upper_arm = _body("upper_arm")
    wrist = _body("wrist")
    neck = _body("neck")
    head = _body("head")
    cross_back = _body("cross_back")
    back_waist_length = _body("back_waist_length")
    armhole_depth = _body("armhole_depth")
    arm_length = _body("arm_length")
    back_neck_to_wrist = _body("back_neck_to_wrist")
    back_hip_length = _body("back_hip_length")


class BodiesSchema(StrictSchema):
    """The bodies: a built-in table, sizes of your own, or both."""

    body_table = Choice(
        *BODY_TABLES,
        description="A built-in body table. Beside `sizes` it fills their missing measurements by interpolation on the "
        "bust.",
    )
    labels = Items(
        Text(most=40),
        "Which sizes of the table, in the order of the answer; all of them unless sent. Not beside `sizes`.",
        least=1,
        most=MAX_SIZES,
    )
    sizes = Items(Nested(CustomSizeSchema), "Your own body table.", least=1, most=MAX_SIZES)
    within = Choice(
        "low",
        "middle",
        "high",
        default="middle",
        description="Which part of a published range counts as the body.",
    )


def ease_field(*measurements: str, description: str) -> Mapping:
    """The ease of some measurements."""
    return Mapping(
        Choice(*measurements),
        ByType(
            "One number, one per size, or even steps from the first size to the last.",
            number=_ease(),
            items=Items(_ease(), least=1, most=MAX_SIZES),
            record=Nested(EaseStepsSchema),
        ),
        f"By measurement: finished garment minus body, negative where the fabric is to stretch. {description}",
        most=len(measurements),
    )


class GradingFieldsSchema(BodiesSchema):
    """What a grading is made of."""

    bodies = at_least_one_of("body_table", "sizes")

    gauge = Nested(GaugeSchema, "Of the blocked fabric.", required=True)
    ease = ease_field(*MEASUREMENTS, description="None unless sent.")
    count_rules = Mapping(
        Choice(*MEASUREMENTS),
        Nested(CountRuleSchema),
        "By measurement: which counts are permitted. The nearest whole number unless sent.",
        most=len(MEASUREMENTS),
    )


class SizeGradingsRequestSchema(GradingFieldsSchema, RequestSchema):
    """Bodies, ease and gauge, to become counts and finished measurements."""

    builds = SizeGradingsQuery

    printed_cm_step = Number(
        "To what the centimetres of the size runs are rounded.",
        minimum=0.1,
        maximum=5,
        default=0.5,
        unit="cm",
    )
    printed_inch_step = Choice(
        "1/2", "1/4", default="1/4", description="To what the inches of the size runs are rounded."
    )

    def build(self, loaded: dict[str, Any]) -> SizeGradingsQuery:
        """The grading, and how its size runs are printed."""
        convention, cm_step, inch_step = (
            loaded.pop(name) for name in ("inch_convention", "printed_cm_step", "printed_inch_step")
        )
        del loaded["unit"]
        return SizeGradingsQuery(
            SizeGradingRequest(**loaded), cm_step, Fraction(inch_step).denominator, convention
        )


class MatchedGradingSchema(GradingFieldsSchema):
    """A size grading, as `POST /v1/size-gradings` takes it; only its bust is looked at."""

    unit = Choice("cm", "in", description="The unit of the grading's lengths; the request's unless sent.")
    inch_convention = Choice("exact", "nominal", description="Has no say here: the request's counts.")
    printed_cm_step = Number("Has no say here.", minimum=0.1, maximum=5, unit="cm")
    printed_inch_step = Choice("1/2", "1/4", description="Has no say here.")

    def load(self, data: Any, **options: Any) -> Any:
        """The grading, its lengths read in its own unit."""
        own = data.get("unit") if isinstance(data, MappingType) else None
        with lengths_in(own or REQUEST_UNIT.get()):
            return super().load(data, **options)

    def build(self, loaded: dict[str, Any]) -> SizeGradingRequest:
        """The grading alone."""
        for name in ("unit", "inch_convention", "printed_cm_step", "printed_inch_step"):
            loaded.pop(name, None)
        return SizeGradingRequest(**loaded)


class FinishedBustSchema(StrictSchema):
    """A size as the pattern prints it."""

    builds = FinishedSize

    label = Text("Unique among the sizes.", required=True, most=40)
    bust = Length("The finished circumference.", minimum=0.1, maximum=MAX_BODY, required=True)


class SizeMatchesRequestSchema(RequestSchema):
    """What sizes there are, and what is wanted: a garment that fits, or a body with ease."""

    builds = SizeMatchRequest
    one_offer = exactly_one_of("finished", "grading")
    some_wish = at_least_one_of("garment", "body")

    finished = Items(Nested(FinishedBustSchema), "The pattern's sizes.", least=1, most=MAX_SIZES)
    grading = Nested(MatchedGradingSchema, "Or what makes them.")
    garment = Length(
        "The circumference of a garment that fits. A `body` beside it serves to tell the ease.",
        minimum=0.1,
        maximum=MAX_BODY,
    )
    body = Length("The bust, with the wanted `ease`.", minimum=0.1, maximum=MAX_BODY)
    ease = _ease("The wanted ease of the body; not beside `garment`.")
    written_gauge = Nested(GaugeSchema, "The pattern's; the grading's unless sent.")
    own_gauge = Nested(GaugeSchema, "The knitter's, where it is another one.")


class GradedMeasurementSchema(StrictSchema):
    """One measurement of one size, with `stitches` across or `rows` along."""

    one_count = exactly_one_of("stitches", "rows")

    body = Nested(LengthSchema, "The body's.", required=True)
    ease = Nested(LengthSchema, "The ease asked for.", required=True)
    target = Nested(LengthSchema, "`body` plus `ease`.", required=True)
    stitches = Whole("To work.", minimum=0, unit="stitches")
    rows = Whole("To work.", minimum=0, unit="rows")
    finished = Nested(LengthSchema, "What the count makes at the gauge.", required=True)
    difference = Nested(LengthSchema, "`finished` minus `target`.", required=True)
    origin = Choice(
        *ORIGINS,
        required=True,
        description="Where the body is from: sent; published in the table; derived from another publication; or an "
        "estimate where no publication reaches.",
    )
    interpolated = Flag("True where the body lies between two sizes of the table.")


class GradedSizeSchema(StrictSchema):
    """One size."""

    label = Text("As sent.", required=True, most=40)
    fit = Choice(*FIT_NAMES, description="The published name for the ease at the bust.")
    measurements = Mapping(
        Choice(*MEASUREMENTS),
        Nested(GradedMeasurementSchema),
        "By name, in a fixed order.",
        required=True,
        most=len(MEASUREMENTS),
    )


class PrintedRunsSchema(StrictSchema):
    """One measurement as the size runs that a pattern prints."""

    one_count = exactly_one_of("stitches", "rows")

    stitches = Text("The counts.", most=2000)
    rows = Text("The counts.", most=2000)
    finished_cm = Text("The finished lengths in cm.", required=True, most=2000)
    finished_inch = Text("The finished lengths in inches.", required=True, most=2000)


class SizeGradingsSchema(ComputedSchema):
    """The graded sizes, in the order of the request."""

    sizes = Items(Nested(GradedSizeSchema), "One per size.", required=True, least=1, most=MAX_SIZES)
    runs = Mapping(
        Choice(*MEASUREMENTS),
        Nested(PrintedRunsSchema),
        "By measurement; a dash where a size has no value.",
        required=True,
        most=len(MEASUREMENTS),
    )


class MatchedSizeSchema(StrictSchema):
    """A size beside what is wanted."""

    label = Text("The size.", required=True, most=40)
    finished = Nested(LengthSchema, "Its circumference.", required=True)
    ease = Nested(
        LengthSchema, "`finished` minus the body; null where no body was sent.", required=True, nullable=True
    )
    difference = Nested(LengthSchema, "`finished` minus what is wanted.", required=True)


class NeighboursSchema(StrictSchema):
    """The next smaller and the next larger circumference."""

    smaller = Nested(MatchedSizeSchema, "Null where there is none.", required=True, nullable=True)
    larger = Nested(MatchedSizeSchema, "Null where there is none.", required=True, nullable=True)


class SizeChoiceSchema(StrictSchema):
    """The best size at the knitter's own gauge, counts unchanged."""

    best = Nested(MatchedSizeSchema, "The nearest; of two equally near ones the larger.", required=True)
    neighbours = Nested(NeighboursSchema, required=True)


class SizeMatchesSchema(ComputedSchema):
    """The best size, and its neighbours."""

    wanted = Nested(LengthSchema, "The circumference looked for.", required=True)
    best = Nested(MatchedSizeSchema, "The nearest; of two equally near ones the larger.", required=True)
    neighbours = Nested(NeighboursSchema, required=True)
    at_own_gauge = Nested(
        SizeChoiceSchema,
        "Where both gauges are known: each size's circumference as your own gauge makes it from the written counts.",
    )
