"""A graded pullover as a table: every number of the garment in all sizes, and the yarn for it."""

from __future__ import annotations

from collections.abc import Callable, Iterable, Mapping, Sequence
from fractions import Fraction
from functools import partial
from types import MappingProxyType
from typing import NamedTuple

from grading_core.errors import Impossible
from grading_core.parts.bust_darts import BustDarts
from grading_core.parts.neckline import FrontDrop
from grading_core.parts.short_rows import BackRaise
from grading_core.printing import printing
from grading_core.pullover.result import KnittedSize, Row, TablePart, Unit
from grading_core.pullover.yarn import ONE_COLOUR
from grading_core.yarn.result import Need

Value = int | Fraction | None

CM_PER_YARD = Fraction(9144, 100)
"""1 yd = 0.9144 m exactly (international yard and pound agreement of 1959)."""

PARTS: Mapping[TablePart, str] = MappingProxyType(
    {
        "to_fit": "To fit",
        "neck": "Neck",
        "yoke": "Yoke",
        "split": "Split",
        "body": "Body",
        "hem": "Hem",
        "sleeve": "Sleeve",
        "cuff": "Cuff",
        "band": "Neckband",
        "finished": "Finished",
        "yarn": "Yarn",
    }
)
"""The parts of the table in their order, as titles have them."""


class _Line(NamedTuple):
    """What a row of the table is. words: the rest of its title. value: of one size, None where it has none."""

    part: TablePart
    item: str
    unit: Unit
    words: str
    value: Callable[[KnittedSize], Value]

    @property
    def title(self) -> str:
        return f"{PARTS[self.part]}, {self.words}"


def _rows(part: BackRaise | FrontDrop | BustDarts | None) -> int | None:
    """The rows of a part that a size may do without."""
    return (part.rows or None) if part else None


def _extra(size: KnittedSize) -> Fraction | None:
    """Nothing where front and back are as wide, as nearly all are."""
    return size.finished.front_extra or None


_LINES: tuple[_Line, ...] = (
    _Line("to_fit", "bust", "cm", "bust", lambda size: size.to_fit),
    _Line("to_fit", "ease", "cm", "ease at the bust", lambda size: size.finished.bust - size.to_fit),
    _Line("neck", "cast_on", "stitches", "stitches cast on", lambda size: size.neck.cast_on.stitches),
    _Line("neck", "stitches", "stitches", "stitches", lambda size: size.counts.cast_on),
    _Line("neck", "back", "stitches", "back", lambda size: size.counts.neck.back),
    _Line("neck", "front", "stitches", "front", lambda size: size.counts.neck.front),
    _Line("neck", "sleeve", "stitches", "each sleeve", lambda size: size.counts.neck.sleeve),
    _Line("neck", "short_rows", "rows", "short rows", lambda size: _rows(size.neck.raised)),
    _Line("neck", "front_drop", "rows", "rows of the front drop", lambda size: _rows(size.neck.drop)),
    _Line("yoke", "rounds", "rounds", "rounds", lambda size: size.counts.rounds),
    _Line("yoke", "increase_rounds", "rounds", "increase rounds", lambda size: len(size.yoke.increase_rounds)),
    _Line("yoke", "back_increases", "times", "increases at each back edge", lambda size: size.yoke.yoke.increases[0]),
    _Line("yoke", "front_increases", "times", "increases at each front edge", lambda size: size.yoke.yoke.increases[1]),
    _Line(
        "yoke", "sleeve_increases", "times", "increases at each sleeve edge", lambda size: size.yoke.yoke.increases[2]
    ),
    _Line("yoke", "doubled_rounds", "rounds", "doubled increase rounds", lambda size: size.yoke.doubled_rounds),
    _Line("split", "back", "stitches", "back", lambda size: size.counts.split.back),
    _Line("split", "front", "stitches", "front", lambda size: size.counts.split.front),
    _Line("split", "sleeve", "stitches", "each sleeve", lambda size: size.counts.split.sleeve),
    _Line("split", "yoke_total", "stitches", "stitches on the needle", lambda size: size.counts.yoke_total),
    _Line("split", "underarm", "stitches", "cast on at each underarm", lambda size: size.counts.underarm),
    _Line("split", "line_to_body", "stitches", "of each line to the body", lambda size: size.counts.line_to_body),
    _Line("body", "stitches", "stitches", "stitches", lambda size: size.counts.body),
    _Line("body", "rounds", "rounds", "rounds before the hem", lambda size: size.body.rounds),
    _Line("body", "bust_dart_rows", "rows", "short rows over the bust", lambda size: _rows(size.body.bust_darts)),
    _Line("hem", "stitches", "stitches", "stitches", lambda size: size.body.hem.stitches),
    _Line("hem", "rounds", "rounds", "rounds", lambda size: size.body.hem.rounds),
    _Line("sleeve", "stitches", "stitches", "stitches", lambda size: size.counts.sleeve),
    _Line("sleeve", "rounds", "rounds", "rounds before the cuff", lambda size: size.sleeve.rounds),
    _Line("sleeve", "decrease_rounds", "rounds", "decrease rounds", lambda size: len(size.sleeve.decrease_rounds)),
    _Line("cuff", "stitches", "stitches", "stitches", lambda size: size.sleeve.cuff.stitches),
    _Line("cuff", "rounds", "rounds", "rounds", lambda size: size.sleeve.cuff.rounds),
    _Line("band", "stitches", "stitches", "stitches", lambda size: size.band.edge.stitches),
    _Line("band", "rounds", "rounds", "rounds", lambda size: size.band.rounds),
    _Line("finished", "bust", "cm", "bust", lambda size: size.finished.bust),
    _Line("finished", "upper_arm", "cm", "upper arm", lambda size: size.finished.upper_arm),
    _Line("finished", "neck", "cm", "neck at the cast-on", lambda size: size.finished.neck),
    _Line("finished", "depth", "cm", "depth of the yoke", lambda size: size.finished.depth),
    _Line("finished", "underarm", "cm", "each underarm", lambda size: size.finished.underarm),
    _Line("finished", "hem", "cm", "round the hem", lambda size: size.finished.hem),
    _Line("finished", "wrist", "cm", "round the cuff", lambda size: size.finished.wrist),
    _Line("finished", "body_length", "cm", "length of the body", lambda size: size.finished.body_length),
    _Line("finished", "front_length", "cm", "length of the front", lambda size: size.finished.front_length),
    _Line("finished", "front_extra", "cm", "front wider than the back by", _extra),
    _Line("finished", "sleeve_length", "cm", "length of the sleeve", lambda size: size.finished.sleeve_length),
    _Line("finished", "total_length", "cm", "length at the centre back", lambda size: size.finished.total_length),
    _Line("finished", "reach", "cm", "centre back to the end of the sleeve", lambda size: size.finished.reach),
    _Line("finished", "band", "cm", "round the neckband", lambda size: size.finished.band),
)  # fmt: skip

