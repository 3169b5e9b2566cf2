"""The body of every size: from a built-in table, from sizes that are sent, or from both.

Where a table is named beside sizes that are sent, the measurements that a size lacks are
interpolated in a straight line on its bust, between the table's two nearest sizes. The table ends
where the ranges of its first and last size end; beyond there is no answer.

Sizes must rise: a size that is larger by its label (or, where the labels don't say, by its bust)
must not be smaller in any girth or in the armhole, since a slip there ruins every later number. The
order in which sizes are sent has no say in it.
"""

from __future__ import annotations

from bisect import bisect_left
from collections.abc import Iterator, Mapping, Sequence
from dataclasses import dataclass, replace
from fractions import Fraction
from functools import cache
from itertools import pairwise
from types import MappingProxyType
from typing import Literal

from grading_core.errors import ContradictionError, Problem, duplicate_labels, raise_if_any
from grading_core.sizes.labels import label_ranks
from grading_core.sizes.request import BodiesRequest, SentSize
from grading_core.standards import BODY_TABLES, Measurement, Origin, Within
from grading_core.standards.body import ACROSS, MEASUREMENTS
from grading_core.units import to_inches, to_printed_decimal

_LEAST_CERTAIN_FIRST: tuple[Origin, ...] = ("estimated", "derived", "published")

RISING: tuple[Measurement, ...] = (*ACROSS, "armhole_depth")
"""What must not fall from a size to a larger one. Lengths of arm and back may."""


@dataclass(frozen=True, slots=True)
class BodyValue:
    """One measurement of one body.

    cm: exactly. origin: where it is from. interpolated: whether it lies between two sizes of a
    table; its origin is then the less certain one of theirs.
    """

    cm: Fraction
    origin: Literal["sent"] | Origin
    interpolated: bool = False


@dataclass(frozen=True, slots=True)
class SizeBody:
    """A size's body. values: by measurement name, in the order of `MEASUREMENTS`."""

    label: str
    values: Mapping[Measurement, BodyValue]


@dataclass(frozen=True, slots=True)
class _Line:
    """The straight lines of all measurements from one size of a table to the next.

    bust: where they begin. measurements: of each, its value at a bust of 0, its rise per cm of bust, and its origin.
    """

    bust: Fraction
    measurements: Mapping[Measurement, tuple[Fraction, Fraction, Origin]]


def size_bodies(request: BodiesRequest) -> tuple[SizeBody, ...]:
    """The body of every size asked for, in the order asked.

    Raises ContradictionError where there is neither table nor sizes, where a label is unknown,
    repeated or beside sizes that are sent, where a size has no bust to interpolate on or one
    outside the table, and where sizes don't rise.

    >>> bodies = size_bodies(BodiesRequest(body_table="women", labels=("M",)))
    >>> float(bodies[0].values["bust"].cm)
    93.98
    >>> custom = SentSize("mine", {"bust": Fraction("99.06")})
    >>> bodies = size_bodies(BodiesRequest(body_table="women", sizes=(custom,)))
    >>> value = bodies[0].values["upper_arm"]
    >>> float(value.cm), value.interpolated
    (29.21, True)
    """
    table = request.body_table
    if table is not None and table not in BODY_TABLES:
        known = ", ".join(BODY_TABLES)
        raise ContradictionError([Problem(("body_table",), f"There is no table {table!r}; there are {known}.")])
    if request.sizes is not None:
        return _sent_bodies(request.sizes, table, request.labels, request.within)
    if table is None:
        raise ContradictionError([Problem((), "Send body_table, sizes, or both.")])
    return _table_bodies(table, request.labels, request.within)


def _table_bodies(name: str, labels: Sequence[str] | None, within: Within) -> tuple[SizeBody, ...]:
    by_label = _whole_table(name, within)
    if labels is None:
        return tuple(by_label.values())
    raise_if_any(_label_problems(labels, by_label, name))
    return tuple(by_label[label] for label in labels)


def _label_problems(labels: Sequence[str], by_label: Mapping[str, SizeBody], name: str) -> Iterator[Problem]:
    for index, label in enumerate(labels):
        if label not in by_label:
            known = ", ".join(by_label)
            yield Problem(("labels", index), f"The {name} table has no size {label!r}; it has {known}.")
        elif label in labels[:index]:
            yield Problem(("labels", index), f"Size {label!r} is asked for twice.")


@cache
def _whole_table(name: str, within: Within) -> Mapping[str, SizeBody]:
    bodies = {}
    for size in BODY_TABLES[name].sizes:
        values = {
            measurement: BodyValue(row.value_cm(within), row.origin) for measurement, row in size.measurements.items()
        }
        bodies[size.label] = SizeBody(size.label, MappingProxyType(values))
    return MappingProxyType(bodies)


@cache
def _knots(name: str, within: Within) -> tuple[SizeBody, ...]:
    """The bodies to interpolate between: every size, and the outer ends of the first and the last."""
    busts = BODY_TABLES[name].rows["bust"]
    (least, _), (_, most) = busts[0].ends_cm(), busts[-1].ends_cm()
    smallest, largest = _whole_table(name, "low")[busts[0].size], _whole_table(name, "high")[busts[-1].size]
    outer = (_with_bust(smallest, least), _with_bust(largest, most))
    by_bust = {body.values["bust"].cm: body for body in (*outer, *_whole_table(name, within).values())}
    return tuple(by_bust[bust] for bust in sorted(by_bust))


def _with_bust(body: SizeBody, bust: Fraction) -> SizeBody:
    return SizeBody(body.label, {**body.values, "bust": replace(body.values["bust"], cm=bust)})


