from hypothesis import given
from hypothesis import strategies as st

from grading_core.sections import Sections


@given(st.integers(0, 8), st.integers(0, 60), st.integers(0, 60), st.integers(0, 60))
def test_a_full_round_adds_eight_stitches_a_body_only_one_four_and_a_sleeve_only_one_four(
    line: int, back: int, front: int, sleeve: int
) -> None:
    sections = Sections(back, front, sleeve)
    added = [
        sections.after(increases).total(line) - sections.total(line)
        for increases in ((1, 1, 1), (1, 1, 0), (0, 0, 1), (2, 2, 1))
    ]
    assert added == [8, 4, 4, 12]
