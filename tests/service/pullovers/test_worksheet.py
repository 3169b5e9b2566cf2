"""The worksheet, every round of it read back, against the JSON answer of the same request."""

import re

import pytest

from tests.oracles.random_pullovers import random_request
from tests.service.pullovers.answers import CHARTED, DIAMOND, GAUGE
from tests.service.pullovers.pages import DASH, read, rounds, section, words

SHAPED = {
    "neck": {"front_drop": 6},
    "body": {"levels": [{"measurement": "waist", "below": 14}], "front_extra": 4},
    "band": {"construction": "double_with_fold_round"},
}
REQUESTS = {
    "plain, size S": ({}, "S"),
    "plain, size 5X": ({}, "5X"),
    "a baby's": ({"body_table": "babies", "chart": {"chart": DIAMOND, "first_round": 3}}, "6 months"),
    "shaped, with a lower front": (SHAPED, "L"),
    "shaped, over the bust": ({"body": {"bust_darts": {"extra": 3}}}, "L"),
    "whole motifs alone": ({"chart": {"chart": DIAMOND, "first_round": 5, "partial_motifs": "plain"}}, "2X"),
    **{f"charted, {name}": (request, "M") for name, request in CHARTED.items()},
}

INCREASES = {
    (1, 1): "body and sleeves",
    (1, 0): "body only",
    (0, 1): "sleeves only",
    (2, 0): "body twice",
    (2, 1): "body twice, sleeves",
}
"""By increases at each body edge and each sleeve edge."""


@pytest.fixture(scope="module")
def sheet(client):
    def made(request, size, **picture):
        response = client.post(
            "/v1/pullovers/worksheet", json={"gauge": GAUGE, **request, "picture": {"size": size, **picture}}
        )
        assert response.status_code == 200, response.text
        return read(response.text)

    return made


@pytest.fixture(scope="module")
def size_of(client):
    def answered(request, size):
        include = ["sizes", "chart_rounds", "instructions", "table"]
        asked = {"gauge": GAUGE, **request, "answer_sizes": [size], "include": include}
        answer = client.post("/v1/pullovers", json=asked).json
        return answer["sizes"][0], answer

    return answered


@pytest.fixture(scope="module", params=REQUESTS.values(), ids=REQUESTS)
def both(request, sheet, size_of):
    return sheet(*request.param), *size_of(*request.param)


def start(section):
    """Where a section starts, as the page writes it."""
    if section["first_column"] is None:
        return DASH
    plain = section.get("plain_before")
    return f"{section['first_column']} after {plain}" if plain else str(section["first_column"])


def charted(rounds, number, names):
    """The chart's cells in a round: row and starts, one for back and front where these are always alike."""
    if not any(each["chart_row"] for each in rounds):
        return []
    here = rounds[number - 1]
    told = [name for name in names if any(each["chart_row"] for each in rounds)]
    starts = {name: [start(each[name]) for each in rounds if each["chart_row"]] for name in told}
    if starts.get("back") == starts.get("front") and "front" in told:
        told.remove("front")
    if here["chart_row"] is None:
        return [DASH] * (1 + len(told))
    return [str(here["chart_row"]), *(start(here[name]) for name in told)]


def test_every_round_of_the_yoke_has_its_stitches_increases_and_starts(both):
    page, size, _ = both
    yoke, neck = size["yoke"], size["neck"]
    (lines,) = rounds(section(page, "Yoke"))
    assert [line.round for line in lines] == [*range(1, yoke["rounds"] + 1)]
    increased = {each["round"]: each for each in yoke["increase_rounds"]}
    back, front, sleeve = (neck["sections"][name] for name in ("back", "front", "sleeve"))
    cells, drop = [], neck.get("front_drop")
    pieces = front - 2 * drop["each_side"] if drop else 0
    for line in lines:
        more = increased.get(line.round, {"body": 0, "sleeve": 0})
        backs, fronts = more.get("back", more.get("body")), more.get("front", more.get("body"))
        back, front, sleeve = back + 2 * backs, front + 2 * fronts, sleeve + 2 * more["sleeve"]
        if drop and line.round in drop["increase_rows"]:
            pieces -= 2
        if drop and line.round == drop["rows"]:
            pieces = 0
        total = back + front + 2 * sleeve + 4 * neck["line_stitches"] - pieces
        cells.append((back, front - pieces, sleeve, total))
        if not drop and backs == fronts:
            assert line.cells[0] == INCREASES.get((backs, more["sleeve"]), "")
    apart = any(each[0] != each[1] for each in cells)
    for line, told in zip(lines, cells, strict=True):
        stitches = [*map(str, told if apart else (told[0], *told[2:]))]
        chart = size["chart"]["rounds"] if "chart" in size else []
        assert [*line.cells[1:]] == stitches + charted(chart, line.round, ["back", "front", "sleeve"])


def test_every_round_of_the_body_has_its_stitches_and_starts(both):
    page, size, _ = both
    body, hem = rounds(section(page, "Body"))
    told, changes = size["body"], {each["round"]: each["stitches"] for each in size["body"]["shaping"]}
    stitches = told["stitches"]
    assert [line.round for line in body] == [*range(1, told["rounds"] + 1)]
    assert [line.round for line in hem] == [*range(1, told["hem"]["rounds"] + 1)]
    chart = size["chart"]["body"]["rounds"] if "chart" in size else []
    for line in body:
        change = changes.get(line.round, 0)
        stitches += change
        assert ("divide" in line.cells[0]) == (line.round == 1)
        assert (f"{abs(change)} {'more' if change > 0 else 'fewer'}" in line.cells[0]) == bool(change)
        assert [*line.cells[1:]] == [str(stitches), *charted(chart, line.round, ["back", "front"])]
    assert {line.cells[1] for line in hem} == {str(told["hem"]["stitches"])}


