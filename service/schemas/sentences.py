"""Sentences in an answer: text in the language asked, and beside it what it says as values."""

from __future__ import annotations

from collections.abc import Callable, Mapping
from functools import cached_property
from typing import Any

from grading_core.sentences import SAYINGS, Saying, Sentence
from grading_core.units import to_answer, to_places
from service.alike import each_once
from service.language import text
from service.lengths import LengthWriter
from service.schemas.base import StrictSchema
from service.schemas.containers import Items, Values
from service.schemas.fields import Choice, Prose
from service.schemas.writing import Write

NOT_INSTRUCTIONS = ("warning", "reason", "title", "picture", "workbook", "why", "cause", "advice", "proof")
"""What ids begin with whose sentences an answer has as text alone."""


def sentence_ids() -> list[Saying]:
    """What the sentences of instructions can be, by id."""
    return [saying for id, saying in sorted(SAYINGS.items()) if id.partition(".")[0] not in NOT_INSTRUCTIONS]


def write_sentence(sentence: Sentence, length: LengthWriter) -> dict[str, Any]:
    """The JSON object of a sentence."""
    written: dict[str, Any] = {
        "id": sentence.saying.id,
        "text": text(sentence),
        "values": written_values(sentence, length),
    }
    if sentence.labels is not None:
        written["sizes"] = list(sentence.labels)
    return written


def written_values(sentence: Sentence, length: LengthWriter) -> dict[str, Any]:
    """The values of a sentence as JSON."""
    written: dict[str, Any] = {}
    values = sentence.values
    for name, kind in sentence.saying.values.items():
        value, write = values[name], _WRITERS.get(kind.name)
        if write is None:
            written[name] = list(value) if type(value) is tuple else value
        else:
            write(written, name, value, length)
    return written


class SentenceSchema(StrictSchema):
    """A sentence of the pattern, and its values by name."""

    record = Sentence

    id = Choice(
        *[saying.id for saying in sentence_ids()],
        required=True,
        description="What is said, the same in every language.",
    )
    text = Prose("In the language asked.", required=True, source=text)
    values = Values(
        written_values,
        "Every number and name in it: one value, or one per size in the order of `sizes` with null for a size that "
        "has none.",
        required=True,
        source=lambda sentence: sentence,
    )
    sizes = Items(Prose(), "The labels of the sizes that it is for, where it is not for all.", source="labels")

    def about(self) -> str:
        """The docstring, and every id with its values."""
        lines = [super().about(), ""]
        for saying in sentence_ids():
            values = "; ".join(f"`{name}`: {kind.about}" for name, kind in saying.values.items())
            lines.append(f"* `{saying.id}`: {values or 'no values'}")
        return "\n".join(lines)

    @cached_property
    def writer(self) -> Write:
        """Written by hand, since an answer has a hundred."""
        return write_sentence


def _rounded(places: int) -> Callable[[dict[str, Any], str, Any, LengthWriter], None]:
    def write(written: dict[str, Any], name: str, value: Any, _: LengthWriter) -> None:
        written[name] = _each(value, lambda number: to_places(number, places))

    return write


def _length(written: dict[str, Any], name: str, value: Any, length: LengthWriter) -> None:
    run, convention = value if type(value) is tuple else (value,), length.convention
    both = [(None, None) if each is None else to_answer(each, convention) for each in run]
    if run is value:
        written[f"{name}_cm"], written[f"{name}_inch"] = [cm for cm, _ in both], [inch for _, inch in both]
    else:
        ((written[f"{name}_cm"], written[f"{name}_inch"]),) = both


def _each(value: Any, write: Callable[[Any], Any]) -> Any:
    if type(value) is tuple:
        return [None if each is None else write(each) for each in value]
    return None if value is None else write(value)


def _nested(written: dict[str, Any], name: str, value: Any, length: LengthWriter) -> None:
    written[name] = (
        write_sentence(value, length)
        if isinstance(value, Sentence)
        else each_once(lambda each: write_sentence(each, length), value)
    )


_WRITERS: Mapping[str, Callable[[dict[str, Any], str, Any, LengthWriter], None]] = {
    "number": _rounded(2),
    "numbers": _rounded(2),
    "inches": _rounded(2),
    "cm": _rounded(1),
    "length": _length,
    "sentence": _nested,
    "sentences": _nested,
}
