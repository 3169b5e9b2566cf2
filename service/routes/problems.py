"""What each problem `type` means."""

from __future__ import annotations

from typing import Any

from service.caching import KEPT_LONGER
from service.errors import KINDS, Kind
from service.operation import Operation
from service.schemas.base import StrictSchema
from service.schemas.common import AnswerSchema
from service.schemas.fields import Choice, Prose, Whole

_KIND_BY_NAME = {kind.name: kind for kind in KINDS}


class ProblemTypeParametersSchema(StrictSchema):
    """Which problem type."""

    name = Choice(*_KIND_BY_NAME, required=True, description="The last step of the problem's `type`.")

    def build(self, loaded: dict[str, Any]) -> Kind:
        """The type."""
        return _KIND_BY_NAME[loaded["name"]]


class ProblemTypeSchema(AnswerSchema):
    """A kind of problem that the service can answer."""

    record = Kind

    type = Prose("As in the problem document.", required=True, source="uri")
    title = Prose("As in the problem document.", required=True)
    status = Whole("The HTTP status.", required=True, minimum=400, maximum=599)
    explanation = Prose("What it means and what to do.", required=True)


OPERATIONS: tuple[Operation[Kind, Kind], ...] = (
    Operation(
        path="/problems/{name}",
        name="problems",
        tag="Service",
        method="GET",
        summary="What a problem type means",
        description="Explains the `type` of a problem document: every error has one.",
        request=ProblemTypeParametersSchema,
        answer=ProblemTypeSchema,
        call=lambda kind: kind,
        kept=KEPT_LONGER,
        english=True,
    ),
)
