"""Every example of the contract is answered as recorded, and its answer keeps to the contract.

The answers are validated by an independent JSON Schema validator.
"""

import json

import jsonschema_rs
import pytest

from openapi.build import answer_of
from service.config import Config
from service.examples import examples_of
from service.media import BINARY, JSON
from service.routes import operations

OPERATIONS = operations(Config())
EXAMPLES = [
    pytest.param(operation, example, id=f"{operation.name}/{example.name}")
    for operation in OPERATIONS
    for example in examples_of(operation.name)
]


def validator(contract, schema):
    return jsonschema_rs.Draft202012Validator({**schema, "components": contract["components"]})


def content(contract, operation, media):
    responses = contract["paths"][operation.path][operation.method.lower()]["responses"]
    return responses["200"]["content"][media]


@pytest.mark.parametrize("operation", OPERATIONS, ids=lambda operation: operation.name)
def test_an_operation_has_two_named_examples_or_no_parameters(operation):
    examples = examples_of(operation.name)
    assert len(examples) >= (2 if operation.schema.fields else 1)
    assert all(example.summary for example in examples)


READABLE = [case for case in EXAMPLES if case.values[0].media[0] not in BINARY]


@pytest.mark.parametrize(("operation", "example"), READABLE)
def test_an_example_is_answered_as_recorded(client, operation, example):
    assert answer_of(client, operation, example.request) == example.answer, "run python -m openapi.build"
    for media, table in example.tables.items():
        assert answer_of(client, operation, example.request, media) == table, "run python -m openapi.build"


@pytest.mark.parametrize(("operation", "example"), [case for case in EXAMPLES if case not in READABLE])
def test_an_example_that_is_answered_in_binary_is_answered(client, operation, example):
    assert answer_of(client, operation, example.request)


ANSWERED = [case for case in EXAMPLES if case.values[0].answer]


@pytest.mark.parametrize(("operation", "example"), ANSWERED)
def test_an_answer_keeps_to_the_contract(closed_contract, operation, example):
    schema = content(closed_contract, operation, "application/json")["schema"]
    assert [error.message for error in validator(closed_contract, schema).iter_errors(example.answer)] == []


POSTED = [case for case in EXAMPLES if case.values[0].method == "POST" and case.values[0].takes == JSON]


@pytest.mark.parametrize(("operation", "example"), POSTED)
def test_an_answer_is_the_same_to_the_byte_in_whatever_order_the_keys_are_sent(client, operation, example):
    """RFC 8259, section 4: an object is unordered. One digest has one answer."""

    def post(request):
        return client.post(operation.path, data=json.dumps(request), content_type=JSON).get_data()

    assert post(backwards(example.request)) == post(example.request)


def backwards(value):
    if isinstance(value, dict):
        return {key: backwards(below) for key, below in reversed(value.items())}
    return [backwards(below) for below in value] if isinstance(value, list) else value


@pytest.mark.parametrize(("operation", "example"), POSTED)
def test_a_request_keeps_to_the_contract(contract, operation, example):
    body = contract["paths"][operation.path]["post"]["requestBody"]["content"]["application/json"]
    assert [error.message for error in validator(contract, body["schema"]).iter_errors(example.request)] == []


@pytest.mark.parametrize(("operation", "example"), POSTED)
def test_the_contract_shows_an_examples_request_whole(contract, operation, example):
    body = contract["paths"][operation.path]["post"]["requestBody"]["content"]["application/json"]
    assert body["examples"][example.name]["value"] == example.request


@pytest.mark.parametrize(("operation", "example"), ANSWERED)
def test_the_contract_shows_an_examples_answer_in_short_and_true_to_its_schema(closed_contract, operation, example):
    told = content(closed_contract, operation, "application/json")
    shown = told["examples"][example.name]
    assert [error.message for error in validator(closed_contract, told["schema"]).iter_errors(shown["value"])] == []
    assert shown["value"] == example.answer or "In short" in shown["description"]
    assert shown["value"].get("sizes", []) == first_items(example.answer.get("sizes", [])[:2])


def first_items(value):
    if isinstance(value, dict):
        return {name: first_items(below) for name, below in value.items()}
    return [first_items(below) for below in value[:4]] if isinstance(value, list) else value


@pytest.mark.parametrize(("operation", "example"), [case for case in EXAMPLES if "text/csv" in case.values[0].media])
@pytest.mark.parametrize("media", ["text/csv", "text/markdown"])
def test_an_example_is_answered_in_every_representation(client, operation, example, media):
    response = answer_of(client, operation, example.request, media)
    found = example.answer["sizes"][0]["label"] if "sizes" in example.answer else example.answer["findings"][0]["code"]
    assert found in response
