from __future__ import annotations

import pytest

from grading_core.lightness import lightness


@pytest.mark.parametrize("text", ["", "#fff", "#12345g", "##123456", "#1234567", "# 12345", "+12345"])
def test_anything_but_six_hexadecimal_digits_is_refused(text):
    with pytest.raises(ValueError, match="six hexadecimal digits"):
        lightness(text)
