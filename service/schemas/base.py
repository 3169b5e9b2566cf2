"""What every schema has in common: it refuses unknown fields and loads values of the core."""

from __future__ import annotations

import inspect
from collections.abc import Callable, Iterable, Mapping, Sequence
from dataclasses import dataclass, field
from functools import cached_property, partial
from typing import Any, ClassVar

from marshmallow import RAISE, Schema, missing

from grading_core.unknown import UnknownError, told, unknown
from service.flaws import Flaw, FormCode, FormError, wrong_kind, wrong_type
from service.lengths import LengthWriter
from service.printing import PrintSettings
from service.schemas.records import part_builders, path_to
from service.schemas.writing import Write, compiled_writer

_OBJECTS = frozenset((dict,))
_NOT_A_FIELD = "is not a field here."
_REQUIRED = Flaw(FormCode.REQUIRED, "is required.")

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
    _of: frozenset[str] = field(init=False, repr=False, compare=False)

    def __post_init__(self) -> None:
        object.__setattr__(self, "_of", frozenset(self.names))

    def holds(self, data: dict[str, Any]) -> bool:
        """Whether an object keeps to the rule."""
        return self.least <= self._sent(data) <= self.most

    def flaw(self, data: dict[str, Any]) -> Flaw:
        """How an object breaks the rule."""
        sent = self._sent(data)
        amount = "exactly" if self.least == self.most else "at least" if sent < self.least else "at most"
        limit = self.least if sent < self.least else self.most
        listed = f"{', '.join(self.names[:-1])} or {self.names[-1]}"
        number = {1: "one"}.get(limit, str(limit))
        code = FormCode.ONE_REQUIRED if sent < self.least else FormCode.MUTUALLY_EXCLUSIVE
        return Flaw(code, f"must have {amount} {number} of {listed}; {sent or 'none'} were sent.")

    def contract(self) -> dict[str, Any]:
        """The rule in JSON Schema, for `allOf`: what stands beside `properties` generators take for the object."""
        alternatives = [{"required": [name]} for name in self.names]
        if self.least == self.most == 1:
            return {"oneOf": alternatives}
        if self.least == 1:
            return {"anyOf": alternatives}
        pairs = [{"required": [a, b]} for place, a in enumerate(self.names) for b in self.names[place + 1 :]]
        return {"not": {"anyOf": pairs} if len(pairs) > 1 else pairs[0]}

    def _sent(self, data: dict[str, Any]) -> int:
        return len(self._of.intersection(data))


