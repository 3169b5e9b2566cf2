"""The yarn of one knitted size, counted stitch by stitch from what came off the needles.

Shares nothing with the core. What a stitch, an edge or an end takes is written down here a second time, as the README
tells it: lengths in widths of a stitch, least, likely and most.
"""

from __future__ import annotations

from collections import Counter, defaultdict
from collections.abc import Iterator
from fractions import Fraction
from typing import Any

from tests.oracles.pullover_answer import Fabrics, exact
from tests.oracles.stitch_knitter import Garment, demand, expect

Json = dict[str, Any]
Three = tuple[Fraction, Fraction, Fraction]

LOOP = ("3.8", "4", "4.2")
RIB_PART = ("0.9", "1", "1.15")
FLOAT = ("1", "1.1", "1.2")
CAST_ON = ("3.8", "7.3", "8.4")
BIND_OFF = ("3", "4", "5")
END_CM = ("10", "15", "20")
ONLY = "yarn"
"""The colour of a pullover that has no chart and no colours of its yarn."""


def check_spinning(garment: Garment) -> None:
    """Fail where an amount of yarn isn't what the knitted stitches, floats, edges and ends take."""
    request, size = garment.request, garment.size
    if "yarn" not in size:
        return
    works = works_of(garment)
    own = request.get("changes", {}).get("yarn")
    kept = request.get("changes", {}).get("keep_counts", False)
    _compare(works, Spindle(request, None if kept else own), size["yarn"])
    if "at_own_gauge" in size:
        _compare(works, Spindle(request, own, kept=True), size["at_own_gauge"]["yarn"])


class Spindle:
    """Whose yarn is used at which gauge. own: of a maker in place of the design's; kept: knitted at her own gauge."""

    def __init__(self, request: Json, own: Json | None, *, kept: bool = False) -> None:
        self.design, self.own = request.get("yarn") or own, own
        changes = request.get("changes", {})
        unchanged = {**request, "changes": {}}
        self.designed = Fabrics(unchanged)
        self.worked = Fabrics(request, kept_at=changes) if kept else Fabrics(request)
        # a maker who keeps the counts of a design without yarn has yarn at her own gauge alone
        self.charted = "chart" in request

    def yarn(self, of: Json, symbol: str) -> Json:
        """What is sent for one colour."""
        found: Json = of["colours"][symbol] if "colours" in of else of
        return found

    def lengths(self, symbol: str, work: Counter[str]) -> Three:
        """Least, likely and most centimetres that a colour takes."""
        assert self.design is not None
        bought = self.yarn(self.own or self.design, symbol)
        if "swatch_grams" in bought:
            weighed, fabrics = bought, self.worked if self.own else self.designed
        else:
            weighed, fabrics = self.yarn(self.design, symbol), self.designed
        loops = tuple(map(Fraction, LOOP))
        floats = tuple(map(Fraction, FLOAT))
        if "swatch_grams" in weighed:
            wide = _wide(fabrics, weighed.get("swatch_fabric", "plain") == "stranded")
            long = exact(weighed["swatch_grams"]) * 100_000 / tex(weighed)
            likely = floats[1]
            left = long - weighed.get("swatch_floats", 0) * likely * wide
            loops = (left / weighed["swatch_stitches"] / wide,) * 3
            if weighed.get("swatch_floats"):
                floats = (likely,) * 3
        plain, stranded = _wide(self.worked, False), _wide(self.worked, self.charted)
        return tuple(
            loops[i] * (work["plain"] * plain + work["stranded"] * stranded)
            + loops[i] * Fraction(RIB_PART[i]) * work["rib"] * plain
            + floats[i] * work["floats"] * stranded
            + Fraction(CAST_ON[i]) * work["cast_on"] * plain
            + loops[i] * work["picked_up"] * plain
            + Fraction(BIND_OFF[i]) * work["bound_off"] * plain
            + Fraction(END_CM[i]) * work["ends"]
            for i in range(3)
        )  # type: ignore[return-value]


