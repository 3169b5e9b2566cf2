"""The part of a pullover's answer that a request asks for, cut out of the whole one."""

from __future__ import annotations

from typing import Any

from flask.testing import FlaskClient

from tests.oracles.stitch_knitter import Json, expect


def whole(request: Json) -> Json:
    """The request that asks for everything."""
    design = {name: wish for name, wish in request.items() if name not in ("answer_sizes", "include")}
    return design | {"include": ["table", "instructions", "size_instructions", "chart_rounds"]}


def check_part(client: FlaskClient, request: Json, answer: Json) -> None:
    """The part of the answer that a request asks for is that of the whole one."""
    part = client.post("/v1/pullovers", json=request).json
    assert part
    asked = request.get("answer_sizes", answer["labels"])
    labels = [label for label in answer["labels"] if label in asked]
    include = set(request.get("include", ["table", "instructions", "sizes"]))
    expect(part["labels"], labels, "labels")
    in_sizes = include & {"sizes", "size_instructions", "chart_rounds"}
    shown = (include & {"table", "instructions"}) | ({"sizes"} if in_sizes else set())
    expect(part.keys() & {"table", "instructions", "sizes"}, shown, "parts")
    if "table" in include:
        rows = {
            (row["part"], row["item"]): [
                value for label, value in zip(answer["labels"], row["values"], strict=True) if label in asked
            ]
            for row in answer["table"]
        }
        expected = {key: values for key, values in rows.items() if set(values) != {None}}
        expect({(row["part"], row["item"]): row["values"] for row in part["table"]}, expected, "table")
    if "sizes" in shown:
        left_out = _left_out(include) | ({"nearest", "together"} if len(labels) < len(answer["labels"]) else set())
        sizes = [_without(size, left_out) for size in answer["sizes"] if size["label"] in asked]
        expect([_without(size, left_out - _left_out(include)) for size in part["sizes"]], sizes, "sizes")
    for name in ("cost", "gauges"):
        expect(part[name], answer[name], name)
    expect(part["changed"], [each for each in answer["changed"] if each["size"] in asked], "changed")
    warned = [each for each in answer["warnings"] if each.get("size") in asked]
    expect([each for each in part["warnings"] if "size" in each], warned, "warnings")


def _left_out(include: set[str]) -> set[str]:
    """The fields of sizes that aren't asked for."""
    words = set() if "size_instructions" in include else {"instructions"}
    return words | (set() if "chart_rounds" in include else {"floats_by_round", "chart rounds"})


def _without(value: Any, names: set[str], *, of_chart: bool = False) -> Any:
    """A JSON value without some of its fields; the lists of rounds are the chart's."""
    if isinstance(value, list):
        return [_without(each, names, of_chart=of_chart) for each in value]
    if not isinstance(value, dict):
        return value
    return {
        name: _without(each, names, of_chart=of_chart or name == "chart")
        for name, each in value.items()
        if name not in names
        and not (of_chart and name == "rounds" and isinstance(each, list) and "chart rounds" in names)
    }
