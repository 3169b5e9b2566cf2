"""The only place where an exception becomes a status.

Every refusal is an RFC 9457 problem document. Its `type` is a stable relative URI that the service
itself explains; `instance` is the request id; `errors` names every wrong place by RFC 6901 pointer.
"""

from __future__ import annotations

import logging
from collections.abc import Iterable, Mapping
from dataclasses import dataclass
from itertools import islice
from typing import Any, NamedTuple

import orjson
from flask import Flask, Response, g, request
from werkzeug.exceptions import HTTPException

from grading_core.codes import Code
from grading_core.errors import ContradictionError, Path, Problem
from service.flaws import FormError
from service.language import ENGLISH

PROBLEM_MEDIA_TYPE = "application/problem+json"

MAX_WRONG = 1000
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
    "(RFC 6901) or query parameter, with a code for programs.",
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


class Wrong(NamedTuple):
    """A wrong place in a request, as a problem document has it.

    code: for programs. detail: for people. path: in the body. parameter: the query parameter instead.
    """

    code: Code
    detail: str
    path: Path = ()
    parameter: str | None = None

    @classmethod
    def of(cls, problem: Problem) -> Wrong:
        """What contradicts itself."""
        return cls(problem.code, problem.detail, problem.path)

    def document(self) -> dict[str, str]:
        """The item of `errors`."""
        place = {"pointer": pointer(self.path)} if self.parameter is None else {"parameter": self.parameter}
        return {**place, "code": self.code.value, "detail": self.detail}

    @property
    def order(self) -> tuple[Any, ...]:
        """Where it stands among others: parameters first, then as in the body."""
        return self.parameter is None, tuple((step, "") if isinstance(step, int) else (-1, step) for step in self.path)


class Refusal(Exception):
    """A request that is answered by a problem document.

    kind: which. detail: what is the matter with this very request. wrong: every wrong place.
    headers: what the answer's status demands beside it.
    """

    def __init__(
        self, kind: Kind, detail: str, wrong: Iterable[Wrong] = (), headers: Mapping[str, str] | None = None
    ) -> None:
        self.kind = kind
        self.detail = detail
        self.wrong = tuple(wrong)
        self.headers = headers or {}
        super().__init__(detail)

    @classmethod
    def unprocessable(cls, found: Iterable[Wrong]) -> Refusal:
        """A request that was understood, and is wrong in some places. found: one of them or more, in any order."""
        wrong = list(islice(found, MAX_WRONG + 1))
        more, wrong = len(wrong) > MAX_WRONG, sorted(wrong[:MAX_WRONG], key=lambda each: each.order)
        places = "1 place" if len(wrong) == 1 else f"{len(wrong)} places"
        detail = f"The request is wrong in more than {places}." if more else f"The request is wrong in {places}."
        return cls(UNPROCESSABLE_CONTENT, detail, wrong)


def register_error_handlers(app: Flask) -> None:
    """Make an application answer every exception with a problem document."""
    app.register_error_handler(Refusal, _refused)
    app.register_error_handler(FormError, _malformed)
    app.register_error_handler(ContradictionError, _contradictory)
    app.register_error_handler(HTTPException, _http_error)
    app.register_error_handler(Exception, _fault)


def pointer(path: Path) -> str:
    """A place in a request as a JSON Pointer (RFC 6901).

    >>> pointer(("sizes", 2, "a/b~c"))
    '/sizes/2/a~1b~0c'
    """
    return "".join("/" + str(step).replace("~", "~0").replace("/", "~1") for step in path)


def problem_response(
    kind: Kind, detail: str, wrong: Iterable[Wrong] = (), headers: Mapping[str, str] | None = None
) -> Response:
    """A problem document as an answer."""
    document: dict[str, Any] = {
        "type": kind.uri,
        "title": kind.title,
        "status": kind.status,
        "detail": detail,
        "instance": g.get("request_id", ""),
    }
    errors = [each.document() for each in wrong]
    if errors:
        document["errors"] = errors
    response = Response(orjson.dumps(document), kind.status, headers, content_type=PROBLEM_MEDIA_TYPE)
    response.headers.add("Content-Language", ENGLISH)
    return response


def _refused(refusal: Refusal) -> Response:
    return problem_response(refusal.kind, refusal.detail, refusal.wrong, refusal.headers)


def _malformed(error: FormError) -> Response:
    wrong = (Wrong(flaw.code, flaw.detail, path) for path, flaw in error.flaws())
    return _refused(Refusal.unprocessable(wrong))


def _contradictory(error: ContradictionError) -> Response:
    return _refused(Refusal.unprocessable(map(Wrong.of, error.problems)))


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
