"""A sleeve schedule in use, twelve sizes: one interval, and the surplus rounds plain before it.

Source: magazine errata, Yarn Forward no. 7, a raglan in twelve sizes.
"""

import pytest

from grading_core.shaping_plans import RowPlan, RowSchedule, along_rows

TWELVE_SIZES = list(
    zip(
        (48, 52, 56, 60, 66, 70, 74, 80, 84, 88, 92, 98),
        (0, 0, 0, 0, 7, 7, 7, 0, 8, 8, 0, 11),
        (13, 13, 10, 10, 7, 7, 6, 6, 5, 5, 5, 4),
        (7, 7, 9, 9, 12, 12, 14, 15, 17, 17, 19, 20),
        (34, 38, 38, 42, 42, 46, 46, 50, 50, 54, 54, 58),
        strict=True,
    )
)


def sleeve(stitches: int, plain: int, every: int, times: int, left: int) -> RowSchedule:
    made = along_rows(
        RowPlan(name="sleeve", stitches=stitches, to=left, rows=plain + every * times, spacing="plain_then_single")
    )
    assert isinstance(made, RowSchedule)
    return made


@pytest.mark.parametrize(("stitches", "plain", "every", "times", "left"), TWELVE_SIZES)
def test_each_size_has_its_printed_plain_rounds_interval_and_times(
    stitches: int, plain: int, every: int, times: int, left: int
) -> None:
    made = sleeve(stitches, plain, every, times, left)
    assert (made.plain_before, made.intervals, made.plain_after) == (plain, ((every, times),), 0)


@pytest.mark.parametrize(("stitches", "plain", "every", "times", "left"), TWELVE_SIZES)
def test_each_size_is_said_as_printed(stitches: int, plain: int, every: int, times: int, left: int) -> None:
    *before, shaped = sleeve(stitches, plain, every, times, left).instructions()
    assert [(each.id, each.values["first"], each.values["last"]) for each in before] == [
        ("shaping.plain", 1, plain) for _ in range(plain > 0)
    ]
    told = {name: shaped.values[name] for name in ("first", "every", "times", "change", "stitches")}
    assert shaped.id == "shaping.decrease"
    assert told == {"first": plain + 1, "every": every, "times": times, "change": 2, "stitches": left}


def test_every_size_has_the_90_to_95_rounds_of_the_notes() -> None:
    rounds = {sleeve(*size).phases[-1].to_row for size in TWELVE_SIZES}
    assert (min(rounds), max(rounds)) == (90, 95)
