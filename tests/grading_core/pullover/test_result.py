from fractions import Fraction

from grading_core.printing import DASH
from grading_core.pullover.result import Measured, Row


def row(unit, values, printed, printed_inch=None):
    return Row(
        part="yoke",
        item="rounds",
        unit=unit,
        title="Yoke, rounds",
        values=values,
        printed=printed,
        printed_inch=printed_inch,
    )


def test_the_runs_of_a_row_are_what_is_printed_with_a_dash_for_nothing_and_none_where_all_is_missing():
    assert row("rounds", (96, None, 96), ("96", DASH, "96")).run == f"96 ({DASH}, 96)"
    lengths = row("cm", (Fraction(10), Fraction(101, 10)), ("10", "10"), ("4", "4"))
    assert (lengths.run, lengths.run_inch) == ("10", "4")
    nothing = row("cm", (None, None), (DASH, DASH), (DASH, DASH))
    assert nothing.run is nothing.run_inch is None


def test_numbers_are_answered_as_their_unit_is_told():
    lengths, grams = (Fraction(1, 8), None), (Fraction(1, 8), None)
    assert row("cm", lengths, ("0", DASH)).answered == (0.13, None)
    assert row("grams", grams, ("0", DASH)).answered == (0.1, None)


def test_a_difference_is_finished_minus_target_and_none_where_nothing_was_asked():
    assert Measured(Fraction(91), Fraction(92)).difference_cm == -1
    assert Measured(Fraction(91), None).difference_cm is None
