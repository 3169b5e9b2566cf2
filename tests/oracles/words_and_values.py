"""Whether a sentence's text says what its values do: every number, word and part of it, by name."""

from __future__ import annotations

import re
from collections.abc import Collection, Iterator, Mapping, Sequence
from dataclasses import dataclass
from fractions import Fraction
from typing import Any
from unicodedata import normalize

from tests.oracles.sentence_kinds import GROUPED, NAMES, NESTED, is_counted, is_run
from tests.oracles.sentence_reader import Reader, Reading

Json = Mapping[str, Any]


UNSAID: Mapping[str, frozenset[tuple[str, str]]] = {
    "seam": frozenset({("seams", "none")}),
    "first": frozenset({("rounds_number", "one")}),
    "colour": frozenset({("colours", "one")}),
    "name": frozenset({("strands", "one")}),
    "strand": frozenset({("strands", "one"), ("strands", "named")}),
    "yards": frozenset(),
    "thinnest_us": frozenset(),
    "thickest_us": frozenset(),
}
"""Values that a text may leave out, and what of this is then chosen; nothing where some languages never have them."""


@dataclass(frozen=True)
class Steps:
    """To what lengths are rounded in print."""

    cm: Fraction = Fraction(1, 2)
    inch: Fraction = Fraction(1, 4)


def disagreements(
    reader: Reader, sentence: Json, labels: Sequence[str], steps: Steps, impossible: Collection[str] = ()
) -> Iterator[str]:
    """What a sentence's text and values don't agree on.

    labels: of all sizes of its runs. impossible: of those that nobody knits.
    """
    only, rest = reader.for_sizes(sentence["text"], labels)
    named = sentence.get("sizes")
    if list(only or ()) != list(named or ()):
        yield f"sizes {named}, in the text {only}"
    readings = [reading for reading in reader.read(rest) if reading.id == sentence["id"]]
    places = [labels.index(label) for label in named] if named else list(range(len(labels)))
    if len(readings) > 1:
        # a name may be any text, as that of a strand called "strand 2"
        readings = [reading for reading in readings if not [*_chosen(reading, sentence["values"], places)]]
    if len(readings) != 1:
        yield f"{len(readings)} readings as {sentence['id']}"
        return
    yield from _compared(reader, readings[0], sentence["values"], places, steps)
    without = {labels[place] for place in _without(reader, sentence, places)} - {*impossible}
    for label in sorted(without - {labels[place] for place in _dashed(reader, readings[0], places)}):
        yield f"nothing tells {label} that it has no such number"


def _without(reader: Reader, sentence: Json, places: Sequence[int]) -> Iterator[int]:
    """The places at which a run has no value."""
    for name, value in sentence["values"].items():
        if isinstance(value, list) and len(value) > 1 and is_run(sentence["id"], name):
            yield from (place for place in places if value[place] is None)


def _dashed(reader: Reader, reading: Reading, places: Sequence[int]) -> Iterator[int]:
    """The places of the sizes that read a dash."""
    for name, printed in reading.printed.items():
        if is_run(reading.id, name):
            run = reader.figures(printed)
            yield from (place for at, place in enumerate(places) if run[at if len(run) > 1 else 0] is None)


