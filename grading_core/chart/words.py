"""A placed chart as the sentences of a pattern, with size runs."""

from __future__ import annotations

from collections.abc import Iterator, Mapping, Sequence
from fractions import Fraction

from grading_core.chart.request import ChartRequest
from grading_core.chart.result import BodyRound, SectionStart, SizePlacement, SleeveRound
from grading_core.wording import counted, listed, size_run

_SECTIONS = (("the back", "back"), ("the front", "front"), ("each sleeve", "sleeve"))

_DROPPED = (
    "As long as the yoke is worked back and forth, read wrong-side rows from the left, and count the front's columns "
    "as if what is missing in its middle were there."
)


def run_instructions(
    request: ChartRequest, sizes: Sequence[SizePlacement | None], *, seams: bool, dropped_front: bool
) -> tuple[str, ...]:
    """How the chart is worked, from the column each section begins with to what every shaping does to it.

    request: the chart with its anchors. sizes: where it lies, None in a size that has none; at least one has. seams:
    whether any size has a break below the split. dropped_front: whether the front is cast on in parts.
    """
    return (
        *_rows(request),
        *_centres(request),
        *_starts(sizes),
        f"Each increase at the beginning of a section moves its first column back by 1, each decrease on by 1; "
        f"column {request.chart.width} comes before column 1.",
        *_plain(request, seams=seams),
        *((_DROPPED,) if dropped_front else ()),
        *_below(sizes, seams=seams),
    )


def _rows(request: ChartRequest) -> Iterator[str]:
    after = (
        f"after row {request.chart.height} begin again with row 1"
        if request.chart.repeat == "rows"
        else f"after row {request.chart.height} go on without the chart"
    )
    yield (
        f"Work row 1 of the chart in round {request.first_round}, counted from the first of the yoke, and the next row "
        f"in every round after it, on through body and sleeves; {after}. Read each row from the right, and "
        f"repeat its columns, 1 to {request.chart.width}, to the end of the section."
    )


def _centres(request: ChartRequest) -> Iterator[str]:
    anchors = [(words, getattr(request.anchor, section)) for words, section in _SECTIONS]
    if len({anchor for _, anchor in anchors}) == 1:
        anchors = [("every section", anchors[0][1])]
    said = "; ".join(f"{_column(anchor)} the centre of {words}" for words, anchor in anchors)
    yield f"It lies with {said}."


def _column(anchor: Fraction) -> str:
    if anchor.denominator == 1:
        return f"column {anchor} on"
    before = anchor.numerator // 2
    return f"the place after column {before} on"


def _starts(sizes: Sequence[SizePlacement | None]) -> Iterator[str]:
    """The first column of each section, in the yoke round in which it has its first row."""
    told: dict[tuple[tuple[int, int] | None, ...], list[str]] = {}
    for words, section in _SECTIONS:
        first = tuple(_first_start(size, section) if size else None for size in sizes)
        if any(first):
            told.setdefault(first, []).append(words)
    for starts, names in told.items():
        rounds = size_run([start[0] if start else None for start in starts])
        columns = size_run([start[1] if start else None for start in starts])
        yield f"In round {rounds} {_begin(names)} column {columns}."


def _begin(sections: Sequence[str]) -> str:
    return f"{listed(sections)} {'begins' if len(sections) == 1 else 'begin'} with"


def _first_start(size: SizePlacement, section: str) -> tuple[int, int] | None:
    for worked in size.rounds:
        start: SectionStart = getattr(worked, section)
        if start.first_column is not None:
            return worked.round, start.first_column
    return None


def _plain(request: ChartRequest, *, seams: bool) -> Iterator[str]:
    colours = request.plain_colours()
    names = {symbol: colour.name for symbol, colour in request.chart.colours.items()}
    minimum = request.minimum_width
    for words, least in (("the body", minimum.body), ("the sleeves", minimum.sleeve)):
        if least:
            yield (
                f"A section of {words} is plain, in {names[colours.plain]}, while it has fewer than "
                f"{counted(least, 'stitch')}."
            )
    yield f"Short rows, hem, cuffs and neckband are worked in {names[colours.plain]}."
    if request.line_stitches:
        yield f"The raglan lines are worked in {names[colours.line]}."
    if seams:
        yield f"The seam stitches below the split are worked in {names[colours.seam]}."


def _below(sizes: Sequence[SizePlacement | None], *, seams: bool) -> Iterator[str]:
    middle = "after its middle, or its seam," if seams else "from its middle on"
    bodies = [size.body.rounds[0] if size and size.body.rounds else None for size in sizes]
    halves = {
        "the back": tuple(first.back.first_column if first else None for first in bodies),
        "the front": tuple(first.front.first_column if first else None for first in bodies),
    }
    yield from _first_round("the body", middle, bodies, halves)
    sleeves = [size.sleeve.rounds[0] if size and size.sleeve.rounds else None for size in sizes]
    yield from _first_round(
        "each sleeve",
        middle,
        sleeves,
        {"the sleeve": tuple(first.first_column if first else None for first in sleeves)},
    )


def _first_round(
    part: str,
    middle: str,
    rounds: Sequence[BodyRound | SleeveRound | None],
    columns: Mapping[str, tuple[int | None, ...]],
) -> Iterator[str]:
    """The first row of a part, and the columns in the middle of the underarm, wherever round 1 itself begins."""
    if not any(column is not None for starts in columns.values() for column in starts):
        return
    told: dict[tuple[int | None, ...], list[str]] = {}
    for words, starts in columns.items():
        told.setdefault(starts, []).append(words)
    begin = "; ".join(f"{_begin(words)} column {size_run(starts)}" for starts, words in told.items())
    rows = size_run([first.chart_row if first else None for first in rounds])
    yield (
        f"Round 1 of {part} is row {rows}, and the columns run straight on from the yoke and over the underarm: "
        f"{middle} {begin}."
    )
