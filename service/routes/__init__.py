"""The operations of the service, one module a topic."""

from __future__ import annotations

from typing import Any

from service import health
from service.config import Config
from service.operation import Operation
from service.routes import chart, gauge, pictures, problems, proof, pullover, raglan, shaping, sizing, standards, yarn


def operations(config: Config) -> tuple[Operation[Any, Any], ...]:
    """Every operation, in the order of the docs."""
    return (
        pullover.PULLOVERS,
        *pictures.OPERATIONS,
        pullover.PULLOVERS_WORKBOOK,
        *proof.OPERATIONS,
        *gauge.OPERATIONS,
        *sizing.OPERATIONS,
        *raglan.OPERATIONS,
        *shaping.OPERATIONS,
        *chart.OPERATIONS,
        *yarn.OPERATIONS,
        *standards.OPERATIONS,
        *problems.OPERATIONS,
        *health.operations(config),
    )
