"""A placed chart in the sentences of a pattern, with size runs."""

from __future__ import annotations

from collections.abc import Callable, Iterator, Sequence
from fractions import Fraction
from itertools import pairwise
from typing import TypeVar

from grading_core.chart.layout import SECTIONS, Section
from grading_core.chart.remarks import COMMON_FLOAT_LIMIT_CM
from grading_core.chart.request import COMMON_FLOAT_LIMIT, ChartRequest
from grading_core.chart.result import BodyRound, SectionStart, SizePlacement, SleeveRound, YokeRound
from grading_core.sentences import COUNT, LENGTH, TEXT, TOKEN, Saying, Sentence, words

_SECTIONS = words("chart_section")

ROWS = Saying("chart.rows", round=COUNT)
AGAIN = Saying("chart.again", height=COUNT)
ONCE = Saying("chart.once", height=COUNT)
READ = Saying("chart.read", width=COUNT)
CENTER = Saying("chart.center", column=COUNT, sections=_SECTIONS)
CENTER_BETWEEN = Saying("chart.center_between", column=COUNT, next=COUNT, sections=_SECTIONS)
START = Saying("chart.start", round=COUNT, column=COUNT, sections=_SECTIONS)
MOVES_BACK = Saying("chart.moves_back", width=COUNT)
MOVES_ON = Saying("chart.moves_on", width=COUNT)
NARROW_BODY = Saying("chart.narrow_body", stitches=COUNT, colour=TEXT)
NARROW_SLEEVE = Saying("chart.narrow_sleeve", stitches=COUNT, colour=TEXT)
PLAIN = Saying("chart.plain", rounds=TOKEN, colour=TEXT)
LINES = Saying("chart.lines", colour=TEXT)
SEAMS = Saying("chart.seams", colour=TEXT)
FLAT = Saying("chart.flat")
PARTED = Saying("chart.parted", round=COUNT, column=COUNT)
_BELOW = {"row": COUNT}
_FROM_UNDERARM = {"before": COUNT, "column": COUNT}
BODY = Saying("chart.body", **_BELOW)
BODY_BACK = Saying("chart.body_back", **_FROM_UNDERARM)
BODY_FRONT = Saying("chart.body_front", **_FROM_UNDERARM)
SLEEVE = Saying("chart.sleeve", **_BELOW)
SLEEVE_START = Saying("chart.sleeve_start", **_FROM_UNDERARM)
FLOATS = Saying("chart.floats", stitches=COUNT)
FLOATS_YOUNG = Saying("chart.floats_young", stitches=COUNT, length=LENGTH)

Run = tuple[int | None, ...]
Round = TypeVar("Round", BodyRound, SleeveRound)


def run_instructions(
    request: ChartRequest,
    sizes: Sequence[SizePlacement | None],
    *,
    before_start: Run,
    seams: bool,
    drop_rows: Run,
    for_children: bool,
) -> tuple[Sentence, ...]:
    """How the chart is worked, from the column each section begins with to what every shaping does to it.

    request: the chart with its anchors. sizes: where it lies, None in a size that has none; at least one has.
    before_start: stitches of each size's underarm up to where a round below the split starts. seams: whether any size
    has a break there. drop_rows: rows in which the front is not yet cast on in full, None in a size without.
    for_children: whether any size is for a baby or a child.
    """
    height, width = request.chart.height, request.chart.width
    return (
        ROWS(round=request.first_round),
        AGAIN(height=height) if request.chart.repeat == "rows" else ONCE(height=height),
        READ(width=width),
        *_centers(request),
        *_starts(sizes),
        MOVES_BACK(width=width),
        *((MOVES_ON(width=width),) if any(map(_decreases, sizes)) else ()),
        *_parted(sizes, drop_rows),
        *_below(sizes, before_start),
        *_plain(request, seams=seams),
        *_floats(request, sizes, for_children=for_children),
    )


def _centers(request: ChartRequest) -> Iterator[Sentence]:
    told: dict[Fraction, list[Section]] = {}
    for section in SECTIONS:
        told.setdefault(getattr(request.anchor, section), []).append(section)
    for anchor, sections in told.items():
        column, width = anchor.numerator // anchor.denominator, request.chart.width
        if anchor.denominator == 1:
            yield CENTER(column=column, sections=tuple(sections))
        else:
            yield CENTER_BETWEEN(column=column, next=column % width + 1, sections=tuple(sections))


