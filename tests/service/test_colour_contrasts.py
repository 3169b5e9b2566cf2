"""Colours compared over HTTP: the answer, its picture, and the word that placed charts and pullovers get too."""

import re
from base64 import b64encode
from io import BytesIO
from xml.etree import ElementTree

import pytest
from PIL import Image

CONTRASTS = "/v1/colour-contrasts"
PICTURE = "/v1/colour-contrasts/picture"
SVG = "{http://www.w3.org/2000/svg}"
# L* 100, 53.24 and 53.19 (colour reference pages, from memory): red is as light as the grey 127
COLOURS = {
    ".": {"name": "white", "hex": "#FFFFFF"},
    "r": {"name": "red", "hex": "#ff0000"},
    "g": {"name": "grey", "hex": "#7f7f7f"},
}
ROWS = ["rg..", "...."]


def answer(client, **request):
    response = client.post(CONTRASTS, json={"colours": COLOURS, **request})
    assert response.status_code == 200, response.json
    return response.json


def errors(client, **request):
    response = client.post(CONTRASTS, json={"colours": COLOURS, **request})
    assert response.status_code == 422
    return {error["pointer"]: error["code"] for error in response.json["errors"]}


def low(answer):
    return [(each["message"], each["pointer"]) for each in answer["warnings"] if each["code"] == "low_contrast"]


def png(*rows):
    """Rows of pixels by the symbols of COLOURS, as a file in base64."""
    picture = Image.new("RGB", (len(rows[0]), len(rows)))
    picture.putdata([tuple(bytes.fromhex(COLOURS[symbol]["hex"][1:])) for row in rows for symbol in row])
    file = BytesIO()
    picture.save(file, "PNG")
    return b64encode(file.getvalue()).decode()


def test_every_colour_has_its_lightness_and_its_grey(client):
    assert answer(client)["colours"] == {
        ".": {"name": "white", "hex": "#ffffff", "lightness": 100, "grey": "#ffffff"},
        "g": {"name": "grey", "hex": "#7f7f7f", "lightness": 53.2, "grey": "#7f7f7f"},
        "r": {"name": "red", "hex": "#ff0000", "lightness": 53.2, "grey": "#7f7f7f"},
    }


def test_every_two_colours_are_compared(client):
    assert answer(client)["pairs"] == [
        {"colours": [".", "g"], "difference": 46.8, "reads": "clearly"},
        {"colours": [".", "r"], "difference": 46.8, "reads": "clearly"},
        {"colours": ["g", "r"], "difference": 0.0, "reads": "hardly"},
    ]


def test_a_chart_tells_where_a_pair_meets_that_hardly_reads(client):
    """Red, in column 4 of row 2, follows the grey of column 3."""
    pairs = answer(client, chart={"rows": ROWS})["pairs"]
    assert [pair.get("meetings") for pair in pairs] == [
        None,
        None,
        {"side_by_side": 1, "one_above_other": 0, "places": [{"row": 2, "column": 3, "direction": "next_column"}]},
    ]


def test_a_word_names_both_colours_and_how_little_they_differ(client):
    dark = {"a": {"name": "ink", "hex": "#000000"}, "b": {"name": "soot", "hex": "#111111"}}
    # L* of the grey 17 is 5.06 (from memory)
    [(message, pointer)] = low(answer(client, colours=dark))
    assert re.match(r'"ink" and "soot" .* 5\.1\. ', message)
    assert pointer == "/colours/b"


def test_colours_of_a_chart_are_those_of_the_request_whatever_it_has_itself(client):
    own = {symbol: {"name": "own", "hex": "#123456"} for symbol in ".rg"}
    assert (
        answer(client, chart={"rows": ROWS, "colours": own})["pairs"] == answer(client, chart={"rows": ROWS})["pairs"]
    )


def test_a_png_has_the_symbols_that_its_colours_have_or_those_of_reading_it(client):
    told = {"png": png(*ROWS), "colours": COLOURS}
    assert answer(client, chart=told)["pairs"] == answer(client, chart={"rows": ROWS})["pairs"]
    # red is met first, then grey and white
    lettered = {"A": COLOURS["r"], "B": COLOURS["g"], "C": COLOURS["."]}
    [pair, *_] = answer(client, colours=lettered, chart={"png": png(*ROWS)})["pairs"]
    assert (pair["colours"], pair["meetings"]["side_by_side"]) == (["A", "B"], 1)


def test_a_symbol_without_a_colour_and_a_colour_without_hex_are_refused(client):
    assert errors(client, chart={"rows": ["r.", "x."]}) == {"/chart/rows/1": "unknown_symbol"}
    assert errors(client, colours={"r": {"name": "red"}}) == {"/colours/r/hex": "required"}


