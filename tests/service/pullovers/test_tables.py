import csv
import io

from markdown_it import MarkdownIt

from tests.service.pullovers.answers import GAUGE


def accepted(client, media, **request):
    return client.post("/v1/pullovers", json={"gauge": GAUGE, **request}, headers={"Accept": media}).text


def test_csv_and_markdown_begin_with_the_table_and_have_its_numbers(client):
    request = {"labels": ["S", "M", "4X"], "yoke": {"double_body": "never"}}
    answer = client.post("/v1/pullovers", json={"gauge": GAUGE, **request}).json
    rows = len(answer["table"])
    lines = list(csv.DictReader(io.StringIO(accepted(client, "text/csv", **request))))
    for place, size in enumerate(answer["sizes"]):
        mine = [line for line in lines if line["size"] == size["label"]][:rows]
        assert [(line["item"], line["unit"]) for line in mine] == [
            (f"table.{one['item']}", one["unit"]) for one in answer["table"]
        ]
        values = [one["values"][place] for one in answer["table"]]
        assert [line["value"] for line in mine] == ["" if value is None else str(value) for value in values]
    cells = []
    for token in MarkdownIt("commonmark").enable("table").parse(accepted(client, "text/markdown", **request)):
        if token.type == "tr_open":
            cells.append([])
        elif token.type == "inline" and cells:
            cells[-1].append("".join(child.content for child in token.children))
    assert cells[0] == ["item", "unit", "S", "M", "4X"]
    assert cells[1 : rows + 1] == [
        [
            f"table.{one['item']}",
            one["unit"],
            *("\N{EN DASH}" if value is None else str(value) for value in one["values"]),
        ]
        for one in answer["table"]
    ]