def _starts(sizes: Sequence[SizePlacement | None]) -> Iterator[Sentence]:
    """The first column of each section, in the yoke round in which it has its first row."""
    told: dict[tuple[Run, Run], list[Section]] = {}
    for section in SECTIONS:
        first = [_first_start(size, section) if size else None for size in sizes]
        if any(first):
            rounds = tuple([worked.round if worked else None for worked in first])
            columns = tuple([_start(worked, section).first_column if worked else None for worked in first])
            told.setdefault((rounds, columns), []).append(section)
    for (rounds, columns), sections in told.items():
        yield START(round=rounds, column=columns, sections=tuple(sections))


def _first_start(size: SizePlacement, section: Section) -> YokeRound | None:
    return next((worked for worked in size.rounds if _start(worked, section).first_column is not None), None)


def _start(worked: YokeRound, section: Section) -> SectionStart:
    start: SectionStart = getattr(worked, section)
    return start


def _decreases(size: SizePlacement | None) -> bool:
    """Whether a size ever has fewer stitches below the split than in the round before."""
    if size is None:
        return False
    runs = [worked.back.stitches for worked in size.body.rounds], [worked.stitches for worked in size.sleeve.rounds]
    return any(after < before for stitches in runs for before, after in pairwise(stitches))


def _parted(sizes: Sequence[SizePlacement | None], drop_rows: Run) -> Iterator[Sentence]:
    """A front whose middle is still missing while the chart is worked in it."""
    worked = [
        first if size and rows and (first := _first_start(size, "front")) and first.round <= rows else None
        for size, rows in zip(sizes, drop_rows, strict=True)
    ]
    if any(worked):
        yield FLAT()
        yield PARTED(
            round=tuple([first.round if first else None for first in worked]),
            column=tuple([first.front.last_column if first else None for first in worked]),
        )


def _below(sizes: Sequence[SizePlacement | None], before_start: Run) -> Iterator[Sentence]:
    """The first row of body and sleeves, and the columns that follow the middle of the underarms in it."""
    bodies = [size.body.rounds[0] if size and size.body.rounds else None for size in sizes]
    sleeves = [size.sleeve.rounds[0] if size and size.sleeve.rounds else None for size in sizes]

    def starts(saying: Saying, columns: Run) -> Iterator[Sentence]:
        if any(columns):
            before = [place if column else None for place, column in zip(before_start, columns, strict=True)]
            yield saying(before=tuple(before), column=columns)

    if any(first and first.chart_row for first in bodies):
        yield BODY(row=_run(bodies, lambda first: first.chart_row))
        yield from starts(BODY_BACK, _run(bodies, lambda first: first.back.first_column))
        yield from starts(BODY_FRONT, _run(bodies, lambda first: first.front.first_column))
    if any(first and first.chart_row for first in sleeves):
        yield SLEEVE(row=_run(sleeves, lambda first: first.chart_row))
        yield from starts(SLEEVE_START, _run(sleeves, lambda first: first.first_column))


def _plain(request: ChartRequest, *, seams: bool) -> Iterator[Sentence]:
    colours = request.plain_colours()
    names = {symbol: colour.name for symbol, colour in request.chart.colours.items()}
    minimum, plain = request.minimum_width, names[colours.plain]
    if minimum.body > 1:
        yield NARROW_BODY(stitches=minimum.body, colour=plain)
    if minimum.sleeve > 1:
        yield NARROW_SLEEVE(stitches=minimum.sleeve, colour=plain)
    before, after = request.first_round > 1, request.chart.repeat == "once"
    rounds = "both" if before and after else "before" if before else "after" if after else "none"
    yield PLAIN(rounds=rounds, colour=plain)
    if request.line_stitches:
        yield LINES(colour=names[colours.line])
    if seams:
        yield SEAMS(colour=names[colours.seam])


def _floats(request: ChartRequest, sizes: Sequence[SizePlacement | None], *, for_children: bool) -> Iterator[Sentence]:
    longest = max((size.longest_float.stitches for size in sizes if size and size.longest_float), default=0)
    if longest > request.float_limit:
        yield FLOATS(stitches=request.float_limit)
    if longest and for_children:
        yield FLOATS_YOUNG(stitches=min(request.float_limit, COMMON_FLOAT_LIMIT), length=COMMON_FLOAT_LIMIT_CM)


def _run(rounds: Sequence[Round | None], of: Callable[[Round], int | None]) -> Run:
    """What the first round of a part has in every size, None in a size without."""
    return tuple([of(first) if first else None for first in rounds])
