"""The application server with its deployed settings, on loopback."""

import ast
import json
import os
import runpy
import signal
import socket
from collections.abc import Callable
from contextlib import ExitStack
from pathlib import Path
from typing import Any

import pytest
from gunicorn import util
from gunicorn.config import KNOWN_SETTINGS, Config
from gunicorn.glogging import Logger
from gunicorn.http import get_parser

from tests.deploy.conftest import wait_until

ROOT = Path(__file__).resolve().parent.parent.parent
SETTINGS = ROOT / "deploy" / "gunicorn.conf.py"


@pytest.fixture(scope="module")
def instance(start_instance):
    return start_instance()


def exchange(port: int, sent: bytes) -> tuple[bytes, dict[str, object]]:
    """What a raw request is answered with: the head, and the body as JSON."""
    with socket.create_connection(("127.0.0.1", port), timeout=30) as connection:
        connection.sendall(sent)
        received = b""
        while part := connection.recv(65536):
            received += part
    head, _, body = received.partition(b"\r\n\r\n")
    return head, json.loads(body)


@pytest.fixture
def settings(monkeypatch: pytest.MonkeyPatch) -> dict[str, Any]:
    """What the settings' file defines; what it changes elsewhere is undone after the test."""
    monkeypatch.setattr(util, "write_error", util.write_error)
    monkeypatch.setenv("PROMETHEUS_MULTIPROC_DIR", "")
    return runpy.run_path(str(SETTINGS))


def test_every_setting_is_one_that_gunicorn_has() -> None:
    # gunicorn itself passes over names it does not know.
    defined: set[str] = set()
    for statement in ast.parse(SETTINGS.read_text()).body:
        if isinstance(statement, ast.FunctionDef):
            defined.add(statement.name)
        elif isinstance(statement, ast.Assign | ast.AnnAssign):
            targets = statement.targets if isinstance(statement, ast.Assign) else [statement.target]
            defined |= {target.id for target in targets if isinstance(target, ast.Name)}
    ours = {"SHARED_MEMORY", "TEMPORARY", "metrics_directory", "write_problem"}
    assert {"bind", "workers", "worker_class"} | ours <= defined
    assert defined - ours <= {setting.name for setting in KNOWN_SETTINGS}


def test_an_answer_is_sent_as_one_piece(settings: dict[str, Any]) -> None:
    class Recorder:
        def __init__(self, connection: socket.socket) -> None:
            self.connection = connection
            self.sent: list[bytes] = []

        def sendall(self, data: bytes) -> None:
            self.sent.append(bytes(data))

        def __getattr__(self, name: str) -> Any:
            return getattr(self.connection, name)

    def app(environ: Any, start_response: Any) -> list[bytes]:
        start_response("200 OK", [("Content-Length", "6")])
        return [b"one", b"two"]

    config = Config()
    worker = settings["worker_class"](0, 0, [], None, 1, config, Logger(config))
    worker.wsgi, worker.nr, worker.max_requests = app, 0, 10
    with socket.create_server(("127.0.0.1", 0)) as listener, ExitStack() as connections:
        asking = connections.enter_context(socket.create_connection(listener.getsockname()))
        accepted, address = listener.accept()
        connections.enter_context(accepted)
        asking.sendall(b"GET / HTTP/1.1\r\nHost: x\r\n\r\n")
        client = Recorder(accepted)
        request = next(get_parser(config, client, address))
        worker.handle_request(listener, request, client, address)
    worker.tmp.close()
    (whole,) = client.sent
    assert whole.startswith(b"HTTP/1.1 200 OK\r\n")
    assert whole.endswith(b"\r\n\r\nonetwo")


def test_a_reload_under_load_loses_no_request(instance, asking: Callable) -> None:
    before = instance.workers()
    with asking(instance.url) as load:
        load.go_on(20)
        os.kill(instance.process.pid, signal.SIGHUP)
        wait_until(lambda: not set(before) & set(instance.workers()))
        load.go_on(100)
    assert (load.failed, load.wrong) == ([], [])


def test_a_worker_killed_under_load_costs_at_most_the_request_it_held(instance, asking: Callable) -> None:
    with asking(instance.url) as load:
        load.go_on(20)
        killed = instance.workers()[0]
        os.kill(killed, signal.SIGKILL)
        wait_until(lambda: len(instance.workers()) == 2 and killed not in instance.workers())
        load.go_on(100)
    assert load.wrong == []
    assert len(load.failed) <= 1


@pytest.mark.parametrize(
    ("sent", "status"),
    [
        (b"\x16\x03\x01 nonsense\r\n\r\n", b"400"),
        (b"GET / HTTP/1.1\r\nHost: x\r\nA b: c\r\n\r\n", b"400"),
        (b"POST / HTTP/1.1\r\nHost: x\r\nTransfer-Encoding: chunked\r\nContent-Length: 3\r\n\r\n0\r\n\r\n", b"400"),
        (b"GET /" + b"x" * 3000 + b" HTTP/1.1\r\nHost: x\r\n\r\n", b"414"),
        (b"GET / HTTP/1.1\r\nHost: x\r\nA: " + b"x" * 5000 + b"\r\n\r\n", b"431"),
        (b"GET / HTTP/1.1\r\nHost: x\r\n" + b"A: b\r\n" * 70 + b"\r\n", b"431"),
    ],
)
def test_what_is_not_proper_http_is_answered_by_a_problem_document(instance, sent: bytes, status: bytes) -> None:
    head, problem = exchange(instance.port, sent)
    assert head.startswith(b"HTTP/1.1 " + status)
    assert b"Content-Type: application/problem+json" in head
    assert problem["type"] == "/problems/bad-request"
    assert problem["status"] == int(status)


def test_an_instance_leaves_no_metrics_behind(start_instance: Callable) -> None:
    instance = start_instance()
    directories = instance.metrics_directories()
    assert any(directory.is_dir() for directory in directories)
    instance.stop()
    assert not any(directory.exists() for directory in directories)