def _wide(fabrics: Fabrics, stranded: bool) -> Fraction:
    fabric = fabrics.stranded if stranded else fabrics.plain
    return 1 / fabric.stitches_per_cm


def tex(yarn: Json) -> Fraction:
    """Grams per 1000 m of all strands."""
    strands = yarn.get("strands") or [{"metres_per_100g": yarn["metres_per_100g"]}]
    return sum((_tex_of(strand) for strand in strands), Fraction(0))


def _tex_of(strand: Json) -> Fraction:
    if "tex" in strand:
        return exact(strand["tex"])
    if "nm" in strand:
        return 1000 / exact(strand["nm"])
    if "metres_per_100g" in strand:
        return 100_000 / exact(strand["metres_per_100g"])
    return 1000 * exact(strand.get("grams", 100)) / exact(strand["metres"])


def _ball(yarn: Json, strand: Json) -> Fraction:
    for told in (strand.get("ball_grams"), yarn.get("ball_grams"), strand.get("grams")):
        if told is not None:
            return exact(told)
    return Fraction(100 if "metres" in strand else 50)


def _compare(works: dict[str, Counter[str]], spindle: Spindle, told: list[Json]) -> None:
    named = {need.get("symbol", ONLY): need for need in told}
    expect(sorted(works), sorted(named), "colours that yarn is needed of")
    assert spindle.design is not None
    sold = spindle.own or spindle.design
    for symbol, work in works.items():
        need, lengths = named[symbol], spindle.lengths(symbol, work)
        expect(work["plain"] + work["stranded"] + work["rib"], need["stitches"], f"stitches in {symbol!r}")
        demand(abs(lengths[1] / 100 - exact(need["metres"])) <= Fraction(6, 100), f"metres of {symbol!r}: {need}")
        demand(abs(sum(need["metres_for"].values()) - need["metres"]) < 0.31, f"parts of the metres of {symbol!r}")
        yarn = spindle.yarn(sold, symbol)
        grams = [length * tex(yarn) / 100_000 for length in lengths]
        for end, gram in zip(("low", "likely", "high"), grams, strict=True):
            demand(abs(gram - exact(need["grams"][end])) <= Fraction(6, 100), f"{end} grams of {symbol!r}: {need}")
        margin = 1 + exact(sold.get("margin", 0.1))
        strands = yarn.get("strands") or [{"metres_per_100g": yarn["metres_per_100g"]}]
        balls = need["strands"] if len(strands) > 1 else [need]
        for strand, counted in zip(strands, balls, strict=True):
            wanted = lengths[2] * _tex_of(strand) / 100_000 * margin
            many, ball = counted["balls"], _ball(yarn, strand)
            demand((many - 1) * ball < wanted <= many * ball, f"{many} balls of {float(ball)} g for {float(wanted)} g")


