"""The rounds of a placed chart, the one list of the service that is thousands of objects long.

By their schemas they would take almost three times as long to write, a twentieth more of a whole request. So they are
written by hand, and sections that start alike, one object for all rounds in the core, share what is written of them.
"""

from __future__ import annotations

from itertools import count
from typing import Any

from grading_core.chart.result import BodyRound, ChartRounds, SectionStart, SleeveRound, YokeRound
from grading_core.limits import MAX_ROUNDS
from service.alike import each_once
from service.lengths import LengthWriter
from service.schemas.base import StrictSchema
from service.schemas.containers import Items, Nested
from service.schemas.fields import Whole
from service.schemas.writing import Write

CHART_ROUNDS = "chart_rounds"
"""The part of an answer that tells a chart round by round."""


class Rounds(Items):
    """Every round of a part, round 1 first.

    schema: of a round, for the contract. write: makes JSON of all of them.
    """

    def __init__(self, schema: type[StrictSchema], write: Write, description: str, **options: Any) -> None:
        self._write_all = write
        super().__init__(Nested(schema), description, most=MAX_ROUNDS, part=CHART_ROUNDS, **options)

    def writer(self) -> Write:
        """Writes the whole list."""
        return self._write_all


def round_field() -> Whole:
    """The number of a round."""
    return Whole("Counted from 1 in its part.", required=True, minimum=1)


def column_field() -> Whole:
    """The column of a stitch."""
    return Whole("From the right; null where plain.", required=True, nullable=True, minimum=1)


def _row_field() -> Whole:
    return Whole("Null where no row is worked.", required=True, nullable=True, minimum=1)


def _stitches_field() -> Whole:
    return Whole(required=True, minimum=0, unit="stitches")


def _plain_field(place: str) -> Whole:
    return Whole(
        f"Plain stitches {place} the whole motifs; only where partial motifs are plain, and at least one fits whole.",
        minimum=0,
        unit="stitches",
    )


class SectionStartSchema(StrictSchema):
    """A section in one round: its stitches, and the columns of the first and the last worked from the chart."""

    stitches = _stitches_field()
    first_column = column_field()
    last_column = column_field()
    plain_before = _plain_field("before")
    plain_after = _plain_field("after")


class YokeRoundSchema(StrictSchema):
    """A round of the yoke."""

    round = round_field()
    chart_row = _row_field()
    back = Nested(SectionStartSchema, required=True)
    front = Nested(SectionStartSchema, required=True)
    sleeve = Nested(SectionStartSchema, "Each sleeve.", required=True)


class BodyRoundSchema(StrictSchema):
    """A round of the body; back and front are its halves between the seams."""

    round = round_field()
    chart_row = _row_field()
    back = Nested(SectionStartSchema, required=True)
    front = Nested(SectionStartSchema, required=True)


class SleeveRoundSchema(StrictSchema):
    """A round of each sleeve, without its seam."""

    round = round_field()
    chart_row = _row_field()
    stitches = _stitches_field()
    first_column = column_field()
    last_column = column_field()
    plain_before = _plain_field("before")
    plain_after = _plain_field("after")


def yoke_rounds(rounds: ChartRounds[YokeRound], _: LengthWriter) -> list[dict[str, Any]]:
    """The rounds of a yoke, as `YokeRoundSchema` has them."""
    told = zip(count(1), rounds.rows, *(each_once(_start, starts) for starts in rounds.starts))
    return [
        {"round": number, "chart_row": row, "back": back, "front": front, "sleeve": sleeve}
        for number, row, back, front, sleeve in told
    ]


def body_rounds(rounds: ChartRounds[BodyRound], _: LengthWriter) -> list[dict[str, Any]]:
    """The rounds of a body, as `BodyRoundSchema` has them."""
    told = zip(count(1), rounds.rows, *(each_once(_start, starts) for starts in rounds.starts))
    return [{"round": number, "chart_row": row, "back": back, "front": front} for number, row, back, front in told]


def sleeve_rounds(rounds: ChartRounds[SleeveRound], _: LengthWriter) -> list[dict[str, Any]]:
    """The rounds of a sleeve, as `SleeveRoundSchema` has them."""
    told = zip(count(1), rounds.rows, *(each_once(_start, starts) for starts in rounds.starts))
    return [{"round": number, "chart_row": row, **start} for number, row, start in told]


def _start(start: SectionStart) -> dict[str, int | None]:
    found = {"stitches": start.stitches, "first_column": start.first_column, "last_column": start.last_column}
    if start.plain_before is not None:
        found |= {"plain_before": start.plain_before, "plain_after": start.plain_after}
    return found
