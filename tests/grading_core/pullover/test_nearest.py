"""What would make an impossible size possible: every offer is applied here by hand and knitted again."""

from dataclasses import replace
from fractions import Fraction

import pytest

from grading_core.errors import Impossible
from grading_core.gauge import Gauge
from grading_core.pullover.garment import knit_garment
from grading_core.pullover.grade import grade_pullover
from grading_core.pullover.nearest import changed, with_nearest
from grading_core.pullover.request import (
    BodyWishes,
    Changes,
    EdgeWishes,
    Gauges,
    LevelWish,
    NeckWishes,
    PulloverRequest,
    SleeveWishes,
    YokeWishes,
)
from grading_core.pullover.result import KnittedSize
from grading_core.rounding import CountRule
from grading_core.sizes.request import EvenSteps, SentSize
from grading_core.yoke.request import Adjustment, Options
from tests.grading_core.pullover.knitted_pullovers import PLAIN

DEEP = replace(PLAIN, yoke=YokeWishes(depth=Fraction(56)))

TWO_OBSTACLES = replace(
    PLAIN,
    labels=("5X",),
    yoke=YokeWishes(depth=Fraction(10), options=Options(step=2, double_body="if_needed")),
    sleeve=SleeveWishes(length=Fraction(12), plain_before=25),
)


def impossible(request: PulloverRequest) -> dict[str, Impossible]:
    return {size.label: size.outcome for size in grade_pullover(request).sizes if isinstance(size.outcome, Impossible)}


def is_possible(request: PulloverRequest, label: str) -> bool:
    (outcome,) = [size.outcome for size in grade_pullover(request).sizes if size.label == label]
    return isinstance(outcome, KnittedSize)


REQUESTS = {
    "a yoke that leaves no body in small sizes": DEEP,
    "babies with wide raglan lines": replace(
        PLAIN,
        gauges=Gauges(Gauge(Fraction(1), Fraction(7, 5))),
        body_table="babies",
        yoke=YokeWishes(options=Options(line_stitches=8, double_body="if_needed")),
    ),
    "two obstacles": TWO_OBSTACLES,
    "a multiple that nothing meets": replace(PLAIN, neck=NeckWishes(count_rule=CountRule(1000))),
    "an ease that leaves nothing": replace(PLAIN, labels=("M", "L"), ease={"bust": Fraction(-150)}),
    "a neck too narrow for its lines": replace(PLAIN, labels=("M",), neck=NeckWishes(circumference=Fraction(4))),
    "a depth per size": replace(
        PLAIN, labels=("S", "M"), yoke=YokeWishes(depth=(Fraction(8), Fraction(24)), options=Options())
    ),
    "even steps": replace(PLAIN, labels=("S", "M"), yoke=YokeWishes(depth=EvenSteps(Fraction(6), Fraction(9)))),
    "a maker's yoke": replace(PLAIN, labels=("M", "5X"), changes=Changes(yoke=Adjustment(rounds_change=-60))),
    "a maker's own rows": replace(PLAIN, labels=("M",), changes=Changes(yoke=Adjustment(own_rows=Fraction(8)))),
    "a maker's sleeve": replace(
        PLAIN, labels=("5X",), sleeve=SleeveWishes(plain_after=12), changes=Changes(sleeve_length=Fraction(7))
    ),
    "a maker's short sleeve": replace(
        PLAIN, labels=("M",), sleeve=SleeveWishes(plain_after=20), changes=Changes(sleeve_style="short")
    ),
    "a level below the hem": replace(
        PLAIN, labels=("M",), body=BodyWishes(length=Fraction(20), levels=(LevelWish("hip", Fraction(30)),))
    ),
    "a high raise": replace(PLAIN, labels=("M",), neck=NeckWishes(raise_height=Fraction(30))),
    "a low drop": replace(PLAIN, labels=("M",), neck=NeckWishes(front_drop=Fraction(60))),
    "a wide seam": replace(
        PLAIN, labels=("M",), yoke=YokeWishes(seam_stitches=120), body=BodyWishes(hem=EdgeWishes(Fraction(2)))
    ),
}


@pytest.mark.parametrize("request_", REQUESTS.values(), ids=REQUESTS)
def test_each_offer_makes_its_size_possible_as_it_stands(request_):
    found = impossible(request_)
    if request_ is not REQUESTS["a wide seam"]:
        assert found
    for label, outcome in found.items():
        assert outcome.nearest or outcome.together, (label, outcome.reason)
        for nearest in outcome.nearest:
            assert is_possible(changed(request_, nearest.path, nearest.value), label), (label, nearest)
        assert not (outcome.nearest and outcome.together)


def test_a_yoke_that_leaves_no_body_in_one_size_lets_the_others_be_made():
    found = impossible(DEEP)
    assert "XS" in found
    assert "5X" not in found
    reason = found["XS"].reason
    assert (reason.id, reason.values["measure"]) == ("reason.nothing_left", "body_length")


def test_changes_that_do_so_only_together_are_the_fewest():
    outcome = impossible(TWO_OBSTACLES)["5X"]
    assert outcome.nearest == ()
    together = outcome.together
    assert len(together) == 2
    mended = TWO_OBSTACLES
    for nearest in together:
        assert not is_possible(changed(TWO_OBSTACLES, nearest.path, nearest.value), "5X")
        mended = changed(mended, nearest.path, nearest.value)
    assert is_possible(mended, "5X")


def test_a_length_of_each_size_is_offered_for_this_one():
    outcome = impossible(REQUESTS["a depth per size"])["S"]
    assert ("yoke", "depth", 0) in [nearest.path for nearest in outcome.nearest]


def test_so_many_trials_are_made_and_no_more():
    sizes = tuple(
        SentSize(
            f"s{number}",
            {
                "bust": Fraction(70 + 2 * number),
                "upper_arm": Fraction(24) + Fraction(number, 2),
                "wrist": Fraction(15) + Fraction(number, 10),
                "arm_length": Fraction(43),
                "back_waist_length": Fraction(42),
            },
        )
        for number in range(40)
    )
    request = replace(PLAIN, body_table=None, sizes=sizes, yoke=YokeWishes(depth=Fraction(6)))
    calls = []

    def knit(changed_request, among):
        calls.append(40 if among is None else len(among))
        return knit_garment(changed_request, among).outcomes

    found = with_nearest(request, knit_garment(request), knit)
    assert sum(isinstance(outcome, Impossible) for outcome in found.values()) > 30
    assert calls.count(40) == 1
    assert sum(1 for sizes_knitted in calls if sizes_knitted < 40) <= 12


@pytest.mark.parametrize(
    ("path", "value", "read"),
    [
        (("yoke", "depth"), Fraction(20), lambda request: request.yoke.depth),
        (("yoke", "step"), 1, lambda request: request.yoke.options.step),
        (("ease", "bust"), Fraction(3), lambda request: request.ease["bust"]),
        (("changes", "ease", "bust"), Fraction(3), lambda request: request.changes.ease["bust"]),
        (("changes", "yoke", "depth"), Fraction(19), lambda request: request.changes.yoke.depth_cm),
        (("body", "levels", 0, "below"), Fraction(9), lambda request: request.body.levels[0].below),
        (("neck", "count_rule", "multiple"), 4, lambda request: request.neck.count_rule.multiple),
    ],
)
def test_a_value_is_put_in_its_place(path, value, read):
    request = replace(
        PLAIN,
        body=BodyWishes(levels=(LevelWish("hip", Fraction(30)),)),
        changes=Changes(yoke=Adjustment(depth_cm=Fraction(21))),
    )
    assert read(changed(request, path, value)) == value
