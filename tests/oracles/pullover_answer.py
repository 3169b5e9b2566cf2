"""An answer of `POST /v1/pullovers`, knitted again from its own numbers.

Nothing here calls the core. `knit` begins with the cast-on, works every increase, divides, decreases down to the edges,
and compares what is on the needle with what the answer says; lengths are made from counts and the request's gauges. The
identities are those of a top-down raglan, with L line stitches, lb and ls of them to body and sleeve, and underarm U:

    neck total = back + front + 2 sleeve + 4 L          body = back1 + front1 + 4 lb + 2 U
    sleeve = sleeve1 + 2 ls + U                         body + 2 sleeve = yoke total + 4 U
"""

from __future__ import annotations

from decimal import Decimal
from fractions import Fraction
from itertools import pairwise
from math import floor
from typing import Any

Json = dict[str, Any]

SECTIONS = ("back", "front", "sleeve")


def exact(number: float) -> Fraction:
    """A number of a JSON text as it is written."""
    return Fraction(Decimal(repr(number)))


class Fabric:
    """A gauge of the request, in exact stitches and rows per cm."""

    def __init__(self, gauge: Json, unit: str) -> None:
        to_cm = Fraction(1) if unit == "cm" else Fraction(254, 100)
        over = exact(gauge.get("over", 10 if unit == "cm" else 4)) * to_cm
        rows_over = exact(gauge["rows_over"]) * to_cm if "rows_over" in gauge else over
        self.stitches_per_cm = exact(gauge["stitches"]) / over
        self.rows_per_cm = exact(gauge["rows"]) / rows_over

    def wide(self, stitches: int) -> Fraction:
        """Width of stitches in cm."""
        return stitches / self.stitches_per_cm

    def high(self, rows: int) -> Fraction:
        """Height of rows in cm."""
        return rows / self.rows_per_cm


class Fabrics:
    """The fabric of each round, counted from the yoke's first on: stranded where a row of the chart is worked.

    kept_at: the changes of a maker who knits the written counts, whose gauges then are the fabric's.
    """

    def __init__(self, request: Json, *, kept_at: Json | None = None) -> None:
        unit, changes = request.get("unit", "cm"), request.get("changes", {})
        sent = changes if not changes.get("keep_counts") and changes.keys() & {"gauge", "gauges"} else request
        sent = kept_at or sent
        gauges = sent.get("gauges") or {"plain": sent["gauge"]}
        plain = Fabric(gauges["plain"], unit)
        stranded = Fabric(gauges["stranded"], unit) if "stranded" in gauges else plain
        self.rib = Fabric(gauges["rib"], unit) if "rib" in gauges else plain
        self.plain, self.stranded, self._chart = plain, stranded, request.get("chart")

    def of(self, number: int) -> Fabric:
        """What a round is knitted in."""
        if self._chart is None or number < self._chart.get("first_round", 1):
            return self.plain
        worked = number - self._chart.get("first_round", 1) + 1
        once = self._chart["chart"].get("repeat", "rows") == "once"
        return self.plain if once and worked > len(self._chart["chart"]["rows"]) else self.stranded

    def high(self, after: int, rounds: int) -> Fraction:
        """Height of so many rounds after one."""
        return sum((self.of(after + number).high(1) for number in range(1, rounds + 1)), Fraction(0))


def feasible(answer: Json) -> list[Json]:
    """The sizes of an answer that can be knitted."""
    return [size for size in answer["sizes"] if size["feasible"]]


def check(request: Json, answer: Json) -> None:
    """Fail where a size doesn't close, breaks a rule of the request, or is told differently elsewhere in the answer."""
    for size in feasible(answer):
        knit(request, size)
        _measure(Fabrics(request), size, "own_rows" in request.get("changes", {}).get("yoke", {}), size["finished"])
        if "chart" in size:
            _lay(request, size)
        if "yarn" in size:
            assert sum(colour["stitches"] for colour in size["yarn"]) == worked_stitches(size)
    if request.get("changes", {}).get("keep_counts"):
        check_own_gauge(request, answer)
    _check_table(request, answer)


