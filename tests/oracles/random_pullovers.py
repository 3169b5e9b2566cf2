"""Requests for whole pullovers at random, the same in every run: what a designer might send, well or badly chosen.

Every field of the contract is among them but a chart drawn as PNG, which is another way to send its rows.
"""

from __future__ import annotations

import random
from typing import Any

Json = dict[str, Any]

TABLES = {
    "women": ["XS", "S", "M", "L", "XL", "2X", "3X", "4X", "5X"],
    "men": ["S", "M", "L", "XL", "2X", "3X", "4X", "5X"],
    "children": ["2", "4", "6", "8", "10", "12", "14", "16"],
    "babies": ["3 months", "6 months", "12 months", "18 months", "24 months"],
}
BUSTS = {"women": (75, 150), "men": (90, 155), "children": (54, 81), "babies": (41, 50)}
SPACINGS = ("closest_first", "widest_first", "even", "single_then_plain", "plain_then_single")
STYLES = ("long", "three_quarter", "elbow", "short")
PLACES = ("early", "even", "late")
PARTS = ("table", "instructions", "sizes", "size_instructions", "chart_rounds")

BODY = {
    "bust": (1.0, 0.0),
    "waist": (0.9, -6.0),
    "hip": (0.9, 14.0),
    "upper_arm": (0.3, 0.0),
    "wrist": (0.08, 9.0),
    "neck": (0.16, 20.0),
    "head": (0.08, 47.0),
    "cross_back": (0.2, 18.0),
    "back_waist_length": (0.1, 32.0),
    "armhole_depth": (0.1, 9.0),
    "arm_length": (0.1, 34.0),
    "back_neck_to_wrist": (0.2, 54.0),
    "back_hip_length": (0.1, 53.0),
}
"""Made-up bodies that rise with the bust: a share of it, and so many cm."""

NEEDED = ("upper_arm", "wrist", "waist", "hip", "arm_length", "back_waist_length")
"""What a body has to have where no table completes it."""


def random_request(seed: int) -> Json:
    """One request; most can be answered, some contradict themselves."""
    return _Requests(random.Random(seed)).request()


