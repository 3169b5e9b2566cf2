"""Strands held together, and yarn by colour and size, over HTTP."""

from fractions import Fraction

from flask.testing import FlaskClient

STRANDS = "/v1/strand-combinations"
ESTIMATES = "/v1/yarn-estimates"
SUBSTITUTIONS = "/v1/yarn-substitutions"


def estimate(**changes):
    weighed = {"metres_per_100g": 200, "swatch_grams": 10, "swatch_stitches": 1000}
    return {"yarns": {"oat": weighed}, "sizes": [{"label": "S", "stitches": {"oat": 40000}}], **changes}


def pointers(answer):
    assert answer.status_code == 422
    return [error["pointer"] for error in answer.json["errors"]]


def test_two_unequal_strands_are_never_averaged(client: FlaskClient) -> None:
    # 1/400 + 1/840 metres per 100 g, from the sum of linear densities in tex (ISO 1144 for the unit)
    answer = client.post(STRANDS, json={"strands": [{"metres": 400}, {"metres": 210, "grams": 25}]}).json
    assert answer["metres_per_100g"] == 270.97
    assert answer["tex"] == 369.05
    assert [strand["weight_share"] for strand in answer["strands"]] == [0.6774, 0.3226]


def test_every_chart_says_its_category_of_the_combination(client: FlaskClient) -> None:
    # 200 m per 100 g lies in the magazine's 182 to 242 (light) and in both retail guides' DK or worsted
    answer = client.post(STRANDS, json={"strands": [{"metres": 400}, {"metres": 400}]}).json
    assert [(match["source"], match["category"]) for match in answer["categories"]] == [
        ("spinners_chart", 3),
        ("uk_trade", 3),
        ("uk_trade", 4),
        ("southern_usage", 4),
    ]
    assert {source["key"] for source in answer["sources"]} == {
        "cyc_yarn",
        *(match["source"] for match in answer["categories"]),
    }


def test_a_category_comes_with_the_charts_metres_and_the_standards_gauge_and_needles(client: FlaskClient) -> None:
    # the magazine's 121 to 181 m; category 4 of the standard: 16 to 20 stitches to 4 in, 4.5 to 5.5 mm, US 7 to 9
    row = client.post(STRANDS, json={"strands": [{"metres": 150}]}).json["categories"][0]
    assert row["metres_per_100g"] == {"low": 121, "high": 181}
    assert row["stitches_per_4_inches"] == {"low": 16, "high": 20}
    # 10 cm are 3.937 in
    assert row["stitches_per_10_cm"] == {"low": 15.7, "high": 19.7}
    assert (row["needle_mm"], row["needle_us"]) == ({"low": 4.5, "high": 5.5}, {"low": "7", "high": "9"})


def test_what_reaches_a_category_is_told_chart_by_chart(client: FlaskClient) -> None:
    request = {"strands": [{"metres": 400}], "wanted_category": 4}
    ways = client.post(STRANDS, json=request).json["to_reach"]
    assert [(way["source"], way["name"]) for way in ways] == [
        ("spinners_chart", "Medium"),
        ("uk_trade", "Aran / worsted (10-12 ply)"),
        ("southern_usage", "worsted (10 ply)"),
        ("southern_usage", "aran (12 ply)"),
    ]
    # 240 m are 416.67 tex, of which 250 are there; 166.67 more are 600 m. 200 m are 500 tex: 250 more are 400 m
    assert ways[2] == {
        "source": "southern_usage",
        "name": "worsted (10 ply)",
        "metres_per_100g": {"low": 200, "high": 240},
        "state": "needs_strand",
        "strand": {"thinnest": 600.0, "thickest": 400.0},
    }


