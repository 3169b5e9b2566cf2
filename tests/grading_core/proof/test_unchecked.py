"""What a proof could not compute, and what is missing for it; reasoned by hand."""

from fractions import Fraction

from grading_core.chart.grid import Anchor
from grading_core.codes import ProofCode
from grading_core.proof.result import Proof
from grading_core.rounding import CountRule
from tests.grading_core.proof.hand_garment import garment_proof, proof_of

SPLIT = {
    "split.back": "66 (72, 78)",
    "split.front": "66 (72, 78)",
    "split.sleeve": "40 (44, 50)",
    "split.yoke_total": "220 (240, 264)",
    "split.underarm": "8 (8, 10)",
    "body.stitches": "152 (164, 180)",
    "sleeve.stitches": "50 (54, 62)",
}
LABELS = ("S", "M", "L")


def unchecked(proof: Proof) -> dict[str, tuple[set[str], tuple[str, ...]]]:
    return {each.code.value: ({".".join(row) for row in each.rows}, each.fields) for each in proof.unchecked}


def test_what_lacks_one_row_is_unchecked_and_names_it() -> None:
    told = unchecked(proof_of(LABELS, {"neck.back": "30", "yoke.back_increases": "18"}))
    assert told["split_from_neck"] == ({"split.back"}, ())
    assert told["body_from_split"][0] == {
        "body.stitches",
        "split.back",
        "split.front",
        "split.underarm",
        "split.line_to_body",
    }


def test_the_row_that_most_relations_lack_alone_is_wanted_most() -> None:
    # body and sleeve lack the stitches of a line that go to the body; all else lacks two rows or none
    proof = proof_of(LABELS, SPLIT, line_stitches=2)
    assert proof.most_wanted == ("split", "line_to_body")
    told = unchecked(proof)
    assert told["body_from_split"] == told["sleeve_from_split"] == ({"split.line_to_body"}, ())


def test_no_row_is_wanted_where_all_are_there() -> None:
    fields = {"count_rules": {"body": CountRule(4)}, "anchor": Anchor(*[Fraction(1, 2)] * 3)}
    proof = garment_proof({"finished.front_extra": "0"}, **fields)
    assert (proof.most_wanted, proof.unchecked) == (None, ())


def test_what_a_field_of_the_request_is_lacking_for_names_the_field() -> None:
    told = unchecked(garment_proof(gauges=None))
    assert {code: fields for code, (_, fields) in told.items() if fields} == {
        "width": ("gauge",),
        "height": ("gauge",),
        "count_rule": ("count_rules",),
        "chart_parity": ("chart",),
    }


def test_lines_that_nothing_tells_are_a_field_that_is_lacking() -> None:
    told = unchecked(proof_of(LABELS, {"neck.back": "30", "split.back": "66"}))
    assert told["section_sum"] == told["sleeve_from_split"] == (set(), ("line_stitches",))


def test_what_is_skipped_lacks_no_field() -> None:
    told = unchecked(garment_proof(gauges=None, skip=(ProofCode.WIDTH, ProofCode.COUNT_RULE)))
    assert told.keys() == {"height", "chart_parity"}
