"""From finished measurements to stitches, and back to lengths where no counts are possible; expected values by hand."""

from dataclasses import replace
from fractions import Fraction

import pytest

from grading_core.chart.grid import Anchor
from grading_core.codes import ReasonCode
from grading_core.errors import Impossible, Nearest
from grading_core.fabric import ChartedFabric
from grading_core.gauge import Gauge
from grading_core.pullover.bodies import Wearer
from grading_core.pullover.lengths import Asked
from grading_core.pullover.measurements import TargetMeasurements
from grading_core.pullover.request import BodyWishes, Fabrics, NeckWishes, Shares, SleeveWishes, YokeWishes
from grading_core.pullover.targets import count_rules, rule_problems, stitch_targets, without_counts
from grading_core.rounding import CountRule
from grading_core.yoke.request import Options

YOKE, BELOW = Gauge(Fraction(2), Fraction(3)), Gauge(Fraction(5, 2), Fraction(4))
FABRICS = Fabrics(
    plain=BELOW, rib=Gauge(Fraction(1), Fraction(1)), rounds=ChartedFabric(plain=BELOW, charted=YOKE, first=1, last=66)
)
SMALL = TargetMeasurements(
    label="S",
    bust=Fraction(100),
    upper_arm=Fraction(34),
    neck=Fraction(44),
    depth=Fraction(22),
    underarm=Fraction(6),
    raise_height=Fraction(3),
    front_drop=Fraction(0),
    wrist=Fraction(18),
    body_length=Fraction(30),
    sleeve_length=Fraction(43),
    long_wrist=Fraction(18),
    long_sleeve=Fraction(43),
    reach=None,
    levels=(),
    front_extra=Fraction(4),
    back_share=Fraction(3, 8),
    front_share=Fraction(1, 4),
)


def test_neck_and_yoke_are_counted_at_the_yoke_s_gauge_and_what_lies_below_at_its_own():
    (target,) = stitch_targets([SMALL], FABRICS, 2)
    assert (target.neck, target.rounds) == (88, 66)
    assert (target.body, target.sleeve, target.underarm, target.front_extra) == (250, 85, 15, 10)
    # of 80 stitches beside four lines of two: three eighths, a quarter, and half of the rest
    assert (target.neck_back, target.neck_front, target.neck_sleeve) == (30, 20, 15)


def test_a_section_whose_share_falls_faster_than_the_neck_grows_stays():
    larger = replace(SMALL, label="M", neck=Fraction(45), back_share=Fraction(1, 4))
    _, target = stitch_targets([SMALL, larger], FABRICS, 2)
    assert target.neck_back == 30


def test_a_section_takes_at_most_half_of_what_the_neck_grows_by():
    larger = replace(SMALL, label="M", neck=Fraction(45), front_share=Fraction(1, 2))
    _, target = stitch_targets([SMALL, larger], FABRICS, 2)
    assert target.neck_front == 20 + Fraction(90 - 88, 2)


def rules(neck=NeckWishes(), yoke=YokeWishes(), body=BodyWishes(), anchor=None):  # noqa: B008
    return count_rules(neck, yoke, body, SleeveWishes(), anchor)


def test_half_of_each_line_goes_to_the_body_unless_asked_otherwise():
    three = YokeWishes(options=Options(line_stitches=3))
    assert rules(yoke=three).line_to_body == 1
    assert rules(yoke=replace(three, line_to_body=0)).line_to_body == 0


def test_a_front_may_be_narrower_only_where_its_share_is():
    assert not rules().narrower_front
    assert rules(NeckWishes(shares=Shares(Fraction(3), Fraction(2), Fraction(1)))).narrower_front


def test_an_anchor_on_a_column_makes_odd_sections_and_one_between_columns_even_ones():
    made = rules(anchor=Anchor(Fraction(3), Fraction(3), Fraction(5, 2)))
    assert (made.back_parity, made.sleeve_parity) == ("odd", "even")


@pytest.mark.parametrize(
    ("anchor_asked", "paths"),
    [
        (True, [("neck", "count_rule"), ("chart", "anchor", "back"), ("chart", "anchor", "sleeve")]),
        (False, [("neck", "count_rule"), ("chart",)]),
    ],
)
def test_rules_that_contradict_each_other_are_told_where_they_are_asked(anchor_asked, paths):
    # odd sections all round: 2 odd backs and 2 odd sleeves are a multiple of 4
    odd = rules(NeckWishes(count_rule=CountRule(4, 2)), anchor=Anchor(*[Fraction(3)] * 3))
    assert [problem.path for problem in rule_problems(odd, anchor_asked=anchor_asked)] == paths


WEARER = Wearer("S", {"bust": Fraction(90), "upper_arm": Fraction(28)}, child=False, young=False)


@pytest.mark.parametrize(
    ("nearest", "expected"),
    [
        (Nearest(("rounds",), 60), Nearest(("yoke", "depth"), Fraction(20))),
        (Nearest(("underarm",), 20), Nearest(("yoke", "underarm"), Fraction(8))),
        (Nearest(("front_extra",), 20), Nearest(("body", "front_extra"), Fraction(8))),
        (Nearest(("body",), 260), Nearest(("changes", "ease", "bust"), Fraction("14.1"))),
        (Nearest(("sleeve",), 80), Nearest(("ease", "upper_arm"), Fraction("4.1"))),
        (Nearest(("step",), 1), Nearest(("yoke", "step"), 1)),
        (Nearest(("neck", "count_rule", "multiple"), 4), Nearest(("neck", "count_rule", "multiple"), 4)),
    ],
)
def test_a_count_that_would_do_is_told_as_the_length_that_can_be_asked(nearest, expected):
    lengths = {"bust": Asked(("changes", "ease", "bust"), Fraction(2))}
    told = without_counts(
        Impossible(ReasonCode.NOTHING_LEFT, "Because.", (nearest,)), WEARER, SMALL.depth, lengths, FABRICS
    )
    assert told == Impossible(ReasonCode.NOTHING_LEFT, "Because.", (expected,))
