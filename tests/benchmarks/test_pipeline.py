import pytest

from tests.benchmarks import cases
from tests.benchmarks.pipeline import requests_of

BODIES = {
    "pullovers": cases.pullovers(9),
    "size-matches": cases.size_matches(9),
    "raglan-schedules": cases.raglan_schedules(9),
    "yarn-estimates": cases.yarn_estimates(9),
    "chart-placements": cases.chart_placements(9),
}


@pytest.mark.parametrize("body", BODIES.values(), ids=BODIES)
def test_nine_of_ten_requests_of_a_design_are_new(body):
    sent = requests_of(body, 7)
    assert (len(sent), len(set(sent))) == (10, 9)


@pytest.mark.parametrize("body", BODIES.values(), ids=BODIES)
def test_what_is_asked_again_was_asked_before(body):
    *before, last = requests_of(body, 7)
    assert last in before


@pytest.mark.parametrize("body", BODIES.values(), ids=BODIES)
def test_two_designs_have_no_request_in_common(body):
    assert not set(requests_of(body, 7)) & set(requests_of(body, 8))
