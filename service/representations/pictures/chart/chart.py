"""A placed chart on sheets: one size round by round, or one repeat with where every size starts in it.

Every sheet has its piece of the chart with the numbers of columns, rows and rounds, and the legend.
"""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from math import isinf

import svg

from grading_core.chart.drawn_rounds import ChartView, DrawnPart, DrawnSection, RepeatView, SizeView, Start
from grading_core.codes import ProblemCode
from grading_core.errors import ContradictionError, Problem
from grading_core.fraction import Fraction
from grading_core.pullover.pictures import Paper, PicturedPullover, drawn_chart
from grading_core.sentences import COUNT, NAMES, TOKEN, Saying, Sentence, words
from service.language import text as said
from service.lengths import LengthWriter
from service.representations.pictures.chart.cuts import Cell, Cut, cut
from service.representations.pictures.chart.grid import DIMENSIONS, Centre, Line, Sheet, draw, margins
from service.representations.pictures.chart.legend import entries, of_token
from service.representations.pictures.chart.starts import LEAST_WIDTH, SECTION, described, flags, table
from service.representations.pictures.drawing import LEGEND_LINE, Entry, Ink, inks, legend_lines, mark_patterns, rounded
from service.representations.pictures.heading import heading
from service.representations.pictures.sheets import Drawing, Heading, Picture, Room, room

TITLE = Saying("picture.whole_chart")
READING = Saying("picture.reading")
NOTHING = Saying("chart_sheet.nothing_worked")
STARTS_IN = Saying("chart_sheet.starts_in")
START = Saying("chart_sheet.start", section=SECTION, column=COUNT)
START_AFTER = Saying("chart_sheet.start_after", section=SECTION, column=COUNT, before=COUNT)
PLAIN = Saying("chart_sheet.plain", section=SECTION)
CENTRE = Saying("chart_sheet.centre", of=TOKEN, sections=words("drawn_section"), where=TOKEN, column=COUNT, next=COUNT)
"""of: "all" sections, or "some" of them. where: "on" a column, or "between" two."""
CHART = Saying("picture.chart_described", columns=COUNT, rows=COUNT, colours=NAMES)
DRAWN = Saying("chart_sheet.rounds_described", rounds=COUNT)
TRACE = Saying("picture.trace", part=TOKEN, of=TOKEN, first=COUNT, start=COUNT, last=COUNT, end=COUNT)

MOST_SHEETS = 30
"""Of paper, in one picture."""

_FLATTEST, _TALLEST = 0.4, 2.0
"""How high a stitch is drawn for its width at least and at most: knitted ones lie between."""

_MOST_FLAGGED = 0.45
"""Of a sheet's height, for the words of where sizes start."""

_MOST_EXPLAINED, _SHORTENED = 0.35, (24, 10)
"""Of a sheet's height, for the legend; and to how many characters its names are shortened, that it takes up no more."""

_NARROWEST = 512
"""Of a picture that isn't on paper, in pixels."""

_BETWEEN = 14
"""Pixels between what stands below one another."""


def chart(view: PicturedPullover, _: LengthWriter) -> Picture:
    """A pullover's chart: round by round in the size that is asked for, else one repeat with every size.

    view: of a pullover with a chart.

    Raises ContradictionError for more sheets of paper than `MOST_SHEETS`.
    """
    drawn = drawn_chart(view)
    assert drawn is not None
    return chart_sheets(drawn, "chart", heading(view, TITLE()), view.picture.page)