class StrictSchema(Schema):
    """An object with exactly the declared fields. The class's docstring is its description in the contract.

    record: the core's record that a valid object becomes, or that an answer is written from; without one the object
    stays a dict. A field's attribute there has its name (see `records`), its default and its choices. inline:
    attributes that are records themselves, whose fields stand among the object's own. outcome: the attribute that holds
    what was made, or an `Impossible` (see `writing`). ending: the fields that follow all others, in their order.
    example: JSON of a short object that would do, in a request.

    Loading is our own and knows no hooks: the better part of a request's time would go into
    marshmallow's, and a strict schema needs none of them.
    """

    class Meta:
        """Marshmallow's options, for the contract."""

        unknown = RAISE

    record: ClassVar[type[Any] | None] = None
    inline: ClassVar[tuple[str, ...]] = ()
    outcome: ClassVar[str | None] = None
    ending: ClassVar[tuple[str, ...]] = ("sources", "warnings", "meta")
    rules: ClassVar[tuple[Rule, ...]] = ()
    example: ClassVar[str] = ""

    def __init__(self, **options: Any) -> None:
        self.paths: dict[str, tuple[str, ...]] = {}
        super().__init__(**options)
        places = {name: place for place, name in enumerate(self.ending)}
        self.fields = self.load_fields = dict(sorted(self.fields.items(), key=lambda item: places.get(item[0], -1)))

    def __init_subclass__(cls, **options: Any) -> None:
        super().__init_subclass__(**options)
        attributes = [value for base in reversed(cls.__mro__) for value in vars(base).values()]
        cls.rules = tuple(value for value in attributes if isinstance(value, Rule))

    def on_bind_field(self, field_name: str, field_obj: Any) -> None:
        """Marshmallow's hook: link the field to its attribute in the record."""
        if self.record is None or callable(field_obj.source):
            return
        path = path_to(self.record, field_obj.source or field_name, (*self.inline, self.outcome))
        if path:
            self.paths[field_name] = tuple(each.name for each in path)
            field_obj.link(path[-1])

    def load(self, data: Any, *, make: Callable[..., Any] | None = None, **_: Any) -> Any:
        """What a JSON value becomes.

        make: what makes the record of the attributes that are sent; `build` unless given.

        Raises `FormError`, which names every wrong place: by field, by index, and under None what is wrong with the
        object itself.
        """
        if type(data) is not dict:
            raise wrong_kind(data, wrong_type("an object", self.example))
        if len(data) > MAX_FIELDS:
            detail = f"must have at most {MAX_FIELDS} fields and has {len(data)}."
            raise FormError(Flaw(FormCode.TOO_LONG, detail))
        loaded: dict[str, Any] = {}
        errors: dict[str | None, Any] = {}
        loads = self._loads
        for name, sent in (data if data.keys() >= self._never_left_out.keys() else self._never_left_out | data).items():
            load = loads.get(name)
            if load is None:
                errors[name] = Flaw(FormCode.UNKNOWN_FIELD, _NOT_A_FIELD, name, loads.keys())
                continue
            try:
                value = self._left_out(name) if sent is missing else load(sent)
            except FormError as error:
                errors[name] = error.wrong
                value = error.known
            if value is not missing:
                loaded[name] = value
        if broken := [rule for rule in self.rules if not rule.holds(data)]:
            errors[None] = [rule.flaw(data) for rule in broken]
            # which of them was meant isn't known
            loaded |= {name: unknown() for rule in broken for name in rule.names}
        if errors:
            raise self._refused(errors, loaded, make)
        try:
            return self._built(loaded, make)
        except UnknownError:
            return unknown()

    def loader(self, make: Callable[..., Any] | None = None) -> Callable[[Any], Any]:
        """What loads a JSON value as `load` does, and leaves to it only what is wrong.

        make: as for `load`.
        """
        load = self.load if make is None else partial(self.load, make=make)
        if type(self).load is not StrictSchema.load:
            return load
        loads, needed, rules = self._loads, self._never_left_out.keys(), self.rules
        built = self._maker(make)

        def load_right(data: Any) -> Any:
            if type(data) is not dict or len(data) > MAX_FIELDS or not data.keys() >= needed:
                return load(data)
            loaded = {}
            try:
                for name, sent in data.items():
                    value = loads[name](sent)
                    if value is not missing:
                        loaded[name] = value
            except (KeyError, FormError):
                return load(data)
            if rules and not all(rule.holds(data) for rule in rules):
                return load(data)
            try:
                return built(loaded)
            except UnknownError:
                return unknown()

        return load_right

    def load_together(self, sent: Sequence[Any]) -> tuple[Any, ...] | None:
        """What JSON values become, field by field, which takes half the time; None where `load` has to look at each.

        sent: one or more.
        """
        columns = self._columns
        if columns is None or not _OBJECTS.issuperset(map(type, sent)):
            return None
        names = frozenset().union(*sent)
        if not self._loads.keys() >= names:
            return None
        loaded: list[Iterable[Any]] = []
        for name, column, left_out in columns:
            values = [each[name] for each in sent if name in each] if name in names else []
            if column.required and len(values) < len(sent):
                return None
            if values and not column.as_they_are(values):
                try:
                    values = [*map(column.load, values)]
                except FormError:
                    return None
            if len(values) < len(sent):
                told = iter(values)
                values = [next(told) if name in each else left_out for each in sent]
            loaded.append(values)
        assert self.record is not None
        return tuple(map(self.record, *loaded))

    @cached_property
    def _columns(self) -> tuple[tuple[str, Any, Any], ...] | None:
        """The attributes of the record in their order: the field of each, and what it is where nothing is sent.

        None where the record is made otherwise than of its fields as they are loaded, each by itself.
        """
        record, own = self.record, type(self)
        plain = own.load is StrictSchema.load and own.build is StrictSchema.build and not self.rules
        if record is None or not plain or not hasattr(record, "_field_defaults") or self._renamed[0]:
            return None
        left_out = record._field_defaults | {
            name: field.load_default for name, field in self.load_fields.items() if field.load_default is not missing
        }
        return tuple((name, self.load_fields[name], left_out.get(name)) for name in record._fields)

    @cached_property
    def _never_left_out(self) -> dict[str, Any]:
        """The fields that say something of their own where nothing is sent, as missing: most have nothing to say."""
        return {
            name: missing
            for name, field in self.load_fields.items()
            if field.required or field.load_default is not missing
        }

    @cached_property
    def _loads(self) -> dict[str, Callable[[Any], Any]]:
        """What loads each field."""
        return {name: field.load for name, field in self.load_fields.items()}  # type: ignore[attr-defined]

    def _left_out(self, name: str) -> Any:
        """What a field says where nothing is sent."""
        left_out = self.load_fields[name]
        if left_out.required:
            raise FormError(_REQUIRED)
        return left_out.load_default

    def _built(self, loaded: dict[str, Any], make: Callable[..., Any] | None) -> Any:
        return self._maker(make)(loaded)

    def _maker(self, make: Callable[..., Any] | None) -> Callable[[dict[str, Any]], Any]:
        """What makes of loaded values what a valid object becomes."""
        if make is None and (self.record is None or type(self).build is not StrictSchema.build):
            return self.build
        record = make or self.record
        assert record is not None
        if self._renamed[0]:
            return lambda loaded: record(**self._by_attribute(loaded))
        return lambda loaded: record(**loaded)

    def print_settings(self, data: Mapping[str, Any]) -> PrintSettings:
        """How the answer to a request is printed; the usual way unless requests of the schema can say so.

        data: a valid request.
        """
        return PrintSettings()

    def _refused(
        self, errors: dict[str | None, Any], loaded: dict[str, Any], make: Callable[..., Any] | None
    ) -> FormError:
        """Why an object is refused, with what else building it finds."""
        try:
            return FormError(errors, told(self._built, loaded, make))
        except FormError as more:
            of_fields = more.wrong if isinstance(more.wrong, dict) else {}
            return FormError({**of_fields, **errors}, more.known)

    def build(self, loaded: dict[str, Any]) -> Any:
        """What a valid object becomes."""
        return loaded if self.record is None else self.record(**self._by_attribute(loaded))

    def about(self) -> str:
        """The description in the contract: the docstring."""
        return inspect.getdoc(type(self)) or ""

    def write(self, value: Any, length: LengthWriter) -> dict[str, Any]:
        """The JSON object of a record.

        value: a record. length: writes lengths.
        """
        written: dict[str, Any] = self.writer(value, length)
        return written

    @cached_property
    def writer(self) -> Write:
        """What makes the JSON object of a record; `write`, unless a schema has its own."""
        own = type(self).write is not StrictSchema.write
        return self.write if own else compiled_writer(self.fields, self.paths, self.outcome)

    def _by_attribute(self, loaded: dict[str, Any]) -> dict[str, Any]:
        """Loaded values by the names of the record's attributes."""
        renamed, builders = self._renamed
        if not renamed:
            return loaded
        named: dict[str, Any] = {}
        parts: dict[str, dict[str, Any]] = {name: {} for name in builders}
        for name, value in loaded.items():
            part, attribute = renamed.get(name, (None, name))
            (named if part is None else parts[part])[attribute] = value
        for part, values in parts.items():
            named[part] = builders[part](**values)
        return named

    @cached_property
    def _renamed(self) -> tuple[dict[str, tuple[str | None, str]], dict[str, Callable[..., Any]]]:
        """The fields whose attribute has another name or lies in an inline record, and what makes these."""
        assert self.record is not None
        renamed = {
            name: (path[0] if len(path) > 1 else None, path[-1]) for name, path in self.paths.items() if path != (name,)
        }
        return renamed, part_builders(self.record, self.inline)


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
