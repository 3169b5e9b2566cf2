"""Whole pullovers over HTTP: every answer knitted again from its own numbers (see `tests.oracles.pullover_answer`)."""

import csv
import io
from copy import deepcopy

import pytest
from markdown_it import MarkdownIt

from tests.oracles.pullover_answer import check, feasible
from tests.oracles.random_pullovers import random_request

GAUGE = {"stitches": 22, "rows": 31}
WOMEN = ["XS", "S", "M", "L", "XL", "2X", "3X", "4X", "5X"]
DIAMOND = {"rows": ["..#..", ".###.", "#####", ".###."]}
"""Mirrored about its middle column, the third."""


@pytest.fixture(scope="module")
def make(client):
    """The answer to a request that is sound, checked."""

    def made(**request):
        request = {"gauge": GAUGE, **request}
        if "gauges" in request:
            del request["gauge"]
        response = client.post("/v1/pullovers", json=request)
        assert response.status_code == 200, response.text
        check(request, response.json)
        return response.json

    return made


@pytest.fixture(scope="module")
def refuse(client):
    """The wrong places of a request, with what is wrong there."""

    def refused(**request):
        response = client.post("/v1/pullovers", json={"gauge": GAUGE, **request})
        assert response.status_code == 422, response.text
        return {error["pointer"]: error["detail"] for error in response.json["errors"]}

    return refused


def row(answer, item, unit="stitches"):
    (found,) = [one for one in answer["table"] if (one["item"], one["unit"]) == (item, unit)]
    return found["values"]


def numbers(answer):
    """The table by row: its numbers by size."""
    labels = [size["label"] for size in answer["sizes"]]
    return {
        (one["item"], one["unit"]): dict(zip(labels, one["values"], strict=True)) for one in answer["table"]
    }


def named(warnings, code):
    return [warning for warning in warnings if warning["code"] == code]


# a gauge alone


@pytest.fixture(scope="module")
def plain(make):
    return make()


def test_a_gauge_alone_makes_nine_sizes(plain):
    assert [size["label"] for size in feasible(plain)] == WOMEN
    assert [warning["code"] for warning in plain["warnings"]] == ["estimated_body"]
    assert plain["changed"] == []


def test_nothing_that_circles_or_deepens_the_garment_falls_from_size_to_size(plain):
    for item, unit in (
        *((item, "stitches") for item in ("neck", "neck_back", "neck_front", "neck_sleeve")),
        *((item, "stitches") for item in ("split_back", "split_sleeve", "yoke_total", "underarm")),
        *((item, "stitches") for item in ("body", "hem", "sleeve", "cuff", "band")),
        ("yoke", "rounds"),
    ):
        assert row(plain, item, unit) == sorted(row(plain, item, unit)), item


@pytest.mark.parametrize("table", ["women", "men", "children", "babies"])
def test_every_size_comes_near_to_what_was_wanted_and_passes_the_head(make, table):
    for size in feasible(make(body_table=table)):
        for name in ("bust", "upper_arm", "neck", "wrist", "depth", "body_length", "sleeve_length"):
            assert abs(size["finished"][name]["difference"]["cm"]) <= 1.5, (size["label"], name)
        assert size["neck"]["head"]["passes"]


def test_each_count_has_its_difference_from_what_was_wanted(make):
    """A bust of 33 in (83.82 cm) by hand: 92.202 cm around, a neck of 44.4112 cm and a yoke of 22.7202 cm."""
    (size,) = feasible(make(labels=["S"]))
    differences = size["differences"]
    assert differences["body"] == pytest.approx(size["split"]["body"] - 202.84)
    assert differences["neck"] == pytest.approx(size["neck"]["cast_on"] - 97.70)
    assert differences["rounds"] == pytest.approx(size["yoke"]["rounds"] - 70.43)
    # the back's share of the 89.7 stitches beside the lines is 37 % less 0.075 % for each cm beyond 75
    assert differences["neck_back"] == pytest.approx(size["neck"]["sections"]["back"] - 32.60)


