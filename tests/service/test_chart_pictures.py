"""The pictures of a placed chart, read by a general XML parser and measured against layouts on paper."""

import re
from collections import Counter
from xml.etree import ElementTree

import pytest

from tests.service import drawn_front

CHART = "/v1/chart-placements/picture"
GARMENT = "/v1/chart-placements/garment-picture"
BOTH = pytest.mark.parametrize("path", [CHART, GARMENT])
SVG = "{http://www.w3.org/2000/svg}"
ARROW = {"rows": ["..#..", ".###.", "#####"], "colours": {".": {"name": "ground"}, "#": {"name": "motif"}}}
COLUMNS = 5


def size(label="S", **counts):
    return {
        "label": label,
        "rounds": 3,
        "neck": {"back": 5, "front": 5, "sleeve": 5},
        "increase_rounds": [{"round": 2, "body": 1}],
        **counts,
    }


def request(*sizes, chart=ARROW, **options):
    return {
        "gauge": {"stitches": 20, "rows": 30},
        "chart": chart,
        "anchor": {"back": 3, "front": 3, "sleeve": 3},
        "plain_colour": ".",
        "line_stitches": 0,
        "sizes": list(sizes) or [size()],
        **options,
    }


def picture(client, path, *sizes, **options):
    response = client.post(path, json=request(*sizes, **options))
    assert response.status_code == 200, response.json
    assert response.content_type == "image/svg+xml"
    return ElementTree.fromstring(response.get_data())


def errors(client, path, *sizes, **options):
    response = client.post(path, json=request(*sizes, **options))
    assert response.status_code == 422
    return {error["pointer"]: error["detail"] for error in response.json["errors"]}


def grid(svg):
    """The width and height of the stitches' area, which the chart is clipped to."""
    [rect] = svg.iterfind(f".//{SVG}clipPath/{SVG}rect")
    return float(rect.get("width")), float(rect.get("height"))


def traces(svg, kind):
    """The (round from the lowest, column from the right) of every point of the lines of a kind."""
    width, height = grid(svg)
    [scale] = {use.get("transform").rpartition("scale(")[2].rstrip(")") for use in svg.iter(f"{SVG}use")}
    across, along = map(float, scale.split())
    found = []
    for line in svg.iter(f"{SVG}polyline"):
        if line.get("class") == f"starts-{kind}":
            points = [tuple(map(float, point.split(","))) for point in line.get("points").split()]
            found.append([(round((height - y) / along + 0.5), round((width - x) / across + 0.5)) for x, y in points])
    return found


def texts(svg):
    return [text.text for text in svg.iter(f"{SVG}text")]


def drawn_stitches(svg):
    """How many stitches are drawn in each paint: a line one row wide covers as many as it is long."""
    return Counter(
        {path.get("stroke"): sum(map(int, re.findall(r"h(\d+)", path.get("d")))) for path in svg.iterfind(f"{SVG}path")}
    )


def test_the_trace_passes_through_the_starting_columns(client):
    """Five stitches about column 3 start with column 1, seven with column 5, across the chart's edge."""
    svg = picture(client, CHART)
    assert traces(svg, "body") == [[(1, 1)], [(2, 5), (3, 5)]]
    assert traces(svg, "sleeve") == [[(1, 1), (2, 1), (3, 1)]]


def test_below_the_split_each_part_is_traced_on(client):
    """Five stitches from the underarm, one of them a seam, put two columns before each section."""
    below = size(increase_rounds=[], underarm=5, body_rounds=3, sleeve_rounds=3)
    svg = picture(client, CHART, below)
    # Nine stitches about column 3: 4 5 1 2 3 4 5 1 2.
    assert traces(svg, "body") == [[(1, 1), (2, 1), (3, 1)], [(4, 4), (5, 4), (6, 4)]]
    assert traces(svg, "sleeve") == [[(1, 1), (2, 1), (3, 1)], [(4, 4), (5, 4), (6, 4)]]
    assert {"yoke", "divide", "body and", "sleeves"} <= set(texts(svg))


