"""Measures the choice of counts beside other ways to the same garments, and what its cost grows with.

Beside a general solver with the same cost (CP-SAT, on two threads), beside trying every chain of counts, and beside a
spreadsheet that rounds each count by itself. Processor times of one run, of which only ratios mean anything. Prints
Markdown.
"""

from __future__ import annotations

import csv
import resource
import shutil
import subprocess
import tempfile
import time
from collections.abc import Callable, Iterable, Sequence
from dataclasses import replace
from fractions import Fraction
from pathlib import Path
from typing import Any

from openpyxl import Workbook

from grading_core.counts.request import Rules, Targets
from grading_core.counts.solver import solve
from grading_core.errors import sound
from grading_core.pullover.garment import garment_problems
from grading_core.rounding import CountRule
from service.config import Config
from service.operation import Operation
from service.routes import operations
from tests.benchmarks.alone import best
from tests.benchmarks.cases import GAUGE, Body, pullovers
from tests.benchmarks.run import GROWTH, growth, table
from tests.oracles import every_chain, garment_model

SIZES = 9

TRIED = 2
"""Sizes whose chains are all tried: each size more takes about a hundred times as long."""

COARSE: Body = {"body": {"count_rule": {"multiple": 8}}, "sleeve": {"count_rule": {"multiple": 4}}}

PARITIES: dict[int, dict[str, Any]] = {
    1: {"back_parity": "even", "sleeve_parity": "even"},
    2: {"back_parity": "even"},
    4: {},
}
"""Rules by how many pairs of parities they leave open."""

WISHES: dict[str, Body] = {
    "none": {},
    "girths in even steps": {"smoothing": "steps"},
    "cast-on on a multiple of 4": {"neck": {"count_rule": {"multiple": 4}}},
    "body on a multiple of 4": {"body": {"count_rule": {"multiple": 4}}},
    "body on a multiple of 24": {"body": {"count_rule": {"multiple": 24}}},
    "body on a multiple of 8, sleeve of 4": COARSE,
    "an even underarm": {"yoke": {"seam_stitches": 0}},
    "lines of 1 stitch": {"yoke": {"line_stitches": 1}},
    "increases in every round": {"yoke": {"step": 1}},
    "no double increases": {"yoke": {"double_body": "never"}},
    "a front narrower at the neck": {"neck": {"shares": {"back": 34, "front": 30, "sleeve": 18}}},
    "a front wider below the split": {"body": {"front_extra": 4}},
    "short sleeves": {"sleeve": {"style": "short"}},
}
"""What is asked beside the usual garment."""


def main() -> None:
    """Print everything."""
    asked = {operation.name: operation for operation in operations(Config())}["pullovers"]
    print("## The same counts by other solvers\n")
    table(
        ("sizes", "rules", "ms", "CP-SAT ms", "times as long", "every chain ms", "times as long", "same cost"),
        _beside(asked),
    )
    print(f"\n## What is asked of the counts\n\n{SIZES} sizes.\n")
    table(("asked", "ms", "to the first", "cost", "of it uneven steps"), _asked(asked))
    print("\n## What the choice grows with\n\nThe exponent is that of the last step.\n")
    table(GROWTH, _growth(asked))
    print(f"\n## Beside a spreadsheet\n\n{_spreadsheet(asked)}")


def _problem(asked: Operation[Any, Any], body: Body) -> tuple[list[Targets], Rules]:
    making = sound(garment_problems(asked.load(body))).makings[0]
    return [*making.targets], making.rules


def _beside(asked: Operation[Any, Any]) -> Iterable[tuple[object, ...]]:
    for sizes, name, wish in [
        (1, "none", {}),
        (2, "none", {}),
        (3, "none", {}),
        (SIZES, "none", {}),
        (SIZES, "8 and 4", COARSE),
    ]:
        targets, rules = _problem(asked, {**pullovers(sizes), **wish})
        ours = _seconds(targets, rules)
        costs = {solve(targets, rules).cost}
        seconds, cost = _once(garment_model.least_cost, targets, rules)
        costs.add(cost)
        row = [sizes, name, f"{ours * 1000:.2f}", f"{seconds * 1000:,.0f}", f"{seconds / ours:,.0f}"]
        if sizes > TRIED:
            yield (*row, "", "", len(costs) == 1)
            continue
        seconds, cost = _once(every_chain.least_cost, targets, rules)
        costs.add(cost)
        yield (*row, f"{seconds * 1000:,.0f}", f"{seconds / ours:,.0f}", len(costs) == 1)


def _asked(asked: Operation[Any, Any]) -> Iterable[tuple[object, ...]]:
    first = 0.0
    for name, wish in WISHES.items():
        targets, rules = _problem(asked, {**pullovers(SIZES), **wish})
        seconds = _seconds(targets, rules)
        first = first or seconds
        solution = solve(targets, rules)
        yield (
            name, f"{seconds * 1000:.2f}", f"{seconds / first:.2f}", f"{float(solution.cost):.1f}",
            f"{float(solution.unevenness):.1f}",
        )  # fmt: skip


