"""What holds between the printed numbers of a pullover, judged on its own for the check of proofreading.

Every relation stands here a second time, from what the rows of the table mean, in exact fractions; nothing of the
service's own proofreading is used. A printed number is the span of all numbers that are printed so: half a step to
either side. A relation is broken where no numbers within the spans of its rows make it hold.
"""

from __future__ import annotations

from collections.abc import Iterable, Iterator, Mapping, Sequence
from dataclasses import dataclass, field
from fractions import Fraction
from itertools import pairwise
from typing import NamedTuple

Key = tuple[str, str]

CM_TO_THE_INCH = {"exact": Fraction(254, 100), "nominal": Fraction(5, 2)}
MOST_LINE_STITCHES = 8
ADJUSTED = 6
"""Stitches that a round before a rib takes or adds at most: the widest usual repeat (common practice, no source)."""

YARD = Fraction(9144, 10000)
"""In metres."""

COUNTED = frozenset(("neck", "split", "yoke", "body", "sleeve", "hem", "cuff", "band"))
"""Parts whose rows are whole numbers."""

RISING: tuple[Key, ...] = (
    ("to_fit", "bust"),
    ("neck", "stitches"),
    ("neck", "back"),
    ("neck", "front"),
    ("neck", "sleeve"),
    ("split", "back"),
    ("split", "front"),
    ("split", "sleeve"),
    ("split", "yoke_total"),
    ("body", "stitches"),
    ("sleeve", "stitches"),
)
"""What is never less in a larger size: the bust of the body, and the counts that sizes are graded by."""

NEVER_LESS: tuple[Key, ...] = (
    *RISING,
    ("split", "underarm"),
    ("yoke", "rounds"),
    ("band", "stitches"),
    *(("finished", item) for item in ("bust", "upper_arm", "neck", "depth", "underarm", "band")),
)
"""These, and what follows from them or from the depth of the yoke."""

ABOVE_NOTHING: tuple[Key, ...] = (
    *RISING,
    ("neck", "cast_on"),
    ("yoke", "rounds"),
    ("hem", "stitches"),
    ("hem", "rounds"),
    ("cuff", "stitches"),
    ("cuff", "rounds"),
    ("band", "stitches"),
    ("band", "rounds"),
)

WIDTHS: tuple[tuple[Key, Key, str], ...] = (
    (("body", "stitches"), ("finished", "bust"), "fabric"),
    (("sleeve", "stitches"), ("finished", "upper_arm"), "fabric"),
    (("neck", "stitches"), ("finished", "neck"), "fabric"),
    (("split", "underarm"), ("finished", "underarm"), "fabric"),
    (("hem", "stitches"), ("finished", "hem"), "rib"),
    (("cuff", "stitches"), ("finished", "wrist"), "rib"),
    (("band", "stitches"), ("finished", "band"), "rib"),
)
"""Stitches, what is printed of their width, and what they are knitted in."""

RULED = {
    "cast_on": ("neck", "stitches"),
    "body": ("body", "stitches"),
    "sleeve": ("sleeve", "stitches"),
    "hem": ("hem", "stitches"),
    "cuff": ("cuff", "stitches"),
    "band": ("band", "stitches"),
}


LENGTHS: tuple[Key, ...] = (
    ("to_fit", "bust"),
    ("to_fit", "ease"),
    *(width for _, width, _ in WIDTHS),
    *(
        ("finished", item)
        for item in (
            "depth", "body_length", "front_length", "front_extra", "sleeve_length", "total_length", "reach",
        )
    ),
)  # fmt: skip
"""What is printed in inches too."""

WORKED: tuple[Key, ...] = (
    ("neck", "stitches"),
    ("split", "yoke_total"),
    *((part, item) for part in ("body", "sleeve", "hem", "cuff", "band") for item in ("stitches", "rounds")),
    ("yoke", "rounds"),
)
"""What yarn goes into."""

SHORT_ROWS: tuple[Key, ...] = (("neck", "short_rows"), ("body", "bust_dart_rows"))
"""What it goes into where there are such."""


class Span(NamedTuple):
    """All that a number may be, both ends among it."""

    low: Fraction
    high: Fraction

    def plus(self, other: Span) -> Span:
        return Span(self.low + other.low, self.high + other.high)

    def times(self, factor: Fraction | int) -> Span:
        low, high = sorted((self.low * factor, self.high * factor))
        return Span(low, high)

    def meets(self, other: Span) -> bool:
        return self.low <= other.high and other.low <= self.high


