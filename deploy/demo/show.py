"""Sends the demo's requests to a running service and prints what it answers: show.py ADDRESS."""

import json
import sys
import textwrap
import time
from collections.abc import Callable, Sequence
from pathlib import Path
from typing import Any
from urllib.error import URLError
from urllib.request import Request, urlopen

WIDTH = 92

STORY = """\
Odda Fenwright lives on the island of Quell (you will find neither on a map) and designs pullovers, worked in
the round from the neck down. Her newest, Lanternwrack, has one swatch, 21 stitches and 29 rounds to 10 cm, and is to
come in nine sizes."""

PICTURES = """
Every example with its table and pictures, as they are answered: {address}/

One of them, in two colours and four sizes:

schematic  {address}{example}/schematic.svg
front      {address}{example}/front.svg
chart      {address}{example}/chart.svg
yoke       {address}{example}/yoke-plot.svg
pattern    {address}{example}/pattern.html
worksheet  {address}{example}/worksheet.html

Draw one of your own: {address}/docs#/Garment/pullovers_schematic"""

EXAMPLE = "/examples/pullovers/colourwork-in-four-sizes"
"""Whose pictures they are."""

Answer = dict[str, Any]


def main(address: str) -> None:
    """Send the requests in their order and print the answers."""
    wait_for(f"{address}/health/ready")
    print_text(STORY)
    for name, heading, show in CHAPTERS:
        path = "/v1/" + name.partition("-")[2]
        request = (Path(__file__).parent / f"{name}.json").read_bytes()
        print(f"\n\n{heading}\nPOST {path}  (deploy/demo/{name}.json)\n")
        show({**post(address + path, request), "request": json.loads(request)})
    print(PICTURES.format(address=address, example=EXAMPLE))


def show_pullover(answer: Answer) -> None:
    """The main numbers of all sizes, the phases of each yoke, and the pattern's words for yoke and split."""
    sizes = answer["sizes"]
    print_table(
        ["", *(size["label"] for size in sizes)],
        [[title, *printed(row(answer, part, item))] for title, part, item in MAIN_NUMBERS],
    )
    print("\nWhere the increases fall:\n")
    print_table(
        ["", "rounds", "raglan: body + sleeve edge", "once in rounds", "times", "stitches then"], phase_rows(sizes)
    )
    print("\nTwo parts of the pattern's words, for all sizes in one:\n")
    for told in answer["instructions"]:
        if told["part"] in ("yoke", "split"):
            for sentence in told["sentences"]:
                print_text(sentence["text"], "* ")
    print_warnings(answer)


def show_changes(answer: Answer) -> None:
    """What a maker's changes change in one size."""
    print_text(
        "A maker of size M wants this yoke 4 cm shallower, the body 36 cm long and her sleeves a little longer. "
        "Neck and split keep their stitches. Every number that changes for her:"
    )
    print()
    titles = {(row["part"], row["item"]): row["title"] for row in answer["table"]}
    print_table(
        ["", "", "as designed", "for her"],
        [
            [titles[one["part"], one["item"]], one["unit"], *printed([one["designed"], one["changed"]])]
            for one in answer["changed"]
            if one["size"] == "M"
        ],
        words=2,
    )


def show_adjustment(answer: Answer) -> None:
    """Every way to make the yoke shallower, and the recommended one beside the yoke as written."""
    (size,) = answer["sizes"]
    before = size["before"]
    print_text(
        f"The yoke of size {size['label']} by itself, as written with {before['rounds']} rounds "
        f"({tenths(before['depth'])} cm), and as that maker works it."
    )
    print()
    print_table(
        ["way", "possible", "rounds", "depth, cm", "doubled rounds", "increase rounds in a row"],
        [
            [
                option["method"].replace("_", " "),
                "yes" if option["feasible"] else "no",
                option["rounds"],
                tenths(option["depth"]),
                option.get("doubled_rounds", ""),
                option.get("consecutive_increase_rounds", ""),
            ]
            for option in size["options"]
        ],
    )
    print()
    for option in size["options"]:
        if not option["feasible"]:
            print_text(f"{option['method'].replace('_', ' ')}: {option['reason']}", "* ")
    recommended = size["recommended"]
    after = next(option["schedule"] for option in size["options"] if option["method"] == recommended)
    print()
    print_text(f"Recommended: {recommended.replace('_', ' ')}. {size['why']}")
    for title, schedule in (("As written:", before), ("Shallower:", after)):
        print(f"\n{title}\n")
        for sentence in schedule["instructions"]:
            print_text(sentence["text"], "* ")
    print_warnings(answer)


