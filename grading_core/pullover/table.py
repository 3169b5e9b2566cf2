"""A graded pullover as a table: every number of the garment in all sizes, and the yarn for it."""

from __future__ import annotations

from collections.abc import Callable, Iterable, Mapping, Sequence
from functools import partial
from string import ascii_uppercase
from types import MappingProxyType
from typing import Any, Literal, NamedTuple

from grading_core.errors import Impossible
from grading_core.fraction import Fraction
from grading_core.parts.bust_darts import BustDarts
from grading_core.parts.neckline import FrontDrop
from grading_core.parts.short_rows import BackRaise
from grading_core.printing import printing
from grading_core.pullover.colours import ONE_COLOUR, GarmentColours
from grading_core.pullover.result import KnittedSize, Row, TablePart, Unit
from grading_core.sentences import COUNT, TEXT, TOKEN, Kind, Saying, Sentence, run_of
from grading_core.yarn.request import METRES_PER_YARD
from grading_core.yarn.result import Need

Value = int | Fraction | None


class Line(NamedTuple):
    """What a row of the table is. title: what is said of it. value: of one size, None where it has none."""

    part: TablePart
    item: str
    unit: Unit
    title: Sentence
    value: Callable[[KnittedSize], Value]


def _line(part: TablePart, item: str, unit: Unit, value: Callable[[KnittedSize], Value]) -> Line:
    return Line(part, item, unit, Saying(f"title.{part}_{item}")(), value)


def _rows(part: BackRaise | FrontDrop | BustDarts | None) -> int | None:
    """The rows of a part that a size may do without."""
    return (part.rows or None) if part else None


def _extra(size: KnittedSize) -> Fraction | None:
    """Nothing where front and back are as wide, as nearly all are."""
    return size.finished.front_extra or None


LINES: tuple[Line, ...] = (
    _line("to_fit", "bust", "cm", lambda size: size.to_fit),
    _line("to_fit", "ease", "cm", lambda size: size.finished.bust - size.to_fit),
    _line("neck", "cast_on", "stitches", lambda size: size.neck.cast_on.stitches),
    _line("neck", "stitches", "stitches", lambda size: size.counts.cast_on),
    _line("neck", "back", "stitches", lambda size: size.counts.neck.back),
    _line("neck", "front", "stitches", lambda size: size.counts.neck.front),
    _line("neck", "sleeve", "stitches", lambda size: size.counts.neck.sleeve),
    _line("neck", "short_rows", "rows", lambda size: _rows(size.neck.raised)),
    _line("neck", "front_drop", "rows", lambda size: _rows(size.neck.drop)),
    _line("yoke", "rounds", "rounds", lambda size: size.counts.rounds),
    _line("yoke", "increase_rounds", "rounds", lambda size: len(size.yoke.increase_rounds)),
    _line("yoke", "back_increases", "times", lambda size: size.yoke.yoke.increases[0]),
    _line("yoke", "front_increases", "times", lambda size: size.yoke.yoke.increases[1]),
    _line("yoke", "sleeve_increases", "times", lambda size: size.yoke.yoke.increases[2]),
    _line("yoke", "doubled_rounds", "rounds", lambda size: size.yoke.doubled_rounds),
    _line("split", "back", "stitches", lambda size: size.counts.split.back),
    _line("split", "front", "stitches", lambda size: size.counts.split.front),
    _line("split", "sleeve", "stitches", lambda size: size.counts.split.sleeve),
    _line("split", "yoke_total", "stitches", lambda size: size.counts.yoke_total),
    _line("split", "underarm", "stitches", lambda size: size.counts.underarm),
    _line("split", "line_to_body", "stitches", lambda size: size.counts.line_to_body),
    _line("body", "stitches", "stitches", lambda size: size.counts.body),
    _line("body", "rounds", "rounds", lambda size: size.body.rounds),
    _line("body", "bust_dart_rows", "rows", lambda size: _rows(size.body.bust_darts)),
    _line("hem", "stitches", "stitches", lambda size: size.body.hem.stitches),
    _line("hem", "rounds", "rounds", lambda size: size.body.hem.rounds),
    _line("sleeve", "stitches", "stitches", lambda size: size.counts.sleeve),
    _line("sleeve", "rounds", "rounds", lambda size: size.sleeve.rounds),
    _line("sleeve", "decrease_rounds", "rounds", lambda size: len(size.sleeve.decrease_rounds)),
    _line("cuff", "stitches", "stitches", lambda size: size.sleeve.cuff.stitches),
    _line("cuff", "rounds", "rounds", lambda size: size.sleeve.cuff.rounds),
    _line("band", "stitches", "stitches", lambda size: size.band.edge.stitches),
    _line("band", "rounds", "rounds", lambda size: size.band.rounds),
    _line("finished", "bust", "cm", lambda size: size.finished.bust),
    _line("finished", "upper_arm", "cm", lambda size: size.finished.upper_arm),
    _line("finished", "neck", "cm", lambda size: size.finished.neck),
    _line("finished", "depth", "cm", lambda size: size.finished.depth),
    _line("finished", "underarm", "cm", lambda size: size.finished.underarm),
    _line("finished", "hem", "cm", lambda size: size.finished.hem),
    _line("finished", "wrist", "cm", lambda size: size.finished.wrist),
    _line("finished", "body_length", "cm", lambda size: size.finished.body_length),
    _line("finished", "front_length", "cm", lambda size: size.finished.front_length),
    _line("finished", "front_extra", "cm", _extra),
    _line("finished", "sleeve_length", "cm", lambda size: size.finished.sleeve_length),
    _line("finished", "total_length", "cm", lambda size: size.finished.total_length),
    _line("finished", "reach", "cm", lambda size: size.finished.reach),
    _line("finished", "band", "cm", lambda size: size.finished.band),
)  # fmt: skip
"""The rows of the garment in their order."""

