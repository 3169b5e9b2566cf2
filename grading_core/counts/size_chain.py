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

from bisect import bisect_left
from collections.abc import Callable, Sequence
from itertools import chain
from operator import itemgetter
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

Differences = tuple[int, int, int, int]
"""Count less target of each measured quantity."""


class Candidate(NamedTuple):
    """One possibility for one size.

    cost: its own. counts: as they may not fall from size to size. differences: count less target of
    each measured quantity. Whole numbers in units of the caller's choice; places that are not needed hold 0.
    """

    cost: int
    counts: Counts
    differences: Differences


Listed = tuple[int, Counts, Differences]
"""A candidate as it lies on a shelf: a plain tuple, since there are thousands of them."""

Shelf = Callable[[int], Sequence[Listed]]
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


_Node = tuple[int, Listed | None, "_Node | None"]
"""The cheapest way to a candidate, or to a stand-in (None): its cost, its end, and the node before it."""

_cost = itemgetter(0)


def shelf_of(candidates: Sequence[Listed]) -> Shelf:
    """The shelf of candidates that are all known.

    candidates: cheapest first.

    >>> [candidate.cost for candidate in shelf_of([Candidate(cost, (4, 0, 0), (0, 0, 0, 0)) for cost in (1, 2, 3)])(2)]
    [1, 2]
    """
    return lambda count: candidates[:count]


def cheapest_chain(
    shelves: Sequence[Shelf], weights: Weights, limits: Sequence[int] | None = None
) -> Chain | Broken | None:
    """One candidate from each shelf, so that the chain costs least; with limits None where no chain keeps to them.

    shelves: one per size, in order. weights: of the steps. limits: what a chain must stay below up to each size; each
    lies below the next one by what no candidate of that costs less than, or by more. Of chains that cost the same, the
    answer is always the same one.

    >>> near = [Candidate(0, (4, 0, 0), (0, 0, 0, 0)), Candidate(9, (5, 0, 0), (3, 0, 0, 0))]
    >>> far = [Candidate(1, (5, 0, 0), (3, 0, 0, 0))]
    >>> chain = cheapest_chain([shelf_of(near), shelf_of(far)], (2, 0, 0, 0))
    >>> chain.cost, [candidate.counts[0] for candidate in chain.candidates]
    (10, [5, 5])
    """
    count, linked = FIRST_SHOWN, False
    while True:
        layers = _layers(shelves, count, weights, limits)
        if layers is None and limits is not None:
            return None
        if layers is not None:
            ways = _walk_back(layers)
            candidates = tuple(Candidate(*candidate) for candidate in ways if candidate is not None)
            if len(candidates) == len(shelves):
                return Chain(layers[-1][0][0] if layers else 0, candidates)
        count = ALL if linked else 2 * count
        if layers is None or (count > MOST_SHOWN_UNLINKED and not linked):
            # a layer is empty only where the chain is broken, so that the loop ends
            links = _linked(shelves)
            if isinstance(links, Broken):
                return links
            shelves, linked = [shelf_of(candidates) for candidates in links], True


def _layers(
    shelves: Sequence[Shelf], count: int, weights: Weights, limits: Sequence[int] | None
) -> list[list[_Node]] | None:
    """The cheapest ways to so many candidates of each size; None where no candidate of some size can be reached."""
    layers: list[list[_Node]] = []
    for size, shelf in enumerate(shelves):
        found = shelf(count + 1)
        left_out = found[count][0] if len(found) > count else None
        nodes = _layer(layers[-1] if layers else None, found[:count], left_out, weights)
        if limits is not None:
            nodes = nodes[: bisect_left(nodes, limits[size], key=_cost)]
        if not nodes:
            return None
        layers.append(nodes)
    return layers


def _linked(shelves: Sequence[Shelf]) -> list[list[Listed]] | Broken:
    """Of each size the candidates that lie on some whole chain, cheapest first, or the sizes that break it."""
    found: list[list[Listed]] = []
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


