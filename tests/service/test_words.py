"""The words of every language, against what the code has to say. Project Fluent, syntax 1.0; CLDR (plurals)."""

import re
from collections import Counter
from collections.abc import Iterator
from fractions import Fraction
from itertools import islice, product
from typing import Any

import pytest
from fluent.syntax import ast

import service.app  # noqa: F401 (declares all that can be said)
from grading_core.printing import printed_as
from grading_core.sentences import SAYINGS, Kind, Saying
from service.language import LANGUAGES as SPOKEN
from service.language import spoken
from service.printing import PrintSettings
from service.representations.workbook import WORDS as OF_THE_WORKBOOK
from tests.service import fluent_files
from tests.service.fluent_files import Words, members, nodes, referred

ENGLISH, *_ = (words for words in fluent_files.LANGUAGES if words.tag == "en-US")
EACH = pytest.mark.parametrize("words", fluent_files.LANGUAGES, ids=lambda words: words.tag)

ROUND_OTHERS = {"sizes.only"}
"""What the service itself puts round a sentence."""

COUNTED = {"count", "counts", "text", "numbers", "names", "words", "sentences"}
"""Kinds of values beside which stands their number."""

OF_ONE_SIZE = ("yoke.rounds_", "shaping.")
"""What ids begin with of which no value is a run."""

PLURALS = {"zero", "one", "two", "few", "many", "other"}
"""The categories of CLDR."""

MOST_TRIED = 60
"""Of the ways to say the same."""


def known_as(name: str, kind: Kind) -> set[str]:
    """The variables by which a message may know a value."""
    if kind.name == "length":
        return {f"{name}_cm", f"{name}_inch"}
    return {name, f"{name}_number"} if kind.name in COUNTED else {name}


def groups() -> set[str]:
    return {kind.group for saying in SAYINGS.values() for kind in saying.values.values() if kind.group}


@EACH
def test_a_file_is_read_to_its_end(words: Words) -> None:
    """What the parser doesn't understand it passes over as junk."""
    assert [node for node in words.tree.body if isinstance(node, ast.Junk)] == []


@EACH
def test_no_id_is_there_twice(words: Words) -> None:
    """The later would silently stand for both."""
    counted = Counter(id for id, _ in members(words.tree))
    messages = Counter(node.id.name for node in words.tree.body if isinstance(node, ast.Message))
    assert [id for id, times in (counted + messages).items() if times > 1] == []


@EACH
def test_no_line_is_long(words: Words) -> None:
    assert [line for line in words.text.splitlines() if len(line) > 120] == []


@EACH
def test_there_are_words_for_all_that_can_be_said(words: Words) -> None:
    assert len(SAYINGS) > 50
    assert SAYINGS.keys() - words.patterns.keys() == set()


@EACH
def test_no_words_are_there_for_nothing(words: Words) -> None:
    of_groups = {id for id in words.patterns if id.partition(".")[0] in groups()}
    referred_to = {
        referred(node)
        for pattern in words.patterns.values()
        for node in nodes(pattern)
        if isinstance(node, ast.MessageReference)
    }
    assert words.patterns.keys() - SAYINGS.keys() - of_groups - referred_to == ROUND_OTHERS


@EACH
def test_a_group_has_the_same_words_in_every_language(words: Words) -> None:
    assert {name: words.group(name) for name in groups()} == {name: ENGLISH.group(name) for name in groups()}


@EACH
def test_a_sentence_has_every_value_and_no_other(words: Words) -> None:
    """That of a token may be left out: a language needn't have two words where another has."""
    wrong = {}
    for id, saying in SAYINGS.items():
        used = words.variables(id)
        strange = used - set().union(*(known_as(*each) for each in saying.values.items()))
        missing = {
            name
            for name, kind in saying.values.items()
            if kind.name != "token"
            and not (known_as(name, kind) <= used if kind.name == "length" else known_as(name, kind) & used)
        }
        if strange or missing:
            wrong[id] = (strange, missing)
    assert wrong == {}


def test_every_token_is_chosen_by_in_some_language() -> None:
    unused = [
        (id, name)
        for id, saying in SAYINGS.items()
        for name, kind in saying.values.items()
        if kind.name == "token" and not any(name in words.variables(id) for words in fluent_files.LANGUAGES)
    ]
    assert unused == []


