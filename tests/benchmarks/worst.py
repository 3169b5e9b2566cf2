"""The worst requests within all limits, and the time that a worker spends on each. Prints Markdown.

Every operation says in its schema and its core how much it takes on; these requests go to the end of that,
and are as irregular as they can be, so that nothing can be told in a few words.
"""

from __future__ import annotations

import io
import random
import re
import string
from collections.abc import Iterator
from functools import partial

import orjson
from PIL import Image

from service.app import create_app
from service.config import Config
from service.schemas.common import MAX_SIZES
from service.schemas.gauge import MAX_ITEMS
from service.schemas.proof import MAX_ROWS
from service.schemas.shaping import MAX_PLANS
from tests.benchmarks.alone import ask, best
from tests.benchmarks.cases import BUILDERS, GAUGE, Body, charted_pullovers
from tests.benchmarks.cases import pullovers as plain_pullovers

JSON, CSV, MARKDOWN, SVG = "application/json", "text/csv", "text/markdown", "image/svg+xml"
HTML = "text/html"
XLSX = "application/vnd.openxmlformats-officedocument.spreadsheetml.sheet"

PICTURES = (
    ("schematic", SVG, "all"),
    ("front", SVG, "one of"),
    ("chart", SVG, "all"),
    ("chart", SVG, "one of"),
    ("yoke-plot", SVG, "all"),
    ("pattern", HTML, "all"),
    ("worksheet", HTML, "one of"),
)
"""Of a pullover: as what each is answered, and of how many of its sizes."""

_NUMBER = re.compile(r"[0-9.]+")

GOAL_SECONDS = 0.4
"""What every one of these requests stays below."""

ODD_GAUGE = {"stitches": 21.987654321, "rows": 30.123456789, "over": 10.1357911}
"""A gauge that leaves long fractions everywhere."""


COARSE = {"count_rule": {"multiple": 40}}

MISFITS = {
    "none of which can be knitted": {"yoke": {"depth": 6}},
    "none of which can be knitted, by coarse rules": {"yoke": {"depth": 6}, "body": COARSE, "sleeve": COARSE},
    "none of which a maker can knit": {
        "body": COARSE, "changes": {"yoke": {"rounds_change": -60}, "ease": {"bust": 11}}
    },
    "far from what is asked, by coarse rules": {"neck": COARSE, "body": COARSE, "sleeve": COARSE},
    "whose underarm grows faster than they do": {"yoke": {"underarm": {"from": 3, "to": 20}}},
}  # fmt: skip
"""What is looked for again and again: changes that would make a size possible, and causes of what is far off."""


def main() -> None:
    """Print one row for every request and representation."""
    app = create_app(Config(log_level="WARNING"))
    print("| operation | request | as | in | out | status | ms |\n| --- | --- | --- | --- | --- | --- | --- |")
    longest, most = 0.0, ""
    for operation, about, body, media in worst_requests():
        sent = body if isinstance(body, bytes) else orjson.dumps(body)
        headers = {"CONTENT_TYPE": media_type(sent)}
        work = partial(ask, app, f"/v1/{operation}", sent, media, headers=headers)
        status, answer = work()
        # Compressed, as a client may ask for that too.
        taken = best(partial(work, encoding="gzip"), budget=0, least=2)
        kind = media.partition("/")[2]
        row = (operation, about, kind, len(sent), len(answer), status, f"{taken * 1000:.0f}")
        print(f"| {' | '.join(map(str, row))} |", flush=True)
        longest, most = max((longest, most), (taken, f"{operation}, {about}, {kind}"))
    met = "yes" if longest < GOAL_SECONDS else "NO"
    print("\n| goal | wanted | reached | met |\n| --- | --- | --- | --- |")
    print(f"| the worst request: {most} | below {GOAL_SECONDS} s | {longest:.2f} s | {met} |")


def media_type(sent: bytes) -> str:
    """What a body is sent as."""
    return "image/png" if sent.startswith(b"\x89PNG") else JSON


