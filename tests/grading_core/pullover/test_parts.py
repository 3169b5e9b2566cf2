"""The parts of one size, where the pullover decides what they are asked; expected values by hand."""

from dataclasses import replace
from fractions import Fraction

import pytest

from grading_core.chart.grid import Chart, Colour
from grading_core.errors import Impossible
from grading_core.gauge import Gauge
from grading_core.pullover.grade import grade_pullover
from grading_core.pullover.request import (
    BodyWishes,
    Changes,
    ChartWishes,
    DartWishes,
    EdgeWishes,
    Gauges,
    LevelWish,
    PulloverRequest,
    SleeveWishes,
)
from grading_core.pullover.result import KnittedSize

REQUEST = PulloverRequest(
    gauges=Gauges(Gauge.over(Fraction(22), Fraction(31), Fraction(10)), rib=Gauge(Fraction(2), Fraction(4)))
)


def knit(request: PulloverRequest):
    (size,) = grade_pullover(request).sizes
    return size.outcome


# 2.54 and 5.08 cm at 4 rounds to the cm
@pytest.mark.parametrize(("label", "rounds"), [("4", 10), ("16", 20)])
def test_hem_and_cuff_are_2_in_high_and_1_in_for_a_young_child(label, rounds):
    size = knit(replace(REQUEST, body_table="children", labels=(label,)))
    assert size.body.hem.rounds == size.sleeve.cuff.rounds == rounds


def test_hem_and_cuff_are_as_high_as_asked():
    hem, cuff = EdgeWishes(Fraction(3)), EdgeWishes(Fraction(7))
    size = knit(replace(REQUEST, labels=("M",), body=BodyWishes(hem=hem), sleeve=SleeveWishes(cuff=cuff)))
    assert (size.body.hem.rounds, size.sleeve.cuff.rounds) == (12, 28)


def test_a_length_in_a_nearest_change_has_its_rib():
    short = replace(REQUEST, labels=("M",), sleeve=SleeveWishes(length=Fraction(8), plain_after=12))
    (nearest,) = [each for each in knit(short).nearest if each.field == "sleeve.length"]
    mended = knit(replace(short, sleeve=SleeveWishes(length=nearest.value, plain_after=12)))
    # not a round to spare, though a longer sleeve ends in a narrower cuff
    assert len(mended.sleeve.decrease_rounds) + 12 == mended.sleeve.rounds
    assert abs(mended.finished.sleeve_length - nearest.value) <= Fraction(1, 200)  # as it is written


def darted(**wishes):
    """Size M with the darts' extra, and other wishes for its body."""
    return replace(REQUEST, labels=("M",), body=BodyWishes(**wishes))


def test_darts_are_counted_from_side_to_side_after_the_shaping_above_them():
    size = knit(
        replace(
            darted(
                bust_darts=DartWishes(Fraction(2)), front_extra=Fraction(4), levels=(LevelWish("waist", Fraction(4)),)
            ),
            ease={"waist": Fraction(23)},
        )
    )
    # 4 cm of 3.1 rounds are 12, and 73.66 and 23 cm of 2.2 stitches 212.65: three rounds lead from 226 to 214
    counts, darts = size.counts, size.body.bust_darts
    assert (counts.body, size.body.shaping, darts.round) == (226, ((4, -4), (8, -4), (12, -4)), 9)
    # two of them lie above round 9, and each takes two stitches from the front
    assert darts.front == counts.split.front + 2 * counts.line_to_body + 2 * (counts.underarm // 2) - 4
    # 2 cm of 3.1 rows are 6.2, nearest three pairs
    assert darts.rows == 6
    assert size.finished.front_length == size.finished.body_length + Fraction(60, 31)


def test_a_front_is_wider_than_the_back_and_the_bust_is_that_of_both():
    usual, wider = knit(darted()), knit(darted(front_extra=Fraction(5)))
    # 5 cm of 2.2 stitches are 11, nearest 12
    assert wider.counts.split.front - wider.counts.split.back == 12
    assert wider.counts.body == usual.counts.body
    assert wider.finished.bust == usual.finished.bust
    assert wider.finished.front_extra == Fraction(12) / Fraction(22, 10)
    assert wider.yoke.yoke.increases[1] - wider.yoke.yoke.increases[0] == 6


@pytest.mark.parametrize(
    ("request_", "field"),
    [
        # 9 rounds and a hem are 8 cm
        (darted(bust_darts=DartWishes(Fraction(2)), length=Fraction(6)), "body.length"),
        (darted(bust_darts=DartWishes(Fraction(2)), length=Fraction(6)), "body.bust_darts.extra"),
        (darted(bust_darts=DartWishes(Fraction(60))), "body.bust_darts.extra"),
        (darted(front_extra=Fraction(80)), "body.front_extra"),
        # a waist of 30 cm has 33 stitches on each half, and a front wider by 30 cm has 34 more than half of both
        (
            replace(
                darted(front_extra=Fraction(30), levels=(LevelWish("waist", Fraction(20)),)),
                ease={"waist": Fraction("-43.66")},
            ),
            "body.front_extra",
        ),
        (
            replace(
                darted(bust_darts=DartWishes(Fraction(2))),
                chart=ChartWishes(chart=Chart(("#.",) * 130, {"#": Colour("a"), ".": Colour("b")}, repeat="once")),
            ),
            "body.bust_darts.extra",
        ),
    ],
)
def test_a_bust_that_cannot_be_shaped_names_what_alone_would_do(request_, field):
    refused = knit(request_)
    assert isinstance(refused, Impossible)
    (nearest,) = [each for each in refused.nearest if each.field == field]
    change = {
        "body.length": {"length": nearest.value},
        "body.bust_darts.extra": {"bust_darts": DartWishes(nearest.value)},
        "body.front_extra": {"front_extra": nearest.value},
    }[field]
    assert isinstance(knit(replace(request_, body=replace(request_.body, **change))), KnittedSize)


def test_a_sleeve_of_12_cm_is_not_drawn_in_to_the_wrist():
    size = knit(replace(REQUEST, labels=("M",), sleeve=SleeveWishes(length=Fraction(12))))
    arm, wrist, part = size.target.upper_arm, size.target.long_wrist, 12 / size.target.long_sleeve
    # a rib of two stitches to the cm, on a multiple of two
    assert abs(size.finished.wrist - (arm + (wrist - arm) * part)) <= Fraction(1, 2)
    assert len(size.sleeve.decrease_rounds) < size.sleeve.rounds / 2


def test_a_change_of_ease_that_leaves_no_body_offers_a_body_length_among_the_changes():
    impossible = knit(replace(REQUEST, labels=("M",), changes=Changes(ease={"bust": Fraction(400)})))
    assert ("changes", "body_length") in [each.path for each in (*impossible.nearest, *impossible.together)]
