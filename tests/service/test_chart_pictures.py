"""The pictures of a placed chart, read by a general XML parser and measured against layouts on paper."""

import re
from collections import Counter
from xml.etree import ElementTree

import pytest

from tests.service import drawn_front
from tests.service.drawn_charts import pieces

CHART = "/v1/chart-placements/picture"
GARMENT = "/v1/chart-placements/garment-picture"
BOTH = pytest.mark.parametrize("path", [CHART, GARMENT])
SVG = "{http://www.w3.org/2000/svg}"
ARROW = {"rows": ["..#..", ".###.", "#####"], "colours": {".": {"name": "ground"}, "#": {"name": "motif"}}}


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


def texts(svg):
    return [text.text for text in svg.iter(f"{SVG}text")]


def piece(client, *sizes, **options):
    """The chart as it is drawn, read back."""
    response = client.post(CHART, json=request(*sizes, **options))
    assert response.status_code == 200, response.json
    [found] = pieces(response.get_data())
    return found


def starts(found, section):
    """The columns that are marked, from the lowest row on."""
    return [column for _, column in sorted(found.starts[section])]


def drawn_stitches(svg):
    """How many stitches are drawn in each paint: a line one row wide covers as many as it is long."""
    return Counter(
        {path.get("stroke"): sum(map(int, re.findall(r"h(\d+)", path.get("d")))) for path in svg.iterfind(f"{SVG}path")}
    )


def test_the_starting_columns_are_marked_and_told(client):
    """Five stitches about column 3 start with column 1, seven with column 5, across the chart's edge."""
    found = piece(client)
    assert starts(found, "body") == [1, 5, 5]
    assert starts(found, "sleeve") == [1, 1, 1]
    assert [row.words for row in found.rows()] == ["body 1, sleeve 1", "body 5, sleeve 1", "body 5, sleeve 1"]


def test_below_the_split_starts_go_on_to_the_end_of_the_repeat(client):
    """Five stitches from the underarm, one of them a seam, put two columns before each section."""
    below = size(increase_rounds=[], underarm=5, body_rounds=4, sleeve_rounds=4)
    found = piece(client, below)
    # Nine stitches about column 3: 4 5 1 2 3 4 5 1 2.
    assert starts(found, "body") == starts(found, "sleeve") == [1, 1, 1, 4, 4, 4]
    assert [row.round for row in found.rows()] == ["1", "2", "3", "1", "2", "3"]
    assert {"yoke", "divide", "body and", "sleeves"} <= {text.text for text in found.texts}


def test_only_rounds_that_are_knitted_are_drawn(client):
    found = piece(client, size(increase_rounds=[], underarm=5, body_rounds=1, sleeve_rounds=2))
    assert [row.words for row in found.rows()[3:]] == ["body 4, sleeve 4", "sleeve 4"]


def test_front_and_back_are_marked_apart_where_they_differ(client):
    found = piece(client, size(neck={"back": 5, "front": 9, "sleeve": 5}))
    assert starts(found, "back")[0] == 1
    assert starts(found, "front")[0] == 4
    assert found.starts["body"] == set()
    assert found.rows()[0].words == "back 1, front 4, sleeve 1"
    assert piece(client).starts["front"] == set()


def test_body_and_sleeve_are_told_apart_without_colour(client):
    marks = {
        path.get("class"): (re.sub(r"[\d.]+", "", path.get("d")), path.get("stroke"))
        for path in picture(client, CHART).iter(f"{SVG}path")
        if (path.get("class") or "").startswith("starts-")
    }
    body, sleeve = marks["starts-body"], marks["starts-sleeve"]
    assert body[1] == sleeve[1]
    assert body[0] != sleeve[0]


def test_marks_of_starts_and_lines_of_the_grid_are_dark_on_pale(client):
    """So that they show on stitches of every colour."""
    svg = picture(client, CHART)
    dark, pale = (
        {path.get("d") for path in svg.iter(f"{SVG}path") if path.get("stroke") == paint}
        for paint in ("#000000", "#ffffff")
    )
    assert len(dark) >= 4
    assert dark == pale


def test_a_stitch_has_the_proportions_of_the_gauge(client):
    """20 stitches and 30 rows in 10 cm: a stitch is half as wide again as it is high."""
    width, height = piece(client).cell
    assert width / height == pytest.approx(1.5, abs=0.01)


def test_rounds_rows_and_columns_are_numbered(client):
    tall = {"rows": ["....."] * 9 + ["..#.."]}
    found = piece(client, size(rounds=12, body_rounds=20), chart=tall, first_round=2)
    assert [row.round for row in found.rows()] == [*map(str, range(2, 13)), *map(str, range(1, 10))]
    assert [row.row for row in found.rows()] == [*map(str, range(1, 11))] * 2
    assert found.numbered() == {"above": [1, 5], "below": [1, 5]}


