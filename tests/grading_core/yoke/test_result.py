from grading_core.sections import IncreaseRound
from grading_core.yoke.schedule import finish
from tests.grading_core.yoke.random_yokes import GAUGE, random_schedules, yoke_of
from tests.oracles.knitter import knit


def test_phases_cover_round_one_to_the_last_and_expand_back_to_the_increase_rounds() -> None:
    for _, made in random_schedules(12, 400):
        row, expanded = 0, []
        for phase in made.phases:
            assert phase.from_row == row + 1
            for interval, kind in phase.cycle * phase.times:
                row += interval
                expanded.append((row, kind))
            assert phase.times == 0 or row == phase.to_row
            row = phase.to_row
        assert row == made.yoke.rounds
        assert expanded == [(worked.round, worked.increases) for worked in made.increase_rounds]


def test_the_sections_after_each_phase_are_those_that_knitting_reaches() -> None:
    for _, made in random_schedules(13, 300):
        reached = knit(made.yoke.neck, made.increase_rounds)
        for phase, sections in zip(made.phases, made.sections_after_phases(), strict=True):
            so_far = [knitted for number, knitted in reached if number <= phase.to_row]
            assert sections == (so_far[-1] if so_far else made.yoke.neck)


def test_the_most_increase_rounds_in_a_row_are_counted_as_they_come() -> None:
    for _, made in random_schedules(14, 300):
        longest = current = 0
        rounds = {worked.round for worked in made.increase_rounds}
        for number in range(1, made.yoke.rounds + 1):
            current = current + 1 if number in rounds else 0
            longest = max(longest, current)
        assert made.consecutive_increase_rounds == longest


def test_back_and_front_are_told_as_one_only_where_no_round_has_other_numbers_for_them() -> None:
    together = (IncreaseRound(2, 1, 1, 0), IncreaseRound(4, 1, 1, 1))
    in_turn = (IncreaseRound(2, 2, 0, 0), IncreaseRound(4, 0, 2, 1))
    told = [finish(yoke_of(4, (2, 2, 1)), rounds, 2, GAUGE) for rounds in (together, in_turn)]
    assert [made.body_as_one for made in told] == [True, False]
    # over the whole yoke both lead to the same
    assert [(made.body_increases, made.back_increases, made.front_increases) for made in told] == [(2, None, None)] * 2


def test_increases_of_back_and_front_that_differ_are_told_apart() -> None:
    made = finish(yoke_of(4, (2, 1, 1)), (IncreaseRound(2, 1, 1, 1), IncreaseRound(4, 1, 0, 0)), 2, GAUGE)
    told = (made.body_increases, made.back_increases, made.front_increases, made.sleeve_increases)
    assert told == (None, 2, 1, 1)
