from __future__ import annotations

from fractions import Fraction

import pytest

from grading_core.chart.lightness import READS_APART, READS_CLEARLY, lightness, reads


@pytest.mark.parametrize("text", ["", "#fff", "#12345g", "##123456", "#1234567", "# 12345", "+12345"])
def test_anything_but_six_hexadecimal_digits_is_refused(text):
    with pytest.raises(ValueError, match="six hexadecimal digits"):
        lightness(text)


def test_a_difference_at_a_threshold_reads_as_one_above_it():
    hair = Fraction(1, 10**10)
    assert [reads(limit + hair) for limit in (READS_CLEARLY, READS_APART)] == ["clearly", "softly"]
    assert [reads(Fraction(limit)) for limit in (READS_CLEARLY, READS_APART)] == ["clearly", "softly"]
    assert [reads(limit - hair) for limit in (READS_CLEARLY, READS_APART)] == ["softly", "hardly"]
