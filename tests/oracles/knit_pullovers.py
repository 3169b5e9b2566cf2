"""Random pullovers with every option of the contract, knitted stitch by stitch from the answers' JSON alone.

    python -m tests.oracles.knit_pullovers --count 5000 --seed 1

Each request is posted to the service; each size that is feasible is knitted (see `stitch_knitter`) and measured with a
gauge of its own for every round, and compared with all that the answer says of it. Of a size that isn't, every change
that it offers is sent: alone, and `together` all of them. Where a request asks for part of the answer, that part is
held against the whole. What disagrees is printed with its request.
"""

from __future__ import annotations

import re
import sys
import traceback
from collections import Counter
from collections.abc import Callable, Iterable, Iterator
from copy import deepcopy
from dataclasses import dataclass, field
from fractions import Fraction
from functools import partial
from itertools import chain, combinations, pairwise
from math import isqrt
from typing import Any

from flask.testing import FlaskClient

from service.app import create_app
from service.config import Config
from tests.oracles import many_seeds
from tests.oracles.part_of_answer import check_part, whole
from tests.oracles.pullover_answer import Fabric, Fabrics, check, cm, exact, feasible
from tests.oracles.random_pullovers import TABLES, random_request
from tests.oracles.stitch_knitter import Garment, Json, Wallpaper, Worked, demand, expect, height
from tests.oracles.yarn_spinner import check_spinning


@dataclass
class Seen(many_seeds.Seen):
    """What came of some requests. options: by dotted path, how often asked in requests, sizes made and refused."""

    refused: int = 0
    made: int = 0
    impossible: int = 0
    offered: int = 0
    helpless: int = 0
    options: Counter[tuple[str, str]] = field(default_factory=Counter)


def main() -> None:
    """Knit as many as asked, print what was seen; exit code 1 where anything disagrees."""
    asked = many_seeds.arguments(__doc__, 5000).parse_args()
    seen = Seen()
    many_seeds.knit_seeds(seen, asked, _knit_seed, _start)
    report(seen)
    sys.exit(bool(seen.disagreements))


def report(seen: Seen) -> None:
    """Print counts: of requests and sizes, by option, and of disagreements by kind."""
    print(f"{seen.requests} requests, {seen.refused} of them contradict themselves")
    print(f"{seen.made} sizes knitted, {seen.impossible} that can't be, {seen.offered} offered changes sent")
    print(f"{seen.helpless} sizes that can't be knitted offer nothing")
    print(f"{'option':44} requests    made  impossible")
    for option in sorted({option for option, _ in seen.options}):
        counts = [seen.options[option, what] for what in ("requests", "made", "impossible")]
        print(f"{option:44} {counts[0]:8} {counts[1]:7} {counts[2]:11}")
    print(f"{len(seen.disagreements)} disagreements: {dict(seen.kinds.most_common())}")


def knit_request(client: FlaskClient, request: Json) -> Seen:
    """Post one request, hold everything in its answer against what is knitted, and try what it offers."""
    seen = Seen(requests=1)
    asked = set(_options(request))
    part_of, request = request, whole(request)
    response = client.post("/v1/pullovers", json=request)
    seen.options.update((option, "requests") for option in asked)
    answer = response.json
    assert answer is not None

    def disagree(found: Iterable[tuple[str, str]]) -> None:
        seen.disagreements += [(kind, detail, request) for kind, detail in found]

    if response.status_code == 422:
        seen.refused = 1
        errors = [error for error in answer["errors"] if not _is_in(request, _sent(error))]
        disagree(("pointer", f"{error['pointer']}: {error['detail']}") for error in errors)
        return seen
    if response.status_code != 200:
        disagree([("status", f"answered {response.status_code}")])
        return seen
    disagree(compare_answer(request, answer))
    if part_of.keys() & {"answer_sizes", "include"}:
        disagree(_failing("part", "", partial(check_part, client, part_of, answer)))
    if "changes" in request:
        disagree(_failing("changed", "", partial(check_changed, client, request, answer)))
    for size in answer["sizes"]:
        seen.made += size["feasible"]
        seen.impossible += not size["feasible"]
        seen.options.update((option, "made" if size["feasible"] else "impossible") for option in asked)
        if not size["feasible"]:
            alone, together = size["nearest"], size.get("together")
            offers = [("nearest", [offer]) for offer in alone] + ([("together", together)] if together else [])
            seen.offered += len(offers)
            seen.helpless += not offers
            for kind, offer in offers:
                disagree(_failing(kind, size["label"], partial(_try_offer, client, request, size, offer)))
    return seen


