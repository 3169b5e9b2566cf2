"""The requests that are measured: every operation at any number of sizes, and the chart in any shape.

Garments are invented. What grows with the sizes grows as it does in print: rounds, sections, increases.
"""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import dataclass
from typing import Any

from service.app import create_app
from service.config import Config
from service.examples import examples_of
from service.media import JSON
from service.routes import operations

Body = dict[str, Any]

GAUGE = {"stitches": 22, "rows": 31, "over": 10}

SIZES = (1, 9, 40)
"""How many sizes a request has: one, a usual pattern, the most allowed."""


@dataclass(frozen=True, slots=True)
class Case:
    """One request that is measured.

    operation: its name, as in the contract. name: what is special about it. body: what is sent.
    """

    operation: str
    name: str
    body: Body

    @property
    def path(self) -> str:
        """Where it is sent."""
        return f"/v1/{self.operation}"


def gauge_conversions(items: int) -> Body:
    """So many lengths and counts, at an own and at the pattern's gauge."""
    kinds: list[Body] = [
        {"name": "bust", "across": 107.5, "count_rule": {"multiple": 4}},
        {"name": "yoke depth", "along": 24},
        {"name": "cast-on", "stitches": 96},
        {"name": "yoke", "rows": 74},
    ]
    return {
        "gauge": {"stitches": 23, "rows": 32.5, "over": 10},
        "pattern_gauge": GAUGE,
        "items": [kinds[place % len(kinds)] for place in range(items)],
    }


def size_gradings(sizes: int) -> Body:
    """Own busts, completed from a built-in table."""
    return {
        "gauge": GAUGE,
        "body_table": "women",
        "sizes": [{"label": str(place + 1), "bust": 76 + 2 * place} for place in range(sizes)],
        "ease": {"bust": {"from": 10, "to": 12}, "upper_arm": 6.5, "wrist": 5},
        "count_rules": {"bust": {"multiple": 4}, "upper_arm": {"multiple": 2}},
    }


def size_matches(sizes: int) -> Body:
    """The size to take out of a grading."""
    return {"grading": size_gradings(sizes), "body": 92, "ease": 10, "own_gauge": {"stitches": 23, "rows": 32}}


def raglan_schedules(sizes: int) -> Body:
    """Yokes whose body and sleeves increase at different rates."""
    return {
        "gauge": GAUGE,
        "plain_rounds_at_end": 1,
        "double_body": "if_needed",
        "sizes": [_yoke(place) for place in range(sizes)],
    }


