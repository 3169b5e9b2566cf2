from fractions import Fraction

import pytest

from grading_core.standards.fit import fit_name


@pytest.mark.parametrize(
    ("ease", "fit"),
    [
        ("-2.51", "very close fitting"),
        ("-2.5", "close fitting"),
        ("2.49", "close fitting"),
        ("2.5", "classic fit"),
        ("10", "loose fit"),
        ("15", "oversized"),
        ("-30", "very close fitting"),
    ],
)
def test_gaps_are_divided_halfway_and_borders_belong_to_the_looser_fit(ease, fit):
    assert fit_name(Fraction(ease)) == fit
