"""The front as it will look, against pictures drawn on paper."""

from dataclasses import replace
from fractions import Fraction

from grading_core.chart.front import front_view
from grading_core.chart.grid import Chart, Colour
from grading_core.chart.request import ChartPictureRequest, ChartSize, SeamStitches
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
    # 5 + 1 from each line + 2 at each side from the underarm's 5, whose middle stitch is seen on both faces
    assert view.body == ("-34512345123-",)
    # 9 + 2 stitches of the sleeve, of which the middle one is seen on both faces too, and the seam under it
    assert view.first_sleeve == ("345123-",)
    assert view.second_sleeve == ("-345123",)


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


def test_of_a_seam_of_two_stitches_the_front_shows_one_at_each_side():
    size = ChartSize(label="S", rounds=1, neck=Sections(5, 5, 5), underarm=2, body_rounds=1, sleeve_rounds=1)
    view = front_view(ChartPictureRequest(plan_of(size, seam_stitches=SeamStitches(2, 2), seam="purl")))
    assert (view.body, view.first_sleeve, view.second_sleeve) == (("-12345-",), ("345-",), ("-123",))
    assert (view.body_seam, view.sleeve_seam, view.seam) == (1, 1, "purl")


def test_exchanged_colours_are_seen_in_the_chart_and_in_nothing_else():
    size = ChartSize(label="S", rounds=2, neck=Sections(5, 5, 5))
    seen = front_view(
        ChartPictureRequest(motif_plan(size, first_round=2, line_stitches=1, line_colour="#", exchange=(".", "#")))
    ).yoke
    # row 1 is #####; the round before the chart is in the plain colour, the lines in their own
    assert [(here.line, here.front) for here in seen] == [("#", "....."), ("#", ".....")]
    upper = replace(ARROW, first_row="top")
    seen = front_view(ChartPictureRequest(plan_of(size, upper, plain_colour=".", exchange=(".", "#")))).yoke
    assert [here.front for here in seen] == ["##.##", "#...#"]


def test_the_plain_colour_follows_the_exchanged_rows():
    """Nine stitches of fifteen are motif; exchanged, nine are ground."""
    size = ChartSize(label="S", rounds=1, neck=Sections(5, 5, 5))
    plan = replace(motif_plan(size), plain_colour=None)
    assert plan.plain_colours().plain == "#"
    assert replace(plan, exchange=(".", "#")).plain_colours().plain == "."


def test_below_a_chart_that_is_worked_once_all_that_is_plain_has_the_colour_below():
    size = ChartSize(label="S", rounds=2, neck=Sections(5, 5, 5), underarm=1, body_rounds=2, sleeve_rounds=2)
    once = replace(ARROW, rows=("#####",), repeat="once")
    plan = plan_of(size, once, plain_colour=".", below_colour="#", line_stitches=1, line_to_body=1, first_round=2)
    view = front_view(ChartPictureRequest(plan))
    assert [(seen.line, seen.front) for seen in view.yoke] == [(".", "....."), (".", "#####")]
    assert set(view.body) == {"#" * 9}
    own = front_view(ChartPictureRequest(replace(plan, seam_colour=".")))
    assert set(own.body) == {".#######."}
    assert set(own.first_sleeve) == {"###."}


def test_a_chart_that_repeats_has_nothing_below():
    size = ChartSize(label="S", rounds=2, neck=Sections(5, 5, 5), underarm=1, body_rounds=2)
    plan = motif_plan(size)
    assert front_view(ChartPictureRequest(replace(plan, below_colour="#"))) == front_view(ChartPictureRequest(plan))


def test_the_front_shows_whole_motifs():
    """Motifs of two in six columns: 1 2 | 3 4 | 5 6; about column 3.5, 4 stitches have one, 8 stitches have three."""
    size = ChartSize(label="S", rounds=2, neck=Sections(4, 4, 4), increase_rounds=[IncreaseRound(2, 2, 2, 0)])
    chart = Chart(("654321",), {symbol: Colour(symbol) for symbol in "123456-"})
    plan = plan_of(size, chart, middle(Fraction(7, 2)), partial_motifs="plain", motif_columns=2)
    view = front_view(ChartPictureRequest(plan))
    assert [seen.front for seen in view.yoke] == ["-34-", "-123456-"]
