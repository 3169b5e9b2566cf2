"""The best increase schedule of a yoke by a constraint solver (OR-Tools CP-SAT), and by brute force.

What is best: the fewest doubled rounds, then the fewest increase rounds, then, with the first one on the
grid's first round and at most two neighbouring intervals of the grid between them, the latest last one.
"""

from collections import defaultdict
from dataclasses import dataclass
from itertools import pairwise, product

from ortools.sat.python import cp_model


@dataclass(frozen=True)
class Best:
    """doubled: rounds with two increases at a body edge. used: increase rounds. last: the place on the grid,
    from 0, of the last one (-1 where there is none)."""

    doubled: int
    used: int
    last: int


def best_by_solver(places: int, increases: tuple[int, int, int], doubling: bool, single: bool) -> Best | None:
    """The best schedule on so many places of the grid, None where there is none.

    increases: at each back, front and sleeve edge. single: one interval only instead of two neighbouring ones.
    """
    counts = _counts_by_solver(places, increases, doubling)
    if counts is None:
        return None
    doubled, used = counts
    return Best(doubled, used, _last_by_solver(places, used, single))


def _counts_by_solver(places: int, increases: tuple[int, int, int], doubling: bool) -> tuple[int, int] | None:
    model = cp_model.CpModel()
    most = (2, 2, 1) if doubling else (1, 1, 1)
    used = [model.new_bool_var(f"used {place}") for place in range(places)]
    twice = [model.new_bool_var(f"twice {place}") for place in range(places)]
    for edge, total in enumerate(increases):
        worked = [model.new_int_var(0, most[edge], f"edge {edge} in {place}") for place in range(places)]
        model.add(sum(worked) == total)
        for place in range(places):
            # a used round allows one increase at this edge, a doubled one a second
            model.add(worked[place] <= used[place] + twice[place])
            model.add(twice[place] <= used[place])
    for variables in (used, twice):
        for before, after in pairwise(variables):
            # counts don't depend on which places are taken, so the first ones may be
            model.add(before >= after)
    model.minimize((places + 1) * sum(twice) + sum(used))
    solver = _solver()
    if solver.solve(model) != cp_model.OPTIMAL:
        return None
    return sum(solver.value(v) for v in twice), sum(solver.value(v) for v in used)


def _last_by_solver(places: int, used: int, single: bool) -> int:
    if used < 2:
        return used - 1
    model = cp_model.CpModel()
    at = [model.new_int_var(0, places - 1, f"at {index}") for index in range(used)]
    interval = model.new_int_var(1, places, "interval")
    model.add(at[0] == 0)
    for before, after in pairwise(at):
        model.add(after - before >= interval)
        model.add(after - before <= interval + (0 if single else 1))
    model.maximize(at[-1])
    solver = _solver()
    status = solver.solve(model)
    assert status == cp_model.OPTIMAL
    return solver.value(at[-1])


def _solver() -> cp_model.CpSolver:
    solver = cp_model.CpSolver()
    solver.parameters.num_workers = 1
    solver.parameters.random_seed = 1
    return solver


def best_counts_by_brute_force(places: int, doubling: bool) -> dict[tuple[int, int, int], tuple[int, int]]:
    """For all increases that can be worked on so many places: the fewest (doubled rounds, increase rounds).

    Every filling of the places is tried.
    """
    body = range(3 if doubling else 2)
    kinds = list(product(body, body, range(2)))
    best: dict[tuple[int, int, int], tuple[int, int]] = defaultdict(lambda: (places + 1, places + 1))
    for filling in product(kinds, repeat=places):
        totals = tuple(sum(kind[edge] for kind in filling) for edge in range(3))
        doubled = sum(2 in kind for kind in filling)
        used = sum(any(kind) for kind in filling)
        best[totals] = min(best[totals], (doubled, used))
    return dict(best)
