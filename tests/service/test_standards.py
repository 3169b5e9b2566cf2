"""The published tables over HTTP."""

import csv
import io

import pytest


def got(client, path):
    response = client.get(path)
    assert response.status_code == 200, response.get_data(as_text=True)
    return response.get_json()


def test_the_overview_links_every_table(client):
    overview = got(client, "/v1/standards")
    links = [table["href"] for table in overview["body_tables"] + overview["other_tables"]]
    assert len(links) == 8
    for link in links:
        assert got(client, link)["sources"]


def test_a_body_table_gives_both_units_as_published_with_its_source(client):
    """Craft Yarn Council, woman size chart: M, bust 36-38 in beside 91.5-96.5 cm."""
    table = got(client, "/v1/standards/body-tables/women")
    [medium] = [size for size in table["sizes"] if size["label"] == "M"]
    assert medium["measurements"]["bust"] == {
        "inch": {"low": 36, "high": 38},
        "cm": {"low": 91.5, "high": 96.5},
        "middle": {"cm": 93.98, "inch": 37.0},
        "origin": "published",
        "source": "cyc_women",
    }


def test_a_contradiction_in_a_table_carries_its_note(client):
    table = got(client, "/v1/standards/body-tables/women")
    assert "booklet" in table["sizes"][-1]["measurements"]["upper_arm"]["note"]


@pytest.mark.parametrize(
    "path",
    [
        "/v1/standards/body-tables/women",
        "/v1/standards/body-tables/men",
        "/v1/standards/body-tables/children",
        "/v1/standards/body-tables/babies",
        "/v1/standards/fits",
        "/v1/standards/heads",
        "/v1/standards/needles",
        "/v1/standards/yarn-weights",
    ],
)
def test_every_row_names_a_source_that_is_listed(client, path):
    def keys(value):
        if isinstance(value, dict):
            yield from ([value["source"]] if isinstance(value.get("source"), str) else [])
            for below in value.values():
                yield from keys(below)
        elif isinstance(value, list):
            for below in value:
                yield from keys(below)

    answer = got(client, path)
    named = set(keys(answer))
    assert named
    assert named == {source["key"] for source in answer["sources"]}


def test_the_credit_line_that_the_council_asks_for_is_there(client):
    [source] = [s for s in got(client, "/v1/standards/body-tables/men")["sources"] if s["key"] == "cyc_men"]
    assert source["credit"] == "Source: Craft Yarn Council's www.YarnStandards.com"


def test_a_body_table_is_also_a_spreadsheet(client):
    page = client.get("/v1/standards/body-tables/men", headers={"Accept": "text/csv"}).get_data(as_text=True)
    # Craft Yarn Council, man size chart: chest of M 38 to 40 in.
    rows = {(row["part"], row["item"]): row for row in csv.DictReader(io.StringIO(page))}
    bust = [rows["measurements", f"bust.inch.{end}"] for end in ("low", "high")]
    assert [(row["unit"], row["M"]) for row in bust] == [("inch", "38"), ("inch", "40")]


def test_a_body_table_is_printed_as_its_query_asks(client):
    # 38 to 40 in: 39 in are 99.06 cm
    query = {"cm_step": "0.1", "decimal_mark": ",", "csv_layout": "wide", "fractions": "unicode", "missing": "none"}
    page = client.get("/v1/standards/body-tables/men", query_string=query, headers={"Accept": "text/csv"}).text
    rows = {(row["part"], row["item"]): row for row in csv.DictReader(io.StringIO(page))}
    assert " (99,1, " in rows["measurements", "bust.middle"]["run"]
    long = client.get("/v1/standards/body-tables/men?csv_layout=long", headers={"Accept": "text/csv"}).text
    assert "M,measurements,bust.inch.low,inch,38" in long.splitlines()


@pytest.mark.parametrize(
    ("name", "value"),
    [
        ("cm_step", "0"),
        ("cm_step", "nan"),
        ("cm_step", "x"),
        ("inch_step", "1e1"),
        ("decimal_mark", ";"),
        ("steps", "1"),
    ],
)
def test_how_a_body_table_is_printed_is_refused_where_it_is_no_way_to_print(client, name, value):
    response = client.get("/v1/standards/body-tables/men", query_string={name: value})
    assert response.status_code == 422
    assert [error["parameter"] for error in response.json["errors"]] == [name]


def test_an_unknown_body_table_is_not_found(client):
    response = client.get("/v1/standards/body-tables/dwarves")
    assert response.status_code == 404
    assert response.mimetype == "application/problem+json"
    assert response.get_json()["detail"] == ("The name in the address must be one of: women, men, children, babies.")


def test_a_table_that_was_seen_is_not_sent_again(client):
    tag = client.get("/v1/standards/needles").headers["ETag"]
    assert client.get("/v1/standards/needles", headers={"If-None-Match": tag}).status_code == 304


def test_needles_have_both_numbers(client):
    """General needle charts: 4.5 mm is US 7 and old UK 7; 4 mm is US 6 and old UK 8."""
    found = {row["mm"]: (row["us"], row["uk"]) for row in got(client, "/v1/standards/needles")["needles"]}
    assert found[4.5] == ("7", "7")
    assert found[4] == ("6", "8")


def test_yarn_categories_and_their_charts(client):
    """Craft Yarn Council, Standard Yarn Weight System: medium is 16-20 stitches in 4 in on 4.5-5.5 mm."""
    answer = got(client, "/v1/standards/yarn-weights")
    medium = answer["categories"][4]
    assert medium["stitches_per_4_inches"] == {"low": 16, "high": 20}
    assert medium["needle_mm"] == {"low": 4.5, "high": 5.5}
    assert answer["categories"][7]["stitches_per_4_inches"] == {"high": 6}
    assert [chart["source"] for chart in answer["charts"]] == ["spinners_chart", "uk_trade", "southern_usage"]
