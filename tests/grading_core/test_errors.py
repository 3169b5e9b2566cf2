from collections.abc import Sequence

import pytest

from grading_core.codes import ProblemCode
from grading_core.errors import (
    Check,
    ContradictionError,
    GradingError,
    Problem,
    check,
    duplicate_labels,
    placed,
    places,
    raise_if_any,
    sound,
    under,
)
from grading_core.unknown import is_unknown, unknown

ODD = Problem(("sizes", 0, "split"), ProblemCode.ODD_DIFFERENCE, "is odd.")
SMALL = Problem(("sizes", 2, "neck"), ProblemCode.NOTHING_LEFT, "is too small.")


def test_a_contradiction_carries_every_wrong_place_in_order() -> None:
    with pytest.raises(ContradictionError) as caught:
        raise_if_any(iter([ODD, SMALL]))
    assert caught.value.problems == (ODD, SMALL)


def test_a_contradiction_is_one_of_the_packages_own_errors() -> None:
    assert issubclass(ContradictionError, GradingError)


def test_a_contradiction_says_every_detail_in_its_text() -> None:
    assert str(ContradictionError([ODD, SMALL])) == "is odd.; is too small."


def test_nothing_wrong_raises_nothing() -> None:
    raise_if_any(problem for problem in ())


def test_each_label_used_before_is_named_where_it_comes_again() -> None:
    paths = [problem.path for problem in duplicate_labels(["S", "M", "S", "L", "S", "M"])]
    assert paths == [("sizes", 2, "label"), ("sizes", 4, "label"), ("sizes", 5, "label")]


def test_an_unknown_label_is_nobody_s_double() -> None:
    assert [problem.path for problem in duplicate_labels(["S", unknown(), "S", unknown()])] == [("sizes", 2, "label")]


@check
def halves(numbers: Sequence[int]) -> Check[list[int]]:
    for index, number in enumerate(numbers):
        if number % 2:
            yield Problem((index,), ProblemCode.ODD_DIFFERENCE, "is odd.")
    return [number // 2 for number in numbers]


def test_a_check_without_problems_makes_what_it_looked_at() -> None:
    assert sound(halves([2, 4])) == [1, 2]


def test_a_check_raises_every_problem_that_it_yields() -> None:
    with pytest.raises(ContradictionError) as caught:
        sound(halves([1, 2, 3]))
    assert [problem.path for problem in caught.value.problems] == [(0,), (2,)]


def test_a_check_ends_at_an_unknown_value_and_keeps_what_it_found() -> None:
    made = []

    @check
    def both() -> Check[None]:
        made.append((yield from under(("first",), halves([1, unknown(), 3]))))
        made.append((yield from under(("second",), halves([1]))))

    assert [problem.path for problem in both()] == [("first", 0), ("second", 0)]
    assert [is_unknown(each) for each in made] == [True, False]


def test_the_places_of_problems_are_what_they_are_yielded_with() -> None:
    made = []

    def twice() -> Check[None]:
        made.extend((yield from places(halves([1, 2, 3]))))

    assert [problem.path for problem in twice()] == made == [(0,), (2,)]


def test_what_a_check_makes_stands_beside_the_places_of_its_problems() -> None:
    made = []

    def twice() -> Check[None]:
        made.append((yield from placed(halves([1, 2, 3]))))

    assert [problem.path for problem in twice()] == [(0,), (2,)]
    [(halved, paths)] = made
    assert (halved, paths) == ([0, 1, 1], [(0,), (2,)])
