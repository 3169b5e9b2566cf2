"""What is answered of a pullover: some of its sizes, some of its parts; all of it is chosen over all sizes."""

import json

import pytest

from tests.service.pullovers.answers import CHARTED, GAUGE, row

SMALLEST_LARGEST = ["XS", "5X"]


@pytest.fixture(scope="module")
def ask(client):
    def asked(**request):
        response = client.post("/v1/pullovers", json={"gauge": GAUGE, **request})
        assert response.status_code == 200, response.text
        return response.json

    return asked


def kilobytes(value):
    return len(json.dumps(value, ensure_ascii=False, separators=(",", ":")).encode()) / 1000


def test_a_size_has_the_counts_that_it_has_among_all_the_others(ask, plain):
    """And others where it is graded alone: then no step to a neighbour has to be even."""
    among = ask(answer_sizes=["S"])
    assert row(among, "neck", "cast_on") == [row(plain, "neck", "cast_on")[1]]
    assert row(among, "neck", "cast_on") != row(ask(labels=["S"]), "neck", "cast_on")


def test_sizes_are_answered_in_the_order_of_the_design(ask):
    answer = ask(answer_sizes=["5X", "XS"])
    assert answer["labels"] == [size["label"] for size in answer["sizes"]] == SMALLEST_LARGEST


def test_sentences_are_about_the_sizes_that_are_answered(ask):
    told = json.dumps(ask(answer_sizes=SMALLEST_LARGEST)["instructions"])
    assert "XS (5X)" in told
    assert "2X" not in told


def test_unless_asked_an_answer_has_table_sentences_and_sizes_in_reading_order(ask):
    assert list(ask()) == ["table", "instructions", "warnings", "changed", "cost", "labels", "gauges", "sizes", "meta"]


@pytest.mark.parametrize(
    ("include", "there"),
    [
        (["table"], {"table"}),
        (["instructions"], {"instructions"}),
        (["sizes", "table"], {"sizes", "table"}),
        (["size_instructions"], {"sizes"}),
        (["chart_rounds"], {"sizes"}),
    ],
)
def test_an_answer_has_the_parts_that_it_is_asked_for(ask, include, there):
    assert ask(include=include).keys() & {"table", "instructions", "sizes"} == there


@pytest.mark.parametrize("part", ["neck", "yoke", "body", "sleeve", "band"])
def test_each_size_has_its_own_sentences_where_they_are_asked_for(ask, part):
    assert "instructions" not in ask(labels=["M"])["sizes"][0][part]
    assert ask(labels=["M"], include=["size_instructions"])["sizes"][0][part]["instructions"]


def test_a_chart_is_told_round_by_round_where_that_is_asked_for(ask):
    charted = {"labels": ["M"], **CHARTED["by default"]}
    short, long = (ask(**charted, **more)["sizes"][0]["chart"] for more in ({}, {"include": ["chart_rounds"]}))
    assert not {"rounds", "floats_by_round"} & short.keys()
    assert "rounds" not in short["body"]
    assert len(long["rounds"]) == ask(**charted)["sizes"][0]["yoke"]["rounds"]
    assert all([long["body"]["rounds"], long["sleeve"]["rounds"], long["floats_by_round"]["yoke"]])


def test_a_size_that_is_not_there_is_refused(refuse):
    assert list(refuse(answer_sizes=["S", "Q"])) == ["/answer_sizes/1"]


def test_a_part_that_is_not_there_is_refused(refuse):
    assert list(refuse(include=["tables"])) == ["/include/0"]


def test_answers_stay_small(ask):
    """Goals of the contract: nine sizes under 95 KB, table and sentences under 45, the numbers of one size under 9."""
    assert kilobytes(ask()) < 95
    assert kilobytes(ask(include=["table", "instructions"])) < 45
    assert kilobytes(ask(include=["sizes"], answer_sizes=["M"])["sizes"]) < 9
