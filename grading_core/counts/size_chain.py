"""The cheapest chain of candidates over all sizes, none of whose counts falls from size to size.

    cost = sum over the sizes of the candidate's own cost
         + sum over neighbouring sizes of weight x (change of the difference) squared

A candidate's differences are its counts less their targets, so that the second sum measures how far each
step of a run is from the step of its targets.

The optimum is exact. It is found by a dynamic programme over the sizes, whose states are the
cheapest candidates of each size. All candidates of a size that are left out share one stand-in, which costs
as much as the cheapest of them and nothing towards its neighbours. So no chain of candidates is cheaper
than the cheapest chain of candidates and stand-ins, and where that one holds no stand-in it is the
optimum. Where it holds some, every size shows twice as many candidates and the programme runs again.
"""

from __future__ import annotations

from collections.abc import Callable, Sequence
from typing import NamedTuple

FIRST_SHOWN = 6
"""Candidates of each size that are looked at first."""

_NO_CHAIN = 1 << 80


class Candidate(NamedTuple):
    """One possibility for one size.

    cost: its own. counts: what may not fall from size to size. differences: count less target of
    each measured quantity. Whole numbers in units of the caller's choice; places that are not needed hold 0.
    """

    cost: int
    counts: tuple[int, int, int]
    differences: tuple[int, int, int, int]


Shelf = Callable[[int], Sequence[Candidate]]
"""Asked for so many candidates, a shelf gives the cheapest ones in order, or all where there are fewer."""

Weights = tuple[int, int, int, int]
"""What a squared change of each difference costs."""


class Chain(NamedTuple):
    """The optimum: its cost with all steps, and the candidate of each size."""

    cost: int
    candidates: tuple[Candidate, ...]


class Broken(NamedTuple):
    """There is no chain: no candidate of this size follows on any chain of the sizes before it."""

    size: int


class _Node(NamedTuple):
    """The cheapest way to a candidate, or to a stand-in (None)."""

    cost: int
    candidate: Candidate | None
    before: _Node | None


def cheapest_chain(shelves: Sequence[Shelf], weights: Weights, limit: int | None = None) -> Chain | Broken | None:
    """One candidate from each shelf, so that the chain costs least; None where none costs less than the limit.

    shelves: one per size, in order. weights: of the steps. limit: what a chain must stay below. Of chains that cost
    the same, the answer is always the same one.

    >>> near = [Candidate(0, (4, 0, 0), (0, 0, 0, 0)), Candidate(9, (5, 0, 0), (3, 0, 0, 0))]
    >>> far = [Candidate(1, (5, 0, 0), (3, 0, 0, 0))]
    >>> chain = cheapest_chain([lambda count: near[:count], lambda count: far[:count]], (2, 0, 0, 0))
    >>> chain.cost, [candidate.counts[0] for candidate in chain.candidates]
    (10, [5, 5])
    """
    count = FIRST_SHOWN
    while True:
        layers: list[list[_Node]] = []
        for shelf in shelves:
            found = shelf(count + 1)
            left_out = found[count].cost if len(found) > count else None
            layers.append(_layer(layers[-1] if layers else None, found[:count], left_out, weights))
            if not layers[-1]:
                return Broken(len(layers) - 1)
        cost = layers[-1][0].cost if layers else 0
        if limit is not None and cost >= limit:
            return None
        chain = _walk_back(layers)
        candidates = tuple(candidate for candidate in chain if candidate is not None)
        if len(candidates) == len(shelves):
            return Chain(cost, candidates)
        count *= 2


def _layer(
    before: list[_Node] | None, candidates: Sequence[Candidate], left_out: int | None, weights: Weights
) -> list[_Node]:
    """The cheapest way to every candidate of a size and to its stand-in, cheapest first."""
    if before is None:
        nodes = [_Node(candidate.cost, candidate, None) for candidate in candidates]
        if left_out is not None:
            nodes.append(_Node(left_out, None, None))
        return nodes
    _, second, third, fourth = weights
    nodes = []
    for new0, alike in _by_first_difference(candidates).items():
        groups = _groups(before, new0, weights)
        for candidate in alike:
            own, (count0, count1, count2), (_, new1, new2, new3) = candidate
            least, reached = _NO_CHAIN, None
            for least_in_group, first_step, group in groups:
                if least_in_group >= least:
                    break
                for node in group:
                    cost = node[0] + first_step
                    if cost >= least:
                        break  # further steps cost nothing or more, and the nodes are in order
                    previous = node[1]
                    if previous is not None:
                        _, (was0, was1, was2), (_, old1, old2, old3) = previous
                        if was0 > count0 or was1 > count1 or was2 > count2:
                            continue
                        cost += second * (new1 - old1) ** 2 + third * (new2 - old2) ** 2 + fourth * (new3 - old3) ** 2
                        if cost >= least:
                            continue
                    least, reached = cost, node
            if reached is not None:
                nodes.append(_Node(own + least, candidate, reached))
    if left_out is not None:
        nodes.append(_Node(left_out + before[0].cost, None, before[0]))
    nodes.sort(key=_cost)
    return nodes


def _by_first_difference(candidates: Sequence[Candidate]) -> dict[int, list[Candidate]]:
    found: dict[int, list[Candidate]] = {}
    for candidate in candidates:
        found.setdefault(candidate.differences[0], []).append(candidate)
    return found


def _groups(before: Sequence[_Node], new: int, weights: Weights) -> list[tuple[int, int, list[_Node]]]:
    """The nodes grouped by what the step of their first difference costs: least cost with it, step, nodes in order.

    Where a rule is coarse that step is what tells, and whole groups are soon out of the question.
    """
    found: dict[int, list[_Node]] = {}
    for node in before:
        step = 0 if node.candidate is None else weights[0] * (new - node.candidate.differences[0]) ** 2
        found.setdefault(step, []).append(node)
    return sorted(((nodes[0].cost + step, step, nodes) for step, nodes in found.items()), key=_cost_of_group)


def _cost_of_group(group: tuple[int, int, list[_Node]]) -> tuple[int, int]:
    return group[:2]


def _cost(node: _Node) -> int:
    return node.cost


def _walk_back(layers: Sequence[list[_Node]]) -> list[Candidate | None]:
    """The cheapest chain, first size first."""
    chain: list[Candidate | None] = []
    node = layers[-1][0] if layers else None
    while node is not None:
        chain.append(node.candidate)
        node = node.before
    return chain[::-1]
