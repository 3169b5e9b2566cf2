"""Plans that contradict themselves."""

from dataclasses import replace
from fractions import Fraction

from grading_core.chart.grid import Anchor, Chart, Colour
from grading_core.chart.request import BodyShaping, ChartRequest, ChartSize, SeamStitches, usual_seam
from grading_core.sections import IncreaseRound, Sections
from tests.grading_core.chart.small_plans import GAUGE, middle, plan_of, problems


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
    size = ChartSize(label="S", rounds=1, neck=Sections(4, 4, 4), sleeve_rounds=3, sleeve_decrease_rounds=[1, 3])
    plan = plan_of(size, anchor=middle(Fraction(5, 2)))
    assert problems(plan) == [("sizes", 0, "sleeve_decrease_rounds")]


def test_a_seam_wider_than_the_underarm_leaves_no_body():
    size = ChartSize(label="S", rounds=1, neck=Sections(5, 5, 5), underarm=0, body_rounds=1)
    assert problems(plan_of(size, seam_stitches=SeamStitches(6, 0))) == [("sizes", 0, "underarm")] * 2


def test_a_seam_has_the_underarms_parity_and_where_it_is_purled_a_stitch_to_be_seen():
    # an underarm without stitches has none to purl
    assert [usual_seam(underarm, "knit") for underarm in (0, 1, 2, 7, 8)] == [0, 1, 0, 1, 0]
    assert [usual_seam(underarm, "purl") for underarm in (0, 1, 2, 7, 8)] == [0, 1, 2, 1, 2]


def test_the_breaks_of_a_chart_are_the_usual_ones_unless_they_are_asked_for():
    size = ChartSize(label="S", rounds=4, neck=Sections(5, 5, 5), underarm=8)
    purled = replace(plan_of(size), seam="purl")
    assert purled.seams(size) == (2, 2)
    assert replace(purled, seam_stitches=SeamStitches(4, None)).seams(size) == (4, 2)
