"""How patterns print size runs, read as numbers. The habits are common practice, no source."""

import random
from contextlib import suppress
from fractions import Fraction
from unicodedata import name, numeric

import pytest
from hypothesis import example, given, settings
from hypothesis import strategies as st

from grading_core.proof.figures import number
from grading_core.proof.reading import UnreadableError, read_run, read_usual_runs

HALF, QUARTER = Fraction(1, 2), Fraction(1, 4)


def read(text: str, sizes: int) -> list[Fraction | None]:
    return [None if value is None else number(value) for value in read_run(text, sizes).values]


@pytest.mark.parametrize(
    "text",
    [
        "84 (88, 92)",
        "84(88,92)",
        "84 (88 , 92 )",
        "84 (88) (92)",
        "84 (88) 92",
        "(84) 88 (92)",
        "84 [88, 92]",
        "84 {88, 92}",
        "84 <88, 92>",
        "84 [88 (92)]",
        "84 (88: 92)",
        "84 (88:92)",
        "84 (88; 92)",
        "84 (88 | 92)",
        "84, 88, 92",
        "84; 88; 92",
        "84/88/92",
        "84 / 88 / 92",
        "84-88-92",
        "84 - 88 - 92",
        "84 \N{EN DASH} 88 \N{EN DASH} 92",
        "84-88 (92)",
        "84\t88\t92",
        "  84 (88, 92)  ",
        "84\N{NO-BREAK SPACE}(88,\N{NO-BREAK SPACE}92)",
        "84 (88,\n92)",
        "84 (88, 92).",
        "84 (88, 92) sts",
        "84 (88, 92) sts.",
        "84 sts (88 sts, 92 sts)",
        "84 (88, 92) M",
        "CO 84 (88, 92)",
        "\N{FULLWIDTH DIGIT EIGHT}\N{FULLWIDTH DIGIT FOUR} (88, 92)",
    ],
)
def test_three_counts_are_read_however_they_are_parted(text: str) -> None:
    assert read(text, 3) == [84, 88, 92]


@pytest.mark.parametrize(
    ("text", "numbers"),
    [
        ("21.5 (22, 23.5)", [21 + HALF, 22, 23 + HALF]),
        ("21,5 (22; 23,5)", [21 + HALF, 22, 23 + HALF]),
        ("21,5 (22, 23,5)", [21 + HALF, 22, 23 + HALF]),
        ("21,5/22/23,5", [21 + HALF, 22, 23 + HALF]),
        ("21,5-22-23,5", [21 + HALF, 22, 23 + HALF]),
        ("21,25 (22,5; 23,75) cm", [21 + QUARTER, 22 + HALF, 24 - QUARTER]),
        (".5 (.75, 1)", [HALF, 1 - QUARTER, 1]),
        ("36\N{FRACTION NUMERATOR ONE}2 (38.25, 40)", [36 + HALF, 38 + QUARTER, 40]),
        ("36 1/2 (38 1/4, 40)", [36 + HALF, 38 + QUARTER, 40]),
        ("36-1/2 (38-1/4, 40)", [36 + HALF, 38 + QUARTER, 40]),
        ("36\N{VULGAR FRACTION ONE HALF} (38\N{VULGAR FRACTION ONE QUARTER}, 40)", [36 + HALF, 38 + QUARTER, 40]),
        ("36 \N{VULGAR FRACTION ONE HALF}[38 \N{VULGAR FRACTION ONE QUARTER}:40]", [36 + HALF, 38 + QUARTER, 40]),
        ("36 1\N{FRACTION SLASH}2 (38 1\N{FRACTION SLASH}4, 40)", [36 + HALF, 38 + QUARTER, 40]),
        ("36\N{SUPERSCRIPT ONE}\N{FRACTION SLASH}\N{SUBSCRIPT TWO} (38.25, 40)", [36 + HALF, 38 + QUARTER, 40]),
        ("1/2 (3/4, 1)", [HALF, 1 - QUARTER, 1]),
        ("1,025 (1,100, 1,200)", [1025, 1100, 1200]),
        ("1,025 (1,100; 1,200) yds", [1025, 1100, 1200]),
        ("950 (1,025, 1,100)", [950, 1025, 1100]),
        ("1025 (1100,1200)", [1025, 1100, 1200]),
        ("-2 (-1, 0)", [-2, -1, 0]),
        ("\N{MINUS SIGN}2 (\N{MINUS SIGN}1, 0)", [-2, -1, 0]),
    ],
)
def test_three_numbers_that_are_no_counts_are_read(text: str, numbers: list[Fraction]) -> None:
    assert read(text, 3) == numbers


