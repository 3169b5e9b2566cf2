"""What is asked on the docs page stays in its address."""

import json

import pytest

from service.examples import examples_of
from tests.live.docs_page import executed, opened, request_field

PLACE = "#/Garment/pullovers"
FIRST, *OTHERS = examples_of("pullovers")
REQUEST = {"gauge": {"stitches": 20, "rows": 28.5}, "labels": ["M"], "yarn": {"main_colour": "ö"}}


@pytest.fixture
def page(browser, server):
    page = opened(browser, server, PLACE)
    yield page
    page.context.close()


def read(page):
    return json.loads(request_field(page).input_value())


def address_with(page, query):
    page.wait_for_url(lambda url: query in url)
    return page.url


@pytest.mark.parametrize("example", [FIRST, OTHERS[-1]], ids=lambda example: example.name)
def test_an_example_is_selected_by_its_name(browser, server, example):
    page = opened(browser, server, f"{PLACE}?example={example.name}")
    assert read(page) == example.request
    assert page.locator(".examples-select-element").first.input_value() == example.name
    page.context.close()


def test_an_example_from_the_address_is_ready_to_be_executed(browser, server):
    page = opened(browser, server, f"{PLACE}?example=a-gauge-alone")
    assert executed(page).locator(".response-col_status").inner_text() == "200"
    page.context.close()


def test_an_edited_request_comes_back_with_the_page(page):
    request_field(page).fill(json.dumps(REQUEST))
    address_with(page, "request=")
    page.reload()
    request_field(page).wait_for()
    assert read(page) == REQUEST


def test_a_link_gives_somebody_else_the_edited_request(browser, server, page):
    request_field(page).fill(json.dumps(REQUEST))
    fragment = address_with(page, "request=").partition("/docs")[2]
    other = opened(browser, server, fragment)
    assert read(other) == REQUEST
    other.context.close()


def test_a_draft_that_is_no_json_yet_comes_back_too(page):
    request_field(page).fill('{"gauge": ')
    address_with(page, "request=")
    page.reload()
    request_field(page).wait_for()
    assert request_field(page).input_value() == '{"gauge": '


def test_a_selected_example_is_in_the_address_by_its_name(page):
    page.locator(".examples-select-element").first.select_option(OTHERS[0].name)
    assert address_with(page, "?").endswith(f"{PLACE}?example={OTHERS[0].name}")


def test_the_first_example_needs_no_name_in_the_address(page):
    request_field(page).fill(json.dumps(REQUEST))
    address_with(page, "request=")
    request_field(page).fill(json.dumps(FIRST.request))
    page.wait_for_url(lambda url: "?" not in url)
    assert page.url.endswith(PLACE)


def test_a_request_too_long_for_the_address_is_told_and_not_written(page):
    request_field(page).fill(json.dumps({**REQUEST, "labels": ["x" * 100_000]}))
    page.get_by_role("status").get_by_text("too long").wait_for()
    assert page.url.endswith(PLACE)


def test_an_example_that_there_is_not_is_told(browser, server):
    page = opened(browser, server, f"{PLACE}?example=nothing")
    page.get_by_role("status").get_by_text("nothing").wait_for()
    assert read(page) == FIRST.request
    page.context.close()


def test_a_link_followed_on_the_page_opens_its_operation_with_its_example(page):
    page.evaluate("location.hash = '#/Gauge/gauge_conversions?example=written-in-inches'")
    opened_now = page.locator("#operations-Gauge-gauge_conversions")
    opened_now.get_by_label("Request body").wait_for()
    [expected] = [one.request for one in examples_of("gauge-conversions") if one.name == "written-in-inches"]
    assert json.loads(opened_now.get_by_label("Request body").input_value()) == expected


def test_no_server_gets_the_request_from_the_address(browser, server):
    context = browser.new_context()
    page = context.new_page()
    asked = []
    page.on("request", lambda request: asked.append(request.url))
    page.goto(f"{server}/docs{PLACE}?example=a-gauge-alone")
    request_field(page).wait_for()
    assert asked
    assert not [url for url in asked if "example=" in url.partition("#")[0]]
    context.close()