# rules


def test_every_count_rule_is_kept_and_the_run_says_what_the_table_has(make):
    answer = make(
        neck={"count_rule": {"multiple": 4}},
        body={"count_rule": {"multiple": 8, "plus": 4}, "hem": {"count_rule": {"multiple": 4, "plus": 2}}},
        sleeve={"count_rule": {"multiple": 3}, "cuff": {"count_rule": {"multiple": 6}}},
        band={"count_rule": {"multiple": 4}},
    )
    assert all(count % 8 == 4 for count in row(answer, "body"))
    assert all(count % 4 == 2 for count in row(answer, "hem"))
    (body,) = [one for one in answer["table"] if (one["item"], one["unit"]) == ("body", "stitches")]
    smallest, *others = body["values"]
    assert body["run"] == f"{smallest} ({', '.join(map(str, others))})"


@pytest.mark.parametrize("rounding", ["up", "down"])
def test_a_rounding_direction_is_binding(make, rounding):
    answer = make(body={"count_rule": {"multiple": 4, "rounding": rounding}})
    for size in feasible(answer):
        difference = size["finished"]["bust"]["difference"]["cm"]
        assert difference >= 0 if rounding == "up" else difference <= 0


def test_sizes_sent_in_another_order_get_the_same_numbers(make, plain):
    turned = make(labels=WOMEN[::-1])
    assert [size["label"] for size in turned["sizes"]] == WOMEN[::-1]
    assert numbers(turned) == numbers(plain)
    assert turned["cost"] == plain["cost"]


def test_inches_and_centimetres_make_the_same_pullover(make):
    in_cm = make(
        gauge={"stitches": 22, "rows": 30, "over": 10.16},
        ease={"bust": 10.16, "upper_arm": {"from": 2.54, "to": 5.08}},
        yoke={"depth": [20.32, 22.86, 25.4], "underarm": 5.08},
        body={"length": 35.56, "hem": {"height": 3.81}},
        labels=["S", "M", "L"],
    )
    in_inches = make(
        unit="in",
        gauge={"stitches": 22, "rows": 30},
        ease={"bust": 4, "upper_arm": {"from": 1, "to": 2}},
        yoke={"depth": [8, 9, 10], "underarm": 2},
        body={"length": 14, "hem": {"height": 1.5}},
        labels=["S", "M", "L"],
    )
    assert in_inches["sizes"] == in_cm["sizes"]


def test_even_steps_are_the_list_that_they_stand_for(make):
    steps = make(labels=["S", "M", "L"], ease={"bust": {"from": 8, "to": 12}})
    listed = make(labels=["S", "M", "L"], ease={"bust": [8, 10, 12]})
    assert steps["sizes"] == listed["sizes"]


def test_own_sizes_are_completed_from_a_table_and_keep_what_they_have(make):
    # 93.98 cm is the table's own M
    own = {"label": "mine", "bust": 93.98}
    (completed,) = make(body_table="women", sizes=[own])["sizes"]
    (published,) = make(labels=["M"])["sizes"]
    assert completed["split"] == published["split"]
    (longer,) = make(body_table="women", sizes=[{**own, "arm_length": 60}])["sizes"]
    assert longer["finished"]["sleeve_length"]["target"]["cm"] == 60


def test_a_size_may_be_sent_whole_without_a_table(make):
    whole = {"bust": 95, "upper_arm": 29, "wrist": 16, "arm_length": 43, "back_waist_length": 42}
    (size,) = make(sizes=[{"label": "mine", **whole}])["sizes"]
    assert size["feasible"]
    assert "head" not in size["neck"]


# what can't be knitted


