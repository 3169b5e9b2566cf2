"""What there is to say, as ids with typed values: the sentence itself is data of a language, and the core has none.

A `Saying` is declared once, beside what says it. Called with its values it makes a `Sentence`. A value is the same for
all sizes, or a run: a tuple of one value per size, None in a size that has none, for which a dash stands in print.
"""

from __future__ import annotations

from collections.abc import Callable, Iterable, Iterator, Mapping, Sequence
from dataclasses import dataclass, replace
from types import MappingProxyType, NoneType
from typing import Any, TypeVar


@dataclass(frozen=True, slots=True)
class Kind:
    """What a value of a sentence is.

    name: by which what prints it is found. about: for whoever reads the value. group: of words, of which it is one: a
    language has the message `<group>` with an attribute for each.
    """

    name: str
    about: str
    group: str = ""


COUNT = Kind("count", "whole number")
"""A word that depends on it is chosen by the count itself where all sizes share it, and else by 2."""

COUNTS = Kind("counts", "list of whole numbers")
NUMBER = Kind("number", "number")
NUMBERS = Kind("numbers", "list of numbers")
INCHES = Kind("inches", "inches, printed with the fraction that they have")
LENGTH = Kind("length", "length, as `_cm` in centimetres and as `_inch` in inches")
CM = Kind("cm", "centimetres, to one decimal")
TEXT = Kind("text", "name as it was sent, or a size's label")
NAMES = Kind("names", "list of such names")
TOKEN = Kind("token", "word for programs, by which a language chooses its own")
SENTENCE = Kind("sentence", "part of the sentence with an id of its own")
SENTENCES = Kind("sentences", "list of such parts")


def word(group: str) -> Kind:
    """The kind of a value that stands for a word of a group.

    >>> word("section").group
    'section'
    """
    return Kind("word", f"word of the group `{group}`", group)


def words(group: str) -> Kind:
    """The kind of a value that stands for several words of a group."""
    return Kind("words", f"list of words of the group `{group}`", group)


Part = TypeVar("Part")
Value = TypeVar("Value")

SAYINGS: dict[str, Saying] = {}
"""All that can be said, by id."""


@dataclass(frozen=True, slots=True)
class Sentence:
    """Something to say.

    saying: what it is. values: by name; a run has one value per size. labels: of the sizes that it is for, None where
    it is for all. places: of these among all sizes, where its values are runs.
    """

    saying: Saying
    values: Mapping[str, Any]
    labels: tuple[str, ...] | None = None
    places: tuple[int, ...] | None = None

    @property
    def id(self) -> str:
        """By which languages and programs know it."""
        return self.saying.id

    def __hash__(self) -> int:
        """Of its id, which equal sentences have in common; values cannot be hashed."""
        return hash(self.saying.id)


class Saying:
    """A kind of sentence: its id, and the kinds of its values.

    id: the message and the attribute that languages have for it, as in "yoke.increase". values: kinds by name. Which of
    them are sentences, its parts, is looked up once: an answer is gone through for them again and again.

    >>> from grading_core.yoke import words
    >>> SAYINGS["yoke.plain"](rounds=(3, None, 4)).values["rounds"]
    (3, None, 4)
    """

    __slots__ = ("id", "parts", "values")

    def __init__(self, id: str, **values: Kind) -> None:
        assert id not in SAYINGS, f"{id} is said already."
        self.id = id
        self.values: Mapping[str, Kind] = MappingProxyType(values)
        self.parts = tuple([name for name, kind in values.items() if kind.name in ("sentence", "sentences")])
        SAYINGS[id] = self

    def __call__(self, **values: Any) -> Sentence:
        """The sentence with its values."""
        return Sentence(self, values)

    def __repr__(self) -> str:
        return f"Saying({self.id!r})"


def run_of(sizes: Iterable[Part | None], of: Callable[[Part], Value]) -> tuple[Value | None, ...]:
    """A run: a value of each size, None in a size that has nothing.

    sizes: what each has, in their order. of: gets the value.

    >>> run_of([3, None, 4], lambda stitches: 2 * stitches)
    (6, None, 8)
    """
    return tuple([of(size) if size else None for size in sizes])


def for_sizes(sentence: Sentence, labels: Sequence[str], places: Iterable[int]) -> Sentence:
    """A sentence that is for some of the sizes only, and names them; in its runs the others have no value.

    sentence: whose runs have a value of every size. labels: of all sizes. places: of the sizes that it is for.

    >>> from grading_core.yoke import words
    >>> only = for_sizes(words.PLAIN(rounds=(3, 4, 5)), ["S", "M", "L"], [0, 2])
    >>> only.labels, only.values["rounds"]
    (('S', 'L'), (3, None, 5))
    """
    only, kinds = tuple(places), sentence.saying.values
    values = {
        name: tuple([each if place in only else None for place, each in enumerate(value)])
        if is_run(kinds[name], value)
        else value
        for name, value in sentence.values.items()
    }
    return replace(sentence, values=values, labels=tuple(labels[place] for place in only), places=only)


def for_size(sentences: Iterable[Sentence], label: str) -> Iterator[Sentence]:
    """Sentences of one size among those of others, which name it.

    sentences: with runs of that one size.
    """
    for sentence in alone(sentences):
        yield replace(sentence, labels=(label,), places=None)


def alone(sentences: Iterable[Sentence]) -> Iterator[Sentence]:
    """Sentences of one size: with one value where a run would have one per size.

    sentences: with runs of that one size.
    """
    for sentence in sentences:
        kinds = sentence.saying.values
        values = {name: value[0] if is_run(kinds[name], value) else value for name, value in sentence.values.items()}
        yield replace(sentence, values=values)


def throughout(sentences: Iterable[Sentence]) -> Iterator[Sentence]:
    """Sentences, each before those that are parts of it.

    >>> from grading_core.yoke import words
    >>> step = words.STEP(rounds=1, kind="once", once=("back",), twice=(), more=4)
    >>> steps = words.ROUNDS_STEPS(first=1, last=4, steps=(step,), times=2, stitches=90)
    >>> [sentence.id for sentence in throughout([steps])]
    ['yoke.rounds_steps', 'step.increase']
    """
    for sentence in sentences:
        yield sentence
        for name in sentence.saying.parts:
            part = sentence.values[name]
            yield from throughout((part,) if isinstance(part, Sentence) else part)


def has_gap(sentence: Sentence) -> bool:
    """Whether a dash stands in it for a size that has no value, what is said of its parts not counted.

    >>> from grading_core.yoke import words
    >>> has_gap(words.PLAIN(rounds=(3, None))), has_gap(words.PLAIN(rounds=(3, 4)))
    (True, False)
    """
    for name, kind in sentence.saying.values.items():
        value, places = sentence.values[name], sentence.places
        if is_run(kind, value):
            shown = [value[place] for place in places] if places else value
            if NoneType in map(type, shown):  # not by comparing: each may be a fraction
                return True
    return False


_LISTS = frozenset(("counts", "numbers", "names", "words", "sentences"))
"""Kinds of which a tuple is one value."""


def is_run(kind: Kind, value: object) -> bool:
    """Whether a value of a sentence has one part per size, and isn't one value for all.

    >>> is_run(COUNT, (3, 4)), is_run(COUNTS, (3, 4)), is_run(COUNT, 3)
    (True, False, False)
    """
    return type(value) is tuple and kind.name not in _LISTS
