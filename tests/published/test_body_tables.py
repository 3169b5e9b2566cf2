"""The built-in body tables against the published size charts.

Source of `data/size_charts.csv`: Craft Yarn Council, Standards & Guidelines, woman, man, child and youth, and
baby size charts, web edition in inches and centimetres as read in public transcriptions; women's 5X upper arm
and the name of men's back hip length as in the booklet of 2018. Source: Craft Yarn Council's
www.YarnStandards.com.
"""

import csv
from collections import Counter
from fractions import Fraction
from pathlib import Path

import pytest

from grading_core.standards import BODY_TABLES, body_table
from tests.published.body_values import value

CHARTS = list(csv.DictReader((Path(__file__).parent / "data" / "size_charts.csv").read_text().splitlines()))
HALF_CM = Fraction(1, 2)
CM_PER_INCH = Fraction(254, 100)


def row(table, size, measurement):
    found = body_table(table)
    return found.rows[measurement][found.labels.index(size)]


def contradictions():
    """The figures whose two columns differ by more than the half centimetre to which the charts round."""
    for line in CHARTS:
        for end in ("low", "high"):
            if abs(Fraction(line[f"inch_{end}"]) * CM_PER_INCH - Fraction(line[f"cm_{end}"])) > HALF_CM:
                yield line["table"], line["size"], line["measurement"], end


def test_every_published_figure_is_there_in_both_units():
    for line in CHARTS:
        kept = row(line["table"], line["size"], line["measurement"])
        published = [Fraction(line[name]) for name in ("inch_low", "inch_high", "cm_low", "cm_high")]
        assert [kept.inch.low, kept.inch.high, kept.cm.low, kept.cm.high] == published, line


def test_nothing_else_calls_itself_published_but_heads():
    charted = Counter(line["table"] for line in CHARTS)
    for name, table in BODY_TABLES.items():
        called = [
            kept
            for rows in table.rows.values()
            for kept in rows
            if kept.origin == "published" and kept.measurement != "head"
        ]
        assert len(called) == charted[name]


def test_inches_and_centimetres_contradict_each_other_in_the_known_places_only():
    assert set(contradictions()) == {
        ("women", "XS", "back_neck_to_wrist", "high"),
        ("women", "5X", "bust", "high"),
        ("men", "3X", "cross_back", "low"),
        ("men", "3X", "cross_back", "high"),
        ("men", "4X", "cross_back", "low"),
        ("men", "4X", "arm_length", "low"),
        ("men", "4X", "arm_length", "high"),
        ("men", "5X", "arm_length", "low"),
        ("men", "5X", "upper_arm", "low"),
        ("men", "5X", "upper_arm", "high"),
        ("men", "XL", "armhole_depth", "high"),
        ("men", "2X", "hip", "low"),
        ("men", "2X", "hip", "high"),
    }


def test_every_contradiction_has_a_note():
    for table, size, measurement, _ in contradictions():
        assert row(table, size, measurement).note, (table, size, measurement)


@pytest.mark.parametrize(
    ("table", "size", "measurement", "inches"),
    [
        ("women", "5X", "upper_arm", "19.5"),  # the booklet of 2018; the web edition prints 18.5
        ("men", "3X", "cross_back", "20.5"),
        ("men", "4X", "arm_length", "21"),
        ("men", "5X", "arm_length", "21.5"),
        ("men", "5X", "upper_arm", "20"),
        ("men", "XL", "armhole_depth", "10.25"),
    ],
)
def test_where_the_columns_contradict_each_other_the_inches_count(table, size, measurement, inches):
    assert value(table, size, measurement) == Fraction(inches) * CM_PER_INCH


def test_a_published_range_counts_as_its_middle_low_or_high_end():
    assert value("women", "M", "bust") == 37 * CM_PER_INCH
    assert value("women", "M", "bust", "low") == 36 * CM_PER_INCH
    assert value("women", "M", "bust", "high") == 38 * CM_PER_INCH


def test_mens_back_waist_length_of_the_web_edition_is_kept_as_hip_length():
    assert value("men", "M", "back_hip_length") == Fraction("25.5") * CM_PER_INCH
    assert row("men", "M", "back_waist_length").origin == "derived"


@pytest.mark.parametrize("name", BODY_TABLES)
def test_no_measurement_falls_from_a_size_to_the_next(name):
    for measurement, rows in body_table(name).rows.items():
        values = [kept.value_cm() for kept in rows]
        assert values == sorted(values), measurement


@pytest.mark.parametrize("name", BODY_TABLES)
def test_a_pullover_finds_all_it_needs_in_every_table(name):
    needed = {"bust", "waist", "hip", "upper_arm", "wrist", "neck", "head", "cross_back"}
    needed |= {"back_waist_length", "armhole_depth", "arm_length"}
    assert needed <= body_table(name).rows.keys()


# Straight lines against chest girth, a + b x chest in cm, fitted to the public data file of the 2012 Anthropometric
# Survey of U.S. Army Personnel (Gordon et al., NATICK/TR-15/007, 2014), with the chest girths that were measured.
LINES = [
    ("women", "wrist", "10.78", "0.050", 75, 120),
    ("women", "neck", "22.33", "0.156", 75, 120),
    ("men", "wrist", "11.03", "0.062", 85, 130),
    ("men", "neck", "20.16", "0.220", 85, 130),
    ("men", "back_waist_length", "31.03", "0.158", 85, 130),
]


