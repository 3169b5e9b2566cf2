"""Graded sizes as they are answered."""

from fractions import Fraction

import pytest

from grading_core.sizes.bodies import BodyValue
from grading_core.sizes.result import GradedMeasurement


@pytest.mark.parametrize("counts", [{"stitches": 0, "rows": None}, {"stitches": None, "rows": 0}])
def test_the_count_is_that_of_stitches_or_of_rows_even_where_it_is_0(counts):
    none = Fraction(0)
    measurement = GradedMeasurement(body=BodyValue(none, "sent"), ease=none, target=none, finished=none, **counts)
    assert measurement.counted == 0
