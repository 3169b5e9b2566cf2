"""What one size may be, against trying every count there is."""

from __future__ import annotations

from dataclasses import replace
from fractions import Fraction
from itertools import product
from math import floor, lcm

import pytest

from grading_core.counts.candidates import Splits, least_neck, least_split, necks, options, permitted, rounds
from grading_core.counts.request import Rules, Targets
from grading_core.rounding import CountRule
from grading_core.yoke.request import Options

TARGETS = Targets(
    label="M",
    neck=Fraction("62.3"),
    neck_back=Fraction("21.4"),
    neck_front=Fraction("19.9"),
    neck_sleeve=Fraction("6.5"),
    body=Fraction("131.2"),
    sleeve=Fraction("44.75"),
    underarm=Fraction("8.35"),
    rounds=Fraction("39.6"),
)
LINES = Options(line_stitches=2, double_body="never")
NECK = (22, 20, 6)


def near(target: Fraction, reach: int) -> range:
    """Every count within reach of a target, none below zero."""
    return range(max(0, floor(target) - reach - 1), floor(target) + reach + 2)


def cost(weight: int, count: int, target: Fraction) -> int:
    """Of a count: weight x its difference squared, doubled, in hundredths of a stitch."""
    return 2 * weight * (100 * count - floor(100 * target + Fraction(1, 2))) ** 2


@pytest.mark.parametrize("rounding", ["nearest", "up", "down"])
@pytest.mark.parametrize(("multiple", "plus"), [(1, 0), (2, 1), (4, 2), (6, 0), (7, 3), (8, 13)])
def test_the_options_are_all_counts_of_the_rule_within_reach_the_nearest_first(multiple, plus, rounding):
    rule, reach = CountRule(multiple, plus, rounding), max(6, lcm(multiple, 4))
    for target in (Fraction(eighths, 8) for eighths in range(0, 400, 3)):
        expected = [
            (cost(3, count, target), count)
            for count in near(target, reach)
            if abs(count - target) <= reach
            and count % multiple == plus % multiple
            and not (rounding == "up" and count < target)
            and not (rounding == "down" and count > target)
        ]
        assert [(price, amount) for price, amount, _ in options(target, rule, 3)] == sorted(expected), target


@pytest.mark.parametrize("narrower_front", [False, True])
@pytest.mark.parametrize(("back_parity", "sleeve_parity"), [(0, 0), (0, 1), (1, 0), (1, 1)])
def test_the_necks_are_all_that_the_rules_allow_the_cheapest_first(narrower_front, back_parity, sleeve_parity):
    rules = Rules(neck=CountRule(2), narrower_front=narrower_front, yoke=LINES)
    expected = []
    for back, front, sleeve in product(
        *(near(target, 6) for target in (TARGETS.neck_back, TARGETS.neck_front, TARGETS.neck_sleeve))
    ):
        total = back + front + 2 * sleeve + 4 * 2
        within = all(
            abs(count - target) <= 6
            for count, target in (
                (back, TARGETS.neck_back),
                (front, TARGETS.neck_front),
                (sleeve, TARGETS.neck_sleeve),
                (total, TARGETS.neck),
            )
        )
        alike = front <= back if narrower_front else front == back
        parities = (back % 2, front % 2, sleeve % 2) == (back_parity, back_parity, sleeve_parity)
        if within and alike and parities and total % 2 == 0:
            whole = cost(2, total, TARGETS.neck) + cost(1, back, TARGETS.neck_back)
            whole += cost(1, front, TARGETS.neck_front) + cost(2, sleeve, TARGETS.neck_sleeve)
            expected.append((whole, (back, front, sleeve)))
    assert len(expected) >= 5
    found = necks(permitted(TARGETS, rules), rules, back_parity, sleeve_parity)(10_000)
    assert [(price, counts) for price, counts, _ in found] == sorted(expected)


