"""What a pattern's own numbers tell: the stitches of its raglan lines, and how its inches were converted."""

from fractions import Fraction

from grading_core.chart.grid import Anchor
from grading_core.proof.columns import Columns
from grading_core.proof.pattern import Pattern
from grading_core.proof.request import PrintedRow, ProofRequest
from grading_core.proof.table import numbers_of, printed_steps, read_rows
from tests.grading_core.proof.hand_garment import row


def pattern(rows: dict[str, str], *more: PrintedRow) -> Pattern:
    request = ProofRequest(labels=("S", "M", "L"), rows=(*[row(*each) for each in rows.items()], *more))
    reading = read_rows(request.rows, 3)
    try:
        while True:
            raise AssertionError(next(reading))
    except StopIteration as end:
        read = end.value
    return Pattern(request, read, numbers_of(read, 3, printed_steps(read)))


NECK = {"neck.back": "30 (32, 34)", "neck.front": "30 (32, 34)", "neck.sleeve": "10 (12, 12)"}


def test_lines_are_what_most_sizes_have() -> None:
    """88 - 30 - 30 - 2 x 10 = 8, four lines of 2; 92 - 32 - 32 - 2 x 12 = 4, of 1; 100 - 34 - 34 - 2 x 12 = 8."""
    assert pattern(NECK | {"neck.stitches": "88 (92, 100)"}).line_stitches == 2


def test_lines_that_no_sum_tells_are_not_known() -> None:
    assert pattern(NECK).line_stitches is None


def test_inches_are_nominal_where_most_are() -> None:
    """100 cm are 40 in at 10 cm for 4 in, and 39.4 exactly; 110 are 44 or 43.3, 120 are 48 or 47.2."""
    lengths = PrintedRow("finished", "bust", run="100 (110, 120)", run_inch="40 (44, 48)")
    assert pattern({}, lengths).inch_convention == "nominal"
    assert pattern({}, lengths._replace(run_inch="39 1/4 (43 1/4, 47 1/4)")).inch_convention == "exact"


def test_a_size_has_the_numbers_that_are_no_dash() -> None:
    told = pattern({"neck.back": "30 (-, 34)", "neck.front": "30 (32, 34)"}).figures(1)
    assert [key.item for key in told] == ["front"]


def test_a_section_whose_anchor_is_a_column_has_an_odd_count() -> None:
    request = ProofRequest(labels=("S",), rows=(), anchor=Anchor(Fraction(3), Fraction(7, 2), Fraction(3)))
    odd = [each.rule.plus for each in Pattern(request, (), Columns()).relations if each.code == "chart_parity"]  # type: ignore[attr-defined]
    assert odd == [1, 1, 0, 0, 1, 1]
