"""What a printed sentence says, found with nothing but a language's file.

Every message of a `.ftl` file becomes regular expressions, one for each way in which its variants can be chosen, with a
group for each variable. A text is read by all that fit it: more than one reading is for whoever reads it to judge.
"""

from __future__ import annotations

import re
from collections import defaultdict
from collections.abc import Iterable, Iterator, Mapping, Sequence
from dataclasses import dataclass, field
from functools import lru_cache
from itertools import product
from pathlib import Path

from fluent.syntax import FluentParser, ast

from tests.oracles.sentence_kinds import (
    AND,
    COUNT,
    GROUPED,
    LENGTH,
    NAMES,
    NESTED,
    ONLY,
    is_counted,
    is_run,
    is_sentence,
)

WORDS = Path(__file__).parents[2] / "service" / "words"


@dataclass(frozen=True)
class Reading:
    """One way to read a text.

    id: of its message. printed: by variable, as it stands in the text. chosen: by what variants are chosen by, which of
    them. nested: the readings of variables that are sentences.
    """

    id: str
    printed: Mapping[str, str]
    chosen: Mapping[str, str]
    nested: Mapping[str, tuple[Reading, ...]] = field(default_factory=dict)


@dataclass(frozen=True)
class _Form:
    """A message with its variants chosen."""

    id: str
    chosen: Mapping[str, str]
    others: Mapping[str, tuple[str, ...]]
    """By what a number chose: the variants that it passed over."""
    pattern: re.Pattern[str]
    written: str
    """The text, its variables between null characters."""


