"""In which language an answer comes. RFC 4647 section 3.4 (lookup), RFC 9110 sections 8.5, 12.5.4 and 12.5.5."""

import re
from xml.etree import ElementTree

import pytest
from flask import Flask, request
from flask.testing import FlaskClient
from hypothesis import given
from hypothesis import strategies as st

from service.language import LANGUAGES, lookup
from service.negotiation import accepted_language

SCHEDULES = "/v1/raglan-schedules"
YOKE = {
    "gauge": {"stitches": 16, "rows": 22},
    "sizes": [
        {
            "label": "6 months",
            "rounds": 18,
            "neck": {"back": 18, "front": 18, "sleeve": 8},
            "split": {"back": 32, "front": 32, "sleeve": 18},
        }
    ],
}
GRADINGS = "/v1/size-gradings"
GRADING = {"gauge": {"stitches": 22, "rows": 31}, "body_table": "women", "labels": ["S"], "ease": {"bust": 10}}
PICTURE = "/v1/chart-placements/picture"
CHART = {
    "gauge": {"stitches": 20, "rows": 30},
    "chart": {"rows": ["..#..", ".###.", "#####"]},
    "anchor": {"back": 3, "front": 3, "sleeve": 3},
    "sizes": [{"label": "S", "rounds": 3, "neck": {"back": 5, "front": 5, "sleeve": 5}}],
}
PUBLISHED = ["/v1/standards", "/v1/standards/body-tables/women", "/v1/standards/fits", "/problems/not-json"]


def asked(client: FlaskClient, path=SCHEDULES, body=YOKE, accepts=None, method="POST", **headers):
    told = {} if accepts is None else {"Accept-Language": accepts}
    named = {name.replace("_", "-"): value for name, value in headers.items()}
    return client.open(path, method=method, json=body, headers={**told, **named})


def found(accepts: str) -> str:
    with Flask("any").test_request_context(headers={"Accept-Language": accepts}):
        return accepted_language(request).tag


@pytest.mark.parametrize(
    ("accepts", "tag"),
    [
        (None, "en-US"),
        ("", "en-US"),
        ("de", "de"),
        ("DE", "de"),
        ("de-AT", "de"),
        ("de-Latn-DE-1996", "de"),
        # a subtag of one character goes with what it introduces
        ("de-x-old", "de"),
        ("en-GB", "en-GB"),
        ("en-gb-oed", "en-GB"),
        ("en-GB;q=0.5, de;q=0.8", "de"),
        ("en-GB;q=0.8, de;q=0.8", "en-GB"),
        ("fr, nl;q=0.9, de;q=0.1", "de"),
        # a star is passed over where other languages are named
        ("*, de;q=0.1", "de"),
        ("*", "en-US"),
        # English without a country is the usual English, not the next language
        ("en, de;q=0.9", "en-US"),
        ("en-AU, en;q=0.9, de;q=0.8", "en-US"),
        ("de;q=0", "en-US"),
        ("de;q=0, en-GB;q=0.1", "en-GB"),
        ("fr", "en-US"),
        # not of the form that RFC 9110 has: passed over, never refused
        ("de;q=2, en-GB", "en-GB"),
        ("de;q=high", "en-US"),
        (" de ;\tq=1 ", "de"),
        (",,, de", "de"),
        ("-", "en-US"),
        ("d-e", "en-US"),
        ("deutsch", "en-US"),
        ("de_DE", "en-US"),
    ],
)
def test_the_language_is_looked_up(client, accepts, tag):
    answer = asked(client, accepts=accepts)
    assert answer.status_code == 200
    assert answer.headers["Content-Language"] == tag


def test_the_sentences_are_in_the_language_that_is_told(client):
    def told(accepts):
        answer = asked(client, accepts=accepts).json["sizes"][0]["instructions"]
        return " ".join(sentence["text"] for sentence in answer)

    assert re.search(r"\bRunden\b.*\bMaschen\b", told("de"))
    assert re.search(r"\brounds\b.*\bstitches\b", told("en-GB"), re.IGNORECASE)


def test_what_the_request_says_goes_before_what_the_client_accepts(client):
    answer = asked(client, body={**YOKE, "print": {"language": "de"}}, accepts="en-GB")
    assert answer.headers["Content-Language"] == "de"


def test_a_language_that_there_is_not_is_refused_in_the_request(client):
    answer = asked(client, body={**YOKE, "print": {"language": "fr"}})
    assert [error["pointer"] for error in answer.json["errors"]] == ["/print/language"]


def test_words_are_all_that_a_language_changes(client):
    def without_words(value):
        if isinstance(value, dict):
            told = ("text", "message", "meta")
            return {name: without_words(each) for name, each in value.items() if name not in told}
        return [*map(without_words, value)] if isinstance(value, list) else value

    usual, *others = (asked(client, accepts=tag).json for tag in ("en-US", "en-GB", "de"))
    assert usual["sizes"][0]["instructions"]
    for answer in others:
        assert without_words(answer) == without_words(usual)


