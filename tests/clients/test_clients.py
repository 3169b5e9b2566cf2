"""Clients generated from the contract do what a client's author expects of them.

By openapi-python-client, openapi-generator (Python), openapi-typescript with openapi-fetch, and @hey-api/openapi-ts.
Each calls the function that was generated, with the example in the generated type, and gives back what the generated
type holds of the answer. Defects of the generators' own are tested too: the day one is mended, its test fails.
"""

import json

import pytest

from tests.clients.exchanges import EXCHANGES, REFUSED
from tests.clients.later_version import FIELD, MEMBER, Later, without_added_fields
from tests.clients.python_clients import AttrsClient

each_exchange = pytest.mark.parametrize("exchange", EXCHANGES, ids=lambda exchange: exchange.name)
OF_FIELDS = [each for each in EXCHANGES if each.operation.answer]


def without_meta(answer):
    """An answer without its digest: a client that sends what is usual anyway has asked in other words."""
    return {name: below for name, below in answer.items() if name != "meta"} if isinstance(answer, dict) else answer


@each_exchange
def test_an_example_is_answered_through_a_generated_client_as_it_is_recorded(answers, exchange):
    answer = answers[exchange.name]
    if exchange.answers_file and isinstance(exchange.example.answer, str):
        answer = answer.decode()
    assert without_meta(answer) == without_meta(exchange.example.answer)


def test_a_refusal_is_a_problem_document_in_the_generated_type(answers):
    problem = answers[REFUSED.name]
    assert (problem["type"], problem["status"]) == ("/problems/unprocessable-content", 422)
    last = len(REFUSED.example.request["sizes"]) - 1
    assert [wrong["pointer"] for wrong in problem["errors"]] == [f"/sizes/{last}/label"]


@pytest.fixture(scope="module")
def later(contract_file):
    return Later(json.loads(contract_file.read_bytes()))


@pytest.mark.parametrize("exchange", OF_FIELDS, ids=lambda exchange: exchange.name)
def test_a_client_of_today_understands_a_later_version(client, later_answers, later, exchange):
    """It keeps fields that it doesn't know, or passes over them, and takes any member of an open enumeration."""
    expected = later.answer(exchange.operation.name, exchange.example.answer)
    assert FIELD in expected
    if not client.keeps_unknown_fields:
        expected = without_added_fields(expected)
    assert without_meta(later_answers[exchange.name]) == without_meta(expected)


def test_a_later_version_has_other_members_of_open_enumerations(later):
    answers = [later.answer(each.operation.name, each.example.answer) for each in OF_FIELDS]
    assert len([answer for answer in answers if MEMBER in str(answer)]) > 10


def test_openapi_python_client_has_to_be_told_what_is_a_file(contract_file, tmp_path):
    """It knows no media types but JSON, text and application/octet-stream: a defect of its own."""
    printed = AttrsClient().generate(contract_file, tmp_path, told_of_files=False)
    files = {each.operation.path for each in EXCHANGES if each.sends_file or each.answers_file}
    assert {path for path in files if f"{path} within" in printed} == files
