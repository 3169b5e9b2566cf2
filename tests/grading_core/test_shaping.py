import random
from itertools import combinations, pairwise, product

import pytest
from hypothesis import given
from hypothesis import strategies as st

from grading_core.shaping import LONGEST_CYCLE, Phase, Spacing, Where, choose, phases, spread
from tests.oracles.fewest_phases import fewest_phases

TWO_INTERVALS: list[Spacing] = ["closest_first", "widest_first", "even"]
ONE_INTERVAL: list[Spacing] = ["single_then_plain", "plain_then_single"]
ROOM = [(events, span) for span in range(1, 41) for events in range(1, span + 1)]


def balanced(values: tuple[int, ...]) -> bool:
    """Evenly mixed: any two stretches of equal length differ by at most one in their sums."""
    for length in range(1, len(values)):
        sums = [sum(values[start : start + length]) for start in range(len(values) - length + 1)]
        if max(sums) - min(sums) > 1:
            return False
    return True


@pytest.mark.parametrize("spacing", TWO_INTERVALS)
def test_two_intervals_fill_the_span_exactly(spacing: Spacing) -> None:
    for events, span in ROOM:
        spaced = spread(events, span, spacing)
        assert (spaced.before, spaced.after) == (0, 0)
        assert spaced.positions()[-1] == sum(spaced.intervals) == span


@pytest.mark.parametrize("spacing", TWO_INTERVALS)
def test_two_intervals_are_as_many_of_each_as_the_shaping_formula_says(spacing: Spacing) -> None:
    # The trade's formula: q = m div n, r = m mod n; every q rows n - r times, every q + 1 rows r times.
    for events, span in ROOM:
        q, r = span // events, span % events
        assert sorted(spread(events, span, spacing).intervals) == [q] * (events - r) + [q + 1] * r


def test_the_two_intervals_stand_in_the_order_asked() -> None:
    for events, span in ROOM:
        closest = spread(events, span, "closest_first").intervals
        widest = spread(events, span, "widest_first").intervals
        assert list(closest) == sorted(closest)
        assert list(widest) == sorted(widest, reverse=True)


def test_evenly_mixed_intervals_are_balanced() -> None:
    for events, span in ROOM:
        assert balanced(spread(events, span, "even").intervals), (events, span)


@pytest.mark.parametrize("spacing", ONE_INTERVAL)
def test_one_interval_is_the_widest_that_fits_and_the_surplus_is_plain(spacing: Spacing) -> None:
    for events, span in ROOM:
        spaced = spread(events, span, spacing)
        widest = max(interval for interval in range(1, span + 1) if interval * events <= span)
        plain = span - widest * events
        assert set(spaced.intervals) == {widest}
        expected = (0, plain) if spacing == "single_then_plain" else (plain, 0)
        assert (spaced.before, spaced.after) == expected


def test_before_intervals_and_after_make_up_the_span() -> None:
    for (events, span), spacing in product(ROOM, TWO_INTERVALS + ONE_INTERVAL):
        spaced = spread(events, span, spacing)
        assert spaced.before + sum(spaced.intervals) + spaced.after == span
        assert len(spaced.positions()) == events


@pytest.mark.parametrize("spacing", TWO_INTERVALS + ONE_INTERVAL)
def test_no_events_leave_the_span_plain(spacing: Spacing) -> None:
    spaced = spread(0, 7, spacing)
    assert (spaced.intervals, spaced.before + spaced.after) == ((), 7)


@pytest.mark.parametrize(("events", "span"), [(5, 4), (1, 0), (-1, 4)])
def test_more_events_than_the_span_has_room_for_are_refused(events: int, span: int) -> None:
    with pytest.raises(ValueError, match="do not fit"):
        spread(events, span)


def choices() -> list[tuple[range, int]]:
    return [(range(size), count) for size in range(13) for count in range(size + 1)]


def test_early_takes_the_first_ones_and_late_the_last_ones() -> None:
    for pool, count in choices():
        taken = list(combinations(pool, count))
        assert choose(pool, count, "early") == taken[0]
        assert choose(pool, count, "late") == taken[-1]


def test_an_even_choice_begins_with_the_first_and_leaves_gaps_that_differ_by_at_most_one() -> None:
    for pool, count in choices():
        taken = choose(pool, count, "even")
        assert len(set(taken)) == count
        if count:
            gaps = [after - before for before, after in pairwise((*taken, len(pool)))]
            assert taken[0] == 0
            assert max(gaps) - min(gaps) <= 1


