"""Measures every operation beside a bare Flask route, what its cost grows with, and the workers' memory.

Both servers run at the same time with the same settings and are asked in turn, so that a change of the
machine's pace meets both. Prints Markdown.
"""

from __future__ import annotations

import math
import tempfile
from collections.abc import Callable, Iterable, Mapping, Sequence
from concurrent.futures import ProcessPoolExecutor
from contextlib import ExitStack
from pathlib import Path
from statistics import correlation, linear_regression
from typing import Any

import orjson
from flask import Flask

from service.app import create_app
from service.config import Config
from service.operation import Operation
from service.routes import operations
from tests.benchmarks import cases as requests
from tests.benchmarks.alone import ask, best
from tests.benchmarks.bare import ANSWERS
from tests.benchmarks.cases import BUILDERS, Body, Case
from tests.benchmarks.servers import CLIENTS, WORKERS, Measured, Server, load

SLICE_SECONDS = 0.3
SLICES = 3

STARTS = 3

GOALS = {
    ("gauge-conversions", "1 size"): 0.4,
    ("gauge-conversions", "9 sizes"): 0.4,
    ("gauge-conversions", "40 sizes"): 0.4,
    ("size-gradings", "9 sizes"): 0.5,
    ("size-matches", "9 sizes"): 0.4,
    ("raglan-schedules", "9 sizes"): 0.3,
    ("yoke-adjustments", "9 sizes"): 0.3,
    ("chart-placements", "9 sizes"): 0.4,
    ("yarn-estimates", "9 sizes"): 0.4,
    ("proofs", "9 sizes"): 0.3,
    ("proofs", "9 sizes, as values"): 0.3,
    ("pullovers", "9 sizes"): 0.25,
    ("pullovers", "40 sizes"): 0.18,
    ("pullovers", "9 sizes and a 60 x 80 chart"): 0.35,
    ("pullovers", "9 sizes and a 60 x 80 chart, round by round"): 0.35,
}
"""The least share of the bare route's throughput, by operation and request."""

GROWTH = ("over", "from", "to", "ms", "per unit µs", "r²", "exponent")
"""The heads of the columns of `growth`."""

LIMITS = {
    ("a worker", "MiB after all these requests"): 80,
    ("a worker", "seconds of processor time until it answers"): 1,
}
"""What a worker stays below."""


def main() -> None:
    """Print everything."""
    quiet = Config(log_level="WARNING")
    app, by_name = create_app(quiet), {operation.name: operation for operation in operations(quiet)}
    cases = requests.cases()
    answers = [_answer(app, case) for case in cases]
    print(f"## Beside a bare route\n\n{WORKERS} workers, {CLIENTS} clients.\n")
    reached: dict[tuple[str, str], float] = {}
    table(
        ("operation", "request", "in", "out", "req/s", "p50 ms", "p99 ms", "CPU ms", "bare req/s", "bare CPU ms",
         "ratio", "CPU ratio", "core ms", "core share"),
        _side_by_side(cases, answers, app, by_name, reached),
    )  # fmt: skip
    print("\n## Goals\n")
    table(
        ("goal", "wanted", "reached", "met"),
        [
            (f"{operation}, {name}", f"{goal:.2f} or more", f"{ratio:.2f}", "yes" if ratio >= goal else "NO")
            for (operation, name), goal in GOALS.items()
            for ratio in [reached[operation, name]]
        ]
        + [
            (f"{what}, {name}", f"below {limit}", f"{amount:.3g}", "yes" if amount < limit else "NO")
            for (what, name), limit in LIMITS.items()
            for amount in [reached[what, name]]
        ],
    )
    print(
        "\n## What the cost grows with\n\nProcessor time of the application; the exponent is that of the last step.\n"
    )
    table(("operation", *GROWTH), _growth(app))


def table(head: Sequence[str], rows: Iterable[Sequence[object]]) -> None:
    """Print a table, every row as soon as it is there."""
    print(f"| {' | '.join(head)} |\n| {' | '.join('---' for _ in head)} |", flush=True)
    for row in rows:
        print(f"| {' | '.join(map(str, row))} |", flush=True)


def _side_by_side(
    cases: Sequence[Case],
    answers: Sequence[bytes],
    app: Flask,
    by_name: dict[str, Operation[Any, Any]],
    reached: dict[tuple[str, str], float],
) -> Iterable[tuple[object, ...]]:
    with ExitStack() as running:
        scratch = Path(running.enter_context(tempfile.TemporaryDirectory()))
        (scratch / "answers.json").write_bytes(b"[" + b",".join(answers) + b"]")
        clients = running.enter_context(ProcessPoolExecutor(CLIENTS))
        service = Server("service.wsgi:app", {}, scratch / "service.log")
        running.callback(service.stop)
        bare = Server(
            "tests.benchmarks.bare:create_app()", {ANSWERS: str(scratch / "answers.json")}, scratch / "bare.log"
        )
        running.callback(bare.stop)
        for server in (service, bare):
            server.wait_until_up()
        idle = service.resident_mib()
        for place, (case, answer) in enumerate(zip(cases, answers, strict=True)):
            body, ours, floor = orjson.dumps(case.body), Measured(), Measured()
            for _ in range(SLICES):
                load(clients, service, case.path, body, SLICE_SECONDS, ours)
                load(clients, bare, f"/{place}", body, SLICE_SECONDS, floor)
            core, whole = (_core_seconds(by_name[case.operation], case.body), _seconds(app, case.path, case.body))
            reached[case.operation, case.name] = ours.per_second / floor.per_second
            yield (
                case.operation, case.name, len(body), len(answer), f"{ours.per_second:.0f}",
                f"{ours.percentile_ms(0.5):.1f}", f"{ours.percentile_ms(0.99):.1f}", f"{ours.processor_ms:.2f}",
                f"{floor.per_second:.0f}", f"{floor.processor_ms:.2f}", f"{reached[case.operation, case.name]:.2f}",
                f"{floor.processor_ms / ours.processor_ms:.2f}", f"{core * 1000:.2f}", f"{core / whole:.0%}",
            )  # fmt: skip
        reached["a worker", "MiB after all these requests"] = held = service.resident_mib()
        print(f"\nA worker holds {idle:.0f} MiB when it has started and {held:.0f} MiB after this; one of the bare "
              f"application {bare.resident_mib():.0f} MiB.")  # fmt: skip
        whole, reached["a worker", "seconds of processor time until it answers"] = _start()
        print(f"A server of one worker answers after {whole:.1f} s.")