def show_colourwork(answer: Answer) -> None:
    """The chart, what becomes of it in every size, and where the starts of one size move."""
    sizes = answer["sizes"]
    charts = [size["chart"] for size in sizes]
    (medium,) = [size["chart"] for size in sizes if size["label"] == "M"]
    drawn = answer["request"]["chart"]["chart"]["rows"]
    print_text(
        "Row 1 is knitted first, and columns are counted from the right. Beside the chart: the columns with which body "
        "and sleeves of size M start in its first repeat."
    )
    print()
    print_chart(drawn, medium["rounds"][: len(drawn)])
    print_text(
        f"Round 1 of the yoke works row 1. Column {answer['chart']['mirror_axes'][-1]} keeps to the centre of every "
        "section, so all of them have odd counts, in every size."
    )
    print()
    print_table(
        ["", *(size["label"] for size in sizes)],
        [
            ["back begins with column", *starts(charts, "back", 0)],
            ["  at the split", *starts(charts, "back", -1)],
            ["sleeves begin with column", *starts(charts, "sleeve", 0)],
            ["  at the split", *starts(charts, "sleeve", -1)],
            ["chart rows left at the split", *(chart["rows_left"] for chart in charts)],
            ["longest float, stitches", *(chart["longest_float"]["stitches"] for chart in charts)],
            ["  cm", *(tenths(chart["longest_float"]["length"]) for chart in charts)],
            ["rounds with long floats", *(long_float_rounds(chart) for chart in charts)],
            *([row["title"], *row["values"]] for row in answer["table"] if row["unit"] == "balls"),
        ],
    )


def show_proof(answer: Answer) -> None:
    """The number to correct, and every reason for it."""
    print_text(
        "Before Lanternwrack is published the numbers of its layout are posted as they are printed, size runs and all, "
        f"{len(answer['request']['rows'])} rows of them. Somewhere on the way a number went wrong. To correct:"
    )
    print()
    print_table(
        ["size", "number", "printed", "should be", "looks like"],
        [
            [
                each["size"],
                named(each["row"]),
                each["printed"],
                each["expected"],
                each.get("likely_cause", "").replace("_", " "),
            ]
            for each in answer["corrections"]
        ],
        words=2,
    )
    print("\nWhy:\n")
    for finding in answer["findings"]:
        print_text(f"{finding['size']}: {finding['because']}", "* ")
    times = sum(each["times"] for each in answer["checked"])
    print()
    print_text(f"{times} relations between the numbers were computed, of {len(answer['checked'])} kinds.")


CHAPTERS: list[tuple[str, str, Callable[[Answer], None]]] = [
    ("1-pullovers", "1. The whole pullover in nine sizes", show_pullover),
    ("2-pullovers", "2. What one maker changes", show_changes),
    ("3-yoke-adjustments", "3. A shallower yoke: every way, compared", show_adjustment),
    ("4-pullovers", "4. The same pullover in two colours", show_colourwork),
    ("5-proofs", "5. The printed pattern, proofread", show_proof),
]


MAIN_NUMBERS = (
    ("cast-on, stitches", "neck", "cast_on"),
    ("  back and front, each", "neck", "back"),
    ("  each sleeve", "neck", "sleeve"),
    ("yoke, rounds", "yoke", "rounds"),
    ("increases, each body edge", "yoke", "back_increases"),
    ("  doubled in rounds", "yoke", "doubled_rounds"),
    ("  each sleeve edge", "yoke", "sleeve_increases"),
    ("split, back and front, each", "split", "back"),
    ("  each sleeve", "split", "sleeve"),
    ("  underarm", "split", "underarm"),
    ("body, stitches", "body", "stitches"),
    ("sleeve, stitches", "sleeve", "stitches"),
    ("  rounds that decrease", "sleeve", "decrease_rounds"),
    ("  cuff", "cuff", "stitches"),
    ("finished bust, cm", "finished", "bust"),
    ("  upper arm", "finished", "upper_arm"),
    ("  yoke depth", "finished", "depth"),
    ("  underarm to hem", "finished", "body_length"),
    ("  underarm to cuff", "finished", "sleeve_length"),
)
"""Rows of the pullover's table that are shown: what they are called here, their part and item."""


