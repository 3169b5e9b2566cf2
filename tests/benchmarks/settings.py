"""Measures what stands behind the deployed settings: kinds of workers, tags and compression, memory. Prints Markdown.

The servers run at the same time and are asked in turn, so that a change of the machine's pace meets all.
"""

from __future__ import annotations

import tempfile
from collections.abc import Iterable
from concurrent.futures import ProcessPoolExecutor
from contextlib import ExitStack, closing
from functools import partial
from http.client import HTTPConnection
from pathlib import Path

import orjson

from service.app import create_app
from service.config import Config
from tests.benchmarks import cases as requests
from tests.benchmarks.alone import ask, best
from tests.benchmarks.cases import Body
from tests.benchmarks.run import SLICE_SECONDS, table
from tests.benchmarks.servers import CLIENTS, Measured, Server, load
from tests.benchmarks.worst import media_type, worst_requests

KINDS: dict[str, tuple[int, tuple[str, ...]]] = {
    "1 sync, whole answers": (1, ()),
    "2 sync, whole answers (deployed)": (2, ()),
    "4 sync, whole answers": (4, ()),
    "2 sync as gunicorn has it": (2, ("--worker-class", "sync")),
    "2 gthread of 4 threads": (2, ("--worker-class", "gthread", "--threads", "4")),
}
"""Kinds of servers: the number of workers, and what is given to gunicorn beside the deployed settings."""

ROUNDS = 6


def main() -> None:
    """Print everything."""
    print(f"## Kinds and numbers of workers\n\n{CLIENTS} clients on the same machine.\n")
    table(("request", "workers", "req/s", "p50 ms", "p99 ms", "CPU ms", "MiB a worker"), _kinds())
    print("\n## What tags and compression save\n\nProcessor time of the application.\n")
    table(("answer", "sent", "bytes", "ms"), _sent())
    print(f"\n## Memory\n\n{_memory()}")


def _kinds() -> Iterable[tuple[object, ...]]:
    asked = {
        "size-gradings, 9 sizes": ("/v1/size-gradings", requests.size_gradings(9)),
        "pullovers, 9 sizes": ("/v1/pullovers", requests.pullovers(9)),
    }
    with ExitStack() as running:
        scratch = Path(running.enter_context(tempfile.TemporaryDirectory()))
        clients = running.enter_context(ProcessPoolExecutor(CLIENTS))
        servers: dict[str, Server] = {}
        for name, (workers, arguments) in KINDS.items():
            server = Server("service.wsgi:app", {}, scratch / f"{len(servers)}.log", workers, arguments)
            running.callback(server.stop)
            servers[name] = server
        for server in servers.values():
            server.wait_until_up()
        for about, (path, request) in asked.items():
            body, seen = orjson.dumps(request), {name: Measured() for name in servers}
            for _ in range(ROUNDS):
                for name, server in servers.items():
                    load(clients, server, path, body, SLICE_SECONDS, seen[name])
            for name, measured in seen.items():
                yield (
                    about, name, f"{measured.per_second:.0f}", f"{measured.percentile_ms(0.5):.1f}",
                    f"{measured.percentile_ms(0.99):.1f}", f"{measured.processor_ms:.2f}",
                    f"{servers[name].resident_mib():.0f}",
                )  # fmt: skip


def _sent() -> Iterable[tuple[object, ...]]:
    app = create_app(Config(log_level="WARNING"))
    asked = {
        "the contract": ("GET", "/openapi.json", b""),
        "a table of bodies": ("GET", "/v1/standards/body-tables/women", b""),
        "pullovers, 9 sizes": ("QUERY", "/v1/pullovers", orjson.dumps(requests.pullovers(9))),
    }
    for about, (method, path, body) in asked.items():
        sent = app.test_client().open(path, method=method, data=body, content_type="application/json")
        known = {"HTTP_IF_NONE_MATCH": sent.headers["ETag"]}
        for way, encoding, headers in (("as it is", "", {}), ("compressed", "gzip", {}), ("304", "", known)):
            work = partial(ask, app, path, body, encoding=encoding, method=method, headers=headers)
            yield about, way, len(work()[1]), f"{best(work) * 1000:.2f}"


def _memory() -> str:
    with tempfile.TemporaryDirectory() as scratch:
        server = Server("service.wsgi:app", {}, Path(scratch) / "log", workers=1)
        server.wait_until_up()
        for operation, _, body, media in worst_requests():
            _ask_once(server, operation, body, media)
        held, most = server.resident_mib(), server.peak_mib()
        server.stop()
    return f"After every worst request a worker holds {held:.0f} MiB; it never held more than {most:.0f} MiB."


def _ask_once(server: Server, operation: str, body: Body | bytes, media: str) -> None:
    sent = body if isinstance(body, bytes) else orjson.dumps(body)
    headers = {"Content-Type": media_type(sent), "Accept": media}
    with closing(HTTPConnection("127.0.0.1", server.port, timeout=30)) as connection:
        connection.request("POST", f"/v1/{operation}", sent, headers)
        connection.getresponse().read()


if __name__ == "__main__":
    main()
