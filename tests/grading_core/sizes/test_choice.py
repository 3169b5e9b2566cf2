"""Choosing a size."""

from fractions import Fraction

import pytest
from hypothesis import given
from hypothesis import strategies as st

from grading_core.errors import ContradictionError
from grading_core.gauge import Gauge
from grading_core.sizes.choice import choose_size, match_sizes
from grading_core.sizes.request import FinishedSize, SentSize, SizeGradingRequest, SizeMatchRequest


def finished(*busts):
    return tuple(FinishedSize(f"size {place}", Fraction(bust)) for place, bust in enumerate(busts, 1))


def gauge(stitches):
    return Gauge.over(Fraction(stitches), Fraction(30), Fraction(10))


def smallest_first(choice):
    return choice.neighbours.smaller, choice.best, choice.neighbours.larger


FOUR = finished(96, 104, 112, 120)


def paths(**request):
    with pytest.raises(ContradictionError) as refused:
        match_sizes(SizeMatchRequest(**request))
    return [problem.path for problem in refused.value.problems]


def test_the_nearest_circumference_is_best_and_its_neighbours_stand_beside_it():
    choice = choose_size(FOUR, wanted=Fraction(107))
    assert [offer.label for offer in smallest_first(choice)] == ["size 1", "size 2", "size 3"]
    assert [offer.difference for offer in smallest_first(choice)] == [-11, -3, 5]


def test_of_two_equally_near_sizes_the_larger_is_best():
    assert choose_size(FOUR, wanted=Fraction(108)).best.label == "size 3"


def test_the_ease_of_every_candidate_is_told_where_a_body_is_known():
    choice = choose_size(FOUR, wanted=Fraction(104), body=Fraction(94))
    assert [offer.ease for offer in smallest_first(choice)] == [2, 10, 18]


def test_without_a_body_there_is_no_ease():
    assert match_sizes(SizeMatchRequest(finished=FOUR, garment=Fraction(107))).written.best.ease is None


@given(
    st.lists(st.integers(60, 180), min_size=1, max_size=12, unique=True),
    st.fractions(50, 200, max_denominator=4),
    st.randoms(),
)
def test_the_choice_is_that_of_trying_every_size_in_any_order(busts, wanted, random):
    random.shuffle(busts)
    choice = choose_size(finished(*busts), wanted=wanted)
    least = min(abs(bust - wanted) for bust in busts)
    best = max(bust for bust in busts if abs(bust - wanted) == least)
    below, above = [bust for bust in busts if bust < best], [bust for bust in busts if bust > best]
    assert choice.best.finished == best
    smaller, larger = choice.neighbours.smaller, choice.neighbours.larger
    assert (smaller.finished if smaller else None) == (max(below) if below else None)
    assert (larger.finished if larger else None) == (min(above) if above else None)


def test_a_body_and_ease_make_what_is_wanted():
    match = match_sizes(SizeMatchRequest(finished=FOUR, body=Fraction(94), ease=Fraction(10)))
    assert (match.wanted, match.written.best.label) == (104, "size 2")


def test_at_an_own_gauge_the_written_counts_make_another_circumference():
    # 20 written stitches knitted at 22: every circumference shrinks by 20/22, and 112 becomes 101.8
    match = match_sizes(
        SizeMatchRequest(finished=FOUR, garment=Fraction(104), written_gauge=gauge(20), own_gauge=gauge(22))
    )
    assert match.written.best.label == "size 2"
    assert match.at_own_gauge.best.label == "size 3"
    assert match.at_own_gauge.best.finished == Fraction(112 * 20, 22)
    assert match.at_own_gauge.neighbours.larger.finished == Fraction(120 * 20, 22)


def test_at_the_written_gauge_nothing_changes():
    match = match_sizes(
        SizeMatchRequest(finished=FOUR, garment=Fraction(107), written_gauge=gauge(20), own_gauge=gauge(20))
    )
    assert match.at_own_gauge == match.written


def test_a_grading_offers_its_finished_busts_and_its_gauge():
    sizes = (SentSize("S", {"bust": Fraction(84)}), SentSize("M", {"bust": Fraction(94)}))
    grading = SizeGradingRequest(gauge=gauge(20), sizes=sizes, ease={"bust": Fraction(10)})
    match = match_sizes(SizeMatchRequest(grading=grading, garment=Fraction(95), own_gauge=gauge(18)))
    assert (match.written.best.label, match.written.best.finished) == ("S", 94)
    assert match.at_own_gauge.best.finished == Fraction(94 * 20, 18)


def test_a_wish_beyond_every_size_is_warned_about():
    large = match_sizes(SizeMatchRequest(finished=FOUR, garment=Fraction(150)))
    small = match_sizes(SizeMatchRequest(finished=FOUR, garment=Fraction(80)))
    inside = match_sizes(SizeMatchRequest(finished=FOUR, garment=Fraction(118)))
    assert [remark.code for remark in large.remarks] == ["above_every_size"]
    assert [remark.code for remark in small.remarks] == ["below_every_size"]
    assert inside.remarks == ()
    assert match_sizes(SizeMatchRequest(finished=FOUR, garment=Fraction(98))).remarks == ()
    assert match_sizes(SizeMatchRequest(finished=FOUR, garment=Fraction(106))).remarks == ()


def test_either_finished_sizes_or_a_grading_are_needed():
    assert paths(garment=Fraction(100)) == [()]
    grading = SizeGradingRequest(gauge=gauge(20), body_table="women")
    assert paths(finished=FOUR, grading=grading, garment=Fraction(100)) == [()]


def test_a_wish_is_a_garment_or_a_body_with_ease():
    assert paths(finished=FOUR) == [()]
    assert paths(finished=FOUR, body=Fraction(90)) == [()]
    assert paths(finished=FOUR, garment=Fraction(100), body=Fraction(90), ease=Fraction(8)) == [("ease",)]
    assert paths(finished=FOUR, body=Fraction(90), ease=Fraction(-90)) == [("ease",)]


def test_an_own_gauge_needs_a_written_one():
    assert paths(finished=FOUR, garment=Fraction(100), own_gauge=gauge(20)) == [("own_gauge",)]


def test_a_written_gauge_must_be_that_of_the_grading():
    grading = SizeGradingRequest(gauge=gauge(20), body_table="women")
    assert paths(grading=grading, garment=Fraction(100), written_gauge=gauge(22)) == [("written_gauge",)]


def test_repeated_labels_are_refused():
    twice = (FinishedSize("S", Fraction(90)), FinishedSize("S", Fraction(100)))
    assert paths(finished=twice, garment=Fraction(100)) == [("finished", 1, "label")]


def test_what_is_wrong_with_a_grading_is_said_below_its_place():
    grading = SizeGradingRequest(gauge=gauge(20), body_table="women", labels=("7X",))
    assert paths(grading=grading, garment=Fraction(100)) == [("grading", "labels", 0)]


def test_a_grading_without_busts_offers_nothing():
    grading = SizeGradingRequest(gauge=gauge(20), sizes=(SentSize("S", {"hip": Fraction(90)}),))
    assert paths(grading=grading, garment=Fraction(100)) == [("grading",)]


def test_a_slip_in_what_only_one_size_is_sent_with_is_seen_beside_the_table():
    small = SentSize("S", {"bust": Fraction(84), "upper_arm": Fraction(60)})
    large = SentSize("L", {"bust": Fraction(104)})
    grading = SizeGradingRequest(gauge=gauge(22), body_table="women", sizes=(small, large))
    assert paths(grading=grading, body=Fraction(90), ease=Fraction(8)) == [("grading", "sizes", 0, "upper_arm")]
