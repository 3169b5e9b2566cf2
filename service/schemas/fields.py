"""Strict fields: each enforces exactly what it says in the contract.

A number is never a string or a boolean, a whole number may be written as 3.0, text has no control
characters, null is refused unless a field is nullable. A field documents itself by `contract`.
"""

from __future__ import annotations

import re
from collections.abc import Callable
from dataclasses import MISSING
from fractions import Fraction
from math import isfinite
from typing import Any, ClassVar

from marshmallow import fields, missing

from grading_core.units import exact, to_cm, to_places
from grading_core.unknown import told
from service.flaws import Flaw, FormCode, FormError, how_many, wrong_type
from service.language import text
from service.lengths import REQUEST_UNIT
from service.retirement import Retirement
from service.schemas.records import Attribute, choices_of, sent_as
from service.schemas.writing import Write

_REQUIRED = Flaw(FormCode.REQUIRED, "is required.")
_NULL = Flaw(FormCode.NULL, "must not be null.")
_NUMBER = wrong_type("a number")
_WHOLE = wrong_type("a whole number")
_TEXT = wrong_type("text")
_FLAG = wrong_type("true or false")
_CONTROL_CHARACTER = re.compile(r"[\x00-\x1f\x7f-\x9f]")


Describe = Callable[[fields.Field[Any]], dict[str, Any]]
"""Gives the JSON Schema of a field."""


class StrictField(fields.Field[Any]):
    """Base of all fields. Loads without the steps of marshmallow's that none here has: processors, validators.

    description: for the contract. required: whether it has to be there. default: what a request means by leaving it
    out, for the contract, where no record says so. nullable: whether null is allowed. unit: what the number counts, for
    the contract. retirement: where the field will go. source: in the record, where it isn't the attribute of the
    field's name: another attribute (dotted for one of an attribute's), or for an answer a function of the record, or of
    its outcome where the schema has one. part: the part of an answer that it belongs to, where a request may leave that
    out. example: short JSON that would do, for whoever sends a value of a wrong type.
    """

    json_type: ClassVar[str]

    def __init__(
        self,
        description: str = "",
        *,
        required: bool = False,
        default: Any = missing,
        nullable: bool = False,
        unit: str | None = None,
        retirement: Retirement | None = None,
        source: str | Callable[[Any], Any] | None = None,
        part: str | None = None,
        example: str = "",
        **marshmallow: Any,
    ) -> None:
        self.source = source
        self.part = part
        self.example = example
        told = {"description": description or missing, "default": default, "x-unit": unit or missing}
        if retirement:
            told |= retirement.contract(description)
        super().__init__(
            required=required,
            load_default=default,
            allow_none=nullable,
            metadata={name: value for name, value in told.items() if value is not missing},
            **marshmallow,
        )

    def deserialize(self, value: Any, *_: Any, **__: Any) -> Any:
        """What a JSON value is loaded as, or the default where it is missing."""
        if value is missing:
            if self.required:
                raise FormError(_REQUIRED)
            return self.load_default
        if value is None:
            if not self.allow_none:
                raise FormError(_NULL)
            return None
        return self._deserialize(value, None, None)

    def sample(self) -> str:
        """JSON that would do; empty where none is needed."""
        return self.example

    def link(self, attribute: Attribute) -> None:
        """Take from the core's record what it says of the field: its default, for the contract."""
        default = sent_as(attribute.default)
        if default is not MISSING and not self.required:
            self.metadata = {"default": default, **self.metadata}

    def writer(self) -> Write | None:
        """What makes JSON of the field's value in a record; None where it is JSON already."""
        return None

    def contract(self, describe: Describe) -> dict[str, Any]:
        """The JSON Schema of what the field enforces.

        describe: gives that of a field within.
        """
        return {"type": self.json_type}


class Number(StrictField):
    """A number, loaded as the exact `Fraction` that was written down.

    minimum, maximum: inclusive limits. above: an exclusive lower limit. places: decimals that an answer keeps of an
    exact number; left out for what is JSON already.
    """

    json_type = "number"

    def __init__(
        self,
        description: str = "",
        *,
        minimum: float | None = None,
        maximum: float | None = None,
        above: float | None = None,
        places: int | None = None,
        **options: Any,
    ) -> None:
        self.minimum = minimum
        self.maximum = maximum
        self.above = above
        self.places = places
        super().__init__(description, **options)

    def contract(self, describe: Describe) -> dict[str, Any]:
        """The JSON Schema of what the field enforces."""
        limits = {"minimum": self.minimum, "exclusiveMinimum": self.above, "maximum": self.maximum}
        return {"type": self.json_type} | {name: limit for name, limit in limits.items() if limit is not None}

    def _deserialize(self, value: Any, *_: Any, **__: Any) -> Any:
        kind = type(value)
        if kind is not int and not (kind is float and isfinite(value)):
            raise FormError(_NUMBER)
        if (
            (self.minimum is not None and value < self.minimum)
            or (self.above is not None and value <= self.above)
            or (self.maximum is not None and value > self.maximum)
        ):
            raise FormError(Flaw(FormCode.OUT_OF_RANGE, self._range()))
        return self._exactly(value)

    def _exactly(self, value: int | float) -> Any:
        return Fraction(value) if type(value) is int else exact(value)

    def writer(self) -> Write | None:
        """Rounds an exact number to the places."""
        places = self.places
        return None if places is None else lambda value, _: to_places(value, places)

    def _range(self) -> str:
        limits = []
        if self.above is not None:
            limits.append(f"more than {self.above}")
        if self.minimum is not None:
            limits.append(f"at least {self.minimum}")
        if self.maximum is not None:
            limits.append(f"at most {self.maximum}")
        return f"must be {' and '.join(limits)}."


