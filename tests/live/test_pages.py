"""Pages as a browser shows and prints them: whole lines on whole sheets, readable by all, nothing from outside."""

import re

import pytest
import requests
from axe_playwright_python.sync_playwright import Axe

from service.config import Config
from service.examples import examples_of
from service.media import HTML
from service.routes import operations
from tests.live.drawn import printed
from tests.service.pullovers.answers import DIAMOND, WOMEN
from tests.service.pullovers.pages import read, words

GAUGE = {"gauge": {"stitches": 22, "rows": 31}}
COLOURED = {"chart": {"chart": DIAMOND, "first_round": 3}}
PAPER = {"a4": (595, 842), "letter": (612, 792)}
"""In points, 72 to an inch."""

PAGES = {
    **{
        f"{operation.name}/{example.name}": (operation.path, example.request)
        for operation in operations(Config())
        if operation.media[0] == HTML
        for example in examples_of(operation.name)
    },
    **{
        f"worksheet of {size}{of}, {language}": (
            "/v1/pullovers/worksheet",
            {**GAUGE, **request, "picture": {"size": size, "page": page}, "print": {"language": language}},
        )
        for size, of, request, page, language in (
            ("S", ", plain", {}, "a4", "en-GB"),
            ("L", ", plain", {}, "letter", "en-US"),
            ("5X", ", plain", {}, "letter", "de"),
            ("S", ", charted", COLOURED, "letter", "en-US"),
            ("L", ", charted", COLOURED, "a4", "de"),
            ("5X", ", charted", COLOURED, "letter", "en-US"),
            ("6 months", ", charted", {"body_table": "babies", **COLOURED}, "a4", "de"),
        )
    },
    "pattern of nine sizes": (
        "/v1/pullovers/pattern",
        {**GAUGE, "labels": WOMEN, "yarn": {"metres_per_100g": 210}, "picture": {"page": "letter", "title": "Wall"}},
    ),
    "pattern for babies": (
        "/v1/pullovers/pattern",
        {**GAUGE, "body_table": "babies", "picture": {"page": "a4"}, "print": {"language": "de"}},
    ),
}

TOLD_APART = (
    "pullovers-pattern/colourwork-on-a4",
    "pullovers-worksheet/colourwork-on-a4",
    "worksheet of 5X, plain, de",
    "pattern of nine sizes",
)
"""Pages of which each has something that the others don't."""

_BESIDE_HEADINGS = 152
"""Where the sentences of a pattern begin, in points."""

_LINE = 14
"""Of text, in points."""

_LOADED = """() => performance.getEntriesByType('resource').map(entry => entry.name)
  .filter(name => !name.endsWith('/favicon.ico'))"""
"""But for the icon that a browser asks a server for by itself."""
_TOO_WIDE = """() => [...document.querySelectorAll('.tabled')]
  .filter(box => box.querySelector('table').offsetWidth > box.clientWidth + 1).map(box => box.ariaLabel)"""


@pytest.fixture(scope="module", params=PAGES.values(), ids=PAGES)
def page(request, server):
    path, asked = request.param
    response = requests.post(server + path, json=asked, timeout=30)
    assert response.status_code == 200, response.text
    return path.rpartition("/")[2], asked["picture"], response


@pytest.fixture(scope="module")
def pdf(browser, page):
    """The page as it is printed."""
    with printed(browser, page[2].content, "text/html") as made:
        yield made


@pytest.fixture
def shown(browser, page):
    """The page in a window, and what it asked for."""
    opened = browser.new_page()
    opened.route("http://picture.test/*", lambda route: route.fulfill(body=page[2].content, content_type="text/html"))
    opened.goto("http://picture.test/page")
    yield opened
    opened.close()


def compact(text):
    """Without what a printer puts between words."""
    return re.sub(r"\s", "", text)


