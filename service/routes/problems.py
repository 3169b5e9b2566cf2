"""What each problem `type` means."""

from __future__ import annotations

from typing import Any

from service.errors import KINDS, Kind
from service.operation import Operation
from service.schemas.base import StrictSchema
from service.schemas.common import AnswerSchema
from service.schemas.fields import Choice, Prose, Whole

_KIND_BY_NAME = {kind.name: kind for kind in KINDS}


class ProblemTypeParametersSchema(StrictSchema):
    """Which problem type."""

    builds = staticmethod(lambda name: _KIND_BY_NAME[name])

    name = Choice(*_KIND_BY_NAME, required=True, description="The last step of the problem's `type`.")


class ProblemTypeSchema(AnswerSchema):
    """A kind of problem that the service can answer."""

    type = Prose("As in the problem document.", required=True)
    title = Prose("As in the problem document.", required=True)
    status = Whole("The HTTP status.", required=True, minimum=400, maximum=599)
    explanation = Prose("What it means and what to do.", required=True)


def _represent(kind: Kind, _: Any) -> dict[str, Any]:
    return {"type": kind.uri, "title": kind.title, "status": kind.status, "explanation": kind.explanation}


OPERATIONS = (
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
        represent=_represent,
    ),
)
