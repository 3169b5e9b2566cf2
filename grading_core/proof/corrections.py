"""Which numbers of a size are to be corrected: the likeliest of the smallest sets that would do."""

from __future__ import annotations

from collections.abc import Mapping, Sequence
from dataclasses import replace

from grading_core.codes import CauseCode
from grading_core.fraction import Fraction
from grading_core.proof import garment
from grading_core.proof.causes import likely_cause, shifted
from grading_core.proof.figures import Key, as_printed, grains, number
from grading_core.proof.pattern import Pattern
from grading_core.proof.reasoning import Mended
from grading_core.proof.relations import Relation, computable
from grading_core.proof.repair import Changes, Trials, smallest_changes
from grading_core.proof.result import Correction, RowKey
from grading_core.units import InchConvention


def corrections(pattern: Pattern, relations: Sequence[Relation], places: Sequence[int]) -> Mapping[int, Mended]:
    """What would mend each size in which something doesn't hold, by its place.

    pattern: whose sizes they are. relations: that can be computed. places: of the sizes.
    """
    trials = Trials()
    return _shifts_named({place: _mended(pattern, relations, place, trials) for place in places}, pattern)


def _mended(pattern: Pattern, relations: Sequence[Relation], place: int, trials: Trials) -> Mended:
    """Of the smallest sets of changes that mend a size the likeliest: of which most can be explained, and then the one
    after which the numbers lie nearest to those of the sizes beside it.

    That a number is that of the size beside it explains something only in a row where no other two are alike.
    """
    figures = pattern.figures(place)
    here = computable(relations, figures)
    found = smallest_changes(figures, here, pattern.counts, trials)
    if not found:
        return {}
    told = [{key: _correction(key, changes, pattern, place, len(found) - 1) for key in changes} for changes in found]

    def likeliness(corrections: Mended) -> tuple[int, Fraction]:
        explained = sum(_is_explained(key, each, pattern) for key, each in corrections.items())
        return explained, sum((_smoother(key, each, pattern, place) for key, each in corrections.items()), Fraction(0))

    return max(told, key=likeliness)


def _is_explained(key: Key, correction: Correction, pattern: Pattern) -> bool:
    """Whether the cause of a correction speaks for it."""
    values = pattern.columns[key].values
    return correction.cause is not None and (
        correction.cause is not CauseCode.NEIGHBOURING_SIZE or 1 < len(set(values)) == len(values) - 1
    )


def _correction(key: Key, changes: Changes, pattern: Pattern, place: int, others: int) -> Correction:
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
            neighbours=_beside(key, pattern, place),
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


def _beside(key: Key, pattern: Pattern, place: int) -> list[int]:
    """The numbers of a row in the sizes beside one."""
    values = pattern.columns[key].values
    beside = [values[other] for other in (place - 1, place + 1) if 0 <= other < len(values)]
    return [value for value in beside if value is not None]


def _smoother(key: Key, correction: Correction, pattern: Pattern, place: int) -> Fraction:
    """How much nearer a corrected number lies to those beside it, as a part of itself."""
    beside = _beside(key, pattern, place)
    if not beside:
        return Fraction(0)
    middle = number(sum(beside)) / len(beside)
    nearer = abs(correction.printed - middle) - abs(correction.expected - middle)
    return nearer / max(abs(correction.expected), Fraction(1))


def _is_otherwise_inched(key: Key, pattern: Pattern, place: int) -> bool:
    """Whether inches agree with their centimetres by the convention that the pattern's others don't follow."""
    if not key.inches:
        return False
    figures = pattern.figures(place)
    pair = {key, key._replace(inches=False)} & figures.keys()

    def agree(convention: InchConvention) -> bool:
        return any(relation.holds(figures) for relation in garment.inch_relations(pair, convention))

    return not agree(pattern.inch_convention) and agree("exact" if pattern.inch_convention == "nominal" else "nominal")


def _shifts_named(mended: Mapping[int, Mended], pattern: Pattern) -> dict[int, Mended]:
    """The corrections, of which those of a row that stands one size too far to one side say so."""
    wrong: dict[Key, dict[int, int]] = {}
    for place, corrections in mended.items():
        for key, each in corrections.items():
            wrong.setdefault(key, {})[place] = grains(each.expected)
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
