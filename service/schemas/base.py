"""What every schema has in common: it refuses unknown fields and loads values of the core."""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import MISSING, dataclass, replace
from functools import cached_property
from operator import attrgetter
from typing import Any, ClassVar

from marshmallow import RAISE, Schema, ValidationError, missing

from grading_core.errors import Impossible
from service.lengths import LengthWriter
from service.schemas.records import Attribute, attribute, record_of

NOT_AN_OBJECT = "must be an object."
UNKNOWN = "is not a field here."

_LAST = ("warnings", "meta")
"""What ends an answer."""

MAX_FIELDS = 200
"""No object has as many fields."""


@dataclass(frozen=True, slots=True)
class Rule:
    """A rule about which of some fields are sent together, enforced and documented.

    names: the fields. least, most: how many of them may be sent.
    """

    names: tuple[str, ...]
    least: int
    most: int

    def holds(self, data: dict[str, Any]) -> bool:
        """Whether an object keeps to the rule."""
        return self.least <= self._sent(data) <= self.most

    def sentence(self, data: dict[str, Any]) -> str:
        """How an object breaks the rule."""
        sent = self._sent(data)
        amount = "exactly" if self.least == self.most else "at least" if sent < self.least else "at most"
        limit = self.least if sent < self.least else self.most
        listed = f"{', '.join(self.names[:-1])} or {self.names[-1]}"
        number = {1: "one"}.get(limit, str(limit))
        return f"must have {amount} {number} of {listed}; {sent or 'none'} were sent."

    def contract(self) -> dict[str, Any]:
        """The rule in JSON Schema."""
        alternatives = [{"required": [name]} for name in self.names]
        if self.least == self.most == 1:
            return {"oneOf": alternatives}
        if self.least == 1:
            return {"anyOf": alternatives}
        pairs = [[a, b] for place, a in enumerate(self.names) for b in self.names[place + 1 :]]
        return {"not": {"anyOf": [{"required": pair} for pair in pairs]}}

    def _sent(self, data: dict[str, Any]) -> int:
        return sum(name in data for name in self.names)


