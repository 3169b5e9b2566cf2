from fractions import Fraction
from itertools import product

import pytest

from grading_core.rounding import NEAREST, CountRule, Rounding

VALUES = [Fraction(eighths, 8) for eighths in range(-24, 8 * 27)]
RULES = list(product((1, 2, 3, 4, 6, 7, 10), (0, 1, 2, 3, 9)))


def permitted(multiple: int, plus: int) -> list[int]:
    return [count for count in range(60) if count % multiple == plus % multiple]


def by_search(value: Fraction, multiple: int, plus: int, rounding: Rounding) -> int:
    """The permitted count that the rule's words name, by looking at all of them."""
    counts = permitted(multiple, plus)
    if rounding == "up":
        return min(count for count in counts if count >= value)
    if rounding == "down":
        return max((count for count in counts if count <= value), default=counts[0])
    return min(counts, key=lambda count: (abs(count - value), -count))


@pytest.mark.parametrize("rounding", ["nearest", "up", "down"])
def test_every_count_is_the_one_a_search_over_the_integers_finds(rounding: Rounding) -> None:
    for (multiple, plus), value in product(RULES, VALUES):
        found = CountRule(multiple, plus, rounding).round(value)
        assert found == by_search(value, multiple, plus, rounding), (multiple, plus, value)


def test_a_rule_accepts_exactly_its_multiples_plus_the_rest() -> None:
    for multiple, plus in RULES:
        accepted = [count for count in range(60) if CountRule(multiple, plus).accepts(count)]
        assert accepted == permitted(multiple, plus)


def test_the_default_takes_the_nearest_whole_number_and_a_tie_goes_up() -> None:
    assert [NEAREST.round(Fraction(half, 2)) for half in range(6)] == [0, 1, 1, 2, 2, 3]


def test_no_count_is_below_zero() -> None:
    assert CountRule(4, 2, "down").round(Fraction(1)) == 2
