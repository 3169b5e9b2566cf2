"""The contract: valid by the OpenAPI 3.1 specification, complete, and the committed one up to date."""

import json
import re
from pathlib import Path

import jsonschema_rs
import pytest
import yaml
from openapi_spec_validator import OpenAPIV31SpecValidator

from openapi.build import CONTRACT, contract_text
from service.config import Config
from service.errors import KINDS
from service.examples import examples_of
from service.media import JSON
from service.routes import operations
from service.schemas.enumerations import ENUMERATIONS

OPERATIONS = operations(Config())
GROUPS = {"422": "Unprocessable", "429": "TooManyRequests", "4XX": "Refused", "5XX": "Failed"}
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


def test_every_object_says_what_it_is(contract):
    objects = {name: told for name, told in contract["components"]["schemas"].items() if told.get("type") == "object"}
    assert len(objects) > 100
    assert [name for name, told in objects.items() if not told["description"]] == []


def reached(contract, *parts):
    """The names of the schemas that parts of the contract lead to."""
    found, todo = set(), [json.dumps(part) for part in parts]
    while todo:
        for name in set(re.findall(r'"#/components/schemas/(\w+)"', todo.pop())) - found:
            found.add(name)
            todo.append(json.dumps(contract["components"]["schemas"][name]))
    return found


def of_requests(contract):
    methods = [each for path in contract["paths"].values() for each in path.values()]
    return reached(contract, [(each.get("requestBody"), each["parameters"]) for each in methods])


def of_answers(contract):
    methods = [each for path in contract["paths"].values() for each in path.values()]
    return reached(contract, [each["responses"] for each in methods], contract["components"]["responses"])


def test_a_schema_is_of_requests_or_of_answers(contract):
    asked, answered = of_requests(contract), of_answers(contract)
    assert asked & answered == set()
    assert asked | answered == set(contract["components"]["schemas"])
    assert {"SentSections", "SentIncreaseRound"} <= asked
    assert {"Sections", "IncreaseRound", "Problem"} <= answered


def test_requests_are_closed_and_answers_open(contract):
    schemas = contract["components"]["schemas"]
    for name in of_requests(contract):
        if not {"enum", "oneOf"} & schemas[name].keys():
            assert schemas[name]["additionalProperties"] is False, name
    for name in of_answers(contract):
        assert "additionalProperties" not in schemas[name], name


def within(node):
    """A part of the contract, and every object in it that isn't an example."""
    if isinstance(node, dict):
        yield node
        node = [below for name, below in node.items() if name not in ("example", "examples", "default")]
    for below in node if isinstance(node, list) else ():
        yield from within(below)


def test_an_enumeration_has_a_name_in_requests_and_is_open_in_answers(contract):
    """A generated client has a type for each, and doesn't break on a member that it doesn't know."""
    schemas = contract["components"]["schemas"]
    named = {name for name in of_requests(contract) if isinstance(schemas[name].get("enum"), list)}
    assert len({tuple(schemas[name]["enum"]) for name in named}) == len(named) > 20
    unnamed = [
        node for node in within(contract) if isinstance(node.get("enum"), list) and node not in list(schemas.values())
    ]
    assert unnamed == []
    assert len([node for node in within(contract) if "x-extensible-enum" in node]) > 20


def test_every_name_of_an_enumeration_is_used(contract):
    assert set(ENUMERATIONS) <= of_requests(contract)


def test_a_length_for_each_size_is_one_type_wherever_it_is_sent(contract):
    schemas = contract["components"]["schemas"]
    assert len(schemas["LengthPerSize"]["oneOf"]) == 3
    alike = [name for name in of_requests(contract) if schemas[name].get("oneOf") == schemas["LengthPerSize"]["oneOf"]]
    places = [node for node in within(contract) if node.get("$ref") == "#/components/schemas/LengthPerSize"]
    assert alike == ["LengthPerSize"]
    assert len(places) > 5
    assert all(node["description"] for node in places)


def test_rules_about_several_fields_stand_under_all_of(contract):
    """Beside `properties` code generators take them for alternatives of the whole object and drop the properties."""
    ruled = 0
    for name, schema in contract["components"]["schemas"].items():
        if "properties" in schema:
            assert {"oneOf", "anyOf", "not", "if"} & schema.keys() == set(), name
        ruled += "allOf" in schema
    assert ruled > 10


