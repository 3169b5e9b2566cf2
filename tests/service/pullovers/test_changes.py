import pytest

from tests.oracles.pullover_answer import feasible
from tests.service.pullovers.answers import DIAMOND, GAUGE, WOMEN, numbers

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
        (size, *key): (design[key][size], changed[key][size])
        for key in design
        for size in WOMEN
        if design[key][size] != changed[key][size]
    }
    listed = {(one["size"], one["part"], one["item"]): (one["designed"], one["changed"]) for one in made["changed"]}
    assert expected
    assert listed == expected
    assert len(made["changed"]) == len(expected)


@pytest.mark.parametrize("name", [name for name in CHANGES if "yoke" in CHANGES[name] and len(CHANGES[name]) == 1])
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
        wanted, got = (before["finished"]["depth"]["finished"]["cm"], after["finished"]["depth"]["finished"]["cm"])
        assert abs(wanted - got) <= 10 / 33 / 2 + 0.01


def test_changed_gauges_make_what_the_same_gauge_would_have_made(make):
    made = make(changes={"gauge": {"stitches": 24, "rows": 33}})
    assert made["sizes"] == make(gauge={"stitches": 24, "rows": 33})["sizes"]


def test_kept_counts_are_told_as_designed_with_what_they_measure_at_the_maker_s_gauge(make, plain):
    made = make(changes={"gauge": {"stitches": 24, "rows": 33}, "keep_counts": True})
    for before, after in zip(plain["sizes"], made["sizes"], strict=True):
        assert {name: part for name, part in after.items() if name != "at_own_gauge"} == before
    assert numbers(made) == numbers(plain)
    listed = {(one["size"], one["part"], one["item"]): (one["designed"], one["changed"]) for one in made["changed"]}
    for size in made["sizes"]:
        for name in ("bust", "body_length"):
            here, there = (
                size["finished"][name]["finished"]["cm"],
                size["at_own_gauge"]["finished"][name]["finished"]["cm"],
            )
            assert listed[size["label"], "finished", name] == (here, there)
    assert "own_gauge" in [told["part"] for told in made["instructions"]]


def test_kept_counts_are_measured_fabric_by_fabric(make):
    gauges = {"plain": {"stitches": 20, "rows": 27}, "stranded": {"stitches": 22, "rows": 26}, "rib": GAUGE}
    kept = {"gauges": gauges, "keep_counts": True}
    made = make(changes=kept, chart={"chart": DIAMOND}, yarn={"metres_per_100g": 210})
    assert len(feasible(made)) == len(WOMEN)
    assert {size["at_own_gauge"]["corrections"]["yoke"] < 0 for size in made["sizes"]} == {True}
    make(changes=kept, neck={"front_drop": 4}, body_table="children")


def test_nothing_else_can_be_changed_beside_kept_counts(refuse):
    kept = {"keep_counts": True, "gauge": GAUGE}
    assert [*refuse(changes={"keep_counts": True})] == ["/changes/keep_counts"]
    others = {
        "ease": {"bust": 4},
        "yoke": {"rounds": 60},
        "body_length": 40,
        "sleeve_length": [40],
        "band": {"height": 3},
    }
    refused = refuse(changes={**kept, **others}, labels=["M"])
    assert [*refused] == sorted(f"/changes/{name}" for name in others)
    assert all("keep_counts" in detail for detail in refused.values())


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
