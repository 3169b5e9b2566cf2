"""Rows as they are read: their numbers, inches beside centimetres, and what is wrong with a row."""

from fractions import Fraction
from typing import Any

import pytest

from grading_core.errors import ContradictionError, sound
from grading_core.proof.figures import GRAINS, Key, number
from grading_core.proof.request import PrintedRow
from grading_core.proof.table import Row, numbers_of, printed_steps, read_rows


def read(*rows: PrintedRow, sizes: int = 3) -> dict[Key, Row]:
    return {row.key: row for row in sound(read_rows(rows, sizes))}


def told(row: Row) -> list[Fraction | None]:
    numbers = row.run if row.values is None else row.values
    assert numbers is not None
    return [None if value is None else number(value) for value in numbers]


def problems(*rows: PrintedRow) -> list[tuple[Any, str]]:
    with pytest.raises(ContradictionError) as error:
        read(*rows)
    return [(problem.path, problem.code.value) for problem in error.value.problems]


BUST, BUST_IN_INCHES = Key("finished", "bust"), Key("finished", "bust", True)


def test_exact_values_count_where_a_run_is_printed_beside_them() -> None:
    row = read(PrintedRow("finished", "bust", values=(92.36, 97.27, None), run="92.5 (97.5, -)"))[BUST]
    assert told(row) == [Fraction("92.36"), Fraction("97.27"), None]
    assert [None if each is None else number(each) for each in row.run or ()] == [92.5, 97.5, None]


def test_inches_beside_centimetres_are_a_row_of_their_own() -> None:
    rows = read(PrintedRow("finished", "bust", run="92 (97, 102)", run_inch="36 1/4 (38 1/4, 40 1/4)"))
    assert {key: (row.unit, told(row)) for key, row in rows.items()} == {
        BUST: ("cm", [92, 97, 102]),
        BUST_IN_INCHES: ("inch", [36.25, 38.25, 40.25]),
    }


@pytest.mark.parametrize(
    "row",
    [
        PrintedRow("finished", "bust", run="36 (38, 40) in"),
        PrintedRow("finished", "bust", run_inch="36 (38, 40)"),
        PrintedRow("finished", "bust", unit="inch", run="36 (38, 40)"),
        PrintedRow("finished", "bust", unit="inch", values=(36, 38, 40)),
    ],
)
def test_a_row_in_inches_alone_is_one_of_inches(row: PrintedRow) -> None:
    assert {key: (each.unit, told(each)) for key, each in read(row).items()} == {BUST_IN_INCHES: ("inch", [36, 38, 40])}


def test_a_row_in_centimetres_and_one_in_inches_may_be_sent_apart() -> None:
    rows = read(PrintedRow("finished", "bust", run="92"), PrintedRow("finished", "bust", unit="inch", run="36"))
    assert set(rows) == {BUST, BUST_IN_INCHES}


def test_rows_count_what_a_pullovers_table_says() -> None:
    rows = read(PrintedRow("neck", "back", run="30"), PrintedRow("yarn", "metres_2", run="300"))
    assert [row.unit for row in rows.values()] == ["stitches", "metres"]


def test_a_row_of_another_name_is_read_and_counts_what_it_says() -> None:
    row = read(PrintedRow("pocket", "width", unit="cm", run="12"))[Key("pocket", "width")]
    assert (row.unit, told(row)) == ("cm", [12])


def test_what_cannot_be_read_is_named_with_its_place_and_all_else_too() -> None:
    assert problems(
        PrintedRow("neck", "back", run="thirty-?"),
        PrintedRow("neck", "front"),
        PrintedRow("neck", "sleeve", unit="cm", run="12"),
        PrintedRow("body", "stitches", run="152"),
        PrintedRow("body", "stitches", run="164"),
        PrintedRow("finished", "bust", run="92", run_inch="36 cm (38 in)"),
    ) == [
        (("rows", 0, "run"), "unreadable_run"),
        (("rows", 1), "no_numbers"),
        (("rows", 2, "unit"), "other_unit"),
        (("rows", 4), "duplicate_row"),
        (("rows", 5, "run_inch"), "unreadable_run"),
    ]


def test_one_number_is_that_of_all_sizes() -> None:
    rows = tuple(read(PrintedRow("body", "rounds", run="84"), PrintedRow("hem", "rounds", values=(14,))).values())
    assert [each.values for each in numbers_of(rows, 3, {}).values()] == [(84 * GRAINS,) * 3, (14 * GRAINS,) * 3]


def test_lengths_were_rounded_as_all_of_their_unit_and_counts_were_not() -> None:
    rows = tuple(
        read(
            PrintedRow("finished", "bust", values=(92.36, 97, 102), run="92.5 (97, 102)", run_inch="36 1/4 (38, 40)"),
            PrintedRow("finished", "neck", run="40 (42.5, 44)"),
            PrintedRow("finished", "depth", run="20 (21, 22)"),
            PrintedRow("neck", "stitches", run="88 (92, 96)"),
        ).values()
    )
    steps = printed_steps(rows)
    assert {kind: number(step) for kind, step in steps.items()} == {
        ("cm", True): Fraction(1, 100),
        ("cm", False): Fraction(1, 2),
        ("inch", False): Fraction(1, 4),
    }
    halves = {key: number(row.half) for key, row in numbers_of(rows, 3, steps).items()}
    assert halves == {
        BUST: Fraction(1, 200),
        BUST_IN_INCHES: Fraction(1, 8),
        Key("finished", "neck"): Fraction(1, 4),
        Key("finished", "depth"): Fraction(1, 2),
        Key("neck", "stitches"): 0,
    }
