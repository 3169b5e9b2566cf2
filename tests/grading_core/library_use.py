"""The core used as a library, without the service: what `tests/grading_core/test_library.py` runs and type-checks."""

from __future__ import annotations

from fractions import Fraction

from grading_core import (
    ContradictionError,
    Gauge,
    Gauges,
    Impossible,
    Options,
    Problem,
    PulloverRequest,
    RaglanRequest,
    Sections,
    YokeRequest,
    grade_pullover,
    raglan_schedules,
)
from grading_core.sentences import Sentence

GAUGE: Gauge = Gauge.over(Fraction(22), Fraction(31), Fraction(10))


def body_stitches(labels: tuple[str, ...]) -> dict[str, int | None]:
    """Stitches of the body below the split, by size; None where a size can't be knitted."""
    pullover = grade_pullover(PulloverRequest(gauges=Gauges(GAUGE), labels=labels))
    return {
        size.label: None if isinstance(size.outcome, Impossible) else size.outcome.counts.body
        for size in pullover.sizes
    }


def increase_rounds(rounds: int) -> list[int] | Sentence:
    """Where a yoke from 100 to 272 stitches is increased, or why it can't be."""
    yoke = YokeRequest(label="S", rounds=rounds, neck=Sections(34, 34, 12), split=Sections(82, 82, 50))
    (size,) = raglan_schedules(RaglanRequest(gauge=GAUGE, options=Options(plain_rounds_at_end=1), sizes=(yoke,))).sizes
    if isinstance(size.schedule, Impossible):
        return size.schedule.reason
    return [increase.round for increase in size.schedule.increase_rounds]


def wrong_places(labels: tuple[str, ...]) -> tuple[Problem, ...]:
    """What contradicts itself in a request for these sizes."""
    try:
        body_stitches(labels)
    except ContradictionError as error:
        return error.problems
    return ()
