"""Requests that are right, and single mistakes in them, of the form and of the core's kinds.

A mistake changes places of a request. It is about these, and about what it says elsewhere: the places that would have
to be known to tell that it is one. `COUNT` below a list means how many items it has, whatever they are.
"""

from __future__ import annotations

import json
from dataclasses import dataclass
from typing import Any

Place = tuple[Any, ...]

GONE = object()
"""The place is left out."""

COUNT = "how many"


@dataclass(frozen=True)
class Mistake:
    """path, value: what is changed. about: other places that it is about, dotted."""

    path: str
    value: Any
    about: tuple[str, ...] = ()

    @property
    def place(self) -> Place:
        return place(self.path)

    def made_in(self, request: dict[str, Any]) -> dict[str, Any]:
        changed = json.loads(json.dumps(request))
        *steps, last = self.place
        below: Any = changed
        for step in steps:
            below = below.setdefault(step, {}) if isinstance(below, dict) else below[step]
        if self.value is GONE:
            del below[last]
        else:
            below[last] = self.value
        return changed


def place(path: str) -> Place:
    return tuple(int(step) if step.isdigit() else step for step in path.split("."))


def independent(first: Mistake, second: Mistake) -> bool:
    """Whether neither mistake changes, removes or replaces what the other is about."""
    return not any(
        _overlap(place(path), other.place)
        for one, other in ((first, second), (second, first))
        for path in (one.path, *one.about)
    )


def _overlap(one: Place, other: Place) -> bool:
    return all(a == b for a, b in zip(one, other, strict=False))


GAUGE = {"stitches": 22, "rows": 31}
NECK, SPLIT = {"back": 35, "front": 35, "sleeve": 13}, {"back": 81, "front": 81, "sleeve": 51}
LABELS = (f"labels.{COUNT}", "labels", "body_table")
OWN = [
    {"label": "S", "bust": 84, "upper_arm": 28},
    {"label": "M", "bust": 92, "upper_arm": 30},
    {"label": "L", "bust": 100, "upper_arm": 32},
]


def of_sizes(*names: str) -> tuple[str, ...]:
    return tuple(f"sizes.{index}.{name}" for index in range(3) for name in names)


