"""Colours compared, and neighbours counted: on paper, and stitch by stitch in random charts."""

from dataclasses import replace
from itertools import combinations
from random import Random

import pytest

from grading_core.chart.contrast import MAX_LOW, MAX_PLACES, colour_contrasts
from grading_core.chart.grid import Chart, Colour
from grading_core.chart.placement import place_charts
from grading_core.chart.request import ChartSize, ContrastRequest, MinimumWidth
from grading_core.errors import ContradictionError
from grading_core.sections import Sections
from tests.grading_core.chart.small_plans import plan_of

# 53.2 and 53.6 of red and grey; black and white are the ends of the scale (from memory)
RED, GREY, BLACK, WHITE = (
    Colour("red", "#ff0000"),
    Colour("grey", "#808080"),
    Colour("black", "#000000"),
    Colour("white", "#ffffff"),
)
SIZE = ChartSize(label="S", rounds=2, neck=Sections(5, 5, 5))


def contrasts(colours, *rows, **options):
    chart = Chart(rows, {}, **options) if rows else None
    return colour_contrasts(ContrastRequest(colours, chart))


def warned(colours, *rows, **options):
    return [(remark.code, remark.path) for remark in contrasts(colours, *rows, **options).remarks]


def naive_meetings(chart, pair):
    """Every stitch of one repeat and the two that follow it: the next in its row, and the one worked upon it."""
    ordered = chart.rows if chart.first_row == "top" else tuple(reversed(chart.rows))
    width, height = len(ordered[0]), len(ordered)

    def at(row, column):
        return ordered[(row - 1) % height][width - 1 - (column - 1) % width]

    met = []
    for row in range(1, height + 1):
        for column in range(1, width + 1):
            if {at(row, column), at(row, column + 1)} == set(pair):
                met.append((row, column, "next_column"))
        if row == height and chart.repeat == "once":
            continue
        for column in range(1, width + 1):
            if {at(row, column), at(row + 1, column)} == set(pair):
                met.append((row, column, "next_row"))
    return met


@pytest.mark.parametrize("seed", range(40))
def test_neighbours_are_those_that_a_walk_over_every_stitch_finds(seed):
    random = Random(seed)
    symbols = "abcd"[: random.randint(2, 4)]
    colours = {symbol: Colour(symbol, "#808080") for symbol in symbols}
    width, height = random.randint(1, 9), random.randint(1, 9)
    rows = tuple("".join(random.choices(symbols, k=width)) for _ in range(height))
    chart = Chart(rows, {}, random.choice(("top", "bottom")), random.choice(("rows", "once")))
    pairs = colour_contrasts(ContrastRequest(colours, chart)).pairs
    assert [pair.colours for pair in pairs] == list(combinations(symbols, 2))
    for pair in pairs:
        met = naive_meetings(chart, pair.colours)
        assert pair.meetings.side_by_side == sum(direction == "next_column" for *_, direction in met)
        assert pair.meetings.one_above_other == sum(direction == "next_row" for *_, direction in met)
        assert list(pair.meetings.places) == met[:MAX_PLACES]


def test_more_neighbours_than_are_told_are_counted():
    [pair] = contrasts({"a": RED, "b": GREY}, "ab" * 400, "ab" * 400).pairs
    assert pair.meetings.side_by_side == 1600
    assert [place.column for place in pair.meetings.places] == list(range(1, MAX_PLACES + 1))


def test_neighbours_are_looked_for_only_where_a_pair_hardly_reads():
    pairs = contrasts({"a": RED, "b": GREY, "c": WHITE}, "abc").pairs
    assert [(pair.colours, pair.reads, pair.meetings is not None) for pair in pairs] == [
        (("a", "b"), "hardly", True),
        (("a", "c"), "clearly", False),
        (("b", "c"), "clearly", False),
    ]


def test_a_pair_that_hardly_reads_gets_a_word_unless_it_never_meets():
    colours = {"a": RED, "b": GREY, ".": WHITE}
    assert warned(colours) == [("low_contrast", ("colours", "b"))]
    assert warned(colours, "ab.") == [("low_contrast", ("colours", "b"))]
    assert warned(colours, "...", "a..", "...", ".b.") == []


