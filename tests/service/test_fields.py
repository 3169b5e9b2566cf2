"""The strict fields, one by one, and against their own contract by an independent JSON Schema validator."""

from fractions import Fraction
from typing import NamedTuple

import jsonschema_rs
import pytest
from hypothesis import assume, example, given, settings
from hypothesis import strategies as st
from marshmallow import Schema

from service.contract import build_contract
from service.flaws import Flaw, FormError
from service.lengths import REQUEST_UNIT
from service.operation import Operation
from service.schemas.base import StrictSchema, at_least_one_of, at_most_one_of, exactly_one_of
from service.schemas.common import AnswerSchema
from service.schemas.containers import ByType, Items, Mapping, Nested
from service.schemas.fields import Choice, Flag, Length, Number, Text, Whole
from tests.floors import in_a_hundred_cases


class PointSchema(StrictSchema):
    """A point."""

    x = Number(required=True)
    y = Number()


class Line(NamedTuple):
    """What a row becomes."""

    name: str
    unit: str = "cm"
    count: int | None = None


class LineSchema(StrictSchema):
    """A row of many, which are loaded together."""

    record = Line

    name = Text(required=True, most=5)
    unit = Choice("cm", "in")
    count = Whole(nullable=True, maximum=10)


class OneSchema(StrictSchema):
    """One of two."""

    one = exactly_one_of("a", "b")
    a = Whole()
    b = Whole()


class SomeSchema(StrictSchema):
    """At least one, and not both of two."""

    some = at_least_one_of("a", "b", "c")
    apart = at_most_one_of("b", "c")
    a = Whole()
    b = Whole()
    c = Whole()


FIELDS = {
    "number": lambda: Number(minimum=-2.5, maximum=1000),
    "number_above": lambda: Number(above=0),
    "length": lambda: Length(above=0, maximum=100),
    "whole": lambda: Whole(minimum=0, maximum=10),
    "text": lambda: Text(most=5),
    "patterned_text": lambda: Text(pattern="[a-z]+", pattern_detail="small letters"),
    "choice": lambda: Choice("cm", "in"),
    "nullable_choice": lambda: Choice("cm", "in", nullable=True),
    "flag": lambda: Flag(),
    "nullable": lambda: Whole(nullable=True),
    "items": lambda: Items(Whole(), least=1, most=3),
    "texts": lambda: Items(Text(most=5), least=1, most=3),
    "patterned_texts": lambda: Items(Text(pattern="[a-z]+", pattern_detail="small letters"), most=3),
    "choices": lambda: Items(Choice("cm", "in"), most=3),
    "lines": lambda: Items(Nested(LineSchema), most=3),
    "record": lambda: Nested(PointSchema),
    "one": lambda: Nested(OneSchema),
    "some": lambda: Nested(SomeSchema),
    "mapping": lambda: Mapping(Choice("a", "b"), Whole(minimum=1), most=2),
    "by_type": lambda: ByType(number=Number(maximum=5), items=Items(Number(), most=2), record=Nested(PointSchema)),
}


class EverySchema(StrictSchema):
    """A field of every kind."""


class EveryAnswerSchema(AnswerSchema):
    """An answer with an object that requests have too, and a choice."""

    point = Nested(PointSchema)
    choice = Choice("cm", "in")


EveryKind = type("EveryKindSchema", (EverySchema,), {name: make() for name, make in FIELDS.items()})
SCHEMA = EveryKind()


@pytest.fixture(scope="module")
def contract():
    operation = Operation(
        path="/every-kind",
        name="every-kind",
        tag="Service",
        summary="",
        description="",
        request=EveryKind,
        answer=EveryAnswerSchema,
        call=lambda _: None,
        represent=lambda _, __: {},
    )
    return build_contract([operation])


def loaded(schema: Schema, **values):
    return schema.load(values)


def details(wrong):
    """What is wrong, its details alone."""
    if isinstance(wrong, Flaw):
        return wrong.detail
    return (
        {step: details(below) for step, below in wrong.items()} if isinstance(wrong, dict) else [*map(details, wrong)]
    )


def refused(name, value):
    try:
        SCHEMA.load({name: value})
    except FormError as error:
        return details(error.wrong)
    return None


@pytest.mark.parametrize(
    ("name", "sent", "exactly"),
    [
        ("number", 101.6, Fraction(508, 5)),
        ("number", 3, Fraction(3)),
        ("number", -2.5, Fraction(-5, 2)),
        ("length", 0.1, Fraction(1, 10)),
        ("whole", 3.0, 3),
        ("text", "aé😀 b", "aé😀 b"),
        ("flag", False, False),
        ("nullable", None, None),
        ("items", [1, 2.0], (1, 2)),
        ("texts", ["a", "é"], ("a", "é")),
        ("choices", ["in", "cm"], ("in", "cm")),
        ("choices", [], ()),
        ("lines", [{"name": "a"}], (Line("a"),)),
        (
            "lines",
            [{"name": "a", "count": 3.0}, {"unit": "in", "name": "b"}, {"count": None, "name": "c"}],
            (Line("a", count=3), Line("b", "in"), Line("c")),
        ),
        ("record", {"x": 1}, {"x": 1}),
        ("mapping", {"a": 1}, {"a": 1}),
        ("by_type", 5, Fraction(5)),
        ("by_type", [1], (Fraction(1),)),
        ("by_type", {"x": 0.5}, {"x": Fraction(1, 2)}),
    ],
)
def test_a_valid_value_is_loaded_exactly(name, sent, exactly):
    value = SCHEMA.load({name: sent})[name]
    assert value == exactly
    assert isinstance(value, type(exactly))


