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

Answer = dict[str, Any]


def main(address: str) -> None:
    """Send the requests in their order and print the answers."""
    wait_for(f"{address}/health/ready")
    print_text(STORY)
    for name, heading, show in CHAPTERS:
        path = "/v1/" + name.partition("-")[2]
        request = (Path(__file__).parent / f"{name}.json").read_bytes()
        print(f"\n\n{heading}\nPOST {path}  (deploy/demo/{name}.json)\n")
        show(post(address + path, request))


def show_grading(answer: Answer) -> None:
    """The graded counts, sizes across."""
    sizes = answer["sizes"]
    rows = []
    for title, name, count in (
        ("bust", "bust", "stitches"),
        ("upper arm", "upper_arm", "stitches"),
        ("wrist", "wrist", "stitches"),
        ("armhole", "armhole_depth", "rows"),
    ):
        measured = [size["measurements"][name] for size in sizes]
        rows.append([f"{title}, body cm", *(tenths(one["body"]) for one in measured)])
        rows.append(["  finished cm", *(tenths(one["finished"]) for one in measured)])
        rows.append([f"  {count}", *(one[count] for one in measured)])
    print_table(["", *(size["label"] for size in sizes)], rows)
    print_warnings(answer)


def show_schedules(answer: Answer) -> None:
    """The schedules' numbers, the phases of each size, and the instructions for all sizes at once."""
    sizes = answer["sizes"]
    print_text(
        "The sections at the split, the stitches of the raglan lines and 12 to 24 underarm stitches together make "
        "the bust and upper-arm stitches above. Where a yoke has too few rounds, body increases are doubled."
    )
    print()
    print_table(
        ["", *(size["label"] for size in sizes)],
        [
            ["rounds", *(size["rounds"] for size in sizes)],
            ["depth, cm", *(tenths(size["depth"]) for size in sizes)],
            ["at each body edge", *(size["body_increases"] for size in sizes)],
            ["at each sleeve edge", *(size["sleeve_increases"] for size in sizes)],
            ["doubled rounds", *(size["doubled_rounds"] for size in sizes)],
            ["stitches, neck", *(size["stitches"]["neck"] for size in sizes)],
            ["stitches, split", *(size["stitches"]["split"] for size in sizes)],
        ],
    )
    print("\nWhere the increases fall (at each body edge + at each sleeve edge):\n")
    print_table(["", "rounds", "increases", "every", "times", "stitches then"], phase_rows(sizes))
    print("\nThe same for all sizes in one, as a pattern prints it:\n")
    for sentence in answer["instructions"]:
        print_text(sentence, "* ")
    print_warnings(answer)


def show_adjustment(answer: Answer) -> None:
    """Every way to make the yoke shallower, and the recommended one beside the yoke as written."""
    (size,) = answer["sizes"]
    before = size["before"]
    print_text(
        f"Size {size['label']}: a knitter wants this yoke 4 cm shallower, with the same stitches at the neck and "
        f"at the split. As written it has {before['rounds']} rounds ({tenths(before['depth'])} cm)."
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
            print_text(sentence, "* ")
    print_warnings(answer)


CHAPTERS: list[tuple[str, str, Callable[[Answer], None]]] = [
    ("1-size-gradings", "1. From bodies and ease to stitches", show_grading),
    ("2-raglan-schedules", "2. Where every raglan increase falls", show_schedules),
    ("3-yoke-adjustments", "3. A shallower yoke", show_adjustment),
]


def phase_rows(sizes: Sequence[Answer]) -> list[list[Any]]:
    """One row a phase; the size stands beside its first."""
    rows: list[list[Any]] = []
    for size in sizes:
        for place, phase in enumerate(size["phases"]):
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


def print_table(header: Sequence[str], rows: Sequence[Sequence[Any]]) -> None:
    """A table whose first column is words and whose others are numbers."""
    cells = [[str(cell) for cell in row] for row in (header, *rows)]
    widths = [max(map(len, column)) for column in zip(*cells, strict=True)]
    for place, row in enumerate(cells):
        first, *others = (
            cell.rjust(width) if column else cell.ljust(width)
            for column, (cell, width) in enumerate(zip(row, widths, strict=True))
        )
        print("  ".join([first, *others]).rstrip())
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
