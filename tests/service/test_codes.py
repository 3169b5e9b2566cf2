"""The codes of refusals, reasons and warnings, as the contract lists them and as answers have them."""

import re

import pytest

from grading_core.codes import ProblemCode, ReasonCode, WarningCode
from service.flaws import FormCode
from tests.oracles.random_pullovers import random_request

FAMILIES = {"ErrorCode": [*FormCode, *ProblemCode], "ReasonCode": [*ReasonCode], "WarningCode": [*WarningCode]}


@pytest.fixture(scope="module")
def contract(client):
    return client.get("/openapi.json").json["components"]["schemas"]


def codes_within(answer, key="code"):
    """Every code of an answer, with whether a reason stands beside it."""
    if isinstance(answer, dict):
        if key in answer:
            yield answer[key], "reason" in answer
        for below in answer.values():
            yield from codes_within(below)
    elif isinstance(answer, list):
        for below in answer:
            yield from codes_within(below)


@pytest.mark.parametrize("family", FAMILIES)
def test_the_contract_lists_every_code_with_its_meaning_and_stays_open(contract, family):
    schema = contract[family]
    listed = dict(re.findall(r"^\* `(\w+)`: (.+)$", schema["description"], re.MULTILINE))
    assert listed == {code.value: code.meaning for code in FAMILIES[family]}
    assert schema["x-extensible-enum"] == [*listed]
    assert "enum" not in schema


def test_a_code_stands_beside_every_reason(contract):
    for name, schema in contract.items():
        properties = schema.get("properties", {})
        if "reason" in properties:
            assert properties["code"]["$ref"] == "#/components/schemas/ReasonCode", name


def test_the_codes_of_random_pullovers_are_in_the_contract(client, contract):
    seen = {"ErrorCode": set(), "ReasonCode": set(), "WarningCode": set()}
    for seed in range(150):
        response = client.post("/v1/pullovers", json=random_request(seed))
        if response.status_code == 422:
            seen["ErrorCode"] |= {error["code"] for error in response.json["errors"]}
            continue
        for size in response.json.get("sizes", ()):
            assert ("reason" in size) == ("code" in size) == (not size["feasible"])
        for code, beside_reason in codes_within(response.json):
            seen["ReasonCode" if beside_reason else "WarningCode"].add(code)
    for family, codes in seen.items():
        assert codes <= {*contract[family]["x-extensible-enum"]}
        assert len(codes) >= 2, family
