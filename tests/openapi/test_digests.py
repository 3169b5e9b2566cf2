"""One digest for what is asked: a default that is sent makes no difference, and whatever changes the answer does."""

import json

import pytest

from service.config import Config
from service.examples import examples_of
from service.media import JSON
from service.routes import operations
from tests.openapi.test_optional_objects import allowed, keeps_to, resolved, schema_of, with_empty_objects

POSTED = [each for each in operations(Config()) if each.method == "POST" and each.takes == JSON]
each_operation = pytest.mark.parametrize("operation", POSTED, ids=lambda operation: operation.name)


def kind_of(contract, schema, value):
    """The schema of what was sent, behind its references; of alternatives the one that the value keeps to."""
    while "$ref" in schema:
        schema = contract["components"]["schemas"][schema["$ref"].rpartition("/")[2]]
    if "properties" not in schema:
        for alternative in schema.get("oneOf", ()):
            if keeps_to(contract, alternative, value):
                return kind_of(contract, alternative, value)
    return resolved(contract, schema)


def with_defaults(contract, schema, request):
    """The request with one optional field more, at its default, for every field that has one; with its path."""
    schema = kind_of(contract, schema, request)
    if schema.get("type") == "array":
        for index, below in enumerate(request):
            for path, changed in with_defaults(contract, schema["items"], below):
                yield (index, *path), [*request[:index], changed, *request[index + 1 :]]
    if schema.get("type") != "object" or not isinstance(request, dict):
        return
    for name, below in schema.get("properties", {}).items():
        if name in request:
            if isinstance(request[name], dict | list):
                for path, changed in with_defaults(contract, below, request[name]):
                    yield (name, *path), {**request, name: changed}
        elif "default" in below:
            yield (name,), {**request, name: below["default"]}
        elif resolved(contract, below).get("type") == "object":
            # what may stand within an object that isn't sent
            for path, changed in with_defaults(contract, below, {}):
                yield (name, *path), {**request, name: changed}


def asked(client, operation, request):
    """The digest and the answer beside it; None for what is refused."""
    response = client.open(operation.path, method="QUERY", json=request)
    if response.status_code != 200:
        return None
    tag = response.headers["ETag"]
    if not response.is_json:
        return tag, response.get_data()
    answer = response.json
    meta = answer.pop("meta")
    return meta["input_digest"] + tag, json.dumps(answer)


@each_operation
def test_a_default_that_is_sent_leaves_the_digest(client, contract, operation):
    for example in examples_of(operation.name)[:2]:
        usual = asked(client, operation, example.request)
        for path, request in with_defaults(contract, schema_of(contract, operation), example.request):
            if allowed(contract, operation, request):
                found = asked(client, operation, request)
                assert found is None or found == usual, (example.name, path)


@each_operation
def test_an_empty_object_that_is_sent_leaves_the_digest(client, contract, operation):
    for example in examples_of(operation.name)[:2]:
        usual = asked(client, operation, example.request)
        for path, request in with_empty_objects(contract, schema_of(contract, operation), example.request):
            if allowed(contract, operation, request):
                assert asked(client, operation, request) == usual, (example.name, path)


def changed(contract, schema, request):
    """The request with one thing changed or left out, for everything in it; of long lists the first items alone."""
    schema = kind_of(contract, schema, request)
    if isinstance(request, dict):
        for name, value in request.items():
            yield {other: request[other] for other in request if other != name}
            below = schema.get("properties", {}).get(name, schema.get("additionalProperties") or {})
            for each in changed(contract, below, value):
                yield {**request, name: each}
    elif isinstance(request, list):
        for place, value in enumerate(request[:2]):
            for each in changed(contract, schema.get("items", {}), value):
                yield [*request[:place], each, *request[place + 1 :]]
        yield request[:-1]
        yield request[::-1]
    elif isinstance(request, bool):
        yield not request
    elif isinstance(request, int | float):
        yield from (request + 1, request + 0.125, 2 * request)
    elif isinstance(request, str):
        yield from (choice for choice in schema.get("enum", [request + "x"]) if choice != request)


@each_operation
def test_what_changes_the_answer_changes_the_digest(client, contract, operation):
    answers = {}
    for example in examples_of(operation.name)[:2]:
        units = [{**example.request, "unit": "in"}, {**example.request, "inch_convention": "nominal"}]
        requests = [example.request, *units, *changed(contract, schema_of(contract, operation), example.request)]
        for request in requests:
            found = asked(client, operation, request)
            if found is not None:
                digest, answer = found
                assert answers.setdefault(digest, answer) == answer, request
    # most changes are no mistakes
    assert len(answers) > 5
