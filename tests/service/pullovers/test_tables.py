"""A pullover's table as JSON, CSV and Markdown, and how it is printed."""

import csv
import io
import re
from fractions import Fraction

import polars
import pytest
from markdown_it import MarkdownIt

from tests.service.pullovers.answers import GAUGE

DASH = "\N{EN DASH}"

REQUEST = {
    "labels": ["S", "M", "4X"],
    "yoke": {"double_body": "never"},
    "yarn": {"metres_per_100g": 210, "swatch_grams": 11, "swatch_stitches": 900},
}
"""Its largest size can't be knitted."""


@pytest.fixture(scope="module")
def accepted(client):
    def ask(media, **request):
        return client.post("/v1/pullovers", json={"gauge": GAUGE, **request}, headers={"Accept": media})

    return ask


@pytest.fixture(scope="module")
def answer(accepted):
    return accepted("application/json", **REQUEST).json


def empty(value):
    return "" if value is None else str(value)


def test_csv_is_the_table_and_nothing_else(accepted, answer):
    header, *lines = csv.reader(io.StringIO(accepted("text/csv", **REQUEST).text, newline=""))
    assert header == ["part", "item", "unit", "S", "M", "4X", "run", "run_inch"]
    assert lines == [
        [row["part"], row["item"], row["unit"], *map(empty, row["values"]), row.get("run", ""), row.get("run_inch", "")]
        for row in answer["table"]
    ]
    # whatever part of the JSON is wanted
    assert accepted("text/csv", **REQUEST, include=["sizes"]).text == accepted("text/csv", **REQUEST).text


def test_a_long_csv_has_a_line_for_each_number_of_the_table(accepted, answer):
    page = accepted("text/csv", **REQUEST, print={"csv_layout": "long"}).text
    header, *lines = csv.reader(io.StringIO(page, newline=""))
    assert header == ["size", "part", "item", "unit", "value"]
    assert lines == [
        [label, row["part"], row["item"], row["unit"], empty(row["values"][place])]
        for place, label in enumerate(answer["labels"])
        for row in answer["table"]
    ]


def test_a_data_frame_library_reads_typed_columns(accepted, answer):
    # polars reads what a data scientist would; the numbers are those of the JSON.
    frame = polars.read_csv(io.StringIO(accepted("text/csv", **REQUEST).text))
    types = dict(zip(frame.columns, frame.dtypes, strict=True))
    text, number, nothing = polars.String, polars.Float64, polars.String
    named = {"part": text, "item": text, "unit": text, "run": text, "run_inch": text}
    assert types == {**named, "S": number, "M": number, "4X": nothing}
    counts = frame.filter(~polars.col("unit").is_in(["cm", "grams", "metres", "yards"]))
    counts = counts.with_columns(polars.col("S", "M").cast(polars.Int64, strict=True))
    told = {(row["part"], row["item"]): row["values"] for row in answer["table"]}
    for line in counts.iter_rows(named=True):
        assert [line["S"], line["M"], line["4X"]] == told[line["part"], line["item"]]
        assert {type(value) for value in told[line["part"], line["item"]]} <= {int, type(None)}
    lengths = frame.filter(polars.col("unit") == "cm")
    assert len(counts) + len(lengths) + 3 == len(told)
    for line in lengths.iter_rows(named=True):
        assert [line["S"], line["M"], line["4X"]] == told[line["part"], line["item"]]
        assert {type(value) for value in told[line["part"], line["item"]][:2]} == {float}
    long = polars.read_csv(io.StringIO(accepted("text/csv", **REQUEST, print={"csv_layout": "long"}).text))
    assert long.schema["value"] == number
    (bust,) = long.filter(size="M", part="finished", item="bust")["value"]
    assert bust == told["finished", "bust"][1]


