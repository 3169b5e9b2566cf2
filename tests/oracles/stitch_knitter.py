"""One size of a pullover, knitted stitch by stitch from the JSON of a request and its answer.

Nothing here is shared with the service or its core. `Garment` casts on, turns short rows, drops the front, increases,
divides, decreases and binds off; every round is a list of named stretches and, where a chart is worked, a string with
the colour of each stitch. What a stretch shows follows the stitches: a stitch stands on one column of an endless
wallpaper of the chart, new ones stand beside the edge stitch.
"""

from __future__ import annotations

from collections import Counter
from collections.abc import Iterable
from dataclasses import dataclass, field
from fractions import Fraction
from functools import cached_property
from typing import Any

from tests.oracles.pullover_answer import Fabric, Fabrics, exact, seam_of

Json = dict[str, Any]

WORKING_ORDER = ("back", "first_sleeve", "front", "second_sleeve")
"""The sections of the yoke; marker m stands behind the m-th, before its line."""


class KnittingError(AssertionError):
    """The answer can't be knitted, or comes to something else than it says."""


def expect(found: Any, told: Any, what: str) -> None:
    """Fail where what is knitted isn't what is told."""
    if found != told:
        raise KnittingError(f"{what}: knitted {found}, told {told}")


def demand(holds: bool, what: str) -> None:
    """Fail where something doesn't hold that has to."""
    if not holds:
        raise KnittingError(what)


@dataclass
class Stretch:
    """Stitches of one section: how many, and the wallpaper column of the first where a chart has been anchored."""

    stitches: int
    column: int = 0

    def grow(self, first: int, last: int) -> None:
        """Stitches made or taken at both edges."""
        self.stitches += first + last
        self.column -= first


@dataclass
class Worked:
    """A round as it came off the needles.

    fabric: its gauge. stitches: worked in it. colours: of each stitch in working order, "" without a chart.
    sections: stitches by name. columns: of the chart, first and last by name, None where plain. ends: plain stitches
    before and after them. chart_row: from 1.
    """

    fabric: Fabric
    stitches: int
    colours: str
    sections: dict[str, int]
    columns: dict[str, tuple[int, int] | None]
    ends: dict[str, tuple[int, int]]
    chart_row: int | None


