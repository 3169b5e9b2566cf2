import pytest

from tests.oracles.pullover_answer import check
from tests.oracles.random_pullovers import random_request


@pytest.mark.parametrize("hundred", range(3))
def test_requests_at_random_are_answered_by_pullovers_that_close_or_by_their_wrong_places(client, hundred):
    answered = refused = made = refused_sizes = mendable = wider = darted = 0
    for seed in range(100 * hundred, 100 * hundred + 100):
        request = random_request(seed)
        response = client.post("/v1/pullovers", json=request)
        assert response.status_code in (200, 422), (seed, response.text)
        if response.status_code == 422:
            assert all(_found(request, error["pointer"]) for error in response.json["errors"]), seed
            refused += 1
            continue
        answered += 1
        try:
            check(request, response.json)
        except AssertionError as error:
            error.add_note(f"seed {seed}")
            raise
        for size in response.json["sizes"]:
            made += size["feasible"]
            refused_sizes += not size["feasible"]
            mendable += not size["feasible"] and bool(size["nearest"] or size.get("together"))
            darted += "bust_darts" in size.get("body", ())
            wider += size["feasible"] and len(set(_halves(size))) > 1
    assert answered > 50
    assert refused >= 3
    assert made > 150
    # the search for changes ends after so many trials
    assert 10 * mendable >= 8 * refused_sizes
    assert darted > 20
    assert wider > 20


def _found(request, pointer):
    """Whether a place is in the request."""
    place = request
    for step in pointer.split("/")[1:]:
        try:
            place = place[int(step)] if isinstance(place, list) else place[step]
        except (KeyError, IndexError):
            return False
    return True


def _halves(size):
    sections = size["split"]["sections"]
    return sections["back"], sections["front"]
