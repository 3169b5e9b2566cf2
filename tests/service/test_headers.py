"""What every answer has beside its body. RFC 9110 (ETag, If-None-Match, Vary), Fetch (CORS)."""

import gzip
from functools import cache

import pytest

from service.app import create_app
from service.config import Config

REQUEST = {"gauge": {"stitches": 22, "rows": 31}, "items": [{"across": 100}] * 40}
PATH = "/v1/gauge-conversions"


def test_a_request_id_comes_back(client):
    assert client.get("/health/live", headers={"X-Request-Id": "a.B-9_~"}).headers["X-Request-Id"] == "a.B-9_~"


@pytest.mark.parametrize("sent", ["", "a b", "a" * 129, "é", "<script>", "a/b"])
def test_a_request_id_that_could_do_harm_in_a_log_is_replaced(client, sent):
    answered = client.get("/health/live", headers={"X-Request-Id": sent}).headers["X-Request-Id"]
    assert answered != sent
    assert answered.isalnum()


@pytest.mark.parametrize("path", ["/health/live", "/nowhere", "/docs", "/openapi.json"])
def test_every_answer_has_the_common_headers(client, path):
    headers = client.get(path).headers
    assert headers["Vary"] == "Accept, Accept-Encoding, Accept-Language"
    assert headers["X-Content-Type-Options"] == "nosniff"
    assert headers["Referrer-Policy"] == "no-referrer"
    assert "default-src 'none'" in headers["Content-Security-Policy"]
    assert headers["X-Request-Id"]


def test_a_large_answer_is_compressed_when_asked(client):
    plain = client.post(PATH, json=REQUEST)
    packed = client.post(PATH, json=REQUEST, headers={"Accept-Encoding": "br;q=1, gzip;q=0.5"})
    assert packed.headers["Content-Encoding"] == "gzip"
    assert gzip.decompress(packed.data) == plain.data
    assert int(packed.headers["Content-Length"]) == len(packed.data) < len(plain.data)


@pytest.mark.parametrize("accepted", ["", "identity", "gzip;q=0", "br"])
def test_an_answer_is_not_compressed_unasked(client, accepted):
    response = client.post(PATH, json=REQUEST, headers={"Accept-Encoding": accepted})
    assert "Content-Encoding" not in response.headers


def test_an_answer_about_one_item_is_compressed_too(client):
    one = {"gauge": {"stitches": 22, "rows": 31}, "items": [{"name": "chest", "across": 100}]}
    packed = client.post(PATH, json=one, headers={"Accept-Encoding": "gzip"})
    assert gzip.decompress(packed.data) == client.post(PATH, json=one).data


def test_an_answer_to_options_has_neither_a_body_nor_a_type(client):
    response = client.options(PATH)
    assert (response.status_code, response.data) == (200, b"")
    assert "Content-Type" not in response.headers
    assert "POST" in response.headers["Allow"]


def test_a_small_answer_is_not_compressed(client):
    assert "Content-Encoding" not in client.get("/health/live", headers={"Accept-Encoding": "gzip"}).headers


@pytest.mark.parametrize("path", ["/problems/not-json", "/openapi.json", "/openapi.yaml", "/v1/standards"])
def test_an_answer_to_get_that_is_known_is_not_sent_again(client, path):
    first = client.get(path)
    again = client.get(path, headers={"If-None-Match": first.headers["ETag"]})
    assert (again.status_code, again.data) == (304, b"")
    assert again.headers["ETag"] == first.headers["ETag"]
    assert again.headers["Vary"] == first.headers["Vary"]


def test_an_answer_to_get_with_another_tag_is_sent(client):
    assert client.get("/openapi.json", headers={"If-None-Match": '"other"'}).status_code == 200


def test_the_tag_is_known_again_when_the_answer_is_compressed(client):
    tag = client.get("/openapi.json", headers={"Accept-Encoding": "gzip"}).headers["ETag"]
    assert client.get("/openapi.json", headers={"If-None-Match": tag}).status_code == 304


