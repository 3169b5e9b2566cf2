"""Requests made up from the contract: no answer is a fault, and none is undocumented.

schemathesis writes valid and invalid requests for every operation, sends them to the application in
this process and compares the answers with the contract. Most of them, some 6,000, step through the contract
systematically; others are drawn freely. deploy/fuzz.sh draws more, and others in every run.
"""

import os
from io import BytesIO

import schemathesis
from hypothesis import HealthCheck, settings, strategies
from PIL import Image
from schemathesis.checks import CHECKS, load_all_checks

from service.app import create_app
from service.config import Config
from service.flaws import FormError
from service.routes import operations
from service.schemas.chart_request import ChartColourSchema, ChartSchema
from tests.closed_contract import closed

DRAWN = os.environ.get("FUZZ_REQUESTS")
SCHEMAS = {operation.path: operation.schema for operation in operations(Config())}

PICTURES_FIELDS = {"png": ChartSchema().fields["png"], "hex": ChartColourSchema().fields["hex"]}

load_all_checks()
# A valid request may still contradict itself, which `answered_or_contradictory` tells from a contract that promises
# too much; and every POST is answered on QUERY, which OpenAPI 3.1 cannot say.
LEFT_OUT = {"positive_data_acceptance", "unsupported_method", "allow_header_conformance"}
CHECKS_OF_THE_CONTRACT = [check for check in CHECKS.get_all() if check.__name__ not in LEFT_OUT]


@strategies.composite
def png_files(draw):
    """Mostly pictures that hold a chart, some with a byte changed or the end cut off, and some other bytes."""
    if draw(strategies.integers(0, 4)) == 0:
        return draw(strategies.binary(max_size=100))
    file = BytesIO()
    mode = draw(strategies.sampled_from(["1", "L", "LA", "P", "RGB", "RGBA", "I;16"]))
    Image.new(mode, (draw(strategies.integers(1, 9)), draw(strategies.integers(1, 9)))).save(file, "PNG")
    content = bytearray(file.getvalue())
    if draw(strategies.booleans()):
        content[draw(strategies.integers(0, len(content) - 1))] ^= draw(strategies.integers(1, 255))
    return bytes(content[: draw(strategies.sampled_from([None, None, None, len(content) // 2]))])


schemathesis.openapi.media_type("image/png", png_files())
APP = create_app(Config())
contract = schemathesis.openapi.from_dict(closed(APP.test_client().get("/openapi.json").json))
contract.app = APP


def answered_or_contradictory(_context, response, case):
    """What the contract allows is answered, or refused for a reason that no JSON Schema can say."""
    if not case.meta.generation.mode.is_positive or response.status_code == 200:
        return
    assert response.status_code == 422
    if case.media_type != "application/json":
        return
    try:
        SCHEMAS[case.operation.path].load(case.body)
    except FormError as error:
        refused = [path for path, _ in error.flaws() if not _is_the_pictures(path, case.body)]
        assert refused == [], "The contract allows it, the schema refuses it."


def _is_the_pictures(path, body):
    """Whether what is wrong is the picture in a field that is itself as the contract has it: no schema can say so."""
    *_, last = path
    if last not in PICTURES_FIELDS:
        return False
    for step in path:
        body = body[step]
    return PICTURES_FIELDS[last].load(body) is not None


@contract.parametrize()
@settings(
    max_examples=int(DRAWN or 25), derandomize=DRAWN is None, suppress_health_check=list(HealthCheck), database=None
)
def test_no_request_is_answered_by_a_fault_or_against_the_contract(case):
    headers = {"Accept-Encoding": "identity"}
    case.call_and_validate(headers=headers, checks=[*CHECKS_OF_THE_CONTRACT, answered_or_contradictory])
