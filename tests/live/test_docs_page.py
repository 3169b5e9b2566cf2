"""The docs page in a real browser: every operation is tried with its first example, and nothing is fetched outside."""

import re
from base64 import b64decode
from pathlib import Path

import pytest
import requests

from service.config import Config
from service.examples import examples_of
from service.media import BINARY, HTML, JSON, SVG
from service.routes import operations
from tests.live.docs_page import opened

OPERATIONS = operations(Config())
DEMO = Path(__file__).resolve().parents[2] / "deploy" / "demo" / "show.py"
LINKS = re.findall(r"/docs#/(\w+)/(\S+?)\"*$", DEMO.read_text(), re.MULTILINE)
[EXAMPLE] = re.findall(r'^EXAMPLE = "(.*)"', DEMO.read_text(), re.MULTILINE)
PICTURES = [EXAMPLE + name for name in re.findall(r"\{example\}(/\S+)", DEMO.read_text())]


@pytest.fixture(scope="module")
def seen():
    """What the browser did while the page was used: addresses it asked, and complaints in its console."""
    return {"requests": [], "complaints": []}


@pytest.fixture(scope="module")
def page(browser, server, seen):
    page = browser.new_page()
    page.set_default_timeout(120_000)
    page.on("request", lambda request: seen["requests"].append(request.url))
    page.on("console", lambda message: message.type == "error" and seen["complaints"].append(message.text))
    page.on("pageerror", lambda error: seen["complaints"].append(str(error)))
    page.goto(f"{server}/docs")
    page.wait_for_selector(".opblock")
    return page


def test_the_page_shows_every_operation(page):
    shown = page.locator(".opblock").count()
    assert shown == len(OPERATIONS)


def test_the_whole_pullover_comes_first_then_its_pictures_and_pages_then_its_workbook_then_proofs(page):
    ids = [block.get_attribute("id").removeprefix("operations-") for block in page.locator(".opblock").all()]
    garment = [one for one in ids if one.startswith("Garment-")]
    assert ids[: len(garment)] == garment
    assert garment[0] == "Garment-pullovers"
    assert garment[-2:] == ["Garment-pullovers_workbook", "Garment-proofs"]
    assert len(garment) == 9


def test_the_conventions_are_folded_and_complete(page, server):
    description = page.request.get(f"{server}/openapi.json").json()["info"]["description"]
    conventions = page.locator("details", has=page.get_by_role("heading", name="Conventions"))
    points = conventions.locator("li")
    assert points.count() == description.count("\n* ")
    assert not points.first.is_visible()
    conventions.locator("summary").click()
    assert points.first.is_visible()
    conventions.locator("summary").click()


def test_what_stands_above_the_operations_is_short(page):
    above = page.locator(".opblock").first.bounding_box()["y"]
    assert above < page.viewport_size["height"]


def test_the_answers_to_mistakes_are_folded(browser, server):
    page = opened(browser, server, "#/Garment/pullovers")
    assert page.locator("tr.response").count() == 1
    page.get_by_role("button", name="422").click()
    assert page.locator('tr.response[data-code="422"]').is_visible()
    page.context.close()


def test_the_schema_of_a_request_tells_what_its_fields_mean(browser, server):
    page = opened(browser, server, "#/Garment/pullovers")
    contract = page.request.get(f"{server}/openapi.json").json()
    told = contract["components"]["schemas"]["PulloversRequest"]["properties"]["gauge"]["description"]
    page.get_by_role("tab", name="Schema").first.click()
    assert page.get_by_text(told).first.is_visible()
    page.context.close()


def test_the_first_table_takes_two_clicks(browser, server):
    page = opened(browser, server)
    page.locator(".opblock-summary-control").first.click()
    page.locator(".execute").click()
    page.locator(".table-answer table").wait_for()
    page.context.close()


@pytest.mark.parametrize("operation", OPERATIONS, ids=lambda operation: operation.name)
def test_the_first_example_of_an_operation_is_answered_on_the_page(page, server, operation):
    block = page.locator(f"#operations-{operation.tag}-{operation.name.replace('-', '_')}")
    block.locator(".opblock-summary-control").click()
    block.locator(".execute").wait_for()
    if operation.takes != JSON:
        content = b64decode(examples_of(operation.name)[0].request["file"])
        file = {"name": "example", "mimeType": operation.takes, "buffer": content}
        block.locator("input[type=file]").set_input_files(file)
    with page.expect_response(lambda response: response.url.startswith(server)) as answered:
        block.locator(".execute").click()
    assert answered.value.status == 200, answered.value.text()
    status = block.locator(".live-responses-table tbody .response-col_status").first
    status.wait_for()
    assert status.inner_text().startswith("200")
    if operation.media[0] == SVG:
        picture = block.locator("img.picture-answer")
        picture.wait_for()
        assert picture.evaluate("image => image.decode().then(() => image.naturalWidth)") > 0
    elif operation.media[0] == HTML:
        block.locator("iframe.page-answer").wait_for()
    elif operation.method == "POST" and operation.media[0] not in BINARY:
        assert answered.value.json() == examples_of(operation.name)[0].answer
    block.locator(".opblock-summary-control").click()


def test_nothing_was_fetched_from_outside(page, server, seen):
    assert len(seen["requests"]) > len(OPERATIONS)
    assert [url for url in seen["requests"] if not url.startswith((server, "data:"))] == []


def test_the_browser_complained_about_nothing(page, seen):
    assert seen["complaints"] == []


@pytest.mark.parametrize(("tag", "operation"), LINKS)
def test_a_link_of_the_demonstration_opens_its_operation(browser, server, tag, operation):
    page = browser.new_page()
    page.goto(f"{server}/docs#/{tag}/{operation}")
    page.locator(f"#operations-{tag}-{operation}.is-open").wait_for(timeout=10_000)
    page.close()


def test_the_demonstration_has_links_into_the_page():
    assert LINKS


@pytest.mark.parametrize("picture", PICTURES)
def test_a_picture_that_the_demonstration_links_to_is_there(server, picture):
    assert requests.get(server + picture, timeout=30).status_code == 200


def test_the_demonstration_links_to_every_picture_and_page_of_a_pullover():
    assert len(PICTURES) == 6


def test_a_script_from_elsewhere_would_not_run(page):
    """The policy holds: an inline script is refused by the browser."""
    page.evaluate("document.body.append(Object.assign(document.createElement('script'), {text: 'window.ran = 1'}))")
    assert page.evaluate("window.ran") is None
