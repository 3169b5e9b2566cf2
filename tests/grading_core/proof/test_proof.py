"""A whole proof: what was checked, what could not be, what is left out, and what is wrong with a request."""

import pytest

from grading_core.codes import ProofCode
from grading_core.errors import ContradictionError
from grading_core.proof.proof import MAX_FINDINGS
from grading_core.proof.result import Proof
from grading_core.rounding import CountRule
from tests.grading_core.proof.hand_garment import GAUGES, corrected, found, garment_proof, proof_of

LABELS = ("S", "M", "L")


OF_ROWS = {"run_length", "not_whole", "below_one", "printed_differs", "falls", "yarn_falls"}
"""What each row says by itself."""


def times(proof: Proof) -> dict[str, int]:
    return {each.code.value: each.times for each in proof.checked if each.code.value not in OF_ROWS}


def test_every_sum_of_the_garment_is_checked_in_each_of_three_sizes() -> None:
    checked = times(garment_proof())
    # two rounds and three sections each; one body, sleeve and yoke; seven widths are more, one of them in inches too
    assert {code: checked[code] for code in ("section_sum", "split_from_neck", "body_from_split", "reach")} == {
        "section_sum": 2 * 3,
        "split_from_neck": 3 * 3,
        "body_from_split": 3,
        "reach": 3,
    }
    assert (checked["height"], checked["width"]) == (3 * 3, 7 * 3 + 3)


def test_a_relation_is_checked_in_the_sizes_that_have_all_its_numbers() -> None:
    rows = {"neck.back": "30 (32, -)", "yoke.back_increases": "18 (-, 23)", "split.back": "66 (72, 78)"}
    assert times(proof_of(LABELS, rows)) == {"split_from_neck": 1}


def test_every_rule_is_checked_where_its_count_is() -> None:
    rules = {"body": CountRule(4), "hem": CountRule(4)}
    assert times(proof_of(LABELS, {"body.stitches": "152 (164, 180)"}, count_rules=rules)) == {"count_rule": 3}


@pytest.mark.parametrize(
    ("skip", "left"),
    [
        ((), {"body_from_split", "split_closes", "width"}),
        ((ProofCode.WIDTH,), {"body_from_split", "split_closes"}),
        ((ProofCode.WIDTH, ProofCode.SPLIT_CLOSES, ProofCode.BODY_FROM_SPLIT), set()),
    ],
)
def test_what_is_skipped_is_neither_found_nor_checked_nor_unchecked(
    skip: tuple[ProofCode, ...], left: set[str]
) -> None:
    proof = garment_proof({"body.stitches": "152 (156, 180)"}, skip=skip)
    assert {each.code for each in found(proof)} == left
    assert times(proof).keys().isdisjoint(skip)
    assert {each.code for each in proof.unchecked}.isdisjoint(skip)


def test_what_is_skipped_blames_no_number() -> None:
    wrong = {"body.stitches": "152 (156, 180)"}
    assert corrected(garment_proof(wrong)) == [("M", "body.stitches", 156, 164)]
    codes = (ProofCode.WIDTH, ProofCode.SPLIT_CLOSES, ProofCode.BODY_FROM_SPLIT)
    assert corrected(garment_proof(wrong, skip=codes)) == []


@pytest.mark.parametrize(
    ("name", "run", "code"),
    [
        ("neck.stitches", "96 (92, 88)", ProofCode.FALLS),
        ("neck.stitches", "0 (92, 96)", ProofCode.BELOW_ONE),
        ("neck.stitches", "88 (92.5, 96)", ProofCode.NOT_WHOLE),
        ("neck.stitches", "88 (92)", ProofCode.RUN_LENGTH),
    ],
)
def test_what_a_row_says_by_itself_may_be_skipped(name: str, run: str, code: ProofCode) -> None:
    assert {each.code for each in found(proof_of(LABELS, {name: run}))} == {code}
    assert found(proof_of(LABELS, {name: run}, skip=(code,))) == []


def test_more_findings_than_anybody_reads_are_not_named() -> None:
    labels = tuple(str(place) for place in range(40))
    names = ("neck.stitches", "neck.back", "split.back", "split.front", "split.yoke_total", "body.stitches")
    names += ("hem.stitches", "sleeve.stitches", "cuff.stitches", "band.stitches", "yoke.rounds")
    proof = proof_of(labels, dict.fromkeys(names, "0"))
    assert len(names) * len(labels) > MAX_FINDINGS
    assert len(proof.findings) == MAX_FINDINGS
    assert [each.code.value for each in proof.remarks] == ["many_findings"]
    assert proof_of(labels, dict.fromkeys(names[:3], "0")).remarks == ()


def test_a_label_that_stands_there_twice_is_wrong() -> None:
    with pytest.raises(ContradictionError):
        proof_of(("S", "S"), {"neck.back": "30"})


def test_a_gauge_is_all_that_a_width_takes() -> None:
    rows = {"body.stitches": "152 (164, 180)", "finished.bust": "76 (82, 90)"}
    assert times(proof_of(LABELS, rows, gauges=GAUGES)) == {"width": 3}
    assert times(proof_of(LABELS, rows)) == {}


def test_what_rows_say_by_themselves_is_counted_too() -> None:
    """Two runs; three counts, which have to be something; two steps from size to size in each of the two rows."""
    proof = proof_of(LABELS, {"body.stitches": "152 (164, 180)", "finished.bust": "76 (82, 90)"})
    told = {each.code.value: each.times for each in proof.checked}
    assert told == {"run_length": 2, "not_whole": 3, "below_one": 3, "falls": 4}


def test_the_yarn_of_one_colour_is_compared_from_size_to_size() -> None:
    proof = proof_of(LABELS, {"body.stitches": "152 (164, 180)", "yarn.grams_1": "300 (320, 350)"})
    assert {each.code.value: each.times for each in proof.checked}["yarn_falls"] == 2
