"""Numbers, log and readiness of an instance with several workers, on loopback."""

import json
import os
import signal
import socket
from collections.abc import Callable
from contextlib import ExitStack
from datetime import datetime, timedelta
from pathlib import Path

import pytest
import requests
from prometheus_client.multiprocess import MultiProcessCollector
from prometheus_client.parser import text_string_to_metric_families

from tests.deploy.conftest import QUESTION, Instance, wait_until
from tests.deploy.proxy import connects

BODY = json.dumps(QUESTION).encode()
HEAD = (
    b"POST /v1/gauge-conversions HTTP/1.1\r\nHost: x\r\nContent-Type: application/json\r\n"
    b"Content-Length: %d\r\n\r\n" % len(BODY)
)


def ask(instance: Instance, times: int) -> None:
    for _ in range(times):
        assert requests.post(f"{instance.url}/v1/gauge-conversions", json=QUESTION, timeout=30).ok


def samples(instance: Instance, name: str) -> list[float]:
    text = requests.get(f"{instance.url}/metrics", timeout=30).text
    families = text_string_to_metric_families(text)
    return [
        sample.value
        for family in families
        for sample in family.samples
        if sample.name == name and sample.labels.get("operation", "gauge-conversions") == "gauge-conversions"
    ]


def replace_workers(instance: Instance) -> None:
    before = set(instance.workers())
    os.kill(instance.process.pid, signal.SIGHUP)
    wait_until(lambda: len(instance.workers()) == 2 and not before & set(instance.workers()))


def test_the_numbers_of_all_workers_add_up_and_outlive_them(start_instance: Callable) -> None:
    instance = start_instance()
    ask(instance, 20)
    replace_workers(instance)
    ask(instance, 5)
    os.kill(instance.workers()[0], signal.SIGKILL)
    wait_until(lambda: len(instance.workers()) == 2)
    ask(instance, 5)
    assert samples(instance, "grading_requests_total") == [30]
    assert samples(instance, "grading_request_seconds_count") == [30]
    assert samples(instance, "grading_build_info") == [1]


def test_a_request_lost_with_its_worker_is_in_flight_no_more(start_instance: Callable) -> None:
    instance = start_instance()
    before = instance.workers()
    with socket.create_connection(("127.0.0.1", instance.port), timeout=30) as connection:
        connection.sendall(HEAD + BODY[:5])
        wait_until(lambda: in_flight(instance) == 1)
        for worker in before:
            os.kill(worker, signal.SIGKILL)
        wait_until(lambda: len(set(instance.workers()) - set(before)) == 2)
    # The question itself.
    assert samples(instance, "grading_requests_in_flight") == [1]


def test_a_worker_goes_on_with_the_files_of_the_one_before(start_instance: Callable) -> None:
    instance = start_instance()
    (directory,) = [place for place in instance.metrics_directories() if place.is_dir()]
    ask(instance, 10)
    for worker in instance.workers():
        os.kill(worker, signal.SIGKILL)
        wait_until(lambda gone=worker: len(instance.workers()) == 2 and gone not in instance.workers())
    ask(instance, 10)
    places = {file.stem.rpartition("_")[2] for file in directory.iterdir()}
    assert places == {"0", "1"}


def test_an_instance_told_to_drain_is_unready_in_all_its_workers_and_still_computes(
    start_instance: Callable, monkeypatch: pytest.MonkeyPatch, tmp_path: Path
) -> None:
    monkeypatch.setenv("GRADING_DRAIN_FILE", str(tmp_path / "draining"))
    instance = start_instance()
    (tmp_path / "draining").touch()
    answers = [requests.get(f"{instance.url}/health/ready", timeout=30) for _ in range(20)]
    assert {answer.status_code for answer in answers} == {503}
    ask(instance, 20)
    (tmp_path / "draining").unlink()
    assert requests.get(f"{instance.url}/health/ready", timeout=30).ok


def test_a_stopping_instance_answers_what_it_has_begun_and_is_ready_for_nothing_more(start_instance: Callable) -> None:
    instance = start_instance()
    with ExitStack() as connections:

        def send(content: bytes) -> socket.socket:
            address = ("127.0.0.1", instance.port)
            connection = connections.enter_context(socket.create_connection(address, timeout=30))
            connection.sendall(content)
            return connection

        begun = [send(HEAD + BODY[:5]) for _ in instance.workers()]
        wait_until(lambda: in_flight(instance) == len(begun))
        later = send(b"GET /health/ready HTTP/1.1\r\nHost: x\r\n\r\n")
        instance.process.terminate()
        wait_until(lambda: not listens(instance.process.pid, instance.port))
        for connection in begun:
            connection.sendall(BODY[5:])
            assert received(connection).startswith(b"HTTP/1.1 200 OK\r\n")
        assert received(later) == b""
    assert instance.process.wait(timeout=30) == 0
    assert not connects(instance.port)


def test_every_line_of_the_log_is_an_object_with_time_and_level(
    start_instance: Callable, capfd: pytest.CaptureFixture[str]
) -> None:
    instance = start_instance()
    ask(instance, 1)
    # gunicorn's own words
    os.kill(instance.workers()[0], signal.SIGKILL)
    wait_until(lambda: len(instance.workers()) == 2)
    instance.stop()
    lines = [json.loads(line) for line in capfd.readouterr().err.splitlines()]
    assert {line["logger"] for line in lines} == {"service.requests", "gunicorn.error"}
    for line in lines:
        assert datetime.fromisoformat(line["time"]).utcoffset() == timedelta(0)
        assert line["level"] in ("INFO", "WARNING", "ERROR")
    (answered,) = [line for line in lines if line.get("operation") == "gauge-conversions"]
    assert answered["status"] == 200
    assert answered["bytes_in"] == len(BODY)


def in_flight(instance: Instance) -> float:
    """What the workers have written down, without asking one of them."""
    (directory,) = [place for place in instance.metrics_directories() if place.is_dir()]
    # a file that a worker is just making is empty and can't be read
    written = [str(file) for file in directory.glob("gauge_livesum_*.db") if file.stat().st_size]
    return sum(gauge.samples[0].value for gauge in MultiProcessCollector.merge(written))


def listens(process: int, port: int) -> bool:
    """Whether a process holds the socket that listens at a port (proc(5), /proc/net/tcp)."""
    sockets = [line.split() for line in Path("/proc/net/tcp").read_text().splitlines()[1:]]
    listening = {f"socket:[{it[9]}]" for it in sockets if it[1].endswith(f":{port:04X}") and it[3] == "0A"}
    held = {os.readlink(file) for file in Path(f"/proc/{process}/fd").iterdir()}
    return bool(listening & held)


def received(connection: socket.socket) -> bytes:
    """All that comes until the other side ends; nothing where it breaks the connection off."""
    answer = b""
    try:
        while part := connection.recv(65536):
            answer += part
    except ConnectionResetError:
        pass
    return answer
