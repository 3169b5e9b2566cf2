"""Whatever is sent gets an answer or a problem document (RFC 9457), and never a fault of the service's own."""

import gzip
import json
import zlib
from collections.abc import Iterator
from typing import Any

import pytest
from hypothesis import example, given, settings
from hypothesis import strategies as st
from werkzeug.test import TestResponse

from service.config import Config
from service.errors import KINDS
from service.examples import examples_of
from service.routes import operations

OPERATIONS = operations(Config())
POSTED = [operation for operation in OPERATIONS if operation.method == "POST"]
EXAMPLES = [
    (operation.path, request.request)
    for operation in POSTED
    for request in examples_of(operation.name)
    if isinstance(request.request, dict) and len(json.dumps(request.request)) < 5000
]
PATH = "/v1/gauge-conversions"
GOOD = b'{"gauge": {"stitches": 22, "rows": 31}, "items": [{"across": 100}]}'
URIS = {kind.uri for kind in KINDS}

FRAGMENTS = [
    b"null",
    b"true",
    b"-0.0",
    b"0",
    b"-1",
    b"1e-400",
    b"5e-324",
    b"1.7976931348623157e308",
    b"1e999",
    b"123456789012345678901234567890",
    b"9" * 400,
    b"0." + b"3" * 400,
    b'""',
    b'"' + b"x" * 5000 + b'"',
    b'"\\u0000"',
    b'"\\ud800"',
    b'"\\ud83e\\uddf6"',
    b'"\\u202e\\u2066\\ufeff"',
    '"e\u0301\u0301\u0301\U0001f9f6"'.encode(),
    b'"=1+1"',
    b'"</script>|\\\\"',
    b"[]",
    b"{}",
    b"[[[[]]]]",
    b"[" * 40 + b"]" * 40,
    b"[" + b"0," * 5000 + b"0]",
    b'{"": {"": null}}',
    b'{"__class__": "object", "a/b~c": 1}',
    b"{" + b",".join(b'"%d": 0' % number for number in range(300)) + b"}",
]


def check(response: TestResponse) -> None:
    assert response.status_code < 500, response.text
    if response.status_code < 400:
        return
    assert response.content_type == "application/problem+json"
    problem = json.loads(response.data)
    assert problem["type"] in URIS
    assert problem["status"] == response.status_code
    assert problem["instance"] == response.headers["X-Request-Id"]


def places(value: Any, path: tuple[Any, ...] = ()) -> Iterator[tuple[Any, ...]]:
    """Every place in a JSON value below its root."""
    steps = value.items() if isinstance(value, dict) else enumerate(value) if isinstance(value, list) else ()
    for step, below in steps:
        yield (*path, step)
        yield from places(below, (*path, step))


def with_fragment(request: dict[str, Any], place: tuple[Any, ...], fragment: bytes) -> bytes:
    """A request with raw JSON text in one place."""
    changed = json.loads(json.dumps(request))
    parent = changed
    for step in place[:-1]:
        parent = parent[step]
    parent[place[-1]] = "here it goes"
    return json.dumps(changed).encode().replace(b'"here it goes"', fragment)


@st.composite
def spoilt_requests(draw: st.DrawFn) -> tuple[str, bytes]:
    """An operation and one of its examples with something unsuitable in one place."""
    path, request = draw(st.sampled_from(EXAMPLES))
    place = draw(st.sampled_from([*places(request), ("no field",)]))
    return path, with_fragment(request, place, draw(st.sampled_from(FRAGMENTS)))


@settings(max_examples=400)
@given(spoilt_requests())
def test_an_example_spoilt_in_one_place_is_answered_or_refused(client, spoilt):
    path, body = spoilt
    check(client.post(path, data=body, content_type="application/json"))


@pytest.mark.parametrize("operation", POSTED, ids=lambda operation: operation.name)
@settings(max_examples=20)
@given(st.binary(max_size=300))
@example(b"\x1f\x8b\x08\x00")
@example(b"\x89PNG\r\n\x1a\n" + b"\x00" * 20)
@example(b"[" * 100_000)
@example(b'{"a":' * 100_000)
@example(b'"' + b"\\" * 1001)
@example(GOOD.replace(b"22", b"9" * 100_000))
@example(GOOD.replace(b"across", b"\xed\xa0\x80"))
@example(GOOD[:-1])
@example(GOOD + b"\x00")
@example(("\ufeff" + GOOD.decode()).encode("utf-16"))
def test_any_bytes_are_refused(client, operation, body):
    for media in ("application/json", operation.takes):
        response = client.post(operation.path, data=body, content_type=media)
        check(response)
        assert response.status_code in (400, 415, 422)


