"""The garment as far as its parts."""

from dataclasses import replace
from fractions import Fraction

import pytest

from grading_core.errors import ContradictionError, sound
from grading_core.pullover.garment import garment_problems, knit_garment
from grading_core.pullover.request import BodyWishes, Changes
from grading_core.pullover.result import KnittedSize
from tests.grading_core.pullover.knitted_pullovers import PLAIN


def test_without_changes_the_garment_is_as_designed():
    garment = knit_garment(PLAIN)
    assert garment.outcomes == garment.designed
    assert all(isinstance(size, KnittedSize) for size in garment.outcomes.values())


def test_sizes_come_in_the_order_asked_and_are_ranked_by_size():
    garment = knit_garment(replace(PLAIN, labels=("L", "S", "M")))
    assert [*garment.outcomes] == ["L", "S", "M"]
    assert garment.rising == ("S", "M", "L")


def test_changes_that_touch_no_count_keep_the_designs():
    garment = knit_garment(replace(PLAIN, labels=("S", "M"), changes=Changes(sleeve_length=Fraction(40))))
    for label, size in garment.designed.items():
        assert garment.outcomes[label].counts == size.counts
        assert garment.outcomes[label].sleeve.rounds != size.sleeve.rounds


def test_some_sizes_can_be_knitted_alone():
    assert [*knit_garment(PLAIN, ["M", "XL"]).outcomes] == ["M", "XL"]


def test_a_list_with_too_few_lengths_is_refused():
    with pytest.raises(ContradictionError) as error:
        knit_garment(replace(PLAIN, body=BodyWishes(length=(Fraction(40), Fraction(41)))))
    assert [problem.path for problem in error.value.problems] == [("body", "length")]


def test_what_was_checked_before_is_knitted_as_it_was_checked():
    asked = replace(PLAIN, labels=("S", "M"))
    prepared = sound(garment_problems(asked))
    assert knit_garment(asked, prepared=prepared).outcomes == knit_garment(asked).outcomes


def test_bodies_that_are_known_are_not_made_again():
    bodies = sound(garment_problems(replace(PLAIN, labels=("S", "M")))).bodies
    assert sound(garment_problems(PLAIN, bodies)).bodies is bodies
