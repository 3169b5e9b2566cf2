"""Requests and answers about sizes: grading them and choosing one."""

from __future__ import annotations

from functools import cached_property
from typing import Any, ClassVar

from grading_core.sizes.request import (
    BodiesRequest,
    EvenSteps,
    FinishedSize,
    SentSize,
    SizeGradingRequest,
    SizeMatchRequest,
)
from grading_core.sizes.result import (
    GradedMeasurement,
    GradedSize,
    Neighbours,
    Offer,
    PrintedRuns,
    SizeChoice,
    SizeGrading,
    SizeMatch,
)
from grading_core.standards import BODY_TABLES, Measurement
from grading_core.standards.body import MEANINGS, MEASUREMENTS
from grading_core.standards.fit import FIT_NAMES
from service.lengths import REQUEST_UNIT, LengthWriter, lengths_in
from service.schemas.base import StrictSchema, at_least_one_of, exactly_one_of
from service.schemas.common import (
    MAX_LABEL,
    MAX_SIZES,
    AnswerSizesSchema,
    ComputedSchema,
    CountRuleSchema,
    GaugeSchema,
    LengthSchema,
    RequestSchema,
)
from service.schemas.containers import ByType, Items, Mapping, Nested
from service.schemas.fields import Choice, Flag, Length, Text, Whole
from service.schemas.printing import PrintedRequestSchema
from service.schemas.writing import Write

MAX_BODY = 1000
"""No body measurement is longer, in either unit."""


def _body(measurement: Measurement) -> Length:
    meaning = MEANINGS[measurement]
    return Length(f"{meaning[0].upper()}{meaning[1:]}.", minimum=0.1, maximum=MAX_BODY)


def _ease(description: str = "", **options: Any) -> Length:
    return Length(description, minimum=-MAX_BODY, maximum=MAX_BODY, example="10", **options)


class EaseStepsSchema(StrictSchema):
    """Ease in even steps over the sizes, in the order they are sent."""

    example = '{"from": 8, "to": 12}'

    record = EvenSteps

    class Meta(StrictSchema.Meta):
        """Fields whose names are Python's own words."""

        include = {  # noqa: RUF012
            "from": _ease("At the first size.", required=True, source="first"),
            "to": _ease("At the last size.", required=True, source="last"),
        }


class CustomSizeSchema(StrictSchema):
    """A size of your own table: its label and the body measurements that you know."""

    example = '{"label": "S", "bust": 84}'

    some_measurement = at_least_one_of(*MEASUREMENTS)

    label = Text("Unique among the sizes.", required=True, most=MAX_LABEL)

    class Meta(StrictSchema.Meta):
        """A field for every measurement."""

        include = {name: _body(name) for name in MEASUREMENTS}  # noqa: RUF012

    def build(self, loaded: dict[Any, Any]) -> SentSize:
        """The size, its measurements apart from its label."""
        return SentSize(loaded.pop("label"), loaded)


class BodiesSchema(AnswerSizesSchema):
    """The bodies: a built-in table, sizes of your own, or both."""

    record: ClassVar[type[Any] | None] = BodiesRequest

    body_table = Choice(
        *BODY_TABLES,
        description="A built-in body table. Beside `sizes` it fills their missing measurements by interpolation on the "
        "bust.",
    )
    labels = Items(
        Text(most=MAX_LABEL),
        "Which sizes of the table, in the order of the answer; all of them unless sent. Not beside `sizes`.",
        least=1,
        most=MAX_SIZES,
        example='["S", "M", "L"]',
    )
    sizes = Items(Nested(CustomSizeSchema), "Your own body table.", least=1, most=MAX_SIZES)
    within = Choice(description="Which part of a published range counts as the body.")


def ease_field(*measurements: str, description: str) -> Mapping:
    """The ease of some measurements."""
    # openapi-generator can't read a named choice between types as a value in a mapping, so this one has no name
    return Mapping(
        Choice(*measurements),
        ByType(
            "One number, one per size, or even steps from the first size to the last.",
            number=_ease(),
            items=Items(_ease(), least=1, most=MAX_SIZES, example="[8, 10, 12]"),
            record=Nested(EaseStepsSchema),
        ),
        f"By measurement: finished garment minus body, negative where the fabric is to stretch. {description}",
        most=len(measurements),
        example='{"bust": 10}',
    )


class SizeGradingsRequestSchema(BodiesSchema, PrintedRequestSchema):
    """Bodies, ease and gauge, to become counts and finished measurements."""

    record = SizeGradingRequest
    bodies = at_least_one_of("body_table", "sizes")

    gauge = Nested(GaugeSchema, "Of the blocked fabric.", required=True)
    ease = ease_field(*MEASUREMENTS, description="None unless sent.")
    count_rules = Mapping(
        Choice(*MEASUREMENTS),
        Nested(CountRuleSchema),
        "By measurement: which counts are permitted. The nearest whole number unless sent.",
        most=len(MEASUREMENTS),
        example='{"bust": {"multiple": 4}}',
    )


