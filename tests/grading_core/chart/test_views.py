"""The front as it will look, and the starts traced: pictures drawn on paper."""

from dataclasses import replace
from fractions import Fraction

from grading_core.chart.placement import place_charts
from grading_core.chart.request import ChartPictureRequest, ChartSize, SeamStitches
from grading_core.chart.views import front_view, start_traces
from grading_core.sections import IncreaseRound, Sections
from tests.grading_core.chart.small_plans import ARROW, middle, motif_plan, picture, plan_of


def test_the_front_grows_outwards_from_its_centre():
    size = ChartSize(
        label="S",
        rounds=3,
        neck=Sections(5, 5, 5),
        increase_rounds=[IncreaseRound(2, 1, 1, 0), IncreaseRound(3, 2, 2, 0)],
    )
    view = front_view(ChartPictureRequest(plan_of(size)))
    assert [seen.front for seen in view.yoke] == picture("""
                54321
               1543215
             32154321543
    """)


def test_lines_and_underarms_continue_the_chart_below_the_split_and_a_seam_breaks_it():
    size = ChartSize(label="S", rounds=1, neck=Sections(5, 5, 5), underarm=5, body_rounds=1, sleeve_rounds=1)
    view = front_view(
        ChartPictureRequest(plan_of(size, line_stitches=2, line_to_body=1, seam_stitches=SeamStitches(1, 1)))
    )
    yoke = view.yoke[0]
    assert yoke.line + yoke.front + yoke.line == "--12345--"
    # 5 + 1 from each line + 2 at each side from the underarm's 5, less its middle stitch
    assert view.body == ("34512345123",)


def test_an_even_section_stands_on_a_half_column():
    """Columns 2 and 3 lie on either side of the centre: 4 3 . 2 1 as drawn, and the other way round as worn."""
    size = ChartSize(label="S", rounds=1, neck=Sections(4, 4, 4))
    assert front_view(ChartPictureRequest(plan_of(size, anchor=middle(Fraction(5, 2))))).yoke[0].front == "1234"


def test_the_lowest_drawn_row_is_worked_first_unless_told_otherwise():
    size = ChartSize(label="S", rounds=3, neck=Sections(5, 5, 5))
    upwards = front_view(ChartPictureRequest(motif_plan(size)))
    assert [seen.front for seen in upwards.yoke] == ["#####", ".###.", "..#.."]
    downwards = front_view(ChartPictureRequest(plan_of(size, replace(ARROW, first_row="top"), plain_colour=".")))
    assert [seen.front for seen in downwards.yoke] == ["..#..", ".###.", "#####"]


def test_a_section_centred_on_an_axis_looks_alike_from_both_sides():
    size = ChartSize(label="S", rounds=3, neck=Sections(5, 5, 5), increase_rounds=[IncreaseRound(2, 1, 1, 1)])
    view = front_view(ChartPictureRequest(motif_plan(size)))
    assert all(seen.front == seen.front[::-1] for seen in view.yoke)
    assert all(seen.second_sleeve == seen.first_sleeve[::-1] for seen in view.yoke)


def test_a_trace_breaks_where_it_leaves_the_chart():
    """Starts 1, 5, 5, 4, 4: column 1 to 5 goes over the edge."""
    size = ChartSize(
        label="S",
        rounds=5,
        neck=Sections(5, 5, 5),
        increase_rounds=[IncreaseRound(2, 1, 1, 0), IncreaseRound(4, 1, 1, 0)],
    )
    traces = start_traces(place_charts(motif_plan(size)).sizes[0])
    assert (traces[0].part, traces[0].section) == ("yoke", "back")
    assert traces[0].pieces == (((1, 1),), ((2, 5), (3, 5), (4, 4), (5, 4)))


def test_a_trace_goes_on_where_the_start_moves_by_one_column():
    size = ChartSize(label="S", rounds=2, neck=Sections(7, 7, 7), increase_rounds=[IncreaseRound(2, 1, 1, 0)])
    assert start_traces(place_charts(motif_plan(size)).sizes[0])[0].pieces == (((1, 5), (2, 4)),)
