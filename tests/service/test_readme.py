"""The README's requests are sent, and its answers compared."""

from __future__ import annotations

import re
import subprocess
import sys
from pathlib import Path
from typing import Any
from xml.etree import ElementTree

import orjson
import pytest
from flask.testing import FlaskClient

from tests.served import served

README = Path(__file__).parents[2] / "README.md"

_EXCHANGE = re.compile(
    r"```sh\ncurl -s (?P<url>\S+) -H 'content-type: application/json' -d @- <<'END'\n(?P<request>.*?)\nEND\n```\n\n"
    r"```json\n(?P<answer>.*?)\n```",
    re.DOTALL,
)

_TABLE = re.compile(
    r"-H 'accept: text/csv' [^\n]*<<'END'\n(?P<request>.*?)\nEND\n```\n\n```text\n(?P<answer>.*?)\n```", re.DOTALL
)

_SENTENCE = re.compile(
    r"```json\n(?P<sentence>\{\"id\".*?)\n```.*?\| language \| `text` \|\n\| --- \| --- \|\n(?P<texts>.*?)\n\n",
    re.DOTALL,
)

_PAGE = re.compile(r"```html\n(?P<page>.*?)```.*?```python\n(?P<script>.*?)```", re.DOTALL)

SERVICE = "http://127.0.0.1:8000"

PULLOVER = {"gauge": {"stitches": 22, "rows": 31}, "labels": ["S", "M", "L"]}
"""What the README's sentence and its page are about."""

EXCHANGES: dict[str, tuple[str, Any, Any]] = {}
for found in _EXCHANGE.finditer(README.read_text(encoding="utf-8")):
    operation = found["url"].rpartition("/")[2]
    before = sum(name.partition(",")[0] == operation for name in EXCHANGES)
    name = f"{operation}, {before + 1}" if before else operation
    EXCHANGES[name] = (found["url"], orjson.loads(found["request"]), orjson.loads(found["answer"]))


@pytest.mark.parametrize(
    "name",
    ["pullovers", "gauge-conversions", "size-gradings", "raglan-schedules", "yoke-adjustments", "chart-placements"],
)
def test_the_readme_shows_each_main_operation(name: str) -> None:
    assert name in EXCHANGES


@pytest.mark.parametrize("name", EXCHANGES)
def test_an_answer_in_the_readme_is_what_the_service_answers(client: FlaskClient, name: str) -> None:
    url, request, shown = EXCHANGES[name]
    answer = client.post(url.removeprefix(SERVICE), json=request)
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


def test_the_request_for_a_picture_draws_each_of_them_and_is_saved_as_told(client: FlaskClient) -> None:
    text = README.read_text(encoding="utf-8")
    [(url, request)] = re.findall(r"curl -s -OJ (\S+) .*?<<'END'\n(.*?)\nEND", text, re.DOTALL)
    answer = client.post(url.removeprefix(SERVICE), json=orjson.loads(request))
    [name] = re.findall(r"It is saved as `(.*?)`", text)
    assert answer.headers["Content-Disposition"] == f"inline; filename={name}"
    pictures = re.findall(r"^\| `(/v1/pullovers/\S+)` \|.*\((SVG|HTML)", text, re.MULTILINE)
    assert len(pictures) == 6
    for path, kind in pictures:
        answer = client.post(path, json=orjson.loads(request))
        assert (answer.status_code, answer.mimetype) == (200, {"SVG": "image/svg+xml", "HTML": "text/html"}[kind])


def test_the_sentence_is_one_of_the_pullover_in_every_language(client: FlaskClient) -> None:
    (found,) = _SENTENCE.finditer(README.read_text(encoding="utf-8"))
    shown = orjson.loads(found["sentence"])
    texts = dict(line.strip("| ").split(" | ") for line in found["texts"].splitlines())
    assert texts.keys() == {"`en-US`", "`en-GB`", "`de`"}
    for language, text in texts.items():
        sentences = sentences_of(client, language.strip("`"))
        assert {**shown, "text": text} in sentences
    assert shown["text"] == texts["`en-US`"]


@pytest.fixture(scope="module")
def filled(tmp_path_factory: pytest.TempPathFactory) -> Path:
    """Where the README's template and script are, once the script has run."""
    (found,) = _PAGE.finditer(README.read_text(encoding="utf-8"))
    folder = tmp_path_factory.mktemp("page")
    (folder / "page.html").write_text(found["page"], encoding="utf-8")
    with served(tmp_path_factory.mktemp("service")) as address:
        script = found["script"].replace(SERVICE, address)
        done = subprocess.run([sys.executable, "-c", script], cwd=folder, capture_output=True, text=True, check=False)
    assert done.returncode == 0, done.stderr
    return folder


def test_the_template_is_filled_once_for_each_language(filled: Path) -> None:
    assert sorted(page.name for page in filled.glob("pattern-*")) == ["pattern-de.html", "pattern-en-GB.html"]


@pytest.mark.parametrize("language", ["en-GB", "de"])
def test_the_filled_page_has_the_pattern_in_its_language(client: FlaskClient, filled: Path, language: str) -> None:
    page = (filled / f"pattern-{language}.html").read_text(encoding="utf-8")
    # an HTML page needn't close what is empty
    root = ElementTree.fromstring(page.removeprefix("<!doctype html>\n").replace('<meta charset="utf-8">', ""))
    assert root.get("lang") == language
    assert [each.text for each in root.iter("p")] == [each["text"] for each in sentences_of(client, language)]
    answer = asked(client, language)
    assert [each.text for each in root.iter("h2")] == [part["title"] for part in answer["instructions"]]
    assert [[cell.text for cell in row] for row in root.iter("tr")] == [
        [row["title"], f"{row['run']} cm"] for row in answer["table"] if row["part"] == "finished"
    ]


def asked(client: FlaskClient, language: str) -> Any:
    return client.post("/v1/pullovers", json={**PULLOVER, "print": {"language": language}}).json


def sentences_of(client: FlaskClient, language: str) -> list[Any]:
    return [sentence for part in asked(client, language)["instructions"] for sentence in part["sentences"]]


def _without_left_out(answer: Any, shown: Any) -> Any:
    """The answer without the fields that the README leaves out of it."""
    if isinstance(answer, dict) and isinstance(shown, dict):
        return {name: _without_left_out(value, shown[name]) for name, value in answer.items() if name in shown}
    if isinstance(answer, list) and isinstance(shown, list) and len(answer) == len(shown):
        return [_without_left_out(*pair) for pair in zip(answer, shown, strict=True)]
    return answer
