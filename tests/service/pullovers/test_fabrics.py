"""Gauges of several fabrics in one garment: every round has its own fabric's height, every width that of its round.

Expected lengths are added up here from the rounds of the answer.
"""

import pytest

from tests.service.pullovers.answers import row

PLAIN, STRANDED = {"stitches": 22, "rows": 31}, {"stitches": 24, "rows": 28}
GAUGES = {"plain": PLAIN, "stranded": STRANDED}


def chart(repeat, first_round=1, rows=("#.", "##")):
    return {"chart": {"rows": rows, "repeat": repeat}, "first_round": first_round}


def near(cm):
    return pytest.approx(cm, abs=0.00501)


def test_a_yoke_with_a_chart_of_two_rows_is_plain_but_for_those(make):
    (size,) = make(gauges=GAUGES, labels=["M"], chart=chart("once"))["sizes"]
    rounds, finished = size["yoke"]["rounds"], size["finished"]
    assert finished["depth"]["finished"]["cm"] == near(2 / 2.8 + (rounds - 2) / 3.1)
    # half a plain round, the nearest that whole rounds come to
    assert abs(finished["depth"]["difference"]["cm"]) <= 0.5 / 3.1 + 0.01


def test_each_width_is_measured_at_the_gauge_of_its_round(make):
    (size,) = make(gauges=GAUGES, labels=["M"], chart=chart("once"))["sizes"]
    finished = size["finished"]
    assert finished["neck"]["finished"]["cm"] == near(size["yoke"]["stitches"]["neck"] / 2.4)
    assert finished["bust"]["finished"]["cm"] == near(size["split"]["body"] / 2.2)
    assert finished["upper_arm"]["finished"]["cm"] == near(size["split"]["sleeve"] / 2.2)


@pytest.mark.parametrize(("repeat", "first_round"), [("once", 1), ("rows", 1), ("rows", 30)])
def test_targets_are_met_at_the_gauge_of_each_round(make, repeat, first_round):
    (size,) = make(gauges=GAUGES, labels=["M"], chart=chart(repeat, first_round=first_round))["sizes"]
    # two stitches of 2.2 to the cm at most, where 8 % of the bust, the difference of the gauges, would be 8 cm
    for name in ("bust", "upper_arm", "neck", "depth"):
        assert abs(size["finished"][name]["difference"]["cm"]) <= 2 / 2.2, name


def test_the_rounds_before_a_chart_are_plain(make):
    (size,) = make(gauges=GAUGES, labels=["M"], chart=chart("rows", first_round=21))["sizes"]
    finished, yoke = size["finished"], size["yoke"]
    assert finished["neck"]["finished"]["cm"] == near(yoke["stitches"]["neck"] / 2.2)
    assert finished["depth"]["finished"]["cm"] == near(20 / 3.1 + (yoke["rounds"] - 20) / 2.8)
    assert finished["bust"]["finished"]["cm"] == near(size["split"]["body"] / 2.4)


def test_short_rows_are_plain_fabric_beside_a_charted_yoke(make):
    (size,) = make(gauges=GAUGES, labels=["M"], chart=chart("rows"))["sizes"]
    raised = size["neck"]["back_raise"]
    assert raised["height"]["cm"] == near(raised["rows"] / 3.1)


def test_a_chart_that_ends_in_the_body_leaves_the_rest_of_it_plain(make):
    (size,) = make(gauges=GAUGES, labels=["M"], chart=chart("once", rows=["#.", "##"] * 45))["sizes"]
    left = 90 - size["yoke"]["rounds"]
    assert left > 0
    body, sleeve = size["body"], size["sleeve"]
    for part, edge in ((body, body["hem"]), (sleeve, sleeve["cuff"])):
        knitted = left / 2.8 + (part["rounds"] - left) / 3.1 + edge["rounds"] / 3.1
        assert part["length"]["cm"] == near(knitted)
    assert size["chart"]["shortest_body"]["length"]["cm"] == near(left / 2.8)


def test_the_raglan_line_rises_by_the_mixed_depth(make):
    (size,) = make(gauges=GAUGES, labels=["M"], chart=chart("once", rows=["#.", "##"] * 20))["sizes"]
    yoke = size["yoke"]
    depth, run = 40 / 2.8 + (yoke["rounds"] - 40) / 3.1, yoke["body_increases"] / 2.2
    assert yoke["raglan_line"]["rise_over_run"] == near(depth / run)


def test_a_float_is_as_long_as_the_stitches_of_the_chart_are_wide(make):
    (size,) = make(gauges=GAUGES, labels=["M"], chart=chart("once", rows=["#......."]))["sizes"]
    longest = size["chart"]["longest_float"]
    assert longest["length"]["cm"] == near(longest["stitches"] / 2.4)


@pytest.mark.parametrize("repeat", ["rows", "once"])
def test_no_circumference_falls_where_one_split_lies_in_the_chart_and_the_next_does_not(make, repeat):
    answer = make(gauges=GAUGES, chart=chart(repeat, rows=["#.", "##"] * 37))
    for part, item in (("body", "stitches"), ("sleeve", "stitches"), ("split", "underarm"), ("neck", "stitches")):
        counts = row(answer, part, item)
        assert counts == sorted(counts), part