def about(number: Fraction, step: Fraction) -> Span:
    """What is printed as a number to the nearest step."""
    return Span(number - step / 2, number + step / 2)


class Wool(NamedTuple):
    """A gauge, exact, per cm."""

    stitches: Fraction
    rows: Fraction


@dataclass(frozen=True, slots=True, kw_only=True)
class Known:
    """What is known beside the rows.

    line_stitches: None where nobody says. rules: by part a multiple and what is added to it. anchors: by section, the
    column on its centre.
    """

    plain: Wool
    stranded: Wool | None
    rib: Wool
    line_stitches: int | None
    step: int
    rules: Mapping[str, tuple[int, int]] = field(default_factory=dict)
    anchors: Mapping[str, Fraction] = field(default_factory=dict)
    inches: str | None = None
    """The convention, None where it is to be seen from the print."""

    @property
    def fabrics(self) -> tuple[Wool, ...]:
        """What a round may be knitted in."""
        return (self.plain,) if self.stranded is None else (self.plain, self.stranded)


class Cell(NamedTuple):
    """What is printed of one quantity in one size: in cm, or counted, maybe more than once, and in inches."""

    here: tuple[Span, ...]
    inches: Span | None = None

    def agrees(self, cm_to_the_inch: Fraction) -> bool:
        """Whether all of it can be said of one number."""
        inches = [self.inches.times(cm_to_the_inch)] if self.inches else []
        return common((*self.here, *inches)) is not None


def common(said: Sequence[Span]) -> Span | None:
    """What all of some spans have, None where that is nothing."""
    low, high = max(span.low for span in said), min(span.high for span in said)
    return Span(low, high) if low <= high else None


Printed = Mapping[Key, list[Cell | None]]
"""Of every row one a size."""


class Broken(NamedTuple):
    """A relation that can't hold. sizes: the place of one, or of the two that it compares."""

    relation: str
    sizes: tuple[int, ...]
    rows: tuple[Key, ...]


def broken(printed: Printed, known: Known) -> list[Broken]:
    """Every relation that can't hold, with what is not known chosen so that fewest are broken."""
    lines = [known.line_stitches] if known.line_stitches is not None else range(MOST_LINE_STITCHES + 1)
    conventions = [known.inches] if known.inches else list(CM_TO_THE_INCH)
    tried = []
    for convention in conventions:
        inch = CM_TO_THE_INCH[convention]
        found = list(_contradicting(printed, inch))
        for spans in (_in_cm(printed), _in_inches(printed, inch)):
            found += [*_of_rows(spans, known), *_of_fabric(spans, known), *_of_rounds(spans, known)]
        spans = _in_cm(printed)
        tried += [[*found, *_of_stitches(spans, line)] for line in lines]
    return min(tried, key=len)


Spans = Mapping[Key, list[Span | None]]


def _contradicting(printed: Printed, cm_to_the_inch: Fraction) -> Iterator[Broken]:
    for key, cells in printed.items():
        for size, cell in enumerate(cells):
            if cell is not None and not cell.agrees(cm_to_the_inch):
                yield Broken("printed twice", (size,), (key,))


def _in_cm(printed: Printed) -> Spans:
    """What centimetres and counts say."""
    return {key: [common(cell.here) if cell else None for cell in cells] for key, cells in printed.items()}


def _in_inches(printed: Printed, cm_to_the_inch: Fraction) -> Spans:
    """What inches say, in cm, and what counts do."""
    return {
        key: [
            (cell.inches.times(cm_to_the_inch) if cell.inches else None if key in LENGTHS else common(cell.here))
            if cell
            else None
            for cell in cells
        ]
        for key, cells in printed.items()
    }


def _sizes(spans: Spans, *keys: Key) -> Iterator[tuple[int, list[Span]]]:
    """The sizes that have all of some rows, with what these say."""
    if all(key in spans for key in keys):
        for size, told in enumerate(zip(*(spans[key] for key in keys), strict=True)):
            if None not in told:
                yield size, [span for span in told if span is not None]


