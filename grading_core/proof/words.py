"""Why a finding is one, in sentences."""

from __future__ import annotations

from collections.abc import Iterable, Mapping

from grading_core.codes import ProofCode
from grading_core.proof.figures import Key, number
from grading_core.pullover.table import LINES
from grading_core.sentences import COUNT, NUMBER, SENTENCE, SENTENCES, TEXT, TOKEN, Saying, Sentence

_TITLES: Mapping[tuple[str, str], Saying] = {(line.part, line.item): line.title for line in LINES}

RULES = {code: Saying(f"proof.{code.value}") for code in ProofCode}
"""What each relation is."""

_OTHER_ROW = Saying("proof.row", part=TEXT, item=TEXT)
_IN_INCHES = Saying("proof.in_inches", row=SENTENCE)
_NUMBER_OF = Saying("proof.number", row=SENTENCE, value=NUMBER)
_IS_PRINTED = Saying("proof.is_printed", rule=SENTENCE, row=SENTENCE, printed=NUMBER)
_TOLD = Saying("proof.told", rule=SENTENCE, row=SENTENCE, printed=NUMBER, others=SENTENCES, expected=NUMBER, side=TOKEN)
_BESIDE = Saying("proof.beside", rule=SENTENCE, row=SENTENCE, printed=NUMBER, expected=NUMBER)
_LENGTHS = Saying("proof.lengths", rule=SENTENCE, row=SENTENCE, values=COUNT, sizes=COUNT)
_BEFORE = Saying("proof.before", rule=SENTENCE, row=SENTENCE, printed=NUMBER, size=TEXT, before=NUMBER)


def row_title(key: Key) -> Sentence:
    """What a row is called.

    key: of any row.
    """
    titled = _TITLES.get((key.part, key.item))
    told = titled() if titled else _OTHER_ROW(part=key.part, item=key.item)
    return _IN_INCHES(row=told) if key.inches else told


def told_by_others(
    code: ProofCode, key: Key, printed: int, expected: int | None, others: Iterable[tuple[Key, int]]
) -> Sentence:
    """That a number is not what the others make it.

    printed, expected: of the row of the key, in grains. others: the numbers that tell.
    """
    numbers = tuple(_NUMBER_OF(row=row_title(other), value=number(value)) for other, value in others)
    if not numbers or expected is None or expected == printed:
        return is_printed(code, key, printed)
    return _TOLD(
        rule=RULES[code](),
        row=row_title(key),
        printed=number(printed),
        others=numbers,
        expected=number(expected),
        side="more" if expected > printed else "less",
    )


def is_printed(code: ProofCode, key: Key, printed: int) -> Sentence:
    """That a number can't be one. printed: in grains."""
    return _IS_PRINTED(rule=RULES[code](), row=row_title(key), printed=number(printed))


def beside(code: ProofCode, key: Key, printed: int | None, expected: int | None) -> Sentence:
    """That a run says something else than the value beside it. printed, expected: in grains, None for a dash."""
    told, meant = (None if value is None else number(value) for value in (printed, expected))
    return _BESIDE(rule=RULES[code](), row=row_title(key), printed=told, expected=meant)


def run_length(code: ProofCode, key: Key, values: int, sizes: int) -> Sentence:
    """That a run has another number of values than there are sizes."""
    return _LENGTHS(rule=RULES[code](), row=row_title(key), values=values, sizes=sizes)


def falls(code: ProofCode, key: Key, printed: int, size: str, before: int) -> Sentence:
    """That a number is less than that of a smaller size. printed, before: in grains."""
    return _BEFORE(rule=RULES[code](), row=row_title(key), printed=number(printed), size=size, before=number(before))
