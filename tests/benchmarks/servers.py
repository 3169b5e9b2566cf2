"""Two servers side by side with the deployed settings, and the clients that ask them."""

from __future__ import annotations

import os
import socket
import subprocess
import sys
import time
from collections.abc import Sequence
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
                return
            time.sleep(0.05)
        raise RuntimeError("The server did not come up in time.")

    def stop(self) -> None:
        """Let it end, and wait for that."""
        self._process.terminate()
        self._process.wait(timeout=30)

    def workers(self) -> list[int]:
        """The process ids of the workers."""
        main = self._process.pid
        return [int(child) for child in Path(f"/proc/{main}/task/{main}/children").read_text().split()]

    def processor_seconds(self) -> float:
        """What all workers have used up so far (proc(5): fields 14 and 15 of stat)."""
        stats = [Path(f"/proc/{worker}/stat").read_text().rpartition(")")[2].split() for worker in self.workers()]
        return sum(int(stat[11]) + int(stat[12]) for stat in stats) / TICKS

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
        ordered = sorted(self.latencies)
        return 1000 * ordered[min(int(share * len(ordered)), len(ordered) - 1)]


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


def _keep_asking(port: int, sent: bytes, seconds: float) -> Sequence[float]:
    latencies = []
    end = time.perf_counter() + seconds
    while (started := time.perf_counter()) < end:
        answer = _ask(port, sent)
        if not answer.startswith(b"HTTP/1.1 200 "):
            raise RuntimeError(f"Not answered: {answer[:500]!r}")
        latencies.append(time.perf_counter() - started)
    return latencies


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