def compare_answer(request: Json, answer: Json, only: str | None = None) -> list[tuple[str, str]]:
    """What disagrees in an answer: the kind, and what it is.

    only: the label of the one size to knit, None for all.
    """
    found = [
        *_failing("answer", "", partial(check, request, answer)),
        *_failing("run", "", partial(check_runs, request, answer)),
        *_failing("falls", "", partial(check_rise, request, answer)),
    ]
    for size in feasible(answer):
        if only in (None, size["label"]):
            knitted: list[Garment] = []

            def knit(size: Json = size, knitted: list[Garment] = knitted) -> None:
                knitted.append(Garment(request, size))

            found += _failing("knitting", size["label"], knit)
            for garment in knitted:
                for kind, of_garment in CHECKS:
                    found += _failing(kind, size["label"], partial(of_garment, garment))
    return found


def _failing(kind: str, label: str, compared: Callable[[], None]) -> Iterator[tuple[str, str]]:
    """What disagrees in one comparison; an answer that lacks what it should have fails in any way."""
    try:
        compared()
    except Exception as error:
        last = traceback.extract_tb(error.__traceback__)[-1]
        what = str(error) or f"{last.line} ({last.name}, line {last.lineno})"
        yield (
            kind,
            f"{label}: {what}" if isinstance(error, AssertionError) else f"{label}: {type(error).__name__} {what}",
        )


# what is measured


def measure(garment: Garment, fabrics: Fabrics, depth_scale: Fraction = Fraction(1)) -> dict[str, Fraction]:
    """Every finished measurement in cm, from the rounds.

    fabrics: the gauges. depth_scale: by which the yoke's rounds are higher than these say.
    """
    size, split = garment.size, garment.size["yoke"]["rounds"]
    first_below = fabrics.of(split + 1)
    hem, cuff, darts = size["body"]["hem"], size["sleeve"]["cuff"], size["body"].get("bust_darts", {"rows": 0})

    depth = garment.high("yoke", fabrics=fabrics) * depth_scale
    body = garment.high("body", fabrics=fabrics) + fabrics.rib.high(hem["rounds"])
    wider = size["split"]["sections"]["front"] - size["split"]["sections"]["back"]
    neck, sleeve = fabrics.of(1).wide(_neck_total(size)), garment.high("sleeve", fabrics=fabrics)
    sleeve += fabrics.rib.high(cuff["rounds"])
    return {
        "bust": first_below.wide(garment.around("body", 0)),
        "upper_arm": first_below.wide(garment.around("sleeve", 0)),
        "neck": neck,
        "depth": depth,
        "underarm": first_below.wide(size["split"]["underarm"]),
        "hem": fabrics.rib.wide(hem["stitches"]),
        "wrist": fabrics.rib.wide(cuff["stitches"]),
        "body_length": body,
        "front_length": body + fabrics.plain.high(darts["rows"]),
        "front_extra": first_below.wide(wider),
        "sleeve_length": sleeve,
        # half the width of a neck that is a circle of 22/7 times its width
        "reach": neck * Fraction(7, 44) + depth + sleeve,
        "total_length": fabrics.plain.high(len(size["neck"]["turns"])) + depth + body,
    }


