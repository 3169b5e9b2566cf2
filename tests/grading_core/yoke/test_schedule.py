from collections import Counter
from dataclasses import replace
from fractions import Fraction
from itertools import combinations, pairwise, product
from math import ceil

import pytest
from hypothesis import given
from hypothesis import strategies as st

from grading_core.errors import Impossible, Nearest
from grading_core.gauge import Gauge
from grading_core.sections import IncreaseRound, Increases, Sections
from grading_core.shaping import Spacing, Where
from grading_core.units import to_places
from grading_core.yoke.request import Options, Yoke
from grading_core.yoke.result import Schedule
from grading_core.yoke.schedule import (
    finish,
    grid_rounds,
    least_rounds,
    needed_rounds,
    respace,
    schedule,
    yoke_problems,
)
from tests.grading_core.yoke.random_yokes import GAUGE, SPACINGS, random_cases, random_schedules, yoke_of
from tests.oracles.knitter import knit, knit_to_split
from tests.oracles.optimal_yoke import best_by_solver, best_counts_by_brute_force

TWO_INTERVALS = SPACINGS[:3]


def made_of(rounds: int, increases: Increases, options: Options) -> Schedule:
    made = schedule(yoke_of(rounds, increases), options, GAUGE)
    assert isinstance(made, Schedule)
    return made


def places_of(yoke: Yoke, options: Options) -> list[int]:
    """The rounds of the grid, counted out one by one."""
    first = options.first_increase_round or options.step
    places = []
    for number in range(1, yoke.rounds + 1):
        on_grid = number >= first and (number - first) % options.step == 0
        if on_grid and number <= yoke.rounds - options.plain_rounds_at_end:
            places.append(number)
    return places


def edges_worked(made: Schedule, edge: int) -> set[int]:
    return {worked.round for worked in made.increase_rounds if worked.increases[edge]}


# The optimum, against other ways to it


def test_schedules_reach_the_optimum_that_a_constraint_solver_proves() -> None:
    # OR-Tools CP-SAT: fewest doubled rounds, then fewest increase rounds, then the latest last one that one interval,
    # or two neighbouring ones, allow from the grid's first round on.
    feasible = 0
    for yoke, options in random_cases(1, 300):
        made = schedule(yoke, options, GAUGE)
        places = places_of(yoke, options)
        single = options.spacing in ("single_then_plain", "plain_then_single")
        best = best_by_solver(len(places), yoke.increases, options.double_body == "if_needed", single)
        assert isinstance(made, Impossible) == (best is None), (yoke, options)
        if isinstance(made, Impossible) or best is None:
            continue
        feasible += 1
        rounds = [worked.round for worked in made.increase_rounds]
        assert made.doubled_rounds == best.doubled, (yoke, options)
        assert len(rounds) == best.used, (yoke, options)
        if options.spacing == "plain_then_single":
            # the mirror image: the surplus stands before the first one
            assert rounds == [] or places[-1] - rounds[0] == (best.last and places[best.last] - places[0])
        elif rounds:
            assert (rounds[0], rounds[-1]) == (places[0], places[best.last]), (yoke, options)
    assert feasible > 100


@pytest.mark.parametrize("doubling", [False, True])
def test_every_small_schedule_has_the_fewest_doubled_rounds_and_then_the_fewest_increase_rounds(doubling: bool) -> None:
    # Every filling of up to four rounds is tried.
    for places in range(1, 5):
        best = best_counts_by_brute_force(places, doubling)
        options = Options(step=1, double_body="if_needed" if doubling else "never")
        for increases in product(range(2 * places + 2), range(2 * places + 2), range(places + 2)):
            made = schedule(yoke_of(places, increases), options, GAUGE)
            if increases in best:
                assert isinstance(made, Schedule)
                assert (made.doubled_rounds, len(made.increase_rounds)) == best[increases]
            else:
                assert isinstance(made, Impossible)


@pytest.mark.parametrize("spacing", TWO_INTERVALS)
def test_no_choice_of_rounds_in_two_neighbouring_intervals_ends_later(spacing: Spacing) -> None:
    # Every choice of rounds that begins with the first is tried.
    for rounds, step in product(range(1, 11), (1, 2)):
        options = Options(step=step, first_increase_round=1, spacing=spacing)
        places = places_of(yoke_of(rounds, (0, 0, 0)), options)
        for count in range(1, len(places) + 1):
            ends = []
            for chosen in combinations(places, count):
                gaps = {after - before for before, after in pairwise(chosen)}
                if chosen[0] == places[0] and (not gaps or max(gaps) - min(gaps) <= step):
                    ends.append(chosen[-1])
            made = [worked.round for worked in made_of(rounds, (count, count, 0), options).increase_rounds]
            assert made[-1] == (max(ends) if count > 1 else places[0])


