"""Answers about raglan yokes."""

from __future__ import annotations

from collections.abc import Sequence
from typing import Any

from grading_core.errors import Impossible
from grading_core.sections import IncreaseRound, Increases
from grading_core.units import to_places
from grading_core.wording import size_run
from grading_core.yoke.adjustment import AdjustedYoke, Way
from grading_core.yoke.all_sizes import RaglanSchedules, SizeSchedule
from grading_core.yoke.schedule import RaglanLine, Schedule, Yoke
from service.lengths import LengthWriter
from service.representations.common import impossible


def raglan_schedules(result: RaglanSchedules, length: LengthWriter) -> dict[str, Any]:
    """The answer of `POST /v1/raglan-schedules`."""
    return {
        "sizes": [size_schedule(size, length) for size in result.sizes],
        "runs": _runs([size.schedule for size in result.sizes], result),
        "instructions": list(result.instructions),
        "warnings": [],
    }


def yoke_adjustments(result: Sequence[AdjustedYoke], length: LengthWriter) -> dict[str, Any]:
    """The answer of `POST /v1/yoke-adjustments`."""
    return {"sizes": [_adjusted(size, length) for size in result], "warnings": []}


def size_schedule(size: SizeSchedule, length: LengthWriter) -> dict[str, Any]:
    """One size's schedule, or why there is none."""
    made = size.schedule
    written: dict[str, Any] = {
        "label": size.yoke.label,
        "feasible": isinstance(made, Schedule),
        "rounds": size.yoke.rounds,
        "depth": length(size.depth_cm),
    }
    if size.difference_cm is not None:
        written["difference"] = length(size.difference_cm)
    return written | (impossible(made) if isinstance(made, Impossible) else _schedule(made, length))


def _schedule(made: Schedule, length: LengthWriter) -> dict[str, Any]:
    back, front, sleeve = made.yoke.increases
    same = back == front
    lines: dict[str, Any] = {"raglan_line": _line(made.back_line, length)}
    if not same:
        lines["front_raglan_line"] = _line(made.front_line, length)
    return {
        **({"body_increases": back} if same else {"back_increases": back, "front_increases": front}),
        "sleeve_increases": sleeve,
        "doubled_rounds": made.doubled_rounds,
        "plain_rounds_at_end": made.plain_rounds_at_end,
        "increase_rounds": _increase_rounds(made.increase_rounds, same),
        "phases": _phases(made, same),
        "instructions": list(made.instructions()),
        "stitches": {
            "neck": made.yoke.neck.total(made.line_stitches),
            "split": made.yoke.split.total(made.line_stitches),
        },
        **lines,
    }


def _increase_rounds(worked: Sequence[IncreaseRound], same: bool) -> list[dict[str, int]]:
    if same:
        return [{"round": number, "body": body, "sleeve": sleeve} for number, body, _, sleeve in worked]
    return [
        {"round": number, "back": back, "front": front, "sleeve": sleeve}
        for number, back, front, sleeve in worked
    ]


def _phases(made: Schedule, same: bool) -> list[dict[str, Any]]:
    return [
        {
            "from_round": phase.from_row,
            "to_round": phase.to_row,
            "every": list(phase.every),
            "times": phase.times,
            **_edges(phase.cycle[0][1] if phase.cycle else (0, 0, 0), same),
            "stitches": {
                "back": sections.back,
                "front": sections.front,
                "sleeve": sections.sleeve,
                "total": sections.total(made.line_stitches),
            },
        }
        for phase, sections in zip(made.phases, made.sections_after_phases(), strict=True)
    ]


def _edges(increases: Increases, same: bool) -> dict[str, int]:
    back, front, sleeve = increases
    if same:
        return {"body": back, "sleeve": sleeve}
    return {"back": back, "front": front, "sleeve": sleeve}


def _line(line: RaglanLine, length: LengthWriter) -> dict[str, Any]:
    slope = None if line.rise_over_run is None else to_places(line.rise_over_run)
    return {"rise_over_run": slope, "length": length(line.length_cm)}


def _runs(schedules: Sequence[Schedule | Impossible], result: RaglanSchedules) -> dict[str, str]:
    made = [one if isinstance(one, Schedule) else None for one in schedules]
    yokes: list[Yoke] = [size.yoke for size in result.sizes]
    same = all(yoke.increases[0] == yoke.increases[1] for yoke in yokes)
    edges = ("body",) if same else ("back", "front")
    lines = result.line_stitches
    return {
        "rounds": size_run([yoke.rounds for yoke in yokes]),
        **{
            f"{edge}_increases": size_run([one.yoke.increases[place] if one else None for one in made])
            for place, edge in enumerate(edges)
        },
        "sleeve_increases": size_run([one.yoke.increases[2] if one else None for one in made]),
        "doubled_rounds": size_run([one.doubled_rounds if one else None for one in made]),
        "neck_stitches": size_run([yoke.neck.total(lines) for yoke in yokes]),
        "split_stitches": size_run([yoke.split.total(lines) for yoke in yokes]),
    }


def _adjusted(size: AdjustedYoke, length: LengthWriter) -> dict[str, Any]:
    return {
        "label": size.written.label,
        "feasible": size.recommended is not None,
        "before": size_schedule(SizeSchedule(size.written, size.depth_cm, size.before), length),
        "options": [_way(way, size, length) for way in size.ways],
        "recommended": size.recommended,
        "why": size.why,
    }


def _way(way: Way, size: AdjustedYoke, length: LengthWriter) -> dict[str, Any]:
    made = way.adjusted
    option: dict[str, Any] = {
        "method": way.method,
        "feasible": isinstance(made, Schedule),
        "rounds": way.rounds,
        "depth": length(way.depth_cm),
        "chart_rows_change": way.rounds - size.written.rounds,
    }
    if size.target_cm is not None:
        option["difference"] = length(way.depth_cm - size.target_cm)
    if way.shallowest_rounds is not None and way.shallowest_depth_cm is not None:
        option["shallowest"] = {"rounds": way.shallowest_rounds, "depth": length(way.shallowest_depth_cm)}
    if isinstance(made, Impossible):
        return option | impossible(made)
    return option | {
        "doubled_rounds": made.doubled_rounds,
        "consecutive_increase_rounds": made.most_in_a_row,
        "schedule": size_schedule(SizeSchedule(made.yoke, made.depth_cm, made), length),
    }