LETTERS: Mapping[str, str] = MappingProxyType(
    dict(zip((line.item for line in LINES if line.part == "finished"), ascii_uppercase, strict=False))
)
"""By which a schematic refers to each finished measurement, the same in every garment."""

STRAND: dict[str, Kind] = {"strands": TOKEN, "strand": COUNT, "name": TEXT}
"""Of a strand. strands: whether there is "one", or several which are "named" or "numbered"."""

_AMOUNTS: tuple[tuple[Literal["grams", "metres", "yards"], Callable[[Need], Fraction]], ...] = (
    ("grams", lambda need: need.grams.likely),
    ("metres", lambda need: need.likely_metres),
    ("yards", lambda need: yards(need.likely_metres)),
)
_YARN_TITLES = {amount: Saying(f"title.yarn_{amount}", colours=TOKEN, colour=TEXT) for amount, _ in _AMOUNTS}
_BALLS = Saying("title.yarn_balls", colours=TOKEN, colour=TEXT, **STRAND)

TABLE_ITEMS: tuple[str, ...] = tuple(dict.fromkeys(line.item for line in LINES))
"""The items of every part but the yarn, each name once."""

YARN_ITEM = rf"(({'|'.join(amount for amount, _ in _AMOUNTS)})_[1-9][0-9]*|balls_[1-9][0-9]*(_[1-9][0-9]*)?)"
"""A regular expression of the yarn's items: an amount, and the place of the colour; balls of a further strand with its
place after it."""


def garment_table(outcomes: Iterable[KnittedSize | Impossible]) -> tuple[Row, ...]:
    """Every number of the garment, a row each, with one value per size.

    outcomes: of all sizes in order; an impossible one has no value. Printed as `printing` has it.
    """
    sizes = [None if isinstance(size, Impossible) else size for size in outcomes]
    return tuple(
        _row(line.part, line.item, line.unit, line.title, [line.value(size) if size else None for size in sizes])
        for line in LINES
    )


