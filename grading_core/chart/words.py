"""A placed chart in the sentences of a pattern, with size runs."""

from __future__ import annotations

from collections.abc import Callable, Iterator, Sequence
from itertools import pairwise
from typing import TypeVar

from grading_core.chart.layout import SECTIONS, Section
from grading_core.chart.remarks import COMMON_FLOAT_LIMIT_CM
from grading_core.chart.request import COMMON_FLOAT_LIMIT, ChartRequest
from grading_core.chart.result import (
    BodyRound,
    ChartRounds,
    Motifs,
    SectionStart,
    SizePlacement,
    SleeveRound,
    YokeRound,
)
from grading_core.fraction import Fraction
from grading_core.sentences import COUNT, LENGTH, TEXT, TOKEN, Saying, Sentence, words

_SECTIONS = words("chart_section")
_PLACES = words("plain_place")
"""Rounds "before" the chart, those "after" one that is worked once, and "short_rows"."""

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
WHOLE_MOTIFS = Saying("chart.whole_motifs", columns=COUNT, colour=TEXT)
WHOLE_CHART = Saying("chart.whole_chart", columns=COUNT, colour=TEXT)
MOTIFS = Saying("chart.motifs", round=COUNT, motifs=COUNT, sections=_SECTIONS)
BODY_MOTIFS = Saying("chart.body_motifs", motifs=COUNT, sections=_SECTIONS)
SLEEVE_MOTIFS = Saying("chart.sleeve_motifs", motifs=COUNT)
PLAIN = Saying("chart.plain", places=_PLACES, colour=TEXT)
LINES = Saying("chart.lines", colour=TEXT, rounds=TOKEN)
SEAMS = Saying("chart.seams", colour=TEXT, rounds=TOKEN, seam=TOKEN)
"""rounds: "all", or those up to the chart's "last_row", after which they have the colour of what is plain below it."""
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
    short_rows: bool,
    drop_rows: Run,
    for_children: bool,
) -> tuple[Sentence, ...]:
    """How the chart is worked, from the column each section begins with to what every shaping does to it.

    request: the chart with its anchors. sizes: where it lies, None in a size that has none; at least one has.
    before_start: stitches of each size's underarm up to where a round below the split starts. seams: whether any size
    has a break there. short_rows: whether any size has some at the neck. drop_rows: rows in which the front is not yet
    cast on in full, None in a size without. for_children: whether any size is for a baby or a child.
    """
    height, width = request.chart.height, request.chart.width
    return (
        ROWS(round=request.first_round),
        AGAIN(height=height) if request.chart.repeat == "rows" else ONCE(height=height),
        READ(width=width),
        *_centers(request),
        *_starts(sizes, width),
        MOVES_BACK(width=width),
        *((MOVES_ON(width=width),) if any(map(_decreases, sizes)) else ()),
        *_parted(sizes, drop_rows, width),
        *_below(sizes, before_start, width),
        *_whole_motifs(request, sizes),
        *_plain(request, seams=seams, short_rows=short_rows),
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


def _starts(sizes: Sequence[SizePlacement | None], width: int) -> Iterator[Sentence]:
    """The first column of each section, in the yoke round in which it has its first row."""
    told: dict[tuple[Run, Run], list[Section]] = {}
    for section in SECTIONS:
        first = [_first_start(size, section) if size else None for size in sizes]
        if any(first):
            rounds = tuple([worked.round if worked else None for worked in first])
            columns = tuple([_edges(_start(worked, section), width)[0] if worked else None for worked in first])
            told.setdefault((rounds, columns), []).append(section)
    for (rounds, columns), sections in told.items():
        yield START(round=rounds, column=columns, sections=tuple(sections))


def _first_start(size: SizePlacement, section: Section) -> YokeRound | None:
    return next((worked for worked in size.rounds if _start(worked, section).first_column is not None), None)


def _start(worked: YokeRound, section: Section) -> SectionStart:
    start: SectionStart = getattr(worked, section)
    return start


def _edges(start: SectionStart | SleeveRound, width: int) -> tuple[int | None, int | None]:
    """The columns that a section's first and last stitches stand on, whether they are worked from them or plain."""
    if start.first_column is None or start.last_column is None:
        return None, None
    before, after = start.plain_before or 0, start.plain_after or 0
    return (start.first_column - before - 1) % width + 1, (start.last_column + after - 1) % width + 1


def _decreases(size: SizePlacement | None) -> bool:
    """Whether a size ever has fewer stitches below the split than in the round before."""
    if size is None:
        return False
    runs = size.body.rounds.starts[0], size.sleeve.rounds.starts[0]
    return any(after.stitches < before.stitches for starts in runs for before, after in pairwise(starts))


def _parted(sizes: Sequence[SizePlacement | None], drop_rows: Run, width: int) -> Iterator[Sentence]:
    """A front whose middle is still missing while the chart is worked in it."""
    worked = [
        first if size and rows and (first := _first_start(size, "front")) and first.round <= rows else None
        for size, rows in zip(sizes, drop_rows, strict=True)
    ]
    if any(worked):
        yield FLAT()
        yield PARTED(
            round=tuple([first.round if first else None for first in worked]),
            column=tuple([_edges(first.front, width)[1] if first else None for first in worked]),
        )


def _below(sizes: Sequence[SizePlacement | None], before_start: Run, width: int) -> Iterator[Sentence]:
    """The first row of body and sleeves, and the columns that follow the middle of the underarms in it."""
    bodies = [size.body.rounds[0] if size and size.body.rounds else None for size in sizes]
    sleeves = [size.sleeve.rounds[0] if size and size.sleeve.rounds else None for size in sizes]

    def starts(saying: Saying, columns: Run) -> Iterator[Sentence]:
        if any(columns):
            before = [place if column else None for place, column in zip(before_start, columns, strict=True)]
            yield saying(before=tuple(before), column=columns)

    if any(first and first.chart_row for first in bodies):
        yield BODY(row=_run(bodies, lambda first: first.chart_row))
        yield from starts(BODY_BACK, _run(bodies, lambda first: _edges(first.back, width)[0]))
        yield from starts(BODY_FRONT, _run(bodies, lambda first: _edges(first.front, width)[0]))
    if any(first and first.chart_row for first in sleeves):
        yield SLEEVE(row=_run(sleeves, lambda first: first.chart_row))
        yield from starts(SLEEVE_START, _run(sleeves, lambda first: _edges(first, width)[0]))


def _whole_motifs(request: ChartRequest, sizes: Sequence[SizePlacement | None]) -> Iterator[Sentence]:
    """That cut motifs stay plain, and from which rounds on there are how many whole ones."""
    columns = request.whole_motif
    if columns is None or columns == 1:
        return
    colour = request.chart.colours[request.plain_colours().plain].name
    saying = WHOLE_CHART if columns == request.chart.width else WHOLE_MOTIFS
    yield saying(columns=columns, colour=colour)
    told: dict[tuple[int, Run], list[Section]] = {}
    for section in SECTIONS:
        here = [getattr(size.motifs, section) if size else () for size in sizes]
        for told_of in _appearing(here):
            told.setdefault(told_of, []).append(section)
    for (motifs, rounds), sections in told.items():
        yield MOTIFS(round=rounds, motifs=motifs, sections=tuple(sections))
    below: dict[Run, list[Section]] = {}
    for section in ("back", "front"):
        run = tuple(
            [_at_split(size.body.rounds, getattr(size.body.motifs, section)) if size else None for size in sizes]
        )
        below.setdefault(run, []).append(section)
    for run, sections in below.items():
        if any(run):
            yield BODY_MOTIFS(motifs=run, sections=tuple(sections))
    run = tuple([_at_split(size.sleeve.rounds, size.sleeve.motifs) if size else None for size in sizes])
    if any(run):
        yield SLEEVE_MOTIFS(motifs=run)


def _appearing(sizes: Sequence[Sequence[Motifs]]) -> Iterator[tuple[int, Run]]:
    """Numbers of motifs, and the rounds from which sizes have them; of those that all get with the next, only the next.

    sizes: the motifs of a section of the yoke, which become no fewer while the chart is worked.
    """
    most = max((each.motifs for size in sizes for each in size), default=0)
    rounds = [
        tuple([next((one.from_round for one in size if one.motifs >= number), None) for size in sizes])
        for number in range(1, most + 1)
    ]
    for motifs, (here, after) in enumerate(pairwise([*rounds, None]), 1):
        if here is not None and here != after:
            yield motifs, here


def _at_split(rounds: ChartRounds[BodyRound] | ChartRounds[SleeveRound], motifs: Sequence[Motifs] | None) -> int | None:
    """How many whole motifs there are in the first round of body or sleeve; None where that works no row."""
    if not rounds or rounds[0].chart_row is None or motifs is None:
        return None
    return motifs[0].motifs if motifs and motifs[0].from_round == 1 else 0


def _plain(request: ChartRequest, *, seams: bool, short_rows: bool) -> Iterator[Sentence]:
    colours = request.plain_colours()
    below = colours.last
    names = {symbol: colour.name for symbol, colour in request.chart.colours.items()}
    minimum, plain = request.minimum_width, names[colours.plain]
    if minimum.body > 1:
        yield NARROW_BODY(stitches=minimum.body, colour=plain)
    if minimum.sleeve > 1:
        yield NARROW_SLEEVE(stitches=minimum.sleeve, colour=plain)
    told: dict[str, list[str]] = {}
    for place, there, symbol in (
        ("before", request.first_round > 1, colours.plain),
        ("after", request.last_round is not None, below.plain),
        ("short_rows", short_rows, colours.plain),
    ):
        if there:
            told.setdefault(symbol, []).append(place)
    for symbol, places in told.items():
        yield PLAIN(places=tuple(places), colour=names[symbol])
    if request.line_stitches:
        yield LINES(colour=names[colours.line], rounds="all" if colours.line == below.line else "last_row")
    if seams:
        rounds = "all" if colours.seam == below.seam else "last_row"
        yield SEAMS(colour=names[colours.seam], rounds=rounds, seam=request.seam)


def _floats(request: ChartRequest, sizes: Sequence[SizePlacement | None], *, for_children: bool) -> Iterator[Sentence]:
    longest = max((size.longest_float.stitches for size in sizes if size and size.longest_float), default=0)
    if longest > request.float_limit:
        yield FLOATS(stitches=request.float_limit)
    if longest and for_children:
        yield FLOATS_YOUNG(stitches=min(request.float_limit, COMMON_FLOAT_LIMIT), length=COMMON_FLOAT_LIMIT_CM)


def _run(rounds: Sequence[Round | None], of: Callable[[Round], int | None]) -> Run:
    """What the first round of a part has in every size, None in a size without."""
    return tuple([of(first) if first else None for first in rounds])
