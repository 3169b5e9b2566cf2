import random
from dataclasses import replace
from fractions import Fraction
from math import floor

import pytest
from hypothesis import given
from hypothesis import strategies as st

from grading_core.errors import Impossible
from grading_core.sections import IncreaseRound, Sections
from grading_core.yoke.adjustment import adjust, written_problems
from grading_core.yoke.request import Adjustment, Options, WrittenYoke, Yoke
from grading_core.yoke.result import METHODS, AdjustedYoke, Method, Schedule, Way
from grading_core.yoke.schedule import schedule
from tests.grading_core.yoke.random_yokes import GAUGE, SPACINGS
from tests.oracles.knitter import knit, knit_to_split

NECK = Sections(34, 34, 12)


def way(adjusted: AdjustedYoke, method: Method) -> Way:
    return adjusted.options[METHODS.index(method)]


def made(adjusted: AdjustedYoke, method: Method) -> Schedule:
    found = way(adjusted, method).schedule
    assert isinstance(found, Schedule)
    return found


def to_rounds(size: WrittenYoke, rounds: int, options: Options) -> AdjustedYoke:
    return adjust(size, Adjustment(rounds=rounds), options, GAUGE)


def from_counts(rounds: int, body: int, sleeve: int) -> WrittenYoke:
    return WrittenYoke(Yoke("S", rounds, NECK, NECK.after((body, body, sleeve))))


def from_list(rounds: int, worked: list[IncreaseRound]) -> WrittenYoke:
    back, front, sleeve = (sum(one.increases[edge] for one in worked) for edge in range(3))
    return WrittenYoke(Yoke("S", rounds, NECK, NECK.after((back, front, sleeve))), tuple(worked))


