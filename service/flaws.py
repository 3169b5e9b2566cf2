"""What is wrong with the form of a request: a field, a type, a bound, before anything is understood of it.

A value of a wrong form still tells what it can: `FormError.known` is what it would be loaded as, with the unknown value
in place of what is wrong, so that the rest can be judged beside it.
"""

from __future__ import annotations

from collections.abc import Collection, Iterator
from difflib import get_close_matches
from typing import Any, NamedTuple

from grading_core.codes import Code
from grading_core.errors import Path
from grading_core.unknown import unknown

MAX_WORD = 40
"""A longer word is no misspelt name, and details quote no more of one."""

MAX_SUGGESTIONS = 50
"""In one answer: looking for names that are near takes its time."""

_NEAR = 0.8
"""How much alike two words have to be, by the ratio of `difflib`, for one to be a misspelling of the other."""


class FormCode(Code):
    """How the form of a request is wrong."""

    REQUIRED = "required", "What has to be there is missing."
    UNKNOWN_FIELD = "unknown_field", "There is no field of this name here."
    UNKNOWN_PARAMETER = "unknown_parameter", "There is no query parameter of this name here."
    NULL = "null", "The value is null, which stands for nothing here."
    WRONG_TYPE = "wrong_type", "The value is of another JSON type than the one wanted."
    OUT_OF_RANGE = "out_of_range", "A number is smaller or larger than it may be."
    TOO_SHORT = "too_short", "A text, a list or an object has less in it than it must."
    TOO_LONG = "too_long", "A text, a list, an object or a file has more in it than it may."
    NOT_ONE_OF = "not_one_of", "The value is none of the words to choose from."
    WRONG_FORMAT = "wrong_format", "A text is not written as it has to be."
    ONE_REQUIRED = "one_required", "None was sent of some fields of which one has to be."
    MUTUALLY_EXCLUSIVE = "mutually_exclusive", "Fields were sent together of which only one may be."
    UNREADABLE_PICTURE = "unreadable_picture", "A file is no still PNG picture that can be read."
    UNUSABLE_PIXELS = "unusable_pixels", "A picture has too many pixels or colours, or pixels that cannot be stitches."
    DUPLICATE_COLOUR = "duplicate_colour", "Two colours are alike, so that pixels cannot be told apart by them."
    UNKNOWN_COLOUR = "unknown_colour", "A picture has colours that are none of the chart's."


class Flaw(NamedTuple):
    """What is wrong in one place.

    code: for programs. detail: a sentence that names what would be right. word, words: the word that was sent where it
    may be a misspelling, and those that it may stand for.
    """

    code: FormCode
    detail: str
    word: str = ""
    words: Collection[str] = ()


class FormError(Exception):
    """A value whose form is wrong.

    wrong: a flaw; several; or what is wrong by field name or index, and under None with an object itself. known: what
    the value would be loaded as, the unknown value where it is wrong.
    """

    def __init__(self, wrong: Flaw | list[Flaw] | dict[Any, Any], known: Any = None) -> None:
        self.wrong = wrong
        self.known = unknown() if known is None else known
        super().__init__(wrong)

    def flaws(self) -> Iterator[tuple[Path, Flaw]]:
        """Every wrong place, with what is wrong there."""
        return _flaws(self.wrong, ())


_NULL = Flaw(FormCode.NULL, "must not be null.")


def wrong_kind(value: Any, flaw: Flaw) -> FormError:
    """Why a value of another kind is refused: null is told as such.

    value: as sent. flaw: what is wrong with any other.

    >>> wrong_kind(None, wrong_type("text")).wrong.detail
    'must not be null.'
    """
    return FormError(_NULL if value is None else flaw)


def wrong_type(wanted: str, *examples: str) -> Flaw:
    """A value that is not of the type wanted.

    wanted: in words. examples: JSON that would do; empty ones are left out.

    >>> wrong_type("a number or a list", "10", "[8, 12]").detail
    'must be a number or a list, as in 10 or [8, 12].'
    """
    written = [each for each in examples if each]
    such = f", as in {any_of(written)}" if written else ""
    return Flaw(FormCode.WRONG_TYPE, f"must be {wanted}{such}.")


def how_many(least: int, most: int | None, things: str) -> str:
    """How many of something there may be, for a flaw.

    least, most: the limits, of which one is there. things: in the plural.

    >>> how_many(2, 2, "items"), how_many(1, 1, "characters"), how_many(0, 9, "items"), how_many(1, 9, "items")
    ('2 items', '1 character', 'at most 9 items', '1 to 9 items')
    """
    if least == most:
        return f"{most} {things[:-1] if most == 1 else things}"
    if most is None:
        return f"at least {least} {things}"
    return f"{least} to {most} {things}" if least else f"at most {most} {things}"


def any_of(words: list[str]) -> str:
    """Words to choose from.

    >>> any_of(["a", "b", "c"])
    'a, b or c'
    """
    return " or ".join([*([", ".join(words[:-1])] if words[:-1] else []), words[-1]])


def near_word(word: str, words: Collection[str]) -> str | None:
    """Which of some words a misspelt one may stand for, None where none is near.

    >>> near_word("closest-first", ["closest_first", "widest_first"]), near_word("wool", ["closest_first"])
    ('closest_first', None)
    """
    if len(word) > MAX_WORD:
        return None
    plain = {_plain(each): each for each in words}
    near = get_close_matches(_plain(word), plain, 1, _NEAR)
    return plain[near[0]] if near else None


def shortened(text: str) -> str:
    """What a client sent, as long as a detail quotes it.

    >>> shortened("S"), len(shortened("S" * 1000))
    ('S', 41)
    """
    return text if len(text) <= MAX_WORD else f"{text[:MAX_WORD]}…"


def _plain(word: str) -> str:
    return word.casefold().replace("-", "_").replace(" ", "_")


def _flaws(wrong: Any, path: Path) -> Iterator[tuple[Path, Flaw]]:
    if isinstance(wrong, Flaw):
        yield path, wrong
    elif isinstance(wrong, dict):
        for step, below in wrong.items():
            yield from _flaws(below, path if step is None else (*path, step))
    else:
        for below in wrong:
            yield from _flaws(below, path)