def _sent_bodies(
    sizes: Sequence[SentSize], table: str | None, labels: Sequence[str] | None, within: Within
) -> tuple[SizeBody, ...]:
    problems = list(_sent_problems(sizes, labels))
    bodies = []
    for index, size in enumerate(sizes):
        values = {name: BodyValue(cm, "sent") for name, cm in size.measurements.items()}
        if table is not None:
            knots = _knots(table, within)
            problem = _outside(index, size, knots, table)
            if problem:
                problems.append(problem)
            else:
                values = _interpolated(size.measurements["bust"], table, within) | values
        ordered = {name: values[name] for name in MEASUREMENTS if name in values}
        bodies.append(SizeBody(size.label, MappingProxyType(ordered)))
    problems.extend(_falls(bodies))
    raise_if_any(problems)
    return tuple(bodies)


def _sent_problems(sizes: Sequence[SentSize], labels: Sequence[str] | None) -> Iterator[Problem]:
    if labels is not None:
        yield Problem(("labels",), "Labels pick sizes of a body table; with sizes sent, leave them out.")
    if not sizes:
        yield Problem(("sizes",), "There is no size.")
    yield from duplicate_labels([size.label for size in sizes])
    for index, size in enumerate(sizes):
        if not size.measurements:
            yield Problem(("sizes", index), f"Size {size.label!r} has no measurement.")


def _outside(index: int, size: SentSize, knots: Sequence[SizeBody], table: str) -> Problem | None:
    """Why a size can't be interpolated, or None."""
    bust = size.measurements.get("bust")
    if bust is None:
        return Problem(("sizes", index), f"Size {size.label!r} needs a bust to be completed from {table}.")
    first, last = knots[0].values["bust"].cm, knots[-1].values["bust"].cm
    if first <= bust <= last:
        return None
    beyond, edge, by = ("below", knots[0], first - bust) if bust < first else ("above", knots[-1], bust - last)
    return Problem(
        ("sizes", index, "bust"),
        f"The bust of {size.label!r} lies {_length(by)} {beyond} the {table} table, whose size {edge.label} "
        f"ends at {_length(edge.values['bust'].cm)}.",
    )


def _interpolated(bust: Fraction, table: str, within: Within) -> dict[Measurement, BodyValue]:
    """A table's measurements at a bust inside it, in a straight line between two sizes."""
    lines = _lines(table, within)
    line = lines[max(0, bisect_left(lines, bust, key=lambda line: line.bust) - 1)]
    return {
        name: BodyValue(at_bust + by_bust * bust, origin, interpolated=True)
        for name, (at_bust, by_bust, origin) in line.measurements.items()
    }


@cache
def _lines(name: str, within: Within) -> tuple[_Line, ...]:
    return tuple(_line(below, above) for below, above in pairwise(_knots(name, within)))


def _line(below: SizeBody, above: SizeBody) -> _Line:
    bust = below.values["bust"].cm
    span = above.values["bust"].cm - bust
    measurements = {}
    for name, low in below.values.items():
        high = above.values[name]
        slope = (high.cm - low.cm) / span
        origins = (low.origin, high.origin)
        certain = next(origin for origin in _LEAST_CERTAIN_FIRST if origin in origins)
        measurements[name] = (low.cm - slope * bust, slope, certain)
    return _Line(bust, measurements)


def _falls(bodies: Sequence[SizeBody]) -> Iterator[Problem]:
    """A problem for every measurement that is smaller in a larger size."""
    groups = _smallest_first(bodies)
    for name in RISING:
        widest: SizeBody | None = None
        for group in groups:
            known = [index for index in group if name in bodies[index].values]
            for index in known:
                if widest is not None and _falls_from(widest, bodies[index], name):
                    yield _fall(bodies, widest, bodies[index], name)
            candidates = [bodies[index] for index in known] + ([widest] if widest else [])
            widest = max(candidates, key=lambda body: body.values[name].cm, default=None)


def _smallest_first(bodies: Sequence[SizeBody]) -> list[list[int]]:
    """The indexes of the sizes, smallest size first; sizes that can't be told apart share a group."""
    keys: Sequence[tuple[Fraction, ...]] | None = label_ranks([body.label for body in bodies])
    if keys is None:
        shared = [name for name in RISING if all(name in body.values for body in bodies)]
        keys = [tuple(body.values[name].cm for name in shared[:1]) for body in bodies]
    groups: dict[tuple[Fraction, ...], list[int]] = {}
    for index in sorted(range(len(bodies)), key=keys.__getitem__):
        groups.setdefault(keys[index], []).append(index)
    return list(groups.values())


def _falls_from(smaller: SizeBody, larger: SizeBody, name: Measurement) -> bool:
    """Whether a measurement falls; a bust must even rise. A table's own figures are left alone."""
    low, high = smaller.values[name], larger.values[name]
    if "sent" not in (low.origin, high.origin):
        return False
    return high.cm < low.cm or (name == "bust" and high.cm == low.cm)


def _fall(bodies: Sequence[SizeBody], smaller: SizeBody, larger: SizeBody, name: Measurement) -> Problem:
    at = larger if larger.values[name].origin == "sent" else smaller
    return Problem(
        ("sizes", bodies.index(at), name),
        f"{name} does not rise: {larger.label} has {_length(larger.values[name].cm)}, and {smaller.label}, "
        f"a smaller size, has {_length(smaller.values[name].cm)}.",
    )


def _length(cm: Fraction) -> str:
    hundredth = Fraction(1, 100)
    return f"{to_printed_decimal(cm, hundredth)} cm ({to_printed_decimal(to_inches(cm), hundredth)} in)"
