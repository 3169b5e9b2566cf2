"""Strict fields: each enforces exactly what it says in the contract.

A number is never a string or a boolean, a whole number may be written as 3.0, text has no control
characters, null is refused unless a field is nullable. A field documents itself by `contract`.
"""

from __future__ import annotations

import re
from collections.abc import Callable, Sequence
from dataclasses import MISSING
from functools import cached_property
from math import inf, isfinite
from typing import Any, ClassVar

from marshmallow import fields, missing

from grading_core.units import exact, to_cm, to_places
from grading_core.unknown import UnknownError, unknown
from service.flaws import Flaw, FormCode, FormError, how_many, wrong_kind, wrong_type
from service.language import text
from service.lengths import REQUEST_UNIT
from service.retirement import Retirement
from service.schemas.records import Attribute, choices_of, sent_as
from service.schemas.writing import Write

_NUMBER = wrong_type("a number")
_WHOLE = wrong_type("a whole number")
_TEXT = wrong_type("text")
_FLAG = wrong_type("true or false")
_TEXTS = frozenset((str,))
_CONTROL_CHARACTER = re.compile(r"[\x00-\x1f\x7f-\x9f]")


Describe = Callable[[fields.Field[Any]], dict[str, Any]]
"""Gives the JSON Schema of a field."""

Load = Callable[[Any], Any]
"""Makes a value of JSON. Raises FormError where it can't."""


class StrictField(fields.Field[Any]):
    """Base of all fields.

    What loads a field is made once, as what writes it is: a request has hundreds of values, and marshmallow's steps,
    of which none here has processors or validators, would cost each of them three calls more.

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

    @cached_property
    def load(self) -> Load:
        """What makes the field's value of JSON, once it is known of which schema the field is."""
        load = self.loader()
        return (lambda sent: None if sent is None else load(sent)) if self.allow_none else load

    def loader(self) -> Load:
        """What makes the field's value of JSON that isn't null; null it refuses."""
        raise NotImplementedError

    def load_together(self, sent: Sequence[Any]) -> tuple[Any, ...] | None:
        """Many values, which takes less time than one by one; None where each has to be looked at."""
        return tuple(sent) if sent and self.as_they_are(sent) else None

    def as_they_are(self, sent: Sequence[Any]) -> bool:
        """Whether it is seen at once that values, one or more, are right and loaded as they are."""
        return False

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

    def loader(self) -> Load:
        """Checks the limits and makes it exact."""
        least = -inf if self.minimum is None else self.minimum
        most = inf if self.maximum is None else self.maximum
        above = -inf if self.above is None else self.above
        exactly = self._exactly

        def load(value: Any) -> Any:
            kind = type(value)
            if kind is not int and not (kind is float and isfinite(value)):
                raise wrong_kind(value, _NUMBER)
            if least <= value <= most and value > above:
                return exactly(value)
            raise FormError(Flaw(FormCode.OUT_OF_RANGE, self._range()))

        return load

    _exactly: Load = staticmethod(exact)

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

    @staticmethod
    def _exactly(value: int | float) -> Any:
        try:
            return to_cm(value, REQUEST_UNIT.get())
        except UnknownError:
            return unknown()

    def link(self, attribute: Attribute) -> None:
        """A length has no default for the contract but 0, since a number would depend on the request's unit."""
        if attribute.default == 0:
            super().link(attribute)


class Whole(Number):
    """A whole number, loaded as an int; 3.0 is one, as JSON Schema has it."""

    json_type = "integer"

    def loader(self) -> Load:
        """Refuses what isn't whole."""
        least = -inf if self.minimum is None else self.minimum
        most = inf if self.maximum is None else self.maximum
        above = -inf if self.above is None else self.above
        load = super().loader()

        def load_whole(value: Any) -> Any:
            kind = type(value)
            if kind is int and least <= value <= most and value > above:
                return value
            if kind is not int and not (kind is float and value.is_integer()):
                raise wrong_kind(value, _WHOLE)
            return load(value)

        return load_whole

    _exactly = staticmethod(int)


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

    def loader(self) -> Load:
        """Checks length and characters."""
        least, most, pattern = self.least, self.most, self.pattern

        def load(value: Any) -> Any:
            if type(value) is not str:
                raise wrong_kind(value, _TEXT)
            if least <= len(value) <= most and pattern is None and value.isprintable():
                return value
            return self._checked(value)

        return load

    def as_they_are(self, sent: Sequence[Any]) -> bool:
        """Whether none is too short or too long, or has other characters than most texts."""
        return (
            self.pattern is None
            and _TEXTS.issuperset(map(type, sent))
            and self.least <= min(map(len, sent))
            and max(map(len, sent)) <= self.most
            and "".join(sent).isprintable()
        )

    def _checked(self, value: str) -> str:
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

    def loader(self) -> Load:
        """Makes its letters small."""
        load = super().loader()
        return lambda value: load(value).lower()


class Prose(StrictField):
    """Any text; for answers, which may quote what was sent."""

    json_type = "string"

    def loader(self) -> Load:
        """Takes any text."""
        return _any_text


def _any_text(value: Any) -> Any:
    if type(value) is not str:
        raise wrong_kind(value, _TEXT)
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

    def loader(self) -> Load:
        """Takes one of the choices."""
        choices = self._among

        def load(value: Any) -> Any:
            if type(value) is not str:
                raise wrong_kind(value, Flaw(FormCode.WRONG_TYPE, self._wanted()))
            if value not in choices:
                raise FormError(Flaw(FormCode.NOT_ONE_OF, self._wanted(), value, self.choices))
            return value

        return load

    def as_they_are(self, sent: Sequence[Any]) -> bool:
        """Whether all are choices."""
        return _TEXTS.issuperset(map(type, sent)) and self._among.issuperset(sent)

    @cached_property
    def _among(self) -> frozenset[str]:
        """The choices, once it is known of which schema the field is."""
        return frozenset(self.choices)

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

    def loader(self) -> Load:
        """Takes true and false."""
        return _flag


def _flag(value: Any) -> Any:
    if type(value) is not bool:
        raise wrong_kind(value, _FLAG)
    return value
