"""Which columns every stretch shows, laid out on paper."""

from fractions import Fraction

from grading_core.chart.front import front_view
from grading_core.chart.grid import Chart, Colour
from grading_core.chart.placement import place_charts
from grading_core.chart.request import BodyShaping, ChartPictureRequest, ChartSize, MinimumWidth
from grading_core.sections import IncreaseRound, Sections
from tests.grading_core.chart.small_plans import ARROW, middle, motif_plan, picture, plan_of, remarks


def test_a_body_decrease_moves_the_start_on_by_one_column():
    size = ChartSize(
        label="S", rounds=1, neck=Sections(9, 9, 9), body_rounds=3, body_shaping=[BodyShaping(2, -4), BodyShaping(3, 4)]
    )
    assert list(front_view(ChartPictureRequest(plan_of(size))).body) == picture("""
             215432154
              1543215
             215432154
    """)
    body = place_charts(plan_of(size)).sizes[0].body
    assert [here.front.first_column for here in body.rounds] == [4, 5, 4]
    assert body.changes.front == (2, 3)


def test_a_sleeve_decrease_moves_the_start_on_by_one_column():
    size = ChartSize(label="S", rounds=1, neck=Sections(5, 5, 9), sleeve_rounds=4, sleeve_decrease_rounds=[2, 4])
    sleeve = place_charts(plan_of(size)).sizes[0].sleeve
    # 215432154, 1543215, 1543215, 54321 as drawn
    assert [(here.stitches, here.first_column, here.last_column) for here in sleeve.rounds] == [
        (9, 4, 2),
        (7, 5, 1),
        (7, 5, 1),
        (5, 1, 5),
    ]
    assert sleeve.changes == (2, 4)


def test_back_and_front_that_grow_apart_start_apart():
    size = ChartSize(label="S", rounds=2, neck=Sections(5, 7, 5), increase_rounds=[IncreaseRound(2, 2, 1, 0)])
    rounds = place_charts(plan_of(size)).sizes[0].rounds
    assert [here.back.first_column for here in rounds] == [1, 4]
    assert [here.front.first_column for here in rounds] == [5, 4]


def test_a_section_stays_plain_until_its_minimum_width_is_reached_while_rows_run_on():
    size = ChartSize(label="S", rounds=3, neck=Sections(5, 5, 5), increase_rounds=[IncreaseRound(2, 1, 1, 1)])
    plan = plan_of(size, ARROW, minimum_width=MinimumWidth(body=7, sleeve=9), plain_colour=".")
    rounds = place_charts(plan).sizes[0].rounds
    assert [here.chart_row for here in rounds] == [1, 2, 3]
    assert [here.back.first_column for here in rounds] == [None, 5, 5]
    assert [here.sleeve.first_column for here in rounds] == [None, None, None]


def test_a_cut_motif_is_plain_until_it_fits_whole():
    """Motifs of five columns about column 3: from 5 to 15 stitches one fits, from 15 on three."""
    increases = [IncreaseRound(2, 2, 2, 2), IncreaseRound(3, 2, 2, 2), IncreaseRound(4, 1, 1, 1)]
    size = ChartSize(label="S", rounds=4, neck=Sections(5, 5, 3), increase_rounds=increases)
    plan = plan_of(size, partial_motifs="plain")
    view = front_view(ChartPictureRequest(plan))
    assert [seen.front for seen in view.yoke] == picture("""
             54321
           --54321--
         ----54321----
        543215432154321
    """)
    back = [here.back for here in place_charts(plan).sizes[0].rounds]
    assert [(here.plain_before, here.first_column, here.last_column, here.plain_after) for here in back] == [
        (0, 1, 5, 0),
        (2, 1, 5, 2),
        (4, 1, 5, 4),
        (0, 1, 5, 0),
    ]


def test_motifs_narrower_than_the_chart_appear_one_by_one():
    """Motifs of two columns, 1 2 | 3 4, on a section whose centre lies between columns 1 and 2."""
    chart = Chart(("4321",), {symbol: Colour(symbol) for symbol in "1234-"})
    increases = [IncreaseRound(number, 1, 1, 1) for number in (2, 3)]
    size = ChartSize(label="S", rounds=3, neck=Sections(2, 2, 2), increase_rounds=increases)
    plan = plan_of(size, chart, middle(Fraction(3, 2)), partial_motifs="plain", motif_columns=2)
    assert [seen.front for seen in front_view(ChartPictureRequest(plan)).yoke] == picture("""
          21
         -21-
        432143
    """)


def test_a_section_without_room_for_a_whole_motif_is_plain():
    size = ChartSize(label="S", rounds=1, neck=Sections(3, 5, 5))
    (worked,) = place_charts(plan_of(size, partial_motifs="plain")).sizes[0].rounds
    assert (worked.back.first_column, worked.back.plain_before, worked.chart_row) == (None, None, 1)


def test_a_section_below_its_minimum_width_is_plain_even_where_a_motif_has_room():
    size = ChartSize(label="S", rounds=2, neck=Sections(5, 5, 5), increase_rounds=[IncreaseRound(2, 1, 1, 0)])
    plan = plan_of(size, partial_motifs="plain", minimum_width=MinimumWidth(body=7))
    assert [seen.front for seen in front_view(ChartPictureRequest(plan)).yoke] == picture("""
         -----
        -54321-
    """)


def test_a_sleeve_decrease_cuts_a_motif_which_is_plain_again():
    size = ChartSize(label="S", rounds=1, neck=Sections(5, 5, 15), sleeve_rounds=2, sleeve_decrease_rounds=[2])
    sleeve = place_charts(plan_of(size, partial_motifs="plain")).sizes[0].sleeve
    # 543215432154321 and then ----54321---- as drawn
    assert [(here.plain_before, here.first_column, here.plain_after) for here in sleeve.rounds] == [
        (0, 1, 0),
        (4, 1, 4),
    ]
    assert [(each.motifs, each.from_round) for each in sleeve.motifs] == [(3, 1), (1, 2)]


def test_rounds_before_the_charts_first_are_plain():
    rounds = (
        place_charts(motif_plan(ChartSize(label="S", rounds=4, neck=Sections(5, 5, 5)), first_round=3)).sizes[0].rounds
    )
    assert [here.chart_row for here in rounds] == [None, None, 1, 2]
    assert [here.back.first_column for here in rounds] == [None, None, 1, 1]


def test_an_accepted_shift_centres_the_section_half_a_stitch_before_its_column():
    size = ChartSize(label="S", rounds=1, neck=Sections(6, 5, 5))
    plan = plan_of(size, half_stitch="shift")
    # back: 6 stitches on column 2.5, so 5 | 1 2 3 4 5 in working order
    assert place_charts(plan).sizes[0].rounds[0].back.first_column == 5
    assert ("half_stitch_off_centre", ("sizes", 0, "neck", "back")) in remarks(plan)


def test_by_default_the_seam_takes_the_odd_underarm_stitch():
    for underarm in (4, 5):
        size = ChartSize(label="S", rounds=1, neck=Sections(5, 5, 5), underarm=underarm, body_rounds=1)
        assert place_charts(plan_of(size)).sizes[0].body.rounds[0].back.stitches == 9


def test_a_section_that_never_shows_the_chart_may_have_any_count():
    size = ChartSize(label="S", rounds=1, neck=Sections(5, 5, 4))
    plan = plan_of(size, minimum_width=MinimumWidth(sleeve=99))
    assert place_charts(plan).sizes[0].rounds[0].sleeve.first_column is None
