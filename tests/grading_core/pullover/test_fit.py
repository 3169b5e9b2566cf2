"""Where a garment does not fit its body."""

from __future__ import annotations

from dataclasses import replace
from fractions import Fraction

import pytest

from grading_core.pullover.fit import HAND_TO_WRIST
from grading_core.pullover.grade import grade_pullover
from grading_core.pullover.request import (
    BodyWishes,
    Changes,
    EdgeWishes,
    LevelWish,
    NeckWishes,
    RuleChange,
    Shares,
    SleeveWishes,
    YokeWishes,
)
from grading_core.rounding import CountRule
from grading_core.yoke.request import Adjustment
from tests.grading_core.pullover.knitted_pullovers import PLAIN

M = replace(PLAIN, labels=("M",))

FITS = {"girth_below_body", "armhole_below_body", "cuff_too_tight_for_hand", "cuff_binds"}


def misfits(request_):
    """The places to blame, by code."""
    return {remark.code: remark for remark in grade_pullover(request_).remarks if remark.code in FITS}


def eased(**ease):
    return replace(M, ease={name: Fraction(cm) for name, cm in ease.items()})


WAIST = BodyWishes(levels=(LevelWish("waist", Fraction(16)),))


@pytest.mark.parametrize(
    ("request_", "code", "path", "fitting"),
    [
        (eased(bust=-5), "girth_below_body", ("ease", "bust"), eased(bust=5)),
        (eased(upper_arm=-2), "girth_below_body", ("ease", "upper_arm"), eased(upper_arm=2)),
        # whole stitches take 0.2 cm of an ease of nothing
        (eased(upper_arm=0), "girth_below_body", ("ease", "upper_arm"), eased(upper_arm=1)),
        (
            replace(eased(waist=-3), body=WAIST),
            "girth_below_body",
            ("ease", "waist"),
            replace(eased(waist=3), body=WAIST),
        ),
        # 216 and 210 stitches are wanted where multiples of 40 are allowed: 200 of them are 90.9 cm, the bust is 93.98
        (
            replace(eased(bust=2), body=BodyWishes(count_rule=CountRule(40, 0))),
            "girth_below_body",
            ("body", "count_rule"),
            replace(eased(bust=2), body=BodyWishes(count_rule=CountRule(4))),
        ),
        (
            replace(M, yoke=YokeWishes(depth=Fraction(14))),
            "armhole_below_body",
            ("yoke", "depth"),
            replace(M, yoke=YokeWishes(depth=Fraction(16))),
        ),
        (
            replace(M, changes=Changes(yoke=Adjustment(depth_cm=Fraction(14)))),
            "armhole_below_body",
            ("changes", "yoke"),
            replace(M, changes=Changes(yoke=Adjustment(depth_cm=Fraction(16)))),
        ),
        # a wrist of 15.5 cm has a hand of 18.7 cm: a cuff of 13 cm stretches to 18.2 cm
        (eased(wrist=-3), "cuff_too_tight_for_hand", ("ease", "wrist"), eased(wrist=-1)),
        (
            replace(M, sleeve=SleeveWishes(cuff=EdgeWishes(count_rule=RuleChange(25, 0, "down")))),
            "cuff_too_tight_for_hand",
            ("sleeve", "cuff", "count_rule"),
            replace(M, sleeve=SleeveWishes(cuff=EdgeWishes(count_rule=RuleChange(5, 0, "down")))),
        ),
        (eased(wrist=-1), "cuff_binds", ("ease", "wrist"), eased(wrist=1)),
    ],
)
def test_a_misfit_is_said_with_its_cause_and_a_neighbour_fits(request_, code, path, fitting):
    said = misfits(request_)
    assert said[code].size == "M"
    assert said[code].path == path
    assert code not in misfits(fitting)


def test_shares_of_the_neck_may_be_the_cause_of_a_shallow_armhole():
    shared = replace(
        M, neck=NeckWishes(shares=Shares(*map(Fraction, (45, 45, 5)))), yoke=YokeWishes(depth=Fraction(16))
    )
    remark = misfits(shared)["armhole_below_body"]
    assert "cause.neck_shares" in [cause.id for cause in remark.message.values["because"].values["causes"]]
    assert "armhole_below_body" not in misfits(replace(shared, neck=NeckWishes()))


def test_hands_are_as_much_wider_than_wrists_as_those_of_measured_people():
    # ANSUR II, public data of 2012: mean girths of hand and wrist of 1,986 women and of 4,082 men, in cm
    women, men = Fraction("18.66") / Fraction("15.48"), Fraction("21.23") / Fraction("17.59")
    assert min(women, men) <= HAND_TO_WRIST <= max(women, men)


def test_a_childs_hand_comes_with_the_caution_that_the_ratio_is_that_of_adults():
    baby = replace(PLAIN, body_table="babies", labels=("12 months",), ease={"wrist": Fraction(-3)})
    code = "cuff_too_tight_for_hand"
    assert misfits(baby)[code].message.id == f"warning.{code}_child"
    assert misfits(eased(wrist=-3))[code].message.id == f"warning.{code}"


def test_the_armhole_is_the_yoke_and_half_the_sleeves_top():
    # by the answer's own counts: stitches of the sleeve at the neck, at 22 to 10 cm
    request_ = replace(M, yoke=YokeWishes(depth=Fraction(14)))
    (size,) = grade_pullover(request_).sizes
    made = size.outcome.finished.depth + Fraction(size.outcome.counts.neck.sleeve * 10, 44)
    body = Fraction("18.415")  # 7 to 7 1/2 in published for M: the middle, 7 1/4 in
    assert misfits(request_)["armhole_below_body"].message.values["armhole"] == made
    assert made < body


@pytest.mark.parametrize("sleeve", [{"length": Fraction(12)}, {"style": "short"}, {"style": "elbow"}])
def test_a_short_sleeve_does_not_bind_since_its_cuff_is_as_wide_as_the_arm_there(sleeve):
    assert misfits(replace(M, sleeve=SleeveWishes(**sleeve))) == {}
