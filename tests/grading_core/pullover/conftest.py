from __future__ import annotations

import pytest

from grading_core.pullover.grade import pullover
from grading_core.pullover.result import Pullover
from tests.grading_core.pullover.knitted_pullovers import REQUESTS


@pytest.fixture(scope="module", params=REQUESTS)
def made(request) -> Pullover:
    return pullover(REQUESTS[request.param])