RIGHT: dict[str, dict[str, Any]] = {
    "/v1/pullovers": {
        "gauge": GAUGE,
        "body_table": "women",
        "labels": ["S", "M", "L"],
        "ease": {"bust": 10},
        "neck": {"shares": {"back": 3, "front": 3, "sleeve": 1}},
        "yoke": {"depth": [22, 23, 24]},
        "body": {"levels": [{"measurement": "waist", "below": 16}]},
        "band": {"height": 2.5},
        "chart": {"chart": {"rows": [".#.", "#.#"]}, "anchor": {"back": 2, "front": 2, "sleeve": 2}},
        "yarn": {"metres_per_100g": 400, "swatch_grams": 10, "swatch_stitches": 1000},
        "changes": {"ease": {"bust": 12}},
    },
    "/v1/size-gradings": {
        "gauge": GAUGE,
        "sizes": OWN,
        "ease": {"bust": 10, "upper_arm": 4},
        "count_rules": {"bust": {"multiple": 4}},
    },
    "/v1/size-matches": {
        "grading": {"gauge": GAUGE, "body_table": "women", "labels": ["S", "M", "L"], "ease": {"bust": 10}},
        "body": 94,
        "ease": 8,
        "own_gauge": {"stitches": 20, "rows": 28},
    },
    "/v1/raglan-schedules": {
        "gauge": GAUGE,
        "step": 2,
        "sizes": [{"label": label, "rounds": 60, "neck": NECK, "split": SPLIT} for label in ("S", "M", "L")],
    },
    "/v1/yoke-adjustments": {
        "gauge": GAUGE,
        "sizes": [
            {
                "label": label,
                "rounds": 8,
                "neck": {"back": 30, "front": 30, "sleeve": 10},
                "split": {"back": 34, "front": 34, "sleeve": 14},
                "increase_rounds": [{"round": 2, "body": 1, "sleeve": 1}, {"round": 6, "body": 1, "sleeve": 1}],
                "adjust": {"rounds_change": 2},
            }
            for label in ("S", "M", "L")
        ],
    },
    "/v1/shaping-schedules": {
        "plans": [
            {"name": "sleeve", "stitches": 60, "to": 46, "rows": 90},
            {"name": "hem", "stitches": 112, "across": 16, "change": "decrease"},
            {"name": "body", "stitches": 80, "to": 90, "rows": 40, "plain_before": 4},
        ]
    },
    "/v1/chart-placements": {
        "gauge": GAUGE,
        "chart": {"rows": ["..#..", ".###.", "#####"], "colours": {".": {"name": "sand"}, "#": {"name": "rust"}}},
        "anchor": {"back": 3, "front": 3, "sleeve": 3},
        "plain_colour": ".",
        "sizes": [
            {
                "label": label,
                "rounds": 8,
                "neck": NECK,
                "increase_rounds": [{"round": 2, "body": 1, "sleeve": 1}],
                "underarm": 9,
                "body_rounds": 10,
                "body_shaping": [{"round": 3, "stitches": -4}],
                "sleeve_rounds": 12,
                "sleeve_decrease_rounds": [4, 8],
            }
            for label in ("S", "M", "L")
        ],
    },
    "/v1/yarn-estimates": {
        "yarns": {
            "oat": {"metres_per_100g": 400, "swatch_grams": 10, "swatch_stitches": 1000},
            "rust": {"strands": [{"metres": 175, "grams": 50}], "swatch_grams": 9, "swatch_stitches": 900},
        },
        "gauge": GAUGE,
        "sizes": [{"label": label, "stitches": {"oat": 40000, "rust": 9000}} for label in ("S", "M")],
    },
    "/v1/yarn-substitutions": {
        "pattern_yarn": {"metres_per_100g": 200},
        "own_yarn": {"strands": [{"metres": 200, "grams": 50}, {"tex": 120}]},
        "gauge": GAUGE,
        "sizes": [{"label": label, "yards": 1200} for label in ("S", "M", "L")],
    },
}
RIGHT["/v1/colour-contrasts"] = RIGHT["/v1/colour-contrasts/picture"] = {
    "colours": {"s": {"name": "sand", "hex": "#e8d9b5"}, "r": {"name": "rust", "hex": "#a0522d"}},
    "chart": {"rows": ["ssrss", "srrrs", "rrrrr"]},
}
RIGHT["/v1/proofs"] = {
    "labels": ["S", "M", "L"],
    "gauge": GAUGE,
    "line_stitches": 2,
    "count_rules": {"body": {"multiple": 4}},
    "skip": ["pick_up"],
    "rows": [
        {"part": "neck", "item": "back", "run": "30 (32, 34)"},
        {"part": "yoke", "item": "back_increases", "values": [20, 21, 22]},
        {"part": "split", "item": "back", "unit": "stitches", "values": [70, 74, 78]},
        {"part": "finished", "item": "bust", "run": "88 (96, 104) cm", "run_inch": "34 1/2 (37 3/4, 41)"},
    ],
}
PULLOVER_PICTURES = tuple(f"/v1/pullovers/{name}" for name in ("schematic", "chart", "yoke-plot", "pattern"))
SIZE_PICTURES = tuple(f"/v1/pullovers/{name}" for name in ("front", "worksheet"))
for _path in (*PULLOVER_PICTURES, *SIZE_PICTURES):
    RIGHT[_path] = {**RIGHT["/v1/pullovers"], "picture": {"size": "M"}}
RIGHT["/v1/chart-placements/picture"] = {**RIGHT["/v1/chart-placements"], "size": "M"}
RIGHT["/v1/chart-placements/garment-picture"] = RIGHT["/v1/chart-placements/picture"]

