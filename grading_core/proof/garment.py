"""The relations of a top-down raglan pullover between the numbers of one size, each with its code.

A sum of stitches or rounds closes whatever the gauge; a length is what counts come to at it.
"""

from __future__ import annotations

from collections.abc import Collection, Iterator, Mapping, Sequence
from functools import cache, lru_cache
from itertools import pairwise
from math import gcd
from typing import Literal

from grading_core.codes import ProofCode
from grading_core.fraction import Fraction
from grading_core.proof.columns import Columns
from grading_core.proof.combined import Either, Unless, Without, mostly_holds
from grading_core.proof.figures import GRAINS, Key, key_of
from grading_core.proof.relations import Largest, Linear, Multiple, Relation, Term, linear
from grading_core.pullover.request import Gauges
from grading_core.rounding import CountRule
from grading_core.units import INCHES_IN_CM, InchConvention
from grading_core.yarn.request import METRES_PER_YARD

SECTIONS = ("back", "front", "sleeve")

Counted = Literal["cast_on", "body", "sleeve", "hem", "cuff", "band"]
COUNTED: Mapping[str, Key] = {
    "cast_on": key_of("neck", "stitches"),
    "body": key_of("body", "stitches"),
    "sleeve": key_of("sleeve", "stitches"),
    "hem": key_of("hem", "stitches"),
    "cuff": key_of("cuff", "stitches"),
    "band": key_of("band", "stitches"),
}
"""What a count rule may be for. That of the cast-on is for all of the neck, of which a front drop casts on a part
later."""

_WIDTHS = {
    key_of("finished", "bust"): key_of("body", "stitches"),
    key_of("finished", "upper_arm"): key_of("sleeve", "stitches"),
    key_of("finished", "neck"): key_of("neck", "stitches"),
    key_of("finished", "underarm"): key_of("split", "underarm"),
}
_RIBBED_WIDTHS = {
    key_of("finished", "hem"): key_of("hem", "stitches"),
    key_of("finished", "wrist"): key_of("cuff", "stitches"),
    key_of("finished", "band"): key_of("band", "stitches"),
}
"""Finished widths, and the count that each comes from."""

_HEIGHTS = (("depth", "yoke", None), ("body_length", "body", "hem"), ("sleeve_length", "sleeve", "cuff"))
"""Finished lengths, the part whose rounds each comes from, and the edge that ends it."""

NOT_IN_ALL = frozenset(
    (
        key_of("neck", "short_rows"),
        key_of("neck", "front_drop"),
        key_of("body", "bust_dart_rows"),
        key_of("finished", "front_extra"),
    )
)
"""What many pullovers have none of."""

ON_RAGLAN_LINES = (ProofCode.SECTION_SUM, ProofCode.SLEEVE_FROM_SPLIT)
"""What needs to be told how many stitches a raglan line has."""

_ADJUSTED = 6
"""Stitches that an adjusting round before a rib takes or adds at most: the widest usual repeat (common practice, no
source)."""

_CM = Fraction(1)

_HALF_WIDTH = Fraction(7, 44)
"""Of a circle's circumference, with 22/7 for its ratio to the width."""


@lru_cache(maxsize=16)
def sum_relations(line_stitches: int | None) -> tuple[Relation, ...]:
    """What stitches and rounds come to without a gauge.

    line_stitches: of each raglan line, None where nobody knows.
    """
    return tuple(_sum_relations(line_stitches))


