"""Which rounds of a placed chart are drawn, and what is told of them: counted on paper."""

from dataclasses import replace
from fractions import Fraction

import pytest

from grading_core.chart.drawn_rounds import DrawnRound, FirstStart, Start, chart_view, repeat_view
from grading_core.chart.grid import Chart, Colour
from grading_core.chart.placement import place_charts
from grading_core.chart.request import BodyShaping, ChartPictureRequest, ChartSize, MinimumWidth, SeamStitches
from grading_core.errors import ContradictionError
from grading_core.sections import IncreaseRound, Sections
from tests.grading_core.chart.small_plans import ARROW, middle, motif_plan, plan_of

SIZE = ChartSize(
    label="S",
    rounds=3,
    neck=Sections(5, 5, 5),
    increase_rounds=[IncreaseRound(2, 1, 1, 0)],
    underarm=1,
    body_rounds=4,
    sleeve_rounds=4,
)


def view(plan):
    return chart_view(ChartPictureRequest(plan))


def numbers(plan):
    return [(each.part, each.number, each.row) for each in view(plan).rounds]


def test_rounds_go_from_the_charts_first_to_the_end_of_the_repeat_begun():
    assert numbers(motif_plan(SIZE, first_round=2)) == [("yoke", 2, 1), ("yoke", 3, 2), ("below", 1, 3)]


def test_where_the_split_falls_on_the_last_row_the_next_repeat_is_drawn():
    assert [each[:2] for each in numbers(motif_plan(SIZE))] == [
        *(("yoke", number) for number in (1, 2, 3)),
        *(("below", number) for number in (1, 2, 3)),
    ]


def test_rounds_that_nothing_has_are_not_drawn():
    short = replace(SIZE, body_rounds=1, sleeve_rounds=0)
    assert numbers(motif_plan(short)) == [("yoke", 1, 1), ("yoke", 2, 2), ("yoke", 3, 3), ("below", 1, 1)]


def test_after_a_chart_that_is_worked_once_nothing_is_drawn():
    once = replace(ARROW, repeat="once")
    assert numbers(plan_of(SIZE, once, plain_colour=".")) == [("yoke", 1, 1), ("yoke", 2, 2), ("yoke", 3, 3)]


def test_a_chart_that_begins_below_the_split_is_drawn_there():
    assert numbers(motif_plan(SIZE, first_round=5)) == [("below", 2, 1), ("below", 3, 2), ("below", 4, 3)]


def test_a_chart_that_no_round_works_has_no_rounds():
    assert view(motif_plan(SIZE, first_round=8)).rounds == ()


def test_back_and_front_that_start_alike_are_one_body():
    assert view(motif_plan(SIZE)).rounds[1] == DrawnRound(
        "yoke", 2, 2, (Start("body", 5), Start("sleeve", 1)), ("increase",)
    )


def test_back_and_front_that_differ_anywhere_are_told_apart_throughout():
    later = replace(SIZE, increase_rounds=[IncreaseRound(3, 1, 0, 0)], body_rounds=0)
    found = view(motif_plan(later))
    assert found.sections == ("back", "front", "sleeve")
    assert found.rounds[0].starts == (Start("back", 1), Start("front", 1), Start("sleeve", 1))


def test_a_plain_section_has_no_column():
    starts = [each.starts for each in view(motif_plan(SIZE, minimum_width=MinimumWidth(6, 0))).rounds]
    assert starts[:2] == [(Start("body", None), Start("sleeve", 1)), (Start("body", 5), Start("sleeve", 1))]


def test_rounds_that_shape_have_signs():
    shaped = replace(
        SIZE,
        increase_rounds=[IncreaseRound(1, 1, 1, 0), IncreaseRound(3, 2, 2, 1)],
        underarm=5,
        body_shaping=[BodyShaping(1, -4), BodyShaping(2, 4)],
        sleeve_decrease_rounds=[2],
    )
    plan = motif_plan(shaped, seam_stitches=SeamStitches(1, 1))
    assert [each.signs for each in view(plan).rounds] == [
        ("increase",),
        (),
        ("double",),
        ("decrease",),
        ("increase", "decrease"),
        (),
    ]


def test_in_one_repeat_every_size_has_the_first_start_of_each_section():
    narrow = replace(SIZE, label="M", neck=Sections(3, 3, 3))
    plan = replace(motif_plan(SIZE, minimum_width=MinimumWidth(4, 0)), sizes=[SIZE, narrow])
    found = repeat_view(plan, place_charts(plan).sizes)
    assert [each.label for each in found.sizes] == ["S", "M"]
    # three stitches about column 3 are 2 to 4; the body of M is wide enough from round 2 on, with five
    assert found.sizes[0].starts == (FirstStart("body", 1, 1, 5, 0), FirstStart("sleeve", 1, 1, 5, 0))
    assert found.sizes[1].starts == (FirstStart("body", 2, 1, 5, 0), FirstStart("sleeve", 1, 2, 4, 0))


def test_in_one_repeat_the_plain_stitches_before_a_whole_motif_are_told():
    """Motifs of two in six columns: 1 2 | 3 4 | 5 6; about column 3.5, 4 stitches are plain, 3, 4 and plain."""
    chart = Chart(("654321",), {symbol: Colour(symbol) for symbol in "123456-"})
    size = ChartSize(label="S", rounds=1, neck=Sections(4, 4, 4))
    plan = plan_of(size, chart, middle(Fraction(7, 2)), partial_motifs="plain", motif_columns=2)
    assert repeat_view(plan, place_charts(plan).sizes).sizes[0].starts[0] == FirstStart("body", 1, 3, 4, 1)


def test_the_row_at_the_split_and_the_rows_left_are_told():
    plan = motif_plan(SIZE, first_round=2)
    [size] = repeat_view(plan, place_charts(plan).sizes).sizes
    assert (size.row_at_split, size.rows_left) == (2, 1)


def test_more_rounds_than_a_picture_holds_are_refused():
    long = replace(SIZE, rounds=1001, body_rounds=0, sleeve_rounds=0)
    with pytest.raises(ContradictionError) as caught:
        view(motif_plan(long))
    assert [(each.path, each.code) for each in caught.value.problems] == [(("sizes", 0), "too_many_rounds")]
