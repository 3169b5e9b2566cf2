from fractions import Fraction

import pytest

from grading_core.standards.ranges import Range, figure


@pytest.mark.parametrize(
    ("printed", "low", "high"),
    [("9.75", "9.75", "9.75"), ("36-38", 36, 38), ("2.5-5", "2.5", 5), ("6+", 6, None), ("400-", None, 400)],
)
def test_a_cell_is_read_as_it_is_printed(printed, low, high):
    ends = (None if end is None else Fraction(end) for end in (low, high))
    assert figure(printed) == Range(*ends)


def test_the_middle_is_halfway_between_the_ends():
    assert figure("36-39").middle == Fraction("37.5")


@pytest.mark.parametrize("printed", ["6+", "6-"])
def test_a_range_with_an_open_end_has_no_middle(printed):
    with pytest.raises(ValueError, match="no middle"):
        _ = figure(printed).middle
