from __future__ import annotations

from grading_core.parts.tapers import run_tapers
from grading_core.printing import DASH
from grading_core.shaping import Event, Phase, phases


def words(stitches: int) -> str:
    return f"decrease {stitches}"


def test_plain_rounds_before_and_after_the_shaping_are_told_on_their_side_of_it():
    sizes = [[Phase(1, 8, (), 0), Phase(9, 28, ((10, 2),), 2), Phase(29, 31, (), 0)], [Phase(1, 24, ((8, 2),), 3)]]
    assert run_tapers(sizes, words) == (
        "Work 8 (0) rounds without shaping.",
        "Decrease 2 every 10th (8th) round 2 (3) times.",
        "Work 3 (0) rounds without shaping.",
    )


def test_shaping_in_every_round_of_every_size_needs_no_ordinal():
    sizes = [[Phase(1, 4, ((1, 2),), 4)], [Phase(1, 6, ((1, 2),), 6)]]
    assert run_tapers(sizes, words) == ("Decrease 2 every round 4 (6) times.",)


def test_a_size_with_fewer_steps_works_the_last_one_0_times_and_is_told_to_leave_it_out():
    sizes = [[Phase(1, 6, ((2, 2),), 3), Phase(7, 12, ((3, 2),), 2)], [Phase(1, 12, ((4, 2),), 3)]]
    assert run_tapers(sizes, words) == (
        "Decrease 2 every 2nd (4th) round 3 times, then every 3rd (5th) round 2 (0) times "
        "(leave out what is worked 0 times in your size).",
    )


def test_a_dash_is_for_a_size_without_shaping():
    sizes = [[Phase(1, 12, ((4, 2),), 3)], [Phase(1, 12, (), 0)]]
    assert run_tapers(sizes, words)[0].startswith(f"Decrease 2 every 4th ({DASH}) round 3 (0) times")


def test_sizes_that_are_all_plain_have_plain_rounds_only():
    assert run_tapers([[Phase(1, 60, (), 0)], None], words) == (f"Work 60 ({DASH}) rounds without shaping.",)


def test_sizes_without_a_round_have_no_sentence():
    assert run_tapers([[], []], words) == ()


def test_intervals_in_turn_are_told_by_their_cycle():
    mixed = phases([Event(row, 2) for row in (4, 10, 14, 20)], 20)
    (told,) = run_tapers([mixed, mixed], words)
    assert "at intervals of 4 and 6 rounds in turn" in told