def _sum_relations(line_stitches: int | None) -> Iterator[Relation]:
    for section in SECTIONS:
        increases = _times(-2, "yoke", f"{section}_increases")
        yield linear(ProofCode.SPLIT_FROM_NECK, _one("split", section), _times(-1, "neck", section), increases)
    yield linear(
        ProofCode.YOKE_FROM_NECK,
        _one("split", "yoke_total"),
        _times(-1, "neck", "stitches"),
        _times(-2, "yoke", "back_increases"),
        _times(-2, "yoke", "front_increases"),
        _times(-4, "yoke", "sleeve_increases"),
    )
    if line_stitches is not None:
        yield from _line_relations(line_stitches)
    yield linear(
        ProofCode.BODY_FROM_SPLIT,
        _one("body", "stitches"),
        _times(-1, "split", "back"),
        _times(-1, "split", "front"),
        _times(-2, "split", "underarm"),
        _times(-4, "split", "line_to_body"),
    )
    yield linear(
        ProofCode.SPLIT_CLOSES,
        _one("body", "stitches"),
        _times(2, "sleeve", "stitches"),
        _times(-1, "split", "yoke_total"),
        _times(-4, "split", "underarm"),
    )
    doubled, rounds = key_of("yoke", "doubled_rounds"), key_of("yoke", "increase_rounds")
    back, front = key_of("yoke", "back_increases"), key_of("yoke", "front_increases")
    sleeve = {key_of("yoke", "sleeve_increases"): 1}
    yield Largest(
        code=ProofCode.INCREASE_ROUNDS, key=rounds, of=(sleeve, {back: 1, doubled: -1}, {front: 1, doubled: -1})
    )
    # as many as are wanted beyond one a round, and else none
    yield Largest(code=ProofCode.INCREASE_ROUNDS, key=doubled, of=({}, {back: 1, rounds: -1}, {front: 1, rounds: -1}))
    decreases = _times(-1, "sleeve", "decrease_rounds")
    yield linear(ProofCode.DECREASES_EXCEED_ROUNDS, _one("sleeve", "rounds"), decreases, most=None)


def _line_relations(line_stitches: int) -> Iterator[Relation]:
    for part, total in (("neck", "stitches"), ("split", "yoke_total")):
        yield linear(
            ProofCode.SECTION_SUM,
            _one(part, total),
            _times(-1, part, "back"),
            _times(-1, part, "front"),
            _times(-2, part, "sleeve"),
            least=4 * line_stitches,
            most=4 * line_stitches,
        )
    yield linear(
        ProofCode.SLEEVE_FROM_SPLIT,
        _one("sleeve", "stitches"),
        _times(-1, "split", "sleeve"),
        _times(-1, "split", "underarm"),
        _times(2, "split", "line_to_body"),
        least=2 * line_stitches,
        most=2 * line_stitches,
    )


@lru_cache(maxsize=16)
def round_relation(step: int) -> Relation:
    """Whether the increases fit in the yoke.

    step: rounds from one increase round to the next at the least. The first may be round 1.
    """
    increases = _times(-step, "yoke", "increase_rounds")
    return linear(ProofCode.INCREASES_EXCEED_ROUNDS, _one("yoke", "rounds"), increases, least=1 - step, most=None)


def cast_on_relations(rows: Columns, rules: Mapping[str, CountRule]) -> Iterator[Relation]:
    """What is cast on against the stitches of the neck, and of the band.

    rows: that the pattern has: with a front drop part of the front is cast on later. rules: by what they are for; a
    band is some stitches off by its multiple, or by that of its rib, which nobody has to tell.
    """
    drop = key_of("neck", "front_drop") in rows
    yield _cast_on(drop)
    if not drop:
        repeat = max(rules["band"].multiple if "band" in rules else 1, _repeat(rows))
        picked_up = _picked_up(max(_ADJUSTED, repeat - 1))
        # a band that has more or fewer in most sizes has a rib that repeats over so many
        if not all(key in rows for key in picked_up.keys) or mostly_holds(picked_up, rows):
            yield picked_up


@cache
def _cast_on(drop: bool) -> Relation:
    return linear(ProofCode.CAST_ON, _one("neck", "stitches"), _times(-1, "neck", "cast_on"), most=None if drop else 0)


@lru_cache(maxsize=16)
def _picked_up(adjusted: int) -> Relation:
    terms = (_one("band", "stitches"), _times(-1, "neck", "cast_on"))
    return linear(ProofCode.PICK_UP, *terms, least=-adjusted, most=adjusted)


def _repeat(rows: Columns) -> int:
    """What the stitches of the band may be repeats of, as far as the steps from size to size show; 0 where none are."""
    key = COUNTED["band"]
    told = sorted({value for value in rows[key].values if value is not None}) if key in rows else []
    return gcd(*[after - before for before, after in pairwise(told)]) // GRAINS


