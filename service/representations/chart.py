"""Answers about colourwork charts."""

from __future__ import annotations

from collections.abc import Callable, Mapping, Sequence
from fractions import Fraction
from typing import Any

from grading_core.chart.grid import mirror_axes, symmetry
from grading_core.chart.result import (
    BodyPlacement,
    ChartPlacements,
    FloatEnd,
    LongestFloat,
    RoundsByPart,
    SectionStart,
    SizePlacement,
    SleevePlacement,
    Span,
)
from grading_core.gauge import Gauge
from service.charts import ChartColour, DrawnChart
from service.lengths import LengthWriter
from service.representations.common import warnings


def chart_placements(
    result: tuple[DrawnChart, Gauge, ChartPlacements], length: LengthWriter
) -> dict[str, Any]:
    """The answer of `POST /v1/chart-placements`."""
    drawn, gauge, placed = result
    return {
        "chart": drawn_chart(drawn, placed.mirror_axes),
        "sizes": [size_placement(size, gauge, length) for size in placed.sizes],
        "warnings": warnings(placed.remarks),
    }


def read_chart(drawn: DrawnChart, _: LengthWriter) -> dict[str, Any]:
    """The answer of `POST /v1/charts`."""
    axes = mirror_axes(drawn.chart)
    return {
        "chart": {"rows": list(drawn.chart.rows), "colours": _colours(drawn.colours)},
        "symmetry": symmetry(axes),
        "mirror_axes": [_column(axis) for axis in axes],
        "warnings": [],
    }


def drawn_chart(drawn: DrawnChart, axes: tuple[Fraction, ...]) -> dict[str, Any]:
    """What the chart itself is, with its mirror axes."""
    return {
        "columns": drawn.chart.width,
        "rows": drawn.chart.height,
        "colours": _colours(drawn.colours),
        "symmetry": symmetry(axes),
        "mirror_axes": [_column(axis) for axis in axes],
    }


def _colours(named: Mapping[str, ChartColour]) -> dict[str, dict[str, str]]:
    """Colours by symbol, as a request has them."""
    return {
        symbol: {"name": colour.name} if colour.hex is None else {"name": colour.name, "hex": colour.hex}
        for symbol, colour in named.items()
    }


def _column(axis: Fraction) -> int | float:
    return axis.numerator if axis.denominator == 1 else float(axis)


def size_placement(size: SizePlacement, gauge: Gauge, length: LengthWriter) -> dict[str, Any]:
    """Where the chart lies on one size."""
    come = size.progress

    def span(rounds: int) -> dict[str, Any]:
        return {"rounds": rounds, "length": length(gauge.height_cm(rounds))}

    ends = {} if come.shallower is None else {"shallower_by": span(come.shallower)}
    start = _start_writer()
    return {
        "label": size.label,
        "rounds": [
            {
                "round": worked.round,
                "chart_row": worked.chart_row,
                "back": start(worked.back),
                "front": start(worked.front),
                "sleeve": start(worked.sleeve),
            }
            for worked in size.rounds
        ],
        "changes": {
            "back": list(size.changes.back),
            "front": list(size.changes.front),
            "sleeve": list(size.changes.sleeve),
        },
        "body": _body(size.body, start),
        "sleeve": _sleeve(size.sleeve),
        "yoke_chart_rows": come.yoke_rows,
        "last_chart_row": come.last_row,
        "rows_left": come.rows_left,
        "shortest_body": _span(size.shortest_body, length),
        "shortest_sleeve": _span(size.shortest_sleeve, length),
        "chart_ends_at_split": {**ends, "deeper_by": span(come.deeper)},
        "longest_float": _longest_float(size.longest_float, length),
        "floats_by_round": {
            "yoke": [worked.longest_float for worked in size.rounds],
            "body": [worked.longest_float for worked in size.body.rounds],
            "sleeve": [worked.longest_float for worked in size.sleeve.rounds],
        },
        "long_float_rounds": _by_part(size.long_float_rounds),
        "rounds_over_two_colours": _by_part(size.rounds_over_two_colours),
        "stitches_by_colour": {
            "total": dict(size.stitches_by_colour.total),
            "yoke": dict(size.stitches_by_colour.yoke),
            "body": dict(size.stitches_by_colour.body),
            "sleeves": dict(size.stitches_by_colour.sleeves),
        },
    }


def _start_writer() -> Callable[[SectionStart], dict[str, int | None]]:
    """Writes a section's start; rounds that share the start share what is written."""
    written: dict[int, dict[str, int | None]] = {}

    def write(start: SectionStart) -> dict[str, int | None]:
        found = written.get(id(start))
        if found is None:
            found = written[id(start)] = {
                "stitches": start.stitches,
                "first_column": start.first_column,
                "last_column": start.last_column,
            }
        return found

    return write


def _body(body: BodyPlacement, start: Callable[[SectionStart], Any]) -> dict[str, Any]:
    return {
        "rounds": [
            {
                "round": worked.round,
                "chart_row": worked.chart_row,
                "back": start(worked.back),
                "front": start(worked.front),
            }
            for worked in body.rounds
        ],
        "changes": {"back": list(body.changes.back), "front": list(body.changes.front)},
        "last_chart_row": body.last_chart_row,
        "plain_rounds": body.plain_rounds,
    }


def _sleeve(sleeve: SleevePlacement) -> dict[str, Any]:
    return {
        "rounds": [
            {
                "round": worked.round,
                "chart_row": worked.chart_row,
                "stitches": worked.stitches,
                "first_column": worked.first_column,
                "last_column": worked.last_column,
            }
            for worked in sleeve.rounds
        ],
        "changes": list(sleeve.changes),
        "last_chart_row": sleeve.last_chart_row,
        "plain_rounds": sleeve.plain_rounds,
    }


def _span(span: Span, length: LengthWriter) -> dict[str, Any]:
    return {"rounds": span.rounds, "length": length(span.length_cm)}


def _longest_float(longest: LongestFloat | None, length: LengthWriter) -> dict[str, Any] | None:
    if longest is None:
        return None
    return {
        "stitches": longest.stitches,
        "length": length(longest.length_cm),
        "part": longest.part,
        "round": longest.round,
        "colour": longest.colour,
        "start": _float_end(longest.start),
        "end": _float_end(longest.end),
    }


def _float_end(end: FloatEnd) -> dict[str, Any]:
    return {"round": end.round, "section": end.section, "column": end.column}


def _by_part(rounds: RoundsByPart) -> dict[str, Sequence[int]]:
    return {"yoke": list(rounds.yoke), "body": list(rounds.body), "sleeve": list(rounds.sleeve)}
