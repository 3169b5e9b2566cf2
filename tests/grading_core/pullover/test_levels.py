"""Counts at a level over all sizes, against every choice there is."""

from __future__ import annotations

from fractions import Fraction
from functools import partial
from itertools import pairwise, product
from types import SimpleNamespace

import pytest
from hypothesis import given
from hypothesis import strategies as st

from grading_core.codes import ReasonCode
from grading_core.counts.solver import Solved
from grading_core.errors import Impossible
from grading_core.gauge import Gauge
from grading_core.parts.body import Level
from grading_core.pullover.grade import grade_pullover
from grading_core.pullover.levels import level_stitches, nearest_rise
from grading_core.pullover.request import BodyWishes, Gauges, LevelWish, PulloverRequest
from tests.grading_core.pullover.knitted_pullovers import sizes_of
from tests.oracles.told import told_each, work_shaping

GAUGE = Gauge(Fraction(9, 4), Fraction(3))


def chosen(bodies, hips):
    """The counts at the hip; a body of None has no counts."""
    rising = [
        SimpleNamespace(label=str(place), levels=(Level("hip", hip, Fraction(20)),)) for place, hip in enumerate(hips)
    ]
    solved = {
        str(place): Impossible(ReasonCode.NOTHING_LEFT, "")
        if body is None
        else Solved(counts=SimpleNamespace(body=body, rounds=60), differences=None, cost=Fraction(0))  # type: ignore[arg-type]
        for place, body in enumerate(bodies)
    }
    return level_stitches(rising, solved, None, GAUGE)  # type: ignore[arg-type]


@given(
    st.lists(st.tuples(st.integers(50, 60), st.integers(80, 96).map(lambda n: Fraction(n, 4))), min_size=1, max_size=4)
)
def test_no_choice_that_falls_only_where_the_hips_do_comes_nearer(sizes):
    bodies, hips = zip(*sizes, strict=True)
    targets = [hip * GAUGE.stitches_per_cm for hip in hips]

    def allowed(counts):
        return all(a <= b or low > high for (a, b), (low, high) in zip(pairwise(counts), pairwise(hips), strict=True))

    def far(counts):
        return sum((count - target) ** 2 for count, target in zip(counts, targets, strict=True))

    counts = tuple(count for (count,) in chosen(bodies, hips).values())
    # 45 to 54 stitches are wanted: 36 to 64 hold the best of four sizes
    reached = [[count for count in range(36, 65) if (count - body) % 4 == 0] for body in bodies]
    assert all((count - body) % 4 == 0 for count, body in zip(counts, bodies, strict=True))
    assert allowed(counts)
    assert far(counts) == min(far(choice) for choice in product(*reached) if allowed(choice))


def test_a_size_without_counts_has_none_at_its_levels():
    assert chosen([50, None, 50], [Fraction(20)] * 3) == {"0": (46,), "2": (46,)}


@pytest.mark.parametrize("bust", [0, 2, 4, 7])
def test_the_hem_of_babies_with_equal_hips_does_not_fall(bust):
    # 3, 6 and 12 months: 19, 20 and 20 in round the hip, as the published table of babies has it; without choosing over
    # all sizes the hem falls at these eases by 2 stitches from one size to the next
    request = PulloverRequest(
        gauges=Gauges(Gauge.over(Fraction(23), Fraction(55, 2), Fraction(10))),
        body_table="babies",
        ease={"bust": Fraction(bust)},
        smoothing="none",
        body=BodyWishes(levels=(LevelWish("hip", Fraction(1016, 100)),)),
    )
    sizes = sizes_of(grade_pullover(request))
    hips = [size.body.levels[0].level.circumference_cm for size in sizes]
    assert any(before == after for before, after in pairwise(hips))
    for counts in ([size.body.levels[0].stitches for size in sizes], [size.body.hem.stitches for size in sizes]):
        assert counts == sorted(counts)


def test_an_impossible_size_has_nothing_in_the_body_and_the_others_have_all_their_rounds():
    request = PulloverRequest(
        gauges=Gauges(Gauge.over(Fraction(23), Fraction(55, 2), Fraction(10))),
        body_table="babies",
        body=BodyWishes(levels=(LevelWish("hip", Fraction(1016, 100)),)),
    )
    made = grade_pullover(request)
    first, *others = made.sizes
    assert isinstance(first.outcome, Impossible)
    (body,) = [part.sentences for part in made.instructions if part.part == "body"]
    told = told_each(body, made.labels)
    assert work_shaping(told[first.label], "body", 0) == ([], 0, 0)
    for size in others:
        shaping, rounds, stitches = work_shaping(told[size.label], "body", size.outcome.counts.body)
        assert (shaping, rounds) == ([*size.outcome.body.shaping], size.outcome.body.rounds)
        assert stitches == size.outcome.body.levels[0].stitches


def distance(wanted, count):
    return abs(count - wanted)


def test_forty_sizes_with_remainders_of_their_own_have_the_nearest_counts_that_do_not_fall():
    """Each count is as near as it gets where wishes rise by more than a step of four from size to size."""
    wanted = [100 + 9 * place + Fraction(1, 7) for place in range(40)]
    permitted = [range(3 * place % 4, 600, 4) for place in range(40)]
    nearest = [min(counts, key=partial(distance, want)) for want, counts in zip(wanted, permitted, strict=True)]
    assert nearest_rise(nearest, wanted) == nearest


def test_forty_equal_wishes_end_on_counts_that_do_not_fall():
    """Of remainders 0, 3, 2, 1 and so on each count has to follow on the one before it."""
    wanted = [Fraction(101)] * 40
    found = nearest_rise([100 + (-place) % 4 for place in range(40)], wanted)
    assert all(before <= after for before, after in pairwise(found))
    assert [count % 4 for count in found] == [-place % 4 for place in range(40)]
