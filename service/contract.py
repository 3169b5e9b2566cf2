"""The OpenAPI 3.1 document, written from the operations that are registered."""

from __future__ import annotations

from collections.abc import Iterable
from dataclasses import dataclass
from typing import Any

from apispec import APISpec, BasePlugin
from apispec.ext.marshmallow import MarshmallowPlugin
from apispec.ext.marshmallow.common import resolve_schema_instance
from marshmallow import Schema

from grading_core.limits import MAX_STITCHES
from service import VERSION
from service.caching import NEVER_KEPT
from service.errors import KINDS, PROBLEM_MEDIA_TYPE, TOO_MANY_REQUESTS, UNPROCESSABLE_CONTENT, Kind, Wrong
from service.examples import Example, examples_of, shortened
from service.flaws import FormCode
from service.json_body import MAX_BODY_BYTES, MAX_DEPTH
from service.language import USUAL_LANGUAGE
from service.media import JSON
from service.open_answers import open_answers
from service.operation import Operation
from service.representations import tables
from service.retirement import LEAST
from service.schemas.base import StrictSchema
from service.schemas.codes import CODES, code_schema
from service.schemas.common import MAX_SIZES, ProblemSchema
from service.schemas.fields import Describe

OPENAPI_VERSION = "3.1.0"

DESCRIPTION = f"""\
Grades hand-knitted top-down raglan pullovers over many sizes, with exact arithmetic.

`POST /v1/pullovers` makes a whole pullover of a gauge, in all sizes: every number, and the pattern in sentences. Its
pictures, its pages to print and its workbook take the very same request. The other operations are its parts, each by
itself: gauge, sizes, shaping, charts and yarn.

## Conventions

* **Stateless.** A request carries all it needs, and the same request always gets the same answer.
  Computations are `POST`; they may also be sent by the safe method `QUERY` (RFC 10008) on the same path.
* **JSON** in UTF-8. Unknown fields, wrong types and numbers out of range are refused, every one of them named
  in one answer. A whole number may be written as `3.0`.
* **Lengths** in a request are in its `unit`, `cm` or `in`. A length in an answer has both, rounded to two
  decimals from the exact value. A difference is finished minus target.
* **Errors** are RFC 9457 problem documents; `errors` points to every wrong place (RFC 6901), all in one answer as far
  as one can be judged beside the others. Errors, reasons and warnings have a `code` for programs.
* **Wrong or impossible.** What contradicts itself is refused (422). What is sound but cannot be knitted in a
  size is answered: that size says `feasible: false`, why, and what would make it possible.
* **Representations.** Operations that answer per size also answer as `text/csv` and `text/markdown`: one table, a row
  for each quantity, in the columns `{",".join(tables.KEYS)}`, one for each size by its label,
  `{",".join(tables.RUNS)}`; a size whose label is another column's name has `size ` before it. Where
  `print.csv_layout` is `long` CSV has the columns `{",".join(tables.LONG)}`. Lengths are in cm, and in inches in
  `run_inch`. A pullover's table is its `table`; that of others has the numbers of each size by their place in the
  JSON, without lists of rounds. A type that `Accept` names goes before one that a wildcard covers; JSON goes first
  otherwise.
* **Languages.** Sentences, titles, warnings, reasons, and the words in pictures and workbooks are in `print.language`;
  where that isn't sent, in the first language of `Accept-Language` that there is (RFC 4647, section 3.4: `de-AT` finds
  `de`); and else in `{USUAL_LANGUAGE}`. `Content-Language` says in which; no language is refused. Unless
  `print.decimal_mark` is sent, the language's stands in print. Ids, codes, keys of tables, values and what was named in
  the request are the same in every language. Problem documents and the published tables are in English.
* **Limits.** A body of {MAX_BODY_BYTES // 1024} KiB, nested {MAX_DEPTH} levels deep; {MAX_SIZES} sizes; {MAX_STITCHES}
  stitches in a section. Lists and numbers have theirs in the schemas.
* **What may change.** Within `/v1` there may come, at any time: operations, optional fields of requests, fields of
  answers, members of an `x-extensible-enum`, representations, wider limits, other words for people. A client ignores
  fields that it doesn't know and takes an unknown member for "another one". Addresses, fields, units, defaults and what
  a code or a status means don't change. What will go is `deprecated`, works for at least {LEAST.days} days more, and
  answers of an operation that will go have `Deprecation` and `Sunset` headers.
* Every JSON answer ends with `meta`: the version that computed it and a digest of what was asked. The digest is
  the same whether a default is sent or left out.
* **Caching.** `Cache-Control` says how long an answer holds. Answers to `GET` and `QUERY` have an `ETag`; sent back in
  `If-None-Match` it saves the computation (304). On `POST` a condition is ignored.
* **Behind a balancer** the limits on a client's requests are told by `RateLimit-Policy`
  (draft-ietf-httpapi-ratelimit-headers-11); 429, 502, 503 and 504 say in `Retry-After` when to come again. A
  `traceparent` (W3C Trace Context) is passed on and logged.
"""

