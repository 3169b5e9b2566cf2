"""The pattern as a page, read back by a parser, against the JSON answer of the same request."""

import pytest

from tests.oracles.random_pullovers import random_request
from tests.service.pullovers.answers import DIAMOND, GAUGE
from tests.service.pullovers.pages import read, section, words

COLOURED = {"rows": DIAMOND["rows"], "colours": {".": {"name": "foam"}, "#": {"name": "wrack & <i>kelp</i>"}}}
REQUESTS = {
    "nine sizes with yarn": {"yarn": {"metres_per_100g": 210}},
    "one size": {"labels": ["S", "M", "L"], "picture": {"size": "M"}},
    "a chart, for babies, in German": {
        "body_table": "babies",
        "chart": {"chart": COLOURED, "first_round": 3},
        "print": {"language": "de"},
    },
    "British, in whole cm and eighths": {
        "labels": ["S", "5X"],
        "print": {"language": "en-GB", "cm_step": 1, "inch_step": 0.125, "fractions": "unicode"},
    },
    "a maker's own gauge": {"labels": ["M"], "changes": {"gauge": {"stitches": 24, "rows": 33}, "keep_counts": True}},
    "a size that can't be knitted": {"labels": ["S", "4X"], "yoke": {"double_body": "never"}},
}


@pytest.fixture(scope="module")
def printed(client):
    def made(request):
        response = client.post("/v1/pullovers/pattern", json={"gauge": GAUGE, **request})
        assert response.status_code == 200, response.text
        assert response.content_type == "text/html; charset=utf-8"
        return read(response.text)

    return made


@pytest.fixture(scope="module")
def answered(client):
    def answer(request):
        request = {"gauge": GAUGE, **request}
        picture = request.pop("picture", {})
        if "size" in picture:
            request["answer_sizes"] = [picture["size"]]
        return client.post("/v1/pullovers", json=request).json

    return answer


@pytest.fixture(scope="module", params=REQUESTS.values(), ids=REQUESTS)
def both(request, printed, answered):
    return printed(request.param), answered(request.param)


def sentences(part):
    return [words(each) for each in part.iter("li")]


def test_every_sentence_of_the_instructions_stands_below_its_heading_in_their_order(both):
    page, answer = both
    told = [part for part in answer["instructions"] if part["part"] != "finished_measurements"]
    headings = [words(each) for each in page.iter("h2")]
    places = [headings.index(part["title"]) for part in answer["instructions"]]
    assert places == sorted(places)
    for part in told:
        # why a size can't be knitted is told in place of which can't
        expected = [each["text"] for each in part["sentences"] if each["id"] != "sizes.impossible"]
        here = sentences(section(page, part["title"]))
        assert here[: len(expected)] == expected
        reasons = [size["reason"] for size in answer["sizes"] if not size["feasible"]] * (part["part"] == "sizes")
        assert len(here) == len(expected) + len(reasons)
        assert all(reason in line for reason, line in zip(reasons, here[len(expected) :], strict=True))


def test_the_table_has_every_finished_measurement_of_every_size_in_cm_and_inches(both):
    page, answer = both
    (table,) = page.iter("table")
    assert [words(head) for head in table.findall("thead/tr/th")][2:] == answer["labels"]
    rows = [row for row in answer["table"] if row["part"] in ("to_fit", "finished")]
    assert len(rows) > 10
    for body, row in zip(table.findall("tbody"), rows, strict=True):
        assert words(body.find("tr/th")) == " ".join(filter(None, (row.get("letter"), row["title"])))
        cm, inches = ([words(cell) for cell in line.findall("td")] for line in body.findall("tr"))
        assert (cm, inches) == (row["printed"], row["printed_inch"])


def test_more_than_ten_sizes_stand_in_size_runs(printed, answered):
    sizes = [{"label": f"{number}", "bust": 76 + 4 * number} for number in range(11)]
    request = {"body_table": "women", "sizes": sizes}
    (table,) = printed(request).iter("table")
    rows = [row for row in answered(request)["table"] if row["part"] in ("to_fit", "finished")]
    for line, row in zip(table.findall("tbody/tr"), rows, strict=True):
        assert [words(cell) for cell in line.findall("td")] == [row["run"], row["run_inch"]]
    (table,) = printed({**request, "sizes": sizes[:10]}).iter("table")
    assert len(table.findall("thead/tr/th")) == 12


