"""One digest for one question, one tag for one answer. RFC 9110 (ETag, If-None-Match), RFC 10008 (QUERY)."""

from dataclasses import dataclass, replace
from fractions import Fraction
from types import MappingProxyType
from typing import NamedTuple

import pytest
from flask import Flask
from flask.testing import FlaskClient
from hypothesis import given
from hypothesis import strategies as st

from service import VERSION, caching
from service.app import create_app
from service.caching import digest
from service.config import Config
from service.errors import register_error_handlers
from service.headers import register_headers
from service.operation import register_operations
from service.routes.gauge import GAUGE_CONVERSIONS
from service.routes.standards import BODY_TABLE

REQUEST = {"gauge": {"stitches": 22, "rows": 31}, "items": [{"across": 100}]}
PATH = "/v1/gauge-conversions"
TABLE = "/v1/standards/body-tables/women"


@dataclass(frozen=True, slots=True)
class Wide:
    amount: Fraction


@dataclass(frozen=True, slots=True)
class Long:
    amount: Fraction


class Step(NamedTuple):
    amount: int


VALUES = st.recursive(
    st.none() | st.booleans() | st.integers(-(2**53), 2**53) | st.fractions() | st.text(max_size=5),
    lambda below: (
        st.lists(below, max_size=3).map(tuple)
        | st.dictionaries(st.text(max_size=3), below, max_size=3)
        | below.map(Wide)
        | below.map(Long)
    ),
    max_leaves=8,
)


@given(VALUES, VALUES)
def test_two_digests_are_alike_only_where_the_values_are(one, other):
    """repr tells Python values apart: 1, True, 1.0 and Fraction(1) are written unlike."""
    assert (digest(one) == digest(other)) == (repr(one) == repr(other))


@pytest.mark.parametrize(
    ("one", "other"),
    [
        (Wide(Fraction(1)), Long(Fraction(1))),
        (Step(1), (1,)),
        (Fraction(1), 1),
        (Fraction(2**70), Fraction(2**70 + 1)),
        (b"a", b"b"),
        ({"a": 1, "b": 2}, {"b": 2, "a": 1}),
    ],
    ids=str,
)
def test_values_that_look_alike_have_digests_of_their_own(one, other):
    assert digest(one) != digest(other)


def test_a_mapping_that_cannot_be_changed_is_digested_as_any_other():
    assert digest(MappingProxyType({"a": 1})) == digest({"a": 1})


@pytest.fixture(scope="module")
def failing() -> FlaskClient:
    """Of an application whose computation fails."""

    def fail(_: object) -> None:
        raise ZeroDivisionError

    app = Flask("failing")
    register_error_handlers(app)
    register_headers(app)
    register_operations(app, [replace(GAUGE_CONVERSIONS, call=fail), replace(BODY_TABLE, call=fail)])
    return app.test_client()


def query(client, body=REQUEST, **headers):
    sent = {name.replace("_", "-"): value for name, value in headers.items()}
    return client.open(PATH, method="QUERY", json=body, headers=sent)


def test_an_answer_to_query_is_tagged_and_one_to_post_says_what_was_asked(client):
    asked, posted = query(client), client.post(PATH, json=REQUEST)
    assert asked.headers["ETag"].startswith('W/"')
    assert "ETag" not in posted.headers
    assert asked.data == posted.data


@pytest.mark.parametrize("known", ["{}", '"other", {}', '{}, W/"other"'])
def test_a_known_answer_is_neither_computed_nor_sent(client, failing, known):
    tag = query(client).headers["ETag"]
    assert query(failing).status_code == 500
    again = query(failing, If_None_Match=known.format(tag))
    assert (again.status_code, again.data) == (304, b"")
    assert again.headers["ETag"] == tag
    # what a 304 has to repeat (RFC 9110, section 15.4.5)
    assert again.headers["Cache-Control"] == query(client).headers["Cache-Control"]
    assert again.headers["Vary"] == query(client).headers["Vary"]


@pytest.mark.parametrize("method", ["GET", "HEAD"])
def test_a_known_table_is_neither_looked_up_nor_sent(client, failing, method):
    tag = client.open(TABLE, method=method).headers["ETag"]
    again = failing.open(TABLE, method=method, headers={"If-None-Match": tag})
    assert (again.status_code, again.data, again.headers["ETag"]) == (304, b"", tag)


def test_the_same_lengths_in_another_unit_are_another_question(client):
    """They make the same garment, but what would make it possible is told in the request's unit."""

    def ask(unit, span):
        asked = {
            "unit": unit,
            "gauge": {"stitches": 6, "rows": 8, "over": span},
            "body_table": "women",
            "sizes": [{"label": "S", "bust": 40 * span}],
            "ease": {"bust": 4 * span},
            "yoke": {"depth": 2 * span},
        }
        answer = client.post("/v1/pullovers", json=asked).json
        return answer["meta"]["input_digest"], answer["sizes"][0]["nearest"]

    (cm, nearest_cm), (inch, nearest_inch) = ask("cm", 2.54), ask("in", 1)
    assert nearest_cm != nearest_inch
    assert cm != inch


