"""The schematic of a pullover: its letters, values and lengths against the table of the same request in JSON."""

from itertools import pairwise
from math import dist

import pytest

from tests.oracles.random_pullovers import random_request
from tests.service.pullovers.answers import BABIES, GAUGE, WOMEN
from tests.service.pullovers.pictures import classed, picture, points, texts

PLAIN = {"gauge": GAUGE, "labels": ["S", "M", "L"]}
SHAPED = {
    **PLAIN,
    "neck": {"lower_front": "both"},
    "body": {"bust_darts": {"extra": 3}, "front_extra": 5, "levels": [{"measurement": "waist", "below": 14}]},
    "sleeve": {"style": "short"},
}
REQUESTS = {
    "plain": PLAIN,
    "shaped": SHAPED,
    "babies in German": {
        "gauge": GAUGE,
        "body_table": "babies",
        "labels": BABIES,
        "print": {"language": "de", "decimal_mark": ","},
    },
    "rib of another gauge, inches in eighths": {
        "gauges": {"plain": GAUGE, "rib": {"stitches": 25, "rows": 34}},
        "labels": ["XL", "5X"],
        "print": {"inch_step": 0.125, "cm_step": 0.1, "fractions": "unicode"},
    },
}
HALVES = {"bust", "upper_arm", "underarm", "hem", "wrist"}
LENGTHS = {"depth", "body_length", "front_length", "front_extra", "sleeve_length", "total_length"}
PIXEL = 1


@pytest.fixture(scope="module", params=[pytest.param(each, id=name) for name, each in REQUESTS.items()])
def asked(request):
    return request.param


def finished(client, request):
    """The rows of finished measurements by letter."""
    answer = client.post("/v1/pullovers", json=request).json
    return {row["letter"]: row for row in answer["table"] if row.get("letter")}


def drawn(client, request, **wishes):
    return picture(client, "schematic", {**request, "picture": wishes})


def scale(root):
    """Pixels of a cm: the bar is 10 cm long."""
    [bar] = classed(root, "scale")
    (left, _), (right, _) = points(bar)
    return (right - left) / 10


def test_every_finished_measurement_has_its_letter_twice_in_the_drawing_and_in_the_legend(client, asked):
    letters = finished(client, asked)
    root = drawn(client, asked)
    assert len(letters) >= 13
    # a size may be called like a letter, and has its label once
    labels = [size["label"] for size in client.post("/v1/pullovers", json=asked).json["sizes"]]
    written = texts(root)
    assert {letter: written.count(letter) - labels.count(letter) for letter in letters} == dict.fromkeys(letters, 2)


def test_the_legend_has_every_title_and_run_of_the_table(client, asked):
    written = " ".join(texts(drawn(client, asked)))
    missing = [
        printed
        for row in finished(client, asked).values()
        for printed in (row["title"], row["run"], row["run_inch"])
        if printed not in written
    ]
    assert missing == []


def test_what_cannot_be_seen_is_told_with_every_run_of_the_table(client, asked):
    [about] = [element.text for element in drawn(client, asked).iter() if element.tag.endswith("desc")]
    assert [row["run"] for row in finished(client, asked).values() if row["run"] not in about] == []


def test_one_size_has_its_values_beside_its_lines(client, asked):
    label = client.post("/v1/pullovers", json=asked).json["sizes"][-1]["label"]
    inch = "Zoll" if asked.get("print", {}).get("language") == "de" else "in"
    written = texts(drawn(client, asked, size=label))
    for row in finished(client, asked).values():
        assert f"{row['printed'][-1]} cm" in written
        assert f"{row['printed_inch'][-1]} {inch}" in written


@pytest.mark.parametrize("page", ["single", "a4", "letter"])
def test_lines_are_as_long_as_what_they_measure_or_half_as_long_where_the_garment_lies_flat(client, asked, page):
    sizes = client.post("/v1/pullovers", json=asked).json["sizes"]
    root = drawn(client, asked, size=sizes[-1]["label"], page=page)
    pixels = scale(root)
    seen = set()
    for letter, row in finished(client, asked).items():
        for line in classed(root, f"measures-{letter}"):
            part = 2 if row["item"] in HALVES else 1
            long = sum(dist(*piece) for piece in pairwise(points(line)))
            if row["item"] != "reach":
                assert long == pytest.approx(row["values"][-1] / part * pixels, abs=PIXEL), row["item"]
            seen.add(row["item"])
    assert seen >= {*HALVES, *LENGTHS} & {row["item"] for row in finished(client, asked).values()}