def random_written(generator: random.Random) -> tuple[WrittenYoke, Options]:
    """A yoke that can be knitted as written: from its counts, or with a list of its own on the grid."""
    while True:
        step = generator.choice((1, 2))
        options = Options(
            step=step,
            plain_rounds_at_end=generator.choice((0, 0, 1, 3)),
            spacing=generator.choice(SPACINGS),
            double_where=generator.choice(("early", "even", "late")),
        )
        rounds = generator.randint(4, 40)
        if generator.random() < 0.5:
            options = replace(options, first_increase_round=generator.choice((None, 1, 3)))
            size = from_counts(rounds, generator.randint(0, rounds // step), generator.randint(0, rounds // (2 * step)))
            if isinstance(schedule(size.yoke, options, GAUGE), Schedule):
                return size, options
        else:
            first = generator.randint(1, 4)
            grid = range(first, rounds - options.plain_rounds_at_end + 1, step)
            chosen = sorted(generator.sample(grid, generator.randint(0, len(grid))))
            if chosen:
                chosen[0] = first
            kinds = [(1, 1, 1), (1, 1, 1), (1, 1, 0), (0, 0, 1), (1, 0, 0)]
            return from_list(rounds, [IncreaseRound(r, *generator.choice(kinds)) for r in chosen]), options


def random_adjustments(seed: int, many: int) -> list[tuple[WrittenYoke, Options, int, AdjustedYoke]]:
    """Random yokes made deeper or shallower, to so many rounds; each way is possible in every fourth at least."""
    generator = random.Random(seed)
    cases = []
    for _ in range(many):
        size, options = random_written(generator)
        rounds = max(-1, size.yoke.rounds + generator.randint(-16, 12))
        cases.append((size, options, rounds, to_rounds(size, rounds, options)))
    for method in METHODS:
        assert 4 * sum(isinstance(way(case[-1], method).schedule, Schedule) for case in cases) >= many
    return cases


def schedules(adjusted: AdjustedYoke) -> list[tuple[Method, Schedule]]:
    return [(one.method, one.schedule) for one in adjusted.options if isinstance(one.schedule, Schedule)]


def before(adjusted: AdjustedYoke) -> Schedule:
    assert isinstance(adjusted.before.schedule, Schedule)
    return adjusted.before.schedule


def first_round(size: WrittenYoke, options: Options, step: int) -> int:
    """Where the grid begins: as asked, with a written list's first round, or with the step."""
    listed = size.increase_rounds[0].round if size.increase_rounds else None
    return options.first_increase_round or listed or step


def places(rounds: int, first: int, step: int, plain: int) -> int:
    """The rounds of a grid, counted out one by one."""
    return sum(1 for r in range(1, rounds - plain + 1) if r >= first and (r - first) % step == 0)


def can(method: Method, size: WrittenYoke, options: Options, rounds: int) -> bool:
    """Whether the words of the method allow so many rounds."""
    written = to_rounds(size, size.yoke.rounds, options).before.schedule
    assert isinstance(written, Schedule)
    if rounds < 1:
        return False
    plain, count = options.plain_rounds_at_end, len(written.increase_rounds)
    back, front, sleeve = size.yoke.increases
    old_grid = places(rounds, first_round(size, options, options.step), options.step, plain)
    every_round = places(rounds, options.first_increase_round or 1, 1, plain)
    if method == "plain_rounds":
        return rounds >= size.yoke.rounds or rounds - (size.yoke.rounds - written.plain_rounds_at_end) >= plain
    if method == "wider":
        return rounds > size.yoke.rounds and old_grid >= count
    if rounds >= size.yoke.rounds:
        return False
    if method == "closer":
        return every_round >= count and rounds >= plain
    return sleeve <= old_grid and max(back, front) <= 2 * old_grid and rounds >= plain


# Every way, on random yokes


def test_the_counts_at_neck_and_split_never_change() -> None:
    for size, _, _, adjusted in random_adjustments(1, 500):
        for _, found in schedules(adjusted):
            assert (found.yoke.neck, found.yoke.split) == (size.yoke.neck, size.yoke.split)
            assert knit_to_split(found) == size.yoke.split


def test_every_way_has_the_rounds_asked_and_none_of_them_is_worked_twice() -> None:
    for _, _, rounds, adjusted in random_adjustments(2, 300):
        for _, found in schedules(adjusted):
            worked = [one.round for one in found.increase_rounds]
            assert found.yoke.rounds == rounds
            assert worked == sorted(set(worked))
            assert not worked or 1 <= worked[0] <= worked[-1] <= rounds


def test_a_way_is_possible_exactly_where_its_words_allow_it() -> None:
    possible = dict.fromkeys(METHODS, 0)
    for size, options, rounds, adjusted in random_adjustments(3, 500):
        for one in adjusted.options:
            feasible = isinstance(one.schedule, Schedule)
            assert feasible == can(one.method, size, options, rounds), (one.method, size, options, rounds)
            possible[one.method] += feasible
    assert min(possible.values()) > 30


def test_the_shallowest_yoke_of_a_way_is_possible_and_the_next_smaller_is_not() -> None:
    checked = 0
    for size, options, rounds, adjusted in random_adjustments(4, 200):
        for one in adjusted.options:
            if one.shallowest is None or isinstance(one.schedule, Schedule):
                continue
            smaller = [r for r in range(-1, size.yoke.rounds) if can(one.method, size, options, r)]
            if smaller and rounds < size.yoke.rounds:
                assert one.shallowest.rounds == min(smaller)
                assert [(near.field, near.value) for near in one.schedule.nearest] == [("rounds", min(smaller))]
                checked += 1
    assert checked > 50


def test_a_way_that_is_impossible_says_why_and_its_shallowest_depth() -> None:
    adjusted = to_rounds(from_counts(60, 24, 19), 30, Options())
    refused = way(adjusted, "double_body").schedule
    assert isinstance(refused, Impossible)
    # 19 sleeve increases in every second round take 38 rounds; 38 / 3.1 = 12.26 cm
    told = refused.reason.values
    assert (told["rounds"], told["depth"], told["asked"]) == (38, Fraction(380, 31), 30)
    assert told["limit"].values == {"needed": 19, "limit": "sleeve"}
    assert way(adjusted, "double_body").shallowest.depth_cm == Fraction(380, 31)


# Plain rounds


def test_plain_rounds_leave_every_increase_where_it_is() -> None:
    for _, _, _, adjusted in random_adjustments(5, 300):
        found = way(adjusted, "plain_rounds").schedule
        if isinstance(found, Schedule):
            assert found.increase_rounds == before(adjusted).increase_rounds


def test_plain_rounds_wanted_before_the_split_are_not_left_out() -> None:
    size = from_list(20, [IncreaseRound(r, 1, 1, 1) for r in (2, 4, 6, 8, 10, 12)])
    reached = {
        plain: way(to_rounds(size, 1, Options(plain_rounds_at_end=plain)), "plain_rounds").shallowest.rounds
        for plain in (0, 3, 8, 11)
    }
    assert reached == {0: 12, 3: 15, 8: 20, 11: 20}


# Wider and closer


def test_wider_and_closer_keep_what_is_worked_in_each_increase_round_and_its_order() -> None:
    for _, _, _, adjusted in random_adjustments(6, 400):
        for method, found in schedules(adjusted):
            if method in ("wider", "closer"):
                assert [one.increases for one in found.increase_rounds] == [
                    one.increases for one in before(adjusted).increase_rounds
                ]


def test_closer_leaves_the_written_grid_only_where_that_has_no_room() -> None:
    with_room = 0
    for size, options, rounds, adjusted in random_adjustments(7, 400):
        found = way(adjusted, "closer").schedule
        if not isinstance(found, Schedule):
            continue
        first = first_round(size, options, options.step)
        if places(rounds, first, options.step, options.plain_rounds_at_end) >= len(found.increase_rounds):
            assert all((one.round - first) % options.step == 0 for one in found.increase_rounds)
            with_room += options.step == 2
    assert with_room >= 20


def test_closer_goes_down_to_an_increase_in_every_round() -> None:
    adjusted = to_rounds(from_counts(60, 24, 19), 24, Options())
    found = made(adjusted, "closer")
    assert [one.round for one in found.increase_rounds] == list(range(1, 25))
    assert found.consecutive_increase_rounds == 24
    assert isinstance(way(to_rounds(from_counts(60, 24, 19), 23, Options()), "closer").schedule, Impossible)


def test_a_yoke_sent_as_its_own_list_is_adjusted_like_one_that_follows_from_its_counts() -> None:
    derived = from_counts(60, 24, 19)
    listed = from_list(60, before(to_rounds(derived, 60, Options())).increase_rounds)
    for rounds in range(20, 70):
        by_counts, by_list = (to_rounds(size, rounds, Options()) for size in (derived, listed))
        assert [one.schedule for one in by_counts.options] == [one.schedule for one in by_list.options]


def test_wider_reaches_the_last_round_of_the_grid() -> None:
    found = made(to_rounds(from_counts(48, 24, 24), 60, Options()), "wider")
    assert (found.increase_rounds[0].round, found.increase_rounds[-1].round) == (2, 60)


def test_wider_is_for_deeper_yokes_and_closer_and_doubling_for_shallower_ones() -> None:
    for size, _, rounds, adjusted in random_adjustments(8, 300):
        feasible = {method for method, _ in schedules(adjusted)}
        if rounds >= size.yoke.rounds:
            assert feasible.isdisjoint({"closer", "double_body"})
        if rounds <= size.yoke.rounds:
            assert "wider" not in feasible


# Doubled body increases


def test_doubling_needs_exactly_the_body_increases_beyond_the_rounds_of_the_written_grid() -> None:
    doubled = 0
    for size, options, rounds, adjusted in random_adjustments(9, 500):
        found = way(adjusted, "double_body").schedule
        if isinstance(found, Schedule):
            back, front, _ = size.yoke.increases
            grid = places(rounds, first_round(size, options, options.step), options.step, options.plain_rounds_at_end)
            assert found.doubled_rounds == max(0, max(back, front) - grid)
            doubled += found.doubled_rounds > 0
    assert doubled > 20


def test_doubling_never_doubles_a_sleeve() -> None:
    for _, _, _, adjusted in random_adjustments(10, 300):
        for method, found in schedules(adjusted):
            if method == "double_body":
                assert all(one.sleeve <= 1 for one in found.increase_rounds)


@pytest.mark.parametrize(("where", "rounds"), [("early", [2, 4, 6]), ("late", [38, 40, 42]), ("even", [2, 16, 30])])
def test_doubled_rounds_lie_early_evenly_or_late_as_asked(where: str, rounds: list[int]) -> None:
    # 24 body increases in the 21 even rounds of 42: three doubled, evenly every seventh of them.
    options = replace(Options(), double_where=where)
    found = made(to_rounds(from_counts(60, 24, 19), 42, options), "double_body")
    assert [one.round for one in found.increase_rounds if one.back == 2] == rounds


def test_doubling_is_a_way_also_where_the_schedule_itself_must_not_double() -> None:
    found = made(to_rounds(from_counts(60, 24, 19), 42, Options(double_body="never")), "double_body")
    assert found.doubled_rounds == 3


# Written lists


def test_a_written_list_is_taken_as_it_stands() -> None:
    worked = [IncreaseRound(3, 1, 1, 0), IncreaseRound(4, 0, 0, 1), IncreaseRound(9, 2, 1, 1)]
    adjusted = to_rounds(from_list(12, worked), 14, Options())
    assert before(adjusted).increase_rounds == tuple(worked)
    assert before(adjusted).doubled_rounds == 1


def test_a_written_list_off_the_grid_is_adjusted_in_every_round() -> None:
    worked = [IncreaseRound(r, 1, 1, 1) for r in (1, 4, 5, 8)]
    adjusted = to_rounds(from_list(8, worked), 5, Options(step=2))
    # five rounds, all of them on its grid, have room for four increases without a doubled one
    assert made(adjusted, "double_body").doubled_rounds == 0
    assert [one.round for one in made(adjusted, "closer").increase_rounds] == [1, 2, 3, 5]


def test_every_wrong_place_of_a_written_list_is_named() -> None:
    worked = (
        IncreaseRound(4, 1, 1, 1),
        IncreaseRound(4, 1, 1, 1),
        IncreaseRound(2, 1, 1, 0),
        IncreaseRound(6, 0, 0, 0),
        IncreaseRound(21, 1, 0, 1),
    )
    size = WrittenYoke(Yoke("S", 20, NECK, NECK.after((4, 3, 4))), worked)
    right = from_list(20, [IncreaseRound(2, 1, 1, 1)])
    assert [problem.path for problem in written_problems(size)] == [
        ("increase_rounds", 1, "round"),
        ("increase_rounds", 2, "round"),
        ("increase_rounds", 3),
        ("increase_rounds", 4, "round"),
        ("increase_rounds",),
    ]
    assert [*written_problems(right)] == []


def test_a_written_yoke_that_is_impossible_itself_refuses_every_way_and_says_why() -> None:
    adjusted = to_rounds(from_counts(30, 24, 10), 40, Options())
    assert isinstance(adjusted.before.schedule, Impossible)
    assert all(isinstance(one.schedule, Impossible) for one in adjusted.options)
    assert adjusted.recommended is None
    assert adjusted.why.values == {"reason": adjusted.before.schedule.reason}


# How much


@given(st.integers(1, 200), st.decimals(min_value=20, max_value=45, places=1))
def test_a_knitters_own_row_gauge_keeps_the_written_depth(written: int, own_rows: object) -> None:
    own = Fraction(str(own_rows))
    adjusted = adjust(from_counts(written, 0, 0), Adjustment(own_rows=own), Options(), GAUGE)
    plain = way(adjusted, "plain_rounds")
    assert plain.rounds == floor(written * own / 31 + Fraction(1, 2))
    # at the knitter's own gauge the depth is the written one again, to half a round
    assert abs(plain.depth_cm - Fraction(written * 10, 31)) <= 10 / own / 2
    assert plain.depth_cm == plain.rounds * 10 / own


def test_the_raglan_line_of_a_yoke_at_a_knitters_own_row_gauge_is_measured_in_that_gauge() -> None:
    adjusted = adjust(from_counts(62, 20, 20), Adjustment(own_rows=Fraction(62)), Options(), GAUGE)
    found = made(adjusted, "wider")
    assert found.yoke.rounds == 124
    assert found.depth_cm == before(adjusted).depth_cm == 20
    assert found.raglan_line == before(adjusted).raglan_line


def test_a_change_to_no_rounds_at_all_is_impossible_in_every_way() -> None:
    for rounds in (0, -5):
        adjusted = adjust(from_counts(10, 0, 0), Adjustment(rounds_change=rounds - 10), Options(), GAUGE)
        assert schedules(adjusted) == []


# The recommendation


def test_the_recommended_way_is_always_possible_and_there_is_one_wherever_a_way_is() -> None:
    for _, _, _, adjusted in random_adjustments(11, 1000):
        feasible = [method for method, _ in schedules(adjusted)]
        if adjusted.recommended is None:
            assert not feasible
        else:
            assert adjusted.recommended in feasible
        assert adjusted.why.id.startswith("why." if feasible else ("why.no_way", "reason."))


def test_where_no_way_reaches_the_rounds_the_shallowest_yoke_possible_is_named() -> None:
    adjusted = to_rounds(from_counts(60, 24, 19), 10, Options())
    # 24 increase rounds, one in every round; doubling on every second round stops at 2 x 19 = 38 rounds
    assert adjusted.recommended is None
    assert (adjusted.why.id, adjusted.why.values) == ("why.no_way", {"rounds": 10, "shallowest": 24})


def test_body_and_sleeve_increases_in_rounds_of_their_own_may_share_rounds_in_a_shallower_yoke() -> None:
    apart = [IncreaseRound(r, *((1, 1, 0) if r % 2 else (0, 0, 1))) for r in range(1, 21)]
    adjusted = to_rounds(from_list(20, apart), 15, Options(step=1))
    assert adjusted.recommended == "double_body"
    assert made(adjusted, "double_body").doubled_rounds == 0
    assert adjusted.why.id == "why.together"


def test_knitting_an_adjusted_yoke_goes_through_the_written_counts_unless_it_is_doubled() -> None:
    # Wider and closer work the same rounds in the same order, so every count on the way is a written one.
    for _, _, _, adjusted in random_adjustments(12, 200):
        written = [sections for _, sections in knit(before(adjusted).yoke.neck, before(adjusted).increase_rounds)]
        for method, found in schedules(adjusted):
            if method != "double_body":
                assert [sections for _, sections in knit(found.yoke.neck, found.increase_rounds)] == written