TAGS = {
    "Garment": "The whole pullover, every part of it.",
    "Gauge": "Counts, lengths and the knitter's own gauge.",
    "Sizing": "Body tables, ease and finished measurements.",
    "Shaping": "Where increases and decreases fall.",
    "Colourwork": "Charts on shaped sections.",
    "Yarn": "How thick, how much.",
    "Standards": "The published tables that are built in.",
    "Service": "About the service itself.",
}


BINARY = {"type": "string", "format": "binary"}
"""A file, a picture too: generated clients give its bytes, and refuse a picture that is called a text."""


class _StrictSchemas(BasePlugin):
    """Says of every schema what it is, which of its fields go together, and that it is closed: answers open later."""

    def schema_helper(self, name: str, definition: dict[str, Any], *, schema: Any = None, **_: Any) -> dict[str, Any]:
        """Apispec's hook: what a component says beside its properties."""
        if schema is None:  # an enumeration, which says all of itself
            return {}
        instance = resolve_schema_instance(schema)
        assert isinstance(instance, StrictSchema)
        rules = [rule.contract() for rule in instance.rules]
        return {"description": instance.about(), "additionalProperties": False, **({"allOf": rules} if rules else {})}


def _as_enforced(converter: Any, field: Any, *, ret: dict[str, Any]) -> dict[str, Any]:
    """Apispec's hook for a field: what the strict fields enforce."""
    if "$ref" in ret or "anyOf" in ret:
        return {}
    described: dict[str, Any] = field.contract(converter.field2property)
    if field.allow_none and "type" in described:
        described["type"] = [described["type"], "null"]
    return described


def build_contract(operations: Iterable[Operation[Any, Any]]) -> dict[str, Any]:
    """The OpenAPI document of some operations, with their named examples."""
    operations = tuple(operations)
    used = {operation.tag for operation in operations}
    marshmallow = MarshmallowPlugin(schema_name_resolver=_schema_name)
    spec = APISpec(
        title="Pullover grading",
        version=VERSION,
        openapi_version=OPENAPI_VERSION,
        plugins=[marshmallow, _StrictSchemas()],
        info={"description": DESCRIPTION},
        servers=[{"url": "/", "description": "This installation"}],
        tags=[{"name": name, "description": about} for name, about in TAGS.items() if name in used],
        security=[],
    )
    assert marshmallow.converter is not None
    marshmallow.converter.add_attribute_function(_as_enforced)  # type: ignore[no-untyped-call]
    describe = marshmallow.converter.field2property
    for family in CODES:
        spec.components.schema(family, code_schema(family))
    spec.components.schema("Problem", schema=ProblemSchema)
    for name, parameter in PARAMETERS.items():
        spec.components.parameter(name, "header", parameter)
    retiring = {name for operation in operations if operation.retirement for name in operation.retirement.headers()}
    for name, header in HEADERS.items():
        if name not in RETIREMENT_HEADERS or name in retiring:
            spec.components.header(name, header)
    for refusals in REFUSALS:
        spec.components.response(refusals.name, refusals.contract())
    for operation in operations:
        spec.path(
            path=operation.path,
            operations={operation.method.lower(): _described(operation, examples_of(operation.name), describe)},
        )
    document: dict[str, Any] = spec.to_dict()
    open_answers(document)
    return document