def test_a_chart_and_pullovers_give_the_same_word(client):
    gauge = {"stitches": 22, "rows": 31}
    chart = {"chart": {"rows": ["rg.", "..."], "colours": COLOURS}}
    sizes = [{"label": "S", "rounds": 4, "neck": {"back": 5, "front": 5, "sleeve": 5}}]
    placed = client.post(
        "/v1/chart-placements",
        json={"gauge": gauge, **chart, "anchor": {"back": 2, "front": 2, "sleeve": 2}, "sizes": sizes},
    ).json
    pullover = client.post("/v1/pullovers", json={"gauge": gauge, "labels": ["M"], "chart": chart}).json
    [(message, pointer)] = low(placed)
    assert pointer == "/chart"
    assert low(pullover) == [(message, "/chart/chart")]
    assert low(answer(client, chart={"rows": ["rg.", "..."]}))[0][0] == message


def drawn(client, **request):
    response = client.post(PICTURE, json={"colours": COLOURS, **request})
    assert response.status_code == 200, response.json
    assert response.content_type == "image/svg+xml"
    return ElementTree.fromstring(response.get_data())


def stitches(group):
    """How many stitches are drawn in each paint."""
    return {
        path.get("stroke"): sum(map(int, re.findall(r"h(\d+)", path.get("d")))) for path in group.iter(f"{SVG}path")
    }


def test_the_chart_is_drawn_in_its_colours_and_in_the_greys_of_their_lightness(client):
    svg = drawn(client, chart={"rows": ROWS})
    coloured, greyed = (group for group in svg.iter(f"{SVG}g") if group.get("transform", "").startswith("scale"))
    assert stitches(coloured) == {"#ffffff": 6, "#ff0000": 1, "#7f7f7f": 1}
    greys = [(path.get("stroke"), path.get("d")) for path in greyed.iter(f"{SVG}path")]
    assert sorted(paint for paint, _ in greys) == ["#7f7f7f", "#7f7f7f", "#ffffff"]
    assert sorted(d for _, d in greys) == sorted(path.get("d") for path in coloured.iter(f"{SVG}path"))


def test_the_legend_has_the_lightness_of_each_colour_worked_and_the_pairs_that_hardly_read_apart(client):
    colours = {**COLOURS, "x": {"name": "black", "hex": "#000000"}}
    texts = [text.text for text in drawn(client, colours=colours, chart={"rows": ROWS}).iter(f"{SVG}text")]
    # the last line is the imprint
    assert texts[-5:-1] == [
        "white: lightness 100 of 100",
        "grey: lightness 53.2 of 100",
        "red: lightness 53.2 of 100",
        "grey and red hardly read apart: they differ by 0.",
    ]


def test_without_a_chart_the_colours_are_shown_beside_their_greys(client):
    svg = drawn(client)
    assert not list(svg.iter(f"{SVG}path"))
    swatches = [rect.get("fill") for rect in svg.iter(f"{SVG}rect")]
    assert swatches == ["#ffffff", "#ffffff", "#7f7f7f", "#7f7f7f", "#ff0000", "#7f7f7f"]


@pytest.mark.parametrize("chart", [{"rows": ROWS}, None])
def test_everything_drawn_lies_within_the_page(client, chart):
    long = {symbol: {**colour, "name": "w" * 60} for symbol, colour in COLOURS.items()}
    svg = drawn(client, colours=long, **({"chart": chart} if chart else {}))
    width, height = float(svg.get("width")), float(svg.get("height"))
    # a letter is about 6 pixels wide at this size
    assert width > 60 * 6 + 78
    assert max(y for y, _ in placed(svg)) < height
    assert all(any(name in text.text for _, text in placed(svg)) for name in ("w" * 60, "sha256:"))


def placed(element, top=0.0):
    """Every text below an element, with how far down it lies."""
    for child in element:
        moved = re.match(r"translate\(\S+ (\S+)\)", child.get("transform", ""))
        here = top + (float(moved[1]) if moved else 0)
        if child.tag == f"{SVG}text":
            yield here + float(child.get("y")), child
        yield from placed(child, here)


def test_a_chart_too_large_to_draw_is_compared_all_the_same(client):
    large = {"rows": ["rg" * 400] * 126}
    assert answer(client, chart=large)["pairs"][2]["meetings"]["side_by_side"] == 800 * 126
    response = client.post(PICTURE, json={"colours": COLOURS, "chart": large})
    assert [(each["pointer"], each["code"]) for each in response.json["errors"]] == [("/chart", "too_many_stitches")]
