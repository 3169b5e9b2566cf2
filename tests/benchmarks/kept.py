"""What nginx's cache saves: a repeated computation beside one that is made anew, both through nginx. As Markdown."""

from __future__ import annotations

import tempfile
from collections.abc import Iterable, Iterator
from concurrent.futures import ProcessPoolExecutor
from contextlib import ExitStack, contextmanager
from pathlib import Path

import orjson

from tests.benchmarks import cases as requests
from tests.benchmarks.run import SLICE_SECONDS, SLICES, table
from tests.benchmarks.servers import CLIENTS, WORKERS, Measured, Server, ask_in_order, load
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


@contextmanager
def behind_nginx(*changes: dict[str, str]) -> Iterator[tuple[ProcessPoolExecutor, Server, list[Proxy]]]:
    """Clients, the service and an nginx before it for each set of changes of its settings; no rate limit in any."""
    with ExitStack() as running:
        scratch = Path(running.enter_context(tempfile.TemporaryDirectory()))
        clients = running.enter_context(ProcessPoolExecutor(CLIENTS))
        service = Server("service.wsgi:app", {}, scratch / "service.log")
        running.callback(service.stop)
        service.wait_until_up()
        proxies = []
        for changed in changes:
            proxy = Proxy((service.port, service.port), UNHURRIED | changed)
            running.callback(proxy.stop)
            proxies.append(proxy)
        for proxy in proxies:
            proxy.wait_until_up()
        yield clients, service, proxies


def _compared() -> Iterable[tuple[object, ...]]:
    with behind_nginx(KEEPING_NOTHING, {}) as (clients, service, proxies):
        for case in requests.nine_sizes():
            sent, seen = orjson.dumps(case.body), [Measured(), Measured()]
            for proxy in proxies:
                ask_in_order(clients, proxy.port, case.path, [[sent]])
            for _ in range(SLICES):
                for proxy, measured in zip(proxies, seen, strict=True):
                    load(clients, service, case.path, sent, SLICE_SECONDS, measured, port=proxy.port)
            computed, kept = seen
            ratio = kept.per_second / computed.per_second
            goal = GOAL if (case.operation, case.name) == ("pullovers", "9 sizes") else None
            yield (
                f"{case.operation}, {case.name}", f"{computed.per_second:.0f}", f"{computed.percentile_ms(0.5):.1f}",
                f"{kept.per_second:.0f}", f"{kept.percentile_ms(0.5):.1f}", f"{ratio:.1f}", goal or "",
                "" if goal is None else "yes" if ratio >= goal else "NO",
            )  # fmt: skip


if __name__ == "__main__":
    main()
