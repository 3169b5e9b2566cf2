"""What a wrong number is likely to be. The slips are common practice, no source; each is made by hand here."""

from collections.abc import Mapping

import pytest

from grading_core.proof.causes import digits_swapped, likely_cause, shifted
from grading_core.proof.figures import Figure, Key, grains
from grading_core.proof.proof import proofread
from grading_core.proof.request import ProofRequest
from tests.grading_core.proof.hand_garment import GARMENT, LABELS, Printed, corrected, garment_proof, proof_of, row


@pytest.mark.parametrize(
    ("printed", "meant", "swapped"),
    [
        (168, 186, True),
        (42, 24, True),
        (102.5, 105.2, True),
        (91.5, 95.1, True),
        (168, 861, True),
        (168, 681, False),  # three are elsewhere
        (168, 618, True),
        (100, 10, False),
        (152, 162, False),
        (168, 168, False),
        (12, 120, False),
    ],
)
def test_digits_are_swapped_where_two_have_changed_places(printed: float, meant: float, swapped: bool) -> None:
    assert digits_swapped(grains(printed), grains(meant)) is swapped


@pytest.mark.parametrize(
    ("printed", "meant", "is_shifted"),
    [
        # 84 92 100 108, of which the second is told twice: all after it stand one size too far to the right
        ((84, 92, 92, 100), {2: 100, 3: 108}, True),
        # the first is lost: all stand one too far to the left
        ((92, 100, 108, 108), {0: 84, 1: 92, 2: 100}, True),
        # one number alone may be anything
        ((84, 92, 92, 108), {2: 100}, False),
        # two that don't follow one another
        ((92, 92, 92, 84), {0: 84, 3: 108}, False),
        # two that are simply wrong
        ((84, 92, 99, 107), {2: 100, 3: 108}, False),
    ],
)
def test_a_row_is_shifted_where_each_number_is_that_of_the_size_before_or_after(
    printed: tuple[int, ...], meant: Mapping[int, int], is_shifted: bool
) -> None:
    assert shifted(dict(enumerate(printed)), meant) is is_shifted


def cause(name: str, printed: float, meant: float, neighbours: tuple[float, ...] = ()) -> str | None:
    """Of a number of M of the garment reckoned by hand, L = 2, with 1 of it to the body."""
    figures = {Key(*each.split(".")): Figure(grains(values[1] or 0)) for each, values in GARMENT.items()}
    found = likely_cause(
        Key(*name.split(".")),
        grains(printed),
        grains(meant),
        figures,
        line_stitches=2,
        neighbours=[grains(each) for each in neighbours],
    )
    return None if found is None else found.value


@pytest.mark.parametrize(
    ("name", "printed", "meant", "likely"),
    [
        # 72 + 72 + 4 x 1 without 2 x 8
        ("body.stitches", 148, 164, "underarm_forgotten"),
        # 72 + 72 + 2 x 8 without 4 x 1
        ("body.stitches", 160, 164, "raglan_stitches_forgotten"),
        # 44 + 2 x 1 without 8
        ("sleeve.stitches", 46, 54, "underarm_forgotten"),
        # 44 + 8 without 2 x 1
        ("sleeve.stitches", 52, 54, "raglan_stitches_forgotten"),
        # without 4 x 2
        ("neck.stitches", 84, 92, "raglan_stitches_forgotten"),
        ("split.yoke_total", 232, 240, "raglan_stitches_forgotten"),
        # 32 + 20 where it is 32 + 2 x 20; 10 + 17 where it is 10 + 2 x 17
        ("split.back", 52, 72, "edges_counted_once"),
        ("split.front", 52, 72, "edges_counted_once"),
        ("split.sleeve", 27, 44, "edges_counted_once"),
        ("body.stitches", 150, 164, None),
        ("body.stitches", 180, 164, None),  # 16 too many are no underarm that was forgotten
        ("cuff.stitches", 30, 38, None),
    ],
)
def test_what_was_left_out_of_a_sum_is_named(name: str, printed: float, meant: float, likely: str | None) -> None:
    assert cause(name, printed, meant) == likely


