"""The start page: what the service is, how to begin, and every example as it is answered.

Pictures and pages of the examples are fetched by whoever sees them, from their own addresses; tables stand in the page.
It needs no script, and nothing comes from outside.
"""

from __future__ import annotations

import json
from base64 import b64encode
from collections.abc import Sequence
from dataclasses import dataclass
from functools import cache
from hashlib import sha256
from importlib.resources import files
from typing import Any

from flask import Flask, Response, render_template
from markupsafe import Markup

from service import VERSION
from service.caching import KEPT_LONGER
from service.contract import TAGS
from service.example_answers import ExampleAnswer, answers_of, written
from service.examples import Example, Seen, examples_of
from service.language import ENGLISH
from service.media import CSV, HTML, MEDIA, Medium
from service.operation import Operation
from service.representations.html_table import html_table
from service.routes.pullover import PULLOVERS

_TABLE = Medium(content_type=MEDIA[HTML].content_type, write=html_table, table=True)

_STATIC = files("service") / "static"

_GRADE, _CHANGE, _FETCH = "a-gauge-alone", "a-makers-changes", "one-size-of-nine"
"""The examples of a pullover to begin with: as a designer, as a maker, as a program."""


@dataclass(frozen=True, slots=True, kw_only=True)
class Shown:
    """An example as the page shows it.

    example: the example. try_it: where the docs page has it filled in. direct: its own address, where a browser can ask
    for it. table: of the answer, where it has one. pictures: with what is known of them. pages: to print or to save.
    """

    example: Example
    try_it: str
    direct: str | None
    table: Markup | None
    pictures: Sequence[tuple[ExampleAnswer, Seen]]
    pages: Sequence[ExampleAnswer]

    @property
    def request(self) -> str:
        """The request as one would write it."""
        return json.dumps(self.example.request, ensure_ascii=False)


def register_start(app: Flask, operations: Sequence[Operation[Any, Any]]) -> None:
    """Serve the start page of some operations, and the icon of all pages."""
    icon = (_STATIC / "favicon.ico").read_bytes()

    @cache
    def page() -> tuple[str, str]:
        """The page and its policy; made when it is first asked for, since it takes every example."""
        style = (_STATIC / "start.css").read_text(encoding="utf-8")
        examples = _shown(PULLOVERS, operations)
        by_name = {shown.example.name: shown for shown in examples}
        others = [(operation, _shown(operation, operations)) for operation in operations if operation is not PULLOVERS]
        text = render_template(
            "start.html",
            style=Markup(style),
            version=VERSION,
            pullovers=PULLOVERS,
            grade=by_name[_GRADE],
            change=by_name[_CHANGE],
            fetch=by_name[_FETCH],
            # Those that are answered in part go last.
            examples=sorted(examples, key=lambda shown: "include" in shown.example.request),
            chapters=[(tag, about, [each for each in others if each[0].tag == tag]) for tag, about in TAGS.items()],
        )
        return text, _policy(style)

    @app.get("/")
    def start() -> Response:
        text, policy = page()
        headers = {"Content-Security-Policy": policy, "Content-Language": ENGLISH}
        return Response(text, headers=headers, content_type=MEDIA[HTML].content_type)

    @app.get("/favicon.ico")
    def favicon() -> Response:
        return Response(icon, headers={"Cache-Control": KEPT_LONGER}, content_type="image/vnd.microsoft.icon")


def _shown(operation: Operation[Any, Any], operations: Sequence[Operation[Any, Any]]) -> list[Shown]:
    """The examples of an operation. operations: all that there are."""
    shown = []
    for example in examples_of(operation.name):
        answers = [*answers_of(operation, example, operations)]
        pictured = [(answer, example.pictures.get(answer.address)) for answer in answers]
        shown.append(
            Shown(
                example=example,
                try_it=f"/docs#/{operation.tag}/{operation.id}?example={example.name}",
                direct=operation.path.format(**example.request) if operation.method == "GET" else None,
                table=Markup(written(operation, example, _TABLE)) if CSV in operation.media else None,
                pictures=[(answer, seen) for answer, seen in pictured if seen],
                pages=[answer for answer, seen in pictured if not seen],
            )
        )
    return shown


def _policy(style: str) -> str:
    """What a browser may load for the page: pictures of this service, and this style."""
    known = b64encode(sha256(style.encode()).digest()).decode()
    return (
        f"default-src 'none'; img-src 'self'; style-src 'sha256-{known}'; "
        "base-uri 'none'; form-action 'none'; frame-ancestors 'none'"
    )
