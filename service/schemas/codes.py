"""Codes in an answer: enumerations that may grow, each a schema of its own in the contract."""

from __future__ import annotations

from typing import Any

from grading_core.codes import CauseCode, Code, ProblemCode, ProofCode, ReasonCode, WarningCode
from service.flaws import FormCode
from service.schemas.fields import Describe, StrictField

CODES: dict[str, tuple[str, tuple[type[Code], ...]]] = {
    "ErrorCode": ("How a request is wrong in one place.", (FormCode, ProblemCode)),
    "ReasonCode": ("Why something cannot be knitted.", (ReasonCode,)),
    "WarningCode": ("What is warned of.", (WarningCode,)),
    "ProofCode": ("What does not hold between printed numbers.", (ProofCode,)),
    "CauseCode": ("What a wrong number is likely to be.", (CauseCode,)),
}
"""The families of codes by their names in the contract: what they tell, and where they are."""


class CodeField(StrictField):
    """A code. family: its name in `CODES`."""

    json_type = "string"

    def __init__(self, family: str, description: str = "For programs.", **options: Any) -> None:
        self.family = family
        super().__init__(description, **options)

    def contract(self, describe: Describe) -> dict[str, Any]:
        """A reference to the family."""
        return {"$ref": f"#/components/schemas/{self.family}"}


def code_schema(family: str) -> dict[str, Any]:
    """The JSON Schema of a family of codes: open, since there may be new ones.

    family: its name in `CODES`.
    """
    about, kinds = CODES[family]
    codes = [code for kind in kinds for code in kind]
    meanings = "\n".join(f"* `{code.value}`: {code.meaning}" for code in codes)
    return {
        "type": "string",
        "description": f"{about} There may be new ones.\n\n{meanings}",
        "x-extensible-enum": [code.value for code in codes],
    }