class MatchedGradingSchema(SizeGradingsRequestSchema):
    """A size grading, as `POST /v1/size-gradings` takes it; only its bust is looked at, not how it is printed."""

    example = '{"gauge": {"stitches": 22, "rows": 31}, "body_table": "women"}'

    unit = Choice("cm", "in", description="The unit of the grading's lengths; the request's unless sent.")

    def load(self, data: Any, **options: Any) -> Any:
        """The grading, its lengths read in its own unit."""
        own = data.get("unit") if type(data) is dict else None
        with lengths_in(REQUEST_UNIT.get() if own is None else own):
            return super().load(data, **options)


class FinishedBustSchema(StrictSchema):
    """A size as the pattern prints it."""

    example = '{"label": "S", "bust": 96}'

    record = FinishedSize

    label = Text("Unique among the sizes.", required=True, most=MAX_LABEL)
    bust = Length("The finished circumference.", minimum=0.1, maximum=MAX_BODY, required=True)


class SizeMatchesRequestSchema(RequestSchema):
    """What sizes there are, and what is wanted: a garment that fits, or a body with ease."""

    record = SizeMatchRequest
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

    record = GradedMeasurement
    one_count = exactly_one_of("stitches", "rows")

    body = Nested(LengthSchema, "The body's.", required=True, source="body.cm")
    ease = Nested(LengthSchema, "The ease asked for.", required=True)
    target = Nested(LengthSchema, "`body` plus `ease`.", required=True)
    stitches = Whole("To work.", minimum=0, unit="stitches")
    rows = Whole("To work.", minimum=0, unit="rows")
    finished = Nested(LengthSchema, "What the count makes at the gauge.", required=True)
    difference = Nested(LengthSchema, "`finished` minus `target`.", required=True)
    origin = Choice(
        required=True,
        source="body.origin",
        description="Where the body is from: sent; published in the table; derived from another publication; or an "
        "estimate where no publication reaches.",
    )
    interpolated = Flag(
        "True where the body lies between two sizes of the table.", source=lambda cell: cell.body.interpolated or None
    )

    @cached_property
    def writer(self) -> Write:
        """Written by hand, since an answer has hundreds."""
        return _write_graded


def _write_graded(graded: GradedMeasurement, length: LengthWriter) -> dict[str, Any]:
    """A difference is rounded without being made, and most measurements have no ease."""
    body, target, finished = graded.body, graded.target, graded.finished
    of_body = length(body.cm)
    count = ("stitches", graded.stitches) if graded.rows is None else ("rows", graded.rows)
    written = {
        "body": of_body,
        "ease": length(graded.ease),
        "target": length(target) if graded.ease else of_body,
        count[0]: count[1],
        "finished": length(finished),
        "difference": length(finished, target),
        "origin": body.origin,
    }
    if body.interpolated:
        written["interpolated"] = True
    return written


class GradedSizeSchema(StrictSchema):
    """One size."""

    record = GradedSize

    label = Text("As sent.", required=True, most=MAX_LABEL)
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

    record = PrintedRuns
    one_count = exactly_one_of("stitches", "rows")

    stitches = Text("The counts.", most=2000)
    rows = Text("The counts.", most=2000)
    finished_cm = Text("The finished lengths in cm.", required=True, most=2000)
    finished_inch = Text("The finished lengths in inches.", required=True, most=2000)


class SizeGradingsSchema(ComputedSchema):
    """The graded sizes, in the order of the request."""

    record = SizeGrading

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

    record = Offer

    label = Text("The size.", required=True, most=MAX_LABEL)
    finished = Nested(LengthSchema, "Its circumference.", required=True)
    ease = Nested(LengthSchema, "`finished` minus the body; null where no body was sent.", required=True, nullable=True)
    difference = Nested(LengthSchema, "`finished` minus what is wanted.", required=True)


class NeighboursSchema(StrictSchema):
    """The next smaller and the next larger circumference."""

    record = Neighbours

    smaller = Nested(MatchedSizeSchema, "Null where there is none.", required=True, nullable=True)
    larger = Nested(MatchedSizeSchema, "Null where there is none.", required=True, nullable=True)


class SizeChoiceSchema(StrictSchema):
    """The best size at the knitter's own gauge, counts unchanged."""

    record = SizeChoice

    best = Nested(MatchedSizeSchema, "The nearest; of two equally near ones the larger.", required=True)
    neighbours = Nested(NeighboursSchema, required=True)


class SizeMatchesSchema(ComputedSchema):
    """The best size, and its neighbours."""

    record = SizeMatch
    inline = ("written",)

    wanted = Nested(LengthSchema, "The circumference looked for.", required=True)
    best = Nested(MatchedSizeSchema, "The nearest; of two equally near ones the larger.", required=True)
    neighbours = Nested(NeighboursSchema, required=True)
    at_own_gauge = Nested(
        SizeChoiceSchema,
        "Where both gauges are known: each size's circumference as your own gauge makes it from the written counts.",
    )
