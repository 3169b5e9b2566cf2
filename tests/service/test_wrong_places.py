"""Every wrong place of a request is named in one answer, and none that is only wrong because another is.

What is expected of two mistakes is what the service says of each alone: whether they are independent is told by the
places that they are about, never by what is answered.
"""

import json
from itertools import combinations
from typing import Any

import pytest

from service.config import Config
from service.routes import operations
from service.schemas.containers import ByField, ByType, Items, Mapping, Nested
from tests.service.mistakes import GAUGE, MISTAKES, RIGHT, Mistake, independent

POSTED = [each for each in operations(Config()) if each.method == "POST" and each.takes == "application/json"]


def errors(client, path, request_, **options):
    response = client.post(path, json=request_, **options)
    assert response.status_code == 422, response.text
    return response.json["errors"]


def wrong(client, path, request_):
    return {(error["pointer"], error["code"]) for error in errors(client, path, request_)}


def places(value: Any, *path: Any):
    """Every place in a request below its root, dotted."""
    steps = value.items() if isinstance(value, dict) else enumerate(value) if isinstance(value, list) else ()
    for step, below in steps:
        yield ".".join(map(str, (*path, step)))
        yield from places(below, *path, step)


@pytest.mark.parametrize("path", RIGHT)
def test_the_requests_are_right_without_a_mistake(client, path):
    assert client.post(path, json=RIGHT[path]).status_code == 200


@pytest.mark.parametrize("path", MISTAKES)
def test_two_independent_mistakes_are_both_named_and_nothing_else_is(client, path):
    right, mistakes = RIGHT[path], MISTAKES[path]
    alone = [wrong(client, path, mistake.made_in(right)) for mistake in mistakes]
    tried = 0
    for one, other in combinations(range(len(mistakes)), 2):
        first, second = mistakes[one], mistakes[other]
        if independent(first, second):
            tried += 1
            found = wrong(client, path, second.made_in(first.made_in(right)))
            assert found == alone[one] | alone[other], (first, second)
    assert tried >= 12


@pytest.mark.parametrize("path", MISTAKES)
def test_a_wrong_type_anywhere_hides_no_independent_mistake_and_makes_none(client, path):
    right, mistakes = RIGHT[path], MISTAKES[path]
    alone = [wrong(client, path, mistake.made_in(right)) for mistake in mistakes]
    for place in places(right):
        of_wrong_type = Mistake(place, True)
        named = wrong(client, path, of_wrong_type.made_in(right))
        for mistake, of_mistake in zip(mistakes, alone, strict=True):
            if independent(of_wrong_type, mistake):
                found = wrong(client, path, of_wrong_type.made_in(mistake.made_in(right)))
                assert found == named | of_mistake, (place, mistake)


def test_labels_that_are_wrong_and_an_ease_that_is_no_number_are_named_together(client):
    request_ = {"gauge": GAUGE, "labels": ["S", "S", "Q"], "ease": {"bust": "x"}}
    assert wrong(client, "/v1/pullovers", request_) == {
        ("/ease/bust", "wrong_type"),
        ("/labels/1", "duplicate_label"),
        ("/labels/2", "label_not_in_table"),
    }


def test_lengths_in_no_unit_are_in_no_contradiction(client):
    # a bust of 84 is one of the women's table in cm, and in no other reading of the unit
    request_ = {"gauge": GAUGE, "body_table": "women", "sizes": [{"label": "S", "bust": 30}], "unit": "mm"}
    assert wrong(client, "/v1/size-gradings", request_) == {("/unit", "not_one_of")}
    misspelt = {"units" if name == "unit" else name: value for name, value in request_.items()}
    assert wrong(client, "/v1/size-gradings", misspelt) == {("/units", "unknown_field")}


# Words that are near


@pytest.mark.parametrize(
    ("change", "pointer", "near"),
    [
        ({"sleeves": {}}, "/sleeves", "sleeve"),
        ({"gage": GAUGE}, "/gage", None),  # the gauge is there
        ({"colour": "red"}, "/colour", None),
        ({"x" * 5000: 1}, "/" + "x" * 5000, None),
        ({"yoke": {"lineStitches": 2}}, "/yoke/lineStitches", "line_stitches"),
        ({"yoke": {"spacing": "closest-first"}}, "/yoke/spacing", "closest_first"),
        ({"yoke": {"spacing": "random"}}, "/yoke/spacing", None),
        ({"body_table": "Woman"}, "/body_table", "women"),
        ({"ease": {"bst": 4}}, "/ease/bst", "bust"),
        ({"ease": {"ankle": 4}}, "/ease/ankle", None),
    ],
)
def test_a_misspelt_word_is_answered_by_the_near_one_and_another_by_none(client, change, pointer, near):
    (error,) = errors(client, "/v1/pullovers", {"gauge": GAUGE, **change})
    assert error["pointer"] == pointer
    suggested = error["detail"].partition("; did you mean ")[2]
    assert suggested == (f"`{near}`?" if near else "")


