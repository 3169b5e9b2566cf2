"""What there is to say, apart from any language."""

import pytest

from grading_core.sentences import (
    COUNT,
    COUNTS,
    NAMES,
    SAYINGS,
    TEXT,
    Saying,
    alone,
    for_size,
    for_sizes,
    shared,
    word,
    words,
)


@pytest.fixture
def saying():
    """One that there is as long as a test runs."""
    made = Saying("test.anything", rounds=COUNT, cycle=COUNTS, size=TEXT, others=NAMES)
    yield made
    del SAYINGS["test.anything"]


def said(saying, **values):
    return saying(**{"rounds": (3, None), "cycle": (2, 4), "size": ("S", "M"), "others": ("L",), **values})


def test_a_saying_is_found_by_its_id(saying):
    assert SAYINGS["test.anything"] is saying
    assert saying().id == "test.anything"


def test_an_id_is_said_by_one_saying_alone(saying):
    with pytest.raises(AssertionError):
        Saying("test.anything")


def test_the_values_of_one_size_are_no_runs_and_lists_stay_lists(saying):
    [sentence] = alone([said(saying, rounds=(3,), size=("S",))])
    assert dict(sentence.values) == {"rounds": 3, "cycle": (2, 4), "size": "S", "others": ("L",)}


def test_a_sentence_of_one_size_names_it(saying):
    [sentence] = for_size([said(saying, rounds=(3,))], "S")
    assert (sentence.labels, sentence.places, sentence.values["rounds"]) == (("S",), None, 3)


def test_a_sentence_of_some_sizes_names_them_and_keeps_the_values_of_all(saying):
    sentence = for_sizes(said(saying, rounds=(3, None, 4)), ("S", "M", "L"), iter((0, 2)))
    assert (sentence.labels, sentence.places) == (("S", "L"), (0, 2))
    assert sentence.values["rounds"] == (3, None, 4)


@pytest.mark.parametrize(
    ("values", "number"), [((4, 4), 4), ((None, 4), 4), ((3, 4), None), ((None, None), None), ((), None), ((0, 0), 0)]
)
def test_sizes_share_a_number_where_all_that_have_one_have_the_same(values, number):
    assert shared(values) == number


def test_a_kind_of_words_tells_its_group():
    assert (word("edges").group, words("edges").group) == ("edges", "edges")
    assert "`edges`" in word("edges").about
    assert word("edges").name != words("edges").name
