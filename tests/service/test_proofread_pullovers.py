"""Tables of random pullovers proofread, sound and with slips of print (see `tests.oracles.proofread_pullovers`)."""

import pytest

from tests.oracles.proofread_pullovers import Seen, proofread_request
from tests.oracles.slips_of_print import FORMS, KINDS

REQUESTS = 14
"""Some two hundred slips; thousands are made by hand."""


@pytest.fixture(scope="module")
def seen(client):
    seen = Seen()
    for seed in range(REQUESTS):
        seen.add(proofread_request(client, seed))
    assert {(kind, form) for kind, form, _ in seen.slips} == {(kind, form) for kind in KINDS for form in FORMS}
    return seen


def times(seen, what):
    return sum(many for (_, _, name), many in seen.slips.items() if name == what)


def test_a_table_of_the_service_has_no_finding_and_a_slip_is_found_where_it_breaks_a_relation_and_only_there(seen):
    assert seen.disagreements == []
    assert times(seen, "visible") > 10 * REQUESTS


def test_the_number_that_is_wrong_is_the_one_to_be_corrected_nine_times_in_ten(seen):
    named = times(seen, "blamed") + times(seen, "other number")
    assert 10 * named >= 9 * times(seen, "visible")
    assert 50 * times(seen, "nobody blamed") <= times(seen, "visible")
