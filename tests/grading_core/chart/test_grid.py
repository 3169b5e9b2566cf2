"""The chart by itself: columns, rows, mirror axes and anchors."""

import random
from fractions import Fraction

import pytest

from grading_core.chart.grid import (
    Chart,
    Colour,
    default_anchor,
    first_column,
    mirror_axes,
    neck_parity,
    progress,
    symmetry,
)
from grading_core.unknown import is_unknown, told, unknown
from tests.grading_core.chart.small_plans import ARROW


def test_five_stitches_start_with_column_1_and_seven_with_5():
    """The worked example of a five-column chart centred on its third column."""
    assert first_column(Fraction(3), 5, 5) == 1
    assert first_column(Fraction(3), 7, 5) == 5


@pytest.mark.parametrize(
    ("repeat", "first_round", "yoke", "worked", "left", "finishing"),
    [
        ("rows", 3, 60, 58, 14, 14),  # two repeats of 24 and 10 rows
        ("rows", 1, 48, 48, 0, 0),  # ends with the split
        ("rows", 61, 60, 0, 24, 24),  # begins with the body
        ("rows", 65, 60, 0, 24, 28),  # four plain body rounds first
        ("once", 41, 60, 20, 4, 4),
        ("once", 3, 60, 24, 0, 0),
    ],
)
def test_rows_worked_and_left_at_the_split(repeat, first_round, yoke, worked, left, finishing):
    chart = Chart(("#.",) * 24, {"#": Colour(""), ".": Colour("")}, repeat=repeat)
    come = progress(chart, first_round, yoke)
    assert (come.yoke_chart_rows, come.rows_left, come.finishing_rounds) == (worked, left, finishing)


def test_a_yoke_changed_as_told_ends_with_the_charts_last_row():
    for repeat in ("rows", "once"):
        chart = Chart(("#",) * 7, {"#": Colour("")}, repeat=repeat)
        for first_round in range(1, 12):
            for rounds in range(1, 40):
                come = progress(chart, first_round, rounds)
                assert progress(chart, first_round, rounds + come.deeper).rows_left == 0
                if come.shallower is None:
                    assert rounds - first_round + 1 < 7
                else:
                    assert progress(chart, first_round, rounds - come.shallower).last_chart_row == 7


@pytest.mark.parametrize(
    ("row", "axes", "kind"),
    [
        ("..#..", [3, 5.5], "both"),
        (".##.", [2.5, 4.5], "between_stitches"),
        ("...#", [1, 3], "about_a_stitch"),
        (".#.#", [1, 2, 3, 4], "about_a_stitch"),
        ("..#.##", [], "none"),
    ],
)
def test_the_axes_of_small_charts(row, axes, kind):
    found = mirror_axes(Chart((row,), {}))
    assert [float(axis) for axis in found] == axes
    assert symmetry(found) == kind


def test_axes_are_those_about_which_every_column_meets_its_equal():
    draw = random.Random(1)
    for _ in range(400):
        width, height = draw.randint(1, 9), draw.randint(1, 3)
        half = ["".join(draw.choices("#.", k=height)) for _ in range(width // 2 + 1)]
        columns = (half + half[::-1])[:width]
        columns = columns[draw.randint(0, width) :] + columns[: draw.randint(0, width)]
        columns = (columns * width)[:width] or [half[0]] * width
        rows = tuple("".join(column[row] for column in columns) for row in range(height))
        from_right = [columns[width - 1 - place] for place in range(width)]
        expected = [
            Fraction(twice, 2)
            for twice in range(2, 2 * width + 2)
            if all(
                from_right[(column - 1) % width] == from_right[(twice - column - 1) % width]
                for column in range(1, width + 1)
            )
        ]
        assert list(mirror_axes(Chart(rows, {}))) == expected


def test_a_whole_anchor_needs_odd_sections_and_a_half_even_ones():
    assert neck_parity(Fraction(3)) == "odd"
    assert neck_parity(Fraction(7, 2)) == "even"


def test_the_default_anchor_is_the_mirror_axis_nearest_to_the_middle():
    assert default_anchor(ARROW) == 3
    assert default_anchor(ARROW, "even") == Fraction(11, 2)
    assert default_anchor(Chart(("..#.##",), {})) == Fraction(7, 2)


def test_a_row_that_is_not_known_tells_no_axis():
    assert is_unknown(told(mirror_axes, Chart(("..#", unknown()), {})))
