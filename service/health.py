"""Whether the process runs, and whether it wants requests."""

from __future__ import annotations

from dataclasses import dataclass
from typing import Any, Literal

from service.caching import NEVER_KEPT
from service.config import Config
from service.errors import SERVICE_UNAVAILABLE, Refusal
from service.operation import Operation
from service.schemas.base import NothingSchema
from service.schemas.common import AnswerSchema
from service.schemas.fields import Choice


@dataclass(frozen=True, slots=True)
class Live:
    """A process that runs."""

    status: Literal["live"] = "live"


@dataclass(frozen=True, slots=True)
class Ready:
    """An instance that takes requests."""

    status: Literal["ready"] = "ready"


class LiveSchema(AnswerSchema):
    """The process runs."""

    record = Live

    status = Choice(required=True)


class ReadySchema(AnswerSchema):
    """The instance takes requests."""

    record = Ready

    status = Choice(required=True)


def operations(config: Config) -> tuple[Operation[Any, Any], ...]:
    """The health checks of an instance."""

    def check_ready(_: Any) -> Ready:
        if config.draining():
            raise Refusal(SERVICE_UNAVAILABLE, "The instance is draining before it stops.")
        return Ready()

    return (
        Operation(
            path="/health/live",
            name="health-live",
            tag="Service",
            method="GET",
            summary="Does the process run?",
            description="Answers as long as the process can answer at all. Restart the instance when it does not.",
            request=NothingSchema,
            answer=LiveSchema,
            call=lambda _: Live(),
            kept=NEVER_KEPT,
            english=True,
        ),
        Operation(
            path="/health/ready",
            name="health-ready",
            tag="Service",
            method="GET",
            summary="Does the instance take requests?",
            description="Answers 503 while the instance is draining, so that a balancer sends new requests "
            "elsewhere. Computations that arrive all the same are still answered.",
            request=NothingSchema,
            answer=ReadySchema,
            call=check_ready,
            kept=NEVER_KEPT,
            english=True,
        ),
    )
