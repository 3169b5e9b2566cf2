"""Servers on loopback: the service as deployed, alone and behind the proxy as deployed."""

import os
import shutil
import signal
import subprocess
import sys
import time
from collections.abc import Callable, Iterator
from contextlib import ExitStack
from dataclasses import dataclass, field
from itertools import count
from pathlib import Path
from threading import Event, Thread
from typing import Any

import pytest
import requests

from tests.deploy.proxy import NGINX, Proxy, free_port

ROOT = Path(__file__).resolve().parent.parent.parent
DEPLOY = ROOT / "deploy"
QUESTION: dict[str, Any] = {"gauge": {"stitches": 23, "rows": 32}, "items": [{"name": "bust", "across": 107}]}


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
        # the first worker answers before the second is there
        wait_until(lambda: process.poll() is not None or (answers(ready) and len(self.workers()) == 2))
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
    """A bounded stream of questions from a few clients, each with a name of its own, so that nothing that is kept
    answers it; every answer is compared with the first.
    """

    url: str
    answered: int = 0
    failed: list[str] = field(default_factory=list)
    wrong: list[str] = field(default_factory=list)

    def __enter__(self) -> "Load":
        self._stop, self._names = Event(), count()
        self._expected = self._answer(requests.post(self.url, json=QUESTION, timeout=60), "bust")
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
            name = str(next(self._names))
            question = {**QUESTION, "items": [{**QUESTION["items"][0], "name": name}]}
            try:
                answer = requests.post(self.url, json=question, timeout=60)
            except requests.RequestException as error:
                self.failed.append(repr(error))
                continue
            if answer.status_code != 200:
                self.failed.append(f"{answer.status_code} {answer.text}")
            elif self._answer(answer, name) != self._expected:
                self.wrong.append(answer.text)
            self.answered += 1

    @staticmethod
    def _answer(answer: requests.Response, name: str) -> object:
        """What is the same whatever the name, which has to come back."""
        (item,) = answer.json()["items"]
        assert item.pop("name") == name
        return item


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
def start_proxy() -> Iterator[Callable[..., Proxy]]:
    """Starts nginx before the instances at some ports; takes what `Proxy` takes."""
    if NGINX is None:
        pytest.skip("nginx is not installed")
    with ExitStack() as running:

        def start(*arguments: Any, **options: Any) -> Proxy:
            proxy = Proxy(*arguments, **options)
            running.callback(proxy.stop)
            proxy.wait_until_up()
            return proxy

        yield start


@pytest.fixture(scope="module")
def asking() -> Callable[[str], Load]:
    """A stream of questions to the service at an address."""
    return lambda url: Load(f"{url}/v1/gauge-conversions")


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
