"""CSV and Markdown are one table. RFC 4180 (CSV); the `csv` module, polars and a Markdown parser read it back."""

import csv
import io
import json
from fractions import Fraction

import pytest
from hypothesis import given
from hypothesis import strategies as st
from markdown_it import MarkdownIt

from grading_core.printing import DASH, Printing, printed_as
from service.printing import PrintSettings
from service.representations import tables
from tests.floors import in_a_hundred_cases

USUAL = PrintSettings()
LONG = PrintSettings(csv_layout="long")

ANSWER = {
    "sizes": [
        {
            "label": "S",
            "feasible": True,
            "fit": "classic",
            "rounds": 60,
            "depth": Fraction("19.354"),
            "stitches": {"neck": 100, "split": 272},
            "rise_over_run": 1.77,
            "increase_rounds": [{"round": 2, "body": 1}, {"round": 4, "body": 1}],
            "every": [4, 6],
            "options": [
                {"method": "wider", "feasible": True, "rounds": 62},
                {"method": "closer", "feasible": False, "rounds": 62, "nearest": [{"field": "rounds", "value": 64}]},
            ],
        },
        {"label": "M | L", "feasible": False, "reason": "=1+1", "rounds": 62, "depth": Fraction(20)},
        {"label": "XL", "feasible": True, "rounds": 60, "yarns": [{"yarn": "=oat", "grams": {"likely": 31.5}}]},
    ],
    "runs": {"neck": {"stitches": "100 (" + DASH + ")"}},
    "warnings": [{"code": "long_float", "message": "Floats <b>"}],
    "meta": {"version": "1.0.0", "input_digest": "sha256:0"},
}
TABLE = [
    ["part", "item", "unit", "S", "M | L", "XL", "run", "run_inch"],
    ["size", "rounds", "rounds", "60", "", "60", f"60 ({DASH}, 60)", ""],
    ["size", "depth", "cm", "19.35", "", "", f"19.5 ({DASH}, {DASH})", f"7 1/2 ({DASH}, {DASH})"],
    ["stitches", "neck", "stitches", "100", "", "", f"100 ({DASH}, {DASH})", ""],
    ["stitches", "split", "stitches", "272", "", "", f"272 ({DASH}, {DASH})", ""],
    ["size", "rise_over_run", "", "1.77", "", "", f"1.77 ({DASH}, {DASH})", ""],
    ["options", "wider.rounds", "rounds", "62", "", "", f"62 ({DASH}, {DASH})", ""],
    ["yarns", "'=oat.grams.likely", "grams", "", "", "31.5", f"{DASH} ({DASH}, 31.5)", ""],
]


def read_csv(text):
    return list(csv.reader(io.StringIO(text, newline="")))


def read_markdown(text):
    """The one table of a Markdown text as rows of cells, read by a general parser."""
    found = []
    for token in MarkdownIt("commonmark").enable("table").parse(text):
        if token.type == "table_open":
            found.append([])
        elif token.type == "tr_open":
            found[-1].append([])
        elif token.type == "inline":
            found[-1][-1].append("".join(child.content for child in token.children))
    (table,) = found
    return table


def labelled(*labels):
    return {"sizes": [{"label": label, "rounds": place} for place, label in enumerate(labels)]}


def test_csv_is_a_row_for_each_quantity_and_a_column_for_each_size():
    assert read_csv(tables.csv(ANSWER, USUAL)) == TABLE


def test_a_long_csv_has_a_line_for_each_size_and_quantity():
    header, *lines = read_csv(tables.csv(ANSWER, LONG))
    assert header == ["size", "part", "item", "unit", "value"]
    sizes = TABLE[0][3:6]
    assert lines == [[label, *row[:3], row[3 + place]] for place, label in enumerate(sizes) for row in TABLE[1:]]


def test_markdown_is_the_same_table_with_a_dash_for_what_is_missing():
    found = read_markdown(tables.markdown(ANSWER, USUAL))
    expected = [[*row[:3], *(cell or DASH for cell in row[3:6]), *row[6:]] for row in TABLE]
    # what a spreadsheet would compute is harmless here
    expected[-1][1] = "=oat.grams.likely"
    assert found == expected


def test_csv_lines_end_as_the_standard_says():
    text = tables.csv(ANSWER, USUAL)
    assert text.endswith("\r\n")
    assert text.count("\n") == text.count("\r\n") == len(read_csv(text))


