"""Measurements far from what was wanted, and the causes that are told.

A cause is checked by sending the request again without it: the measurement then has to be within a centimetre, and it
must not be without anything that isn't told.
"""

from __future__ import annotations

from dataclasses import replace
from fractions import Fraction

import pytest

from grading_core.chart.grid import Anchor, Chart, Colour
from grading_core.gauge import Gauge
from grading_core.parts.ribbing import RibRepeat
from grading_core.pullover.grade import grade_pullover
from grading_core.pullover.proportions import USUAL_INCREASES
from grading_core.pullover.request import (
    BandChange,
    BandWishes,
    BodyWishes,
    Changes,
    ChartWishes,
    EdgeWishes,
    Gauges,
    LevelWish,
    NeckWishes,
    RuleChange,
    SleeveWishes,
    YokeWishes,
)
from grading_core.pullover.result import KnittedSize
from grading_core.rounding import CountRule
from grading_core.yoke.request import Adjustment
from tests.grading_core.pullover.knitted_pullovers import DIAMOND, PLAIN, yoke

M = replace(PLAIN, labels=("M",))

WIDE = {"wrist": Fraction(20)}

LONG = Chart(tuple("#." if row % 3 else ".#" for row in range(190)), {".": Colour("ground"), "#": Colour("motif")})


def sized(stitches: int, rounds: int) -> Gauges:
    return Gauges(Gauge.over(Fraction(stitches), Fraction(rounds), Fraction(10)))


def far(request_):
    """What is said to be far, with its place, by the measurement."""
    found = [remark for remark in grade_pullover(request_).remarks if remark.code == "far_from_wanted"]
    assert all(remark.size for remark in found)
    return {measured(remark): remark for remark in found}


def measured(remark):
    return remark.message.values["measure"]


def causes(remark):
    """By id, the causes that are named."""
    return {cause.id: cause.values for cause in remark.message.values["because"].values["causes"]}


def body_rule(multiple: int) -> BodyWishes:
    return BodyWishes(count_rule=CountRule(multiple))


CASES = {
    # 103.4 cm are 227 stitches; of the multiples of 40, 240 is nearest and 5.7 cm too wide
    "bust": (replace(M, body=body_rule(40)), ("body", "count_rule"), replace(M, body=body_rule(4))),
    # 46 cm are 101 stitches; 96, 2.4 cm fewer, is the nearest multiple of 24
    "neck": (
        replace(M, neck=NeckWishes(count_rule=CountRule(24))),
        ("neck", "count_rule"),
        replace(M, neck=NeckWishes(count_rule=CountRule(4))),
    ),
    # 33.5 cm are 74 stitches; 80 is the nearest multiple of 40, 2.8 cm too wide
    "upper_arm": (
        replace(M, sleeve=SleeveWishes(count_rule=CountRule(40))),
        ("sleeve", "count_rule"),
        replace(M, sleeve=SleeveWishes(count_rule=CountRule(2))),
    ),
    "hem": (
        replace(M, body=BodyWishes(hem=EdgeWishes(count_rule=CountRule(60)))),
        ("body", "hem", "count_rule"),
        replace(M, body=BodyWishes(hem=EdgeWishes(count_rule=CountRule(4)))),
    ),
    "cuff": (
        replace(M, sleeve=SleeveWishes(cuff=EdgeWishes(count_rule=CountRule(30)))),
        ("sleeve", "cuff", "count_rule"),
        replace(M, sleeve=SleeveWishes(cuff=EdgeWishes(count_rule=CountRule(4)))),
    ),
    "neckband": (
        replace(M, band=BandWishes(count_rule=CountRule(60))),
        ("band", "count_rule"),
        replace(M, band=BandWishes(count_rule=CountRule(4))),
    ),
    # the hem alone is 5.08 cm high
    "body_length": (
        replace(M, body=BodyWishes(length=Fraction(3))),
        ("body", "hem", "height"),
        replace(M, body=BodyWishes(length=Fraction(3), hem=EdgeWishes(height=Fraction(2)))),
    ),
    # a wide cuff leaves no decreases, and its rib alone is 22 cm high
    "sleeve_length": (
        replace(M, ease=WIDE, sleeve=SleeveWishes(length=Fraction(20), cuff=EdgeWishes(Fraction(22)))),
        ("sleeve", "cuff", "height"),
        replace(M, ease=WIDE, sleeve=SleeveWishes(length=Fraction(20), cuff=EdgeWishes(Fraction(5)))),
    ),
    # 24 increases of a sleeve in every second round are 48 rounds, 15.5 cm
    "depth": (
        replace(PLAIN, labels=("XL",), yoke=YokeWishes(depth=Fraction(14))),
        ("yoke", "step"),
        replace(PLAIN, labels=("XL",), yoke=replace(yoke(step=1), depth=Fraction(14))),
    ),
    # the same in every round: 28 increases of a sleeve that is 16 cm wider than the arm
    "depth for an ease": (
        replace(M, ease={"upper_arm": Fraction(16)}, yoke=replace(yoke(step=1), depth=Fraction(8))),
        ("ease", "upper_arm"),
        replace(M, yoke=replace(yoke(step=1), depth=Fraction(8))),
    ),
}  # fmt: skip


