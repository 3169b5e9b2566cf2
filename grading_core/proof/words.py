"""Why a finding is one, in sentences."""

from __future__ import annotations

from collections.abc import Iterable, Mapping, Sequence
from typing import Any, NamedTuple

from grading_core.codes import ProofCode
from grading_core.proof.figures import Key, number
from grading_core.proof.relations import Span
from grading_core.pullover.table import LINES
from grading_core.rounding import CountRule
from grading_core.sentences import COUNT, INCHES, NUMBER, SENTENCE, SENTENCES, TEXT, TOKEN, Kind, Saying, Sentence

_TITLES: Mapping[tuple[str, str], Sentence] = {(line.part, line.item): line.title for line in LINES}
_IN_CM = frozenset((line.part, line.item) for line in LINES if line.unit == "cm")

RULES = {code: Saying(f"proof.{code.value}") for code in ProofCode}
"""What has to hold."""

_YARN = Saying("proof.yarn", unit=TOKEN, place=TEXT)
_YARN_UNITS = frozenset(("grams", "metres", "yards", "balls"))
_OTHER_ROW = Saying("proof.row", part=TEXT, item=TEXT)

_NONE = Saying("proof.none")
_NUMBER = Saying("proof.number", value=NUMBER)
_CM = Saying("proof.cm", value=NUMBER)
_INCHES = Saying("proof.inch", value=INCHES)

_OTHER = Saying("proof.other", row=SENTENCE, value=SENTENCE)
_CORRECTED = Saying("proof.corrected", row=SENTENCE, printed=SENTENCE, value=SENTENCE)
_LINE_STITCHES = Saying("proof.line_stitches", stitches=COUNT)

_PRINTED: dict[str, Kind] = {"rule": SENTENCE, "row": SENTENCE, "printed": SENTENCE}
"""Of every reasoning about one number: the rule, the row, and what is printed there."""

_IS_PRINTED = Saying("proof.is_printed", **_PRINTED)
_GOING_BY: dict[str, Kind] = {**_PRINTED, "others": SENTENCES, "rounding": TOKEN}
_TOLD = Saying("proof.told", **_GOING_BY, side=TOKEN, expected=SENTENCE)
_BETWEEN = Saying("proof.between", **_GOING_BY, least=SENTENCE, most=SENTENCE)
_OFF_MULTIPLE = Saying("proof.off_multiple", **_PRINTED, multiple=COUNT, plus=COUNT, expected=SENTENCE)
_OFF_PARITY = Saying("proof.off_parity", **_PRINTED, parity=TOKEN)
_BESIDE = Saying("proof.beside", **_PRINTED, expected=SENTENCE)
_BEFORE = Saying("proof.before", **_PRINTED, size=TEXT, before=SENTENCE)
_LENGTHS = Saying("proof.lengths", rule=SENTENCE, row=SENTENCE, values=COUNT, sizes=COUNT)


class Other(NamedTuple):
    """A number by which another is told, in grains.

    meant: what it is taken for, as printed where nothing is wrong. half: half the step that it was rounded to.
    """

    key: Key
    printed: int
    meant: int
    half: int = 0


def row_title(key: Key) -> Sentence:
    """What a row is called.

    key: of any row.

    >>> row_title(Key("yarn", "grams_2")).values["place"]
    '2'
    """
    titled = _TITLES.get((key.part, key.item))
    if titled:
        return titled
    unit, _, place = key.item.partition("_")
    if key.part == "yarn" and unit in _YARN_UNITS and place.isdecimal():
        return _YARN(unit=unit, place=place)
    return _OTHER_ROW(part=key.part, item=key.item)


def told_by_others(
    code: ProofCode, key: Key, printed: int, meant: Span, *, others: Sequence[Other], line_stitches: int | None
) -> Sentence:
    """That a number is not what the others make it.

    printed: of the row of the key, in grains. meant: what it may be. others: the numbers that tell. line_stitches: of
    each raglan line, where they tell, too.
    """
    said: dict[str, Any] = {
        **_printed(code, key, printed),
        "others": tuple(_others(others, line_stitches)),
        "rounding": "allowed" if any(other.half for other in others) else "none",
    }
    least, most = meant
    if least is not None and most is not None and least < most:
        return _BETWEEN(**said, least=_amount(key, least), most=_amount(key, most))
    side = "exactly" if least == most else "most" if least is None else "least"
    return _TOLD(**said, side=side, expected=_amount(key, most if least is None else least))


def off_rule(code: ProofCode, key: Key, printed: int, rule: CountRule, nearest: int) -> Sentence:
    """That a count is none that its rule permits.

    printed, nearest: in grains; that of the row, and the permitted one nearest to it.
    """
    said = _printed(code, key, printed)
    if code is ProofCode.CHART_PARITY:
        return _OFF_PARITY(**said, parity="odd" if rule.plus else "even")
    return _OFF_MULTIPLE(**said, multiple=rule.multiple, plus=rule.plus, expected=_amount(key, nearest))


def is_printed(code: ProofCode, key: Key, printed: int) -> Sentence:
    """That a number can't be one. printed: in grains."""
    return _IS_PRINTED(**_printed(code, key, printed))


def beside(code: ProofCode, key: Key, printed: int | None, expected: int | None) -> Sentence:
    """That a run says something else than the value beside it. printed, expected: in grains, None for a dash."""
    return _BESIDE(**_printed(code, key, printed), expected=_amount(key, expected))


def run_length(code: ProofCode, key: Key, values: int, sizes: int) -> Sentence:
    """That a run has another number of values than there are sizes."""
    return _LENGTHS(rule=RULES[code](), row=row_title(key), values=values, sizes=sizes)


def falls(code: ProofCode, key: Key, printed: int, size: str, before: int) -> Sentence:
    """That a number is less than that of a smaller size. printed, before: in grains."""
    return _BEFORE(**_printed(code, key, printed), size=size, before=_amount(key, before))


def _printed(code: ProofCode, key: Key, printed: int | None) -> dict[str, Sentence]:
    return {"rule": RULES[code](), "row": row_title(key), "printed": _amount(key, printed)}


def _amount(key: Key, grains: int | None) -> Sentence:
    """A number of a row, with its unit where it is a length."""
    if grains is None:
        return _NONE()
    saying = _INCHES if key.inches else _CM if (key.part, key.item) in _IN_CM else _NUMBER
    return saying(value=number(grains))


def _others(others: Iterable[Other], line_stitches: int | None) -> Iterable[Sentence]:
    for key, printed, meant, _ in others:
        row, value = row_title(key), _amount(key, meant)
        if printed == meant:
            yield _OTHER(row=row, value=value)
        else:
            yield _CORRECTED(row=row, printed=_amount(key, printed), value=value)
    if line_stitches is not None:
        yield _LINE_STITCHES(stitches=line_stitches)
