"""Size grading against published worked numbers and standards."""

from fractions import Fraction
from itertools import pairwise

import pytest

from grading_core.errors import ContradictionError
from grading_core.gauge import Gauge
from grading_core.printing import Printing, printed_as
from grading_core.rounding import CountRule
from grading_core.sizes.grading import grade_sizes
from grading_core.sizes.request import EvenSteps, SentSize, SizeGradingRequest
from tests.published.body_values import value

CM_PER_INCH = Fraction("2.54")


def per_10_cm(stitches, rows):
    return Gauge.over(Fraction(stitches), Fraction(rows), Fraction(10))


def per_inch(stitches, rows):
    return Gauge.over(Fraction(stitches), Fraction(rows), CM_PER_INCH)


NINE_BODIES = tuple(SentSize(str(size), {"bust": 81 + size * Fraction(75, 8)}) for size in range(9))


def nine_sizes(**printed):
    """Nine finished busts from 101 to 181 cm, worn with 20 to 25 cm of ease: common practice, no source."""
    ease = {"bust": EvenSteps(Fraction(20), Fraction(25))}
    return grade_sizes(SizeGradingRequest(gauge=per_10_cm(18, 26), sizes=NINE_BODIES, ease=ease, **printed))


def test_nine_even_sizes_have_even_finished_busts():
    assert [size.measurements["bust"].target for size in nine_sizes().sizes] == list(range(101, 182, 10))


def test_ten_centimetres_a_size_at_eighteen_stitches_are_eighteen_stitches_a_size():
    counts = [size.measurements["bust"].counted for size in nine_sizes().sizes]
    assert {later - earlier for earlier, later in pairwise(counts)} == {18}


@pytest.mark.parametrize(
    ("convention", "first", "last"), [("nominal", "40 1/2", "72 1/2"), ("exact", "39 3/4", "71 1/4")]
)
def test_printed_inches_of_101_to_181_cm_tell_the_convention(convention, first, last):
    """Common practice, no source: 40 1/2 to 72 1/2 in comes from 4 in beside 10 cm, exact inches are smaller."""
    with printed_as(Printing(inch_convention=convention)):
        run = nine_sizes().runs["bust"].finished_inch
    assert run.startswith(f"{first} (")
    assert run.endswith(f", {last})")


def test_twenty_to_25_cm_of_ease_are_printed_as_8_to_10_inches_and_are_a_published_fit():
    """Common practice, no source, for the ease and its inches; oversized from 6 in on is the Craft Yarn Council's."""
    graded = nine_sizes().sizes
    eases = [size.measurements["bust"].ease for size in (graded[0], graded[-1])]
    assert [Printing(inch_convention="nominal").inches(ease) for ease in eases] == ["8", "10"]
    assert {size.fit for size in graded} == {"oversized"}


def test_nine_sizes_up_to_156_cm_are_completed_from_the_womens_table():
    """The largest size of the table covers 60 to 62 in (152.4 to 157.48 cm) as published."""
    request = SizeGradingRequest(gauge=per_10_cm(18, 26), body_table="women", sizes=NINE_BODIES)
    largest = grade_sizes(request).sizes[-1].measurements
    assert largest["bust"].body.cm == 156
    assert largest["upper_arm"].body.cm == Fraction("19.5") * CM_PER_INCH


# The percentage system, as reported in "Percentage Sweaters" (C. Krisniski, 1999) and by Lindy's Knits & Laces
# (2010): a body of 40 in at 5 stitches to the inch. K is the count round the body.


@pytest.mark.parametrize(
    ("part", "percent", "stitches"), [("K", 100, 200), ("sleeve", 33, 66), ("underarm", 8, 16), ("neck", 40, 80)]
)
def test_the_percentage_system_gives_its_worked_counts(part, percent, stitches):
    gauge = per_inch(5, 7)
    assert gauge.stitches(40 * CM_PER_INCH * Fraction(percent, 100)) == stitches


def test_the_percentage_system_closes_at_its_yoke():
    """Sleeve in the yoke 66 - 16 = 50, front and back 100 - 16 = 84 each: 2 (50 + 84) = 268."""
    gauge = per_inch(5, 7)
    sleeve, underarm, half = (gauge.stitches(40 * CM_PER_INCH * Fraction(percent, 100)) for percent in (33, 8, 50))
    assert 2 * (sleeve - underarm) + 2 * (half - underarm) == 268


