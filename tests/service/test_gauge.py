"""POST /v1/gauge-conversions, against values worked out by hand and a general unit library (pint)."""

from decimal import ROUND_HALF_UP, Decimal

import pint
import pytest
from hypothesis import given
from hypothesis import strategies as st

PATH = "/v1/gauge-conversions"
OWN = {"stitches": 23, "rows": 32, "over": 10}
UNITS = pint.UnitRegistry(non_int_type=Decimal)
PATTERN = {"stitches": 22, "rows": 31, "over": 10}


def items(client, request):
    response = client.post(PATH, json=request)
    assert response.status_code == 200, response.json
    return response.json["items"]


def test_a_width_becomes_a_multiple_and_says_what_it_makes(client):
    # by hand: 107 x 2.3 = 246.1; the nearest multiple of 4 is 248; 248 / 2.3 = 107.826; / 2.54 = 42.451
    [bust] = items(client, {"gauge": OWN, "items": [{"name": "bust", "across": 107, "count_rule": {"multiple": 4}}]})
    assert bust == {
        "name": "bust",
        "stitches": 248,
        "exact": 246.1,
        "length": {"cm": 107.83, "inch": 42.45},
        "difference": {"cm": 0.83, "inch": 0.33},
    }


def test_a_length_becomes_rows(client):
    # by hand: 24 x 3.2 = 76.8; 77 / 3.2 = 24.0625
    [depth] = items(client, {"gauge": OWN, "items": [{"along": 24}]})
    assert depth == {
        "rows": 77,
        "exact": 76.8,
        "length": {"cm": 24.06, "inch": 9.47},
        "difference": {"cm": 0.06, "inch": 0.02},
    }


def test_a_written_count_is_regauged(client):
    # by hand: 96 / 2.3 = 41.739; 96 / 2.2 = 43.636; 96 x 23 / 22 = 100.36; 100 / 2.3 = 43.478
    [cast_on] = items(client, {"gauge": OWN, "pattern_gauge": PATTERN, "items": [{"stitches": 96}]})
    assert cast_on == {
        "stitches": 96,
        "length": {"cm": 41.74, "inch": 16.43},
        "difference": {"cm": -1.9, "inch": -0.75},
        "pattern_length": {"cm": 43.64, "inch": 17.18},
        "regauged": 100,
        "regauged_length": {"cm": 43.48, "inch": 17.12},
        "regauged_difference": {"cm": -0.16, "inch": -0.06},
    }


def test_written_rows_are_regauged_by_rows(client):
    # by hand: 74 x 32 / 31 = 76.39
    [yoke] = items(client, {"gauge": OWN, "pattern_gauge": PATTERN, "items": [{"rows": 74}]})
    assert yoke["regauged"] == 76


def test_the_count_rule_governs_the_regauged_count(client):
    # by hand: 100.36 up to a multiple of 4 plus 2 is 102
    rule = {"multiple": 4, "plus": 2, "rounding": "up"}
    sent = {"gauge": OWN, "pattern_gauge": PATTERN, "items": [{"stitches": 98, "count_rule": rule}]}
    assert items(client, sent)[0]["regauged"] == 106  # 98 x 23 / 22 = 102.45


def test_a_written_count_without_a_pattern_gauge_only_has_a_length(client):
    assert items(client, {"gauge": OWN, "items": [{"rows": 32.0}]}) == [
        {"rows": 32, "length": {"cm": 10.0, "inch": 3.94}}
    ]


@pytest.mark.parametrize(("across", "stitches"), [(2.5, 6), (2.4999, 5), (0.5, 1)])
def test_a_tie_goes_up(client, across, stitches):
    gauge = {"stitches": 22, "rows": 30, "over": 10}
    assert items(client, {"gauge": gauge, "items": [{"across": across}]})[0]["stitches"] == stitches


def test_a_gauge_is_over_ten_centimetres_or_four_inches_unless_said(client):
    sent = {"gauge": {"stitches": 20, "rows": 28}, "items": [{"stitches": 20}, {"rows": 28}]}
    assert [item["length"]["cm"] for item in items(client, sent)] == [10.0, 10.0]
    assert [item["length"]["inch"] for item in items(client, {"unit": "in", **sent})] == [4.0, 4.0]


def test_rows_may_be_counted_over_another_span(client):
    sent = {"gauge": {"stitches": 20, "rows": 15, "over": 10, "rows_over": 5}, "items": [{"rows": 30}]}
    assert items(client, sent)[0]["length"]["cm"] == 10.0


def test_the_nominal_convention_governs_only_the_inches_of_the_answer(client):
    # 1 in of the request stays 2.54 cm; 10 cm are printed as 4 in
    sent = {
        "unit": "in",
        "inch_convention": "nominal",
        "gauge": {"stitches": 20, "rows": 28},
        "items": [{"across": 40}],
    }
    [item] = items(client, sent)
    assert item["stitches"] == 200
    assert item["length"] == {"cm": 101.6, "inch": 40.64}


