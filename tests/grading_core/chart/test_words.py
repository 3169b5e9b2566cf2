"""A placed chart in sentences: columns and rows as laid out on paper."""

from dataclasses import replace
from fractions import Fraction

from grading_core.chart.grid import Anchor
from grading_core.chart.placement import place_charts
from grading_core.chart.request import ChartSize, MinimumWidth
from grading_core.chart.words import run_instructions
from grading_core.sections import IncreaseRound, Sections
from tests.grading_core.chart.small_plans import ARROW, motif_plan

SMALL = ChartSize(
    label="S",
    rounds=4,
    neck=Sections(5, 5, 3),
    increase_rounds=[IncreaseRound(2, 1, 1, 1)],
    underarm=2,
    body_rounds=3,
    sleeve_rounds=3,
)
LARGE = replace(SMALL, label="L", neck=Sections(7, 7, 3), rounds=5)


def told(plan, *, seams=False, dropped_front=False):
    return run_instructions(plan, place_charts(plan).sizes, seams=seams, dropped_front=dropped_front)


def test_each_section_is_told_its_first_column_in_size_runs():
    # about column 3 of 5: five stitches begin with column 1, seven with 5, three with 2
    plan = replace(motif_plan(SMALL), sizes=[SMALL, LARGE])
    assert "In round 1 the back and the front begin with column 1 (5)." in told(plan)
    assert "In round 1 each sleeve begins with column 2." in told(plan)


def test_a_section_begins_in_the_round_in_which_it_is_wide_enough():
    plan = motif_plan(SMALL, minimum_width=MinimumWidth(sleeve=5))
    # the sleeve has 5 stitches from round 2 on
    assert "In round 2 each sleeve begins with column 1." in told(plan)
    assert "A section of the sleeves is plain, in ground, while it has fewer than 5 stitches." in told(plan)


def test_below_the_split_rows_and_columns_run_straight_on():
    # rows 1 2 3 1 in the yoke, so row 2; seven stitches and one of the underarm at each side begin with column 4, and
    # a sleeve of five and one at each side with column 5
    body, sleeve = told(motif_plan(SMALL))[-2:]
    assert body.startswith("Round 1 of the body is row 2, ")
    assert body.endswith(": from its middle on the back and the front begin with column 4.")
    assert sleeve.startswith("Round 1 of each sleeve is row 2, ")
    assert sleeve.endswith(": from its middle on the sleeve begins with column 5.")


def test_the_chart_begins_again_or_ends_as_it_repeats():
    assert "after row 3 begin again with row 1" in told(motif_plan(SMALL))[0]
    once = replace(motif_plan(SMALL), chart=replace(ARROW, repeat="once"))
    assert "after row 3 go on without the chart" in told(once)[0]


def test_a_centre_lies_on_a_column_or_between_two():
    assert told(motif_plan(SMALL))[1] == "It lies with column 3 on the centre of every section."
    apart = replace(
        motif_plan(replace(SMALL, neck=Sections(5, 5, 4))), anchor=Anchor(Fraction(3), Fraction(3), Fraction(5, 2))
    )
    assert told(apart)[1].endswith("the place after column 2 on the centre of each sleeve.")


def test_lines_seams_and_a_dropped_front_are_told_where_there_are_any():
    with_all = " ".join(told(motif_plan(SMALL, line_stitches=2), seams=True, dropped_front=True))
    for words in ("raglan lines are worked in ground", "seam stitches below the split", "wrong-side rows"):
        assert words in with_all
        assert words not in " ".join(told(motif_plan(SMALL)))
