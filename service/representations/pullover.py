"""Answers about whole pullovers."""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import fields
from fractions import Fraction
from typing import Any

from grading_core.chart.grid import mirror_axes
from grading_core.counts.request import QUANTITIES
from grading_core.errors import Impossible
from grading_core.gauge import Gauge
from grading_core.parts.body import Body
from grading_core.parts.neckband import Neckband
from grading_core.parts.neckline import FrontDrop, HeadCheck
from grading_core.parts.ribbing import RibbedEdge
from grading_core.parts.sleeve import Sleeve
from grading_core.pullover.result import ChangedNumber, FinishedMeasurements, KnittedSize, Neck, Pullover, Row
from grading_core.sections import Sections
from grading_core.units import to_places, to_printed_decimal
from grading_core.wording import size_run
from grading_core.yoke.all_sizes import SizeSchedule
from service.charts import DrawnChart
from service.representations.chart import drawn_chart, size_placement
from service.representations.common import LengthWriter, impossible, warnings
from service.representations.raglan import size_schedule
from service.representations.yarn import yarn_need

DrawnPullover = tuple[DrawnChart | None, Pullover]
"""The chart as it was sent, and the pullover."""


def pullovers(result: DrawnPullover, length: LengthWriter) -> dict[str, Any]:
    """The answer of `POST /v1/pullovers`."""
    drawn, pullover = result
    return {
        "sizes": [
            {"label": size.label, "feasible": False, **impossible(size.outcome)}
            if isinstance(size.outcome, Impossible)
            else _size(size.label, size.outcome, pullover.fabrics.yoke, length)
            for size in pullover.sizes
        ],
        "cost": {"total": to_places(pullover.cost), "unevenness": to_places(pullover.unevenness)},
        "table": [_row(row, length) for row in pullover.table],
        "instructions": [
            {"part": told.part, "sentences": list(told.sentences)} for told in pullover.instructions
        ],
        "changed": [_changed(number) for number in pullover.changed],
        **({"chart": drawn_chart(drawn, mirror_axes(drawn.chart))} if drawn else {}),
        "warnings": warnings(pullover.remarks),
    }


def _size(label: str, size: KnittedSize, gauge: Gauge, length: LengthWriter) -> dict[str, Any]:
    written: dict[str, Any] = {
        "label": label,
        "feasible": True,
        "neck": _neck(size, length),
        "yoke": size_schedule(SizeSchedule(size.yoke.yoke, size.yoke.depth_cm, size.yoke), length),
        "split": _split(size),
        "body": _body(size.body, length),
        "sleeve": _sleeve(size.sleeve, length),
        "band": _band(size.band, length),
        "finished": _finished(size, length),
        "differences": {name: to_places(getattr(size.differences, name)) for name in QUANTITIES},
        "cost": to_places(size.cost),
    }
    if size.chart:
        written["chart"] = size_placement(size.chart, gauge, length)
    if size.yarn:
        written["yarn"] = [{"colour": needed.yarn, **yarn_need(needed)} for needed in size.yarn]
    return written


def _sections(sections: Sections) -> dict[str, int]:
    return {"back": sections.back, "front": sections.front, "sleeve": sections.sleeve}


def _neck(size: KnittedSize, length: LengthWriter) -> dict[str, Any]:
    neck, raised = size.neck, size.neck.raised
    written: dict[str, Any] = {
        "cast_on": neck.cast_on.stitches,
        "way": neck.cast_on.way,
        "sections": _sections(size.counts.neck),
        "line_stitches": size.counts.line_stitches,
        "markers": [
            {
                "stitches": gap.stitches,
                "parts": [{"name": name, "stitches": stitches} for name, stitches in gap.parts],
                "marker": gap.marker,
            }
            for gap in neck.cast_on.gaps
        ],
        "turns": [
            {"row": turn.row, "side": turn.side, "stitches": turn.stitches, "marker": turn.marker}
            for turn in (raised.turns if raised else ())
        ],
        "edge": length(neck.edge_cm),
        "instructions": list(_neck_instructions(neck)),
    }
    if raised:
        written["back_raise"] = {
            "rows": raised.rows,
            "height": length(raised.height_cm),
            "front_stitches": raised.front_stitches,
        }
    if neck.drop:
        written["front_drop"] = _front_drop(neck.drop, length)
    if neck.head:
        written["head"] = _head(neck.head, length)
    return written


