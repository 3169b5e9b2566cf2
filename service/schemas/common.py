"""The pieces that many requests and answers share."""

from __future__ import annotations

from fractions import Fraction
from typing import Any, ClassVar, get_args

from grading_core.errors import Nearest, Remark
from grading_core.gauge import Gauge
from grading_core.rounding import CountRule
from grading_core.units import USUAL_INCH_CONVENTION, USUAL_UNIT, InchConvention, Unit, to_cm
from service.errors import pointer
from service.lengths import REQUEST_UNIT, in_request_unit
from service.schemas.base import StrictSchema, exactly_one_of
from service.schemas.codes import CodeField
from service.schemas.containers import ByType, Items, Nested
from service.schemas.fields import Choice, Length, Number, Prose, Spoken, Text, Whole
from service.schemas.writing import Write, added_later, write_length

MAX_LENGTH = 10_000
"""No length in a request is longer, in either unit."""

MAX_COUNT = 100_000
"""No count of stitches or rows in a request is larger, where the operation has no lower limit."""

MAX_SIZES = 40
"""No request has more sizes."""

MAX_LABEL = 40
"""Characters of a size's label."""


class RequestSchema(StrictSchema):
    """Base of every request that holds lengths."""

    unit = Choice(*get_args(Unit), default=USUAL_UNIT, description="The unit of every length in the request.")
    inch_convention = Choice(
        *get_args(InchConvention),
        default=USUAL_INCH_CONVENTION,
        description="How the inches of the answer are computed: 1 in = 2.54 cm, or 10 cm = 4 in as some "
        "publishers print. Inches in a request are always exact.",
    )

    def build(self, loaded: dict[str, Any]) -> Any:
        """What a valid request becomes: the core knows centimetres only, and inches where it prints them."""
        loaded.pop("unit", None)
        if "inch_convention" not in self.paths:
            loaded.pop("inch_convention", None)
        return super().build(loaded)


class AnswerSizesSchema(StrictSchema):
    """Which sizes are answered: part of a request whose record says the same."""

    answer_sizes = Items(
        Text(most=MAX_LABEL),
        "The labels of the sizes that are answered, all unless sent. Everything is chosen over all sizes all the same: "
        "to leave a size out of the grading, don't send it.",
        least=1,
        most=MAX_SIZES,
        example='["S", "M"]',
    )


class GaugeSchema(StrictSchema):
    """Stitches and rows counted over a span of blocked fabric."""

    example = '{"stitches": 22, "rows": 31}'

    stitches = Number("Stitches counted.", minimum=0.5, maximum=1000, required=True, unit="stitches")
    rows = Number("Rows or rounds counted.", minimum=0.5, maximum=1000, required=True, unit="rows")
    over = Length("The span they were counted over: 10 cm or 4 in unless sent.", minimum=0.5, maximum=1000)
    rows_over = Length("The span of the rows, where it is another one.", minimum=0.5, maximum=1000)

    def build(self, loaded: dict[str, Any]) -> Gauge:
        """The gauge; the span that isn't sent is the usual one of the request's unit."""
        over = loaded.get("over") or (to_cm(10) if REQUEST_UNIT.get() == "cm" else to_cm(4, "in"))
        return Gauge.over(loaded["stitches"], loaded["rows"], over, loaded.get("rows_over"))


class CountRuleSchema(StrictSchema):
    """Which counts are permitted: a multiple, plus a remainder."""

    example = '{"multiple": 4, "plus": 2}'

    record: ClassVar[type[Any] | None] = CountRule

    multiple = Whole("The count is a multiple of this.", minimum=1, maximum=1000)
    plus = Whole("Plus this.", minimum=0, maximum=1000)
    rounding = Choice(description="Which permitted count is taken; a tie goes up.")


class LengthSchema(StrictSchema):
    """A length, rounded to two decimals, half up, from the exact value."""

    cm = Number(required=True, unit="cm")
    inch = Number("By the request's `inch_convention`.", required=True, unit="in")

    @property
    def writer(self) -> Write:
        """A length is what the writer of lengths writes."""
        return write_length


def _as_sent(nearest: Nearest) -> int | float | str:
    """The value as the request would have it: a length in its unit, as near to what was tried in inches as in cm."""
    value = nearest.value
    return in_request_unit(value, inch_places=4) if isinstance(value, Fraction) else value


class NearestSchema(StrictSchema):
    """A change of the request that alone would make the impossible possible."""

    record = Nearest

    field = Prose("The request's field to change.", required=True)
    value = ByType("What to set it to.", number=Number(), text=Prose(), required=True, source=_as_sent)


def _pointer(remark: Remark) -> str | None:
    return None if remark.path is None else pointer(remark.path)


class WarningSchema(StrictSchema):
    """A word of caution about an answer that is right."""

    record = Remark

    code = CodeField("WarningCode", required=True)
    message = Spoken("For people, in the language asked.", required=True)
    size = Prose("The size that it concerns.")
    pointer = Prose("The place in the request that it is about, a JSON Pointer (RFC 6901).", source=_pointer)


class MetaSchema(StrictSchema):
    """What computed the answer, and from what."""

    version = Prose("The service's version.", required=True)
    input_digest = Prose(
        "A digest of what is asked: the order of keys, white space, 3 or 3.0, and a default that is sent or left out "
        "make no difference. One version has one answer to it in each language.",
        required=True,
    )


class AnswerSchema(StrictSchema):
    """Base of every JSON answer."""

    meta = Nested(MetaSchema, required=True, source=added_later)


class ComputedSchema(AnswerSchema):
    """Base of every computed answer."""

    warnings = Items(
        Nested(WarningSchema),
        "Words of caution about an answer that is right.",
        required=True,
        most=1000,
        source="remarks",
    )


class WrongPlaceSchema(StrictSchema):
    """One wrong place in a request: in its body, or a query parameter."""

    one_place = exactly_one_of("pointer", "parameter")

    pointer = Prose("A JSON Pointer (RFC 6901) into the body.")
    parameter = Prose("The name of a query parameter.")
    code = CodeField("ErrorCode", required=True)
    detail = Prose("What is wrong there.", required=True)


class ProblemSchema(StrictSchema):
    """Why a request was refused (RFC 9457)."""

    type = Prose("A stable URI reference that the service itself explains.", required=True)
    title = Prose("Short, the same for every problem of the type.", required=True)
    status = Whole("The HTTP status.", required=True, minimum=400, maximum=599)
    detail = Prose("What is the matter with this request.", required=True)
    instance = Prose("The request id, as in `X-Request-Id`.", required=True)
    errors = Items(Nested(WrongPlaceSchema), "Every wrong place in the request.")
