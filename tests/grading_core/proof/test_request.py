"""What is asked of a proof where nothing but rows is sent."""

import pytest

from grading_core.proof.request import PrintedRow, ProofRequest
from grading_core.rounding import CountRule
from tests.grading_core.proof.hand_garment import found, proof_of


def test_without_a_step_increases_may_fall_in_every_round() -> None:
    assert found(proof_of(("M",), {"yoke.increase_rounds": "20", "yoke.rounds": "20"})) == []


def test_without_rules_a_count_lands_on_no_multiple() -> None:
    assert found(proof_of(("M",), {"body.stitches": "151"})) == []


def test_the_rules_of_one_request_are_not_those_of_another() -> None:
    request = ProofRequest(labels=("M",), rows=(PrintedRow("body", "stitches", run="151"),))
    with pytest.raises(TypeError):
        request.count_rules["body"] = CountRule(4)  # type: ignore[index]
