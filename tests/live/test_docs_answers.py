"""How the docs page shows answers: compared with what the service answers to the same request."""

import csv
import io
import json
from pathlib import Path

import pytest
import requests
from PIL import Image

from tests.live.docs_page import executed, opened, request_field, rows_of

REQUEST = {"gauge": {"stitches": 22, "rows": 31}, "labels": ["M", "L"]}
ODD = {**REQUEST, "body_table": "women", "sizes": [{"label": "a|b\\c<i>", "bust": 90}, {"label": "L", "bust": 100}]}
del ODD["labels"]
SVG = """<svg xmlns="http://www.w3.org/2000/svg" width="300" height="200" viewBox="0 0 300 200">
<title>Front &amp; back</title><desc>Size M.</desc><g><title>not this</title></g>
<rect width="150" height="200" fill="#ff0000"/></svg>"""
HTML = """<!DOCTYPE html><html lang="en"><head><title>Wrack, size M</title><style>h1{color:rgb(1,2,3)}</style></head>
<body><h1>Wrack</h1><script>document.querySelector("h1").textContent = "run"</script></body></html>"""
NAME = {"Content-Disposition": "inline; filename*=UTF-8''Gr%C3%BCn-front-M.svg"}


def sent(page, request):
    request_field(page).fill(json.dumps(request))
    return executed(page)


@pytest.fixture(scope="module")
def pullover(browser, server):
    page = opened(browser, server, "#/Garment/pullovers")
    shown = sent(page, REQUEST)
    shown.get_by_role("table").wait_for()
    return shown


@pytest.fixture(scope="module")
def answer(server):
    return requests.post(f"{server}/v1/pullovers", json=REQUEST, timeout=30).json()


@pytest.fixture
def picture(browser, server):
    page = opened(browser, server, "#/Garment/pullovers_front", color_scheme="dark")
    page.route(
        "**/v1/pullovers/front", lambda route: route.fulfill(body=SVG, content_type="image/svg+xml", headers=NAME)
    )
    return executed(page)


@pytest.fixture
def printable(browser, server):
    page = opened(browser, server, "#/Garment/pullovers_pattern")
    page.route(
        "**/v1/pullovers/pattern", lambda route: route.fulfill(body=HTML, content_type="text/html; charset=utf-8")
    )
    return executed(page)


def test_a_pullovers_table_has_a_column_for_each_size_and_a_row_for_each_quantity(pullover, answer):
    head, *rows = rows_of(pullover.locator(".table-answer table"))
    assert head[2:] == answer["labels"]
    assert [row[0] for row in rows] == [row["title"] for row in answer["table"]]


def test_a_pullovers_table_shows_lengths_in_both_units_and_counts_as_they_are_printed(pullover, answer):
    _, *rows = rows_of(pullover.locator(".table-answer table"))
    for shown, row in zip(rows, answer["table"], strict=True):
        if "printed_inch" in row:
            pairs = zip(row["printed"], row["printed_inch"], strict=True)
            assert shown[1:] == ["cm\nin", *(f"{cm}\n{inch}" for cm, inch in pairs)]
        else:
            assert shown[2:] == row["printed"]


def test_a_pullovers_instructions_are_read_under_their_headings(pullover, answer):
    parts = pullover.locator(".answer section")
    assert parts.locator("h5").all_inner_texts() == [part["title"] for part in answer["instructions"]]
    told = [sentence["text"] for part in answer["instructions"] for sentence in part["sentences"]]
    assert parts.locator("p").all_text_contents() == told


def test_the_answer_as_it_came_is_folded_below(pullover):
    raw = pullover.locator(".raw-answer")
    assert raw.locator("pre").count() == 0
    assert pullover.locator(".table-answer").bounding_box()["y"] < raw.bounding_box()["y"]
    raw.locator("summary").click()
    assert raw.locator("pre").inner_text().startswith('{\n  "table": [')


