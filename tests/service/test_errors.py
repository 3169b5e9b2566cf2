"""Every exception becomes one status and one shape: checked on a throw-away app, one route per exception.

The shape is RFC 9457's, the pointers are RFC 6901's; the statuses are RFC 9110's.
"""

import logging

import pytest
from flask import Flask
from flask.testing import FlaskClient
from werkzeug.exceptions import Conflict

from grading_core.codes import ProblemCode
from grading_core.errors import ContradictionError, Problem
from service.errors import KINDS, NOT_ACCEPTABLE, TOO_MANY_REQUESTS, Refusal, pointer, register_error_handlers
from service.flaws import Flaw, FormCode, FormError
from service.headers import register_headers


def flaw(detail: str) -> Flaw:
    return Flaw(FormCode.WRONG_TYPE, detail)


@pytest.fixture
def broken() -> FlaskClient:
    app = Flask("broken", static_folder=None)
    register_error_handlers(app)
    register_headers(app)
    app.config["MAX_CONTENT_LENGTH"] = 10

    def raising(error: Exception):
        def view():
            raise error

        return view

    for path, error in {
        "/refusal": Refusal(TOO_MANY_REQUESTS, "Wait.", headers={"Retry-After": "7"}),
        "/invalid": FormError({"sizes": {10: {"b": flaw("late")}, 2: {"a": flaw("early"), None: [flaw("whole")]}}}),
        "/contradiction": ContradictionError([Problem(("sizes", 2, "split"), ProblemCode.ODD_DIFFERENCE, "is odd.")]),
        "/conflict": Conflict(),
        "/fault": ZeroDivisionError("a secret of the house"),
    }.items():
        app.add_url_rule(path, path, raising(error))
    app.add_url_rule("/read", "read", lambda: __import__("flask").request.get_data(), methods=["POST"])
    return app.test_client()


@pytest.mark.parametrize(
    ("method", "path", "status"),
    [
        ("GET", "/refusal", 429),
        ("GET", "/invalid", 422),
        ("GET", "/contradiction", 422),
        ("GET", "/conflict", 409),
        ("GET", "/fault", 500),
        ("GET", "/nowhere", 404),
        ("GET", "//fault", 404),
        ("DELETE", "/fault", 405),
    ],
)
def test_an_exception_is_answered_by_a_problem_document(broken, method, path, status):
    broken.application.url_map.merge_slashes = False
    response = broken.open(path, method=method, headers={"X-Request-Id": "abc-1"})
    assert response.status_code == status
    assert response.content_type == "application/problem+json"
    assert response.json["status"] == status
    assert response.json["instance"] == "abc-1"
    assert response.json["type"].startswith("/problems/")
    assert {"title", "detail"} < response.json.keys()


def test_a_body_over_the_limit_is_too_large(broken):
    response = broken.post("/read", data=b"x" * 11)
    assert (response.status_code, response.json["type"]) == (413, "/problems/content-too-large")


def test_a_fault_tells_the_client_nothing_of_the_inside(broken):
    text = broken.get("/fault").get_data(as_text=True)
    assert "secret" not in text
    assert "Traceback" not in text


def test_a_fault_is_logged_under_its_request_id(broken, caplog):
    with caplog.at_level(logging.ERROR, "service"):
        broken.get("/fault", headers={"X-Request-Id": "find-me"})
    [record] = caplog.records
    assert record.request_id == "find-me"
    assert record.exc_info[0] is ZeroDivisionError


def test_an_unknown_method_is_answered_with_those_that_are_known(broken):
    assert set(broken.delete("/fault").headers["Allow"].split(", ")) == {"GET", "HEAD", "OPTIONS"}


def test_a_refusal_keeps_its_headers(broken):
    assert broken.get("/refusal").headers["Retry-After"] == "7"


def test_every_wrong_place_of_a_schema_is_named_in_order(broken):
    errors = broken.get("/invalid").json["errors"]
    assert errors == [
        {"pointer": "/sizes/2", "code": "wrong_type", "detail": "whole"},
        {"pointer": "/sizes/2/a", "code": "wrong_type", "detail": "early"},
        {"pointer": "/sizes/10/b", "code": "wrong_type", "detail": "late"},
    ]


def test_a_contradiction_found_by_the_core_is_named_by_its_pointer(broken):
    errors = broken.get("/contradiction").json["errors"]
    assert errors == [{"pointer": "/sizes/2/split", "code": "odd_difference", "detail": "is odd."}]


def test_of_endlessly_many_wrong_places_a_thousand_are_named(client):
    items = [{f"k{key}": 1 for key in range(100)}] * 100
    document = client.post("/v1/gauge-conversions", json={"items": items}).json
    assert document["detail"] == "The request is wrong in more than 1000 places."
    assert len(document["errors"]) == 1000


def test_an_object_with_endlessly_many_fields_is_one_wrong_place(client):
    document = client.post("/v1/gauge-conversions", json={f"k{key}": 1 for key in range(201)}).json
    assert document["errors"] == [
        {"pointer": "", "code": "too_long", "detail": "must have at most 200 fields and has 201."}
    ]


# RFC 6901, section 5: the examples whose escapes differ from the plain key
@pytest.mark.parametrize(
    ("path", "written"),
    [((), ""), (("foo", 0), "/foo/0"), (("",), "/"), (("a/b",), "/a~1b"), (("m~n",), "/m~0n"), (("~1",), "/~01")],
)
def test_pointers_are_escaped_as_the_standard_says(path, written):
    assert pointer(path) == written


@pytest.mark.parametrize("kind", KINDS, ids=lambda kind: kind.name)
def test_the_service_explains_every_problem_type(client, kind):
    response = client.get(kind.uri)
    assert response.status_code == 200
    assert response.json["type"] == kind.uri
    assert response.json["status"] == kind.status


def test_a_problem_type_that_does_not_exist_is_not_found(client):
    assert client.get("/problems/out-of-wool").status_code == 404


def test_a_query_parameter_that_does_not_exist_is_named(client):
    response = client.get("/health/live?verbose=1")
    (error,) = response.json["errors"]
    assert (response.status_code, error["parameter"], error["code"]) == (422, "verbose", "unknown_parameter")
    assert "pointer" not in error


def test_an_error_is_a_problem_document_whatever_is_accepted(client):
    response = client.get("/nowhere", headers={"Accept": "text/html"})
    assert response.content_type == "application/problem+json"


def test_a_representation_that_is_not_offered_is_not_acceptable(client):
    response = client.post("/v1/gauge-conversions", json={}, headers={"Accept": "text/csv"})
    assert (response.status_code, response.json["type"]) == (406, NOT_ACCEPTABLE.uri)