def _check_table(request: Json, answer: Json) -> None:
    """Fail where a row of the table doesn't have what the sizes have, the body that is sent, or the yarn."""
    rows = {(row["part"], row["item"]): row for row in answer["table"]}
    assert len(rows) == len(answer["table"])
    to_fit = {("to_fit", "bust"): "cm", ("to_fit", "ease"): "cm"}
    yarn = {key: key[1].split("_")[0] for key in rows if key[0] == "yarn"}
    units = to_fit | TABLE_UNITS | yarn
    assert {key: row["unit"] for key, row in rows.items()} == {key: units[key] for key in units if key in rows}
    assert all(set(row["values"]) != {None} for row in rows.values())
    sent = {size["label"]: size.get("bust") for size in request.get("sizes", ())}
    for index, size in enumerate(answer["sizes"]):
        values = dict.fromkeys(units) | {key: row["values"][index] for key, row in rows.items()}
        if not size["feasible"]:
            assert set(values.values()) == {None}, size["label"]
            continue
        for (part, item, _), told in TABLE.items():
            assert values[part, item] == told(size), (size["label"], part, item)
        band = Fabrics(request).rib.wide(size["band"]["stitches"])
        assert values["finished", "band"] == cm(band), (size["label"], "band")
        bust, ease = values["to_fit", "bust"], values["to_fit", "ease"]
        assert abs(values["finished", "bust"] - bust - ease) < 0.011, size["label"]
        if sent.get(size["label"]) is not None:
            assert abs(bust - sent[size["label"]] * (2.54 if request.get("unit") == "in" else 1)) < 0.0051
        _check_yarn_rows(size, index, [row for row in answer["table"] if row["part"] == "yarn"])


def _check_yarn_rows(size: Json, index: int, rows: list[Json]) -> None:
    """Fail where the rows of the yarn don't have what one size needs of every colour, in the order of its colours."""
    needs = iter(size.get("yarn", ()))
    by_place: dict[str, list[Json]] = {}
    for row in rows:
        by_place.setdefault(row["item"].split("_")[1], []).append(row)
    assert list(by_place) == sorted(by_place, key=int)
    for place, own in by_place.items():
        values = {row["item"]: row["values"][index] for row in own}
        if set(values.values()) == {None}:
            continue
        need = next(needs)
        assert {row["colour"] for row in own} == {need["colour"]}
        for name, of in YARN.items():
            assert abs(values.pop(f"{name}_{place}") - of(need)) < 0.11, (size["label"], name)
        strands = need.get("strands", [need])
        items = [f"balls_{place}"] + [f"balls_{place}_{number}" for number in range(2, len(strands) + 1)]
        assert values == {item: strand["balls"] for item, strand in zip(items, strands, strict=True)}
        told = [row.get("strand") for row in own if row["unit"] == "balls"]
        assert told == ([*range(1, len(strands) + 1)] if "strands" in need else [None])
    assert next(needs, None) is None, size["label"]