def test_the_decimal_mark_is_the_languages_unless_it_is_sent(client):
    def bust(accepts, **settings):
        body = {**GRADING, "print": {"cm_step": 0.01, **settings}}
        return asked(client, GRADINGS, body, accepts).json["runs"]["bust"]["finished_cm"]

    assert re.fullmatch(r"\d+,\d+", bust("de"))
    assert re.fullmatch(r"\d+\.\d+", bust("en-GB"))
    assert re.fullmatch(r"\d+\.\d+", bust("de", decimal_mark="."))
    assert re.fullmatch(r"\d+,\d+", bust("en-GB", decimal_mark=","))


def test_a_table_has_the_languages_decimal_mark_in_its_runs_alone(client):
    lines = [asked(client, GRADINGS, GRADING, tag, Accept="text/csv").text.splitlines() for tag in ("en-US", "de")]
    values = [[line.split(",")[:4] for line in table] for table in lines]
    assert values[0] == values[1]
    assert lines[0] != lines[1]


def test_every_answer_says_that_it_depends_on_the_language(client):
    for answer in (asked(client, accepts="de"), asked(client, body={}), client.get("/v1/standards/fits")):
        assert "Accept-Language" in answer.headers["Vary"]


def test_a_query_in_two_languages_has_two_tags(client):
    tags = {tag: asked(client, accepts=tag, method="QUERY").headers["ETag"] for tag in LANGUAGES}
    assert len(set(tags.values())) == len(LANGUAGES)
    assert asked(client, accepts="de", method="QUERY", If_None_Match=tags["de"]).status_code == 304
    assert asked(client, accepts="de-AT", method="QUERY", If_None_Match=tags["de"]).status_code == 304
    assert asked(client, accepts="en-GB", method="QUERY", If_None_Match=tags["de"]).status_code == 200


@pytest.mark.parametrize("body", [{}, {"gauge": 1}])
def test_a_problem_is_told_in_english_and_says_so(client, body):
    answer = asked(client, body=body, accepts="de")
    assert answer.status_code == 422
    assert answer.headers["Content-Language"] == "en"


@pytest.mark.parametrize("path", ["/nowhere", SCHEDULES])
def test_a_problem_that_no_operation_tells_says_its_language_too(client, path):
    answer = client.get(path, headers={"Accept-Language": "de"})
    assert answer.status_code in (404, 405)
    assert answer.headers["Content-Language"] == "en"


@pytest.mark.parametrize("path", PUBLISHED)
def test_published_tables_are_in_english_whatever_is_asked(client, path):
    usual, german = client.get(path), client.get(path, headers={"Accept-Language": "de"})
    assert usual.headers["Content-Language"] == german.headers["Content-Language"] == "en"
    assert usual.headers["ETag"] == german.headers["ETag"]
    assert usual.data == german.data


def test_a_body_table_cannot_be_asked_for_in_a_language(client):
    answer = client.get("/v1/standards/body-tables/women?language=de")
    assert [error["parameter"] for error in answer.json["errors"]] == ["language"]


@pytest.mark.parametrize("tag", LANGUAGES)
def test_a_picture_says_in_which_language_its_words_are(client, tag):
    answer = asked(client, PICTURE, {**CHART, "print": {"language": tag}})
    root = ElementTree.fromstring(answer.data)
    assert answer.headers["Content-Language"] == tag
    # SVG 2 section 5.8.2, and SVG 1.1 before it
    assert root.get("lang") == root.get("{http://www.w3.org/XML/1998/namespace}lang") == tag


def test_a_picture_has_its_words_in_the_language(client):
    svg = "{http://www.w3.org/2000/svg}"
    root = ElementTree.fromstring(asked(client, PICTURE, CHART, "de").data)
    words = [text.text for text in root.iter(f"{svg}text")]
    assert {"Runde", "Spalte", "Passe"} <= set(words)
    assert root.find(f"{svg}title").text == "Wo die Strickschrift beginnt, Größe S"


@given(st.text(st.characters(min_codepoint=32, max_codepoint=255, exclude_characters="\x7f"), max_size=60))
def test_no_header_is_too_odd(accepts):
    assert found(accepts) in LANGUAGES


@given(st.lists(st.sampled_from(["de", "en-GB", "*", "x", "q=0", "q=", ";", ",", "-", '"', "\\", "=", " ", "q*0=1"])))
def test_no_header_made_of_what_languages_are_made_of_is_too_odd(parts):
    assert found("".join(parts)) in LANGUAGES


@pytest.mark.parametrize(
    "accepts",
    [",".join(f"a{n}-x" for n in range(20_000)), "a-" * 60_000, "de;q=0;" * 20_000, '"' * 100_000, "\\" * 100_000],
    ids=["many ranges", "many subtags", "many parameters", "quotes", "backslashes"],
)
def test_no_header_is_too_long(accepts):
    """Of a hundred times the length that gunicorn takes."""
    assert found(accepts) in LANGUAGES


def test_a_language_of_no_country_goes_before_that_of_a_country():
    english, german = LANGUAGES["en-US"], LANGUAGES["de"]
    offered = {"en-US": english, "de": german, "en": LANGUAGES["en-GB"]}
    assert lookup(["en-AU"], offered) is LANGUAGES["en-GB"]
    assert lookup(["en-US"], offered) is english
