"""Requests for whole pullovers at random, the same in every run: what a designer might send, well or badly chosen."""

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


def random_request(seed: int) -> Json:
    """One request; most can be answered, some contradict themselves."""
    return _Requests(random.Random(seed)).request()


class _Requests:
    def __init__(self, generator: random.Random) -> None:
        self.pick = generator.choice
        self.whole = generator.randint
        self.generator = generator
        self.sizes = 0
        self.to_unit = 1.0

    def request(self) -> Json:
        request: Json = {}
        if self.sometimes(0.3):
            request["unit"], self.to_unit = "in", 1 / 2.54
        request |= self.gauges() | self.bodies()
        for name, make, chance in (
            ("ease", self.ease, 0.7),
            ("neck", self.neck, 0.5),
            ("yoke", self.yoke, 0.6),
            ("body", self.body, 0.5),
            ("sleeve", self.sleeve, 0.5),
            ("band", self.band, 0.4),
            ("chart", self.chart, 0.35),
            ("yarn", self.yarn, 0.4),
            ("changes", self.changes, 0.4),
            ("smoothing", lambda: self.pick(("none", "steps")), 0.4),
        ):
            if self.sometimes(chance):
                request[name] = make()
        return request

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

    def gauges(self) -> Json:
        gauge = self.gauge()
        if self.sometimes(0.6):
            return {"gauge": gauge}
        other = lambda: {name: count + self.pick((0, 1, 2)) for name, count in gauge.items()}  # noqa: E731
        return {"gauges": {"plain": gauge} | self.some(0.6, stranded=other, rib=other)}

    def bodies(self) -> Json:
        table = self.pick(tuple(TABLES))
        kind = self.generator.random()
        if kind < 0.4:
            self.sizes = len(TABLES[table])
            return {"body_table": table}
        self.sizes = self.whole(1, 5)
        if kind < 0.7:
            labels = self.generator.sample(TABLES[table], self.sizes)
            return {"body_table": table, "labels": sorted(labels, key=TABLES[table].index)}
        low, high = BUSTS[table]
        busts = sorted({round(self.generator.uniform(low, high) * self.to_unit, 1) for _ in range(self.sizes)})
        self.sizes = len(busts)
        return {
            "body_table": table,
            "sizes": [{"label": f"size {place}", "bust": bust} for place, bust in enumerate(busts)],
        }

    def ease(self) -> Json:
        return self.some(
            0.5,
            bust=lambda: self.per_size(-2, 30),
            upper_arm=lambda: self.per_size(0, 14),
            wrist=lambda: self.per_size(0, 8),
        )

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
            step=lambda: self.whole(1, 2),
            first_increase_round=lambda: self.whole(1, 12),
            plain_rounds_at_end=lambda: self.whole(0, 12),
            spacing=lambda: self.pick(SPACINGS),
            fewer_edge=lambda: self.pick(PLACES),
            double_body=lambda: self.pick(("never", "if_needed")),
            double_where=lambda: self.pick(PLACES),
        )

    def edge(self) -> Json:
        return self.some(0.7, height=lambda: self.length(0.5, 9), count_rule=self.count_rule)

    def body(self) -> Json:
        levels = lambda: [{"measurement": "waist", "below": self.per_size(8, 18)}]  # noqa: E731
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
        return self.some(
            0.5,
            height=lambda: self.length(0.5, 6),
            count_rule=self.count_rule,
            construction=lambda: self.pick(("single", "double", "double_with_fold_round")),
        )

    def chart(self) -> Json:
        symbols = ".#o"[: self.whole(1, 3)]
        width = self.whole(1, 24)
        rows = ["".join(self.pick(symbols) for _ in range(width)) for _ in range(self.whole(1, 30))]
        if self.sometimes(0.6):
            rows = [row[: -(-width // 2)] + row[: width // 2][::-1] for row in rows]
        body = self.pick((0, 0.5))
        return {"chart": {"rows": rows, "repeat": self.pick(("rows", "once"))}} | self.some(
            0.5,
            anchor=lambda: {
                "back": self.whole(1, width) + body,
                "front": self.whole(1, width) + body,
                "sleeve": self.whole(1, width) + self.pick((0, 0.5)),
            },
            first_round=lambda: self.whole(1, 30),
            minimum_width=lambda: {"body": self.whole(0, 60), "sleeve": self.whole(0, 40)},
        )

    def yarn(self) -> Json:
        swatch = {"swatch_grams": 12.5, "swatch_stitches": 900}
        return {"metres_per_100g": self.whole(80, 500)} | (swatch if self.sometimes(0.4) else {})

    def changes(self) -> Json:
        if self.sometimes(0.25):
            return self.gauges() | {"keep_counts": True}
        yoke = lambda: self.pick(  # noqa: E731
            (
                {"depth": self.length(12, 34)},
                {"depth_change": self.length(-6, 6)},
                {"rounds": self.whole(20, 110)},
                {"rounds_change": self.whole(-15, 15)},
                {"own_rows": self.whole(14, 50)},
            )
        )
        return self.some(
            0.4,
            gauge=self.gauge,
            yoke=yoke,
            ease=lambda: {"bust": self.per_size(0, 20)},
            body_length=lambda: self.per_size(22, 50),
            sleeve_length=lambda: self.per_size(8, 54),
            sleeve_style=lambda: self.pick(STYLES),
            band=self.band,
        )
