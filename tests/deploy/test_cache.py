"""What the proxy answers from its own cache: the same to the byte, to nobody else, and never an error.

RFC 9111 (caching), RFC 9110 (Vary), RFC 9211 (Cache-Status), RFC 10008 (QUERY).
"""

import json
import shutil
import tempfile
from collections.abc import Callable
from concurrent.futures import ThreadPoolExecutor
from itertools import product
from pathlib import Path
from typing import Any

import pytest
import requests
from prometheus_client.parser import text_string_to_metric_families

from tests.benchmarks.cases import charted_pullovers, pullovers
from tests.deploy.conftest import QUESTION, wait_until
from tests.deploy.proxy import UNHURRIED, Proxy

PATH = "/v1/gauge-conversions"
GRADING = {"gauge": {"stitches": 22, "rows": 31}, "body_table": "women", "ease": {"bust": 10}}
OWN = {"Date", "X-Request-Id", "Cache-Status"}
"""The headers of a kept answer that are not the first one's."""


@pytest.fixture(scope="module")
def instances(start_instance: Callable):
    return start_instance(), start_instance()


@pytest.fixture
def proxy(instances, start_proxy: Callable) -> str:
    """A proxy that has kept nothing yet."""
    return start_proxy(ports(instances), UNHURRIED).url


def ports(instances) -> tuple[int, ...]:
    return tuple(instance.port for instance in instances)


def post(url: str, body: Any = QUESTION, path: str = PATH, **headers: str) -> requests.Response:
    sent = body if isinstance(body, bytes) else json.dumps(body).encode()
    named = {name.replace("_", "-"): value for name, value in headers.items()}
    return requests.post(url + path, sent, headers={"Content-Type": "application/json", **named}, timeout=60)


def raw(url: str, body: Any, path: str, **headers: str) -> tuple[int, dict[str, str], bytes]:
    """The answer as it comes over the wire, not decompressed."""
    named = {name.replace("_", "-"): value for name, value in headers.items()}
    named = {"Content-Type": "application/json", "Accept-Encoding": "", **named}
    with requests.post(url + path, json.dumps(body).encode(), headers=named, timeout=60, stream=True) as answer:
        return answer.status_code, dict(answer.headers), answer.raw.read(decode_content=False)


@pytest.mark.parametrize("encoding", ["", "gzip"])
@pytest.mark.parametrize("accept", ["application/json", "text/csv"])
def test_a_kept_answer_is_the_first_one_byte_for_byte(proxy: str, accept: str, encoding: str) -> None:
    first, again = (raw(proxy, GRADING, "/v1/size-gradings", Accept=accept, Accept_Encoding=encoding) for _ in range(2))
    assert [answer[1]["Cache-Status"] for answer in (first, again)] == ["nginx; fwd=miss", "nginx; hit"]
    assert first[0] == again[0] == 200
    assert first[2] == again[2]
    assert first[1].get("Content-Encoding", "") == encoding
    one, other = ({name: value for name, value in answer[1].items() if name not in OWN} for answer in (first, again))
    assert one == other


def test_no_two_questions_are_given_one_answer(instances, proxy: str) -> None:
    """Whatever is kept, each gets what an instance answers that keeps nothing."""
    bodies = [GRADING, {**GRADING, "unit": "in"}, {**GRADING, "ease": {"bust": 11}}]
    asked = [
        (body, path, {"Accept": accept, "Accept-Encoding": encoding})
        for body, path, accept, encoding in product(
            bodies,
            ("/v1/size-gradings", "/v1/size-gradings?"),
            ("application/json", "text/csv", "text/markdown", "image/png"),
            ("", "gzip", "identity"),
        )
    ]
    for _ in range(2):
        for body, path, headers in asked:
            through = requests.post(proxy + path, json=body, headers=headers, timeout=60)
            direct = requests.post(instances[0].url + path, json=body, headers=headers, timeout=60)
            told = [(it.status_code, it.headers["Content-Type"], without_id(it.text)) for it in (through, direct)]
            assert told[0] == told[1]
            assert ("Content-Encoding" in through.headers) == (headers["Accept-Encoding"] == "gzip" and through.ok)


