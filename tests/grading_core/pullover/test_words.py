"""Instructions, knitted as they are written and counted."""

from __future__ import annotations

import re
from dataclasses import replace
from fractions import Fraction

import pytest

from grading_core.errors import Impossible
from grading_core.gauge import Gauge
from grading_core.printing import DASH, Printing, printed_as
from grading_core.pullover.grade import grade_pullover
from grading_core.pullover.request import BodyWishes, ChartWishes, Gauges, LevelWish, NeckWishes, YokeWishes
from grading_core.yoke.request import Options
from tests.grading_core.pullover.knitted_pullovers import DIAMOND, PLAIN, REQUESTS, knit_yoke, said, sizes_of


def test_the_yoke_as_written_leads_to_the_stitches_that_the_split_begins_with(made):
    before = said(made, "split", "There are RUN stitches on the needle")
    for size, (total,) in zip(sizes_of(made), before, strict=True):
        assert len(knit_yoke(size)) == total == size.counts.yoke_total


def test_the_split_as_written_makes_the_body_and_the_sleeves(made):
    pattern = (
        r"Work to marker 1(?: and (?:\d+) stitch(?:es)? past it)?, put the next RUN stitch\w* on hold .*? "
        r"cast on RUN stitch\w* .*? work RUN stitch\w* for the front, put as many as before on hold .*? "
        r"cast on as many for its underarm, .*? The body has RUN stitch\w*\. .*? at its underarm: RUN stitch"
    )
    for size, (held, under, front, body, arm) in zip(sizes_of(made), said(made, "split", pattern), strict=True):
        other, under_too = held, under
        needle = knit_yoke(size)
        start = needle.index("s") - size.counts.line_to_sleeve
        first, needle_after = needle[start : start + held], needle[start + held :]
        middle, second, end = (needle_after[:front], needle_after[front : front + other], needle_after[front + other :])
        assert first.count("s") == second.count("t") == size.counts.split.sleeve
        assert set(middle) <= {"l", "f"}
        assert middle.count("f") == size.counts.split.front
        assert set(end) <= {"l"}
        assert start + under + len(middle) + under_too + len(end) == body == size.counts.body
        assert held + under == other + under_too == arm == size.counts.sleeve


def test_the_line_stitches_past_marker_1_are_those_of_the_body(made):
    for part in made.instructions:
        if part.part == "split":
            told = re.search(r"and (\d+) stitch(?:es)? past it", part.sentences[1])
            assert (int(told[1]) if told else 0) == sizes_of(made)[0].counts.line_to_body


def test_a_wider_front_is_told_at_the_split_and_counted_on_the_needle():
    made = grade_pullover(REQUESTS["a wider front with darts, and a waist"])
    told = said(made, "split", "From underarm to underarm the front has RUN stitches more than the back")
    assert told[0] == [0]
    for size, (more,) in zip(sizes_of(made), told, strict=True):
        needle = knit_yoke(size)
        assert needle.count("f") - needle.count("b") == more
    assert "From underarm" not in " ".join(grade_pullover(PLAIN).instructions[2].sentences)


def test_the_darts_are_told_with_the_body_with_a_dash_for_a_size_without_any():
    made = grade_pullover(REQUESTS["a wider front with darts, and a waist"])
    (body,) = [part.sentences for part in made.instructions if part.part == "body"]
    assert body[0].startswith("Place a side marker ")
    assert body[1].startswith(f"In round {DASH} (9, ")
    rows = [size.body.bust_darts.rows if size.body.bust_darts else DASH for size in sizes_of(made)]
    assert f"with {rows[0]} ({', '.join(map(str, rows[1:]))}) short rows" in body[1]


def chart_values(made, id):
    """The values of the chart's sentences of one id."""
    (sentences,) = [part.sentences for part in made.instructions if part.part == "chart"]
    return [sentence.values for sentence in sentences if sentence.id == id]