def check_own_gauge(request: Json, answer: Json) -> None:
    """Fail where the written counts measure something else at the maker's gauge, or are corrected to other lengths."""
    designed, own = Fabrics(request), Fabrics(request, kept_at=request["changes"])
    busts = {size["label"]: own.of(size["yoke"]["rounds"] + 1).wide(size["split"]["body"]) for size in feasible(answer)}
    wanted = {size["label"]: size["finished"]["bust"]["target"]["cm"] for size in feasible(answer)}
    for size in feasible(answer):
        kept = size["at_own_gauge"]
        _measure(own, size, False, kept["finished"])
        for name, made in kept["finished"].items():
            assert made.get("target") == size["finished"][name].get("target")
        # targets are told to 0.01 cm
        far = {label: abs(bust - exact(wanted[size["label"]])) for label, bust in busts.items()}
        assert far[kept["nearest_size"]] <= min(far.values()) + Fraction(1, 100)
        split = size["yoke"]["rounds"]
        corrected = split + kept["corrections"]["yoke"]
        for part, after, own_after, rounds, rib_rounds in (
            ("yoke", 0, 0, split, 0),
            ("body", split, corrected, size["body"]["rounds"], size["body"]["hem"]["rounds"]),
            ("sleeve", split, corrected, size["sleeve"]["rounds"], size["sleeve"]["cuff"]["rounds"]),
        ):
            correction = kept["corrections"][part]
            written = designed.high(after, rounds) + designed.rib.high(rib_rounds) - own.rib.high(rib_rounds)
            # one round more is no better; one fewer isn't either, unless no more can be left out, which is said
            missed, with_more = (abs(own.high(own_after, rounds + correction + more) - written) for more in (0, 1))
            assert rounds + correction >= (part == "yoke")
            assert missed <= with_more
            code = f"{part}_too_{'deep' if part == 'yoke' else 'long'}_at_own_gauge"
            said = [one for one in answer["warnings"] if one["code"] == code and one["size"] == size["label"]]
            half_a_round = own.of(own_after + rounds + correction).high(1) / 2
            assert bool(said) == (own.high(own_after, rounds + correction) - written > half_a_round)
        decreases = len(size["sleeve"]["decrease_rounds"])
        assert size["sleeve"]["rounds"] + kept["corrections"]["sleeve"] >= decreases
        assert size["body"]["rounds"] + kept["corrections"]["body"] >= len(size["body"]["shaping"])
        # yarn of a maker's alone is there at the own gauge only
        for here, there in zip(size["yarn"], kept["yarn"], strict=True) if "yarn" in size else ():
            assert (here["colour"], here["stitches"]) == (there["colour"], there["stitches"])


