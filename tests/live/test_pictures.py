"""Every picture of the examples as a browser draws and prints it."""

import pytest
import requests

from service.config import Config
from service.examples import examples_of
from service.media import SVG
from service.routes import operations
from tests.live.drawn import drawn, printed

PICTURES = [
    pytest.param((operation.path, example.request), id=f"{operation.name}/{example.name}")
    for operation in operations(Config())
    if operation.media[0] == SVG
    for example in examples_of(operation.name)
]
PAPER = {"a4": (595, 842), "letter": (612, 792)}
"""In points, 72 to an inch."""


@pytest.fixture(scope="module", params=PICTURES)
def picture(request, server):
    path, asked = request.param
    response = requests.post(server + path, json=asked, timeout=30)
    assert response.status_code == 200, response.text
    return asked, response.content


def test_no_text_leaves_the_picture_or_lies_upon_another(browser, picture):
    _, svg = picture
    seen = drawn(browser, svg)
    assert seen.texts
    assert seen.outside() == []
    assert seen.overlapping() == []


def test_a_printer_gets_whole_sheets_of_the_paper_that_was_asked_for(browser, picture):
    asked, svg = picture
    paper = asked.get("picture", {}).get("page", "single")
    if paper == "single":
        pytest.skip("drawn on no paper")
    with printed(browser, svg, "image/svg+xml") as pdf:
        assert {(round(page.width), round(page.height)) for page in pdf.pages} == {PAPER[paper]}
        assert all(page.extract_text() for page in pdf.pages)
