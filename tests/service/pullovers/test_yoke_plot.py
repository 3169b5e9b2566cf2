"""The plot of a yoke's stitches: read back round by round against the increases of the same request in JSON."""

import re

import pytest

from tests.oracles.random_pullovers import random_request
from tests.service.pullovers.answers import GAUGE
from tests.service.pullovers.pictures import SVG, classed, picture, texts

PLAIN = {"gauge": GAUGE, "labels": ["S", "M", "XL", "5X"]}
SHALLOWER = {"changes": {"yoke": {"depth_change": -3}}}
REQUESTS = {
    "plain": PLAIN,
    "front wider than back, in German": {**PLAIN, "body": {"front_extra": 4}, "print": {"language": "de"}},
    "front cast on lower": {**PLAIN, "neck": {"lower_front": "front_drop"}},
    "changed": {**PLAIN, **SHALLOWER},
}


def plot(client, request, **wishes):
    return picture(client, "yoke-plot", {**request, "picture": wishes})


def panels(root):
    """By the label of the size."""
    return {texts(panel)[0]: panel for panel in classed(root, "panel")}


def scales(panel):
    """What turns places of a panel into rounds and stitches: from the numbers at its axes."""
    across = sorted((int(each.text), float(each.get("x"))) for each in classed(panel, "rounds"))
    down = sorted((int(each.text), float(each.get("y"))) for each in classed(panel, "stitches"))
    (first, left), (last, right) = across[0], across[-1]
    (least, low), (most, high) = down[0], down[-1]
    per_round, per_stitch = (right - left) / (last - first), (low - high) / (most - least)
    # a number stands a little below its line
    lower = float(re.findall(r"M[\d.]+ ([\d.]+)H", panel.find(f"{SVG}path").get("d"))[0])
    return lambda x: first + (x - left) / per_round, lambda y: least + (lower - y) / per_stitch


def seen(panel, of, section):
    """The stitches of a section after every round, the cast-on first, as its line shows them."""
    [line] = [path for path in classed(panel, f"yoke-{section}") if of in path.get("class").split()]
    to_round, to_stitches = scales(panel)
    (_, y), *steps = re.findall(r"[MHV]([\d.]+)(?: ([\d.]+))?", line.get("d"))
    height, found = float(y), {}
    for command, number in re.findall(r"([HV])([\d.]+)", line.get("d")):
        if command == "H":
            end = round(to_round(float(number)))
            for each in range(len(found), end):
                found[each] = round(to_stitches(height))
        else:
            height = float(number)
    assert steps
    found[end] = round(to_stitches(height))
    return [found[each] for each in range(end + 1)]


def told(size, section):
    """The same from the numbers of the answer."""
    at = size["neck"]["sections"][section]
    increases = {
        each["round"]: each.get(section, 0) if section == "sleeve" else each.get(section, each.get("body", 0))
        for each in size["yoke"]["increase_rounds"]
    }
    stitches = [at]
    for number in range(1, size["yoke"]["rounds"] + 1):
        at += 2 * increases.get(number, 0)
        stitches.append(at)
    drop = size["neck"].get("front_drop")
    if drop and section == "front":
        for row in range(drop["rows"]):
            later = sum(increase > row for increase in drop["increase_rows"])
            stitches[row] -= drop["centre"] + 2 * later
    return stitches


@pytest.mark.parametrize("request_", [pytest.param(each, id=name) for name, each in REQUESTS.items()])
@pytest.mark.parametrize("page", ["single", "letter"])
def test_every_round_of_every_section_shows_its_stitches(client, request_, page):
    sizes = client.post("/v1/pullovers", json=request_).json["sizes"]
    drawn = panels(plot(client, request_, page=page))
    assert list(drawn) == [size["label"] for size in sizes]
    for size in sizes:
        for section in ("back", "front", "sleeve"):
            assert seen(drawn[size["label"]], "knitted", section) == told(size, section)


def test_a_changed_yoke_stands_beside_the_designed_one(client):
    [before] = client.post("/v1/pullovers", json={**PLAIN, "answer_sizes": ["M"]}).json["sizes"]
    [after] = client.post("/v1/pullovers", json={**PLAIN, **SHALLOWER, "answer_sizes": ["M"]}).json["sizes"]
    [panel] = classed(plot(client, {**PLAIN, **SHALLOWER}, size="M"), "panel")
    assert before["yoke"]["rounds"] > after["yoke"]["rounds"]
    for section in ("back", "front", "sleeve"):
        assert seen(panel, "designed", section) == told(before, section)
        assert seen(panel, "knitted", section) == told(after, section)


def test_a_yoke_that_no_change_touches_is_drawn_once(client):
    panel = plot(client, {**PLAIN, "changes": {"sleeve_length": 40}}, size="M")
    assert classed(panel, "designed") == []


def test_rounds_with_two_increases_are_marked(client):
    sizes = client.post("/v1/pullovers", json=PLAIN).json["sizes"]
    drawn = panels(plot(client, PLAIN))
    for size in sizes:
        twice = [each["round"] for each in size["yoke"]["increase_rounds"] if each.get("body") == 2]
        to_round, _ = scales(drawn[size["label"]])
        marks = [mark.get("d") for mark in classed(drawn[size["label"]], "doubled")]
        assert [round(to_round(float(x))) for d in marks for x in re.findall(r"M([\d.]+)", d)] == twice
    assert twice


def test_the_last_round_and_the_stitches_at_the_split_are_written(client):
    [size] = client.post("/v1/pullovers", json={**PLAIN, "answer_sizes": ["XL"]}).json["sizes"]
    root = plot(client, PLAIN, size="XL")
    assert str(size["yoke"]["rounds"]) in [each.text for each in classed(root, "rounds")]
    ends = [int(re.findall(r"\d+", each.text)[-1]) for each in classed(root, "end")]
    assert ends == sorted({size["split"]["sections"]["sleeve"], size["split"]["sections"]["back"]})


def test_all_panels_have_one_scale(client):
    drawn = [scales(panel) for panel in panels(plot(client, PLAIN)).values()]
    steps = [(to_round(10) - to_round(0), to_stitches(0) - to_stitches(10)) for to_round, to_stitches in drawn]
    assert steps == [pytest.approx(steps[0], abs=0.02)] * len(steps)


def test_forty_sizes_are_drawn_on_several_sheets(client):
    sizes = [{"label": f"size {place}", "bust": 74 + 1.8 * place} for place in range(40)]
    root = plot(client, {"gauge": GAUGE, "sizes": sizes, "body_table": "women"}, page="a4")
    assert float(root.get("height").removesuffix("mm")) > 297
    assert set(panels(root)) == {size["label"] for size in sizes}


def test_random_pullovers_are_plotted_as_they_are_knitted(client):
    compared = 0
    for seed in range(60):
        request = random_request(seed)
        request["include"] = ["sizes"]
        request.pop("print", None)
        response = client.post("/v1/pullovers", json=request)
        if response.status_code != 200:
            continue
        sizes = [size for size in response.json["sizes"] if size["feasible"]]
        drawn = classed(plot(client, request), "panel")
        assert len(drawn) == len(sizes)
        for size, panel in zip(sizes, drawn, strict=True):
            for section in ("back", "front", "sleeve"):
                assert seen(panel, "knitted", section) == told(size, section), (seed, section)
                compared += 1
    assert compared > 200