class Reader:
    """What reads the sentences of one language.

    source: its messages in Project Fluent's format. missing: what stands where a size has no number.
    """

    def __init__(self, source: str, missing: str = "\u2013") -> None:
        self.messages: dict[str, ast.Pattern] = {}
        for entry in FluentParser().parse(source).body:
            assert not isinstance(entry, ast.Junk), entry.content
            if isinstance(entry, ast.Message):
                self.messages |= {f"{entry.id.name}.{each.id.name}": each.value for each in entry.attributes}
        count, length = (rf"(?:{figure}|{re.escape(missing)})" for figure in (COUNT, LENGTH))
        self._count, self._length = (rf"{figure}(?: \({figure}(?:, {figure})*\))?" for figure in (count, length))
        self.missing = missing
        self.words = {
            group: {self._plain(id): id.partition(".")[2] for id in self.messages if id.startswith(f"{group}.")}
            for group in set(GROUPED.values())
        }
        self.ids = [id for id in self.messages if is_sentence(id)]
        self._forms: dict[str, list[_Form]] = defaultdict(list)
        for id in self.ids:
            for form in self._made(id):
                start = form.written.partition("\x00")[0]
                self._forms[start.partition(" ")[0] if " " in start or start == form.written else ""].append(form)
        self._parts = {
            group: [form for id in self.messages if id.startswith(f"{group}.") for form in self._made(id)]
            for groups in NESTED.values()
            for group in groups
        }
        self._only = [form.pattern for form in self._made(ONLY)]
        self.read = lru_cache(maxsize=50_000)(self._read)

    def _read(self, text: str) -> tuple[Reading, ...]:
        """All readings of a sentence; none where it isn't one of this language."""
        forms = self._forms.get(text.partition(" ")[0], []) + self._forms.get("", [])
        return tuple(reading for form in forms for reading in self._readings(form, text))

    def for_sizes(self, text: str, labels: Sequence[str]) -> tuple[tuple[str, ...] | None, str]:
        """The sizes that a sentence names as those that it is for, None for all, and what it says to them.

        labels: of all sizes.
        """
        one = "|".join(re.escape(label) for label in sorted(labels, key=len, reverse=True))
        for pattern in self._only:
            found = pattern.fullmatch(text)
            if found and re.fullmatch(rf"(?:{one})(?:{AND}(?:{one}))*", found["sizes"]):
                return tuple(re.findall(one, found["sizes"])), found["sentence"]
        return None, text

    def figures(self, printed: str) -> list[str | None]:
        """The figures of a printed run, None for a dash.

        >>> reader("en-US").figures("8 (9, \u2013)")
        ['8', '9', None]
        """
        first, _, others = printed.partition(" (")
        found = [first, *others.removesuffix(")").split(", ")] if others else [first]
        return [None if figure == self.missing else figure for figure in found]

    def listed(self, name: str, printed: str) -> tuple[str, ...]:
        """The members of a list: the names of words, or numbers."""
        if name not in GROUPED:
            return tuple(re.findall(COUNT, printed))
        words = self.words[GROUPED[name]]
        return tuple(words[word] for word in re.findall(_any_of(words), printed))

    def unlike(self) -> Iterator[tuple[str, str, str]]:
        """Messages of which two variants, chosen by a word for programs, have one text: the id and the variants."""
        for id in self.ids:
            seen: dict[str, str] = {}
            for form in self._made(id):
                tokens = str({name: key for name, key in form.chosen.items() if not name.endswith("_number")})
                before = seen.setdefault(form.pattern.pattern, tokens)
                if before != tokens:
                    yield id, before, tokens

    def examples(self) -> Iterator[tuple[str, str]]:
        """A text of every message with every choice of its variants, and its id."""
        for id in self.ids:
            for form in self._made(id):
                yield re.sub(r"\x00(\w+)\x00", lambda found, form=form: self._example(form, found[1]), form.written), id

    def _example(self, form: _Form, name: str) -> str:
        if name in NESTED:
            inner = next(part for group in NESTED[name] for part in self._parts[group])
            return re.sub(r"\x00(\w+)\x00", lambda found: self._example(inner, found[1]), inner.written)
        if name in GROUPED:
            return next(iter(self.words[GROUPED[name]]))
        if name in NAMES or not is_counted(form.id):
            return "anything"
        key = form.chosen.get(f"{name}_number", "other")
        if not is_run(form.id, name):
            return "3" if key == "one" else "3, 5"
        return key if key.isdigit() else "1" if key == "one" else "7"

    # how messages become regular expressions

    def _plain(self, id: str) -> str:
        (form,) = self._expanded(self.messages[id])
        return form[0]

    def _made(self, id: str) -> Iterator[_Form]:
        for written, chosen, others in self._expanded(self.messages[id]):
            seen: set[str] = set()

            def group(found: re.Match[str], seen: set[str] = seen) -> str:
                name = found[1]
                if name in seen:
                    return f"(?P={name})"
                seen.add(name)
                return f"(?P<{name}>{self._kind(id, name)})"

            # what is no variable stands between marks of them as it is
            pattern = re.sub(r"\x00(\w+)\x00", group, _escaped(written))
            yield _Form(id, chosen, others, re.compile(pattern), written)

    def _kind(self, id: str, name: str) -> str:
        if name in NESTED or name in NAMES or not (is_counted(id) or is_run(id, name)):
            return r".+?"
        if name in GROUPED:
            word = _any_of(self.words[GROUPED[name]])
            return rf"(?:{word})(?:{AND}(?:{word}))*"
        if not is_run(id, name):
            return rf"{COUNT}(?:{AND}{COUNT})*"
        return self._length if name.endswith(("_cm", "_inch")) else self._count

    def _expanded(self, pattern: ast.Pattern) -> list[tuple[str, dict[str, str], dict[str, tuple[str, ...]]]]:
        """The texts of a pattern, variables between null characters, by what is chosen in it."""
        made = []
        for pieces in product(*(self._element(element) for element in pattern.elements)):
            chosen: dict[str, str] = {}
            others: dict[str, tuple[str, ...]] = {}
            fits = True
            for _, choices, passed in pieces:
                fits = fits and all(chosen.get(name, key) == key for name, key in choices.items())
                chosen |= choices
                others |= passed
            if fits:
                made.append(("".join(text for text, _, _ in pieces), chosen, others))
        return made

    def _element(self, element: ast.SyntaxNode) -> list[tuple[str, dict[str, str], dict[str, tuple[str, ...]]]]:
        match element:
            case ast.TextElement():
                return [(element.value.replace("\n", " "), {}, {})]
            case ast.Placeable():
                return self._element(element.expression)
            case ast.StringLiteral():
                return [(element.parse()["value"], {}, {})]
            case ast.VariableReference():
                return [(f"\x00{element.id.name}\x00", {}, {})]
            case ast.MessageReference():
                return self._expanded(self.messages[f"{element.id.name}.{element.attribute.name}"])
            case ast.SelectExpression():
                return self._variants(element)
        raise TypeError(f"{type(element).__name__} is not known to this reader")

    def _variants(self, select: ast.SelectExpression) -> list[tuple[str, dict[str, str], dict[str, tuple[str, ...]]]]:
        name = select.selector.id.name
        keys = [str(getattr(variant.key, "name", None) or variant.key.value) for variant in select.variants]
        made = []
        for key, variant in zip(keys, select.variants, strict=True):
            passed = tuple(other for other in keys if other != key)
            for text, chosen, others in self._expanded(variant.value):
                if chosen.get(name, key) == key:
                    made.append((text, {name: key} | chosen, {name: passed} | others))
        return made

    # how a text is read by them

    def _readings(self, form: _Form, text: str) -> Iterator[Reading]:
        found = form.pattern.fullmatch(text)
        if not found:
            return
        printed = found.groupdict()
        if not all(self._agrees(name, key, form, printed) for name, key in form.chosen.items()):
            return
        inner = [(name, [*self.split(printed[name], NESTED[name])]) for name in printed if name in NESTED]
        for parts in product(*(ways for _, ways in inner)):
            nested = {name: part for (name, _), part in zip(inner, parts, strict=True)}
            yield Reading(form.id, printed, form.chosen, nested)

    def _agrees(self, name: str, key: str, form: _Form, printed: Mapping[str, str]) -> bool:
        """Whether a variant is the one for the number that is printed."""
        of = name.removesuffix("_number")
        if of == name or of not in printed or of in NESTED or not is_counted(form.id):
            return True
        listed = not is_run(form.id, of)
        known = {str(len(self.listed(of, printed[of])))} if listed else {*self.figures(printed[of])}
        number = known.pop() if len(known) == 1 else "2"
        fitting = [each for each in (key, *form.others[name]) if each == number]
        fitting += [each for each in (key, *form.others[name]) if each == "one" and number == "1"]
        return key == (fitting[0] if fitting else "other")

    def split(self, text: str, groups: Iterable[str]) -> Iterator[tuple[Reading, ...]]:
        """All ways to read a text as a list of sentences of some groups."""
        forms = [form for group in groups for form in self._parts[group]]
        ends = [(found.start(), found.end()) for found in re.finditer(AND, text)] + [(len(text), len(text))]
        ways: dict[int, list[tuple[Reading, ...]]] = {0: [()]}
        begins = [0, *(end for _, end in ends[:-1])]
        for begin in begins:
            before = ways.get(begin)
            if not before:
                continue
            # a step has no more than six separators of its own
            for stop, next_begin in [each for each in ends if each[0] > begin][:7]:
                readings = [reading for form in forms for reading in self._readings(form, text[begin:stop])]
                place = -1 if stop == len(text) else next_begin
                ways.setdefault(place, []).extend((*way, reading) for way in before[:4] for reading in readings)
        yield from ways.get(-1, [])


@lru_cache(maxsize=40)
def reader(tag: str, missing: str = "\u2013") -> Reader:
    """The reader of a language, by its tag."""
    return Reader((WORDS / f"{tag}.ftl").read_text(encoding="utf-8"), missing)


def _any_of(words: Iterable[str]) -> str:
    return "|".join(re.escape(word) for word in sorted(words, key=len, reverse=True))


def _escaped(written: str) -> str:
    """Text as a regular expression, but for the marks of variables."""
    pieces = re.split(r"(\x00\w+\x00)", written)
    return "".join(piece if piece.startswith("\x00") else re.escape(piece) for piece in pieces)
