"""The tables of random pullovers proofread: as they are, and with a slip of print in one row.

    python -m tests.oracles.proofread_pullovers --count 2000 --seed 1

Each request is posted to the service, and the table of its answer is proofread as values, as runs and as both. As it is
nothing may be found in it. Then one row is made wrong in several ways (see `slips_of_print`), and it is held against
relations that are written down a second time (see `relations_of_print`) whether that can be seen, whether it is found,
and whether the number that is wrong is the one to be corrected.
"""

from __future__ import annotations

import random
import sys
from collections import Counter
from collections.abc import Iterator, Sequence
from dataclasses import dataclass, field
from fractions import Fraction

from flask.testing import FlaskClient

from service.app import create_app
from service.config import Config
from tests.oracles import many_seeds
from tests.oracles.pullover_answer import exact, feasible
from tests.oracles.random_pullovers import random_request
from tests.oracles.relations_of_print import Cell, Known, Printed, Wool, about, broken
from tests.oracles.slips_of_print import FORMS, KINDS, Form, Json, Slip, as_posted, number, rows_in, slip

SLIPS_OF_EACH_KIND = 2
"""In each of the forms."""

COUNTED = (
    "tried",
    "visible",
    "found",
    "consistent",
    "missed",
    "false alarm",
    "blamed",
    "blamed among others",
    "other number",
    "others blamed",
    "nobody blamed",
    "cause",
)
"""What is counted of slips.

visible: it can be seen by a relation. consistent: it can't. missed: it can and isn't found. false alarm: it can't and
something is found. blamed: the corrections are the row, the sizes and the right numbers, and nothing else; among
others: there are more. other number: the row and the sizes are right and a number isn't. others blamed: another number
is to be corrected, and the wrong one isn't. nobody blamed: nothing is. cause: the slip is named; of one digit there is
no name.
"""

CAUSES = {
    "two digits swapped": "digits_swapped",
    "neighbouring size": "neighbouring_size",
    "row shifted": "sizes_shifted",
}


@dataclass
class Seen(many_seeds.Seen):
    """What came of some requests.

    slips: by kind and form, and by what came of it. rows: that were missed, or wronged.
    """

    tables: int = 0
    slips: Counter[tuple[str, str, str]] = field(default_factory=Counter)
    rows: Counter[tuple[str, str]] = field(default_factory=Counter)


def main() -> None:
    """Proofread as many as asked, print what was seen; exit code 1 where anything disagrees."""
    asked = many_seeds.arguments(__doc__, 2000).parse_args()
    seen = Seen()
    many_seeds.knit_seeds(seen, asked, _proofread_seed, _start)
    report(seen)
    sys.exit(bool(seen.disagreements))


def report(seen: Seen) -> None:
    """Print what came of slips by their kind and form, and the rows that gave trouble."""
    print(f"{seen.requests} requests, {seen.tables} tables proofread in {len(FORMS)} forms")
    print(f"{'kind of slip':20} {'form':7}" + "".join(f"{name:>20}" for name in COUNTED))
    for kind in (*KINDS, "all"):
        for form in (*FORMS, "all"):
            counts = [
                sum(
                    times
                    for (one, other, what), times in seen.slips.items()
                    if what == name and kind in (one, "all") and form in (other, "all")
                )
                for name in COUNTED
            ]
            print(f"{kind:20} {form:7}" + "".join(f"{count:20}" for count in counts))
    for what in sorted({what for what, _ in seen.rows}):
        print(f"{what}: {[(row, times) for (one, row), times in seen.rows.most_common() if one == what]}")
    print(f"{len(seen.disagreements)} disagreements: {dict(seen.kinds.most_common())}")


def proofread_request(client: FlaskClient, seed: int) -> Seen:
    """Post one request, proofread its table in every form, and then with slips."""
    seen, generator = Seen(requests=1), random.Random(seed)
    request = random_request(seed)
    for name in ("include", "answer_sizes"):
        request.pop(name, None)
    # a maker's own row gauge is no gauge of the pattern, and its depth is the written one
    request.get("changes", {}).get("yoke", {}).pop("own_rows", None)
    response = client.post("/v1/pullovers", json=request)
    answer = response.json
    assert answer is not None
    assert response.status_code in (200, 422), answer
    # what contradicts itself and what can't be knitted prints no table
    if response.status_code == 422 or not feasible(answer):
        return seen
    table = _Table(client, request, answer)
    seen.tables = 1
    for form in FORMS:
        rows = rows_in(answer["table"], form)
        proof = table.proofread(rows)
        here = f"{form}, seed {seed}"
        seen.disagreements += [("sound", f"{here}: {said}", request) for said in _said(proof)]
        impossible = broken(table.printed(rows), table.known)
        seen.disagreements += [("relation", f"{here}: {each}", request) for each in impossible]
        if impossible or proof["findings"]:
            continue
        for kind in KINDS:
            for _ in range(SLIPS_OF_EACH_KIND):
                slipped = slip(generator, rows, kind)
                if slipped:
                    _judge(seen, table, form, here, *slipped)
    return seen


