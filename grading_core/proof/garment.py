"""The relations of a top-down raglan pullover between the numbers of one size, each with its code.

A sum of stitches or rounds closes whatever the gauge; a length is what counts come to at it.
"""

from __future__ import annotations

from collections.abc import Collection, Iterator, Mapping
from fractions import Fraction
from functools import lru_cache
from typing import Literal

from grading_core.codes import ProofCode
from grading_core.gauge import Gauge
from grading_core.proof.figures import Key
from grading_core.proof.relations import Largest, Linear, Multiple, Relation, Term, linear
from grading_core.pullover.request import Gauges
from grading_core.rounding import CountRule
from grading_core.units import INCHES_IN_CM, InchConvention
from grading_core.yarn.request import METRES_PER_YARD

SECTIONS = ("back", "front", "sleeve")

Counted = Literal["cast_on", "body", "sleeve", "hem", "cuff", "band"]
COUNTED: Mapping[str, Key] = {
    "cast_on": Key("neck", "cast_on"),
    "body": Key("body", "stitches"),
    "sleeve": Key("sleeve", "stitches"),
    "hem": Key("hem", "stitches"),
    "cuff": Key("cuff", "stitches"),
    "band": Key("band", "stitches"),
}
"""What a count rule may be for."""

_WIDTHS = {
    Key("finished", "bust"): Key("body", "stitches"),
    Key("finished", "upper_arm"): Key("sleeve", "stitches"),
    Key("finished", "neck"): Key("neck", "stitches"),
    Key("finished", "underarm"): Key("split", "underarm"),
}
_RIBBED_WIDTHS = {
    Key("finished", "hem"): Key("hem", "stitches"),
    Key("finished", "wrist"): Key("cuff", "stitches"),
    Key("finished", "band"): Key("band", "stitches"),
}
"""Finished widths, and the count that each comes from."""

_HEIGHTS = (("depth", "yoke", None), ("body_length", "body", "hem"), ("sleeve_length", "sleeve", "cuff"))
"""Finished lengths, the part whose rounds each comes from, and the edge that ends it."""

_ADJUSTED = 6
"""Stitches that an adjusting round before a rib takes or adds at most: the widest usual repeat (common practice, no
source)."""

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
    doubled = Key("yoke", "doubled_rounds")
    yield Largest(
        code=ProofCode.INCREASE_ROUNDS,
        key=Key("yoke", "increase_rounds"),
        of=(
            {Key("yoke", "sleeve_increases"): 1},
            {Key("yoke", "back_increases"): 1, doubled: -1},
            {Key("yoke", "front_increases"): 1, doubled: -1},
        ),
    )
    yield linear(
        ProofCode.DECREASES_TO_CUFF,
        _one("sleeve", "stitches"),
        _times(-2, "sleeve", "decrease_rounds"),
        _times(-1, "cuff", "stitches"),
        least=-_ADJUSTED,
        most=_ADJUSTED,
    )
    decreases = _times(-1, "sleeve", "decrease_rounds")
    yield linear(ProofCode.DECREASES_EXCEED_ROUNDS, _one("sleeve", "rounds"), decreases, most=None)
    yield linear(ProofCode.EASE, _one("finished", "bust"), _times(-1, "to_fit", "bust"), _times(-1, "to_fit", "ease"))
    yield linear(
        ProofCode.REACH,
        _one("finished", "reach"),
        _times(-_HALF_WIDTH, "finished", "neck"),
        _times(-1, "finished", "depth"),
        _times(-1, "finished", "sleeve_length"),
    )


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


def round_relations(step: int) -> Iterator[Relation]:
    """Whether the increases fit in the yoke.

    step: rounds from one increase round to the next at the least. The first may be round 1.
    """
    increases = _times(-step, "yoke", "increase_rounds")
    yield linear(ProofCode.INCREASES_EXCEED_ROUNDS, _one("yoke", "rounds"), increases, least=1 - step, most=None)


def cast_on_relations(rows: Collection[Key]) -> Iterator[Relation]:
    """What is cast on against the stitches of the neck.

    rows: that the pattern has: with a front drop part of the front is cast on later.
    """
    drop, cast_on = Key("neck", "front_drop") in rows, _times(-1, "neck", "cast_on")
    yield linear(ProofCode.CAST_ON, _one("neck", "stitches"), cast_on, most=None if drop else 0)
    if not drop:
        yield linear(ProofCode.PICK_UP, _one("band", "stitches"), cast_on, least=-_ADJUSTED, most=_ADJUSTED)


def length_relations(gauges: Gauges, rows: Collection[Key]) -> Iterator[Relation]:
    """What lengths come to at the gauge of their fabric; where rounds may be of either of two, between both.

    gauges: of the fabrics. rows: that the pattern has.
    """
    plain, rib = gauges.plain, gauges.rib or gauges.plain
    worked = (plain,) if gauges.stranded is None else (plain, gauges.stranded)
    for widths, fabrics in ((_WIDTHS, worked), (_RIBBED_WIDTHS, (rib,))):
        rates = [each.stitches_per_cm for each in fabrics]
        for width, count in widths.items():
            yield from _between(ProofCode.WIDTH, (count, 1), [(width, -min(rates))], [(width, -max(rates))])
    for length, part, edge in _HEIGHTS:
        edging = [] if edge is None else [_times(-1 / rib.rows_per_cm, edge, "rounds")]
        tall, short = (
            [_times(-1 / choose(each.rows_per_cm for each in worked), part, "rounds"), *edging] for choose in (min, max)
        )
        yield from _between(ProofCode.HEIGHT, _one("finished", length), short, tall)
    yield from _sums_of_lengths(plain, rows)


def _sums_of_lengths(plain: Gauge, rows: Collection[Key]) -> Iterator[Relation]:
    """Lengths that are the sum of others, and of rows that only a part of the round has."""
    for length, parts, extra in (
        ("front_length", ("body_length",), Key("body", "bust_dart_rows")),
        ("total_length", ("depth", "body_length"), Key("neck", "short_rows")),
    ):
        terms = [_one("finished", length), *(_times(-1, "finished", part) for part in parts)]
        if extra in rows:
            terms.append((extra, -1 / plain.rows_per_cm))
        # where no such rows are told there may be some all the same
        yield linear(ProofCode.TOTAL_LENGTH, *terms, most=0 if extra in rows else None)


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
            yards = key.item.replace("metres", "yards", 1)
            yield linear(ProofCode.YARDS, (key, 1), _times(-METRES_PER_YARD, "yarn", yards))


def rule_relations(rules: Mapping[str, CountRule]) -> Iterator[Relation]:
    """Counts that land on a multiple.

    rules: by what they are for, as `COUNTED` has it.
    """
    for name, rule in rules.items():
        yield Multiple(code=ProofCode.COUNT_RULE, key=COUNTED[name], rule=rule)


def parity_relations(odd: Mapping[str, bool]) -> Iterator[Relation]:
    """Sections that a chart can be centred on.

    odd: by section, whether its anchor is a stitch, and not between two.
    """
    for section, is_odd in odd.items():
        for part in ("neck", "split"):
            yield Multiple(code=ProofCode.CHART_PARITY, key=Key(part, section), rule=CountRule(2, int(is_odd)))


def _one(part: str, item: str) -> Term:
    return Key(part, item), 1


def _times(times: Fraction | int, part: str, item: str) -> Term:
    return Key(part, item), times
