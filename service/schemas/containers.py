"""Strict fields that hold others: lists, objects, objects whose names are data, and values of several kinds."""

from __future__ import annotations

from collections.abc import Callable, Sequence
from dataclasses import fields as fields_of
from dataclasses import is_dataclass, replace
from functools import partial
from typing import Any

from marshmallow import fields

from service.flaws import Flaw, FormCode, FormError, any_of, how_many, wrong_kind, wrong_type
from service.schemas.base import StrictSchema
from service.schemas.fields import Choice, Describe, Load, Number, Prose, StrictField, Text
from service.schemas.records import Attribute, sent_as
from service.schemas.writing import Write


class Items(StrictField, fields.List[Any]):
    """A list, loaded as a tuple.

    inner: the field of every item. least, most: how many items; a list in a request has both. They
    are checked before the items are, so that an endless list costs nothing.
    """

    def __init__(
        self,
        inner: fields.Field[Any],
        description: str = "",
        *,
        least: int = 0,
        most: int | None = None,
        **options: Any,
    ) -> None:
        self.least = least
        self.most = most
        super().__init__(description, cls_or_instance=inner, **options)

    def writer(self) -> Write:
        """Writes each item."""
        write = _writer(self.inner)
        return (
            (lambda values, _: list(values))
            if write is None
            else lambda values, length: [write(value, length) for value in values]
        )

    def contract(self, describe: Describe) -> dict[str, Any]:
        """The JSON Schema of what the field enforces."""
        limits = {"minItems": self.least or None, "maxItems": self.most}
        return {"type": "array"} | {name: limit for name, limit in limits.items() if limit is not None}

    def sample(self) -> str:
        """As told, or of one item."""
        item = _sample(self.inner)
        return f"[{item}]" if item and not self.example else self.example

    def loader(self) -> Load:
        """Loads each item."""
        assert isinstance(self.inner, StrictField)
        least, most, load_item, load_together = self.least, self.most, self.inner.load, self.inner.load_together

        def load(value: Any) -> Any:
            if type(value) is not list:
                raise wrong_kind(value, wrong_type("a list", self.sample()))
            if len(value) < least or (most is not None and len(value) > most):
                code = FormCode.TOO_SHORT if len(value) < least else FormCode.TOO_LONG
                detail = f"must have {how_many(least, most, 'items')} and has {len(value)}."
                raise FormError(Flaw(code, detail))
            if together := load_together(value):
                return together
            loaded, errors = [], {}
            for place, each in enumerate(value):
                try:
                    loaded.append(load_item(each))
                except FormError as error:
                    errors[place] = error.wrong
                    loaded.append(error.known)
            if errors:
                raise FormError(errors, tuple(loaded))
            return tuple(loaded)

        return load


class Nested(StrictField, fields.Nested):
    """An object with a schema of its own. Where the record has a default for it, what isn't sent is as there."""

    schema: StrictSchema

    def __init__(self, schema: type[StrictSchema], description: str = "", **options: Any) -> None:
        self._make: Callable[..., Any] | None = None
        super().__init__(description, nested=schema, **options)

    def link(self, attribute: Attribute) -> None:
        """Take from the core's record what the object is where it is left out."""
        record, default = self.schema.record, attribute.default
        if record is None or not isinstance(default, record) or not is_dataclass(record):
            return
        own = record()
        unlike = [each.name for each in fields_of(record) if getattr(default, each.name) != getattr(own, each.name)]
        if unlike:
            usual = {name: sent_as(getattr(default, name)) for name in unlike}
            self.metadata = {**self.metadata, "default": usual}
        self._make = partial(replace, default) if unlike else record

    def writer(self) -> Write:
        """Writes the object by its schema."""
        return self.schema.writer

    def contract(self, describe: Describe) -> dict[str, Any]:
        """Nothing beside the schema's own."""
        return {}

    def sample(self) -> str:
        """As told, or the schema's."""
        return self.example or self.schema.example

    def loader(self) -> Load:
        """Loads the object by its schema."""
        return self.schema.loader(self._make)

    def load_together(self, sent: Sequence[Any]) -> tuple[Any, ...] | None:
        """Loads the objects by their schema."""
        return None if self._make else self.schema.load_together(sent)


