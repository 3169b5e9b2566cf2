"""Settings, read once from the environment; every one has a default."""

from __future__ import annotations

import logging
from collections.abc import Mapping
from dataclasses import dataclass
from pathlib import Path


@dataclass(frozen=True, slots=True)
class Config:
    """Everything about the service that depends on where it runs.

    cors_origins: web origins whose pages may call the service; ("*",) means all, () means none.
    log_level: the least severe level that is logged, by its standard name.
    drain_file: while this file exists, `/health/ready` answers 503, so that a balancer sends new
    requests elsewhere. A file, since all worker processes have to see it.
    """

    cors_origins: tuple[str, ...] = ()
    log_level: str = "INFO"
    drain_file: Path | None = None

    @classmethod
    def from_environment(cls, environment: Mapping[str, str]) -> Config:
        """The settings that an environment asks for.

        environment: usually `os.environ`. Variables: `GRADING_CORS_ORIGINS` (separated by commas),
        `GRADING_LOG_LEVEL`, `GRADING_DRAIN_FILE`.

        Raises ValueError for a log level that has no such name.

        >>> Config.from_environment({"GRADING_CORS_ORIGINS": "https://a.example, https://b.example"}).cors_origins
        ('https://a.example', 'https://b.example')
        """
        origins = environment.get("GRADING_CORS_ORIGINS", "").split(",")
        level = environment.get("GRADING_LOG_LEVEL", cls().log_level).upper()
        if level not in logging.getLevelNamesMapping():
            raise ValueError(f"GRADING_LOG_LEVEL: {level} is not the name of a log level.")
        drain_file = environment.get("GRADING_DRAIN_FILE")
        return cls(
            cors_origins=tuple(origin.strip() for origin in origins if origin.strip()),
            log_level=level,
            drain_file=Path(drain_file) if drain_file else None,
        )

    def draining(self) -> bool:
        """Whether the instance has been told to take no new work."""
        return self.drain_file is not None and self.drain_file.exists()