def test_all_sizes_have_the_lines_of_the_largest(client):
    root = drawn(client, PLAIN)
    rows = {row["item"]: (letter, row) for letter, row in finished(client, PLAIN).items()}
    letter, bust = rows["bust"]
    [line] = classed(root, f"measures-{letter}")
    assert dist(*points(line)) == pytest.approx(max(bust["values"]) / 2 * scale(root), abs=PIXEL)


def test_the_reach_goes_from_the_centre_to_the_end_of_a_sleeve(client):
    root = drawn(client, PLAIN, size="M")
    rows = {row["item"]: letter for letter, row in finished(client, PLAIN).items()}
    [bust], [reach], [cuff] = (classed(root, f"measures-{rows[item]}") for item in ("bust", "reach", "wrist"))
    (left, _), (right, _) = points(bust)
    assert points(reach)[0][0] == pytest.approx((left + right) / 2, abs=PIXEL)
    # both are as far from the cuff's upper corner
    assert dist(points(reach)[-1], points(cuff)[-1]) < 30


def test_bust_darts_bow_the_line_over_the_bust(client):
    rows = {row["item"]: letter for letter, row in finished(client, SHAPED).items()}
    root = drawn(client, SHAPED, size="M")
    [front], [body] = (classed(root, f"measures-{rows[item]}") for item in ("front_length", "body_length"))
    assert len(points(front)) > len(points(body)) == 2


def test_a_size_that_cannot_be_knitted_is_left_out(client):
    labels = ["size 1", "size 2", "size 3"]
    bodies = [{"label": label, "bust": 84 + 10 * place} for place, label in enumerate(labels)]
    request = {
        "gauge": GAUGE,
        "sizes": bodies,
        "body_table": "women",
        "yoke": {"depth": [8, 23, 25], "double_body": "never"},
    }
    sizes = client.post("/v1/pullovers", json=request).json["sizes"]
    assert [size["feasible"] for size in sizes] == [False, True, True]
    written = texts(drawn(client, request))
    assert [written.count(label) for label in labels] == [0, 1, 1]


def test_where_no_size_can_be_knitted_the_heading_says_so(client):
    request = {**PLAIN, "yoke": {"depth": 3}}
    reasons = [size["reason"] for size in client.post("/v1/pullovers", json=request).json["sizes"]]
    root = drawn(client, request)
    assert all(reason.split()[0] in " ".join(texts(root)) for reason in reasons)
    assert classed(root, "scale") == []


def test_nine_sizes_are_on_one_sheet_of_paper(client):
    for page, height in (("a4", "297mm"), ("letter", "279.4mm")):
        for language in ("en-US", "de"):
            request = {"gauge": GAUGE, "labels": WOMEN, "print": {"language": language}}
            assert drawn(client, request, page=page).get("height") == height


def test_forty_sizes_take_more_sheets_and_have_every_letter(client):
    sizes = [{"label": f"size {place}", "bust": 74 + 1.8 * place} for place in range(40)]
    request = {"gauge": GAUGE, "sizes": sizes, "body_table": "women"}
    root = drawn(client, request, page="a4")
    assert float(root.get("height").removesuffix("mm")) > 297
    assert finished(client, request).keys() - set(texts(root)) == set()


def test_random_pullovers_are_drawn_to_scale(client):
    seen = 0
    for seed in range(60):
        request = random_request(seed)
        request.pop("include", None)
        if client.post("/v1/pullovers", json=request).status_code != 200:
            continue
        root = drawn(client, request, page=("single", "a4", "letter")[seed % 3])
        rows = finished(client, request)
        if not rows:
            continue
        drawn_size = max(bust for bust in rows["A"]["values"] if bust is not None)
        [line] = classed(root, "measures-A")
        assert dist(*points(line)) == pytest.approx(drawn_size / 2 * scale(root), abs=PIXEL)
        seen += 1
    assert seen > 30
