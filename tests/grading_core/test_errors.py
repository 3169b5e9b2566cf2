import pytest

from grading_core.codes import ProblemCode
from grading_core.errors import ContradictionError, GradingError, Problem, duplicate_labels, raise_if_any

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
