"""A pullover's pattern as a page to print: all its parts in words, its measurements, and its pictures."""

from __future__ import annotations

from collections.abc import Callable, Iterable, Iterator, Sequence
from dataclasses import dataclass

from markupsafe import Markup

from grading_core.codes import WarningCode
from grading_core.errors import Remark
from grading_core.pullover.front_matter import IMPOSSIBLE
from grading_core.pullover.pictures import PicturedPullover
from grading_core.pullover.result import PART_TITLES, Part, Pullover
from grading_core.sentences import NAMES, TEXT, Saying, Sentence
from service.language import text as said
from service.lengths import LengthWriter
from service.representations.pages.page import page
from service.representations.pictures.chart.chart import TITLE as CHART
from service.representations.pictures.chart.chart import chart
from service.representations.pictures.heading import credits, not_knitted
from service.representations.pictures.heading import title as titled
from service.representations.pictures.schematic.schematic import TITLE as SCHEMATIC
from service.representations.pictures.schematic.schematic import schematic
from service.representations.pictures.sheets import Picture, picture_parts
from service.representations.workbook import WORDS as OF_TABLES

TITLE = Saying("pattern.title")
WORDS = {
    name: Saying(f"pattern.{name}")
    for name in ("name", "about", "measurement", "unit", "caution", "notes", "notes_about")
}
"""What has no values, by the end of its id."""

OF_SIZES = Saying("pattern.of_sizes", sizes=NAMES, note=TEXT)

MOST_COLUMNS = 10
"""Sizes that find room beside one another on paper; more are told in size runs."""

_WORK: frozenset[Part] = frozenset(("neck", "chart", "yoke", "split", "body", "sleeve", "band", "finishing"))
"""Parts whose sentences are steps."""

_CAUTIONS = frozenset((WarningCode.YOUNG_CHILD_NECK, WarningCode.FLOAT_CAN_CATCH_FINGERS))
"""What a knitter has to know too, and not only who publishes the pattern."""


@dataclass(frozen=True, slots=True)
class Figure:
    """A picture. parts: its drawings, one a sheet."""

    caption: str
    parts: Sequence[Markup]


@dataclass(frozen=True, slots=True)
class MeasuredRow:
    """A measurement. cm, inch: one per size, or one run for all."""

    letter: str | None
    title: str
    cm: Sequence[str]
    inch: Sequence[str]


@dataclass(frozen=True, slots=True)
class Measurements:
    """The table of measurements. labels: of the sizes, none where size runs stand in it."""

    labels: Sequence[str]
    rows: Sequence[MeasuredRow]


@dataclass(frozen=True, slots=True, kw_only=True)
class Section:
    """A part of the page.

    part: by which it is styled. work: whether its sentences are steps. measurements: in place of sentences. figure:
    after it.
    """

    part: str
    title: str
    sentences: Sequence[str]
    work: bool = False
    measurements: Measurements | None = None
    figure: Figure | None = None


def pattern(view: PicturedPullover, length: LengthWriter) -> str:
    """The page.

    view: what is printed. length: writes lengths.
    """
    remarks, every = view.pullover.remarks, [*view.knitted]
    return page(
        "pattern.html",
        view,
        titled(view, TITLE()),
        margin=16,
        name=view.picture.title or _word("name"),
        about=_word("about"),
        word={name: _word(name) for name in WORDS} | {name: said(OF_TABLES[name]()) for name in ("cm", "inch")},
        cautions=[*_noted((each for each in remarks if each.code in _CAUTIONS), every)],
        sections=[*_sections(view, length)],
        notes=[*_noted((each for each in remarks if each.code not in _CAUTIONS), every)],
        credits=credits(view.pullover),
    )


def _sections(view: PicturedPullover, length: LengthWriter) -> Iterator[Section]:
    reasons = [*map(said, not_knitted(view))]
    if not view.pullover.instructions:
        yield Section(part="sizes", title=said(PART_TITLES["sizes"]()), sentences=reasons)
    figures: dict[Part, Callable[[], Figure]] = {
        # before the knitting begins
        "terms": lambda: _figure(view, schematic(view, length, alone=False), SCHEMATIC()),
        "chart": lambda: _figure(view, chart(view, length), CHART()),
    }
    for told in view.pullover.instructions:
        # why a size can't be knitted takes the place of which can't
        sentences = [said(sentence) for sentence in told.sentences if sentence.saying is not IMPOSSIBLE]
        yield Section(
            part=told.part,
            title=said(told.title),
            sentences=sentences + (reasons if told.part == "sizes" else []),
            work=told.part in _WORK,
            measurements=_measurements(view.pullover) if told.part == "finished_measurements" else None,
            figure=figures[told.part]() if told.part in figures else None,
        )


def _figure(view: PicturedPullover, picture: Picture, caption: Sentence) -> Figure:
    return Figure(said(caption), [Markup(part) for part in picture_parts(picture, view.picture.page)])


def _measurements(pullover: Pullover) -> Measurements:
    labels = pullover.labels if len(pullover.labels) <= MOST_COLUMNS else ()
    rows = [row for row in pullover.table if row.part in ("to_fit", "finished")]
    return Measurements(
        labels,
        [
            MeasuredRow(row.letter, said(row.title), row.printed, row.printed_inch or ())
            if labels
            else MeasuredRow(row.letter, said(row.title), (row.run or "",), (row.run_inch or "",))
            for row in rows
        ],
    )


def _noted(remarks: Iterable[Remark], every: Sequence[str]) -> Iterator[str]:
    """Remarks as text, with the sizes that share one where these aren't all.

    every: the labels of all sizes that can be knitted.
    """
    sizes: dict[str, list[str]] = {}
    for remark in remarks:
        shared = sizes.setdefault(said(remark.message), [])
        if remark.size is not None:
            shared.append(remark.size)
    for note, labels in sizes.items():
        yield said(OF_SIZES(sizes=tuple(labels), note=note)) if labels and labels != every else note


def _word(name: str) -> str:
    return said(WORDS[name]())
