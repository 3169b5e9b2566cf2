"""Reads numbers as patterns print them: size runs in brackets, fractions, dashes, units.

`84 (88, 92)`, `84 [88: 92]`, `84-88-92`, `36 1/2 (38¾) in`, `21,5 (22; 23,5)`, `S (M) (L)`: the habits differ from
publisher to publisher (common practice, no source), and none of them is asked to change hers.
"""

from __future__ import annotations

import json
import re
from collections.abc import Iterator, Sequence
from typing import Literal, NamedTuple
from unicodedata import normalize

from grading_core.proof.figures import GRAINS

PrintedUnit = Literal["cm", "inch"]

_DASHES = frozenset("-\u2010\u2011\u2012\u2013\u2014\u2015\u2212")
_BRACKETS = "()[]{}<>"
_INCHES = frozenset(("in", "inch", "inches", "ins", '"', "\u201d", "\u201c", "''", "zoll"))
_CENTIMETRES = frozenset(("cm", "cms", "centimetre", "centimetres", "centimeter", "centimeters", "zentimeter"))

_BEFORE_A_FRACTION = re.compile(r"(?<=\d)(?=[\u00bc-\u00be\u2150-\u215f\u2189\u2070\u00b9\u00b2\u00b3\u2074-\u2079])")
_WORD = re.compile(r"[^\W\d_]+\.?|''|[\"\u201c\u201d]")
_STUCK = re.compile(r"\d([^\W\d_]+)|([^\W\d_]+)\d")
_STUCK_ON = _INCHES | _CENTIMETRES | frozenset(("g", "m", "yd", "yds", "st", "sts", "rd", "rnd", "rnds", "x"))
"""Words that may stand at a number without a space; with others it may be a misprint: an O for a 0."""

_LAST_WORDS = re.compile(r"(?<=[\d)\]}>])(?:[^\W\d_]|[\s.\"\u201c\u201d]|'')+$")
"""Sign by sign, since whole words could be cut in too many ways."""

_ONE = re.compile(
    r"([-\u2010-\u2015\u2212] ?)?"
    r"(?:(?:(\d{1,7})[ -])?(\d{1,2})/(\d{1,2})|(\d{1,7}(?:\.\d{1,6})?|\.\d{1,6}))"
)
"""A minus; a whole number, and how many of how many parts; or a decimal."""

_DIGITS = 7
"""Of a whole number, at most."""

_USUAL_SIGNS = b" (),.0123456789"
_TOO_FINE = re.compile(r"\.\d{7}")

_TENS = (1, 10, 100, 1000, 10_000, 100_000, 1_000_000)

_ONE_DECIMAL = re.compile(r"\s*\d+,\d{1,2}\s*")
_THOUSANDS = re.compile(r"\d{1,3}(?:,\d{3})+(?!\d)")

Commas = Literal["sizes", "thousands", "decimals"]
Between = Literal["nothing", "slashes", "dashes"]
"""What parts two sizes between their digits."""

_COMMAS = {"sizes": ","} | dict.fromkeys(("thousands", "decimals"), r",(?!\d)|(?<!\d),")
_BETWEEN = {"nothing": "", "slashes": "|/", "dashes": r"|(?<=\d) ?[-\u2010-\u2015] ?(?=\d)"}
_PARTING = {
    (commas, between): re.compile(rf"[{re.escape(_BRACKETS)};:|\t]|{comma}{sign}")
    for commas, comma in _COMMAS.items()
    for between, sign in _BETWEEN.items()
}

_MOST_VALUES = 80
"""No pattern has as many sizes, and nobody's run may take long."""


class UnreadableError(ValueError):
    """A text that is no size run. Its message says why."""


class PrintedRun(NamedTuple):
    """A run as it was read.

    values: in grains, one for each size, or one for all; None for a dash, or a word in its place. unit: that the text
    itself names, None where it doesn't.
    """

    values: tuple[int | None, ...]
    unit: PrintedUnit | None = None


def read_run(text: str, sizes: int) -> PrintedRun:
    """The numbers of a printed run.

    text: as a pattern prints it. sizes: how many the pattern has, by which commas, slashes and dashes between digits
    are told: a comma parts two sizes where that makes as many, and else thousands or decimals; a slash makes a fraction
    where it can, and else parts two sizes; a dash parts them where that makes as many, and nothing else does.

    Raises UnreadableError.

    >>> from grading_core.proof.figures import grains
    >>> run = read_run("36 1/2 (38\N{VULGAR FRACTION THREE QUARTERS}, \N{EN DASH}) in", 3)
    >>> run.values == (grains(36.5), grains(38.75), None), run.unit
    (True, 'inch')
    >>> read_run("21,5 (22, 23,5)", 3).values == read_run("21.5 [22: 23.5]", 3).values
    True
    """
    if usual := _usual(text):
        return PrintedRun(usual)
    # which writes a double prime as two single ones
    spaced = normalize("NFKC", _BEFORE_A_FRACTION.sub(" ", text)).replace("\u2044", "/").replace("\u2032" * 2, "''")
    unit, numbers = _unit(text, spaced), _LAST_WORDS.sub("", spaced)
    worded, of_other_length = _WORD.search(numbers) is not None, []
    for commas, between in _ways(numbers):
        pieces = _pieces(numbers, commas, between)
        if len(pieces) not in (1, sizes):
            if between != "dashes":
                of_other_length.append((pieces, commas))
        elif values := _values(pieces, commas, worded=worded):
            return PrintedRun(values, unit)
    for pieces, commas in of_other_length:
        if values := _values(pieces, commas, worded=worded):
            return PrintedRun(values, unit)
    raise UnreadableError(f"{text!r} is no number and no size run.")


