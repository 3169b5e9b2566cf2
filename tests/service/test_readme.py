"""The README's requests are sent, and its answers compared."""

from __future__ import annotations

import re
from pathlib import Path
from typing import Any

import orjson
import pytest
from flask.testing import FlaskClient

README = Path(__file__).parents[2] / "README.md"

_EXCHANGE = re.compile(
    r"```sh\ncurl -s (?P<url>\S+) -H 'content-type: application/json' -d @- <<'END'\n(?P<request>.*?)\nEND\n```\n\n"
    r"```json\n(?P<answer>.*?)\n```",
    re.DOTALL,
)

_TABLE = re.compile(
    r"-H 'accept: text/csv' [^\n]*<<'END'\n(?P<request>.*?)\nEND\n```\n\n```text\n(?P<answer>.*?)\n```", re.DOTALL
)

EXCHANGES: dict[str, tuple[str, Any, Any]] = {}
for found in _EXCHANGE.finditer(README.read_text(encoding="utf-8")):
    operation = found["url"].rpartition("/")[2]
    again = f"{operation}, another" if operation in EXCHANGES else operation
    EXCHANGES[again] = (found["url"], orjson.loads(found["request"]), orjson.loads(found["answer"]))


@pytest.mark.parametrize(
    "name",
    ["pullovers", "gauge-conversions", "size-gradings", "raglan-schedules", "yoke-adjustments", "chart-placements"],
)
def test_the_readme_shows_each_main_operation(name: str) -> None:
    assert name in EXCHANGES


@pytest.mark.parametrize("name", EXCHANGES)
def test_an_answer_in_the_readme_is_what_the_service_answers(client: FlaskClient, name: str) -> None:
    url, request, shown = EXCHANGES[name]
    answer = client.post(url.removeprefix("http://127.0.0.1:8000"), json=request)
    assert answer.status_code == 200
    assert _without_left_out(answer.json, shown) == shown


def test_the_table_in_the_readme_is_part_of_what_the_service_answers(client: FlaskClient) -> None:
    (found,) = _TABLE.finditer(README.read_text(encoding="utf-8"))
    answer = client.post("/v1/pullovers", json=orjson.loads(found["request"]), headers={"Accept": "text/csv"})
    shown = found["answer"].splitlines()
    assert [line for line in answer.text.splitlines() if line in shown] == shown


def test_the_request_about_a_chart_draws_both_pictures(client: FlaskClient) -> None:
    _, request, _ = EXCHANGES["chart-placements"]
    pictures = re.findall(r"curl -s http://127.0.0.1:8000(\S+picture) \\\n", README.read_text(encoding="utf-8"))
    assert sorted(pictures) == ["/v1/chart-placements/garment-picture", "/v1/chart-placements/picture"]
    for picture in pictures:
        answer = client.post(picture, json=request)
        assert answer.status_code == 200
        assert answer.mimetype == "image/svg+xml"


def _without_left_out(answer: Any, shown: Any) -> Any:
    """The answer without the fields that the README leaves out of it."""
    if isinstance(answer, dict) and isinstance(shown, dict):
        return {name: _without_left_out(value, shown[name]) for name, value in answer.items() if name in shown}
    if isinstance(answer, list) and isinstance(shown, list) and len(answer) == len(shown):
        return [_without_left_out(*pair) for pair in zip(answer, shown, strict=True)]
    return answer
