"""Random pullovers, each knitted from the text of its pattern alone (see `tests.oracles.knit_from_words`)."""

from copy import deepcopy
from fractions import Fraction

import pytest

from tests.oracles.asked_edges import amiss
from tests.oracles.knit_from_words import LANGUAGES, Met, knit_words, own_sentences, with_own
from tests.oracles.random_pullovers import random_request
from tests.oracles.sentence_kinds import KNITTED
from tests.oracles.sentence_reader import reader
from tests.oracles.word_knitter import knit
from tests.oracles.words_and_values import Steps, disagreements, number

REQUESTS = 400
"""Each in one language; thousands in every language are knitted by hand."""

SELDOM = {"neck.marker_here", "neck.start_here", "sizes.apart"} | {
    f"{part}.{way}_cycle" for part in ("body", "sleeve") for way in ("decrease", "increase")
}
SELDOM |= {"yoke.cycle", "yoke.rounds_cycle", "yoke.rounds_steps", "split.colour"}
"""Sentences for unusual garments; thousands meet them all."""

DESIGN = {
    "include": ["table", "instructions"],
    "gauge": {"stitches": 22, "rows": 31},
    "labels": ["M", "L"],
    "neck": {"front_drop": 2},
    "body": {"levels": [{"measurement": "waist", "below": 14}], "bust_darts": {"extra": 3}},
    "yoke": {"seam_stitches": 1},
}


EDGED = {
    "include": ["table", "instructions", "size_instructions"],
    "gauge": {"stitches": 22, "rows": 31},
    "labels": ["M"],
    "yoke": {"seam": "purl"},
    "body": {"hem": {"rib": {"knit": 2, "purl": 2}, "colour": "r"}},
    "sleeve": {"cuff": {"count_rule": {"multiple": 6}}},
    "band": {"rib": {"knit": 3, "purl": 1}, "colour": "b"},
    "yarn": {
        "main_colour": "o",
        "colours": {
            "o": {"name": "oat", "metres_per_100g": 400},
            "r": {"name": "rust", "metres_per_100g": 400},
            "b": {"name": "brick", "metres_per_100g": 400},
        },
    },
}

OTHERWISE = {
    "body.hem.rib": {"knit": 1, "purl": 3},
    "sleeve.cuff.rib": {"knit": 4, "purl": 2},
    "band.rib": {"knit": 2, "purl": 2},
    "changes.band.rib": {"knit": 2, "purl": 2},
    "body.hem.colour": "b",
    "sleeve.cuff.colour": "r",
    "band.colour": "o",
    "changes.band.colour": "r",
    "yarn.main_colour": "b",
    "yoke.seam": "knit",
    "yoke.seam_stitches": 0,
}
"""What might have been asked of the edges of `EDGED` instead."""


@pytest.fixture(scope="module", params=LANGUAGES)
def edged(client, request):
    """`EDGED` as it is knitted from all sizes' words and from its own, in a language."""
    answer = client.post("/v1/pullovers", json=EDGED | {"print": {"language": request.param}}).json
    parts = [(part["part"], [each["text"] for each in part["sentences"]]) for part in answer["instructions"]]
    own = with_own(answer, [*own_sentences(answer["sizes"][0])])
    return [knit(each, ["M"], "M", reader(request.param))[0] for each in (parts, own)]


def test_edges_are_told_as_they_are_asked_for(edged):
    assert [[*amiss(piece, EDGED)] for piece in edged] == [[], []]


@pytest.mark.parametrize("path", OTHERWISE)
def test_edges_that_were_asked_otherwise_are_noticed(edged, path):
    asked = deepcopy(EDGED)
    place = asked
    *steps, last = path.split(".")
    for step in steps:
        place = place.setdefault(step, {})
    place[last] = OTHERWISE[path]
    assert all([*amiss(piece, asked)] for piece in edged)


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