HEADERS: dict[str, dict[str, Any]] = {
    "X-Request-Id": {
        "description": "The request's id, as sent or made up, for finding it in the log.",
        "schema": {"type": "string"},
    },
    "Content-Language": {
        "description": "The language of the words for people (RFC 5646).",
        "schema": {"type": "string"},
        "example": USUAL_LANGUAGE,
    },
    "Content-Disposition": {
        "description": "Whether a browser shows the file, and the name under which it saves it (RFC 6266).",
        "schema": {"type": "string"},
        "example": "inline; filename=pullover-schematic-M.svg",
    },
    "Cache-Control": {"description": "How long the answer holds.", "schema": {"type": "string"}},
    "ETag": {"description": "Send it back in If-None-Match.", "schema": {"type": "string"}},
    "RateLimit-Policy": {
        "description": "What a balancer lets a client ask: `q` requests in `w` seconds, or at a time where `qu` is "
        "`concurrent-requests` (draft-ietf-httpapi-ratelimit-headers-11, a list of RFC 9651).",
        "schema": {"type": "string"},
        "example": '"default";q=50;w=1, "concurrent";q=64;qu="concurrent-requests"',
    },
    "RateLimit": {
        "description": "The policy that the request went beyond: nothing is left of it (`r`) for `t` seconds.",
        "schema": {"type": "string"},
        "example": '"default";r=0;t=1',
    },
    "Allow": {"description": "With 405: the methods that the address has.", "schema": {"type": "string"}},
    "Retry-After": {
        "description": "Seconds to wait before the same request is sent again.",
        "schema": {"type": "integer", "minimum": 0},
    },
    "Deprecation": {
        "description": "Since when the operation is deprecated (RFC 9745): @ and Unix time.",
        "schema": {"type": "string"},
    },
    "Sunset": {"description": "From when it may be gone (RFC 8594), an HTTP date.", "schema": {"type": "string"}},
}
"""Every header that an answer in the contract may have, by name."""

RETIREMENT_HEADERS = ("Deprecation", "Sunset")
"""Those that no answer has unless its operation will go."""

PARAMETERS: dict[str, dict[str, Any]] = {
    "RequestId": {
        "name": "X-Request-Id",
        "description": "An id for the request, which comes back with the answer: up to 128 letters, digits "
        "and `._~-`. Any other is replaced.",
        "schema": {"type": "string"},
    },
    "AcceptLanguage": {
        "name": "Accept-Language",
        "description": "Languages that the client prefers (RFC 9110, section 12.5.4), as in "
        "`de-AT, de;q=0.9, en-GB;q=0.5`. The first that there is counts; "
        f"`{USUAL_LANGUAGE}` where there is none of them. What `print.language` says goes before it.",
        "schema": {"type": "string"},
    },
}
"""Headers of a request, by the names of their components."""


@dataclass(frozen=True, slots=True)
class Refusals:
    """Kinds of problem that an operation's page tells together.

    name: of their component. status: as the contract has it, where X stands for any digit. kinds: which. headers: what
    their answers have beside those of all.
    """

    name: str
    status: str
    kinds: tuple[Kind, ...]
    headers: tuple[str, ...] = ()

    def contract(self) -> dict[str, Any]:
        """The answer in the contract."""
        listed = "\n".join(f"* **{kind.status}** {kind.explanation}" for kind in self.kinds)
        return {
            "description": listed if len(self.kinds) > 1 else self.kinds[0].explanation,
            "headers": _headers("Content-Language", *self.headers),
            "content": {
                PROBLEM_MEDIA_TYPE: {
                    "schema": ProblemSchema,
                    "examples": {kind.name: {"summary": kind.title, "value": _problem(kind)} for kind in self.kinds},
                }
            },
        }


_APART = (UNPROCESSABLE_CONTENT, TOO_MANY_REQUESTS)

REFUSALS = (
    Refusals("Unprocessable", "422", (UNPROCESSABLE_CONTENT,)),
    Refusals("TooManyRequests", "429", (TOO_MANY_REQUESTS,), ("Retry-After", "RateLimit")),
    Refusals("Refused", "4XX", tuple(k for k in KINDS if k.status < 500 and k not in _APART), ("Allow",)),
    Refusals("Failed", "5XX", tuple(k for k in KINDS if k.status >= 500), ("Retry-After",)),
)
"""Every answer but the one that was asked for, grouped by what a client does about it: mend, wait, mend, wait."""


