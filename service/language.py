"""What the core has to say, in the words of a language: each language is one file in Project Fluent's format.

A sentence's id is a message and one of its attributes, `yoke.increase`. Its values are given as printed text: `$times`
as a size run, and of a count `$times_number` beside it, on which a word's number may depend: the count itself where all
sizes share it, and else 2. A length is given as `$length_cm` and `$length_inch`. Lines of a message are joined.
"""

from __future__ import annotations

from collections.abc import Callable, Iterator, Mapping, Sequence
from contextlib import contextmanager
from contextvars import ContextVar
from functools import cache, cached_property, lru_cache
from pathlib import Path
from types import MappingProxyType
from typing import Any

from babel import Locale
from babel.lists import format_list
from babel.numbers import get_decimal_symbol
from fluent_compiler.compiler import PLURAL_FORM_FOR_NUMBER_NAME, compile_messages
from fluent_compiler.resource import FtlResource
from fluent_compiler.types import fluent_number

from grading_core.fraction import Fraction
from grading_core.printing import printing
from grading_core.sentences import Kind, Sentence, is_run
from grading_core.wording import size_run
from service.alike import each_once

USUAL_LANGUAGE = "en-US"
"""For whoever asks for none that there is."""

ENGLISH = "en"
"""What published tables and problem documents are in, whatever is asked."""

_WORDS = Path(__file__).parent / "words"
_TENTH = Fraction(1, 10)
_ONLY = "sizes.only"
"""The message round a sentence that is for some sizes only."""

_LISTS_KEPT = 512
"""Lists of words that a language remembers: patterns have few, and what requests name must not pile up."""

_NUMBERS_KEPT = 1024
"""Numbers that are remembered as messages take them, and their plural forms."""

Arguments = dict[str, str | int]


class Language:
    """A language that answers can be written in.

    tag: its name (RFC 5646). source: its messages in Project Fluent's format, which are compiled when the first is
    asked for: that takes most of a second.
    """

    def __init__(self, tag: str, source: str) -> None:
        self.tag = tag
        self.source = source
        self._locale = Locale.parse(tag, sep="-")
        self.decimal_mark = get_decimal_symbol(self._locale)
        self.listed = lru_cache(_LISTS_KEPT)(self._listed)
        self._fixed = cache(self._message)

    def text(self, sentence: Sentence) -> str:
        """A sentence as it is printed.

        >>> from grading_core.yoke import words
        >>> LANGUAGES["en-US"].text(words.PLAIN(rounds=(3, 4)))
        'Work 3 (4) rounds without increases.'
        """
        arguments: Arguments = {}
        values, places = sentence.values, sentence.places
        for name, kind in sentence.saying.values.items():
            value = values[name]
            if places is not None and is_run(kind, value):
                value = tuple([value[place] for place in places])
            _ARGUMENTS[kind.name](self, arguments, name, value, kind)
        text = self.message(sentence.saying.id, arguments or None)
        if sentence.labels is None:
            return text
        return self.message(
            _ONLY, {"sizes": self.listed(sentence.labels), "sizes_number": len(sentence.labels), "sentence": text}
        )

    def message(self, id: str, arguments: Arguments | None = None) -> str:
        """A message by its id.

        arguments: printed. Raises LookupError where the language does not have it, or more is to be known for it.
        """
        return self._fixed(id) if arguments is None else self._message(id, arguments)

    def _message(self, id: str, arguments: Arguments | None = None) -> str:
        wrong: list[Exception] = []
        text = self._messages[id](arguments, wrong)
        if wrong:
            raise LookupError(f"{id} in {self.tag}: {wrong}")
        return text.replace("\n", " ")

    def compile(self) -> None:
        """Compile the messages now, where a request should not wait for it."""
        self._messages  # noqa: B018

    @cached_property
    def _messages(self) -> Mapping[str, Callable[..., str]]:
        """What prints each message. Raises ValueError where the source can't be compiled."""
        compiled = compile_messages(self.tag, [FtlResource.from_string(self.source)], use_isolating=False)
        if compiled.errors:
            raise ValueError(f"The words of {self.tag} can't be compiled: {compiled.errors}")
        functions: Mapping[str, Callable[..., str]] = compiled.message_functions
        # The compiled messages find their library's functions in globals of their own. The one that tells a number's
        # plural form reads CLDR's rule anew each time: of an answer full of sentences a tenth.
        own = next(iter(functions.values())).__globals__
        own[PLURAL_FORM_FOR_NUMBER_NAME] = lru_cache(_NUMBERS_KEPT)(own[PLURAL_FORM_FOR_NUMBER_NAME])
        return functions

    def _listed(self, words: tuple[str, ...]) -> str:
        return format_list(words, locale=self._locale) if words else ""


def languages(folder: Path = _WORDS) -> Mapping[str, Language]:
    """All languages by their tags.

    folder: that has a file for each.
    """
    files = sorted(folder.glob("*.ftl"))
    return MappingProxyType({file.stem: Language(file.stem, file.read_text(encoding="utf-8")) for file in files})


LANGUAGES = languages()

_SPOKEN: ContextVar[Language] = ContextVar("language", default=LANGUAGES[USUAL_LANGUAGE])


@contextmanager
def spoken(language: Language) -> Iterator[None]:
    """Write sentences in a language while this lasts."""
    token = _SPOKEN.set(language)
    try:
        yield
    finally:
        _SPOKEN.reset(token)


def text(sentence: Sentence) -> str:
    """A sentence in the language that is spoken."""
    return _SPOKEN.get().text(sentence)


