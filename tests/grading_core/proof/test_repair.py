"""The smallest sets of numbers whose change mends all, against every set and every value."""

from collections.abc import Mapping, Sequence
from itertools import combinations, product

from hypothesis import assume, given, settings
from hypothesis import strategies as st

from grading_core.codes import ProofCode
from grading_core.proof.figures import GRAINS, Figure, Key, grains
from grading_core.proof.garment import cast_on_relations, sum_relations
from grading_core.proof.relations import Linear, computable, linear
from grading_core.proof.repair import MOST_CHANGED, Changes, Trials, smallest_changes
from tests.grading_core.proof.hand_garment import GARMENT

CODE = ProofCode.BODY_FROM_SPLIT
KEYS = tuple(Key("part", item) for item in "abcd")
COUNTS = range(30)

Sum = tuple[Mapping[int, int], int]
"""How often each of four counts stands in a sum, and what it comes to."""


def figures(counts: Sequence[int]) -> dict[Key, Figure]:
    return {key: Figure(count * GRAINS) for key, count in zip(KEYS, counts, strict=True)}


def relation(times: Mapping[int, int], total: int) -> Linear:
    return linear(CODE, *((KEYS[at], often) for at, often in times.items()), least=total, most=total)


def holds(counts: Sequence[int], sums: Sequence[Sum]) -> bool:
    return all(sum(often * counts[at] for at, often in times.items()) == total for times, total in sums)


def mending(counts: Sequence[int], sums: Sequence[Sum], many: int) -> set[tuple[int, ...]]:
    """Every set of so many counts of which some other values make all sums right, by trying all."""
    found = set()
    for places in combinations(range(len(counts)), many):
        for values in product(COUNTS, repeat=many):
            tried = list(counts)
            for place, value in zip(places, values, strict=True):
                tried[place] = value
            if holds(tried, sums):
                found.add(places)
                break
    return found


def places(changes: Changes) -> tuple[int, ...]:
    return tuple(sorted(KEYS.index(key) for key in changes))


@st.composite
def patterns(draw: st.DrawFn) -> tuple[list[int], list[Sum]]:
    """Sums that some counts make, and the counts with one or two of them otherwise."""
    right = draw(st.lists(st.integers(0, 6), min_size=4, max_size=4))
    sums = []
    for _ in range(draw(st.integers(1, 3))):
        members = draw(st.lists(st.sampled_from(range(4)), min_size=2, max_size=3, unique=True))
        times = {at: draw(st.sampled_from((-2, -1, 1, 1))) for at in members}
        sums.append((times, sum(often * right[at] for at, often in times.items())))
    for place in draw(st.lists(st.sampled_from(range(4)), min_size=1, max_size=2, unique=True)):
        right[place] = draw(st.integers(0, 9))
    return right, sums


@settings(max_examples=150)
@given(patterns())
def test_the_numbers_that_alone_would_mend_all_are_those_of_a_brute_force(pattern: tuple[list[int], list[Sum]]) -> None:
    counts, sums = pattern
    assume(not holds(counts, sums))
    alone = mending(counts, sums, 1)
    found = smallest_changes(figures(counts), [relation(*each) for each in sums], frozenset(KEYS), Trials())
    assert {places(changes) for changes in found if len(changes) == 1} == alone
    assert all(len(changes) == (1 if alone else len(found[0])) for changes in found)


@settings(max_examples=150)
@given(patterns())
def test_what_is_found_mends_all_and_is_two_counts_only_where_no_one_would_do(
    pattern: tuple[list[int], list[Sum]],
) -> None:
    counts, sums = pattern
    printed, relations = figures(counts), [relation(*each) for each in sums]
    found = smallest_changes(printed, relations, frozenset(KEYS), Trials())
    for changes in found:
        assert all(each.holds({**printed, **changes}) for each in relations)
        assert all(figure.printed >= 0 and figure.printed % GRAINS == 0 for figure in changes.values())
    if found and len(found[0]) == 2:
        assert not holds(counts, sums)
        assert not mending(counts, sums, 1)