@pytest.mark.parametrize(
    ("name", "sent"),
    [
        ("number", "22"),
        ("number", True),
        ("number", None),
        ("number", float("nan")),
        ("number", float("inf")),
        ("number", 1000.001),
        ("number_above", 0),
        ("whole", 3.5),
        ("whole", False),
        ("whole", "3"),
        ("whole", 1e400),
        ("text", ""),
        ("text", "abcdef"),
        ("text", "a\n"),
        ("text", "\x85"),
        ("text", 3),
        ("patterned_text", "abc\n"),
        ("patterned_text", "aBc"),
        ("choice", "mm"),
        ("choice", ["cm"]),
        ("choice", None),
        ("flag", 1),
        ("flag", "true"),
        ("items", []),
        ("items", [1, 2, 3, 4]),
        ("items", {"0": 1}),
        ("items", "abc"),
        ("texts", ["a", ""]),
        ("texts", ["a", "abcdef"]),
        ("texts", ["a", "\x7f"]),
        ("texts", ["a", 3]),
        ("patterned_texts", ["a", "B"]),
        ("choices", ["cm", "mm"]),
        ("choices", ["cm", ["cm"]]),
        ("lines", [{"name": "a"}, {}]),
        ("lines", [{"name": "a"}, {"name": "b", "size": "c"}]),
        ("lines", [{"name": "a"}, {"name": "b", "unit": None}]),
        ("lines", [{"name": "a", "count": 3}, {"name": "b", "count": 11}]),
        ("lines", [{"name": "a"}, "b"]),
        ("record", []),
        ("record", {"x": 1, "z": 2}),
        ("mapping", {"c": 1}),
        ("mapping", {"a": 0}),
        ("by_type", "5"),
        ("by_type", True),
        ("by_type", [1, 2, 3]),
    ],
)
def test_an_invalid_value_is_refused(name, sent):
    assert refused(name, sent)


def test_a_length_is_read_in_the_unit_of_the_request():
    token = REQUEST_UNIT.set("in")
    try:
        assert SCHEMA.load({"length": 40})["length"] == Fraction(1016, 10)
    finally:
        REQUEST_UNIT.reset(token)


def test_every_wrong_place_is_named_at_once():
    messages = refused("record", {"y": "1", "z": 2})
    assert messages == {"record": {"x": "is required.", "y": "must be a number.", "z": "is not a field here."}}


def test_wrong_places_inside_mappings_and_lists_are_named_where_they_are():
    assert refused("mapping", {"a": 0, "b": 1}) == {"mapping": {"a": "must be at least 1."}}
    assert refused("by_type", [1, "2"]) == {"by_type": {1: "must be a number."}}
    assert refused("by_type", {"x": True}) == {"by_type": {"x": "must be a number."}}
    assert refused("lines", [{"name": "a"}, {"unit": "cm"}]) == {"lines": {1: {"name": "is required."}}}


@pytest.mark.parametrize(
    ("name", "sent", "says"),
    [
        ("one", {}, "must have exactly one of a or b; none were sent."),
        ("one", {"a": 1, "b": 1}, "must have exactly one of a or b; 2 were sent."),
        ("some", {}, "must have at least one of a, b or c; none were sent."),
        ("some", {"b": 1, "c": 1}, "must have at most one of b or c; 2 were sent."),
    ],
)
def test_rules_between_fields_are_said_at_their_object(name, sent, says):
    assert refused(name, sent) == {name: {None: [says]}}


def test_a_rule_between_fields_is_checked_beside_wrong_fields():
    assert refused("one", {"a": "1", "b": 1})["one"].keys() == {"a", None}


@pytest.mark.parametrize(
    ("name", "says"),
    [
        ("number", {"type": "number", "minimum": -2.5, "maximum": 1000}),
        ("number_above", {"type": "number", "exclusiveMinimum": 0}),
        ("whole", {"type": "integer", "minimum": 0, "maximum": 10}),
        ("nullable", {"type": ["integer", "null"]}),
        ("items", {"type": "array", "minItems": 1, "maxItems": 3, "items": {"type": "integer"}}),
    ],
)
def test_the_contract_says_what_is_enforced(contract, name, says):
    assert contract["components"]["schemas"]["EveryKind"]["properties"][name] == says


def test_the_contract_says_the_unit_of_a_length(contract):
    length = contract["components"]["schemas"]["EveryKind"]["properties"]["length"]
    assert length["x-unit"] == "the request's `unit`"


