"""Proofreading a pattern: every relation between its printed numbers that does not hold, and which number is wrong.

Each size is judged by itself (see `garment`), then each row over all sizes (see `rows`). Where numbers disagree the
smallest set of them whose change would mend all is found (see `repair`, `corrections`), and named first.
"""

from __future__ import annotations

from collections.abc import Iterable, Iterator, Mapping, Sequence
from itertools import chain, islice

from grading_core.codes import ProofCode, WarningCode
from grading_core.errors import Check, Remark, check, duplicate_labels, sound
from grading_core.proof.corrections import corrections
from grading_core.proof.figures import Key
from grading_core.proof.pattern import Pattern
from grading_core.proof.reasoning import Mended, of_relation
from grading_core.proof.relations import Relation, parted
from grading_core.proof.request import ProofRequest
from grading_core.proof.result import Checked, Finding, Proof
from grading_core.proof.rows import (
    count_findings,
    falling_findings,
    falling_rows,
    length_findings,
    printing_findings,
    rising_places,
    times_of_rows,
    yarn_findings,
)
from grading_core.proof.table import Row, numbers_of, printed_steps, read_rows
from grading_core.proof.unchecked import unchecked
from grading_core.sentences import COUNT, Saying
from grading_core.unknown import is_unknown

MAX_FINDINGS = 400
"""More are not named: nobody reads them, and naming them takes long."""

_CODES = tuple(ProofCode)

MANY_FINDINGS = Saying("warning.many_findings", most=COUNT)


def proofread(request: ProofRequest) -> Proof:
    """What contradicts itself in the numbers of a pattern.

    Raises ContradictionError for rows that can't be read or stand there twice.

    >>> from grading_core.proof.request import PrintedRow
    >>> printed = {("neck", "back"): "34 (36)", ("yoke", "back_increases"): "20 (22)", ("split", "back"): "74 (89)"}
    >>> rows = tuple(PrintedRow(part, item, run=run) for (part, item), run in printed.items())
    >>> proof = proofread(ProofRequest(labels=("S", "M"), rows=rows))
    >>> [(each.code.value, each.size, int(each.printed), int(each.expected)) for each in proof.findings]
    [('split_from_neck', 'M', 89, 80)]
    """
    rows, labels = sound(proof_problems(request)), request.labels
    too_long = dict(length_findings(rows, len(labels)))
    if too_long:
        rows = tuple([row for row in rows if row.key not in too_long])
    steps = printed_steps(rows)
    pattern = Pattern(request, rows, numbers_of(rows, len(labels), steps))
    skipped = frozenset(request.skip)
    relations = [each for each in pattern.relations if each.code not in skipped] if skipped else pattern.relations
    computed, lacking = parted(relations, pattern.columns)
    mended, of_relations, times_of_relations = _judged(pattern, computed)
    falling = falling_rows(pattern.columns)
    rising = rising_places(labels, pattern.columns, falling)
    of_rows = chain(
        too_long.values(),
        count_findings(rows, labels, pattern.columns),
        printing_findings(rows, labels, steps, mended),
        falling_findings(labels, pattern.columns, falling, rising, mended),
        yarn_findings(labels, pattern.columns, rising),
    )
    found = chain(of_relations, (finding for finding in of_rows if finding.code not in skipped))
    findings = [*islice(found, MAX_FINDINGS + 1)]
    times = {**times_of_relations, **times_of_rows(rows, pattern.columns, rising)}
    not_computed, most_wanted = unchecked(pattern, lacking, times)
    return Proof(
        labels=labels,
        corrections=tuple([each for of_size in mended.values() for each in of_size.values()]),
        findings=tuple(findings[:MAX_FINDINGS]),
        checked=tuple([Checked(code, times[code]) for code in _CODES if times.get(code) and code not in skipped]),
        unchecked=not_computed,
        most_wanted=most_wanted,
        remarks=(Remark(WarningCode.MANY_FINDINGS, MANY_FINDINGS(most=MAX_FINDINGS)),)
        if len(findings) > MAX_FINDINGS
        else (),
    )


@check
def proof_problems(request: ProofRequest) -> Check[tuple[Row, ...]]:
    """What contradicts itself in what is sent; makes its rows.

    request: any.
    """
    labels = () if is_unknown(request.labels) else request.labels
    yield from duplicate_labels(labels, ("labels",), ())
    # a text that is no run is none for any number of sizes
    return (yield from read_rows(request.rows, len(labels)))


def _judged(
    pattern: Pattern, relations: Sequence[Relation]
) -> tuple[Mapping[int, Mended], Iterator[Finding], Mapping[ProofCode, int]]:
    """What would mend each size, by its place, what doesn't hold in it, and how often each relation was computed."""
    times: dict[ProofCode, int] = {}
    broken: dict[int, list[Relation]] = {}
    for relation in relations:
        code, (computed, places) = relation.code, relation.judged(pattern.columns)
        times[code] = times.get(code, 0) + computed
        for place in places:
            broken.setdefault(place, []).append(relation)
    mended = corrections(pattern, relations, sorted(broken))
    findings = (
        of_relation(
            relation,
            pattern.request.labels[place],
            pattern.figures(place),
            mended[place],
            columns=pattern.columns,
            line_stitches=pattern.line_stitches,
        )
        for place in sorted(broken)
        for relation in _told_once(broken[place])
    )
    return mended, findings, times


def _told_once(relations: Iterable[Relation]) -> Iterable[Relation]:
    """The relations, without those in inches that say the same as one in centimetres before them."""
    told: dict[tuple[ProofCode, frozenset[Key]], Relation] = {}
    for relation in relations:
        told.setdefault((relation.code, frozenset([key._replace(inches=False) for key in relation.keys])), relation)
    return told.values()
