"""Answers to requests drawn at random keep to the contract, by an independent JSON Schema validator."""

import jsonschema_rs

from tests.oracles.random_pullovers import random_request


def test_the_answers_to_random_pullovers_keep_to_the_contract(client, closed_contract):
    responses = closed_contract["paths"]["/v1/pullovers"]["post"]["responses"]
    answer = responses["200"]["content"]["application/json"]["schema"]
    validator = jsonschema_rs.Draft202012Validator({**answer, "components": closed_contract["components"]})
    answered = charted = yarned = changed = impossible = 0
    for seed in range(1000, 1150):
        response = client.post("/v1/pullovers", json=random_request(seed))
        if response.status_code != 200:
            continue
        assert [error.message for error in validator.iter_errors(response.json)] == [], seed
        answered += 1
        sizes = response.json.get("sizes", ())
        charted += any("chart" in size for size in sizes)
        yarned += any("yarn" in size for size in sizes)
        impossible += any(not size["feasible"] for size in sizes)
        changed += bool(response.json.get("changed"))
    # every part of the schema that is only sometimes there is seen
    assert answered > 90
    assert min(charted, yarned, changed, impossible) > 10, (charted, yarned, changed, impossible)
