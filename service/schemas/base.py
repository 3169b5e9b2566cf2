"""What every schema has in common: it refuses unknown fields and loads values of the core."""

from __future__ import annotations

from collections.abc import Callable, Mapping, Sequence
from typing import Any, ClassVar

from marshmallow import RAISE, Schema, ValidationError, post_load, validates_schema

NOT_AN_OBJECT = "must be an object."
UNKNOWN = "is not a field here."

MAX_FIELDS = 200
"""No object has as many fields."""


class StrictSchema(Schema):
    """An object with exactly the declared fields.

    builds: what a valid object becomes, called with the loaded fields as keyword arguments; without
    it the object stays a dict. The class's docstring is its description in the contract.
    """

    class Meta:
        """Marshmallow's options."""

        unknown = RAISE

    error_messages: ClassVar[dict[str, str]] = {  # type: ignore[misc]
        "type": NOT_AN_OBJECT,
        "unknown": UNKNOWN,
    }

    builds: ClassVar[Callable[..., Any] | None] = None

    def load(self, data: Any, **options: Any) -> Any:
        """Load an object; one with endlessly many fields is refused as a whole, not field by field."""
        if type(data) is dict and len(data) > MAX_FIELDS:
            raise ValidationError(f"must have at most {MAX_FIELDS} fields and has {len(data)}.")
        return super().load(data, **options)

    @post_load
    def _build(self, data: dict[str, Any], **_: Any) -> Any:
        builds = type(self).builds
        return data if builds is None else builds(**data)


class NothingSchema(StrictSchema):
    """No parameters."""


class Rule:
    """A rule about which of some fields are sent together, enforced and documented.

    names: the fields. least, most: how many of them may be sent.
    """

    def __init__(self, names: Sequence[str], least: int, most: int) -> None:
        self.names = tuple(names)
        self.least = least
        self.most = most

    def check(self, data: Any) -> None:
        """Raise `ValidationError` where an object breaks the rule."""
        if not isinstance(data, Mapping):
            return
        sent = sum(name in data for name in self.names)
        if not self.least <= sent <= self.most:
            amount = "exactly" if self.least == self.most else "at least" if sent < self.least else "at most"
            limit = self.least if sent < self.least else self.most
            listed = f"{', '.join(self.names[:-1])} or {self.names[-1]}"
            number = {1: "one"}.get(limit, str(limit))
            raise ValidationError(f"must have {amount} {number} of {listed}; {sent or 'none'} were sent.")

    def contract(self) -> dict[str, Any]:
        """The rule in JSON Schema."""
        alternatives = [{"required": [name]} for name in self.names]
        if self.least == self.most == 1:
            return {"oneOf": alternatives}
        if self.least == 1:
            return {"anyOf": alternatives}
        pairs = [[a, b] for place, a in enumerate(self.names) for b in self.names[place + 1 :]]
        return {"not": {"anyOf": [{"required": pair} for pair in pairs]}}


def exactly_one_of(*names: str) -> Any:
    """A schema attribute: exactly one of some fields has to be sent.

    Use it in the class body: `one_amount = exactly_one_of("across", "along")`.
    """
    return _hook(Rule(names, 1, 1))


def at_least_one_of(*names: str) -> Any:
    """A schema attribute: one or more of some fields have to be sent."""
    return _hook(Rule(names, 1, len(names)))


def at_most_one_of(*names: str) -> Any:
    """A schema attribute: some fields exclude one another."""
    return _hook(Rule(names, 0, 1))


def rules_of(schema: Schema) -> list[Rule]:
    """The rules in a schema's class body, in order."""
    found = [vars(cls) for cls in reversed(type(schema).__mro__)]
    rules = (getattr(value, "rule", None) for names in found for value in names.values())
    return [rule for rule in rules if isinstance(rule, Rule)]


def _hook(rule: Rule) -> Any:
    def check(_schema: Schema, _data: Any, original: Any, **_: Any) -> None:
        rule.check(original)

    check.rule = rule  # type: ignore[attr-defined]
    return validates_schema(check, pass_original=True, skip_on_field_errors=False)