class Length(Number):
    """A length in the request's `unit`, loaded as a `Fraction` of centimetres.

    The limits hold for the number as it is written, whatever the unit.
    """

    def __init__(self, description: str = "", **options: Any) -> None:
        super().__init__(description, unit="the request's `unit`", **options)

    def _exactly(self, value: int | float) -> Any:
        return told(to_cm, value, REQUEST_UNIT.get())

    def link(self, attribute: Attribute) -> None:
        """A length has no default for the contract but 0, since a number would depend on the request's unit."""
        if attribute.default == 0:
            super().link(attribute)


class Whole(Number):
    """A whole number, loaded as an int; 3.0 is one, as JSON Schema has it."""

    json_type = "integer"

    def _deserialize(self, value: Any, *arguments: Any, **options: Any) -> Any:
        kind = type(value)
        if kind is not int and not (kind is float and value.is_integer()):
            raise FormError(_WHOLE)
        return super()._deserialize(value, *arguments, **options)

    def _exactly(self, value: int | float) -> Any:
        return int(value)


class Text(StrictField):
    """Text in one line, without control characters.

    least, most: its length in characters. pattern: what it has to match as a whole, a regular
    expression that means the same in Python and in ECMA-262. pattern_detail: the pattern in words.
    """

    json_type = "string"

    def __init__(
        self,
        description: str = "",
        *,
        least: int = 1,
        most: int = 200,
        pattern: str | None = None,
        pattern_detail: str = "",
        **options: Any,
    ) -> None:
        self.least = least
        self.most = most
        self.pattern = re.compile(pattern) if pattern else None
        self.pattern_detail = pattern_detail
        super().__init__(description, **options)

    def contract(self, describe: Describe) -> dict[str, Any]:
        """The JSON Schema of what the field enforces."""
        pattern = self.pattern.pattern if self.pattern else r"[^\u0000-\u001F\u007F-\u009F]*"
        return {
            "type": "string",
            "minLength": self.least,
            "maxLength": self.most,
            "pattern": f"^(?:{pattern})$" if self.pattern else f"^{pattern}$",
        }

    def _deserialize(self, value: Any, *_: Any, **__: Any) -> Any:
        if type(value) is not str:
            raise FormError(_TEXT)
        if self.least <= len(value) <= self.most and self.pattern is None and value.isprintable():
            return value
        if not self.least <= len(value) <= self.most:
            code = FormCode.TOO_SHORT if len(value) < self.least else FormCode.TOO_LONG
            raise FormError(Flaw(code, f"must have {how_many(self.least, self.most, 'characters')}."))
        if self.pattern and not self.pattern.fullmatch(value):
            raise FormError(Flaw(FormCode.WRONG_FORMAT, f"must be {self.pattern_detail}."))
        if _CONTROL_CHARACTER.search(value):
            raise FormError(Flaw(FormCode.WRONG_FORMAT, "must not have control characters."))
        return value


class Hex(Text):
    """An sRGB colour as six hexadecimal digits after #, loaded in small letters."""

    def __init__(self, description: str = "", **options: Any) -> None:
        super().__init__(
            description, most=7, pattern="#[0-9A-Fa-f]{6}", pattern_detail="# and six hexadecimal digits", **options
        )

    def _deserialize(self, value: Any, *_: Any, **__: Any) -> Any:
        return super()._deserialize(value).lower()


class Prose(StrictField):
    """Any text; for answers, which may quote what was sent."""

    json_type = "string"

    def _deserialize(self, value: Any, *_: Any, **__: Any) -> Any:
        if type(value) is not str:
            raise FormError(_TEXT)
        return value


class Spoken(Prose):
    """A sentence of the core, written in the language asked."""

    def writer(self) -> Write:
        """Writes its text."""
        return lambda sentence, _: text(sentence)


class Choice(StrictField):
    """One of some words; those that the record's attribute allows unless some are given."""

    json_type = "string"

    def __init__(self, *choices: str, description: str = "", **options: Any) -> None:
        self.choices = choices
        super().__init__(description, **options)

    def contract(self, describe: Describe) -> dict[str, Any]:
        """The JSON Schema of what the field enforces."""
        return {"type": "string", "enum": [*self.choices, *([None] if self.allow_none else [])]}

    def link(self, attribute: Attribute) -> None:
        """Take the choices and the default from the core's record."""
        super().link(attribute)
        self.choices = self.choices or choices_of(attribute.hint)

    def _deserialize(self, value: Any, *_: Any, **__: Any) -> Any:
        if type(value) is not str:
            raise FormError(Flaw(FormCode.WRONG_TYPE, self._wanted()))
        if value not in self.choices:
            raise FormError(Flaw(FormCode.NOT_ONE_OF, self._wanted(), value, self.choices))
        return value

    def _wanted(self) -> str:
        return f"must be one of: {', '.join(self.choices)}."


class OpenChoice(Prose):
    """One of some words in an answer, or one that is made by a pattern; there may be more of them in a later version.

    choices: the words. others: a regular expression of those that are made.
    """

    def __init__(self, *choices: str, description: str = "", others: str, **options: Any) -> None:
        self.choices = choices
        self.others = others
        super().__init__(description, **options)

    def contract(self, describe: Describe) -> dict[str, Any]:
        """The JSON Schema of what the field says; it enforces nothing."""
        return {"type": "string", "x-extensible-enum": [*self.choices], "x-extensible-pattern": f"^(?:{self.others})$"}


class Flag(StrictField):
    """true or false."""

    json_type = "boolean"

    def _deserialize(self, value: Any, *_: Any, **__: Any) -> Any:
        if type(value) is not bool:
            raise FormError(_FLAG)
        return value
