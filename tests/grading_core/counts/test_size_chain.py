"""The cheapest chain over the sizes, against trying every chain there is."""

from __future__ import annotations

from itertools import pairwise, product

from hypothesis import assume, given
from hypothesis import strategies as st

from grading_core.counts import size_chain
from grading_core.counts.size_chain import Broken, Candidate, Chain, cheapest_chain
from tests.floors import in_a_hundred_cases

small = st.integers(-3, 3)
candidates = st.builds(
    Candidate,
    st.integers(0, 20),
    st.tuples(st.integers(0, 2), st.integers(0, 2), st.integers(0, 2)),
    st.tuples(small, small, small, small),
)
sizes = st.lists(st.lists(candidates, max_size=5).map(sorted), min_size=1, max_size=4)
weights = st.tuples(*[st.integers(0, 3)] * 4)


def shelf(listed):
    return lambda count: listed[:count]


def every_chain(listed, weights):
    """The costs of all chains in which no count falls, by trying each."""
    for chain in product(*listed):
        if all(a <= b for low, high in pairwise(chain) for a, b in zip(low.counts, high.counts, strict=True)):
            steps = [
                weight * (b - a) ** 2
                for low, high in pairwise(chain)
                for weight, a, b in zip(weights, low.differences, high.differences, strict=True)
            ]
            yield sum(candidate.cost for candidate in chain) + sum(steps)


@given(sizes, weights, st.integers(1, 6), st.integers(1, 12))
def test_no_chain_costs_less(listed, weights, shown, linked_above):
    usual = size_chain.FIRST_SHOWN, size_chain.MOST_SHOWN_UNLINKED
    size_chain.FIRST_SHOWN, size_chain.MOST_SHOWN_UNLINKED = shown, linked_above
    try:
        chain = cheapest_chain([shelf(each) for each in listed], weights)
    finally:
        size_chain.FIRST_SHOWN, size_chain.MOST_SHOWN_UNLINKED = usual
    least = min(every_chain(listed, weights), default=None)
    assert (chain.cost if isinstance(chain, Chain) else None) == least


@in_a_hundred_cases(40)
@given(sizes, weights, st.integers(0, 60))
def test_below_a_limit_there_is_the_same_chain_or_none(listed, weights, limit):
    shelves = [shelf(each) for each in listed]
    chain = cheapest_chain(shelves, weights)
    assume(isinstance(chain, Chain))
    least = [each[0].cost for each in listed]
    limits = [limit - sum(least[size + 1 :]) for size in range(len(least))]
    assert cheapest_chain(shelves, weights, limits) == (chain if chain.cost < limit else None)


@given(sizes, weights, st.integers(0, 60))
def test_no_broken_chain_keeps_to_limits(listed, weights, limit):
    shelves = [shelf(each) for each in listed]
    assume(isinstance(cheapest_chain(shelves, weights), Broken))
    assert cheapest_chain(shelves, weights, [limit] * len(listed)) is None


@in_a_hundred_cases(40)
@given(sizes, weights)
def test_the_chain_costs_what_it_says(listed, weights):
    chain = cheapest_chain([shelf(each) for each in listed], weights)
    assume(isinstance(chain, Chain))
    assert [chain.cost] == list(every_chain([[each] for each in chain.candidates], weights))


@given(sizes, weights)
def test_a_broken_chain_names_the_sizes_without_which_it_is_whole_the_first_that_cannot_be_reached_first(
    listed, weights
):
    chain = cheapest_chain([shelf(each) for each in listed], weights)
    broken, kept = [], []
    for size, candidates in enumerate(listed):
        if any(True for _ in every_chain([*kept, candidates], weights)):
            kept.append(candidates)
        else:
            broken.append(size)
    assert (chain.sizes if isinstance(chain, Broken) else ()) == tuple(broken)


def test_of_two_chains_that_cost_the_same_the_one_whose_first_difference_changes_less_is_taken():
    # 1 and a step of 2 x 1, or 3 and none
    stepping, level = Candidate(1, (0, 0, 0), (1, 0, 0, 0)), Candidate(3, (1, 0, 0), (0, 0, 0, 0))
    next_size = Candidate(0, (2, 0, 0), (0, 0, 0, 0))
    chain = cheapest_chain([shelf([stepping, level]), shelf([next_size])], (2, 0, 0, 0))
    assert chain == Chain(3, (level, next_size))


def test_no_size_makes_an_empty_chain():
    assert cheapest_chain([], (1, 1, 1, 1)) == Chain(0, ())
