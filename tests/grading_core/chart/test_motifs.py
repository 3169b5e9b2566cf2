"""How many whole motifs sections have, laid out on paper."""

from grading_core.chart.layout import Stretches, lay_out
from grading_core.chart.motifs import whole_motifs
from grading_core.chart.placement import place_charts
from grading_core.chart.request import ChartSize
from grading_core.sections import IncreaseRound, Sections
from tests.grading_core.chart.small_plans import plan_of


def test_motifs_that_appear_at_once_are_told_as_one_number():
    """One motif in five stitches, and with fifteen one more on either side of it."""
    size = ChartSize(label="S", rounds=4, neck=Sections(5, 5, 3), increase_rounds=[IncreaseRound(3, 5, 5, 1)])
    motifs = place_charts(plan_of(size, partial_motifs="plain", first_round=2)).sizes[0].motifs
    assert [(each.motifs, each.from_round) for each in motifs.back] == [(1, 2), (3, 3)]
    assert [(each.motifs, each.from_round) for each in motifs.sleeve] == [(1, 3)]


def test_motifs_are_counted_by_their_own_columns():
    """Five stitches have room for five motifs of one column."""
    size = ChartSize(label="S", rounds=1, neck=Sections(5, 5, 5), underarm=0)
    plan = plan_of(size, partial_motifs="plain", motif_columns=1)
    counted = whole_motifs(lay_out(plan, size, Stretches(plan, plan.plain_colours())), plan.whole_motif)
    assert [(each.motifs, each.from_round) for each in counted.yoke.back] == [(5, 1)]
    assert counted.body.back == counted.sleeve == ()


def test_no_motifs_are_counted_where_they_may_be_cut():
    size = ChartSize(label="S", rounds=1, neck=Sections(5, 5, 5))
    plan = plan_of(size)
    assert whole_motifs(lay_out(plan, size, Stretches(plan, plan.plain_colours())), plan.whole_motif) is None
