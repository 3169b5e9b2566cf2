"""Proofreading a pattern: every relation between its printed numbers that does not hold, and which number is wrong.

Each size is judged by itself (see `garment`), then each row over all sizes (see `rows`). Where numbers disagree the
smallest set of them whose change would mend all is found (see `repair`), and named first.
"""

from __future__ import annotations

from collections import Counter
from collections.abc import Iterable, Iterator, Mapping, Sequence
from dataclasses import dataclass, replace
from fractions import Fraction
from functools import cached_property
from itertools import chain, islice

from grading_core.chart.grid import default_anchor
from grading_core.codes import CauseCode, ProofCode, WarningCode
from grading_core.errors import Check, Remark, check, duplicate_labels, sound
from grading_core.proof import garment
from grading_core.proof.causes import likely_cause, shifted
from grading_core.proof.figures import GRAINS, Figure, Figures, Key, Numbers, number
from grading_core.proof.reasoning import Mended, of_relation
from grading_core.proof.relations import Relation, computable
from grading_core.proof.repair import Changes, Trials, as_printed, smallest_changes
from grading_core.proof.request import ProofRequest
from grading_core.proof.result import Checked, Correction, Finding, Proof, RequestField, RowKey, Unchecked
from grading_core.proof.rows import (
    count_findings,
    falling_findings,
    length_findings,
    printing_findings,
    rising_places,
    yarn_findings,
)
from grading_core.proof.table import COUNTING, Row, numbers_of, printed_steps, read_rows
from grading_core.sentences import COUNT, Saying
from grading_core.units import InchConvention
from grading_core.unknown import is_unknown

MOST_LINE_STITCHES = 8