@pytest.mark.parametrize("dash", "-\N{HYPHEN}\N{FIGURE DASH}\N{EN DASH}\N{EM DASH}\N{MINUS SIGN}")
def test_a_dash_is_a_size_without_a_number(dash: str) -> None:
    assert read(f"{dash} (88, {dash})", 3) == [None, 88, None]


def test_a_word_in_a_numbers_place_is_a_size_without_a_number() -> None:
    assert read("none (88, 92)", 3) == [None, 88, 92]


@pytest.mark.parametrize(
    ("text", "only"),
    [
        ("8", 8),
        ("8 sts", 8),
        ("92,5", 92 + HALF),
        ("92,5 cm", 92 + HALF),
        ("36 1/2", 36 + HALF),
        ("36-1/2", 36 + HALF),
        ("3/4", 1 - QUARTER),
        ("1,200", 1200),
    ],
)
def test_one_number_is_read_as_one_for_all_sizes(text: str, only: Fraction) -> None:
    assert read(text, 3) == [only]


def test_what_a_comma_parts_is_told_by_the_number_of_sizes() -> None:
    assert read("100,105", 2) == [100, 105]
    assert read("100,105", 1) == [100_105]


@pytest.mark.parametrize(("text", "numbers"), [("92/88", [92, 88]), ("5/0", [5, 0]), ("1/13", [1, 13])])
def test_a_slash_that_makes_no_fraction_of_a_tape_measure_parts_two_sizes(text: str, numbers: list[Fraction]) -> None:
    assert read(text, 2) == numbers


def test_a_run_of_another_length_is_read_all_the_same() -> None:
    assert read("84 (88, 92)", 4) == [84, 88, 92]


@pytest.mark.parametrize("printed", ["28-30", "28\N{EN DASH}30 (32\N{EN DASH}34)"])
def test_ranges_are_not_read_as_sizes_that_the_pattern_does_not_have(printed: str) -> None:
    with pytest.raises(UnreadableError):
        read(printed, 3)


@pytest.mark.parametrize(
    "unit",
    ["in", "in.", "ins", "inch", "inches", "IN", "Zoll", '"', "''", "\N{DOUBLE PRIME}", "\N{PRIME}" * 2, "\u201d"],
)
def test_inches_are_known_by_their_mark(unit: str) -> None:
    runs = (f"36 1/2 (38, 40) {unit}", f"36\N{VULGAR FRACTION ONE HALF}{unit} (38{unit}, 40{unit})")
    assert [(read(run, 3), read_run(run, 3).unit) for run in runs] == [([36 + HALF, 38, 40], "inch")] * 2


@pytest.mark.parametrize("unit", ["cm", "cm.", "CM", "centimetres", "centimeter", "Zentimeter", "\N{SQUARE CM}"])
def test_centimetres_are_known_by_their_word(unit: str) -> None:
    run = read_run(f"92.5 (97, 102) {unit}", 3)
    assert ([number(value or 0) for value in run.values], run.unit) == ([92 + HALF, 97, 102], "cm")


def test_other_words_name_no_unit_of_length() -> None:
    assert read_run("84 (88, 92) sts", 3).unit is None


VULGAR = [chr(code) for code in range(0xBC, 0x218A) if name(chr(code), "").startswith("VULGAR FRACTION")]


@pytest.mark.parametrize("sign", VULGAR)
def test_every_fraction_that_unicode_has_is_read_as_unicode_says(sign: str) -> None:
    meant = Fraction(numeric(sign)).limit_denominator(100)
    assert len(VULGAR) == 19
    assert [*read(sign, 1), *read(f"7{sign}", 1), *read(f"7 {sign}", 1)] == [meant, 7 + meant, 7 + meant]


@pytest.mark.parametrize("below", [2, 3, 4, 5, 6, 7, 8, 9, 10, 12, 15, 16, 20, 32, 64])
def test_every_fraction_of_a_tape_measure_is_read_exactly(below: int) -> None:
    for above in range(1, below):
        assert read(f"5 {above}/{below}", 1) == [Fraction(5 * below + above, below)]


@pytest.mark.parametrize(
    "text",
    [
        "",
        " ",
        "()",
        ",",
        "88\N{SUPERSCRIPT TWO}",
        "12.5.3",
        "+5",
        "1e5",
        "0x10",
        "36 3/2",
        "84 88 92",
        "84 & 88",
        "84 (88, 9 2)",
        "84 (88, 92?)",
        "36' (38')",
        "12345678",
        "1.2345678",
        "92 cm (36 in)",
    ],
)
def test_what_is_no_run_is_not_read(text: str) -> None:
    with pytest.raises(UnreadableError):
        read_run(text, 1)


