"""Rounds of a size, told together where they are worked alike."""

from fractions import Fraction

import pytest

from grading_core.gauge import Gauge
from grading_core.pullover.grade import grade_pullover
from grading_core.pullover.request import BandWishes, Gauges, PulloverRequest
from grading_core.pullover.rounds import MOST_TOGETHER, Rounds, Step, all_rounds

GAUGE = Gauge.over(Fraction(22), Fraction(31), Fraction(10))


@pytest.fixture(scope="module")
def told():
    def made(**wishes):
        pullover = grade_pullover(PulloverRequest(gauges=Gauges(GAUGE), labels=("M",), **wishes))
        size = pullover.sizes[0].outcome
        return size, {each.part: each for each in all_rounds(size, pullover.instructions)}

    return made


def test_parts_come_in_the_order_of_work(told):
    _, parts = told()
    assert [*parts] == ["neck", "yoke", "split", "body", "hem", "sleeve", "cuff", "band"]
    assert {part for part, each in parts.items() if each.times == 2} == {"sleeve", "cuff"}


def test_no_round_is_left_out_or_told_twice(told):
    size, parts = told()
    expected = {
        "yoke": size.counts.rounds,
        "body": size.body.rounds,
        "hem": size.body.hem.rounds,
        "sleeve": size.sleeve.rounds,
        "cuff": size.sleeve.cuff.rounds,
        "band": size.band.rounds,
    }
    for part, rounds in expected.items():
        spans = [line for line in parts[part].lines if isinstance(line, Rounds)]
        assert [number for each in spans for number in range(each.first, each.last + 1)] == [*range(1, rounds + 1)]


def test_plain_rounds_are_told_together_and_no_more_than_are_counted_at_a_glance(told):
    size, parts = told()
    lengths = [each.last - each.first + 1 for each in parts["body"].lines]
    # round 1 divides body and sleeves
    plain = size.body.rounds - 1
    assert lengths == [1, *[MOST_TOGETHER] * (plain // MOST_TOGETHER), plain % MOST_TOGETHER]


def test_a_round_that_increases_stands_alone(told):
    size, parts = told()
    increases = {each.round for each in size.yoke.increase_rounds}
    assert {each.first for each in parts["yoke"].lines if each.does} == increases
    assert all(each.first == each.last for each in parts["yoke"].lines if each.does)


def test_a_folded_band_has_its_fold_and_ends_with_its_join(told):
    size, parts = told(band=BandWishes(construction="double_with_fold_round"))
    lines = parts["band"].lines
    (fold,) = [each for each in lines if each.does.id == "band.fold"]
    assert fold.first == fold.last == size.band.edge.rounds + 1
    assert isinstance(lines[-1], Step)
    assert lines[-1].does.id == "band.join"
