"""The only place where an exception becomes a status.

Every refusal is an RFC 9457 problem document. Its `type` is a stable relative URI that the service
itself explains; `instance` is the request id; `errors` names every wrong place by RFC 6901 pointer.
"""

from __future__ import annotations

import logging
from collections.abc import Iterable, Iterator, Mapping, Sequence
from dataclasses import dataclass
from itertools import islice
from typing import Any

import orjson
from flask import Flask, Response, g, request
from marshmallow import ValidationError
from werkzeug.exceptions import HTTPException

from grading_core.errors import ContradictionError, Path, Problem

PROBLEM_MEDIA_TYPE = "application/problem+json"

MAX_PROBLEMS = 1000
"""More wrong places than these are not named: nobody reads them, and naming them takes long."""

log = logging.getLogger(__name__)


@dataclass(frozen=True, slots=True)
class Kind:
    """One kind of problem that the service can answer.

    name: its last step in `/problems/<name>`. status: the HTTP status. title: short, the same every
    time. explanation: what it means and what to do, for `GET /problems/<name>`.
    """

    name: str
    status: int
    title: str
    explanation: str

    @property
    def uri(self) -> str:
        """The problem document's `type`."""
        return f"/problems/{self.name}"


BAD_REQUEST = Kind(
    "bad-request", 400, "Bad request", "The request could not be read as HTTP. Send it again as it was meant."
)
NOT_JSON = Kind(
    "not-json",
    400,
    "The body is not JSON",
    "The body has to be one JSON text in UTF-8 (RFC 8259). NaN, Infinity, a key that occurs twice in one "
    "object, nesting deeper than 32 levels and more than 100,000 lists and objects are refused too.",
)
NOT_FOUND = Kind(
    "not-found", 404, "Not found", "Nothing lives at this address. The contract at /openapi.json lists every address."
)
METHOD_NOT_ALLOWED = Kind(
    "method-not-allowed",
    405,
    "Method not allowed",
    "The address exists, but not for this method. The answer's Allow header lists the methods.",
)
NOT_ACCEPTABLE = Kind(
    "not-acceptable",
    406,
    "Not acceptable",
    "The Accept header asks for a representation that this operation does not have. The detail lists those "
    "that it has.",
)
CONTENT_TOO_LARGE = Kind(
    "content-too-large",
    413,
    "Content too large",
    "The body is larger than 1 MiB. Split the request; sizes are computed independently of one another "
    "unless the operation says otherwise.",
)
UNSUPPORTED_MEDIA_TYPE = Kind(
    "unsupported-media-type",
    415,
    "Unsupported media type",
    "The body has to be sent as the media type that the operation takes, application/json unless its description says "
    "otherwise, and not compressed.",
)
UNPROCESSABLE_CONTENT = Kind(
    "unprocessable-content",
    422,
    "Unprocessable content",
    "The JSON was understood, and something in it is wrong: an unknown field, a wrong type, a number out of "
    "range, or input that contradicts itself. `errors` names every wrong place by its JSON Pointer "
    "(RFC 6901).",
)
TOO_MANY_REQUESTS = Kind(
    "too-many-requests",
    429,
    "Too many requests",
    "More requests came from one client than the installation allows. Wait as long as the Retry-After header says.",
)
INTERNAL_ERROR = Kind(
    "internal-error",
    500,
    "Internal error",
    "The service has a fault. It has been logged under the request id in `instance`; nothing in the request "
    "has to be corrected.",
)
BAD_GATEWAY = Kind(
    "bad-gateway",
    502,
    "Bad gateway",
    "The balancer reached no instance of the service. Computations are stateless: send the same request again.",
)
SERVICE_UNAVAILABLE = Kind(
    "service-unavailable",
    503,
    "Service unavailable",
    "The instance is draining before it stops, or no instance is ready. Computations are stateless: send the "
    "same request again.",
)
GATEWAY_TIMEOUT = Kind(
    "gateway-timeout",
    504,
    "Gateway timeout",
    "No instance of the service answered the balancer in time. Computations are stateless: send the same request "
    "again.",
)