def test_front_and_back_are_traced_apart_where_they_differ(client):
    svg = picture(client, CHART, size(neck={"back": 5, "front": 9, "sleeve": 5}))
    assert traces(svg, "body")[0][0] == (1, 1)
    assert traces(svg, "front")[0][0] == (1, 4)
    assert traces(picture(client, CHART), "front") == []


def test_body_and_sleeve_are_told_apart_without_colour(client):
    lines = {
        line.get("class"): (line.get("stroke-dasharray"), line.get("marker-mid"), line.get("stroke"))
        for line in picture(client, CHART).iter(f"{SVG}polyline")
        if line.get("class")
    }
    body, sleeve = lines["starts-body"], lines["starts-sleeve"]
    assert body[2] == sleeve[2] == "currentColor"
    assert body[0] != sleeve[0]
    assert body[1] != sleeve[1]


def test_a_stitch_has_the_proportions_of_the_gauge(client):
    """20 stitches and 30 rows in 10 cm: a stitch is half as wide again as it is high."""
    width, height = grid(picture(client, CHART))
    assert (width / COLUMNS) / (height / 3) == pytest.approx(1.5, abs=0.01)


def test_rounds_rows_and_columns_are_numbered(client):
    tall = {"rows": ["....."] * 9 + ["..#.."]}
    svg = picture(client, CHART, size(rounds=12), chart=tall, first_round=2)
    numbers = [text for text in texts(svg) if text.isdecimal()]
    # Left, the yoke's rounds 2 to 12 and the body's 1 to 9; right, rows 1 to 10 twice; below, columns.
    assert Counter(numbers) == Counter(["2", "5", "10", "1", "5", "1", "5", "10", "1", "5", "10", "1", "5"])


@BOTH
def test_colours_without_hex_are_greys_of_the_text_colour(client, path):
    paths = list(picture(client, path).iter(f"{SVG}path"))
    # of the stitches, each a unit high
    assert {path.get("stroke") for path in paths if path.get("stroke-width") == "1"} == {"currentColor"}


@BOTH
def test_colours_are_drawn_as_their_hex(client, path):
    coloured = {".": {"name": "a", "hex": "#F0E6D2"}, "#": {"name": "b", "hex": "#203040"}}
    svg = picture(client, path, chart={**ARROW, "colours": coloured})
    assert {"#f0e6d2", "#203040"} <= {path.get("stroke") for path in svg.iter(f"{SVG}path")}


def test_two_colours_of_one_lightness_differ_by_a_mark(client):
    """Both are half as light as white (CIE L* about 53 and 54): alike in black and white."""
    alike = {".": {"name": "red", "hex": "#ff0000"}, "#": {"name": "grey", "hex": "#828282"}}
    svg = picture(client, CHART, chart={**ARROW, "colours": alike})
    apart = {".": {"name": "a", "hex": "#f0e6d2"}, "#": {"name": "b", "hex": "#203040"}}
    assert len(marks(svg)) == 1
    assert marks(picture(client, CHART, chart={**ARROW, "colours": apart})) == set()


def marks(svg):
    """The patterns of marks that stitches are drawn in."""
    strokes = {path.get("stroke") or "" for path in svg.iter(f"{SVG}path")}
    return {stroke for stroke in strokes if "mark" in stroke}


@BOTH
def test_the_picture_has_a_title_and_a_description(client, path):
    svg = picture(client, path)
    named = svg.get("aria-labelledby").split()
    assert svg.get("role") == "img"
    assert [svg.find(f"{SVG}{tag}").get("id") for tag in ("title", "desc")] == named
    assert svg.find(f"{SVG}title").text.endswith("size S")
    assert "ground and motif" in svg.find(f"{SVG}desc").text


@BOTH
def test_text_from_the_request_stays_text(client, path):
    label, name = '<b>"S" & \uffff', "</title><script>alert(1)</script>"
    svg = picture(client, path, size(label), chart={**ARROW, "colours": {**ARROW["colours"], ".": {"name": name}}})
    assert svg.find(f"{SVG}title").text.endswith('<b>"S" & \ufffd')
    assert name in texts(svg)
    assert svg.find(f".//{SVG}script") is None