def test_a_number_of_the_size_beside_it_is_known() -> None:
    assert cause("cuff.stitches", 42, 38, neighbours=(36, 42)) == "neighbouring_size"
    assert cause("cuff.stitches", 40, 38, neighbours=(36, 42)) is None


def test_digits_that_are_swapped_come_before_a_size_beside_it() -> None:
    assert cause("cuff.stitches", 83, 38, neighbours=(36, 83)) == "digits_swapped"


def slipped(changes: Printed) -> list[tuple[str, str, float, float, str | None]]:
    proof = garment_proof(changes)
    return [(*told, each.cause) for told, each in zip(corrected(proof), proof.corrections, strict=True)]  # type: ignore[misc]


@pytest.mark.parametrize(
    ("name", "run", "right", "likely"),
    [
        ("body.stitches", "152 (146, 180)", 164, "digits_swapped"),
        ("body.stitches", "152 (157, 180)", 164, None),
        ("body.stitches", "152 (148, 180)", 164, "underarm_forgotten"),
        ("sleeve.stitches", "50 (52, 62)", 54, "raglan_stitches_forgotten"),
        ("split.sleeve", "40 (27, 50)", 44, "edges_counted_once"),
        ("split.yoke_total", "220 (204, 264)", 240, "digits_swapped"),
        ("split.yoke_total", "220 (264, 264)", 240, "neighbouring_size"),
        ("split.back", "66 (27, 78)", 72, "digits_swapped"),
        ("split.back", "66 (52, 78)", 72, "edges_counted_once"),
    ],
)
def test_a_slip_in_the_garment_reckoned_by_hand_is_corrected_and_explained(
    name: str, run: str, right: float, likely: str | None
) -> None:
    wrong = float(run.split("(")[1].split(",")[0])
    assert slipped({name: run}) == [("M", name, wrong, right, likely)]


def test_a_row_that_stands_one_size_too_far_to_the_right_is_explained_in_every_size() -> None:
    # 152, 164, 180 with the first told twice
    assert slipped({"body.stitches": "152 (152, 164)"}) == [
        ("M", "body.stitches", 152, 164, "sizes_shifted"),
        ("L", "body.stitches", 164, 180, "sizes_shifted"),
    ]


def test_a_number_that_all_sizes_have_was_taken_from_no_size_beside_it() -> None:
    # hem and cuff have 14 rounds in all sizes: it is the body that has 100 and not 91
    (only,) = slipped({"body.rounds": "91 (100, 91)"})
    assert only[1] == "body.rounds"
    assert abs(only[3] - 91) <= 1


def test_inches_of_another_convention_than_all_others_are_explained() -> None:
    # exactly 30 1/4, 32 1/4, 35 1/2, 27 1/2, 39 1/4 in; the last row at 2.5 cm to the inch: 100 cm are 40 in
    printed = {
        "finished.bust": ("77 (82, 90)", "30 1/4 (32 1/4, 35 1/2)"),
        "finished.hem": ("70 (82, 90)", "27 1/2 (32 1/4, 35 1/2)"),
        "to_fit.bust": ("95 (100, 105)", "37 1/2 (40, 41 1/4)"),
    }
    rows = tuple(row(name, cm, run_inch=inches) for name, (cm, inches) in printed.items())
    proof = proofread(ProofRequest(labels=LABELS, rows=rows))
    causes = {(each.size, each.row.item, each.unit): each.cause for each in proof.corrections}
    assert causes == {("M", "bust", "inch"): "nominal_inches"}


def test_without_a_slip_that_fits_no_cause_is_named() -> None:
    proof = proof_of(("M",), {"split.back": "90", "neck.back": "32", "yoke.back_increases": "20"})
    assert [each.cause for each in proof.corrections] == [None]
