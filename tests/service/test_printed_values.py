"""Values as a language prints them."""

from fractions import Fraction

from grading_core.parts.neckband import HEIGHT
from grading_core.printing import DASH, Printing, printed_as
from grading_core.sentences import for_sizes
from grading_core.yoke.words import PLAIN
from service.language import LANGUAGES

ENGLISH = LANGUAGES["en-US"]


def test_a_missing_number_is_printed_as_it_is_asked():
    gap = PLAIN(rounds=(3, None))
    assert f"3 ({DASH})" in ENGLISH.text(gap)
    with printed_as(Printing(missing="none")):
        assert "3 (none)" in ENGLISH.text(gap)


def test_a_decimal_has_the_mark_that_is_asked():
    with printed_as(Printing(decimal_mark=",")):
        told = ENGLISH.text(HEIGHT(length=(Fraction(5, 2), Fraction(3))))
    assert "2,5 (3) cm" in told
    assert "2.5" not in told


def test_a_sentence_for_some_sizes_names_them_and_prints_their_numbers_alone():
    told = ENGLISH.text(for_sizes(PLAIN(rounds=(3, 4, 5)), ["S", "M", "L"], [0, 2]))
    assert "S and L" in told
    assert "3 (5)" in told
    assert DASH not in told
