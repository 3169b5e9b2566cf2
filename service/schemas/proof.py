"""The request and the answer of proofreading."""

from __future__ import annotations

from collections.abc import Sequence
from functools import cached_property
from typing import Any, get_args

from marshmallow import missing

from grading_core.codes import ProofCode
from grading_core.fraction import Fraction
from grading_core.proof.garment import Counted
from grading_core.proof.request import PrintedRow, ProofRequest
from grading_core.proof.result import Checked, Correction, Finding, Proof, RowKey, Severity, Unchecked
from grading_core.pullover.request import Gauges
from grading_core.unknown import told
from service.schemas.base import StrictSchema, at_most_one_of
from service.schemas.chart_request import ChartAnchorSchema, ChartSchema
from service.schemas.codes import CodeField
from service.schemas.common import MAX_LABEL, MAX_SIZES, ComputedSchema, CountRuleSchema, GaugeSchema
from service.schemas.containers import Items, Mapping, Nested
from service.schemas.fields import Choice, Describe, Load, Number, Prose, Spoken, StrictField, Text, Whole
from service.schemas.printing import PrintedRequestSchema
from service.schemas.pullover_request import PulloverGaugesSchema
from service.schemas.records import sent_as
from service.schemas.writing import Write

MAX_ROWS = 700
"""A pullover of 62 colours, each of several strands, has as many."""

MAX_PRINTED = 1_000_000
"""No number that a pattern prints is larger."""

MAX_RUN = 600
"""Characters of a size run."""


class PrintedValues(Items):
    """The numbers of a row. Left as they are: a request has hundreds, and they are computed with as they stand."""

    def __init__(self, description: str) -> None:
        number = Number(nullable=True, minimum=-MAX_PRINTED, maximum=MAX_PRINTED)
        super().__init__(number, description, least=1, most=MAX_SIZES, example="[84, 88, null]")

    def loader(self) -> Load:
        """Takes the numbers as they are."""
        load = super().loader()

        def load_numbers(value: Any) -> Any:
            if (
                type(value) is list
                and 1 <= len(value) <= MAX_SIZES
                and _NUMBERS.issuperset(map(type, value))
                and min(value) >= -MAX_PRINTED
                and max(value) <= MAX_PRINTED
            ):
                return tuple(value)
            return load(value)

        return load_numbers


_NUMBERS = frozenset((int, float))


class Unread(StrictField):
    """What may be sent and is not read."""

    def contract(self, describe: Describe) -> dict[str, Any]:
        """Anything."""
        return {}

    @cached_property
    def load(self) -> Load:
        """Loads nothing, whatever is sent."""
        return lambda _: missing


def _unread(what: str) -> Unread:
    return Unread(f"{what} in a pullover's table; not read.")


class PrintedRowSchema(StrictSchema):
    """A row that the pattern prints, as a pullover's table has it: one of `values`, `run` and `run_inch` or more.

    A row of a pullover's table may be sent as it came.
    """

    record = PrintedRow
    example = '{"part": "neck", "item": "cast_on", "run": "84 (88, 92)"}'

    part = Text(
        "As in a pullover's table; what has another name there isn't compared with others.", required=True, most=40
    )
    item = Text("With `part` the key of the row.", required=True, most=60)
    unit = Choice(
        description="What the numbers count; that of a pullover's table unless sent. A length is in `cm` or `inch`."
    )
    values = PrintedValues(
        "One for each size, or one for all; null where a size has none. Beside a run they count as exact, and the run "
        "is compared with them."
    )
    run = Text(
        "As it is printed: sizes in brackets of any kind, parted by commas, semicolons, colons or slashes; a dash "
        "where a size has none; decimals with point or comma; fractions; the unit after it, or none.",
        most=MAX_RUN,
        example='"84 (88, 92)"',
    )
    run_inch = Text("A length likewise in inches.", most=MAX_RUN, example='"36 1/2 (38)"')
    title = _unread("For people")
    printed = _unread("`run` as a list")
    printed_inch = _unread("`run_inch` as a list")
    letter = _unread("That of the schematic")
    colour = _unread("The colour's name")
    strand = _unread("Which strand")


