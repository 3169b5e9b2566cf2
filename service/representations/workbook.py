"""A graded pullover as a workbook (Office Open XML, ISO/IEC 29500): table, sizes, instructions, warnings, sources.

Numbers are numbers in cells that show them as a knitter reads them; text is text and never a formula, whatever it
begins with. The same pullover is the same bytes: nothing in the file says when or where it was made.
"""

from __future__ import annotations

import io
import re
from collections.abc import Callable, Container, Iterable, Sequence
from datetime import datetime
from math import ceil
from typing import TYPE_CHECKING, Any

from grading_core.errors import Impossible
from grading_core.fraction import Fraction
from grading_core.printing import FINEST_FRACTION, printing
from grading_core.pullover.front_matter import gauge_words
from grading_core.pullover.result import Pullover, Row, TablePart
from grading_core.sentences import TOKEN, Saying
from grading_core.units import to_answer
from service import VERSION
from service.errors import pointer
from service.language import text as said
from service.lengths import LengthWriter
from service.representations.pictures.heading import credits

if TYPE_CHECKING:
    from xlsxwriter import Workbook
    from xlsxwriter.format import Format
    from xlsxwriter.worksheet import Worksheet

KEY_NUMBERS: tuple[tuple[TablePart, str], ...] = (
    ("to_fit", "bust"),
    ("finished", "bust"),
    ("neck", "cast_on"),
    ("yoke", "rounds"),
    ("split", "underarm"),
    ("body", "stitches"),
    ("sleeve", "stitches"),
    ("finished", "body_length"),
    ("finished", "sleeve_length"),
)
"""The rows of the table that the sheet of sizes repeats."""

WORDS = {
    name: Saying(f"workbook.{name}")
    for name in (
        *("garment", "table", "sizes", "instructions", "warnings", "sources"),
        *("part", "item", "row", "unit", "run", "size", "knittable", "yes", "no", "why_not", "sentence"),
        *("code", "message", "place", "what", "which", "note"),
        *("version", "gauge", "bodies", "as_sent", "body_table", "publication", "credit", "cm", "inch"),
    )
}
"""What has no values, by the end of its id: names of sheets, heads of columns, and what stands in cells."""

COUNTED = Saying("workbook.counted", unit=TOKEN)

_OPTIONS = {"in_memory": True, "strings_to_formulas": False, "strings_to_urls": False, "strings_to_numbers": False}
_NO_TIME = datetime(1980, 1, 1)
_A4 = 9
_FORMULA_STARTS = ("=", "+", "-", "@")
_NOT_IN_XML = re.compile("[^\t\n\r\u0020-\ud7ff\ue000-\ufffd\U00010000-\U0010ffff]")
_NARROW, _WIDE = 8, 70
"""Widths of columns, in characters."""
_LINE_POINTS, _HIGHEST_POINTS = 15, 409
"""Height of a line of text, and of the highest row that a workbook may have."""


def workbook(pullover: Pullover, length: LengthWriter) -> bytes:
    """The XLSX file of a pullover with all its parts.

    length: by its convention inches are written.
    """
    # The writer is loaded where it is needed: most workers never write a workbook.
    from xlsxwriter import Workbook

    file = io.BytesIO()
    book = Workbook(file, _OPTIONS)
    book.set_properties({"title": _word("garment"), "created": _NO_TIME})
    styles = _Styles(book)
    _write_table(_Sheet(book, styles, "table"), pullover, length)
    _write_sizes(_Sheet(book, styles, "sizes"), pullover)
    _Sheet(book, styles, "instructions").write(
        _words("part", "sentence"),
        ((said(told.title), said(sentence)) for told in pullover.instructions for sentence in told.sentences),
    )
    _Sheet(book, styles, "warnings").write(
        _words("code", "size", "message", "place"),
        (
            (remark.code, remark.size, said(remark.message), None if remark.path is None else pointer(remark.path))
            for remark in pullover.remarks
        ),
    )
    _Sheet(book, styles, "sources").write(_words("what", "which", "note"), _sources(pullover))
    book.close()
    return file.getvalue()


class _Styles:
    """The formats of cells: of text, and of headers above text and above numbers.

    Each is there twice: what begins like a formula has one in which it stays text even when somebody edits the cell.
    """

    def __init__(self, book: Workbook) -> None:
        text = {"text_wrap": True, "valign": "top", "indent": 1}
        head = {**text, "bold": True, "bottom": 1, "bg_color": "#EEEEEE"}
        kinds = (text, head, {**head, "align": "right"})
        self.text, self.head, self.number_head = (
            tuple(book.add_format({**kind, "quote_prefix": disarmed}) for disarmed in (False, True)) for kind in kinds
        )
        tenths = dict.fromkeys(("grams", "metres", "yards"), "0.0")
        self._codes = {"cm": f'0.00" {_word("cm")}"', "inch": _inches(), **tenths}
        self._numbers: dict[str, Format] = {}
        self._add: Callable[[dict[str, Any]], Format] = book.add_format

    def number(self, unit: str) -> Format:
        """The format of numbers that count a unit."""
        code = self._codes.get(unit, "0")
        if code not in self._numbers:
            self._numbers[code] = self._add({"num_format": code, "valign": "top"})
        return self._numbers[code]


