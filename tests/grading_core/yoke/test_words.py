"""What is told of a yoke, read from its values by a reader of its own and knitted."""

import random
from itertools import permutations

import pytest

from grading_core.errors import Impossible
from grading_core.sections import Increases
from grading_core.shaping import Phase
from grading_core.yoke.request import Options
from grading_core.yoke.result import Schedule
from grading_core.yoke.schedule import schedule
from grading_core.yoke.words import Told, explained, run_instructions, size_instructions
from tests.grading_core.yoke.random_yokes import GAUGE, random_cases, random_schedules, yoke_of
from tests.oracles.told import ids, increases_told, only, told_alone, told_each, work_yoke


def test_what_one_size_is_told_knitted_arrives_at_every_count_it_says_and_at_the_split() -> None:
    said = set[str]()
    for options, made in random_schedules(21, 500):
        told = told_alone(made.instructions())
        rounds, last = work_yoke(told, made.yoke.neck, options.line_stitches)
        assert rounds == [*made.increase_rounds]
        assert last == made.yoke.rounds
        said |= {*ids(told)}
    ways = {"increase", "cycle", "steps", "plain", "listed", "other"}
    assert {f"yoke.rounds_{way}" for way in ways} < said


def test_the_instructions_are_no_longer_than_the_phases() -> None:
    for _, made in random_schedules(22, 300):
        assert 1 <= len(made.told_by_rounds()) <= len(made.phases)


def runs_of(made: list[Schedule | Impossible]) -> bool:
    """Whether sizes are told together; what each knits that reads the size runs is checked against its own schedule."""
    labels = [str(place) for place in range(len(made))]
    possible = [size if isinstance(size, Schedule) else None for size in made]
    sentences = run_instructions([size.told if size else None for size in possible])
    if not sentences:
        return False
    told = told_each(sentences, labels)
    for label, size in zip(labels, possible, strict=True):
        if size is None:
            assert told[label] == []
            continue
        rounds, last = work_yoke(told[label], size.yoke.neck, size.line_stitches)
        assert rounds == [*size.increase_rounds]
        assert last == size.yoke.rounds
    return True


def test_size_runs_knitted_give_every_size_its_own_schedule() -> None:
    generator = random.Random(23)
    written = impossible = 0
    for _ in range(200):
        options = random_cases(generator.randint(0, 10**6), 1)[0][1]
        sizes = []
        for size in range(generator.randint(2, 6)):
            rounds, body = 24 + 3 * size, generator.randint(4, 12) + size
            sizes.append(schedule(yoke_of(rounds, (body, body, generator.randint(0, body))), options, GAUGE))
        told = runs_of(sizes)
        written += told
        impossible += told and any(isinstance(size, Impossible) for size in sizes)
    assert written > 110
    assert impossible > 5


def test_sizes_in_another_order_read_the_same_from_their_size_runs() -> None:
    sizes = [schedule(yoke_of(30 + 4 * n, (10 + n, 10 + n, 12 - n)), Options(), GAUGE) for n in range(4)]
    for order in permutations(sizes):
        assert runs_of(list(order))


def told_of(increases: Increases) -> dict[str, object]:
    """What is told of one round with such increases."""
    (told,) = told_alone(size_instructions(Told([Phase(1, 2, ((2, increases),), 1)], 100)))
    return dict(told.values)


@pytest.mark.parametrize(
    ("increases", "kind", "once", "twice", "more"),
    [
        ((1, 1, 1), "once", ("back", "front", "sleeve"), (), 8),
        ((1, 1, 0), "once", ("back", "front"), (), 4),
        ((0, 0, 1), "once", ("sleeve",), (), 4),
        ((2, 2, 1), "both", ("sleeve",), ("back", "front"), 12),
        ((1, 0, 1), "once", ("back", "sleeve"), (), 6),
        ((2, 1, 0), "both", ("front",), ("back",), 6),
        ((2, 2, 0), "twice", (), ("back", "front"), 8),
    ],
)
def test_an_increase_round_names_its_edges_and_the_stitches_it_adds(
    increases: Increases, kind: str, once: tuple[str, ...], twice: tuple[str, ...], more: int
) -> None:
    told = told_of(increases)
    assert (told["kind"], told["once"], told["twice"], told["more"]) == (kind, once, twice, more)
    assert told["stitches"] == 100 + more


def test_every_possible_increase_round_reads_back_as_itself() -> None:
    for back, front, sleeve in [(b, f, s) for b in range(3) for f in range(3) for s in range(3)]:
        if back or front or sleeve:
            assert increases_told(told_of((back, front, sleeve))) == (back, front, sleeve)


def test_a_raglan_line_without_stitches_runs_at_the_markers() -> None:
    assert only(told_alone(explained(2, doubled=False)), "yoke.lines") == {"line": 2}
    assert ids(explained(0, doubled=False)) == ["yoke.no_lines", "yoke.leaning"]


def test_two_increases_at_an_edge_are_explained_where_there_are_any() -> None:
    assert ids(explained(0, doubled=True)) == ["yoke.no_lines", "yoke.leaning", "yoke.doubled"]
    for _, made in random_schedules(24, 100):
        doubled = any(max(worked.increases) == 2 for worked in made.increase_rounds)
        assert ("yoke.doubled" in ids(made.instructions())) is doubled


@pytest.mark.parametrize(("many", "listed"), [(6, False), (7, True)])
def test_a_schedule_of_more_than_six_phases_lists_its_increase_rounds(many: int, listed: bool) -> None:
    phases, row = [], 0
    for place in range(many):
        kind: Increases = (1, 1, 1) if place % 2 else (1, 1, 0)
        phases.append(Phase(row + 1, row + place + 1, ((place + 1, kind),), 1))
        row += place + 1
    told = ids(size_instructions(Told(phases, 100)))
    assert ("yoke.rounds_listed" in told) is listed
    assert len(told) == (3 if listed else 6)


def test_yokes_too_unlike_for_one_text_get_none() -> None:
    sizes = [Told([Phase(1, n, ((n, (1, 1, 1)),), 1)], 100) for n in range(1, 40)]
    assert run_instructions(sizes) == ()


def test_as_long_as_a_front_is_not_cast_on_in_full_its_stitches_are_not_counted() -> None:
    # 8 stitches more in every 2nd of 6 rounds; after row 1 the front lacks 20 stitches, after rows 2 and 3 still 18
    phases = [Phase(1, 2, ((2, (1, 1, 1)),), 1), Phase(3, 6, ((4, (1, 1, 1)),), 1)]
    size = Told(phases, 100, (20, 18, 18))
    assert [values["stitches"] for _, values in told_alone(size_instructions(size))] == [108 - 18, 116]
    whole = Told(phases, 104)
    assert [each.values["stitches"] for each in run_instructions([size, None, whole])] == [
        (108 - 18, None, 112),
        (116, None, 120),
    ]
