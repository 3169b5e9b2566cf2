"""The workbook, opened again by openpyxl and, where the machine has it, by LibreOffice, against the JSON answer."""

import csv
import io
import json
import shutil
import subprocess
import sys
import zipfile
from xml.etree import ElementTree

import openpyxl
import pytest

from tests.service.pullovers.answers import DIAMOND, GAUGE, WOMEN

XLSX = "application/vnd.openxmlformats-officedocument.spreadsheetml.sheet"

REQUESTS = {
    "a gauge alone": {},
    "a size that can't be knitted, and yarn": {
        "labels": ["S", "M", "4X"],
        "yoke": {"double_body": "never"},
        "yarn": {"metres_per_100g": 210},
    },
    "a maker's own gauge, in inches by the nominal convention": {
        "inch_convention": "nominal",
        "labels": ["M"],
        "changes": {"gauge": {"stitches": 24, "rows": 33}, "keep_counts": True},
    },
    "a chart, and one size of three": {
        "labels": ["S", "M", "L"],
        "answer_sizes": ["L"],
        "include": ["sizes"],
        "chart": {"chart": DIAMOND, "first_round": 3},
        "print": {"missing": "none", "decimal_mark": ","},
    },
}

HOSTILE = ["=1+1", "+cmd", "-2+3", "@x", "=HYPERLINK(1)", "http://a.example", "007", "\ufffe<&>\u2028", " S "]


@pytest.fixture(scope="module")
def written(client):
    def write(**request):
        response = client.post("/v1/pullovers/workbook", json={"gauge": GAUGE, **request})
        assert response.status_code == 200, response.text
        assert response.content_type == XLSX
        # RFC 6266: a browser saves it under this name
        assert response.headers["Content-Disposition"] == "attachment; filename=pullover.xlsx"
        return response.data

    return write


@pytest.fixture(scope="module")
def answered(client):
    def answer(**request):
        parts = ["table", "instructions", "sizes"]
        return client.post("/v1/pullovers", json={"gauge": GAUGE, **request, "include": parts}).json

    return answer


def opened(file):
    return openpyxl.load_workbook(io.BytesIO(file))


def values(sheet):
    return [[cell.value for cell in row] for row in sheet.iter_rows()]


COUNTED = {"metres": "meters", "inch": "inches"}
"""Units that are written otherwise for people than for programs."""


def inches(answer, row):
    """The inches of a length of the table, from where the sizes have it."""
    if row["part"] == "finished" and row["item"] != "band":
        told = [size.get("finished", {row["item"]: {"finished": {"inch": None}}}) for size in answer["sizes"]]
        return [finished[row["item"]]["finished"]["inch"] for finished in told]
    per_cm = 4 / 10 if answer["nominal"] else 1 / 2.54
    return [None if value is None else pytest.approx(value * per_cm, abs=0.0075) for value in row["values"]]


@pytest.mark.parametrize("request_", REQUESTS.values(), ids=REQUESTS)
def test_every_cell_is_what_the_json_answer_has(written, answered, request_):
    book, answer = opened(written(**request_)), answered(**request_)
    answer["nominal"] = request_.get("inch_convention") == "nominal"
    assert book.sheetnames == ["Table", "Sizes", "Instructions", "Warnings", "Sources"]
    expected = [["Part", "Item", "Title", "Unit", *answer["labels"], "Run"]]
    for row in answer["table"]:
        key = [row["part"], row["item"], row["title"]]
        expected.append([*key, COUNTED.get(row["unit"], row["unit"]), *row["values"], row.get("run")])
        if row["unit"] == "cm":
            expected.append([*key, "inches", *inches(answer, row), row.get("run_inch")])
    assert values(book["Table"]) == expected
    sizes = values(book["Sizes"])[1:]
    assert [line[:3] for line in sizes] == [
        [size["label"], "yes" if size["feasible"] else "no", size.get("reason")] for size in answer["sizes"]
    ]
    by_title = {row["title"]: row["values"] for row in answer["table"]}
    titles = values(book["Sizes"])[0][3:]
    assert len(titles) > 5
    assert [line[3:] for line in sizes] == [
        [by_title[title][place] for title in titles] for place, _ in enumerate(answer["sizes"])
    ]
    assert values(book["Instructions"])[1:] == [
        [part["title"], sentence["text"]] for part in answer["instructions"] for sentence in part["sentences"]
    ]
    assert values(book["Warnings"])[1:] == [
        [warning["code"], warning.get("size"), warning["message"], warning.get("pointer")]
        for warning in answer["warnings"]
    ]


