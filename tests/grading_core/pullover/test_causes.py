"""What is given up to find a cause, and how often counts are solved for it."""

from __future__ import annotations

from dataclasses import replace
from fractions import Fraction

import pytest

from grading_core.gauge import Gauge
from grading_core.pullover.causes import MOST_SIZES, Inquiry, relaxations, rule_name
from grading_core.pullover.garment import knit_garment
from grading_core.pullover.grade import grade_pullover
from grading_core.pullover.making import Making
from grading_core.pullover.remarks import garment_remarks
from grading_core.pullover.request import (
    BodyWishes,
    EdgeWishes,
    Gauges,
    NeckWishes,
    RuleChange,
    SleeveWishes,
    YokeWishes,
)
from grading_core.pullover.result import KnittedSize
from grading_core.rounding import CountRule
from grading_core.sizes.request import SentSize
from grading_core.yoke.request import Options
from tests.grading_core.pullover.knitted_pullovers import PLAIN
from tests.grading_core.pullover.test_making import making_of

DEMANDING = replace(
    PLAIN,
    ease={"bust": Fraction(12), "upper_arm": Fraction(6), "wrist": Fraction(3)},
    neck=NeckWishes(count_rule=CountRule(12), circumference=Fraction(50)),
    body=BodyWishes(count_rule=CountRule(8), length=Fraction(30), hem=EdgeWishes(count_rule=RuleChange(16))),
    sleeve=SleeveWishes(count_rule=CountRule(10), length=Fraction(40), cuff=EdgeWishes(count_rule=RuleChange(12))),
    yoke=YokeWishes(
        depth=Fraction(19),
        underarm=Fraction(7),
        seam_stitches=2,
        options=Options(step=2, first_increase_round=4, plain_rounds_at_end=5),
    ),
)


def places(request_):
    return {".".join(map(str, each.cause.path)) for each in relaxations(making_of(request_))}


def test_every_rule_and_every_length_that_is_asked_for_can_be_given_up():
    assert places(DEMANDING) == {
        *("neck.count_rule", "body.count_rule", "sleeve.count_rule", "yoke.seam_stitches"),
        *("yoke.step", "yoke.first_increase_round", "yoke.plain_rounds_at_end", "yoke.double_body"),
        *("body.hem.count_rule", "body.hem.height", "sleeve.cuff.count_rule", "sleeve.cuff.height", "band.count_rule"),
        *("ease.bust", "ease.upper_arm", "ease.wrist", "neck.circumference"),
        *("yoke.depth", "yoke.underarm", "body.length", "sleeve.length"),
    }


def test_what_nobody_asked_for_is_not_given_up():
    # a rib repeats over two stitches, and increases come in every second round, by default
    assert places(PLAIN) == {
        *("yoke.step", "body.hem.count_rule", "body.hem.height", "sleeve.cuff.count_rule", "sleeve.cuff.height"),
        "band.count_rule",
    }


def test_a_multiple_is_only_blamed_where_there_is_one():
    assert rule_name(CountRule(1, 0, "down"), "body").values == {"rounding": "down", "of": "body"}


@pytest.mark.parametrize("number", [9, 40])
def test_no_answer_solves_more_sizes_again_than_are_allowed(number, monkeypatch):
    solved = []

    def counting(self, known=None, targets=None):
        solved.append(len(self.labels))
        return solve(self, known, targets)

    solve = Making.solve
    monkeypatch.setattr(Making, "solve", counting)
    names = ("bust", "upper_arm", "wrist", "arm_length", "back_waist_length")
    bodies = [(70 + step, 24 + Fraction(step, 4), 15, 40, 40) for step in range(number)]
    sizes = tuple(
        SentSize(f"{step:02}", {name: Fraction(cm) for name, cm in zip(names, body, strict=True)})
        for step, body in enumerate(bodies)
    )
    gauges = Gauges(Gauge.over(Fraction(16), Fraction(22), Fraction(10)))
    garment = knit_garment(replace(DEMANDING, gauges=gauges, sizes=sizes))
    knitted = {label: size for label, size in garment.outcomes.items() if isinstance(size, KnittedSize)}
    del solved[:]
    remarks = [*garment_remarks(garment.making, garment.solved.by_label, knitted)]
    assert sum(remark.code == "far_from_wanted" for remark in remarks) > number
    assert 0 < sum(solved) <= MOST_SIZES
    reasons = [remark.message.values.get("because") for remark in remarks]
    assert any(each is not None and each.id == "cause.not_sought" for each in reasons) == (number == 40)
    # each rule once for all sizes: none of the sets of sizes is solved over and over for each of them
    assert len([size for size in solved if size == number]) <= MOST_SIZES // number


def test_a_garment_that_is_as_wanted_is_not_solved_again(monkeypatch):
    solved = []
    solve = Making.solve
    monkeypatch.setattr(Making, "solve", lambda *asked: solved.append(asked) or solve(*asked))
    assert grade_pullover(replace(PLAIN, labels=("S", "M", "L"))).remarks == ()
    assert len(solved) == 1


def test_what_is_never_as_wanted_has_no_cause():
    making = making_of(replace(PLAIN, labels=("M",), body=BodyWishes(count_rule=CountRule(8))))
    inquiry = Inquiry(making, making.solve().by_label)
    assert inquiry.causes("bust", ["M"], lambda size: False).found == ()
    found = inquiry.causes("bust", ["M"], lambda size: size.counts.body % 8 != 0)
    assert [cause.path for cause in found.found] == [("body", "count_rule")]
