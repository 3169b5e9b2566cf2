"""Answers over HTTP: every one knitted again from its own numbers (see `tests.oracles.pullover_answer`)."""

import pytest

from tests.oracles.part_of_answer import whole
from tests.oracles.pullover_answer import check
from tests.service.pullovers.answers import GAUGE


@pytest.fixture(scope="module")
def make(client):
    """The answer to a request that is sound, checked."""

    def made(**request):
        request = whole({"gauge": GAUGE, **request})
        if "gauges" in request:
            del request["gauge"]
        response = client.post("/v1/pullovers", json=request)
        assert response.status_code == 200, response.text
        check(request, response.json)
        return response.json

    return made


@pytest.fixture(scope="module")
def refuse(client):
    """The wrong places of a request, with what is wrong there."""

    def refused(**request):
        response = client.post("/v1/pullovers", json={"gauge": GAUGE, **request})
        assert response.status_code == 422, response.text
        return {error["pointer"]: error["detail"] for error in response.json["errors"]}

    return refused


@pytest.fixture(scope="module")
def plain(make):
    return make()
