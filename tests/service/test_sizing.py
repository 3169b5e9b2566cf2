"""Size gradings and size matches over HTTP."""

import csv
import io

import pytest
from hypothesis import HealthCheck, given, settings
from hypothesis import strategies as st

GAUGE = {"stitches": 22, "rows": 31}


def graded(client, **request):
    response = client.post("/v1/size-gradings", json={"gauge": GAUGE, **request})
    assert response.status_code == 200, response.get_data(as_text=True)
    return response.get_json()


def refused(client, path, **request):
    response = client.post(path, json=request)
    assert response.status_code == 422, response.get_data(as_text=True)
    return {error["pointer"]: error["detail"] for error in response.get_json()["errors"]}


def test_a_table_with_ease_and_a_rule_is_answered_in_full(client):
    # body 37 in = 93.98 cm, target 105.98; 105.98 x 2.2 = 233.2, nearest multiple of 4: 232; 232 / 2.2 = 105.45
    answer = graded(client, body_table="women", labels=["M"], ease={"bust": 12}, count_rules={"bust": {"multiple": 4}})
    [size] = answer["sizes"]
    assert size["label"] == "M"
    assert size["measurements"]["bust"] == {
        "body": {"cm": 93.98, "inch": 37.0},
        "ease": {"cm": 12.0, "inch": 4.72},
        "target": {"cm": 105.98, "inch": 41.72},
        "stitches": 232,
        "finished": {"cm": 105.45, "inch": 41.52},
        "difference": {"cm": -0.53, "inch": -0.21},
        "origin": "published",
    }
    assert answer["runs"]["bust"] == {"stitches": "232", "finished_cm": "105.5", "finished_inch": "41 1/2"}
    assert answer["runs"]["armhole_depth"]["rows"] == "57"  # 7.25 in x 2.54 x 3.1 = 57.09


def test_measurements_filled_from_a_table_are_marked(client):
    [size] = graded(client, body_table="women", sizes=[{"label": "mine", "bust": 99, "wrist": 16}])["sizes"]
    assert size["measurements"]["hip"]["interpolated"] is True
    assert size["measurements"]["wrist"]["origin"] == "sent"
    assert "interpolated" not in size["measurements"]["wrist"]


@settings(max_examples=25, suppress_health_check=[HealthCheck.function_scoped_fixture])
@given(
    quarters=st.lists(st.integers(4 * 25, 4 * 70), min_size=1, max_size=4, unique=True),
    ease=st.integers(-8, 40),
    stitches=st.integers(8, 40),
)
def test_centimetres_and_inches_give_identical_counts(client, quarters, ease, stitches):
    inches = [quarter / 4 for quarter in sorted(quarters)]
    in_inches = graded(
        client,
        unit="in",
        gauge={"stitches": stitches, "rows": 30, "over": 4},
        sizes=[{"label": str(place), "bust": bust} for place, bust in enumerate(inches)],
        ease={"bust": ease / 4},
    )
    in_cm = graded(
        client,
        unit="cm",
        gauge={"stitches": stitches, "rows": 30, "over": 10.16},
        sizes=[{"label": str(place), "bust": round(bust * 2.54, 4)} for place, bust in enumerate(inches)],
        ease={"bust": round(ease / 4 * 2.54, 4)},
    )
    assert in_inches["sizes"] == in_cm["sizes"]
    assert in_inches["runs"] == in_cm["runs"]


def test_the_nominal_convention_changes_the_inches_of_the_answer_only(client):
    sizes = [{"label": "1", "bust": 101}]
    exact = graded(client, sizes=sizes, gauge={"stitches": 20, "rows": 26})
    nominal = graded(client, sizes=sizes, gauge={"stitches": 20, "rows": 26}, inch_convention="nominal")
    assert exact["runs"]["bust"]["finished_inch"] == "39 3/4"
    assert nominal["runs"]["bust"]["finished_inch"] == "40 1/2"
    assert nominal["sizes"][0]["measurements"]["bust"]["body"] == {"cm": 101.0, "inch": 40.4}
    assert exact["runs"]["bust"]["stitches"] == nominal["runs"]["bust"]["stitches"]


