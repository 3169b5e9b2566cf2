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
from collections.abc import Collection, Iterable, Mapping, Sequence
from dataclasses import dataclass, replace
from functools import cache
from itertools import pairwise
from types import MappingProxyType
from typing import Literal, NamedTuple

from grading_core.codes import ProblemCode
from grading_core.errors import Check, Problem, check, duplicate_labels, sound
from grading_core.fraction import Fraction
from grading_core.sizes.labels import Rank, label_ranks
from grading_core.sizes.request import BodiesRequest, SentSize
from grading_core.standards import BODY_TABLES, Measurement, Origin, Within
from grading_core.standards.body import ACROSS, MEASUREMENTS
from grading_core.units import to_inches, to_printed_decimal, whole_parts
from grading_core.unknown import UnknownError, is_unknown, known, shown, told, unknown

_LEAST_CERTAIN_FIRST: tuple[Origin, ...] = ("estimated", "derived", "published")

RISING: tuple[Measurement, ...] = (*ACROSS, "armhole_depth")
"""What must not fall from a size to a larger one. Lengths of arm and back may."""


class BodyValue(NamedTuple):
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

    bust: where they begin. measurements: of each, in whole numbers, its value at a bust of 0, its rise per cm of bust,
    and how many of their parts make one; and its origin.
    """

    bust: Fraction
    measurements: Mapping[Measurement, tuple[int, int, int, Origin]]


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
    return sound(body_problems(request))


@check
def body_problems(
    request: BodiesRequest, completed: Collection[Measurement] = MEASUREMENTS
) -> Check[tuple[SizeBody, ...]]:
    """What contradicts itself in the bodies asked for; makes the bodies.

    request: any. completed: what is wanted of a table for sizes that are sent. A body, or a measurement of it, that a
    problem is about is unknown in what is made, and so are all of them where labels of a table are wrong.
    """
    table = yield from _known_table(request.body_table)
    if known(request.sizes) is not None:
        return (yield from _sent_bodies(request, table, completed))
    return (yield from _table_bodies(request, table))


def measured(request: BodiesRequest) -> frozenset[Measurement]:
    """Every measurement that any size has, whichever sizes of a table are asked for: they all have the same.

    request: what is asked.
    """
    sent = (size.measurements for size in known(request.sizes) or ())
    return frozenset().union(_of_table(request.body_table) if request.body_table else (), *sent)


@cache
def _of_table(name: str) -> frozenset[Measurement]:
    return frozenset().union(*(body.values for body in _whole_table(name, "middle").values()))


@check
def _known_table(table: str | None) -> Check[str | None]:
    if table is not None and table not in BODY_TABLES:
        known = ", ".join(BODY_TABLES)
        detail = f"There is no table {table!r}; there are {known}."
        yield Problem(("body_table",), ProblemCode.UNKNOWN_TABLE, detail)
        raise UnknownError
    return table


@check
def _table_bodies(request: BodiesRequest, table: str | None) -> Check[tuple[SizeBody, ...]]:
    if table is None:
        yield Problem((), ProblemCode.NO_SIZES, "Send body_table, sizes, or both.")
        raise UnknownError
    labels = request.labels
    if labels is None:
        return tuple(_whole_table(table, request.within).values())
    if (yield from _label_problems(labels, table)):
        raise UnknownError
    by_label = _whole_table(table, request.within)
    return tuple(by_label[label] for label in labels)


@check
def _label_problems(labels: Sequence[str], table: str) -> Check[bool]:
    """Labels that the table doesn't have, or that are repeated; makes whether any is."""
    of_table = unknown() if is_unknown(table) else [size.label for size in BODY_TABLES[table].sizes]
    seen: set[str] = set()
    wrong = False
    for index, label in enumerate(labels):
        if is_unknown(label):
            continue
        if not is_unknown(of_table) and label not in of_table:
            wrong = True
            detail = f"The {table} table has no size {label!r}; it has {', '.join(of_table)}."
            yield Problem(("labels", index), ProblemCode.LABEL_NOT_IN_TABLE, detail)
        elif label in seen:
            wrong = True
            yield Problem(("labels", index), ProblemCode.DUPLICATE_LABEL, f"Size {label!r} is asked for twice.")
        seen.add(label)
    return wrong


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
    return SizeBody(body.label, {**body.values, "bust": body.values["bust"]._replace(cm=bust)})


