"""The proportions of a pullover without any wish of its own, against published garments and measured bodies."""

from __future__ import annotations

from fractions import Fraction
from itertools import pairwise

import pytest

from grading_core.gauge import Gauge
from grading_core.pullover.grade import grade_pullover
from grading_core.pullover.proportions import (
    usual_back_share,
    usual_depth_cm,
    usual_ease,
    usual_neck,
    usual_underarm_cm,
)
from grading_core.pullover.request import Gauges, PulloverRequest
from grading_core.sizes.bodies import size_bodies
from grading_core.sizes.request import BodiesRequest

INCH = Fraction(254, 100)

# Yoke depth at the centre back of published graded garments, by finished girth. The first three are in inches: a free
# worsted raglan, a pullover of 11 sizes and a tee of 11 sizes; the last two, pullovers of 9 sizes, are in cm.
YOKES_INCH = [
    ((34, 36, 38, 40, 42, 44, 46, 48, 50), (9, 10, 10, 10, 11, 11, 12, 12, 13)),
    (
        (34.25, 37.75, 41.25, 45.75, 49.25, 53.75, 57.25, 61.75, 66.25, 70.75, 74.25),
        (8.75, 9, 9.25, 9.5, 10, 10, 10.5, 10.75, 11, 11.25, 11.75),
    ),
    ((36, 40, 44, 48, 52, 56, 60, 64, 68, 72, 76), (10.5, 10.5, 10.5, 11.25, 11.25, 11.25, 12, 12, 12, 13, 13)),
]
YOKES_CM = [
    ((83, 94, 99, 110, 115, 125, 136, 146, 151), (19, 19, 21, 22, 23, 23, 23, 25, 25)),
    ((86, 94, 102, 110, 118, 124, 134, 142, 150), (19, 20, 22, 23, 24, 25, 26, 28, 30)),
]


def published_depths(girth_cm):
    """The depth of each garment that has this girth between two of its sizes."""
    in_cm = [([x * 2.54 for x in girths], [y * 2.54 for y in depths]) for girths, depths in YOKES_INCH]
    for girths, depths in (*in_cm, *YOKES_CM):
        for (low, shallow), (high, deep) in pairwise(zip(girths, depths, strict=True)):
            if low <= girth_cm <= high:
                yield shallow + (deep - shallow) * (girth_cm - low) / (high - low)


@pytest.mark.parametrize("girth_cm", range(88, 165, 4))
def test_the_yoke_is_as_deep_as_published_garments_of_that_girth_are(girth_cm):
    depths = list(published_depths(girth_cm))
    assert len(depths) >= 2
    assert min(depths) <= usual_depth_cm(Fraction(girth_cm)) <= max(depths)


def test_a_small_yoke_is_a_quarter_of_the_girth():
    # Zimmermann's system of percentages, as a comparison of yokes reports it
    assert usual_depth_cm(Fraction(24) * INCH) == 6 * INCH


# A free worsted raglan in nine sizes at 14 stitches to 4 in: finished girth in inches, cast-on, and back at the neck.
RAGLAN = list(
    zip(
        (34, 36, 38, 40, 42, 44, 46, 48, 50),
        (58, 60, 62, 62, 64, 64, 64, 66, 68),
        (23, 23, 24, 24, 22, 22, 20, 20, 20),
        strict=True,
    )
)


@pytest.mark.parametrize(("girth", "cast_on", "back"), RAGLAN)
def test_the_cast_on_is_within_3_cm_of_a_published_one(girth, cast_on, back):
    # its bodies are not printed: the girth less a tenth of ease, and the middle of the published women's heads
    body = {"bust": girth * INCH / Fraction(11, 10), "head": 22 * INCH}
    assert abs(usual_neck(body, girth * INCH, "adult").usual - cast_on * 4 * INCH / 14) <= 3


@pytest.mark.parametrize(("girth", "cast_on", "back"), RAGLAN)
def test_the_back_has_a_share_of_the_neck_between_a_published_one_and_a_third(girth, cast_on, back):
    # the other bound: back, front and both sleeves a third each (a how-to on raglans)
    share = usual_back_share(girth * INCH / Fraction(11, 10))
    low, high = sorted((Fraction(back, cast_on), Fraction(1, 3)))
    assert low - Fraction(2, 100) <= share <= high + Fraction(2, 100)