def decrease_relations(rows: Columns) -> Iterator[Relation]:
    """Whether the decreases lead from the sleeve to its cuff, give or take what a round before the rib adjusts.

    rows: that the pattern has. Two at a time leave one stitch over at most; that a round takes or adds more is believed
    only where that is so in most sizes.
    """
    most = 1 if all(mostly_holds(relation, rows) for relation in _decreases_to_cuff(1)) else _ADJUSTED
    yield from _decreases_to_cuff(most)


@lru_cache(maxsize=2)
def _decreases_to_cuff(adjusted: int) -> tuple[Relation, ...]:
    decreases = key_of("sleeve", "decrease_rounds")
    terms = (_one("sleeve", "stitches"), (decreases, -2), _times(-1, "cuff", "stitches"))
    return (
        linear(ProofCode.DECREASES_TO_CUFF, *terms, least=None, most=adjusted),
        # a cuff that is wider than the sleeve has none before it
        Unless(linear(ProofCode.DECREASES_TO_CUFF, *terms, least=-adjusted, most=None), decreases),
    )


def length_relations(gauges: Gauges | None, rows: Columns, convention: InchConvention) -> Iterator[Relation]:
    """What lengths come to at the gauge of their fabric, and from one another; in centimetres, and in inches.

    gauges: of the fabrics, None where nobody knows. rows: that the pattern has. convention: of its inches.
    """
    for in_inches in (False, True) if rows.has_inches else (False,):
        to_unit = Fraction(*INCHES_IN_CM[convention]) if in_inches else _CM
        if gauges is not None:
            yield from _at_gauge(gauges, to_unit, in_inches)
        yield from _sums_of_lengths(gauges, to_unit, rows, in_inches)
        yield from _ease_and_reach(in_inches)


@lru_cache(maxsize=2)
def _ease_and_reach(in_inches: bool) -> tuple[Relation, Relation]:
    ease = linear(
        ProofCode.EASE,
        (_key("bust", in_inches), 1),
        (_key("bust", in_inches, "to_fit"), -1),
        (_key("ease", in_inches, "to_fit"), -1),
    )
    reach = linear(
        ProofCode.REACH,
        (_key("reach", in_inches), 1),
        (_key("neck", in_inches), -_HALF_WIDTH),
        (_key("depth", in_inches), -1),
        (_key("sleeve_length", in_inches), -1),
    )
    return ease, reach


@lru_cache(maxsize=32)
def _at_gauge(gauges: Gauges, to_unit: Fraction, in_inches: bool) -> tuple[Relation, ...]:
    """What lengths come to; kept, since a pattern is read again when its slips are mended.

    to_unit: what a cm is in the unit of the lengths.
    """
    return tuple(_lengths_of_counts(gauges, to_unit, in_inches))


def _lengths_of_counts(gauges: Gauges, to_unit: Fraction, in_inches: bool) -> Iterator[Relation]:
    """Where rounds may be of either of two fabrics a width is of one, and a height lies between both."""
    plain, rib = gauges.plain, gauges.rib or gauges.plain
    worked = (plain,) if gauges.stranded is None else (plain, gauges.stranded)
    rates, rib_rates = (
        tuple(dict.fromkeys(to_unit / each.stitches_per_cm for each in fabrics)) for fabrics in (worked, (rib,))
    )
    for widths, of_fabrics in ((_WIDTHS, rates), (_RIBBED_WIDTHS, rib_rates)):
        for in_cm, count in widths.items():
            width = _key(in_cm.item, in_inches)
            yield _either([linear(ProofCode.WIDTH, (width, 1), (count, -rate)) for rate in of_fabrics])
    extra, front, back = _key("front_extra", in_inches), key_of("split", "front"), key_of("split", "back")
    yield _either([linear(ProofCode.WIDTH, (extra, 1), (front, -rate), (back, rate)) for rate in rates])
    tallest, shortest = (-to_unit / choose(each.rows_per_cm for each in worked) for choose in (min, max))
    of_edge = -to_unit / rib.rows_per_cm
    for length, part, edge in _HEIGHTS:
        edging = [] if edge is None else [_times(of_edge, edge, "rounds")]
        tall, short = ([_times(height, part, "rounds"), *edging] for height in (tallest, shortest))
        yield from _between(ProofCode.HEIGHT, (_key(length, in_inches), 1), short, tall)