@check
def _sent_bodies(
    request: BodiesRequest, table: str | None, completed: Collection[Measurement]
) -> Check[tuple[SizeBody, ...]]:
    if request.labels is not None:
        detail = "Labels pick sizes of a body table; with sizes sent, leave them out."
        yield Problem(("labels",), ProblemCode.LABELS_BESIDE_SIZES, detail)
    sizes = request.sizes or ()
    if not sizes:
        yield Problem(("sizes",), ProblemCode.NO_SIZES, "There is no size.")
        raise UnknownError
    yield from duplicate_labels([size.label for size in sizes])
    # a size is compared with others in what these are sent with
    compared = told(lambda: {*completed}.union(*(size.measurements for size in sizes)))
    names = MEASUREMENTS if is_unknown(compared) else compared
    bodies: list[SizeBody] = []
    made: list[SizeBody] = []
    for index, size in enumerate(sizes):
        of_table = yield from _completion(index, size, table, request.within, names)
        bodies.append(told(_sent_body, size, {} if is_unknown(of_table) else of_table))
        made.append(unknown() if is_unknown(of_table) else bodies[-1])
    falls = yield from _falls(bodies)
    for index, name in [] if is_unknown(falls) else falls:
        made[index] = told(_without, made[index], name)
    return tuple(made)


def _sent_body(size: SentSize, of_table: Mapping[Measurement, BodyValue]) -> SizeBody:
    sent = {name: BodyValue(cm, "sent") for name, cm in size.measurements.items()}
    values = {**of_table, **sent}
    ordered = {name: values[name] for name in MEASUREMENTS if name in values}
    return SizeBody(size.label, MappingProxyType(ordered))


def _without(body: SizeBody, name: Measurement) -> SizeBody:
    """A body of which one measurement is unknown."""
    return replace(body, values={**body.values, name: unknown()})


@check
def _completion(
    index: int, size: SentSize, table: str | None, within: Within, completed: Collection[Measurement]
) -> Check[Mapping[Measurement, BodyValue]]:
    """What a table has for a size that is sent; unknown where the size can't be completed."""
    if not size.measurements:
        detail = f"Size {shown(size.label)!r} has no measurement."
        yield Problem(("sizes", index), ProblemCode.MISSING_MEASUREMENT, detail)
        raise UnknownError
    if table is None:
        return {}
    bust = size.measurements.get("bust")
    if bust is None:
        detail = f"Size {shown(size.label)!r} needs a bust to be completed from {table}."
        yield Problem(("sizes", index), ProblemCode.MISSING_MEASUREMENT, detail)
        raise UnknownError
    knots = _knots(table, within)
    first, last = knots[0].values["bust"].cm, knots[-1].values["bust"].cm
    if first <= bust <= last:
        return _interpolated(bust, table, within, [name for name in completed if name not in size.measurements])
    beyond, edge, by = ("below", knots[0], first - bust) if bust < first else ("above", knots[-1], bust - last)
    detail = (
        f"The bust of {shown(size.label)!r} lies {_length(by)} {beyond} the {table} table, whose size {edge.label} "
        f"ends at {_length(edge.values['bust'].cm)}."
    )
    yield Problem(("sizes", index, "bust"), ProblemCode.BUST_OUTSIDE_TABLE, detail)
    raise UnknownError