def test_one_impossible_size_is_told_and_the_others_are_made(make):
    request = {"labels": ["S", "M", "4X"], "yoke": {"double_body": "never"}}
    answer = make(**request)
    small, middle, large = answer["sizes"]
    assert small["feasible"]
    assert middle["feasible"]
    assert not large["feasible"]
    assert large["reason"]
    assert {one["field"] for one in large["nearest"]} == {"yoke.depth", "yoke.step", "yoke.double_body"}
    assert row(answer, "body")[2] is None
    assert answer["instructions"][0]["sentences"][0] == "Sizes: S (M)."
    for nearest in large["nearest"]:
        mended = deepcopy(request)
        part, field = nearest["field"].split(".")
        mended[part][field] = nearest["value"]
        assert len(feasible(make(**mended))) == 3, nearest


@pytest.mark.parametrize("unit", ["cm", "in"])
def test_a_nearest_length_is_in_the_unit_of_the_request(make, unit):
    short = 10 if unit == "cm" else 4
    answer = make(
        unit=unit, gauge={**GAUGE, "over": 10 if unit == "cm" else 4}, labels=["L"], sleeve={"length": short}
    )
    (nearest,) = answer["sizes"][0]["nearest"]
    assert nearest["field"] == "sleeve.length"
    mended = make(
        unit=unit,
        gauge={**GAUGE, "over": 10 if unit == "cm" else 4},
        labels=["L"],
        sleeve={"length": nearest["value"]},
    )
    assert mended["sizes"][0]["feasible"]


def test_even_when_every_size_is_impossible_the_answer_is_an_answer(make):
    answer = make(neck={"count_rule": {"multiple": 1000}})
    assert feasible(answer) == []
    assert all(size["nearest"] for size in answer["sizes"])
    assert answer["instructions"] == []


# a maker's changes

CHANGES = {
    "another gauge": {"gauge": {"stitches": 24, "rows": 33}},
    "another gauge for the ribs alone": {"gauges": {"plain": GAUGE, "rib": {"stitches": 24, "rows": 32}}},
    "another ease": {"ease": {"bust": 16}},
    "a deeper yoke": {"yoke": {"depth_change": 2}},
    "a shallower yoke": {"yoke": {"depth_change": -2}},
    "a yoke depth for all": {"yoke": {"depth": 26}},
    "a yoke of rounds": {"yoke": {"rounds": 100}},
    "fewer rounds": {"yoke": {"rounds_change": -3}},
    "own rows": {"yoke": {"own_rows": 33}},
    "a longer body": {"body_length": {"from": 36, "to": 40}},
    "shorter sleeves": {"sleeve_length": 38},
    "another band": {"band": {"height": 4, "construction": "double"}},
    "a single higher band": {"band": {"height": 5}},
    "several": {"gauge": {"stitches": 20, "rows": 28}, "yoke": {"depth_change": -1}, "body_length": 36},
}


@pytest.mark.parametrize("changes", CHANGES.values(), ids=CHANGES)
def test_changed_lists_exactly_the_numbers_that_differ_from_the_design(make, plain, changes):
    made = make(changes=changes)
    design, changed = numbers(plain), numbers(made)
    expected = {
        (size, item, unit): (design[item, unit][size], changed[item, unit][size])
        for item, unit in design
        for size in WOMEN
        if design[item, unit][size] != changed[item, unit][size]
    }
    listed = {
        (one["size"], one["item"], one["unit"]): (one["designed"], one["changed"]) for one in made["changed"]
    }
    assert expected
    assert listed == expected
    assert len(made["changed"]) == len(expected)


@pytest.mark.parametrize(
    "name", [name for name in CHANGES if "yoke" in CHANGES[name] and len(CHANGES[name]) == 1]
)
def test_another_yoke_depth_keeps_every_count_at_neck_and_split(make, plain, name):
    made = make(changes=CHANGES[name])
    for before, after in zip(plain["sizes"], made["sizes"], strict=True):
        assert after["split"] == before["split"]
        assert after["neck"] == before["neck"]
        assert after["body"] == before["body"]
        assert after["yoke"]["rounds"] != before["yoke"]["rounds"]