def check_measurements(garment: Garment) -> None:
    """Finished measurements, each beside its target."""
    own_rows = garment.request.get("changes", {}).get("yoke", {}).get("own_rows")
    scale = Fraction(1)
    if own_rows:
        scale = _rows_counted(garment.request) / exact(own_rows)
    _same_lengths(measure(garment, garment.fabrics, scale), garment.size["finished"], garment.request)
    finished = garment.size["finished"]
    for part, name in (("yoke", "depth"), ("body", "body_length"), ("sleeve", "sleeve_length")):
        length = garment.size[part]["depth" if part == "yoke" else "length"]
        expect(finished[name]["finished"], length, f"length of the {part}")


def check_kept(garment: Garment) -> None:
    """Finished measurements of the written counts at a maker's gauge."""
    if "at_own_gauge" not in garment.size:
        return
    fabrics = Fabrics(garment.request, kept_at=garment.request["changes"])
    _same_lengths(measure(garment, fabrics), garment.size["at_own_gauge"]["finished"], garment.request)
    for name, made in garment.size["at_own_gauge"]["finished"].items():
        expect(made.get("target"), garment.size["finished"][name].get("target"), f"target of {name}")


def _same_lengths(lengths: dict[str, Fraction], told: Json, request: Json) -> None:
    for name, made in told.items():
        demand(name in lengths, f"{name} isn't known to the knitter")
        expect(_told_of(lengths[name], request), made["finished"], name)
        if "target" in made:
            closes = made["finished"]["cm"] - made["target"]["cm"] - made["difference"]["cm"]
            demand(abs(closes) < 0.0151, f"difference of {name}")


def _told_of(length: Fraction, request: Json) -> Json:
    """A length as the contract writes it."""
    nominal = request.get("inch_convention", "exact") == "nominal"
    return {"cm": cm(length), "inch": cm(length * (Fraction(4, 10) if nominal else Fraction(100, 254)))}


def _rows_counted(request: Json) -> Fraction:
    """Rows counted in the swatch that a maker's own are compared with: the chart's where there is one."""
    changes = request.get("changes", {})
    sent = changes if changes.keys() & {"gauge", "gauges"} else request
    gauges = sent.get("gauges") or {"plain": sent["gauge"]}
    gauge = gauges.get("stranded", gauges["plain"]) if "chart" in request else gauges["plain"]
    return exact(gauge["rows"])


def _neck_total(size: Json) -> int:
    neck = size["neck"]["sections"]
    total: int = neck["back"] + neck["front"] + 2 * neck["sleeve"] + 4 * size["neck"]["line_stitches"]
    return total


def check_edges(garment: Garment) -> None:
    """Ribs, levels, the edge of the neck and whether a head passes it."""
    size, request, fabrics = garment.size, garment.request, garment.fabrics
    rib = fabrics.rib
    for edge, name in ((size["body"]["hem"], "hem"), (size["sleeve"]["cuff"], "cuff")):
        expect(_told_of(rib.wide(edge["stitches"]), request), edge["circumference"], f"circumference of the {name}")
        expect(_told_of(rib.high(edge["rounds"]), request), edge["height"], f"height of the {name}")
        expect(edge["before"] + edge["change"], edge["stitches"], f"stitches of the {name}")
    for wish, reached in zip(request.get("body", {}).get("levels", []), size["body"]["levels"], strict=True):
        fabric = fabrics.of(size["yoke"]["rounds"] + reached["round"])
        below = _asked(request, wish["below"], size["label"])
        away = abs(garment.high("body", reached["round"]) - below)
        demand(away <= fabric.high(1) / 2, f"the {reached['name']} lies {float(away)} cm off")
        expect(_told_of(fabric.wide(reached["stitches"]), request), reached["circumference"], reached["name"])
    band, neck = size["band"], size["neck"]
    layers = 1 if band["construction"] == "single" else 2
    of_layer, rest = divmod(band["rounds"] - (band["construction"] == "double_with_fold_round"), layers)
    expect(rest, 0, "rounds beyond the layers of the band")
    expect(_told_of(rib.high(of_layer), request), band["height"], "height of the band")
    edge_cm = fabrics.of(1).wide(neck["cast_on"])
    if "front_drop" in neck:
        drop = neck["front_drop"]
        high = height(fabrics, range(1, drop["rows"] + 1))
        expect(_told_of(high, request), drop["height"], "height of the front drop")
        edge_cm += fabrics.of(drop["rows"] + 1).wide(drop["centre"]) + 2 * high
    if "back_raise" in neck:
        expect(_told_of(fabrics.plain.high(len(neck["turns"])), request), neck["back_raise"]["height"], "raise")
    if "bust_darts" in size["body"]:
        darts = size["body"]["bust_darts"]
        expect(_told_of(fabrics.plain.high(darts["rows"]), request), darts["height"], "height of the bust darts")
    expect(_told_of(edge_cm, request), neck["edge"], "edge of the neck")
    if "head" in neck:
        _check_head(neck["head"], edge_cm, rib.wide(band["stitches"]), request)
    if "at_own_gauge" in size and "head" in size["at_own_gauge"]:
        own = Fabrics(request, kept_at=request["changes"])
        own_cm = own.of(1).wide(neck["cast_on"])
        if "front_drop" in neck:
            drop = neck["front_drop"]
            own_cm += own.of(drop["rows"] + 1).wide(drop["centre"])
            own_cm += 2 * height(own, range(1, drop["rows"] + 1))
        _check_head(size["at_own_gauge"]["head"], own_cm, own.rib.wide(band["stitches"]), request)