def test_runs_are_printed_from_exact_lengths_as_the_request_wants_them():
    # 10.2499 cm is nearer to 10 by halves, and 10.25, as it is answered, would be printed as 10.5
    answer = {"sizes": [{"label": "S", "depth": Fraction("10.2499")}, {"label": "M"}]}
    with printed_as(Printing(missing="none", decimal_mark=",", cm_step=Fraction(1, 2), fractions="unicode")):
        assert read_csv(tables.csv(answer, USUAL))[1] == ["size", "depth", "cm", "10.25", "", "10 (none)", "4 (none)"]
        assert read_markdown(tables.markdown(answer, USUAL))[1][4] == "none"


def test_a_quantity_of_no_size_has_no_run():
    table = [{"part": "neck", "item": "front_drop", "unit": "rows", "values": [None, None]}]
    answer = {"labels": ["S", "M"], "table": table}
    assert read_csv(tables.csv(answer, USUAL))[1] == ["neck", "front_drop", "rows", "", "", "", ""]


@pytest.mark.parametrize("text", ["=1+1", "+cmd", "-2+3", "@x", "\t=1"])
def test_text_that_a_spreadsheet_would_compute_is_disarmed_in_cells_and_in_the_header(text):
    # OWASP, CSV injection: what begins with = + - @, tab or carriage return.
    assert read_csv(tables.csv(labelled(text), USUAL))[0][3] == "'" + text
    assert read_csv(tables.csv(labelled(text), LONG))[1][0] == "'" + text
    with printed_as(Printing(missing="-")):
        run = read_csv(tables.csv({"sizes": [{"label": "S"}, {"label": "M", "rounds": 1}]}, USUAL))[1][-2]
    assert run == "'- (1)"


def test_a_negative_number_stays_a_number():
    answer = {"sizes": [{"label": "S", "difference": Fraction("-1.5"), "rounds": -2}]}
    assert [row[3:5] for row in read_csv(tables.csv(answer, USUAL))[1:]] == [["-1.5", "-1.5"], ["-2", "-2"]]


@in_a_hundred_cases(60)
@given(
    st.lists(
        st.sampled_from(["part", "run", "unit", "size run", "size size run", "=1", "'=1", "size '=1", "S", "Run"]),
        min_size=1,
        max_size=6,
        unique=True,
    )
)
def test_every_column_has_a_name_of_its_own_whatever_the_sizes_are_called(labels):
    for header in (
        read_csv(tables.csv(labelled(*labels), USUAL))[0],
        read_markdown(tables.markdown(labelled(*labels), USUAL))[0],
    ):
        assert len(set(header)) == len(header) == len(labels) + 5
        assert (header[:3], header[-2:]) == (["part", "item", "unit"], ["run", "run_inch"])
        for label, column in zip(labels, header[3:-2], strict=True):
            assert column.endswith(label)


def test_text_cannot_break_out_of_a_markdown_table():
    label = "a|b\\|c\n<script>"
    text = tables.markdown({"sizes": [{"label": label, "rounds": 1}]}, USUAL)
    assert read_markdown(text)[0][3] == "a|b\\|c <script>"
    assert "<script>" not in text


NAMES = st.sampled_from(["rounds", "body", "neck_stitches", "depth"])
LEAVES = st.integers(-999, 9999) | st.floats(-9, 9).map(lambda value: round(value, 2)) | st.none() | st.booleans()
VALUES = st.recursive(LEAVES, lambda below: st.dictionaries(NAMES, below, max_size=3), max_leaves=10)
SIZES = st.lists(st.dictionaries(NAMES, VALUES, min_size=1, max_size=4), min_size=1, max_size=3)


def numbers(value, path=()):
    """Every number of a value by its path: an independent, one-size walk."""
    if isinstance(value, dict):
        for name, below in value.items():
            yield from numbers(below, (*path, name))
    elif value is not None and not isinstance(value, bool):
        yield path if len(path) > 1 else ("size", *path), json.dumps(value)


@in_a_hundred_cases(80)
@given(SIZES)
def test_all_representations_say_the_same_numbers(sizes):
    labels = [f"no. {place}" for place, _ in enumerate(sizes)]
    answer = {"sizes": [{"label": label, **size} for label, size in zip(labels, sizes, strict=True)]}
    wide, long = (read_csv(tables.csv(answer, settings))[1:] for settings in (USUAL, LONG))
    marked = read_markdown(tables.markdown(answer, USUAL))[1:]
    for place, (label, size) in enumerate(zip(labels, sizes, strict=True)):
        expected = sorted(((path[0], ".".join(path[1:])), value) for path, value in numbers(size))
        assert sorted(((row[0], row[1]), row[3 + place]) for row in wide if row[3 + place]) == expected
        assert sorted(((row[1], row[2]), row[4]) for row in long if row[0] == label and row[4]) == expected
        assert sorted(((row[0], row[1]), row[3 + place]) for row in marked if row[3 + place] != DASH) == expected