def worst_requests() -> Iterator[tuple[str, str, Body | bytes, str]]:
    """The operation, what is bad about the request, the request, and the representation asked for."""
    yield "gauge-conversions", "all items, long fractions", gauge_conversions(), JSON
    for media in (JSON, CSV, MARKDOWN):
        yield "size-gradings", "all sizes and measurements, long fractions", size_gradings(), media
    yield "size-matches", "a grading like that", {"grading": size_gradings(), "body": 92.1, "ease": 3.3}, JSON
    for media in (JSON, CSV, MARKDOWN):
        for about, body in {
            "40 yokes of 500 rounds, unlike": many_yokes(40),
            "4 yokes of 5000 rounds, unlike": many_yokes(4),
            "4 yokes of 5000 rounds, even": even_yokes(4),
        }.items():
            yield "raglan-schedules", about, body, media
        for about, body in {
            "10 yokes of 500 rounds, unlike": adjusted(many_yokes(10, 500)),
            "1 yoke of 5000 rounds, unlike": adjusted(many_yokes(1, 5000)),
            "1 yoke of 5000 rounds, irregular as written": adjusted(irregular_yokes(1)),
            "40 yokes of 125 rounds, irregular as written": adjusted(irregular_yokes(40, 125)),
        }.items():
            yield "yoke-adjustments", about, body, media
    yield "shaping-schedules", "all plans, as many rows as they take", long_plans(), JSON
    yield "shaping-schedules", "all plans across the widest rows", wide_plans(), JSON
    for media in (JSON, CSV, MARKDOWN):
        yield "chart-placements", "40 sizes, many rounds", charted(40, 13_300 // 40), media
        yield "chart-placements", "2 sizes, as many rounds as possible", charted(2, 6_600), media
        yield "chart-placements", "40 sizes, 62 colours", charted(40, 15, colours=62), media
    for media in (JSON, CSV, MARKDOWN):
        for sizes, stitches, height in ((9, 100, 400), (MAX_SIZES, 26, 80)):
            about = f"{sizes} sizes at {stitches} stitches, a chart of 800 x {height}"
            yield "pullovers", about, pullovers(sizes, stitches, height), media
    yield "pullovers/workbook", f"{MAX_SIZES} sizes, a chart of 800 x 80", pullovers(MAX_SIZES, 26, 80), XLSX
    for about, wishes in MISFITS.items():
        yield "pullovers", f"{MAX_SIZES} sizes, {about}", {**plain_pullovers(MAX_SIZES), **wishes}, JSON
    levels = [{"measurement": name, "below": below} for name, below in (("waist", 14), ("hip", 30))]
    yield (
        "pullovers",
        f"{MAX_SIZES} sizes, waist and hip",
        {**plain_pullovers(MAX_SIZES), "body": {"levels": levels}},
        JSON,
    )
    for picture, media, of in PICTURES:
        size = {"size": "1"} if of == "one of" else {}
        body = {**pullovers(MAX_SIZES, 26, 80), "picture": {"page": "a4", **size}}
        yield f"pullovers/{picture}", f"{of} {MAX_SIZES} sizes, a chart of 800 x 80", body, media
    yield "charts", "800 x 400 pixels of 62 colours at random", drawn(800, 400), JSON
    changed = {"yarn": {"metres_per_100g": 101.23456789}, "changes": {"body_length": 44.4444444}}
    yield "pullovers", "9 sizes, a chart of 800 x 400, yarn and changes", {**pullovers(9, 100, 400), **changed}, JSON
    yield "pullovers", "16 sizes, 62 colours and a maker's yarn in place of each", many_coloured(16), JSON
    yield "yarn-estimates", "40 sizes of 62 yarns of 6 strands", yarn_estimates(), JSON
    yield "strand-combinations", "20 strands, long fractions", strand_combinations(), JSON
    yield "proofs", "40 sizes of a pullover, six numbers of each wrong", wrong_proof(6), JSON
    yield "proofs", "700 rows of 40 sizes in words of their own", strange_proof(), JSON
    yield "chart-placements/picture", "the largest chart", pictured(800, 125), SVG
    yield "chart-placements/garment-picture", "the largest front", pictured(60, 80), SVG
    yield "colour-contrasts", "800 x 400 stitches of 62 colours at random, all alike", contrasted(800, 400), JSON
    yield "colour-contrasts/picture", "the largest chart", contrasted(800, 125), SVG
    for operation in BUILDERS:
        yield operation, "1,000 wrong places", wrong(operation), JSON
    yield ("raglan-schedules", "1 MiB of nested lists", b'{"sizes":' + b"[[" * 49_000 + b"]]" * 49_000 + b"}", JSON)
    yield "raglan-schedules", "1 MiB of empty objects", b'{"sizes":[' + b"{}," * 99_000 + b"{}]}", JSON
    yield "raglan-schedules", "1 MiB of digits", b'{"sizes":' + b"9" * 1_000_000 + b"}", JSON
    yield "raglan-schedules", "1 MiB of escapes", b'{"' + b"\\u003a" * 170_000 + b'":1}', JSON
    yield "raglan-schedules", "1 MiB of one text", b'{"sizes":"' + b"x" * 1_000_000 + b'"}', JSON
    yield "raglan-schedules", "1 MiB of keys", _keys(), JSON


def gauge_conversions() -> Body:
    kinds = ("across", "along", "stitches", "rows")
    rule = {"multiple": 997, "plus": 3}
    items = [
        {"name": "n" * 100, kinds[place % 4]: 9999 if place % 4 > 1 else 9999.123456789, "count_rule": rule}
        for place in range(MAX_ITEMS)
    ]
    return {"unit": "in", "gauge": ODD_GAUGE, "pattern_gauge": {"stitches": 22.7654321, "rows": 31.3}, "items": items}


def size_gradings() -> Body:
    names = ("bust", "waist", "hip", "upper_arm", "wrist", "neck", "head", "cross_back", "back_waist_length",
             "armhole_depth", "arm_length", "back_neck_to_wrist", "back_hip_length")  # fmt: skip
    sizes = [
        {"label": f"{place + 1}", **dict.fromkeys(names, 50.123456789 + place * 1.0101)} for place in range(MAX_SIZES)
    ]
    return {
        "unit": "in",
        "gauge": ODD_GAUGE,
        "sizes": sizes,
        "ease": {name: [1.2345678 + place / 7 for place in range(MAX_SIZES)] for name in names},
        "count_rules": {name: {"multiple": 3, "plus": 1} for name in names},
    }


def even_yokes(sizes: int) -> Body:
    rounds = 20_000 // sizes
    neck = {"back": 1, "front": 3, "sleeve": 2}
    split = {"back": 4999, "front": 4001, "sleeve": 3002}
    return {
        "gauge": ODD_GAUGE, "step": 1, "spacing": "even", "fewer_edge": "even", "double_body": "if_needed",
        "double_where": "even",
        "sizes": [{"label": str(size), "rounds": rounds, "neck": neck, "split": split} for size in range(sizes)],
    }  # fmt: skip


def many_yokes(sizes: int, rounds: int | None = None) -> Body:
    """Yokes whose edges increase at rates without a common measure."""
    rounds = rounds or 20_000 // sizes
    most = min(rounds, 2499)
    made = []
    for size in range(sizes):
        many = {"back": most - size - 1, "front": most * 7 // 11 - size, "sleeve": most * 5 // 13 + size}
        split = {section: 1 + 2 * increases for section, increases in many.items()}
        neck = {"back": 1, "front": 1, "sleeve": 1}
        made.append({"label": str(size), "rounds": rounds, "neck": neck, "split": split})
    return {**even_yokes(1), "sizes": made}


def irregular_yokes(sizes: int, rounds: int = 5000) -> Body:
    """Yokes with written increase rounds at random."""
    chance, made = random.Random(1), []
    for size in range(sizes):
        body, sleeve = min(rounds * 2 // 3, 2400), min(rounds // 3, 1200)
        worked = sorted(chance.sample(range(1, rounds + 1), body))
        sleeves = set(chance.sample(worked, sleeve))
        neck = {"back": 1, "front": 1, "sleeve": 1}
        split = {"back": 1 + 2 * body, "front": 1 + 2 * body, "sleeve": 1 + 2 * sleeve}
        written = [{"round": number, "body": 1, "sleeve": int(number in sleeves)} for number in worked]
        made.append({"label": str(size), "rounds": rounds, "neck": neck, "split": split, "increase_rounds": written})
    return {**even_yokes(1), "sizes": made}


def adjusted(yokes: Body) -> Body:
    return {**yokes, "adjust": {"rounds_change": -1}}


def long_plans() -> Body:
    plan = {"stitches": 5000, "to": 3, "rows": 5000, "stitches_per_shaping": 1, "spacing": "even"}
    return {"plans": [{"name": str(place), **plan, "rows": 5000 - place} for place in range(MAX_PLANS)]}


def wide_plans() -> Body:
    plan = {"stitches": 5000, "across": 2401, "change": "decrease", "worked": "flat"}
    return {"plans": [{"name": str(place), **plan} for place in range(MAX_PLANS)]}


def charted(sizes: int, rounds: int, colours: int = 3) -> Body:
    """Charts over rounds shared out among yoke, body and sleeves, with an increase or decrease wherever one can be."""
    chance = random.Random(2)
    symbols = "".join(map(chr, range(0x100, 0x100 + colours)))
    yoke, body, sleeve = min(rounds // 3, 2400), min(rounds // 3, 5000), min(rounds - 2 * (rounds // 3), 5000)
    rows = ["".join(chance.choices(symbols, k=799)) for _ in range(400)]
    increases = [{"round": number, "body": 1, "sleeve": 1} for number in range(1, yoke + 1)]
    made = [
        {
            "label": str(size), "rounds": yoke, "neck": {"back": 101, "front": 101, "sleeve": 101},
            "increase_rounds": increases, "underarm": 9, "body_rounds": body, "sleeve_rounds": sleeve,
            "sleeve_decrease_rounds": list(range(1, min(sleeve, yoke) + 1)),
        }
        for size in range(sizes)
    ]  # fmt: skip
    return {
        "gauge": GAUGE, "chart": {"rows": rows}, "sizes": made, "anchor": {"back": 3, "front": 3, "sleeve": 3},
    }  # fmt: skip


def pullovers(sizes: int, stitches: int, height: int) -> Body:
    """Pullovers with as wide a chart as there can be."""
    return {
        **charted_pullovers(sizes, 800, height),
        "gauge": {"stitches": stitches + 0.123456789, "rows": 1.35 * stitches + 0.1},
    }


def pictured(width: int, height: int) -> Body:
    chance = random.Random(3)
    symbols = "".join(map(chr, range(0x100, 0x100 + 62)))
    rows = ["".join(chance.choices(symbols, k=width)) for _ in range(height)]
    size = {
        "label": "1", "rounds": 100, "neck": {"back": 1, "front": 1, "sleeve": 1}, "body_rounds": 200,
        "sleeve_rounds": 190, "increase_rounds": [{"round": n, "body": 1, "sleeve": 1} for n in range(1, 101)],
    }  # fmt: skip
    return {
        "gauge": GAUGE, "chart": {"rows": rows}, "sizes": [size], "anchor": {"back": 3, "front": 3, "sleeve": 3},
    }  # fmt: skip


def drawn(width: int, height: int) -> bytes:
    """A chart as a picture that hardly compresses."""
    chance, file = random.Random(4), io.BytesIO()
    picture = Image.new("P", (width, height))
    picture.putpalette([value for colour in range(62) for value in (4 * colour, 255 - 4 * colour, colour)])
    picture.putdata(chance.choices(range(62), k=width * height))
    picture.save(file, "PNG")
    return file.getvalue()


def contrasted(width: int, height: int) -> Body:
    """A chart in which every two of its colours hardly read apart, and meet."""
    symbols, chance = string.ascii_letters + string.digits, random.Random(1)
    colours = {symbol: {"name": symbol * 60, "hex": f"#8080{place + 64:02x}"} for place, symbol in enumerate(symbols)}
    rows = ["".join(chance.choices(symbols, k=width)) for _ in range(height)]
    return {"colours": colours, "chart": {"rows": rows}}


def many_coloured(sizes: int) -> Body:
    """Pullovers with a yarn of its own for every colour of a chart, and another one in its place."""
    symbols = string.ascii_letters + string.digits
    rows = [first + second for first, second in zip(symbols[::2], symbols[1::2], strict=True)]
    yarns = {symbol: {"strands": [{"metres": 101.23456789, "name": "x" * 100}]} for symbol in symbols}
    weighed = {symbol: {**yarn, "swatch_grams": 98.7654321, "swatch_stitches": 997} for symbol, yarn in yarns.items()}
    changes = {"yarn": {"colours": yarns}, "body_length": 44.4444444}
    return {
        **plain_pullovers(sizes),
        "chart": {"chart": {"rows": rows}},
        "yarn": {"colours": weighed},
        "changes": changes,
    }


def yarn_estimates() -> Body:
    names = [f"{number:060}" for number in range(62)]
    strands = strand_combinations()["strands"][:6]
    yarn = {"strands": strands, "swatch_grams": 9876.54321, "swatch_stitches": 997, "swatch_floats": 991}
    sizes = [
        {"label": str(size), **dict.fromkeys(("stitches", "floats"), dict.fromkeys(names, 9999991 - size))}
        for size in range(MAX_SIZES)
    ]
    return {"gauge": ODD_GAUGE, "margin": 0.123456789, "yarns": dict.fromkeys(names, yarn), "sizes": sizes}


def strand_combinations() -> Body:
    strands = [{"name": "n" * 100, "metres": 123.456789 + 7.7 * place, "grams": 49.87654321} for place in range(20)]
    return {"strands": strands}


def wrong_proof(slips: int) -> Body:
    """Rows of a pullover in which so many numbers of each size are wrong."""
    proof, chance = BUILDERS["proofs"](MAX_SIZES), random.Random(1)
    table = [[*_NUMBER.findall(row["run"])] for row in proof["rows"]]
    runs = [numbers * MAX_SIZES if len(numbers) == 1 else numbers for numbers in table]
    for size in range(MAX_SIZES):
        for run in chance.choices([run for run in runs if len(run) == MAX_SIZES], k=slips):
            run[size] = str(chance.randint(1, 400))
    return {**proof, "rows": [{**row, "run": ", ".join(run)} for row, run in zip(proof["rows"], runs, strict=True)]}


def strange_proof() -> Body:
    """As many rows as possible, whose runs and inches contradict one another and take guesses to be read."""
    chance = random.Random(1)

    def run() -> str:
        return "; ".join(f"{chance.randint(1, 99)},{chance.randint(1, 9)}" for _ in range(MAX_SIZES))

    rows = [
        {"part": "own", "item": f"row {place}", "unit": "cm", "run": run(), "run_inch": run()}
        for place in range(MAX_ROWS)
    ]
    return {"labels": [str(place) for place in range(MAX_SIZES)], "rows": rows}


def wrong(operation: str) -> Body:
    """A request whose lists hold as many unsuitable things as they may."""
    body = BUILDERS[operation](1)
    return {name: [{"": None}] * 500 if isinstance(value, list) else value for name, value in body.items()}


def _keys() -> bytes:
    return b"{" + b",".join(b'"%d":1' % number for number in range(90_000)) + b"}"


if __name__ == "__main__":
    main()