def test_the_front_shows_every_stitch_of_front_body_and_half_sleeves(client):
    """A front of 5, 7 and 7, half sleeves of 3 with the middle stitch, and half a body of 7 + 4 in two rounds."""
    below = size(underarm=4, body_rounds=2)
    svg = picture(
        client,
        GARMENT,
        below,
        chart={**ARROW, "colours": {".": {"name": "a", "hex": "#ffffff"}, "#": {"name": "b", "hex": "#000000"}}},
    )
    total = Counter(colour for _, row in drawn_front.drawn(svg) for colour in drawn_front.colours(row))
    # As seen: front ##### ..###.. ...#...; half a sleeve ### ##. #..; body ########### ##..###..##.
    front, sleeve, body = 5 + 3 + 1, 3 + 2 + 1, 11 + 7
    assert total["#000000"] == front + 2 * sleeve + body
    assert total.total() == (5 + 7 + 7) + 2 * (3 + 3 + 3) + (11 + 11)


SEAMED = size(neck={"back": 9, "front": 9, "sleeve": 9}, increase_rounds=[], underarm=3, body_rounds=2, sleeve_rounds=2)
"""Each underarm's three stitches are its seam, two of which are seen on either face: the middle one is on both."""
PURLED = {"seam": "purl", "seam_stitches": {"body": 3, "sleeve": 3}}


def purl_stitches(svg):
    """How many stitches are drawn as purl: rectangles of stitches and rows."""
    boxes = [box for piece in drawn_front.PIECES for band in drawn_front.bands(svg, piece) for box in band.purled]
    return sum(width * height for _, _, width, height in boxes)


def test_purled_seams_are_drawn_at_the_sides_and_under_the_sleeves(client):
    svg = picture(client, GARMENT, SEAMED, **PURLED)
    # two stitches in two rounds, at both sides of the body and under both sleeves
    assert purl_stitches(svg) == 2 * 2 * 4
    assert "seam stitches, purled" in texts(svg)
    assert "under the sleeves are purl stitches" in svg.find(f"{SVG}desc").text


def test_a_purl_stitch_shows_no_legs_of_a_knit_one(client):
    """The rectangles of the purl stitches stand in the knit stitches' shape a second time, which leaves them out."""
    svg = picture(client, GARMENT, SEAMED, **PURLED)
    knit = [path for path in svg.iter(f"{SVG}path") if "-knit-" in (path.get("fill") or "")]
    assert {path.get("fill-rule") for path in knit} == {"evenodd"}
    # without the first one, which is the whole
    holes = [box for path in knit for box in re.findall(r"h2v2h-2z", path.get("d"))]
    assert len(holes) == 4


@pytest.mark.parametrize(
    "options", [{**PURLED, "seam": "knit"}, {"seam": "purl", "seam_stitches": {"body": 0, "sleeve": 0}}]
)
def test_without_purl_stitches_there_is_no_word_of_them(client, options):
    svg = picture(client, GARMENT, {**SEAMED, "underarm": 4}, half_stitch="shift", **options)
    assert purl_stitches(svg) == 0
    assert "seam stitches, purled" not in texts(svg)
    assert "purl" not in svg.find(f"{SVG}desc").text


def test_the_starts_of_whole_motifs_are_called_so(client):
    svg = picture(client, CHART, partial_motifs="plain")
    # five stitches are one motif, and of seven the first is plain
    assert traces(svg, "body") == [[(1, 1), (2, 1), (3, 1)]]
    assert "first whole motif of back and front" in texts(svg)
    assert "first stitch of back and front" not in texts(svg)


def test_pictures_show_the_colours_exchanged(client):
    """Nine stitches of the chart's fifteen are motif."""
    coloured = {".": {"name": "a", "hex": "#ffffff"}, "#": {"name": "b", "hex": "#000000"}}
    for exchange, dark in ((None, 9), ([".", "#"], 6)):
        options = {"exchange": exchange} if exchange else {}
        svg = picture(client, CHART, chart={**ARROW, "colours": coloured}, **options)
        [repeat] = [group for group in svg.iter(f"{SVG}g") if (group.get("id") or "").endswith("-repeat")]
        assert drawn_stitches(repeat)["#000000"] == dark


