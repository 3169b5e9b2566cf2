"""Numbers as whole numbers of grains, and the steps that printed lengths were rounded to."""

from fractions import Fraction

import pytest

from grading_core.proof.figures import GRAINS, as_printed, grains, number, printed_step


@pytest.mark.parametrize("below", [1, 2, 3, 4, 5, 6, 7, 8, 9, 10, 12, 16, 32, 64, 1000, 10**6])
def test_fractions_of_a_tape_measure_and_decimals_to_the_sixth_are_whole_numbers_of_grains(below: int) -> None:
    assert GRAINS % below == 0


@pytest.mark.parametrize(
    "value", [92.5, 0.1, 17.3, 100.07, 38.75, 0.000001, Fraction(1, 3), Fraction(5, 7), -6, 1000000]
)
def test_what_was_written_down_is_kept_exactly(value: float | Fraction) -> None:
    assert number(grains(value)) == (value if isinstance(value, Fraction) else Fraction(repr(value)))


@pytest.mark.parametrize(
    ("lengths", "step"),
    [
        ("92 104 114 63", "1"),
        ("92.5 104 114.5 63", "0.5"),
        ("92.3 104 114.5 63", "0.1"),
        ("92.25 104 114.5 63", "0.25"),
        ("92.33 104 114.5 63", "0.01"),
        ("92.333 104 114.5", "0.001"),
        ("92.333333 104", "0.001"),
    ],
)
def test_centimetres_were_rounded_to_the_coarsest_step_that_all_are_on(lengths: str, step: str) -> None:
    assert number(printed_step(grains(Fraction(each)) for each in lengths.split())) == Fraction(step)


@pytest.mark.parametrize(
    ("lengths", "step"),
    [
        ("36 38 40", "1"),
        ("36 38.5", "1/2"),
        ("36.25 38.5", "1/4"),
        ("36.125", "1/8"),
        ("36.3 38", "1/10"),
        ("36.37 38", "1/100"),
    ],
)
def test_inches_were_rounded_to_the_coarsest_fraction_that_all_are_on(lengths: str, step: str) -> None:
    told = [grains(Fraction(each)) for each in lengths.split()]
    assert number(printed_step(told, unit="inch")) == Fraction(step)


def test_one_number_in_ten_may_be_off_the_step_since_it_may_be_the_wrong_one() -> None:
    halves = [grains(Fraction(each, 2)) for each in (185, 208, 229, 126, 141, 150, 161, 172, 183)]
    assert number(printed_step([*halves, grains(92.3)])) == Fraction(1, 2)
    assert number(printed_step([*halves[1:], grains(92.3)])) == Fraction(1, 10)


def test_a_few_lengths_that_are_all_fives_were_not_rounded_to_them() -> None:
    fives = [grains(5 * place) for place in range(14, 25)]
    assert number(printed_step(fives)) == 1
    assert number(printed_step([*fives, grains(35)])) == 5
    assert number(printed_step(fives[:1], unit="metres")) == 5


@pytest.mark.parametrize(
    ("value", "step", "printed"),
    [
        ("17.74", "0.5", "17.5"),
        ("17.75", "0.5", "18"),
        ("-0.3", "0.5", "-0.5"),
        ("36.1", "0.25", "36"),
        ("7.77", "0", "7.77"),
    ],
)
def test_a_length_is_printed_to_its_step_and_a_tie_goes_up(value: str, step: str, printed: str) -> None:
    told, half, shown = (grains(Fraction(each)) for each in (value, step, printed))
    assert as_printed(told, half // 2) == shown
