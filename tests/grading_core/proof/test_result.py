"""How sure a finding is that something is wrong."""

import pytest

from grading_core.codes import ProofCode
from tests.grading_core.proof.hand_garment import garment_proof

WRONG = {
    "neck.cast_on": "88 (100, 96)",
    "neck.stitches": "88 (93, 96)",
    "band.stitches": "88 (84, 96)",
    "sleeve.decrease_rounds": "7 (14, 10)",
    "finished.reach": "62 (68, 65)",
    "yarn.grams_1": "300 (330, 200)",
}
"""M and L of the garment reckoned by hand, with what is wrong, what may be meant, and what may be measured otherwise.
No count of L is below M's, and its yarn is."""


@pytest.mark.parametrize(
    ("code", "severity"),
    [
        (ProofCode.SECTION_SUM, "wrong"),
        (ProofCode.YOKE_FROM_NECK, "wrong"),
        (ProofCode.WIDTH, "wrong"),
        # a pattern's words may say why
        (ProofCode.CAST_ON, "doubtful"),
        (ProofCode.PICK_UP, "doubtful"),
        (ProofCode.DECREASES_TO_CUFF, "doubtful"),
        (ProofCode.FALLS, "doubtful"),
        (ProofCode.YARN_FALLS, "doubtful"),
        # publishers measure from the centre back in more than one way
        (ProofCode.REACH, "note"),
    ],
)
def test_a_finding_says_how_sure_it_is(code: ProofCode, severity: str) -> None:
    told = {each.code: each.severity for each in garment_proof(WRONG).findings}
    assert told[code] == severity