def test_two_languages_of_one_question_are_kept_apart(instances, proxy: str) -> None:
    asked = [(tag, post(proxy, GRADING, "/v1/size-gradings", Accept_Language=tag)) for tag in ("en-GB", "de") * 2]
    assert [answer.headers["Cache-Status"] for _, answer in asked] == ["nginx; fwd=miss"] * 2 + ["nginx; hit"] * 2
    for tag, answer in asked:
        direct = post(instances[0].url, GRADING, "/v1/size-gradings", Accept_Language=tag)
        assert answer.headers["Content-Language"] == direct.headers["Content-Language"] == tag
        assert answer.content == direct.content


def without_id(text: str) -> object:
    if not text.startswith("{"):
        return text
    return {name: value for name, value in json.loads(text).items() if name != "instance"}


def test_the_body_of_another_type_or_coding_is_not_taken_for_one_that_is_kept(proxy: str) -> None:
    assert post(proxy).ok
    assert post(proxy, Content_Type="text/plain").status_code == 415
    assert post(proxy, Content_Encoding="gzip").status_code == 415
    assert post(proxy).headers["Cache-Status"] == "nginx; hit"


def test_what_another_release_answered_is_not_found(instances, start_proxy: Callable) -> None:
    kept = Path(tempfile.mkdtemp(prefix="pullover-grading-kept-", dir="/tmp"))
    kept.chmod(0o777)
    place = {"proxy_cache_path /var/cache/answers ": f"proxy_cache_path {kept}/answers "}
    told = []
    for release in ("1.0.0", "1.0.0", "1.0.1"):
        proxy = start_proxy(ports(instances), {**UNHURRIED, **place}, release=release)
        told.append(post(proxy.url).headers["Cache-Status"])
    shutil.rmtree(kept)
    assert told == ["nginx; fwd=miss", "nginx; hit", "nginx; fwd=miss"]


@pytest.mark.parametrize("body", [b"{", b"{}", b'{"gauge": {"stitches": 0}}'])
def test_an_error_is_never_kept(proxy: str, body: bytes) -> None:
    answers = [post(proxy, body) for _ in range(3)]
    assert {answer.headers["Cache-Status"] for answer in answers} == {"nginx; fwd=miss"}
    assert {answer.headers["Cache-Control"] for answer in answers} == {"no-store"}
    assert len({answer.json()["instance"] for answer in answers}) == 3


def test_bodies_beyond_the_buffer_are_computed_each(instances, proxy: str) -> None:
    bodies = [json.dumps({**QUESTION, "unit": unit}).encode() + b" " * (48 * 1024) for unit in ("cm", "in")]
    for body in [*bodies, *bodies]:
        answer = post(proxy, body)
        assert answer.headers["Cache-Status"] == "nginx; fwd=bypass"
        assert answer.json() == post(instances[0].url, body).json()


def test_the_longest_body_of_the_buffer_is_kept_with_the_longest_headers(proxy: str) -> None:
    """Whatever fits into its buffer fits into the key, and of a quarter more what nginx takes: that depends on how a
    body arrives.
    """
    kept, bypassed = ["nginx; fwd=miss", "nginx; hit"], ["nginx; fwd=bypass"] * 2
    for length in range(28 * 1024, 44 * 1024, 1024):
        body = json.dumps(QUESTION).encode().ljust(length)
        kind = "application/json; a=" + "x" * 3900
        told = [post(proxy, body, Content_Type=kind).headers["Cache-Status"] for _ in range(2)]
        if length <= 32 * 1024:
            assert told == kept, length
        elif length > 40 * 1024:
            assert told == bypassed, length
        else:
            assert {*told} <= {*kept, *bypassed}, length


def test_an_answer_of_more_than_half_a_megabyte_is_not_kept(proxy: str) -> None:
    body = {**charted_pullovers(20), "include": ["chart_rounds"]}
    answers = [post(proxy, body, "/v1/pullovers") for _ in range(2)]
    assert len(answers[0].content) > 500_000
    assert answers[0].content == answers[1].content
    assert answers[1].headers["Cache-Status"] == "nginx; fwd=miss"


