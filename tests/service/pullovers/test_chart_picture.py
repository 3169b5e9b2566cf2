"""A pullover's chart as it is drawn, read back from the SVG and compared with the JSON answer of the same request."""

import random
import re

import pytest

from tests.oracles.random_pullovers import random_request
from tests.service.drawn_charts import pieces, sheets, texts
from tests.service.pullovers.answers import CHARTED, GAUGE

CHART = "/v1/pullovers/chart"
HEXES = {".": "#f2ead8", "#": "#223344", "o": "#a03020", "x": "#5a8a30"}
COLOURS = {symbol: {"name": f"yarn {symbol}", "hex": hex} for symbol, hex in HEXES.items()}
TALL = ["".join(".#"[(column * row // 3 + column) % 2] for column in range(11)) for row in range(30)]


def charted(request, **picture):
    """A request with hexes for the symbols of its chart, in English, and what is drawn of it."""
    request = {**request, "chart": {**request["chart"], "chart": {**request["chart"]["chart"], "colours": COLOURS}}}
    request["print"] = {"language": "en-US", "missing": "-"}
    return {name: value for name, value in request.items() if name not in ("include", "answer_sizes")} | (
        {"picture": picture} if picture else {}
    )


def told(client, request):
    """The JSON answer."""
    asked = {name: value for name, value in request.items() if name != "picture"}
    return client.post("/v1/pullovers", json={**asked, "include": ["sizes", "chart_rounds"]})


def drawn(client, request):
    response = client.post(CHART, json=request)
    assert response.status_code == 200, response.text
    return response.get_data()


def symbol(request, row, column):
    """What the chart has in a row and a column, each counted as it is knitted."""
    chart = request["chart"]["chart"]
    ordered = chart["rows"] if chart.get("first_row") == "top" else chart["rows"][::-1]
    first, second = request["chart"].get("exchange", ("", ""))
    found = ordered[row - 1][-column]
    return {first: second, second: first}.get(found, found)


def expected_rounds(request, size):
    """(part, round, row, starts by section) of every round that is drawn, from the answer's JSON.

    Below the split the chart is drawn up to the first round that works its last row.
    """
    chart, height = size["chart"], len(request["chart"]["chart"]["rows"])
    found = [
        ("yoke", each["round"], each["chart_row"], {name: each[name] for name in ("back", "front", "sleeve")})
        for each in chart["rounds"]
        if each["chart_row"] is not None
    ]
    body, sleeve = chart["body"]["rounds"], chart["sleeve"]["rounds"]
    for number in range(max(len(body), len(sleeve))):
        starts, row = {}, None
        if number < len(body):
            starts |= {name: body[number][name] for name in ("back", "front")}
            row = body[number]["chart_row"]
        if number < len(sleeve):
            starts |= {"sleeve": sleeve[number]}
            row = sleeve[number]["chart_row"]
        if row is None:
            continue
        found.append(("below", number + 1, row, starts))
        if row == height:
            break
    return found


def words(starts, alike):
    found = []
    for name, start in starts.items():
        if not start["stitches"] or (alike and name == "front"):
            continue
        called = "body" if alike and name == "back" else name
        column, before = start["first_column"], start.get("plain_before")
        if column is None:
            found.append(f"{called} plain")
        else:
            found.append(f"{called} {column}" + (f" ({before} plain)" if before else ""))
    return ", ".join(found)


def same(starts):
    back, front = starts.get("back"), starts.get("front")
    return back is front or all(back.get(name) == front.get(name) for name in ("first_column", "plain_before"))


def compare(client, request):
    """Everything that a size's picture shows against the JSON; how many rounds were compared."""
    label = request["picture"]["size"]
    answer = told(client, request)
    if answer.status_code != 200:
        assert client.post(CHART, json=request).status_code == 422
        return 0
    [size] = [each for each in answer.json["sizes"] if each["label"] == label]
    svg = drawn(client, request)
    if not size["feasible"]:
        return 0
    rounds = expected_rounds(request, size)
    if not rounds:
        assert "No round of this size works the chart." in texts(sheets(svg)[0])
        assert pieces(svg)[0].rows()[0].row == "1"
        return 0
    alike = all(same(starts) for *_, starts in rounds)
    width = len(request["chart"]["chart"]["rows"][0])
    at, seen_columns = 0, set()
    outlined = {name: set() for name in ("body", "back", "front", "sleeve")}
    for piece in pieces(svg):
        here = rounds[at : at + piece.height]
        rows = piece.rows()
        assert [(int(row.round), int(row.row), row.words) for row in rows] == [
            (number, row, words(starts, alike)) for _, number, row, starts in here
        ]
        for (y, column), paints in piece.stitches.items():
            assert paints[0] == HEXES[symbol(request, here[y][2], column)]
        assert {*piece.stitches} == {(y, column) for y in range(piece.height) for column in piece.columns}
        for name, places in piece.starts.items():
            outlined[name] |= {(at + y, column) for y, column in places}
        seen_columns |= {*piece.columns}
        if piece.columns[-1] == width:
            at += piece.height
    assert at == len(rounds)
    assert seen_columns == {*range(1, width + 1)}
    for name in ("back", "front", "sleeve"):
        expected = {
            (y, starts[name]["first_column"])
            for y, (*_, starts) in enumerate(rounds)
            if name in starts and starts[name]["first_column"] is not None
        }
        assert outlined["body" if alike and name != "sleeve" else name] == expected
    assert all(not outlined[name] for name in (("back", "front") if alike else ("body",)))
    return len(rounds)


@pytest.mark.parametrize("page", ["single", "a4", "letter"])
@pytest.mark.parametrize("name", CHARTED)
def test_every_start_and_every_stitch_drawn_is_that_of_the_answer(client, name, page):
    for label in ("XS", "L", "5X"):
        assert compare(client, charted({"gauge": GAUGE, **CHARTED[name]}, size=label, page=page)) > 3


@pytest.mark.parametrize(
    "chart",
    [
        {"exchange": [".", "#"]},
        {"below_colour": "#", "chart": {"rows": TALL, "repeat": "once"}},
        {"partial_motifs": "plain", "minimum_width": {"body": 38, "sleeve": 20}},
        {"chart": {"rows": TALL, "first_row": "top"}},
    ],
    ids=["exchanged", "once, another colour below", "whole motifs", "drawn from the top"],
)
def test_a_chart_is_drawn_in_the_colours_in_which_it_is_worked(client, chart):
    request = {"gauge": GAUGE, "labels": ["S", "L"], "chart": {"chart": {"rows": TALL}, **chart}}
    assert compare(client, charted(request, size="L", page="a4")) > 20


def test_pictures_of_random_pullovers_show_what_is_answered(client):
    compared = 0
    for seed in range(150):
        request = random_request(seed)
        if "chart" not in request:
            continue
        asked = charted(request)
        answer = told(client, asked)
        chance = random.Random(seed)
        if answer.status_code == 200:
            labels = [each["label"] for each in answer.json["sizes"]]
            asked["picture"] = {"size": chance.choice(labels), "page": chance.choice(("single", "a4", "letter"))}
            compared += compare(client, asked)
            asked["picture"] = {"page": chance.choice(("single", "a4", "letter"))}
            compare_repeat(client, asked, answer.json)
    assert compared > 700


def first_starts(size, name):
    """(row, first column, last column, plain stitches before) of the first round that works the chart in a section."""
    chart = size["chart"]
    rounds = [(each["chart_row"], each[name]) for each in chart["rounds"]]
    if name == "sleeve":
        rounds += [(each["chart_row"], each) for each in chart["sleeve"]["rounds"]]
    else:
        rounds += [(each["chart_row"], each[name]) for each in chart["body"]["rounds"]]
    return next(
        (
            (row, start["first_column"], start["last_column"], start.get("plain_before"))
            for row, start in rounds
            if start["first_column"]
        ),
        None,
    )


def compare_repeat(client, request, answer):
    """The marks and the table of one repeat against the JSON."""
    svg = drawn(client, request)
    sizes = [size for size in answer["sizes"] if size["feasible"]]
    starts = {name: [first_starts(size, name) for size in sizes] for name in ("back", "front", "sleeve")}
    alike = all(
        (back is None) == (front is None) and (back is None or back == front)
        for back, front in zip(starts["back"], starts["front"], strict=True)
    )
    outlined = {name: set() for name in ("body", "back", "front", "sleeve")}
    for piece in pieces(svg):
        rows = piece.rows()
        assert [row.round for row in rows] == [None] * piece.height
        for name, places in piece.starts.items():
            outlined[name] |= {(int(rows[y].row), column) for y, column in places}
        for (y, column), paints in piece.stitches.items():
            assert paints[0] == HEXES[symbol(request, int(rows[y].row), column)]
    for name in ("back", "front", "sleeve"):
        drawn_as = "body" if alike and name != "sleeve" else name
        assert outlined[drawn_as] == {start[:2] for start in starts[name] if start}
    cells = [text for sheet in sheets(svg) for text in texts(sheet)]
    for place, size in enumerate(sizes):
        columns = [starts[name][place] for name in (("back", "sleeve") if alike else ("back", "front", "sleeve"))]
        spans = [span(start) for start in columns]
        last_row = next((each["chart_row"] for each in size["chart"]["rounds"][::-1]), None)
        expected = [size["label"], *spans, "-" if last_row is None else str(last_row), str(size["chart"]["rows_left"])]
        assert expected in [cells[at : at + len(expected)] for at in range(len(cells))]


def span(start):
    if start is None:
        return "-"
    row, first, last, _ = start
    return f"{first} to {last}" + ("" if row == 1 else f", row {row}")


NINE = {"gauge": GAUGE, "chart": {"chart": {"rows": TALL}}}


def test_the_sizes_that_start_in_a_column_are_named_below_it(client):
    request = charted({**NINE, "labels": ["S", "M", "L"]}, page="a4")
    answer = told(client, request).json
    written = texts(sheets(drawn(client, request))[0])
    for size in answer["sizes"]:
        for name, called in (("back", "body"), ("sleeve", "sleeve")):
            _, column, *_ = first_starts(size, name)
            [line] = [text for text in written if text.startswith(f"{column}: ")]
            [flag] = [each for each in line.partition(": ")[2].split("; ") if each.endswith(called)]
            assert size["label"] in flag


@pytest.mark.parametrize("page", ["a4", "letter"])
def test_sheets_end_with_a_repeat_where_one_finds_room(client, page):
    found = pieces(drawn(client, charted(NINE, size="5X", page=page)))
    assert len(found) > 1
    assert [piece.rows()[-1].row for piece in found] == ["30"] * len(found)
    assert [piece.rows()[0].row for piece in found] == ["1"] * len(found)


def test_a_repeat_that_finds_no_room_is_cut_between_rows(client):
    tall = {"chart": {"chart": {"rows": TALL * 6}}}
    found = pieces(drawn(client, charted({"gauge": GAUGE, **tall}, size="L", page="letter")))
    rows = [int(row.row) for piece in found for row in piece.rows()]
    assert rows == list(range(1, 181))
    assert len(found) > 2


WIDE = {"gauge": GAUGE, "chart": {"chart": {"rows": [row * 7 for row in TALL]}}}


def test_a_chart_too_wide_for_a_sheet_is_continued_on_others_the_rightmost_columns_first(client):
    found = pieces(drawn(client, charted(WIDE, size="L", page="a4")))
    firsts = [piece.columns[0] for piece in found]
    assert firsts[0] == 1
    assert firsts[: firsts.index(firsts[-1]) + 1] == sorted({*firsts})
    assert [column for piece in found[: len({*firsts})] for column in piece.columns] == list(range(1, 78))


def test_every_sheet_numbers_its_first_and_last_column_and_every_fifth_between(client):
    for piece in pieces(drawn(client, charted(WIDE, size="L", page="a4"))):
        first, last = piece.columns[0], piece.columns[-1]
        fifths = {column for column in piece.columns if column % 5 == 0 and column > first + 1 and column < last - 1}
        for numbers in piece.numbered().values():
            assert {first, last} | fifths == {*numbers}


def test_every_sheet_has_title_and_legend(client):
    request = charted(WIDE, size="L", page="a4")
    request["picture"]["title"] = "Sea wrack"
    for sheet in sheets(drawn(client, request)):
        written = texts(sheet)
        assert "Sea wrack · Chart" in written
        assert {"yarn .", "yarn #", "first stitch of each sleeve"} <= {*written}


def test_the_legend_names_no_colour_and_no_sign_that_is_not_drawn(client):
    rows = ["..#..", ".....", "oo.oo"]
    request = charted({"gauge": GAUGE, "chart": {"chart": {"rows": rows, "first_row": "top"}}}, size="L", page="single")
    # of the rows that are worked none has the third colour
    request["chart"]["first_round"] = 4
    written = texts(sheets(drawn(client, request))[0])
    assert "yarn o" in written
    assert "yarn x" not in written
    assert "round with double increases" not in written


@pytest.mark.parametrize("picture", [{"size": "5X", "page": "letter"}, {"page": "a4"}])
@pytest.mark.parametrize("request_", [WIDE, NINE], ids=["wide", "narrow"])
def test_everything_on_a_sheet_lies_above_its_imprint(client, request_, picture):
    for sheet in sheets(drawn(client, charted(request_, **picture))):
        lowest = max(placed(sheet), key=lambda text: text[0])
        assert lowest[1].startswith(("Pullover grading", "Sheet"))


def placed(element, top=0.0):
    """How far down each text below an element lies within it."""
    for child in element:
        moved = re.match(r"translate\(\S+ ([^)\s]+)\)", child.get("transform", ""))
        here = top + (float(moved[1]) if moved else 0)
        if child.tag.endswith("}text"):
            yield here + float(child.get("y")), child.text
        yield from placed(child, here)


def test_stitches_on_paper_are_wide_enough_to_be_counted(client):
    low = {**WIDE, "gauge": {"stitches": 30, "rows": 27}}
    for request in (WIDE, low, NINE):
        for page in ("a4", "letter"):
            for piece in pieces(drawn(client, charted(request, size="5X", page=page))):
                assert piece.cell[0] / 96 * 25.4 >= 2.2


def test_increase_rounds_are_marked_in_the_margin_doubled_ones_by_two(client):
    double = {"yoke": {"double_body": "if_needed", "depth": 17, "step": 1}, "labels": ["4X"]}
    request = charted({**NINE, **double}, size="4X")
    [size] = told(client, request).json["sizes"]
    steps = {step["round"]: max(step.get("body", 0), step.get("back", 0)) for step in size["yoke"]["increase_rounds"]}
    assert {*steps.values()} >= {1, 2}
    rounds = [number for part, number, *_ in expected_rounds(request, size) if part == "yoke"]
    [piece] = pieces(drawn(client, request))
    assert [rounds[y] for y in piece.signs["increase"] if y < len(rounds)] == [
        number for number in rounds if steps.get(number) == 1
    ]
    assert [rounds[y] for y in piece.signs["double"]] == [
        number for number in rounds for _ in range(2) if steps.get(number) == 2
    ]


def test_rounds_in_which_the_sleeves_decrease_are_marked(client):
    request = charted({**NINE, "chart": {"chart": {"rows": TALL * 4}}}, size="L")
    [size] = [size for size in told(client, request).json["sizes"] if size["label"] == "L"]
    rounds = expected_rounds(request, size)
    [piece] = pieces(drawn(client, request))
    decreases = {*size["sleeve"]["decrease_rounds"]} | {step["round"] for step in size["body"].get("shaping", ())}
    below = [y for y, (part, number, *_) in enumerate(rounds) if part == "below" and number in decreases]
    assert below
    assert piece.signs["decrease"] == below


def test_centres_are_marked_where_they_differ(client):
    chart = {"chart": {"rows": TALL}, "anchor": {"back": 6, "front": 2, "sleeve": 5.5}}
    written = texts(sheets(drawn(client, charted({"gauge": GAUGE, "chart": chart}, size="L")))[0])
    assert {"center of back: column 6", "center of front: column 2"} <= {*written}
    assert "center of sleeve: between columns 5 and 6" in written


def test_the_picture_is_described_with_first_and_last_starts(client):
    request = charted(NINE, size="L")
    [size] = [size for size in told(client, request).json["sizes"] if size["label"] == "L"]
    yoke = size["chart"]["rounds"]
    svg = drawn(client, request).decode()
    described = svg.partition("<desc")[2].partition("</desc>")[0]
    assert "A chart of 11 columns and 30 rows in yarn . and yarn #." in described
    assert f"each sleeve is {yoke[0]['sleeve']['first_column']} in round 1" in described
    assert f"{yoke[-1]['sleeve']['first_column']} in round {len(yoke)}." in described


def test_more_sheets_than_a_picture_has_are_refused(client):
    wide = {"chart": {"rows": ["." * 799 + "#"] * 60}}
    request = charted({"gauge": GAUGE, "chart": wide}, size="L", page="a4")
    response = client.post(CHART, json=request)
    assert response.status_code == 422
    assert [(each["pointer"], each["code"]) for each in response.json["errors"]] == [
        ("/picture/page", "too_many_sheets")
    ]
    request["picture"]["page"] = "single"
    assert client.post(CHART, json=request).status_code == 200


def test_a_chart_of_too_many_stitches_is_refused(client):
    request = charted({"gauge": GAUGE, "chart": {"chart": {"rows": ["." * 800] * 126}}}, page="single")
    response = client.post(CHART, json=request)
    assert [(each["pointer"], each["code"]) for each in response.json["errors"]] == [
        ("/chart/chart", "too_many_stitches")
    ]


def test_a_size_that_cannot_be_knitted_is_shown_by_its_chart_and_its_reason(client):
    request = charted({**NINE, "labels": ["L"], "yoke": {"depth": 5}}, size="L")
    [size] = told(client, request).json["sizes"]
    assert not size["feasible"]
    svg = drawn(client, request)
    assert any("cannot be knitted" in text for text in texts(sheets(svg)[0]))
    assert len(pieces(svg)) == 1


@pytest.mark.parametrize("language", ["en-US", "en-GB", "de"])
def test_words_are_in_the_language_asked(client, language):
    request = charted(NINE, size="L")
    request["print"] = {"language": language}
    [piece] = pieces(drawn(client, request))
    assert piece.rows()[0].words.split()[0] == ("Rumpf" if language == "de" else "body")