# What every schedule keeps


def test_knitting_a_schedule_arrives_at_exactly_the_split() -> None:
    for _, made in random_schedules(2, 600):
        assert knit_to_split(made) == made.yoke.split


def test_no_section_ever_gets_smaller_and_every_section_keeps_its_parity() -> None:
    for _, made in random_schedules(3, 200):
        reached = [made.yoke.neck, *(sections for _, sections in knit(made.yoke.neck, made.increase_rounds))]
        for before, after in pairwise(reached):
            for section in ("back", "front", "sleeve"):
                gained = getattr(after, section) - getattr(before, section)
                assert gained >= 0
                assert gained % 2 == 0


def test_increases_fall_on_the_grid_only_and_leave_the_plain_rounds_asked_for() -> None:
    for options, made in random_schedules(4, 400):
        assert {worked.round for worked in made.increase_rounds} <= set(places_of(made.yoke, options))
        assert not made.increase_rounds or made.plain_rounds_at_end >= options.plain_rounds_at_end


def test_rounds_between_increases_are_at_most_two_neighbouring_intervals_of_the_grid() -> None:
    for options, made in random_schedules(5, 400):
        gaps = {after.round - before.round for before, after in pairwise(made.increase_rounds)}
        assert len(gaps) <= 2
        if len(gaps) == 2:
            assert max(gaps) - min(gaps) == options.step
            assert options.spacing in TWO_INTERVALS


def test_the_intervals_stand_in_the_order_asked() -> None:
    with_two: Counter[Spacing] = Counter()
    for options, made in random_schedules(6, 400):
        gaps = [after.round - before.round for before, after in pairwise(made.increase_rounds)]
        with_two[options.spacing] += len(set(gaps)) == 2
        if options.spacing == "closest_first":
            assert gaps == sorted(gaps)
        elif options.spacing == "widest_first":
            assert gaps == sorted(gaps, reverse=True)
        elif options.spacing == "even":
            for length in range(1, len(gaps)):
                sums = [sum(gaps[start : start + length]) for start in range(len(gaps) - length + 1)]
                assert max(sums) - min(sums) <= options.step
    assert min(with_two[spacing] for spacing in TWO_INTERVALS) >= 20


def test_a_smaller_set_of_increase_rounds_lies_inside_every_larger_one() -> None:
    for _, made in random_schedules(7, 400):
        sets = sorted((edges_worked(made, edge) for edge in range(3)), key=len)
        assert sets[0] <= sets[1] <= sets[2]
        assert sets[2] == {worked.round for worked in made.increase_rounds}


def test_no_edge_gets_two_increases_in_a_round_unless_doubling_is_allowed_and_sleeves_never_do() -> None:
    for options, made in random_schedules(8, 400):
        for worked in made.increase_rounds:
            most = 2 if options.double_body == "if_needed" else 1
            assert max(worked.back, worked.front) <= most
            assert worked.sleeve <= 1
            assert max(worked.increases) >= 1


def test_doubled_rounds_are_just_the_body_increases_that_have_no_round_of_their_own() -> None:
    for options, made in random_schedules(9, 600):
        back, front, _ = made.yoke.increases
        assert made.doubled_rounds == max(0, max(back, front) - len(places_of(made.yoke, options)))


def positions(places: list[int], chosen: set[int]) -> list[int]:
    return [place for place, number in enumerate(places) if number in chosen]


def where(places: list[int], chosen: set[int], asked: str) -> bool:
    """Whether a choice of places lies as asked."""
    at = positions(places, chosen)
    if asked == "early":
        return at == list(range(len(at)))
    if asked == "late":
        return at == list(range(len(places) - len(at), len(places)))
    gaps = [after - before for before, after in pairwise((*at, len(places)))]
    return not at or (at[0] == 0 and max(gaps) - min(gaps) <= 1)


def test_edges_with_fewer_increases_get_them_early_evenly_or_late_as_asked() -> None:
    fewer: Counter[Where] = Counter()
    for options, made in random_schedules(10, 600):
        back, front, sleeve = made.yoke.increases
        if back == front:
            fewer[options.fewer_edge] += 0 < sleeve != back
            rounds = [worked.round for worked in made.increase_rounds]
            assert where(rounds, edges_worked(made, 2), options.fewer_edge)
            assert where(rounds, edges_worked(made, 0), options.fewer_edge)
    assert min(fewer[place] for place in ("early", "even", "late")) >= 50