@pytest.mark.parametrize("measurement", CASES)
def test_each_measurement_far_from_what_was_wanted_is_said_with_its_cause(measurement):
    request_, path, mended = CASES[measurement]
    measurement = measurement.split(" for ")[0]
    said = far(request_)
    assert said[measurement].path == path
    assert (said[measurement].size,) == request_.labels
    assert measurement not in far(mended)


def test_both_numbers_are_told_and_they_are_those_of_the_answer():
    made = grade_pullover(CASES["bust"][0])
    (remark,) = [each for each in made.remarks if each.code == "far_from_wanted"]
    # 240 stitches at 22 to 10 cm, and 93.98 cm of the published body with a tenth of ease
    told = remark.message.values
    assert (told["finished"], told["wanted"]) == (Fraction(2400, 22), Fraction("93.98") * Fraction(11, 10))
    assert causes(remark) == {"cause.multiple": {"multiple": 40, "rounding": "nearest", "of": "body"}}


def test_the_body_is_within_a_centimetre_or_is_said_to_be_far():
    # by the answer's own numbers, for every size and measurement
    request_ = replace(PLAIN, body=body_rule(12), yoke=YokeWishes(depth=Fraction(19)))
    made = grade_pullover(request_)
    remarks = {(each.size, measured(each)) for each in made.remarks if each.code == "far_from_wanted"}
    for size in made.sizes:
        knitted = size.outcome
        for name in ("bust", "depth", "body_length"):
            if isinstance(knitted, KnittedSize):
                assert (abs(knitted.measured(name).difference_cm) > 1) == ((size.label, name) in remarks)


@pytest.mark.parametrize(
    ("stitches", "rounds", "label", "anchor", "measurement", "path"),
    [
        # a bust of 134.5 cm is 188.3 stitches; half of the body has an even back, so that what fits the sleeve is
        # farther than a centimetre away
        (14, 19, "2X", Anchor(Fraction(5, 2), Fraction(5, 2), Fraction(5, 2)), "bust", ("chart", "anchor", "back")),
        (6, 8, "L", Anchor(Fraction(3), Fraction(3), Fraction(5, 2)), "underarm", ("chart", "anchor", "sleeve")),
    ],
)
def test_a_parity_that_the_chart_asks_is_blamed_on_its_anchor(stitches, rounds, label, anchor, measurement, path):
    gauges = sized(stitches, rounds)
    request_ = replace(
        PLAIN, gauges=gauges, labels=(label,), body=body_rule(1), chart=ChartWishes(chart=DIAMOND, anchor=anchor)
    )
    remark = far(request_)[measurement]
    assert remark.path == path
    assert "cause.multiple" not in causes(remark)
    assert measurement not in far(replace(request_, chart=None))


def test_a_chart_without_an_anchor_is_blamed_itself():
    shifted = Chart(("#..#", "...."), {".": Colour("ground"), "#": Colour("motif")})
    request_ = replace(PLAIN, gauges=sized(14, 19), labels=("2X",), chart=ChartWishes(chart=shifted))
    assert far(request_)["bust"].path == ("chart",)


def test_causes_of_which_each_alone_would_do_are_all_named():
    # a body of 2 x (back + 2 + underarm) stitches: with an even back and an even underarm a multiple of 4, 3.3 cm apart
    # at 12 to 10 cm; 124 of them are 103.3 cm, 126 or 122 are 1.7 cm away
    wishes = replace(
        PLAIN,
        gauges=sized(12, 17),
        labels=("M",),
        ease={"bust": Fraction(105) - Fraction("93.98")},
        chart=ChartWishes(chart=DIAMOND, anchor=Anchor(Fraction(5, 2), Fraction(5, 2), Fraction(5, 2))),
    )
    remark = far(replace(wishes, yoke=YokeWishes(seam_stitches=0)))["bust"]
    assert remark.path is None
    assert causes(remark)["cause.anchor"] == {"section": "back", "parity": "even"}
    assert causes(remark)["cause.seam_stitches"] == {"stitches": 0}
    assert remark.message.values["because"].id == "cause.alone"
    assert "bust" not in far(wishes)
    assert "bust" not in far(replace(wishes, chart=None, yoke=YokeWishes(seam_stitches=0)))


def test_what_only_goes_together_is_said_to_go_together():
    # the hem is far by its own multiple and by the body's
    request_ = replace(M, body=BodyWishes(count_rule=CountRule(40), hem=EdgeWishes(count_rule=CountRule(27))))
    assert "bust" in far(request_)
    hem = far(request_)["hem"]
    because = hem.message.values["because"]
    assert because.id == "cause.together"
    assert {(cause.values["multiple"], cause.values["of"]) for cause in because.values["causes"]} == {
        (40, "body"),
        (27, "hem"),
    }
    assert hem.path is None
    for wishes in (BodyWishes(count_rule=CountRule(40)), BodyWishes(hem=EdgeWishes(count_rule=CountRule(27)))):
        (size,) = grade_pullover(replace(request_, body=wishes)).sizes
        assert abs(size.outcome.finished.hem - size.outcome.target.bust) > 1
    assert "hem" not in far(M)


