"""Shaping problems with their published answers: n shapings over m rows."""

import pytest

from grading_core.shaping_plans import RowPlan, RowSchedule, along_rows


def made_of(plan: RowPlan) -> RowSchedule:
    made = along_rows(plan)
    assert isinstance(made, RowSchedule)
    return made


def one_by_one(shapings: int, rows: int) -> RowPlan:
    return RowPlan(name="side", stitches=shapings, to=0, rows=rows, stitches_per_shaping=1)


@pytest.mark.parametrize(
    ("plan", "intervals"),
    [
        pytest.param(
            one_by_one(36, 140),
            {3: 4, 4: 32},
            id='1: 36 over 140 rows. Article "Knitting and the Magic Formula", about 2006',
        ),
        pytest.param(
            # the page writes 78 - 32 = 42, a slip: it is 78 - 36
            RowPlan(name="sleeve", stitches=36, to=78, rows=176, stitches_per_shaping=1),
            {4: 34, 5: 8},
            id='2: 42 over 176 rows. "The sleeve", blog on designing one\'s own sweater, 2007',
        ),
        pytest.param(
            RowPlan(name="sleeve", stitches=26, to=0, rows=130, stitches_per_shaping=1, step=2, spacing="even"),
            {6: 13, 4: 13},
            id="6: 26 right-side rows in 130. Handbook chapter on drop shoulders, title not in the text seen",
        ),
        pytest.param(
            RowPlan(name="sleeve", stitches=38, to=60, rows=108),
            {9: 2, 10: 9},
            id="10: 11 increase rows in 15.5 in x 7. Set-up: K. TenDyke, 2014; the answer derived from it",
        ),
        pytest.param(
            RowPlan(name="sleeve", stitches=62, to=46, rows=78),
            {9: 2, 10: 6},
            id="11: 8 decrease rounds in 9.5 in x 8.25. Set-up: Paper Moon Knits, part I; the answer derived from it",
        ),
    ],
)
def test_the_published_intervals_come_out(plan: RowPlan, intervals: dict[int, int]) -> None:
    made = made_of(plan)
    assert dict(made.intervals) == intervals
    assert sum(every * times for every, times in made.intervals) == plan.rows


def test_right_side_rows_alternate_six_and_four_as_the_handbook_says() -> None:
    # Example 6: "6 and 4 rows alternately, 13 times"; which of the two comes first is a choice.
    made = made_of(RowPlan(name="sleeve", stitches=26, to=0, rows=130, stitches_per_shaping=1, step=2, spacing="even"))
    (phase,) = made.phases
    assert (sorted(phase.every), phase.times) == ([4, 6], 13)


@pytest.mark.parametrize(("shapings", "rows"), [(36, 140), (42, 176), (26, 130), (11, 108), (8, 78)])
def test_flat_work_in_pairs_of_rows_follows_the_handbook_formula(shapings: int, rows: int) -> None:
    # q = 2 floor(m / 2n) rows n - r times and q + 2 rows r times, r = (m - n q) / 2 (from memory; it agrees with
    # example 6).
    q = 2 * (rows // (2 * shapings))
    r = (rows - shapings * q) // 2
    made = made_of(RowPlan(name="sleeve", stitches=shapings, to=0, rows=rows, stitches_per_shaping=1, step=2))
    assert made.intervals == tuple((every, times) for every, times in ((q, shapings - r), (q + 2, r)) if times)


def test_one_interval_rounded_down_leaves_the_rest_straight() -> None:
    # Named the classic mistake in the article of example 1: every 3rd row 36 times = 108 rows, then 32 straight.
    made = made_of(
        RowPlan(name="side", stitches=36, to=0, rows=140, stitches_per_shaping=1, spacing="single_then_plain")
    )
    assert (made.intervals, made.plain_after) == (((3, 36),), 32)