def test_the_strands_that_are_printed_as_the_thinnest_and_the_thickest_still_do(client: FlaskClient) -> None:
    tried = 0
    for have, wanted in ((380, 3), (400, 3), (410, 4), (777, 2)):
        ways = client.post(STRANDS, json={"strands": [{"metres": have}], "wanted_category": wanted}).json["to_reach"]
        for place, way in enumerate(ways):
            for strand in way["strand"].values():
                request = {"strands": [{"metres": have}, {"metres": strand}], "wanted_category": wanted}
                again = client.post(STRANDS, json=request).json["to_reach"][place]
                assert again["state"] == "already_there", (have, way)
                tried += 1
    assert tried > 20


def test_no_chart_has_the_thickest_category_and_the_answer_says_so(client: FlaskClient) -> None:
    answer = client.post(STRANDS, json={"strands": [{"metres": 400}], "wanted_category": 7}).json
    assert answer["to_reach"] == []
    assert [warning["code"] for warning in answer["warnings"]] == ["category_not_charted"]


def test_nothing_is_to_be_reached_where_no_category_is_wanted(client: FlaskClient) -> None:
    assert "to_reach" not in client.post(STRANDS, json={"strands": [{"metres": 400}]}).json


def test_a_weighed_swatch_gives_grams_metres_and_balls(client: FlaskClient) -> None:
    # 40,000 stitches of which 1,000 weigh 10 g: 400 g, 800 m; with a tenth more, 440 g in balls of 50 g
    answer = client.post(ESTIMATES, json=estimate()).json
    (yarn,) = answer["sizes"][0]["yarns"]
    assert yarn["grams"] == {"low": 400.0, "likely": 400.0, "high": 400.0}
    assert (yarn["metres"], yarn["balls"], yarn["basis"]) == (800.0, 9, "measured")
    assert answer["runs"] == {"oat": "9"}
    assert answer["warnings"] == []


def test_an_estimate_says_its_range_and_what_it_assumes(client: FlaskClient) -> None:
    # 20 stitches to 10 cm: a stitch is 0.5 cm wide and takes 3.8 to 4.2 times that
    request = estimate(yarns={"oat": {"metres_per_100g": 200}}, gauge={"stitches": 20, "rows": 28})
    answer = client.post(ESTIMATES, json=request).json
    (yarn,) = answer["sizes"][0]["yarns"]
    expected = [float(40000 * Fraction(times, 10) / 2 / 100 / 2) for times in (38, 40, 42)]
    assert [yarn["grams"][end] for end in ("low", "likely", "high")] == expected
    assert [warning["code"] for warning in answer["warnings"]] == ["estimated_yarn"]


def test_an_answer_says_what_takes_the_yarn(client: FlaskClient) -> None:
    request = estimate(yarns={"oat": {"metres_per_100g": 200}}, gauge={"stitches": 20, "rows": 28})
    request["sizes"][0]["floats"] = {"oat": 10000}
    (yarn,) = client.post(ESTIMATES, json=request).json["sizes"][0]["yarns"]
    # 40,000 stitches of half a cm take 4 times that; 50 m of floats a tenth more than that (common practice, no source)
    assert yarn["metres_for"] == {"stitches": 800.0, "floats": 55.0}
    assert yarn["metres"] == 855.0


def test_each_strand_has_balls_of_its_own(client: FlaskClient) -> None:
    strands = [{"name": "oat", "metres": 200, "grams": 50}, {"name": "mist", "nm": 8.4, "ball_grams": 25}]
    request = estimate(yarns={"oat": {"strands": strands}}, gauge={"stitches": 20, "rows": 28}, margin=0)
    (yarn,) = client.post(ESTIMATES, json=request).json["sizes"][0]["yarns"]
    # at most 4.2 times the width: 840 m, which are 210 g of the one and 100 g of the other
    assert [(strand["name"], strand["grams"]["high"], strand["balls"]) for strand in yarn["strands"]] == [
        ("oat", 210.0, 5),
        ("mist", 100.0, 4),
    ]


def test_one_strand_is_not_told_twice(client: FlaskClient) -> None:
    (yarn,) = client.post(ESTIMATES, json=estimate()).json["sizes"][0]["yarns"]
    assert "strands" not in yarn