@BOTH
def test_the_size_drawn_is_the_one_named_or_else_the_first(client, path):
    sizes = (size("S"), size("M"))
    assert picture(client, path, *sizes).find(f"{SVG}title").text.endswith("size S")
    assert picture(client, path, *sizes, size="M").find(f"{SVG}title").text.endswith("size M")
    assert errors(client, path, *sizes, size="L") == {"/size": "'L' is the label of no size."}


@BOTH
def test_a_request_that_contradicts_itself_is_refused_as_by_the_placement(client, path):
    assert "/anchor/back" in errors(client, path, anchor={"back": 9, "front": 3, "sleeve": 3})


def test_a_chart_of_too_many_stitches_is_not_drawn(client):
    wide = {"rows": ["." * 800] * 126}
    assert errors(client, CHART, chart=wide) == {
        "/chart": "has 100800 stitches to draw, and a picture holds at most 100000."
    }


def test_a_front_of_too_many_stitches_is_not_drawn(client):
    """Half of 2 x 1001 + 2 x 5 stitches a round, 100 times."""
    wide = size(rounds=100, neck={"back": 1001, "front": 1001, "sleeve": 5}, increase_rounds=[])
    assert errors(client, GARMENT, wide) == {
        "/sizes/0": "has 100600 stitches to draw, and a picture holds at most 100000."
    }


@BOTH
@pytest.mark.parametrize(
    "odd",
    [
        size(neck={"back": 0, "front": 0, "sleeve": 0}, increase_rounds=[]),
        size(rounds=1, increase_rounds=[]),
        size(rounds=400, increase_rounds=[], body_rounds=400, sleeve_rounds=400),
        size(increase_rounds=[{"round": n, "back": 2, "front": 2, "sleeve": 2} for n in (1, 2, 3)]),
    ],
    ids=["no stitches", "one round", "very long", "very slanted"],
)
def test_odd_shapes_are_drawn_all_the_same(client, path, odd):
    picture(client, path, odd, half_stitch="shift")
    picture(client, path, odd, half_stitch="shift", first_round=5, chart={**ARROW, "repeat": "once"})


@BOTH
def test_a_picture_is_an_svg_and_nothing_else(client, path):
    assert client.post(path, json=request(), headers={"Accept": "image/*"}).status_code == 200
    assert client.post(path, json=request(), headers={"Accept": "text/html"}).status_code == 406


def test_a_front_is_headed_by_its_size_its_gauge_and_its_counts(client):
    """Cast on 5 + 5 + 2 x 5; with an increase at every body edge and 4 underarm stitches 2 x 7 + 2 x 4, and 5 + 4."""
    svg = picture(client, GARMENT, size(underarm=4, body_rounds=2), half_stitch="shift")
    assert texts(svg)[0] == "The front, size S"
    assert "Without neckband, hem and cuffs." in texts(svg)
    assert any("20 stitches and 30 rounds to 10 cm" in line for line in texts(svg))
    assert "Stitches: cast on 20, body 22, each sleeve 9; yoke of 3 rounds." in texts(svg)


def test_the_digest_of_a_front_is_that_of_the_placement(client):
    numbers = client.post("/v1/chart-placements", json=request()).json
    assert any(numbers["meta"]["input_digest"] in line for line in texts(picture(client, GARMENT)))


def test_a_front_is_saved_under_the_name_of_its_size(client):
    for options, name in (({}, "front-S.svg"), ({"size": "M"}, "front-M.svg")):
        response = client.post(GARMENT, json=request(size("S"), size("M"), **options))
        assert response.headers["Content-Disposition"] == f"inline; filename={name}"


def test_rounds_with_the_chart_and_without_it_have_their_own_gauge(client):
    """Of three rounds the first and the last are plain, 40 rows to 10 cm."""
    gauge = {"stitches": 20, "rows": 40}
    once = {"rows": ["..#.."], "repeat": "once"}
    svg = picture(client, GARMENT, chart=once, first_round=2, plain_gauge=gauge)
    found = drawn_front.bands(svg, "front")
    assert [(band.row, band.count) for band in found] == [(0.25, 1), (0.33333, 1), (0.25, 1)]
    assert [band.top for band in found] == [0, 0.25, 0.5833]