def test_the_chart_is_worked_again_and_again_unless_it_is_worked_once():
    """Red and grey meet only where row 1 follows the last."""
    rows = ("aa", "..", "bb")
    assert warned({"a": RED, "b": GREY, ".": WHITE}, *rows) == [("low_contrast", ("colours", "b"))]
    assert warned({"a": RED, "b": GREY, ".": WHITE}, *rows, repeat="once") == []


def test_a_word_tells_the_difference_to_one_decimal():
    [remark] = contrasts({"a": BLACK, "b": Colour("soot", "#010101")}).remarks
    # L* of the darkest grey is 903.3 x its luminance, 1 / 255 / 12.92 (CIE 15)
    values = remark.message.values
    assert (values["first"], values["second"]) == ("black", "soot")
    assert float(values["difference"]) == round(903.3 / 255 / 12.92, 1)


def test_of_many_alike_the_most_alike_get_a_word():
    greys = {chr(ord("a") + step): Colour(str(step), "#" + 3 * f"{128 + step:02x}") for step in range(12)}
    made = contrasts(greys)
    assert len(made.pairs) == 66
    assert len(made.remarks) == MAX_LOW
    # 11 pairs lie one step apart, 10 two: lightness grows by nearly the same at each
    assert {ord(second) - ord(first) for first, second in (pair.colours for pair in made.low)} == {1, 2}


def test_a_symbol_of_the_chart_without_a_colour_is_refused_in_its_row():
    with pytest.raises(ContradictionError) as caught:
        contrasts({"a": RED}, "aa", "ab", "a")
    assert [(problem.path, problem.code) for problem in caught.value.problems] == [
        (("chart", "rows", 1), "unknown_symbol"),
        (("chart", "rows", 2), "uneven_rows"),
    ]


def placed(colours, *rows, **options):
    chart = Chart(rows, colours)
    plan = replace(plan_of(SIZE, chart, plain_colour="."), **options)
    return [
        (remark.message.values["first"], remark.message.values["second"], remark.path)
        for remark in place_charts(plan).remarks
        if remark.code == "low_contrast"
    ]


def test_a_placed_charts_colours_that_meet_get_a_word():
    colours = {".": WHITE, "a": RED, "b": GREY}
    assert placed(colours, ".ab..") == [("red", "grey", ("chart",))]
    assert placed(colours, ".a...", ".....", "...b.", ".....") == []


@pytest.mark.parametrize("field", ["plain_colour", "line_colour", "seam_colour"])
def test_what_is_plain_lies_beside_every_colour(field):
    colours = {".": WHITE, "a": RED, "-": GREY}
    assert placed(colours, ".a...") == []
    assert placed(colours, ".a...", minimum_width=MinimumWidth(9, 9), **{field: "-"}) == [("grey", "red", ("chart",))]


def test_what_is_plain_below_the_chart_lies_beside_every_colour():
    colours = {".": WHITE, "a": RED, "-": GREY}
    chart = Chart((".a...",), colours, repeat="once")
    assert placed(colours, ".a...", below_colour="-") == []
    assert placed(colours, ".a...", chart=chart, below_colour="-") == [("grey", "red", ("chart",))]


def test_exchanged_colours_meet_where_they_are_worked():
    """White lies between red and grey; once red lies there instead, it meets the grey."""
    colours = {".": WHITE, "a": RED, "b": GREY}
    rows = ".a...", ".....", "...b.", "....."
    assert placed(colours, *rows) == []
    assert placed(colours, *rows, exchange=(".", "a")) == [("red", "grey", ("chart",))]


def test_colours_that_nothing_is_worked_in_or_whose_hex_is_not_told_get_no_word():
    assert placed({".": WHITE, "a": RED, "b": Colour("cream", "#fffff0")}, ".a...") == []
    assert placed({".": WHITE, "a": RED, "b": Colour("grey")}, ".ab..") == []