def _neck_instructions(neck: Neck) -> tuple[str, ...]:
    return (
        *neck.cast_on.instructions(),
        *(neck.raised.instructions() if neck.raised else ()),
        *(neck.drop.instructions() if neck.drop else ()),
    )


def _front_drop(drop: FrontDrop, length: LengthWriter) -> dict[str, Any]:
    return {
        "rows": drop.rows,
        "height": length(drop.height_cm),
        "each_side": drop.each_side,
        "increase_rows": list(drop.increase_rows),
        "centre": drop.centre,
    }


def _head(head: HeadCheck, length: LengthWriter) -> dict[str, Any]:
    return {
        "passes": head.passes,
        "tightest": head.tightest.name,
        "circumference": length(head.tightest.circumference_cm),
        "stretched": length(head.stretched_cm),
        "stretch_needed": to_places(head.stretch_needed),
    }


def _split(size: KnittedSize) -> dict[str, Any]:
    counts = size.counts
    return {
        "sections": _sections(counts.split),
        "yoke_total": counts.yoke_total,
        "underarm": counts.underarm,
        "line_to_body": counts.line_to_body,
        "line_to_sleeve": counts.line_to_sleeve,
        "body": counts.body,
        "sleeve": counts.sleeve,
    }


def _edge(edge: RibbedEdge, length: LengthWriter) -> dict[str, Any]:
    return {
        "before": edge.before,
        "change": edge.change,
        "stitches": edge.stitches,
        "rounds": edge.rounds,
        "circumference": length(edge.circumference_cm),
        "height": length(edge.height_cm),
    }


def _body(body: Body, length: LengthWriter) -> dict[str, Any]:
    return {
        "stitches": body.stitches,
        "rounds": body.rounds,
        "length": length(body.length_cm),
        "shaping": [{"round": number, "stitches": stitches} for number, stitches in body.shaping],
        "levels": [
            {
                "name": reached.level.name,
                "round": reached.round,
                "stitches": reached.stitches,
                "circumference": length(reached.circumference_cm),
                "difference": length(reached.difference_cm),
            }
            for reached in body.levels
        ],
        "hem": _edge(body.hem, length),
        "instructions": list(body.instructions()),
    }


def _sleeve(sleeve: Sleeve, length: LengthWriter) -> dict[str, Any]:
    return {
        "stitches": sleeve.stitches,
        "rounds": sleeve.rounds,
        "length": length(sleeve.length_cm),
        "decrease_rounds": list(sleeve.decrease_rounds),
        "cuff": _edge(sleeve.cuff, length),
        "instructions": list(sleeve.instructions()),
    }


def _band(band: Neckband, length: LengthWriter) -> dict[str, Any]:
    return {
        "construction": band.build,
        "picked_up": band.picked_up.stitches,
        "stitches": band.edge.stitches,
        "rounds": band.rounds,
        "height": length(band.height_cm),
        "change": band.edge.change,
        "instructions": list(band.instructions()),
    }


_FINISHED = tuple(each.name for each in fields(FinishedMeasurements))


def _finished(size: KnittedSize, length: LengthWriter) -> dict[str, Any]:
    written: dict[str, Any] = {}
    for name in _FINISHED:
        finished: Fraction = getattr(size.finished, name)
        target: Fraction | None = getattr(size.target, name, None)
        if target is None:
            written[name] = {"finished": length(finished)}
        else:
            written[name] = {
                "target": length(target),
                "finished": length(finished),
                "difference": length(finished - target),
            }
    return written


def _row(row: Row, length: LengthWriter) -> dict[str, Any]:
    if row.unit != "cm":
        return {"item": row.item, "unit": row.unit, "values": list(row.values), "run": _run(row, str)}
    return {
        "item": row.item,
        "unit": row.unit,
        "values": [_number(value) for value in row.values],
        "run": _run(row, to_printed_decimal),
        "run_inch": _run(row, length.printed_inches),
    }


def _run(row: Row, printed: Callable[[Any], str]) -> str:
    return size_run([None if value is None else printed(value) for value in row.values])


def _number(value: int | Fraction | None) -> int | float | None:
    return to_places(value) if isinstance(value, Fraction) else value


def _changed(number: ChangedNumber) -> dict[str, Any]:
    return {
        "size": number.size,
        "item": number.item,
        "unit": number.unit,
        "designed": _number(number.designed),
        "changed": _number(number.changed),
    }
