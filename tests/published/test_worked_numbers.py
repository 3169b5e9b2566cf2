"""Gauge arithmetic worked in print: lengths into counts and back."""

from decimal import Decimal
from fractions import Fraction

import pytest

from grading_core.gauge import Gauge
from grading_core.rounding import NEAREST, CountRule
from grading_core.units import Number, exact, to_cm

DOWN = CountRule(rounding="down")


def per_inch(stitches: Number, rows: Number = 1) -> Gauge:
    return Gauge.over(exact(stitches), exact(rows), to_cm(1, "in"))


@pytest.mark.parametrize(
    ("inches", "per_in", "rule", "printed"),
    [
        pytest.param(40, 5, NEAREST, 200, id="K of 40 in at 5; Zimmermann as reported by Krisniski, 1999"),
        pytest.param(36, Decimal("6.375"), NEAREST, 230, id="229.5 taken as 230; Jerusha Robinson, 2015"),
        pytest.param(20, 4, NEAREST, 80, id="20 in edge at 16 to 4 in; forum, citing S. Melville"),
    ],
)
def test_a_printed_width_takes_its_printed_stitches(inches: int, per_in: Number, rule: CountRule, printed: int) -> None:
    assert per_inch(per_in).stitches(to_cm(inches, "in"), rule) == printed


@pytest.mark.parametrize(
    ("inches", "per_in", "rule", "printed"),
    [
        pytest.param(10, Decimal("6.6"), NEAREST, 66, id="yoke 10 in at 6.6; Zimmermann as reported by Krisniski"),
        pytest.param(10, Decimal("7.5"), NEAREST, 75, id="yoke 10 in at 7.5; the same"),
        pytest.param(Decimal("7.25"), 8, NEAREST, 58, id="yoke 7.25 in at 8; Jerusha Robinson, 2015"),
        pytest.param(14, 6, NEAREST, 84, id="sleeve 14 in at 6; Paper Moon, Sleeve Magic"),
        pytest.param(20, 6, NEAREST, 120, id="20 in edge at 24 to 4 in; forum, citing S. Melville"),
        pytest.param(Decimal("15.5"), 7, DOWN, 108, id="108.5 taken as 108; K. TenDyke, 2014 (the rows derived)"),
        pytest.param(Decimal("9.5"), Decimal("8.25"), NEAREST, 78, id="78.4; Paper Moon part I (the rows derived)"),
    ],
)
def test_a_printed_length_takes_its_printed_rows(inches: Number, per_in: Number, rule: CountRule, printed: int) -> None:
    assert per_inch(1, per_in).rows(to_cm(inches, "in"), rule) == printed


def test_sixteen_centimetres_at_two_and_a_half_stitches_are_forty() -> None:
    # A raglan how-to (title not in the text seen).
    assert Gauge.over(Fraction(5, 2), Fraction(1), Fraction(1)).stitches(Fraction(16)) == 40


def test_a_body_of_forty_by_eighteen_inches_has_the_printed_stitches() -> None:
    # Knotted-yard method, blog 2009 after P. Maley: 5 stitches and 7 rows to the inch, 25,200 stitches.
    gauge = per_inch(5, 7)
    assert gauge.stitches(to_cm(40, "in")) * gauge.rows(to_cm(18, "in")) == 25_200


def test_the_percentage_systems_parts_of_two_hundred_stitches_come_out_as_printed() -> None:
    # Zimmermann as reported by Krisniski, 1999: sleeve 33 %, underarm 8 %, neck 40 % of K = 200.
    parts = {"sleeve": 33, "underarm": 8, "neck": 40}
    assert {name: NEAREST.round(Fraction(200 * part, 100)) for name, part in parts.items()} == {
        "sleeve": 66,
        "underarm": 16,
        "neck": 80,
    }


def test_a_neck_of_96_and_six_tenths_goes_down_to_an_even_count_for_single_rib() -> None:
    # K = 276, neck 35 % = 96.6, taken as 96 (even, for a rib of one and one); teaching article, 1997.
    assert CountRule(2).round(Fraction(276 * 35, 100)) == 96


def test_sixteen_stitches_of_underarm_at_five_to_the_inch_are_about_eight_centimetres() -> None:
    # Zimmermann's 8 % of 200: 3.2 in = 8 cm.
    width_cm = per_inch(5).width_cm(16)
    assert width_cm == to_cm(Decimal("3.2"), "in")
    assert round(width_cm) == 8
