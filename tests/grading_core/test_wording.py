import random

import pytest

from grading_core.printing import DASH, Printing, printed_as
from grading_core.shaping import Phase, phases
from grading_core.wording import counted, known_run, listed, repeated, side_by_side, size_run
from tests.oracles.knitter import run_values


def lines(*sizes: list[Phase[str]] | None) -> list[tuple[object, object]]:
    return [(line.cycle, line.amounts) for line in side_by_side(sizes)]


TWICE = [Phase(1, 4, ((2, "shape"),), 2)]


def test_a_size_that_does_not_work_a_stretch_has_nothing_in_it_and_one_without_a_schedule_nothing_at_all() -> None:
    assert lines(TWICE, None, [*TWICE, Phase(5, 5, (), 0)]) == [(((2, "shape"),), (2, None, 2)), ((), (None, None, 1))]


def test_a_stretch_that_only_a_later_size_has_stands_in_its_order() -> None:
    first = [Phase(1, 3, (), 0), *TWICE]
    assert lines(TWICE, first) == [((), (None, 3)), (((2, "shape"),), (2, 2))]


def test_stretches_in_another_order_are_not_laid_together() -> None:
    fast, slow = ((1, "shape"),), ((3, "shape"),)
    one, two = [Phase(1, 2, fast, 2), Phase(3, 5, slow, 1)], [Phase(1, 3, slow, 1), Phase(4, 5, fast, 2)]
    # whoever follows the lines in their order does what the schedule has
    assert lines(one, two) == [(fast, (2, None)), (slow, (1, 1)), (fast, (None, 2))]


def test_sizes_laid_side_by_side_are_each_its_own_phases_in_their_order() -> None:
    generator, together = random.Random(25), 0
    for _ in range(300):
        sizes = []
        for _ in range(generator.randint(1, 4)):
            rows = sorted(generator.sample(range(1, 31), generator.randint(0, 6)))
            sizes.append(phases([(row, "shape") for row in rows], 31))
        found = side_by_side(sizes)
        together += bool(found)
        for place, size in enumerate(sizes):
            own = [(line.cycle, line.amounts[place]) for line in found if line.amounts[place] is not None]
            if found:
                assert own == [(phase.cycle, phase.times or phase.to_row - phase.from_row + 1) for phase in size]
        assert all(any(line.amounts) for line in found)
    assert together > 150


@pytest.mark.parametrize(("more", "together"), [(3, True), (4, False)])
def test_sizes_that_need_more_than_three_stretches_beyond_the_longest_of_them_have_none(more: int, together: bool):
    unlike = [[Phase(1, n, ((n, "shape"),), 1)] for n in range(1, more + 2)]
    assert len(side_by_side(unlike)) == (more + 1 if together else 0)


def test_one_size_alone_always_has_its_own_stretches() -> None:
    long = [Phase(n, n, ((n, "shape"),), 1) for n in range(1, 40)]
    assert len(side_by_side([long])) == 39


def test_a_size_run_is_printed_as_patterns_print_it() -> None:
    # As in the nine-size raglan of a yarn maker's leaflet: "25 (31, 37, 41, 47, 51, 53, 57, 59) sts".
    assert size_run([25, 31, 37, 41, 47, 51, 53, 57, 59]) == "25 (31, 37, 41, 47, 51, 53, 57, 59)"


def test_one_size_has_no_brackets_and_none_at_all_is_empty() -> None:
    assert (size_run([84]), size_run([])) == ("84", "")


def test_a_size_without_a_value_is_a_dash_and_a_zero_is_a_zero() -> None:
    assert size_run([None, 0, 3]) == f"{DASH} (0, 3)"


def test_a_size_run_reads_back_as_its_values() -> None:
    generator = random.Random(24)
    for _ in range(300):
        values = [generator.choice((None, generator.randint(0, 400))) for _ in range(generator.randint(1, 12))]
        read = run_values(size_run(values))
        assert (read * len(values) if len(read) == 1 else read) == values


def test_a_number_on_which_all_sizes_agree_is_said_once_and_a_dash_never_agrees_with_a_number() -> None:
    # Common practice, no source.
    assert [size_run(values) for values in ([8, 8, 8], [8, None, 8], [8, 8, 9])] == ["8", f"8 ({DASH}, 8)", "8 (8, 9)"]
    with printed_as(Printing(missing="8")):
        assert size_run([8, None]) == "8 (8)"


def test_a_run_of_which_every_number_is_missing_is_none() -> None:
    assert (known_run([None, None]), known_run([None, 0])) == (None, f"{DASH} (0)")


def test_a_count_takes_the_singular_only_for_one() -> None:
    assert [counted(n, "stitch") for n in (0, 1, 2)] == ["0 stitches", "1 stitch", "2 stitches"]


def test_how_often_is_said_in_words_up_to_twice() -> None:
    assert [repeated(n) for n in (1, 2, 3)] == ["once", "twice", "3 times"]


def test_words_are_listed_with_one_and() -> None:
    lists = [listed(["a"]), listed(["a", "b"]), listed(["a", "b", "c"]), listed([])]
    assert lists == ["a", "a and b", "a, b and c", ""]