def _judge(seen: Seen, table: _Table, form: Form, here: str, rows: list[Json], made: Slip) -> None:
    """Count what comes of one slip."""
    proof, row = table.proofread(rows), rows[made.place]
    key = (row["part"], row["item"])
    seen_broken = broken(table.printed(rows), table.known)
    named = any(key == _key(place) for finding in proof["findings"] for place in finding["rows"])
    visible = bool(seen_broken)
    right = {
        (row["part"], row["item"], made.field == "printed_inch", table.labels[size]): value
        for size, value in made.right.items()
    }
    # of what contradicts the number beside it in the same row, the finding itself has what would be right
    corrected = {
        (*_key(place), told.get("unit") == "inch", told["size"]): exact(told["expected"])
        for told, place in (
            *((each, each["rows"][0]) for each in proof["findings"] if each["code"] == "printed_differs"),
            *((each, each["row"]) for each in proof["corrections"]),
        )
        if told.get("expected") is not None
    }
    step = table.step_of(made.field)
    met = {place for place, value in right.items() if place in corrected and abs(corrected[place] - value) <= step}
    cause = CAUSES.get(made.kind)
    causes = {each.get("likely_cause") for each in (*proof["corrections"], *proof["findings"])}
    what = {
        "tried": True,
        "visible": visible,
        "found": named,
        "consistent": not visible,
        "missed": visible and not named,
        "false alarm": not visible and bool(proof["findings"]),
        "blamed": met == right.keys() == corrected.keys(),
        "blamed among others": met == right.keys() and corrected.keys() > right.keys(),
        "other number": met != right.keys() and right.keys() <= corrected.keys(),
        "nobody blamed": named and not corrected,
        "others blamed": bool(corrected.keys() - right.keys()) and not corrected.keys() & right.keys(),
        "cause": named and cause is not None and cause in causes,
    }
    for name, counts in what.items():
        seen.slips[made.kind, form, name] += counts
    told = f"{here}, {made.kind} of {key} {made.field}: {made.right} became {row[made.field]}"
    for name in ("missed", "false alarm", "others blamed", "other number", "nobody blamed"):
        if what[name]:
            seen.rows[name, ".".join(key)] += 1
    if what["missed"]:
        seen.disagreements.append(("missed", f"{told}: {seen_broken[:2]}", {}))
    if what["false alarm"]:
        seen.disagreements.append(("false alarm", f"{told}: {list(_said(proof))[:2]}", {}))


def _said(proof: Json) -> Iterator[str]:
    for finding in proof["findings"]:
        yield ", ".join(str(finding.get(name)) for name in ("code", "size", "rows", "printed", "expected"))


def _key(row: Json) -> tuple[str, str]:
    return row["part"], row["item"]


