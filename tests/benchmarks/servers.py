"""Two servers side by side with the deployed settings, and the clients that ask them."""

from __future__ import annotations

import os
import socket
import subprocess
import sys
import time
from collections.abc import Iterable, Sequence
from concurrent.futures import ProcessPoolExecutor
from dataclasses import dataclass, field
from pathlib import Path

ROOT = Path(__file__).resolve().parent.parent.parent
WORKERS = 2
CLIENTS = 4
TICKS = os.sysconf("SC_CLK_TCK")


class Server:
    """gunicorn with the deployed settings and an application, on a free port of the loopback."""

    def __init__(
        self, app: str, environment: dict[str, str], log: Path, workers: int = WORKERS, arguments: Sequence[str] = ()
    ) -> None:
        self.port = _free_port()
        self.seconds_to_start = 0.0
        """From the start to the first answers, once it is up."""
        self._started = time.perf_counter()
        self._log = log
        self._count = workers
        with log.open("wb") as output:
            self._process = subprocess.Popen(
                [
                    sys.executable,
                    "-m",
                    "gunicorn",
                    "--config",
                    "deploy/gunicorn.conf.py",
                    "--max-requests",
                    "0",
                    *arguments,
                    app,
                ],
                env=os.environ | environment | {"BIND": f"127.0.0.1:{self.port}", "WEB_CONCURRENCY": str(workers)},
                cwd=ROOT,
                stdout=output,
                stderr=output,
            )

    def wait_until_up(self) -> None:
        """Until every worker has answered, as far as one can tell from outside."""
        for _ in range(600):
            if self._process.poll() is not None:
                raise RuntimeError(f"The server did not start:\n{self._log.read_text()}")
            try:
                answered = all(_ask(self.port, b"GET /health/ready HTTP/1.0\r\n\r\n") for _ in range(4 * self._count))
            except OSError:
                answered = False
            if answered and len(self.workers()) == self._count:
                self.seconds_to_start = time.perf_counter() - self._started
                return
            time.sleep(0.05)
        raise RuntimeError("The server did not come up in time.")

    def stop(self) -> None:
        """Let it end, and wait for that."""
        self._process.terminate()
        self._process.wait(timeout=30)

    def workers(self) -> list[int]:
        """The process ids of the workers."""
        return children(self._process.pid)

    def processor_seconds(self) -> float:
        """What all workers have used up so far."""
        return processor_seconds(self.workers())

    def resident_mib(self) -> float:
        """The resident memory of the largest worker."""
        return max(_memory_kib(worker, "VmRSS") for worker in self.workers()) / 1024

    def peak_mib(self) -> float:
        """The most that any worker has held at a time."""
        return max(_memory_kib(worker, "VmHWM") for worker in self.workers()) / 1024


@dataclass
class Measured:
    """What several clients saw of one server with one request. latencies: in seconds."""

    seconds: float = 0.0
    processor_seconds: float = 0.0
    latencies: list[float] = field(default_factory=list)

    @property
    def per_second(self) -> float:
        """Answers a second."""
        return len(self.latencies) / self.seconds

    @property
    def processor_ms(self) -> float:
        """What an answer costs the workers, in milliseconds of processor time."""
        return 1000 * self.processor_seconds / len(self.latencies)

    def percentile_ms(self, share: float) -> float:
        """The latency that so large a share of the answers stays below, in milliseconds."""
        return percentile_ms(self.latencies, share)


@dataclass(frozen=True, slots=True)
class Asked:
    """What a client saw of one request. latency: in seconds. kept: whether a proxy answered it from memory."""

    latency: float
    kept: bool


def percentile_ms(latencies: Sequence[float], share: float) -> float:
    """What so large a share of latencies in seconds stays below, in milliseconds."""
    ordered = sorted(latencies)
    return 1000 * ordered[min(int(share * len(ordered)), len(ordered) - 1)]


def children(process: int) -> list[int]:
    """The process ids of a process's children."""
    return [int(child) for child in Path(f"/proc/{process}/task/{process}/children").read_text().split()]


def processor_seconds(processes: Iterable[int]) -> float:
    """What processes have used up so far (proc(5): fields 14 and 15 of stat)."""
    stats = [Path(f"/proc/{process}/stat").read_text().rpartition(")")[2].split() for process in processes]
    return sum(int(stat[11]) + int(stat[12]) for stat in stats) / TICKS


def load(
    clients: ProcessPoolExecutor,
    server: Server,
    path: str,
    body: bytes,
    seconds: float,
    into: Measured,
    *,
    port: int | None = None,
) -> None:
    """Ask a server the same over and over for some seconds, and add what is seen.

    port: of what stands before the server, where it isn't asked itself.
    """
    before, started = server.processor_seconds(), time.perf_counter()
    work = [clients.submit(_keep_asking, port or server.port, _request(path, body), seconds) for _ in range(CLIENTS)]
    for done in work:
        into.latencies += done.result()
    into.seconds += time.perf_counter() - started
    into.processor_seconds += server.processor_seconds() - before


def ask_in_order(clients: ProcessPoolExecutor, port: int, path: str, bodies: Sequence[Sequence[bytes]]) -> list[Asked]:
    """Share lists of bodies out among the clients; of each list a body is sent when the one before is answered."""
    shares = [[_request(path, body) for part in bodies[client::CLIENTS] for body in part] for client in range(CLIENTS)]
    work = [clients.submit(_ask_each, port, share) for share in shares]
    return [asked for done in work for asked in done.result()]


def _ask_each(port: int, requests: Sequence[bytes]) -> list[Asked]:
    return [_timed(port, sent) for sent in requests]


def _keep_asking(port: int, sent: bytes, seconds: float) -> Sequence[float]:
    latencies = []
    end = time.perf_counter() + seconds
    while time.perf_counter() < end:
        latencies.append(_timed(port, sent).latency)
    return latencies


def _timed(port: int, sent: bytes) -> Asked:
    started = time.perf_counter()
    answer = _ask(port, sent)
    latency = time.perf_counter() - started
    if not answer.startswith(b"HTTP/1.1 200 "):
        raise RuntimeError(f"Not answered: {answer[:500]!r}")
    return Asked(latency, b"\r\nCache-Status: nginx; hit\r\n" in answer[:4096])


def _ask(port: int, sent: bytes) -> bytes:
    with socket.create_connection(("127.0.0.1", port), timeout=30) as connection:
        connection.sendall(sent)
        parts = []
        while part := connection.recv(1 << 20):
            parts.append(part)
    return b"".join(parts)


def _request(path: str, body: bytes) -> bytes:
    head = (
        f"POST {path} HTTP/1.1\r\nHost: 127.0.0.1\r\nConnection: close\r\n"
        f"Content-Type: application/json\r\nContent-Length: {len(body)}\r\n\r\n"
    )
    return head.encode() + body


def _free_port() -> int:
    with socket.socket() as probe:
        probe.bind(("127.0.0.1", 0))
        port: int = probe.getsockname()[1]
        return port


def _memory_kib(process: int, which: str) -> int:
    lines = Path(f"/proc/{process}/status").read_text().splitlines()
    return next(int(line.split()[1]) for line in lines if line.startswith(f"{which}:"))
