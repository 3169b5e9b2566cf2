"""Body tables made of lines, on a table of two sizes written for the purpose."""

from fractions import Fraction

import pytest

from grading_core.standards.body import build_table, chest_line_notes, line
from grading_core.standards.sources import CYC_WOMEN, NO_SOURCE

SIZES = ("small", "large")
BUST = line("bust", SIZES, CYC_WOMEN, inch="30-32 36", cm="76-82 91.5")
WRIST = line("wrist", SIZES, NO_SOURCE, cm="15 17", estimated=("large",), notes={"large": "a guess"}, note="thin")
TABLE = build_table("two", "Two sizes", [WRIST, BUST], ["for a test"])


def value_of(label, measurement, within="middle"):
    return {size.label: size.measurements for size in TABLE.sizes}[label][measurement].value_cm(within)


def test_the_inches_count_where_there_are_any_and_the_centimetres_elsewhere():
    # 31 in and 36 in of 2.54 cm
    assert (value_of("small", "bust"), value_of("large", "bust")) == (Fraction("78.74"), Fraction("91.44"))
    assert value_of("small", "wrist") == 15


def test_a_range_counts_by_its_low_or_high_end_as_asked():
    ends = [value_of("small", "bust", within) for within in ("low", "high")]
    assert ends == [Fraction("76.2"), Fraction("81.28")]


def test_a_row_reaches_as_far_as_the_column_that_reaches_further():
    # 30 to 32 in are 76.2 to 81.28 cm, beside 76 to 82 cm
    assert BUST[0].ends_cm() == (76, 82)


def test_a_figure_is_estimated_or_noted_for_its_own_size_alone():
    assert [(row.origin, row.note) for row in WRIST] == [("published", "thin"), ("estimated", "a guess")]


def test_measurements_stand_in_one_order_whatever_the_order_of_the_lines():
    assert list(TABLE.rows) == ["bust", "wrist"]


def test_a_line_has_a_figure_for_every_size():
    with pytest.raises(ValueError, match="zip"):
        line("bust", SIZES, CYC_WOMEN, inch="30")


def test_a_straight_line_is_noted_as_an_estimate_beyond_what_was_measured():
    notes = chest_line_notes("10 + 0.1 x chest", SIZES, ("large",), "75 to 90 cm")
    assert notes["small"] == "10 + 0.1 x chest"
    assert "estimate" in notes["large"]
    assert "75 to 90 cm" in notes["large"]