def _sums_of_lengths(gauges: Gauges | None, to_unit: Fraction, rows: Columns, in_inches: bool) -> Iterator[Relation]:
    """Lengths that are the sum of others, and of rows that only a part of the round has.

    Where no such rows are told there may be some all the same, unless most sizes have none.
    """
    for length, parts, extra in (
        ("front_length", ("body_length",), key_of("body", "bust_dart_rows")),
        ("total_length", ("depth", "body_length"), key_of("neck", "short_rows")),
    ):
        closed, at_least = _sum_of_lengths(length, parts, in_inches)
        if extra in rows:
            if gauges is not None:
                yield linear(
                    ProofCode.TOTAL_LENGTH, *closed.times.items(), (extra, -to_unit / gauges.plain.rows_per_cm)
                )
            yield Without(closed, extra)
        else:
            yield closed if mostly_holds(closed, rows) else at_least


@cache
def _sum_of_lengths(whole: str, parts: tuple[str, ...], in_inches: bool) -> tuple[Linear, Linear]:
    """That a length is the sum of others, and that it is no less."""
    terms = [(_key(whole, in_inches), 1), *((_key(part, in_inches), -1) for part in parts)]
    return linear(ProofCode.TOTAL_LENGTH, *terms), linear(ProofCode.TOTAL_LENGTH, *terms, most=None)


def _either(ways: Sequence[Linear]) -> Relation:
    return ways[0] if len(ways) == 1 else Either(tuple(ways))


def _between(code: ProofCode, what: Term, low: list[Term], high: list[Term]) -> Iterator[Relation]:
    """A number is one of others, or between them."""
    if low == high:
        yield linear(code, what, *low)
    else:
        yield linear(code, what, *low, most=None)
        yield linear(code, what, *high, least=None)


def inch_relations(rows: Collection[Key], convention: InchConvention) -> Iterator[Linear]:
    """Centimetres against the inches beside them.

    rows: that the pattern has. convention: of its inches.
    """
    inches, cm = INCHES_IN_CM[convention]
    for key in rows:
        if key.inches and (beside := key._replace(inches=False)) in rows:
            yield Linear(code=ProofCode.INCHES, times={beside: inches, key: -cm}, least=0, most=0)


def yarn_relations(rows: Collection[Key]) -> Iterator[Relation]:
    """Yards against metres.

    rows: that the pattern has.
    """
    for key in rows:
        if key.part == "yarn" and key.item.startswith("metres_"):
            yield _yards(key.item)


@lru_cache(maxsize=64)
def _yards(metres: str) -> Relation:
    yards = metres.replace("metres", "yards", 1)
    return linear(ProofCode.YARDS, _one("yarn", metres), _times(-METRES_PER_YARD, "yarn", yards))


def rule_relations(rules: Mapping[str, CountRule], rows: Collection[Key]) -> Iterator[Relation]:
    """Counts that land on a multiple.

    rules: by what they are for, as `COUNTED` has it. rows: that the pattern has; without a front drop the neck has what
    is cast on.
    """
    for name, rule in rules.items():
        key, cast_on = COUNTED[name], key_of("neck", "cast_on")
        if name == "cast_on" and key not in rows and cast_on in rows and key_of("neck", "front_drop") not in rows:
            key = cast_on
        yield Multiple(code=ProofCode.COUNT_RULE, key=key, rule=rule)


def parity_relations(odd: Mapping[str, bool]) -> Iterator[Relation]:
    """Sections that a chart can be centred on.

    odd: by section, whether its anchor is a stitch, and not between two.
    """
    for section, is_odd in odd.items():
        for part in ("neck", "split"):
            yield Multiple(code=ProofCode.CHART_PARITY, key=key_of(part, section), rule=CountRule(2, int(is_odd)))


def _key(length: str, in_inches: bool, part: str = "finished") -> Key:
    return Key(part, length, True) if in_inches else key_of(part, length)


def _one(part: str, item: str) -> Term:
    return key_of(part, item), 1


def _times(times: Fraction | int, part: str, item: str) -> Term:
    return key_of(part, item), times