def _beyond(candidates: Sequence[Listed], edge: Sequence[Counts] | None, sign: int) -> list[Listed]:
    """The candidates none of whose counts falls behind all counts of an edge; all where there is none.

    sign: 1 where they follow on it, -1 where it follows on them.
    """
    if edge is None:
        return [*candidates]
    return [candidate for candidate in candidates if _follows(candidate[1], edge, sign)]


def _nearest(candidates: Sequence[Listed], sign: int) -> list[Counts]:
    """Those counts beyond none of the others: whatever lies beyond any of the candidates lies beyond one of these."""
    edge: list[Counts] = []
    for here in sorted({counts for _, counts, _ in candidates}, reverse=sign < 0):
        if not _follows(here, edge, sign):
            edge.append(here)
    return edge


def _follows(counts: Counts, edge: Sequence[Counts], sign: int) -> bool:
    """Whether from some counts of the edge on none falls, or, for a sign of -1, rises."""
    first, second, third = counts
    if sign > 0:
        for at_first, at_second, at_third in edge:
            if at_first <= first and at_second <= second and at_third <= third:
                return True
        return False
    for at_first, at_second, at_third in edge:
        if at_first >= first and at_second >= second and at_third >= third:
            return True
    return False


def _layer(
    before: list[_Node] | None, candidates: Sequence[Listed], left_out: int | None, weights: Weights
) -> list[_Node]:
    """The cheapest way to every candidate of a size and to its stand-in, cheapest first."""
    if before is None:
        nodes: list[_Node] = [(candidate[0], candidate, None) for candidate in candidates]
        if left_out is not None:
            nodes.append((left_out, None, None))
        return nodes
    first, second, third, fourth = weights
    nodes = []
    for candidate in _by_first_difference(candidates):
        own, (count0, count1, count2), (new0, new1, new2, new3) = candidate
        least, reached, least_step = _NO_CHAIN, None, 0
        for node in before:
            cost, previous, _ = node
            if cost > least:
                break  # steps cost nothing or more
            step = 0
            if previous is not None:
                _, (was0, was1, was2), (old0, old1, old2, old3) = previous
                step = first * (new0 - old0) ** 2
                cost += step
                if cost > least or was0 > count0 or was1 > count1 or was2 > count2:
                    continue
                cost += second * (new1 - old1) ** 2 + third * (new2 - old2) ** 2 + fourth * (new3 - old3) ** 2
            if cost < least or (cost == least and _sooner(before, first, new0, step, than=least_step)):
                least, reached, least_step = cost, node, step
        if reached is not None:
            nodes.append((own + least, candidate, reached))
    if left_out is not None:
        nodes.append((left_out + before[0][0], None, before[0]))
    nodes.sort(key=_cost)
    return nodes


def _by_first_difference(candidates: Sequence[Listed]) -> list[Listed]:
    """Those with the same first difference after one another, the cheapest first: the order among equal costs."""
    found: dict[int, list[Listed]] = {}
    for candidate in candidates:
        found.setdefault(candidate[2][0], []).append(candidate)
    return [*chain.from_iterable(found.values())]


def _sooner(before: Sequence[_Node], weight: int, new: int, step: int, *, than: int) -> bool:
    """Whether ways with one cost of the first step go before those with another that cost the same on the whole.

    Those whose cheapest costs less go first, then those with the smaller step; with the same step they stay in order.
    """

    def cheapest(wanted: int) -> int:
        for cost, candidate, _ in before:
            if wanted == (0 if candidate is None else weight * (new - candidate[2][0]) ** 2):
                return cost + wanted
        raise AssertionError(wanted)

    return step != than and (cheapest(step), step) < (cheapest(than), than)


def _walk_back(layers: Sequence[list[_Node]]) -> list[Listed | None]:
    """The cheapest chain, first size first."""
    chain: list[Listed | None] = []
    node = layers[-1][0] if layers else None
    while node is not None:
        chain.append(node[1])
        node = node[2]
    return chain[::-1]