KINDS = (
    BAD_REQUEST,
    NOT_JSON,
    NOT_FOUND,
    METHOD_NOT_ALLOWED,
    NOT_ACCEPTABLE,
    CONTENT_TOO_LARGE,
    UNSUPPORTED_MEDIA_TYPE,
    UNPROCESSABLE_CONTENT,
    TOO_MANY_REQUESTS,
    INTERNAL_ERROR,
    BAD_GATEWAY,
    SERVICE_UNAVAILABLE,
    GATEWAY_TIMEOUT,
)

_BY_STATUS = {kind.status: kind for kind in reversed(KINDS)}


class Refusal(Exception):
    """A request that is answered by a problem document.

    kind: which. detail: what is the matter with this very request. problems: every wrong place.
    headers: what the answer's status demands beside it.
    """

    def __init__(
        self, kind: Kind, detail: str, problems: Sequence[Problem] = (), headers: Mapping[str, str] | None = None
    ) -> None:
        self.kind = kind
        self.detail = detail
        self.problems = problems
        self.headers = headers or {}
        super().__init__(detail)


def register_error_handlers(app: Flask) -> None:
    """Make an application answer every exception with a problem document."""
    app.register_error_handler(Refusal, _refused)
    app.register_error_handler(ValidationError, _invalid)
    app.register_error_handler(ContradictionError, _contradictory)
    app.register_error_handler(HTTPException, _http_error)
    app.register_error_handler(Exception, _fault)


def pointer(path: Path) -> str:
    """A place in a request as a JSON Pointer (RFC 6901).

    >>> pointer(("sizes", 2, "a/b~c"))
    '/sizes/2/a~1b~0c'
    """
    return "".join("/" + str(step).replace("~", "~0").replace("/", "~1") for step in path)


def problems_of(messages: Any, path: Path = ()) -> Iterator[Problem]:
    """Every wrong place in a schema's nested error messages.

    messages: as marshmallow collects them: a list of sentences, or a mapping from field or index.
    path: where they hang.
    """
    if isinstance(messages, dict):
        for step, below in messages.items():
            yield from problems_of(below, path if step is None else (*path, step))
    elif isinstance(messages, str):
        yield Problem(path, messages)
    else:
        for below in messages:
            yield from problems_of(below, path)


def problem_response(
    kind: Kind, detail: str, problems: Iterable[Problem] = (), headers: Mapping[str, str] | None = None
) -> Response:
    """A problem document as an answer."""
    document: dict[str, Any] = {
        "type": kind.uri,
        "title": kind.title,
        "status": kind.status,
        "detail": detail,
        "instance": g.get("request_id", ""),
    }
    errors = [{"pointer": pointer(problem.path), "detail": problem.detail} for problem in problems]
    if errors:
        document["errors"] = errors
    return Response(orjson.dumps(document), kind.status, headers, content_type=PROBLEM_MEDIA_TYPE)


def _refused(refusal: Refusal) -> Response:
    return problem_response(refusal.kind, refusal.detail, refusal.problems, refusal.headers)


def _invalid(error: ValidationError) -> Response:
    found = list(islice(problems_of(error.messages), MAX_PROBLEMS + 1))
    return _unprocessable(sorted(found[:MAX_PROBLEMS], key=_in_order), len(found) > MAX_PROBLEMS)


def _contradictory(error: ContradictionError) -> Response:
    return _unprocessable(error.problems)


def _unprocessable(problems: Sequence[Problem], more: bool = False) -> Response:
    places = "1 place" if len(problems) == 1 else f"{len(problems)} places"
    detail = f"The request is wrong in more than {places}." if more else f"The request is wrong in {places}."
    return problem_response(UNPROCESSABLE_CONTENT, detail, problems)


def _http_error(error: HTTPException) -> Response:
    kind = _BY_STATUS.get(error.code or 500)
    if kind is None:
        kind = Kind("bad-request", error.code or 500, error.name, BAD_REQUEST.explanation)
    headers = {name: value for name, value in error.get_headers() if name.lower() != "content-type"}
    return problem_response(kind, kind.explanation, headers=headers)


def _fault(error: Exception) -> Response:
    where = {"request_id": g.get("request_id"), "operation": request.endpoint}
    log.error("failed", exc_info=error, extra=where)
    return problem_response(INTERNAL_ERROR, "The service could not compute an answer. The fault is on its side.")


def _in_order(problem: Problem) -> tuple[tuple[int, str], ...]:
    return tuple((step, "") if isinstance(step, int) else (-1, step) for step in problem.path)