def test_printed_steps_are_chosen(client):
    # 102.1 cm = 40.197 in
    sizes = [{"label": "1", "bust": 102.1}]
    gauge = {"stitches": 100, "rows": 100}
    run = graded(client, sizes=sizes, gauge=gauge, print={"cm_step": 0.1, "inch_step": 0.5})["runs"]["bust"]
    assert (run["finished_cm"], run["finished_inch"]) == ("102.1", "40")


def test_markdown_is_a_table_of_quantities_and_sizes(client):
    request = {"gauge": GAUGE, "sizes": [{"label": "S", "bust": 84}, {"label": "M", "bust": 94}]}
    page = client.post("/v1/size-gradings", json=request, headers={"Accept": "text/markdown"})
    assert page.mimetype == "text/markdown"
    assert "| measurements | bust.stitches | stitches | 185 | 207 | 185 (207) |" in page.get_data(as_text=True)


def test_the_runs_of_csv_are_those_of_the_json_answer(client):
    request = {
        "gauge": {"stitches": 21.7, "rows": 29.3},
        "body_table": "women",
        "ease": {"bust": {"from": 3, "to": 11}},
    }
    request["print"] = {"cm_step": 0.1, "inch_step": 0.125, "fractions": "unicode", "decimal_mark": ","}
    runs = graded(client, **request)["runs"]
    page = client.post("/v1/size-gradings", json=request, headers={"Accept": "text/csv"}).text
    rows = {line["item"]: line for line in csv.DictReader(io.StringIO(page)) if line["part"] == "measurements"}
    for name, run in runs.items():
        finished = rows[f"{name}.finished"]
        assert (finished["run"], finished["run_inch"]) == (run["finished_cm"], run["finished_inch"])
        [counted] = [unit for unit in ("stitches", "rows") if unit in run]
        assert rows[f"{name}.{counted}"]["run"] == run[counted]


def test_csv_has_a_line_for_every_quantity(client):
    request = {"gauge": GAUGE, "sizes": [{"label": "S", "bust": 84}, {"label": "M", "bust": 94}]}
    page = client.post("/v1/size-gradings", json=request, headers={"Accept": "text/csv"})
    lines = list(csv.DictReader(io.StringIO(page.get_data(as_text=True))))
    (counts,) = [line for line in lines if (line["part"], line["item"]) == ("measurements", "bust.stitches")]
    assert (counts["S"], counts["M"], counts["run"]) == ("185", "207", "185 (207)")


def test_a_table_that_falls_is_refused_at_the_later_value(client):
    errors = refused(
        client,
        "/v1/size-gradings",
        gauge=GAUGE,
        sizes=[{"label": "S", "bust": 84, "hip": 92}, {"label": "M", "bust": 94, "hip": 82}],
    )
    assert list(errors) == ["/sizes/1/hip"]
    assert "M has 82 cm" in errors["/sizes/1/hip"]


def test_every_wrong_field_is_named_at_once(client):
    errors = refused(
        client,
        "/v1/size-gradings",
        gauge={"stitches": "22", "rows": 31},
        sizes=[{"label": "S", "bust": True, "chest": 84}],
        ease={"bust": {"from": 4}, "girth": 3},
        within="most",
    )
    assert errors.keys() == {
        "/gauge/stitches",
        "/sizes/0/bust",
        "/sizes/0/chest",
        "/ease/bust/to",
        "/ease/girth",
        "/within",
    }


def test_a_size_needs_a_measurement(client):
    assert "/sizes/0" in refused(client, "/v1/size-gradings", gauge=GAUGE, sizes=[{"label": "S"}])


