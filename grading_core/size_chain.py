"""The cheapest chain of candidates over all sizes, none of whose counts falls from size to size.

    cost = sum over the sizes of the candidate's own cost
         + sum over neighbouring sizes of weight x (change of the difference) squared

A candidate's differences are its counts less their targets, so that the second sum measures how far each
step of a run is from the step of its targets.

The optimum is exact. It is found by a dynamic programme over the sizes, whose states are the
cheapest candidates of each size. All candidates of a size that are left out share one stand-in, which costs
as much as the cheapest of them and nothing towards its neighbours. So no chain of candidates is cheaper
than the cheapest chain of candidates and stand-ins, and where that one holds no stand-in it is the
optimum. Where it holds some, those sizes show more of their candidates and the programme runs again.
"""

from __future__ import annotations

from collections.abc import Callable, Sequence
from typing import NamedTuple

FIRST_SHOWN = 24
"""Candidates of a size that are looked at first; twice as many each time that they don't suffice."""

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


def cheapest_chain(shelves: Sequence[Shelf], weights: Weights) -> Chain | Broken:
    """One candidate from each shelf, so that the chain costs least.

    shelves: one per size, in order. weights: of the steps. Of chains that cost the same, the
    answer is always the same one.

    >>> near = [Candidate(0, (4, 0, 0), (0, 0, 0, 0)), Candidate(9, (5, 0, 0), (3, 0, 0, 0))]
    >>> far = [Candidate(1, (5, 0, 0), (3, 0, 0, 0))]
    >>> chain = cheapest_chain([lambda count: near[:count], lambda count: far[:count]], (2, 0, 0, 0))
    >>> chain.cost, [candidate.counts[0] for candidate in chain.candidates]
    (10, [5, 5])
    """
    shown = [_show(shelf, FIRST_SHOWN) for shelf in shelves]
    layers: list[list[_Node]] = []
    while True:
        for candidates, left_out in shown[len(layers) :]:
            layers.append(_layer(layers[-1] if layers else None, candidates, left_out, weights))
            if not layers[-1]:
                return Broken(len(layers) - 1)
        chain = _walk_back(layers)
        stand_ins = [size for size, candidate in enumerate(chain) if candidate is None]
        if not stand_ins:
            cost = layers[-1][0].cost if layers else 0
            return Chain(cost, tuple(candidate for candidate in chain if candidate is not None))
        for size in stand_ins:
            shown[size] = _show(shelves[size], 2 * len(shown[size][0]))
        del layers[stand_ins[0] :]


def _show(shelf: Shelf, count: int) -> tuple[Sequence[Candidate], int | None]:
    """So many candidates, and what the cheapest one left out costs."""
    found = shelf(count + 1)
    return found[:count], found[count].cost if len(found) > count else None


def _layer(
    before: list[_Node] | None, candidates: Sequence[Candidate], left_out: int | None, weights: Weights
) -> list[_Node]:
    """The cheapest way to every candidate of a size and to its stand-in, cheapest first."""
    first, second, third, fourth = weights
    nodes: list[_Node] = []
    if before is None:
        nodes = [_Node(candidate.cost, candidate, None) for candidate in candidates]
        if left_out is not None:
            nodes.append(_Node(left_out, None, None))
        return nodes
    for candidate in candidates:
        own, (count0, count1, count2), (new0, new1, new2, new3) = candidate
        least, reached = _NO_CHAIN, None
        for node in before:
            cost, previous, _ = node
            if cost >= least:
                break  # steps cost nothing or more, and the nodes are in order
            if previous is not None:
                _, (was0, was1, was2), (old0, old1, old2, old3) = previous
                if was0 > count0 or was1 > count1 or was2 > count2:
                    continue
                cost += (
                    first * (new0 - old0) ** 2
                    + second * (new1 - old1) ** 2
                    + third * (new2 - old2) ** 2
                    + fourth * (new3 - old3) ** 2
                )
                if cost >= least:
                    continue
            least, reached = cost, node
        if reached is not None:
            nodes.append(_Node(own + least, candidate, reached))
    if left_out is not None:
        nodes.append(_Node(left_out + before[0].cost, None, before[0]))
    nodes.sort(key=_cost)
    return nodes


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
