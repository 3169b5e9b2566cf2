from __future__ import annotations

import pytest

from grading_core.pullover.grade import grade_pullover
from grading_core.pullover.request import PulloverRequest
from grading_core.pullover.result import Pullover
from tests.grading_core.pullover.knitted_pullovers import REQUESTS


@pytest.fixture(scope="module", params=REQUESTS)
def asked(request) -> PulloverRequest:
    return REQUESTS[request.param]


@pytest.fixture(scope="module")
def made(asked) -> Pullover:
    return grade_pullover(asked)
