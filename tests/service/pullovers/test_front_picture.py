"""The front of a pullover, read back from its picture and held against the JSON answer to the same request."""

import re
from itertools import pairwise

import pytest

from tests.oracles.random_pullovers import random_request
from tests.service.drawn_front import PIECES, SVG, bands, classed, colours, points, root, rows
from tests.service.pullovers.answers import DIAMOND, GAUGE

PATH = "/v1/pullovers/front"
OAT, PLUM, RUST = "#e6dcc0", "#552244", "#aa5522"
CHARTED = {
    "chart": {
        "chart": {**DIAMOND, "colours": {".": {"name": "oat", "hex": OAT}, "#": {"name": "plum", "hex": PLUM}}},
        "first_round": 4,
        "line_colour": "#",
        "plain_colour": ".",
    }
}
PLAIN = {"yarn": {"colours": {"o": {"name": "oat", "hex": OAT, "metres_per_100g": 300}}}}
THREE = {
    "yarn": {
        "main_colour": "o",
        "colours": {
            symbol: {"name": name, "hex": hex, "metres_per_100g": 300}
            for symbol, name, hex in (("o", "oat", OAT), ("p", "plum", PLUM), ("r", "rust", RUST))
        },
    },
    "body": {"hem": {"colour": "p"}},
    "sleeve": {"cuff": {"colour": "p"}},
    "band": {"colour": "r", "rib": {"knit": 2, "purl": 2}},
}
GARMENTS = {
    "charted": CHARTED,
    "charted once": {"chart": {**CHARTED["chart"], "chart": {**CHARTED["chart"]["chart"], "repeat": "once"}}},
    "plain": PLAIN,
    "three colours": THREE,
    "dropped": {**CHARTED, "neck": {"lower_front": "both"}},
    "wide front": {**CHARTED, "body": {"front_extra": 4, "levels": [{"measurement": "waist", "below": 14}]}},
    "gauges": {
        **CHARTED,
        "gauges": {
            "plain": {"stitches": 22, "rows": 31},
            "stranded": {"stitches": 23, "rows": 28},
            "rib": {"stitches": 25, "rows": 33},
        },
    },
}


def asked(size="M", **request):
    whole = {"gauge": GAUGE, "body_table": "women", "labels": ["S", "M"], **request}
    if "gauges" in whole:
        del whole["gauge"]
    return {**whole, "picture": {"size": size, **whole.get("picture", {})}}


@pytest.fixture(scope="module")
def draw(client):
    def drawn(**request):
        response = client.post(PATH, json=asked(**request))
        assert response.status_code == 200, response.text
        return root(response.get_data())

    return drawn


@pytest.fixture(scope="module")
def answered(client):
    def answer(**request):
        body = {name: value for name, value in asked(**request).items() if name != "picture"}
        sizes = client.post("/v1/pullovers", json={**body, "include": ["sizes", "chart_rounds"]}).json["sizes"]
        (size,) = [each for each in sizes if each["label"] == "M"]
        return size

    return answer


@pytest.fixture(scope="module", params=GARMENTS.values(), ids=GARMENTS)
def both(request, draw, answered):
    """A garment's picture and its size as JSON."""
    return draw(**request.param), answered(**request.param), request.param


def charted(round, section, chart):
    """The colours of a section in a round, in working order: its chart row from its first column on."""
    placed = section if "stitches" in section else round
    if round["chart_row"] is None or placed["first_column"] is None:
        return ["."] * placed["stitches"]
    worked = chart["rows"][::-1][round["chart_row"] - 1][::-1]
    first = placed["first_column"] - 1
    return [worked[(first + stitch) % len(worked)] for stitch in range(placed["stitches"])]


def in_ink(symbols):
    return [{".": OAT, "#": PLUM}[symbol] for symbol in symbols]