def _growth(asked: Operation[Any, Any]) -> Iterable[tuple[object, ...]]:
    def grown(over: str, amounts: Sequence[int], problem: Callable[[int], tuple[list[Targets], Rules]]) -> Any:
        problems = [problem(amount) for amount in amounts]
        return growth(over, amounts, [_seconds(*each) for each in problems])

    targets, rules = _problem(asked, pullovers(SIZES))
    yield grown("sizes", (5, 10, 20, 40), lambda sizes: _problem(asked, pullovers(sizes)))
    yield grown(
        "sizes, body and sleeve by coarse rules",
        (5, 10, 20, 40),
        lambda sizes: _problem(asked, pullovers(sizes) | COARSE),
    )
    yield grown("multiple of the body", (2, 4, 8, 16, 32), lambda by: (targets, replace(rules, body=CountRule(by))))
    yield grown("multiple of the cast-on", (2, 4, 8, 16, 32), lambda by: (targets, replace(rules, neck=CountRule(by))))
    yield grown("parities left open", (1, 2, 4), lambda many: (targets, replace(rules, **PARITIES[many])))
    yield grown("stitches by which steps are uneven", (1, 2, 4, 8, 16), lambda by: ([*_uneven(targets, by)], rules))


def _uneven(targets: Sequence[Targets], by: int) -> Iterable[Targets]:
    """The targets with more stitches in the body of every second size, as far as none has fewer than the one before."""
    before = Fraction(0)
    for place, size in enumerate(targets):
        before = max(size.body + by * (place % 2), before)
        yield replace(size, body=before)


def _seconds(targets: Sequence[Targets], rules: Rules) -> float:
    return best(lambda: solve(targets, rules))


def _once(
    oracle: Callable[[list[Targets], Rules], Fraction | None], targets: list[Targets], rules: Rules
) -> tuple[float, Fraction | None]:
    """The processor time of all threads in seconds, and the least cost."""
    started = time.process_time()
    made = oracle(targets, rules)
    return time.process_time() - started, made


def _spreadsheet(asked: Operation[Any, Any]) -> str:
    if shutil.which("soffice") is None:
        return "Skipped: there is no `soffice` on this machine."
    request = asked.load(pullovers(SIZES))
    ours = best(lambda: asked.call(request))
    busts = [size["bust"] for size in pullovers(SIZES)["sizes"]]
    with tempfile.TemporaryDirectory() as scratch:
        home = Path(scratch)
        _recalculated(home, [])  # the first start makes a profile
        empty, _ = _recalculated(home, [])
        sheet, rows = _recalculated(home, busts)
    wanted = [str(CountRule(4).round(Fraction(bust + 12) * GAUGE["stitches"] / GAUGE["over"])) for bust in busts]
    if rows[3] != wanted:
        raise RuntimeError(f"recalculated to {rows[3]}, not {wanted}")
    return (
        f"A sheet of {len(rows)} formulas for each of {SIZES} sizes, each count rounded by itself, takes LibreOffice "
        f"{sheet:.2f} s of processor time to open, recalculate and save, {empty:.2f} s of it for an empty one: "
        f"{sheet / ours:,.0f} times as long as the whole pullover with all its parts ({ours * 1000:.1f} ms), "
        f"and {max(sheet - empty, 0) / ours:.1f} times without what an empty one takes."
    )


def _recalculated(home: Path, busts: Sequence[int]) -> tuple[float, list[list[str]]]:
    """The processor time of a headless spreadsheet program in seconds, and the rows of numbers that it made."""
    book = Workbook()
    for place, bust in enumerate(busts, start=1):
        for row, formula in enumerate(
            _formulas(bust, GAUGE["stitches"] / GAUGE["over"], GAUGE["rows"] / GAUGE["over"])
        ):
            book.active.cell(row + 1, place, formula.replace("@", chr(ord("A") + place - 1)))
    book.save(home / "sheet.xlsx")
    before = resource.getrusage(resource.RUSAGE_CHILDREN)
    subprocess.run(
        ["soffice", f"-env:UserInstallation=file://{home}/home", "--headless", "--convert-to", "csv",
         "--outdir", str(home), str(home / "sheet.xlsx")],
        check=True, capture_output=True, timeout=300,
    )  # fmt: skip
    after = resource.getrusage(resource.RUSAGE_CHILDREN)
    rows = [*csv.reader((home / "sheet.csv").read_text("utf-8").splitlines())]
    return after.ru_utime + after.ru_stime - before.ru_utime - before.ru_stime, rows


def _formulas(bust: int, stitches: float, rows: float) -> list[str]:
    """A column of a grading sheet from the bust down, @ the column: widths, stitches, rounds and increases."""
    return [
        f"={bust}",
        "=MAX(5,MIN(10,@1/10))",
        "=@1+12",
        f"=4*ROUND(@3*{stitches}/4,0)",
        "=10+@1*0.22",
        "=@5*1.2",
        f"=2*ROUND(@6*{stitches}/2,0)",
        "=31+0.16*@1",
        f"=4*ROUND(@8*{stitches}/4,0)",
        f"=ROUND(0.07*@3*{stitches},0)",
        f"=ROUND((22.5+(@3-90)*0.1)*{rows},0)",
        "=@4/2-2-@10",
        "=@7-2-@10",
        "=ROUND((@9-8)*0.35,0)",
        "=(@9-8)/2-@14",
        "=ROUND((@12-@14)/2,0)",
        "=ROUND((@13-@15)/2,0)",
        "=@11-2*@16",
        "=@11-2*@17",
    ]


if __name__ == "__main__":
    main()
