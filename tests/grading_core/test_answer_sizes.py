from grading_core.answer_sizes import answer_size_problems, is_answered


def test_sizes_that_are_there_once_are_no_problem() -> None:
    assert list(answer_size_problems(("L", "S"), ["S", "M", "L"])) == []


def test_all_sizes_are_answered_where_none_is_named() -> None:
    assert list(answer_size_problems(None, ["S"])) == []
    assert is_answered("S", None)


def test_a_size_that_is_not_there_is_named_with_those_that_are() -> None:
    (problem,) = answer_size_problems(("Q",), ["S", "M"])
    assert problem.path == ("answer_sizes", 0)
    assert "S, M" in problem.detail


def test_a_size_that_is_asked_for_twice_is_named_where_it_comes_again() -> None:
    assert [problem.path for problem in answer_size_problems(("S", "M", "S"), ["S", "M"])] == [("answer_sizes", 2)]
