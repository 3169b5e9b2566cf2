"""Notions and terms: only those of what a pattern says."""

from dataclasses import replace

import pytest

from grading_core.pullover.grade import grade_pullover
from grading_core.pullover.request import NeckWishes
from grading_core.pullover.terms import notion_words, term_words
from grading_core.sentences import SAYINGS
from tests.grading_core.pullover.knitted_pullovers import PLAIN, REQUESTS, sizes_of


def by_id(sentences):
    return {sentence.id: sentence.values for sentence in sentences}


def say(id, **values):
    """A sentence of which only some values matter here."""
    saying = SAYINGS[id]
    return saying(**{name: values.get(name, 1) for name in saying.values})


@pytest.mark.parametrize(
    "request_name", ["nothing but a gauge", "babies with a dropped front", "no line, every round, from the centre back"]
)
def test_as_many_markers_are_told_as_the_neck_has_places_for_them(request_name):
    # one after each of four sections, and one for the start of the round
    made = grade_pullover(replace(REQUESTS[request_name], include=("sizes",)))
    assert by_id(notion_words(sizes_of(made)))["notions.markers"] == {"markers": 5}


def test_every_so_many_rounds_is_one_shaping_round_after_the_others():
    told = by_id(term_words([say("yoke.increase", every=4)]))
    assert told["terms.every"] == {"every": 4, "plain": 3}


def test_a_shaping_round_in_every_round_needs_no_term():
    assert "terms.every" not in by_id(term_words([say("yoke.increase", every=1)]))


def test_the_first_interval_of_a_run_is_told():
    told = by_id(term_words([say("sleeve.decrease", every=(None, 1, 6))]))
    assert told["terms.every"] == {"every": 6, "plain": 5}


def test_intervals_in_turn_are_told_as_they_occur():
    assert by_id(term_words([say("yoke.cycle", cycle=(2, 4))]))["terms.cycle"] == {"cycle": (2, 4)}


def test_each_rib_is_told_once():
    ribs = [say("rib.work", rib=say("ribbing.knit_purl", knit=knit, purl=1)) for knit in (1, 2, 1)]
    told = [sentence.values for sentence in term_words(ribs) if sentence.id == "terms.rib"]
    assert told == [{"knit": 1, "purl": 1}, {"knit": 2, "purl": 1}]


@pytest.mark.parametrize(
    ("used", "terms"),
    [
        ("yoke.leaning", {"make_one", "lifted"}),
        ("sleeve.decreases", {"slip_slip_knit", "knit_together"}),
        ("neck.short_rows", {"short_row", "double_stitch", "wrong_side"}),
        ("body.darts", {"short_row", "double_stitch", "wrong_side"}),
        ("neck.drop", {"wrong_side"}),
        ("sleeve.return", {"pick_up"}),
        ("band.pick_up", {"pick_up", "right_side"}),
        ("chart.rows", {"float"}),
        ("yoke.depth", set()),
    ],
)
def test_a_term_is_told_where_a_sentence_uses_it(used, terms):
    told = {id.removeprefix("terms.") for id in by_id(term_words([say(used)]))}
    assert told == terms | {"stockinette"}


@pytest.mark.parametrize(("used", "rows"), [("neck.drop", "some"), ("yoke.depth", "none")])
def test_stockinette_is_told_for_rows_where_there_are_any(used, rows):
    assert by_id(term_words([say(used)]))["terms.stockinette"] == {"rows": rows}


def test_a_pullover_without_short_rows_has_no_term_of_them():
    request = replace(PLAIN, labels=("S", "M"), neck=NeckWishes(lower_front="none"))
    sentences = [sentence for part in grade_pullover(request).instructions for sentence in part.sentences]
    told = by_id(term_words(sentences))
    assert "terms.pick_up" in told
    assert "terms.short_row" not in told
