"""The service as it runs in production: gunicorn on a free port of this machine."""

import socket
import subprocess
import sys
import time
from collections.abc import Iterator
from contextlib import contextmanager
from pathlib import Path

import pytest
import requests

ROOT = Path(__file__).parents[1]


@contextmanager
def served(directory: Path) -> Iterator[str]:
    """The address of a gunicorn that serves the application; its log goes to the directory."""
    with socket.socket() as probe:
        probe.bind(("127.0.0.1", 0))
        port = probe.getsockname()[1]
    address = f"http://127.0.0.1:{port}"
    command = [sys.executable, "-m", "gunicorn", "--bind", f"127.0.0.1:{port}", "--no-control-socket"]
    log = directory / "gunicorn.log"
    with log.open("wb") as output:
        process = subprocess.Popen([*command, "service.wsgi:app"], cwd=ROOT, stdout=output, stderr=output)
        try:
            _wait_until_ready(address, process, log)
            yield address
        finally:
            process.terminate()
            process.wait(timeout=30)


def _wait_until_ready(address: str, process: "subprocess.Popen[bytes]", log: Path) -> None:
    end = time.monotonic() + 120
    while process.poll() is None and time.monotonic() < end:
        try:
            if requests.get(f"{address}/health/ready", timeout=5).ok:
                return
        except requests.RequestException:
            time.sleep(0.1)
    pytest.fail(f"gunicorn did not become ready:\n{log.read_text()}")