CLOSING = {
    Key(*name.split(".")): Figure(grains(values[1] or 0))
    for name, values in GARMENT.items()
    if name.partition(".")[0] in ("neck", "split", "body", "sleeve") and not name.endswith("rounds")
} | {
    Key("yoke", f"{section}_increases"): Figure(grains(count))
    for section, count in (("back", 20), ("front", 20), ("sleeve", 17))
}
RELATIONS = computable([*sum_relations(2), *cast_on_relations(CLOSING, {})], CLOSING)
TOLD = sorted(CLOSING.keys() - {Key("neck", "short_rows"), Key("neck", "cast_on")})
"""M of the garment reckoned by hand, and the numbers that more than one sum tells."""


def changed(wrong: Mapping[Key, int]) -> dict[Key, Figure]:
    return CLOSING | {key: Figure(CLOSING[key].printed + by * GRAINS) for key, by in wrong.items()}


def test_one_wrong_number_of_the_garment_is_named_with_what_it_was() -> None:
    for key in TOLD:
        assert smallest_changes(changed({key: 3}), RELATIONS, frozenset(CLOSING), Trials()) == [{key: CLOSING[key]}]


def test_two_wrong_numbers_of_the_garment_are_two_at_most_and_among_the_sets_named() -> None:
    for one, other in combinations(TOLD, 2):
        wrong = {one: 3, other: 5}
        found = smallest_changes(changed(wrong), RELATIONS, frozenset(CLOSING), Trials())
        assert found, (one, other)
        assert len(found[0]) <= 2, (one, other)
        assert len(found[0]) == 1 or {key: CLOSING[key] for key in wrong} in found, (one, other)


def test_more_wrong_numbers_than_are_changed_at_a_time_are_mended_by_none() -> None:
    # four pairs that share nothing, each of which needs a change
    keys = [Key("part", str(place)) for place in range(8)]
    pairs = [linear(CODE, (one, 1), (other, -1)) for one, other in zip(keys[::2], keys[1::2], strict=True)]
    for many in (MOST_CHANGED, MOST_CHANGED + 1):
        printed = {key: Figure(place % 2 * GRAINS if place < 2 * many else 0) for place, key in enumerate(keys)}
        found = smallest_changes(printed, pairs, frozenset(keys), Trials())
        # either of each pair may be the wrong one
        assert len(found) == (2**many if many == MOST_CHANGED else 0)


def test_trials_that_are_spent_end_the_search() -> None:
    printed, relations = figures((1, 2, 3, 4)), [relation({0: 1, 1: -1}, 0), relation({2: 1, 3: -1}, 0)]
    assert len(smallest_changes(printed, relations, frozenset(KEYS), Trials())) == 4
    trials = Trials(left=1)
    assert smallest_changes(printed, relations, frozenset(KEYS), trials) == []
    assert trials.left < 0


def test_a_count_is_not_mended_to_less_than_nothing() -> None:
    # a + b = 2 of 5 and 1: 1 for the 5, and nothing for the 1
    found = smallest_changes(figures((5, 1, 0, 0)), [relation({0: 1, 1: 1}, 2)], frozenset(KEYS), Trials())
    assert found == [{KEYS[0]: Figure(GRAINS)}]
    # a + b is 3 at most, of 2 and 5: 1 for the 5, and nothing for the 2
    at_most = linear(CODE, (KEYS[0], 1), (KEYS[1], 1), least=None, most=3)
    found = smallest_changes(figures((2, 5, 0, 0)), [at_most], frozenset(KEYS), Trials())
    assert found == [{KEYS[1]: Figure(GRAINS)}]


def test_a_count_is_not_mended_to_a_half() -> None:
    # 2a - b = 0 of 4 and 7: 8 for the 7, and 3 1/2 for the 4
    pair = [relation({0: 2, 1: -1}, 0)]
    assert smallest_changes(figures((4, 7, 0, 0)), pair, frozenset(KEYS), Trials()) == [{KEYS[1]: Figure(8 * GRAINS)}]


def test_a_length_is_mended_to_the_middle_of_what_it_may_be() -> None:
    # 10 and 5, printed to whole numbers, add up to 14 to 16
    printed = {
        KEYS[0]: Figure(10 * GRAINS, GRAINS // 2),
        KEYS[1]: Figure(5 * GRAINS, GRAINS // 2),
        KEYS[2]: Figure(30 * GRAINS),
    }
    whole = [linear(CODE, (KEYS[2], 1), (KEYS[0], -1), (KEYS[1], -1))]
    assert {KEYS[2]: Figure(15 * GRAINS, GRAINS)} in smallest_changes(printed, whole, frozenset(), Trials())