def test_a_size_without_a_yarn_shows_a_dash_in_its_run(client: FlaskClient) -> None:
    request = estimate()
    request["yarns"]["kelp"] = request["yarns"]["oat"]
    request["sizes"].append({"label": "M", "stitches": {"oat": 40000, "kelp": 1000}})
    assert client.post(ESTIMATES, json=request).json["runs"] == {"oat": "9", "kelp": "\N{EN DASH} (1)"}


def test_every_wrong_place_is_named(client: FlaskClient) -> None:
    request = {
        "yarns": {"oat": {"metres_per_100g": 200, "swatch_grams": 10}, "kelp": {"metres_per_100g": 200}},
        "sizes": [{"label": "S", "stitches": {"moss": 1}}, {"label": "S", "stitches": {"oat": 1}}],
    }
    assert sorted(pointers(client.post(ESTIMATES, json=request))) == [
        "/sizes/0/stitches/moss",
        "/sizes/1/label",
        "/yarns/kelp",
        "/yarns/oat/swatch_stitches",
    ]


def substitute(**changes):
    sizes = [{"label": "S", "yards": 1000}, {"label": "M", "yards": 1100}]
    yarns = {"pattern_yarn": {"metres_per_100g": 400}, "own_yarn": {"strands": [{"metres": 400}, {"metres": 840}]}}
    return {**yarns, "gauge": {"stitches": 28, "rows": 40}, "sizes": sizes, **changes}


def test_another_yarn_is_needed_in_the_same_length(client: FlaskClient) -> None:
    answer = client.post(SUBSTITUTIONS, json=substitute()).json
    # 914.4 m at 250 tex and at 119.05
    assert answer["sizes"][0] == {
        "label": "S",
        "metres": 914.4,
        "grams": 337.5,
        "strands": [
            {"strand": 1, "grams": 228.6, "ball_grams": 100.0, "balls": 3},
            {"strand": 2, "grams": 108.9, "ball_grams": 100.0, "balls": 2},
        ],
    }
    assert answer["runs"] == {"metres": "915 (1006)", "grams": "338 (372)", "balls": ["3", "2"]}


def test_the_two_yarns_are_compared(client: FlaskClient) -> None:
    comparison = client.post(SUBSTITUTIONS, json=substitute()).json["comparison"]
    assert (comparison["thickness"], comparison["pattern"]["tex"], comparison["own"]["tex"]) == ("thicker", 250, 369.05)
    assert comparison["tex_ratio"] == 1.4762
    # 28 and 40 over the root of 1.4762, which is 1.215
    assert comparison["likely_gauge"]["per_10_cm"] == {"stitches": 23.05, "rows": 32.92}
    assert [match["category"] for match in comparison["pattern"]["categories"]] == [1, 1, 1, 2]


def test_what_is_said_of_another_yarn(client: FlaskClient) -> None:
    answer = client.post(SUBSTITUTIONS, json=substitute(own_yarn={"metres_per_100g": 200})).json
    assert [(each["code"], each.get("pointer")) for each in answer["warnings"]] == [
        ("swatch_decides", None),
        ("other_yarn_category", "/own_yarn"),
    ]


def test_a_table_has_a_row_for_each_strand(client: FlaskClient) -> None:
    table = client.post(SUBSTITUTIONS, json=substitute(), headers={"Accept": "text/csv"}).text
    rows = [line.split(",")[:4] for line in table.splitlines()]
    assert ["strands", "2.balls", "balls", "2"] in rows
    assert [item for _, item, *_ in rows if item.endswith("strand")] == []


def test_a_swatch_is_no_part_of_a_label(client: FlaskClient) -> None:
    request = substitute(own_yarn={"metres_per_100g": 200, "swatch_grams": 10, "swatch_stitches": 900})
    assert pointers(client.post(SUBSTITUTIONS, json=request)) == ["/own_yarn/swatch_grams", "/own_yarn/swatch_stitches"]
