"""Fills new numbers into a report: `python -m tests.benchmarks.report deploy/measurements.md < measured`.

What was measured is the Markdown that deploy/bench.sh and tests.benchmarks.settings print, one of them or both. The
report marks where numbers go: what lies between `<!-- measured: NAME -->` and `<!-- end -->` is replaced where NAME
was measured, and stays where it was not.
"""

from __future__ import annotations

import re
import sys
from collections.abc import Iterable, Mapping, Sequence
from pathlib import Path

BLOCK = re.compile(r"(<!-- measured: (.+?) -->\n)(.*?)(<!-- end -->)", re.DOTALL)

BESIDE = "Beside a bare route"
WORST = "The worst requests within the limits"

NAMED = 12
"""How many of the worst requests are named."""

Row = Mapping[str, str]


def main() -> None:
    """Rewrite the file that is named, by what is read from standard input."""
    file = Path(sys.argv[1])
    file.write_text(filled_in(file.read_text(), sys.stdin.read()))


def filled_in(report: str, measured: str) -> str:
    """A report with new numbers.

    report: with marked blocks. measured: sections of Markdown, each a heading, words, and tables.
    """
    blocks = _blocks(measured)
    return BLOCK.sub(
        lambda block: f"{block[1]}\n{blocks[block[2]]}\n\n{block[4]}" if block[2] in blocks else block[0], report
    )


def _blocks(measured: str) -> dict[str, str]:
    """What can be filled in, by name: every section's table, or its words, by its heading; and what is chosen."""
    sections = {
        heading: text.splitlines()
        for part in re.split(r"^## ", measured, flags=re.MULTILINE)[1:]
        for heading, _, text in [part.partition("\n")]
    }
    blocks = {
        heading: "\n".join([line for line in lines if line.startswith("| ")] or lines).strip()
        for heading, lines in sections.items()
    }
    if BESIDE in sections:
        blocks[BESIDE] = _table(_costs(_rows(sections[BESIDE])))
        blocks["A worker"] = "\n".join(line for line in sections[BESIDE] if line.startswith("A "))
    if WORST in sections:
        blocks[WORST] = _table(_longest(_rows(sections[WORST])))
    if goals := [row for lines in sections.values() for row in _rows(lines) if "wanted" in row]:
        blocks["Goals"] = _table(goals)
    return blocks


def _costs(rows: Iterable[Row]) -> Iterable[Row]:
    """What one plans by: requests that are not of one size."""
    for row in rows:
        if not row["request"].startswith("1 size"):
            yield {
                "request": f"{row['operation']}, {row['request']}",
                "answer": f"{_short(int(row['out']) / 1000)} KB",
                "share of bare rate": row["ratio"],
                "p50, p99 ms": f"{_short(float(row['p50 ms']))}, {_short(float(row['p99 ms']))}",
                "processor ms": row["CPU ms"],
                "requests a second and core": f"{1000 / float(row['CPU ms']):.0f}",
                "of it the core": row["core share"],
            }


def _short(amount: float) -> str:
    """Three digits that count, without a power of ten."""
    return f"{float(f'{amount:.3g}'):g}"


def _longest(rows: Iterable[Row]) -> Iterable[Row]:
    taken = [row for row in rows if "ms" in row]
    return sorted(taken, key=lambda row: -int(row["ms"]))[:NAMED]


def _rows(lines: Iterable[str]) -> list[Row]:
    """The rows of all tables among lines, each by its table's head."""
    rows: list[Row] = []
    head: list[str] | None = None
    for line in lines:
        cells = [cell.strip() for cell in line.split("|")[1:-1]]
        if not cells:
            head = None
        elif head is None:
            head = cells
        elif set(cells) != {"---"}:
            rows.append(dict(zip(head, cells, strict=True)))
    return rows


def _table(rows: Iterable[Row]) -> str:
    rows = list(rows)
    lines: Sequence[Iterable[str]] = [rows[0], ["---"] * len(rows[0]), *(row.values() for row in rows)]
    return "\n".join(f"| {' | '.join(line)} |" for line in lines)


if __name__ == "__main__":
    main()
