"""The start page in a real browser: its pictures load, nothing comes from outside, and it can be read by anybody."""

import pytest
import requests
from axe_playwright_python.sync_playwright import Axe

SERIOUS = ("serious", "critical")


@pytest.fixture(scope="module")
def seen():
    """What the browser did while the page was read: addresses it asked, and complaints in its console."""
    return {"requests": [], "complaints": []}


@pytest.fixture(scope="module")
def page(browser, server, seen):
    page = browser.new_page(viewport={"width": 1400, "height": 900})
    page.on("request", lambda request: seen["requests"].append(request.url))
    page.on("console", lambda message: message.type == "error" and seen["complaints"].append(message.text))
    page.on("pageerror", lambda error: seen["complaints"].append(str(error)))
    page.goto(f"{server}/")
    return page


def test_a_picture_is_fetched_when_it_comes_into_sight(page):
    first, last = page.locator("img").first, page.locator("img").last
    assert last.evaluate("image => image.complete") is False
    for picture in (first, last):
        picture.scroll_into_view_if_needed()
        assert picture.evaluate("image => image.decode().then(() => image.naturalWidth)") > 0


def test_every_picture_loads(page):
    page.evaluate("for (const image of document.images) image.loading = 'eager'")
    widths = page.evaluate(
        "Promise.all([...document.images].map(image => image.decode().then(() => image.naturalWidth, () => 0)))"
    )
    assert len(widths) > 30
    assert min(widths) > 0


def test_nothing_was_fetched_from_outside(page, server, seen):
    assert len(seen["requests"]) > 30
    assert [url for url in seen["requests"] if not url.startswith(server)] == []


def test_the_browser_complained_about_nothing(page, seen):
    assert seen["complaints"] == []


def test_the_style_that_the_policy_names_is_applied(page):
    assert page.evaluate("getComputedStyle(document.querySelector('.pictures')).columnCount") == "2"


def test_a_script_in_the_page_would_not_run(browser, server):
    """The policy holds: the page as it is answered, with a script put into it, leaves that unrun."""
    answer = requests.get(f"{server}/", timeout=30)
    body = answer.text.replace("</main>", "<script>window.ran = 1</script></main>")
    page = browser.new_page()
    policy = {"Content-Security-Policy": answer.headers["Content-Security-Policy"], "Content-Type": "text/html"}
    page.route(f"{server}/", lambda route: route.fulfill(body=body, headers=policy))
    page.goto(f"{server}/")
    assert page.evaluate("[document.scripts.length, window.ran]") == [1, None]
    page.close()


@pytest.mark.parametrize(("scheme", "width"), [("light", 390), ("dark", 1400)])
def test_axe_finds_nothing_serious(browser, server, scheme, width):
    """With all that is folded opened. axe-core has the rules of WCAG."""
    page = browser.new_page(viewport={"width": width, "height": 900}, color_scheme=scheme)
    page.goto(f"{server}/")
    page.evaluate("for (const folded of document.querySelectorAll('details')) folded.open = true")
    found = Axe().run(page).response["violations"]
    page.close()
    assert [(one["id"], one["nodes"][0]["html"]) for one in found if one["impact"] in SERIOUS] == []


@pytest.mark.parametrize("width", [320, 390, 1400])
def test_the_page_itself_never_scrolls_sideways(browser, server, width):
    page = browser.new_page(viewport={"width": width, "height": 800})
    page.goto(f"{server}/")
    page.evaluate("for (const folded of document.querySelectorAll('details')) folded.open = true")
    assert page.evaluate("document.documentElement.scrollWidth") <= width
    page.close()


def test_the_keyboard_first_reaches_a_link_to_the_content(browser, server):
    page = browser.new_page()
    page.goto(f"{server}/")
    page.keyboard.press("Tab")
    assert page.evaluate("document.activeElement.getAttribute('href')") == "#content"
    assert page.evaluate("document.activeElement.getBoundingClientRect().left") >= 0
    assert page.locator("main#content h1").count() == page.locator("h1").count() == page.locator("main").count() == 1
    page.close()


def test_it_can_be_read_in_the_dark(browser, server):
    def background(scheme):
        page = browser.new_page(color_scheme=scheme)
        page.goto(f"{server}/")
        colours = page.evaluate(
            "['body', 'figure img'].map(path => getComputedStyle(document.querySelector(path)).backgroundColor)"
        )
        page.close()
        return colours

    (dark, picture), (light, _) = background("dark"), background("light")
    assert dark != light
    assert picture == "rgb(255, 255, 255)"