def test_own_rows_keep_the_depth_of_the_design(make, plain):
    made = make(changes={"yoke": {"own_rows": 33}})
    for before, after in zip(plain["sizes"], made["sizes"], strict=True):
        # at most half a round of 10 / 33 cm away
        wanted, got = (
            before["finished"]["depth"]["finished"]["cm"],
            after["finished"]["depth"]["finished"]["cm"],
        )
        assert abs(wanted - got) <= 10 / 33 / 2 + 0.01


def test_changed_gauges_make_what_the_same_gauge_would_have_made(make):
    made = make(changes={"gauge": {"stitches": 24, "rows": 33}})
    assert made["sizes"] == make(gauge={"stitches": 24, "rows": 33})["sizes"]


def test_a_change_that_is_impossible_in_one_size_says_what_would_do(make):
    made = make(labels=["S", "5X"], changes={"yoke": {"rounds": 40}})
    small, large = made["sizes"]
    assert small["feasible"]
    assert not large["feasible"]
    (nearest,) = large["nearest"]
    assert nearest["field"] == "changes.yoke.rounds"
    assert len(feasible(make(labels=["S", "5X"], changes={"yoke": {"rounds": nearest["value"]}}))) == 2
    (gone,) = [one for one in made["changed"] if (one["size"], one["item"]) == ("5X", "cast_on")]
    assert gone["changed"] is None


# cautions


def test_a_neck_that_does_not_pass_the_head_is_said(make):
    answer = make(labels=["M"], neck={"circumference": 34, "stretch": 0.2})
    (warning,) = named(answer["warnings"], "neck_does_not_pass_head")
    assert warning["size"] == "M"
    assert warning["pointer"] == "/neck"
    head = answer["sizes"][0]["neck"]["head"]
    assert not head["passes"]
    assert head["stretch_needed"] > 0.2


def test_babies_get_the_caution_about_neck_and_cords_in_every_size(make):
    answer = make(body_table="babies")
    cautions = named(answer["warnings"], "young_child_neck")
    assert [caution["size"] for caution in cautions] == [size["label"] for size in answer["sizes"]]


def test_long_floats_in_a_babys_pullover_get_the_caution_about_fingers(make):
    far_apart = {"rows": ["#.........", ".........."]}
    codes = {one["code"] for one in make(body_table="babies", chart={"chart": far_apart})["warnings"]}
    grown = {one["code"] for one in make(chart={"chart": far_apart})["warnings"]}
    assert codes - grown - {"young_child_neck"}


# charts and yarn

CHARTED = {
    "by default": {"chart": {"chart": DIAMOND, "first_round": 3}},
    "anchored": {
        "chart": {"chart": DIAMOND, "anchor": {"back": 3, "front": 1, "sleeve": 2.5}, "first_round": 9},
        "yoke": {"line_stitches": 3, "line_to_body": 0, "seam_stitches": 1},
    },
    "once, plain where narrow": {
        "chart": {
            "chart": {**DIAMOND, "repeat": "once"},
            "minimum_width": {"body": 40, "sleeve": 20},
            "anchor": {"back": 0.5, "front": 2.5, "sleeve": 3},
        },
        "body": {"levels": [{"measurement": "waist", "below": 14}]},
    },
}


@pytest.mark.parametrize("request_", CHARTED.values(), ids=CHARTED)
def test_a_chart_lies_as_chart_placements_would_lay_it(client, make, request_):
    answer = make(**request_)
    chart, yoke = request_["chart"], request_.get("yoke", {})
    placement = {
        "gauge": GAUGE,
        **chart,
        "anchor": chart.get("anchor", {"back": 3, "front": 3, "sleeve": 3}),
        "line_stitches": yoke.get("line_stitches", 2),
        "line_to_body": yoke.get("line_to_body", 1),
        "sizes": [
            {
                "label": size["label"],
                "rounds": size["yoke"]["rounds"],
                "neck": size["neck"]["sections"],
                "increase_rounds": size["yoke"]["increase_rounds"],
                "underarm": size["split"]["underarm"],
                "body_rounds": size["body"]["rounds"],
                "body_shaping": size["body"]["shaping"],
                "sleeve_rounds": size["sleeve"]["rounds"],
                "sleeve_decrease_rounds": size["sleeve"]["decrease_rounds"],
            }
            for size in answer["sizes"]
        ],
    }
    if "seam_stitches" in yoke:
        placement["seam_stitches"] = {"body": yoke["seam_stitches"], "sleeve": yoke["seam_stitches"]}
    placed = client.post("/v1/chart-placements", json=placement).json
    assert [size["chart"] for size in answer["sizes"]] == placed["sizes"]
    assert answer["chart"] == placed["chart"]


