from dataclasses import replace
from fractions import Fraction

import pytest

from grading_core.chart.grid import Chart
from grading_core.chart.request import ChartOptions
from grading_core.gauge import Gauge
from grading_core.parts.ribbing import RibRepeat
from grading_core.pullover.request import (
    BandChange,
    BandWishes,
    EdgeWishes,
    Gauges,
    NeckWishes,
    PulloverRequest,
    RuleChange,
)
from grading_core.rounding import CountRule
from grading_core.sizes.request import SentSize

PLAIN, STRANDED, RIB = (Gauge(Fraction(stitches), Fraction(3)) for stitches in (2, 3, 4))
ALL = Gauges(PLAIN, STRANDED, RIB)


@pytest.mark.parametrize(("repeat", "stranded"), [("rows", range(3, 9)), ("once", range(3, 5)), (None, ())])
def test_only_the_rounds_of_a_chart_are_stranded(repeat, stranded):
    chart = ChartOptions(chart=Chart(("#.", ".#"), {}, repeat=repeat), first_round=3) if repeat else None
    fabrics = ALL.fabrics(chart)
    assert [number for number in range(1, 9) if fabrics.rounds.at(number) == STRANDED] == [*stranded]
    assert (fabrics.plain, fabrics.rib) == (PLAIN, RIB)


def test_a_gauge_that_is_not_sent_is_that_of_the_plain_fabric():
    fabrics = Gauges(PLAIN).fabrics(ChartOptions(chart=Chart(("#.",), {})))
    assert {fabrics.rounds.at(1), fabrics.rib} == {PLAIN}


@pytest.mark.parametrize(
    ("wishes", "heights"),
    [
        ({}, (4, 0)),
        ({"lower_front": "front_drop"}, (0, 4)),
        ({"lower_front": "both"}, (2, 2)),
        ({"lower_front": "none"}, (0, 0)),
        ({"raise_height": Fraction(1)}, (1, 0)),
        ({"raise_height": Fraction(0)}, (0, 0)),
        # a drop that is sent takes the place of short rows, one of nothing doesn't
        ({"front_drop": Fraction(3)}, (0, 3)),
        ({"front_drop": Fraction(0)}, (4, 0)),
        ({"front_drop": Fraction(3), "raise_height": Fraction(1)}, (1, 3)),
        ({"lower_front": "both", "front_drop": Fraction(3)}, (2, 3)),
        ({"lower_front": "front_drop", "raise_height": Fraction(1)}, (1, 4)),
        ({"lower_front": "none", "raise_height": Fraction(1)}, (1, 0)),
    ],
)
def test_a_height_that_is_sent_takes_the_place_of_the_usual_one(wishes, heights):
    assert NeckWishes(**wishes).heights_cm(Fraction(4)) == heights


def test_steps_are_even_where_bodies_and_eases_are_left_to_the_service_or_where_it_is_asked():
    request = PulloverRequest(gauges=Gauges(PLAIN))
    sent = replace(request, sizes=(SentSize("S", {"bust": Fraction(84)}),))
    assert request.smooths == (True, False)
    assert replace(request, smoothing="none").smooths == sent.smooths == (False, False)
    assert replace(request, smoothing="steps").smooths == replace(sent, smoothing="steps").smooths == (True, True)


def test_what_a_maker_does_not_change_in_a_band_stays_as_designed():
    design = BandWishes(height=Fraction(4), count_rule=CountRule(4, 2, "up"), construction="double")
    assert BandChange().of(design) == design
    assert BandChange(construction="single").of(design) == replace(design, construction="single")
    changed = BandChange(height=Fraction(2), count_rule=RuleChange(multiple=6)).of(design)
    assert changed == BandWishes(height=Fraction(2), count_rule=CountRule(6, 2, "up"), construction="double")


@pytest.mark.parametrize(
    ("edge", "multiple"),
    [
        (EdgeWishes(), 2),
        (EdgeWishes(count_rule=CountRule(4)), 4),
        (EdgeWishes(rib=RibRepeat(3, 2)), 5),
        (EdgeWishes(rib=RibRepeat(3, 2), count_rule=CountRule(1, 0, "up")), 5),
        (BandWishes(rib=RibRepeat(3, 3), count_rule=CountRule(6)), 6),
    ],
)
def test_an_edge_has_multiples_of_its_rib_or_of_its_rule_or_even_counts(edge, multiple):
    rounding = edge.count_rule.rounding if edge.count_rule else "nearest"
    assert edge.rule == CountRule(multiple, 0, rounding)


@pytest.mark.parametrize(
    ("design", "change", "rib", "rule"),
    [
        # what isn't sent stays
        (BandWishes(rib=RibRepeat(2, 2)), BandChange(), RibRepeat(2, 2), CountRule(4)),
        (
            BandWishes(rib=RibRepeat(2, 2)),
            BandChange(count_rule=RuleChange(rounding="up")),
            RibRepeat(2, 2),
            CountRule(4, 0, "up"),
        ),
        (BandWishes(), BandChange(count_rule=RuleChange(plus=1)), None, CountRule(2, 1)),
        # another rib, or multiple, stands for both
        (BandWishes(rib=RibRepeat(2, 2)), BandChange(count_rule=RuleChange(multiple=6)), None, CountRule(6)),
        (
            BandWishes(count_rule=CountRule(6, 0, "down")),
            BandChange(rib=RibRepeat(2, 2)),
            RibRepeat(2, 2),
            CountRule(4, 0, "down"),
        ),
    ],
)
def test_another_rib_or_multiple_of_a_maker_takes_the_place_of_both_of_the_designs(design, change, rib, rule):
    changed = change.of(design)
    assert (changed.rib, changed.rule) == (rib, rule)


@pytest.mark.parametrize(
    ("asked", "table"),
    [({}, "women"), ({"body_table": "men"}, "men"), ({"sizes": (SentSize("S", {"bust": Fraction(84)}),)}, None)],
)
def test_bodies_are_womens_where_neither_a_table_nor_sizes_are_sent(asked, table):
    assert PulloverRequest(gauges=Gauges(PLAIN), **asked).bodies.body_table == table
