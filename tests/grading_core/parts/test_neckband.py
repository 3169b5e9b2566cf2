from __future__ import annotations

from fractions import Fraction

import pytest
from hypothesis import given
from hypothesis import strategies as st

from grading_core.gauge import Gauge
from grading_core.parts.neckband import neckband, pick_up, run_instructions
from grading_core.parts.ribbing import Rib
from grading_core.rounding import CountRule
from tests.oracles.told import ids, only, told_alone, told_each, work_edge

GAUGE = Gauge.over(Fraction(22), Fraction(31), Fraction(10))
RIB_GAUGE = Gauge.over(Fraction(24), Fraction(32), Fraction(10))
RIB = Rib(gauge=RIB_GAUGE, height_cm=Fraction(3), rule=CountRule(4))


def test_cast_on_stitches_are_picked_up_one_for_one():
    assert pick_up(100, GAUGE).stitches == 100


@given(st.integers(20, 200), st.integers(0, 60))
def test_both_sides_of_a_drop_give_the_same_stitches_within_half_a_stitch_of_the_gauges_ratio(along, rows):
    made = pick_up(along, GAUGE, rows)
    assert made.stitches == along + 2 * made.along_rows_each_side
    # the stitches at their gauge are as wide as the rows at theirs are high
    assert abs(GAUGE.width_cm(made.along_rows_each_side) - GAUGE.height_cm(rows)) <= GAUGE.width_cm(1) / 2


@given(st.integers(8, 300), st.integers(1, 8))
def test_the_band_is_on_its_multiple_and_changed_by_no_more_than_half_of_it(along, multiple):
    band = neckband(pick_up(along, GAUGE), Rib(gauge=RIB_GAUGE, height_cm=Fraction(3), rule=CountRule(multiple)))
    assert band.edge.stitches % multiple == 0
    assert abs(band.edge.change) <= multiple / 2 or band.edge.stitches == multiple


@pytest.mark.parametrize(("construction", "rounds"), [("single", 10), ("double", 20), ("double_with_fold_round", 21)])
def test_a_double_band_has_twice_the_rounds_and_one_more_for_a_fold_round(construction, rounds):
    # 3 cm at 32 rows to 10 cm are 9.6 rounds, nearest 10
    assert neckband(pick_up(100, GAUGE), RIB, construction).rounds == rounds


def test_a_double_band_is_worn_at_half_of_what_is_knitted():
    assert neckband(pick_up(100, GAUGE), RIB, "double").height_cm == Fraction(10) / Fraction(32, 10)


def test_the_last_edge_is_measured_at_the_gauge_of_the_rib():
    assert neckband(pick_up(98, GAUGE), RIB).last_edge_cm == Fraction(100) / Fraction(24, 10)


def test_all_rounds_of_a_double_band_are_told_the_adjusting_one_among_them():
    band = neckband(pick_up(98, GAUGE), RIB, "double_with_fold_round")
    told = told_alone(band.instructions())
    assert ids(told) == [
        "band.pick_up",
        "rib.increase",
        "rib.spread",
        "rib.work",
        "band.fold",
        "band.inner",
        "band.join",
        "band.height",
    ]
    stitches, rounds, _ = work_edge(told, only(told, "band.pick_up")["stitches"])
    assert (stitches, rounds) == (100, 10)
    assert band.rounds == rounds + 1 + only(told, "band.inner")["rounds"] == 10 + 1 + 10


@pytest.mark.parametrize(
    ("construction", "end"),
    [
        ("single", ["rib.work", "rib.bind_off", "band.height"]),
        ("double", ["rib.work", "band.inner", "band.join", "band.height"]),
    ],
)
def test_a_single_band_is_bound_off_and_a_double_one_joined_inside(construction, end):
    assert ids(neckband(pick_up(100, GAUGE), RIB, construction).instructions())[1:] == end


def test_row_ends_are_told_with_how_many_to_pick_up_for_how_many_rows():
    band = neckband(pick_up(80, Gauge.over(Fraction(21), Fraction(28), Fraction(10)), 12), RIB)
    # 3 for 4 rows at 21 stitches and 28 rows (a teaching article)
    assert told_alone(band.instructions())[0] == (
        "band.pick_up_drop",
        {"side": 9, "rows": 12, "rate": 3, "per": 4, "stitches": 98},
    )