UNIT = "unit"
_RULES = (
    "neck.count_rule",
    "neck.shares",
    "body.count_rule",
    "sleeve.count_rule",
    "yoke",
    "chart.chart",
    "chart.anchor",
)
_COLOURS = ("chart.chart", "yarn", "changes.yarn")
_PLACED = [
    Mistake("gauge", 22),
    Mistake("zzz", 1),
    Mistake("first_round", 0),
    Mistake("half_stitch", "shifted"),
    Mistake("chart.rows.0", 5),
    Mistake("chart.rows.2", "####", ("chart.rows.0",)),
    Mistake("chart.rows.1", ".???.", ("chart.colours",)),
    Mistake("anchor.front", 9, ("chart.rows",)),
    Mistake("line_to_body", 3, ("line_stitches",)),
    Mistake("plain_colour", "x", ("chart",)),
    Mistake("below_colour", "x", ("chart",)),
    Mistake("exchange", [".", "."], ("chart",)),
    Mistake("partial_motifs", "whole"),
    Mistake("motif_columns", 2, ("chart.rows",)),
    Mistake("seam", "rib"),
    Mistake("sizes.1.label", "S", (*of_sizes("label"), "size")),
    Mistake("sizes.0.increase_rounds.0.round", 9, ("sizes.0.rounds",)),
    Mistake("sizes.0.increase_rounds.0.body", "x"),
    Mistake("sizes.1.body_shaping.0.stitches", -3),
    Mistake("sizes.2.sleeve_decrease_rounds.1", 4, ("sizes.2.sleeve_decrease_rounds.0", "sizes.2.sleeve_rounds")),
    Mistake("sizes.2.neck", GONE),
    Mistake("sizes.1.rounds", 5001),
    Mistake("answer_sizes", ["M", "Q"], (*of_sizes("label"), f"sizes.{COUNT}")),
]

_CONTRASTED = [
    Mistake("zzz", 1),
    Mistake("colours.r.hex", GONE),
    Mistake("colours.s.hex", "sand"),
    Mistake("colours.r.name", 5),
    Mistake("colours.rust", {"name": "rust", "hex": "#a0522d"}, ("chart.rows",)),
    Mistake("chart.repeat", "row"),
    Mistake("chart.rows.0", "ssoss", ("colours",)),
    Mistake("chart.rows.1", "srrs", ("chart.rows.0", "colours")),
    Mistake("chart.rows.2", ""),
]

