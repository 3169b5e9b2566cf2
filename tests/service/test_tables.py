"""CSV and Markdown say the same as JSON. RFC 4180 (CSV); the `csv` module and a Markdown parser read them back."""

import csv
import io
import json

from hypothesis import assume, given
from hypothesis import strategies as st
from markdown_it import MarkdownIt

from service.representations import tables
from tests.floors import in_a_hundred_cases

DASH = "\N{EN DASH}"

ANSWER = {
    "sizes": [
        {
            "label": "S",
            "feasible": True,
            "rounds": 60,
            "depth": {"cm": 19.35, "inch": 7.62},
            "stitches": {"neck": 100, "split": 272},
            "increase_rounds": [{"round": 2, "body": 1}, {"round": 4, "body": 1}],
            "every": [4, 6],
        },
        {"label": "M | L", "feasible": False, "reason": "=1+1", "rounds": None, "increase_rounds": [{"round": 3}]},
    ],
    "runs": {"neck": {"stitches": "100 (" + DASH + ")"}},
    "warnings": [{"code": "long_float", "message": "Floats <b>"}],
    "meta": {"version": "1.0.0", "input_digest": "sha256:0"},
}


def read_csv(text):
    return list(csv.reader(io.StringIO(text, newline="")))


def read_markdown(text):
    """The tables of a Markdown text as lists of rows of cells, read by a general parser."""
    found = []
    for token in MarkdownIt("commonmark").enable("table").parse(text):
        if token.type == "table_open":
            found.append([])
        elif token.type == "tr_open":
            found[-1].append([])
        elif token.type == "inline":
            found[-1][-1].append("".join(child.content for child in token.children))
    return found


def test_csv_is_long_form_one_line_per_size_and_item():
    lines = read_csv(tables.csv(ANSWER))
    assert lines[0] == ["size", "item", "unit", "value"]
    assert [line for line in lines if line[0] == "S"] == [
        ["S", "feasible", "", "true"],
        ["S", "rounds", "rounds", "60"],
        ["S", "depth", "cm", "19.35"],
        ["S", "depth", "inch", "7.62"],
        ["S", "stitches.neck", "stitches", "100"],
        ["S", "stitches.split", "stitches", "272"],
        ["S", "increase_rounds.1.round", "", "2"],
        ["S", "increase_rounds.1.body", "", "1"],
        ["S", "increase_rounds.2.round", "", "4"],
        ["S", "increase_rounds.2.body", "", "1"],
        ["S", "every.1", "", "4"],
        ["S", "every.2", "", "6"],
        ["S", "reason", "", ""],
    ]


def test_every_size_has_the_same_items_in_the_same_order():
    lines = read_csv(tables.csv(ANSWER))[1:]
    first, second = ([line[1:3] for line in lines if line[0] == label] for label in ("S", "M | L"))
    assert first == second


def test_what_a_size_does_not_have_is_empty_in_csv():
    values = {line[1]: line[3] for line in read_csv(tables.csv(ANSWER)) if line[0] == "M | L"}
    assert values["rounds"] == values["stitches.neck"] == values["increase_rounds.2.round"] == ""
    assert values["increase_rounds.1.round"] == "3"


def test_what_holds_for_all_sizes_follows_without_a_size():
    assert [line for line in read_csv(tables.csv(ANSWER)) if line[0] == ""] == [
        ["", "runs.neck.stitches", "stitches", "100 (" + DASH + ")"],
        ["", "warnings.1.code", "", "long_float"],
        ["", "warnings.1.message", "", "Floats <b>"],
        ["", "meta.version", "", "1.0.0"],
        ["", "meta.input_digest", "", "sha256:0"],
    ]


def test_csv_lines_end_as_the_standard_says():
    text = tables.csv(ANSWER)
    assert text.endswith("\r\n")
    assert text.count("\n") == text.count("\r\n") == len(read_csv(text))


def test_text_that_a_spreadsheet_would_compute_is_disarmed():
    values = {line[1]: line[3] for line in read_csv(tables.csv(ANSWER)) if line[0] == "M | L"}
    assert values["reason"] == "'=1+1"
    labels = [line[0] for line in read_csv(tables.csv({"sizes": [{"label": "@x", "a": -1}]}))]
    assert labels == ["size", "'@x"]


def test_a_negative_number_stays_a_number():
    assert read_csv(tables.csv({"sizes": [{"label": "S", "difference": -1.5}]}))[1][3] == "-1.5"


def test_markdown_is_items_by_sizes():
    table, overall = read_markdown(tables.markdown(ANSWER))
    assert table[0] == ["item", "unit", "S", "M | L"]
    assert ["depth", "cm", "19.35", DASH] in table
    assert ["rounds", "rounds", "60", DASH] in table
    assert ["reason", "", DASH, "=1+1"] in table
    assert ["warnings.1.message", "", "Floats <b>"] in overall


def test_text_cannot_break_out_of_a_markdown_table():
    label = "a|b\\|c\n<script>"
    [table] = read_markdown(tables.markdown({"sizes": [{"label": label, "a": 1}]}))
    assert table == [["item", "unit", "a|b\\|c <script>"], ["a", "", "1"]]
    assert "<script>" not in tables.markdown({"sizes": [{"label": label, "a": 1}]})


LEAVES = st.integers() | st.floats(allow_nan=False, allow_infinity=False) | st.none() | st.booleans()
NAMES = st.sampled_from(["rounds", "body", "neck_stitches", "depth", "cm"])
VALUES = st.recursive(
    LEAVES, lambda below: st.lists(below, max_size=3) | st.dictionaries(NAMES, below, max_size=3), max_leaves=10
)
SIZES = st.lists(st.dictionaries(NAMES, VALUES, min_size=1, max_size=4), min_size=1, max_size=3)


def leaves(value, path=()):
    """Every number and flag of a value, by its dotted path: an independent, one-size walk."""
    if isinstance(value, dict):
        for name, below in value.items():
            yield from leaves(below, (*path, name))
    elif isinstance(value, list):
        for place, below in enumerate(value, 1):
            yield from leaves(below, (*path, str(place)))
    elif value is not None:
        yield ".".join(path), value


@in_a_hundred_cases(80)
@given(SIZES)
def test_all_three_representations_say_the_same_numbers(sizes):
    assume(any(True for size in sizes for _ in leaves(size)))
    answer = {"sizes": [{"label": f"size {place}", **size} for place, size in enumerate(sizes)]}
    lines = read_csv(tables.csv(answer))[1:]
    found = read_markdown(tables.markdown(answer))
    body = found[0][1:] if found else []
    for place, size in enumerate(sizes):
        expected = sorted((item, json.dumps(value)) for item, value in leaves(size))
        in_csv = sorted(
            (item, json.dumps(json.loads(value)))
            for label, item, _, value in lines
            if label == f"size {place}" and value
        )
        in_markdown = sorted((row[0], json.dumps(json.loads(row[2 + place]))) for row in body if row[2 + place] != DASH)
        assert in_csv == in_markdown == expected