def test_every_round_of_a_sleeve_has_its_stitches_and_start_and_a_box_for_either(both):
    page, size, _ = both
    sleeve, cuff = rounds(section(page, "Sleeves"))
    told, stitches = size["sleeve"], size["sleeve"]["stitches"]
    assert [line.round for line in sleeve] == [*range(1, told["rounds"] + 1)]
    assert [line.round for line in cuff] == [*range(1, told["cuff"]["rounds"] + 1)]
    assert {line.boxes for line in (*sleeve, *cuff)} == {2}
    chart = [{**each, "sleeve": each} for each in size["chart"]["sleeve"]["rounds"]] if "chart" in size else []
    for line in sleeve:
        decreased = line.round in told["decrease_rounds"]
        stitches -= 2 * decreased
        assert ("2 fewer" in line.cells[0]) == decreased
        assert [*line.cells[1:]] == [str(stitches), *charted(chart, line.round, ["sleeve"])]
    assert {line.cells[1] for line in cuff} == {str(told["cuff"]["stitches"])}


def test_every_round_of_the_neckband_is_there(both):
    page, size, answer = both
    (band,) = rounds(section(page, "Neckband"))
    assert [line.round for line in band] == [*range(1, size["band"]["rounds"] + 1)]
    table = {(row["part"], row["item"]): row["values"] for row in answer["table"]}
    assert {line.cells[1] for line in band} == {str(table["band", "stitches"][0])}


def test_the_neck_and_the_split_are_told_step_by_step(both):
    page, _, answer = both
    told = {part["part"]: [each["text"] for each in part["sentences"]] for part in answer["instructions"]}
    neck = [words(step) for step in section(page, "Neck").iter("li")]
    yoke = [words(step) for step in section(page, "Yoke").iter("li")]
    yoke += [words(step) for step in section(page, "Yoke").find_class("step") if step.tag == "div"]
    assert sorted(neck + yoke) == sorted(told["neck"])
    assert [words(step) for step in section(page, "Dividing for body and sleeves").iter("li")] == told["split"]


def test_the_turns_of_short_rows_are_there_to_tick_off(sheet, size_of):
    steps = [step for step in section(sheet({}, "M"), "Neck").iter("li") if re.match(r"Row \d+", words(step))]
    size, _ = size_of({}, "M")
    turns = size["neck"]["turns"]
    assert len(steps) == len(turns) > 5
    for step, turn in zip(steps, turns, strict=True):
        assert len(step.findall(".//i")) == 1
        assert re.findall(r"\d+", words(step)) == [str(turn[name]) for name in ("row", "stitches", "marker")]


def test_bust_darts_stand_before_their_round(sheet, size_of):
    request = {"body": {"bust_darts": {"extra": 3}}}
    size, _ = size_of(request, "L")
    darts = size["body"]["bust_darts"]
    rows = [words(row) for row in section(sheet(request, "L"), "Body").iter("tr")]
    places = [place for place, row in enumerate(rows) if row.startswith("Short rows")]
    assert len(places) == darts["rows"] / 2 > 1
    assert re.match(r"\d+", rows[places[-1] + 2]).group() == str(darts["round"])


@pytest.mark.parametrize("language", ["en-US", "en-GB", "de"])
def test_a_worksheet_has_the_same_numbers_in_every_language(sheet, language):
    request = {"chart": {"chart": DIAMOND, "partial_motifs": "plain"}, **SHAPED}
    numbers = [
        [re.findall(r"\d+", words(cell)) for row in page.iter("tr") for cell in row.findall("td[@class='number']")]
        for page in (sheet(request, "L"), sheet({**request, "print": {"language": language}}, "L"))
    ]
    assert numbers[0] == numbers[1]
    assert len(numbers[0]) > 300


def test_a_page_says_its_language(sheet):
    assert sheet({"print": {"language": "de"}}, "M").get("lang") == "de"


def test_text_of_a_request_is_text(sheet):
    hostile = "<b>\"x'</b></style><script>"
    page = sheet({"sizes": [{"label": hostile, "bust": 94}], "body_table": "women"}, hostile, title=hostile)
    assert words(page.find(".//h1")) == f"{hostile} · Worksheet, size {hostile}"
    assert [*page.iter("script")] == []
    (style,) = page.iter("style")
    assert "<" not in style.text
    assert len([*page.iter("section")]) == 6


def test_a_size_that_cannot_be_knitted_says_why(sheet):
    page = sheet({"labels": ["S", "4X"], "yoke": {"double_body": "never"}}, "4X")
    assert [*page.iter("section")] == []
    assert "Size 4X cannot be knitted as asked: The increases need" in words(page.find(".//header"))


def test_random_pullovers_have_a_worksheet_of_each_size(client):
    made = 0
    for seed in range(60):
        request = random_request(seed)
        answer = client.post("/v1/pullovers", json=request)
        if answer.status_code != 200:
            continue
        for label in answer.json["labels"][:2]:
            response = client.post("/v1/pullovers/worksheet", json={**request, "picture": {"size": label}})
            assert response.status_code == 200, response.text
            made += 1
    assert made > 60
