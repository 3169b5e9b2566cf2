"""The proxy with its deployed settings before two instances, on loopback."""

import json
import os
import re
import signal
import socket
from collections.abc import Callable
from contextlib import ExitStack
from pathlib import Path

import http_sf
import pytest
import requests

from service.errors import KINDS
from tests.deploy.conftest import wait_until
from tests.deploy.proxy import UNHURRIED
from tests.service.test_observability import TRACE_PARENTS

DEPLOY = Path(__file__).resolve().parent.parent.parent / "deploy"
HALF_SENT = (
    b"POST /v1/gauge-conversions HTTP/1.1\r\nHost: x\r\nContent-Type: application/json\r\nContent-Length: 1000\r\n\r\n{"
)


@pytest.fixture(scope="module")
def instances(start_instance: Callable):
    return start_instance(), start_instance()


@pytest.fixture(scope="module")
def proxy(instances, start_proxy: Callable) -> str:
    """The proxy without the rate limit, for everything but that."""
    return start_proxy(tuple(instance.port for instance in instances), UNHURRIED).url


def port_of(url: str) -> tuple[str, int]:
    host, _, port = url.removeprefix("http://").partition(":")
    return host, int(port)


def check_problem(answer: requests.Response, status: int, kind: str) -> None:
    assert answer.status_code == status
    assert answer.headers["Content-Type"] == "application/problem+json"
    assert answer.headers["Content-Language"] == "en"
    problem = answer.json()
    assert problem["type"] == f"/problems/{kind}"
    assert problem["status"] == status
    assert problem["instance"] == answer.headers["X-Request-Id"]


def test_an_instance_lost_and_brought_back_under_load_costs_no_request(
    instances, start_proxy: Callable, asking: Callable
) -> None:
    # A proxy of its own, since it leaves the instance out for a while after that.
    proxy = start_proxy(tuple(instance.port for instance in instances), UNHURRIED).url
    with asking(proxy) as load:
        load.go_on(50)
        instances[0].kill()
        load.go_on(150)
        instances[0].start()
        load.go_on(50)
    assert (load.failed, load.wrong) == ([], [])


def test_a_worker_killed_under_load_costs_no_request(instances, proxy: str, asking: Callable) -> None:
    with asking(proxy) as load:
        load.go_on(20)
        for instance in instances:
            killed = instance.workers()[0]
            os.kill(killed, signal.SIGKILL)
            wait_until(lambda it=instance, gone=killed: len(it.workers()) == 2 and gone not in it.workers())
            load.go_on(50)
    assert (load.failed, load.wrong) == ([], [])


def test_instances_reloaded_one_after_the_other_under_load_cost_no_request(
    instances, proxy: str, asking: Callable
) -> None:
    with asking(proxy) as load:
        for instance in instances:
            before = set(instance.workers())
            os.kill(instance.process.pid, signal.SIGHUP)
            wait_until(lambda it=instance, old=before: not old & set(it.workers()))
            load.go_on(50)
    assert (load.failed, load.wrong) == ([], [])


def test_clients_that_send_slowly_hold_nobody_up(proxy: str) -> None:
    # More of them than both instances have workers.
    with ExitStack() as held:
        for _ in range(12):
            client = held.enter_context(socket.create_connection(port_of(proxy), timeout=30))
            client.sendall(HALF_SENT)
        answers = [requests.get(f"{proxy}/health/live", timeout=30).status_code for _ in range(8)]
    assert answers == [200] * 8


def test_one_client_has_at_most_64_requests_open(instances, start_proxy: Callable) -> None:
    # A proxy of its own, that remembers no other test's connections and keeps these long enough on a slow machine.
    proxy = start_proxy(
        tuple(instance.port for instance in instances),
        UNHURRIED | {"client_body_timeout 10s;": "client_body_timeout 120s;"},
    ).url
    with ExitStack() as held:
        for _ in range(64):
            client = held.enter_context(socket.create_connection(port_of(proxy), timeout=30))
            client.sendall(HALF_SENT)
        # A 65th, once nginx has read the heads of all 64.
        wait_until(lambda: requests.get(f"{proxy}/health/live", timeout=30).status_code == 429)
        refused = requests.get(f"{proxy}/health/live", timeout=30)
    check_problem(refused, 429, "too-many-requests")
    check_limits(refused, "concurrent")


