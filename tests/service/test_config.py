from pathlib import Path

import pytest

from service.config import Config


def test_an_empty_environment_gives_the_defaults():
    assert Config.from_environment({}) == Config()


def test_every_setting_is_read_from_the_environment():
    environment = {
        "GRADING_CORS_ORIGINS": "https://a.example,https://b.example,",
        "GRADING_LOG_LEVEL": "debug",
        "GRADING_DRAIN_FILE": "/run/draining",
    }
    assert Config.from_environment(environment) == Config(
        cors_origins=("https://a.example", "https://b.example"), log_level="DEBUG", drain_file=Path("/run/draining")
    )


def test_a_log_level_that_does_not_exist_stops_the_start():
    with pytest.raises(ValueError, match="LOUD"):
        Config.from_environment({"GRADING_LOG_LEVEL": "loud"})