def _asked(request: Json, length: Any, label: str) -> Fraction:
    """What is asked of a length in one size, in cm."""
    if isinstance(length, list | dict):
        labels = request["labels"] if "labels" in request else [size["label"] for size in request.get("sizes", [])]
        labels = labels or TABLES[request.get("body_table", "women")]
        place = labels.index(label)
        if isinstance(length, list):
            length = length[place]
        else:
            first, last = exact(length["from"]), exact(length["to"])
            step = (last - first) / (len(labels) - 1) if len(labels) > 1 else Fraction(0)
            return (first + place * step) * _unit(request)
    return exact(length) * _unit(request)


def _unit(request: Json) -> Fraction:
    return Fraction(254, 100) if request.get("unit") == "in" else Fraction(1)


def _check_head(head: Json, edge_cm: Fraction, band_cm: Fraction, request: Json) -> None:
    tightest = min(edge_cm, band_cm)
    stretch = exact(request.get("neck", {}).get("stretch", 0.4))
    expect(_told_of(tightest, request), head["circumference"], "tightest edge of the neck")
    expect(_told_of(tightest * (1 + stretch), request), head["stretched"], "stretched edge of the neck")
    needed = exact(head["stretch_needed"])
    # told to two decimals
    if abs(needed - stretch) > Fraction(1, 100):
        expect(needed <= stretch, head["passes"], "whether the head passes")