def test_doubled_rounds_lie_early_evenly_or_late_among_the_increase_rounds_as_asked() -> None:
    some: Counter[Where] = Counter()
    for options, made in random_schedules(11, 600):
        doubled = {worked.round for worked in made.increase_rounds if max(worked.back, worked.front) == 2}
        assert where([worked.round for worked in made.increase_rounds], doubled, options.double_where)
        some[options.double_where] += 0 < len(doubled) < len(made.increase_rounds)
    assert min(some[place] for place in ("early", "even", "late")) >= 10


# The impossible, and the nearest that is possible


def with_change(yoke: Yoke, options: Options, change: Nearest) -> tuple[Yoke, Options]:
    if change.field == "rounds":
        return replace(yoke, rounds=int(change.value)), options
    return yoke, replace(options, **{change.field: change.value})


def possible(yoke: Yoke, options: Options) -> bool:
    """By counting out the grid."""
    places = len(places_of(yoke, options))
    back, front, sleeve = yoke.increases
    most = 2 * places if options.double_body == "if_needed" else places
    return max(back, front) <= most and sleeve <= places


def impossible_cases(seed: int, many: int) -> list[tuple[Yoke, Options, Impossible]]:
    """Random yokes that can't be knitted as asked: one in five at least."""
    made = [(yoke, options, schedule(yoke, options, GAUGE)) for yoke, options in random_cases(seed, many)]
    found = [(yoke, options, refused) for yoke, options, refused in made if isinstance(refused, Impossible)]
    assert 5 * len(found) >= many
    return found


def test_a_schedule_is_refused_only_where_the_grid_has_too_few_rounds() -> None:
    refused = 0
    for yoke, options in random_cases(15, 600):
        assert isinstance(schedule(yoke, options, GAUGE), Schedule) == possible(yoke, options)
        refused += not possible(yoke, options)
    assert 100 < refused < 500


def test_every_nearest_change_alone_really_makes_the_schedule_possible() -> None:
    for yoke, options, refused in impossible_cases(16, 600):
        for change in refused.nearest:
            assert isinstance(schedule(*with_change(yoke, options, change), GAUGE), Schedule), (yoke, options, change)


def test_of_every_nearest_number_one_less_of_a_change_does_not_do() -> None:
    one_less_of_a_change = {"rounds": -1, "plain_rounds_at_end": 1, "first_increase_round": 1}
    tried = set()
    for yoke, options, refused in impossible_cases(17, 600):
        for change in refused.nearest:
            if change.field in one_less_of_a_change:
                nearer = Nearest(change.path, int(change.value) + one_less_of_a_change[change.field])
                assert isinstance(schedule(*with_change(yoke, options, nearer), GAUGE), Impossible)
                tried.add(change.field)
    assert tried == set(one_less_of_a_change)


def test_every_single_change_that_would_do_is_named() -> None:
    for yoke, options, refused in impossible_cases(18, 300):
        would_do = {"rounds"}
        changes = [
            *(Nearest(("plain_rounds_at_end",), plain) for plain in range(options.plain_rounds_at_end)),
            *(Nearest(("first_increase_round",), first) for first in range(1, options.first)),
            Nearest(("step",), 1),
            Nearest(("double_body",), "if_needed"),
        ]
        would_do |= {change.field for change in changes if possible(*with_change(yoke, options, change))}
        assert {change.field for change in refused.nearest} == would_do, (yoke, options)


def test_the_reason_says_how_many_increase_rounds_are_missing() -> None:
    for yoke, options, refused in impossible_cases(19, 300):
        missing = 0
        while not possible(replace(yoke, rounds=yoke.rounds + missing), options):
            missing += 1
        back, front, sleeve = yoke.increases
        body = max(back, front)
        needed = max(ceil(body / 2) if options.double_body == "if_needed" else body, sleeve)
        too_few = needed - len(places_of(yoke, options))
        told = refused.reason.values
        assert (told["available"], told["missing"]) == (len(places_of(yoke, options)), too_few)


@given(st.integers(0, 50), st.integers(0, 50), st.integers(0, 50))
def test_needed_rounds_are_the_fewest_that_hold_the_increases(back: int, front: int, sleeve: int) -> None:
    for doubling, most in ((False, 1), (True, 2)):
        fewest = next(n for n in range(51) if max(back, front) <= most * n and sleeve <= n)
        assert needed_rounds((back, front, sleeve), doubling) == fewest


# Input that contradicts itself


