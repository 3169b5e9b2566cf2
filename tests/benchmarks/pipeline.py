"""A pipeline that knows its designs: most of what it asks is a new set of sizes, the rest it has asked before.

Every operation that takes sizes is asked a thousand times through nginx, with all of its answer and with the parts
that `include` and `answer_sizes` leave. Prints Markdown.
"""

from __future__ import annotations

import time
from collections.abc import Iterable, Mapping
from concurrent.futures import ProcessPoolExecutor

import orjson

from tests.benchmarks import cases as requests
from tests.benchmarks.cases import GAUGE, Body, Case
from tests.benchmarks.kept import behind_nginx
from tests.benchmarks.run import table
from tests.benchmarks.servers import CLIENTS, WORKERS, Server, ask_in_order, children, percentile_ms, processor_seconds
from tests.deploy.proxy import NGINX, Proxy

DESIGNS = 100

NEW_SIZES = 9
"""How many new sets of sizes are asked of each design, before one of them is asked again."""

LARGER = {"bust": 0.1, "rounds": 1, "body_rounds": 1, "stitches": 10}
"""By how much each number of a size grows from one set of sizes to the next."""


def main() -> None:
    """Print everything."""
    print(f"## A pipeline\n\n{WORKERS} workers behind nginx, {CLIENTS} clients; {DESIGNS} designs, of each {NEW_SIZES} "
          "new sets of sizes and one again. Processor time is that of workers and nginx.\n")  # fmt: skip
    if NGINX is None:
        print("Not measured: nginx is not installed.")
        return
    head = ("request", "asked", "kept", "req/s", "new p50 ms", "p99 ms", "kept p50 ms", "CPU ms", "req/s and core")
    table(head, _asked())


def _asked() -> Iterable[tuple[object, ...]]:
    with behind_nginx({}) as (clients, service, [proxy]):
        for case in requests.nine_sizes():
            if {"sizes", "grading"} & case.body.keys():
                yield _row(case, clients, service, proxy)


def _row(case: Case, clients: ProcessPoolExecutor, service: Server, proxy: Proxy) -> tuple[object, ...]:
    bodies = [requests_of(case.body, design) for design in range(DESIGNS)]
    used, started = _used(service, proxy), time.perf_counter()
    asked = ask_in_order(clients, proxy.port, case.path, bodies)
    seconds, used = time.perf_counter() - started, _used(service, proxy) - used
    new, kept = ([each.latency for each in asked if each.kept is whether] for whether in (False, True))
    return (
        f"{case.operation}, {case.name}", len(asked), len(kept), f"{len(asked) / seconds:.0f}",
        f"{percentile_ms(new, 0.5):.1f}", f"{percentile_ms(new, 0.99):.1f}", f"{percentile_ms(kept, 0.5):.1f}",
        f"{1000 * used / len(asked):.2f}", f"{len(asked) / used:.0f}",
    )  # fmt: skip


def _used(service: Server, proxy: Proxy) -> float:
    # Asked for anew each time: nginx's loader of kept answers ends a minute after the start.
    return service.processor_seconds() + processor_seconds(children(proxy.process))


def requests_of(body: Body, design: int) -> list[bytes]:
    """What is sent of one design, in order: its new sets of sizes, and the first of them again.

    body: what is asked of nine sizes. design: its number, which its gauge tells.
    """
    gauge = {**GAUGE, "stitches": GAUGE["stitches"] + design / 100}
    sent = [orjson.dumps(_in_sizes(body, gauge, more)) for more in range(NEW_SIZES)]
    return [*sent, sent[0]]


def _in_sizes(body: Body, gauge: Mapping[str, float], more: int) -> Body:
    if "grading" in body:
        return {**body, "grading": _in_sizes(body["grading"], gauge, more)}
    return {**body, "gauge": gauge, "sizes": [_larger(size, more) for size in body["sizes"]]}


def _larger(size: Body, more: int) -> Body:
    return size | {name: _grown(size[name], step * more) for name, step in LARGER.items() if name in size}


def _grown(amount: float | Mapping[str, float], by: float) -> object:
    if isinstance(amount, Mapping):
        return {name: number + by for name, number in amount.items()}
    return round(amount + by, 1)


if __name__ == "__main__":
    main()
