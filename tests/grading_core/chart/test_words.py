"""A placed chart in sentences: columns and rows as laid out on paper."""

from dataclasses import replace
from fractions import Fraction

import pytest

from grading_core.chart.grid import Anchor, Chart, Colour
from grading_core.chart.placement import place_charts
from grading_core.chart.request import BodyShaping, ChartSize, MinimumWidth
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
BOTH = [SMALL, LARGE]


def told(plan, *, seams=False, short_rows=False, drop_rows=None, for_children=False):
    sizes = place_charts(plan).sizes
    return run_instructions(
        plan,
        sizes,
        before_start=tuple([1 for _ in sizes]),
        seams=seams,
        short_rows=short_rows,
        drop_rows=drop_rows or tuple([None for _ in sizes]),
        for_children=for_children,
    )


def values(sentences, id):
    return [dict(sentence.values) for sentence in sentences if sentence.id == id]


def ids(sentences):
    return {sentence.id for sentence in sentences}


def test_row_1_is_worked_in_the_first_round_that_is_asked():
    assert values(told(motif_plan(SMALL, first_round=3)), "chart.rows") == [{"round": 3}]


def test_sections_that_begin_with_the_same_columns_are_told_together_in_size_runs():
    # about column 3 of 5: five stitches begin with column 1, seven with 5, three with 2
    plan = replace(motif_plan(SMALL), sizes=BOTH)
    assert values(told(plan), "chart.start") == [
        {"round": (1, 1), "column": (1, 5), "sections": ("back", "front")},
        {"round": (1, 1), "column": (2, 2), "sections": ("sleeve",)},
    ]


def test_a_section_begins_in_the_round_in_which_it_is_wide_enough():
    # the sleeve has 5 stitches from round 2 on
    sentences = told(motif_plan(SMALL, minimum_width=MinimumWidth(sleeve=5)))
    assert {"round": (2,), "column": (1,), "sections": ("sleeve",)} in values(sentences, "chart.start")
    assert values(sentences, "chart.narrow_sleeve") == [{"stitches": 5, "colour": "ground"}]
    assert "chart.narrow_body" not in ids(sentences)


def test_the_first_column_moves_back_before_column_1_to_the_chart_s_last():
    assert values(told(motif_plan(SMALL)), "chart.moves_back") == [{"width": 5}]


@pytest.mark.parametrize(
    ("shaping", "moves"),
    [
        ({}, False),
        ({"sleeve_decrease_rounds": [2]}, True),
        ({"body_shaping": [BodyShaping(2, -4)]}, True),
        ({"body_shaping": [BodyShaping(2, 4)]}, False),
    ],
)
def test_that_it_moves_on_is_told_where_there_are_decreases(shaping, moves):
    assert ("chart.moves_on" in ids(told(motif_plan(replace(SMALL, **shaping))))) == moves


def test_below_the_split_rows_and_columns_run_straight_on():
    # rows 1 2 3 1 in the yoke, so row 2; seven stitches and one of the underarm at each side begin with column 4, and
    # a sleeve of five and one at each side with column 5
    sentences = told(motif_plan(SMALL))
    assert values(sentences, "chart.body") == values(sentences, "chart.sleeve") == [{"row": (2,)}]
    assert values(sentences, "chart.body_back") == [{"before": (1,), "column": (4,)}]
    assert values(sentences, "chart.body_front") == [{"before": (1,), "column": (4,)}]
    assert values(sentences, "chart.sleeve_start") == [{"before": (1,), "column": (5,)}]


def test_a_chart_that_ends_in_the_yoke_of_a_size_leaves_a_dash_below():
    # three rows from round 2 on end with round 4: the small yoke, one round shorter, works the last in body and sleeves
    once = replace(
        motif_plan(SMALL, first_round=2), chart=replace(ARROW, repeat="once"), sizes=[replace(SMALL, rounds=3), SMALL]
    )
    once = replace(once, sizes=[once.sizes[0], replace(once.sizes[1], label="L")])
    assert values(told(once), "chart.body") == [{"row": (3, None)}]
    assert [each["before"] for each in values(told(once), "chart.body_back")] == [(1, None)]


def test_the_chart_begins_again_or_ends_as_it_repeats():
    assert values(told(motif_plan(SMALL)), "chart.again") == [{"height": 3}]
    once = replace(motif_plan(SMALL), chart=replace(ARROW, repeat="once"))
    assert values(told(once), "chart.once") == [{"height": 3}]


