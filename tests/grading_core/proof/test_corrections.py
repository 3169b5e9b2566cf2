"""Which numbers of a size are to be corrected."""

from grading_core.codes import CauseCode
from tests.grading_core.proof.hand_garment import corrected, garment_proof, proof_of


def test_a_wrong_number_in_each_of_two_sizes_is_corrected_in_each() -> None:
    proof = garment_proof({"body.stitches": "152 (156, 180)", "split.sleeve": "40 (44, 53)"})
    assert corrected(proof) == [("M", "body.stitches", 156, 164), ("L", "split.sleeve", 53, 50)]


def test_two_wrong_numbers_of_one_size_are_both_corrected() -> None:
    proof = garment_proof({"neck.back": "30 (35, 32)", "sleeve.stitches": "50 (51, 62)"})
    assert set(corrected(proof)) == {("M", "neck.back", 35, 32), ("M", "sleeve.stitches", 51, 54)}


def test_where_either_of_two_numbers_may_be_wrong_others_are_counted() -> None:
    # 66 = 30 + 2 x 18; of 67, 30 and 18 the first may be 66, or the second 31; an 18 1/2 can't be
    (only,) = proof_of(("S",), {"split.back": "67", "neck.back": "30", "yoke.back_increases": "18"}).corrections
    assert only.others == 1


def test_of_two_that_would_do_the_one_that_a_slip_explains_is_corrected() -> None:
    """Of 89, 30 and 2 x 34 the sum is 98: two digits of it have changed places, and 21 or 29 1/2 look like nothing."""
    (only,) = proof_of(("S",), {"split.back": "89", "neck.back": "30", "yoke.back_increases": "34"}).corrections
    assert (only.row, only.expected, only.cause) == (("split", "back"), 98, CauseCode.DIGITS_SWAPPED)


def test_of_two_that_nothing_explains_the_one_that_fits_its_neighbours_is_corrected() -> None:
    """30 + 2 x 18, 32 + 2 x 20 and 34 + 2 x 22 stitches; 75 lies off the 66 and 78 as 72 doesn't, 35 off 30 and 34."""
    rows = {"neck.back": "30 (32, 34)", "yoke.back_increases": "18 (20, 22)", "split.back": "66 (74, 78)"}
    (only,) = proof_of(("S", "M", "L"), rows).corrections
    assert (only.row, only.expected) == (("split", "back"), 72)