@pytest.mark.parametrize("encoding", ["gzip", "deflate", "br", "zstd", "gzip, gzip", "identity;q=0", "\u00e9"])
def test_compressed_bodies_are_refused(client, encoding):
    bomb = zlib.compress(b"0" * 10_000_000)
    for body in (gzip.compress(GOOD), bomb, GOOD):
        response = client.post(PATH, data=body, content_type="application/json", headers={"Content-Encoding": encoding})
        check(response)
        assert response.status_code == 415


@given(st.text(st.characters(codec="latin-1", exclude_categories=["Cc"]), max_size=100))
@example("application/json; charset=utf-16")
@example("application/json" + ";a=b" * 200)
@example("multipart/form-data; boundary=" + "x" * 300)
@example("application/x-www-form-urlencoded")
@example(";;;=,")
def test_any_media_type_is_answered_or_refused(client, media):
    check(client.post(PATH, data=GOOD, content_type=media))


@given(
    st.sampled_from(
        ["Accept", "Accept-Encoding", "X-Request-Id", "If-None-Match", "Cookie", "Range", "Origin", "Expect",
         "X-Http-Method-Override", "X-Forwarded-Proto", "Authorization", "Host"]
    ),
    st.text(st.characters(codec="latin-1", exclude_categories=["Cc"]), max_size=60),
)  # fmt: skip
@example("Accept", "*/*;q=nan")
@example("Accept", ",".join(["text/csv;q=0.1"] * 200))
@example("Accept-Encoding", "gzip;q=inf")
@example("If-None-Match", 'W/"' + "x" * 4000)
@example("Range", "bytes=" + "0-1," * 900)
def test_any_header_is_answered_or_refused(client, name, value):
    check(client.post(PATH, data=GOOD, content_type="application/json", headers={name: value}))
    check(client.get("/v1/standards", headers={name: value}))


@given(st.text(max_size=40))
@example("//")
@example("/v1/../../etc/passwd")
@example("/docs/..%2f..%2fconfig.py")
@example("/v1/standards/body-tables/\u202e%00")
@example("/problems/" + "x" * 5000)
@example("/v1/gauge-conversions/")
def test_any_address_is_answered_or_refused(client, path):
    check(client.get("/" + path.lstrip("/")))
    check(client.get("/v1/standards/body-tables/" + path))
    check(client.get("/v1/standards/needles", query_string={path: path}))


@given(st.text(st.characters(codec="ascii", categories=["Lu", "Ll"]), min_size=1, max_size=20))
@example("TRACE")
@example("CONNECT")
@example("PATCH")
def test_any_method_is_answered_or_refused(client, method):
    if method.upper() != "HEAD":
        check(client.open(PATH, method=method, data=GOOD, content_type="application/json"))


def yokes(sizes: int, rounds: int) -> dict[str, Any]:
    neck, split = {"back": 30, "front": 30, "sleeve": 10}, {"back": 40, "front": 40, "sleeve": 20}
    size = {"rounds": rounds, "neck": neck, "split": split}
    return {"gauge": {"stitches": 22, "rows": 31}, "sizes": [{"label": str(place), **size} for place in range(sizes)]}


@pytest.mark.parametrize(
    ("path", "request_", "status"),
    [
        ("/v1/raglan-schedules", yokes(40, 500), 200),
        ("/v1/raglan-schedules", yokes(40, 501), 422),
        ("/v1/yoke-adjustments", yokes(40, 125) | {"adjust": {"rounds_change": 0}}, 200),
        ("/v1/yoke-adjustments", yokes(40, 125) | {"adjust": {"rounds_change": 1}}, 422),
    ],
)
def test_one_answer_holds_at_most_20000_rounds(client, path, request_, status):
    response = client.post(path, json=request_)
    check(response)
    assert response.status_code == status
    if status == 422:
        assert [error["pointer"] for error in response.json["errors"]] == ["/sizes"]
