"""The contract as the service of this very version keeps to it.

In the contract answers are open: a later version may add fields and members of enumerations. Validated against that, an
answer with a misspelt field would pass. So the tests of answers validate against a copy with every object closed and
every open enumeration an enumeration again.
"""

from typing import Any


def closed(schema: Any) -> Any:
    """A copy of a contract, or of a part of it, whose answers are as closed as its requests."""
    if isinstance(schema, list):
        return [closed(below) for below in schema]
    if not isinstance(schema, dict):
        return schema
    copied = {name: below if name in ("example", "examples") else closed(below) for name, below in schema.items()}
    if isinstance(members := copied.pop("x-extensible-enum", None), list):
        nullable = "null" in copied["type"]
        copied["enum"] = [*members, None] if nullable else members
    if copied.get("type") == "object":
        copied.setdefault("additionalProperties", False)
    return copied
