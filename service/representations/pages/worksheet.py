"""A pullover's worksheet as a page to print: one size round by round, to tick off."""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from dataclasses import dataclass
from itertools import takewhile

from markupsafe import Markup

from grading_core.printing import DASH, printing
from grading_core.pullover.pictures import PicturedPullover
from grading_core.pullover.result import PART_TITLES, KnittedSize, Part, TablePart
from grading_core.pullover.rounds import ChartStart, Line, PartRounds, Rounds, Step, all_rounds
from grading_core.sentences import COUNT, TEXT, Saying
from service.language import text as said
from service.lengths import LengthWriter
from service.representations.pages.page import page
from service.representations.pictures.heading import lines
from service.representations.pictures.heading import title as titled

TITLE = Saying("worksheet.title", size=TEXT)
AFTER = Saying("worksheet.after", column=COUNT, plain=COUNT)
WORDS = {
    name: Saying(f"worksheet.{name}")
    for name in (
        *("reading", "chart_reading", "after_reading", "done", "first_sleeve", "second_sleeve"),
        *("round", "increase", "work", "back_and_front", "back", "front", "sleeve", "total"),
        *("row", "body", "stitches", "chart"),
    )
}
"""What has no values, by the end of its id: how the page is read, and heads of columns."""

_SECTIONS: tuple[tuple[Part | TablePart, ...], ...] = (
    ("neck",),
    ("yoke",),
    ("split",),
    ("body", "hem"),
    ("sleeve", "cuff"),
    ("band",),
)
"""Parts of the garment that stand in one table."""


_MOST_COLUMNS, _FEWEST_LINES = 8, 7
"""A table of more columns needs the width of the sheet, and one of fewer lines is not parted."""


@dataclass(frozen=True, slots=True)
class WrittenLine:
    """A line of the page: what is ticked off, and the cells of its rounds, or what a step says."""

    ticks: Markup
    cells: Sequence[str]
    step: str


@dataclass(frozen=True, slots=True)
class Group:
    """Lines of a table. title: above them, where they are a part of their own."""

    title: str
    lines: Sequence[WrittenLine]


@dataclass(frozen=True, slots=True)
class Heads:
    """Heads of columns that stand beside one another. above: over all of them, where anything does."""

    above: str
    each: Sequence[str]


@dataclass(frozen=True, slots=True, kw_only=True)
class Section:
    """A part of the page.

    part: by which it is styled. steps: before its rounds. ticks: heads of the columns that are ticked off. heads: of
    the others, none where there are steps alone. layout: of the table: "short" or "wide" where it isn't parted in
    columns.
    """

    part: str
    title: str
    steps: Sequence[WrittenLine]
    ticks: Sequence[str]
    heads: Sequence[Heads]
    layout: str
    groups: Sequence[Group]


def worksheet(view: PicturedPullover, length: LengthWriter) -> str:
    """The page.

    view: one size. length: writes lengths.
    """
    facts, sections = lines(view), []
    for size in view.knitted.values():
        parts = {each.part: each for each in all_rounds(size, view.pullover.instructions)}
        sections = [_section([parts[part] for part in together]) for together in _SECTIONS]
        facts += _reading(size)
    title = titled(view, TITLE(size=view.picture.size))
    return page("worksheet.html", view, title, margin=13, facts=facts, sections=sections)


def _reading(size: KnittedSize) -> Iterator[str]:
    yield _word("reading")
    if size.chart:
        yield _word("chart_reading")
        if any(start.plain_before for starts in size.chart.rounds.starts for start in starts):
            yield _word("after_reading")


@dataclass(frozen=True, slots=True)
class _Columns:
    """Which columns a table has, beside the rounds and what is done in them.

    sections: places of the sections whose stitches it shows. starts: of those whose starts in the chart it shows, none
    where no chart is worked.
    """

    sections: Sequence[int]
    starts: Sequence[int]


