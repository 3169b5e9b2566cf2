"""The contract: valid by the OpenAPI 3.1 specification, complete, and the committed one up to date."""

import re
from pathlib import Path

import pytest
import yaml
from openapi_spec_validator import OpenAPIV31SpecValidator

from openapi.build import CONTRACT, contract_text
from service.config import Config
from service.errors import KINDS
from service.routes import operations

OPERATIONS = operations(Config())
each_operation = pytest.mark.parametrize("operation", OPERATIONS, ids=lambda operation: operation.name)


def described(contract, operation):
    return contract["paths"][operation.path][operation.method.lower()]


def test_the_contract_is_a_valid_openapi_3_1_document(contract):
    assert contract["openapi"].startswith("3.1.")
    assert [error.message for error in OpenAPIV31SpecValidator(contract).iter_errors()] == []


def test_the_committed_contract_is_the_one_that_is_served():
    assert CONTRACT.read_text(encoding="utf-8") == contract_text(), "run python -m openapi.build"


def test_json_and_yaml_say_the_same(client, contract):
    response = client.get("/openapi.yaml")
    assert response.content_type == "application/yaml"
    assert yaml.load(response.get_data(), Loader=yaml.CSafeLoader) == contract


def test_every_address_of_the_service_is_in_the_contract_or_shows_it(app, contract):
    served = {re.sub(r"<(?:\w+:)?(\w+)>", r"{\1}", rule.rule) for rule in app.url_map.iter_rules()}
    shown = {"/openapi.json", "/openapi.yaml", "/docs", "/docs/{name}", "/metrics"}
    assert served - shown == set(contract["paths"])


def test_every_schema_says_what_it_is_and_closes_itself(contract):
    for name, schema in contract["components"]["schemas"].items():
        assert "x-extensible-enum" in schema or schema["additionalProperties"] is False, name
        assert schema["description"], name


def test_every_number_and_list_in_a_request_has_limits(contract):
    """So that nothing overflows, as a float near the edge of its range would, and nothing takes long."""
    unlimited = []

    def walk(schema, place):
        if "$ref" in schema:
            name = schema["$ref"].rpartition("/")[2]
            if name not in seen:
                seen.add(name)
                walk(contract["components"]["schemas"][name], name)
        kinds = schema.get("type", [])
        if {"number", "integer"} & set([kinds] if isinstance(kinds, str) else kinds):
            lower = "minimum" in schema or "exclusiveMinimum" in schema
            if not (lower and "maximum" in schema):
                unlimited.append(place)
        if kinds == "array" and "maxItems" not in schema:
            unlimited.append(place)
        for name, below in schema.get("properties", {}).items():
            walk(below, f"{place}.{name}")
        for below in (schema.get("items"), schema.get("additionalProperties"), *schema.get("oneOf", [])):
            if isinstance(below, dict):
                walk(below, place)

    seen = set()
    for methods in contract["paths"].values():
        for operation in methods.values():
            for body in operation.get("requestBody", {"content": {}})["content"].values():
                walk(body["schema"], operation["operationId"])
    assert unlimited == []


def test_every_component_is_used(contract):
    text = yaml.dump(contract, Dumper=yaml.CSafeDumper)
    for kind, components in contract["components"].items():
        for name in components:
            assert f"#/components/{kind}/{name}" in text, name


@each_operation
def test_an_operation_is_described(contract, operation):
    told = described(contract, operation)
    assert told["summary"]
    assert len(told["description"]) > len(told["summary"])
    assert told["tags"][0] in {tag["name"] for tag in contract["tags"]}
    assert told["responses"]["200"]["content"].keys() == set(operation.media)


@each_operation
def test_an_operation_documents_its_errors(contract, operation):
    responses = described(contract, operation)["responses"]
    expected = {"400", "404", "405", "406", "422", "429", "500", "503"}
    if operation.method == "POST":
        expected |= {"413", "415"}
    assert expected <= responses.keys()
    for status in expected:
        name = responses[status]["$ref"].rpartition("/")[2]
        [(media, content)] = contract["components"]["responses"][name]["content"].items()
        assert (media, content["schema"]["$ref"]) == ("application/problem+json", "#/components/schemas/Problem")


@each_operation
def test_an_operation_documents_the_headers_of_its_answer(contract, operation):
    headers = described(contract, operation)["responses"]["200"]["headers"]
    assert "X-Request-Id" in headers
    assert ("ETag" in headers) == (operation.method == "GET")


def test_the_contract_explains_every_problem(contract):
    descriptions = {response["description"] for response in contract["components"]["responses"].values()}
    assert descriptions == {kind.explanation for kind in KINDS}


def test_the_committed_contract_stands_beside_its_builder():
    assert Path(__file__).parents[2] / "openapi" / "openapi.yaml" == CONTRACT


@each_operation
def test_an_operation_answers_no_other_method(client, operation):
    own = {"POST": {"POST", "QUERY"}, "GET": {"GET", "HEAD"}}[operation.method]
    for method in {"GET", "HEAD", "POST", "PUT", "PATCH", "DELETE", "TRACE", "QUERY"} - own:
        response = client.open(operation.path, method=method)
        assert response.status_code == 405, method
        assert set(response.headers["Allow"].split(", ")) == own | {"OPTIONS"}
