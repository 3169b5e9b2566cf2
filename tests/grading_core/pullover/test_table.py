import pytest

from grading_core.codes import ReasonCode
from grading_core.errors import Impossible
from grading_core.pullover.grade import grade_pullover
from grading_core.pullover.table import table
from tests.grading_core.pullover.knitted_pullovers import PLAIN


@pytest.fixture(scope="module")
def sizes():
    return [size.outcome for size in grade_pullover(PLAIN).sizes]


def test_a_row_is_told_by_its_item_and_its_unit(sizes):
    keys = [(row.item, row.unit) for row in table(sizes)]
    assert len(keys) == len(set(keys)) > 30


def test_every_size_has_a_value_in_every_row_and_an_impossible_one_has_none(sizes):
    rows = table([sizes[0], Impossible(ReasonCode.NOTHING_LEFT, "too narrow"), sizes[1]])
    assert [row.values[1] for row in rows] == [None] * len(rows)
    assert None not in {row.values[place] for row in rows for place in (0, 2)}
