"""What could not be computed, and what is missing for it."""

from __future__ import annotations

from collections import Counter
from collections.abc import Iterator, Mapping, Sequence

from grading_core.codes import ProofCode
from grading_core.proof import garment
from grading_core.proof.figures import Key
from grading_core.proof.pattern import Pattern
from grading_core.proof.relations import Relation
from grading_core.proof.result import RequestField, RowKey, Unchecked


def unchecked(
    pattern: Pattern, relations: Sequence[Relation], times: Mapping[ProofCode, int]
) -> tuple[tuple[Unchecked, ...], RowKey | None]:
    """The relations that no size has all numbers for, and the row that would allow most of them.

    pattern: that is proofread. relations: those that lack a row. times: how often each was computed.
    """
    there = frozenset(pattern.columns)
    if pattern.columns.has_inches:
        there = frozenset([key._replace(inches=False) for key in there])
    missing: dict[ProofCode, tuple[Key, ...]] = {}
    wanted: Counter[Key] = Counter()
    for relation in relations:
        lacking = tuple([key for key in relation.keys if key not in there])
        # what is said of inches is said of centimetres too
        if not lacking or any(key.inches for key in lacking):
            continue
        if len(lacking) == 1 and lacking[0] not in garment.NOT_IN_ALL:
            wanted[lacking[0]] += 1
        code = relation.code
        if not times.get(code) and (code not in missing or len(lacking) < len(missing[code])):
            missing[code] = lacking
    found = [
        Unchecked(code, tuple(RowKey(key.part, key.item) for key in lacking), ()) for code, lacking in missing.items()
    ]
    found += [
        Unchecked(code, (), fields)
        for code, fields in _fields_missing(pattern)
        if not times.get(code) and code not in pattern.request.skip
    ]
    most = wanted.most_common(1)
    return tuple(found), RowKey(most[0][0].part, most[0][0].item) if most else None


def _fields_missing(pattern: Pattern) -> Iterator[tuple[ProofCode, tuple[RequestField, ...]]]:
    """What can't be computed without a field of the request."""
    request = pattern.request
    if request.gauges is None:
        yield from ((code, ("gauge",)) for code in (ProofCode.WIDTH, ProofCode.HEIGHT, ProofCode.TOTAL_LENGTH))
    if pattern.line_stitches is None:
        yield from ((code, ("line_stitches",)) for code in garment.ON_RAGLAN_LINES)
    if not request.count_rules:
        yield ProofCode.COUNT_RULE, ("count_rules",)
    if request.chart is None and request.anchor is None:
        yield ProofCode.CHART_PARITY, ("chart",)
