import pytest

from tests.oracles.pullover_answer import feasible
from tests.service.pullovers.answers import CHARTED, GAUGE, WOMEN, named, row


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


def test_seam_stitches_that_are_purled_are_told(make):
    chart = {"chart": {"rows": ["..#.."]}}
    for seam, purled in (("purl", True), ("knit", False)):
        parts = make(chart=chart, yoke={"seam": seam})["instructions"]
        said = [each for part in parts for each in part["sentences"] if each["id"] == "chart.seams"]
        assert [each["values"]["seam"] for each in said] == [seam]
        assert ("Purl them" in said[0]["text"]) == purled


def test_every_size_has_the_parity_that_the_anchors_need(make):
    answer = make(**CHARTED["anchored"])
    assert all(count % 2 == 1 for count in row(answer, "neck", "back") + row(answer, "neck", "front"))
    assert all(count % 2 == 0 for count in row(answer, "neck", "sleeve"))
    assert all(count % 2 == 1 for count in row(answer, "split", "underarm"))


def test_no_body_and_no_sleeve_cuts_a_chart_that_is_begun(make):
    tall = {"rows": ["#..", ".#."] * 100}
    answer = make(chart={"chart": tall})
    for size in feasible(answer):
        chart, gauge = size["chart"], GAUGE["rows"] / 10
        # the rows that the yoke leaves of 200
        left = 200 - size["yoke"]["rounds"]
        assert chart["shortest_body"]["rounds"] == chart["shortest_sleeve"]["rounds"] == left
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
    for cut, warning in zip(last, warnings, strict=True):
        assert f"at row {cut} of 200 of the chart;" in warning["message"]
    assert all("pointer" not in warning for warning in warnings)
    assert len(named(answer["warnings"], "sleeve_cuts_chart")) == len(WOMEN)


def test_an_anchor_that_makes_a_chart_lopsided_is_pointed_at_where_it_was_sent(make):
    chart = {"chart": {"rows": ["..#.."]}, "anchor": {"back": 4, "front": 3, "sleeve": 3}}
    (warning,) = named(make(chart=chart)["warnings"], "anchor_off_mirror_axis")
    assert warning["pointer"] == "/chart/anchor/back"
