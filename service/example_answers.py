"""What the examples are answered with at addresses of their own, so that a page can show it.

A pullover's example has every picture, page and file that is made of the same request, and any other example the one
that its operation answers with, if it does. The operations answer as they answer anybody; what they write is kept.
"""

from __future__ import annotations

from collections.abc import Iterator, Mapping, Sequence
from dataclasses import dataclass
from functools import cache, cached_property
from typing import Any

from flask import Flask, Response, request

from service.errors import NOT_FOUND, Refusal
from service.examples import Example, examples_of
from service.json_body import canonical
from service.language import LANGUAGES, USUAL_LANGUAGE, Language
from service.media import MEDIA, Medium
from service.operation import Asked, Operation
from service.routes.pictures import CHART
from service.routes.pullover import PULLOVERS
from service.schemas.picture import PulloverSizePicturesRequestSchema


@dataclass(frozen=True)
class ExampleAnswer:
    """A picture, a page or a file that an example is answered with.

    of: the address of the example. operation: that answers. request: the example's, with the size where one has to be
    named.
    """

    of: str
    operation: Operation[Any, Any]
    request: dict[str, Any]

    @property
    def kind(self) -> str:
        """What it is, in a word of its address."""
        return self.operation.path.rpartition("/")[2]

    @property
    def address(self) -> str:
        """Where it is."""
        return f"{self.of}/{self.kind}.{self._medium.ending}"

    @property
    def size(self) -> str | None:
        """The label of the size that it shows; None where it shows all."""
        size: str | None = self.request.get("picture", {}).get("size")
        return size

    @cached_property
    def response(self) -> Response:
        """The operation's answer."""
        asked, language = _asked(self.operation, self.request)
        return self.operation.answered(asked, self._medium, language)

    @property
    def _medium(self) -> Medium:
        return MEDIA[self.operation.media[0]]


def answers_of(
    operation: Operation[Any, Any], example: Example, operations: Sequence[Operation[Any, Any]]
) -> Iterator[ExampleAnswer]:
    """All that an example is answered with at addresses of their own.

    operations: all that there are.
    """
    of = f"/examples/{operation.name}/{example.name}"
    if MEDIA[operation.media[0]].ending:
        yield ExampleAnswer(of, operation, example.request)
    if operation is PULLOVERS:
        for other in operations:
            if other.path.startswith(f"{operation.path}/") and (other is not CHART or "chart" in example.request):
                yield ExampleAnswer(of, other, {**example.request, **_size_named(other, example)})


def written(operation: Operation[Any, Any], example: Example, medium: Medium) -> str | bytes:
    """An example's answer. medium: what writes it."""
    asked, language = _asked(operation, example.request)
    return operation.written(asked, medium, language)


def register_example_answers(app: Flask, operations: Sequence[Operation[Any, Any]]) -> None:
    """Serve all that the examples of some operations are answered with at addresses of their own."""

    @cache
    def answers() -> Mapping[str, ExampleAnswer]:
        """By their addresses."""
        return {
            answer.address: answer
            for operation in operations
            for example in examples_of(operation.name)
            for answer in answers_of(operation, example, operations)
        }

    @app.get("/examples/<operation>/<example>/<file>")
    def example_answer(**_: str) -> Response:
        found = answers().get(request.path)
        if found is None:
            raise Refusal(NOT_FOUND, NOT_FOUND.explanation)
        kept = found.response
        response = Response(kept.get_data(), headers=[*kept.headers])
        response.headers.add("Cache-Control", found.operation.kept)
        return response


def _asked(operation: Operation[Any, Any], sent: dict[str, Any]) -> tuple[Asked[Any], Language]:
    """What is asked, and the language of its answer: that of the request, or the usual one."""
    data = canonical(sent)
    asked = operation.asked(operation.load(data), data)
    return asked, LANGUAGES[asked.settings.language or USUAL_LANGUAGE]


def _size_named(operation: Operation[Any, Any], example: Example) -> dict[str, Any]:
    """The size in the middle of those that are answered, for an operation that has to be told one."""
    if not issubclass(operation.request, PulloverSizePicturesRequestSchema):
        return {}
    labels = example.answer["labels"]
    return {"picture": {"size": labels[len(labels) // 2]}}