@EACH
def test_a_plural_is_chosen_by_a_number_and_a_token_by_its_names(words: Words) -> None:
    """A printed run is text, of which no language knows the plural."""
    wrong = []
    for id, saying in SAYINGS.items():
        tokens = {name for name, kind in saying.values.items() if kind.name == "token"}
        for chosen_by, keys in words.choices(id):
            plural = all(key in PLURALS or key.isdecimal() for key in keys)
            if not (chosen_by.endswith("_number") if plural else chosen_by in tokens):
                wrong.append((id, chosen_by, keys))
    assert wrong == []


@EACH
def test_a_token_is_chosen_from_the_same_names_in_every_language(words: Words) -> None:
    wrong = []
    for id, saying in SAYINGS.items():
        for name, kind in saying.values.items():
            here, there = (tokens(each, id, name) for each in (words, ENGLISH))
            if kind.name == "token" and here and there and here != there:
                wrong.append((id, name, here ^ there))
    assert wrong == []


def tokens(words: Words, id: str, name: str) -> set[str]:
    """What a message chooses a token from."""
    return {key for chosen_by, keys in words.choices(id) if chosen_by == name for key in keys}


@EACH
def test_a_number_that_stands_in_words_is_that_of_all_sizes(words: Words) -> None:
    """Where sizes differ the plural of 2 is chosen: words of their own for 2 would be said of all of them."""
    keys = {id: [each for _, chosen in words.choices(id) for each in chosen] for id in SAYINGS}
    told_of_all = [id for id, chosen in keys.items() if {"2", "two"} & set(chosen)]
    assert [id for id in told_of_all if not id.startswith(OF_ONE_SIZE)] == []


@EACH
@pytest.mark.parametrize("saying", SAYINGS.values(), ids=lambda saying: saying.id)
def test_a_sentence_is_printed_without_a_gap(words: Words, saying: Saying) -> None:
    language = SPOKEN[words.tag]
    with spoken(language), printed_as(PrintSettings().printed_in(language)):
        for values in ways_to_say(words, saying):
            text = language.text(saying(**values))
            assert text == text.strip() != ""
            assert not re.search(r"  | [.,;:)]|\(\s|[{}$]|\.\.", text), text


def ways_to_say(words: Words, saying: Saying) -> Iterator[dict[str, Any]]:
    """Values of every kind, and every token."""
    samples = [SAMPLES.get(kind.name) or of_words(words, saying, name, kind) for name, kind in saying.values.items()]
    for values in islice(product(*samples), MOST_TRIED):
        yield dict(zip(saying.values, values, strict=True))
    for place in range(3):
        yield {name: each[place % len(each)] for name, each in zip(saying.values, samples, strict=True)}


def of_words(words: Words, saying: Saying, name: str, kind: Kind) -> list[Any]:
    if kind.name == "token":
        return sorted(tokens(words, saying.id, name)) or ["any"]
    group = sorted(words.group(kind.group))
    return group if kind.name == "word" else [tuple(group[:1]), tuple(group)]


PART = SAYINGS["workbook.cm"]
"""A sentence that stands in another."""

SAMPLES: dict[str, list[Any]] = {
    "count": [1, 2, (3, None, 14), 0],
    "counts": [(1,), (2, 4, 6)],
    "number": [Fraction(45, 2), (Fraction(1, 3), None)],
    "numbers": [(Fraction(45, 2),), (Fraction(1, 3), Fraction(2))],
    "length": [Fraction(20), (Fraction(127, 10), None, Fraction(203, 10))],
    "inches": [Fraction(145, 4), (Fraction(363, 10), None)],
    "cm": [Fraction(45, 2), (Fraction(1, 3), None)],
    "text": ["6 months", "S"],
    "names": [("M",), ("S", "M", "6 months")],
    "sentence": [PART()],
    "sentences": [(PART(),), (PART(), PART(), PART())],
}


@pytest.mark.parametrize("tag", SPOKEN)
def test_names_of_sheets_are_such_that_a_workbook_may_have(tag: str) -> None:
    """ECMA-376 part 1, 18.2.19, and what programs ask beyond it."""
    names = [SPOKEN[tag].text(OF_THE_WORKBOOK[name]()) for name in SHEETS]
    assert len({name.casefold() for name in names}) == len(SHEETS)
    assert [name for name in names if len(name) > 31 or re.search(r"[\[\]:*?/\\]|^'|'$", name)] == []


SHEETS = ("table", "sizes", "instructions", "warnings", "sources")