def _described(operation: Operation[Any, Any], examples: list[Example], describe: Describe) -> dict[str, Any]:
    described: dict[str, Any] = {
        "operationId": operation.id,
        "tags": [operation.tag],
        "summary": operation.summary,
        "description": operation.description,
        "parameters": ["RequestId"] if operation.english else ["RequestId", "AcceptLanguage"],
    }
    if operation.retirement:
        described |= operation.retirement.contract(operation.description)
    if operation.method == "POST":
        content = {operation.takes: _body(operation, examples)}
        content |= {media: {"schema": {"type": "string"}} for media in operation.reads}
        described["requestBody"] = {"required": True, "content": content}
    else:
        described["parameters"] += _parameters(operation, examples, describe)
    described["responses"] = _responses(operation, examples)
    return described


def _body(operation: Operation[Any, Any], examples: list[Example]) -> dict[str, Any]:
    if operation.takes != JSON:
        return {"schema": BINARY}
    return {
        "schema": operation.request,
        "examples": {e.name: {"summary": e.summary, "value": e.request} for e in examples},
    }


def _responses(operation: Operation[Any, Any], examples: list[Example]) -> dict[str, Any]:
    headers = ["Cache-Control"]
    responses: dict[str, Any] = {}
    if operation.retirement:
        headers += operation.retirement.headers()
    if operation.method == "GET" and operation.kept != NEVER_KEPT:
        headers.append("ETag")
        told = "Not changed since the answer whose ETag was sent."
        responses["304"] = {"description": told, "headers": _headers(*headers)}
    answered = [example for example in examples if example.answer is not None]
    responses["200"] = {
        "description": "The answer.",
        "headers": _headers("Content-Language", *(["Content-Disposition"] if operation.saved_as else []), *headers),
        "content": {media: _answer(operation, media, answered) for media in operation.media},
    }
    responses |= {refusals.status: {"$ref": f"#/components/responses/{refusals.name}"} for refusals in REFUSALS}
    return dict(sorted(responses.items()))


def _headers(*names: str) -> dict[str, Any]:
    """Headers of an answer, beside those of all, as references to their components."""
    return {name: {"$ref": f"#/components/headers/{name}"} for name in ("X-Request-Id", "RateLimit-Policy", *names)}


def _answer(operation: Operation[Any, Any], media: str, examples: list[Example]) -> dict[str, Any]:
    """What the contract says of a representation of the answer, with examples to read in short."""
    if media == JSON:
        shown = {e.name: {"summary": e.summary, **shortened(e.answer)} for e in examples}
        return {"schema": operation.answer, **({"examples": shown} if shown else {})}
    if not media.startswith("text/"):
        return {"schema": BINARY}
    written: dict[str, Any] = {"schema": {"type": "string"}}
    first = next((e for e in examples if media in e.tables), None)
    if first:
        written["examples"] = {first.name: {"summary": first.summary, **shortened(first.tables[media])}}
    return written


def _parameters(operation: Operation[Any, Any], examples: list[Example], describe: Describe) -> list[dict[str, Any]]:
    parameters = []
    for name, field in operation.schema.fields.items():
        in_path = "{" + name + "}" in operation.path
        described = describe(field)
        parameters.append(
            {
                "name": name,
                "in": "path" if in_path else "query",
                "required": in_path or field.required,
                "description": described.pop("description", ""),
                "schema": described,
                "examples": {
                    e.name: {"summary": e.summary, "value": e.request[name]} for e in examples if name in e.request
                },
            }
        )
    return parameters


def _problem(kind: Kind) -> dict[str, Any]:
    """An example of a kind of problem."""
    example: dict[str, Any] = {
        "type": kind.uri,
        "title": kind.title,
        "status": kind.status,
        "detail": kind.explanation,
        "instance": "5f0c7a0e3b1d4f6f9a5e2c8d7b6a4f31",
    }
    if kind is UNPROCESSABLE_CONTENT:
        wrong = Wrong(FormCode.WRONG_TYPE, "must be a whole number.", ("sizes", 2, "rounds"))
        example["errors"] = [wrong.document()]
    return example


def _schema_name(schema: Any) -> str:
    cls = schema if isinstance(schema, type) else type(schema)
    assert issubclass(cls, Schema)
    return cls.__name__.removesuffix("Schema")
