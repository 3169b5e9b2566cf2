"""Random pullovers, each knitted stitch by stitch from its answer (see `tests.oracles.knit_pullovers`)."""

from copy import deepcopy

import pytest

from tests.oracles.knit_pullovers import Seen, compare_answer, knit_request
from tests.oracles.random_pullovers import random_request

REQUESTS = 80
"""Some three hundred garments; thousands are knitted by hand."""

FALSIFIED = {
    "include": ["table", "instructions", "size_instructions", "chart_rounds"],
    "gauges": {"plain": {"stitches": 22, "rows": 31}, "stranded": {"stitches": 24, "rows": 28}},
    "labels": ["M", "L"],
    "chart": {"chart": {"rows": ["..#..", ".###.", "#####", ".###."], "repeat": "once"}, "first_round": 7},
    "body": {"levels": [{"measurement": "waist", "below": 14}], "bust_darts": {"extra": 3}, "front_extra": 4},
    "yarn": {"metres_per_100g": 200},
}

TOLD_OTHERWISE = (
    "cost",
    "differences",
    "phases",
    "grams",
    "metres",
    "balls",
    "stretch_needed",
    "difference",
    "target",
    "instructions",
)
"""Numbers of a size that are no stitch, round or length of what is knitted: checked by tests of their own."""

ENDS_OF_A_FLOAT = {("longest_float", "start"), ("longest_float", "end")}


def test_random_pullovers_are_knitted_as_they_are_told_and_every_offer_makes_its_size_possible(client):
    seen = Seen()
    for seed in range(REQUESTS):
        seen.add(knit_request(client, random_request(seed)))
    assert [(kind, detail, request) for kind, detail, request in seen.disagreements] == []
    assert seen.made > 3 * REQUESTS
    assert min(seen.refused, seen.impossible, seen.offered) >= 3
    # the search for changes ends after so many trials
    assert 5 * seen.helpless <= seen.impossible


def test_every_field_of_a_request_is_sent_at_random(client):
    contract = client.get("/openapi.json").json
    sent = {path for seed in range(1500) for path in _paths(random_request(seed))}
    schema = contract["paths"]["/v1/pullovers"]["post"]["requestBody"]["content"]["application/json"]["schema"]
    # a picture of a chart is another way to send its rows
    assert set(_declared(contract, schema)) - sent - {"chart.chart.png"} == set()


@pytest.fixture(scope="module")
def sound(client):
    answer = client.post("/v1/pullovers", json=FALSIFIED).json
    assert compare_answer(FALSIFIED, answer) == []
    return answer


def test_the_knitter_notices_every_number_that_is_told_wrong(sound):
    unnoticed = []
    for path, number in _numbers(sound["sizes"][0]):
        if set(TOLD_OTHERWISE) & {*path} or path[1:3] in ENDS_OF_A_FLOAT:
            continue
        false = deepcopy(sound)
        place = false["sizes"][0]
        for step in path[:-1]:
            place = place[step]
        place[path[-1]] = number + 1
        if not compare_answer(FALSIFIED, false, only=false["sizes"][0]["label"]):
            unnoticed.append(path)
    assert unnoticed == []


def _numbers(value, path=()):
    """Every number in a JSON value with its path; of long lists the items at the ends and in the middle."""
    if isinstance(value, dict):
        for name, below in value.items():
            yield from _numbers(below, (*path, name))
    elif isinstance(value, list):
        for index in sorted({0, len(value) // 2, len(value) - 1} & {*range(len(value))}):
            yield from _numbers(value[index], (*path, index))
    elif isinstance(value, int | float) and not isinstance(value, bool):
        yield path, value


def _paths(request, path=()):
    if isinstance(request, dict):
        for name, below in request.items():
            yield ".".join((*path, name))
            yield from _paths(below, (*path, name))
    elif isinstance(request, list):
        for below in request:
            yield from _paths(below, path)


def _declared(contract, schema, path=()):
    """The dotted paths of all properties that a schema declares."""
    while "$ref" in schema:
        schema = contract["components"]["schemas"][schema["$ref"].rpartition("/")[2]]
    for keyword in ("oneOf", "anyOf", "allOf"):
        for alternative in schema.get(keyword, ()):
            yield from _declared(contract, alternative, path)
    if "items" in schema:
        yield from _declared(contract, schema["items"], path)
    for name, below in schema.get("properties", {}).items():
        yield ".".join((*path, name))
        yield from _declared(contract, below, (*path, name))
