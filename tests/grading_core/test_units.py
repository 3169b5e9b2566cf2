from decimal import ROUND_FLOOR, ROUND_HALF_UP, Decimal, localcontext
from fractions import Fraction

import pint
import pytest
from hypothesis import given
from hypothesis import strategies as st

from grading_core.units import (
    exact,
    hypotenuse,
    is_within,
    square_root,
    to_answer,
    to_cm,
    to_inches,
    to_places,
    to_printed_decimal,
)

PINT: pint.UnitRegistry = pint.UnitRegistry(non_int_type=Fraction)

decimals = st.decimals(min_value=-1000, max_value=1000, places=3)
fractions = st.fractions(min_value=-1000, max_value=1000, max_denominator=997)
positive = st.fractions(min_value=0, max_value=10_000, max_denominator=9973)


@given(decimals)
def test_inches_become_the_centimetres_of_an_independent_unit_library(number: Decimal) -> None:
    # Pint 0.25; the international inch of 1959 is 2.54 cm exactly.
    assert to_cm(number, "in") == PINT.Quantity(Fraction(number), "inch").to("cm").magnitude


@given(fractions)
def test_centimetres_become_the_inches_of_an_independent_unit_library(number: Fraction) -> None:
    assert to_inches(number) == PINT.Quantity(number, "cm").to("inch").magnitude


@given(decimals)
def test_a_length_sent_in_inches_comes_back_as_the_same_inches(number: Decimal) -> None:
    assert to_inches(to_cm(number, "in")) == Fraction(number)


@given(st.decimals(min_value=-10_000, max_value=10_000, places=4))
def test_a_float_is_read_as_the_decimal_that_was_written(number: Decimal) -> None:
    assert exact(float(number)) == Fraction(number)


def test_a_tenth_is_a_tenth_and_not_the_nearest_binary_number() -> None:
    assert exact(0.1) == Fraction(1, 10) != Fraction(0.1)


@given(st.floats(allow_nan=False, allow_infinity=False))
def test_a_float_is_read_as_its_shortest_decimal_notation_however_large_or_small(number: float) -> None:
    assert exact(number) == Fraction(Decimal(repr(number)))


@pytest.mark.parametrize("number", [float("nan"), float("inf"), float("-inf")])
def test_a_float_that_is_not_finite_is_refused(number: float) -> None:
    with pytest.raises(ValueError, match=r"nan|inf"):
        exact(number)


def test_by_the_nominal_convention_ten_centimetres_are_four_inches() -> None:
    assert to_inches(Fraction(10), "nominal") == 4


def test_the_nominal_convention_is_off_by_more_than_a_centimetre_on_a_large_bust() -> None:
    # 1.6 %: 1.016 = 2.54 / 2.5; checked on a bust of 150 cm.
    nominal_cm = to_inches(Fraction(150), "nominal") * Fraction(254, 100)
    assert nominal_cm / 150 == Fraction(1016, 1000)
    assert nominal_cm - 150 > 1


@given(st.decimals(min_value=-1000, max_value=1000, places=4))
def test_two_decimals_are_rounded_half_up_as_the_decimal_module_does(number: Decimal) -> None:
    assert to_places(Fraction(number)) == float(number.quantize(Decimal("0.01"), ROUND_HALF_UP))


@given(fractions, st.integers(0, 6))
def test_a_printed_number_is_never_further_off_than_half_its_last_place(number: Fraction, places: int) -> None:
    printed = exact(to_places(number, places))
    assert abs(printed - number) <= Fraction(1, 2 * 10**places)
    assert (printed * 10**places).denominator == 1


@given(positive, st.integers(0, 9))
def test_a_square_root_is_that_of_the_decimal_module_rounded_down(number: Fraction, places: int) -> None:
    with localcontext(prec=60):
        root = (Decimal(number.numerator) / Decimal(number.denominator)).sqrt()
        expected = root.quantize(Decimal(1).scaleb(-places), ROUND_FLOOR)
    assert square_root(number, places) == Fraction(expected)


@given(fractions, fractions)
def test_a_hypotenuse_is_the_square_root_of_both_squares(one: Fraction, other: Fraction) -> None:
    assert hypotenuse(one, other) == square_root(one * one + other * other)


@given(fractions, fractions, positive)
def test_two_numbers_are_within_a_distance_that_is_no_less_than_theirs(
    one: Fraction, other: Fraction, most: Fraction
) -> None:
    assert is_within(most, one, other) == (abs(one - other) <= most)


def test_a_number_is_within_its_very_distance_of_another() -> None:
    assert is_within(Fraction(1, 3), Fraction(1, 6), Fraction(1, 2))


@given(st.integers(0, 10**9))
def test_the_square_root_of_a_perfect_square_is_exact(number: int) -> None:
    assert square_root(Fraction(number * number)) == number


def test_the_square_root_of_a_negative_number_is_refused() -> None:
    with pytest.raises(ValueError, match="nonnegative"):
        square_root(Fraction(-1))


@given(fractions)
def test_an_answered_length_is_both_units_of_the_unit_library_rounded_half_up(length_cm: Fraction) -> None:
    length = PINT.Quantity(length_cm, "cm")
    nominal = length_cm * Fraction(4, 10)
    assert to_answer(length_cm) == (half_up(length_cm), half_up(length.to("inch").magnitude))
    assert to_answer(length_cm, "nominal") == (half_up(length_cm), half_up(nominal))


@given(fractions, fractions)
def test_what_is_taken_from_an_answered_length_is_taken_before_it_is_rounded(one: Fraction, other: Fraction) -> None:
    difference = one - other
    inches = PINT.Quantity(difference, "cm").to("inch").magnitude
    assert to_answer(one, less_cm=other) == (half_up(difference), half_up(inches))


def half_up(value: Fraction) -> float:
    """Two decimals by the decimal module; halves away from zero."""
    with localcontext(prec=60):
        number = Decimal(value.numerator) / Decimal(value.denominator)
        return float(number.quantize(Decimal("0.01"), ROUND_HALF_UP))


def nearest_multiple(value: Fraction, step: Fraction) -> Fraction:
    """By search; of two equally near the larger."""
    around = range(int(value / step) - 2, int(value / step) + 3)
    return min((n * step for n in around), key=lambda multiple: (abs(multiple - value), -multiple))


@given(fractions, st.sampled_from([Fraction(1), Fraction(1, 2), Fraction(1, 4), Fraction(1, 10), Fraction(5)]))
def test_a_printed_decimal_reads_back_as_the_nearest_step(value: Fraction, step: Fraction) -> None:
    assert Fraction(to_printed_decimal(value, step)) == nearest_multiple(value, step)


@given(fractions)
def test_a_printed_decimal_has_no_trailing_zeros(value: Fraction) -> None:
    printed = to_printed_decimal(value, Fraction(1, 10))
    assert "E" not in printed
    assert "." not in printed or not printed.endswith("0")