MAX_FINDINGS = 400
"""More are not named: nobody reads them, and naming them takes long."""

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
    rows = tuple([row for row in rows if row.key not in too_long])
    steps = printed_steps(rows)
    pattern = _Pattern(request, rows, numbers_of(rows, len(labels), steps))
    skipped = frozenset(request.skip)
    relations = [relation for relation in pattern.relations() if relation.code not in skipped]
    computed = computable(relations, pattern.columns)
    mended, of_relations, times = _judged(pattern, computed)
    rising = rising_places(labels, pattern.columns)
    of_rows = chain(
        too_long.values(),
        count_findings(rows, labels, pattern.columns),
        printing_findings(rows, labels, steps),
        falling_findings(labels, pattern.columns, rising, mended),
        yarn_findings(labels, pattern.columns, rising),
    )
    found = chain(of_relations, (finding for finding in of_rows if finding.code not in skipped))
    findings = [*islice(found, MAX_FINDINGS + 1)]
    unchecked, most_wanted = _unchecked(pattern, relations, times)
    return Proof(
        labels=labels,
        corrections=tuple([each for corrections in mended.values() for each in corrections.values()]),
        findings=tuple(findings[:MAX_FINDINGS]),
        checked=tuple([Checked(code, times[code]) for code in ProofCode if times[code]]),
        unchecked=unchecked,
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


@dataclass(frozen=True)
class _Pattern:
    """A pattern that is proofread.

    request: what was asked. rows: as read, those whose runs are as long as they should be. columns: their numbers.
    """

    request: ProofRequest
    rows: tuple[Row, ...]
    columns: Mapping[Key, Numbers]

    @cached_property
    def line_stitches(self) -> int | None:
        """Of each raglan line: as told, or what most sums of neck and split agree on."""
        if self.request.line_stitches is not None:
            return self.request.line_stitches
        told = Counter(lines for part in _TOTALS for lines in self._lines_of(part))
        return told.most_common(1)[0][0] if told else None

    @cached_property
    def inch_convention(self) -> InchConvention:
        """By which most inches agree with what they can be compared with."""

        def broken(relations: Iterable[Relation]) -> int:
            there = computable(relations, self.columns)
            of_inches = (relation for relation in there if any(key.inches for key in relation.keys))
            return sum(len(relation.judged(self.columns).broken) for relation in of_inches)

        if not any(key.inches for key in self.columns):
            return "exact"
        exact = broken(self._exact)
        return "nominal" if exact and broken(self._nominal) < exact else "exact"

    @cached_property
    def counts(self) -> frozenset[Key]:
        """Numbers that are whole."""
        return frozenset([row.key for row in self.rows if row.unit in COUNTING])

    def relations(self) -> Sequence[Relation]:
        """Those that the request allows, whichever numbers there are."""
        return self._exact if self.inch_convention == "exact" else self._nominal

    @cached_property
    def _exact(self) -> Sequence[Relation]:
        return tuple(self._relations("exact"))

    @cached_property
    def _nominal(self) -> Sequence[Relation]:
        return tuple(self._relations("nominal"))

    def _relations(self, convention: InchConvention) -> Iterator[Relation]:
        request = self.request
        yield from garment.sum_relations(self.line_stitches)
        yield from garment.round_relations(request.step)
        yield from garment.cast_on_relations(self.columns)
        yield from garment.decrease_relations(self.columns)
        yield from garment.length_relations(request.gauges, self.columns, convention)
        yield from garment.inch_relations(self.columns, convention)
        yield from garment.yarn_relations(self.columns)
        yield from garment.rule_relations(request.count_rules, self.columns)
        yield from garment.parity_relations(_odd_sections(request))

    def figures(self, place: int) -> Figures:
        """The numbers of a size."""
        told = ((key, row.values[place], row.half) for key, row in self.columns.items())
        return {key: Figure(value, half) for key, value, half in told if value is not None}

    def _lines_of(self, part: str) -> Iterator[int]:
        """The stitches of a raglan line by the sections and the total of neck or split, size by size."""
        keys = [Key(part, item) for item in (_TOTALS[part], *garment.SECTIONS)]
        if not all(key in self.columns for key in keys):
            return
        for counts in zip(*(self.columns[key].values for key in keys), strict=True):
            if None not in counts:
                total, back, front, sleeve = counts
                lines, rest = divmod(total - back - front - 2 * sleeve, 4 * GRAINS)
                if rest == 0 and 0 <= lines <= MOST_LINE_STITCHES:
                    yield lines


_TOTALS = {"neck": "stitches", "split": "yoke_total"}


def _judged(
    pattern: _Pattern, relations: Sequence[Relation]
) -> tuple[Mapping[int, Mended], Iterator[Finding], Counter[ProofCode]]:
    """What would mend each size, by its place, what doesn't hold in it, and how often each relation was computed."""
    times: Counter[ProofCode] = Counter()
    broken: dict[int, list[Relation]] = {}
    for relation in relations:
        computed, places = relation.judged(pattern.columns)
        times[relation.code] += computed
        for place in places:
            broken.setdefault(place, []).append(relation)
    trials = Trials()
    mended = {place: _mended(pattern, relations, place, trials) for place in sorted(broken)}
    mended = _shifts_named(mended, pattern)
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


def _mended(pattern: _Pattern, relations: Sequence[Relation], place: int, trials: Trials) -> Mended:
    """Of the smallest sets of changes that mend a size the likeliest: of which most can be explained, and then the one
    after which the numbers lie nearest to those of the sizes beside it."""
    figures = pattern.figures(place)
    here = computable(relations, figures)
    found = smallest_changes(figures, here, pattern.counts, trials)
    if not found:
        return {}
    told = [{key: _correction(key, changes, pattern, place, len(found) - 1) for key in changes} for changes in found]

    def likeliness(corrections: Mended) -> tuple[int, Fraction]:
        explained = sum(each.cause is not None for each in corrections.values())
        return explained, sum((_smoother(key, each, pattern, place) for key, each in corrections.items()), Fraction(0))

    return max(told, key=likeliness)


def _correction(key: Key, changes: Changes, pattern: _Pattern, place: int, others: int) -> Correction:
    row = pattern.columns[key]
    printed = row.values[place]
    assert printed is not None
    expected = as_printed(changes[key].printed, row.half)
    cause = (
        CauseCode.NOMINAL_INCHES
        if _is_otherwise_inched(key, pattern, place)
        else likely_cause(
            key,
            printed,
            expected,
            pattern.figures(place),
            line_stitches=pattern.line_stitches,
            neighbours=_beside(key, pattern, place) if len(set(row.values)) > 1 else (),
        )
    )
    return Correction(
        size=pattern.request.labels[place],
        row=RowKey(key.part, key.item),
        unit=row.unit,
        printed=number(printed),
        expected=number(expected),
        others=others,
        cause=cause,
    )


def _beside(key: Key, pattern: _Pattern, place: int) -> list[int]:
    """The numbers of a row in the sizes beside one; none where all sizes have the same, since that tells nothing."""
    values = pattern.columns[key].values
    if len(set(values)) == 1:
        return []
    beside = [values[other] for other in (place - 1, place + 1) if 0 <= other < len(values)]
    return [value for value in beside if value is not None]


def _smoother(key: Key, correction: Correction, pattern: _Pattern, place: int) -> Fraction:
    """How much nearer a corrected number lies to those beside it, as a part of itself."""
    beside = _beside(key, pattern, place)
    if not beside:
        return Fraction(0)
    middle = number(sum(beside)) / len(beside)
    nearer = abs(correction.printed - middle) - abs(correction.expected - middle)
    return nearer / max(abs(correction.expected), Fraction(1))


def _is_otherwise_inched(key: Key, pattern: _Pattern, place: int) -> bool:
    """Whether inches agree with their centimetres by the convention that the pattern's others don't follow."""
    if not key.inches:
        return False
    figures = pattern.figures(place)
    pair = {key, key._replace(inches=False)} & figures.keys()

    def agree(convention: InchConvention) -> bool:
        return any(relation.holds(figures) for relation in garment.inch_relations(pair, convention))

    return not agree(pattern.inch_convention) and agree("exact" if pattern.inch_convention == "nominal" else "nominal")


def _shifts_named(mended: Mapping[int, Mended], pattern: _Pattern) -> dict[int, Mended]:
    """The corrections, of which those of a row that stands one size too far to one side say so."""
    wrong: dict[Key, dict[int, int]] = {}
    for place, corrections in mended.items():
        for key, each in corrections.items():
            wrong.setdefault(key, {})[place] = int(each.expected * GRAINS)
    moved = {
        key
        for key, expected in wrong.items()
        if shifted(dict(enumerate(value or 0 for value in pattern.columns[key].values)), expected)
    }
    return {
        place: {
            key: replace(each, cause=CauseCode.SIZES_SHIFTED) if key in moved else each
            for key, each in corrections.items()
        }
        for place, corrections in mended.items()
    }


def _unchecked(
    pattern: _Pattern, relations: Sequence[Relation], times: Mapping[ProofCode, int]
) -> tuple[tuple[Unchecked, ...], RowKey | None]:
    """The relations that no size has all numbers for, and the row that would allow most of them."""
    there = {key._replace(inches=False) for key in pattern.columns}
    missing: dict[ProofCode, tuple[Key, ...]] = {}
    wanted: Counter[Key] = Counter()
    for relation in relations:
        lacking = tuple([key for key in relation.keys if key not in there])
        # what is said of inches is said of centimetres too
        if not lacking or any(key.inches for key in relation.keys):
            continue
        if len(lacking) == 1:
            wanted[lacking[0]] += 1
        code = relation.code
        if not times[code] and (code not in missing or len(lacking) < len(missing[code])):
            missing[code] = lacking
    unchecked = [
        Unchecked(code, tuple(RowKey(key.part, key.item) for key in lacking), ()) for code, lacking in missing.items()
    ]
    unchecked += [
        Unchecked(code, (), fields)
        for code, fields in _fields_missing(pattern)
        if not times[code] and code not in pattern.request.skip
    ]
    most = wanted.most_common(1)
    return tuple(unchecked), RowKey(most[0][0].part, most[0][0].item) if most else None


def _fields_missing(pattern: _Pattern) -> Iterator[tuple[ProofCode, tuple[RequestField, ...]]]:
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


def _odd_sections(request: ProofRequest) -> dict[str, bool]:
    """By section, whether its count has to be odd for the chart."""
    anchor = request.anchor
    if anchor is None and request.chart is None:
        return {}
    centre = None if request.chart is None else default_anchor(request.chart)
    columns = {section: getattr(anchor, section) if anchor else centre for section in garment.SECTIONS}
    return {section: Fraction(column).denominator == 1 for section, column in columns.items() if column is not None}
