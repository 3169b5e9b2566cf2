"""Words of warning, and centres half a stitch off."""

from dataclasses import replace
from fractions import Fraction

from grading_core.chart.grid import Anchor
from grading_core.chart.placement import place_charts
from grading_core.chart.request import ChartSize, MinimumWidth, SeamStitches
from grading_core.gauge import Gauge
from grading_core.sections import Sections
from tests.grading_core.chart.small_plans import GAUGE, motif_plan, plan_of, problems, remarks


def test_a_sleeve_decreased_below_the_minimum_width_is_plain_again_and_says_so():
    size = ChartSize(label="S", rounds=1, neck=Sections(5, 5, 7), sleeve_rounds=3, sleeve_decrease_rounds=[2])
    plan = motif_plan(size, minimum_width=MinimumWidth(sleeve=7))
    assert [here.first_column for here in place_charts(plan).sizes[0].sleeve.rounds] == [5, None, None]
    (again,) = [each for each in place_charts(plan).remarks if each.code == "sleeve_plain_again"]
    assert again.path == ("sizes", 0, "sleeve_decrease_rounds")
    assert again.message.values == {"round": 2, "lacks": "width"}


def test_a_sleeve_that_loses_its_last_whole_motif_is_plain_again_and_says_so():
    size = ChartSize(label="S", rounds=1, neck=Sections(5, 5, 7), sleeve_rounds=5, sleeve_decrease_rounds=[2, 4])
    plan = motif_plan(size, partial_motifs="plain")
    (again,) = [each.message for each in place_charts(plan).remarks if each.code == "sleeve_plain_again"]
    assert again.values == {"round": 4, "lacks": "motif"}


def test_a_cropped_body_is_told_the_row_at_which_it_stops():
    size = ChartSize(label="S", rounds=1, neck=Sections(5, 5, 5), body_rounds=1, sleeve_rounds=2)
    placed = place_charts(motif_plan(size))
    assert placed.sizes[0].shortest_body.rounds == 2
    assert placed.sizes[0].shortest_body.length_cm == Fraction(2, 3)
    assert [(r.code, r.path) for r in placed.remarks] == [("body_cuts_chart", ("sizes", 0, "body_rounds"))]
    told = placed.remarks[0].message.values
    assert (told["row"], told["rows"], told["finishing"]) == (2, 3, 2)


def test_floats_in_a_childs_garment_are_a_caution_whatever_the_limit():
    size = ChartSize(label="S", rounds=1, neck=Sections(5, 5, 3))
    plan = motif_plan(size, line_stitches=2, minimum_width=MinimumWidth(0, 5))
    assert remarks(plan) == [("long_float", None)]
    assert remarks(replace(plan, float_limit=7)) == []
    assert remarks(replace(plan, float_limit=7, for_children=True)) == [("float_can_catch_fingers", None)]


def test_a_short_float_of_thick_yarn_is_long_for_a_child():
    """4 stitches at 14 to 10 cm are 2.9 cm, above the 2.5 cm of common practice."""
    thick = Gauge.over(Fraction(14), Fraction(20), Fraction(10))
    size = ChartSize(label="S", rounds=3, neck=Sections(5, 5, 5))
    plan = replace(motif_plan(size), gauge=thick, for_children=True)
    assert place_charts(plan).sizes[0].longest_float.stitches == 4
    assert remarks(plan) == [("float_can_catch_fingers", None)]
    assert remarks(replace(plan, gauge=GAUGE)) == []


def test_an_anchor_off_the_mirror_axis_gets_a_word():
    plan = motif_plan(ChartSize(label="S", rounds=1, neck=Sections(5, 5, 5)))
    off = replace(plan, anchor=Anchor(Fraction(3), Fraction(2), Fraction(3)))
    assert ("anchor_off_mirror_axis", ("anchor", "front")) in remarks(off)
    assert "anchor_off_mirror_axis" not in dict(remarks(plan))


def test_an_even_section_on_a_whole_column_is_refused_with_its_place():
    size = ChartSize(label="S", rounds=1, neck=Sections(6, 5, 4))
    assert problems(plan_of(size)) == [("sizes", 0, "neck", "back"), ("sizes", 0, "neck", "sleeve")]


def test_an_underarm_that_cannot_be_shared_is_refused_once():
    size = ChartSize(label="S", rounds=1, neck=Sections(5, 5, 5), underarm=4, body_rounds=1, sleeve_rounds=1)
    assert problems(plan_of(size, seam_stitches=SeamStitches(1, 0))) == [("sizes", 0, "underarm")]