def test_a_size_that_the_others_hold_is_blamed_on_them():
    request_ = replace(PLAIN, gauges=sized(8, 11), ease={"bust": Fraction(8), "upper_arm": Fraction(5)})
    remarks = [each for each in grade_pullover(request_).remarks if each.code == "far_from_wanted"]
    held = [each for each in remarks if "causes" in each.message.values["because"].values]
    held = [each for each in held if "cause.other_sizes" in causes(each)]
    assert held
    for remark in held:
        assert [*causes(remark)] == ["cause.other_sizes"]
        assert measured(remark) not in far(replace(request_, labels=(remark.size,)))


def test_a_chart_that_makes_the_body_longer_is_its_cause():
    charted = replace(M, chart=ChartWishes(chart=LONG))
    remark = far(charted)["body_length"]
    assert remark.path == ("chart",)
    assert "body_length" not in far(replace(charted, chart=ChartWishes(chart=replace(LONG, rows=LONG.rows[:4]))))


@pytest.mark.parametrize(
    ("options", "field"),
    [({"plain_rounds_at_end": 40}, "plain_rounds_at_end"), ({"first_increase_round": 40}, "first_increase_round")],
)
def test_increases_that_are_kept_from_their_rounds_are_the_cause_of_a_deep_yoke(options, field):
    # two increases in a body round and one in a sleeve's: 27 rounds of M are needed, two rounds apart
    request_ = replace(M, yoke=yoke(**options))
    remark = far(request_)["depth"]
    assert f"cause.{field}" in causes(remark)
    assert "depth" not in far(M)


def test_a_body_that_is_never_increased_doubly_is_the_cause_of_a_deep_yoke():
    options = replace(USUAL_INCREASES, double_body="never")
    remark = far(replace(M, yoke=YokeWishes(depth=Fraction(18), options=options)))["depth"]
    # of the two reasons either alone would do
    assert {*causes(remark)} == {"cause.double_body", "cause.step"}
    assert "depth" not in far(replace(M, yoke=YokeWishes(depth=Fraction(18))))


def test_shaping_by_four_stitches_is_the_cause_of_a_level():
    # at 12 stitches to 10 cm four of them are 3.3 cm
    levels = BodyWishes(levels=(LevelWish("waist", Fraction(16)),))
    eases = [{"waist": Fraction(ease)} for ease in (20, 21, 22, 23)]
    said = [far(replace(M, gauges=sized(12, 17), body=levels, ease=ease)) for ease in eases]
    found = [each["waist"] for each in said if "waist" in each]
    assert found
    assert len(found) < 4
    assert all(each.path == ("body", "levels", 0) for each in found)
    assert {each.message.values["because"].values["stitches"] for each in found} == {4}


def test_a_makers_yoke_that_changes_the_total_length_is_its_cause_and_says_what_restores_it():
    shallower = replace(M, changes=Changes(yoke=Adjustment(depth_change_cm=Fraction(-2))))
    remark = far(shallower)["total_length"]
    assert remark.path == ("changes", "yoke")
    (size,) = grade_pullover(M).sizes
    restored = remark.message.values["body"]
    assert restored == pytest.approx(float(size.outcome.finished.body_length) + 2, abs=0.5)
    with_body = Changes(yoke=Adjustment(depth_change_cm=Fraction(-2)), body_length=Fraction(restored))
    assert far(replace(M, changes=with_body)) == {}


def test_a_makers_band_is_blamed_where_the_maker_asks_for_it():
    changed = replace(M, changes=Changes(band=BandChange(count_rule=RuleChange(multiple=60))))
    assert far(changed)["neckband"].path == ("changes", "band", "count_rule")
    kept = replace(M, band=BandWishes(count_rule=CountRule(60)), changes=Changes(body_length=Fraction(40)))
    assert far(kept)["neckband"].path == ("band", "count_rule")


def test_a_rib_is_blamed_where_it_is_asked_for():
    wide = RibRepeat(30, 30)
    assert far(replace(M, body=BodyWishes(hem=EdgeWishes(rib=wide))))["hem"].path == ("body", "hem", "rib")
    assert far(replace(M, sleeve=SleeveWishes(cuff=EdgeWishes(rib=wide))))["cuff"].path == ("sleeve", "cuff", "rib")
    assert far(replace(M, band=BandWishes(rib=wide)))["neckband"].path == ("band", "rib")
    changed = replace(M, band=BandWishes(rib=RibRepeat(1, 1)), changes=Changes(band=BandChange(rib=wide)))
    assert far(changed)["neckband"].path == ("changes", "band", "rib")


def test_the_warnings_are_those_of_the_changed_garment():
    design = replace(M, body=BodyWishes(length=Fraction(3)))
    assert "body_length" in far(design)
    assert "body_length" not in far(replace(design, changes=Changes(body_length=Fraction(40))))