@pytest.mark.parametrize("parity", [0, 1])
def test_no_section_of_the_neck_is_empty(parity):
    # lines of 6 stitches leave 4 and 4 stitches of a neck of 33.5 to back and front, and about none to the sleeves
    targets = replace(
        TARGETS, neck=Fraction("33.5"), neck_back=Fraction(4), neck_front=Fraction(4), neck_sleeve=Fraction("0.7")
    )
    rules = Rules(yoke=replace(LINES, line_stitches=6))
    shelf = necks(permitted(targets, rules), rules, 0, parity)(1000)
    assert shelf
    assert min(section for _, counts, _ in shelf for section in counts) == (1 if parity else 2)


@pytest.mark.parametrize("doubling", ["never", "if_needed"])
@pytest.mark.parametrize("extra", [1, 3, 9, 14, 31])
def test_splits_with_a_wider_front_are_all_that_increasing_back_front_and_sleeve_leads_to(doubling, extra):
    rules = Rules(body=CountRule(6, 2), yoke=Options(line_stitches=2, step=1, double_body=doubling))
    targets = replace(TARGETS, front_extra=Fraction(extra))
    # the multiple of 4 nearest to the extra, the wider of two
    wider = {1: 0, 3: 4, 9: 8, 14: 16, 31: 32}[extra]
    rounds_, most = 22, 2 if doubling == "if_needed" else 1
    expected = []
    for at_back, at_front, at_sleeve, underarm in product(range(45), range(45), range(rounds_ + 1), range(16)):
        back, front, sleeve = (NECK[0] + 2 * at_back, NECK[1] + 2 * at_front, NECK[2] + 2 * at_sleeve)
        if front - back != wider or max(at_back, at_front) > most * rounds_:
            continue
        body, whole_sleeve = back + front + 4 + 2 * underarm, sleeve + 2 + underarm
        within = all(
            abs(count - target) <= max(6, reach)
            for count, target, reach in (
                (body, TARGETS.body, 12),
                (whole_sleeve, TARGETS.sleeve, 0),
                (underarm, TARGETS.underarm, 0),
            )
        )
        if within and body % 6 == 2:
            price = cost(1, body, TARGETS.body) + cost(3, whole_sleeve, TARGETS.sleeve)
            expected.append((price + cost(1, underarm, TARGETS.underarm), (back, sleeve, underarm)))
    assert len(expected) >= 15
    found = Splits(permitted(targets, rules), rules, NECK, most_rounds=rounds_)(10_000)
    assert [(price, counts) for price, counts, _ in found] == sorted(expected)


@pytest.mark.parametrize("doubling", ["never", "if_needed"])
def test_the_splits_are_all_that_close_and_have_room_for_their_increases_the_cheapest_first(doubling):
    rules = Rules(body=CountRule(4), line_to_body=1, yoke=Options(line_stitches=2, step=2, double_body=doubling))
    back, front, neck_sleeve = NECK
    # 18 increase rounds in the even ones of 36
    room, body_room = 18, 36 if doubling == "if_needed" else 18
    expected = []
    for half, sleeve, underarm in product(range(back, 80, 2), range(neck_sleeve, 60, 2), range(20)):
        body, whole_sleeve = 2 * half + 4 + 2 * underarm, sleeve + 2 + underarm
        within = all(
            abs(count - target) <= 6
            for count, target in ((body, TARGETS.body), (whole_sleeve, TARGETS.sleeve), (underarm, TARGETS.underarm))
        )
        fits = half - front <= 2 * body_room and sleeve - neck_sleeve <= 2 * room
        if within and fits and body % 4 == 0:
            price = cost(1, body, TARGETS.body) + cost(3, whole_sleeve, TARGETS.sleeve)
            expected.append((price + cost(1, underarm, TARGETS.underarm), (half, sleeve, underarm)))
    assert len(expected) >= 15
    found = Splits(permitted(TARGETS, rules), rules, NECK, most_rounds=36)(10_000)
    assert [(price, counts) for price, counts, _ in found] == sorted(expected)
    assert list(Splits(permitted(TARGETS, rules), rules, NECK, most_rounds=36)(7)) == list(found[:7])


