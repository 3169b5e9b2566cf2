"""Gauge conversions: lengths to counts, written counts to lengths, and both at a knitter's own gauge.

Source: the arithmetic of the craft (count = length x gauge; a regauged count keeps the pattern's
length). Differences are always finished minus target.
"""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass
from fractions import Fraction
from typing import Literal

from grading_core.errors import Remark
from grading_core.gauge import Comparison, Gauge, compare, regauge_rows, regauge_stitches
from grading_core.rounding import NEAREST, CountRule

Kind = Literal["across", "along", "stitches", "rows"]


@dataclass(frozen=True, slots=True)
class Item:
    """One thing to convert.

    kind: what the amount is: a width ("across") or a length ("along") in cm, or a written count of
    stitches or rows. amount: as `kind` says, a whole number for a count. rule: how counts are rounded.
    name: comes back with the answer.
    """

    kind: Kind
    amount: Fraction
    rule: CountRule = NEAREST
    name: str | None = None


@dataclass(frozen=True, slots=True)
class Regauged:
    """A written count at the pattern's gauge, and the count that keeps its length.

    pattern_length_cm: what the count makes at the pattern's gauge. count: what to work instead.
    length_cm: what that makes. difference_cm: that minus the pattern's.
    """

    pattern_length_cm: Fraction
    count: int
    length_cm: Fraction
    difference_cm: Fraction


@dataclass(frozen=True, slots=True, kw_only=True)
class Converted:
    """One item's answer.

    unit: what is counted. count: as computed or as written. exact: the count before rounding, for a
    length. length_cm: what the count makes. difference_cm: that minus the target, which is the length
    asked for, or the pattern's for a written count; None where there is no target. regauged: for a
    written count beside a pattern's gauge.
    """

    name: str | None
    unit: Literal["stitches", "rows"]
    count: int
    exact: Fraction | None
    length_cm: Fraction
    difference_cm: Fraction | None
    regauged: Regauged | None = None


@dataclass(frozen=True, slots=True)
class Conversions:
    """All items in the order of the request, the two gauges compared, and what deserves a word."""

    items: tuple[Converted, ...]
    comparison: Comparison | None
    remarks: tuple[Remark, ...]


def convert(gauge: Gauge, items: Sequence[Item], pattern_gauge: Gauge | None = None) -> Conversions:
    """Convert lengths and counts at a gauge, and compare it with a pattern's.

    gauge: the fabric's own. items: what to convert. pattern_gauge: the gauge for which counts were
    written, where there is another one.

    >>> own = Gauge.over(Fraction(23), Fraction(32), Fraction(10))
    >>> convert(own, [Item("across", Fraction(107), CountRule(4))]).items[0].count
    248
    """
    return Conversions(
        items=tuple(_converted(item, gauge, pattern_gauge) for item in items),
        comparison=compare(gauge, pattern_gauge) if pattern_gauge else None,
        remarks=tuple(remark for place, item in enumerate(items) for remark in _remarks(item, place, gauge)),
    )


def _converted(item: Item, gauge: Gauge, pattern_gauge: Gauge | None) -> Converted:
    if item.kind == "across" or item.kind == "along":
        target = item.amount
        across = item.kind == "across"
        exact = target * (gauge.stitches_per_cm if across else gauge.rows_per_cm)
        count = item.rule.round(exact)
        length = gauge.width_cm(count) if across else gauge.height_cm(count)
        return Converted(
            name=item.name,
            unit="stitches" if across else "rows",
            count=count,
            exact=exact,
            length_cm=length,
            difference_cm=length - target,
        )
    count = int(item.amount)
    length = _length(item.kind, count, gauge)
    if pattern_gauge is None:
        return Converted(
            name=item.name, unit=item.kind, count=count, exact=None, length_cm=length, difference_cm=None
        )
    pattern_length = _length(item.kind, count, pattern_gauge)
    regauge = regauge_stitches if item.kind == "stitches" else regauge_rows
    new_count = regauge(count, gauge, pattern_gauge, item.rule)
    new_length = _length(item.kind, new_count, gauge)
    regauged = Regauged(pattern_length, new_count, new_length, new_length - pattern_length)
    return Converted(
        name=item.name,
        unit=item.kind,
        count=count,
        exact=None,
        length_cm=length,
        difference_cm=length - pattern_length,
        regauged=regauged,
    )


def _length(unit: Literal["stitches", "rows"], count: int, gauge: Gauge) -> Fraction:
    return gauge.width_cm(count) if unit == "stitches" else gauge.height_cm(count)


def _remarks(item: Item, place: int, gauge: Gauge) -> list[Remark]:
    path = ("items", place)
    if item.kind in ("stitches", "rows"):
        if item.rule.accepts(int(item.amount)):
            return []
        rule = f"a multiple of {item.rule.multiple}" + (f" plus {item.rule.plus}" if item.rule.plus else "")
        message = f"The written count, {item.amount}, is not {rule}."
        return [Remark("count_off_rule", message, path=(*path, item.kind))]
    exact = item.amount * (gauge.stitches_per_cm if item.kind == "across" else gauge.rows_per_cm)
    if item.rule.round(exact) > 0:
        return []
    message = "The length is so short that no stitch or row is left after rounding."
    return [Remark("rounded_to_nothing", message, path=(*path, item.kind))]
