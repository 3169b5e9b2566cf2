from copy import deepcopy

import pytest

from tests.oracles.pullover_answer import feasible
from tests.service.pullovers.answers import GAUGE, WOMEN, row


def test_one_impossible_size_is_told_and_the_others_are_made(make):
    request = {"labels": ["S", "M", "4X"], "yoke": {"double_body": "never"}}
    answer = make(**request)
    small, middle, large = answer["sizes"]
    assert small["feasible"]
    assert middle["feasible"]
    assert not large["feasible"]
    assert large["reason"]
    assert {one["field"] for one in large["nearest"]} == {"yoke.depth", "yoke.step", "yoke.double_body"}
    assert row(answer, "body")[2] is None
    sentences = [sentence["text"] for sentence in answer["instructions"][0]["sentences"]]
    assert sentences[0] == "Sizes: S (M, 4X)."
    for nearest in large["nearest"]:
        mended = deepcopy(request)
        part, field = nearest["field"].split(".")
        mended[part][field] = nearest["value"]
        assert len(feasible(make(**mended))) == 3, nearest


@pytest.mark.parametrize("unit", ["cm", "in"])
def test_a_nearest_length_is_in_the_unit_of_the_request(make, unit):
    short = 10 if unit == "cm" else 4
    request = {"unit": unit, "gauge": {**GAUGE, "over": 10 if unit == "cm" else 4}, "labels": ["L"]}
    sleeve = {"length": short, "plain_after": 14}
    answer = make(**request, sleeve=sleeve)
    (nearest,) = [one for one in answer["sizes"][0]["nearest"] if one["field"] == "sleeve.length"]
    mended = make(**request, sleeve=sleeve | {"length": nearest["value"]})
    assert mended["sizes"][0]["feasible"]


def test_even_when_every_size_is_impossible_the_answer_is_an_answer(make):
    answer = make(neck={"count_rule": {"multiple": 1000}})
    assert feasible(answer) == []
    assert [size["label"] for size in answer["sizes"]] == WOMEN
    assert all(size["nearest"] for size in answer["sizes"])
    assert answer["instructions"] == []


def test_a_seam_too_wide_for_body_or_sleeve_is_impossible_without_a_chart_as_with_one(make):
    # half a waist and a cuff hold fewer stitches
    (size,) = make(labels=["M"], yoke={"seam_stitches": 43})["sizes"]
    assert not size["feasible"]
    assert "seam stitches" in size["reason"]
    (nearest,) = size["nearest"]
    assert nearest["field"] == "yoke.seam_stitches"
    assert make(labels=["M"], yoke={"seam_stitches": nearest["value"]})["sizes"][0]["feasible"]


def test_a_nearest_level_says_which_one_and_applied_alone_makes_the_body_feasible(make):
    levels = [{"measurement": "waist", "below": 18}, {"measurement": "hip", "below": 50}]
    (size,) = make(labels=["M"], body={"levels": levels})["sizes"]
    assert not size["feasible"]
    fields = {nearest["field"]: nearest["value"] for nearest in size["nearest"]}
    assert set(fields) == {"body.length", "body.levels.1.below"}
    higher = [levels[0], {**levels[1], "below": fields["body.levels.1.below"]}]
    assert make(labels=["M"], body={"levels": higher})["sizes"][0]["feasible"]
    assert make(labels=["M"], body={"levels": levels, "length": fields["body.length"]})["sizes"][0]["feasible"]