def row(answer: Answer, part: str, item: str) -> list[Any]:
    """One row of the pullover's table, a value for each size."""
    (found,) = [one["values"] for one in answer["table"] if (one["part"], one["item"]) == (part, item)]
    return list(found)


def named(number: Answer) -> str:
    """What a changed number is: `body rounds`."""
    return f"{number['part']} {number['item']}".replace("_", " ")


def printed(values: Sequence[Any]) -> list[str]:
    """Counts as they are, centimetres with one decimal."""
    return [f"{value:.1f}" if isinstance(value, float) else str(value) for value in values]


def starts(charts: Sequence[Answer], section: str, place: int) -> list[int]:
    """The first column of a section in the yoke's first round (0) or its last (-1), a value for each size."""
    return [chart["rounds"][place][section]["first_column"] for chart in charts]


def long_float_rounds(chart: Answer) -> int:
    """How many rounds have a float above the limit."""
    return sum(map(len, chart["long_float_rounds"].values()))


def phase_rows(sizes: Sequence[Answer]) -> list[list[Any]]:
    """One row a phase; the size stands beside its first."""
    rows: list[list[Any]] = []
    for size in sizes:
        for place, phase in enumerate(size["yoke"]["phases"]):
            rows.append(
                [
                    size["label"] if place == 0 else "",
                    f"{phase['from_round']}-{phase['to_round']}",
                    f"{phase['body']} + {phase['sleeve']}" if phase["times"] else "none",
                    ", ".join(str(interval) for interval in phase["every"]),
                    phase["times"] or "",
                    phase["stitches"]["total"],
                ]
            )
    return rows


def tenths(length: Answer) -> str:
    """A length in centimetres, as it is printed in a pattern."""
    return f"{length['cm']:.1f}"


def print_chart(rows: Sequence[str], rounds: Sequence[Answer]) -> None:
    """A chart of two colours as it is drawn, row 1 lowest, with its numbers and where a size starts in each row."""
    width = len(rows[0])
    print(f"    {'':{3 * width}}   row   body   sleeve")
    for place, row in enumerate(rows):
        here = rounds[len(rows) - 1 - place]
        cells = "".join("███" if stitch == "#" else " · " for stitch in row)
        print(
            f"    {cells}   {here['chart_row']:>3}   {here['back']['first_column']:>4}   "
            f"{here['sleeve']['first_column']:>6}"
        )
    print(f"    {''.join(f'{column:^3}' for column in range(width, 0, -1))}".rstrip())
    print()


def print_table(header: Sequence[Any], rows: Sequence[Sequence[Any]], words: int = 1) -> None:
    """A table whose first columns are words and whose others are numbers."""
    cells = [[str(cell) for cell in row] for row in (header, *rows)]
    widths = [max(map(len, column)) for column in zip(*cells, strict=True)]
    for place, row in enumerate(cells):
        aligned = (
            cell.ljust(width) if column < words else cell.rjust(width)
            for column, (cell, width) in enumerate(zip(row, widths, strict=True))
        )
        print("  ".join(aligned).rstrip())
        if place == 0:
            print("-" * (sum(widths) + 2 * len(widths) - 2))


def print_text(text: str, bullet: str = "") -> None:
    """A paragraph, wrapped."""
    print(textwrap.fill(text, WIDTH, initial_indent=bullet, subsequent_indent=" " * len(bullet)))


def print_warnings(answer: Answer) -> None:
    """What the service wants to be considered."""
    for warning in answer["warnings"]:
        print()
        print_text(warning["message"], "Note: ")


def post(url: str, body: bytes) -> Answer:
    """One computation's answer."""
    request = Request(url, body, {"Content-Type": "application/json"})
    with urlopen(request, timeout=10) as response:
        answer: Answer = json.load(response)
        return answer


def wait_for(url: str) -> None:
    """Return once the service takes requests; give up after a minute."""
    deadline = time.monotonic() + 60
    while True:
        try:
            urlopen(url, timeout=5).close()
            return
        except (URLError, OSError):
            if time.monotonic() > deadline:
                raise
            time.sleep(0.2)


if __name__ == "__main__":
    main(sys.argv[1])
