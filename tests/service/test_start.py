"""The start page, read back by an HTML parser: every example is on it as the operations answer it."""

import csv
import io
import json
import re
from pathlib import Path

import pytest
from lxml import etree, html
from PIL import Image

from grading_core.printing import DASH
from service import example_answers
from service.app import create_app
from service.config import Config
from service.examples import examples_of
from service.media import CSV, HTML, JSON, SVG, XLSX
from service.routes import operations

ROOT = Path(__file__).parents[2]
OPERATIONS = {operation.name: operation for operation in operations(Config())}
PULLOVERS = examples_of("pullovers")
SHARED = {
    "schematic.svg": ("/v1/pullovers/schematic", SVG),
    "front.svg": ("/v1/pullovers/front", SVG),
    "chart.svg": ("/v1/pullovers/chart", SVG),
    "yoke-plot.svg": ("/v1/pullovers/yoke-plot", SVG),
    "pattern.html": ("/v1/pullovers/pattern", HTML),
    "worksheet.html": ("/v1/pullovers/worksheet", HTML),
    "workbook.xlsx": ("/v1/pullovers/workbook", XLSX),
}
"""What a pullover's example is answered with: by which operation, as what."""
OF_ONE_SIZE = {"front.svg", "worksheet.html"}

each_pullover = pytest.mark.parametrize("example", PULLOVERS, ids=lambda example: example.name)


@pytest.fixture(scope="module")
def page(client):
    response = client.get("/")
    assert response.status_code == 200
    return html.document_fromstring(response.get_data(as_text=True))


@pytest.fixture
def shown(page, example):
    """The part of the page that an example of a pullover has."""
    return page.get_element_by_id(example.name)


def texts(element, path):
    return [found.text_content() for found in element.xpath(path)]


def rows(table):
    """The cells of every row, after its heading."""
    return [[td.text or "" for td in row.iterfind("td")] for row in table.iterfind("tbody/tr")]


def inches(table):
    return [[small.text for small in row.iterfind("td/small")] for row in table.iterfind("tbody/tr")]


