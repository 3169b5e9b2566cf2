"""Which columns every stretch shows, laid out on paper."""

from grading_core.chart.placement import place_charts
from grading_core.chart.request import BodyShaping, ChartPictureRequest, ChartSize, MinimumWidth
from grading_core.chart.views import front_view
from grading_core.sections import IncreaseRound, Sections
from tests.grading_core.chart.small_plans import ARROW, motif_plan, picture, plan_of, remarks


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