def test_head_is_answered_like_get_without_a_body(client):
    response = client.head("/openapi.json")
    assert (response.status_code, response.data) == (200, b"")
    assert response.headers["ETag"] == client.get("/openapi.json").headers["ETag"]


def test_other_origins_are_shut_out_unless_configured(client):
    response = client.get("/health/live", headers={"Origin": "https://shop.example"})
    assert "Access-Control-Allow-Origin" not in response.headers


def test_a_configured_origin_may_read_answers():
    client = client_for("https://shop.example")
    response = client.get("/health/live", headers={"Origin": "https://shop.example"})
    assert response.headers["Access-Control-Allow-Origin"] == "https://shop.example"
    assert "X-Request-Id" in response.headers["Access-Control-Expose-Headers"]
    assert {"Origin", "Accept", "Accept-Encoding"} <= set(", ".join(response.headers.getlist("Vary")).split(", "))
    other = client.get("/health/live", headers={"Origin": "https://other.example"})
    assert "Access-Control-Allow-Origin" not in other.headers


@cache
def client_for(*origins):
    return create_app(Config(cors_origins=origins)).test_client()


def origins_allowed(configured, sent):
    headers = {"Origin": sent} if sent else {}
    answer = client_for(*configured).get("/health/live", headers=headers)
    return answer.headers.getlist("Access-Control-Allow-Origin")


@pytest.mark.parametrize("sent", ["https://shop.example", "https://other.example", None])
@pytest.mark.parametrize("configured", [("*",), ("https://shop.example", "*")])
def test_where_all_origins_may_read_the_answer_says_so_to_everybody(configured, sent):
    """One answer for all of them may be kept by a cache (Fetch, section 3.3.5, CORS protocol and HTTP caches)."""
    assert origins_allowed(configured, sent) == ["*"]


@pytest.mark.parametrize(
    ("sent", "allowed"),
    [("https://shop.example", ["https://shop.example"]), ("https://other.example", []), ("null", []), (None, [])],
)
def test_of_several_origins_an_answer_names_the_asking_one_or_none(sent, allowed):
    assert origins_allowed(("https://shop.example", "https://app.example"), sent) == allowed


def test_a_configured_origin_may_post_json():
    client = client_for("https://shop.example")
    asked = {
        "Origin": "https://shop.example",
        "Access-Control-Request-Method": "POST",
        "Access-Control-Request-Headers": "content-type",
    }
    response = client.options(PATH, headers=asked)
    assert "POST" in response.headers["Access-Control-Allow-Methods"]
    assert "content-type" in response.headers["Access-Control-Allow-Headers"].lower()


def saved_as(client, path, **picture):
    request = {"gauge": {"stitches": 22, "rows": 31}, "body_table": "women", "labels": ["S"], "picture": picture}
    response = client.post(f"/v1/pullovers/{path}", json=request)
    assert response.status_code == 200
    return response.headers["Content-Disposition"]


def test_a_picture_is_shown_and_saved_under_a_name_that_tells_what_it_is(client):
    assert saved_as(client, "schematic", title="Saltmarsh", size="S") == "inline; filename=Saltmarsh-schematic-S.svg"
    assert saved_as(client, "pattern") == "inline; filename=pullover-pattern.html"


def test_a_name_in_another_script_is_sent_as_rfc_8187_has_it(client):
    """The German for salt marsh, and a slash, which no file's name has."""
    disposition = saved_as(client, "yoke-plot", title="Salzwiese/Süd")
    assert disposition == "inline; filename*=UTF-8''Salzwiese-S%C3%BCd-yoke-plot.svg"


def test_a_picture_may_be_styled_and_load_nothing(client):
    request = {"gauge": {"stitches": 22, "rows": 31}, "body_table": "women", "labels": ["S"]}
    policy = client.post("/v1/pullovers/schematic", json=request).headers.get_all("Content-Security-Policy")
    assert policy == ["default-src 'none'; img-src data:; style-src 'unsafe-inline'; frame-ancestors 'none'"]