def sent(client, example, file):
    """What an example's request is answered with by POST, for the size in the middle where one has to be named."""
    path, media = SHARED[file]
    asked = example.request
    if file in OF_ONE_SIZE:
        labels = client.post("/v1/pullovers", json=asked).json["labels"]
        asked = {**asked, "picture": {"size": labels[len(labels) // 2]}}
    return client.post(path, json=asked, headers={"Accept": media})


@each_pullover
def test_a_pullovers_table_has_the_printed_values_of_the_json_answer(client, shown, example):
    answer = client.post("/v1/pullovers", json={**example.request, "include": ["table"]}).json
    (table,) = shown.iter("table")
    assert texts(table, "thead/tr/th") == answer["labels"]
    assert rows(table) == [row["printed"] for row in answer["table"]]
    assert inches(table) == [row.get("printed_inch", []) for row in answer["table"]]


@each_pullover
def test_a_pullovers_rows_are_called_by_title_with_the_letter_of_the_schematic(client, shown, example):
    answer = client.post("/v1/pullovers", json={**example.request, "include": ["table"]}).json
    titles = [" ".join(filter(None, (row.get("letter"), row["title"]))) for row in answer["table"]]
    assert [title.removesuffix(" cm, in") for title in texts(shown, ".//tbody/tr/th")] == titles


@pytest.mark.parametrize(
    ("operation", "example"),
    [
        pytest.param(operation, example, id=f"{operation.name}/{example.name}")
        for operation in OPERATIONS.values()
        if CSV in operation.media and operation.name not in ("pullovers", "proofs")
        for example in examples_of(operation.name)
    ],
)
def test_the_table_of_another_operation_has_the_values_of_its_csv(client, page, operation, example):
    path, sent = operation.path.format(**example.request), {"headers": {"Accept": CSV}}
    answer = client.get(path, **sent) if operation.method == "GET" else client.post(path, json=example.request, **sent)
    header, *lines = csv.reader(io.StringIO(answer.text))
    link = f"/docs#/{operation.tag}/{operation.id}?example={example.name}"
    (item,) = page.xpath("//li[.//a[@href=$link]]", link=link)
    (table,) = item.iter("table")
    values = [line[header.index("unit") + 1 : header.index("run")] for line in lines]
    assert values
    assert rows(table) == [[value or DASH for value in line] for line in values]


@pytest.mark.parametrize("example", examples_of("proofs"), ids=lambda example: example.name)
def test_the_table_of_a_proof_has_a_row_for_each_line_of_its_csv(client, page, example):
    answer = client.post("/v1/proofs", json=example.request, headers={"Accept": CSV})
    header, *lines = csv.reader(io.StringIO(answer.text))
    (item,) = page.xpath("//li[.//a[@href=$link]]", link=f"/docs#/Garment/proofs?example={example.name}")
    (table,) = item.iter("table")
    assert lines
    assert texts(table, "thead/tr/th") == [name.replace("_", " ") for name in header]
    assert rows(table) == lines


@each_pullover
def test_a_pullover_has_its_pictures_pages_and_workbook(shown, example):
    of = f"/examples/pullovers/{example.name}"
    seen = {img.get("src") for img in shown.iter("img")} | {a.get("href") for a in shown.iter("a")}
    there = {address for address in seen if address.startswith("/examples")}
    assert there == {f"{of}/{file}" for file in SHARED if file != "chart.svg" or "chart" in example.request}


@each_pullover
@pytest.mark.parametrize("file", SHARED)
def test_an_address_of_an_example_answers_as_a_post_of_its_request_does(client, example, file):
    got, posted = client.get(f"/examples/pullovers/{example.name}/{file}"), sent(client, example, file)
    if file == "chart.svg" and "chart" not in example.request:
        assert (got.status_code, posted.status_code) == (404, 422)
        return
    assert (got.status_code, posted.status_code) == (200, 200)
    assert got.get_data() == posted.get_data()
    of_content = {
        "Content-Type",
        "Content-Language",
        "Content-Disposition",
        "Content-Security-Policy",
        "Cache-Control",
        "Content-Length",
    }
    assert {name: got.headers[name] for name in of_content} == {name: posted.headers[name] for name in of_content}


def test_every_picture_page_and_file_on_the_page_is_there(client, page):
    links = {link for _, _, link, _ in page.iterlinks() if link.startswith("/examples/")}
    answered = {operation.name for operation in OPERATIONS.values() if operation.media[0] in (SVG, HTML, XLSX)}
    assert {link.split("/")[2] for link in links} == answered | {"pullovers"}
    assert [link for link in sorted(links) if client.get(link).status_code != 200] == []


def test_a_picture_is_described_in_its_own_words_and_has_its_shape(client, page):
    """The examples have them recorded: run python -m openapi.build where they differ."""
    pictures = page.findall(".//img")
    assert len(pictures) > len(PULLOVERS) * 3
    for picture in pictures:
        root = etree.fromstring(client.get(picture.get("src")).get_data())
        title, about = (root.findtext(f"{{*}}{name}") for name in ("title", "desc"))
        (figure,) = picture.iterancestors("figure")
        assert picture.get("alt") == title
        assert figure.findtext("figcaption").startswith(title)
        assert texts(figure, ".//details/p") == [about] * bool(about)
        *_, width, height = map(float, root.get("viewBox").split())
        assert (int(picture.get("width")), int(picture.get("height"))) == pytest.approx((width, height), abs=1)
        assert picture.get("loading") == "lazy"


def test_every_example_of_every_operation_is_on_the_page_with_its_summary(page):
    text = page.text_content()
    for name in OPERATIONS:
        for example in examples_of(name):
            assert example.summary in text


def test_a_try_it_link_names_an_operation_and_an_example_that_the_contract_has(client, page):
    paths = client.get("/openapi.json").json["paths"].values()
    there = {f"/docs#/{told['tags'][0]}/{told['operationId']}" for path in paths for told in path.values()}
    links = {a.get("href") for a in page.iter("a") if a.get("href").startswith("/docs#")}
    assert {link.partition("?")[0] for link in links} == there
    assert links == {
        f"/docs#/{operation.tag}/{operation.id}?example={example.name}"
        for operation in OPERATIONS.values()
        for example in examples_of(operation.name)
    }


def test_the_request_of_a_pullover_is_on_the_page(page):
    for example in PULLOVERS:
        (code,) = page.get_element_by_id(example.name).xpath(".//pre/code")
        assert json.loads(code.text) == example.request


def test_what_is_fetched_by_curl_is_what_the_readme_fetches(page):
    (command,) = texts(page, "//section[@aria-labelledby='program']//pre")
    assert command.startswith("curl -s http://127.0.0.1:8000/v1/pullovers ")
    assert command in (ROOT / "README.md").read_text(encoding="utf-8")


def test_the_answer_of_an_operation_that_a_browser_can_ask_is_linked(client, page):
    links = {a.get("href") for a in page.iter("a") if a.text_content().startswith("Answer")}
    assert links == {
        operation.path.format(**example.request)
        for operation in OPERATIONS.values()
        if operation.method == "GET"
        for example in examples_of(operation.name)
    }
    assert {client.get(link).status_code for link in links} == {200}


def test_the_page_has_no_script_and_its_policy_would_let_none_run(client, page):
    policy = client.get("/").headers["Content-Security-Policy"]
    assert policy.startswith("default-src 'none'; ")
    assert "script-src" not in policy
    assert "unsafe" not in policy
    assert not page.xpath(
        "//script | //iframe | //object | //embed | //form | //@*[starts-with(name(), 'on')] | //@style"
    )


def test_nothing_on_the_page_is_elsewhere(page):
    links = [link for _, _, link, _ in page.iterlinks()]
    assert links
    assert [link for link in links if not re.match(r"/(?!/)|#", link)] == []


def test_a_place_within_the_page_is_there(page):
    places = [a.get("href")[1:] for a in page.iter("a") if a.get("href").startswith("#")]
    assert len(places) > len(PULLOVERS)
    ids = page.xpath("//@id")
    assert len(ids) == len(set(ids))
    assert set(places) <= set(ids)


def test_the_page_draws_nothing_itself(monkeypatch):
    """A picture can take a worker most of a second, and there are dozens."""

    def drawn(*_):
        raise AssertionError("a picture was drawn")

    monkeypatch.setattr(example_answers.ExampleAnswer, "response", property(drawn))
    assert create_app(Config()).test_client().get("/").status_code == 200


@pytest.mark.parametrize(
    "address",
    [
        "/examples/pullovers/nothing/front.svg",
        "/examples/nothing/a-gauge-alone/front.svg",
        "/examples/pullovers/a-gauge-alone/nothing.svg",
        "/examples/pullovers/a-gauge-alone/chart.svg",
        "/examples/pullovers/a-gauge-alone/",
        "/examples/pullovers/..%2f..%2f/front.svg",
        "/examples/",
        "/examples",
    ],
)
def test_what_no_example_is_answered_with_is_a_problem(client, address):
    answer = client.get(address)
    assert (answer.status_code, answer.content_type) == (404, "application/problem+json")


@pytest.mark.parametrize(
    "address", ["/", "/docs", "/docs/", "/favicon.ico", "/examples/pullovers/a-gauge-alone/schematic.svg"]
)
def test_a_page_answers_head_and_whoever_has_it_already(client, address):
    got, head = client.get(address), client.head(address)
    assert (got.status_code, head.status_code, head.get_data()) == (200, 200, b"")
    for name in ("Content-Type", "Content-Length", "ETag", "Cache-Control"):
        assert head.headers[name] == got.headers[name]
    assert client.get(address, headers={"If-None-Match": got.headers["ETag"]}).status_code == 304


def test_the_docs_are_the_same_page_with_a_slash(client):
    assert client.get("/docs/").get_data() == client.get("/docs").get_data()


def test_the_icon_of_every_page_is_our_own(client, page):
    for root in (page, html.document_fromstring(client.get("/docs").get_data(as_text=True))):
        assert root.xpath("//link[@rel='icon']/@href") == ["/favicon.ico"]
    answer = client.get("/favicon.ico")
    assert answer.content_type == "image/vnd.microsoft.icon"
    with Image.open(io.BytesIO(answer.get_data())) as icon:
        assert (icon.format, icon.info["sizes"]) == ("ICO", {(16, 16), (32, 32), (48, 48)})


def test_an_answer_that_is_kept_stays_as_it_was(client):
    """Every request gets a copy: compressing one leaves the next one plain."""
    address = "/examples/pullovers/a-gauge-alone/schematic.svg"
    plain = client.get(address)
    assert client.get(address, headers={"Accept-Encoding": "gzip"}).headers["Content-Encoding"] == "gzip"
    again = client.get(address)
    assert "Content-Encoding" not in again.headers
    assert again.get_data() == plain.get_data()
    assert again.headers.getlist("Vary") == plain.headers.getlist("Vary")


def test_an_example_whose_operation_answers_as_json_alone_has_no_address(client):
    for name, operation in OPERATIONS.items():
        if operation.media == (JSON,):
            example = examples_of(name)[0].name
            assert client.get(f"/examples/{name}/{example}/{name}.json").status_code == 404