def language() -> Language:
    """The language that is spoken."""
    return _SPOKEN.get()


def lookup(wanted: Sequence[str], offered: Mapping[str, Language] = LANGUAGES) -> Language:
    """The language for whoever prefers some (RFC 4647, section 3.4): each range is shortened until it fits.

    wanted: language ranges, the most wanted first. offered: by tag; the usual one where none fits. A language of a
    country stands for the language itself where that isn't offered: who wants `en` gets the usual English.

    >>> lookup(["fr", "de-AT"]).tag, lookup(["de-Latn-x-old"]).tag, lookup(["*"]).tag
    ('de', 'de', 'en-US')
    >>> lookup(["en-AU", "de"]).tag, lookup(["EN-gb"]).tag
    ('en-US', 'en-GB')
    """
    usual = offered[USUAL_LANGUAGE]
    by_tag: dict[str, Language] = {}
    for each in (usual, *offered.values()):
        for tag in _shortened(each.tag):
            by_tag.setdefault(tag, each)
    by_tag |= {tag.lower(): each for tag, each in offered.items()}
    longest = max(map(len, by_tag))
    for sought in wanted:
        # what is longer than every tag is none of them; cut, it is still longer
        for tag in _shortened(sought[: longest + 1]):
            if tag in by_tag:
                return by_tag[tag]
    return usual


def _shortened(tag: str) -> Iterator[str]:
    """A tag and what is left of it without its last subtags; with what is behind a single character that goes, too."""
    subtags = tag.lower().split("-")
    while subtags:
        yield "-".join(subtags)
        subtags.pop()
        if subtags and len(subtags[-1]) == 1:
            subtags.pop()


def _run(values: Sequence[Any], write: Callable[[Any], str]) -> str:
    return size_run([None if value is None else write(value) for value in values])


def _printed(value: Any, write: Callable[[Any], str]) -> str:
    """One value, or a run of them."""
    if type(value) is tuple:
        return _run(value, write)
    return printing().missing if value is None else write(value)


_told_number = lru_cache(_NUMBERS_KEPT)(fluent_number)
"""A number as messages take it: they would make it anew of every count."""


def _count(_: Language, arguments: Arguments, name: str, value: Any, __: Kind) -> None:
    run = value if type(value) is tuple else (value,)
    arguments[name] = size_run(run)
    # a size that has none is told by a dash, which words chosen by a number may not have
    number = run[0] if len(set(run)) == 1 else None
    arguments[f"{name}_number"] = _told_number(2 if number is None else number)


def _number(_: Language, arguments: Arguments, name: str, value: Any, __: Kind) -> None:
    arguments[name] = _printed(value, printing().decimal)


def _inches(_: Language, arguments: Arguments, name: str, value: Any, __: Kind) -> None:
    arguments[name] = _printed(value, printing().fractional)


def _length(_: Language, arguments: Arguments, name: str, value: Any, __: Kind) -> None:
    printed = printing()
    arguments[f"{name}_cm"] = _printed(value, printed.cm)
    arguments[f"{name}_inch"] = _printed(value, printed.inches)


def _cm(_: Language, arguments: Arguments, name: str, value: Any, __: Kind) -> None:
    printed = printing()
    arguments[name] = _printed(value, lambda length_cm: printed.decimal(length_cm, _TENTH))


def _text(_: Language, arguments: Arguments, name: str, value: Any, __: Kind) -> None:
    arguments[name] = _printed(value, str)
    arguments[f"{name}_number"] = len(value) if type(value) is tuple else 1


def _names(language: Language, arguments: Arguments, name: str, value: Any, _: Kind) -> None:
    arguments[name], arguments[f"{name}_number"] = language.listed(tuple(value)), len(value)


def _counts(language: Language, arguments: Arguments, name: str, value: Any, _: Kind) -> None:
    arguments[name], arguments[f"{name}_number"] = language.listed(tuple(map(str, value))), len(value)


def _numbers(language: Language, arguments: Arguments, name: str, value: Any, _: Kind) -> None:
    arguments[name] = language.listed(tuple(map(printing().decimal, value)))
    arguments[f"{name}_number"] = len(value)


def _token(_: Language, arguments: Arguments, name: str, value: Any, __: Kind) -> None:
    arguments[name] = str(value)


def _word(language: Language, arguments: Arguments, name: str, value: Any, kind: Kind) -> None:
    arguments[name] = language.message(f"{kind.group}.{value}")


def _words(language: Language, arguments: Arguments, name: str, value: Any, kind: Kind) -> None:
    words = tuple([language.message(f"{kind.group}.{each}") for each in value])
    arguments[name], arguments[f"{name}_number"] = language.listed(words), len(words)


def _sentence(language: Language, arguments: Arguments, name: str, value: Any, _: Kind) -> None:
    arguments[name] = language.text(value)


def _sentences(language: Language, arguments: Arguments, name: str, value: Any, _: Kind) -> None:
    arguments[name] = language.listed(tuple(each_once(language.text, value)))
    arguments[f"{name}_number"] = len(value)


_ARGUMENTS: Mapping[str, Callable[[Language, Arguments, str, Any, Kind], None]] = {
    "count": _count,
    "counts": _counts,
    "number": _number,
    "numbers": _numbers,
    "inches": _inches,
    "length": _length,
    "cm": _cm,
    "text": _text,
    "names": _names,
    "token": _token,
    "word": _word,
    "words": _words,
    "sentence": _sentence,
    "sentences": _sentences,
}
"""What gives a value of each kind to a message."""