class _Table:
    """What is known of a pullover's table.

    request: of the pullover. answer: to it.
    """

    def __init__(self, client: FlaskClient, request: Json, answer: Json) -> None:
        self._client = client
        self.labels: list[str] = answer["labels"]
        self._settings = request.get("print", {})
        self._missing = self._settings.get("missing", "\u2013")
        size = feasible(answer)[0]
        changes = request.get("changes", {})
        own = changes if not changes.get("keep_counts") and changes.keys() & {"gauge", "gauges"} else request
        gauges = own.get("gauges") or {"plain": own["gauge"]}
        unit_cm = Fraction(254, 100) if request.get("unit") == "in" else Fraction(1)
        fabrics = {
            name: _gauge(gauge, unit_cm) for name, gauge in gauges.items() if name != "stranded" or "chart" in request
        }
        line = size["neck"]["line_stitches"]
        # a maker's shallower yoke may have its increases closer
        step = 1 if "yoke" in changes else request.get("yoke", {}).get("step", 2)
        rules = {name: rule for name, rule in _rules(request, changes) if rule}
        chart = request.get("chart")
        anchors = {name: exact(column) for name, column in size["neck"].get("anchor", {}).items()} if chart else {}
        wool = {name: Wool(*_per_cm(each)) for name, each in fabrics.items()}
        self.known = Known(
            plain=wool["plain"],
            stranded=wool.get("stranded"),
            rib=wool.get("rib", wool["plain"]),
            line_stitches=line,
            step=step,
            rules=rules,
            anchors=anchors,
            inches=request.get("inch_convention", "exact"),
        )
        self._request = {
            "labels": self.labels,
            "gauges": fabrics,
            "step": step,
            "count_rules": {name: dict(zip(("multiple", "plus"), rule, strict=True)) for name, rule in rules.items()},
        }
        if len(self.labels) % 3:
            self._request["line_stitches"] = line
        if chart:
            self._request["chart"] = chart["chart"]
            if "anchor" in chart:
                self._request["anchor"] = chart["anchor"]

    def proofread(self, rows: Sequence[Json]) -> Json:
        """What is found in rows."""
        response = self._client.post("/v1/proofs", json=self._request | {"rows": as_posted(rows, self._missing)})
        assert response.json is not None
        assert response.status_code == 200, response.json
        return response.json

    def step_of(self, name: str) -> Fraction:
        """To what the numbers of a field are rounded where they are lengths."""
        return {
            "values": Fraction(1, 100),
            "printed": exact(self._settings.get("cm_step", 0.5)),
            "printed_inch": exact(self._settings.get("inch_step", 0.25)),
        }[name]

    def printed(self, rows: Sequence[Json]) -> Printed:
        """The rows as what they say in each size."""
        told: dict[tuple[str, str], list[Cell | None]] = {}
        for row in rows:
            steps = _steps(row["unit"], self)
            if row["unit"] == "cm" and "printed" in row and "values" not in row:
                steps["printed"] = _evident(row["printed"], steps["printed"])
            step_inch = self.step_of("printed_inch")
            if "printed_inch" in row:
                step_inch = _evident(row["printed_inch"], step_inch)
            cells: list[Cell | None] = []
            for size in range(len(self.labels)):
                here = [
                    about(value, steps[name])
                    for name in ("values", "printed")
                    if name in row and (value := number(row[name][size])) is not None
                ]
                inches = number(row["printed_inch"][size]) if "printed_inch" in row else None
                span = None if inches is None else about(inches, step_inch)
                cells.append(Cell(tuple(here), span) if here else None)
            told[row["part"], row["item"]] = cells
        return told


def _evident(cells: Sequence[str], step: Fraction) -> Fraction:
    """The step that a row shows: of three numbers or more that are all whole, or halves, nobody sees a finer one."""
    told = {value for cell in cells if (value := number(cell)) is not None}
    shown = (each for each in (Fraction(1), Fraction(1, 2)) if all(value % each == 0 for value in told))
    return max(step, next(shown, step)) if len(told) >= 3 else step


def _steps(unit: str, table: _Table) -> dict[str, Fraction]:
    if unit == "cm":
        return {name: table.step_of(name) for name in ("values", "printed")}
    if unit in ("grams", "metres", "yards"):
        return {"values": Fraction(1, 10), "printed": Fraction(1)}
    return {"values": Fraction(0), "printed": Fraction(0)}


def _gauge(sent: Json, unit_cm: Fraction) -> Json:
    """A gauge of a request as one in cm."""
    over = exact(sent.get("over", 10 if unit_cm == 1 else 4)) * unit_cm
    gauge = {"stitches": sent["stitches"], "rows": sent["rows"], "over": float(over)}
    return gauge | ({"rows_over": float(exact(sent["rows_over"]) * unit_cm)} if "rows_over" in sent else {})


def _per_cm(gauge: Json) -> tuple[Fraction, Fraction]:
    over = exact(gauge["over"])
    return exact(gauge["stitches"]) / over, exact(gauge["rows"]) / exact(gauge.get("rows_over", gauge["over"]))


def _rules(request: Json, changes: Json) -> Iterator[tuple[str, tuple[int, int] | None]]:
    """The multiples that the parts land on, and what is added to them; None where nothing is said."""
    yield "cast_on", _rule(request.get("neck", {}))
    for part, edge in (("body", "hem"), ("sleeve", "cuff")):
        yield part, _rule(request.get(part, {}))
        yield edge, _rule(request.get(part, {}).get(edge, {}))
    changed = {} if changes.get("keep_counts") else changes.get("band", {})
    designed = request.get("band", {})
    if "count_rule" in changed:
        # what isn't sent stays as designed
        changed = changed | {"count_rule": designed.get("count_rule", {}) | changed["count_rule"]}
    yield "band", _rule(changed) or _rule(designed)


def _rule(part: Json) -> tuple[int, int] | None:
    if "count_rule" in part:
        return part["count_rule"]["multiple"], part["count_rule"].get("plus", 0)
    return (sum(part["rib"].values()), 0) if "rib" in part else None


_client: list[FlaskClient] = []


def _start() -> None:
    _client.append(create_app(Config()).test_client())


def _proofread_seed(seed: int) -> Seen:
    return proofread_request(_client[0], seed)


if __name__ == "__main__":
    main()
