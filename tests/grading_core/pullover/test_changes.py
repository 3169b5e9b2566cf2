"""A maker's own changes to a design."""

from __future__ import annotations

from dataclasses import replace
from fractions import Fraction

import pytest

from grading_core.errors import ContradictionError
from grading_core.pullover.changes import change_problems, changed_numbers
from grading_core.pullover.grade import grade_pullover
from grading_core.pullover.request import BandChange, Changes, Gauges, SleeveWishes
from grading_core.pullover.result import KnittedSize, Row
from grading_core.sizes.request import EvenSteps
from grading_core.yoke.request import Adjustment
from tests.grading_core.pullover.knitted_pullovers import BULKY, GAUGE, PLAIN, REQUESTS, outcomes
from tests.oracles.knitter import knit_to_split


def test_a_shallower_yoke_keeps_the_neck_and_the_split():
    design = grade_pullover(PLAIN)
    made = grade_pullover(replace(PLAIN, changes=Changes(yoke=Adjustment(depth_change_cm=Fraction(-2)))))
    for before, after in zip(outcomes(design), outcomes(made), strict=True):
        assert after.counts == replace(before.counts, rounds=before.counts.rounds - 6)
        assert knit_to_split(after.yoke) == before.counts.split


def test_another_gauge_makes_the_counts_anew():
    made = grade_pullover(replace(PLAIN, changes=Changes(gauges=Gauges(BULKY))))
    assert outcomes(made) == outcomes(grade_pullover(REQUESTS["a bulky yarn"]))


def test_another_ease_makes_the_counts_anew():
    ease = {"bust": EvenSteps(Fraction(4), Fraction(8))}
    made = grade_pullover(replace(PLAIN, changes=Changes(ease=ease)))
    assert outcomes(made) == outcomes(grade_pullover(replace(PLAIN, ease=ease)))


def test_longer_sleeves_and_another_band_change_nothing_above_them():
    changes = Changes(sleeve_length=Fraction(50), band=BandChange(height=Fraction(3), construction="double"))
    made = grade_pullover(replace(PLAIN, changes=changes))
    changed = {(change.part, change.item) for change in made.changed}
    lengths = {("finished", "sleeve_length"), ("finished", "reach")}
    assert changed <= {("sleeve", "rounds"), ("band", "rounds"), *lengths}
    assert [size.counts for size in outcomes(made)] == [size.counts for size in outcomes(grade_pullover(PLAIN))]


def test_what_changed_is_every_number_that_differs_from_the_design_and_no_other():
    design = grade_pullover(PLAIN)
    made = grade_pullover(replace(PLAIN, changes=Changes(body_length=Fraction(40))))
    expected = [
        (label, before.part, before.item, before.unit, before.values[index], after.values[index])
        for index, label in enumerate(size.label for size in made.sizes)
        for before, after in zip(design.table, made.table, strict=True)
        if before.values[index] != after.values[index]
    ]
    assert expected
    found = [(each.size, each.part, each.item, each.unit, each.designed, each.changed) for each in made.changed]
    assert found == expected


@pytest.mark.parametrize(
    ("asked", "field"),
    [
        (Adjustment(rounds=20), "rounds"),
        (Adjustment(rounds_change=-60), "rounds_change"),
        (Adjustment(depth_cm=Fraction(5)), "depth_cm"),
        (Adjustment(depth_change_cm=Fraction(-20)), "depth_change_cm"),
    ],
)
def test_a_yoke_too_shallow_for_its_increases_says_in_the_way_asked_how_shallow_it_can_be(asked, field):
    request = replace(PLAIN, labels=("M",), changes=Changes(yoke=asked))
    (impossible,) = outcomes(grade_pullover(request))
    (nearest,) = impossible.nearest
    assert nearest.field == f"changes.yoke.{field.removesuffix('_cm')}"
    for rounds, possible in ((0, True), (-1, False)):
        amount = nearest.value + (rounds if isinstance(nearest.value, int) else GAUGE.height_cm(rounds))
        (size,) = outcomes(grade_pullover(replace(request, changes=Changes(yoke=Adjustment(**{field: amount})))))
        assert isinstance(size, KnittedSize) is possible


def test_what_would_make_a_changed_size_possible_is_named_among_the_changes():
    plain = SleeveWishes(plain_before=16)
    for changes in (Changes(sleeve_length=Fraction(6)), Changes(sleeve_style="short")):
        request = replace(PLAIN, labels=("M",), sleeve=plain, changes=changes)
        (impossible,) = outcomes(grade_pullover(request))
        (nearest,) = [each for each in impossible.nearest if each.field == "changes.sleeve_length"]
        mended = replace(changes, sleeve_length=nearest.value)
        (size,) = outcomes(grade_pullover(replace(request, changes=mended)))
        # not a round to spare
        assert size.sleeve.rounds == 16 + len(size.sleeve.decrease_rounds)


def test_another_style_of_sleeve_is_as_long_as_a_design_of_that_style():
    short = grade_pullover(replace(PLAIN, sleeve=SleeveWishes(style="short")))
    for sleeve in (SleeveWishes(), SleeveWishes(length=Fraction(40))):
        made = grade_pullover(replace(PLAIN, sleeve=sleeve, changes=Changes(sleeve_style="short")))
        assert outcomes(made) == outcomes(short)


def test_a_length_that_reads_the_same_is_not_a_change():
    # a rib of other rounds moves lengths by thousandths of a centimetre that nobody reads
    def row(*values):
        return Row(part="finished", item="bust", unit="cm", title="", values=values, printed=())

    design = [row(Fraction("20.320"), Fraction("20.3249"), None, 5)]
    changed = [row(Fraction("20.3249"), Fraction("20.3251"), None, 5)]
    (found,) = changed_numbers(["S", "M", "L", "XL"], design, changed)
    # 20.32 to 20.32, and 20.32 to 20.33
    assert found.size == "M"


def test_counts_are_kept_beside_a_gauge_and_nothing_else():
    changes = Changes(
        keep_counts=True,
        ease={"bust": Fraction(4)},
        yoke=Adjustment(rounds=70),
        body_length=Fraction(40),
        sleeve_length=Fraction(40),
        band=BandChange(height=Fraction(3)),
    )
    names = [problem.path[1] for problem in change_problems(changes, ())]
    assert names == ["keep_counts", "ease", "yoke", "body_length", "sleeve_length", "band"]
    assert not [*change_problems(Changes(keep_counts=True, gauges=Gauges(BULKY), ease={}), ())]
    assert not [*change_problems(Changes(body_length=Fraction(40)), ())]
    with pytest.raises(ContradictionError):
        grade_pullover(replace(PLAIN, changes=changes))
