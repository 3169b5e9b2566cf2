"""What is said of a number that does not hold, as ids and values."""

import pytest

from grading_core.codes import ProofCode
from grading_core.proof.figures import Key, grains
from grading_core.proof.words import falls, off_rule, row_title
from grading_core.rounding import CountRule


@pytest.mark.parametrize(
    ("key", "id"),
    [
        (Key("neck", "back"), "title.neck_back"),
        (Key("finished", "bust", inches=True), "title.finished_bust"),
        (Key("yarn", "grams_2"), "proof.yarn"),
        (Key("yarn", "needles_2"), "proof.row"),
        (Key("pocket", "depth"), "proof.row"),
    ],
)
def test_a_row_is_called_as_in_the_table_where_a_table_has_it(key: Key, id: str) -> None:
    assert row_title(key).id == id


@pytest.mark.parametrize(
    ("key", "id"),
    [
        (Key("neck", "back"), "proof.number"),
        (Key("finished", "bust"), "proof.cm"),
        (Key("finished", "bust", inches=True), "proof.inch"),
    ],
)
def test_a_length_is_said_with_its_unit_and_a_count_without(key: Key, id: str) -> None:
    said = falls(ProofCode.FALLS, key, grains(34), "S", grains(36)).values
    assert (said["printed"].id, said["before"].id) == (id, id)


@pytest.mark.parametrize(("plus", "parity"), [(0, "even"), (1, "odd")])
def test_a_chart_asks_for_odd_or_even(plus: int, parity: str) -> None:
    """Two stitches to a multiple: plus 1 is odd."""
    said = off_rule(ProofCode.CHART_PARITY, Key("neck", "back"), grains(35 - plus), CountRule(2, plus), grains(36))
    assert said.values["parity"] == parity


def test_a_count_off_its_multiple_is_said_with_the_multiple_and_the_nearest() -> None:
    said = off_rule(ProofCode.COUNT_RULE, Key("hem", "stitches"), grains(213), CountRule(4, 2), grains(214)).values
    assert (said["multiple"], said["plus"], said["expected"].values["value"]) == (4, 2, 214)