@dataclass
class Garment:
    """All of one size. request, size: JSON; the size is one that is feasible. kept: of a maker at another gauge."""

    request: Json
    size: Json
    yoke: list[Worked] = field(default_factory=list)
    body: list[Worked] = field(default_factory=list)
    sleeve: list[Worked] = field(default_factory=list)
    elsewhere: int = 0
    """Stitches of short rows and ribs, less those that a dropped front doesn't have yet."""
    of_darts: int = 0
    """Of these, stitches of the short rows over the bust."""

    def __post_init__(self) -> None:
        self.fabrics = Fabrics(self.request)
        self.lines = self.size["neck"]["line_stitches"]
        self.chart = Wallpaper(self.request) if "chart" in self.request else None
        self.needle = self._cast_on()
        self._raise_back()
        self._work_yoke()
        self._divide()
        self._work_body()
        self._work_sleeve()
        for edge in (self.size["body"]["hem"], self.size["sleeve"]["cuff"], self.size["sleeve"]["cuff"]):
            self.elsewhere += edge["stitches"] * edge["rounds"]
        self._work_band()

    # the neck

    def _cast_on(self) -> list[str]:
        """The name of each stitch cast on, from the start of the round on; and the markers between them."""
        neck = self.size["neck"]
        needle: list[str] = []
        markers: dict[Any, int] = {}
        for gap in neck["markers"]:
            # where a round or the cast-on starts within a section, each half of it stands by itself
            names = [(part["name"].removeprefix("half_"), part["stitches"]) for part in gap["parts"]]
            here = [name for name, stitches in names for _ in range(stitches)]
            expect(len(here), gap["stitches"], f"stitches before marker {gap['marker']}")
            needle += here
            if gap["marker"] is not None:
                demand(gap["marker"] not in markers, f"marker {gap['marker']} stands twice")
                markers[gap["marker"]] = len(needle)
        expect(len(needle), neck["cast_on"], "stitches cast on")
        start = markers.pop("start", 0)
        # where the cast-on begins and ends, counted from the start of the round
        self.ends = (-start, len(needle) - start)
        expect(sorted(markers), [1, 2, 3, 4], "markers")
        around = len(needle)
        needle = needle[start:] + needle[:start]
        self.markers = {number: (place - start - 1) % around + 1 for number, place in markers.items()}
        for number, name in enumerate(WORKING_ORDER, 1):
            place = self.markers[number]
            before, after = needle[(place - 1) % around], needle[place % around]
            if "sleeve" not in name or neck["sections"]["sleeve"]:
                expect(before, name, f"what comes before marker {number}")
            if self.lines:
                expect(after, "line", f"what follows marker {number}")
        drop = neck.get("front_drop")
        to_come = drop["centre"] + 2 * len(drop["increase_rows"]) if drop else 0
        sections = neck["sections"]
        expect(needle.count("back"), sections["back"], "back at the neck")
        expect(needle.count("front"), sections["front"] - to_come, "front at the neck")
        for name in ("first_sleeve", "second_sleeve"):
            expect(needle.count(name), sections["sleeve"], f"{name} at the neck")
        expect(needle.count("line"), 4 * self.lines, "raglan lines")
        if self.request.get("neck", {}).get("start", "before_back") == "before_back":
            demand(needle[0] == "back" and needle[-1] != "back", "the round doesn't start before the back")
        else:
            demand(needle[0] == needle[-1] == "back", "the round doesn't start within the back")
            demand(abs(needle[: self.markers[1]].count("back") * 2 - sections["back"]) <= 1, "no centre back")
        return needle

    def _raise_back(self) -> None:
        """Every short row, stitch by stitch: full height over the back, nothing at the centre front, even steps."""
        neck = self.size["neck"]
        turns = neck["turns"]
        expect(len(turns), neck.get("back_raise", {"rows": 0})["rows"], "short rows")
        if not turns:
            return
        around = len(self.needle)
        # From the start of the round to the centre front, and back to it the other way; a dropped front ends before it.
        ahead = self.markers[2] + self.lines + self.needle.count("front") // 2
        behind = ahead - around
        heights = dict.fromkeys(range(behind, ahead), 0)
        flat = neck["way"] == "flat"
        if flat:
            expect(self.ends, (behind, ahead), "ends of the flat cast-on")
        # a dropped front ends with a right-side row, so before an odd number of its rows comes a right-side row, too
        sides = ("right", "wrong") if not neck.get("front_drop", {"rows": 0})["rows"] % 2 else ("wrong", "right")
        ends = (behind, ahead) if sides[0] == "right" else (ahead, behind)
        here, stop = ends if flat else (0, 0)
        reached: dict[str, list[int]] = {"right": [], "wrong": []}
        for number, turn in enumerate(turns, 1):
            expect((turn["row"], turn["side"]), (number, sides[(number - 1) % 2]), "row and side")
            marker = self.markers[turn["marker"]]
            there = marker + turn["stitches"] if turn["side"] == "right" else marker - around - turn["stitches"]
            demand(behind <= there <= ahead, f"turn {number} crosses the centre front")
            self.elsewhere += _pass(heights, here, there)
            reached[turn["side"]].append(abs(there))
            here = there
        self.elsewhere += _pass(heights, here, stop)
        for side, places in reached.items():
            demand(places == sorted(set(places)), f"turns on the {side} side: {places}")
        back = [place for place in heights if self.needle[place % around] == "back"]
        if turns[-1]["marker"] == 3:
            expect(
                turns[-1]["stitches"], neck["back_raise"]["front_stitches"], "reach of the short rows into the front"
            )
        lowest, rows = min(heights.values()), len(turns)
        demand({heights[place] for place in back} == {lowest + rows}, "the back isn't raised by all rows")
        expect(lowest, int(flat), "rows over the centre front")
        right = [heights[place] for place in range(max(back), ahead)]
        left = [heights[place] for place in range(min(back), behind - 1, -1)]
        for steps in (right, left):
            demand(steps == sorted(steps, reverse=True), "the raise doesn't fall towards the front")

    # the yoke

    def _work_yoke(self) -> None:
        yoke, neck = self.size["yoke"], self.size["neck"]
        sections = {name: Stretch(neck["sections"][name]) for name in ("back", "front", "sleeve")}
        if self.chart:
            for name, stretch in sections.items():
                self.chart.anchor(name, stretch)
        self.sections = sections
        drop = neck.get("front_drop")
        to_come = drop["centre"] + 2 * len(drop["increase_rows"]) if drop else 0
        increases = {worked["round"]: worked for worked in yoke["increase_rounds"]}
        demand(all(1 <= number <= yoke["rounds"] for number in increases), "increases beyond the yoke")
        for number in range(1, yoke["rounds"] + 1):
            if number in increases:
                for name, stretch in sections.items():
                    many = increases[number][name if name in increases[number] else "body"]
                    stretch.grow(many, many)
            stretches = [("back", "back"), ("first_sleeve", "sleeve"), ("front", "front"), ("second_sleeve", "sleeve")]
            self.yoke.append(self._round(number, [(name, sections[of], "line") for name, of in stretches], number))
            if drop and number <= drop["rows"]:
                if number in drop["increase_rows"]:
                    demand((drop["rows"] - number) % 2 == 0, f"the front grows in row {number}, a wrong-side row")
                    to_come -= 2
                self.elsewhere -= to_come
        if drop:
            demand(drop["rows"] < yoke["rounds"], "the front drop is longer than the yoke")
            expect(to_come, drop["centre"], "the front once it is joined lacks")
        for name, stretch in sections.items():
            expect(stretch.stitches, self.size["split"]["sections"][name], f"{name} at the split")
        if yoke["rounds"]:
            expect(self.yoke[-1].stitches, self.size["split"]["yoke_total"], "the yoke's last round")

    def _round(self, number: int, stretches: list[tuple[str, Stretch, str]], chart_round: int) -> Worked:
        """One round: each stretch, and the line or seam behind it."""
        row = self.chart.row(chart_round) if self.chart else None
        worked = Worked(self.fabrics.of(chart_round), 0, "", {}, {}, {}, row)
        colours: list[str] = []
        for name, stretch, behind in stretches:
            between = self.lines if behind == "line" else self.seam
            worked.sections[name] = stretch.stitches
            worked.stitches += stretch.stitches + between
            if self.chart:
                shown, columns = self.chart.show(name, stretch, chart_round)
                colours += ("".join(shown), self.chart.colour(behind, chart_round) * between)
                places = [place for place, column in enumerate(columns) if column is not None]
                worked.columns[name] = (columns[places[0]] or 0, columns[places[-1]] or 0) if places else None
                worked.ends[name] = (places[0], len(columns) - 1 - places[-1]) if places else (0, 0)
        worked.colours = "".join(colours)
        demand(all(stitches > 0 for stitches in worked.sections.values()), f"round {number} has an empty section")
        return worked

    # the split

    def _divide(self) -> None:
        split = self.size["split"]
        underarm = split["underarm"]
        # without a chart nothing shows where the middle is
        self.seam = seam_of(self.request, underarm) or underarm % 2
        expect(split["line_to_body"] + split["line_to_sleeve"], self.lines, "line stitches given to body and sleeve")
        demand((underarm - self.seam) % 2 == 0, f"an underarm of {underarm} with a seam of {self.seam} has no middle")
        beside = (underarm - self.seam) // 2
        for name, share in (("back", "body"), ("front", "body"), ("sleeve", "sleeve")):
            stretch = self.sections[name]
            stretch.grow(split[f"line_to_{share}"] + beside, split[f"line_to_{share}"] + beside)
        halves = self.sections["back"].stitches + self.sections["front"].stitches
        expect(halves + 2 * self.seam, split["body"], "the body")
        expect(self.sections["sleeve"].stitches + self.seam, split["sleeve"], "each sleeve")
        expect(split["body"] + 2 * split["sleeve"], split["yoke_total"] + 4 * underarm, "all stitches at the split")

    # body and sleeves

    def _work_body(self) -> None:
        body, split = self.size["body"], self.size["yoke"]["rounds"]
        back, front = self.sections["back"], self.sections["front"]
        shaping = {one["round"]: one["stitches"] for one in body["shaping"]}
        demand(all(1 <= number <= body["rounds"] for number in shaping), "the body is shaped beyond its rounds")
        expect(back.stitches + front.stitches + 2 * self.seam, body["stitches"], "the body below the split")
        darts = body.get("bust_darts")
        for number in range(1, body["rounds"] + 1):
            each, rest = divmod(shaping.get(number, 0), 4)
            expect(rest, 0, f"stitches beyond fours in body round {number}")
            back.grow(each, each)
            front.grow(each, each)
            stretches = [("back", back, "seam"), ("front", front, "seam")]
            self.body.append(self._round(number, stretches, split + number))
            if darts and number == darts["round"]:
                expect(each, 0, "shaping in the round of the bust darts")
                demand(self.body[-1].chart_row is None, "the bust darts lie in a round of the chart")
                # a half of the underarm's seam lies in the front, without a middle stitch
                expect(front.stitches + self.seam // 2 * 2, darts["front"], "front from side to side")
                self._work_darts(darts)
        for reached in body["levels"]:
            # at round 0 the body is what it is at the split
            expect(self.around("body", reached["round"]), reached["stitches"], f"the body at the {reached['name']}")
        expect(self.around("body", body["rounds"]), body["hem"]["before"], "stitches before the hem")

    def _work_darts(self, darts: Json) -> None:
        heights = dict.fromkeys(range(darts["front"]), 0)
        here, before = 0, self.elsewhere
        sides: dict[str, list[int]] = {"right": [], "wrong": []}
        for number, turn in enumerate(darts["turns"], 1):
            expect((turn["row"], turn["side"]), (number, ("wrong", "right")[number % 2]), "dart's row and side")
            there = darts["front"] - turn["stitches"] if turn["side"] == "right" else turn["stitches"]
            self.elsewhere += _pass(heights, here, there)
            sides[turn["side"]].append(turn["stitches"])
            here = there
        self.elsewhere += _pass(heights, here, darts["front"]) - darts["front"]
        self.of_darts = self.elsewhere - before
        expect(max(heights.values()) - 1, darts["rows"], "rows over the middle of the front")
        expect({heights[0], heights[darts["front"] - 1]}, {1}, "rows at the sides of the front")
        for places in sides.values():
            demand(places == sorted(set(places)), f"dart turns don't close up: {places}")

    def _work_sleeve(self) -> None:
        sleeve, split = self.size["sleeve"], self.size["yoke"]["rounds"]
        decreases, stretch = set(sleeve["decrease_rounds"]), self.sections["sleeve"]
        expect(sorted(decreases), sleeve["decrease_rounds"], "decrease rounds in order")
        demand(all(1 <= number <= sleeve["rounds"] for number in decreases), "decreases beyond the sleeve")
        expect(stretch.stitches + self.seam, sleeve["stitches"], "the sleeve below the split")
        for number in range(1, sleeve["rounds"] + 1):
            if number in decreases:
                stretch.grow(-1, -1)
            self.sleeve.append(self._round(number, [("sleeve", stretch, "seam")], split + number))
        expect(self.around("sleeve", sleeve["rounds"]), sleeve["cuff"]["before"], "stitches before the cuff")

    def around(self, part: str, number: int) -> int:
        """Stitches of body or sleeve after a round; after round 0 those at the split."""
        rounds: list[Worked] = getattr(self, part)
        return rounds[number - 1].stitches if number else self.size["split"][part]

    # the neckband

    def _work_band(self) -> None:
        band, neck = self.size["band"], self.size["neck"]
        drop = neck.get("front_drop", {"centre": 0, "rows": 0})
        along, rest = divmod(band["picked_up"] - neck["cast_on"] - drop["centre"], 2)
        expect(rest, 0, "stitches picked up along both sides differ by")
        fabric = self.fabrics.of(1)
        wanted = drop["rows"] * fabric.stitches_per_cm / fabric.rows_per_cm
        # the rows of a chart's fabric and plain ones may lie along one edge
        demand(abs(along - wanted) <= max(1, wanted / 8), f"{along} stitches picked up along {drop['rows']} rows")
        expect(band["picked_up"] + band["change"], band["stitches"], "stitches of the band")
        self.elsewhere += band["stitches"] * band["rounds"]

    # what it comes to

    @property
    def stitches(self) -> int:
        """All stitches worked."""
        rounds = [*self.yoke, *self.body, *self.sleeve, *self.sleeve]
        return sum(worked.stitches for worked in rounds) + self.elsewhere

    def high(self, part: str, rounds: int | None = None, fabrics: Fabrics | None = None) -> Fraction:
        """Height of the first rounds of a part, or of all of them; fabrics: in others than they were meant for."""
        after = 0 if part == "yoke" else self.size["yoke"]["rounds"]
        worked = range(after + 1, after + len(getattr(self, part)[:rounds]) + 1)
        return height(fabrics or self.fabrics, worked)

    @cached_property
    def colour_counts(self) -> dict[str, Counter[str]]:
        """Stitches of each colour in yoke, body and one sleeve."""
        return {
            part: sum((Counter(worked.colours) for worked in getattr(self, part)), Counter())
            for part in ("yoke", "body", "sleeve")
        }

    def floats(self, part: str) -> list[list[tuple[int, str]]]:
        """The length and the colour of all floats of every round of a part, over the start of the round too."""
        found, before = [], ""
        for worked in getattr(self, part):
            here, floats = worked.colours, []
            for colour in set(here):
                pieces = here.split(colour)
                if colour in before:
                    floats.append((len(pieces[0]) + len(before) - before.rindex(colour) - 1, colour))
                floats += [(len(piece), colour) for piece in pieces[1:-1]]
            found.append(floats)
            before = here
        return found


def height(fabrics: Fabrics, rounds: Iterable[int]) -> Fraction:
    """Height of rounds, each as high as its own fabric has it."""
    counted: Counter[Fraction] = Counter(fabrics.of(number).rows_per_cm for number in rounds)
    return sum((many / rows for rows, many in counted.items()), Fraction(0))


def _pass(heights: dict[int, int], here: int, there: int) -> int:
    """One row from place to place: every stitch on the way gets higher; how many they are."""
    for place in range(min(here, there), max(here, there)):
        heights[place] += 1
    return abs(there - here)


class Wallpaper:
    """The chart of a request, endlessly repeated to both sides."""

    def __init__(self, request: Json) -> None:
        self.wishes = request["chart"]
        exchange = self.wishes.get("exchange", [])
        others = dict(zip(exchange, reversed(exchange), strict=True))
        drawn = ["".join(others.get(symbol, symbol) for symbol in row) for row in self.wishes["chart"]["rows"]]
        worked = drawn if self.wishes["chart"].get("first_row", "bottom") == "top" else drawn[::-1]
        # right to left, as rounds are worked
        self.rows = [row[::-1] for row in worked]
        self.width, self.height = len(self.rows[0]), len(self.rows)
        self.once = self.wishes["chart"].get("repeat", "rows") == "once"
        self.first_round = self.wishes.get("first_round", 1)
        # of colours with as many stitches the one that is worked first
        self.plain = self.wishes.get("plain_colour") or Counter("".join(self.rows)).most_common(1)[0][0]
        self.below = self.wishes.get("below_colour", self.plain) if self.once else self.plain
        whole = self.wishes.get("partial_motifs", "work") == "plain"
        self.motif = self.wishes.get("motif_columns", self.width) if whole else None

    def ended(self, number: int) -> bool:
        """Whether the last row of a chart that is worked once is behind when a round is done."""
        return self.once and number >= self.first_round + self.height - 1

    def colour(self, kind: str, number: int) -> str:
        """The colour of lines and seams, or of what is plain, in a round counted from the yoke's first on."""
        found: str = self.below if self.ended(number - 1) else self.plain
        return found if kind == "plain" else self.wishes.get(f"{kind}_colour") or found

    def row(self, number: int) -> int | None:
        """The chart row, from 1, of a round counted from the yoke's first on."""
        come = number - self.first_round
        if come < 0 or (self.once and come >= self.height):
            return None
        return come % self.height + 1

    def anchor(self, name: str, stretch: Stretch) -> None:
        """Put a section's centre on its column: wallpaper columns are those of the chart, and go on to both sides."""
        centre = exact(self.wishes["anchor"][name]) if "anchor" in self.wishes else self.middle
        first = centre - Fraction(stretch.stitches - 1, 2)
        demand(first.denominator == 1, f"the {name} of {stretch.stitches} stitches has no centre on column {centre}")
        stretch.column = int(first)

    @cached_property
    def middle(self) -> Fraction:
        """The mirror axis that lies nearest to the middle of the chart, or the middle where it has none."""
        middle = Fraction(self.width + 1, 2)
        axes = [
            Fraction(twice, 2)
            for twice in range(2, 2 * self.width + 2)
            if all(
                row[column - 1] == row[(twice - column - 1) % self.width]
                for row in self.rows
                for column in range(1, self.width + 1)
            )
        ]
        return min(axes or [middle], key=lambda axis: (abs(axis - middle), axis))

    def show(self, name: str, stretch: Stretch, number: int) -> tuple[list[str], list[int | None]]:
        """The colour of each stitch in a round, and the chart column that it is worked from, None where it is plain."""
        row, plain = self.row(number), self.colour("plain", number)
        least = self.wishes.get("minimum_width", {}).get("sleeve" if "sleeve" in name else "body", 0)
        colours = [plain] * stretch.stitches
        worked: list[int | None] = [None] * stretch.stitches
        if row is None or stretch.stitches < least:
            return colours, worked
        on_wall = range(stretch.column, stretch.column + stretch.stitches)
        for place, column in enumerate(on_wall):
            if self.motif:
                first = column - (column - 1) % self.motif
                if first not in on_wall or first + self.motif - 1 not in on_wall:
                    continue
            worked[place] = (column - 1) % self.width + 1
            colours[place] = self.rows[row - 1][(column - 1) % self.width]
        return colours, worked
