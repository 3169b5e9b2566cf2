"""What stands before the knitting. Measurements are the table's; needles those of the published yarn standard."""

from dataclasses import replace
from fractions import Fraction
from math import ceil

import pint
import pytest

from grading_core.gauge import Gauge
from grading_core.pullover.colours import garment_colours
from grading_core.pullover.front_matter import finished_words, gauge_words, needle_words, size_words, yarn_words
from grading_core.pullover.grade import grade_pullover
from grading_core.pullover.request import Gauges, YarnWishes, YokeWishes
from grading_core.pullover.result import KnittedSize
from grading_core.units import CM_PER_INCH
from grading_core.yoke.request import Options
from grading_core.yoke.words import PLAIN as PLAIN_ROUNDS
from tests.grading_core.pullover.knitted_pullovers import DIAMOND, FINE, GAUGE, PLAIN, REQUESTS


def made_of(request):
    """A pullover's sizes by label, without its words."""
    made = grade_pullover(replace(request, include=("table", "sizes")))
    return made, {size.label: size.outcome if isinstance(size.outcome, KnittedSize) else None for size in made.sizes}


def by_id(sentences):
    return {sentence.id: sentence.values for sentence in sentences}


@pytest.fixture(scope="module")
def small_and_medium():
    return made_of(replace(PLAIN, labels=("S", "M")))


def test_sizes_are_named_as_a_run(small_and_medium):
    labels = by_id(size_words(small_and_medium[1], ()))["sizes.labels"]
    assert labels == {"sizes": ("S", "M")}


def test_whom_a_size_fits_is_the_tables_body(small_and_medium):
    # Craft Yarn Council, woman size chart: busts of S and M 32 to 34 and 36 to 38 in; the middle counts
    told = by_id(size_words(small_and_medium[1], ()))
    assert told["sizes.to_fit"]["length"] == (33 * CM_PER_INCH, 37 * CM_PER_INCH)


def test_ease_is_what_the_garment_measures_beyond_the_body(small_and_medium):
    _, sizes = small_and_medium
    ease = by_id(size_words(sizes, ()))["sizes.ease"]
    beyond = tuple(size.finished.bust - size.to_fit for size in sizes.values())
    assert ease == {"length": beyond, "kind": "more"}


@pytest.mark.parametrize(
    ("asked", "kind", "signs"), [((-6, -6), "less", (1, 1)), ((-6, 6), "either", (-1, 1)), ((6, 6), "more", (1, 1))]
)
def test_a_garment_narrower_than_the_body_is_told_to_be_so(asked, kind, signs):
    request = replace(PLAIN, labels=("S", "M"), ease={"bust": tuple(map(Fraction, asked))}, smoothing="none")
    ease = by_id(size_words(made_of(request)[1], ()))["sizes.ease"]
    assert ease["kind"] == kind
    assert [(length > 0) - (length < 0) for length in ease["length"]] == [*signs]


def test_how_a_run_is_read_is_told_where_there_is_more_than_one_size(small_and_medium):
    _, sizes = small_and_medium
    assert by_id(size_words(sizes, ()))["sizes.run"] == {"first": "S", "others": ("M",)}
    assert "sizes.run" not in by_id(size_words({"S": sizes["S"]}, ()))


def test_a_dash_is_explained_where_one_occurs(small_and_medium):
    _, sizes = small_and_medium
    assert "sizes.dash" not in by_id(size_words(sizes, [PLAIN_ROUNDS(rounds=(1, 2))]))
    assert "sizes.dash" in by_id(size_words(sizes, [PLAIN_ROUNDS(rounds=(1, None))]))


def test_a_size_that_can_t_be_knitted_is_named_and_its_dash_explained():
    # the largest size has too few rounds for single increases
    request = replace(PLAIN, labels=("S", "5X"), yoke=YokeWishes(options=Options(double_body="never")))
    told = by_id(size_words(made_of(request)[1], ()))
    assert told["sizes.impossible"] == {"sizes": ("5X",)}
    assert "sizes.dash" in told


def test_each_finished_measurement_is_that_of_its_row_in_the_table(small_and_medium):
    made, sizes = small_and_medium
    rows = {
        f"finished_measurements.{row.item}": {"length": row.values}
        for row in made.table
        if row.part == "finished" and row.item not in ("front_length", "underarm", "band")
    }
    assert by_id(finished_words(sizes)) == rows


def test_the_length_of_the_front_is_told_where_darts_make_it_another():
    _, sizes = made_of(replace(REQUESTS["a wider front with darts, and a waist"], labels=("S", "5X")))
    told = by_id(finished_words(sizes))
    assert told["finished_measurements.front_length"]["length"] > told["finished_measurements.body_length"]["length"]
    assert told["finished_measurements.front_extra"]["length"][0] is None


def test_a_gauge_is_told_over_10_cm():
    assert by_id(gauge_words(Gauges(GAUGE, rib=FINE))) == {
        "gauge.plain": {"stitches": 22, "rounds": 31},
        "gauge.rib": {"stitches": 32, "rounds": 44},
    }