def test_the_heading_says_size_gauge_and_chart(client):
    written = texts(picture(client, CHART))
    assert {"Size S.", "Chart: 5 columns and 3 rows."} <= {*written}
    assert any("20 stitches and 30 rounds" in text for text in written)


def test_the_picture_has_a_file_name(client):
    response = client.post(CHART, json=request(size="S"))
    assert response.headers["Content-Disposition"] == "inline; filename=chart-S.svg"


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
    found = piece(client, partial_motifs="plain")
    # five stitches are one motif, and of seven the first is plain
    assert starts(found, "body") == [1, 1, 1]
    assert [row.words for row in found.rows()][:2] == ["body 1, sleeve 1", "body 1 (1 plain), sleeve 1"]
    written = texts(picture(client, CHART, partial_motifs="plain"))
    assert "first whole motif of back and front" in written
    assert "first stitch of back and front" not in written
    assert "(1 plain): so many stitches in the plain color before it" in written


def test_plain_sections_are_called_so(client):
    found = piece(client, minimum_width={"body": 6, "sleeve": 6})
    assert [row.words for row in found.rows()] == ["body plain, sleeve plain", *["body 5, sleeve plain"] * 2]
    assert starts(found, "sleeve") == []
    written = texts(picture(client, CHART, minimum_width={"body": 6, "sleeve": 6}))
    assert "first stitch of back and front" in written
    assert "first stitch of each sleeve" not in written


def test_a_chart_that_no_round_works_is_shown_all_the_same(client):
    assert [row.row for row in piece(client, first_round=5).rows()] == ["1", "2", "3"]
    assert "No round of this size works the chart." in texts(picture(client, CHART, first_round=5))


def test_pictures_show_the_colours_exchanged(client):
    """Nine stitches of the chart's fifteen are motif."""
    coloured = {".": {"name": "a", "hex": "#ffffff"}, "#": {"name": "b", "hex": "#000000"}}
    for exchange, dark in ((None, 9), ([".", "#"], 6)):
        options = {"exchange": exchange} if exchange else {}
        found = piece(client, chart={**ARROW, "colours": coloured}, **options)
        assert Counter(paints[0] for paints in found.stitches.values())["#000000"] == dark


def test_every_colour_of_a_chart_can_have_a_mark_of_its_own(client):
    """Sixty-two colours of one lightness: all but the first are marked, each by another shape or in another place."""
    symbols = "ABCDEFGHIJKLMNOPQRSTUVWXYZabcdefghijklmnopqrstuvwxyz0123456789"
    chart = {"rows": [symbols], "colours": {symbol: {"name": symbol, "hex": "#777777"} for symbol in symbols}}
    options = {"chart": chart, "plain_colour": "A", "half_stitch": "shift"}
    svg = picture(client, CHART, **options)
    patterns = {pattern.get("id"): pattern for pattern in svg.iter(f"{SVG}pattern")}
    shapes = [tuple(sorted((shape.tag, *shape.attrib.items()) for shape in pattern)) for pattern in patterns.values()]
    assert len(shapes) == len({str(shape) for shape in shapes}) == 61
    found = piece(client, **options)
    assert len({tuple(paints) for paints in found.stitches.values()}) == 62


def test_marks_of_colours_are_dots_squares_and_triangles(client):
    """Strokes, crosses and rings mean decreases, purl stitches and yarn overs in charts for knitters."""
    symbols = "ABCDEFGHIJ"
    chart = {"rows": [symbols], "colours": {symbol: {"name": symbol, "hex": "#777777"} for symbol in symbols}}
    svg = picture(client, CHART, chart=chart, plain_colour="A", half_stitch="shift")
    for shape in (shape for pattern in svg.iter(f"{SVG}pattern") for shape in pattern):
        assert shape.tag in (f"{SVG}circle", f"{SVG}path")
        if shape.tag == f"{SVG}circle":
            assert shape.get("fill") != "none"
        else:
            assert shape.get("d").endswith("z")


def test_swatches_of_the_legend_do_not_shrink_with_the_stitches(client):
    wide = {**ARROW, "rows": [row * 40 for row in ARROW["rows"]]}
    swatches = [
        {
            group.get("transform").partition("scale")[2]
            for group in picture(client, CHART, chart=chart, **options).iter(f"{SVG}g")
            if any(rect.get("vector-effect") for rect in group.findall(f"{SVG}rect"))
        }
        for chart, options in ((ARROW, {}), (wide, {}))
    ]
    assert swatches[0] == swatches[1] != set()


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
    assert errors(client, CHART, size(body_rounds=123), chart=wide) == {
        "/sizes/0": "has 100800 stitches to draw, and a picture holds at most 100000."
    }


def test_a_chart_over_too_many_rounds_is_not_drawn(client):
    assert errors(client, CHART, size(rounds=1001)) == {
        "/sizes/0": "has 1001 rounds of the chart to draw, and a picture holds at most 1000."
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