def _interpolated(
    bust: Fraction, table: str, within: Within, names: Iterable[Measurement]
) -> dict[Measurement, BodyValue]:
    """A table's measurements of these names at a bust inside it, in a straight line between two sizes."""
    lines, (starts, parts_of_cm) = _lines(table, within), _starts(table, within)
    here, of_here = bust.as_integer_ratio()
    line = lines[max(0, bisect_left(starts, -(-here * parts_of_cm // of_here)) - 1)]
    return {
        name: BodyValue(Fraction(at_bust * of_here + by_bust * here, parts * of_here), origin, True)
        for name in names
        if name in line.measurements
        for at_bust, by_bust, parts, origin in [line.measurements[name]]
    }


@cache
def _lines(name: str, within: Within) -> tuple[_Line, ...]:
    return tuple(_line(below, above) for below, above in pairwise(_knots(name, within)))


@cache
def _starts(name: str, within: Within) -> tuple[tuple[int, ...], int]:
    """The busts at which the lines begin, in equal parts of a centimetre, and how many parts it has."""
    *starts, parts = whole_parts([*(line.bust for line in _lines(name, within)), Fraction(1)])
    return tuple(starts), parts


def _line(below: SizeBody, above: SizeBody) -> _Line:
    bust = below.values["bust"].cm
    span = above.values["bust"].cm - bust
    measurements = {}
    for name, low in below.values.items():
        high = above.values[name]
        slope = (high.cm - low.cm) / span
        origins = (low.origin, high.origin)
        certain = next(origin for origin in _LEAST_CERTAIN_FIRST if origin in origins)
        at_bust, by_bust, parts = whole_parts((low.cm - slope * bust, slope, Fraction(1)))
        measurements[name] = (at_bust, by_bust, parts, certain)
    return _Line(bust, measurements)


@check
def _falls(bodies: Sequence[SizeBody]) -> Check[list[tuple[int, Measurement]]]:
    """A problem for every measurement that is smaller in a larger size; makes their places."""
    groups = _smallest_first(bodies)
    places: list[tuple[int, Measurement]] = []
    for name in RISING:
        measured = [body.values.get(name) for body in bodies]
        told = {index: value for index, value in enumerate(measured) if value and not is_unknown(value.cm)}
        sent = {index for index, value in told.items() if value.origin == "sent"}
        if not sent:  # a table's own figures are left alone
            continue
        parts = dict(zip(told, whole_parts([value.cm for value in told.values()]), strict=True))
        widest: int | None = None
        for group in groups:
            of_group = [index for index in group if index in told]
            for index in of_group:
                if widest is None or not (index in sent or widest in sent):
                    continue
                # a bust must even rise
                if parts[index] < parts[widest] or (name == "bust" and parts[index] == parts[widest]):
                    places.append((index if index in sent else widest, name))
                    yield _fall(bodies[widest], bodies[index], places[-1])
            candidates = of_group if widest is None else [*of_group, widest]
            widest = max(candidates, key=parts.__getitem__, default=None)
    return places


def _smallest_first(bodies: Sequence[SizeBody]) -> list[list[int]]:
    """The indexes of the sizes, smallest size first; sizes that can't be told apart share a group."""
    keys: Sequence[Rank] | None = label_ranks(tuple([known(body.label) for body in bodies]))
    if keys is None:
        shared = [name for name in RISING if all(name in body.values for body in bodies)]
        keys = [tuple(body.values[name].cm for name in shared[:1]) for body in bodies]
    groups: dict[Rank, list[int]] = {}
    for index in sorted(range(len(bodies)), key=keys.__getitem__):
        groups.setdefault(keys[index], []).append(index)
    return list(groups.values())


def _fall(smaller: SizeBody, larger: SizeBody, place: tuple[int, Measurement]) -> Problem:
    index, name = place
    return Problem(
        ("sizes", index, name),
        ProblemCode.SIZES_DO_NOT_RISE,
        f"{name} does not rise: {larger.label} has {_length(larger.values[name].cm)}, and {smaller.label}, "
        f"a smaller size, has {_length(smaller.values[name].cm)}.",
    )


def _length(cm: Fraction) -> str:
    hundredth = Fraction(1, 100)
    return f"{to_printed_decimal(cm, hundredth)} cm ({to_printed_decimal(to_inches(cm), hundredth)} in)"