def knit(request: Json, size: Json) -> None:
    """Fail where the stitches of one size don't lead from the cast-on to every edge, or break the request's rules."""
    yoke_wishes = request.get("yoke", {})
    lines = yoke_wishes.get("line_stitches", 2)
    to_body = yoke_wishes.get("line_to_body", lines // 2)
    neck, split, yoke = size["neck"], size["split"], size["yoke"]
    # the neck
    assert neck["line_stitches"] == lines
    assert (split["line_to_body"], split["line_to_sleeve"]) == (to_body, lines - to_body)
    drop = neck.get("front_drop")
    missing = drop["centre"] + 2 * len(drop["increase_rows"]) if drop else 0
    assert neck["cast_on"] == _total(neck["sections"], lines) - missing == yoke["stitches"]["neck"] - missing
    assert sum(gap["stitches"] for gap in neck["markers"]) == neck["cast_on"]
    for gap in neck["markers"]:
        assert gap["stitches"] == sum(part["stitches"] for part in gap["parts"])
    assert sorted(gap["marker"] for gap in neck["markers"] if isinstance(gap["marker"], int)) == [1, 2, 3, 4]
    obeys(yoke["stitches"]["neck"], request.get("neck", {}).get("count_rule"))
    _short_rows(size, lines)
    # the yoke
    on_needle = dict(neck["sections"])
    for worked in yoke["increase_rounds"]:
        for section in SECTIONS:
            on_needle[section] += 2 * _increases(worked, section)
    assert on_needle == split["sections"]
    assert split["yoke_total"] == _total(on_needle, lines) == yoke["stitches"]["split"]
    if not request.get("changes", {}).get("yoke"):
        _grid(yoke_wishes, yoke)
    _phases(size)
    # the split
    underarm = split["underarm"]
    assert split["body"] == on_needle["back"] + on_needle["front"] + 4 * to_body + 2 * underarm
    assert split["sleeve"] == on_needle["sleeve"] + 2 * (lines - to_body) + underarm
    assert split["body"] + 2 * split["sleeve"] == split["yoke_total"] + 4 * underarm
    wider = on_needle["front"] - on_needle["back"]
    assert wider >= 0
    assert wider % 4 == 0
    assert wider == 0 or "front_extra" in request.get("body", {})
    if "seam_stitches" in yoke_wishes:
        assert (underarm - yoke_wishes["seam_stitches"]) % 2 == 0
    # body, sleeve and band
    body, sleeve, band = size["body"], size["sleeve"], size["band"]
    assert body["stitches"] == split["body"]
    assert sleeve["stitches"] == split["sleeve"]
    obeys(body["stitches"], request.get("body", {}).get("count_rule"))
    obeys(sleeve["stitches"], request.get("sleeve", {}).get("count_rule"))
    stitches = body["stitches"]
    rounds = [worked["round"] for worked in body["shaping"]]
    assert rounds == sorted(set(rounds))
    assert all(1 <= number <= body["rounds"] for number in rounds)
    for worked in body["shaping"]:
        assert worked["stitches"] % 4 == 0
        stitches += worked["stitches"]
        assert stitches > 0
    assert body["hem"]["before"] == stitches
    _darts(request, size)
    decreases = sleeve["decrease_rounds"]
    assert decreases == sorted(set(decreases))
    assert all(1 <= number <= sleeve["rounds"] for number in decreases)
    assert sleeve["cuff"]["before"] == sleeve["stitches"] - 2 * len(decreases) > 0
    for edge, wishes in (
        (body["hem"], request.get("body", {}).get("hem")),
        (sleeve["cuff"], request.get("sleeve", {}).get("cuff")),
    ):
        assert edge["stitches"] == edge["before"] + edge["change"]
        obeys(edge["stitches"], edge_rule(wishes or {}))
    # what a maker doesn't change stays as designed
    designed, changed = request.get("band", {}), request.get("changes", {}).get("band", {})
    assert band["construction"] == {"construction": "single", **designed, **changed}["construction"]
    assert band["stitches"] == band["picked_up"] + band["change"]
    obeys(band["stitches"], band_rule(designed, changed))
    along_rows = band["picked_up"] - neck["cast_on"] - (drop["centre"] if drop else 0)
    assert along_rows % 2 == 0
    assert bool(along_rows) <= bool(drop)


def edge_rule(edge: Json) -> Json:
    """The counts that an edge may have: multiples of its rib, else by its rule, else even ones."""
    if "rib" in edge:
        return {**edge.get("count_rule", {}), "multiple": sum(edge["rib"].values())}
    return {"multiple": 2, **edge.get("count_rule", {})}


def band_rule(designed: Json, changed: Json) -> Json:
    """The same of a band that a maker changes: another rib or multiple takes the place of both of the design's."""
    if "rib" in changed or "multiple" in changed.get("count_rule", {}):
        kept = {name: value for name, value in designed.get("count_rule", {}).items() if name != "multiple"}
        designed = {"count_rule": kept}
    return edge_rule(designed | changed | {"count_rule": edge_rule(designed) | changed.get("count_rule", {})})


def seam_of(request: Json, underarm: int) -> int:
    """The seam stitches of an underarm: as asked, else as few as it allows to break a chart, or to be seen as purls."""
    yoke = request.get("yoke", {})
    purled = yoke.get("seam") == "purl"
    if "seam_stitches" in yoke or not (purled or "chart" in request):
        found: int = yoke.get("seam_stitches", 0)
        return found
    return underarm % 2 or (min(2, underarm) if purled else 0)


def obeys(count: int, rule: Json | None) -> None:
    """Fail where a count isn't a multiple of m plus p."""
    rule = rule or {}
    multiple = rule.get("multiple", 1)
    assert count % multiple == rule.get("plus", 0) % multiple, (count, rule)


def worked_stitches(size: Json) -> int:
    """All stitches of one size, each in the round in which it is worked."""
    lines, drop = size["neck"]["line_stitches"], size["neck"].get("front_drop")
    worked = 0
    for number, on_needle in enumerate(_rounds(size), 1):
        worked += _total(on_needle, lines)
        if drop and number <= drop["rows"]:
            # the centre isn't there yet, nor what the front's edges have still to gain
            to_gain = sum(row > number for row in drop["increase_rows"])
            worked -= drop["centre"] + 2 * to_gain
    worked += _worked_short_rows(size)
    shaping = {one["round"]: one["stitches"] for one in size["body"]["shaping"]}
    on_body = size["body"]["stitches"]
    for number in range(1, size["body"]["rounds"] + 1):
        on_body += shaping.get(number, 0)
        worked += on_body
    on_sleeve = size["sleeve"]["stitches"]
    for number in range(1, size["sleeve"]["rounds"] + 1):
        on_sleeve -= 2 * (number in size["sleeve"]["decrease_rounds"])
        worked += 2 * on_sleeve
    if "bust_darts" in size["body"]:
        # one pass is the round's own
        worked += sum(_passes(size["body"]["bust_darts"])) - size["body"]["bust_darts"]["front"]
    hem, cuff, band = size["body"]["hem"], size["sleeve"]["cuff"], size["band"]
    worked += hem["stitches"] * hem["rounds"] + 2 * cuff["stitches"] * cuff["rounds"]
    return worked + band["stitches"] * band["rounds"]


def _total(sections: Json, lines: int) -> int:
    return sections["back"] + sections["front"] + 2 * sections["sleeve"] + 4 * lines


def _increases(worked: Json, section: str) -> int:
    if section == "sleeve":
        return worked["sleeve"]
    return worked["body"] if "body" in worked else worked[section]


def _rounds(size: Json) -> list[Json]:
    """The sections after each round of the yoke."""
    on_needle, found = dict(size["neck"]["sections"]), []
    increases = {worked["round"]: worked for worked in size["yoke"]["increase_rounds"]}
    for number in range(1, size["yoke"]["rounds"] + 1):
        if number in increases:
            for section in SECTIONS:
                on_needle[section] += 2 * _increases(increases[number], section)
        found.append(dict(on_needle))
    return found


def _grid(wishes: Json, yoke: Json) -> None:
    step = wishes.get("step", 2)
    first = wishes.get("first_increase_round", step)
    last = yoke["rounds"] - wishes.get("plain_rounds_at_end", 0)
    numbers = [worked["round"] for worked in yoke["increase_rounds"]]
    assert numbers == sorted(set(numbers))
    most = 2 if wishes.get("double_body", "if_needed") == "if_needed" else 1
    for worked in yoke["increase_rounds"]:
        assert first <= worked["round"] <= last
        assert (worked["round"] - first) % step == 0
        assert 0 <= worked["sleeve"] <= 1
        assert all(0 <= _increases(worked, section) <= most for section in ("back", "front"))


def _phases(size: Json) -> None:
    """The phases tile the yoke and have the counts that its increase rounds make."""
    rounds, place = _rounds(size), 0
    for phase in size["yoke"]["phases"]:
        assert phase["from_round"] == place + 1
        place = phase["to_round"]
        lines = size["neck"]["line_stitches"]
        assert phase["stitches"] == rounds[place - 1] | {"total": _total(rounds[place - 1], lines)}
    assert place == size["yoke"]["rounds"]


def _turning_points(size: Json, lines: int) -> list[int]:
    """Each turn, in stitches from the near edge of the back, which the row crosses to get there."""
    sleeve, front = size["neck"]["sections"]["sleeve"], size["neck"]["sections"]["front"]
    points, drop = [], size["neck"].get("front_drop")
    for turn in size["neck"]["turns"]:
        after_sleeve = (2, "right") if turn["side"] == "right" else (3, "wrong")
        near = (1, "right") if turn["side"] == "right" else (4, "wrong")
        assert (turn["marker"], turn["side"]) in (near, after_sleeve)
        # Past the line and the sleeve. A marker stands before its line, so a wrong-side row meets it after the line.
        before_line = turn["side"] == "right"
        beyond = turn["stitches"]
        if (turn["marker"], turn["side"]) == after_sleeve:
            beyond += lines + sleeve
            if not before_line:
                beyond += lines
        elif not before_line:
            beyond += lines
        points.append(beyond)
        # before the ends of what is cast on, or at most at the centre of the front
        assert beyond <= 2 * lines + sleeve + (drop["each_side"] - 1 if drop else front / 2)
    return points


def _short_rows(size: Json, lines: int) -> None:
    turns = size["neck"]["turns"]
    assert len(turns) == size["neck"].get("back_raise", {"rows": 0})["rows"]
    # a last row over the whole follows, and then the rows of a drop, whose last one is a right-side row
    odd = size["neck"].get("front_drop", {"rows": 0})["rows"] % 2
    assert [turn["side"] for turn in turns] == (["wrong", "right"] if odd else ["right", "wrong"]) * (len(turns) // 2)
    points = _turning_points(size, lines)
    for side in (points[::2], points[1::2]):
        assert all(before < after for before, after in pairwise(side))


def _worked_short_rows(size: Json) -> int:
    lines = size["neck"]["line_stitches"]
    points = _turning_points(size, lines)
    if not points:
        return 0
    sections = size["neck"]["sections"]
    between = sum(sections["back"] + here + there for here, there in pairwise(points))
    if size["neck"]["way"] == "joined":
        # from the start of the round over the back, and after the last turn back to the start
        start = size["neck"]["markers"][0]["parts"][0]["name"]
        assert start in ("back", "half_back")
        return sections["back"] + points[0] + between + points[-1]
    drop = size["neck"].get("front_drop")
    edge = drop["each_side"] if drop else sections["front"] // 2
    other = edge if drop else sections["front"] - edge
    side = 2 * lines + sections["sleeve"]
    return other + side + sections["back"] + points[0] + between + points[-1] + sections["back"] + side + edge


def _darts(request: Json, size: Json) -> None:
    """The short rows over the bust lie in a plain round, each within the one before, and leave the middle third."""
    body, split, darts = size["body"], size["split"], size["body"].get("bust_darts")
    if darts is None:
        return
    assert request["body"]["bust_darts"]["extra"]
    assert 1 <= darts["round"] <= body["rounds"]
    assert darts["round"] not in [worked["round"] for worked in body["shaping"]]
    shaped = sum(worked["stitches"] for worked in body["shaping"] if worked["round"] < darts["round"])
    # from side to side, without the middle stitch of an odd underarm
    front = split["sections"]["front"] + 2 * split["line_to_body"] + split["underarm"] // 2 * 2 + shaped // 2
    assert darts["front"] == front
    if "chart" in request:
        assert request["chart"]["chart"]["repeat"] == "once"
        begun = request["chart"].get("first_round", 1) - size["yoke"]["rounds"]
        assert not begun <= darts["round"] < begun + len(request["chart"]["chart"]["rows"])
    turns = darts["turns"]
    assert [turn["row"] for turn in turns] == [*range(1, darts["rows"] + 1)]
    assert [turn["side"] for turn in turns] == ["right", "wrong"] * (len(turns) // 2)
    assert all(3 * stitches >= front for stitches in _passes(darts)[1:-1])
    for side in (turns[::2], turns[1::2]):
        assert all(before["stitches"] < turn["stitches"] for before, turn in pairwise(side))
        assert side[0]["stitches"] > 0
        assert side[-1]["stitches"] == front // 3


def _passes(darts: Json) -> list[int]:
    """The stitches of each row over the front, and of the last pass that ends the round."""
    here, passes = 0, []
    for turn in darts["turns"]:
        there = darts["front"] - turn["stitches"] if turn["side"] == "right" else turn["stitches"]
        passes.append(abs(there - here))
        here = there
    return [*passes, darts["front"] - here]


def _measure(fabrics: Fabrics, size: Json, own_rows: bool, finished: Json) -> None:
    neck, yoke = size["neck"], size["yoke"]
    body, sleeve, hem, cuff = size["body"], size["sleeve"], size["body"]["hem"], size["sleeve"]["cuff"]
    split = yoke["rounds"]
    first_below = fabrics.of(split + 1)
    lengths = {
        "bust": first_below.wide(size["split"]["body"]),
        "upper_arm": first_below.wide(size["split"]["sleeve"]),
        "neck": fabrics.of(1).wide(yoke["stitches"]["neck"]),
        "depth": fabrics.high(0, split),
        "underarm": first_below.wide(size["split"]["underarm"]),
        "hem": fabrics.rib.wide(hem["stitches"]),
        "wrist": fabrics.rib.wide(cuff["stitches"]),
        "body_length": fabrics.high(split, body["rounds"]) + fabrics.rib.high(hem["rounds"]),
        "front_extra": first_below.wide(size["split"]["sections"]["front"] - size["split"]["sections"]["back"]),
        "sleeve_length": fabrics.high(split, sleeve["rounds"]) + fabrics.rib.high(cuff["rounds"]),
    }
    raised = fabrics.plain.high(neck["back_raise"]["rows"]) if "back_raise" in neck else 0
    lengths["total_length"] = raised + lengths["depth"] + lengths["body_length"]
    darted = fabrics.plain.high(body["bust_darts"]["rows"]) if "bust_darts" in body else 0
    lengths["front_length"] = lengths["body_length"] + darted
    # a circle of 22/7 times its width
    lengths["reach"] = lengths["neck"] * Fraction(7, 44) + lengths["depth"] + lengths["sleeve_length"]
    if own_rows:
        del lengths["depth"], lengths["total_length"], lengths["reach"]
    for name, length in lengths.items():
        assert finished[name]["finished"]["cm"] == cm(length), (size["label"], name)
    if finished is size["finished"]:
        wider, longer = (finished[name]["difference"]["cm"] for name in ("front_extra", "front_length"))
        # whole stitches in fours and rows in pairs: at most half a step away
        assert abs(wider) <= first_below.wide(2) + Fraction(1, 100)
        assert abs(longer - finished["body_length"]["difference"]["cm"]) <= fabrics.plain.high(1) + Fraction(2, 100)
    for made in finished.values():
        if "target" in made:
            closes = made["finished"]["cm"] - made["target"]["cm"] - made["difference"]["cm"]
            assert abs(closes) < 0.0151


def cm(length: Fraction) -> float:
    """A length as the service writes it: two decimals, half up."""
    return floor(length * 100 + Fraction(1, 2)) / 100


def _lay(request: Json, size: Json) -> None:
    """Each round of the chart has the stitches that are on the needle, and a chart row's columns where it has any."""
    chart, placed, split = request["chart"], size["chart"], size["split"]
    width, height = len(chart["chart"]["rows"][0]), len(chart["chart"]["rows"])
    first, once = chart.get("first_round", 1), chart["chart"].get("repeat", "rows") == "once"

    def row_of(number: int) -> int | None:
        place = number - first
        return None if place < 0 or (once and place >= height) else place % height + 1

    def on_centre(part: Json, column: float) -> None:
        if part["first_column"] is None:
            return
        before, after = part.get("plain_before", 0), part.get("plain_after", 0)
        start = (exact(column) - Fraction(part["stitches"] + 1, 2) + before) % width + 1
        assert part["first_column"] == start
        assert part["last_column"] == (part["first_column"] + part["stitches"] - before - after - 2) % width + 1

    anchor = chart.get("anchor")
    for number, (on_needle, told) in enumerate(zip(_rounds(size), placed["rounds"], strict=True), 1):
        assert told["round"] == number
        assert told["chart_row"] in (row_of(number), None)
        for section in SECTIONS:
            assert told[section]["stitches"] == on_needle[section]
            if anchor:
                on_centre(told[section], anchor[section])
            assert told[section]["first_column"] is None or told["chart_row"] is not None
    seam = seam_of(request, split["underarm"])
    beside = 2 * split["line_to_body"] + split["underarm"] - seam
    back, front = (split["sections"][section] + beside for section in ("back", "front"))
    shaping = {one["round"]: one["stitches"] for one in size["body"]["shaping"]}
    for number, told in enumerate(placed["body"]["rounds"], 1):
        back += shaping.get(number, 0) // 2
        front += shaping.get(number, 0) // 2
        assert (told["back"]["stitches"], told["front"]["stitches"]) == (back, front)
        assert told["chart_row"] in (row_of(size["yoke"]["rounds"] + number), None)
        if anchor:
            on_centre(told["back"], anchor["back"])
            on_centre(told["front"], anchor["front"])
    assert len(placed["body"]["rounds"]) == size["body"]["rounds"]
    sleeve = split["sleeve"] - seam
    for number, told in enumerate(placed["sleeve"]["rounds"], 1):
        sleeve -= 2 * (number in size["sleeve"]["decrease_rounds"])
        assert told["stitches"] == sleeve
        if anchor:
            on_centre(told, anchor["sleeve"])
    assert len(placed["sleeve"]["rounds"]) == size["sleeve"]["rounds"]


TABLE = {
    ("neck", "cast_on", "stitches"): lambda size: size["neck"]["cast_on"],
    ("neck", "stitches", "stitches"): lambda size: size["yoke"]["stitches"]["neck"],
    ("neck", "back", "stitches"): lambda size: size["neck"]["sections"]["back"],
    ("neck", "front", "stitches"): lambda size: size["neck"]["sections"]["front"],
    ("neck", "sleeve", "stitches"): lambda size: size["neck"]["sections"]["sleeve"],
    ("neck", "short_rows", "rows"): lambda size: len(size["neck"]["turns"]) or None,
    ("neck", "front_drop", "rows"): lambda size: size["neck"].get("front_drop", {"rows": None})["rows"],
    ("yoke", "rounds", "rounds"): lambda size: size["yoke"]["rounds"],
    ("yoke", "increase_rounds", "rounds"): lambda size: len(size["yoke"]["increase_rounds"]),
    ("yoke", "back_increases", "times"): lambda size: _times(size, "back"),
    ("yoke", "front_increases", "times"): lambda size: _times(size, "front"),
    ("yoke", "sleeve_increases", "times"): lambda size: _times(size, "sleeve"),
    ("yoke", "doubled_rounds", "rounds"): lambda size: sum(
        max(_increases(worked, section) for section in ("back", "front")) > 1
        for worked in size["yoke"]["increase_rounds"]
    ),
    ("split", "back", "stitches"): lambda size: size["split"]["sections"]["back"],
    ("split", "front", "stitches"): lambda size: size["split"]["sections"]["front"],
    ("split", "sleeve", "stitches"): lambda size: size["split"]["sections"]["sleeve"],
    ("split", "yoke_total", "stitches"): lambda size: size["split"]["yoke_total"],
    ("split", "underarm", "stitches"): lambda size: size["split"]["underarm"],
    ("split", "line_to_body", "stitches"): lambda size: size["split"]["line_to_body"],
    ("body", "stitches", "stitches"): lambda size: size["split"]["body"],
    ("body", "rounds", "rounds"): lambda size: size["body"]["rounds"],
    ("body", "bust_dart_rows", "rows"): lambda size: size["body"].get("bust_darts", {"rows": None})["rows"],
    ("hem", "stitches", "stitches"): lambda size: size["body"]["hem"]["stitches"],
    ("hem", "rounds", "rounds"): lambda size: size["body"]["hem"]["rounds"],
    ("sleeve", "stitches", "stitches"): lambda size: size["split"]["sleeve"],
    ("sleeve", "rounds", "rounds"): lambda size: size["sleeve"]["rounds"],
    ("sleeve", "decrease_rounds", "rounds"): lambda size: len(size["sleeve"]["decrease_rounds"]),
    ("cuff", "stitches", "stitches"): lambda size: size["sleeve"]["cuff"]["stitches"],
    ("cuff", "rounds", "rounds"): lambda size: size["sleeve"]["cuff"]["rounds"],
    ("band", "stitches", "stitches"): lambda size: size["band"]["stitches"],
    ("band", "rounds", "rounds"): lambda size: size["band"]["rounds"],
    **{
        ("finished", name, "cm"): lambda size, name=name: size["finished"][name]["finished"]["cm"]
        for name in (
            *("bust", "upper_arm", "neck", "depth", "underarm", "hem", "wrist", "body_length", "front_length"),
            *("sleeve_length", "total_length", "reach"),
        )
    },
    ("finished", "front_extra", "cm"): lambda size: size["finished"]["front_extra"]["finished"]["cm"] or None,
}
"""Each row of the table that is always there, and where its number stands in a size."""

TABLE_UNITS = {(part, item): unit for part, item, unit in TABLE} | {("finished", "band"): "cm"}

YARN = {
    "grams": lambda need: need["grams"]["likely"],
    "metres": lambda need: need["metres"],
    "yards": lambda need: need["metres"] / 0.9144,
}
"""Of each colour; a yard is 0.9144 m, and metres are told to a tenth."""


def _times(size: Json, section: str) -> int:
    return sum(_increases(worked, section) for worked in size["yoke"]["increase_rounds"])
