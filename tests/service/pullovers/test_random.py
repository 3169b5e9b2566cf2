import pytest

from tests.oracles.pullover_answer import check
from tests.oracles.random_pullovers import random_request


@pytest.mark.parametrize("hundred", range(3))
def test_requests_at_random_are_answered_by_pullovers_that_close_or_by_their_wrong_places(client, hundred):
    answered = refused = made = 0
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
            assert size["feasible"] or size["nearest"] or size["together"], (seed, size)
            made += size["feasible"]
    assert answered > 50
    assert refused >= 3
    assert made > 150


def _found(request, pointer):
    """Whether a place is in the request."""
    place = request
    for step in pointer.split("/")[1:]:
        try:
            place = place[int(step)] if isinstance(place, list) else place[step]
        except (KeyError, IndexError):
            return False
    return True