MISTAKES: dict[str, list[Mistake]] = {
    "/v1/pullovers": [
        Mistake("gauge.stitches", "22"),
        Mistake("ease.upper_arm", "x"),
        Mistake("zzz", {}),
        Mistake("yoke.spacing", "closest-first"),
        Mistake("band.height", -1),
        Mistake("yarn.metres_per_100g", GONE),
        Mistake("sleeve.style", 7),
        Mistake("chart.float_limit", None),
        Mistake("chart.chart.rows.0", 3),
        Mistake(UNIT, "mm"),
        Mistake("labels.1", "S", ("labels",)),
        Mistake("labels.2", "Q", ("labels", "body_table")),
        Mistake("ease.hip", 3, ("body.levels",)),
        Mistake("ease.wrist", [1, 2], LABELS),
        Mistake("yoke.depth", [24, 23, 22], (*LABELS, UNIT)),
        Mistake("yoke.underarm", [6, 7], LABELS),
        Mistake("yoke.line_to_body", 5, ("yoke.line_stitches",)),
        Mistake("neck.shares.front", 4, ("neck.shares.back",)),
        Mistake("neck.circumference", [40, 41], LABELS),
        Mistake("body.levels.0.below", [15, 16], LABELS),
        Mistake("body.front_extra", {"from": 2, "to": -2}, (*LABELS, UNIT)),
        Mistake("body.bust_darts", {"extra": 2}, ("chart.chart", UNIT)),
        Mistake("body.count_rule", {"multiple": 4, "plus": 1}, _RULES),
        Mistake("chart.chart.rows.1", "#.", ("chart.chart.rows.0",)),
        Mistake("chart.plain_colour", "x", ("chart.chart",)),
        Mistake("chart.below_colour", "x", ("chart.chart",)),
        Mistake("chart.exchange", ["#", "x"], ("chart.chart",)),
        Mistake("chart.motif_columns", 2, ("chart.chart",)),
        Mistake("yoke.seam", "rib"),
        Mistake("yarn.swatch_stitches", GONE, ("yarn.swatch_grams",)),
        Mistake("changes.keep_counts", True, ("changes",)),
        Mistake("answer_sizes", ["Q", "S"], ("labels", "body_table", "sizes")),
        Mistake("include", ["tables"]),
        Mistake("changes.ease.hip", 3, ("body.levels", "changes.keep_counts")),
        Mistake("body.hem.rib.knit", 0, ("body.hem.rib.purl",)),
        Mistake("sleeve.cuff", {"rib": {"knit": 2, "purl": 2}, "count_rule": {"multiple": 6}}),
        Mistake("body.hem.colour", "?", _COLOURS),
        Mistake("sleeve.cuff.colour", "?", _COLOURS),
        Mistake("band.colour", "?", _COLOURS),
        Mistake("changes.band.colour", "?", (*_COLOURS, "changes.keep_counts")),
        Mistake("yarn.main_colour", "#", ("chart", "yarn", "changes.yarn")),
        Mistake("yoke.seam", "purled"),
    ],
    "/v1/size-gradings": [
        Mistake("gauge.rows", GONE),
        Mistake("within", "middel"),
        Mistake("count_rules.bust.multiple", 0),
        Mistake("printed_cm_step", "x"),
        Mistake("sizes.0.upper_arm", None),
        Mistake("labels", ["S"], (f"sizes.{COUNT}",)),
        Mistake("sizes.1.label", "S", of_sizes("label", "bust")),
        Mistake("sizes.2.bust", 90, (*of_sizes("label"), "sizes.0.bust", "sizes.1.bust", UNIT, "body_table")),
        Mistake("ease.hip", 3, (*of_sizes("hip"), f"sizes.{COUNT}", "body_table")),
        Mistake("ease.bust", [1, 2], (f"sizes.{COUNT}",)),
        Mistake("ease.upper_arm", -100, (*of_sizes("upper_arm"), f"sizes.{COUNT}", UNIT)),
        Mistake("answer_sizes", ["Q"], (*of_sizes("label"), f"sizes.{COUNT}")),
        Mistake("count_rules.head", {}, (*of_sizes("head"), f"sizes.{COUNT}", "body_table")),
    ],
    "/v1/size-matches": [
        Mistake("own_gauge", 5),
        Mistake("inch_convention", "exactly"),
        Mistake("garment", 99, ("ease", "body")),
        Mistake("ease", -95, ("body", UNIT, "garment")),
        Mistake("finished", [{"label": "S", "bust": 99}], ("grading",)),
        Mistake("grading.labels.1", "S", ("grading.labels",)),
        Mistake("grading.ease.back_hip_length", 1, ("grading.body_table", "grading.sizes")),
        Mistake("grading.gauge.stitches", True),
        Mistake("written_gauge", {"stitches": 30, "rows": 31}, ("grading.gauge", UNIT, "finished")),
    ],
    "/v1/raglan-schedules": [
        Mistake("gauge.stitches", GONE),
        Mistake("spacing", "evenly"),
        Mistake("step", 3),
        Mistake("sizes.2.label", "S", of_sizes("label")),
        Mistake("sizes.0.split.back", 80, ("sizes.0.neck.back",)),
        Mistake("sizes.0.split.sleeve", 3, ("sizes.0.neck.sleeve",)),
        Mistake("sizes.1.neck.front", 2.5),
        Mistake("sizes.1.rounds", 0),
        Mistake("sizes.2.neck", GONE),
        Mistake("answer_sizes", ["S", "S"], of_sizes("label")),
    ],
    "/v1/yoke-adjustments": [
        Mistake("fewer_edge", "first"),
        Mistake("sizes.1.label", "S", of_sizes("label")),
        Mistake("sizes.0.split.back", 33, ("sizes.0.neck.back",)),
        Mistake("sizes.0.increase_rounds.1.round", 2, ("sizes.0.increase_rounds.0.round",)),
        Mistake("sizes.0.increase_rounds.0.sleeve", "x"),
        Mistake("sizes.1.increase_rounds.1.round", 9, ("sizes.1.increase_rounds.0.round", "sizes.1.rounds")),
        Mistake("sizes.1.increase_rounds.0.round", GONE),
        Mistake("sizes.2.increase_rounds.1.body", 2, ("sizes.2.increase_rounds", "sizes.2.neck", "sizes.2.split")),
        Mistake("sizes.2.adjust", GONE, ("adjust",)),
        Mistake("sizes.1.adjust.rounds_change", "2"),
        Mistake("sizes.0.adjust.rounds_change", 4999, ("sizes.0.rounds",)),
    ],
    "/v1/shaping-schedules": [
        Mistake("plans.0.to", 45, ("plans.0.stitches", "plans.0.stitches_per_shaping")),
        Mistake("plans.0.plain_after", 91, ("plans.0.rows", "plans.0.plain_before")),
        Mistake("plans.1.across", 112, ("plans.1.stitches", "plans.1.change")),
        Mistake("plans.1.edge", "halves"),
        Mistake("plans.2.rows", GONE),
        Mistake("plans.2.name", 7),
    ],
    "/v1/chart-placements": [
        *_PLACED,
        Mistake(
            "sizes.0.neck.back",
            34,
            (
                "anchor",
                "sizes.0",
                "chart",
                "first_round",
                "partial_motifs",
                "motif_columns",
                "half_stitch",
                "line_to_body",
                "answer_sizes",
            ),
        ),
    ],
    "/v1/chart-placements/picture": [*_PLACED, Mistake("size", "Q", of_sizes("label"))],
    "/v1/chart-placements/garment-picture": [*_PLACED, Mistake("size", "Q", of_sizes("label"))],
    "/v1/colour-contrasts": _CONTRASTED,
    "/v1/colour-contrasts/picture": _CONTRASTED,
    "/v1/proofs": [
        Mistake("labels.1", "S", ("labels.0",)),
        Mistake("line_stitches", -1),
        Mistake("count_rules.skirt", {"multiple": 4}),
        Mistake("skip", ["pick-up"]),
        Mistake("gauge.rows", 0),
        Mistake("rows.0.run", "thirty"),
        Mistake("rows.1.values.1", "21"),
        Mistake("rows.2.unit", "cm", ("rows.2.part", "rows.2.item")),
        Mistake("rows.2.item", "front_drops_and_more_and_more_and_more_and_more_and_more_and_more"),
        Mistake("rows.3.run_inch", "34 cm or 13 in"),
        Mistake("rows.3.runs", "88"),
    ],
    "/v1/yarn-estimates": [
        Mistake("margin", "10 %"),
        Mistake("yarns.oat.swatch_stitches", GONE, ("yarns.oat.swatch_grams",)),
        Mistake("yarns.rust.strands.0.metres", GONE),
        Mistake("yarns.rust.swatch_floats", 9_000_000, ("yarns.rust", "gauge")),
        Mistake("yarns.oat.metres_per_100g", GONE),
        Mistake("sizes.1.label", "S", ("sizes.0.label",)),
        Mistake("sizes.0.stitches.wool", 5, (f"yarns.{COUNT}", "yarns.wool")),
        Mistake("sizes.1.stitches.oat", -1),
        Mistake("sizes.1.floats.wool", 5, (f"yarns.{COUNT}", "yarns.wool")),
        Mistake("answer_sizes", ["S", "Q"], ("sizes.0.label", "sizes.1.label")),
    ],
    "/v1/yarn-substitutions": [
        Mistake("margin", "10 %"),
        Mistake("pattern_yarn.strands", [{"metres": 400}], ("pattern_yarn.metres_per_100g",)),
        Mistake("own_yarn.strands.1.nm", 4, ("own_yarn.strands.1.tex",)),
        Mistake("own_yarn.swatch_grams", 12),
        Mistake("sizes.1.label", "S", ("sizes.0.label",)),
        Mistake("sizes.0.metres", 900, ("sizes.0.yards",)),
        Mistake("sizes.2.yards", GONE),
        Mistake("gauge.rows", 0),
        Mistake("answer_sizes", ["S", "Q"], of_sizes("label")),
    ],
}

_PICTURED = [
    *MISTAKES["/v1/pullovers"][:8],
    Mistake("answer_sizes", ["Q", "S"], ("labels", "body_table", "sizes")),
    Mistake("picture.size", "Q", ("labels", "body_table", "sizes")),
    Mistake("picture.page", "a5"),
    Mistake("picture.title", ""),
    Mistake("picture.colour", "red"),
]
for _path in PULLOVER_PICTURES:
    MISTAKES[_path] = _PICTURED
for _path in SIZE_PICTURES:
    MISTAKES[_path] = [*_PICTURED, Mistake("picture.size", GONE)]
MISTAKES["/v1/pullovers/chart"] = [*_PICTURED, Mistake("chart", GONE, ("chart.chart", "body.bust_darts"))]