def _compared(reader: Reader, reading: Reading, values: Json, places: Sequence[int], steps: Steps) -> Iterator[str]:
    for name, printed in reading.printed.items():
        if name not in values:
            yield f"{name} is not among the values"
        elif name in NESTED:
            told = values[name] if isinstance(values[name], list) else [values[name]]
            parts = reading.nested[name]
            if [each.id for each in parts] != [each["id"] for each in told]:
                yield f"{name}: {[each.id for each in parts]} printed, {[each['id'] for each in told]} told"
                continue
            for part, value in zip(parts, told, strict=True):
                yield from _compared(reader, part, value["values"], places, steps)
        elif name in NAMES or (not is_counted(reading.id) and not is_run(reading.id, name)):
            unprinted = [each for each in _numbers(values[name]) if each not in _numbers(printed)]
            if unprinted:
                yield f"{name}: {printed} printed, {unprinted} of {values[name]} told"
        elif name in GROUPED or not is_run(reading.id, name):
            said = [*reader.listed(name, printed)]
            if said != [*map(str, values[name])]:
                yield f"{name}: {said} printed, {values[name]} told"
        elif not _is_run_of(reader.figures(printed), _at(values[name], places), _step(name, steps)):
            yield f"{name}: {printed} printed, {values[name]} told"
    yield from _chosen(reading, values, places)
    hidden = {name for name, value in values.items() if name not in reading.printed and value not in ([], "", None)}
    for name in sorted(hidden - {chosen.removesuffix("_number") for chosen in reading.chosen}):
        chosen = UNSAID.get(name)
        if not name.endswith("_inch") and (chosen is None or (chosen and chosen.isdisjoint(reading.chosen.items()))):
            yield f"{name} is {values[name]}, and no text says so"


def _numbers(value: Any) -> list[Fraction]:
    """The numbers of a value, or of a text that may have other words beside them."""
    if isinstance(value, dict):
        return _numbers(value["text"])
    if isinstance(value, list):
        return [number for each in value for number in _numbers(each)]
    if isinstance(value, str):
        return [Fraction(found.replace(",", ".")) for found in re.findall(r"[0-9]+(?:[.,][0-9]+)?", value)]
    return [] if value is None else [Fraction(str(value))]


def _chosen(reading: Reading, values: Json, places: Sequence[int]) -> Iterator[str]:
    """The variants that the values would not have chosen."""
    for name, key in reading.chosen.items():
        of = name.removesuffix("_number")
        if of not in values:
            yield f"{of} chose {key} and is not among the values"
        elif of == name:
            if isinstance(values[of], str) and values[of] != key and key not in ("other",):
                yield f"{of} is {values[of]}, and {key} chosen"
        elif of not in reading.printed:
            known = set(_at(values[of], places))
            number = known.pop() if len(known) == 1 else 2
            if key != "other" and {"one": 1}.get(key, key) not in (number, str(number)):
                yield f"{of} is {values[of]}, and {key} chosen"


def _at(value: Any, places: Sequence[int]) -> list[Any]:
    if not isinstance(value, list):
        return [value]
    return [value[place] for place in places] if len(value) > 1 else value


def _is_run_of(figures: Sequence[str | None], values: Sequence[Any], step: Fraction | None) -> bool:
    """Whether a run has the figures of values: once where all agree, else each its own."""
    if len(figures) not in (1, len(values)) or (len(figures) == 1 and len({value is None for value in values}) > 1):
        return False
    if len(figures) == 1 and step is None and len(set(values)) > 1:
        return False
    printed = [figures[place if len(figures) > 1 else 0] for place in range(len(values))]
    return all(_same(figure, value, step) for figure, value in zip(printed, values, strict=True))


def _same(figure: str | None, value: Any, step: Fraction | None) -> bool:
    if figure is None or value is None:
        return figure is None and value is None
    if step is None:
        return figure == str(value)
    # half a step, and what the value's last place may hide
    return abs(number(figure) - Fraction(str(value))) <= step / 2 + Fraction(5, 1000)


def number(figure: str) -> Fraction:
    """A printed number: a decimal, or a whole with a fraction.

    >>> number("15 3/4"), number("8,5"), number("2½")
    (Fraction(63, 4), Fraction(17, 2), Fraction(5, 2))
    """
    sign, figure = (-1, figure[1:]) if figure.startswith("-") else (1, figure)
    spaced = re.sub(r"(?<=[0-9])(?=[½¼¾⅛⅜⅝⅞⁰¹²³⁴-⁹])", " ", figure)
    plain = normalize("NFKC", spaced).replace("\u2044", "/").replace(",", ".")
    return sign * sum((Fraction(part) for part in plain.split()), Fraction(0))


def _step(name: str, steps: Steps) -> Fraction | None:
    return steps.cm if name.endswith("_cm") else steps.inch if name.endswith("_inch") else None
