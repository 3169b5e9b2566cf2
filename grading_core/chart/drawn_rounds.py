"""A placed chart as pictures of it show it: one size round by round, or one repeat with every size's first stitches.

Rounds are drawn from the chart's first one to the end of the repeat that the yoke has begun, as far as body or sleeves
have rounds. Below the split a round stands for that of the body and that of each sleeve, which work the same chart row.
"""

from __future__ import annotations

from collections.abc import Iterable, Iterator, Sequence
from dataclasses import dataclass
from typing import Literal, NamedTuple, TypeVar

from grading_core.chart.grid import Anchor, Chart, progress
from grading_core.chart.layout import Layout
from grading_core.chart.placement import place_size
from grading_core.chart.problems import picture_problems
from grading_core.chart.request import ChartPictureRequest, ChartRequest, ChartSize, PlainColours
from grading_core.chart.result import SectionStart, SizePlacement, SleeveRound
from grading_core.chart.views import stitches_drawn_problems
from grading_core.codes import ProblemCode
from grading_core.errors import Check, Path, Problem, check, sound
from grading_core.gauge import Gauge

MAX_ROUNDS_DRAWN = 1_000
"""Of one size, in a picture of its chart."""

DrawnSection = Literal["body", "back", "front", "sleeve"]
"""The body's halves where they start alike, else each by itself; and each sleeve."""

DrawnPart = Literal["yoke", "below"]
Sign = Literal["increase", "double", "decrease"]


class Start(NamedTuple):
    """Where a section starts in a round.

    column: of the first stitch that is worked from the chart, None where the section is plain. before: plain stitches
    before it, of a motif that the section cuts.
    """

    section: DrawnSection
    column: int | None
    before: int = 0


class DrawnRound(NamedTuple):
    """A round that works the chart.

    number: counted in its part. row: of the chart. starts: of the sections that have this round. signs: how it shapes.
    """

    part: DrawnPart
    number: int
    row: int
    starts: tuple[Start, ...]
    signs: tuple[Sign, ...]


class FirstStart(NamedTuple):
    """The first round of a section that works the chart: its row, and the columns of its first and last stitch there.

    before: plain stitches before the first.
    """

    section: DrawnSection
    row: int
    first: int
    last: int
    before: int


AnyStart = TypeVar("AnyStart", Start, FirstStart)


@dataclass(frozen=True, slots=True, kw_only=True)
class SizeStarts:
    """One size in one repeat.

    starts: of the sections that work the chart. row_at_split: of the yoke's last round, None where it works none.
    rows_left: that finish the chart, or the repeat that the yoke has begun.
    """

    label: str
    starts: tuple[FirstStart, ...]
    row_at_split: int | None
    rows_left: int


@dataclass(frozen=True, slots=True, kw_only=True)
class ChartView:
    """A chart as it is worked, to be drawn.

    gauge: that its stitches are drawn at. plain: the colours of what isn't worked from it. anchor: the column on each
    section's centre. sections: told apart. whole_motifs: whether motifs are only worked whole.
    """

    chart: Chart
    gauge: Gauge
    plain: PlainColours
    anchor: Anchor
    sections: tuple[DrawnSection, ...]
    whole_motifs: bool


@dataclass(frozen=True, slots=True, kw_only=True)
class SizeView(ChartView):
    """One size round by round, the first one that works the chart first; rounds are empty where none does."""

    label: str
    rounds: tuple[DrawnRound, ...]


@dataclass(frozen=True, slots=True, kw_only=True)
class RepeatView(ChartView):
    """One repeat, and where every size starts in it."""

    sizes: tuple[SizeStarts, ...]


def chart_view(request: ChartPictureRequest) -> SizeView:
    """The chart round by round as one size works it.

    request: the size, and the chart on it.

    Raises ContradictionError for a label that no size has, as `place_size` does, and for more rounds or stitches than
    a picture holds.
    """
    placements = request.placements
    index, layout = sound(chart_view_problems(request))
    return size_view(placements, placements.sizes[index], place_size(placements, index, layout))


@check
def chart_view_problems(request: ChartPictureRequest) -> Check[tuple[int, Layout]]:
    """As `picture_problems`, and more rounds or stitches than a picture holds.

    request: any.
    """
    index, layout = yield from picture_problems(request)
    yield from drawn_problems(request.placements, request.placements.sizes[index], ("sizes", index))
    return index, layout


@check
def drawn_problems(plan: ChartRequest, size: ChartSize, path: Path) -> Check[None]:
    """More rounds of a size, or stitches in them, than a picture holds.

    plan, size: free of other problems. path: of the size.
    """
    rounds = len(_numbers(plan, size))
    if rounds > MAX_ROUNDS_DRAWN:
        detail = f"has {rounds} rounds of the chart to draw, and a picture holds at most {MAX_ROUNDS_DRAWN}."
        yield Problem(path, ProblemCode.TOO_MANY_ROUNDS, detail)
    else:
        yield from stitches_drawn_problems(rounds * plan.chart.width, path)


