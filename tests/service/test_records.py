"""Schemas and the core's records say the same: no field stands for an attribute that isn't there."""

from dataclasses import MISSING

import pytest
from marshmallow import fields

from service.config import Config
from service.routes import operations
from service.schemas.base import StrictSchema
from service.schemas.common import RequestSchema
from service.schemas.containers import Mapping
from service.schemas.records import path_to

OPERATIONS = operations(Config())


def schemas_within(schema, found=None):
    """A schema and every one that its fields hold, one of each class."""
    found = {} if found is None else found
    if type(schema) in found:
        return found
    found[type(schema)] = schema
    waiting = list(schema.fields.values())
    while waiting:
        field = waiting.pop()
        if isinstance(field, fields.Nested):
            schemas_within(field.schema, found)
        elif isinstance(field, fields.List):
            waiting.append(field.inner)
        elif isinstance(field, Mapping):
            waiting.append(field.values)
        waiting += getattr(field, "alternatives", [])
    return found


ASKED, ANSWERED = {}, {}
for each in OPERATIONS:
    schemas_within(each.schema, ASKED)
    if each.answer is not None:
        schemas_within(each.answer(), ANSWERED)


def named(schemas):
    return [pytest.param(schema, id=kind.__name__) for kind, schema in schemas.items() if schema.record]


def by_its_own_hand(schema, method):
    """Whether a schema loads or writes what its record doesn't look like."""
    return any(method in vars(kind) for kind in type(schema).__mro__[:-1] if kind.__module__ != StrictSchema.__module__)


@pytest.mark.parametrize("schema", named(ASKED))
def test_a_field_is_required_exactly_where_its_record_has_no_default(schema):
    assert schema.fields
    if by_its_own_hand(schema, "build") and not issubclass(type(schema), RequestSchema):
        return
    for name, field in schema.fields.items():
        path = path_to(schema.record, field.source or name, schema.inline)
        if path and not any(name in rule.names for rule in schema.rules):
            found = path[-1]
            assert field.required == (found.default is MISSING), name


@pytest.mark.parametrize("schema", named(ANSWERED))
def test_every_field_of_an_answer_is_an_attribute_of_its_record_or_has_a_hook(schema):
    if by_its_own_hand(schema, "write") or by_its_own_hand(schema, "build"):
        return
    for name, field in schema.fields.items():
        of_outcome = schema.outcome and name in ("feasible", "code", "reason", "nearest", "together")
        assert of_outcome or callable(field.source) or name in schema.paths, name
