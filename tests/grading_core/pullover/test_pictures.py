"""What of a pullover is drawn: the sizes that are asked for, with the numbers that they have among all."""

from dataclasses import replace
from fractions import Fraction

import pytest

from grading_core.chart.grid import Chart, Colour
from grading_core.errors import ContradictionError
from grading_core.gauge import Gauge
from grading_core.pullover import garment, pictures
from grading_core.pullover.garment import garment_problems
from grading_core.pullover.grade import grade_pullover
from grading_core.pullover.pictures import (
    PictureRequest,
    PictureWishes,
    picture_chart,
    picture_pattern,
    picture_pullover,
)
from grading_core.pullover.request import ChartWishes, Gauges, PulloverRequest

PULLOVER = PulloverRequest(
    gauges=Gauges(Gauge.over(Fraction(22), Fraction(31), Fraction(10))), body_table="women", labels=("S", "M", "L")
)


def problems(draw, **options):
    with pytest.raises(ContradictionError) as caught:
        draw(PictureRequest(**options))
    return {(problem.path, problem.code) for problem in caught.value.problems}


def test_without_a_size_all_of_them_are_drawn():
    assert picture_pullover(PictureRequest(pullover=PULLOVER)).pullover.labels == ("S", "M", "L")


def test_one_size_has_the_numbers_that_it_has_among_all():
    view = picture_pullover(PictureRequest(pullover=PULLOVER, picture=PictureWishes(size="M")))
    [size] = view.pullover.sizes
    assert size == grade_pullover(PULLOVER).sizes[1]


def test_the_sizes_that_are_to_be_answered_are_those_that_are_drawn():
    part = replace(PULLOVER, answer_sizes=("L", "S"))
    assert picture_pullover(PictureRequest(pullover=part)).pullover.labels == ("S", "L")


def test_what_the_request_includes_makes_no_difference():
    short = replace(PULLOVER, include=("sizes",))
    assert picture_pullover(PictureRequest(pullover=short)).pullover.instructions


def test_a_size_that_there_is_not_is_named_beside_what_else_is_wrong():
    wrong = replace(PULLOVER, answer_sizes=("Q",))
    assert problems(picture_pullover, pullover=wrong, picture=PictureWishes(size="T")) == {
        (("answer_sizes", 0), "unknown_size"),
        (("picture", "size"), "unknown_size"),
    }


def test_a_garment_of_too_many_stitches_is_refused_whatever_is_drawn_of_it():
    chart = ChartWishes(chart=Chart(("ab",), {"a": Colour("sand"), "b": Colour("slate")}))
    dense = Gauges(Gauge.over(Fraction(1000), Fraction(31), Fraction(10)))
    wrong = replace(PULLOVER, gauges=dense, chart=chart)
    for draw in (picture_pullover, picture_chart, picture_pattern):
        assert problems(draw, pullover=wrong) == {((), "too_many_stitches")}


def test_the_pullover_is_looked_through_for_problems_once(monkeypatch):
    looked_at = []

    def looking(request, *known):
        looked_at.append(request)
        return garment_problems(request, *known)

    for module in (garment, pictures):
        monkeypatch.setattr(module, "garment_problems", looking)
    picture_pullover(PictureRequest(pullover=PULLOVER, picture=PictureWishes(size="M")))
    assert looked_at == [PULLOVER]


def test_a_picture_of_the_chart_needs_a_chart():
    assert problems(picture_chart, pullover=PULLOVER, picture=PictureWishes(size="T")) == {
        (("chart",), "no_chart"),
        (("picture", "size"), "unknown_size"),
    }


def test_a_pattern_has_its_chart_within_what_a_picture_holds():
    """A yoke of 20 cm and more has over 125 rounds at 65 to 10 cm, which of 800 stitches each are beyond 100,000."""
    fine = Gauges(Gauge.over(Fraction(22), Fraction(65), Fraction(10)))
    chart = Chart(("#" + "." * 799,) * 4, {"#": Colour("sand"), ".": Colour("ink")})
    wide = replace(PULLOVER, gauges=fine, chart=ChartWishes(chart=chart))
    assert problems(picture_pattern, pullover=wide, picture=PictureWishes(size="M")) == {
        (("chart",), "too_many_stitches")
    }


def test_a_pattern_needs_no_chart():
    assert picture_pattern(PictureRequest(pullover=PULLOVER)).pullover.labels == ("S", "M", "L")