def read_usual_runs(runs: Sequence[str]) -> dict[str, tuple[int, ...]]:
    """The values of those of many runs that are written as most are, `84 (88, 92.5)`, by their text.

    They need no guesses, and have no unit of their own.

    runs: as a pattern prints them. All are read in one go, as the JSON that they nearly are; where one of them is not,
    none is read.

    >>> read_usual_runs(["1 (2, 3)", "4 [5: 6]"]) == {"1 (2, 3)": read_run("1 (2, 3)", 3).values}
    True
    """
    usual = runs
    if not _is_usual("".join(runs)):
        usual = [run for run in runs if _is_usual(run)]
    lists = "],[".join([run.removesuffix(")").replace(" (", ", ") for run in usual])
    if lists.count(",") != lists.count(", ") + len(usual) - 1:
        return {}
    try:
        read = json.loads(f"[[{lists}]]")
        most = max(map(max, read))
    except ValueError:
        return {}
    if most >= 10**_DIGITS or _TOO_FINE.search(lists):
        return {}
    # of so few digits a float is near enough to be told exactly
    return {
        run: tuple([round(number * GRAINS) for number in numbers])
        if "." in run
        else tuple([number * GRAINS for number in numbers])
        for run, numbers in zip(usual, read, strict=True)
    }


def _is_usual(text: str) -> bool:
    """Whether a text has signs only that stand in most runs."""
    return text.isascii() and not text.encode().translate(None, _USUAL_SIGNS)


def _usual(text: str) -> tuple[int | None, ...] | None:
    """The values of a run as most patterns have it, which needs no guesses; None where it is another."""
    parts = text.removesuffix(")").replace(" (", ", ").split(", ")
    values = [_plain(part) for part in parts]
    told = all(value is not None or part in _DASHES for value, part in zip(values, parts, strict=True))
    return tuple(values) if told else None


def _plain(part: str) -> int | None:
    """The value of a decimal, read as most are; of what is none as `_value` has it."""
    if part.isdecimal() and len(part) <= _DIGITS:
        return int(part) * GRAINS
    whole, point, decimals = part.partition(".")
    if point and whole.isdecimal() and decimals.isdecimal() and len(whole) <= _DIGITS and len(decimals) < len(_TENS):
        return int(whole) * GRAINS + int(decimals) * (GRAINS // _TENS[len(decimals)])
    return _value(part)


def _unit(text: str, spaced: str) -> PrintedUnit | None:
    """The unit of length that the words of a text name."""
    words = {word.lower().rstrip(".") for word in _WORD.findall(spaced)}
    inches, centimetres = not words.isdisjoint(_INCHES), not words.isdisjoint(_CENTIMETRES)
    if inches and centimetres:
        raise UnreadableError(f"{text!r} has centimetres and inches; send each as a run of its own.")
    return "inch" if inches else "cm" if centimetres else None


def _ways(numbers: str) -> Iterator[tuple[Commas, Between]]:
    """What commas, slashes and dashes between digits may mean, the likeliest first."""
    thousands = _THOUSANDS.search(numbers) and not re.search(r"\d,\d", _THOUSANDS.sub("", numbers))
    commas: tuple[Commas, ...] = ("sizes", "thousands" if thousands else "decimals")
    if _ONE_DECIMAL.fullmatch(numbers):
        commas = commas[::-1]
    if "," not in numbers:
        commas = commas[:1]
    for between in ("nothing", "slashes", "dashes"):
        if between != "slashes" or "/" in numbers:
            for meaning in commas:
                yield meaning, between


def _values(pieces: Sequence[str], commas: Commas, *, worded: bool) -> tuple[int | None, ...] | None:
    """The values, None where they are no run. worded: whether there are words among them."""
    values: list[int | None] = []
    if len(pieces) > _MOST_VALUES:
        return None
    for piece in pieces:
        number = piece
        if worded:
            if any(word.lower() not in _STUCK_ON for words in _STUCK.findall(piece) for word in words if word):
                return None
            number = _WORD.sub(" ", piece).strip(" /")
        value = None
        if not _DASHES.issuperset(number):
            value = _plain(number.replace(",", "" if commas == "thousands" else "."))
            if value is None:
                return None
        values.append(value)
    # words stand in place of a number that some size has none of, and are none by themselves
    nothing_but_words = worded and values.count(None) == len(values)
    return None if nothing_but_words else tuple(values) or None


def _pieces(text: str, commas: Commas, between: Between) -> list[str]:
    """The text between brackets and signs that part sizes."""
    pieces = _PARTING[commas, between].split(text)
    return [stripped for piece in pieces if (stripped := " ".join(piece.split()))]


def _value(piece: str) -> int | None:
    found = _ONE.fullmatch(piece.replace(" / ", "/"))
    if not found:
        return None
    minus, ones, above, below, decimal = found.groups()
    sign = -1 if minus else 1
    if decimal:
        whole, _, decimals = decimal.partition(".")
        return sign * (int(whole or 0) * GRAINS + int(decimals or 0) * (GRAINS // _TENS[len(decimals)]))
    parts, one = int(above), int(below)
    if parts >= one or GRAINS % one:
        return None
    return sign * (int(ones or 0) * GRAINS + GRAINS // one * parts)