class ProofsRequestSchema(PrintedRequestSchema):
    """What a pattern prints."""

    class Meta:
        """Marshmallow's options: by which convention inches are printed is seen from them."""

        exclude = ("inch_convention",)

    record = ProofRequest
    one_kind_of_gauge = at_most_one_of("gauge", "gauges")

    labels = Items(
        Text(most=MAX_LABEL),
        "Of the sizes, in the order of the runs.",
        required=True,
        least=1,
        most=MAX_SIZES,
        example='["S", "M", "L"]',
    )
    rows = Items(
        Nested(PrintedRowSchema),
        "Each number that the pattern prints, in all sizes. Not all have to be there: what can't be compared for want "
        "of one is told.",
        required=True,
        least=1,
        most=MAX_ROWS,
        example='[{"part": "neck", "item": "cast_on", "run": "84 (88, 92)"}]',
    )
    gauge = Nested(GaugeSchema, "Of all fabrics. Without a gauge no length is compared with counts.")
    gauges = Nested(PulloverGaugesSchema, "Of each fabric.")
    line_stitches = Whole(
        "Of each of the four raglan lines; what most sums agree on unless sent.",
        minimum=0,
        maximum=100,
        unit="stitches",
    )
    step = Whole("Rounds from one increase round to the next, at the least.", minimum=1, maximum=100, unit="rounds")
    count_rules = Mapping(
        Choice(*get_args(Counted)),
        Nested(CountRuleSchema),
        "Which counts are permitted, by what is counted.",
        most=len(get_args(Counted)),
        example='{"hem": {"multiple": 4}}',
    )
    chart = Nested(ChartSchema, "That sections are centred on.")
    anchor = Nested(ChartAnchorSchema, "Its column on the centre of each section; its middle unless sent.")
    skip = Items(Choice(*ProofCode), "Codes of what is not judged.", most=len(ProofCode), example='["pick_up"]')

    def build(self, loaded: dict[str, Any]) -> Any:
        """What a valid request becomes: one gauge is that of all fabrics."""
        if "gauge" in loaded:
            loaded["gauges"] = Gauges(loaded.pop("gauge"))
        if "skip" in loaded:
            loaded["skip"] = told(_codes, loaded["skip"])
        return super().build(loaded)


def _codes(sent: Sequence[str]) -> tuple[ProofCode, ...]:
    return tuple(code for code in ProofCode if code in sent)


class ExactNumber(Number):
    """A number as it is printed: a whole one without decimals."""

    def writer(self) -> Write:
        """Writes a Fraction."""
        return _as_printed


def _as_printed(value: Fraction, _: Any) -> int | float:
    written: int | float = sent_as(value)
    return written if type(written) is int else round(written, 4)


class RowKeySchema(StrictSchema):
    """A row of the table, by its key."""

    record = RowKey

    part = Prose(required=True)
    item = Prose(required=True)


def _unit_field() -> Prose:
    return Prose("Of the two numbers; empty where nobody knows it.", required=True)


def _cause_field() -> CodeField:
    return CodeField("CauseCode", "What the slip is likely to be, where something speaks for it.", source="cause")


class ProofCorrectionSchema(StrictSchema):
    """A number whose change, with those of its size beside it, makes everything hold in that size."""

    record = Correction

    size = Prose("The size's label.", required=True)
    row = Nested(RowKeySchema, required=True)
    unit = _unit_field()
    printed = ExactNumber("What is printed.", required=True)
    expected = ExactNumber("What would do: of a length the middle of what would.", required=True)
    others = Whole(
        "How many other sets of as many numbers would mend the size too. 0: nothing else as small would.",
        required=True,
        minimum=0,
    )
    likely_cause = _cause_field()


class FindingSchema(StrictSchema):
    """Something that doesn't hold between printed numbers."""

    record = Finding

    code = CodeField("ProofCode", required=True)
    severity = Choice(
        *get_args(Severity),
        required=True,
        description="`wrong`: the numbers contradict one another. `doubtful`: a pattern may have meant it, and says so "
        "in its words. `note`: other publishers may measure it otherwise.",
    )
    size = Prose("The size's label; null where it is about a whole row.", required=True, nullable=True)
    rows = Items(Nested(RowKeySchema), "That it is between.", required=True)
    unit = _unit_field()
    printed = ExactNumber(
        "Of the row that is to blame, or else of the first; null where it is no single number.",
        required=True,
        nullable=True,
    )
    expected = ExactNumber("What would hold; null where nothing tells.", required=True, nullable=True)
    because = Spoken("The reasoning, in the language asked.", required=True)
    likely_cause = _cause_field()


class CheckedSchema(StrictSchema):
    """What was computed."""

    record = Checked

    code = CodeField("ProofCode", required=True)
    times = Whole("How often, over all sizes.", required=True, minimum=1)


class UncheckedSchema(StrictSchema):
    """What could not be computed in any size."""

    record = Unchecked

    code = CodeField("ProofCode", required=True)
    missing_rows = Items(Nested(RowKeySchema), "Rows that it needs.", required=True, source="rows")
    missing_fields = Items(Prose(), "Fields of the request that it needs.", required=True, source="fields")


class ProofsSchema(ComputedSchema):
    """What doesn't add up."""

    record = Proof

    labels = Items(Prose(), "Of the sizes.", required=True)
    corrections = Items(
        Nested(ProofCorrectionSchema),
        "The smallest set of numbers whose change makes everything hold that is between several rows. None where more "
        "than three numbers of a size would have to change.",
        required=True,
    )
    findings = Items(
        Nested(FindingSchema), "Everything that doesn't hold, size by size, and then by rows.", required=True
    )
    checked = Items(Nested(CheckedSchema), "Which relations were computed, and how often.", required=True)
    unchecked = Items(Nested(UncheckedSchema), "Which could not be computed, and what is missing.", required=True)
    most_wanted = Nested(
        RowKeySchema, "The missing row that alone would allow most of them.", required=True, nullable=True
    )