# Every sign that the reader looks for, and some that it doesn't.
SIGNS = st.text(
    st.sampled_from("0123456789 ,.;:/|-()[]{}<>\"'incma\t\n\u2013\u2212\u00bd\u00b2\u2044\u2033x"), max_size=60
)


def read_or_refused(text: str, sizes: int) -> None:
    with suppress(UnreadableError):
        assert read_run(text, sizes).values


@settings(max_examples=300)
@given(st.one_of(st.text(max_size=60), SIGNS), st.integers(1, 40))
@example("\N{FRACTION NUMERATOR ONE}", 1)
@example("9" * 5000, 1)
def test_any_text_is_read_or_said_to_be_unreadable(text: str, sizes: int) -> None:
    read_or_refused(text, sizes)


@pytest.mark.parametrize(
    "repeated", [*"1a, ,.-/(\u00bd\"';\t", "a.", "a ", "1,", "1,000,", "1/", "1-", "1 ", "(1", ", 1"]
)
def test_no_text_of_a_thousand_signs_is_tried_in_every_way(repeated: str) -> None:
    """A pattern that tries a text in every way it could be parted never comes to an end of these."""
    for last in ("", "!", "1"):
        read_or_refused("1" + repeated * (1000 // len(repeated)) + last, 40)


BRACKETS = (("(", ")"), ("[", "]"), ("{", "}"), ("<", ">"))
QUARTERS = {QUARTER: "\u00bc", HALF: "\u00bd", 3 * QUARTER: "\u00be"}


def written(value: Fraction, style: random.Random, *, decimal_comma: bool) -> str:
    """A multiple of a quarter in one of the ways to print it."""
    whole, rest = divmod(value, 1)
    if not rest:
        return str(whole)
    decimal = f"{float(value):.2f}".rstrip("0").replace(".", "," if decimal_comma else ".")
    ways = [decimal] if decimal_comma else [decimal, f"{whole} {rest}", f"{whole}-{rest}", f"{whole}{QUARTERS[rest]}"]
    return style.choice(ways)


@settings(max_examples=200)
@given(
    st.lists(
        st.one_of(st.none(), st.integers(4, 4000).map(lambda quarters: quarters * QUARTER)), min_size=2, max_size=12
    ),
    st.randoms(use_true_random=False),
)
def test_a_run_printed_in_any_style_reads_back(values: list[Fraction | None], style: random.Random) -> None:
    decimal_comma = style.random() < 0.3
    dash = style.choice("-\u2013\u2014")
    first, *others = [dash if v is None else written(v, style, decimal_comma=decimal_comma) for v in values]
    opening, closing = style.choice(BRACKETS)
    parting = style.choice(("; ", ": ", " | ") if decimal_comma else (", ", "; ", ": ", " | "))
    unit = style.choice(("", " in", " cm", " sts", '"'))
    text = f"{first}{style.choice((' ', ''))}{opening}{parting.join(others)}{closing}{unit}"
    assert read(text, len(values)) == values


USUAL = st.text(st.sampled_from("0123456789 ,.()"), min_size=1, max_size=24)
RUN = st.lists(st.sampled_from(("84", "7", "12.5", "0.25", "9999999", "9999999.999999")), min_size=1, max_size=5).map(
    lambda sizes: sizes[0] if len(sizes) == 1 else f"{sizes[0]} ({', '.join(sizes[1:])})"
)


@settings(max_examples=400)
@given(st.lists(st.one_of(RUN, RUN, USUAL, SIGNS), max_size=6))
@example(["84, 85"])
@example(["84", "1,5"])
@example(["84], [85"])
@example(["12345678 (9)"])
@example(["1.2345678"])
@example(["1.00000000000000000001"])
@example(["84", "9" * 600])
@example(["9" * 400 + ".5"])
def test_runs_that_are_read_in_one_go_are_read_as_each_by_itself(texts: list[str]) -> None:
    for text, values in read_usual_runs(texts).items():
        assert (values, None) == read_run(text, len(values))


def test_usual_runs_are_read_beside_others() -> None:
    assert read_usual_runs(["84 (88, 92.5)", "84 [88: 92]", "7"]).keys() == {"84 (88, 92.5)", "7"}
