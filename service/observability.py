"""What an operator sees: numbers for Prometheus, and one log line for every request.

Both name the operation and say how it went. Neither holds anything of what was asked: no address,
no query, no body. How log lines are written is the application server's affair.
"""

from __future__ import annotations

import logging
import os
import re
import struct
from collections.abc import Callable
from functools import cache
from time import perf_counter, sleep

from flask import Flask, Response, g, request
from prometheus_client import CollectorRegistry, Counter, Gauge, Histogram
from prometheus_client.exposition import choose_encoder
from prometheus_client.multiprocess import MultiProcessCollector

from service import VERSION
from service.caching import NEVER_KEPT

METHODS = frozenset(("GET", "HEAD", "POST", "QUERY", "OPTIONS"))
"""Every other method is counted as `other`, since a client can make up as many as it likes."""

NO_OPERATION = "none"
"""What a request is counted under whose address or method no operation has."""

BUCKETS = (0.001, 0.002, 0.005, 0.01, 0.02, 0.05, 0.1, 0.2, 0.5, 1.0, 2.0)
"""Upper limits of the histogram's buckets in seconds."""

_READ_AGAIN, _MOMENT_S = 20, 0.005

log = logging.getLogger("service.requests")

_TRACE_PARENT = re.compile(r"(?!ff)([0-9a-f]{2})-(?!0{32})([0-9a-f]{32})-(?!0{16})[0-9a-f]{16}-[0-9a-f]{2}(-.*)?\Z")
"""Version, trace, parent, flags, and what a later version may add (W3C Trace Context, section 3.2)."""


def register_observability(app: Flask) -> None:
    """Count, time and log every request of an application, and serve the numbers at `/metrics`.

    Call it before any other hook is registered, so that it sees a request first and an answer last.
    """
    own = CollectorRegistry()
    answered = Counter("grading_requests", "Requests answered.", ("operation", "method", "status"), registry=own)
    seconds = Histogram(
        "grading_request_seconds",
        "Time from the request's head to its finished answer.",
        ("operation",),
        buckets=BUCKETS,
        registry=own,
    )
    in_flight = Gauge(
        "grading_requests_in_flight",
        "Requests being answered, this one included.",
        multiprocess_mode="livesum",
        registry=own,
    )
    Gauge(
        "grading_build_info", "1 for the version that runs.", ("version",), multiprocess_mode="livemax", registry=own
    ).labels(VERSION).set(1)

    # looked up by its labels each is found in a tenth of the time
    answered_as, seconds_of = cache(answered.labels), cache(seconds.labels)

    def begin() -> None:
        g.started = perf_counter()
        in_flight.inc()

    def finish(response: Response) -> Response:
        taken, asked = perf_counter() - g.started, request._get_current_object()  # type: ignore[attr-defined]
        operation = asked.endpoint or NO_OPERATION
        method = asked.method if asked.method in METHODS else "other"
        answered_as(operation, method, str(response.status_code)).inc()
        seconds_of(operation).observe(taken)
        log.info(
            "answered",
            extra={
                "request_id": g.get("request_id"),
                "operation": operation,
                "method": method,
                "status": response.status_code,
                "duration_ms": round(taken * 1000, 2),
                "bytes_in": asked.content_length,
                "bytes_out": response.content_length,
                **trace(asked.environ.get("HTTP_TRACEPARENT")),
            },
        )
        return response

    def leave(_: BaseException | None) -> None:
        in_flight.dec()

    def metrics() -> Response:
        encode, content_type = choose_encoder(request.headers.get("Accept", ""))
        told = _read(lambda: encode(_everywhere(own)))
        return Response(told, headers={"Cache-Control": NEVER_KEPT}, content_type=content_type)

    app.before_request(begin)
    app.after_request(finish)
    app.teardown_request(leave)
    app.add_url_rule("/metrics", "metrics", metrics)


def trace(parent: str | None) -> dict[str, str]:
    """What the log says of the trace that a request belongs to; nothing without one.

    parent: the header `traceparent`.

    >>> trace("00-4bf92f3577b34da6a3ce929d0e0e4736-00f067aa0ba902b7-01")
    {'trace_id': '4bf92f3577b34da6a3ce929d0e0e4736'}
    """
    found = _TRACE_PARENT.match(parent) if parent else None
    if found is None or (found[1] == "00" and found[3]):
        return {}
    return {"trace_id": found[2]}


def _read(numbers: Callable[[], bytes]) -> bytes:
    """The numbers of all processes: a file that one of them is just making is empty for a moment, and is read again."""
    for _ in range(_READ_AGAIN):
        try:
            return numbers()
        except struct.error:
            sleep(_MOMENT_S)
    return numbers()


def _everywhere(own: CollectorRegistry) -> CollectorRegistry:
    """The numbers of all processes of the instance, where the server has told where they meet."""
    if not os.environ.get("PROMETHEUS_MULTIPROC_DIR"):
        return own
    together = CollectorRegistry()
    MultiProcessCollector(together)  # type: ignore[no-untyped-call]
    return together
