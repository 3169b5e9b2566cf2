from tests.benchmarks.report import filled_in

MEASURED = """## Beside a bare route

| operation | request | in | out | req/s | p50 ms | p99 ms | CPU ms | ratio | core share |
| --- | --- | --- | --- | --- | --- | --- | --- | --- | --- |
| proofs | 1 size | 9 | 100 | 50 | 1.2 | 1.3 | 1.00 | 0.50 | 10% |
| pullovers | 40 sizes | 9 | 1714653 | 50 | 1234.5 | 2345.6 | 20.00 | 0.20 | 90% |

A worker holds 70 MiB.

## Goals

| goal | wanted | reached | met |
| --- | --- | --- | --- |
| pullovers | 0.25 or more | 0.30 | yes |

## What the cost grows with

Processor time.

| operation | ms |
| --- | --- |
| proofs | 2 |

## The worst requests within the limits

| operation | request | as | in | out | status | ms |
| --- | --- | --- | --- | --- | --- | --- |
| charts | large | json | 10 | 20 | 200 | 90 |
| pullovers | many | json | 10 | 20 | 200 | 310 |

| goal | wanted | reached | met |
| --- | --- | --- | --- |
| the worst request | below 0.4 s | 0.31 s | yes |
"""


def filled(name: str, old: str = "old\n") -> str:
    report = f"before\n<!-- measured: {name} -->\n{old}<!-- end -->\nafter\n"
    return filled_in(report, MEASURED)


def test_a_table_takes_the_place_of_the_old_one():
    assert filled("What the cost grows with") == (
        "before\n<!-- measured: What the cost grows with -->\n\n"
        "| operation | ms |\n| --- | --- |\n| proofs | 2 |\n\n<!-- end -->\nafter\n"
    )


def test_filling_in_twice_is_filling_in_once():
    once = filled("What the cost grows with")
    assert filled_in(once, MEASURED) == once


def test_costs_are_those_of_several_sizes_in_short_numbers():
    rows = [line for line in filled("Beside a bare route").splitlines() if line.startswith(("| p", "| g"))]
    assert rows == ["| pullovers, 40 sizes | 1710 KB | 0.20 | 1230, 2350 | 20.00 | 50 | 90% |"]


def test_what_is_told_of_a_worker_stands_by_itself():
    assert "<!-- measured: A worker -->\n\nA worker holds 70 MiB.\n\n<!-- end -->" in filled("A worker")


def test_what_was_not_measured_stays():
    assert "\nold\n" in filled("Memory")


def test_the_goals_of_all_sections_stand_together():
    met = [line for line in filled("Goals").splitlines() if line.endswith("| yes |")]
    assert met == ["| pullovers | 0.25 or more | 0.30 | yes |", "| the worst request | below 0.4 s | 0.31 s | yes |"]


def test_the_longest_of_the_worst_requests_comes_first():
    rows = [line for line in filled("The worst requests within the limits").splitlines() if "| json |" in line]
    assert [row.split(" | ")[-1] for row in rows] == ["310 |", "90 |"]
