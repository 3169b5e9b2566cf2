"""Charts placed by hand: every expected picture, row and column here was drawn on paper from the craft's rules.

Where each stitch shows the number of its own column, a picture is its own proof: columns run straight up and
down, read from right to left.
"""

import random
from dataclasses import replace
from fractions import Fraction
from textwrap import dedent

import pytest

from grading_core.chart.fabric import Stretch, Windows, WorkedRound, survey
from grading_core.chart.grid import (
    Anchor,
    Chart,
    Colour,
    default_anchor,
    first_column,
    mirror_axes,
    neck_parity,
    progress,
    symmetry,
)
from grading_core.chart.placement import place_charts
from grading_core.chart.request import (
    BodyShaping,
    ChartPictureRequest,
    ChartRequest,
    ChartSize,
    MinimumWidth,
    SeamStitches,
)
from grading_core.chart.views import front_view, start_traces
from grading_core.errors import ContradictionError
from grading_core.gauge import Gauge
from grading_core.sections import IncreaseRound, Sections

GAUGE = Gauge.over(Fraction(20), Fraction(30), Fraction(10))
NUMBERED = Chart(("54321",), {symbol: Colour(symbol) for symbol in "12345-"})
"""Each stitch shows its column; it is read from the right, so column 1 is drawn last."""
ARROW = Chart(("..#..", ".###.", "#####"), {".": Colour("ground"), "#": Colour("motif")})


def middle(column):
    return Anchor(Fraction(column), Fraction(column), Fraction(column))


ON_COLUMN_3 = middle(3)


def plan_of(size, chart=NUMBERED, anchor=ON_COLUMN_3, **options):
    return ChartRequest(
        chart=chart,
        anchor=anchor,
        gauge=GAUGE,
        sizes=[size],
        **{"plain_colour": "-", "line_stitches": 0, "half_stitch": "refuse", **options},
    )


def motif_plan(size, **options):
    return plan_of(size, ARROW, plain_colour=".", **options)


def picture(text):
    """Rounds drawn as they hang from the needle, the first worked topmost; worn, they run to the right."""
    return [line.strip()[::-1] for line in dedent(text).strip().splitlines()]


def problems(plan):
    with pytest.raises(ContradictionError) as caught:
        place_charts(plan)
    return [problem.path for problem in caught.value.problems]


def remarks(plan):
    return [(remark.code, remark.path) for remark in place_charts(plan).remarks]


def test_five_stitches_start_with_column_1_and_seven_with_5():
    """The worked example of a five-column chart centred on its third column."""
    assert first_column(Fraction(3), 5, 5) == 1
    assert first_column(Fraction(3), 7, 5) == 5


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