def test_a_tag_without_its_mark_of_weakness_is_known_too(client, failing):
    """RFC 9110, section 13.1.2: If-None-Match compares weakly."""
    tag = query(client).headers["ETag"].removeprefix("W/")
    assert query(failing, If_None_Match=tag).status_code == 304


@pytest.mark.parametrize("body", [{}, {**REQUEST, "colour": "red"}])
def test_what_is_wrong_is_refused_whatever_the_client_knows(client, body):
    tag = query(client).headers["ETag"]
    for known in (tag, "*"):
        assert query(client, body, If_None_Match=known).status_code == 422


def test_what_cannot_be_accepted_is_refused_whatever_the_client_knows(client):
    tag = query(client).headers["ETag"]
    assert query(client, If_None_Match=tag, Accept="image/png").status_code == 406


def test_any_answer_will_do_only_where_there_is_one(client, failing):
    """RFC 9110, section 13.1.2: a star is any current representation."""
    known = query(client, If_None_Match="*")
    assert (known.status_code, known.data) == (304, b"")
    assert query(failing, If_None_Match="*").status_code == 500


def test_a_post_is_answered_whatever_the_client_knows(client):
    tag = query(client).headers["ETag"]
    for known in (tag, "*"):
        answer = client.post(PATH, json=REQUEST, headers={"If-None-Match": known})
        assert (answer.status_code, answer.json["meta"]["version"]) == (200, VERSION)


def test_another_question_and_another_representation_have_other_tags(client):
    def tag(body, accept="*/*"):
        return client.open("/v1/size-gradings", method="QUERY", json=body, headers={"Accept": accept}).headers["ETag"]

    grading = {"gauge": {"stitches": 22, "rows": 31}, "body_table": "women", "ease": {"bust": 10}}
    tags = [tag(grading | {"unit": unit}, accept) for unit in ("cm", "in") for accept in ("*/*", "text/csv")]
    assert len(set(tags)) == 4
    assert tag(grading) == tag(grading, "application/json") == tags[0]


def test_another_release_has_another_tag(client, monkeypatch):
    before = query(client).headers["ETag"]
    monkeypatch.setattr(caching, "VERSION", "99.0.0")
    assert query(client).headers["ETag"] != before


def test_the_compressed_answer_has_the_tag_of_the_plain_one(client):
    many = {**REQUEST, "items": REQUEST["items"] * 40}
    packed = query(client, many, Accept_Encoding="gzip")
    assert packed.headers["Content-Encoding"] == "gzip"
    assert packed.headers["ETag"] == query(client, many).headers["ETag"]


@pytest.mark.parametrize(
    ("method", "path", "body", "kept"),
    [
        ("POST", PATH, REQUEST, "public, max-age=300"),
        ("QUERY", PATH, REQUEST, "public, max-age=300"),
        ("GET", TABLE, None, "public, max-age=3600"),
        ("HEAD", TABLE, None, "public, max-age=3600"),
        ("GET", "/problems/not-json", None, "public, max-age=3600"),
        ("GET", "/openapi.json", None, "no-cache"),
        ("GET", "/docs", None, "no-cache"),
        ("GET", "/", None, "no-cache"),
        ("GET", "/examples/pullovers/a-gauge-alone/schematic.svg", None, "public, max-age=300"),
        ("GET", "/favicon.ico", None, "public, max-age=3600"),
        ("GET", "/health/live", None, "no-store"),
        ("GET", "/health/ready", None, "no-store"),
        ("GET", "/metrics", None, "no-store"),
        ("POST", PATH, {}, "no-store"),
        ("QUERY", PATH, {}, "no-store"),
        ("GET", "/v1/standards/body-tables/nobody", None, "no-store"),
        ("GET", "/nowhere", None, "no-store"),
        ("PUT", PATH, REQUEST, "no-store"),
    ],
)
def test_an_answer_says_how_long_it_holds(client, method, path, body, kept):
    assert client.open(path, method=method, json=body).headers["Cache-Control"] == kept


def test_an_instance_that_drains_says_so_whatever_the_client_knows(tmp_path):
    drain_file = tmp_path / "draining"
    client = create_app(Config(drain_file=drain_file)).test_client()
    assert "ETag" not in client.get("/health/ready").headers
    drain_file.touch()
    assert client.get("/health/ready", headers={"If-None-Match": "*"}).status_code == 503
