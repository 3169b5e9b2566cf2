"""Slips of whoever prints a pattern's table: a number of one row that is made wrong, as numbers get wrong in print."""

from __future__ import annotations

import random
import re
from collections.abc import Callable, Iterator, Mapping, Sequence
from copy import deepcopy
from dataclasses import dataclass
from fractions import Fraction
from typing import Any, Literal

Json = dict[str, Any]
Form = Literal["values", "runs", "both"]
FORMS: tuple[Form, ...] = ("values", "runs", "both")

_VULGAR = {"½": "1/2", "¼": "1/4", "¾": "3/4", "⅛": "1/8", "⅜": "3/8", "⅝": "5/8", "⅞": "7/8"}


@dataclass(frozen=True, slots=True, kw_only=True)
class Slip:
    """A row that was made wrong.

    kind: how. place: of the row. field: that is wrong, "values", "printed" or "printed_inch". right: what stood there,
    by the places of the sizes that are wrong.
    """

    kind: str
    place: int
    field: str
    right: Mapping[int, Fraction]


def rows_in(table: Sequence[Json], form: Form) -> list[Json]:
    """The table's rows with values, with runs, or with both; a row has its cells, of which a run is made at last."""
    fields = {"values": ("values",), "runs": ("printed", "printed_inch"), "both": ("values", "printed", "printed_inch")}
    kept = ("part", "item", "unit", *fields[form])
    return [
        {name: list(row[name]) if name in fields[form] else row[name] for name in kept if name in row} for row in table
    ]


def as_posted(rows: Sequence[Json], none: str) -> list[Json]:
    """The rows with runs, as a table has them, for their cells.

    none: what stands for a missing number.
    """
    posted = []
    for row in rows:
        sent = {name: row[name] for name in ("part", "item", "unit", "values") if name in row}
        for cells, run in (("printed", "run"), ("printed_inch", "run_inch")):
            if cells in row and set(row[cells]) != {none}:
                sent[run] = _run(row[cells])
        posted.append(sent)
    return posted


def _run(cells: Sequence[str]) -> str:
    return cells[0] if len(set(cells)) == 1 else f"{cells[0]} ({', '.join(cells[1:])})"


def number(cell: Any) -> Fraction | None:
    """What a cell says, a value or as it is printed; None where it is no number."""
    if cell is None or isinstance(cell, int | float):
        return None if cell is None else Fraction(str(cell))
    spelt = cell.replace(",", ".").replace("\u2212", "-")
    for character, fraction in _VULGAR.items():
        spelt = spelt.replace(character, f" {fraction}")
    if not re.fullmatch(r"-?\s*(\d+(\.\d+)?)?(\s*\d+/\d+)?", spelt) or not re.search(r"\d", spelt):
        return None
    sign, parts = (-1 if spelt.startswith("-") else 1), spelt.lstrip("-").split()
    return sign * sum((Fraction(part) for part in parts), Fraction(0))


def slip(generator: random.Random, rows: Sequence[Json], kind: str) -> tuple[list[Json], Slip] | None:
    """The rows with one of them made wrong; None where this row can't be.

    kind: one of `KINDS`.
    """
    place = generator.randrange(len(rows))
    field = generator.choice([name for name in ("values", "printed", "printed_inch") if name in rows[place]])
    cells = rows[place][field]
    made = KINDS[kind](generator, list(cells))
    if made is None:
        return None
    right = {}
    for size, (before, after) in enumerate(zip(cells, made, strict=True)):
        was, now = number(before), number(after)
        if was != now:
            if was is None or now is None:
                return None
            right[size] = was
    if not right:
        return None
    changed = deepcopy(list(rows))
    changed[place][field] = made
    return changed, Slip(kind=kind, place=place, field=field, right=right)


def _known(cells: Sequence[Any]) -> list[int]:
    return [size for size, cell in enumerate(cells) if number(cell) is not None]


def _spelt(cell: Any, spell: Callable[[str], str | None]) -> Any:
    """A cell with its whole digits and decimals spelt otherwise; fractions and small parts stay."""
    if isinstance(cell, str):
        head = re.match(r"-?\d+([.,]\d+)?(?!\d*/)", cell)
        made = spell(head[0]) if head else None
        return None if made is None or head is None else made + cell[head.end() :]
    made = spell(str(cell))
    if made is None:
        return None
    return int(made) if isinstance(cell, int) else float(made)


def _one_cell(generator: random.Random, cells: list[Any], spell: Callable[[str], str | None]) -> list[Any] | None:
    known = _known(cells)
    if not known:
        return None
    size = generator.choice(known)
    made = _spelt(cells[size], spell)
    if made is None:
        return None
    cells[size] = made
    return cells


def _digit(generator: random.Random, cells: list[Any]) -> list[Any] | None:
    def spell(text: str) -> str:
        digits = [place for place, character in enumerate(text) if character.isdigit()]
        place = generator.choice(digits)
        others = [digit for digit in "0123456789" if digit != text[place]]
        if place == digits[0] and len(digits) > 1:
            others = [digit for digit in others if digit != "0"]
        return text[:place] + generator.choice(others) + text[place + 1 :]

    return _one_cell(generator, cells, spell)


def _swap(generator: random.Random, cells: list[Any]) -> list[Any] | None:
    def spell(text: str) -> str | None:
        pairs = [
            place
            for place in range(len(text) - 1)
            if text[place : place + 2].isdigit() and text[place] != text[place + 1]
            and not (text[place + 1] == "0" and (place == 0 or not text[place - 1].isdigit()))
        ]  # fmt: skip
        if not pairs:
            return None
        place = generator.choice(pairs)
        return text[:place] + text[place + 1] + text[place] + text[place + 2 :]

    return _one_cell(generator, cells, spell)


def _neighbour(generator: random.Random, cells: list[Any]) -> list[Any] | None:
    pairs = list(_unlike_neighbours(cells))
    if not pairs:
        return None
    size, other = generator.choice(pairs)
    cells[size] = cells[other]
    return cells


def _unlike_neighbours(cells: Sequence[Any]) -> Iterator[tuple[int, int]]:
    known = _known(cells)
    for size, other in zip(known, known[1:], strict=False):
        if other == size + 1 and number(cells[size]) != number(cells[other]):
            yield from ((size, other), (other, size))


def _shift(generator: random.Random, cells: list[Any]) -> list[Any] | None:
    """From a size on every number is that of the size before it, or of the size after it."""
    if len(cells) < 3 or len(_known(cells)) < len(cells):
        return None
    if generator.random() < 0.5:
        place = generator.randrange(1, len(cells) - 1)
        return [*cells[:place], *cells[place - 1 : -1]]
    place = generator.randrange(len(cells) - 2)
    return [*cells[:place], *cells[place + 1 :], cells[-1]]


KINDS = {"one digit": _digit, "two digits swapped": _swap, "neighbouring size": _neighbour, "row shifted": _shift}