def test_requests_beyond_the_rate_are_told_when_to_come_again(instances, start_proxy: Callable) -> None:
    # At one request a second, so that the burst is used up on a slow machine too.
    proxy = start_proxy(tuple(instance.port for instance in instances), {"rate=50r/s": "rate=1r/s"}).url
    with requests.Session() as session:
        answers = [session.get(f"{proxy}/health/live", timeout=30) for _ in range(150)]
    refused = [answer for answer in answers if answer.status_code != 200]
    assert len(answers) - len(refused) >= 101
    check_problem(refused[0], 429, "too-many-requests")
    check_limits(refused[0], "default")


def test_without_an_instance_the_answer_is_a_problem_document(start_proxy: Callable) -> None:
    # Nothing listens on ports 9 and 10.
    answer = requests.get(f"{start_proxy((9, 10)).url}/health/live", timeout=30)
    check_problem(answer, 502, "bad-gateway")
    assert int(answer.headers["Retry-After"]) >= 1


def test_an_instance_that_drains_says_when_to_come_again(
    start_instance: Callable, start_proxy: Callable, monkeypatch: pytest.MonkeyPatch, tmp_path: Path
) -> None:
    monkeypatch.setenv("GRADING_DRAIN_FILE", str(tmp_path / "draining"))
    port = start_instance().port
    (tmp_path / "draining").touch()
    answer = requests.get(f"{start_proxy((port, port), UNHURRIED).url}/health/ready", timeout=30)
    check_problem(answer, 503, "service-unavailable")
    assert int(answer.headers["Retry-After"]) >= 1


@pytest.mark.parametrize("path", ["/health/live", "/nowhere", "/metrics", "/v1/gauge-conversions"])
def test_every_answer_tells_the_limits(proxy: str, path: str) -> None:
    answer = requests.get(proxy + path, timeout=30)
    assert limits(answer, "RateLimit-Policy") == {
        "default": {"q": 50, "w": 1},
        "concurrent": {"q": 64, "qu": "concurrent-requests"},
    }
    assert "RateLimit" not in answer.headers


def test_the_limits_told_are_those_that_hold() -> None:
    settings = (DEPLOY / "nginx.conf").read_text()
    assert re.findall(r"rate=(\d+)r/s", settings) == re.findall(r'"default";q=(\d+);w=1\b', settings)
    assert re.findall(r"limit_conn \S+ (\d+);", settings) == re.findall(r'"concurrent";q=(\d+)', settings)


def limits(answer: requests.Response, header: str) -> dict[str, dict[str, object]]:
    """The items of a header of draft-ietf-httpapi-ratelimit-headers-11, a list of RFC 9651."""
    return dict(http_sf.parse(answer.headers[header].encode(), tltype="list"))


def check_limits(refused: requests.Response, broken: str) -> None:
    """A refused request names the policy that it went beyond, one of those told, and when to come again."""
    assert broken in limits(refused, "RateLimit-Policy")
    ((name, left),) = limits(refused, "RateLimit").items()
    assert (name, left["r"]) == (broken, 0)
    # not earlier than the effective window ends (section 6 of the draft)
    assert int(refused.headers["Retry-After"]) >= max(1, int(str(left.get("t", 0))))


def test_the_trace_of_a_request_stands_in_both_logs(
    start_instance: Callable, start_proxy: Callable, capfd: pytest.CaptureFixture[str]
) -> None:
    instance = start_instance()
    proxy = start_proxy((instance.port, instance.port), UNHURRIED)
    for number, (parent, _) in enumerate(TRACE_PARENTS):
        headers = {"traceparent": parent, "X-Request-Id": f"trace-{number}"}
        requests.get(f"{proxy.url}/v1/standards", headers=headers, timeout=30)
    told = {f"trace-{number}": trace for number, (_, trace) in enumerate(TRACE_PARENTS)}
    wait_until(lambda: proxy.log.read_text().count("\n") >= len(told))
    instance.stop()
    for log, none in ((proxy.log.read_text(), ""), (capfd.readouterr().err, None)):
        lines = [json.loads(line) for line in log.splitlines() if "trace-" in line]
        assert {line["request_id"]: line.get("trace_id") for line in lines} == {
            name: trace or none for name, trace in told.items()
        }