_AMOUNTS: tuple[tuple[str, Unit, Callable[[Need], int | Fraction]], ...] = (
    ("grams", "grams", lambda need: need.grams.likely),
    ("metres", "metres", lambda need: need.metres),
    ("yards", "yards", lambda need: need.metres * 100 / CM_PER_YARD),
    ("balls", "balls", lambda need: need.balls),
)

TABLE_ITEMS: tuple[str, ...] = tuple(dict.fromkeys(line.item for line in _LINES))
"""The items of every part but the yarn, each name once."""

YARN_ITEM = rf"({'|'.join(amount for amount, *_ in _AMOUNTS)})_[1-9][0-9]*"
"""A regular expression of the yarn's items: an amount, and the place of the colour."""


def garment_table(outcomes: Iterable[KnittedSize | Impossible]) -> tuple[Row, ...]:
    """Every number of the garment, a row each, with one value per size.

    outcomes: of all sizes in order; an impossible one has no value. Printed as `printing` has it.
    """
    sizes = [None if isinstance(size, Impossible) else size for size in outcomes]
    return tuple(
        _row(line.part, line.item, line.unit, line.title, [line.value(size) if size else None for size in sizes])
        for line in _LINES
    )


def yarn_table(outcomes: Iterable[KnittedSize | Impossible]) -> tuple[Row, ...]:
    """The yarn of each colour: grams, metres and yards that are likely needed, and balls to buy.

    outcomes: as for `garment_table`, with their yarn, which may be none. An item ends with the colour's place: grams_1.
    """
    needs = [() if isinstance(size, Impossible) else size.yarn for size in outcomes]
    colours = dict.fromkeys(need.yarn for size in needs for need in size)
    by_colour = [{need.yarn: need for need in size} for size in needs]
    rows = []
    for place, colour in enumerate(colours, 1):
        named = "" if colour == ONE_COLOUR else f" {colour}"
        own = [size.get(colour) for size in by_colour]
        for amount, unit, of in _AMOUNTS:
            values = [None if need is None else of(need) for need in own]
            rows.append(_row("yarn", f"{amount}_{place}", unit, f"{PARTS['yarn']}{named}, {amount}", values, colour))
    return tuple(rows)


def _row(part: TablePart, item: str, unit: Unit, title: str, values: Sequence[Value], colour: str | None = None) -> Row:
    settings, write = printing(), _writer(unit)
    missing = settings.missing
    inches = [missing if value is None else settings.inches(value) for value in values] if unit == "cm" else None
    return Row(
        part=part,
        item=item,
        unit=unit,
        title=title,
        values=tuple(values),
        printed=tuple([missing if value is None else write(value) for value in values]),
        printed_inch=None if inches is None else tuple(inches),
        colour=colour,
    )


def _writer(unit: Unit) -> Callable[[int | Fraction], str]:
    """What prints numbers of a unit: lengths by their step, yarn to the nearest whole, counts as they are."""
    settings = printing()
    if unit == "cm":
        return settings.cm
    return partial(settings.decimal, step=Fraction(1)) if unit in ("grams", "metres", "yards") else str
