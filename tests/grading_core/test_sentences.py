"""Sentences as values: for one size, and for some sizes."""

from __future__ import annotations

from fractions import Fraction

import pytest

from grading_core.gauge import Gauge
from grading_core.parts.neckband import HEIGHT
from grading_core.parts.ribbing import WORK, Rib
from grading_core.rounding import CountRule
from grading_core.sentences import SAYINGS, Saying, alone, for_size, for_sizes
from grading_core.yoke.words import CYCLE, PLAIN

EDGES = {"kind": "once", "once": ("back", "front"), "twice": (), "more": 4}


def cycle(times, stitches):
    return CYCLE(cycle=(2, 4), times=times, **EDGES, stitches=stitches)


def test_a_sentence_for_some_sizes_names_them_and_has_nothing_for_the_others():
    only = for_sizes(cycle((1, 2, 3), (100, 110, 120)), ["S", "M", "L"], [0, 2])
    assert (only.labels, only.places) == (("S", "L"), (0, 2))
    assert (only.values["times"], only.values["stitches"]) == ((1, None, 3), (100, None, 120))


def test_what_is_no_run_stays_whole_in_a_sentence_for_some_sizes():
    only = for_sizes(cycle((1, 2, 3), (100, 110, 120)), ["S", "M", "L"], [1])
    assert {name: only.values[name] for name in ("cycle", *EDGES)} == {"cycle": (2, 4), **EDGES}


def test_the_places_of_sizes_may_come_from_anywhere_but_stand_in_their_order():
    only = for_sizes(PLAIN(rounds=(3, 4)), ["S", "M"], (place for place in (1,)))
    assert (only.labels, only.places, only.values["rounds"]) == (("M",), (1,), (None, 4))


def test_alone_a_size_has_one_value_where_a_run_would_be_and_lists_stay_lists():
    (own,) = alone([cycle((3,), (120,))])
    assert (own.values["times"], own.values["stitches"]) == (3, 120)
    assert (own.values["cycle"], own.values["once"], own.values["twice"]) == ((2, 4), ("back", "front"), ())
    assert own.labels is None


def test_alone_a_part_of_a_sentence_stays_as_it_is():
    name = Rib(gauge=Gauge(Fraction(2), Fraction(3)), height_cm=Fraction(5), rule=CountRule(4)).sentence()
    (own,) = alone([WORK(rounds=(9,), rib=name)])
    assert own.values == {"rounds": 9, "rib": name}


def test_a_size_told_by_itself_among_others_is_named():
    first, second = for_size([PLAIN(rounds=(3,)), HEIGHT(length=(Fraction(5, 2),))], "2 years")
    assert first.labels == second.labels == ("2 years",)
    assert (first.places, first.values, second.values) == (None, {"rounds": 3}, {"length": Fraction(5, 2)})


def test_a_sentence_that_is_made_for_a_size_leaves_the_first_as_it_was():
    every = PLAIN(rounds=(3, 4))
    for_sizes(every, ["S", "M"], [0])
    assert (every.values, every.labels, every.places) == ({"rounds": (3, 4)}, None, None)


def test_one_id_is_said_once():
    with pytest.raises(AssertionError, match=r"yoke\.plain is said already"):
        Saying("yoke.plain")
    assert SAYINGS["yoke.plain"] is PLAIN


def test_a_sentence_is_known_by_the_id_of_what_it_says():
    assert PLAIN(rounds=3).id == PLAIN.id == "yoke.plain"
