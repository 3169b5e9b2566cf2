"""Fabrics of mixed rounds, against rounds laid one above another."""

from fractions import Fraction
from random import Random

import pytest

from grading_core.fabric import ChartedFabric
from grading_core.gauge import Gauge
from grading_core.rounding import CountRule

PLAIN, CHARTED = Gauge(Fraction(2), Fraction(3)), Gauge(Fraction(5, 2), Fraction(7, 3))


def heights(first, last, rounds):
    """The height of each round, by what it is."""
    charted = [first <= number <= (rounds if last is None else last) for number in range(1, rounds + 1)]
    return [Fraction(3, 7) if each else Fraction(1, 3) for each in charted]


PLACES = [(1, None), (4, None), (-3, None), (1, 9), (5, 9), (-5, 3), (-9, -2), (30, 40), (20, None)]


@pytest.mark.parametrize(("first", "last"), PLACES)
def test_a_height_is_the_sum_of_its_rounds(first, last):
    fabric = ChartedFabric(plain=PLAIN, charted=CHARTED, first=first, last=last)
    for rounds in range(25):
        assert fabric.height_cm(rounds) == sum(heights(first, last, rounds))


@pytest.mark.parametrize(("first", "last"), PLACES)
def test_a_height_between_two_rounds_is_that_part_of_the_round(first, last):
    fabric = ChartedFabric(plain=PLAIN, charted=CHARTED, first=first, last=last)
    for rounds in range(24):
        below, here = sum(heights(first, last, rounds)), heights(first, last, rounds + 1)[-1]
        for part in (Fraction(0), Fraction(1, 4), Fraction(3, 5)):
            assert fabric.exact_rows(below + part * here) == rounds + part


@pytest.mark.parametrize(("first", "last"), PLACES)
def test_each_round_has_the_gauge_of_its_fabric(first, last):
    fabric = ChartedFabric(plain=PLAIN, charted=CHARTED, first=first, last=last)
    known = {Fraction(1, 3): PLAIN, Fraction(3, 7): CHARTED}
    assert [fabric.at(number) for number in range(1, 25)] == [known[high] for high in heights(first, last, 24)]


def test_what_is_below_goes_on_with_the_next_round():
    chance = Random(5)
    for _ in range(60):
        first = chance.randint(-5, 20)
        last = chance.choice([None, first + chance.randint(0, 12)])
        fabric = ChartedFabric(plain=PLAIN, charted=CHARTED, first=first, last=last)
        split = chance.randint(0, 15)
        assert [fabric.below(split).at(number) for number in range(1, 12)] == [
            fabric.at(split + number) for number in range(1, 12)
        ]


def test_rows_for_a_height_obey_a_count_rule():
    fabric = ChartedFabric(plain=PLAIN, charted=CHARTED, first=4, last=6)
    # 3 x 1/3 + 3 x 3/7 = 16/7 cm in 6 rounds
    assert fabric.rows(Fraction(16, 7)) == 6
    assert fabric.rows(Fraction(16, 7), CountRule(4, 1)) == 5


def test_another_knitters_rows_change_both_fabrics_alike():
    gauge = Gauge.over(Fraction(20), Fraction(24), Fraction(10))
    fabric = ChartedFabric(plain=Gauge.over(Fraction(20), Fraction(30), Fraction(10)), charted=gauge, first=3, last=8)
    changed = fabric.with_rows(Fraction(26))
    assert (changed.charted.rows_per_cm, changed.plain.rows_per_cm) == (Fraction(26, 10), Fraction(325, 100))