def test_markdown_is_the_same_table_with_a_dash_for_what_is_missing(accepted, answer):
    cells = []
    for token in MarkdownIt("commonmark").enable("table").parse(accepted("text/markdown", **REQUEST).text):
        if token.type == "tr_open":
            cells.append([])
        elif token.type == "inline":
            cells[-1].append("".join(child.content for child in token.children))
    assert cells[0] == ["part", "item", "unit", "S", "M", "4X", "run", "run_inch"]
    assert cells[1:] == [
        [
            *(row["part"], row["item"], row["unit"]),
            *(DASH if value is None else str(value) for value in row["values"]),
            *(row.get("run", ""), row.get("run_inch", "")),
        ]
        for row in answer["table"]
    ]


def test_print_settings_touch_what_is_printed_and_no_value(accepted, answer):
    settings = {"cm_step": 0.1, "inch_step": 0.125, "decimal_mark": ",", "fractions": "unicode", "missing": "none"}
    printed = accepted("application/json", **REQUEST, print=settings).json
    assert printed["sizes"] == answer["sizes"]
    for row, usual in zip(printed["table"], answer["table"], strict=True):
        assert row["values"] == usual["values"]
        for value, text in zip(row["values"], row["printed"], strict=True):
            if value is None:
                assert text == "none"
            elif row["unit"] == "cm":
                assert abs(Fraction(text.replace(",", ".")) - Fraction(str(value))) <= Fraction(55, 1000)
        if any(value is not None for value in row["values"]):
            first, second, third = row["printed"]
            assert row["run"] == f"{first} ({second}, {third})"
    (bust,) = [row for row in printed["table"] if (row["part"], row["item"]) == ("finished", "bust")]
    # 200 and 230 stitches of 10/22 cm: 90.91 and 104.55 cm, 35.79 and 41.16 in
    assert [size["split"]["body"] for size in answer["sizes"][:2]] == [200, 230]
    assert (bust["run"], bust["run_inch"]) == (
        "90,9 (104,5, none)",
        "35\N{VULGAR FRACTION THREE QUARTERS} (41\N{VULGAR FRACTION ONE EIGHTH}, none)",
    )
    sentences = " ".join(sentence["text"] for part in printed["instructions"] for sentence in part["sentences"])
    assert "none)" in sentences
    assert DASH not in sentences


def test_a_run_that_agrees_is_printed_once_and_a_row_of_nothing_is_not_there(answer, accepted):
    rows = {(row["part"], row["item"]): row for row in answer["table"]}
    assert rows["split", "line_to_body"]["run"] == f"1 (1, {DASH})"
    assert not {("neck", "front_drop"), ("finished", "front_extra")} & rows.keys()
    possible = accepted("application/json", labels=["S", "M"]).json
    (line,) = [row for row in possible["table"] if (row["part"], row["item"]) == ("split", "line_to_body")]
    assert (line["run"], line["printed"]) == ("1", ["1", "1"])


@pytest.mark.parametrize(
    ("settings", "pointer"),
    [
        ({"cm_step": 0}, "cm_step"),
        ({"inch_step": 6}, "inch_step"),
        ({"decimal_mark": "'"}, "decimal_mark"),
        ({"missing": ""}, "missing"),
        ({"csv_layout": "tall"}, "csv_layout"),
        ({"language": "xx"}, "language"),
    ],
)
def test_what_is_no_way_to_print_is_refused(accepted, settings, pointer):
    response = accepted("application/json", print=settings)
    assert response.status_code == 422
    assert [error["pointer"] for error in response.json["errors"]] == [f"/print/{pointer}"]


def test_parts_and_items_are_enumerated_in_the_contract_and_the_yarns_told_by_a_pattern(client, answer):
    schemas = client.get("/openapi.json").json["components"]["schemas"]
    row, changed = (schemas[name]["properties"] for name in ("TableRow", "ChangedNumber"))
    parts = row["part"].get("enum") or row["part"]["x-extensible-enum"]
    assert {told["part"] for told in answer["table"]} == {*parts}
    assert row["item"]["type"] == "string"
    assert changed["item"]["x-extensible-enum"] == row["item"]["x-extensible-enum"]
    known, made = {*row["item"]["x-extensible-enum"]}, re.compile(row["item"]["x-extensible-pattern"])
    for told in answer["table"]:
        assert bool(made.search(told["item"])) == (told["part"] == "yarn") == (told["item"] not in known)