def check_increases(garment: Garment) -> None:
    """What is told of all increases together; slope and length of the raglan lines."""
    yoke, neck, split = garment.size["yoke"], garment.size["neck"]["sections"], garment.size["split"]["sections"]
    made = {name: (split[name] - neck[name]) // 2 for name in ("back", "front", "sleeve")}
    for name, many in made.items():
        told = f"{name}_increases" if f"{name}_increases" in yoke else "body_increases"
        expect(many, yoke[told], told)
    bodies = [max(one.get("body", 0), one.get("back", 0), one.get("front", 0)) for one in yoke["increase_rounds"]]
    expect(sum(many > 1 for many in bodies), yoke["doubled_rounds"], "doubled rounds")
    last = yoke["increase_rounds"][-1]["round"] if yoke["increase_rounds"] else 0
    expect(yoke["rounds"] - last, yoke["plain_rounds_at_end"], "plain rounds at the end")
    expect(_neck_total(garment.size), yoke["stitches"]["neck"], "stitches at the neck")
    expect(garment.yoke[-1].stitches, yoke["stitches"]["split"], "stitches at the split")
    own_rows = garment.request.get("changes", {}).get("yoke", {}).get("own_rows")
    scale = _rows_counted(garment.request) / exact(own_rows) if own_rows else Fraction(1)
    rise = garment.high("yoke") * scale
    for name, section in (("raglan_line", "back"), ("front_raglan_line", "front")):
        line = yoke.get(name, yoke["raglan_line"])
        run = garment.yoke[-1].fabric.wide(made[section])
        if run:
            slope = line["rise_over_run"]
            demand(abs(exact(slope) - rise / run) <= Fraction(1, 100), f"{name}: {float(rise / run)}, told {slope}")
        long = Fraction(isqrt(int((rise * rise + run * run) * 10**12)), 10**6)
        for told, length in _told_of(long, garment.request).items():
            demand(abs(line["length"][told] - length) < 0.0101, f"length of the {name}")


def check_yarn(garment: Garment) -> None:
    """Stitches of the yarn, in all and, on a chart, of each colour of its placement."""
    if "yarn" in garment.size:
        # cast-on, bind-off, floats and what ribs take more may be told beside the stitches
        expect(garment.stitches, sum(colour["stitches"] for colour in garment.size["yarn"]), "stitches in all")
    if garment.chart:
        _check_colours(garment.colour_counts, garment.size["chart"]["stitches_by_colour"], "stitches of each colour")


def _check_colours(counts: dict[str, Counter[str]], told: Json, what: str) -> None:
    """What is counted by colour in yoke, body and one sleeve."""
    parts = {"yoke": counts["yoke"], "body": counts["body"], "sleeves": counts["sleeve"] + counts["sleeve"]}
    parts["total"] = parts["yoke"] + parts["body"] + parts["sleeves"]
    for part, counted in parts.items():
        expect(dict(counted), {colour: many for colour, many in told[part].items() if many}, f"{what}, {part}")


def check_chart(garment: Garment) -> None:
    """Chart row, first and last column of every section in every round."""
    if not garment.chart:
        return
    placed = garment.size["chart"]
    for part, told_rounds in (
        ("yoke", placed["rounds"]),
        ("body", placed["body"]["rounds"]),
        ("sleeve", placed["sleeve"]["rounds"]),
    ):
        rounds: list[Worked] = getattr(garment, part)
        expect(len(rounds), len(told_rounds), f"rounds of the {part}")
        for number, (worked, told) in enumerate(zip(rounds, told_rounds, strict=True), 1):
            expect(number, told["round"], "round")
            expect(worked.chart_row, told["chart_row"], f"chart row of {part} round {number}")
            for name, stitches in worked.sections.items():
                section = told if part == "sleeve" else told["sleeve" if "sleeve" in name else name]
                columns = worked.columns[name]
                here = f"{name} of {part} round {number}"
                expect(stitches, section["stitches"], here)
                expect(columns or (None, None), (section["first_column"], section["last_column"]), f"columns of {here}")
                ends = worked.ends[name] if garment.chart.motif and columns else (None, None)
                expect(ends, (section.get("plain_before"), section.get("plain_after")), f"plain ends of {here}")
    body, sleeve = placed["body"]["changes"], {"sleeve": placed["sleeve"]["changes"]}
    for part, changes in (("yoke", placed["changes"]), ("body", body), ("sleeve", sleeve)):
        for section, told in changes.items():
            first = [_first_column(worked, section) for worked in getattr(garment, part)]
            moved = [number for number, (before, here) in enumerate(pairwise(first), 2) if here != before]
            expect(moved, told, f"rounds in which the {section} of the {part} begins elsewhere")
    told = (placed.get("motifs"), placed["body"].get("motifs"), placed["sleeve"].get("motifs"))
    if garment.chart.motif:
        yoke, body, sleeve = told
        for part, motifs in (("yoke", yoke), ("body", body), ("sleeve", {"sleeve": sleeve})):
            for section, whole in motifs.items():
                expect(
                    _whole_motifs(getattr(garment, part), section, garment.chart.motif), whole, f"motifs of {section}"
                )
    else:
        expect(told, (None, None, None), "motifs")
    _check_progress(garment, garment.chart)


def _whole_motifs(rounds: list[Worked], section: str, columns: int) -> list[Json]:
    """How many whole motifs a section has from which of the chart's rounds on."""
    found, before = [], 0
    for number, worked in enumerate(rounds, 1):
        name = section if section in worked.sections else "first_sleeve"
        here = (worked.sections[name] - sum(worked.ends[name])) // columns if worked.columns[name] else 0
        if worked.chart_row is not None and here != before:
            found.append({"motifs": here, "from_round": number})
            before = here
    return found


def _check_progress(garment: Garment, chart: Wallpaper) -> None:
    """How far the chart has come at the split, and what finishes it or its repeat."""
    placed, split = garment.size["chart"], len(garment.yoke)
    come = [worked.chart_row for worked in garment.yoke if worked.chart_row]
    expect(len(come), placed["yoke_chart_rows"], "chart rows of the yoke")
    # rounds that work the chart's last row, up to the first from the split on
    end = chart.first_round + chart.height - 1
    ends = [end] if chart.once else list(range(end, max(end, split + chart.height - 1) + 1, chart.height))
    left = max(0, ends[-1] - split)
    rows = [number for number in range(split + 1, split + left + 1) if chart.row(number)]
    expect(len(rows), placed["rows_left"], "chart rows left")
    length = height(garment.fabrics, range(split + 1, split + left + 1))
    finishing = {"rounds": left, "length": _told_of(length, garment.request)}
    ends_at_split = placed["chart_ends_at_split"]
    for told in (placed["shortest_body"], placed["shortest_sleeve"], ends_at_split["deeper_by"]):
        expect(finishing, told, "rounds that finish the chart")
    before = [number for number in ends if number <= split]
    shallower = None
    if before:
        gone = range(before[-1] + 1, split + 1)
        shallower = {"rounds": len(gone), "length": _told_of(height(garment.fabrics, gone), garment.request)}
    expect(shallower, ends_at_split.get("shallower_by"), "rounds beyond the chart's last row")
    for part in ("body", "sleeve"):
        rounds: list[Worked] = getattr(garment, part)
        over = sum(chart.once and split + number > end for number in range(1, len(rounds) + 1))
        expect(over, placed[part]["plain_rounds"], f"plain rounds of the {part} below the chart")
        expect(
            rounds[-1].chart_row if rounds else None, placed[part]["last_chart_row"], f"last chart row of the {part}"
        )


def _first_column(worked: Worked, section: str) -> int | None:
    columns = worked.columns[section] if section in worked.columns else worked.columns.get("first_sleeve")
    return columns[0] if columns else None


def check_floats(garment: Garment) -> None:
    """The longest float of every round, and of all of them, as long as its stitches are wide in their round."""
    if not garment.chart:
        return
    placed = garment.size["chart"]
    limit = garment.request["chart"].get("float_limit", 5)
    longest, carried = {}, {}
    for part in ("yoke", "body", "sleeve"):
        carried[part] = Counter[str]()
        for length, colour in chain.from_iterable(garment.floats(part)):
            carried[part][colour] += length
        carried[part] = +carried[part]
        floats = _longest_floats(garment, part)
        expect(floats, placed["floats_by_round"][part], f"floats of the {part}")
        over = [number for number, stitches in enumerate(floats, 1) if stitches > limit]
        expect(over, placed["long_float_rounds"][part], f"long floats of the {part}")
        many = [number for number, worked in enumerate(getattr(garment, part), 1) if len(set(worked.colours)) > 2]
        expect(many, placed["rounds_over_two_colours"][part], f"rounds over two colours of the {part}")
        longest[part] = max(floats, default=0)
    _check_colours(carried, placed["float_stitches_by_colour"], "stitches behind which each colour is carried")
    told = placed["longest_float"]
    expect(max(longest.values()), told["stitches"] if told else 0, "longest float")
    if told:
        rounds: list[Worked] = getattr(garment, told["part"])
        fabric: Fabric = rounds[told["round"] - 1].fabric
        here = _longest_floats(garment, told["part"])[told["round"] - 1]
        expect(here, told["stitches"], "the round of the longest float")
        expect(_told_of(fabric.wide(told["stitches"]), garment.request), told["length"], "length of the longest float")


def _longest_floats(garment: Garment, part: str) -> list[int]:
    return [max((length for length, _ in floats), default=0) for floats in garment.floats(part)]


CHECKS: tuple[tuple[str, Callable[[Garment], None]], ...] = (
    ("measurement", check_measurements),
    ("edge", check_edges),
    ("increases", check_increases),
    ("yarn", check_yarn),
    ("spinning", check_spinning),
    ("chart", check_chart),
    ("float", check_floats),
    ("own gauge", check_kept),
)
"""What is compared once a size is knitted, and what a disagreement there is called."""


# what is said of all sizes


def check_runs(request: Json, answer: Json) -> None:
    """The runs of the table have the values of the table, as near as its printed numbers are asked for."""
    asked = request.get("print", {})
    mark = "," if asked.get("language") == "de" else "."
    settings = {"cm_step": 0.5, "decimal_mark": mark, "missing": "\u2013", **asked}
    missing = settings["missing"]
    # half of a printed step, and half of the last place of the value
    off = {"cm": exact(settings["cm_step"]) / 2 + Fraction(5, 1000)}
    off |= dict.fromkeys(("grams", "metres", "yards"), Fraction(55, 100))
    for row in answer["table"]:
        demand(any(value is not None for value in row["values"]), f"{row['part']} {row['item']}: a row of nothing")
        printed = re.fullmatch(r"([^()]+?)(?: \(([^()]*)\))?", row["run"])
        demand(printed is not None, f"run {row['run']}")
        assert printed
        run = [printed[1], *(printed[2].split(", ") if printed[2] else [])]
        values = row["values"]
        # a number that all sizes share may be said once
        run = run * len(values) if len(run) == 1 else run
        demand(len(run) == len(values), f"{row['item']}: {row['run']} for {len(values)} sizes")
        for said, value in zip(run, values, strict=True):
            if value is None or said == missing:
                demand(value is None and said == missing, f"{row['item']}: {said} for {value}")
            else:
                away = abs(exact(float(said.replace(settings["decimal_mark"], "."))) - exact(value))
                demand(away <= off.get(row["unit"], 0), f"{row['item']}: {said} for {value}")


def check_rise(request: Json, answer: Json) -> None:
    """No count falls from a size to one with a larger bust."""
    adjusted = "yoke" in request.get("changes", {})

    def counts(size: Json) -> Iterator[tuple[str, int]]:
        for part in ("neck", "split"):
            yield from (
                (f"{section} at the {part}", size[part]["sections"][section]) for section in ("back", "front", "sleeve")
            )
        yield "underarm", size["split"]["underarm"]
        if not adjusted:
            yield "yoke", size["yoke"]["rounds"]

    for one, other in combinations(feasible(answer), 2):
        busts = [size["finished"]["bust"]["target"]["cm"] for size in (one, other)]
        if busts[0] == busts[1]:
            continue
        smaller, larger = (one, other) if busts[0] < busts[1] else (other, one)
        for (name, low), (_, high) in zip(counts(smaller), counts(larger), strict=True):
            demand(low <= high, f"{name}: {low} in {smaller['label']}, {high} in {larger['label']}")


def check_changed(client: FlaskClient, request: Json, answer: Json) -> None:
    """`changed` has each number of the table that a reader sees change, and no other."""
    design = whole({name: wish for name, wish in request.items() if name != "changes"})
    response = client.post("/v1/pullovers", json=design)
    expect(response.status_code, 200, "status of the design alone")
    assert response.json
    # the yarn at a maker's own gauge is held against its stitches
    kept = request["changes"].get("keep_counts", False)
    before, after = (_numbers(each, yarn=not kept) for each in (response.json, answer))
    if kept:
        expect(after, before, "the design's table")
        for size in feasible(answer):
            for name, made in size["at_own_gauge"]["finished"].items():
                own_cm = made["finished"]["cm"]
                after[size["label"], "finished", name] = own_cm or None if name == "front_extra" else own_cm
            own = Fabrics(request, kept_at=request["changes"])
            after[size["label"], "finished", "band"] = cm(own.rib.wide(size["band"]["stitches"]))
            eases = {told["size"]: told["changed"] for told in answer["changed"] if told["item"] == "ease"}
            if size["label"] in eases:
                bust = after[size["label"], "finished", "bust"]
                demand(abs(bust - before[size["label"], "to_fit", "bust"] - eases[size["label"]]) < 0.011, "ease")
                after[size["label"], "to_fit", "ease"] = eases[size["label"]]
    # a row that no size has a number in is not there
    keys = before.keys() | after.keys()
    expected = {(*key, before.get(key), after.get(key)) for key in keys if before.get(key) != after.get(key)}
    told = {
        (one["size"], one["part"], one["item"], one["designed"], one["changed"])
        for one in answer["changed"]
        if (one["part"], kept) != ("yarn", True)
    }
    demand(expected == told, f"changes not told: {expected - told}, told and none: {told - expected}")


def _numbers(answer: Json, *, yarn: bool) -> dict[tuple[str, str, str], Any]:
    labels = [size["label"] for size in answer["sizes"]]
    return {
        (label, row["part"], row["item"]): value
        for row in answer["table"]
        if yarn or row["part"] != "yarn"
        for label, value in zip(labels, row["values"], strict=True)
    }


# what would make a size possible


def _try_offer(client: FlaskClient, request: Json, size: Json, offers: Iterable[Json]) -> None:
    changed = deepcopy(request)
    for offer in offers:
        _set(changed, offer["field"], offer["value"])
    said = ", ".join(f"{offer['field']} = {offer['value']}" for offer in offers)
    response = client.post("/v1/pullovers", json=changed)
    if response.status_code != 200:
        assert response.json
        raise AssertionError(f"{said}: {response.json['errors'][:2]} ({size['reason']})")
    assert response.json
    (made,) = [other for other in response.json["sizes"] if other["label"] == size["label"]]
    demand(made["feasible"], f"{said}: still {made.get('reason')} ({size['reason']})")


def _set(request: Json, path: str, value: Any) -> None:
    """Put a value where a dotted path leads, list places as numbers."""
    steps = path.split(".")
    place: Any = request
    for step in steps[:-1]:
        place = place[int(step)] if isinstance(place, list) else place.setdefault(step, {})
    if isinstance(place, list):
        place[int(steps[-1])] = value
    else:
        demand(isinstance(place, dict), f"{path} leads nowhere")
        place[steps[-1]] = value


def _sent(error: Json) -> str:
    """The pointer of what is wrong, or of what lacks it."""
    pointer: str = error["pointer"]
    return pointer.rpartition("/")[0] if error["detail"].startswith("is missing") else pointer


def _is_in(request: Json, pointer: str) -> bool:
    """Whether a JSON Pointer leads to something in the request."""
    place: Any = request
    for step in pointer.split("/")[1:]:
        try:
            place = place[int(step)] if isinstance(place, list) else place[step]
        except (KeyError, IndexError):
            return False
    return True


def _options(request: Any, path: str = "") -> Iterator[str]:
    """The dotted paths of all that a request sends; choices with what is chosen."""
    if isinstance(request, dict):
        for name, below in request.items():
            here = f"{path}.{name}" if path else name
            if isinstance(below, str | bool) and name not in ("label", "name", "hex") and not name.endswith("colour"):
                yield f"{here}={below}"
            yield from [here, *_options(below, here)] if path != "chart.chart.colours" else _options(below, f"{path}.*")
    elif isinstance(request, list):
        for below in request:
            yield from _options(below, path)


_client: list[FlaskClient] = []


def _start() -> None:
    _client.append(create_app(Config()).test_client())


def _knit_seed(seed: int) -> Seen:
    return knit_request(_client[0], random_request(seed))


if __name__ == "__main__":
    main()
