"""Charts placed by hand on the sizes of a garment."""

from dataclasses import replace
from fractions import Fraction

import pytest

from grading_core.chart.grid import Chart, Colour
from grading_core.chart.placement import place_charts
from grading_core.chart.request import ChartSize, MinimumWidth
from grading_core.sections import Sections
from tests.grading_core.chart.small_plans import ARROW, middle, motif_plan, plan_of


def test_a_chart_worked_once_leaves_the_rest_plain():
    size = ChartSize(label="S", rounds=2, neck=Sections(5, 5, 5), body_rounds=4, sleeve_rounds=2)
    placed = place_charts(plan_of(size, replace(ARROW, repeat="once"), plain_colour=".")).sizes[0]
    assert [here.chart_row for here in placed.body.rounds] == [3, None, None, None]
    assert placed.body.plain_rounds == 3
    assert placed.sleeve.plain_rounds == 1


def test_of_colours_used_as_often_the_one_worked_first_is_plain():
    chart = Chart(("#.", ".#"), {".": Colour("ground"), "#": Colour("motif")})
    plan = plan_of(ChartSize(label="S", rounds=1, neck=Sections(3, 3, 3)), chart, plain_colour=None)
    assert plan.plain_colours().plain == "#"


def test_a_round_asked_for_is_the_one_met_there():
    size = ChartSize(label="S", rounds=3, neck=Sections(5, 5, 5), body_rounds=3, sleeve_rounds=3)
    placed = place_charts(motif_plan(size, first_round=2)).sizes[0]
    for rounds in (placed.rounds, placed.body.rounds, placed.sleeve.rounds):
        assert [here.round for here in rounds] == [1, 2, 3]
        assert [rounds[0], rounds[1], rounds[-1]] == [*rounds]
        with pytest.raises(IndexError):
            rounds[3]


def test_floats_pass_over_lines_and_plain_sections():
    """Back and front show the motif's lowest row, the sleeve is too narrow: its 3 stitches, two lines of 2."""
    size = ChartSize(label="S", rounds=1, neck=Sections(5, 5, 3))
    plan = motif_plan(size, line_stitches=2, minimum_width=MinimumWidth(0, 5))
    found = place_charts(plan).sizes[0].longest_float
    assert (found.stitches, found.colour, found.part, found.round) == (7, "#", "yoke", 1)
    assert (found.start.section, found.start.column) == ("back", 5)
    assert (found.end.section, found.end.column) == ("front", 1)
    assert found.length_cm == Fraction(7, 2)


def test_a_float_over_the_rounds_start_is_placed_from_one_round_to_the_next():
    """The body's rounds in working order, back then front: #.... #.... and then ....# ....#"""
    chart = Chart(("....#", "#...."), {".": Colour(""), "#": Colour("")}, first_row="top")
    size = ChartSize(label="S", rounds=1, neck=Sections(5, 5, 5), body_rounds=2)
    found = place_charts(plan_of(size, chart, first_round=2, plain_colour=".")).sizes[0].longest_float
    assert (found.stitches, found.colour, found.part, found.round) == (8, "#", "body", 2)
    assert (found.start.round, found.start.section, found.start.column) == (1, "front", 1)
    assert (found.end.round, found.end.section, found.end.column) == (2, "back", 5)


def test_a_float_may_end_on_a_plain_stitch_before_a_motif():
    """The lowest row in a section of nine: ..#####.., and its neighbours of the lines' colour #."""
    size = ChartSize(label="S", rounds=1, neck=Sections(9, 9, 9))
    plan = motif_plan(size, line_stitches=1, line_colour="#", partial_motifs="plain", float_limit=4)
    found = place_charts(plan).sizes[0].longest_float
    assert (found.stitches, found.colour) == (5, ".")
    assert (found.start.section, found.start.column, found.end.section, found.end.column) == (
        "back",
        None,
        "back",
        None,
    )


def test_a_strand_is_carried_behind_the_stitches_between_two_of_its_own():
    """The body's two rounds in working order, back then front: #.... #.... and then ....# ....#

    # passes 4 stitches, then 4 + 4 over the round's start, then 4; . passes 1 in the first round, nothing where its own
    follow its own from round to round, and 1 in the second: 20 and 2.
    """
    chart = Chart(("....#", "#...."), {".": Colour(""), "#": Colour("")}, first_row="top")
    size = ChartSize(label="S", rounds=1, neck=Sections(5, 5, 5), body_rounds=2)
    found = place_charts(plan_of(size, chart, first_round=2, plain_colour=".")).sizes[0].float_stitches_by_colour
    assert found.body == {"#": 4 + 8 + 4, ".": 1 + 1}
    assert found.yoke == found.sleeves == {"#": 0, ".": 0}
    assert found.total == found.body


def test_rounds_of_more_than_two_colours_are_named():
    chart = Chart(("#o", ".."), {".": Colour(""), "#": Colour(""), "o": Colour("")}, first_row="top")
    size = ChartSize(label="S", rounds=3, neck=Sections(3, 3, 3))
    plan = plan_of(size, chart, middle(1), line_stitches=1, plain_colour=".")
    placed = place_charts(plan)
    assert placed.sizes[0].rounds_over_two_colours.yoke == (1, 3)
    assert [here.colours for here in placed.sizes[0].rounds] == [3, 1, 3]
    assert "more_than_two_colours" in {remark.code for remark in placed.remarks}
