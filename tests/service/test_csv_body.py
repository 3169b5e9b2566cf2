"""Tables in CSV as the JSON that they stand for; expected values are written by hand."""

from __future__ import annotations

from typing import Any

import pytest
from flask.testing import FlaskClient

from service.csv_body import read_wide_table
from service.errors import Refusal


def read(*lines: str) -> dict[str, Any]:
    return read_wide_table("\r\n".join(lines).encode())


def test_numbers_are_values_and_an_empty_cell_is_none() -> None:
    table = read("part,item,unit,S,M", "body,stitches,stitches,204,", "finished,bust,cm,92.5,104")
    assert table == {
        "labels": ["S", "M"],
        "rows": [
            {"part": "body", "item": "stitches", "unit": "stitches", "values": [204, None]},
            {"part": "finished", "item": "bust", "unit": "cm", "values": [92.5, 104]},
        ],
    }


def test_runs_beside_the_sizes_are_sent_with_them() -> None:
    (row,) = read("part,item,S,M,run,run_inch", 'finished,bust,92,104,"92 (104)","36 1/4 (41)"')["rows"]
    assert (row["values"], row["run"], row["run_inch"]) == ([92, 104], "92 (104)", "36 1/4 (41)")


def test_cells_as_they_are_printed_are_a_run() -> None:
    (row,) = read("part,item,S,M,L", "finished,bust,36 1/2,,-")["rows"]
    assert row["run"] == "36 1/2; \N{EN DASH}; -"


@pytest.mark.parametrize("delimiter", [",", ";", "\t"])
def test_columns_may_be_parted_by_comma_semicolon_or_tab(delimiter: str) -> None:
    table = read(delimiter.join(("part", "item", "S")), delimiter.join(("body", "stitches", "204")))
    assert table["rows"] == [{"part": "body", "item": "stitches", "values": [204]}]


def test_a_byte_order_mark_is_no_part_of_the_header() -> None:
    assert read("\ufeffpart,item,S", "body,rounds,70")["labels"] == ["S"]


def test_what_keeps_a_label_from_being_a_formula_or_a_column_is_taken_off() -> None:
    assert read("part,item,'+1,size run,run", "body,rounds,70,71,70 (71)")["labels"] == ["+1", "run"]


@pytest.mark.parametrize("body", [b"", b"S,M\r\n1,2\r\n", b"\xff\xfe", b'part,item,S\r\nbody,"rounds\r\n'])
def test_what_is_no_such_table_is_refused(body: bytes) -> None:
    with pytest.raises(Refusal) as refused:
        read_wide_table(body)
    assert refused.value.kind.status == 422


def test_each_line_of_another_length_is_named() -> None:
    with pytest.raises(Refusal) as refused:
        read("part,item,S", "body,rounds,70", "body,stitches", "hem,rounds,1,2")
    assert [wrong.path for wrong in refused.value.wrong] == [("rows", 1), ("rows", 2)]


def test_csv_and_json_of_the_same_table_have_the_same_digest(client: FlaskClient) -> None:
    sent = {"labels": ["S", "M"], "rows": [{"part": "body", "item": "stitches", "values": [204, 228]}]}
    by_json = client.post("/v1/proofs", json=sent).get_json()
    by_csv = client.post(
        "/v1/proofs", data="part,item,S,M\r\nbody,stitches,204,228\r\n", content_type="text/csv; charset=utf-8"
    ).get_json()
    assert by_csv["meta"]["input_digest"] == by_json["meta"]["input_digest"]


def test_a_line_that_cannot_be_read_is_named_by_its_row(client: FlaskClient) -> None:
    answer = client.post("/v1/proofs", data="part,item,S\r\nbody,stitches,many\r\n", content_type="text/csv")
    assert [error["pointer"] for error in answer.get_json()["errors"]] == ["/rows/0/run"]


def test_another_operation_takes_no_csv(client: FlaskClient) -> None:
    answer = client.post("/v1/pullovers", data="part,item,S\r\n", content_type="text/csv")
    assert (answer.status_code, answer.headers["Accept"]) == (415, "application/json")


def test_of_another_type_both_that_are_taken_are_named(client: FlaskClient) -> None:
    answer = client.post("/v1/proofs", data="<table/>", content_type="text/html")
    assert (answer.status_code, answer.headers["Accept"]) == (415, "application/json, text/csv")