def size_view(plan: ChartRequest, size: ChartSize, placed: SizePlacement) -> SizeView:
    """The chart round by round as one size works it.

    plan: how the chart is placed. size: the counts of the size. placed: where it lies on that.
    """
    rounds = [*_rounds(plan, size, placed)]
    alike = all(_same_start(starts) for starts in (each.starts for each in rounds))
    if alike:
        rounds = [each._replace(starts=tuple(_of_body(each.starts))) for each in rounds]
    return SizeView(
        chart=plan.worked_chart,
        gauge=plan.gauge,
        plain=plan.plain_colours(),
        anchor=plan.anchor,
        sections=("body", "sleeve") if alike else ("back", "front", "sleeve"),
        whole_motifs=plan.whole_motif is not None,
        label=placed.label,
        rounds=tuple(rounds),
    )


def repeat_view(plan: ChartRequest, sizes: Sequence[SizePlacement]) -> RepeatView:
    """One repeat, and where every size starts in it.

    plan: how the chart is placed. sizes: where it lies on them.
    """
    found = [[*_first_starts(size)] for size in sizes]
    alike = all(_same_start(starts) for starts in found)
    if alike:
        found = [[*_of_body(starts)] for starts in found]
    return RepeatView(
        chart=plan.worked_chart,
        gauge=plan.gauge,
        plain=plan.plain_colours(),
        anchor=plan.anchor,
        sections=("body", "sleeve") if alike else ("back", "front", "sleeve"),
        whole_motifs=plan.whole_motif is not None,
        sizes=tuple(
            SizeStarts(
                label=size.label,
                starts=tuple(starts),
                row_at_split=size.progress.last_chart_row,
                rows_left=size.progress.rows_left,
            )
            for size, starts in zip(sizes, found, strict=True)
        ),
    )


@check
def repeat_problems(chart: Chart, path: Path) -> Check[None]:
    """A chart of too many stitches to draw.

    chart: any. path: of the chart.
    """
    yield from stitches_drawn_problems(chart.width * chart.height, path)


def _numbers(plan: ChartRequest, size: ChartSize) -> range:
    """The rounds that are drawn, counted from the yoke's first one through the split."""
    chart, first = plan.chart, plan.first_round
    come = progress(chart, first, size.rounds)
    # Where the split falls on the chart's last row, the next repeat shows how body and sleeves begin.
    more = come.rows_left or (chart.height if chart.repeat == "rows" else 0)
    last = size.rounds + max(size.body_rounds, size.sleeve_rounds)
    return range(first, min(first + come.yoke_chart_rows + more - 1, last) + 1)


def _rounds(plan: ChartRequest, size: ChartSize, placed: SizePlacement) -> Iterator[DrawnRound]:
    increases = {step.round: step for step in size.increase_rounds}
    shaping = {step.round: step.stitches for step in size.body_shaping}
    decreases = set(size.sleeve_decrease_rounds)
    signs: list[Sign]
    for number in _numbers(plan, size):
        if number <= size.rounds:
            here, step = placed.rounds[number - 1], increases.get(number)
            signs = []
            if step:
                signs = ["double" if max(step.back, step.front, step.sleeve) > 1 else "increase"]
            assert here.chart_row is not None
            starts = _starts(here.back, here.front, here.sleeve)
            yield DrawnRound("yoke", number, here.chart_row, starts, tuple(signs))
            continue
        number -= size.rounds
        body = placed.body.rounds[number - 1] if number <= size.body_rounds else None
        sleeve = placed.sleeve.rounds[number - 1] if number <= size.sleeve_rounds else None
        row = (body or sleeve or placed.rounds[-1]).chart_row
        assert row is not None
        by = shaping.get(number, 0)
        signs = ["increase"] if by > 0 else []
        if by < 0 or number in decreases:
            signs.append("decrease")
        starts = _starts(body and body.back, body and body.front, sleeve)
        yield DrawnRound("below", number, row, starts, tuple(signs))


def _starts(
    back: SectionStart | None, front: SectionStart | None, sleeve: SectionStart | SleeveRound | None
) -> tuple[Start, ...]:
    """Of the sections that have a stitch."""
    sections: tuple[tuple[DrawnSection, SectionStart | SleeveRound | None], ...] = (
        ("back", back),
        ("front", front),
        ("sleeve", sleeve),
    )
    return tuple(
        [
            Start(section, start.first_column, start.plain_before or 0)
            for section, start in sections
            if start and start.stitches
        ]
    )


def _first_starts(size: SizePlacement) -> Iterator[FirstStart]:
    yoke, body, sleeve = size.rounds, size.body.rounds, size.sleeve.rounds
    sections: tuple[tuple[DrawnSection, Iterable[tuple[int | None, SectionStart | SleeveRound]]], ...] = (
        ("back", ((each.chart_row, each.back) for part in (yoke, body) for each in part)),
        ("front", ((each.chart_row, each.front) for part in (yoke, body) for each in part)),
        ("sleeve", (*((each.chart_row, each.sleeve) for each in yoke), *((each.chart_row, each) for each in sleeve))),
    )
    for section, rounds in sections:
        for row, start in rounds:
            if row is not None and start.first_column is not None and start.last_column is not None:
                yield FirstStart(section, row, start.first_column, start.last_column, start.plain_before or 0)
                break


def _same_start(starts: Sequence[Start | FirstStart]) -> bool:
    """Whether back and front start alike, or neither does."""
    told = {each.section: each[1:] for each in starts}
    return told.get("back") == told.get("front")


def _of_body(starts: Iterable[AnyStart]) -> Iterator[AnyStart]:
    """One start for back and front."""
    for start in starts:
        if start.section != "front":
            yield start._replace(section="body") if start.section == "back" else start
