"""What a relation says of a size in which it doesn't hold."""

from __future__ import annotations

from collections.abc import Mapping

from grading_core.proof.figures import GRAINS, Figure, Figures, Key, Numbers, as_printed, grains, number
from grading_core.proof.garment import ON_RAGLAN_LINES
from grading_core.proof.relations import Multiple, Relation, Span
from grading_core.proof.result import Correction, Finding, RowKey
from grading_core.proof.table import COUNTING
from grading_core.proof.words import Other, is_printed, off_rule, told_by_others
from grading_core.sentences import Sentence

Mended = Mapping[Key, Correction]
"""The corrections of a size."""


def of_relation(
    relation: Relation,
    size: str,
    figures: Figures,
    mended: Mended,
    *,
    columns: Mapping[Key, Numbers],
    line_stitches: int | None,
) -> Finding:
    """That a relation doesn't hold: told of the number that is to blame, where one of its is, and else of its first.

    size: the label. figures: of the size. mended: what would mend it. columns: the numbers of each row.
    line_stitches: of each raglan line.
    """
    key = next((key for key in relation.keys if key in mended), relation.keys[0])
    unit = columns[key].unit
    # what is told of a number has to follow from the others as they are to be, of which more may be wrong
    meant = {**figures, **{each: _corrected(figures[each], mended[each]) for each in mended if each != key}}
    span = relation.implied(key, meant)
    span = None if span is None else _as_printed(span, figures[key].half, whole=unit in COUNTING)
    correction = mended.get(key)
    expected = correction.expected if correction else None if span is None else number(_nearest(figures[key], span))
    return Finding(
        code=relation.code,
        size=size,
        rows=tuple(dict.fromkeys(RowKey(each.part, each.item) for each in relation.keys)),
        unit=unit,
        printed=number(figures[key].printed),
        expected=expected,
        because=_because(relation, key, span, figures, meant, line_stitches),
        cause=correction.cause if correction else None,
    )


def _because(
    relation: Relation, key: Key, span: Span | None, figures: Figures, meant: Figures, line_stitches: int | None
) -> Sentence:
    code, printed = relation.code, figures[key].printed
    if span is None:
        return is_printed(code, key, printed)
    if isinstance(relation, Multiple):
        return off_rule(code, key, printed, relation.rule, span.least or 0)
    others = [Other(each, figures[each].printed, *meant[each]) for each in relation.keys if each != key]
    lines = line_stitches if code in ON_RAGLAN_LINES else None
    return told_by_others(code, key, printed, span, others=others, line_stitches=lines)


def _corrected(figure: Figure, correction: Correction) -> Figure:
    return Figure(grains(correction.expected), figure.half)


def _as_printed(span: Span, half: int, *, whole: bool) -> Span:
    """What a number may be, as a pattern would print it: the counts in a span, or the length in the middle of it."""
    least, most = span
    if whole and (least is None or most is None or -(-least // GRAINS) <= most // GRAINS):
        return Span(
            None if least is None else -(-least // GRAINS) * GRAINS, None if most is None else most // GRAINS * GRAINS
        )
    if least is not None and most is not None:
        least = most = (least + most) // 2
    half = GRAINS // 2 if whole else half
    return Span(None if least is None else as_printed(least, half), None if most is None else as_printed(most, half))


def _nearest(figure: Figure, span: Span) -> int:
    """The number in a span that is nearest to what is printed."""
    least, most = span
    printed = figure.printed if least is None else max(figure.printed, least)
    return printed if most is None else min(printed, most)
