import operator
from dataclasses import dataclass, replace
from fractions import Fraction

import pytest

from grading_core.unknown import UnknownError, is_unknown, known, shown, told, unknown


@dataclass(frozen=True)
class Part:
    rounds: int = 1


TELLING = [
    bool,
    len,
    list,
    next,
    hash,
    str,
    repr,
    int,
    float,
    round,
    abs,
    Fraction,
    dict,
    "{}".format,
    sorted,
    lambda value: value == 3,
    lambda value: value != "S",
    lambda value: value == "S",
    lambda value: value > 3,
    lambda value: value in {"S"},
    lambda value: value in ["S"],
    lambda value: "S" in value,
    lambda value: isinstance(value, tuple),
    lambda value: range(value),
    lambda value: [3][value],
    lambda value: {"S": 1}[value],
    lambda value: value(),
    lambda value: sum([1, value]),
    lambda value: max(1, value),
    lambda value: -value,
    lambda value: {**value},
    lambda value: replace(value, rounds=2),
    *(
        lambda value, operate=operate, other=other: operate(other, value)
        for operate in (operator.add, operator.sub, operator.mul, operator.truediv, operator.floordiv, operator.mod)
        for other in (3, 2.5, Fraction(1, 3))
    ),
    *(
        lambda value, operate=operate: operate(value, Fraction(1, 3))
        for operate in (operator.add, operator.sub, operator.mul, operator.truediv, operator.pow, divmod)
    ),
]


@pytest.mark.parametrize("tell", TELLING)
def test_nothing_is_told_from_an_unknown_value(tell):
    with pytest.raises(UnknownError):
        tell(unknown())


def test_a_match_does_not_take_an_unknown_value_for_anything():
    def kind(value):
        match value:
            case Fraction():
                return "a number"
        return "something else"

    with pytest.raises(UnknownError):
        kind(unknown())


def test_the_parts_of_an_unknown_value_are_unknown():
    assert is_unknown(unknown().yoke.depth)
    assert is_unknown(unknown()["sizes"][0])
    assert unknown() is unknown()


def test_an_unknown_value_can_stand_in_a_record():
    part = replace(Part(), rounds=unknown())
    assert is_unknown(part.rounds)
    assert is_unknown(told(lambda: part.rounds + 1))


def test_what_is_known_stays_what_it_is():
    assert (known(0), known(None), told(max, 3, 4), shown("S")) == (0, None, 4, "S")
    with pytest.raises(UnknownError):
        known(unknown())


def test_another_error_is_no_unknown_value():
    with pytest.raises(ZeroDivisionError):
        told(lambda: 1 // 0)