@pytest.mark.parametrize(
    ("section", "of", "below"),
    [("back", 0, "chart.body_back"), ("front", 1, "chart.body_front"), ("sleeve", 2, "chart.sleeve_start")],
)
def test_the_columns_as_told_run_straight_from_the_yoke_over_the_underarm(section, of, below):
    made = grade_pullover(REQUESTS["a chart that runs on"])
    (begun,) = [each for each in chart_values(made, "chart.start") if section in each["sections"]]
    (lower,) = chart_values(made, below)
    for place, size in enumerate(sizes_of(made)):
        # every increase after the round in which the chart begins moves the start back
        later = sum(
            worked.increases[of] for worked in size.yoke.increase_rounds if worked.round > begun["round"][place]
        )
        # from where the rounds start the rest of the underarm and one stitch of the raglan line lead to the section
        between = size.counts.underarm - lower["before"][place] + 1
        assert (begun["column"][place] - later - lower["column"][place] - between) % DIAMOND.width == 0


def test_an_impossible_size_keeps_its_place_in_every_run_with_a_dash():
    # the largest sizes have too few rounds for single increases
    request = replace(
        REQUESTS["a chart that runs on"], labels=("S", "M", "5X"), yoke=YokeWishes(options=Options(double_body="never"))
    )
    made = grade_pullover(request)
    possible = [not isinstance(size.outcome, Impossible) for size in made.sizes]
    assert possible == [True, True, False]
    told = {part.part: part.sentences for part in made.instructions}
    assert told["neck"][0] == "Sizes: S (M, 5X)."
    runs = [
        run
        for part in told.values()
        for sentence in part
        for run in re.findall(r"[\w\u2013]+ \(([^()a-z]+)\)", sentence)
    ]
    assert len(runs) > 30
    for run in runs:
        others = run.split(", ")
        assert len(others) == 2, run
        assert (others[1] == DASH) == (run != "M, 5X"), run


def test_missing_numbers_and_decimals_are_told_as_they_are_printed():
    request = replace(PLAIN, labels=("S", "5X"), yoke=YokeWishes(options=Options(double_body="never")))
    gauge = Gauge.over(Fraction(45, 2), Fraction(31), Fraction(10))
    with printed_as(Printing(missing="none", decimal_mark=",")):
        made = grade_pullover(replace(request, gauges=Gauges(gauge)))
    sentences = " ".join(sentence for part in made.instructions for sentence in part.sentences)
    assert "22,5 stitches and 31 rounds to 10 cm = 4 in" in sentences
    assert "22.5" not in sentences
    assert "(none)" in sentences
    assert DASH not in sentences


@pytest.mark.parametrize(
    ("seam_stitches", "underarm", "place"),
    # half of the 12 stitches beside the seam, then the seam; without one, half of all
    [
        (3, 15, "9 stitches after the beginning of the underarm, behind its 3 seam stitches"),
        (None, 16, "8 stitches after the beginning of the underarm"),
    ],
)
def test_split_body_and_sleeve_start_at_one_place_said_in_the_same_way(seam_stitches, underarm, place):
    waist = BodyWishes(levels=(LevelWish("waist", Fraction(18)),))
    request = replace(PLAIN, labels=("M",), yoke=YokeWishes(seam_stitches=seam_stitches), body=waist)
    pullover = grade_pullover(request)
    (size,) = sizes_of(pullover)
    assert size.counts.underarm == underarm
    told = {each.part: " ".join(each.sentences) for each in pullover.instructions}
    alone = {"body": " ".join(size.body.instructions()), "sleeve": " ".join(size.sleeve.instructions())}
    of_each = place.replace("the underarm", "each underarm")
    assert place.replace("the underarm", "the underarm cast on last") in told["split"]
    for words in (told["body"], alone["body"]):
        assert of_each in words
        assert ("side of the seam stitches" in words) == (seam_stitches is not None)
    for words in (told["sleeve"], alone["sleeve"]):
        assert place in words
        assert ("side of the seam stitches" in words) == (seam_stitches is not None)
    assert "middle" not in told["body"] + told["sleeve"]
    assert ("seam" in told["split"]) == (seam_stitches is not None)


def test_a_round_that_starts_at_the_centre_back_goes_on_to_start_there():
    made = grade_pullover(REQUESTS["no line, every round, from the centre back"])
    assert "Work on to the start of the round at the centre back" in " ".join(made.instructions[2].sentences)
    charted = replace(PLAIN, chart=ChartWishes(chart=DIAMOND), neck=NeckWishes(start="centre_back"))
    assert "chart_starts_before_back" in {remark.code for remark in grade_pullover(charted).remarks}