def test_a_printer_gets_sheets_of_the_paper_each_with_name_and_digest(page, pdf):
    kind, picture, response = page
    html = read(response.text)
    made = words(html.find(".//footer")).partition("sha256:")[2]
    assert {(round(sheet.width), round(sheet.height)) for sheet in pdf.pages} == {PAPER[picture["page"]]}
    # a worksheet of four sheets is the most that is carried along
    assert len(pdf.pages) <= (4 if kind == "worksheet" else 9)
    for number, sheet in enumerate(pdf.pages, 1):
        text = compact(sheet.extract_text())
        assert made in text
        if kind == "worksheet" or number > 1:
            assert compact(html.findtext(".//title")) in text
        assert f"{number}/{len(pdf.pages)}" in text


def test_no_sentence_and_no_line_of_a_table_is_cut(page, pdf):
    _, _, response = page
    html = read(response.text)
    for hidden in html.find_class("screen"):
        hidden.drop_tree()
    sheets = [sheet.extract_words(x_tolerance=1) for sheet in pdf.pages]
    inside = [
        word["x0"] > 0 and word["x1"] < sheet.width and word["top"] > 0 and word["bottom"] < sheet.height
        for sheet, found in zip(pdf.pages, sheets, strict=True)
        for word in found
    ]
    assert all(inside)
    # lines of sentences stand beside those of others, or of headings: by its own part of the sheet each is whole
    texts = [
        compact("".join(part.extract_text()))
        for sheet in pdf.pages
        for part in (
            sheet,
            sheet.crop((0, 0, sheet.width / 2, sheet.height)),
            sheet.crop((sheet.width / 2, 0, sheet.width, sheet.height)),
            sheet.crop((_BESIDE_HEADINGS, 0, sheet.width, sheet.height)),
        )
    ]
    told = [words(each) for each in html.iter("li")]
    assert [each for each in told if not any(compact(each) in text for text in texts)] == []


def test_a_table_is_no_wider_than_its_place_on_paper(page, shown):
    kind, picture, _ = page
    margins = 26 if kind == "worksheet" else 32
    width = {"a4": 210, "letter": 215.9}[picture["page"]] - margins
    shown.set_viewport_size({"width": int(width / 25.4 * 96), "height": 900})
    shown.emulate_media(media="print")
    assert shown.evaluate(_TOO_WIDE) == []


def test_a_heading_stands_beside_or_above_the_first_words_of_its_part(page, pdf):
    _, _, response = page
    html = read(response.text)
    sheets = [sheet.extract_words(x_tolerance=1, extra_attrs=["fontname"]) for sheet in pdf.pages]
    for part in html.iter("section"):
        if "screen" in (part.get("class") or "") or not part.findall(".//li"):
            continue
        heading, first = words(part.find("h2")).split()[0], words(part.find(".//li")).split()[0]
        distances = [
            word["top"] - head["top"]
            for sheet in sheets
            for head in sheet
            if "Bold" in head["fontname"] and head["text"] == heading
            for word in sheet
            if word["text"] == first
        ]
        assert any(-_LINE < distance < 2 * _LINE for distance in distances), heading


def test_a_screen_of_any_width_scrolls_no_page_sideways(shown):
    for width in (1200, 390):
        shown.set_viewport_size({"width": width, "height": 900})
        assert shown.evaluate("document.documentElement.scrollWidth") <= width


@pytest.mark.parametrize("page", [PAGES[name] for name in TOLD_APART], ids=TOLD_APART, indirect=True)
@pytest.mark.parametrize("width", [1200, 390])
def test_everybody_can_read_it(shown, width):
    shown.set_viewport_size({"width": width, "height": 900})
    found = Axe().run(shown).response["violations"]
    assert [each["id"] for each in found if each["impact"] in ("serious", "critical")] == []


def test_headings_are_in_order_and_one_is_the_first(page):
    html = read(page[2].text)
    levels = [int(each.tag[1]) for each in html.xpath("//h1 | //h2 | //h3")]
    assert levels[0] == 1
    assert {*levels[1:]} == {2}


def test_nothing_is_loaded(page, shown):
    assert shown.evaluate(_LOADED) == []
    assert page[2].headers["Content-Security-Policy"].startswith("default-src 'none'")