def long_yokes(rounds: int) -> Body:
    """Four yokes of so many rounds, with as many increases as fit into them at every second round."""
    neck = {"back": 2, "front": 2, "sleeve": 2}
    split = {section: 2 + min(rounds // 4 * 2, 4990) for section in neck}
    sizes = [{"label": str(place), "rounds": rounds, "neck": neck, "split": split} for place in range(4)]
    return {"gauge": GAUGE, "sizes": sizes}


def yoke_adjustments(sizes: int) -> Body:
    """The same yokes, some centimetres shallower."""
    return {**raglan_schedules(sizes), "adjust": {"depth_change": -1.5}}


def shaping_schedules(plans: int) -> Body:
    """Sleeves along their rows, and rows of increases across."""
    sleeves = [
        {"name": f"sleeve {place}", "stitches": 66 + 2 * place, "to": 42, "rows": 118, "plain_before": 6}
        for place in range(plans)
    ]
    hems = [
        {"name": f"hem {place}", "stitches": 112 + 8 * place, "across": 16, "change": "increase"}
        for place in range(plans)
    ]
    return {"plans": [plan for pair in zip(sleeves, hems, strict=True) for plan in pair][:plans]}


def yarn_estimates(sizes: int) -> Body:
    """Five yarns, one of them weighed in a swatch."""
    yarns: dict[str, Body] = {f"yarn {place}": {"metres_per_100g": 200 + 50 * place} for place in range(5)}
    yarns["yarn 0"] |= {"swatch_grams": 8.5, "swatch_stitches": 900}
    stitches = [dict.fromkeys(yarns, 9000 + 700 * place) for place in range(sizes)]
    return {
        "gauge": GAUGE,
        "yarns": yarns,
        "sizes": [{"label": str(place + 1), "stitches": each, "floats": each} for place, each in enumerate(stitches)],
    }


def chart_placements(sizes: int, width: int = 60, height: int = 80, rounds: int = 60) -> Body:
    """A chart of three colours over yoke, body and sleeves."""
    return {
        "gauge": GAUGE,
        "chart": chart(width, height),
        "anchor": {"back": 3, "front": 3, "sleeve": 3},
        "first_round": 3,
        "minimum_width": {"body": 20, "sleeve": 13},
        "sizes": [_charted(place, rounds) for place in range(sizes)],
    }


def pullovers(sizes: int) -> Body:
    """Whole pullovers without a chart."""
    grading = size_gradings(sizes)
    return {"gauge": GAUGE, "body_table": "women", "sizes": grading["sizes"], "ease": {"bust": 12}}


def pullovers_at(sizes: int, stitches: float, rows: float) -> Body:
    """The same in another fabric, so many stitches and rows in 10 cm."""
    return {**pullovers(sizes), "gauge": {"stitches": stitches, "rows": rows, "over": 10}}


def charted_pullovers(sizes: int, width: int = 60, height: int = 80) -> Body:
    """Whole pullovers with a chart over yoke, body and sleeves."""
    return {**pullovers(sizes), "chart": {"chart": chart(width, height), "first_round": 3}}


def proofs(sizes: int, numbers: str = "run") -> Body:
    """Sixty rows of a pullover of four colours.

    numbers: the field of its table that has them: `run`, as a pattern prints them, or `values`, as a pipeline has them.
    """
    asked = {**charted_pullovers(sizes), "yarn": {"metres_per_100g": 220}, "include": ["table"]}
    drawn = asked["chart"]["chart"]
    drawn["rows"][0] = "x" * 60
    drawn["colours"]["x"] = {"name": "line"}
    answer = create_app(Config(log_level="WARNING")).test_client().post("/v1/pullovers", json=asked).get_json()
    keys = ("part", "item", "unit", numbers)
    return {
        "labels": answer["labels"],
        "gauge": GAUGE,
        "rows": [{key: row[key] for key in keys} for row in answer["table"]],
    }


def chart(width: int, height: int) -> Body:
    """A chart of three colours whose rows are all different."""
    symbols = "..#.o##"
    rows = [
        "".join(symbols[(column * (row % 5 + 1) + row) % len(symbols)] for column in range(width))
        for row in range(height)
    ]
    return {"rows": rows, "colours": {".": {"name": "ground"}, "#": {"name": "motif"}, "o": {"name": "dots"}}}


def one_size(sizes: int, **more: Any) -> Body:
    """The numbers of one size out of so many, with or without a chart."""
    return {**pullovers(sizes), **more, "answer_sizes": ["1"], "include": ["sizes"]}


BUILDERS: dict[str, Callable[[int], Body]] = {
    "gauge-conversions": gauge_conversions,
    "size-gradings": size_gradings,
    "size-matches": size_matches,
    "raglan-schedules": raglan_schedules,
    "yoke-adjustments": yoke_adjustments,
    "shaping-schedules": shaping_schedules,
    "chart-placements": chart_placements,
    "pullovers": pullovers,
    "yarn-estimates": yarn_estimates,
    "proofs": proofs,
}
"""What is measured of each operation, by number of sizes."""


def cases() -> list[Case]:
    """Every operation at every number of sizes, and its first example where there is no builder for it."""
    kinds = [(operation, "", build) for operation, build in BUILDERS.items()]
    kinds.append(("pullovers", " and a 60 x 80 chart", charted_pullovers))
    built = [
        Case(operation, f"{sizes} size{'s' if sizes > 1 else ''}{with_}", build(sizes))
        for operation, with_, build in kinds
        for sizes in SIZES
    ]
    parts = [
        Case("pullovers", "the table of 9 sizes", {**pullovers(9), "include": ["table"]}),
        Case("pullovers", "1 of 9 sizes", one_size(9)),
        Case("proofs", "9 sizes, as values", proofs(9, "values")),
        Case("pullovers", "1 of 9 sizes and a 60 x 80 chart", one_size(9, chart=charted_pullovers(9)["chart"])),
        Case(
            "pullovers",
            "9 sizes and a 60 x 80 chart, round by round",
            {**charted_pullovers(9), "include": ["table", "instructions", "sizes", "chart_rounds"]},
        ),
    ]
    return (
        built
        + parts
        + [
            Case(operation.name, first.name, first.request)
            for operation in operations(Config())
            if operation.method == "POST" and operation.takes == JSON == operation.media[0]
            if operation.name not in BUILDERS
            for first in examples_of(operation.name)[:1]
        ]
    )


def nine_sizes() -> list[Case]:
    """What is measured of nine sizes, whole or in parts."""
    return [case for case in cases() if "9 sizes" in case.name]


def _yoke(place: int) -> Body:
    rounds = 60 + 2 * (place % 12)
    body, sleeve = 24 + place % 20, 19 + place % 9
    neck = {"back": 34 + 2 * place, "front": 34 + 2 * place, "sleeve": 12}
    split = {"back": neck["back"] + 2 * body, "front": neck["front"] + 2 * body, "sleeve": 12 + 2 * sleeve}
    return {"label": str(place + 1), "rounds": rounds, "neck": neck, "split": split}


def _charted(place: int, rounds: int) -> Body:
    back = 35 + 2 * place
    increases = [{"round": number, "body": 1, "sleeve": 1} for number in range(2, rounds + 1, 2)]
    return {
        "label": str(place + 1),
        "rounds": rounds,
        "neck": {"back": back, "front": back, "sleeve": 13},
        "increase_rounds": increases,
        "underarm": 9,
        "body_rounds": 110,
        "sleeve_rounds": 130,
        "sleeve_decrease_rounds": list(range(12, 130, 12)),
    }