def test_the_bands_of_all_sizes_are_told_in_size_runs():
    bands = [neckband(pick_up(stitches, GAUGE), RIB) for stitches in (98, 104)]
    picked_up, increased, ribbed, *_ = run_instructions(bands)
    assert picked_up.values == {"stitches": (98, 104)}
    assert increased.values == {"many": (2, None), "stitches": (100, None)}
    assert ribbed.values["rounds"] == (9, 10)


@given(
    st.lists(st.none() | st.tuples(st.integers(40, 160), st.integers(0, 40)), min_size=1, max_size=5).filter(any),
    st.sampled_from(["single", "double", "double_with_fold_round"]),
)
def test_the_bands_of_all_sizes_worked_as_told_are_each_its_own(sizes, construction):
    bands = [size and neckband(pick_up(size[0], GAUGE, size[1]), RIB, construction) for size in sizes]
    told = told_each(run_instructions(bands), [str(place) for place in range(len(sizes))])
    for size, band, own in zip(sizes, bands, told.values(), strict=True):
        picked_up = [sentence for sentence in own if sentence.id.startswith("band.pick_up")]
        if band is None:
            assert not picked_up
            continue
        ((id, values),) = picked_up
        assert (id == "band.pick_up_drop") is bool(size[1])
        assert values["stitches"] == size[0] + 2 * values.get("side", 0)
        stitches, rounds, _ = work_edge(own, values["stitches"])
        inner = sum(sentence.values["rounds"] for sentence in own if sentence.id == "band.inner")
        assert (stitches, rounds + ("band.fold" in ids(own)) + inner) == (band.edge.stitches, band.rounds)
        assert only(own, "band.height")["length"] == RIB_GAUGE.height_cm(rounds)


def test_the_rhythm_along_a_drop_is_the_nearest_to_what_is_picked_up_there():
    # 22 stitches and 31 rounds make 4.26 stitches of 6 rows: 4 are picked up, 2 in 3, where the gauges alone are near
    # 5 in 7
    made = pick_up(90, GAUGE, 6)
    assert (made.along_rows_each_side, made.rhythm) == (4, Fraction(2, 3))


@given(st.integers(1, 60), st.integers(14, 34), st.integers(18, 50))
def test_no_short_rhythm_is_nearer_to_what_is_picked_up(rows, stitches, rounds):
    made = pick_up(90, Gauge(Fraction(stitches), Fraction(rounds)), rows)
    ratio = Fraction(made.along_rows_each_side, rows)
    short = [Fraction(many, of) for of in range(1, 9) for many in range(1, 3 * of + 1)]
    if made.along_rows_each_side:
        assert abs(made.rhythm - ratio) == min(abs(each - ratio) for each in short)


def test_a_neck_without_row_ends_has_no_rhythm():
    assert pick_up(90, GAUGE).rhythm is None


def test_a_ratio_that_is_no_short_one_is_not_rounded_to_none():
    assert pick_up(90, Gauge(Fraction(1), Fraction(30)), 30).rhythm == Fraction(1, 30)


def test_each_size_has_its_own_rhythm():
    bands = [neckband(pick_up(90, GAUGE, many), RIB) for many in (6, 7)]
    (values, *_) = [sentence.values for sentence in run_instructions(bands)]
    assert (values["rate"], values["per"]) == ((2, 5), (3, 7))


def test_sizes_with_and_without_row_ends_are_told_in_two_sentences_that_each_skips_the_other_of():
    bands = [
        neckband(pick_up(80, GAUGE, rows), Rib(gauge=GAUGE, height_cm=Fraction(3), rule=CountRule(2)))
        for rows in (12, 0)
    ]
    without, along, *_ = run_instructions([*bands, None])
    assert (without.id, without.values) == ("band.pick_up", {"stitches": (None, 80, None)})
    # 12 rows of 31 to 10 cm are as high as 8.5 stitches of 22 are wide
    assert along.id == "band.pick_up_drop"
    assert (along.values["rows"], along.values["stitches"]) == ((12, None, None), (80 + 2 * 9, None, None))


def test_sizes_that_all_have_row_ends_need_one_sentence():
    bands = [neckband(pick_up(80, GAUGE, rows), RIB) for rows in (12, 14)]
    told = ids(run_instructions(bands))
    assert [id for id in told if id.startswith("band.pick_up")] == ["band.pick_up_drop"]
