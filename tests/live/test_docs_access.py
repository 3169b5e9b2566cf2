"""The docs page for everybody: names, contrast, keys, small screens."""

from contextlib import suppress

import pytest
from axe_playwright_python.sync_playwright import Axe
from playwright.sync_api import TimeoutError

from tests.live.docs_page import block, executed, opened

PLACES = ["", "#/Garment/pullovers?example=one-size-of-nine", "#/Garment/pullovers_front", "#/Colourwork/charts"]
GRAVE = ("serious", "critical")
LEFT: dict[str, frozenset[str]] = {}
"""What Swagger UI brings and could not be mended here: selectors by axe's rule. Nothing is left."""


def everything_unfolded(page):
    for button in page.locator(".fold").all():
        button.click()
    page.evaluate("document.querySelectorAll('details').forEach(fold => { fold.open = true; })")
    page.wait_for_timeout(500)


@pytest.mark.parametrize(
    ("place", "scheme"), [*((place, "light") for place in PLACES), ("", "dark"), ("#/Garment/pullovers_front", "dark")]
)
def test_axe_finds_nothing_grave(browser, server, place, scheme):
    page = opened(browser, server, place, color_scheme=scheme)
    if "Garment" in place:
        executed(page)
    everything_unfolded(page)
    found = {
        violation["id"]: {str(node["target"]) for node in violation["nodes"]} - LEFT.get(violation["id"], frozenset())
        for violation in Axe().run(page).response["violations"]
        if violation["impact"] in GRAVE
    }
    page.context.close()
    assert {rule: nodes for rule, nodes in found.items() if nodes} == {}


def test_axe_finds_nothing_grave_in_a_schema(browser, server):
    page = opened(browser, server, "#/Gauge/gauge_conversions", color_scheme="dark")
    page.get_by_role("tab", name="Schema").first.click()
    page.locator(".json-schema-2020-12-property").first.wait_for()
    found = [violation for violation in Axe().run(page).response["violations"] if violation["impact"] in GRAVE]
    page.context.close()
    assert [(one["id"], str(one["nodes"][0]["target"])) for one in found] == []


def test_the_page_has_one_main_part_and_says_its_language(browser, server):
    page = opened(browser, server)
    assert page.get_by_role("main").count() == 1
    assert page.locator("html").get_attribute("lang") == "en"
    page.context.close()


def test_the_first_table_is_reached_by_keys_alone_and_the_focus_is_seen(browser, server):
    page = opened(browser, server)
    first = block(page, "Garment", "pullovers")
    reached = []
    for _ in range(60):
        page.keyboard.press("Tab")
        focus = page.evaluate(
            "(({className, textContent}) => [className, textContent.slice(0, 40)])(document.activeElement)"
        )
        outline = page.evaluate("getComputedStyle(document.activeElement).outlineStyle")
        assert outline != "none", focus
        reached.append(focus[0])
        if "opblock-summary-control" in focus[0] and not first.locator(".execute").count():
            page.keyboard.press("Enter")
            page.locator(".execute").wait_for()
        if "execute" in focus[0]:
            page.keyboard.press("Enter")
            # what the page shows instead tells why
            with suppress(TimeoutError):
                page.locator(".table-answer").wait_for()
            assert page.locator(".table-answer").is_visible(), first.inner_text()
            break
    else:
        pytest.fail(f"Execute was not reached: {reached}")
    page.context.close()


@pytest.mark.parametrize("place", ["#/Garment/pullovers?example=a-gauge-alone", "#/Garment/pullovers_front"])
def test_a_phone_scrolls_no_page_sideways_and_has_every_button_in_sight(browser, server, place):
    page = opened(browser, server, place, viewport={"width": 390, "height": 844})
    answer = executed(page)
    answer.locator(".answer").wait_for()
    assert page.evaluate("document.documentElement.scrollWidth") == 390
    for button in page.locator(".opblock.is-open button:visible").all():
        box = button.bounding_box()
        assert box["x"] >= 0
        assert box["x"] + box["width"] <= 390
    page.context.close()


def test_the_page_is_dark_where_the_reader_wants_it(browser, server):
    page = opened(browser, server, color_scheme="dark")
    ground = page.evaluate("getComputedStyle(document.body).backgroundColor.match(/[0-9]+/g).map(Number)")
    page.context.close()
    assert max(ground) < 64
