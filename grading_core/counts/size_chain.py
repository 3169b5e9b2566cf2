"""The cheapest chain of candidates over all sizes, none of whose counts falls from size to size.

    cost = sum over the sizes of the candidate's own cost
         + sum over neighbouring sizes of weight x (change of the difference) squared

A candidate's differences are its counts less their targets, so that the second sum measures how far each
step of a run is from the step of its targets.

The optimum is exact. It is found by a dynamic programme over the sizes, whose states are the
cheapest candidates of each size. All candidates of a size that are left out share one stand-in, which costs
as much as the cheapest of them and nothing towards its neighbours. So no chain of candidates is cheaper
than the cheapest chain of candidates and stand-ins, and where that one holds no stand-in it is the
optimum. Where it holds some, every size shows twice as many candidates and the programme runs again,
before long only those that lie on some chain of all sizes, and then all of these.
"""

from __future__ import annotations

from collections.abc import Callable, Sequence
from typing import NamedTuple

FIRST_SHOWN = 6
"""Candidates of each size that are looked at first."""

MOST_SHOWN_UNLINKED = 24
"""Where more are needed, those that lie on no chain are sorted out first."""

ALL = 4_096
"""More candidates than the counts of any size have; of a shelf without end so many are looked at at most."""

_NO_CHAIN = 1 << 80


Counts = tuple[int, int, int]
"""What may not fall from size to size."""


class Candidate(NamedTuple):
    """One possibility for one size.

    cost: its own. counts: as they may not fall from size to size. differences: count less target of
    each measured quantity. Whole numbers in units of the caller's choice; places that are not needed hold 0.
    """

    cost: int
    counts: Counts
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
    """There is no chain: no candidate of these sizes follows on any chain of those before it that are none of these."""

    sizes: tuple[int, ...]


class _Node(NamedTuple):
    """The cheapest way to a candidate, or to a stand-in (None)."""

    cost: int
    candidate: Candidate | None
    before: _Node | None


def shelf_of(candidates: Sequence[Candidate]) -> Shelf:
    """The shelf of candidates that are all known.

    candidates: cheapest first.

    >>> [candidate.cost for candidate in shelf_of([Candidate(cost, (4, 0, 0), (0, 0, 0, 0)) for cost in (1, 2, 3)])(2)]
    [1, 2]
    """
    return lambda count: candidates[:count]


def cheapest_chain(shelves: Sequence[Shelf], weights: Weights, limit: int | None = None) -> Chain | Broken | None:
    """One candidate from each shelf, so that the chain costs least; None where none costs less than the limit.

    shelves: one per size, in order. weights: of the steps. limit: what a chain must stay below. Of chains that cost
    the same, the answer is always the same one.

    >>> near = [Candidate(0, (4, 0, 0), (0, 0, 0, 0)), Candidate(9, (5, 0, 0), (3, 0, 0, 0))]
    >>> far = [Candidate(1, (5, 0, 0), (3, 0, 0, 0))]
    >>> chain = cheapest_chain([shelf_of(near), shelf_of(far)], (2, 0, 0, 0))
    >>> chain.cost, [candidate.counts[0] for candidate in chain.candidates]
    (10, [5, 5])
    """
    count, linked = FIRST_SHOWN, False
    while True:
        layers = _layers(shelves, count, weights)
        if layers is not None:
            cost = layers[-1][0].cost if layers else 0
            if limit is not None and cost >= limit:
                return None
            chain = _walk_back(layers)
            candidates = tuple(candidate for candidate in chain if candidate is not None)
            if len(candidates) == len(shelves):
                return Chain(cost, candidates)
        count = ALL if linked else 2 * count
        if layers is None or (count > MOST_SHOWN_UNLINKED and not linked):
            # a layer is empty only where the chain is broken, so that the loop ends
            links = _linked(shelves)
            if isinstance(links, Broken):
                return links
            shelves, linked = [shelf_of(candidates) for candidates in links], True


def _layers(shelves: Sequence[Shelf], count: int, weights: Weights) -> list[list[_Node]] | None:
    """The cheapest ways to so many candidates of each size; None where no candidate of some size can be reached."""
    layers: list[list[_Node]] = []
    for shelf in shelves:
        found = shelf(count + 1)
        left_out = found[count].cost if len(found) > count else None
        layers.append(_layer(layers[-1] if layers else None, found[:count], left_out, weights))
        if not layers[-1]:
            return None
    return layers


def _linked(shelves: Sequence[Shelf]) -> list[list[Candidate]] | Broken:
    """Of each size the candidates that lie on some whole chain, cheapest first, or the sizes that break it."""
    found: list[list[Candidate]] = []
    broken: list[int] = []
    least: list[Counts] | None = None
    for size, shelf in enumerate(shelves):
        reached = _beyond(shelf(ALL), least, 1)
        if reached:
            found.append(reached)
            least = _nearest(reached, 1)
        else:
            broken.append(size)
    if broken:
        return Broken(tuple(broken))
    most: list[Counts] | None = None
    for size in reversed(range(len(found))):
        found[size] = _beyond(found[size], most, -1)
        most = _nearest(found[size], -1)
    return found


def _beyond(candidates: Sequence[Candidate], edge: Sequence[Counts] | None, sign: int) -> list[Candidate]:
    """The candidates none of whose counts falls behind all counts of an edge; all where there is none.

    sign: 1 where they follow on it, -1 where it follows on them.
    """
    if edge is None:
        return [*candidates]
    counts = {candidate.counts for candidate in candidates}
    beyond = {here for here in counts if any(_follows(here, before, sign) for before in edge)}
    return [candidate for candidate in candidates if candidate.counts in beyond]


def _nearest(candidates: Sequence[Candidate], sign: int) -> list[Counts]:
    """Those counts beyond none of the others: whatever lies beyond any of the candidates lies beyond one of these."""
    edge: list[Counts] = []
    for here in sorted({candidate.counts for candidate in candidates}, reverse=sign < 0):
        if not any(_follows(here, before, sign) for before in edge):
            edge.append(here)
    return edge


def _follows(counts: Counts, before: Counts, sign: int) -> bool:
    """Whether none of the counts falls, or, for a sign of -1, rises."""
    if sign < 0:
        counts, before = before, counts
    return counts[0] >= before[0] and counts[1] >= before[1] and counts[2] >= before[2]


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