@pytest.mark.parametrize("name", ["charted", "charted once", "wide front", "gauges"])
def test_every_stitch_has_the_colour_that_the_chart_has_where_it_lies(draw, answered, name):
    svg, size, chart = draw(**GARMENTS[name]), answered(**GARMENTS[name]), DIAMOND
    placed, line = size["chart"], ["#"] * size["neck"]["line_stitches"]
    fronts, firsts, seconds = [], [], []
    for round in placed["rounds"]:
        sleeve = charted(round, round["sleeve"], chart)
        fronts.append([*line, *charted(round, round["front"], chart), *line])
        firsts.append(sleeve[len(sleeve) // 2 :])
        seconds.append(sleeve[: (len(sleeve) + 1) // 2])
    assert [colours(row) for row in rows(svg, "front", "yoke")] == [in_ink(row) for row in fronts]
    assert [colours(row) for row in rows(svg, "first-sleeve", "yoke")] == [in_ink(row) for row in firsts]
    assert [colours(row) for row in rows(svg, "second-sleeve", "yoke")] == [in_ink(row) for row in seconds]
    # of an odd underarm the middle stitch is a seam in the plain colour, which either side shows
    seam = ["."] * (size["split"]["underarm"] % 2)
    body = [[*seam, *charted(round, round["front"], chart), *seam] for round in placed["body"]["rounds"]]
    assert [colours(row) for row in rows(svg, "front", "body")] == [in_ink(row) for row in body]
    sleeves = [charted(round, round, chart) for round in placed["sleeve"]["rounds"]]
    first = [[*row[len(row) // 2 :], *seam] for row in sleeves]
    assert [colours(row) for row in rows(svg, "first-sleeve", "sleeve")] == [in_ink(row) for row in first]


def test_a_plain_pullover_is_of_one_colour(draw):
    svg = draw(**PLAIN)
    found = {paint for piece in PIECES for band in bands(svg, piece) for row in band.runs for paint in colours(row)}
    assert found == {OAT}


def test_there_are_as_many_rows_as_rounds(both):
    svg, size, _ = both
    assert len(rows(svg, "front", "yoke")) == size["yoke"]["rounds"]
    assert len(rows(svg, "front", "body")) == size["body"]["rounds"]
    assert len(rows(svg, "front", "hem")) == size["body"]["hem"]["rounds"]
    for sleeve in ("first-sleeve", "second-sleeve"):
        assert len(rows(svg, sleeve, "yoke")) == size["yoke"]["rounds"]
        assert len(rows(svg, sleeve, "sleeve")) == size["sleeve"]["rounds"]
        assert len(rows(svg, sleeve, "cuff")) == size["sleeve"]["cuff"]["rounds"]


def widths(found):
    return [sum(count for _, count, _ in row) for row in found]


def test_ribs_have_half_their_stitches_in_front(both):
    svg, size, _ = both
    hem, cuff = size["body"]["hem"]["stitches"], size["sleeve"]["cuff"]["stitches"]
    more = size["split"]["sections"]["front"] - size["split"]["sections"]["back"]
    assert set(widths(rows(svg, "front", "hem"))) == {(hem + more + 1) // 2}
    for sleeve in ("first-sleeve", "second-sleeve"):
        assert set(widths(rows(svg, sleeve, "cuff"))) == {(cuff + 1) // 2}


def test_the_heights_of_all_rows_are_the_finished_lengths(both):
    svg, size, _ = both
    finished = size["finished"]
    for piece, length in (("front", "body_length"), ("first-sleeve", "sleeve_length")):
        found = bands(svg, piece)
        last = found[-1]
        ends = last.top + len(last.runs) * last.row
        below = finished["depth"]["finished"]["cm"] + finished[length]["finished"]["cm"]
        assert ends == pytest.approx(below, abs=0.02)
        assert [band.top for band in found[1:]] == pytest.approx(
            [band.top + len(band.runs) * band.row for band in found[:-1]], abs=0.01
        )


def test_edges_end_as_wide_as_they_are(both):
    svg, size, _ = both
    for piece, edge, measured in (
        ("front", "hem", size["body"]["hem"]),
        ("first-sleeve", "cuff", size["sleeve"]["cuff"]),
    ):
        last = bands(svg, piece)[-1]
        assert last.kind == edge
        around = last.stitch * measured["stitches"]
        assert around == pytest.approx(measured["circumference"]["cm"], abs=0.02)


def test_a_dropped_front_lacks_what_is_cast_on_later(draw, answered):
    svg, size = draw(**GARMENTS["dropped"]), answered(**GARMENTS["dropped"])
    drop, lines = size["neck"]["front_drop"], 2 * size["neck"]["line_stitches"]
    fronts = [round["front"]["stitches"] for round in size["chart"]["rounds"]]
    neck = size["neck"]["sections"]["front"]
    for number, width in enumerate(widths(rows(svg, "front", "yoke")), 1):
        at_edges = sum(row <= number for row in drop["increase_rows"])
        dropped = 2 * drop["each_side"] + 2 * at_edges + fronts[number - 1] - neck
        assert width == lines + (dropped if number <= drop["rows"] else fronts[number - 1])


def test_the_back_is_seen_as_much_higher_as_it_is_raised(draw, answered):
    svg, size = draw(**PLAIN), answered(**PLAIN)
    (inside,) = classed(svg, "inside")
    edge = points(inside.find(f"{SVG}polygon"))
    # its upper edge in the middle, where the front's is at 0
    middle = [y for x, y in edge if abs(x) < 1 and y < -0.5]
    assert middle
    assert middle == pytest.approx([-size["neck"]["back_raise"]["height"]["cm"]] * len(middle), abs=0.02)


def test_the_back_is_level_with_the_front_where_nothing_lowers_it(draw):
    svg = draw(**PLAIN, neck={"lower_front": "none"})
    (inside,) = classed(svg, "inside")
    assert max(abs(y) for x, y in points(inside.find(f"{SVG}polygon")) if abs(x) < 1) < 0.01
    assert all(not rows(svg, piece, "short_rows") for piece in PIECES)


def test_ribs_are_columns_of_knit_and_purl_stitches(draw):
    svg = draw(**PLAIN, body={"hem": {"rib": {"knit": 3, "purl": 1}}})
    for band in (band for band in bands(svg, "front") if band.kind == "hem"):
        lefts = sorted(left for left, *_ in band.purled)
        assert {(top, width, height) for _, top, width, height in band.purled} == {(0, 1, len(band.runs))}
        assert {after - before for before, after in pairwise(lefts)} == {4}


def columns(svg, name, kind):
    (group,) = classed(svg, name)
    return sum(path.get("d").count("z") for path in classed(group, kind, "path"))


def test_the_neckband_has_every_stitch_of_its_own_before_the_neck_or_behind(both):
    svg, size, _ = both
    names = ("band", "band-behind")
    knit, purl = (sum(columns(svg, name, kind) for name in names) for kind in ("knit", "purl"))
    assert knit + purl == size["band"]["stitches"]
    assert abs(columns(svg, "band", "knit") - columns(svg, "band", "purl")) <= 2


def test_each_edge_has_its_own_colour(draw):
    svg = draw(**THREE)
    assert {paint for row in rows(svg, "front", "hem") for paint in colours(row)} == {PLUM}
    assert {paint for row in rows(svg, "first-sleeve", "cuff") for paint in colours(row)} == {PLUM}
    assert {paint for row in rows(svg, "second-sleeve", "cuff") for paint in colours(row)} == {PLUM}
    assert {paint for row in rows(svg, "front", "body") for paint in colours(row)} == {OAT}
    for name in ("band", "band-behind"):
        (group,) = classed(svg, name)
        assert group.find(f"{SVG}polygon").get("fill") == RUST


def test_the_charts_hex_counts_before_the_yarns(draw):
    colours_of_chart = {".": {"name": "oat", "hex": OAT}, "#": {"name": "plum"}}
    chart = {"chart": {**DIAMOND, "colours": colours_of_chart}}
    yarn = {"colours": {symbol: {"hex": RUST, "metres_per_100g": 300} for symbol in ".#"}}
    svg = draw(chart=chart, yarn=yarn)
    assert {paint for row in rows(svg, "front", "body") for paint in colours(row)} == {OAT, RUST}


def texts(svg):
    return [text.text for text in svg.iter(f"{SVG}text")]


def test_the_legend_names_the_colours_of_the_edges(draw):
    found = texts(draw(**THREE))
    assert {"oat", "hem and cuffs: plum", "neckband: rust", "inside of the back"} <= {*found}
    assert "plum" not in found


def test_nobody_speaks_of_the_colour_of_a_pullover_that_has_only_one_without_a_name(draw):
    svg = draw()
    assert "hem, cuffs, and neckband, ribbed" in texts(svg)
    assert "yarn" not in " ".join([*texts(svg), svg.find(f"{SVG}desc").text])


def test_the_swatches_of_the_legend_are_as_large_at_every_gauge(draw):
    sizes = [
        [swatch.get("transform") for swatch in classed(draw(gauge={"stitches": stitches, "rows": 30}), "swatch")]
        for stitches in (12, 30)
    ]
    assert sizes[0] == sizes[1]
    assert sizes[0]


def test_the_scale_is_that_of_the_garment(draw):
    svg = draw(**PLAIN)
    (garment,) = [
        each
        for each in svg.iter(f"{SVG}g")
        if any(classed(one, "front") for one in each) and "scale" in each.get("transform", "")
    ]
    scale = float(garment.get("transform").rpartition("scale(")[2].rstrip(")"))
    lengths = []
    for bar in classed(svg, "scale", "path"):
        left, right = re.fullmatch(r"M(\S+) .*H([\d.]+)m.*", bar.get("d")).groups()
        lengths.append((float(right) - float(left)) / scale)
    assert lengths == pytest.approx([10, 10.16], abs=0.02)
    assert {"10 cm", "4 in"} <= {*texts(svg)}


def test_the_outline_is_dark_upon_pale(draw):
    for name in (*PIECES, "band"):
        (group,) = classed(draw(**PLAIN), name)
        halo, outline = (
            [each for each in group if each.get("class") == kind and each.tag != f"{SVG}g"]
            for kind in ("halo", "outline")
        )
        assert len(halo) == len(outline) == 1
        assert halo[0].get("points") == outline[0].get("points")
        assert [*group].index(halo[0]) < [*group].index(outline[0])
        assert float(halo[0].get("stroke-width")) > float(outline[0].get("stroke-width")) + 1
        assert (halo[0].get("stroke"), outline[0].get("stroke")) == ("#ffffff", "currentColor")


def test_beside_the_stitches_of_a_row_lie_more_of_their_colour(draw):
    """So that an evened edge shows no paper beside a row that has fewer stitches."""
    (group,) = classed(draw(**PLAIN, yoke={"seam": "purl"}), "second-sleeve")
    for beyond in classed(group, "beyond"):
        assert {path.get("stroke") for path in beyond.iter(f"{SVG}path")} == {OAT}


def test_what_it_shows_is_said_in_words(draw, answered):
    size = answered(**THREE)
    said = draw(**THREE).find(f"{SVG}desc").text
    assert "oat, plum, and rust" in said
    assert f"Hem: {size['body']['hem']['rounds']} rounds of rib" in said
    assert "in rust." in said
    assert f"{size['split']['sections']['front']} stitches between the raglan lines" in said


def test_a_size_that_cannot_be_knitted_is_told_why(draw):
    svg = draw(sleeve={"length": 12, "plain_before": 90})
    assert any(text.startswith("Size M cannot be knitted as asked") for text in texts(svg))
    assert classed(svg, "front") == []


def test_a_front_of_too_many_stitches_is_refused_where_the_size_is_named(client):
    response = client.post(PATH, json=asked(gauge={"stitches": 60, "rows": 80}))
    assert response.status_code == 422
    assert [error["pointer"] for error in response.json["errors"]] == ["/picture/size"]


def test_the_digest_is_that_of_the_same_numbers_in_json(client):
    body = asked(**CHARTED)
    numbers = client.post("/v1/pullovers", json={name: value for name, value in body.items() if name != "picture"}).json
    assert numbers["meta"]["input_digest"] in client.post(PATH, json=body).text


def test_random_pullovers_are_drawn(client):
    """Whatever can be knitted, with as many rows as it has rounds."""
    drawn = 0
    for seed in range(60):
        request = {**random_request(seed)}
        request.pop("include", None)
        numbers = client.post("/v1/pullovers", json={**request, "include": ["sizes"]})
        if numbers.status_code != 200:
            continue
        size = numbers.json["sizes"][-1]
        response = client.post(PATH, json={**request, "picture": {"size": size["label"], "page": "a4"}})
        if response.status_code == 422:
            assert response.json["errors"][0]["code"] == "too_many_stitches"
            continue
        assert response.status_code == 200, (seed, response.text)
        svg = root(response.get_data())
        if size["feasible"]:
            drawn += 1
            found = [band.count for band in bands(svg, "front") if band.kind == "body"]
            assert sum(found) == size["body"]["rounds"], seed
    assert drawn > 20


def test_a_long_legend_goes_on_on_sheets_of_its_own(draw):
    names = {chr(0x100 + place): f"{place} " + "colour " * 8 for place in range(34)}
    chart = {"rows": ["".join(names)], "colours": {symbol: {"name": name.strip()} for symbol, name in names.items()}}
    found = texts(draw(chart={"chart": chart}, picture={"page": "a4"}))
    assert [line for line in found if line.startswith("Sheet")] == ["Sheet 1 of 2", "Sheet 2 of 2"]
    assert {name.strip() for name in names.values()} <= {*found}


def test_nothing_is_masked(draw):
    """A pattern within a mask makes a printed page some twenty times as large."""
    assert [*draw(**CHARTED).iter(f"{SVG}mask")] == []
