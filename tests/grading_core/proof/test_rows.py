"""What a row says by itself, over all sizes, in runs made by hand."""

import pytest

from grading_core.proof.proof import proofread
from grading_core.proof.request import PrintedRow, ProofRequest
from grading_core.proof.rows import NEVER_FALLS
from tests.grading_core.proof.hand_garment import Printed, found, garment_proof, proof_of, row


def codes(printed: Printed, labels: str = "S M L") -> list[tuple[str, str | None]]:
    return [(each.code, each.size) for each in found(proof_of(tuple(labels.split()), printed))]


@pytest.mark.parametrize("run", ["84 (88)", "84 (88, 92, 96)", "84, 88"])
def test_a_run_of_another_length_than_the_sizes_is_found(run: str) -> None:
    assert codes({"neck.stitches": run}) == [("run_length", None)]


def test_values_of_another_length_than_the_sizes_are_found() -> None:
    assert codes({"neck.stitches": (84, 88)}) == [("run_length", None)]


def test_a_row_of_another_length_is_compared_with_no_other() -> None:
    assert codes({"neck.back": "30 (32)", "yoke.back_increases": "1", "split.back": "99 (99, 99)"}) == [
        ("run_length", None)
    ]


def test_one_number_for_all_sizes_is_no_run_of_another_length() -> None:
    assert codes({"body.rounds": "84", "neck.stitches": (88,)}) == []


@pytest.mark.parametrize("name", ["neck.stitches", "split.back", "body.stitches", "hem.rounds", "yoke.rounds"])
def test_what_there_has_to_be_is_one_at_least(name: str) -> None:
    assert codes({name: "0 (1, 88)"}) == [("below_one", "S")]


@pytest.mark.parametrize(
    "name", ["split.underarm", "yoke.increase_rounds", "sleeve.decrease_rounds", "neck.short_rows"]
)
def test_what_a_garment_may_do_without_may_be_nothing_and_not_less(name: str) -> None:
    assert codes({name: "0 (0, 2)"}) == []
    assert codes({name: "-1 (0, 2)"}) == [("below_one", "S")]


def test_ease_may_be_negative() -> None:
    assert codes({"to_fit.ease": "-5 (0, 2)"}) == []


def test_a_count_is_whole() -> None:
    assert codes({"neck.stitches": "88 (92 1/2, 96)"}) == [("not_whole", "M")]
    assert codes({"finished.bust": "88 (92 1/2, 96)"}) == []


def printing(values: tuple[float | None, ...], run: str) -> list[tuple[str | None, float | None, float | None]]:
    rows = (PrintedRow("finished", "bust", values=values, run=run), row("finished.neck", "40.5"))
    proof = proofread(ProofRequest(labels=("S", "M", "L"), rows=rows))
    assert {each.code.value for each in proof.findings} <= {"printed_differs"}
    return [(each.size, each.printed, each.expected) for each in proof.findings]  # type: ignore[misc]


def test_a_printed_run_is_the_exact_values_rounded() -> None:
    # to half a centimetre: 92.36 is 92.5, 97.27 is 97.5, 101.82 is 102
    assert printing((92.36, 97.27, 101.82), "92.5 (97.5, 102)") == []
    assert printing((92.36, 97.27, 101.82), "92.5 (97, 102)") == [("M", 97, 97.5)]
    assert printing((92.36, None, 101.82), "92.5 (-, 102)") == []
    assert printing((92.36, 97.27, 101.82), "92.5 (-, 102)") == [("M", None, 97.5)]
    assert printing((92.36, None, 101.82), "92.5 (97.5, 102)") == [("M", 97.5, None)]


def test_swapped_digits_of_a_printed_run_are_named() -> None:
    rows = (PrintedRow("body", "stitches", values=(152, 164), run="152 (146)"),)
    proof = proofread(ProofRequest(labels=("S", "M"), rows=rows))
    wrong = [(each.code, each.size, each.printed, each.expected, each.cause) for each in proof.findings]
    assert wrong[0] == ("printed_differs", "M", 146, 164, "digits_swapped")


def test_one_number_is_printed_where_all_sizes_agree() -> None:
    rows = (PrintedRow("body", "rounds", values=(84, 84, 84), run="84"),)
    assert found(proofread(ProofRequest(labels=("S", "M", "L"), rows=rows))) == []


@pytest.mark.parametrize("key", sorted(NEVER_FALLS), ids=lambda key: f"{key.part}.{key.item}")
def test_a_number_that_falls_from_a_size_to_a_larger_one_is_found(key: tuple[str, str, bool]) -> None:
    name = f"{key[0]}.{key[1]}"
    assert codes({name: "20 (24, 22)"}) == [("falls", "L")]
    assert codes({name: "20 (20, 22)"}) == []


