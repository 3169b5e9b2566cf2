"""Instructions of a yoke, read back by a reader of its own and knitted."""

import random
from itertools import permutations

import pytest

from grading_core.errors import Impossible
from grading_core.sections import Increases
from grading_core.yoke.request import Options
from grading_core.yoke.result import Schedule
from grading_core.yoke.schedule import schedule
from grading_core.yoke.words import increase_words, run_instructions
from tests.grading_core.yoke.random_yokes import GAUGE, random_cases, random_schedules, yoke_of
from tests.oracles.knitter import increases_said, read, read_runs


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
        assert 1 <= len(made.instructions()) <= len(made.phases)


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
