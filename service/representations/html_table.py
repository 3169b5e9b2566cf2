"""The table of an answer as HTML: a row for each quantity, a column for each size, as `tables` has them.

A pullover's rows have their titles and are printed as a pattern prints them; those of other answers are called by where
they stand in the JSON, and their numbers are those of the JSON.
"""

from __future__ import annotations

from collections.abc import Iterable, Iterator, Mapping, Sequence
from itertools import groupby
from typing import Any, NamedTuple

from markupsafe import Markup, escape

from grading_core.printing import printing
from service.language import language
from service.printing import PrintSettings
from service.representations import tables

_CORRECTED = ("size", "number", "printed", "expected", "unit", "likely_cause")


class _Row(NamedTuple):
    """A row as it is shown. letter: by which a picture refers to it. cells, inches: printed, one per size."""

    part: str
    title: str
    unit: str
    letter: str
    cells: Sequence[str]
    inches: Sequence[str]


def html_table(answer: Mapping[str, Any], _: PrintSettings) -> Markup:
    """An answer's table as an element, its rows in a group for each part.

    answer: whose lengths are still exact. What doesn't add up in a pattern is a row for each number to correct.
    """
    if "findings" in answer:
        return _findings(answer)
    labels = _joined(map(_column, tables.labels_of(answer)))
    groups = _joined(
        Markup("<tbody>{}</tbody>").format(_joined(map(_line, rows)))
        for _, rows in groupby(_rows(answer), lambda row: row.part)
    )
    return _table(Markup("<td></td>") + labels, groups)


def _table(columns: Markup, groups: Markup) -> Markup:
    table = Markup('<table lang="{}"><thead><tr>{}</tr></thead>{}</table>')
    return table.format(language().tag, columns, groups)


def _column(name: str) -> Markup:
    return Markup('<th scope="col">{}</th>').format(name)


def _cell(text: str) -> Markup:
    return Markup("<td>{}</td>").format(text)


def _findings(answer: Mapping[str, Any]) -> Markup:
    """What proofreading found: a line for each number to correct, and the reasoning of each finding."""
    head = _joined(_column(name.replace("_", " ")) for name in _CORRECTED)
    lines = (
        [str(number.get(name, "")).replace("_", " ") for name in _CORRECTED]
        for each in answer["corrections"]
        for number in [{**each, "number": " ".join(each["row"].values())}]
    )
    cells = (Markup("<tr>{}</tr>").format(_joined(map(_cell, line))) for line in lines)
    why = (Markup("<li><b>{}</b>: {}</li>").format(each["size"], each["because"]) for each in answer["findings"])
    table = _table(head, Markup("<tbody>{}</tbody>").format(_joined(cells)))
    return table + Markup("<ul>{}</ul>").format(_joined(why))


def _rows(answer: Mapping[str, Any]) -> Iterator[_Row]:
    for row in answer.get("table", ()):
        inches = row.get("printed_inch", ())
        # the titles of counts say what is counted
        unit = "cm, in" if inches else ""
        yield _Row(row["part"], row["title"], unit, row.get("letter", ""), row["printed"], inches)
    if "table" not in answer:
        missing = printing().missing
        for found in tables.rows(answer):
            cells = [missing if cell is None else str(cell) for cell in found.cells]
            steps = found.item if found.part == tables.OF_THE_SIZE else f"{found.part}.{found.item}"
            yield _Row(found.part, steps.replace(".", ", ").replace("_", " "), found.unit, "", cells, ())


def _line(row: _Row) -> Markup:
    letter = Markup("<b>{}</b> ").format(row.letter) if row.letter else ""
    unit = Markup(" <small>{}</small>").format(row.unit) if row.unit else ""
    heading = Markup('<th scope="row">{}{}{}</th>').format(letter, row.title, unit)
    inches = [Markup("<small>{}</small>").format(length) for length in row.inches] or [escape("")] * len(row.cells)
    cells = zip(row.cells, inches, strict=True)
    return Markup("<tr>{}{}</tr>").format(heading, _joined(Markup("<td>{}{}</td>").format(*cell) for cell in cells))


def _joined(parts: Iterable[Markup]) -> Markup:
    return Markup("").join(parts)