def test_the_rounds_are_all_within_reach_that_hold_the_increases_the_nearest_first():
    # 20 increases in every second round need 40 rounds; 39.6 and 6 more are 45
    rules = Rules(yoke=LINES)
    found = rounds(permitted(TARGETS, rules), rules, (20, 20, 12))(100)
    assert [counts for _, counts, _ in found] == [(count, 0, 0) for count in (40, 41, 42, 43, 44, 45)]
    assert [price for price, _, _ in found] == [cost(2, count, TARGETS.rounds) for count in range(40, 46)]


@pytest.mark.parametrize("parity", [0, 1])
def test_every_section_of_a_neck_has_a_stitch(parity):
    # 34 stitches at the neck of a bulky yarn, 24 of them in raglan lines: 5, 5 and 0 would be nearest
    narrow = replace(TARGETS, neck=Fraction(34), neck_back=Fraction(5), neck_front=Fraction(5), neck_sleeve=Fraction(0))
    rules = Rules(yoke=Options(line_stitches=6))
    found = necks(permitted(narrow, rules), rules, parity, 0)(10_000)
    assert found
    assert all(min(counts) >= 1 for _, counts, _ in found)


@pytest.mark.parametrize("narrower_front", [False, True])
@pytest.mark.parametrize(("back_parity", "sleeve_parity"), [(0, 0), (0, 1), (1, 0), (1, 1)])
def test_no_neck_costs_less_than_the_least(narrower_front, back_parity, sleeve_parity):
    rules = Rules(neck=CountRule(2), narrower_front=narrower_front, yoke=LINES)
    for neck in range(56, 70):
        amounts = permitted(replace(TARGETS, neck=Fraction(neck)), rules)
        cheapest, *_ = necks(amounts, rules, back_parity, sleeve_parity)(1)
        assert cheapest[0] >= least_neck(amounts, rules, back_parity, sleeve_parity), neck


def test_a_neck_whose_sections_and_total_are_as_wanted_costs_the_least():
    # 20 + 20 + 2 x 7 stitches and four lines of 2
    targets = replace(
        TARGETS, neck=Fraction(62), neck_back=Fraction(20), neck_front=Fraction(20), neck_sleeve=Fraction(7)
    )
    assert least_neck(permitted(targets, Rules(yoke=LINES)), Rules(yoke=LINES), 0, 1) == 0


def test_there_is_no_least_neck_where_no_total_suits_the_parities():
    # two odd sections and two even sleeves make 2 more than a multiple of 4
    rules = Rules(neck=CountRule(4), yoke=LINES)
    amounts = permitted(TARGETS, rules)
    assert least_neck(amounts, rules, 1, 0) is None
    assert least_neck(amounts, rules, 0, 0) is not None


@pytest.mark.parametrize("seam_stitches", [None, 0, 1])
@pytest.mark.parametrize(("back_parity", "sleeve_parity"), [(0, 0), (0, 1), (1, 0), (1, 1)])
def test_no_split_costs_less_than_the_least_and_one_with_room_and_a_small_neck_costs_that(
    back_parity, sleeve_parity, seam_stitches
):
    rules = Rules(body=CountRule(4), seam_stitches=seam_stitches, yoke=Options(step=1, double_body="if_needed"))
    amounts = permitted(TARGETS, rules)
    # with an underarm of 7 to 9 stitches a half of 131.2 less 2 less these is some 55 to 57, a sleeve some 33 to 35
    small = (2 + back_parity, 2 + back_parity, 2 + sleeve_parity)
    found = Splits(amounts, rules, small, most_rounds=200)(1)
    assert (found[0][0] if found else None) == least_split(amounts, back_parity, sleeve_parity)


def test_there_is_no_least_split_where_no_parity_of_the_underarm_suits_body_and_sleeve():
    # odd halves with an even underarm make a body of 2 more than a multiple of 4
    amounts = permitted(TARGETS, Rules(body=CountRule(4), seam_stitches=0))
    assert least_split(amounts, 1, 0) is None
    assert least_split(amounts, 0, 0) is not None