def test_a_center_on_a_column_is_told_for_all_sections_that_have_it():
    sentences = told(motif_plan(SMALL))
    assert values(sentences, "chart.center") == [{"column": 3, "sections": ("back", "front", "sleeve")}]


@pytest.mark.parametrize(("anchor", "between"), [(Fraction(5, 2), (2, 3)), (Fraction(11, 2), (5, 1))])
def test_a_center_between_two_columns_names_both(anchor, between):
    plan = replace(motif_plan(replace(SMALL, neck=Sections(5, 5, 4))), anchor=Anchor(Fraction(3), Fraction(3), anchor))
    (center,) = values(told(plan), "chart.center_between")
    assert (center["column"], center["next"]) == between
    assert center["sections"] == ("sleeve",)


def test_lines_and_seams_are_told_in_their_colours_where_there_are_any():
    with_all = told(motif_plan(SMALL, line_stitches=2, line_colour="#", seam_colour="."), seams=True)
    assert values(with_all, "chart.lines") == [{"colour": "motif", "rounds": "all"}]
    assert values(with_all, "chart.seams") == [{"colour": "ground", "rounds": "all", "seam": "knit"}]
    assert not {"chart.lines", "chart.seams"} & ids(told(motif_plan(SMALL, line_stitches=0)))


@pytest.mark.parametrize(
    ("first_round", "repeat", "places"),
    [(1, "rows", ()), (2, "rows", ("before",)), (1, "once", ("after",)), (2, "once", ("before", "after"))],
)
def test_rounds_without_the_chart_are_plain(first_round, repeat, places):
    plan = replace(motif_plan(SMALL, first_round=first_round), chart=replace(ARROW, repeat=repeat))
    assert values(told(plan), "chart.plain") == [{"places": places, "colour": "ground"}] * bool(places)


def test_short_rows_are_plain_where_there_are_any():
    assert values(told(motif_plan(SMALL), short_rows=True), "chart.plain") == [
        {"places": ("short_rows",), "colour": "ground"}
    ]


ONCE = replace(ARROW, repeat="once")


def test_each_colour_is_told_with_its_places():
    plan = replace(motif_plan(SMALL, first_round=2, below_colour="#"), chart=ONCE)
    assert values(told(plan, short_rows=True), "chart.plain") == [
        {"places": ("before", "short_rows"), "colour": "ground"},
        {"places": ("after",), "colour": "motif"},
    ]


@pytest.mark.parametrize(("own", "rounds"), [(None, "last_row"), (".", "all"), ("#", "all")])
def test_lines_and_seams_without_a_colour_of_their_own_change_it_after_the_chart(own, rounds):
    colours = {"below_colour": "#", "line_colour": own, "seam_colour": own}
    sentences = told(replace(motif_plan(SMALL, line_stitches=2, **colours), chart=ONCE), seams=True)
    assert [each["rounds"] for each in values(sentences, "chart.lines")] == [rounds]
    assert [each["rounds"] for each in values(sentences, "chart.seams")] == [rounds]


def test_seam_stitches_that_are_purled_are_told():
    assert [each["seam"] for each in values(told(motif_plan(SMALL, seam="purl"), seams=True), "chart.seams")] == [
        "purl"
    ]


GROWING = ChartSize(
    label="S",
    rounds=6,
    neck=Sections(5, 5, 3),
    increase_rounds=[IncreaseRound(2, 2, 2, 1), IncreaseRound(4, 3, 3, 0)],
    body_rounds=1,
    sleeve_rounds=1,
)
"""One motif of five in five stitches, three from fifteen on: back and front in round 4, a sleeve none until round 2."""


def test_the_rounds_from_which_there_are_whole_motifs_are_told():
    later = replace(GROWING, label="L", increase_rounds=[IncreaseRound(3, 1, 1, 1), IncreaseRound(5, 4, 4, 0)])
    plan = replace(motif_plan(GROWING, partial_motifs="plain"), sizes=[GROWING, later])
    sentences = told(plan)
    assert values(sentences, "chart.whole_chart") == [{"columns": 5, "colour": "ground"}]
    # the second and the third motif have room at once, so only the third is told
    assert values(sentences, "chart.motifs") == [
        {"round": (1, 1), "motifs": 1, "sections": ("back", "front")},
        {"round": (4, 5), "motifs": 3, "sections": ("back", "front")},
        {"round": (2, 3), "motifs": 1, "sections": ("sleeve",)},
    ]
    assert values(sentences, "chart.body_motifs") == [{"motifs": (3, 3), "sections": ("back", "front")}]
    assert values(sentences, "chart.sleeve_motifs") == [{"motifs": (1, 1)}]