def _section(parts: Sequence[PartRounds]) -> Section:
    rounds = [line for part in parts for line in part.lines if isinstance(line, Rounds)]
    first = parts[0]
    steps = [*takewhile(lambda line: isinstance(line, Step), first.lines)]
    lines_told = sum(len(part.lines) for part in parts) - len(steps)
    columns = _Columns(_told_apart([each.sections for each in rounds]), _told_apart(_charted(rounds)))
    heads = [*_heads(first.part, columns)]
    width = sum(len(each.each) for each in heads)
    return Section(
        part=first.part,
        title=said(PART_TITLES[first.part]()),
        steps=[*_written(steps, columns)],
        ticks=[_word("done")] if first.times == 1 else [_word("first_sleeve"), _word("second_sleeve")],
        heads=heads if rounds else [],
        layout="wide" if width > _MOST_COLUMNS else "short" if lines_told < _FEWEST_LINES else "",
        groups=[
            Group(said(PART_TITLES[part.part]()), [*_written(part.lines, columns)])
            if part is not first
            else Group("", [*_written(first.lines[len(steps) :], columns)])
            for part in parts
        ],
    )


def _charted(rounds: Sequence[Rounds]) -> list[tuple[ChartStart | None, ...]]:
    return [each.starts for each in rounds if each.chart_rows]


def _told_apart(rounds: Sequence[tuple[object, ...]]) -> Sequence[int]:
    """The places of sections that are shown, of which the front is not where it is always like the back."""
    places = range(max(map(len, rounds), default=0))
    alike = len(places) > 1 and all(each[0] == each[1] for each in rounds if each)
    return [place for place in places if not (alike and place == 1)]


def _heads(part: Part | TablePart, columns: _Columns) -> Iterator[Heads]:
    """The heads of the columns: rounds, what is done in them, stitches, and where the chart has them."""
    yield Heads("", (_word("round"), _word("increase" if part == "yoke" else "work")))
    stitches = ("back" if 1 in columns.sections else "back_and_front", "front", "sleeve")
    yield Heads(_word("stitches"), (*(_word(stitches[place]) for place in columns.sections), _word("total")))
    if columns.starts:
        starts = ("back" if 1 in columns.starts else "body", "front", "sleeve")
        names = [starts[-1] if part == "sleeve" else starts[place] for place in columns.starts]
        yield Heads(_word("chart"), (_word("row"), *map(_word, names)))


def _written(lines: Sequence[Line], columns: _Columns) -> Iterator[WrittenLine]:
    for line in lines:
        if isinstance(line, Step):
            yield WrittenLine(_ticks(1 if line.done else 0), (), said(line.does))
            continue
        yield WrittenLine(
            _ticks(line.last - line.first + 1), _cells(line, columns, said(line.does) if line.does else ""), ""
        )


def _cells(line: Rounds, columns: _Columns, does: str) -> list[str]:
    cells = [_span(line.first, line.last), does]
    cells += [str(line.sections[place]) for place in columns.sections]
    cells.append(str(line.total))
    if columns.starts:
        cells.append(_span(*line.chart_rows) if line.chart_rows else printing().missing)
        cells += [_start(line.starts[place]) if line.starts else printing().missing for place in columns.starts]
    return cells


def _span(first: int, last: int) -> str:
    return str(first) if first == last else f"{first}{DASH}{last}"


def _start(start: ChartStart | None) -> str:
    if start is None:
        return printing().missing
    return said(AFTER(column=start.column, plain=start.plain)) if start.plain else str(start.column)


def _ticks(many: int) -> Markup:
    """Boxes to tick off, five by five: empty elements, which the style draws."""
    fives, rest = divmod(many, 5)
    boxes = [*["<i></i>" * 5] * fives, *["<i></i>" * rest] * bool(rest)]
    return Markup("".join(f"<b>{five}</b>" for five in boxes))


def _word(name: str) -> str:
    return said(WORDS[name]())
