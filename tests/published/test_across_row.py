"""Increases and decreases across one row, with their published answers."""

import pytest

from grading_core.shaping_plans import AcrossPlan, AcrossSchedule, across_row


def made_of(plan: AcrossPlan) -> AcrossSchedule:
    made = across_row(plan)
    assert isinstance(made, AcrossSchedule)
    return made


@pytest.mark.parametrize(
    ("plan", "intervals"),
    [
        pytest.param(
            AcrossPlan(name="row", stitches=55, across=17, change="decrease"),
            {3: 13, 4: 4},
            id="3: decrease 55 to 38. Paper Moon Knits, Math Monday part II",
        ),
        pytest.param(
            AcrossPlan(name="row", stitches=190, across=59, change="increase"),
            {3: 46, 4: 13},
            id="4: increase 190 to 249. Paper Moon Knits, Math Monday increasing",
        ),
        pytest.param(
            AcrossPlan(name="row", stitches=112, across=16, change="increase"),
            {7: 16},
            id="7: 16 in 112. Woolpack yarn shop article",
        ),
        pytest.param(
            AcrossPlan(name="row", stitches=60, across=5, change="increase"),
            {12: 5},
            id="8: 5 in 60, round. Yarnpath blog, 2005",
        ),
        pytest.param(
            AcrossPlan(name="row", stitches=48, across=6, change="increase"),
            {8: 6},
            id="9: 6 in 48. Modern Daily Knitting",
        ),
    ],
)
def test_the_published_distances_come_out(plan: AcrossPlan, intervals: dict[int, int]) -> None:
    made = made_of(plan)
    assert dict(made.intervals) == intervals
    assert made.last == 0


def test_four_increases_in_51_stitches_in_the_round_follow_the_article() -> None:
    # Example 5, Woolpack yarn shop article: gaps 13, 13, 13, 12.
    assert made_of(AcrossPlan(name="row", stitches=51, across=4, change="increase", worked="round")).after == (
        13,
        26,
        39,
        51,
    )


def test_four_increases_in_51_stitches_flat_halve_the_edge_gaps_as_the_article_does() -> None:
    # Example 5, Woolpack yarn shop article: flat at 6, 19, 32, 45.
    made = made_of(AcrossPlan(name="row", stitches=51, across=4, change="increase", worked="flat"))
    assert made.after == (6, 19, 32, 45)
    assert (made.first, made.last) == (6, 6)


def test_five_increases_in_60_stitches_flat_stand_between_six_sections_of_ten() -> None:
    # Example 8, Yarnpath blog, 2005: the other convention, equal sections.
    made = made_of(AcrossPlan(name="row", stitches=60, across=5, change="increase", worked="flat", edge="full"))
    assert (made.first, made.intervals, made.last) == (10, ((10, 4),), 10)


def test_a_row_from_55_to_38_stitches_leaves_38() -> None:
    made = made_of(AcrossPlan(name="row", stitches=55, across=17, change="decrease"))
    assert made.result == 38
    (sentence,) = made.instructions()
    steps = [(step.id, step.values["gap"], step.values["times"]) for step in sentence.values["steps"]]
    assert steps == [("across.decrease", 2, 4), ("across.decrease", 1, 13)]
    assert sentence.values["stitches"] == 38
