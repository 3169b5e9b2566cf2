"""Colours compared with a chart beside them, as far as it may be drawn."""

import pytest

from grading_core.chart.grid import Chart
from grading_core.chart.request import ContrastRequest, ToldColour
from grading_core.chart.views import MAX_STITCHES_DRAWN, contrast_view
from grading_core.errors import ContradictionError

COLOURS = {"#": ToldColour("rust", "#a0522d"), ".": ToldColour("sand", "#e8d9b5")}


def test_a_chart_is_drawn_beside_its_greys_and_none_where_there_is_none():
    chart = Chart(("#.",), {})
    assert contrast_view(ContrastRequest(COLOURS, chart)).chart == chart
    assert contrast_view(ContrastRequest(COLOURS)).chart is None


def test_a_picture_holds_so_many_stitches_and_no_more():
    full = Chart(("#" * 400,) * (MAX_STITCHES_DRAWN // 400), {})
    assert contrast_view(ContrastRequest(COLOURS, full)).chart == full
    with pytest.raises(ContradictionError) as caught:
        contrast_view(ContrastRequest(COLOURS, Chart((*full.rows, "#" * 400), {})))
    assert [problem.path for problem in caught.value.problems] == [("chart",)]
