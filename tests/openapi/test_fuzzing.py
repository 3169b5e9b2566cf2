"""Requests made up from the contract: no answer is a fault, and none is undocumented.

schemathesis writes valid and invalid requests for every operation, sends them to the application in
this process and compares the answers with the contract.
"""

import pytest
import schemathesis
from hypothesis import HealthCheck, settings
from marshmallow import ValidationError
from schemathesis.checks import CHECKS, load_all_checks

from service.app import create_app
from service.config import Config
from service.routes import operations

SCHEMAS = {operation.path: operation.schema for operation in operations(Config())}

load_all_checks()
# A valid request may still contradict itself, which `answered_or_contradictory` tells from a contract that promises
# too much; and every POST is answered on QUERY, which OpenAPI 3.1 cannot say.
LEFT_OUT = {"positive_data_acceptance", "unsupported_method", "allow_header_conformance"}
CHECKS_OF_THE_CONTRACT = [check for check in CHECKS.get_all() if check.__name__ not in LEFT_OUT]

contract = schemathesis.openapi.from_wsgi("/openapi.json", create_app(Config()))


def answered_or_contradictory(_context, response, case):
    """What the contract allows is answered, or refused for a reason that no JSON Schema can say."""
    if not case.meta.generation.mode.is_positive or response.status_code == 200:
        return
    assert response.status_code == 422
    try:
        SCHEMAS[case.operation.path].load(case.body)
    except ValidationError as error:
        pytest.fail(f"The contract allows it, the schema refuses it: {error.messages}")


@contract.parametrize()
@settings(max_examples=25, suppress_health_check=list(HealthCheck), database=None)
def test_no_request_is_answered_by_a_fault_or_against_the_contract(case):
    headers = {"Accept-Encoding": "identity"}
    case.call_and_validate(headers=headers, checks=[*CHECKS_OF_THE_CONTRACT, answered_or_contradictory])