@pytest.mark.parametrize(("table", "measurement", "start", "slope", "_from", "_to"), LINES)
def test_derived_figures_lie_on_the_survey_lines(table, measurement, start, slope, _from, _to):
    for bust, kept in zip(body_table(table).rows["bust"], body_table(table).rows[measurement], strict=True):
        for end in ("low", "high"):
            expected = Fraction(start) + Fraction(slope) * bust.value_cm(end)
            assert abs(getattr(kept.cm, end) - expected) <= Fraction(1, 20), (kept.size, end)


@pytest.mark.parametrize(("table", "measurement", "_start", "_slope", "measured_from", "measured_to"), LINES)
def test_figures_outside_the_measured_chests_are_marked_as_estimates(
    table, measurement, _start, _slope, measured_from, measured_to
):
    for bust, kept in zip(body_table(table).rows["bust"], body_table(table).rows[measurement], strict=True):
        inside = measured_from <= bust.value_cm() <= measured_to
        assert kept.origin == ("derived" if inside else "estimated"), kept.size


def test_derived_necks_agree_with_a_published_inch_table():
    """ASTM D5585-11e1, neck base against bust in inches, sizes 2 to 20 (bust within the survey's chests).

    Within 1.48 cm, the residual standard deviation of the survey's line.
    """
    busts = ["33", "34.125", "35.25", "36.25", "37.25", "38.75", "40.375", "42.125", "44", "46"]
    necks = ["13.75", "14", "14.25", "14.625", "14.875", "15.125", "15.5", "15.75", "16", "16.375"]
    women = body_table("women")
    rows = list(zip(women.rows["bust"], women.rows["neck"], strict=True))
    for bust, neck in zip(busts, necks, strict=True):
        chest = Fraction(bust) * CM_PER_INCH
        below = [pair for pair in rows if pair[0].value_cm() <= chest][-1]
        slope = Fraction("0.156")
        ours = below[1].value_cm() + slope * (chest - below[0].value_cm())
        assert abs(ours - Fraction(neck) * CM_PER_INCH) <= Fraction("1.48"), bust


def test_adult_heads_are_those_of_the_head_chart():
    """The same publisher's head chart, booklet of 2018: women 21-23 in, men 22-24 in."""
    assert {(kept.inch.low, kept.inch.high) for kept in body_table("women").rows["head"]} == {(21, 23)}
    assert {(kept.inch.low, kept.inch.high) for kept in body_table("men").rows["head"]} == {(22, 24)}


def test_heads_up_to_four_years_are_the_medians_of_the_growth_standards():
    """WHO Child Growth Standards, head circumference-for-age, medians of girls and boys by day of age.

    LMS tables, days 91, 183, 365, 548, 731 and 1461.
    """
    medians = [
        ("babies", "3 months", "39.521", "40.5008"),
        ("babies", "6 months", "42.2079", "43.3393"),
        ("babies", "12 months", "44.894", "46.0637"),
        ("babies", "18 months", "46.2431", "47.3718"),
        ("babies", "24 months", "47.1845", "48.2536"),
        ("children", "2", "47.1845", "48.2536"),
        ("children", "4", "49.3321", "50.2115"),
    ]
    for table, size, girls, boys in medians:
        kept = row(table, size, "head")
        assert abs(kept.cm.low - Fraction(girls)) <= Fraction(1, 20), (table, size)
        assert abs(kept.cm.high - Fraction(boys)) <= Fraction(1, 20), (table, size)


def test_no_older_child_has_a_smaller_head_than_the_median_at_five_years():
    """WHO Child Growth Standards: 49.92 cm (girls) and 50.74 cm (boys) at day 1826."""
    for size in ("6", "8", "10", "12", "14", "16"):
        assert row("children", size, "head").value_cm() > Fraction("50.7372")


def test_the_neck_of_size_2_is_half_its_chest_and_that_of_a_young_baby_six_tenths():
    """The percentage system as reported by C. Krisniski: neck 50 per cent for children, up to 60 for infants."""
    assert abs(value("children", "2", "neck") / value("children", "2", "bust") - Fraction("0.5")) < Fraction("0.002")
    assert abs(value("babies", "3 months", "neck") / value("babies", "3 months", "bust") - Fraction("0.6")) < Fraction(
        "0.002"
    )


def test_the_estimates_for_the_largest_child_meet_the_line_of_women_at_the_same_chest():
    """Survey lines of women as above, at size 16's chest of 32.5 in."""
    chest = Fraction("32.5") * CM_PER_INCH
    assert abs(value("children", "16", "neck") - (Fraction("22.33") + Fraction("0.156") * chest)) <= Fraction(1, 20)
    assert abs(value("children", "16", "wrist") - (Fraction("10.78") + Fraction("0.050") * chest)) <= Fraction(1, 10)


def test_wrists_and_necks_of_children_and_babies_are_marked_as_estimates():
    for name in ("children", "babies"):
        for measurement in ("wrist", "neck"):
            assert {kept.origin for kept in body_table(name).rows[measurement]} == {"estimated"}