@pytest.mark.parametrize(
    ("own", "fabric", "needle"),
    [
        ((23, 32), "tighter", "larger"),
        ((21, 32), "looser", "smaller"),
        ((22, 31), "same", "none"),
        ((22, 30), "same", "none"),
    ],
)
def test_the_fabric_is_judged_by_stitches(client, own, fabric, needle):
    # more stitches to the centimetre is tighter and asks for a larger needle: common practice, no source
    sent = {"gauge": {"stitches": own[0], "rows": own[1]}, "pattern_gauge": PATTERN, "items": [{"across": 1}]}
    comparison = client.post(PATH, json=sent).json["comparison"]
    assert (comparison["fabric"], comparison["needle"]) == (fabric, needle)


def test_the_ratios_have_four_decimals(client):
    # by hand: 23 / 22 = 1.04545..., 32 / 31 = 1.03225...
    sent = {"gauge": OWN, "pattern_gauge": PATTERN, "items": [{"across": 1}]}
    comparison = client.post(PATH, json=sent).json["comparison"]
    assert (comparison["stitches_ratio"], comparison["rows_ratio"]) == (1.0455, 1.0323)


def test_without_a_pattern_gauge_nothing_is_compared(client):
    assert "comparison" not in client.post(PATH, json={"gauge": OWN, "items": [{"across": 1}]}).json


def test_a_written_count_off_its_own_rule_deserves_a_word(client):
    sent = {"gauge": OWN, "items": [{"across": 10}, {"stitches": 97, "count_rule": {"multiple": 4}}]}
    [warning] = client.post(PATH, json=sent).json["warnings"]
    assert (warning["code"], warning["pointer"]) == ("count_off_rule", "/items/1/stitches")


def test_a_length_of_no_stitches_deserves_a_word(client):
    [warning] = client.post(PATH, json={"gauge": OWN, "items": [{"across": 0.1}]}).json["warnings"]
    assert (warning["code"], warning["pointer"]) == ("rounded_to_nothing", "/items/0/across")


@pytest.mark.parametrize("item", [{}, {"name": "bust"}, {"across": 1, "along": 1}, {"stitches": 1, "rows": 1}])
def test_an_item_has_exactly_one_amount(client, item):
    response = client.post(PATH, json={"gauge": OWN, "items": [{"across": 1}, item]})
    assert response.status_code == 422
    assert [error["pointer"] for error in response.json["errors"]] == ["/items/1"]


@pytest.mark.parametrize("count", [0, 501])
def test_there_are_1_to_500_items(client, count):
    response = client.post(PATH, json={"gauge": OWN, "items": [{"across": 1}] * count})
    assert (response.status_code, response.json["errors"][0]["pointer"]) == (422, "/items")


def test_every_wrong_place_is_named_in_one_answer(client):
    sent = {"unit": "mm", "gauge": {"stitches": "22", "rows": True, "x": 1}, "items": [{"across": 0}, 7], "yarn": 1}
    pointers = [error["pointer"] for error in client.post(PATH, json=sent).json["errors"]]
    assert pointers == ["/gauge/rows", "/gauge/stitches", "/gauge/x", "/items/0/across", "/items/1", "/unit", "/yarn"]


def test_query_is_answered_like_post(client):
    sent = {"gauge": OWN, "items": [{"across": 100}]}
    assert client.open(PATH, method="QUERY", json=sent).data == client.post(PATH, json=sent).data


def test_every_answer_ends_with_what_computed_it(client):
    answer = client.post(PATH, json={"gauge": OWN, "items": [{"across": 1}]}).json
    assert list(answer)[-1] == "meta"
    assert answer["meta"]["version"] == "1.0.0"
    assert answer["meta"]["input_digest"].startswith("sha256:")


def half_up(value, places="0.01"):
    return float(Decimal(str(value)).quantize(Decimal(places), ROUND_HALF_UP))


@given(st.integers(1, 4000), st.integers(10, 60))
def test_lengths_agree_with_a_general_unit_library(client, count, stitches):
    [item] = items(client, {"gauge": {"stitches": stitches, "rows": 30}, "items": [{"stitches": count}]})
    gauge = UNITS.Quantity(Decimal(stitches)) / UNITS.Quantity(Decimal(10), "cm")
    length = UNITS.Quantity(Decimal(count)) / gauge
    assert item["length"] == {"cm": half_up(length.m_as("cm")), "inch": half_up(length.m_as("inch"))}


@given(st.decimals(1, 100, places=2), st.sampled_from(["across", "along"]))
def test_inches_and_centimetres_give_the_same_count(client, inches, kind):
    gauge = {"stitches": 22.5, "rows": 31.25, "over": 10}
    in_cm = float(inches * Decimal("2.54"))
    gauge_in_inches = {"stitches": 57.15, "rows": 79.375, "over": 10}  # x 2.54, over 10 in
    [one] = items(client, {"gauge": gauge, "items": [{kind: in_cm}]})
    [other] = items(client, {"unit": "in", "gauge": gauge_in_inches, "items": [{kind: float(inches)}]})
    assert one == other