@pytest.mark.parametrize(
    ("path", "request_", "pointer"),
    [
        ("/v1/pullovers", {"gage": GAUGE}, "/gage"),
        ("/v1/raglan-schedules", {"gauge": GAUGE, "size": RIGHT["/v1/raglan-schedules"]["sizes"]}, "/size"),
        ("/v1/size-matches", {"gradin": RIGHT["/v1/size-matches"]["grading"], "garment": 99}, "/gradin"),
    ],
)
def test_a_field_that_is_there_under_a_misspelt_name_is_not_missed_as_well(client, path, request_, pointer):
    assert wrong(client, path, request_) == {(pointer, "unknown_field")}


def test_what_a_misspelt_field_may_say_is_in_no_contradiction(client):
    # without the labels the three eases would be too few for nine sizes
    request_ = {"gauge": GAUGE, "label": ["S", "M", "L"], "ease": {"bust": [8, 9, 10]}}
    assert wrong(client, "/v1/pullovers", request_) == {("/label", "unknown_field")}


def test_of_many_misspelt_words_only_the_first_are_answered_by_near_ones(client):
    sizes = [{"label": str(number), "busts": 90} for number in range(40)]
    request_ = {"gauge": GAUGE, "sizes": sizes, "ease": {"bust": 5}}
    request_ |= {f"printed_cm_step{number}": 1 for number in range(100)}
    found = errors(client, "/v1/size-gradings", request_)
    assert len([error for error in found if error["code"] == "unknown_field"]) == 140
    assert len([error for error in found if "did you mean" in error["detail"]]) <= 50


# What a value should look like


def fields_within(schema, found):
    """Every field of a request that is a list or an object, and so on within it."""
    waiting = [*schema.fields.values()]
    while waiting:
        field = waiting.pop()
        if field in found:
            continue
        if isinstance(field, Items | Nested | Mapping | ByField | ByType):
            found.append(field)
        if isinstance(field, Nested):
            waiting += field.schema.fields.values()
        waiting += [getattr(field, "inner", None), getattr(field, "values", None), *getattr(field, "alternatives", [])]
        waiting = [each for each in waiting if each is not None]
    return found


@pytest.mark.parametrize("operation", POSTED, ids=lambda operation: operation.name)
def test_whatever_should_be_an_object_or_a_list_is_shown_by_an_example_that_would_do(operation):
    found = fields_within(operation.schema, [])
    for field in found:
        assert field.sample() or isinstance(field, ByType), field
        if field.sample():
            field.load(json.loads(field.sample()))


@pytest.mark.parametrize(
    ("change", "detail"),
    [
        ({"ease": 10}, 'must be an object, as in {"bust": 10}.'),
        (
            {"ease": {"bust": "10"}},
            'must be a number, a list or an object, as in 10, [8, 10, 12] or {"from": 8, "to": 12}.',
        ),
        ({"gauge": "22 x 31"}, 'must be an object, as in {"stitches": 22, "rows": 31}.'),
        ({"labels": "S"}, 'must be a list, as in ["S", "M", "L"].'),
    ],
)
def test_a_value_of_a_wrong_type_is_told_what_would_do(client, change, detail):
    (error,) = errors(client, "/v1/pullovers", {"gauge": GAUGE, **change})
    assert (error["code"], error["detail"]) == ("wrong_type", detail)


# Query parameters


@pytest.mark.parametrize("operation", POSTED, ids=lambda operation: operation.name)
def test_a_query_parameter_beside_a_body_is_refused_whatever_the_body_says(client, operation):
    for body in ({}, RIGHT.get(operation.path, {})):
        found = errors(client, operation.path, body, query_string={"fields": "sizes", "unit": "cm"})
        beside = [error for error in found if "parameter" in error]
        assert [(error["parameter"], error["code"]) for error in beside] == [
            ("fields", "unknown_parameter"),
            ("unit", "unknown_parameter"),
        ]
        assert all(("pointer" in error) != ("parameter" in error) for error in found)


def test_what_contradicts_itself_is_named_beside_a_query_parameter(client):
    request_ = {"gauge": GAUGE, "labels": ["S", "S"]}
    found = errors(client, "/v1/pullovers", request_, query_string={"fields": "sizes"})
    assert [error["code"] for error in found] == ["unknown_parameter", "duplicate_label"]


def test_a_file_with_a_query_parameter_is_refused(client):
    response = client.post("/v1/charts", data=b"", content_type="image/png", query_string={"fields": ""})
    assert [error.get("parameter") for error in response.json["errors"]] == ["fields"]


def test_a_name_in_an_address_is_answered_by_a_near_one(client):
    response = client.get("/v1/standards/body-tables/womens")
    assert (response.status_code, response.json["detail"].partition("; ")[2]) == (404, "did you mean `women`?")
