"""What the sizes make of one another; expected values by hand."""

from __future__ import annotations

from fractions import Fraction
from itertools import pairwise

import pytest

from grading_core.pullover.bodies import Wearer
from grading_core.pullover.lengths import Asked
from grading_core.pullover.size_run import (
    body_lengths,
    evened_girths,
    girths,
    neck_circumferences,
    sleeve_lengths,
    smallest_first,
    yoke_depths,
)

CM = Fraction


def wearers(**columns):
    """One wearer for each place of the columns, in cm."""
    bodies = zip(*columns.values(), strict=True)
    return [
        Wearer(str(place), {name: CM(cm) for name, cm in zip(columns, body, strict=True)}, child=False, young=False)
        for place, body in enumerate(bodies)
    ]


def test_sizes_rank_by_bust_then_by_upper_arm():
    assert smallest_first(wearers(bust=(94, 94, 80), upper_arm=(30, 28, 35))) == (2, 1, 0)


@pytest.mark.parametrize(
    ("asked", "smooths", "evened"),
    [
        ((), (False, False), set()),
        (("bust",), (True, False), {"upper_arm", "wrist", "waist", "hip", "neck"}),
        (("bust", "neck"), (True, True), {"bust", "upper_arm", "wrist", "waist", "hip"}),
    ],
)
def test_an_asked_ease_is_evened_where_steps_are_asked_and_an_asked_length_never(asked, smooths, evened):
    lengths = {name: Asked((name,), CM(40)) for name in asked}
    assert evened_girths(lengths, smooths) == evened


def test_no_girth_is_moved_by_more_than_1_5_cm_or_below_the_body():
    rising = wearers(upper_arm=(26, 26, 36))
    # without ease the two small ones can't go down, and the large one only as far as 1.5 cm up: 26 -> 27.5 -> 36
    for ease, least in ((0, (26, 26, 36)), (3, (27.5, 27.5, 37.5)), (-2, (24, 24, 34))):
        made = girths("upper_arm", rising, {"upper_arm": [CM(ease)] * 3}, {"upper_arm"})
        for cm, body, low in zip(made, (26, 26, 36), least, strict=True):
            assert low <= cm <= body + ease + CM(3, 2)
        assert made != [body + ease for body in (26, 26, 36)]
    assert girths("upper_arm", rising, {"upper_arm": [CM(3)] * 3}, ()) == [29, 29, 39]


def test_an_ease_at_the_bust_that_is_not_asked_stays_a_classic_fit():
    # 5 to 10 cm (a published chart of fits); 10 % of 104 cm is more
    rising = wearers(bust=(80, 94, 104, 120))
    for cm, body in zip(girths("bust", rising, {}, {"bust"}), (80, 94, 104, 120), strict=True):
        assert 5 <= cm - body <= 10


def test_no_neck_is_smaller_than_the_one_before_it():
    # 42 cm for the head of the small one, and 31 + 0.16 x 70 for the other, which is 45 % of 84 at most
    rising = wearers(bust=(68, 70), head=(56, 50))
    assert neck_circumferences(rising, [CM(80), CM(84)], ()) == [42, 42]


def test_an_armhole_deepens_the_yoke_and_no_later_one_is_shallower():
    # 24 cm and 2.5, less half of a sleeve of 6 cm: more than a quarter of 84
    rising = wearers(bust=(76, 77), armhole_depth=(24, 18))
    assert yoke_depths(rising, [CM(84), CM(85)], [CM(6), CM(6)]) == [CM("23.5"), CM("23.5")]


def test_a_body_falls_by_2_cm_at_most_and_no_total_falls():
    # 6 in below the waist: 57.24 in all; a yoke deeper by 5 cm may take 2 of the body and lengthens the whole by 3
    rising = wearers(back_waist_length=(42, 42, 41))
    first, second, third = body_lengths(rising, [CM(24), CM(29), CM(29)])
    assert first == 42 + CM("15.24") - 24
    assert second == first - 2
    assert third == second


def test_a_yoke_that_leaves_nothing_is_not_mended_by_a_longer_body():
    rising = wearers(back_waist_length=(42, 43))
    assert [cm > 0 for cm in body_lengths(rising, [CM(24), CM(70)])] == [True, False]


@pytest.mark.parametrize(
    ("to_wrist", "baby", "sleeve"),
    # 14 cm across a neck of 44 cm: half of it and the yoke are 31 cm, and the arm 43
    [(74, False, 43), (71, False, 43), (70, False, 42), (78, False, 44), (70, True, 39), (80, True, 46)],
)
def test_a_sleeve_ends_within_3_cm_of_the_wrist_and_a_baby_s_not_beyond_it(to_wrist, baby, sleeve):
    body = {"bust": CM(45), "arm_length": CM(43), "back_neck_to_wrist": CM(to_wrist)}
    wearer = Wearer("S", body, child=baby, young=baby)
    assert sleeve_lengths([wearer], [CM(44)], [CM(24)]) == [sleeve]


def test_without_a_length_to_the_wrist_the_sleeve_is_the_arm_and_without_an_arm_there_is_none():
    rising = wearers(bust=(90,), arm_length=(43,))
    assert sleeve_lengths(rising, [CM(44)], [CM(24)]) == [43]
    assert sleeve_lengths(wearers(bust=(90,)), [CM(44)], [CM(24)]) == [None]


def test_even_steps_are_more_even():
    bodies = (26, 27, 33, 34)
    made = girths("upper_arm", wearers(upper_arm=bodies), {"upper_arm": [CM(6)] * 4}, {"upper_arm"})
    steps = [after - before for before, after in pairwise(made)]
    assert max(steps) - min(steps) < 3 < 6 - 1
