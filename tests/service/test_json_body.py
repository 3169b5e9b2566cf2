"""What counts as a JSON body. RFC 8259 (JSON), RFC 7493 (I-JSON), RFC 9110 (media types)."""

import json

import pytest

PATH = "/v1/gauge-conversions"
GOOD = {"gauge": {"stitches": 22, "rows": 31}, "items": [{"across": 100}]}


def post(client, body, content_type="application/json", **options):
    return client.post(PATH, data=body, content_type=content_type, **options)


@pytest.mark.parametrize(
    "body",
    [
        b"",
        b"{",
        b"not json",
        b'{"gauge": NaN}',
        b'{"gauge": Infinity}',
        b'{"gauge": -Infinity}',
        b'{"gauge": 1e999}',
        b'{"gauge": 01}',
        b"{'gauge': 1}",
        b'{"gauge": 1,}',
        b'{"gauge": 1} {}',
        b'\xef\xbb\xbf{"gauge": 1}',
        b'{"name": "\xff"}',
        b'{"name": "\\ud800"}',
        '{"name": "é"}'.encode("latin-1"),
    ],
)
def test_what_is_not_json_is_refused_as_such(client, body):
    response = post(client, body)
    assert (response.status_code, response.json["type"]) == (400, "/problems/not-json")


@pytest.mark.parametrize("body", [b"[]", b"3", b'"text"', b"null", b"true"])
def test_json_that_is_not_an_object_is_understood_and_wrong(client, body):
    response = post(client, body)
    assert response.status_code == 422
    assert response.json["errors"] == [{"pointer": "", "code": "wrong_type", "detail": "must be an object."}]


@pytest.mark.parametrize(
    "body",
    [
        b'{"a": 1, "a": 2}',
        b'{"b": {"a": 1, "a": 1}}',
        b'[{"a": 1}, {"a": 1, "c": ":", "a": ":"}]',
        b'{"a": 1, "\\u0061": 2}',
        b'{"a": 1, "a": "\\u003a"}',
    ],
)
def test_a_key_that_occurs_twice_in_an_object_is_refused(client, body):
    response = post(client, body)
    assert (response.status_code, response.json["type"]) == (400, "/problems/not-json")
    assert '"a"' in response.json["detail"]


def test_colons_in_text_are_not_taken_for_keys(client):
    body = b'{"gauge": {"stitches": 22, "rows": 31}, "items": [{"name": "a:b\\u003ac::", "across": 100}]}'
    assert post(client, body).json["items"][0]["name"] == "a:b:c::"


def test_nesting_is_limited_to_32_levels(client):
    assert post(client, b"[" * 32 + b"]" * 32).status_code == 422
    assert post(client, b"[" * 33 + b"]" * 33).status_code == 400
    # deeper than the writer of JSON goes
    assert post(client, b"[" * 900 + b"]" * 900).status_code == 400
    assert post(client, b"[" * 200_000).status_code == 400


def test_lists_and_objects_are_limited_to_100_000(client):
    assert post(client, b'{"a": [' + b"[]," * 99_997 + b"[]]}").status_code == 422
    assert post(client, b'{"a": [' + b"[]," * 99_998 + b"[]]}").status_code == 400


def test_brackets_in_text_are_not_taken_for_lists(client):
    assert post(client, json.dumps({"a": '["{' * 100_001})).status_code == 422


def test_a_body_is_limited_to_one_mebibyte(client):
    text = json.dumps(GOOD)
    assert post(client, text.ljust(2**20)).status_code == 200
    assert post(client, text.ljust(2**20 + 1)).status_code == 413


@pytest.mark.parametrize("content_type", ["text/plain", "application/xml", "application/x-www-form-urlencoded", ""])
def test_another_media_type_is_unsupported(client, content_type):
    response = post(client, json.dumps(GOOD), content_type)
    assert (response.status_code, response.headers["Accept"]) == (415, "application/json")


def test_a_character_set_beside_the_media_type_is_fine(client):
    assert post(client, json.dumps(GOOD), "application/json; charset=utf-8").status_code == 200


def test_a_compressed_body_is_unsupported(client):
    response = post(client, json.dumps(GOOD), headers={"Content-Encoding": "gzip"})
    assert (response.status_code, response.headers["Accept-Encoding"]) == (415, "identity")


def test_the_digest_does_not_depend_on_how_a_request_is_written(client):
    ways = [
        b'{"gauge":{"stitches":22,"rows":31},"items":[{"across":100}]}',
        b'{ "items": [ {"across": 1e2} ], "gauge": {"rows": 31.0, "stitches": 22.00} }',
    ]
    digests = {post(client, way).json["meta"]["input_digest"] for way in ways}
    assert len(digests) == 1


def test_the_digest_depends_on_what_a_request_says(client):
    other = {**GOOD, "unit": "in"}
    digests = {client.post(PATH, json=sent).json["meta"]["input_digest"] for sent in (GOOD, other)}
    assert len(digests) == 2


@pytest.mark.parametrize("text", ["", "},{", "}, {", "],[", "], [", '"},{"', "\\},{", "[[{{"])
@pytest.mark.parametrize("neighbours", [[], [{}, [], [], {}, {}]])
def test_no_text_and_no_neighbour_hides_how_deep_a_body_is(client, text, neighbours):
    allowed = [text]
    for _ in range(30):
        allowed = [*neighbours, text, allowed, *neighbours]
    for separators in ((",", ":"), (", ", ": ")):
        sent = [json.dumps({"a": levels}, separators=separators) for levels in (allowed, [allowed])]
        assert [post(client, each).status_code for each in sent] == [422, 400]