def test_the_neck_grows_more_slowly_than_the_bust():
    # 0.156 cm per cm of chest in women of ANSUR II, 0.21 in per inch of bust in ASTM D5585
    necks = [usual_neck({"bust": Fraction(bust)}, Fraction(bust + 10), "adult").usual for bust in (100, 101)]
    slope = necks[1] - necks[0]
    assert Fraction(15, 100) <= slope <= Fraction(21, 100)


def test_the_underarm_lies_between_two_published_shares():
    # 8 % in Zimmermann's system; 12 of 230 stitches in its later version
    share = usual_underarm_cm(Fraction(100)) / 100
    assert Fraction(12, 230) <= share <= Fraction(8, 100)


# ANSUR II (US Army, 2012), our computation from the public records: chest in cm from and below, and the 95th
# percentile of the flexed upper arm.
WOMEN_P95 = [
    (75, 80, 28.0),
    (80, 85, 30.5),
    (85, 90, 32.0),
    (90, 95, 33.3),
    (95, 100, 35.1),
    (100, 105, 36.5),
    (105, 110, 39.0),
    (110, 115, 39.5),
    (115, 120, 41.3),
]
MEN_P95 = [
    (85, 90, 32.2),
    (90, 95, 34.6),
    (95, 100, 36.8),
    (100, 105, 38.6),
    (105, 110, 39.9),
    (110, 115, 41.9),
    (115, 120, 43.7),
    (120, 125, 45.6),
    (125, 130, 46.5),
]


def sleeves(table):
    for body in size_bodies(BodiesRequest(body_table=table)):
        bust, arm = body.values["bust"].cm, body.values["upper_arm"].cm
        yield bust, arm + usual_ease("upper_arm", arm)


@pytest.mark.parametrize(("table", "percentiles"), [("women", WOMEN_P95), ("men", MEN_P95)])
def test_the_sleeve_holds_the_flexed_arm_of_95_in_100_people_of_that_chest(table, percentiles):
    compared = 0
    for bust, sleeve in sleeves(table):
        for low, high, p95 in percentiles:
            if low <= bust < high:
                compared += 1
                assert sleeve >= Fraction(p95).limit_denominator(10)
    assert compared >= 4


def test_the_sleeve_is_about_a_third_of_the_body():
    # 33 % in Zimmermann's system; 33.6 falling to 31.6 % in a pullover of 11 sizes
    for bust, sleeve in sleeves("women"):
        share = sleeve / (bust + usual_ease("bust", bust))
        assert Fraction(30, 100) <= share <= Fraction(37, 100)


@pytest.mark.parametrize("table", ["women", "men", "children", "babies"])
def test_the_ease_at_the_bust_is_a_classic_fit(table):
    # 5 to 10 cm (CYC, bust fit and ease)
    for body in size_bodies(BodiesRequest(body_table=table)):
        assert 5 <= usual_ease("bust", body.values["bust"].cm) <= 10


# Parts of the body's stitches in Zimmermann's system of percentages, as several articles report it with the ranges of
# later writers. Its neck is 33 to 45 % for adults, 50 % for children and up to 60 % for infants, since the head hardly
# shrinks with the body: the smallest women's size, with the bust of a child of 11, is held to a little over 50 %.
PERCENTAGES = {"neck": (33, 54), "sleeve": (30, 38), "underarm": (5, 8.5), "cuff": (12, 25)}


@pytest.mark.parametrize("gauge", [(14, 20), (22, 31), (30, 42)])
def test_the_counts_of_a_womens_pullover_are_the_shares_of_a_published_system(gauge):
    stitches, rows = map(Fraction, gauge)
    made = grade_pullover(PulloverRequest(gauges=Gauges(Gauge.over(stitches, rows, Fraction(10)))))
    assert len(made.sizes) == 9
    rows_of = {row.part: row.values for row in made.table if row.item == "stitches"}
    rows_of |= {row.item: row.values for row in made.table if (row.part, row.item) == ("split", "underarm")}
    for part, (least, most) in PERCENTAGES.items():
        for share, body in zip(rows_of[part], rows_of["body"], strict=True):
            assert least <= 100 * share / body <= most, part