@pytest.mark.parametrize("where", ["early", "even", "late"])
def test_a_choice_keeps_the_order_of_the_pool(where: Where) -> None:
    pool = (3, 1, 4, 15, 9, 2, 6)
    for count in range(len(pool) + 1):
        chosen, remaining = choose(pool, count, where), iter(pool)
        assert len(chosen) == count
        assert all(taken in remaining for taken in chosen)


# Phases


def expand(found: tuple[Phase[str], ...]) -> list[tuple[int, str]]:
    """The shaping rows of phases, worked row by row."""
    rows = []
    for phase in found:
        row = phase.from_row - 1
        for interval, kind in phase.cycle * phase.times:
            row += interval
            rows.append((row, kind))
        assert not phase.times or row == phase.to_row
    return rows


def check(events: list[tuple[int, str]], rows: int, mix_kinds: bool) -> None:
    found = phases(events, rows, mix_kinds=mix_kinds)
    assert expand(found) == events
    starts = [1, *(phase.to_row + 1 for phase in found)]
    assert [phase.from_row for phase in found] == starts[:-1]
    assert starts[-1] == rows + 1
    for phase in found:
        assert phase.from_row <= phase.to_row
        assert len(phase.cycle) <= LONGEST_CYCLE
        assert phase.times >= (2 if len(phase.cycle) > 1 else len(phase.cycle))
        assert mix_kinds or len({kind for _, kind in phase.cycle}) <= 1
    assert len(found) == fewest_phases(events, rows, mix_kinds=mix_kinds), (events, rows, found)


def events_of(intervals: list[tuple[int, str]]) -> list[tuple[int, str]]:
    row, events = 0, []
    for interval, kind in intervals:
        row += interval
        events.append((row, kind))
    return events


def test_phases_of_every_short_schedule_cover_it_expand_back_to_it_and_are_the_fewest() -> None:
    for length in range(8):
        for intervals in product((1, 2, 4), repeat=length):
            events = events_of([(interval, "a") for interval in intervals])
            check(events, sum(intervals) + length % 2, mix_kinds=False)


@pytest.mark.parametrize("mix_kinds", [False, True])
def test_phases_of_schedules_with_two_kinds_of_round_are_the_fewest_too(mix_kinds: bool) -> None:
    for length in range(7):
        for tokens in product(product((1, 3), "ab"), repeat=length):
            events = events_of(list(tokens))
            check(events, (events[-1][0] if events else 0) + 2, mix_kinds)


@pytest.mark.parametrize("mix_kinds", [False, True])
def test_phases_of_schedules_made_of_repeats_are_the_fewest_too(mix_kinds: bool) -> None:
    generator = random.Random(20)
    for _ in range(1500):
        tokens: list[tuple[int, str]] = []
        while len(tokens) < 14:
            length = generator.randint(1, LONGEST_CYCLE)
            cycle = [(generator.choice((1, 2, 3)), generator.choice("aab")) for _ in range(length)]
            tokens += cycle * generator.randint(1, 4)
        tokens[0] = (tokens[0][0] + generator.choice((0, 0, 1, 4)), tokens[0][1])
        events = events_of(tokens)
        check(events, events[-1][0] + generator.choice((0, 3)), mix_kinds)


def test_a_long_schedule_of_two_overlapping_repeats_is_cut_at_the_best_place() -> None:
    # Repeats of 3 and of 4 that share some of their intervals, so that the first must not run on as far as it can.
    for shared in range(6):
        first = [2, 2, 4] * 9
        second = (first[-shared:] if shared else []) + [4, 2, 2, 2] * 9
        check(events_of([(interval, "a") for interval in first + second]), 400, mix_kinds=False)


@given(st.integers(1, 60), st.integers(0, 60), st.sampled_from(TWO_INTERVALS[:2]))
def test_two_intervals_one_after_the_other_are_at_most_two_phases(events: int, more: int, spacing: Spacing) -> None:
    places = spread(events, events + more, spacing).positions()
    assert len(phases([(place, "x") for place in places], events + more)) <= 2


def test_the_surplus_of_a_long_first_interval_is_a_plain_phase_of_its_own() -> None:
    found = phases([(9, "a"), (11, "a"), (13, "a")], 14)
    assert [(phase.from_row, phase.to_row, phase.every, phase.times) for phase in found] == [
        (1, 7, (), 0),
        (8, 13, (2,), 3),
        (14, 14, (), 0),
    ]


def test_four_and_six_in_turn_are_one_phase() -> None:
    # The alternation of example 6 of the published shaping problems (6 and 4 rows alternately, 13 times).
    events = events_of([(6, "a"), (4, "a")] * 13)
    found = phases(events, 130)
    assert [(phase.every, phase.times) for phase in found] == [((6, 4), 13)]