def test_a_gauge_counted_over_inches_is_told_as_it_was_counted():
    # twice 11.25 stitches and 15.5 rounds over 2 in
    gauge = Gauge.over(Fraction(45, 4), Fraction(31, 2), 2 * CM_PER_INCH)
    assert by_id(gauge_words(Gauges(gauge)))["gauge.plain"] == {"stitches": Fraction(45, 2), "rounds": 31}


@pytest.mark.parametrize(
    ("stitches", "needles"),
    [
        # Craft Yarn Council, Standard Yarn Weight System: category, stitches to 4 in, needles in mm and US numbers
        (Fraction(30), (Fraction("2.25"), Fraction("3.25"), "1", "3")),
        (Fraction(22), (Fraction("3.75"), Fraction("4.5"), "5", "7")),
        (Fraction(14), (Fraction("5.5"), Fraction(8), "9", "11")),
        # 21 to 24 and 23 to 26 overlap: 23 lies nearer to the middle of the first, 24 to that of the second
        (Fraction(23), (Fraction("3.75"), Fraction("4.5"), "5", "7")),
        (Fraction(24), (Fraction("3.25"), Fraction("3.75"), "3", "5")),
        # finer than any category
        (Fraction(48), (Fraction("1.5"), Fraction("2.25"), "000", "1")),
    ],
)
def test_needles_are_those_of_the_yarn_standard_for_the_gauge(stitches, needles):
    values = by_id(needle_words(Gauges(Gauge.over(stitches, Fraction(30), Fraction(10)))))["needles.range"]
    assert tuple(values[name] for name in ("thinnest", "thickest", "thinnest_us", "thickest_us")) == needles


def test_the_thickest_needles_have_no_upper_end():
    # the standard: 6 stitches and fewer, 12.75 mm (US 17) and larger
    told = by_id(needle_words(Gauges(Gauge.over(Fraction(6), Fraction(8), Fraction(10)))))
    assert told["needles.thick"] == {"thinnest": Fraction("12.75"), "thinnest_us": "17"}


@pytest.mark.parametrize(("gauges", "kind"), [(Gauges(GAUGE), "thinner"), (Gauges(GAUGE, rib=FINE), "gauge")])
def test_ribs_take_thinner_needles_unless_they_have_a_gauge(gauges, kind):
    assert by_id(needle_words(gauges))["needles.rib"] == {"kind": kind}


def test_a_chart_s_own_gauge_chooses_its_needles():
    assert "needles.stranded" in by_id(needle_words(Gauges(GAUGE, stranded=FINE)))
    assert "needles.stranded" not in by_id(needle_words(Gauges(GAUGE)))


def test_yarn_is_told_in_whole_grams_metres_and_yards():
    wishes = YarnWishes(metres_per_100g=Fraction(200))
    _, sizes = made_of(replace(PLAIN, labels=("S", "M"), yarn=wishes))
    told = by_id(yarn_words(sizes, garment_colours(PLAIN), wishes))["yarn.amount"]
    yard = pint.UnitRegistry(non_int_type=Fraction)
    for place, size in enumerate(sizes.values()):
        (need,) = size.yarn
        assert abs(told["grams"][place] - need.grams.likely) <= Fraction(1, 2)
        assert abs(told["metres"][place] - need.metres.likely) <= Fraction(1, 2)
        assert abs(told["yards"][place] - (need.metres.likely * yard.metre).to("yard").magnitude) <= Fraction(1, 2)


def test_balls_are_told_with_their_weight_and_the_margin():
    wishes = YarnWishes(metres_per_100g=Fraction(200), ball_grams=Fraction(25), margin=Fraction(1, 5))
    _, sizes = made_of(replace(PLAIN, labels=("S",), yarn=wishes))
    told = by_id(yarn_words(sizes, garment_colours(PLAIN), wishes))["yarn.balls"]
    (need,) = sizes["S"].yarn
    # a fifth more than the most that it may be, in balls of 25 g
    assert told["balls"] == (ceil(need.grams.high * 12 / 10 / 25),)
    assert (told["ball_grams"], told["margin"], told["colours"]) == (25, 20, "one")


def test_yarn_is_told_for_each_colour_of_a_chart():
    wishes = YarnWishes(metres_per_100g=Fraction(200))
    request = replace(REQUESTS["a chart that runs on"], labels=("S",), yarn=wishes)
    sentences = yarn_words(made_of(request)[1], garment_colours(request), wishes)
    told = [sentence.values for sentence in sentences if sentence.id == "yarn.amount"]
    assert [(each["colours"], each["colour"]) for each in told] == [
        ("several", colour.name) for colour in DIAMOND.colours.values()
    ]


@pytest.mark.parametrize("swatch", [{}, {"swatch_grams": Fraction(10), "swatch_stitches": 900}])
def test_how_the_amounts_are_known_is_told(swatch):
    wishes = YarnWishes(metres_per_100g=Fraction(200), **swatch)
    _, sizes = made_of(replace(PLAIN, labels=("S",), yarn=wishes))
    assert by_id(yarn_words(sizes, garment_colours(PLAIN), wishes))["yarn.basis"] == {
        "basis": "measured" if swatch else "estimated"
    }
