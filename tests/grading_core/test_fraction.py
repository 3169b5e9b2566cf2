"""Exact numbers against the standard library's `fractions.Fraction`: the same results of everything."""

import copy
import fractions
import math
import operator
import pickle

import pytest
from hypothesis import given
from hypothesis import strategies as st

from grading_core.fraction import StraightFraction

INTS = st.one_of(st.integers(-12, 12), st.integers(-(10**6), 10**6), st.integers())
STANDARD = st.builds(fractions.Fraction, INTS, INTS.filter(bool))
OTHERS = st.one_of(STANDARD, INTS, st.booleans(), st.floats(allow_nan=False, allow_infinity=False))
BINARY = (
    operator.add, operator.sub, operator.mul, operator.truediv, operator.floordiv, operator.mod, divmod,
    operator.lt, operator.le, operator.gt, operator.ge, operator.eq, operator.ne,
)  # fmt: skip
UNARY = (
    operator.neg, operator.pos, abs, math.floor, math.ceil, math.trunc, round, bool, hash, str, repr, float, int,
    lambda number: round(number, 1), lambda number: round(number, -1),
    lambda number: number.as_integer_ratio(), lambda number: (number.numerator, number.denominator),
    lambda number: sum([number, number]), lambda number: sorted([number, 1, 0]), lambda number: number**3,
    lambda number: number**-1, lambda number: pickle.loads(pickle.dumps(number)), copy.copy, copy.deepcopy,
)  # fmt: skip
CLOSED = (operator.add, operator.sub, operator.mul, operator.truediv, operator.mod)


def straight(number: fractions.Fraction) -> StraightFraction:
    return StraightFraction(number.numerator, number.denominator)


def result(operation, *operands):
    """What comes of it, and of what type, any fraction being one."""
    try:
        made = operation(*operands)
    except (ArithmeticError, TypeError, ValueError) as error:
        return type(error)
    return fractions.Fraction if isinstance(made, fractions.Fraction) else type(made), made


@given(STANDARD, OTHERS)
def test_two_numbers_come_to_what_standard_ones_come_to_on_either_side(one, other):
    for operation in BINARY:
        assert result(operation, straight(one), other) == result(operation, one, other), operation
        assert result(operation, other, straight(one)) == result(operation, other, one), operation


@given(STANDARD, STANDARD)
def test_two_straight_ones_come_to_what_standard_ones_come_to(one, other):
    for operation in BINARY:
        assert result(operation, straight(one), straight(other)) == result(operation, one, other), operation


@given(STANDARD)
def test_a_number_by_itself_is_what_the_standard_one_is(number):
    for operation in UNARY:
        assert result(operation, straight(number)) == result(operation, number), operation


@given(STANDARD, st.one_of(STANDARD, INTS))
def test_sums_and_products_stay_straight_and_in_lowest_terms(one, other):
    for operands in ((straight(one), other), (other, straight(one))):
        for operation in CLOSED:
            made = result(operation, *operands)
            if made is not ZeroDivisionError:
                number = made[1]
                assert type(number) is StraightFraction
                assert math.gcd(*number.as_integer_ratio()) == 1
                assert number.denominator > 0


@given(INTS, INTS)
def test_the_ratio_of_two_whole_numbers_is_that_of_the_standard_one(above, below):
    assert result(StraightFraction, above, below) == result(fractions.Fraction, above, below)


@pytest.mark.parametrize(
    "sent", [(), (3,), (True,), (0.1,), ("22.5",), (" -7/3 ",), ("x",), (None,), (1, 0), (fractions.Fraction(3, 4),),
             (fractions.Fraction(3, 4), fractions.Fraction(2, 3)), (3, fractions.Fraction(3, 4)), (1.5, 2)]
)  # fmt: skip
def test_it_reads_what_the_standard_one_reads(sent):
    assert result(StraightFraction, *sent) == result(fractions.Fraction, *sent)


def test_it_is_a_standard_one_and_printed_as_such():
    assert isinstance(StraightFraction(1, 2), fractions.Fraction)
    assert repr(StraightFraction(1, 2)) == "Fraction(1, 2)"