def test_what_may_fall_is_not_found() -> None:
    may = ("neck.back", "neck.front", "neck.cast_on", "body.rounds", "sleeve.rounds", "cuff.stitches", "to_fit.ease")
    assert codes(dict.fromkeys(may, "24 (23, 22)")) == []


def test_a_length_falls_where_it_does_so_by_more_than_print_allows() -> None:
    # 20.5 and 20, to half a centimetre, may both be 20.25
    assert codes({"finished.depth": "20.5 (20, 21)"}) == []
    assert codes({"finished.depth": "20.5 (19.5, 21)"}) == [("falls", "M")]


def test_a_size_that_lacks_a_number_falls_from_none() -> None:
    assert codes({"body.stitches": "180 (-, 164)"}) == []


DOWN = {"to_fit.bust": "84 (76, 70)", "body.stitches": "180 (164, 152)", "neck.stitches": "96 (92, 88)"}


def test_sizes_may_be_listed_from_large_to_small() -> None:
    assert codes(DOWN, "L M S") == []
    assert codes(DOWN | {"neck.stitches": "96 (98, 88)"}, "L M S") == [("falls", "L")]


def test_sizes_whose_labels_say_nothing_may_be_listed_from_large_to_small() -> None:
    assert codes(DOWN, "one two three") == []
    assert codes(DOWN | {"neck.stitches": "96 (98, 88)"}, "one two three") == [("falls", "one")]


def test_sizes_in_no_order_are_compared_by_their_bust() -> None:
    printed = {"to_fit.bust": "76 (70, 84)", "body.stitches": "164 (152, 180)", "neck.stitches": "92 (88, 96)"}
    assert codes(printed, "two one three") == []
    assert codes(printed | {"neck.stitches": "92 (94, 96)"}, "two one three") == [("falls", "two")]


def test_one_wrong_number_does_not_turn_the_order_of_the_sizes() -> None:
    printed = {"to_fit.bust": "70 (76, 84)", "body.stitches": "152 (104, 180)", "neck.stitches": "88 (92, 96)"}
    assert codes(printed) == [("falls", "M")]


def test_a_larger_size_takes_no_less_yarn_where_nothing_of_it_is_smaller() -> None:
    """But for what increases and decreases account for that may lie in other rounds, since L has others than M.

    Of M that is 2 x 20 x 29 stitches of the back, as many of the front, 4 x 17 x 32 and 4 x 8 x 90 of sleeves: 7,376 in
    all. It has 49 x 92 + 91 x 164 + 14 x 164 + 2 x 98 x 38 + 2 x 14 x 38 + 7 x 92 at least, which is 30,884: 23.9 %.
    """
    proof = garment_proof({"yarn.grams_1": "301 (331, 250)"})
    assert [(each.code.value, each.size, each.severity) for each in proof.findings] == [("yarn_falls", "L", "doubtful")]
    assert found(garment_proof({"yarn.grams_1": "301 (331, 251)"})) == []


@pytest.mark.parametrize(
    ("shaping", "is_less"),
    [
        ({}, True),
        ({"yoke.rounds": "40 (40)", "yoke.back_increases": "20 (20)"}, True),
        ({"yoke.rounds": "40 (40)", "yoke.back_increases": "20 (21)"}, False),
        ({"sleeve.rounds": "90 (90)", "sleeve.decrease_rounds": "9 (10)"}, False),
        ({"neck.short_rows": "6 (4)"}, False),
        ({"body.bust_dart_rows": "6 (4)"}, False),
    ],
)
def test_where_shaping_is_alike_in_two_sizes_the_larger_takes_no_less_yarn(
    shaping: dict[str, str], is_less: bool
) -> None:
    rows = {"body.stitches": "164 (168)", "body.rounds": "30 (30)", "yarn.grams_1": "330 (320)"}
    codes_found = [each.code.value for each in proof_of(("S", "M"), rows | shaping).findings]
    assert codes_found == ["yarn_falls"] * is_less


def test_a_larger_size_with_fewer_rounds_may_take_less_yarn() -> None:
    # sleeves of 84 + 14 rounds are 35 cm, and L reaches 48 x 7/44 + 17.5 + 35 = 60.1
    shorter = {
        "yarn.grams_1": "300 (330, 320)",
        "sleeve.rounds": "98 (98, 84)",
        "finished.sleeve_length": "40 (40, 35)",
        "finished.reach": "62 (65, 60)",
    }
    assert found(garment_proof(shorter)) == []


def test_of_several_colours_a_larger_size_may_take_less() -> None:
    assert found(garment_proof({"yarn.grams_1": "300 (330, 320)", "yarn.grams_2": "50 (60, 80)"})) == []
