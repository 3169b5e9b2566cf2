"""Gauge conversions: lengths to counts, written counts to lengths, and both at a knitter's own gauge.

Source: the arithmetic of the craft (count = length x gauge; a regauged count keeps the pattern's
length). Differences are always finished minus target.
"""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import dataclass
from typing import Literal

from grading_core.codes import WarningCode
from grading_core.errors import Remark
from grading_core.fraction import Fraction
from grading_core.gauge import Comparison, Gauge, compare, regauge_rows, regauge_stitches
from grading_core.rounding import NEAREST, CountRule
from grading_core.sentences import COUNT, NUMBER, TOKEN, Saying
from grading_core.units import nearest_whole

Kind = Literal["across", "along", "stitches", "rows"]

FAR_FROM_PATTERN = Saying("warning.gauge_far_from_pattern", percent=NUMBER, fabric=TOKEN)
OFF_RULE = Saying("warning.count_off_rule", count=COUNT, multiple=COUNT, plus=COUNT)
ROUNDED_TO_NOTHING = Saying("warning.rounded_to_nothing", kind=TOKEN)


@dataclass(frozen=True, slots=True)
class Item:
    """One thing to convert.

    kind: what the amount is: a width ("across") or a length ("along") in cm, or a written count of
    stitches or rows. amount: as `kind` says, a whole number for a count. count_rule: how counts are rounded.
    name: comes back with the answer.
    """

    kind: Kind
    amount: Fraction
    count_rule: CountRule = NEAREST
    name: str | None = None


@dataclass(frozen=True, slots=True)
class ConversionRequest:
    """Lengths and counts to convert.

    gauge: the fabric's own. items: what to convert. pattern_gauge: the gauge for which counts were written, where there
    is another one.
    """

    gauge: Gauge
    items: tuple[Item, ...]
    pattern_gauge: Gauge | None = None


@dataclass(frozen=True, slots=True, kw_only=True)
class Conversion:
    """One item's answer.

    stitches, rows: as computed or as written; only one of them. exact: the count before rounding, for a length.
    length_cm: what the count makes. difference_cm: that minus the target, which is the length asked for, or the
    pattern's for a written count; None where there is no target.

    For a written count beside a pattern's gauge, pattern_length_cm: what it makes there; regauged: the count that keeps
    this length; regauged_length_cm: what that makes; regauged_difference_cm: that minus the pattern's.
    """

    name: str | None = None
    stitches: int | None = None
    rows: int | None = None
    exact: Fraction | None = None
    length_cm: Fraction
    difference_cm: Fraction | None = None
    pattern_length_cm: Fraction | None = None
    regauged: int | None = None
    regauged_length_cm: Fraction | None = None
    regauged_difference_cm: Fraction | None = None


@dataclass(frozen=True, slots=True)
class Conversions:
    """All items in the order of the request, the two gauges compared, and what deserves a word."""

    items: tuple[Conversion, ...]
    comparison: Comparison | None
    remarks: tuple[Remark, ...]


def convert(request: ConversionRequest) -> Conversions:
    """Convert lengths and counts at a gauge, and compare it with a pattern's.

    >>> own = Gauge.over(Fraction(23), Fraction(32), Fraction(10))
    >>> convert(ConversionRequest(own, (Item("across", Fraction(107), CountRule(4)),))).items[0].stitches
    248
    """
    gauge, pattern = request.gauge, request.pattern_gauge
    comparison = compare(gauge, pattern) if pattern else None
    return Conversions(
        items=tuple(_conversion(item, gauge, pattern) for item in request.items),
        comparison=comparison,
        remarks=(
            *_comparison_remarks(comparison),
            *(remark for place, item in enumerate(request.items) for remark in _remarks(item, place, gauge)),
        ),
    )


def _comparison_remarks(comparison: Comparison | None) -> Iterator[Remark]:
    if comparison and comparison.beyond_needles:
        difference = 1000 * abs(comparison.difference)
        percent = Fraction(nearest_whole(difference.numerator, difference.denominator), 10)
        message = FAR_FROM_PATTERN(percent=percent, fabric=comparison.fabric)
        yield Remark(WarningCode.GAUGE_FAR_FROM_PATTERN, message, path=("gauge",))


def _conversion(item: Item, gauge: Gauge, pattern: Gauge | None) -> Conversion:
    if item.kind == "across" or item.kind == "along":
        target = item.amount
        exact = _exact(item, gauge)
        count = item.count_rule.round(exact)
        if item.kind == "across":
            length = gauge.width_cm(count)
            return Conversion(
                name=item.name, stitches=count, exact=exact, length_cm=length, difference_cm=length - target
            )
        length = gauge.height_cm(count)
        return Conversion(name=item.name, rows=count, exact=exact, length_cm=length, difference_cm=length - target)
    count = int(item.amount)
    length = _length(item.kind, count, gauge)
    stitches, rows = (count, None) if item.kind == "stitches" else (None, count)
    if pattern is None:
        return Conversion(name=item.name, stitches=stitches, rows=rows, length_cm=length)
    pattern_length = _length(item.kind, count, pattern)
    regauge = regauge_stitches if item.kind == "stitches" else regauge_rows
    regauged = regauge(count, gauge, pattern, item.count_rule)
    regauged_length = _length(item.kind, regauged, gauge)
    return Conversion(
        name=item.name,
        stitches=stitches,
        rows=rows,
        length_cm=length,
        difference_cm=length - pattern_length,
        pattern_length_cm=pattern_length,
        regauged=regauged,
        regauged_length_cm=regauged_length,
        regauged_difference_cm=regauged_length - pattern_length,
    )


def _exact(item: Item, gauge: Gauge) -> Fraction:
    return item.amount * (gauge.stitches_per_cm if item.kind == "across" else gauge.rows_per_cm)


def _length(unit: Literal["stitches", "rows"], count: int, gauge: Gauge) -> Fraction:
    return gauge.width_cm(count) if unit == "stitches" else gauge.height_cm(count)


def _remarks(item: Item, place: int, gauge: Gauge) -> Iterator[Remark]:
    path = ("items", place, item.kind)
    rule = item.count_rule
    if item.kind in ("stitches", "rows"):
        if not rule.accepts(int(item.amount)):
            message = OFF_RULE(count=int(item.amount), multiple=rule.multiple, plus=rule.plus)
            yield Remark(WarningCode.COUNT_OFF_RULE, message, path=path)
    elif rule.round(_exact(item, gauge)) == 0:
        yield Remark(WarningCode.ROUNDED_TO_NOTHING, ROUNDED_TO_NOTHING(kind=item.kind), path=path)
