"""The front of a pullover: its ribs, its short rows and what a dropped front lacks, counted by hand."""

from dataclasses import replace
from fractions import Fraction

import pytest

from grading_core.errors import ContradictionError
from grading_core.gauge import Gauge
from grading_core.parts.ribbing import RibRepeat
from grading_core.pullover.front import picture_front
from grading_core.pullover.pictures import PictureRequest, PictureWishes
from grading_core.pullover.request import BandWishes, BodyWishes, EdgeWishes, Gauges, NeckWishes, PulloverRequest

PLAIN = PulloverRequest(gauges=Gauges(Gauge(Fraction(2), Fraction(3))), labels=("M",))


def pictured(**wishes):
    made = picture_front(PictureRequest(pullover=replace(PLAIN, **wishes), picture=PictureWishes(size="M")))
    return made.front, made.pullover.sizes[0].outcome


@pytest.mark.parametrize("rib", [RibRepeat(1, 1), RibRepeat(2, 3)])
def test_a_rib_goes_on_from_back_to_front_all_round(rib):
    """The hem's front follows its back, which a round begins with, and ends where the round does."""
    front, size = pictured(body=BodyWishes(hem=EdgeWishes(rib=rib)))
    turn = "k" * rib.knit + "p" * rib.purl
    whole = turn * (size.body.hem.stitches // len(turn))
    assert len(front.finish.hem.stitches) == (len(whole) + 1) // 2
    assert whole.endswith(front.finish.hem.stitches)


def test_the_neckband_is_parted_where_the_sleeves_fold():
    front, size = pictured(band=BandWishes(rib=RibRepeat(1, 2)))
    before, behind = front.finish.band.stitches, front.finish.band_behind.stitches
    assert len(before) + len(behind) == size.band.edge.stitches
    # the neck's front is as long as its back, but for the middle stitch of an odd sleeve
    assert abs(len(before) - len(behind)) <= 4
    # of what is knitted once and purled twice, the inside shows the other side
    assert before.count("p") > before.count("k")
    assert behind.count("k") > behind.count("p")


def test_short_rows_reach_from_the_fold_as_far_as_they_turn():
    front, size = pictured()
    sleeve, line = size.neck.sections.sleeve, size.neck.line_stitches
    back_half = sleeve // 2
    reached = [turn.beyond_back for turn in size.neck.raised.turns if turn.beyond_back > line + back_half]
    assert reached
    assert [sum(row) for row in front.finish.short_rows] == [beyond - line - back_half for beyond in reached]
    assert front.finish.raised_cm == Fraction(size.neck.raised.rows, 3)


def test_a_dropped_front_lacks_its_middle_until_the_last_of_its_rows_is_worked():
    front, size = pictured(neck=NeckWishes(lower_front="front_drop"))
    drop = size.neck.drop
    assert len(front.finish.missing) == drop.rows
    assert front.finish.missing[-1] == drop.centre
    at_first = size.neck.sections.front - 2 * drop.each_side
    assert front.finish.missing[0] == at_first - 2 * (1 in drop.increase_rows)


def test_a_front_of_too_many_stitches_is_refused_where_its_size_is_named():
    fine = Gauge.over(Fraction(60), Fraction(80), Fraction(10))
    with pytest.raises(ContradictionError) as caught:
        pictured(gauges=Gauges(fine))
    assert [problem.path for problem in caught.value.problems] == [("picture", "size")]
