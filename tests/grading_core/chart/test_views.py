"""The starts traced, against pictures drawn on paper."""

from fractions import Fraction

from grading_core.chart.front import front_view
from grading_core.chart.grid import Chart, Colour
from grading_core.chart.placement import place_charts
from grading_core.chart.request import ChartPictureRequest, ChartSize
from grading_core.chart.views import start_traces
from grading_core.sections import IncreaseRound, Sections
from tests.grading_core.chart.small_plans import middle, motif_plan, plan_of


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


def test_a_trace_of_whole_motifs_follows_their_first_column():
    """Motifs of two in six columns: 1 2 | 3 4 | 5 6; about column 3.5, 4 stitches have one, 8 stitches have three."""
    size = ChartSize(label="S", rounds=2, neck=Sections(4, 4, 4), increase_rounds=[IncreaseRound(2, 2, 2, 0)])
    chart = Chart(("654321",), {symbol: Colour(symbol) for symbol in "123456-"})
    plan = plan_of(size, chart, middle(Fraction(7, 2)), partial_motifs="plain", motif_columns=2)
    view = front_view(ChartPictureRequest(plan))
    assert [seen.front for seen in view.yoke] == ["-34-", "-123456-"]
    assert start_traces(place_charts(plan).sizes[0])[0].pieces == (((1, 3), (2, 1)),)
