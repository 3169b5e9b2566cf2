import random
from itertools import permutations

import pytest

from grading_core.errors import Impossible
from grading_core.sections import Increases
from grading_core.shaping import Event, Phase, phases
from grading_core.wording import (
    DASH,
    counted,
    counted_run,
    listed,
    ordinal,
    phase_sentence,
    repeated,
    run_sentences,
    size_run,
    span,
)
from grading_core.yoke.request import Options
from grading_core.yoke.result import Schedule
from grading_core.yoke.schedule import schedule
from grading_core.yoke.words import increase_words, run_instructions
from tests.grading_core.yoke.random_yokes import GAUGE, random_cases, random_schedules, yoke_of
from tests.oracles.knitter import increases_said, read, read_runs, run_values

# Instructions, read back by a reader of its own and knitted


def test_the_instructions_of_one_size_read_back_and_knitted_arrive_at_every_count_they_say() -> None:
    for options, made in random_schedules(21, 500):
        sections, row, rounds = made.yoke.neck, 0, []
        for sentence in made.instructions():
            said = read(sentence)
            assert said.first == row + 1
            for number, what in said.worked:
                sections = sections.after(increases_said(what))
                rounds.append((number, increases_said(what)))
            assert said.stitches == sections.total(options.line_stitches)
            row = said.last
        assert row == made.yoke.rounds
        assert sections == made.yoke.split
        assert rounds == [(worked.round, worked.increases) for worked in made.increase_rounds]


def test_the_instructions_are_no_longer_than_the_phases() -> None:
    for _, made in random_schedules(22, 300):
        assert len(made.instructions()) <= len(made.phases)


def runs_of(made: list[Schedule | Impossible]) -> list[Schedule | None]:
    """What each size knits when it reads the size runs; checked against its own schedule."""
    sentences = run_instructions([size.phases if isinstance(size, Schedule) else None for size in made])
    if not sentences:
        return []
    assert sentences[0].startswith("Count each interval with the increase round that ends it")
    found = read_runs(sentences[1:], len(made))
    for size, said in zip(made, found, strict=True):
        if isinstance(size, Impossible):
            assert said is None
            continue
        assert said is not None
        rounds = [(number, increases_said(what)) for number, what in said[0]]
        assert rounds == [(worked.round, worked.increases) for worked in size.increase_rounds]
        assert said[1] == size.yoke.rounds
    return [size if isinstance(size, Schedule) else None for size in made]


def test_size_runs_read_back_and_knitted_give_every_size_its_own_schedule() -> None:
    generator = random.Random(23)
    written = 0
    for _ in range(200):
        options = random_cases(generator.randint(0, 10**6), 1)[0][1]
        sizes = []
        for size in range(generator.randint(2, 6)):
            rounds, body = 24 + 3 * size, generator.randint(4, 12) + size
            sizes.append(schedule(yoke_of(rounds, (body, body, generator.randint(0, body))), options, GAUGE))
        written += bool(runs_of(sizes))
    assert written > 150


def test_sizes_in_another_order_read_the_same_from_their_size_runs() -> None:
    sizes = [schedule(yoke_of(30 + 4 * n, (10 + n, 10 + n, 12 - n)), Options(), GAUGE) for n in range(4)]
    for order in permutations(sizes):
        assert runs_of(list(order))


def test_sizes_too_unlike_for_one_text_get_none() -> None:
    sizes = [[Phase(1, n, ((n, "x"),), 1)] for n in range(1, 40)]
    assert run_sentences(sizes, str) == ()


# Sentences


def sentence_of(*tokens: tuple[int, str]) -> str:
    row, events = 0, []
    for interval, kind in tokens:
        row += interval
        events.append(Event(row, kind))
    (phase,) = phases(events, row, mix_kinds=True)
    return phase_sentence(phase, str)


@pytest.mark.parametrize(
    ("sentence", "tokens"),
    [
        ("Round 1: shape.", [(1, "shape")]),
        ("Rounds 1 and 2: work 1 round plain, then in the next round shape.", [(2, "shape")]),
        ("Rounds 1 to 4: work 3 rounds plain, then in the next round shape.", [(4, "shape")]),
        ("Rounds 1 and 2: shape every round, twice.", [(1, "shape")] * 2),
        ("Rounds 1 to 9: shape every 3rd round, 3 times.", [(3, "shape")] * 3),
        (
            "Rounds 1 to 20: shape at intervals of 4 and 6 rounds in turn, twice over.",
            [(4, "shape"), (6, "shape")] * 2,
        ),
        (
            "Rounds 1 to 9: work these 2 steps 3 times: work 1 round plain, then in the next round shape; "
            "in the next round rest.",
            [(2, "shape"), (1, "rest")] * 3,
        ),
    ],
)
def test_a_phase_is_said_as_a_knitter_reads_it(sentence: str, tokens: list[tuple[int, str]]) -> None:
    assert sentence_of(*tokens) == sentence


