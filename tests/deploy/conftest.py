"""Servers on loopback: the service as deployed, alone and behind the proxy as deployed."""

import os
import shutil
import signal
import socket
import subprocess
import sys
import tempfile
import time
from collections.abc import Callable, Iterator
from contextlib import ExitStack
from dataclasses import dataclass, field
from pathlib import Path
from threading import Event, Thread

import pytest
import requests

ROOT = Path(__file__).resolve().parent.parent.parent
DEPLOY = ROOT / "deploy"
NGINX = shutil.which("nginx") or shutil.which("nginx", path="/usr/sbin")
QUESTION = {"gauge": {"stitches": 23, "rows": 32}, "items": [{"name": "bust", "across": 107}]}


@dataclass
class Instance:
    """One gunicorn with the settings and the application that are deployed."""

    port: int
    process: subprocess.Popen[bytes] | None = None

    def start(self) -> None:
        environment = os.environ | {"BIND": f"127.0.0.1:{self.port}", "WEB_CONCURRENCY": "2"}
        command = [sys.executable, "-m", "gunicorn", "--config", str(DEPLOY / "gunicorn.conf.py")]
        # A session of its own, so that all its processes can be killed at once.
        self.process = subprocess.Popen(command, env=environment, cwd=ROOT, start_new_session=True)
        process, ready = self.process, f"{self.url}/health/ready"
        wait_until(lambda: process.poll() is not None or answers(ready))
        assert process.poll() is None, "gunicorn has stopped"

    def kill(self) -> None:
        """As when the machine is lost."""
        assert self.process
        os.killpg(self.process.pid, signal.SIGKILL)
        self.process.wait()
        for directory in self.metrics_directories():
            shutil.rmtree(directory, ignore_errors=True)

    def stop(self) -> None:
        if self.process:
            self.process.terminate()
            self.process.wait(timeout=30)

    def metrics_directories(self) -> list[Path]:
        assert self.process
        return [base / f"pullover-grading-metrics-{self.process.pid}" for base in map(Path, ("/dev/shm", "/tmp"))]

    def workers(self) -> list[int]:
        assert self.process
        children = Path(f"/proc/{self.process.pid}/task/{self.process.pid}/children").read_text()
        return [int(child) for child in children.split()]

    @property
    def url(self) -> str:
        return f"http://127.0.0.1:{self.port}"


@dataclass
class Load:
    """A bounded stream of one question from a few clients; every answer is compared with the first."""

    url: str
    answered: int = 0
    failed: list[str] = field(default_factory=list)
    wrong: list[str] = field(default_factory=list)

    def __enter__(self) -> "Load":
        self._stop = Event()
        self._expected = requests.post(self.url, json=QUESTION, timeout=60).json()
        assert self._expected["items"], self._expected
        self._threads = [Thread(target=self._ask) for _ in range(3)]
        for thread in self._threads:
            thread.start()
        return self

    def __exit__(self, *_: object) -> None:
        self._stop.set()
        for thread in self._threads:
            thread.join()

    def go_on(self, more: int) -> None:
        """Wait until so many more questions have been answered."""
        goal = self.answered + more
        wait_until(lambda: self.answered >= goal or len(self.failed) > 50)

    def _ask(self) -> None:
        while not self._stop.wait(0.005):
            try:
                answer = requests.post(self.url, json=QUESTION, timeout=60)
            except requests.RequestException as error:
                self.failed.append(repr(error))
                continue
            if answer.status_code != 200:
                self.failed.append(f"{answer.status_code} {answer.text}")
            elif answer.json() != self._expected:
                self.wrong.append(answer.text)
            self.answered += 1


@pytest.fixture(scope="module")
def start_instance() -> Iterator[Callable[[], Instance]]:
    """Starts an instance that is stopped with the module's last test."""
    with ExitStack() as running:

        def start() -> Instance:
            instance = Instance(free_port())
            running.callback(instance.stop)
            instance.start()
            return instance

        yield start


@pytest.fixture(scope="module")
def start_proxy() -> Iterator[Callable[..., str]]:
    """Starts nginx before the instances at some ports; takes textual changes of its settings."""
    if NGINX is None:
        pytest.skip("nginx is not installed")
    with ExitStack() as running:

        def start(ports: tuple[int, int], changes: dict[str, str] | None = None) -> str:
            # nginx's workers are another user where it is started by root, so that all may enter; and a path in its
            # settings has no spaces. Both are sure of /tmp alone.
            scratch = Path(tempfile.mkdtemp(prefix="pullover-grading-nginx-", dir="/tmp"))
            running.callback(shutil.rmtree, scratch)
            scratch.chmod(0o755)
            port = free_port()
            settings = nginx_settings(scratch, port, ports, changes or {})
            command = [NGINX, "-e", "stderr", "-p", str(scratch), "-c", str(settings), "-g", "daemon off;"]
            process = subprocess.Popen(command, stdout=subprocess.DEVNULL)
            running.callback(process.wait, 30)
            running.callback(process.terminate)
            wait_until(lambda: process.poll() is not None or connects(port))
            assert process.poll() is None, "nginx has stopped"
            return f"http://127.0.0.1:{port}"

        yield start


@pytest.fixture(scope="module")
def asking() -> Callable[[str], Load]:
    """A stream of questions to the service at an address."""
    return lambda url: Load(f"{url}/v1/gauge-conversions")


def nginx_settings(scratch: Path, port: int, upstreams: tuple[int, int], changes: dict[str, str]) -> Path:
    """The deployed settings with this machine's addresses and a scratch directory in place of theirs."""
    changes = {
        "listen 8080;": f"listen 127.0.0.1:{port};",
        "server app1:8000 ": f"server 127.0.0.1:{upstreams[0]} ",
        "server app2:8000 ": f"server 127.0.0.1:{upstreams[1]} ",
        **changes,
    }
    text = (DEPLOY / "nginx.conf").read_text()
    for before, after in changes.items():
        assert text.count(before) == 1, before
        text = text.replace(before, after)
    settings = scratch / "nginx.conf"
    settings.write_text(text.replace(" /tmp/", f" {scratch}/"))
    return settings


def wait_until(condition: Callable[[], bool]) -> None:
    """Until something holds; two minutes at most, since another's load may slow this machine down."""
    end = time.monotonic() + 120
    while not condition():
        assert time.monotonic() < end, "waited in vain"
        time.sleep(0.025)


def answers(url: str) -> bool:
    try:
        return requests.get(url, timeout=5).ok
    except requests.RequestException:
        return False


def connects(port: int) -> bool:
    with socket.socket() as probe:
        return probe.connect_ex(("127.0.0.1", port)) == 0


def free_port() -> int:
    with socket.socket() as probe:
        probe.bind(("127.0.0.1", 0))
        port: int = probe.getsockname()[1]
        return port
