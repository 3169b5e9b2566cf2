from __future__ import annotations

import random
from itertools import accumulate

from grading_core.parts.body import SHAPING as BODY_SHAPING
from grading_core.parts.sleeve import SHAPING
from grading_core.parts.tapers import Plain, Shaped, run_tapers, shaping_sentences
from grading_core.shaping import Phase, phases, spread
from tests.oracles.told import ids, told_each, work_shaping


def test_plain_rounds_before_and_after_the_shaping_are_on_their_side_of_it():
    sizes = [[Phase(1, 8, (), 0), Phase(9, 28, ((10, -2),), 2), Phase(29, 31, (), 0)], [Phase(1, 24, ((8, -2),), 3)]]
    assert run_tapers(sizes) == (Plain((8, None)), Shaped(-2, (10, 8), (2, 3)), Plain((3, None)))


def test_a_size_with_fewer_steps_has_nothing_in_the_last_one():
    sizes = [[Phase(1, 6, ((2, -2),), 3), Phase(7, 12, ((3, -2),), 2)], [Phase(1, 12, ((4, -2),), 3)]]
    assert run_tapers(sizes) == (Shaped(-2, (2, 4), (3, 3)), Shaped(-2, (3, None), (2, None)))


def test_a_size_without_shaping_has_nothing_in_it():
    sizes = [[Phase(1, 12, ((4, -2),), 3)], [Phase(1, 12, (), 0)]]
    assert run_tapers(sizes) == (Shaped(-2, (4, None), (3, None)), Plain((None, 12)))


def test_sizes_that_are_all_plain_have_plain_rounds_only():
    assert run_tapers([[Phase(1, 60, (), 0)], None]) == (Plain((60, None)),)


def test_sizes_without_a_round_have_no_step():
    assert run_tapers([[], []]) == ()


def test_intervals_in_turn_are_one_cycle():
    mixed = phases([(row, -2) for row in (4, 10, 14, 20)], 20)
    assert run_tapers([mixed, mixed]) == (Shaped(-2, (4, 4), (2, 2), (4, 6)),)


def test_a_cycle_changes_the_stitches_as_often_as_it_has_intervals():
    assert Shaped(-2, (4, None), (3, None), (4, 6)).changes() == (-12, 0)
    assert Shaped(4, (4, 5), (3, 1)).changes() == (12, 4)


def test_increases_beside_decreases_are_laid_side_by_side_in_their_order():
    both = phases([(2, -4), (4, -4), (7, 4), (10, 4)], 12)
    one = phases([(3, 4)], 12)
    steps = run_tapers([both, one])
    assert [step.change for step in steps if isinstance(step, Shaped)] == [-4, 4]
    assert steps[0] == Shaped(-4, (2, None), (2, None))


def test_sizes_too_unlike_are_not_told_together():
    # every size turns from decreases to increases in rounds of its own
    sizes = [phases([(n, -4), (3 * n + 1, 4)], 200) for n in range(1, 12)]
    assert run_tapers(sizes) is None
    assert run_tapers(sizes[:1]) is not None


def random_tapers(generator: random.Random) -> list[list[tuple[int, int]] | None]:
    """Shaping rounds of up to five sizes, each with the stitches lost there: none, evenly, or at random."""
    sizes: list[list[tuple[int, int]] | None] = []
    for _ in range(generator.randint(1, 5)):
        many, way = (
            generator.randint(1, 8),
            generator.choice(("none", "impossible", "even", "any", "closest", "closest")),
        )
        if way == "impossible":
            sizes.append(None)
        elif way == "none":
            sizes.append([])
        elif way == "any":
            sizes.append([(row, -2) for row in sorted(generator.sample(range(1, 41), many))])
        else:
            after = generator.choice((0, 0, 3))
            spacing = "even" if way == "even" else "closest_first"
            sizes.append([(after + row, -2) for row in spread(many, 37, spacing).positions()])
    return sizes if any(size is not None for size in sizes) else random_tapers(generator)


def test_the_sentences_of_all_sizes_worked_as_told_are_the_shaping_of_each():
    generator = random.Random(31)
    apart, said = 0, set()
    for _ in range(400):
        sizes = random_tapers(generator)
        labels = [str(place) for place in range(len(sizes))]
        stitches = [None if size is None else 60 + 2 * place for place, size in enumerate(sizes)]
        stages = [None if size is None else [phases(size, 40)] for size in sizes]
        sentences = [*shaping_sentences(stages, stitches, SHAPING, labels)]
        apart += sentences[0].id == "sizes.apart"
        said |= {*ids(sentences)}
        told = told_each(sentences, labels)
        for label, size, count in zip(labels, sizes, stitches, strict=True):
            if size is None:
                assert {*ids(told[label])} <= {"sizes.apart"}
            else:
                assert work_shaping(told[label], "sleeve", count) == (size, 40, count - 2 * len(size))
    assert 20 < apart < 200
    assert said == {"sizes.apart", "sleeve.plain", "sleeve.decrease", "sleeve.decrease_cycle"}


def test_sizes_that_shape_in_every_round_are_told_apart_from_those_that_do_not():
    stages = [[phases([(row, -2) for row in rows], 8)] for rows in ((1, 2, 3), (2, 4, 6), (3, 6))]
    told = [*shaping_sentences(stages, [40] * 3, SHAPING, ["S", "M", "L"])]
    shaped = [(each.labels, each.values["every"]) for each in told if each.id == "sleeve.decrease"]
    assert shaped == [(("S",), (1, None, None)), (("M", "L"), (None, 2, 3))]


def test_the_stages_of_all_sizes_are_told_one_after_another_with_the_stitches_of_all_before():
    one = [[Phase(1, 6, ((3, -4),), 2)], [Phase(1, 4, ((2, 4),), 2)]]
    two = [[Phase(1, 8, ((4, -4),), 2)], [Phase(1, 6, (), 0)]]
    told = told_each(shaping_sentences([one, two], [100, 120], BODY_SHAPING, ["S", "M"]), ["S", "M"])
    assert work_shaping(told["S"], "body", 100) == ([(3, -4), (6, -4), (8, 4), (10, 4)], 10, 100)
    assert work_shaping(told["M"], "body", 120) == ([(4, -4), (8, -4)], 14, 112)


def test_sizes_too_unlike_are_told_one_by_one_under_their_names_all_stages_of_each():
    stages = [[phases([(n, -4), (3 * n + 1, 4)], 200), [Phase(1, 5, (), 0)]] for n in range(1, 12)]
    labels = [str(place) for place in range(11)]
    first, *told = shaping_sentences(stages, [100] * 11, BODY_SHAPING, labels)
    assert (first.id, first.labels) == ("sizes.apart", None)
    assert [each.labels for each in told] == sorted([each.labels for each in told], key=lambda only: int(only[0]))
    assert all(work_shaping(own, "body", 100)[1] == 205 for own in told_each(told, labels).values())


def test_sizes_of_two_neighbouring_intervals_take_no_more_steps_than_one_of_them():
    generator = random.Random(32)
    for _ in range(200):
        sizes = [[*spread(generator.randint(1, 12), 40).intervals] for _ in range(generator.randint(1, 6))]
        events = [[(row, -2) for row in accumulate(size)] for size in sizes]
        made = run_tapers([phases(each, 40) for each in events])
        assert made is not None
        assert len(made) == max(len({*size}) for size in sizes)