def test_the_contract_closes_every_object_of_a_request(contract):
    closed = {"EveryKind", "Line", "SentPoint", "One", "Some"}
    schemas = contract["components"]["schemas"]
    assert {name for name, schema in schemas.items() if schema.get("additionalProperties") is False} == closed


def test_the_contract_opens_every_object_of_an_answer(contract):
    """The point is in the answer too: it may get more fields there, and none in the request."""
    schemas = contract["components"]["schemas"]
    assert "additionalProperties" not in schemas["Point"]
    assert schemas["Point"]["properties"] == schemas["SentPoint"]["properties"]
    assert schemas["EveryKind"]["properties"]["record"] == {"$ref": "#/components/schemas/SentPoint"}
    assert schemas["EveryAnswer"]["properties"]["choice"] == {"type": "string", "x-extensible-enum": ["cm", "in"]}


def test_an_enumeration_of_a_request_is_a_type_of_its_own(contract):
    schemas = contract["components"]["schemas"]
    assert schemas["Unit"] == {"type": "string", "enum": ["cm", "in"]}
    assert schemas["EveryKind"]["properties"]["choice"] == {"$ref": "#/components/schemas/Unit"}


NUMBERS = st.integers(-3, 12) | st.floats(allow_nan=False, allow_infinity=False) | st.integers(0, 12).map(float)
SCALARS = st.none() | st.booleans() | NUMBERS | st.text(max_size=6) | st.sampled_from(["cm", "in", "a\n", "\x7f", "ab"])
KEYS = st.sampled_from(["x", "y", "a", "b", "c"])
VALUES = SCALARS | st.lists(SCALARS, max_size=4) | st.dictionaries(KEYS, SCALARS, max_size=3)


def allowed(contract, name, value):
    schema = {
        **contract["components"]["schemas"]["EveryKind"]["properties"][name],
        "components": contract["components"],
    }
    return jsonschema_rs.Draft202012Validator(schema).is_valid(value)


@given(st.sampled_from(sorted(FIELDS)), VALUES)
@settings(max_examples=400)
@example("patterned_text", "abc\n")
@example("whole", 3.0)
def test_a_field_accepts_exactly_what_its_contract_allows(contract, name, value):
    assert (refused(name, value) is None) == allowed(contract, name, value)


WHOLES = st.integers(0, 10)
SHORT = st.sampled_from(["a", "abcde", "\u00e9", "a b", "7", "abcdef", "", "\x7f"])
LINES = st.fixed_dictionaries(
    {"name": SHORT}, optional={"unit": st.sampled_from(["cm", "in"]), "count": st.none() | WHOLES}
)
POINTS = st.fixed_dictionaries({"x": st.floats(-9, 9)}, optional={"y": WHOLES})


def having(*names):
    """Objects with the fields of one of the names' letters."""
    return st.sampled_from(names).flatmap(
        lambda letters: st.fixed_dictionaries(dict.fromkeys(letters, st.integers(-99, 99)))
    )


LIKELY = {
    "number": st.floats(-3, 1000),
    "number_above": st.floats(0, 1e300),
    "length": st.floats(0, 101),
    "whole": WHOLES | WHOLES.map(float),
    "text": st.text(max_size=5),
    "patterned_text": st.text("abz", max_size=4),
    "choice": st.sampled_from(["cm", "in", "mm"]),
    "nullable_choice": st.sampled_from(["cm", "in", None, "mm"]),
    "flag": st.booleans(),
    "nullable": st.none() | WHOLES,
    "items": st.lists(WHOLES, max_size=4),
    "texts": st.lists(SHORT, min_size=1, max_size=3),
    "patterned_texts": st.lists(st.text("abz", max_size=4), max_size=3),
    "choices": st.lists(st.sampled_from(["cm", "in", "mm"]), max_size=3),
    "lines": st.lists(LINES, min_size=1, max_size=3),
    "record": POINTS,
    "one": having("a", "b", "ab"),
    "some": having("a", "b", "c", "ab", "ac", "bc", "abc"),
    "mapping": st.dictionaries(st.sampled_from("ab"), WHOLES, max_size=2),
    "by_type": st.floats(-9, 6) | st.lists(WHOLES, max_size=3) | POINTS,
}
"""Values of each field's own kind, at and about its bounds."""


@pytest.mark.parametrize("name", FIELDS)
@in_a_hundred_cases(30)
@given(st.data())
@settings(max_examples=30)
def test_a_field_accepts_what_its_contract_allows_of_its_own_kind(contract, name, data):
    value = data.draw(LIKELY[name])
    assert (refused(name, value) is None) == allowed(contract, name, value)
    assume(allowed(contract, name, value))


def test_unknown_fields_are_named_in_the_order_sent_even_where_defaults_fill_the_object() -> None:
    class Sized(StrictSchema):
        first = Whole(maximum=9, default=1)
        second = Whole(maximum=9, default=2)

    with pytest.raises(FormError) as refusal:
        Sized().load({"zeta": 0, "alpha": 0})
    assert [path for path, _ in refusal.value.flaws()] == [("zeta",), ("alpha",)]