def test_warnings_and_what_cannot_be_knitted_are_told(browser, server):
    request = {**REQUEST, "yoke": {"depth": 5, "double_body": "never"}}
    asked = requests.post(f"{server}/v1/pullovers", json=request, timeout=30).json()
    reasons = [f"{size['label']}: {size['reason']}" for size in asked["sizes"] if not size["feasible"]]
    assert reasons
    shown = sent(opened(browser, server, "#/Garment/pullovers"), request)
    assert shown.locator(".answer li").all_text_contents()[-len(reasons) :] == reasons


def in_markdown(browser, server, request):
    page = opened(browser, server, "#/Garment/pullovers")
    page.get_by_label("Media Type").first.select_option("text/markdown")
    shown = sent(page, request)
    return rows_of(shown.locator(".table-answer table"))


def test_a_markdown_answer_is_a_table_with_the_cells_of_the_csv(browser, server):
    response = requests.post(f"{server}/v1/pullovers", json=REQUEST, headers={"Accept": "text/csv"}, timeout=30)
    assert in_markdown(browser, server, REQUEST) == list(csv.reader(io.StringIO(response.content.decode())))


def test_marks_of_markdown_in_a_label_are_shown_as_they_were_sent(browser, server):
    assert in_markdown(browser, server, ODD)[0][3] == "a|b\\c<i>"


def test_a_problem_lists_every_wrong_place(browser, server):
    request = {"gauge": {"stitches": 0, "rows": "x"}}
    errors = requests.post(f"{server}/v1/pullovers", json=request, timeout=30).json()["errors"]
    assert len(errors) == 2
    shown = sent(opened(browser, server, "#/Garment/pullovers"), request)
    assert shown.locator(".answer li").all_text_contents() == [f"{one['pointer']} {one['detail']}" for one in errors]


def test_a_picture_is_told_in_its_own_words(picture):
    assert picture.locator("img").get_attribute("alt") == "Front & back. Size M."


def test_a_picture_lies_on_white_in_the_dark_too(picture):
    ground = picture.locator("img").evaluate("image => getComputedStyle(image).backgroundColor")
    assert ground == "rgb(255, 255, 255)"


def saved(shown, button):
    with shown.page.expect_download() as download:
        shown.get_by_role("button", name=button).click()
    return download.value.suggested_filename, Path(download.value.path()).read_bytes()


def test_a_picture_is_saved_as_svg_under_the_name_that_the_service_gives_it(picture):
    assert saved(picture, "Save SVG") == ("Grün-front-M.svg", SVG.encode())


def test_a_picture_is_saved_as_png_in_double_size_on_white(picture):
    name, content = saved(picture, "Save PNG")
    assert name == "Grün-front-M.png"
    image = Image.open(io.BytesIO(content)).convert("RGBA")
    assert image.size == (600, 400)
    assert image.getpixel((10, 10)) == (255, 0, 0, 255)
    assert image.getpixel((590, 10)) == (255, 255, 255, 255)


def test_a_page_is_shown_with_its_style_in_a_frame(printable):
    heading = printable.frame_locator("iframe").locator("h1")
    heading.wait_for()
    assert heading.evaluate("heading => getComputedStyle(heading).color") == "rgb(1, 2, 3)"
    assert printable.locator("iframe").get_attribute("title") == "Wrack, size M"


def test_no_script_of_a_page_runs(printable):
    printable.frame_locator("iframe").locator("h1").wait_for()
    assert printable.frame_locator("iframe").locator("h1").inner_text() == "Wrack"
    assert "allow-scripts" not in printable.locator("iframe").get_attribute("sandbox")


def test_a_page_is_printed_by_itself(printable):
    printable.frame_locator("iframe").locator("h1").wait_for()
    printable.locator("iframe").evaluate("frame => { frame.contentWindow.print = () => { window.printed = true; } }")
    printable.get_by_role("button", name="Print").click()
    assert printable.page.evaluate("window.printed")


def test_a_page_is_saved_as_it_came(printable):
    assert saved(printable, "Save page")[1] == HTML.encode()