def _sum(relation: str, spans: Spans, terms: Mapping[Key, int | Fraction], least: int, most: int) -> Iterator[Broken]:
    """The sizes in which a sum of multiples of rows lies outside of two bounds."""
    for size, told in _sizes(spans, *terms):
        total = Span(Fraction(0), Fraction(0))
        for span, factor in zip(told, terms.values(), strict=True):
            total = total.plus(span.times(factor))
        if not total.meets(Span(Fraction(least), Fraction(most))):
            yield Broken(relation, (size,), tuple(terms))


def _of_rows(spans: Spans, known: Known) -> Iterator[Broken]:
    """Rows by themselves."""
    for key, told in spans.items():
        for size, span in enumerate(told):
            if span is None:
                continue
            if key[0] in COUNTED and -(-span.low // 1) > span.high // 1:
                yield Broken("not whole", (size,), (key,))
            if key in ABOVE_NOTHING and span.high < 1:
                yield Broken("nothing", (size,), (key,))
            if span.high < 0 and key != ("to_fit", "ease") and key != ("finished", "front_extra"):
                yield Broken("below nothing", (size,), (key,))
    for key in NEVER_LESS:
        there = list(_sizes(spans, key))
        for (small, (less,)), (large, (more,)) in pairwise(there):
            if more.high < less.low:
                yield Broken("falls", (small, large), (key,))
    yield from _of_yarn(spans)
    for part, (multiple, plus) in known.rules.items():
        for size, (span,) in _sizes(spans, RULED[part]):
            if span.low == span.high and (span.low - plus) % multiple:
                yield Broken("multiple", (size,), (RULED[part],))
    for section, anchor in known.anchors.items():
        for when in ("neck", "split"):
            for size, (span,) in _sizes(spans, (when, section)):
                # as many stitches on both sides of the anchor
                if span.low == span.high and (anchor - (span.low + 1) / 2) % 1:
                    yield Broken("parity", (size,), ((when, section),))


def _of_yarn(spans: Spans) -> Iterator[Broken]:
    """A garment of one colour that has more of everything, or as much, takes no less yarn.

    But for what its shaping, if it is other than in the smaller size, can take away by lying elsewhere.
    """
    if ("yarn", "grams_2") in spans:
        return
    worked = (*WORKED, *(key for key in SHORT_ROWS if key in spans))
    for (small, before), (large, after) in pairwise(_sizes(spans, ("yarn", "grams_1"), *worked)):
        grows = all(less.low <= more.low for less, more in zip(before[1:], after[1:], strict=True))
        if not grows or after[0].high >= before[0].low:
            continue
        fall, spare = before[0].low - after[0].high, _spare(spans, small, large)
        if not spare or fall * _fewest(spans, small) > before[0].high * spare:
            yield Broken("yarn falls", (small, large), (("yarn", "grams_1"),))


def _spare(spans: Spans, small: int, large: int) -> int:
    """The stitches of a size that depend on whether its shaping comes in the earliest rounds or in the latest."""

    def count(part: str, item: str, size: int = small) -> int:
        span = spans[part, item][size] if (part, item) in spans else None
        return int(span.low) if span else 0

    def moved(rounds: int, increases: int, doubled: int = 0) -> int:
        """Of one edge whose stitches come in the first rounds that can have them, and in the last."""
        many = [2] * doubled + [1] * (increases - 2 * doubled)
        early = sum(stitches * (rounds - place) for place, stitches in enumerate(many))
        late = sum(stitches * place for place, stitches in enumerate(reversed(many), 1))
        return max(0, early - late)

    yoke = ("rounds", "doubled_rounds", "back_increases", "front_increases", "sleeve_increases")
    spare = 0
    if any(count("yoke", item) != count("yoke", item, large) for item in yoke):
        rounds, doubled = count("yoke", "rounds"), count("yoke", "doubled_rounds")
        spare += 2 * sum(moved(rounds, count("yoke", f"{name}_increases"), doubled) for name in ("back", "front"))
        spare += 4 * moved(rounds, count("yoke", "sleeve_increases"))
    if any(count("sleeve", item) != count("sleeve", item, large) for item in ("rounds", "decrease_rounds")):
        spare += 4 * moved(count("sleeve", "rounds"), count("sleeve", "decrease_rounds"))
    return spare


def _fewest(spans: Spans, size: int) -> int:
    """The stitches of a size if each part were as narrow all along as at its narrower end."""

    def count(part: str, item: str = "stitches") -> int:
        span = spans[part, item][size]
        return int(span.low) if span else 0

    body, sleeve = min(count("body"), count("hem")), min(count("sleeve"), count("cuff"))
    around = count("yoke", "rounds") * count("neck") + count("band") * count("band", "rounds")
    around += count("body", "rounds") * body + count("hem") * count("hem", "rounds")
    return around + 2 * (count("sleeve", "rounds") * sleeve + count("cuff") * count("cuff", "rounds"))


def _of_stitches(spans: Spans, line: int) -> Iterator[Broken]:
    """Sums of stitches, with so many in each raglan line."""
    for part, total in (("neck", "stitches"), ("split", "yoke_total")):
        sections = {(part, "back"): 1, (part, "front"): 1, (part, "sleeve"): 2}
        yield from _sum("sections", spans, sections | {(part, total): -1}, -4 * line, -4 * line)
    if ("neck", "front_drop") not in spans:
        yield from _sum("cast on", spans, {("neck", "cast_on"): 1, ("neck", "stitches"): -1}, 0, 0)
    else:
        drop = spans["neck", "front_drop"]
        whole = {key: [span if not drop[size] else None for size, span in enumerate(spans[key])] for key in spans}
        yield from _sum("cast on", whole, {("neck", "cast_on"): 1, ("neck", "stitches"): -1}, 0, 0)
        yield from _sum("cast on", spans, {("neck", "cast_on"): 1, ("neck", "stitches"): -1}, -(10**9), 0)
    for section in ("back", "front", "sleeve"):
        grown = {("neck", section): 1, ("yoke", f"{section}_increases"): 2, ("split", section): -1}
        yield from _sum("increases", spans, grown, 0, 0)
    increased = {
        ("yoke", f"{section}_increases"): 2 if section != "sleeve" else 4 for section in ("back", "front", "sleeve")
    }
    yield from _sum("all increases", spans, {("neck", "stitches"): 1, ("split", "yoke_total"): -1} | increased, 0, 0)
    halves = {("split", "back"): 1, ("split", "front"): 1, ("split", "line_to_body"): 4, ("split", "underarm"): 2}
    yield from _sum("body", spans, halves | {("body", "stitches"): -1}, 0, 0)
    around = {("split", "sleeve"): 1, ("split", "line_to_body"): -2, ("split", "underarm"): 1}
    yield from _sum("sleeve", spans, around | {("sleeve", "stitches"): -1}, -2 * line, -2 * line)
    closed = {
        ("body", "stitches"): 1,
        ("sleeve", "stitches"): 2,
        ("split", "yoke_total"): -1,
        ("split", "underarm"): -4,
    }
    yield from _sum("split closes", spans, closed, 0, 0)
    yield from _sum("line to body", spans, {("split", "line_to_body"): 1}, 0, line)


def _of_rounds(spans: Spans, known: Known) -> Iterator[Broken]:
    """Increases and decreases in their rounds, and what they lead to."""
    increases = tuple(("yoke", f"{section}_increases") for section in ("back", "front", "sleeve"))
    rows = (("yoke", "increase_rounds"), ("yoke", "doubled_rounds"), *increases)
    for size, (at, twice, *each) in _sizes(spans, *rows):
        if at.plus(twice).low != max(edge.low for edge in each) or each[2].low > at.low:
            yield Broken("increase rounds", (size,), rows)
    if known.step > 1:
        spread = {("yoke", "increase_rounds"): known.step, ("yoke", "rounds"): -1}
        yield from _sum("increases in rounds", spans, spread, -(10**9), known.step - 1)
    else:
        yield from _sum("increases in rounds", spans, {rows[0]: 1, ("yoke", "rounds"): -1}, -(10**9), 0)
    yield from _sum("doubled", spans, {rows[1]: 1, rows[0]: -1}, -(10**9), 0)
    decreases = {("sleeve", "decrease_rounds"): 1, ("sleeve", "rounds"): -1}
    yield from _sum("decreases in rounds", spans, decreases, -(10**9), 0)
    yield from _decreases(spans)


def _decreases(spans: Spans) -> Iterator[Broken]:
    """Two at a time, and one more where the cuff wants it; a cuff that is wider than the sleeve has none before it.

    Where half of the sizes need more than that, the pattern may mean a round that adjusts, of a repeat at most.
    """
    rows = (("sleeve", "stitches"), ("sleeve", "decrease_rounds"), ("cuff", "stitches"))
    left = {size: wide.low - 2 * times.low - cuff.low for size, (wide, times, cuff) in _sizes(spans, *rows)}
    some = {size for size in left if (span := spans[rows[1]][size]) and span.low}
    wrong = _wrong(left, some, 1)
    if any(2 * len(each) >= len(left) for each in wrong):
        wrong = _wrong(left, some, ADJUSTED)
    yield from (Broken("decreases", (size,), rows) for each in wrong for size in each)


def _wrong(left: Mapping[int, Fraction], some: set[int], most: int) -> tuple[list[int], list[int]]:
    """The sizes that have too many stitches left before the cuff, and those that have too few."""
    return [size for size in left if left[size] > most], [size for size in some if left[size] < -most]


def _of_fabric(spans: Spans, known: Known) -> Iterator[Broken]:
    """Stitches and rounds against lengths, and lengths against one another."""
    for stitches, width, fabric in WIDTHS:
        fabrics = (known.rib,) if fabric == "rib" else known.fabrics
        for size, (count, wide) in _sizes(spans, stitches, width):
            if not any(count.times(1 / each.stitches).meets(wide) for each in fabrics):
                yield Broken("width", (size,), (stitches, width))
    split = (("split", "front"), ("split", "back"), ("finished", "front_extra"))
    for size, (front, back, extra) in _sizes(spans, *split):
        more = front.plus(back.times(-1))
        if not any(more.times(1 / each.stitches).meets(extra) for each in known.fabrics):
            yield Broken("front extra", (size,), split)
    heights = [1 / each.rows for each in known.fabrics]
    row = Span(min(heights), max(heights))
    rib = Span(1 / known.rib.rows, 1 / known.rib.rows)
    plain = Span(1 / known.plain.rows, 1 / known.plain.rows)
    yield from _height(spans, ("finished", "depth"), [(("yoke", "rounds"), row)])
    for part, edge in (("body", "hem"), ("sleeve", "cuff")):
        rounds = [((part, "rounds"), row), ((edge, "rounds"), rib)]
        yield from _height(spans, ("finished", f"{part}_length"), rounds)
    one = Span(Fraction(1), Fraction(1))
    dart = [(("finished", "body_length"), one), (("body", "bust_dart_rows"), plain)]
    yield from _height(spans, ("finished", "front_length"), dart, may_lack=("body", "bust_dart_rows"))
    parts = [(("finished", "depth"), one), (("finished", "body_length"), one), (("neck", "short_rows"), plain)]
    yield from _height(spans, ("finished", "total_length"), parts, may_lack=("neck", "short_rows"))
    # half the width of a neck that is a circle of 22/7 times its width
    half = Span(Fraction(7, 44), Fraction(7, 44))
    reach = [(("finished", "neck"), half), (("finished", "depth"), one), (("finished", "sleeve_length"), one)]
    yield from _height(spans, ("finished", "reach"), reach)
    yield from _sum("ease", spans, {("to_fit", "bust"): 1, ("to_fit", "ease"): 1, ("finished", "bust"): -1}, 0, 0)
    for key in spans:
        if key[0] == "yarn" and key[1].startswith("metres"):
            yards = ("yarn", key[1].replace("metres", "yards"))
            yield from _sum("yards", spans, {key: 1, yards: -YARD}, 0, 0)


def _height(
    spans: Spans, length: Key, parts: Iterable[tuple[Key, Span]], may_lack: Key | None = None
) -> Iterator[Broken]:
    """The sizes in which rounds, each of a height, don't make up a length; a size may do without one of the parts.

    Where the print has no row of that part and half of the sizes are longer than the others say, they may have it.
    """
    parts = list(parts)
    longer, sizes = [], 0
    needed = [key for key, _ in parts if key != may_lack]
    for size, told in _sizes(spans, length, *needed):
        by_row = dict(zip((length, *needed), told, strict=True))
        optional = spans[may_lack][size] if may_lack in spans and may_lack else None
        if optional and may_lack:
            by_row[may_lack] = optional
        total = Span(Fraction(0), Fraction(0))
        for key, each in parts:
            if key in by_row:
                count = by_row[key]
                total = total.plus(Span(count.low * each.low, count.high * each.high))
        sizes += 1
        if may_lack and may_lack not in spans and by_row[length].low > total.high:
            longer.append(size)
        elif not total.meets(by_row[length]):
            yield Broken("length", (size,), tuple(by_row))
    if 2 * len(longer) < sizes:
        yield from (Broken("length", (size,), (length, *needed)) for size in longer)