def chart_sheets(view: SizeView | RepeatView, key: str, above: Heading, paper: Paper) -> Picture:
    """A chart on as many sheets as it takes.

    key: the picture's. above: its heading, to which lines about the chart are added.

    Raises ContradictionError for more sheets of paper than `MOST_SHEETS`.
    """
    told = [*above.lines, said(DIMENSIONS(columns=view.chart.width, rows=view.chart.height)), said(READING())]
    drawn = _size_lines(view) if isinstance(view, SizeView) else _repeat_lines(view)
    if not drawn:
        told.append(said(NOTHING()))
        drawn = _bare_lines(view)
    above = Heading(above.title, told)
    rows = view.chart.worked_rows()
    symbols = set().union(*(rows[line.row - 1] for line in drawn))
    colours = {symbol: colour for symbol, colour in view.chart.colours.items() if symbol in symbols}
    ink = inks(colours, view.plain.plain)
    ratio = min(_TALLEST, max(_FLATTEST, float(view.gauge.stitches_per_cm / view.gauge.rows_per_cm)))
    cell, drawings = _drawings(view, drawn, ink, ratio, room(paper, above), key)
    return Picture(
        key=key,
        heading=above,
        about=[*_described(view, [colours[symbol].name for symbol in ink])],
        definitions=mark_patterns(ink, cell.width, cell.height, key),
        drawings=drawings,
    )


def _drawings(
    view: SizeView | RepeatView, lines: Sequence[Line], ink: dict[str, Ink], ratio: float, room: Room, key: str
) -> tuple[Cell, list[Drawing]]:
    """The size of a stitch, and what stands on each sheet."""
    chart, centres = view.chart, [*_centres(view)]
    heading = said(STARTS_IN()) if any(line.words for line in lines) else ""
    around = margins(lines, centres, heading)
    if isinstance(view, RepeatView):
        around = around._replace(right=max(around.right, LEAST_WIDTH + 20))

    def cut_above(taken: float) -> tuple[Cell, list[Cut]]:
        """Above what takes up some of a sheet's height."""
        inner = Room(
            room.width - around.left - around.right, room.height - around.top - around.bottom - taken - _BETWEEN
        )
        return cut(chart.width, len(lines), chart.height, ratio, inner)

    cell, cuts = cut_above(0)
    width = room.width
    if isinf(room.height):
        width = max(around.left + cell.width * chart.width + around.right, _NARROWEST)
    legend = _legend([*entries(view, lines, ink, ratio, key)], width, room.height)
    legend_height = LEGEND_LINE * len(legend)
    flagged = 0.0
    if isinstance(view, RepeatView):
        flagged = max(flags(view, each, cell, width - around.left)[1] for each in cuts)
        if flagged > _MOST_FLAGGED * room.height:
            flagged = 0
    cell, cuts = cut_above(legend_height + flagged)
    if len(cuts) > MOST_SHEETS:
        detail = f"takes {len(cuts)} sheets of paper, and a picture has at most {MOST_SHEETS}."
        raise ContradictionError([Problem(("picture", "page"), ProblemCode.TOO_MANY_SHEETS, detail)])
    sheet = Sheet(rows=chart.worked_rows(), lines=lines, ink=ink, key=key, centres=centres, heading=heading, cell=cell)
    drawings = []
    for each in cuts:
        drawn = [svg.G(transform=[svg.Translate(rounded(around.left), around.top)], elements=draw(sheet, each))]
        y = around.top + len(each.rows) * cell.height + around.bottom
        if isinstance(view, RepeatView) and flagged and each.rows.start == 0:
            told, high = flags(view, each, cell, width - around.left)
            drawn.append(_moved(around.left, y, told))
            y += high
        y += _BETWEEN
        drawn.append(_moved(0, y, legend))
        drawings.append(Drawing(width=width, height=y + legend_height, elements=drawn))
    if isinstance(view, RepeatView):
        drawings = [*_with_table(drawings, view, room)]
    return cell, drawings


def _with_table(drawings: Sequence[Drawing], view: RepeatView, room: Room) -> Iterator[Drawing]:
    """The sheets, the table of all sizes below the last one where there is room, else on sheets of its own."""
    parts = [*table(view, room.height)]
    yield from drawings[:-1]
    last = drawings[-1]
    if len(parts) == 1 and last.height + _BETWEEN + parts[0].height <= room.height:
        [part] = parts
        yield Drawing(
            width=max(last.width, part.width),
            height=last.height + _BETWEEN + part.height,
            elements=[*last.elements, _moved(0, last.height + _BETWEEN, part.elements)],
        )
    else:
        yield last
        yield from parts