def test_the_contract_is_small_enough_for_tools_and_people(client):
    assert len(client.get("/openapi.json").get_data()) < 700_000


def test_a_misspelt_field_of_an_answer_is_found(closed_contract, contract):
    [example, *_] = examples_of("raglan-schedules")
    answer = contract["paths"]["/v1/raglan-schedules"]["post"]["responses"]["200"]["content"][JSON]["schema"]

    def faults(document, value):
        schema = {**answer, "components": document["components"]}
        return [error.message for error in jsonschema_rs.Draft202012Validator(schema).iter_errors(value)]

    first = dict(example.answer["sizes"][0])
    first["doubeld_rounds"] = first.pop("doubled_rounds")
    misspelt = {**example.answer, "sizes": [first]}
    assert faults(closed_contract, example.answer) == []
    [fault] = faults(closed_contract, misspelt)
    assert "doubeld_rounds" in fault
    assert faults(contract, misspelt) == [], "to a client it is a field that it doesn't know"


def test_an_unknown_member_of_an_open_enumeration_is_found(closed_contract, contract):
    [example, *_] = examples_of("health-live")
    answer = {**example.answer, "status": "lively"}
    schema = {"$ref": "#/components/schemas/Live"}
    for document, valid in ((closed_contract, False), (contract, True)):
        validator = jsonschema_rs.Draft202012Validator({**schema, "components": document["components"]})
        assert validator.is_valid(answer) is valid


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
def test_an_operation_documents_its_errors_in_groups(contract, operation):
    """RFC 9457 documents, grouped so that an operation's page stays short (OpenAPI 3.1: 4XX is any 400 to 499)."""
    responses = {status: told for status, told in described(contract, operation)["responses"].items() if status > "4"}
    assert responses.keys() == {"422", "429", "4XX", "5XX"}
    for told in responses.values():
        name = told["$ref"].rpartition("/")[2]
        [(media, content)] = contract["components"]["responses"][name]["content"].items()
        assert (media, content["schema"]["$ref"]) == ("application/problem+json", "#/components/schemas/Problem")


def test_the_contract_says_when_to_try_again(contract):
    answers = contract["components"]["responses"]
    waiting = {name for name, told in answers.items() if "Retry-After" in told["headers"]}
    assert waiting == {"TooManyRequests", "Failed"}
    assert "integer" in contract["components"]["headers"]["Retry-After"]["schema"]["type"]


@each_operation
def test_an_operation_documents_the_headers_of_its_answer(contract, operation):
    headers = described(contract, operation)["responses"]["200"]["headers"]
    assert "X-Request-Id" in headers
    assert ("ETag" in headers) == (operation.method == "GET" and not operation.path.startswith("/health/"))
    assert {"Cache-Control", "RateLimit-Policy", "Content-Language"} <= headers.keys()


@each_operation
def test_what_comes_in_the_language_asked_takes_accept_language(contract, operation):
    """What is published, or about the service, comes in English: all that is asked for by GET."""
    asked = {"$ref": "#/components/parameters/AcceptLanguage"} in described(contract, operation)["parameters"]
    assert asked == (operation.method == "POST")


def test_a_problem_says_its_language(contract):
    for answer in contract["components"]["responses"].values():
        assert "Content-Language" in answer["headers"]


def test_the_contract_explains_every_problem_and_shows_it(contract):
    told = {status: contract["components"]["responses"][name] for status, name in GROUPS.items()}
    for kind in KINDS:
        group = told.get(str(kind.status)) or told[f"{kind.status // 100}XX"]
        assert kind.explanation in group["description"]
        assert f"**{kind.status}**" in group["description"] or str(kind.status) in told
        example = group["content"]["application/problem+json"]["examples"][kind.name]["value"]
        assert (example["type"], example["status"]) == (kind.uri, kind.status)


def test_the_committed_contract_stands_beside_its_builder():
    assert Path(__file__).parents[2] / "openapi" / "openapi.yaml" == CONTRACT


@each_operation
def test_an_operation_answers_no_other_method(client, operation):
    own = {"POST": {"POST", "QUERY"}, "GET": {"GET", "HEAD"}}[operation.method]
    for method in {"GET", "HEAD", "POST", "PUT", "PATCH", "DELETE", "TRACE", "QUERY"} - own:
        response = client.open(operation.path, method=method)
        assert response.status_code == 405, method
        assert set(response.headers["Allow"].split(", ")) == own | {"OPTIONS"}