class StrictSchema(Schema):
    """An object with exactly the declared fields. The class's docstring is its description in the contract.

    record: the core's record that a valid object becomes, or that an answer is written from; without one the object
    stays a dict. A field's attribute there has its name (see `records`), its default and its choices. outcome: the
    attribute that holds what was made, or an `Impossible`; fields that the record lacks are those of what was made, and
    are left out where it is impossible. inline: attributes that are records themselves, whose fields stand
    among the object's own.

    Loading is our own and knows no hooks: the better part of a request's time would go into
    marshmallow's, and a strict schema needs none of them. An answer is written by getters that are looked up once.
    """

    class Meta:
        """Marshmallow's options, for the contract."""

        unknown = RAISE

    builds: ClassVar[Callable[..., Any] | None] = None
    record: ClassVar[type[Any] | None] = None
    outcome: ClassVar[str | None] = None
    inline: ClassVar[tuple[str, ...]] = ()
    rules: ClassVar[tuple[Rule, ...]] = ()

    def __init__(self, **options: Any) -> None:
        self._paths: dict[str, tuple[str, ...]] = {}
        super().__init__(**options)
        self.fields = self.load_fields = dict(sorted(self.fields.items(), key=_is_last))

    def __init_subclass__(cls, **options: Any) -> None:
        super().__init_subclass__(**options)
        attributes = [value for base in reversed(cls.__mro__) for value in vars(base).values()]
        cls.rules = tuple(value for value in attributes if isinstance(value, Rule))

    def on_bind_field(self, field_name: str, field_obj: Any) -> None:
        """Marshmallow's hook: link the field to its attribute in the record."""
        if self.record is None or callable(field_obj.source):
            return
        if self.outcome is not None and field_name in _OF_OUTCOME:
            field_obj.source = _OF_OUTCOME[field_name](attrgetter(self.outcome))
            return
        path = self._path(field_obj.source or field_name)
        if path is None:
            return
        self._paths[field_name] = tuple(each.name for each in path)
        field_obj.link(path[-1])

    def load(self, data: Any, *, usual: Any = None, **_: Any) -> Any:
        """What a JSON value becomes.

        usual: the record from which it takes what isn't sent; the record's own defaults unless given.

        Raises `ValidationError`, whose messages name every wrong place: by field, by index, and under
        None what is wrong with the object itself.
        """
        if type(data) is not dict:
            raise ValidationError(NOT_AN_OBJECT)
        if len(data) > MAX_FIELDS:
            raise ValidationError(f"must have at most {MAX_FIELDS} fields and has {len(data)}.")
        loaded: dict[str, Any] = {}
        errors: dict[str | None, Any] = {}
        for name, field in self.load_fields.items():
            try:
                value = field.deserialize(data.get(name, missing))
            except ValidationError as error:
                errors[name] = error.messages
            else:
                if value is not missing:
                    loaded[name] = value
        if not data.keys() <= self.load_fields.keys():
            errors |= {name: [UNKNOWN] for name in data if name not in self.load_fields}
        if broken := [rule.sentence(data) for rule in self.rules if not rule.holds(data)]:
            errors[None] = broken
        if errors:
            raise ValidationError(errors)
        return self.build(loaded) if usual is None else replace(usual, **self._by_attribute(loaded))

    def build(self, loaded: dict[str, Any]) -> Any:
        """What a valid object becomes."""
        builds = type(self).builds
        if builds is not None:
            return builds(**loaded)
        return loaded if self.record is None else self.record(**self._by_attribute(loaded))

    def write(self, value: Any, length: LengthWriter) -> dict[str, Any]:
        """The JSON object of a record.

        value: a record. length: writes lengths.
        """
        written: dict[str, Any] = {}
        outcome = None if self._outcome is None else self._outcome(value)
        if isinstance(outcome, Impossible):
            outcome = None
        for name, of_outcome, get, write, left_out in self._steps:
            held = get(value) if not of_outcome else None if outcome is None else get(outcome)
            if held is None:
                if not left_out:
                    written[name] = None
            else:
                written[name] = held if write is None else write(held, length)
        return written

    @cached_property
    def _outcome(self) -> Callable[[Any], Any] | None:
        return None if self.outcome is None else attrgetter(self.outcome)

    @cached_property
    def _steps(self) -> list[tuple[str, bool, Callable[[Any], Any], Any, bool]]:
        """For each field its name, whether it is the outcome's, what gets and what writes it, and whether it is left
        out where there is none.
        """
        return [
            (name, *self._getter(name, field), _writer(field), not (field.required and field.allow_none))
            for name, field in self.fields.items()
        ]

    def _getter(self, name: str, field: Any) -> tuple[bool, Callable[[Any], Any]]:
        """Whether a field is the outcome's, and what gets it."""
        if callable(field.source):
            return self.outcome is not None and name not in _OF_OUTCOME, field.source
        path = self._paths.get(name, (field.source or name,))
        if self.outcome is None or path[0] != self.outcome or len(path) == 1:
            return False, attrgetter(".".join(path))
        return True, attrgetter(".".join(path[1:]))

    def _path(self, source: str) -> list[Attribute] | None:
        """The attributes that lead from the record to a field's; None where there is none."""
        assert self.record is not None
        for prefix in ("", *self.inline, self.outcome):
            if prefix is not None and (path := _attributes(self.record, f"{prefix}.{source}".lstrip("."))):
                return path
        return None

    def _by_attribute(self, loaded: dict[str, Any]) -> dict[str, Any]:
        """Loaded values by the names of the record's attributes."""
        if not self._renames:
            return loaded
        named: dict[str, Any] = {}
        inline: dict[str, dict[str, Any]] = {name: {} for name in self.inline}
        for name, value in loaded.items():
            *within, attribute_name = self._paths.get(name, (name,))
            (inline[within[0]] if within else named)[attribute_name] = value
        for name, values in inline.items():
            assert self.record is not None
            found = attribute(self.record, name)
            assert found is not None
            if found.default is not MISSING:
                named[name] = replace(found.default, **values)
            else:
                kind = record_of(found.hint)
                assert kind is not None
                named[name] = kind(**values)
        return named

    @cached_property
    def _renames(self) -> bool:
        return any(path != (name,) for name, path in self._paths.items())


def _is_last(item: tuple[str, Any]) -> int:
    return _LAST.index(item[0]) + 1 if item[0] in _LAST else 0


def _attributes(record: type[Any], path: str) -> list[Attribute] | None:
    """The attributes along a dotted path, as far as types tell; None where one is missing."""
    found: list[Attribute] = []
    here: type[Any] | None = record
    for step in path.split("."):
        if here is None:
            found.append(Attribute(step, Any, MISSING))
            continue
        each = attribute(here, step)
        if each is None:
            return None
        found.append(each)
        here = record_of(each.hint)
    return found


def _writer(field: Any) -> Any:
    return field.writer()


def _feasible(outcome: Callable[[Any], Any]) -> Callable[[Any], bool]:
    return lambda value: not isinstance(outcome(value), Impossible)


def _why(attribute_name: str) -> Callable[[Callable[[Any], Any]], Callable[[Any], Any]]:
    def of(outcome: Callable[[Any], Any]) -> Callable[[Any], Any]:
        def getter(value: Any) -> Any:
            made = outcome(value)
            return getattr(made, attribute_name) if isinstance(made, Impossible) else None

        return getter

    return of


_OF_OUTCOME = {"feasible": _feasible, "reason": _why("reason"), "nearest": _why("nearest")}
"""What a schema with an outcome says of it under the same names everywhere."""


class NothingSchema(StrictSchema):
    """No parameters."""


def exactly_one_of(*names: str) -> Rule:
    """A schema attribute: exactly one of some fields has to be sent.

    Use it in the class body: `one_amount = exactly_one_of("across", "along")`.
    """
    return Rule(names, 1, 1)


def at_least_one_of(*names: str) -> Rule:
    """A schema attribute: one or more of some fields have to be sent."""
    return Rule(names, 1, len(names))


def at_most_one_of(*names: str) -> Rule:
    """A schema attribute: some fields exclude one another."""
    return Rule(names, 0, 1)