def _legend(found: Sequence[Entry], width: float, height: float) -> list[svg.G]:
    """The legend in lines, long names shortened where it would take up too much of a sheet."""
    for most in (None, *_SHORTENED):
        legend = legend_lines((_shortened(entry, most) for entry in found), width)
        if LEGEND_LINE * len(legend) <= _MOST_EXPLAINED * height:
            break
    return legend


def _shortened(entry: Entry, most: int | None) -> Entry:
    if most is None or len(entry.words) <= most:
        return entry
    return entry._replace(words=entry.words[: most - 1].rstrip() + "…")


def _moved(x: float, y: float, elements: Sequence[svg.Element]) -> svg.G:
    return svg.G(transform=[svg.Translate(rounded(x), rounded(y))], elements=list(elements))


def _size_lines(view: SizeView) -> list[Line]:
    """Every round of a size."""
    return [
        Line(
            row=each.row,
            part=each.part,
            number=each.number,
            words=", ".join(said(_start(start)) for start in each.starts),
            starts=tuple([(start.section, start.column) for start in each.starts if start.column is not None]),
            signs=each.signs,
            plain_before=any(start.before for start in each.starts),
        )
        for each in view.rounds
    ]


def _bare_lines(view: ChartView) -> list[Line]:
    """Every row of the chart."""
    return [Line(row=row, part=None, number=None, words="", starts=()) for row in range(1, view.chart.height + 1)]


def _repeat_lines(view: RepeatView) -> list[Line]:
    """Every row of the chart, with the first stitches of all sizes."""
    starts: dict[int, dict[tuple[DrawnSection, int], None]] = {}
    for size in view.sizes:
        for start in size.starts:
            starts.setdefault(start.row, {})[start.section, start.first] = None
    return [line._replace(starts=tuple(starts.get(line.row, ()))) for line in _bare_lines(view)]


def _start(start: Start) -> Sentence:
    if start.column is None:
        return PLAIN(section=start.section)
    if start.before:
        return START_AFTER(section=start.section, column=start.column, before=start.before)
    return START(section=start.section, column=start.column)


def _centres(view: ChartView) -> Iterator[Centre]:
    """The columns on the sections' centres, with the sections where these differ."""
    sections: dict[Fraction, list[DrawnSection]] = {}
    anchor = view.anchor
    halves: tuple[tuple[DrawnSection, Fraction], ...] = (("back", anchor.back), ("front", anchor.front))
    if anchor.back == anchor.front:
        halves = (("body", anchor.back),)
    for section, column in (*halves, ("sleeve", anchor.sleeve)):
        sections.setdefault(column, []).append(section)
    for column, of in sections.items():
        last = int(column) or view.chart.width
        sentence = CENTRE(
            of="all" if len(sections) == 1 else "some",
            sections=tuple(of),
            where="on" if column.denominator == 1 else "between",
            column=last,
            next=last % view.chart.width + 1,
        )
        yield Centre(column, said(sentence))


def _described(view: SizeView | RepeatView, names: Sequence[str]) -> Iterator[Sentence]:
    """The picture in words."""
    yield CHART(columns=view.chart.width, rows=view.chart.height, colours=tuple(names))
    if isinstance(view, RepeatView):
        yield from described(view)
        return
    if not view.rounds:
        yield NOTHING()
        return
    yield DRAWN(rounds=len(view.rounds))
    parts: tuple[DrawnPart, ...] = ("yoke", "below")
    for section in view.sections:
        for part in parts:
            starts = [
                (each.number, start.column)
                for each in view.rounds
                for start in each.starts
                if each.part == part and start.section == section and start.column is not None
            ]
            if starts:
                (first, start), (last, end) = starts[0], starts[-1]
                yield TRACE(part=part, of=of_token(section), first=first, start=start, last=last, end=end)