def test_a_kept_answer_bears_the_id_of_the_request_that_it_is_sent_to(proxy: str) -> None:
    ids = [post(proxy, X_Request_Id=name).headers["X-Request-Id"] for name in ("one", "two")]
    assert ids == ["one", "two"]
    made = [post(proxy).headers["X-Request-Id"] for _ in range(2)]
    assert len(set(made)) == 2


@pytest.mark.parametrize(
    "condition",
    [
        {"If_None_Match": "*"},
        {"If_None_Match": 'W/"x"'},
        {"If_Match": '"x"'},
        {"If_Unmodified_Since": "Thu, 01 Jan 1970 00:00:00 GMT"},
        {"If_Modified_Since": "Fri, 01 Jan 2100 00:00:00 GMT"},
    ],
    ids=lambda condition: next(iter(condition)),
)
def test_a_post_is_answered_whatever_its_conditions_say(proxy: str, condition: dict[str, str]) -> None:
    usual = post(proxy)
    answer = post(proxy, **condition)
    assert (answer.status_code, answer.content) == (200, usual.content)


def test_a_query_gets_through_with_its_condition(proxy: str) -> None:
    first = requests.request("QUERY", proxy + PATH, json=QUESTION, timeout=30)
    assert (first.status_code, first.headers["Cache-Status"]) == (200, "nginx; fwd=bypass")
    again = requests.request(
        "QUERY", proxy + PATH, json=QUESTION, headers={"If-None-Match": first.headers["ETag"]}, timeout=30
    )
    assert (again.status_code, again.content) == (304, b"")


def test_of_equal_requests_at_a_time_one_is_computed(instances, proxy: str) -> None:
    before = computed(instances, "pullovers")
    with ThreadPoolExecutor(8) as clients:
        answers = list(clients.map(lambda _: post(proxy, pullovers(9), "/v1/pullovers").content, range(8)))
    assert len(set(answers)) == 1
    assert computed(instances, "pullovers") - before == 1


def computed(instances, operation: str) -> float:
    texts = (requests.get(f"{instance.url}/metrics", timeout=30).text for instance in instances)
    samples = (sample for text in texts for family in text_string_to_metric_families(text) for sample in family.samples)
    counted = (it for it in samples if it.name == "grading_requests_total" and it.labels["operation"] == operation)
    return sum(sample.value for sample in counted)


def test_no_more_is_kept_than_there_is_room_for(instances, start_proxy: Callable) -> None:
    """500 answers, as compose.yaml has room for."""
    proxy = start_proxy(ports(instances), UNHURRIED)
    with requests.Session() as session:
        for number in range(700):
            asked = {**QUESTION, "items": [{"name": str(number), "across": 100}]}
            assert session.post(proxy.url + PATH, json=asked, timeout=30).ok
    kept = [file for file in (proxy.directory / "answers").rglob("*") if file.is_file()]
    assert 300 < len(kept) <= 500


def test_what_the_cache_fails_at_is_answered_without_it(instances, start_proxy: Callable) -> None:
    proxy = start_proxy(ports(instances), UNHURRIED)
    first = post(proxy.url)
    hide_kept_answers(proxy)
    again = post(proxy.url)
    assert (again.status_code, again.content) == (200, first.content)
    assert again.headers["Cache-Status"] == "nginx; fwd=bypass"


def test_what_the_cache_fails_at_is_a_problem_document_when_no_instance_answers(
    start_instance: Callable, start_proxy: Callable
) -> None:
    instance = start_instance()
    # Nothing listens on port 9.
    proxy = start_proxy((instance.port, 9), UNHURRIED)
    post(proxy.url)
    hide_kept_answers(proxy)
    instance.stop()
    again = post(proxy.url)
    assert (again.status_code, again.headers["Content-Type"]) == (502, "application/problem+json")
    assert again.json()["type"] == "/problems/bad-gateway"


def hide_kept_answers(proxy: Proxy) -> None:
    """Files that nginx can't read end in it as a table does that has no room for a key."""
    # an answer is kept a moment after it was sent
    wait_until(lambda: post(proxy.url).headers["Cache-Status"] == "nginx; hit")
    for kept in (proxy.directory / "answers").rglob("*"):
        if kept.is_file():
            kept.chmod(0)
