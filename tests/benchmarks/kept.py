"""What nginx's cache saves: a repeated computation beside one that is made anew, both through nginx. As Markdown."""

from __future__ import annotations

import tempfile
from collections.abc import Iterable
from concurrent.futures import ProcessPoolExecutor
from contextlib import ExitStack
from pathlib import Path

import orjson

from tests.benchmarks import cases as requests
from tests.benchmarks.run import SLICE_SECONDS, SLICES, table
from tests.benchmarks.servers import CLIENTS, WORKERS, Measured, Server, load
from tests.deploy.proxy import NGINX, UNHURRIED, Proxy

GOAL = 20
"""A nine-size pullover that is kept comes at least so many times as often as one that is computed."""

KEEPING_NOTHING = {'"~^POST\\|\\|(?s:.)" answers;': ""}


def main() -> None:
    """Print everything."""
    print(f"## Kept answers\n\n{WORKERS} workers behind nginx, {CLIENTS} clients.\n")
    if NGINX is None:
        print("Not measured: nginx is not installed.")
        return
    table(("request", "computed/s", "p50 ms", "kept/s", "p50 ms", "ratio", "goal", "met"), _compared())


def _compared() -> Iterable[tuple[object, ...]]:
    asked = {
        "gauge-conversions": requests.gauge_conversions(9),
        "size-gradings": requests.size_gradings(9),
        "pullovers": requests.pullovers(9),
    }
    with ExitStack() as running:
        scratch = Path(running.enter_context(tempfile.TemporaryDirectory()))
        clients = running.enter_context(ProcessPoolExecutor(CLIENTS))
        service = Server("service.wsgi:app", {}, scratch / "service.log")
        running.callback(service.stop)
        service.wait_until_up()
        ports = (service.port, service.port)
        proxies = [Proxy(ports, UNHURRIED | KEEPING_NOTHING), Proxy(ports, UNHURRIED)]
        for proxy in proxies:
            running.callback(proxy.stop)
            proxy.wait_until_up()
        for operation, body in asked.items():
            seen = [Measured(), Measured()]
            for _ in range(SLICES):
                for proxy, measured in zip(proxies, seen, strict=True):
                    sent = orjson.dumps(body)
                    load(clients, service, f"/v1/{operation}", sent, SLICE_SECONDS, measured, port=proxy.port)
            computed, kept = seen
            ratio, goal = kept.per_second / computed.per_second, GOAL if operation == "pullovers" else None
            yield (
                f"{operation}, 9 sizes", f"{computed.per_second:.0f}", f"{computed.percentile_ms(0.5):.1f}",
                f"{kept.per_second:.0f}", f"{kept.percentile_ms(0.5):.1f}", f"{ratio:.1f}", goal or "",
                "" if goal is None else "yes" if ratio >= goal else "NO",
            )  # fmt: skip


if __name__ == "__main__":
    main()