def _start() -> tuple[float, float]:
    """The least of several starts of a server of one worker: the time until it answers, the worker's processor time."""
    found = []
    with tempfile.TemporaryDirectory() as scratch:
        for _ in range(STARTS):
            server = Server("service.wsgi:app", {}, Path(scratch) / "log", workers=1)
            server.wait_until_up()
            found.append((server.seconds_to_start, server.processor_seconds()))
            server.stop()
    wholes, workers = zip(*found, strict=True)
    return min(wholes), min(workers)


def _growth(app: Flask) -> Iterable[tuple[object, ...]]:
    """How the cost of every operation grows with its sizes, and of some with more than that."""

    def by(operation: str, over: str, amounts: Sequence[int], build: Callable[[int], Body]) -> tuple[object, ...]:
        return _grown(app, operation, over, {amount: build(amount) for amount in amounts})

    for operation, build in BUILDERS.items():
        yield by(operation, "sizes", (5, 10, 20, 40), build)
    yield by("raglan-schedules", "rounds of 4 sizes", (625, 1250, 2500, 5000), requests.long_yokes)
    yield by(
        "chart-placements", "chart width", (100, 200, 400, 800),
        lambda width: requests.chart_placements(1, width=width),
    )  # fmt: skip
    yield by(
        "chart-placements", "chart height", (50, 100, 200, 400),
        lambda height: requests.chart_placements(1, height=height),
    )  # fmt: skip
    yield by(
        "chart-placements", "rounds of the yoke", (100, 200, 400, 800),
        lambda rounds: requests.chart_placements(1, rounds=rounds),
    )  # fmt: skip
    yield by("pullovers", "sizes with a 60 x 80 chart", (5, 10, 20, 40), requests.charted_pullovers)
    for over, section, count, gauges in (
        ("rounds of the yoke of 9 sizes", "yoke", "rounds", [(22, 20), (22, 40), (22, 80), (22, 160)]),
        ("stitches of the body of 9 sizes", "body", "stitches", [(20, 80), (28, 80), (40, 80), (80, 80)]),
    ):
        bodies = [requests.pullovers_at(9, stitches, rows) for stitches, rows in gauges]
        yield _grown(app, "pullovers", over, {_middle(app, body)[section][count]: body for body in bodies})
    charts = ((40, 40), (80, 40), (80, 80), (160, 80), (160, 160))
    yield _grown(
        app, "pullovers", "chart cells, 9 sizes",
        {width * height: requests.charted_pullovers(9, width, height) for width, height in charts},
    )  # fmt: skip


def _middle(app: Flask, body: Body) -> Body:
    """The middle size of what is answered."""
    sizes: list[Body] = orjson.loads(_answer(app, Case("pullovers", "growth", body)))["sizes"]
    return sizes[len(sizes) // 2]


def _grown(app: Flask, operation: str, over: str, bodies: Mapping[int, Body]) -> tuple[object, ...]:
    seconds = [_seconds(app, f"/v1/{operation}", body) for body in bodies.values()]
    return (operation, *growth(over, list(bodies), seconds))


def growth(over: str, amounts: Sequence[int], seconds: Sequence[float]) -> tuple[object, ...]:
    """The columns of a table of growth: a straight line fitted, and the exponent of the last step.

    over: what grows. amounts, seconds: of it, and what they cost.
    """
    fitted = linear_regression(amounts, seconds)
    exponent = math.log(seconds[-1] / seconds[-2]) / math.log(amounts[-1] / amounts[-2])
    return (
        over, amounts[0], amounts[-1], f"{seconds[0] * 1000:.1f} to {seconds[-1] * 1000:.1f}",
        f"{fitted.slope * 1e6:.1f}", f"{correlation(amounts, seconds) ** 2:.4f}", f"{exponent:.2f}",
    )  # fmt: skip


def _answer(app: Flask, case: Case) -> bytes:
    status, answer = ask(app, case.path, case.body)
    if status != 200:
        raise RuntimeError(f"{case} is answered {status}: {answer[:1000]!r}")
    return answer


def _seconds(app: Flask, path: str, body: Body) -> float:
    sent = orjson.dumps(body)
    status, answer = ask(app, path, sent)
    if status != 200:
        raise RuntimeError(f"{path} is answered {status}: {answer[:1000]!r}")
    return best(lambda: ask(app, path, sent))


def _core_seconds(operation: Operation[Any, Any], body: Body) -> float:
    query = operation.load(body)
    return best(lambda: operation.call(query))


if __name__ == "__main__":
    main()
