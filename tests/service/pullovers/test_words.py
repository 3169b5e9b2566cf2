"""Random pullovers, each knitted from the text of its pattern alone (see `tests.oracles.knit_from_words`)."""

from copy import deepcopy
from fractions import Fraction

import pytest

from tests.oracles.knit_from_words import LANGUAGES, Met, knit_words
from tests.oracles.random_pullovers import random_request
from tests.oracles.sentence_kinds import KNITTED
from tests.oracles.sentence_reader import reader
from tests.oracles.words_and_values import Steps, disagreements, number

REQUESTS = 400
"""Each in one language; thousands in every language are knitted by hand."""

SELDOM = {"neck.marker_here", "neck.start_here", "sizes.apart"} | {
    f"{part}.{way}_cycle" for part in ("body", "sleeve") for way in ("decrease", "increase")
}
SELDOM |= {"yoke.cycle", "yoke.rounds_cycle", "yoke.rounds_steps"}
"""Sentences for unusual garments; thousands meet them all."""

DESIGN = {
    "include": ["table", "instructions"],
    "gauge": {"stitches": 22, "rows": 31},
    "labels": ["M", "L"],
    "neck": {"front_drop": 2},
    "body": {"levels": [{"measurement": "waist", "below": 14}], "bust_darts": {"extra": 3}},
    "yoke": {"seam_stitches": 1},
}


@pytest.fixture(scope="module")
def met(client):
    met = Met()
    for seed in range(REQUESTS):
        language = LANGUAGES[seed % len(LANGUAGES)]
        met.add(knit_words(client, random_request(seed), [language], choice=seed))
    return met


def test_random_pullovers_are_knitted_from_their_words_and_come_to_what_the_table_says(met):
    assert met.disagreements == []
    assert met.sizes >= 1000
    assert met.own > REQUESTS / 2


def test_nearly_every_sentence_of_the_garment_is_met(met):
    said = {id for _, id in met.ids}
    never = {id for id in reader("en-US").ids if id.partition(".")[0] in KNITTED} - said
    assert never <= SELDOM


@pytest.mark.parametrize("language", LANGUAGES)
def test_every_value_that_is_told_otherwise_than_it_is_printed_is_noticed(client, language):
    answer = client.post("/v1/pullovers", json=DESIGN | {"print": {"language": language}}).json
    words, unnoticed = reader(language), []
    for sentence in (each for part in answer["instructions"] for each in part["sentences"]):
        assert [*disagreements(words, sentence, answer["labels"], Steps())] == []
        for path in _numbers(sentence["values"]):
            false = deepcopy(sentence)
            place = false["values"]
            for step in path[:-1]:
                place = place[step]
            place[path[-1]] += 1
            if not [*disagreements(words, false, answer["labels"], Steps())]:
                unnoticed.append((sentence["id"], path))
    assert unnoticed == []


def _numbers(value, path=()):
    if isinstance(value, dict | list):
        for step, below in value.items() if isinstance(value, dict) else enumerate(value):
            yield from _numbers(below, (*path, step))
    elif isinstance(value, int | float):
        yield path


def test_printed_numbers_are_read_as_they_are_printed():
    printed = ["15 3/4", "3/4", "8,5", "8.5", "2\u00bd", "15 \u00be", "1\u00b3\u2044\u2081\u2086"]
    expected = [(63, 4), (3, 4), (17, 2), (17, 2), (5, 2), (63, 4), (19, 16)]
    assert [number(figure) for figure in printed] == [Fraction(*each) for each in expected]