def test_every_size_has_the_parity_that_the_anchors_need(make):
    answer = make(**CHARTED["anchored"])
    assert all(count % 2 == 1 for count in row(answer, "neck_back") + row(answer, "neck_front"))
    assert all(count % 2 == 0 for count in row(answer, "neck_sleeve"))
    assert all(count % 2 == 1 for count in row(answer, "underarm"))


def test_no_body_and_no_sleeve_cuts_a_chart_that_is_begun(make):
    tall = {"rows": ["#..", ".#."] * 100}
    answer = make(chart={"chart": tall})
    for size in feasible(answer):
        chart, gauge = size["chart"], GAUGE["rows"] / 10
        assert size["body"]["rounds"] >= chart["shortest_body"]["rounds"]
        assert size["sleeve"]["rounds"] >= chart["shortest_sleeve"]["rounds"]
        assert abs(chart["shortest_body"]["length"]["cm"] - chart["shortest_body"]["rounds"] / gauge) <= 0.01
    assert len(named(answer["warnings"], "body_longer_for_chart")) == len(WOMEN)


def test_a_length_that_is_asked_is_kept_and_the_row_at_which_it_cuts_the_chart_is_said(make):
    tall = {"rows": ["#..", ".#."] * 100}
    answer = make(chart={"chart": tall}, body={"length": 20}, changes={"sleeve_length": 30})
    for size in feasible(answer):
        assert abs(size["body"]["length"]["cm"] - 20) < 0.2
        assert abs(size["sleeve"]["length"]["cm"] - 30) < 0.2
    warnings = named(answer["warnings"], "body_cuts_chart")
    last = [size["yoke"]["rounds"] + size["body"]["rounds"] for size in feasible(answer)]
    for row, warning in zip(last, warnings, strict=True):
        assert f"at row {row} of 200;" in warning["message"]
    assert all("pointer" not in warning for warning in warnings)
    assert len(named(answer["warnings"], "sleeve_cuts_chart")) == len(WOMEN)


def test_an_anchor_that_makes_a_chart_lopsided_is_pointed_at_where_it_was_sent(make):
    chart = {"chart": {"rows": ["..#.."]}, "anchor": {"back": 4, "front": 3, "sleeve": 3}}
    (warning,) = named(make(chart=chart)["warnings"], "anchor_off_mirror_axis")
    assert warning["pointer"] == "/chart/anchor/back"


def test_the_yarn_of_the_colours_is_every_stitch_of_the_garment_once(make):
    # `check` adds the stitches up; what a chart's colours have beside the plain one is theirs alone
    answer = make(**CHARTED["by default"], yarn={"metres_per_100g": 250})
    for size in feasible(answer):
        by_name = {colour["colour"]: colour["stitches"] for colour in size["yarn"]}
        assert by_name["."] == size["chart"]["stitches_by_colour"]["total"]["."]