@pytest.mark.parametrize(("rounds_per_inch", "rounds"), [("6.6", 66), ("7.5", 75)])
def test_a_quarter_of_the_girth_is_the_worked_yoke_depth(rounds_per_inch, rounds):
    """25 per cent of 40 in: 10 in, 66 to 75 rounds (comparison of yokes after Knitting Without Tears)."""
    assert per_inch(5, rounds_per_inch).rows(40 * CM_PER_INCH / 4) == rounds


def test_a_neck_of_35_per_cent_lands_on_an_even_count_for_ribbing():
    """K = 276, 35 per cent = 96.6, taken as 96 for k1 p1 (the same report)."""
    assert CountRule(2).round(276 * Fraction("0.35")) == 96


def test_half_a_stitch_goes_up():
    """36 in at 6.375 stitches to the inch is 229.5, taken as 230; 7.25 in at 8 rounds is 58 (J. Robinson, 2015)."""
    gauge = per_inch("6.375", 8)
    assert gauge.stitches(36 * CM_PER_INCH) == 230
    assert gauge.rows(Fraction("7.25") * CM_PER_INCH) == 58


# EN 13402-3, letter codes of women's bust girth in cm, as a retailer's table and BS EN 13402-3:2004 have them.
EN_LETTERS = {"M": (90, 98), "L": (98, 107), "XL": (107, 119), "2X": (119, 131), "3X": (131, 143)}


@pytest.mark.parametrize("size", EN_LETTERS)
def test_womens_sizes_from_m_to_3x_lie_in_the_european_letter_size(size):
    low, high = EN_LETTERS[size]
    assert low <= value("women", size, "bust", "low") <= value("women", size, "bust", "high") <= high


@pytest.mark.parametrize(("size", "border"), [("XS", 74), ("S", 82)])
def test_the_smallest_womens_sizes_straddle_a_european_border(size, border):
    assert value("women", size, "bust", "low") < border < value("women", size, "bust", "high")


# A handbook of metric pattern cutting, women (as typed into a public source that cites its page 13).
HANDBOOK = {
    "bust": "76 80 84 88 92 96 100 104 110 116 122",
    "waist": "60 64 68 72 76 80 84 88 94 100 106",
    "hip": "84 88 92 96 100 104 108 112 117 122 127",
    "cross_back": "31.4 32.4 33.4 34.4 35.4 36.4 37.4 38.4 39.8 41.2 42.6",
    "neck": "34 35 36 37 38 39 40 41 42.4 43.8 45.2",
}


def handbook_sizes():
    columns = {name: [Fraction(text) for text in line.split()] for name, line in HANDBOOK.items()}
    return [
        SentSize(str(bust), {name: column[place] for name, column in columns.items()})
        for place, bust in enumerate(columns["bust"])
    ]


@pytest.mark.parametrize(("name", "first", "later"), [("neck", 10, 14), ("cross_back", 10, 14)])
def test_the_handbook_table_grades_neck_and_back_by_its_published_steps(name, first, later):
    """1.0 cm for every 4 cm of bust, 1.4 for every 6, at ten stitches to the cm."""
    grading = grade_sizes(SizeGradingRequest(gauge=per_10_cm(100, 100), sizes=tuple(handbook_sizes())))
    counts = [size.measurements[name].counted for size in grading.sizes]
    steps = [larger - smaller for smaller, larger in pairwise(counts)]
    assert steps == [first] * 7 + [later] * 3


@pytest.mark.parametrize("place", range(1, 11))
def test_a_slip_of_the_pen_in_the_handbook_table_is_found(place):
    """The neck of one size typed 4 cm too small."""
    sizes = handbook_sizes()
    slip = dict(sizes[place].measurements) | {"neck": sizes[place].measurements["neck"] - 4}
    sizes[place] = SentSize(sizes[place].label, slip)
    with pytest.raises(ContradictionError) as refused:
        grade_sizes(SizeGradingRequest(gauge=per_10_cm(20, 28), sizes=tuple(sizes)))
    [problem] = refused.value.problems
    assert problem.path == ("sizes", place, "neck")
    assert sizes[place].label in problem.detail
    assert sizes[place - 1].label in problem.detail


def test_the_neck_is_not_graded_in_proportion_to_the_bust():
    """ASTM D5585-11e1: neck base grows 0.21 in for an inch of bust, from 13.75 in at 33 to 16.375 at 46."""
    grown = value("women", "L", "neck") / value("women", "S", "neck")
    assert 1 < grown < value("women", "L", "bust") / value("women", "S", "bust")
    slope = (value("women", "L", "neck") - value("women", "S", "neck")) / (
        value("women", "L", "bust") - value("women", "S", "bust")
    )
    assert abs(slope - Fraction("0.21")) < Fraction("0.06")