def yarn_table(outcomes: Iterable[KnittedSize | Impossible], colours: GarmentColours) -> tuple[Row, ...]:
    """The yarn of each colour: grams, metres and yards that are likely needed, and balls to buy of each strand.

    outcomes: as for `garment_table`, with their yarn, which may be none. colours: of the garment; an item ends with the
    place of its colour among all of them, grams_1, balls of a second strand with its place too, balls_1_2.
    """
    places = {symbol: place for place, symbol in enumerate(colours.names, 1)}
    rows: list[Row] = []
    for colour, own in by_colour(outcomes, colours):
        place = places[colour.symbol or ONE_COLOUR]
        for amount, of in _AMOUNTS:
            title = _YARN_TITLES[amount](**colour_values(colour))
            rows.append(_row("yarn", f"{amount}_{place}", amount, title, run_of(own, of), colour.yarn))
        for strand, told in enumerate(strands_told(colour), 1):
            title = _BALLS(**colour_values(colour), **told)
            item = f"balls_{place}" if strand == 1 else f"balls_{place}_{strand}"
            number = strand if len(colour.strands) > 1 else None
            rows.append(_row("yarn", item, "balls", title, run_of(own, balls_of(strand - 1)), colour.yarn, number))
    return tuple(rows)


def by_colour(
    outcomes: Iterable[KnittedSize | Impossible | None], colours: GarmentColours
) -> list[tuple[Need, tuple[Need | None, ...]]]:
    """Each colour's yarn, as the first size has it that needs any, and what every size needs of it.

    outcomes: of all sizes in order; one that isn't knitted needs nothing. colours: of the garment, in whose order they
    are; some sizes may have none of the first.
    """
    needs = [{need.symbol: need for need in size.yarn} if isinstance(size, KnittedSize) else {} for size in outcomes]
    return [
        (next(size[symbol] for size in needs if symbol in size), tuple([size.get(symbol) for size in needs]))
        for symbol in [None if name == ONE_COLOUR else name for name in colours.names]
        if any(symbol in size for size in needs)
    ]


def colour_values(colour: Need) -> dict[str, str]:
    """Whose yarn it is, as values of a sentence.

    colour: any need of it. In the sentence `colours` is "one" where all of the garment has one colour, whose name says
    nothing, and else "several".
    """
    return {"colours": "one" if colour.symbol is None else "several", "colour": colour.yarn}


def strands_told(colour: Need) -> list[dict[str, Any]]:
    """Each strand of a yarn, as values of a sentence.

    colour: any need of it. In the sentence `strands` is "one" where nothing is held together, and else "named" or
    "numbered".
    """
    several = len(colour.strands) > 1
    return [
        {
            "strands": ("named" if strand.name else "numbered") if several else "one",
            "strand": number,
            "name": strand.name or "",
        }
        for number, strand in enumerate(colour.strands, 1)
    ]


def balls_of(place: int) -> Callable[[Need], int]:
    """Gets the balls of one strand of a need.

    place: of the strand, counted from 0.
    """
    return lambda need: need.strands[place].balls


def yards(metres: Fraction) -> Fraction:
    """Metres of yarn in yards."""
    return metres / METRES_PER_YARD


def _row(
    part: TablePart,
    item: str,
    unit: Unit,
    title: Sentence,
    values: Sequence[Value],
    colour: str | None = None,
    strand: int | None = None,
) -> Row:
    settings, write = printing(), _writer(unit)
    missing, write_inches = settings.missing, settings.inches
    inches = [missing if value is None else write_inches(value) for value in values] if unit == "cm" else None
    return Row(
        part=part,
        item=item,
        unit=unit,
        title=title,
        values=tuple(values),
        printed=tuple([missing if value is None else write(value) for value in values]),
        printed_inch=None if inches is None else tuple(inches),
        letter=LETTERS.get(item) if part == "finished" else None,
        colour=colour,
        strand=strand,
    )


def _writer(unit: Unit) -> Callable[[int | Fraction], str]:
    """What prints numbers of a unit: lengths by their step, yarn to the nearest whole, counts as they are."""
    settings = printing()
    if unit == "cm":
        return settings.cm
    return partial(settings.decimal, step=Fraction(1)) if unit in ("grams", "metres", "yards") else str