class Mapping(StrictField):
    """An object whose field names are data: names to values of one kind, loaded as a dict.

    keys: the field that checks each name. values: the field of each value. least, most: how many.
    """

    def __init__(
        self,
        keys: Text | Choice,
        values: fields.Field[Any],
        description: str = "",
        *,
        least: int = 0,
        most: int,
        **options: Any,
    ) -> None:
        self.keys = keys
        self.values = values
        self.least = least
        self.most = most
        super().__init__(description, **options)

    def writer(self) -> Write:
        """Writes each value."""
        write = _writer(self.values)
        return (
            (lambda named, _: dict(named))
            if write is None
            else lambda named, length: {name: write(value, length) for name, value in named.items()}
        )

    def contract(self, describe: Describe) -> dict[str, Any]:
        """The JSON Schema of what the field enforces."""
        return {
            "type": "object",
            "additionalProperties": describe(self.values),
            "propertyNames": self.keys.contract(describe),
            "minProperties": self.least,
            "maxProperties": self.most,
        }

    def _bind_to_schema(self, field_name: str, parent: Any) -> None:
        super()._bind_to_schema(field_name, parent)
        self.values._bind_to_schema(field_name, self)

    def loader(self) -> Load:
        """Loads each name and each value."""
        least, most, load_key, load_value = self.least, self.most, self.keys.load, _load(self.values)

        def load(value: Any) -> Any:
            if type(value) is not dict:
                raise wrong_kind(value, wrong_type("an object", self.sample()))
            if not least <= len(value) <= most:
                code = FormCode.TOO_SHORT if len(value) < least else FormCode.TOO_LONG
                detail = f"must have {how_many(least, most, 'fields')} and has {len(value)}."
                raise FormError(Flaw(code, detail))
            loaded, errors = {}, {}
            for name, below in value.items():
                try:
                    key = load_key(name)
                except FormError as error:
                    errors[name] = self._not_a_field(name) if isinstance(self.keys, Choice) else error.wrong
                    continue
                try:
                    loaded[key] = load_value(below)
                except FormError as error:
                    errors[name] = error.wrong
                    loaded[key] = error.known
            if errors:
                raise FormError(errors, loaded)
            return loaded

        return load

    def _not_a_field(self, name: str) -> Flaw:
        assert isinstance(self.keys, Choice)
        detail = f"is not a field here, which has: {', '.join(self.keys.choices)}."
        return Flaw(FormCode.UNKNOWN_FIELD, detail, name, self.keys.choices)


TYPE_NAME = "x-type-name"
"""What marks a schema that is to become a component of that name."""


class Values(StrictField):
    """An object of an answer whose fields depend on what it belongs to: what its source gives, by a writer of its own.

    write: makes the JSON object.
    """

    def __init__(self, write: Write, description: str = "", **options: Any) -> None:
        self._write = write
        super().__init__(description, **options)

    def writer(self) -> Write:
        """The field's own."""
        return self._write

    def contract(self, describe: Describe) -> dict[str, Any]:
        """Any values."""
        return {"type": "object", "additionalProperties": True}


class _Union(StrictField):
    """A value of one of several kinds.

    alternatives: the field of each. type_name: what the contract calls the type, where requests have it in more places
    than one.
    """

    alternatives: list[fields.Field[Any]]

    def __init__(self, description: str = "", *, type_name: str | None = None, **options: Any) -> None:
        self.type_name = type_name
        super().__init__(description, **options)

    def contract(self, describe: Describe) -> dict[str, Any]:
        """The JSON Schema of what the field enforces."""
        kinds = [describe(field) for field in self.alternatives]
        named = {TYPE_NAME: self.type_name} if self.type_name else {}
        return {"oneOf": [*kinds, {"type": "null"}] if self.allow_none else kinds, **named}

    def _bind_to_schema(self, field_name: str, parent: Any) -> None:
        super()._bind_to_schema(field_name, parent)
        for field in self.alternatives:
            field._bind_to_schema(field_name, self)


class ByType(_Union):
    """A value that may come in several JSON types, each with its own field.

    number, text, items, record: the field for a number, a string, an array, an object.
    """

    def __init__(
        self,
        description: str = "",
        *,
        number: Number | None = None,
        text: Text | Prose | Choice | None = None,
        items: Items | None = None,
        record: Nested | Mapping | None = None,
        **options: Any,
    ) -> None:
        named: tuple[tuple[str, tuple[type, ...], fields.Field[Any] | None], ...] = (
            ("a number", (int, float), number),
            ("text", (str,), text),
            ("a list", (list,), items),
            ("an object", (dict,), record),
        )
        self.alternatives = [field for _, _, field in named if field]
        self._by_type = {kind: field for _, kinds, field in named if field for kind in kinds}
        self._wanted = any_of([name for name, _, field in named if field])
        super().__init__(description, **options)

    def loader(self) -> Load:
        """Loads it by the field of its type."""
        by_type = {kind: _load(field) for kind, field in self._by_type.items()}

        def load(value: Any) -> Any:
            load_kind = by_type.get(type(value))
            if load_kind is None:
                raise wrong_kind(value, wrong_type(self._wanted, *map(_sample, self.alternatives)))
            return load_kind(value)

        return load


class ByField(_Union):
    """An object of one of two kinds, told apart by whether it has a certain field.

    name: that field. having: the object that has it. lacking: the one that doesn't.
    """

    def __init__(self, name: str, *, having: Nested, lacking: Nested, **options: Any) -> None:
        self.name_told_by = name
        self.alternatives = [having, lacking]
        self._usual = lacking
        super().__init__(**options)

    def sample(self) -> str:
        """The one that lacks the field."""
        return _sample(self._usual)

    def loader(self) -> Load:
        """Loads it by the field of its kind."""
        name, (load_having, load_lacking) = self.name_told_by, map(_load, self.alternatives)

        def load(value: Any) -> Any:
            if type(value) is not dict:
                raise wrong_kind(value, wrong_type("an object", self.sample()))
            return load_having(value) if name in value else load_lacking(value)

        return load


def _sample(field: fields.Field[Any]) -> str:
    assert isinstance(field, StrictField)
    return field.sample()


def _load(field: fields.Field[Any]) -> Load:
    assert isinstance(field, StrictField)
    return field.load


def _writer(field: fields.Field[Any]) -> Write | None:
    assert isinstance(field, StrictField)
    return field.writer()