def test_a_grading_needs_a_table_or_sizes(client):
    assert "" in refused(client, "/v1/size-gradings", gauge=GAUGE)


def test_a_match_from_finished_sizes(client):
    request = {"finished": [{"label": "1", "bust": 100}, {"label": "2", "bust": 110}], "garment": 105}
    answer = client.post("/v1/size-matches", json=request).get_json()
    assert answer["best"] == {
        "label": "2",
        "finished": {"cm": 110.0, "inch": 43.31},
        "ease": None,
        "difference": {"cm": 5.0, "inch": 1.97},
    }
    assert answer["neighbours"]["smaller"]["label"] == "1"
    assert answer["neighbours"]["larger"] is None
    assert "at_own_gauge" not in answer


def test_a_match_from_a_grading_reads_it_in_its_own_unit(client):
    grading = {"unit": "in", "gauge": {"stitches": 20, "rows": 28}, "sizes": [{"label": "40", "bust": 40}]}
    request = {"unit": "cm", "grading": grading, "body": 92, "ease": 8}
    answer = client.post("/v1/size-matches", json=request).get_json()
    assert answer["best"]["finished"] == {"cm": 101.6, "inch": 40.0}
    assert answer["best"]["ease"] == {"cm": 9.6, "inch": 3.78}


def test_a_grading_without_a_unit_is_in_that_of_the_request(client):
    grading = {"gauge": {"stitches": 20, "rows": 28}, "sizes": [{"label": "40", "bust": 40}]}
    answer = client.post("/v1/size-matches", json={"unit": "in", "grading": grading, "garment": 40}).get_json()
    assert answer["best"]["finished"]["inch"] == 40.0


def test_a_grading_may_be_a_whole_size_gradings_request(client):
    grading = {"gauge": GAUGE, "sizes": [{"label": "S", "bust": 84}, {"label": "M", "bust": 94}]}
    printed = {"inch_convention": "nominal", "print": {"cm_step": 1, "inch_step": 0.5}}
    assert graded(client, unit="cm", **grading, **printed)
    plain, whole = (
        client.post("/v1/size-matches", json={"grading": sent, "garment": 90}).get_json()
        for sent in (grading, {"unit": "cm", **grading, **printed})
    )
    assert (
        plain["best"]
        == whole["best"]
        == {
            "label": "M",
            "finished": {"cm": 94.09, "inch": 37.04},
            "ease": None,
            "difference": {"cm": 4.09, "inch": 1.61},
        }
    )


def test_the_match_at_an_own_gauge_stands_beside_the_written_one(client):
    request = {
        "finished": [{"label": "1", "bust": 100}, {"label": "2", "bust": 110}],
        "body": 92,
        "ease": 8,
        "written_gauge": {"stitches": 20, "rows": 28},
        "own_gauge": {"stitches": 22, "rows": 28},
    }
    answer = client.post("/v1/size-matches", json=request).get_json()
    assert answer["best"]["label"] == "1"
    # 110 x 20 / 22
    assert answer["at_own_gauge"]["best"]["label"] == "2"
    assert answer["at_own_gauge"]["best"]["finished"]["cm"] == 100.0


@pytest.mark.parametrize(
    ("wish", "pointer"),
    [
        ({}, ""),
        ({"body": 90}, ""),
        ({"garment": 100, "body": 90, "ease": 8}, "/ease"),
        ({"garment": 100, "own_gauge": GAUGE}, "/own_gauge"),
    ],
)
def test_a_wish_that_contradicts_itself_is_refused(client, wish, pointer):
    assert list(refused(client, "/v1/size-matches", finished=[{"label": "1", "bust": 100}], **wish)) == [pointer]


def test_an_error_in_a_grading_points_into_it(client):
    grading = {"gauge": GAUGE, "body_table": "men", "labels": ["XS"]}
    assert list(refused(client, "/v1/size-matches", grading=grading, garment=100)) == ["/grading/labels/0"]