def test_every_section_that_shrinks_or_grows_by_an_odd_number_is_named() -> None:
    yokes = [
        Yoke("S", 20, Sections(30, 30, 10), Sections(40, 40, 20)),
        Yoke("M", 20, Sections(30, 30, 10), Sections(41, 28, 9)),
        Yoke("L", 20, Sections(30, 30, 10), Sections(30, 30, 11)),
    ]
    assert [[problem.path for problem in yoke_problems(yoke)] for yoke in yokes] == [
        [],
        [("split", "back"), ("split", "front"), ("split", "sleeve")],
        [("split", "sleeve")],
    ]


# The craft's numbers


def test_the_increase_rounds_after_a_first_one_on_round_one_are_the_odd_ones() -> None:
    rounds = [worked.round for worked in made_of(6, (3, 3, 3), Options(first_increase_round=1)).increase_rounds]
    assert rounds == [1, 3, 5]


def test_the_grid_begins_with_the_step_unless_asked_otherwise() -> None:
    assert list(grid_rounds(7, Options(step=2))) == [2, 4, 6]
    assert list(grid_rounds(4, Options(step=1))) == [1, 2, 3, 4]


def test_the_contracts_example_of_a_schedule_comes_out_as_printed_there() -> None:
    # The worked answer of the HTTP contract; recomputed by hand: 100 + 24 x 4 + 19 x 4 = 272; 60 / 3.1 = 19.35 cm;
    # 24 / 2.2 = 10.91 cm; 19.35 / 10.91 = 1.77; the root of the squares' sum 22.22 cm.
    yoke = Yoke("S", 60, Sections(34, 34, 12), Sections(82, 82, 50))
    made = schedule(yoke, Options(plain_rounds_at_end=1), GAUGE)
    assert isinstance(made, Schedule)
    first, *_ = made.phases
    assert (first.from_row, first.to_row, first.every, first.times) == (1, 38, (2,), 19)
    assert made.increase_rounds[0] == IncreaseRound(2, 1, 1, 1)
    assert (yoke.increases, made.doubled_rounds) == ((24, 24, 19), 0)
    assert (yoke.neck.total(2), yoke.split.total(2)) == (100, 272)
    assert to_places(made.depth_cm) == 19.35
    assert made.raglan_line.rise_over_run is not None
    assert to_places(made.raglan_line.rise_over_run) == 1.77
    assert to_places(made.raglan_line.length_cm) == 22.22


@given(st.integers(1, 90), st.integers(0, 90), st.integers(2, 7))
def test_a_finer_gauge_with_as_many_more_stitches_and_rounds_has_the_same_raglan_line(
    rounds: int, body: int, factor: int
) -> None:
    def line(scale: int) -> Schedule:
        gauge = Gauge.over(Fraction(22 * scale), Fraction(31 * scale), Fraction(10))
        return finish(yoke_of(rounds * scale, (body * scale, 0, 0)), (), 2, gauge)

    assert line(factor).raglan_line == line(1).raglan_line
    assert line(factor).depth_cm == line(1).depth_cm


def test_a_line_without_increases_is_as_long_as_the_yoke_is_deep_and_has_no_slope() -> None:
    made = made_of(31, (5, 0, 2), Options())
    assert made.front_raglan_line.rise_over_run is None
    assert made.front_raglan_line.length_cm == made.depth_cm == 10
    assert made.raglan_line.length_cm > 10


def test_sizes_in_another_order_have_the_same_schedules() -> None:
    cases = random_cases(20, 40)
    forwards = [schedule(yoke, options, GAUGE) for yoke, options in cases]
    backwards = [schedule(yoke, options, GAUGE) for yoke, options in reversed(cases)]
    assert forwards == backwards[::-1]


def test_respacing_keeps_what_is_worked_and_its_order() -> None:
    made = made_of(40, (15, 12, 9), Options(step=1, fewer_edge="even"))
    yoke = replace(made.yoke, rounds=60)
    respaced = respace(made.increase_rounds, yoke, Options(step=2), GAUGE)
    assert [worked.increases for worked in respaced.increase_rounds] == [
        worked.increases for worked in made.increase_rounds
    ]
    assert knit_to_split(respaced) == made.yoke.split


@pytest.mark.parametrize(("step", "first", "plain"), [(2, None, 0), (1, None, 2), (2, 5, 3), (1, 7, 0)])
def test_the_least_rounds_are_the_fewest_whose_grid_has_room(step, first, plain):
    options = Options(step=step, first_increase_round=first, plain_rounds_at_end=plain)
    for many in range(9):
        fewest = next(rounds for rounds in range(60) if len(grid_rounds(rounds, options)) >= many)
        assert least_rounds(many, options) == fewest