def test_a_size_without_room_for_a_motif_has_a_dash():
    narrow = replace(GROWING, label="XS", increase_rounds=[])
    plan = replace(motif_plan(GROWING, partial_motifs="plain"), sizes=[narrow, GROWING])
    assert {"round": (None, 4), "motifs": 3, "sections": ("back", "front")} in values(told(plan), "chart.motifs")
    assert values(told(plan), "chart.sleeve_motifs") == [{"motifs": (0, 1)}]


def test_sections_without_room_for_any_motif_are_told_none():
    narrow = replace(GROWING, neck=Sections(3, 3, 3), increase_rounds=[])
    sentences = told(motif_plan(narrow, partial_motifs="plain"))
    assert "chart.whole_chart" in ids(sentences)
    assert not {"chart.motifs", "chart.body_motifs", "chart.sleeve_motifs"} & ids(sentences)


def test_motifs_narrower_than_the_chart_are_told_by_their_columns():
    chart = Chart(("#..#..",), {".": Colour("ground"), "#": Colour("motif")})
    plan = replace(motif_plan(GROWING, partial_motifs="plain", motif_columns=3), chart=chart)
    assert values(told(plan), "chart.whole_motifs") == [{"columns": 3, "colour": "ground"}]


def test_columns_are_told_of_the_stitches_at_the_edge_even_where_these_are_plain():
    """Nine stitches about column 3 stand on 4 5 1 2 3 4 5 1 2, and only 1 to 5 are worked from the chart."""
    size = replace(GROWING, neck=Sections(9, 9, 9), increase_rounds=[])
    sentences = told(motif_plan(size, partial_motifs="plain"))
    assert [each["column"] for each in values(sentences, "chart.start")] == [(4,)]
    assert [each["column"] for each in values(sentences, "chart.body_back")] == [(4,)]
    assert [each["column"] for each in values(sentences, "chart.sleeve_start")] == [(4,)]


def test_nothing_is_told_of_motifs_where_they_may_be_cut_or_none_can_be():
    motifs = {"chart.whole_chart", "chart.whole_motifs", "chart.motifs", "chart.body_motifs", "chart.sleeve_motifs"}
    assert not motifs & ids(told(motif_plan(GROWING)))
    assert not motifs & ids(told(motif_plan(GROWING, partial_motifs="plain", motif_columns=1)))


def test_a_front_in_two_parts_is_told_the_column_with_which_it_ends():
    # five stitches about column 3 are columns 1 to 5; the large size has no drop
    plan = replace(motif_plan(SMALL), sizes=BOTH)
    sentences = told(plan, drop_rows=(2, None))
    assert values(sentences, "chart.parted") == [{"round": (1, None), "column": (5, None)}]
    assert "chart.flat" in ids(sentences)


def test_a_front_that_is_whole_before_the_chart_begins_is_not_told_in_parts():
    assert not {"chart.parted", "chart.flat"} & ids(told(motif_plan(SMALL, first_round=3), drop_rows=(2,)))


SEVEN = Chart(("#......",), {".": Colour("ground"), "#": Colour("motif")})
"""A motif stitch in seven: six stitches between two of them."""
EVEN = replace(SMALL, neck=Sections(7, 7, 7), increase_rounds=[], underarm=0)
"""Sections as wide as that chart, on which it runs on from one to the next."""


@pytest.mark.parametrize(("limit", "caught"), [(5, [{"stitches": 5}]), (6, [])])
def test_floats_above_the_limit_are_to_be_caught(limit, caught):
    plan = replace(motif_plan(EVEN), chart=SEVEN, float_limit=limit)
    assert values(told(plan), "chart.floats") == caught


def test_a_garment_for_children_has_the_caution_about_floats():
    # common practice: caught from 5 stitches or 2.5 cm on
    caution = [{"stitches": 5, "length": Fraction(5, 2)}]
    assert values(told(motif_plan(SMALL, float_limit=9), for_children=True), "chart.floats_young") == caution
    assert "chart.floats_young" not in ids(told(motif_plan(SMALL)))


def test_a_chart_without_floats_has_no_caution():
    plain = Chart(("#####",), {"#": Colour("motif")})
    plan = replace(motif_plan(SMALL), chart=plain, plain_colour=None)
    assert "chart.floats_young" not in ids(told(plan, for_children=True))
