"""Contradictions of a chart and its sizes. `tests/service/test_wrong_places.py` has them beside one another."""

from dataclasses import replace
from fractions import Fraction

import pytest

from grading_core.chart.grid import Anchor, Chart, Colour
from grading_core.chart.problems import picture_problems, placement_problems, request_problems
from grading_core.chart.request import BodyShaping, ChartPictureRequest, ChartSize
from grading_core.errors import sound
from grading_core.limits import MAX_ROUNDS_IN_ALL
from grading_core.sections import IncreaseRound, Sections
from grading_core.unknown import unknown
from tests.grading_core.chart.small_plans import motif_plan

SIZE = ChartSize(
    label="S",
    rounds=6,
    neck=Sections(9, 9, 5),
    increase_rounds=(IncreaseRound(2, 1, 1, 1),),
    underarm=3,
    body_rounds=8,
    sleeve_rounds=8,
)
PLAN = motif_plan(SIZE)


def paths(problems):
    return [problem.path for problem in problems]


def test_a_sound_plan_makes_every_round_of_its_sizes():
    (layout,) = sound(placement_problems(PLAN)).values()
    assert (len(layout.yoke.rows), len(layout.body.rows), len(layout.sleeve.rows)) == (6, 8, 8)


@pytest.mark.parametrize(
    ("change", "expected"),
    [
        ({"first_round": 0}, [("first_round",)]),
        ({"line_to_body": 1}, [("line_to_body",)]),
        ({"seam_colour": "?"}, [("seam_colour",)]),
        ({"below_colour": "?"}, [("below_colour",)]),
        ({"exchange": (".", "?")}, [("exchange", 1)]),
        ({"exchange": ("#", "#")}, [("exchange", 1)]),
        ({"motif_columns": 2}, [("motif_columns",)]),
        ({"anchor": Anchor(Fraction(3), Fraction(1, 3), Fraction(6))}, [("anchor", "front"), ("anchor", "sleeve")]),
        ({"chart": Chart(("..#", "...."), {".": Colour("ground")})}, [("chart", "rows", 0), ("chart", "rows", 1)]),
        ({"chart": Chart((), {})}, [("chart", "rows")]),
    ],
)
def test_a_wrong_option_is_told_where_it_stands(change, expected):
    assert set(expected) <= set(paths(request_problems(replace(PLAN, **change))))


@pytest.mark.parametrize(
    ("change", "expected"),
    [
        ({"increase_rounds": (IncreaseRound(7, 1, 1, 1),)}, [("increase_rounds", 0, "round")]),
        ({"body_shaping": [BodyShaping(3, -4), BodyShaping(3, -2)]}, [("body_shaping", 1, "round")]),
        ({"sleeve_decrease_rounds": (2, 9)}, [("sleeve_decrease_rounds", 1)]),
        # 9 + 2 + 3 - 1 = 13 stitches of each half, 5 + 2 + 3 - 1 = 9 of a sleeve: one body round takes 7 of each half
        ({"body_shaping": [BodyShaping(3, -28)]}, [("body_shaping",)]),
        ({"sleeve_decrease_rounds": (1, 2, 3, 4, 5)}, [("sleeve_decrease_rounds",)]),
        ({"neck": Sections(9, 9, 5), "underarm": 0, "increase_rounds": ()}, []),
    ],
)
def test_a_wrong_number_of_a_size_is_told_where_it_stands(change, expected):
    found = paths(request_problems(replace(PLAN, sizes=[replace(SIZE, **change)])))
    assert set(found) >= {("sizes", 0, *path) for path in expected}
    assert bool(found) == bool(expected)


def test_more_rounds_than_an_answer_holds_are_told_even_where_some_are_unknown():
    large = replace(SIZE, rounds=MAX_ROUNDS_IN_ALL)
    plan = replace(PLAN, sizes=[replace(SIZE, rounds=unknown(), label="S"), replace(large, label="M")])
    assert paths(request_problems(plan)) == [("sizes",)]


def test_motifs_may_be_as_wide_as_the_chart_or_divide_it():
    for columns in (1, 5):
        assert paths(request_problems(replace(PLAN, motif_columns=columns))) == []


def test_wrong_colours_leave_the_rest_of_the_plan_to_be_judged():
    even = replace(SIZE, neck=Sections(8, 9, 5))
    plan = replace(PLAN, sizes=[even], exchange=("?", unknown()), below_colour=unknown(), plain_colour=None)
    assert paths(placement_problems(plan)) == [("exchange", 0), ("sizes", 0, "neck", "back")]


def test_no_rounds_are_laid_out_where_they_are_too_many():
    found = list(placement_problems(replace(PLAN, sizes=[replace(SIZE, rounds=10**9)])))
    assert paths(found) == [("sizes",)]


def test_a_picture_needs_only_its_own_size_centred():
    even = replace(SIZE, label="M", neck=Sections(8, 8, 4))
    plan = replace(PLAN, sizes=[SIZE, even])
    assert paths(picture_problems(ChartPictureRequest(plan, "S"))) == []
    assert {path[:3] for path in paths(picture_problems(ChartPictureRequest(plan, "M")))} == {("sizes", 1, "neck")}
    assert paths(picture_problems(ChartPictureRequest(plan, "L"))) == [("size",)]