def test_a_weighed_swatch_decides_the_grams(make):
    # 12 g for 1200 stitches: a hundredth of a gram each; balls of 50 g with a tenth more
    swatch = {"metres_per_100g": 250, "swatch_grams": 12, "swatch_stitches": 1200, "ball_grams": 50}
    (size,) = make(labels=["M"], yarn=swatch)["sizes"]
    (yarn,) = size["yarn"]
    grams = yarn["stitches"] / 100
    assert yarn["basis"] == "measured"
    assert yarn["grams"]["low"] == yarn["grams"]["high"] == pytest.approx(grams, abs=0.051)
    assert yarn["metres"] == pytest.approx(2.5 * grams, abs=0.051)
    assert yarn["balls"] == -(-grams * 1.1 // 50)


# tables


def accepted(client, media, **request):
    return client.post("/v1/pullovers", json={"gauge": GAUGE, **request}, headers={"Accept": media}).text


def test_csv_and_markdown_begin_with_the_table_and_have_its_numbers(client):
    request = {"labels": ["S", "M", "4X"], "yoke": {"double_body": "never"}}
    answer = client.post("/v1/pullovers", json={"gauge": GAUGE, **request}).json
    rows = len(answer["table"])
    lines = list(csv.DictReader(io.StringIO(accepted(client, "text/csv", **request))))
    for place, size in enumerate(answer["sizes"]):
        mine = [line for line in lines if line["size"] == size["label"]][:rows]
        assert [(line["item"], line["unit"]) for line in mine] == [
            (f"table.{one['item']}", one["unit"]) for one in answer["table"]
        ]
        values = [one["values"][place] for one in answer["table"]]
        assert [line["value"] for line in mine] == ["" if value is None else str(value) for value in values]
    cells = []
    for token in MarkdownIt("commonmark").enable("table").parse(accepted(client, "text/markdown", **request)):
        if token.type == "tr_open":
            cells.append([])
        elif token.type == "inline" and cells:
            cells[-1].append("".join(child.content for child in token.children))
    assert cells[0] == ["item", "unit", "S", "M", "4X"]
    assert cells[1 : rows + 1] == [
        [
            f"table.{one['item']}",
            one["unit"],
            *("\N{EN DASH}" if value is None else str(value) for value in one["values"]),
        ]
        for one in answer["table"]
    ]


# wrong requests

WRONG = {
    "no gauge of two": ({"gauges": {"plain": GAUGE}}, {""}),
    "lists of a wrong length, wherever they stand": (
        {
            "ease": {"bust": [1, 2]},
            "neck": {"circumference": [40]},
            "yoke": {"depth": [20, 21, 22], "underarm": [6]},
            "body": {"length": [30, 31], "levels": [{"measurement": "waist", "below": [1, 2]}]},
            "sleeve": {"length": [40]},
            "changes": {"body_length": [1], "sleeve_length": [2, 3], "ease": {"bust": [3, 4]}},
        },
        {
            "/ease/bust",
            "/neck/circumference",
            "/yoke/depth",
            "/yoke/underarm",
            "/body/length",
            "/body/levels/0/below",
            "/sleeve/length",
            "/changes/body_length",
            "/changes/sleeve_length",
            "/changes/ease/bust",
        },
    ),
    "what no schema knows": (
        {"yoke": {"dept": 3}, "ease": {"head": 3}, "neck": {"shares": {"back": 1}}, "chart": {"chart": {}}},
        {
            "/yoke/dept",
            "/ease/head",
            "/neck/shares/front",
            "/neck/shares/sleeve",
            "/chart/chart",
        },
    ),
    "an ease that nothing has": ({"ease": {"hip": 3}}, {"/ease/hip"}),
    "an ease that leaves nothing": (
        {"ease": {"bust": -200, "upper_arm": -100}},
        {"/ease/bust", "/ease/upper_arm"},
    ),
    "a front wider than the back": (
        {"neck": {"shares": {"back": 10, "front": 11, "sleeve": 4}}},
        {"/neck/shares/front"},
    ),
    "a raised back beside a dropped front": (
        {"neck": {"front_drop": 3, "raise_height": 2}},
        {"/neck/raise_height"},
    ),
    "more of the line to the body than there is": ({"yoke": {"line_to_body": 3}}, {"/yoke/line_to_body"}),
    "a yoke that leaves no body": ({"yoke": {"depth": 80}}, {"/yoke/depth"}),
    "a neck too small for its lines": ({"neck": {"circumference": 5}}, {"/neck/circumference"}),
    "a weight without its stitches": (
        {"yarn": {"metres_per_100g": 200, "swatch_grams": 3}},
        {"/yarn/swatch_stitches"},
    ),
    "lengths that fall": (
        {
            "labels": ["S", "M"],
            "yoke": {"depth": [24, 22]},
            "neck": {"circumference": {"from": 46, "to": 44}},
        },
        {"/yoke/depth", "/neck/circumference"},
    ),
    "levels in the wrong order": (
        {"body": {"levels": [{"measurement": "hip", "below": 30}, {"measurement": "waist", "below": 15}]}},
        {"/body/levels/1/below"},
    ),
    "labels of no size": ({"labels": ["S", "Q", "S"]}, {"/labels/1", "/labels/2"}),
    "sizes that lack something": (
        {"sizes": [{"label": "a", "bust": 90}, {"label": "b", "bust": 100, "upper_arm": 30}]},
        {"/sizes/0", "/sizes/1"},
    ),
    "anchors outside the chart, and half a stitch apart": (
        {"chart": {"chart": DIAMOND, "anchor": {"back": 3, "front": 2.5, "sleeve": 7}}},
        {"/chart/anchor/front", "/chart/anchor/sleeve"},
    ),
    "a ragged chart, and colours that it lacks": (
        {"chart": {"chart": {"rows": ["..#", "...."]}, "plain_colour": "x", "seam_colour": "z"}},
        {"/chart/chart/rows/1", "/chart/plain_colour", "/chart/seam_colour"},
    ),
    "a cast-on that the anchors' parity can't land on": (
        # odd sections all round: 2 odd backs and 2 odd sleeves are a multiple of 4
        {
            "neck": {"count_rule": {"multiple": 4, "plus": 2}},
            "chart": {"chart": DIAMOND, "anchor": {"back": 3, "front": 3, "sleeve": 3}},
        },
        {"/neck/count_rule", "/chart/anchor/back", "/chart/anchor/sleeve"},
    ),
    "two ways to change the yoke": ({"changes": {"yoke": {"depth": 3, "rounds": 3}}}, {"/changes/yoke"}),
    "changes that leave nothing": ({"changes": {"ease": {"bust": -200}}}, {"/changes/ease/bust"}),
    "a changed gauge that is too fine": ({"changes": {"gauge": {"stitches": 900, "rows": 30}}}, {"/changes"}),
    "a changed yoke that is too deep": ({"changes": {"yoke": {"rounds": 5000}}}, {"/changes/yoke"}),
    "more than one answer holds": ({"body": {"length": 2000}}, {""}),
}


@pytest.mark.parametrize(("request_", "pointers"), WRONG.values(), ids=WRONG)
def test_every_wrong_place_is_named(refuse, request_, pointers):
    assert refuse(**request_).keys() == pointers


# whatever is sent


@pytest.mark.parametrize("hundred", range(3))
def test_requests_at_random_are_answered_by_pullovers_that_close_or_by_their_wrong_places(client, hundred):
    answered = 0
    for seed in range(100 * hundred, 100 * hundred + 100):
        request = random_request(seed)
        response = client.post("/v1/pullovers", json=request)
        assert response.status_code in (200, 422), (seed, response.text)
        if response.status_code == 422:
            assert all(_found(request, error["pointer"]) for error in response.json["errors"]), seed
            continue
        answered += 1
        try:
            check(request, response.json)
        except AssertionError as error:
            error.add_note(f"seed {seed}")
            raise
        for size in response.json["sizes"]:
            assert size["feasible"] or size["nearest"], (seed, size)
    assert answered > 50


def _found(request, pointer):
    """Whether a place is in the request."""
    place = request
    for step in pointer.split("/")[1:]:
        try:
            place = place[int(step)] if isinstance(place, list) else place[step]
        except (KeyError, IndexError):
            return False
    return True
