import unicodedata
from concurrent.futures import ThreadPoolExecutor
from fractions import Fraction

import pint
import pytest
from hypothesis import given
from hypothesis import strategies as st

from grading_core.printing import DASH, Printing, printed_as, printing
from grading_core.units import CM_PER_INCH

PINT: pint.UnitRegistry = pint.UnitRegistry(non_int_type=Fraction)

fractions = st.fractions(min_value=-1000, max_value=1000, max_denominator=997)


def read_plain(printed: str) -> Fraction:
    sign = -1 if printed.startswith("-") else 1
    return sign * sum(Fraction(part) for part in printed.removeprefix("-").split(" "))


def read_unicode(printed: str) -> Fraction:
    """By the Unicode character database: NFKC writes a vulgar fraction, and raised and lowered digits, out."""
    sign = -1 if printed.startswith("-") else 1
    whole = "".join(letter for letter in printed if letter in "0123456789")
    rest = printed.removeprefix("-")[len(whole) :]
    written = unicodedata.normalize("NFKC", rest).replace("\N{FRACTION SLASH}", "/")
    return sign * (Fraction(whole or 0) + Fraction(written or 0))


def nearest_multiple(value: Fraction, step: Fraction) -> Fraction:
    """By search; of two equally near the larger."""
    around = range(int(value / step) - 2, int(value / step) + 3)
    return min((n * step for n in around), key=lambda multiple: (abs(multiple - value), -multiple))


STEPS = st.sampled_from([Fraction(step) for step in ("2", "1", "1/2", "1/4", "1/8", "1/16", "3/4")])


@given(fractions, STEPS, st.sampled_from([("plain", read_plain), ("unicode", read_unicode)]))
def test_printed_inches_are_the_nearest_step_of_an_independent_unit_librarys_inches(length_cm, step, style) -> None:
    # Pint 0.25; the international inch of 1959 is 2.54 cm exactly, the nominal one is a quarter of 10 cm.
    fraction_style, read = style
    inches = PINT.Quantity(length_cm, "cm").to("inch").magnitude
    exact = Printing(inch_step=step, fractions=fraction_style)
    assert read(exact.inches(length_cm)) == nearest_multiple(inches, step)
    nominal = Printing(inch_step=step, fractions=fraction_style, inch_convention="nominal")
    assert read(nominal.inches(length_cm)) == nearest_multiple(length_cm * Fraction(4, 10), step)


@given(st.integers(-4000, 4000))
def test_a_printed_fraction_stands_in_lowest_terms_behind_its_whole_number(eighths: int) -> None:
    printed = Printing(inch_step=Fraction(1, 8)).inches(Fraction(eighths, 8) * CM_PER_INCH)
    *_, last = printed.removeprefix("-").split(" ")
    if "/" in last:
        numerator, denominator = map(int, last.split("/"))
        assert Fraction(numerator, denominator).denominator == denominator
        assert numerator < denominator
    assert not printed.startswith(("0 ", "-0"))


@pytest.mark.parametrize(
    ("tie", "printed"),
    [(Fraction(1, 8), "1/4"), (Fraction(3, 8), "1/2"), (Fraction(-1, 8), "0"), (Fraction(79, 8), "10")],
)
def test_a_tie_between_two_printed_fractions_goes_up(tie: Fraction, printed: str) -> None:
    assert Printing().inches(tie * CM_PER_INCH) == printed


def test_fractions_are_written_as_the_unicode_standard_has_them() -> None:
    # The Unicode Standard, block Number Forms and section 6.2 (fraction slash).
    unicode = Printing(fractions="unicode", inch_step=Fraction(1, 16))
    inches = [Fraction(text) for text in ("63/4", "3/4", "251/16", "-1/2")]
    assert [unicode.inches(inch * CM_PER_INCH) for inch in inches] == [
        "15\N{VULGAR FRACTION THREE QUARTERS}",
        "\N{VULGAR FRACTION THREE QUARTERS}",
        "15\N{SUPERSCRIPT ONE}\N{SUPERSCRIPT ONE}\N{FRACTION SLASH}\N{SUBSCRIPT ONE}\N{SUBSCRIPT SIX}",
        "-\N{VULGAR FRACTION ONE HALF}",
    ]


def test_inches_in_steps_that_no_knitter_reads_as_a_fraction_are_decimals() -> None:
    tenths = Printing(inch_step=Fraction(1, 10), decimal_mark=",")
    assert [tenths.inches(Fraction(cm)) for cm in (101, 254)] == ["39,8", "100"]


@given(fractions, st.sampled_from([Fraction(1), Fraction(1, 2), Fraction(1, 10), Fraction(1, 100), Fraction(5)]))
def test_centimetres_are_the_nearest_step_with_the_decimal_mark_that_is_asked(length_cm: Fraction, step) -> None:
    printed = Printing(cm_step=step, decimal_mark=",").cm(length_cm)
    assert "." not in printed
    assert Fraction(printed.replace(",", ".")) == nearest_multiple(length_cm, step)


def test_settings_hold_for_a_block_and_for_its_thread_alone() -> None:
    with printed_as(Printing(missing="none")):
        with printed_as(Printing(missing="x")), ThreadPoolExecutor(1) as other:
            assert printing().missing == "x"
            assert other.submit(lambda: printing().missing).result() == DASH
        assert printing().missing == "none"
    assert printing() == Printing()
