"""How numbers and rows stand in the words of a proof. The words themselves are read by people."""

from typing import Any

import pytest

from grading_core.proof.proof import proofread
from grading_core.proof.request import PrintedRow, ProofRequest
from service.language import LANGUAGES


def reasoning(*rows: PrintedRow, tag: str = "en-US", **asked: Any) -> str:
    (finding,) = proofread(ProofRequest(labels=("S", "M"), rows=rows, **asked)).findings
    return LANGUAGES[tag].text(finding.because)


def test_inches_are_told_with_the_fraction_that_is_printed() -> None:
    bust = PrintedRow("finished", "bust", run="92.5 (104)", run_inch="36 1/2 (41 7/8)")
    depth = PrintedRow("finished", "depth", run="20 (22)", run_inch="8 (8 3/4)")
    assert "41 7/8 in" in reasoning(bust, depth)


def test_inches_that_are_printed_as_decimals_keep_them() -> None:
    bust = PrintedRow("finished", "bust", run="92.5 (104)", run_inch="36.4 (41.9)")
    assert "41.9 in" in reasoning(bust, PrintedRow("finished", "depth", run="20 (22)", run_inch="7.9 (8.7)"))


@pytest.mark.parametrize(("tag", "told"), [("en-US", "2, meters"), ("en-GB", "2, metres"), ("de", "2, Meter")])
def test_a_row_of_yarn_is_named_by_its_colour_and_what_it_counts(tag: str, told: str) -> None:
    """1000 m are 1093.6 yards."""
    rows = PrintedRow("yarn", "metres_2", run="900 (1000)"), PrintedRow("yarn", "yards_2", run="984 (1049)")
    assert told in reasoning(*rows, tag=tag)


def test_a_row_that_no_table_has_is_named_as_it_was_sent() -> None:
    assert "pocket: depth" in reasoning(PrintedRow("pocket", "depth", run="1 (2, 3)"))


def test_a_size_that_should_have_no_number_is_told_in_words() -> None:
    assert "no number" in reasoning(PrintedRow("neck", "back", values=(34, None), run="34 (36)"))
