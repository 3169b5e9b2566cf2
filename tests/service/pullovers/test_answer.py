import pytest

from tests.oracles.pullover_answer import feasible
from tests.service.pullovers.answers import DIAMOND, WOMEN, row


def test_a_gauge_alone_makes_nine_sizes(plain):
    assert [size["label"] for size in feasible(plain)] == WOMEN
    assert [warning["code"] for warning in plain["warnings"]] == ["estimated_body"]
    assert plain["changed"] == []


def test_nothing_that_circles_or_deepens_the_garment_falls_from_size_to_size(plain):
    for part, item in (
        *(("neck", item) for item in ("stitches", "back", "front", "sleeve")),
        *(("split", item) for item in ("back", "sleeve", "yoke_total", "underarm")),
        *((part, "stitches") for part in ("body", "hem", "sleeve", "cuff", "band")),
        ("yoke", "rounds"),
    ):
        assert row(plain, part, item) == sorted(row(plain, part, item)), (part, item)


@pytest.mark.parametrize("table", ["women", "men", "children", "babies"])
def test_every_size_comes_near_to_what_was_wanted_and_passes_the_head(make, table):
    answer = make(body_table=table)
    assert len(feasible(answer)) == len(answer["sizes"]) == {"women": 9, "babies": 5}.get(table, 8)
    for size in feasible(answer):
        for name in ("bust", "upper_arm", "neck", "wrist", "depth", "body_length", "sleeve_length"):
            assert abs(size["finished"][name]["difference"]["cm"]) <= 1.5, (size["label"], name)
        assert size["neck"]["head"]["passes"]


def test_each_count_has_its_difference_from_what_was_wanted(make):
    """A bust of 33 in (83.82 cm) by hand.

    92.202 cm around, a neck of three quarters of a head of 22 in, 41.91 cm, and a yoke of 22.7202 cm.
    """
    (size,) = feasible(make(labels=["S"]))
    differences = size["differences"]
    assert differences["body"] == pytest.approx(size["split"]["body"] - 202.84)
    assert differences["neck"] == pytest.approx(size["neck"]["cast_on"] - 92.20)
    assert differences["rounds"] == pytest.approx(size["yoke"]["rounds"] - 70.43)
    # the back's share of the 84.202 stitches beside the lines is 37 % less 0.075 % for each cm beyond 75
    assert differences["neck_back"] == pytest.approx(size["neck"]["sections"]["back"] - 30.60)


@pytest.mark.parametrize(
    ("convention", "per_4_in"),
    # 4 in are 10.16 cm, and nominally 10
    [("exact", {"stitches": 22.35, "rows": 31.5}), ("nominal", {"stitches": 22.0, "rows": 31.0})],
)
def test_the_gauge_is_printed_as_the_trade_prints_it_and_answered_exactly(make, convention, per_4_in):
    answer = make(labels=["M"], inch_convention=convention)
    assert answer["gauges"] == {"plain": {"per_10_cm": {"stitches": 22.0, "rows": 31.0}, "per_4_in": per_4_in}}
    (told,) = [part["sentences"] for part in answer["instructions"] if part["part"] == "gauge"]
    assert told[0]["text"].endswith(": 22 stitches and 31 rounds = 4 in / 10 cm.")


def test_the_gauges_answered_are_those_of_the_fabrics_that_are_used(make):
    gauges = {
        "plain": {"stitches": 22, "rows": 31},
        "stranded": {"stitches": 24, "rows": 28},
        "rib": {"stitches": 25, "rows": 32},
    }
    assert set(make(labels=["M"], gauges=gauges)["gauges"]) == {"plain", "rib"}
    charted = make(labels=["M"], gauges=gauges, chart={"chart": DIAMOND})["gauges"]
    assert {name: each["per_10_cm"] for name, each in charted.items()} == gauges
