"""To add a language is to add one file: Esperanto, which is a language of CLDR and none of the service's."""

import json
import shutil
import subprocess
import sys
from pathlib import Path

import pytest

from service.language import languages
from service.representations.pictures.front.placement import TITLE

ROOT = Path(__file__).parents[2]
WORDS = Path("service") / "words"

ASK = """
import json
from service.app import create_app

client = create_app().test_client()
chart = {
    "gauge": {"stitches": 20.5, "rows": 30},
    "chart": {"rows": ["..#..", "#####"]},
    "anchor": {"back": 3, "front": 3, "sleeve": 3},
    "sizes": [{"label": "S", "rounds": 3, "neck": {"back": 5, "front": 5, "sleeve": 5}}],
}
path = "/v1/chart-placements/garment-picture"
chosen = client.post(path, json={**chart, "print": {"language": "eo"}})
accepted = client.post(path, json=chart, headers={"Accept-Language": "eo-XX, de;q=0.5"})
contract = client.get("/openapi.json").json
told = {
    "status": chosen.status_code,
    "language": chosen.headers["Content-Language"],
    "accepted": accepted.headers["Content-Language"],
    "picture": chosen.text,
    "listed": contract["components"]["schemas"]["Language"]["enum"],
}
print(json.dumps(told))
"""


@pytest.fixture(scope="module")
def tree(tmp_path_factory) -> Path:
    """A copy of the code, and in it one file more."""
    copy = tmp_path_factory.mktemp("code")
    for package in ("grading_core", "service", "openapi"):
        shutil.copytree(ROOT / package, copy / package, ignore=shutil.ignore_patterns("__pycache__"))
    english = (copy / WORDS / "en-US.ftl").read_text(encoding="utf-8")
    changed = english.replace("The front, size { $size }", "La anta\u016do, grandeco { $size }")
    assert changed != english
    (copy / WORDS / "eo.ftl").write_text(changed, encoding="utf-8")
    return copy


@pytest.fixture(scope="module")
def told(tree: Path) -> dict:
    asked = subprocess.run([sys.executable, "-c", ASK], cwd=tree, capture_output=True, text=True, check=False)
    assert asked.returncode == 0, asked.stderr
    return json.loads(asked.stdout)


def test_the_folder_is_all_that_says_which_languages_there_are(tree: Path) -> None:
    found = languages(tree / WORDS)
    assert found.keys() - languages(ROOT / WORDS).keys() == {"eo"}
    assert found["eo"].text(TITLE(size="S")) == "La anta\u016do, grandeco S"


def test_a_request_may_ask_for_it(told: dict) -> None:
    assert (told["status"], told["language"]) == (200, "eo")
    assert ">La anta\u016do, grandeco S<" in told["picture"]


def test_numbers_have_its_decimal_mark(told: dict) -> None:
    """A comma, as CLDR has it of Esperanto."""
    assert "20,5 stitches" in told["picture"]


def test_a_client_that_accepts_it_gets_it(told: dict) -> None:
    assert told["accepted"] == "eo"


def test_the_contract_lists_it(told: dict) -> None:
    assert told["listed"] == ["de", "en-GB", "en-US", "eo"]
