"""An optional object that is sent empty means what leaving it out means, in every operation of the contract."""

import jsonschema_rs
import pytest

from service.config import Config
from service.examples import examples_of
from service.media import JSON
from service.routes import operations

POSTED = [each for each in operations(Config()) if each.method == "POST" and each.takes == JSON]


def schema_of(contract, operation):
    return contract["paths"][operation.path]["post"]["requestBody"]["content"][JSON]["schema"]


def resolved(contract, schema):
    """A schema behind its references; of alternatives the object."""
    while "$ref" in schema:
        schema = contract["components"]["schemas"][schema["$ref"].rpartition("/")[2]]
    for alternative in schema.get("oneOf", ()):
        if "required" not in alternative or "properties" in alternative or "$ref" in alternative:
            found = resolved(contract, alternative)
            if found.get("type") == "object" and "properties" not in schema:
                return found
    return schema


def with_empty_objects(contract, schema, request):
    """The request with one optional object more, an empty one, for every place where one may stand; with its path."""
    schema = resolved(contract, schema)
    if schema.get("type") == "array":
        for index, below in enumerate(request):
            for path, changed in with_empty_objects(contract, schema["items"], below):
                yield (index, *path), [*request[:index], changed, *request[index + 1 :]]
    if schema.get("type") != "object":
        return
    for name, below in schema.get("properties", {}).items():
        if name in request:
            if isinstance(request[name], dict | list):
                for path, changed in with_empty_objects(contract, below, request[name]):
                    yield (name, *path), {**request, name: changed}
        elif resolved(contract, below).get("type") == "object":
            yield (name,), {**request, name: {}}
            # and what may stand within it
            for path, changed in with_empty_objects(contract, below, {}):
                yield (name, *path), {**request, name: changed}


def keeps_to(contract, schema, value):
    return jsonschema_rs.Draft202012Validator({**schema, "components": contract["components"]}).is_valid(value)


def allowed(contract, operation, request):
    return keeps_to(contract, schema_of(contract, operation), request)


def answer(client, operation, request):
    response = client.post(operation.path, json=request)
    assert response.status_code == 200, response.get_data(as_text=True)
    if not response.is_json:
        return response.get_data(as_text=True)
    return {name: value for name, value in response.json.items() if name != "meta"}


@pytest.mark.parametrize("operation", POSTED, ids=lambda operation: operation.name)
def test_an_empty_object_is_the_same_as_none(client, contract, operation):
    for example in examples_of(operation.name):
        usual = answer(client, operation, example.request)
        for path, request in with_empty_objects(contract, schema_of(contract, operation), example.request):
            if allowed(contract, operation, request):
                assert answer(client, operation, request) == usual, (example.name, path)


def test_the_walk_reaches_the_objects_within_objects_and_lists(contract):
    """Among them the rib of a hem, whose usual multiple is not that of a count rule elsewhere."""
    [pullovers] = [each for each in POSTED if each.name == "pullovers"]
    [gauge] = [each for each in POSTED if each.name == "gauge-conversions"]
    walked = [
        path
        for request in ({"gauge": {}}, {"gauge": {}, "items": [{"across": 1}]})
        for operation in (pullovers, gauge)
        for path, _ in with_empty_objects(contract, schema_of(contract, operation), request)
    ]
    assert {("body", "hem", "count_rule"), ("ease",), ("items", 0, "count_rule")} <= set(walked)