def test_what_a_designer_has_to_know_is_for_the_screen_alone(both):
    page, answer = both
    cautions = {"young_child_neck", "float_can_catch_fingers"}
    notes = {each["message"] for each in answer["warnings"] if each["code"] not in cautions}
    shown = page.find_class("screen")
    assert len(shown) == bool(notes)
    found = [words(each) for part in shown for each in part.iter("li")]
    assert len(found) == len(notes)
    assert all(any(line.endswith(note) for line in found) for note in notes)


def test_a_caution_about_floats_and_cords_is_printed(printed, answered):
    request = REQUESTS["a chart, for babies, in German"]
    messages = {each["message"] for each in answered(request)["warnings"] if each["code"] == "young_child_neck"}
    part = section(printed(request), "Vorsicht")
    assert "screen" not in part.get("class")
    assert messages <= {words(each) for each in part.iter("p")}
    assert any("Finger" in words(each) for each in part.iter("p"))


def test_the_pictures_stand_in_their_places(printed):
    page = printed({"labels": ["M"], "chart": {"chart": DIAMOND}})
    order = [words(each) for each in page.xpath("//h2 | //figcaption")]
    assert order[order.index("Schematic") - 1 :][:3] == ["Terms and techniques", "Schematic", "Neck"]
    # the other one is the heading of the chart's sentences
    assert order[order.index("Chart") :][:3] == ["Chart", "Chart", "Yoke"]
    assert [len(figure.xpath(".//*[local-name()='svg']")) for figure in page.iter("figure")] == [1, 1]
    assert [words(each) for each in printed({"labels": ["M"]}).iter("figcaption")] == ["Schematic"]


def test_the_credit_line_of_a_built_in_table_is_there(printed):
    # The line that the Craft Yarn Council asks for.
    credit = "Source: Craft Yarn Council's www.YarnStandards.com"
    own = [{"label": "S", "bust": 84, "upper_arm": 28, "wrist": 15, "arm_length": 43, "back_waist_length": 42}]
    assert credit in words(printed({"labels": ["M"]}).find(".//footer"))
    assert "Source" not in words(printed({"sizes": own}).find(".//footer"))


@pytest.mark.parametrize("name", ["nine sizes with yarn", "a size that can't be knitted"])
def test_the_page_says_what_made_it(printed, answered, name):
    page, made = printed(REQUESTS[name]), answered(REQUESTS[name])["meta"]
    assert f"Pullover grading {made['version']} · {made['input_digest']}" in words(page.find(".//footer"))


def test_a_design_has_its_name(printed):
    page = printed({"labels": ["M"], "picture": {"title": "Harbour Wall"}})
    assert words(page.find(".//h1")) == "Harbour Wall"
    assert page.findtext(".//title") == "Harbour Wall · Pattern"
    assert words(printed({"labels": ["M"]}).find(".//h1")) == "Pullover"


def test_text_of_a_request_is_text(printed):
    hostile = '</style><script>alert("&amp;")</script>'
    sizes = [{"label": hostile[:30], "bust": 94}]
    chart = {"chart": {"rows": DIAMOND["rows"], "colours": {".": {"name": "<img src=x>"}, "#": {"name": "'\"><b>"}}}}
    page = printed({"sizes": sizes, "body_table": "women", "chart": chart, "picture": {"title": hostile}})
    assert words(page.find(".//h1")) == hostile
    assert [*page.iter("script", "img", "link", "iframe")] == []
    assert "Cast on in '\"><b>." in words(section(page, "Neck"))
    assert [each for each in page.iter("b") if each.get("class") != "letter"] == []


def test_no_size_that_can_be_knitted_is_a_page_that_says_why(printed):
    page = printed({"labels": ["4X"], "yoke": {"double_body": "never"}})
    (only,) = [each for each in page.iter("section") if each.get("class") != "screen"]
    assert "Size 4X cannot be knitted as asked: The increases need" in words(only)
    assert [*page.iter("table"), *page.iter("figure")] == []


@pytest.mark.parametrize("paper", ["a4", "letter"])
def test_the_style_asks_for_the_paper(printed, paper):
    (style,) = printed({"labels": ["M"], "picture": {"page": paper}}).iter("style")
    assert f"size: {paper};" in style.text
    (style,) = printed({"labels": ["M"]}).iter("style")
    assert "size: " not in style.text.replace("font-size: ", "").replace("box-size: ", "")


def test_random_pullovers_have_a_pattern(client):
    made = 0
    for seed in range(60):
        request = random_request(seed)
        answer = client.post("/v1/pullovers", json=request)
        page = client.post("/v1/pullovers/pattern", json=request)
        assert page.status_code == answer.status_code, page.text
        made += page.status_code == 200
    assert made > 30