def test_a_body_over_the_limit_is_refused_before_it_is_sent_on(proxy: str) -> None:
    answer = requests.post(f"{proxy}/v1/gauge-conversions", data=b" " * (1024 * 1024 + 1), timeout=30)
    check_problem(answer, 413, "content-too-large")


def test_a_body_at_the_limit_reaches_the_service(proxy: str) -> None:
    answer = requests.post(
        f"{proxy}/v1/gauge-conversions",
        data=b" " * (1024 * 1024),
        headers={"Content-Type": "application/json"},
        timeout=10,
    )
    check_problem(answer, 400, "not-json")


@pytest.mark.parametrize(
    ("sent", "status"),
    [
        (b"nonsense\r\n\r\n", 400),
        (b"GET / HTTP/1.1\r\n\r\n", 400),
        (b"GET /" + b"x" * 5000 + b" HTTP/1.1\r\nHost: x\r\n\r\n", 414),
        (b"GET / HTTP/1.1\r\nHost: x\r\nA: " + b"x" * 5000 + b"\r\n\r\n", 431),
    ],
)
def test_what_is_not_proper_http_is_answered_by_a_problem_document(proxy: str, sent: bytes, status: int) -> None:
    with socket.create_connection(port_of(proxy), timeout=30) as connection:
        connection.sendall(sent)
        received = b""
        while part := connection.recv(65536):
            received += part
    head, _, body = received.partition(b"\r\n\r\n")
    assert head.startswith(b"HTTP/1.1 %d" % status)
    assert b"Content-Type: application/problem+json" in head
    assert json.loads(body)["status"] == status


def test_a_request_id_goes_through_to_the_service_and_back(proxy: str) -> None:
    answer = requests.get(f"{proxy}/nowhere", headers={"X-Request-Id": "swatch-7"}, timeout=30)
    assert answer.headers["X-Request-Id"] == "swatch-7"
    assert answer.json()["instance"] == "swatch-7"


def test_an_unusable_request_id_is_replaced(proxy: str) -> None:
    answer = requests.get(f"{proxy}/metrics", headers={"X-Request-Id": 'a"b'}, timeout=30)
    assert re.fullmatch(r"[0-9a-f]{32}", answer.headers["X-Request-Id"])
    assert answer.json()["instance"] == answer.headers["X-Request-Id"]


def test_large_answers_are_compressed(proxy: str) -> None:
    with requests.get(f"{proxy}/openapi.json", headers={"Accept-Encoding": "gzip"}, timeout=10, stream=True) as answer:
        assert answer.headers["Content-Encoding"] == "gzip"
        assert answer.json()["openapi"].startswith("3.1")


def test_an_answer_known_to_the_client_is_not_sent_again(proxy: str) -> None:
    tag = requests.get(f"{proxy}/openapi.json", timeout=30).headers["ETag"]
    again = requests.get(f"{proxy}/openapi.json", headers={"If-None-Match": tag}, timeout=30)
    assert (again.status_code, again.content) == (304, b"")


def test_metrics_are_not_for_clients(proxy: str) -> None:
    check_problem(requests.get(f"{proxy}/metrics", timeout=30), 404, "not-found")


def test_no_answer_tells_a_version_of_the_server(proxy: str) -> None:
    for path in ("/health/live", "/metrics"):
        assert requests.get(proxy + path, timeout=30).headers["Server"] == "nginx"


def test_every_problem_type_is_one_that_the_service_explains() -> None:
    named = set(re.findall(r"/problems/[a-z-]+", (DEPLOY / "nginx.conf").read_text()))
    assert named
    assert named <= {kind.uri for kind in KINDS}