def test_numbers_are_numbers_and_shown_as_lengths_or_counts(written):
    sheet = opened(written())["Table"]
    shown = {"cm": '0.00" cm"', "inches": '# ?/4" in"'}
    for row in sheet.iter_rows(min_row=2):
        for cell in row[4:-1]:
            if cell.value is not None:
                assert cell.data_type == "n"
                assert cell.number_format == shown.get(row[3].value, "0")


@pytest.mark.parametrize(
    ("step", "shown"), [(0.5, '# ?/2" in"'), (0.0625, '# ??/16" in"'), (1, '0.00" in"'), (0.1, '0.00" in"')]
)
def test_inches_are_shown_to_the_step_that_is_printed(written, step, shown):
    # ECMA-376 part 1, 18.8.31: a number format with a fixed denominator.
    sheet = opened(written(labels=["S"], print={"inch_step": step}))["Table"]
    assert {row[4].number_format for row in sheet.iter_rows(min_row=2) if row[3].value == "inches"} == {shown}


def test_text_is_never_a_formula_a_link_or_a_number(written, answered):
    sizes = [{"label": label, "bust": 90 + 4 * place} for place, label in enumerate(HOSTILE)]
    file = written(body_table="women", sizes=sizes)
    book = opened(file)
    labels = [label.replace("\ufffe", "\ufffd") for label in HOSTILE]
    heads = book["Table"][1][4:-1]
    firsts = [row[0] for row in book["Sizes"].iter_rows(min_row=2)]
    for cells in (heads, firsts):
        assert [cell.value for cell in cells] == labels
        assert {cell.data_type for cell in cells} == {"s"}
        # ECMA-376 part 1, 18.8.45: quotePrefix keeps what is typed over text
        assert [cell.quotePrefix for cell in cells] == [label[0] in "=+-@" for label in labels]
    with zipfile.ZipFile(io.BytesIO(file)) as parts:
        for name in parts.namelist():
            tree = ElementTree.fromstring(parts.read(name))
            tags = {element.tag.rpartition("}")[2] for element in tree.iter()}
            assert not tags & {"f", "hyperlink", "hyperlinks"}, name


def test_what_the_numbers_are_from_is_told_with_the_credit_line_of_a_built_in_table(written):
    told = values(opened(written(gauge=GAUGE))["Sources"])
    rows = {row[0]: row[1] for row in told}
    assert "22 stitches and 31 rounds = 4 in / 10 cm" in rows["Gauge"]
    assert rows["Body table"] == "women"
    # The line that the Craft Yarn Council asks for.
    assert rows["Credit"] == "Source: Craft Yarn Council's www.YarnStandards.com"
    own = [{"label": "S", "bust": 84, "upper_arm": 28, "wrist": 15, "arm_length": 43, "back_waist_length": 42}]
    told = values(opened(written(sizes=own))["Sources"])
    assert ["Bodies", "as sent", None] in told
    assert not {"Credit", "Publication", "Body table"} & {row[0] for row in told}


def test_a_sheet_is_ready_to_read_and_to_print(written):
    book = opened(written())
    for sheet in book:
        assert sheet.freeze_panes == ("E2" if sheet.title == "Table" else "B2")
        assert (sheet.page_setup.orientation, sheet.page_setup.fitToHeight) == ("landscape", 0)
        assert sheet.sheet_properties.pageSetUpPr.fitToPage
        assert sheet.print_title_rows == "$1:$1"
        assert all(cell.font.bold for cell in sheet[1])
        for column, dimension in sheet.column_dimensions.items():
            assert 8 <= dimension.width <= 74, (sheet.title, column)