def test_a_body_decrease_moves_the_start_on_by_one_column():
    size = ChartSize(
        label="S",
        rounds=1,
        neck=Sections(9, 9, 9),
        body_rounds=3,
        body_shaping=[BodyShaping(2, -4), BodyShaping(3, 4)],
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
    size = ChartSize(
        label="S", rounds=1, neck=Sections(5, 5, 9), sleeve_rounds=4, sleeve_decrease_rounds=[2, 4]
    )
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


def test_an_even_section_stands_on_a_half_column():
    """Columns 2 and 3 lie on either side of the centre: 4 3 . 2 1 as drawn, and the other way round as worn."""
    size = ChartSize(label="S", rounds=1, neck=Sections(4, 4, 4))
    assert (
        front_view(ChartPictureRequest(plan_of(size, anchor=middle(Fraction(5, 2))))).yoke[0].front == "1234"
    )


def test_a_section_stays_plain_until_its_minimum_width_is_reached_while_rows_run_on():
    size = ChartSize(label="S", rounds=3, neck=Sections(5, 5, 5), increase_rounds=[IncreaseRound(2, 1, 1, 1)])
    plan = plan_of(size, ARROW, minimum_width=MinimumWidth(body=7, sleeve=9), plain_colour=".")
    rounds = place_charts(plan).sizes[0].rounds
    assert [here.chart_row for here in rounds] == [1, 2, 3]
    assert [here.back.first_column for here in rounds] == [None, 5, 5]
    assert [here.sleeve.first_column for here in rounds] == [None, None, None]


def test_a_sleeve_decreased_below_the_minimum_width_is_plain_again_and_says_so():
    size = ChartSize(label="S", rounds=1, neck=Sections(5, 5, 7), sleeve_rounds=3, sleeve_decrease_rounds=[2])
    plan = motif_plan(size, minimum_width=MinimumWidth(sleeve=7))
    assert [here.first_column for here in place_charts(plan).sizes[0].sleeve.rounds] == [5, None, None]
    assert ("sleeve_plain_again", ("sizes", 0, "sleeve_decrease_rounds")) in remarks(plan)


def test_rounds_before_the_charts_first_are_plain():
    rounds = (
        place_charts(motif_plan(ChartSize(label="S", rounds=4, neck=Sections(5, 5, 5)), first_round=3))
        .sizes[0]
        .rounds
    )
    assert [here.chart_row for here in rounds] == [None, None, 1, 2]
    assert [here.back.first_column for here in rounds] == [None, None, 1, 1]


def test_the_lowest_drawn_row_is_worked_first_unless_told_otherwise():
    size = ChartSize(label="S", rounds=3, neck=Sections(5, 5, 5))
    upwards = front_view(ChartPictureRequest(motif_plan(size)))
    assert [seen.front for seen in upwards.yoke] == ["#####", ".###.", "..#.."]
    downwards = front_view(
        ChartPictureRequest(plan_of(size, replace(ARROW, first_row="top"), plain_colour="."))
    )
    assert [seen.front for seen in downwards.yoke] == ["..#..", ".###.", "#####"]


def test_a_chart_worked_once_leaves_the_rest_plain():
    size = ChartSize(label="S", rounds=2, neck=Sections(5, 5, 5), body_rounds=4, sleeve_rounds=2)
    placed = place_charts(plan_of(size, replace(ARROW, repeat="once"), plain_colour=".")).sizes[0]
    assert [here.chart_row for here in placed.body.rounds] == [3, None, None, None]
    assert placed.body.plain_rounds == 3
    assert placed.sleeve.plain_rounds == 1


# The split


@pytest.mark.parametrize(
    ("repeat", "first_round", "yoke", "worked", "left", "finishing"),
    [
        ("rows", 3, 60, 58, 14, 14),  # two repeats of 24 and 10 rows
        ("rows", 1, 48, 48, 0, 0),  # ends with the split
        ("rows", 61, 60, 0, 24, 24),  # begins with the body
        ("rows", 65, 60, 0, 24, 28),  # four plain body rounds first
        ("once", 41, 60, 20, 4, 4),
        ("once", 3, 60, 24, 0, 0),
    ],
)
def test_rows_worked_and_left_at_the_split(repeat, first_round, yoke, worked, left, finishing):
    chart = Chart(("#.",) * 24, {"#": Colour(""), ".": Colour("")}, repeat=repeat)
    come = progress(chart, first_round, yoke)
    assert (come.yoke_chart_rows, come.rows_left, come.finishing_rounds) == (worked, left, finishing)


def test_a_yoke_changed_as_told_ends_with_the_charts_last_row():
    for repeat in ("rows", "once"):
        chart = Chart(("#",) * 7, {"#": Colour("")}, repeat=repeat)
        for first_round in range(1, 12):
            for rounds in range(1, 40):
                come = progress(chart, first_round, rounds)
                assert progress(chart, first_round, rounds + come.deeper).rows_left == 0
                if come.shallower is None:
                    assert rounds - first_round + 1 < 7
                else:
                    assert progress(chart, first_round, rounds - come.shallower).last_chart_row == 7


def test_a_cropped_body_is_told_the_row_at_which_it_stops():
    size = ChartSize(label="S", rounds=1, neck=Sections(5, 5, 5), body_rounds=1, sleeve_rounds=2)
    placed = place_charts(motif_plan(size))
    assert placed.sizes[0].shortest_body.rounds == 2
    assert placed.sizes[0].shortest_body.length_cm == Fraction(2, 3)
    assert [(r.code, r.path) for r in placed.remarks] == [("body_cuts_chart", ("sizes", 0, "body_rounds"))]
    assert "row 2 of 3" in placed.remarks[0].message


# Floats


def ring(stitches):
    """A round whose every stitch is drawn."""
    return WorkedRound(None, tuple(Stretch(1, None, colour) for colour in stitches))


def longest(*rounds):
    found = survey(Windows([]), map(ring, rounds)).rounds
    return [(here.longest_float, here.colour) for here in found]


def test_a_float_lies_between_two_stitches_of_its_colour():
    assert longest("..#....#...") == [(4, "#")]


def test_one_stitch_of_a_colour_carries_no_float_in_its_round():
    assert longest("......#....") == [(1, ".")]


def test_a_round_of_one_colour_has_no_float():
    assert longest("........") == [(0, None)]


def test_a_float_over_the_rounds_start_joins_both_ends_and_counts_for_the_later_round():
    assert longest("..#.....", "....#...") == [(1, "."), (9, "#")]


def test_no_float_passes_a_round_that_does_not_use_the_colour():
    assert longest("..#.....", "........", "....#...") == [(1, "."), (0, None), (1, ".")]


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


def test_rounds_of_more_than_two_colours_are_named():
    chart = Chart(("#o", ".."), {".": Colour(""), "#": Colour(""), "o": Colour("")}, first_row="top")
    size = ChartSize(label="S", rounds=3, neck=Sections(3, 3, 3))
    plan = plan_of(size, chart, middle(1), line_stitches=1, plain_colour=".")
    placed = place_charts(plan)
    assert placed.sizes[0].rounds_over_two_colours.yoke == (1, 3)
    assert [here.colours for here in placed.sizes[0].rounds] == [3, 1, 3]
    assert "more_than_two_colours" in {remark.code for remark in placed.remarks}


# Mirrors and parity


@pytest.mark.parametrize(
    ("row", "axes", "kind"),
    [
        ("..#..", [3, 5.5], "both"),
        (".##.", [2.5, 4.5], "between_stitches"),
        ("...#", [1, 3], "about_a_stitch"),
        (".#.#", [1, 2, 3, 4], "about_a_stitch"),
        ("..#.##", [], "none"),
    ],
)
def test_the_axes_of_small_charts(row, axes, kind):
    found = mirror_axes(Chart((row,), {}))
    assert [float(axis) for axis in found] == axes
    assert symmetry(found) == kind


def test_axes_are_those_about_which_every_column_meets_its_equal():
    draw = random.Random(1)
    for _ in range(400):
        width, height = draw.randint(1, 9), draw.randint(1, 3)
        half = ["".join(draw.choices("#.", k=height)) for _ in range(width // 2 + 1)]
        columns = (half + half[::-1])[:width]
        columns = columns[draw.randint(0, width) :] + columns[: draw.randint(0, width)]
        columns = (columns * width)[:width] or [half[0]] * width
        rows = tuple("".join(column[row] for column in columns) for row in range(height))
        from_right = [columns[width - 1 - place] for place in range(width)]
        expected = [
            Fraction(twice, 2)
            for twice in range(2, 2 * width + 2)
            if all(
                from_right[(column - 1) % width] == from_right[(twice - column - 1) % width]
                for column in range(1, width + 1)
            )
        ]
        assert list(mirror_axes(Chart(rows, {}))) == expected


def test_a_section_centred_on_an_axis_looks_alike_from_both_sides():
    size = ChartSize(label="S", rounds=3, neck=Sections(5, 5, 5), increase_rounds=[IncreaseRound(2, 1, 1, 1)])
    view = front_view(ChartPictureRequest(motif_plan(size)))
    assert all(seen.front == seen.front[::-1] for seen in view.yoke)
    assert all(seen.second_sleeve == seen.first_sleeve[::-1] for seen in view.yoke)


def test_an_anchor_off_the_mirror_axis_gets_a_word():
    plan = motif_plan(ChartSize(label="S", rounds=1, neck=Sections(5, 5, 5)))
    off = replace(plan, anchor=Anchor(Fraction(3), Fraction(2), Fraction(3)))
    assert ("anchor_off_mirror_axis", ("anchor", "front")) in remarks(off)
    assert "anchor_off_mirror_axis" not in dict(remarks(plan))


def test_a_whole_anchor_needs_odd_sections_and_a_half_even_ones():
    assert neck_parity(Fraction(3)) == "odd"
    assert neck_parity(Fraction(7, 2)) == "even"


def test_the_default_anchor_is_the_mirror_axis_nearest_to_the_middle():
    assert default_anchor(ARROW) == 3
    assert default_anchor(ARROW, "even") == Fraction(11, 2)
    assert default_anchor(Chart(("..#.##",), {})) == Fraction(7, 2)


# Contradictions


def test_an_even_section_on_a_whole_column_is_refused_with_its_place():
    size = ChartSize(label="S", rounds=1, neck=Sections(6, 5, 4))
    assert problems(plan_of(size)) == [("sizes", 0, "neck", "back"), ("sizes", 0, "neck", "sleeve")]


def test_an_accepted_shift_centres_the_section_half_a_stitch_before_its_column():
    size = ChartSize(label="S", rounds=1, neck=Sections(6, 5, 5))
    plan = plan_of(size, half_stitch="shift")
    # back: 6 stitches on column 2.5, so 5 | 1 2 3 4 5 in working order
    assert place_charts(plan).sizes[0].rounds[0].back.first_column == 5
    assert ("half_stitch_off_centre", ("sizes", 0, "neck", "back")) in remarks(plan)


def test_an_underarm_that_cannot_be_shared_is_refused_once():
    size = ChartSize(label="S", rounds=1, neck=Sections(5, 5, 5), underarm=4, body_rounds=1, sleeve_rounds=1)
    assert problems(plan_of(size, seam_stitches=SeamStitches(1, 0))) == [("sizes", 0, "underarm")]


def test_by_default_the_seam_takes_the_odd_underarm_stitch():
    for underarm in (4, 5):
        size = ChartSize(label="S", rounds=1, neck=Sections(5, 5, 5), underarm=underarm, body_rounds=1)
        assert place_charts(plan_of(size)).sizes[0].body.rounds[0].back.stitches == 9


def test_a_section_that_never_shows_the_chart_may_have_any_count():
    size = ChartSize(label="S", rounds=1, neck=Sections(5, 5, 4))
    plan = plan_of(size, minimum_width=MinimumWidth(sleeve=99))
    assert place_charts(plan).sizes[0].rounds[0].sleeve.first_column is None


def test_every_contradiction_is_named_in_the_order_of_the_request():
    size = ChartSize(
        label="S",
        rounds=4,
        neck=Sections(5, 5, 5),
        increase_rounds=[IncreaseRound(2, 1, 1, 1), IncreaseRound(2, 1, 1, 1), IncreaseRound(5, 1, 1, 1)],
        underarm=0,
        body_rounds=4,
        body_shaping=[BodyShaping(5, -4), BodyShaping(1, -2)],
        sleeve_rounds=3,
        sleeve_decrease_rounds=[1, 0],
    )
    plan = ChartRequest(
        chart=Chart(("..#", ".x", "..."), {".": Colour(""), "#": Colour("")}),
        anchor=Anchor(Fraction(3), Fraction(4), Fraction(1, 3)),
        gauge=GAUGE,
        sizes=[size],
        first_round=0,
        line_stitches=2,
        line_to_body=3,
        seam_colour="s",
    )
    assert problems(plan) == [
        ("chart", "rows", 1),
        ("chart", "rows", 1),
        ("anchor", "front"),
        ("anchor", "sleeve"),
        ("first_round",),
        ("line_to_body",),
        ("seam_colour",),
        ("sizes", 0, "increase_rounds", 1, "round"),
        ("sizes", 0, "increase_rounds", 2, "round"),
        ("sizes", 0, "body_shaping", 0, "round"),
        ("sizes", 0, "body_shaping", 1, "stitches"),
        ("sizes", 0, "sleeve_decrease_rounds", 1),
    ]


def test_a_sleeve_decreased_to_nothing_is_a_contradiction():
    size = ChartSize(
        label="S", rounds=1, neck=Sections(4, 4, 4), sleeve_rounds=3, sleeve_decrease_rounds=[1, 3]
    )
    plan = plan_of(size, anchor=middle(Fraction(5, 2)))
    assert problems(plan) == [("sizes", 0, "sleeve_decrease_rounds")]


def test_a_seam_wider_than_the_underarm_leaves_no_body():
    size = ChartSize(label="S", rounds=1, neck=Sections(5, 5, 5), underarm=0, body_rounds=1)
    assert problems(plan_of(size, seam_stitches=SeamStitches(6, 0))) == [("sizes", 0, "underarm")] * 2


# Pictures


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