class _Sheet:
    """A sheet whose first row is a header that stays in view and is repeated on every printed page.

    name: the end of an id.
    """

    def __init__(self, book: Workbook, styles: _Styles, name: str) -> None:
        self.sheet: Worksheet = book.add_worksheet(_word(name))
        self.styles = styles
        self.sheet.set_landscape()
        self.sheet.set_paper(_A4)
        self.sheet.fit_to_pages(1, 0)
        self.sheet.repeat_rows(0)
        self.sheet.set_footer("&L&A&R&P / &N")

    def write(
        self, head: Sequence[str], lines: Iterable[Sequence[Any]], *, keys: int = 1, numbers: Container[int] = ()
    ) -> None:
        """A header and the lines below it.

        keys: columns that stay in view. numbers: columns of numbers. A cell is text, a number with its unit, or None.
        """
        cells = [list(line) for line in lines]
        # a header is wrapped between its words
        widths = [max(_NARROW, *map(len, text.split() or [""])) for text in head]
        for line in cells:
            for column, value in enumerate(line):
                if isinstance(value, str):
                    widths[column] = min(max(widths[column], len(value)), _WIDE)
        for column, width in enumerate(widths):
            self.sheet.set_column(column, column, width + 3)
        for column, name in enumerate(head):
            self._text(0, column, name, self.styles.number_head if column in numbers else self.styles.head)
        self._height(0, head, widths)
        for row, line in enumerate(cells, 1):
            for column, value in enumerate(line):
                self._cell(row, column, value)
            self._height(row, line, widths)
        self.sheet.freeze_panes(1, keys)

    def _cell(self, row: int, column: int, value: Any) -> None:
        if isinstance(value, str):
            self._text(row, column, value, self.styles.text)
        elif value is not None:
            number, unit = value
            if number is not None:
                self.sheet.write_number(row, column, number, self.styles.number(unit))

    def _text(self, row: int, column: int, text: str, styles: tuple[Format, Format]) -> None:
        self.sheet.write_string(row, column, _NOT_IN_XML.sub("\ufffd", text), styles[text.startswith(_FORMULA_STARTS)])

    def _height(self, row: int, line: Sequence[Any], widths: Sequence[int]) -> None:
        """Room for text that is wrapped: not every program makes it itself."""
        texts = [(value, width) for value, width in zip(line, widths, strict=True) if isinstance(value, str)]
        lines = max((ceil(len(text) / width) for text, width in texts), default=1)
        if lines > 1:
            self.sheet.set_row(row, min(lines * _LINE_POINTS, _HIGHEST_POINTS))


def _write_table(sheet: _Sheet, pullover: Pullover, length: LengthWriter) -> None:
    """Every row of the table; a length in cm and below it in inches."""

    def lines() -> Iterable[Sequence[Any]]:
        for row in pullover.table:
            key = (row.part, row.item, said(row.title))
            yield (*key, said(COUNTED(unit=row.unit)), *((value, row.unit) for value in row.answered), row.run)
            if row.printed_inch is not None:
                inches = ((_inch(value, length), "inch") for value in row.values)
                yield (*key, said(COUNTED(unit="inch")), *inches, row.run_inch)

    head = (*_words("part", "item", "row", "unit"), *pullover.labels, _word("run"))
    sheet.write(head, lines(), keys=4, numbers=range(4, len(head) - 1))


def _write_sizes(sheet: _Sheet, pullover: Pullover) -> None:
    """A line for each size: whether it can be knitted, why not, and its key numbers."""
    rows = {(row.part, row.item): row for row in pullover.table}
    keys: list[Row] = [rows[key] for key in KEY_NUMBERS if key in rows]

    def lines() -> Iterable[Sequence[Any]]:
        for place, size in enumerate(pullover.sizes):
            why = said(size.outcome.reason) if isinstance(size.outcome, Impossible) else None
            yield (size.label, _word("no" if why else "yes"), why, *((row.answered[place], row.unit) for row in keys))

    head = (*_words("size", "knittable", "why_not"), *(said(row.title) for row in keys))
    sheet.write(head, lines(), numbers=range(3, len(head)))


def _sources(pullover: Pullover) -> Iterable[Sequence[Any]]:
    """What the numbers are from: the version that computed them, gauges, body table, publications, and their credit."""
    yield _word("version"), VERSION, None
    for sentence in gauge_words(pullover.gauges):
        yield _word("gauge"), said(sentence), None
    if pullover.body_table is None:
        yield *_words("bodies", "as_sent"), None
        return
    yield _word("body_table"), pullover.body_table.name, pullover.body_table.title
    for source in pullover.body_table.sources:
        yield _word("publication"), source.name, source.edition
    for credit in credits(pullover):
        yield _word("credit"), credit, None


def _word(name: str) -> str:
    return said(WORDS[name]())


def _words(*names: str) -> tuple[str, ...]:
    return tuple(map(_word, names))


def _inch(value: int | Fraction | None, length: LengthWriter) -> float | None:
    return None if value is None else to_answer(Fraction(value), length.convention)[1]


def _inches() -> str:
    """The number format of inches: fractions of the printed step, where it is one that knitters read."""
    parts = printing().inch_step.denominator
    if parts == 1 or parts > FINEST_FRACTION or parts & (parts - 1):
        return f'0.00" {_word("inch")}"'
    return f'# {"?" * len(str(parts))}/{parts}" {_word("inch")}"'
