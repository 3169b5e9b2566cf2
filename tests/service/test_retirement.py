"""What is told of an operation and a field that will go, on operations made up for it: none is retired today."""

from datetime import UTC, date, datetime, timedelta

import pytest
from flask import Flask
from werkzeug.http import parse_date

from service.contract import build_contract
from service.errors import register_error_handlers
from service.headers import register_headers
from service.operation import Operation, register_operations
from service.retirement import Retirement
from service.schemas.base import StrictSchema
from service.schemas.common import AnswerSchema
from service.schemas.fields import Whole

SINCE, SUNSET = date(2027, 3, 1), date(2028, 3, 1)
GOING = Retirement(SINCE, SUNSET)


class CountSchema(StrictSchema):
    """A count."""

    count = Whole("How many.", minimum=0, maximum=9)
    amount = Whole("How many.", minimum=0, maximum=9, retirement=GOING)


def operation(name: str, retirement: Retirement | None) -> Operation:
    return Operation(
        path=f"/{name}",
        name=name,
        tag="Service",
        summary="Count",
        description="Counts.",
        request=CountSchema,
        answer=AnswerSchema,
        call=lambda _: None,
        represent=lambda _, __: {},
        retirement=retirement,
    )


OPERATIONS = (operation("going", GOING), operation("staying", None))


@pytest.fixture(scope="module")
def client():
    app = Flask("retiring")
    register_error_handlers(app)
    register_headers(app)
    register_operations(app, OPERATIONS)
    return app.test_client()


@pytest.fixture(scope="module")
def contract():
    return build_contract(OPERATIONS)


def test_a_retired_operation_says_since_when_and_until_when(client):
    """RFC 9745, section 2.1: a Date of RFC 9651, @ and the seconds since 1970. RFC 8594, section 3: an HTTP date."""
    headers = client.post("/going", json={}).headers
    assert datetime(1970, 1, 1, tzinfo=UTC) + timedelta(seconds=int(headers["Deprecation"].removeprefix("@"))) == (
        datetime(2027, 3, 1, tzinfo=UTC)
    )
    assert parse_date(headers["Sunset"]) == datetime(2028, 3, 1, tzinfo=UTC)
    assert headers["Sunset"].endswith(" GMT")


def test_another_operation_says_nothing(client):
    assert {"Deprecation", "Sunset"} & set(client.post("/staying", json={}).headers.keys()) == set()


def test_the_contract_marks_a_retired_operation(contract):
    going, staying = (contract["paths"][path]["post"] for path in ("/going", "/staying"))
    assert going["deprecated"] is True
    assert going["description"] == "Counts. Deprecated since 2027-03-01; may be gone from 2028-03-01."
    assert {"Deprecation", "Sunset"} <= going["responses"]["200"]["headers"].keys()
    assert "deprecated" not in staying
    assert {"Deprecation", "Sunset"} & staying["responses"]["200"]["headers"].keys() == set()


def test_the_contract_marks_a_retired_field(contract):
    fields = contract["components"]["schemas"]["Count"]["properties"]
    assert fields["amount"]["deprecated"] is True
    assert fields["amount"]["description"] == "How many. Deprecated since 2027-03-01; may be gone from 2028-03-01."
    assert "deprecated" not in fields["count"]


def test_headers_of_retirement_are_in_the_contract_only_where_something_is_retired(contract):
    assert {"Deprecation", "Sunset"} <= contract["components"]["headers"].keys()
    rest = build_contract([operation("staying", None)])
    assert {"Deprecation", "Sunset"} & rest["components"]["headers"].keys() == set()


def test_nothing_goes_sooner_than_a_year_after_it_was_said():
    assert Retirement(date(2027, 3, 1), date(2028, 2, 29)).sunset == date(2028, 2, 29)
    with pytest.raises(ValueError, match="365 days"):
        Retirement(date(2027, 3, 1), date(2028, 2, 28))