def test_the_same_request_is_the_same_bytes(written):
    assert written(labels=WOMEN) == written(labels=WOMEN)
    program = (
        "import hashlib, json, sys; from service.app import create_app; from service.config import Config\n"
        "answer = create_app(Config()).test_client().post('/v1/pullovers/workbook', json=json.loads(sys.argv[1]))\n"
        "print(hashlib.sha256(answer.data).hexdigest())"
    )
    request = json.dumps({"gauge": GAUGE, "labels": ["S", "5X"], "chart": {"chart": DIAMOND}})
    digests = {
        subprocess.run(
            [sys.executable, "-c", program, request],
            env={"PYTHONHASHSEED": seed, "TZ": zone, "PYTHONPATH": ":".join(sys.path)},
            capture_output=True,
            text=True,
            check=True,
        ).stdout
        for seed, zone in (("1", "UTC"), ("2", "Pacific/Auckland"))
    }
    assert len(digests) == 1


def test_a_workbook_is_in_the_language_asked_but_for_what_programs_read(written, answered):
    german, english = (opened(written(labels=["S", "M"], print={"language": tag})) for tag in ("de", "en-US"))
    answer = answered(labels=["S", "M"], print={"language": "de"})
    assert german.sheetnames == ["Tabelle", "Größen", "Anleitung", "Hinweise", "Quellen"]
    ours, theirs = values(german["Tabelle"]), values(english["Table"])
    assert ours[0] == ["Teil", "Zeile", "Bezeichnung", "Einheit", "S", "M", "Alle Größen"]
    assert [line[:2] + line[4:-1] for line in ours[1:]] == [line[:2] + line[4:-1] for line in theirs[1:]]
    assert {line[3] for line in ours[1:]} == {"cm", "Zoll", "Maschen", "Runden", "Reihen", "Mal"}
    assert [line[2] for line in ours[1:] if line[3] != "Zoll"] == [row["title"] for row in answer["table"]]
    assert [line[1] for line in values(german["Größen"])[1:]] == ["ja", "ja"]
    assert german.properties.title == "Pullover"


@pytest.mark.skipif(shutil.which("soffice") is None, reason="LibreOffice isn't on this machine")
def test_a_spreadsheet_program_recalculates_it_without_an_error(written, answered, tmp_path):
    sizes = [{"label": label, "bust": 90 + 4 * place} for place, label in enumerate(HOSTILE[:4])]
    request = {"body_table": "women", "sizes": sizes}
    (tmp_path / "pullover.xlsx").write_bytes(written(**request))
    home = f"-env:UserInstallation=file://{tmp_path}/home"
    # every sheet as CSV of its own (the last -1), in UTF-8 (76)
    convert = ["--convert-to", "csv:Text - txt - csv (StarCalc):44,34,76,1,,0,false,true,false,false,false,-1"]
    subprocess.run(
        ["soffice", home, "--headless", *convert, "--outdir", str(tmp_path), str(tmp_path / "pullover.xlsx")],
        check=True,
        capture_output=True,
        timeout=300,
    )
    pages = {path.stem: path.read_text("utf-8") for path in tmp_path.glob("*.csv")}
    assert len(pages) == 5
    assert not any(error in page for page in pages.values() for error in ("#NAME?", "#VALUE!", "#REF!", "Err:"))
    header, *lines = csv.reader(io.StringIO(pages["pullover-Table"]))
    assert header[4:-1] == HOSTILE[:4]
    told = {(row["part"], row["item"]): row for row in answered(**request)["table"]}
    for line in lines:
        if line[3] != "inches":
            found = [None if cell == "" else float(cell) for cell in line[4:-1]]
            assert found == told[line[0], line[1]]["values"], line