def test_a_plain_phase_is_said_without_shaping() -> None:
    assert phase_sentence(Phase(7, 8, (), 0), str, "row") == "Rows 7 and 8: work without shaping."


@pytest.mark.parametrize(
    ("increases", "words"),
    [
        ((1, 1, 1), "increase 1 stitch at each body edge and each sleeve edge (8 more)"),
        ((1, 1, 0), "increase 1 stitch at each body edge (4 more)"),
        ((0, 0, 1), "increase 1 stitch at each sleeve edge (4 more)"),
        ((2, 2, 1), "increase 2 stitches at each body edge and 1 at each sleeve edge (12 more)"),
        ((1, 0, 1), "increase 1 stitch at each back edge and each sleeve edge (6 more)"),
        ((2, 1, 0), "increase 2 stitches at each back edge and 1 at each front edge (6 more)"),
    ],
)
def test_an_increase_round_names_its_edges_and_the_stitches_it_adds(increases: Increases, words: str) -> None:
    assert increase_words(increases) == words


def test_every_possible_increase_round_reads_back_as_itself() -> None:
    for back, front, sleeve in [(b, f, s) for b in range(3) for f in range(3) for s in range(3)]:
        if back or front or sleeve:
            assert increases_said(increase_words((back, front, sleeve))) == (back, front, sleeve)


# Size runs and words


def test_a_size_run_is_printed_as_patterns_print_it() -> None:
    # As in the nine-size raglan of a yarn maker's leaflet: "25 (31, 37, 41, 47, 51, 53, 57, 59) sts".
    assert size_run([25, 31, 37, 41, 47, 51, 53, 57, 59]) == "25 (31, 37, 41, 47, 51, 53, 57, 59)"


def test_one_size_has_no_brackets_and_none_at_all_is_empty() -> None:
    assert (size_run([84]), size_run([])) == ("84", "")


def test_a_size_without_a_value_is_a_dash_and_a_zero_is_a_zero() -> None:
    assert size_run([None, 0, 3]) == f"{DASH} (0, 3)"


def test_a_size_run_reads_back_as_its_values() -> None:
    generator = random.Random(24)
    for _ in range(300):
        values = [
            generator.choice((None, generator.randint(0, 400))) for _ in range(generator.randint(1, 12))
        ]
        assert run_values(size_run(values)) == values


def test_a_size_that_skips_a_line_is_told_so_and_one_without_a_schedule_shows_dashes() -> None:
    one, two = [Phase(1, 4, ((2, "shape"),), 2)], [Phase(1, 4, ((2, "shape"),), 2), Phase(5, 5, (), 0)]
    assert run_sentences([one, None, two], str) == (
        f"Shape every 2nd round 2 ({DASH}, 2) times.",
        f"Work 0 ({DASH}, 1) rounds without shaping (at 0, go on to the next line).",
    )


@pytest.mark.parametrize(
    ("values", "printed"),
    [
        ([1], "1 time"),
        ([1, 1], "1 (1) time"),
        ([1, None], f"1 ({DASH}) time"),
        ([0, 1], "0 (1) times"),
        ([2], "2 times"),
    ],
)
def test_a_run_takes_the_singular_only_where_every_size_has_one(
    values: list[int | None], printed: str
) -> None:
    assert counted_run(values, "time") == printed


def test_a_count_takes_the_singular_only_for_one() -> None:
    assert [counted(n, "stitch") for n in (0, 1, 2)] == ["0 stitches", "1 stitch", "2 stitches"]


def test_ordinals_end_as_they_are_spoken() -> None:
    endings = {1: "st", 2: "nd", 3: "rd"}
    for number in range(1, 200):
        teen = 11 <= number % 100 <= 13
        assert ordinal(number) == str(number) + ("th" if teen else endings.get(number % 10, "th"))


def test_how_often_is_said_in_words_up_to_twice() -> None:
    assert [repeated(n) for n in (1, 2, 3)] == ["once", "twice", "3 times"]


def test_words_are_listed_with_one_and() -> None:
    lists = [listed(["a"]), listed(["a", "b"]), listed(["a", "b", "c"]), listed([])]
    assert lists == ["a", "a and b", "a, b and c", ""]


def test_a_span_of_rows_is_a_heading() -> None:
    assert [span(3, 3), span(3, 4, "row"), span(3, 5)] == ["Round 3", "Rows 3 and 4", "Rounds 3 to 5"]
