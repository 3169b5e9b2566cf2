"""What every answer has beside its body: request id, caching, compression and security headers."""

from __future__ import annotations

import gzip
import re
from hashlib import sha256
from secrets import token_hex

from flask import Flask, Response, g, request

from service.caching import NEVER_KEPT

COMPRESS_FROM_BYTES = 256
"""Below this size compressing saves next to nothing."""

CONTENT_POLICY = "default-src 'none'; frame-ancestors 'none'"
"""What a browser may load for an answer that says nothing else: nothing."""

VARY = "Accept, Accept-Encoding, Accept-Language"
"""The request headers on which an answer may depend."""

EXPOSED = (
    "Cache-Status",
    "Content-Disposition",
    "Deprecation",
    "ETag",
    "RateLimit",
    "RateLimit-Policy",
    "Retry-After",
    "Sunset",
    "X-Request-Id",
)
"""The headers of an answer that a page of another origin may read, beside those that it always may."""

_REQUEST_ID = re.compile(r"[A-Za-z0-9._~-]{1,128}\Z")
_COMPRESSIBLE = ("text/", "application/json", "application/problem+json", "application/yaml", "image/svg+xml")


def register_headers(app: Flask, vary: str = VARY) -> None:
    """Give every answer of an application its common headers.

    vary: the request headers on which an answer may depend.
    """

    common = (("Vary", vary), ("X-Content-Type-Options", "nosniff"), ("Referrer-Policy", "no-referrer"))

    def complete(response: Response) -> Response:
        response.headers.extend(common)
        response.headers.add("X-Request-Id", g.request_id)
        response.headers.setdefault("Content-Security-Policy", CONTENT_POLICY)
        if request.method == "OPTIONS":
            # It has no body, and Flask calls that HTML.
            response.headers.pop("Content-Type", None)
        if request.method in ("GET", "HEAD", "QUERY") and response.status_code == 200:
            _revalidate(response)
        response.headers.setdefault("Cache-Control", NEVER_KEPT)
        _compress(response)
        return response

    app.before_request(_take_request_id)
    app.after_request(complete)


def _take_request_id() -> None:
    sent = request.headers.get("X-Request-Id", "")
    g.request_id = sent if _REQUEST_ID.match(sent) else token_hex(16)


def _revalidate(response: Response) -> None:
    if response.direct_passthrough or response.headers.get("Cache-Control") == NEVER_KEPT:
        return
    if "ETag" not in response.headers:
        # Weak for the same reason as in `Operation`.
        response.set_etag(sha256(response.get_data()).hexdigest()[:32], weak=True)
        response.headers.setdefault("Cache-Control", "no-cache")
    if request.if_none_match.contains_weak(response.get_etag()[0] or ""):
        response.status_code = 304
        response.set_data(b"")


def _compress(response: Response) -> None:
    if (
        "gzip" not in request.headers.get("Accept-Encoding", "")
        or request.accept_encodings.quality("gzip") <= 0
        or response.direct_passthrough
        or not (response.mimetype or "").startswith(_COMPRESSIBLE)
        or (response.content_length or 0) < COMPRESS_FROM_BYTES
    ):
        return
    # mtime=0: the same answer is the same bytes
    response.set_data(gzip.compress(response.get_data(), compresslevel=5, mtime=0))
    response.headers["Content-Encoding"] = "gzip"