class _Requests:
    def __init__(self, generator: random.Random) -> None:
        self.pick = generator.choice
        self.whole = generator.randint
        self.generator = generator
        self.sizes = 0
        self.labels: list[str] = []
        self.to_unit = 1.0
        self.levels: list[str] = []
        self.rows = 0.0

    def request(self) -> Json:
        request: Json = {}
        if self.sometimes(0.3):
            request["unit"], self.to_unit = "in", 1 / 2.54
        if self.sometimes(0.1):
            request["inch_convention"] = self.pick(("exact", "nominal"))
        request |= self.gauges() | self.bodies()
        for name, make, chance in (
            ("neck", self.neck, 0.5),
            ("yoke", self.yoke, 0.6),
            ("body", self.body, 0.5),
            ("ease", self.ease, 0.7),
            ("sleeve", self.sleeve, 0.5),
            ("band", self.band, 0.4),
            ("chart", self.chart, 0.35),
            ("yarn", self.yarn, 0.4),
            ("changes", self.changes, 0.4),
            ("smoothing", lambda: self.pick(("none", "steps")), 0.4),
            ("answer_sizes", self.answer_sizes, 0.2),
            ("include", lambda: self.generator.sample(PARTS, self.whole(1, 3)), 0.2),
            ("print", self.print_settings, 0.2),
        ):
            if self.sometimes(chance):
                request[name] = make()
        self.colour(request)
        return request

    def print_settings(self) -> Json:
        return self.some(
            0.5,
            cm_step=lambda: self.pick((0.1, 0.5, 1, 0.25)),
            inch_step=lambda: self.pick((0.25, 0.125, 0.1, 1)),
            decimal_mark=lambda: self.pick((".", ",")),
            language=lambda: self.pick(("en-US", "en-GB", "de")),
            fractions=lambda: self.pick(("plain", "unicode")),
            missing=lambda: self.pick(("none", "-", "x")),
            csv_layout=lambda: self.pick(("wide", "long")),
        )

    def sometimes(self, chance: float) -> bool:
        return self.generator.random() < chance

    def some(self, chance: float, **makers: Any) -> Json:
        """A few fields of an object."""
        return {name: make() for name, make in makers.items() if self.sometimes(chance)}

    def length(self, least: float, most: float) -> float:
        return round(self.generator.uniform(least * self.to_unit, most * self.to_unit), 1)

    def per_size(self, least: float, most: float) -> Any:
        if self.sometimes(0.5):
            return self.length(least, most)
        if self.sometimes(0.5):
            low, high = sorted((self.length(least, most), self.length(least, most)))
            return {"from": low, "to": high}
        return sorted(self.length(least, most) for _ in range(self.sizes))

    def count_rule(self) -> Json:
        multiple = self.pick((1, 2, 2, 3, 4, 4, 5, 6, 8, 12))
        return {"multiple": multiple} | self.some(
            0.3, plus=lambda: self.whole(0, multiple + 2), rounding=lambda: self.pick(("nearest", "up", "down"))
        )

    def gauge(self) -> Json:
        stitches = self.pick((8, 11, 14, 18, 20, 22, 24, 27.5, 30, 34, 40))
        return {"stitches": stitches, "rows": round(2 * stitches * self.generator.uniform(1.2, 1.55)) / 2}

    def counted(self, gauge: Json) -> Json:
        """The same gauge, at times as it is counted over another span."""
        counted = dict(gauge)
        usual = 10 if self.to_unit == 1 else 4
        if self.sometimes(0.1):
            counted["over"] = self.pick((usual / 2, usual * 2, usual * 1.5))
            counted = {
                name: count * counted["over"] / usual if name != "over" else count for name, count in counted.items()
            }
        if self.sometimes(0.1):
            counted["rows_over"] = self.pick((usual / 2, usual * 2, usual))
            counted["rows"] = gauge["rows"] * counted["rows_over"] / usual
        self.rows = counted["rows"]
        return counted

    def gauges(self) -> Json:
        gauge = self.gauge()
        if self.sometimes(0.5):
            return {"gauge": self.counted(gauge)}

        def other() -> Json:
            return self.counted({name: count + self.pick((-1, 0, 1, 2)) for name, count in gauge.items()})

        others = self.some(0.6, rib=other, stranded=other)
        return {"gauges": {"plain": self.counted(gauge)} | others}

    def bodies(self) -> Json:
        within = {"within": self.pick(("low", "middle", "high"))} if self.sometimes(0.1) else {}
        table, kind = self.pick(tuple(TABLES)), self.generator.random()
        if kind < 0.05:
            self.labels = TABLES["women"]
            self.sizes = len(self.labels)
            return within
        if kind < 0.35:
            self.labels = TABLES[table]
            self.sizes = len(self.labels)
            return {"body_table": table} | within
        self.sizes = self.whole(1, 5)
        if kind < 0.6:
            self.labels = sorted(self.generator.sample(TABLES[table], self.sizes), key=TABLES[table].index)
            return {"body_table": table, "labels": self.labels} | within
        low, high = BUSTS[table]
        busts = sorted({round(self.generator.uniform(low, high), 1) for _ in range(self.sizes)})
        self.sizes = len(busts)
        self.labels = [f"size {place}" for place in range(self.sizes)]
        sizes: list[Json] = [{"label": label} for label in self.labels]
        own, completed = self.sometimes(0.4), self.sometimes(0.7)
        for name, (share, usual) in BODY.items():
            if name == "bust" or (own and (name in NEEDED or self.sometimes(0.3))):
                high_or_low = self.generator.uniform(0.95, 1.05)
                for size, bust in zip(sizes, busts, strict=True):
                    length = bust if name == "bust" else (usual + share * bust) * high_or_low
                    size[name] = round(length * self.to_unit, 1)
        return {"sizes": sizes} | ({} if own and not completed else {"body_table": table} | within)

    def ease(self) -> Json:
        return self.some(
            0.5,
            bust=lambda: self.per_size(-2, 30),
            upper_arm=lambda: self.per_size(0, 14),
            wrist=lambda: self.per_size(0, 8),
            **{name: lambda: self.per_size(-2, 16) for name in self.levels},
        )

    def answer_sizes(self) -> list[str]:
        return self.generator.sample(self.labels, self.whole(1, len(self.labels)))

    def neck(self) -> Json:
        neck = self.some(
            0.3,
            circumference=lambda: self.per_size(34, 60),
            shares=lambda: {"back": self.whole(28, 40), "front": self.whole(20, 28), "sleeve": self.whole(5, 20)},
            count_rule=self.count_rule,
            way=lambda: self.pick(("joined", "flat")),
            start=lambda: self.pick(("before_back", "centre_back")),
            stretch=lambda: round(self.generator.uniform(0, 1), 2),
            lower_front=lambda: self.pick(("short_rows", "front_drop", "both", "none")),
        )
        return neck | self.some(0.4, raise_height=lambda: self.length(0, 7), front_drop=lambda: self.length(0, 7))

    def yoke(self) -> Json:
        lines = self.whole(0, 8)
        return {"line_stitches": lines} | self.some(
            0.35,
            depth=lambda: self.per_size(12, 34),
            underarm=lambda: self.per_size(2, 14),
            line_to_body=lambda: self.whole(0, lines),
            seam_stitches=lambda: self.whole(0, 3),
            seam=lambda: self.pick(("knit", "purl")),
            step=lambda: self.whole(1, 2),
            first_increase_round=lambda: self.whole(1, 12),
            plain_rounds_at_end=lambda: self.whole(0, 12),
            spacing=lambda: self.pick(SPACINGS),
            fewer_edge=lambda: self.pick(PLACES),
            double_body=lambda: self.pick(("never", "if_needed")),
            double_where=lambda: self.pick(PLACES),
        )

    def edge(self) -> Json:
        return self.some(0.7, height=lambda: self.length(0.5, 9)) | self.ribbed()

    def ribbed(self) -> Json:
        """How an edge repeats: by a rule, a rib, or both, which nearly always agree."""
        rib = {"knit": self.whole(1, 5), "purl": self.whole(1, 5)}
        both = self.count_rule()
        if self.sometimes(0.9):
            both |= {"multiple": self.pick((1, sum(rib.values()))), "plus": 0}
        ruled = {"count_rule": self.count_rule()}
        return self.pick(({}, ruled, {"rib": rib}, {"rib": rib, "count_rule": both}))

    def body(self) -> Json:
        def levels() -> list[Json]:
            self.levels = self.pick((["waist"], ["hip"], ["waist", "hip"]))
            below = {"waist": (8, 18), "hip": (19, 32)}
            return [{"measurement": name, "below": self.per_size(*below[name])} for name in self.levels]

        return self.some(
            0.4,
            length=lambda: self.per_size(22, 50),
            count_rule=self.count_rule,
            hem=self.edge,
            levels=levels,
            spacing=lambda: self.pick(SPACINGS),
            front_extra=lambda: self.per_size(0, 8),
            bust_darts=lambda: self.some(0.9, extra=lambda: self.per_size(0, 6)),
        )

    def sleeve(self) -> Json:
        return self.some(
            0.4,
            style=lambda: self.pick(STYLES),
            length=lambda: self.per_size(6, 54),
            count_rule=self.count_rule,
            cuff=self.edge,
            spacing=lambda: self.pick(SPACINGS),
            plain_before=lambda: self.whole(0, 30),
            plain_after=lambda: self.whole(0, 30),
        )

    def band(self) -> Json:
        return (
            self.some(
                0.5,
                height=lambda: self.length(0.5, 6),
                construction=lambda: self.pick(("single", "double", "double_with_fold_round")),
            )
            | self.ribbed()
        )

    def chart(self) -> Json:
        symbols = ".#o"[: self.whole(1, 3)]
        width = self.whole(1, 24)
        rows = ["".join(self.pick(symbols) for _ in range(width)) for _ in range(self.whole(1, 30))]
        if self.sometimes(0.6):
            rows = [row[: -(-width // 2)] + row[: width // 2][::-1] for row in rows]
        body = self.pick((0, 0.5))
        drawn = {"rows": rows, "repeat": self.pick(("rows", "once"))} | self.some(
            0.3,
            first_row=lambda: self.pick(("bottom", "top")),
            colours=lambda: {symbol: {"name": f"colour {symbol}"} | self.some(0.5, hex=self.hex) for symbol in symbols},
        )
        used = sorted(set("".join(rows)))
        return {"chart": drawn} | self.some(
            0.4,
            anchor=lambda: {
                "back": self.whole(1, width) + body,
                "front": self.whole(1, width) + body,
                "sleeve": self.whole(1, width) + self.pick((0, 0.5)),
            },
            first_round=lambda: self.whole(1, self.pick((30, 30, 200))),
            minimum_width=lambda: self.some(0.7, body=lambda: self.whole(0, 60), sleeve=lambda: self.whole(0, 40)),
            partial_motifs=lambda: self.pick(("work", "plain", "plain")),
            motif_columns=lambda: self.pick([columns for columns in range(1, width + 1) if width % columns == 0]),
            plain_colour=lambda: self.pick(used),
            below_colour=lambda: self.pick(used),
            line_colour=lambda: self.pick(used),
            seam_colour=lambda: self.pick(used),
            float_limit=lambda: self.whole(0, 12),
            **({"exchange": lambda: self.generator.sample(used, 2)} if len(used) > 1 else {}),
        )

    def yarn(self) -> Json:
        return self.one_yarn() | self.some(0.3, margin=lambda: self.whole(0, 4) / 10)

    def one_yarn(self) -> Json:
        """A yarn of one colour or of all, at times of several strands."""
        swatch = {"swatch_grams": 12.5, "swatch_stitches": 900}
        if self.sometimes(0.3):
            swatch |= {"swatch_floats": self.whole(0, 900), "swatch_fabric": self.pick(("plain", "stranded"))}
        held = {"strands": [self.strand() for _ in range(self.whole(1, 3))]}
        return (
            (held if self.sometimes(0.4) else {"metres_per_100g": self.whole(80, 500)})
            | (swatch if self.sometimes(0.4) else {})
            | self.some(0.3, ball_grams=lambda: self.pick((25, 50, 100)))
        )

    def strand(self) -> Json:
        thickness: tuple[Json, ...] = (
            {"metres": self.whole(80, 400)} | self.some(0.7, grams=lambda: self.pick((25, 50, 100))),
            {"metres_per_100g": self.whole(200, 1200)},
            {"tex": self.whole(80, 500)},
            {"nm": self.whole(2, 12)},
        )
        return self.pick(thickness) | self.some(
            0.3, name=lambda: f"strand {self.whole(1, 9)}", ball_grams=lambda: self.pick((25, 50, 100))
        )

    def colour(self, request: Json) -> None:
        """A yarn for each colour of a chart and of edges, and edges in colours that there are; now and then others."""
        drawn = request.get("chart", {}).get("chart")
        symbols = sorted({*drawn.get("colours", {}), *"".join(drawn["rows"])}) if drawn else ["."]
        if "yarn" in request and self.sometimes(0.5):
            symbols += self.generator.sample("xyz", self.whole(0, 3))
            request["yarn"] = self.each_in(symbols) | self.some(0.3, margin=lambda: self.whole(0, 4) / 10)
            if not drawn and self.sometimes(0.8):
                request["yarn"]["main_colour"] = self.pick(symbols)
            if self.sometimes(0.5) and "yarn" in request.get("changes", {}):
                request["changes"]["yarn"] = self.each_in(symbols)
                if "main_colour" in request["yarn"] and self.sometimes(0.5):
                    request["changes"]["yarn"]["main_colour"] = request["yarn"]["main_colour"]
        elif not drawn:
            symbols = []
        if self.sometimes(0.05):
            symbols = ["?"]
        band = [("changes", "band")] if "changes" in request and "keep_counts" not in request["changes"] else []
        for parts in (("body", "hem"), ("sleeve", "cuff"), ("band",), *band):
            if symbols and self.sometimes(0.3):
                edge = request
                for part in parts:
                    edge = edge.setdefault(part, {})
                edge["colour"] = self.pick(symbols)

    def each_in(self, symbols: list[str]) -> Json:
        return {
            "colours": {
                symbol: self.one_yarn() | self.some(0.3, name=lambda: f"shade {self.whole(1, 9)}", hex=self.hex)
                for symbol in symbols
            }
        }

    def hex(self) -> str:
        return f"#{self.whole(0, 0xFFFFFF):06x}"

    def changes(self) -> Json:
        if self.sometimes(0.25):
            return self.gauges() | {"keep_counts": True} | self.some(0.3, yarn=self.yarn)
        yoke = lambda: self.pick(  # noqa: E731
            (
                {"depth": self.length(12, 34)},
                {"depth_change": self.length(-6, 6)},
                {"rounds": self.whole(20, 110)},
                {"rounds_change": self.whole(-15, 15)},
                {"own_rows": round(self.rows * self.generator.uniform(0.8, 1.2), 1)},
            )
        )
        other = self.gauges() if self.sometimes(0.3) else {}
        return other | self.some(
            0.4,
            yoke=yoke,
            ease=self.ease,
            body_length=lambda: self.per_size(22, 50),
            sleeve_length=lambda: self.per_size(8, 54),
            sleeve_style=lambda: self.pick(STYLES),
            band=self.band,
            yarn=self.yarn,
        )
