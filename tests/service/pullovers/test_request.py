import pytest

from tests.oracles.pullover_answer import feasible
from tests.service.pullovers.answers import WOMEN, numbers, row


def test_every_count_rule_is_kept_and_the_run_says_what_the_table_has(make):
    answer = make(
        neck={"count_rule": {"multiple": 4}},
        body={"count_rule": {"multiple": 8, "plus": 4}, "hem": {"count_rule": {"multiple": 4, "plus": 2}}},
        sleeve={"count_rule": {"multiple": 3}, "cuff": {"count_rule": {"multiple": 6}}},
        band={"count_rule": {"multiple": 4}},
    )
    assert all(count % 8 == 4 for count in row(answer, "body"))
    assert all(count % 4 == 2 for count in row(answer, "hem"))
    (body,) = [one for one in answer["table"] if (one["part"], one["item"]) == ("body", "stitches")]
    smallest, *others = body["values"]
    assert body["run"] == f"{smallest} ({', '.join(map(str, others))})"


@pytest.mark.parametrize("rounding", ["up", "down"])
def test_a_rounding_direction_is_binding(make, rounding):
    answer = make(body={"count_rule": {"multiple": 4, "rounding": rounding}})
    assert len(feasible(answer)) == len(WOMEN)
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