def works_of(garment: Garment) -> dict[str, Counter[str]]:
    """What is done with each colour, by its symbol."""
    size, works = garment.size, defaultdict[str, Counter[str]](Counter)
    colours = part_colours(garment)
    hem, cuff, band = size["body"]["hem"], size["sleeve"]["cuff"], size["band"]
    ribs = {
        "hem": (hem["stitches"] * hem["rounds"], hem["stitches"]),
        "cuff": (2 * cuff["stitches"] * cuff["rounds"], 2 * cuff["stitches"]),
        "band": (band["stitches"] * band["rounds"], band["stitches"]),
    }
    elsewhere = garment.elsewhere - sum(worked for worked, _ in ribs.values())
    if garment.chart:
        for part, times in (("yoke", 1), ("body", 1), ("sleeve", 2)):
            for worked in getattr(garment, part):
                fabric = "plain" if worked.chart_row is None else "stranded"
                for symbol, count in Counter(worked.colours).items():
                    works[symbol][fabric] += times * count
            for symbol, carried in _floats(garment, part).items():
                works[symbol]["floats"] += times * carried
        works[colours["darts"]]["plain"] += garment.of_darts
        own = works[colours["plain"]]
        own["plain"] += elsewhere - garment.of_darts
        # what a dropped front doesn't have yet would have been worked from the chart, some of it in other colours
        missing = max(0, -own["plain"])
        own["plain"] += missing
        others = [work for symbol, work in works.items() if symbol != colours["plain"]]
        for work in [own, *sorted(others, key=lambda work: work["stranded"], reverse=True)]:
            here = min(missing, work["stranded"])
            work["stranded"] -= here
            missing -= here
    else:
        works[colours["plain"]]["plain"] += garment.stitches - sum(worked for worked, _ in ribs.values())
    for edge, (worked, bound_off) in ribs.items():
        works[colours[edge]] += Counter(rib=worked, bound_off=bound_off)
    works[colours["band"]]["picked_up"] += band["picked_up"]
    drop = size["neck"].get("front_drop", {"centre": 0})
    works[colours["plain"]]["cast_on"] += size["neck"]["cast_on"] + drop["centre"]
    underarm = 2 * size["split"]["underarm"]
    works[colours["underarm"]] += Counter(cast_on=underarm, picked_up=underarm)
    for symbol in _pieces(garment, colours):
        works[symbol]["ends"] += 2
    return {symbol: work for symbol, work in works.items() if any(work.values())}


def part_colours(garment: Garment) -> dict[str, str]:
    """The symbol of every part that no chart shows."""
    request = garment.request
    band = {**request.get("band", {}), **request.get("changes", {}).get("band", {})}
    edges = {
        "hem": request.get("body", {}).get("hem", {}).get("colour"),
        "cuff": request.get("sleeve", {}).get("cuff", {}).get("colour"),
        "band": band.get("colour"),
    }
    if garment.chart:
        plain, below = garment.chart.plain, garment.chart.below
        ended = garment.chart.ended(len(garment.yoke))
        dart_round = len(garment.yoke) + garment.size["body"].get("bust_darts", {"round": 0})["round"]
        darts = below if garment.chart.ended(dart_round) else plain
    else:
        asked = {request.get("band", {}).get("colour"), *edges.values()}
        yarns = request.get("yarn", {})
        left = [symbol for symbol in yarns.get("colours", {ONLY: None}) if symbol not in asked]
        plain = below = yarns.get("main_colour") or left[0]
        ended, darts = True, plain
    return {
        "plain": plain,
        "below": below,
        "underarm": below if ended else plain,
        "darts": darts,
        "hem": edges["hem"] or below,
        "cuff": edges["cuff"] or below,
        "band": edges["band"] or plain,
    }


def _pieces(garment: Garment, colours: dict[str, str]) -> Iterator[str]:
    """A colour each time that it is begun: in yoke and body, in each sleeve, and in edges of another colour."""
    trunk = {symbol for part in (garment.yoke, garment.body) for worked in part for symbol in worked.colours}
    yield from trunk | {colours["plain"]}
    for _ in range(2):
        if garment.chart:
            yield from {symbol for worked in garment.sleeve for symbol in worked.colours}
        else:
            yield colours["plain"]
        if colours["cuff"] != colours["below"]:
            yield colours["cuff"]
    yield colours["band"]
    if colours["hem"] != colours["below"]:
        yield colours["hem"]


def _floats(garment: Garment, part: str) -> Counter[str]:
    """Stitches that each colour's strand passes over, between two of its stitches that follow one another in a round
    or over the start of the next, where the round before has the colour too.
    """
    carried: Counter[str] = Counter()
    before = ""
    for worked in getattr(garment, part):
        here = worked.colours
        for symbol in set(here):
            pieces = here.split(symbol)
            carried[symbol] += sum(map(len, pieces[1:-1]))
            if symbol in before:
                carried[symbol] += len(pieces[0]) + len(before) - before.rindex(symbol) - 1
        before = here
    return carried
