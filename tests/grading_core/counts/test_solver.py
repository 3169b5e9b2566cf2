"""The counts of all sizes: identities, rules, and the optimum against a general solver."""

from __future__ import annotations

import random
from dataclasses import replace
from fractions import Fraction
from itertools import pairwise

import pytest
from hypothesis import assume, given
from hypothesis import strategies as st

from grading_core.counts.request import QUANTITIES, Rules, Targets
from grading_core.counts.solver import Solved, conflicts, solve
from grading_core.errors import Impossible
from grading_core.gauge import Gauge
from grading_core.rounding import CountRule
from grading_core.sections import Sections
from grading_core.yoke.request import Options
from grading_core.yoke.result import Schedule
from grading_core.yoke.schedule import schedule
from tests.floors import in_a_hundred_cases
from tests.oracles import every_chain
from tests.oracles.garment_model import least_cost

GAUGE = Gauge.over(Fraction(22), Fraction(31), Fraction(10))
ROOMY = Options(step=1, double_body="if_needed")


def target(label: str, *values) -> Targets:
    """Targets in the order in which they are declared."""
    return Targets(label=label, **dict(zip(QUANTITIES, map(Fraction, values), strict=True)))


def targets(rng: random.Random, sizes: int, *, wider_front: bool = False) -> list[Targets]:
    """Sizes that rise by uneven steps, in hundredths of a stitch; with a front that is wider than the back, or not."""
    made, neck, back, body, sleeve, underarm, rounds = [], 90.0, 0.345, 190.0, 64.0, 13.0, 66.0
    for size in range(sizes):
        sections = neck - 8
        values = (neck, sections * back, sections * back, sections * (0.5 - back), body, sleeve, underarm, rounds)
        made.append(target(str(size), *(Fraction(round(value * 100), 100) for value in values)))
        neck += rng.uniform(0, 5)
        body += rng.uniform(2, 28)
        sleeve += rng.uniform(1, 11)
        underarm += rng.uniform(0, 3)
        rounds += rng.uniform(0, 5)
    if wider_front:
        extra = Fraction(rng.randint(0, 1600), 100)
        for place, size in enumerate(made):
            made[place] = replace(size, front_extra=extra)
            extra += Fraction(rng.randint(0, 250), 100)
    return made


def rules(rng: random.Random, yoke: Options = ROOMY) -> Rules:
    multiple = rng.choice
    return Rules(
        neck=CountRule(multiple([1, 1, 2, 4, 6]), rounding=multiple(["nearest", "nearest", "up"])),
        body=CountRule(multiple([1, 1, 4, 6, 12]), 2 * rng.randint(0, 3)),
        sleeve=CountRule(multiple([1, 1, 2, 4]), rounding=multiple(["nearest", "nearest", "down"])),
        back_parity=multiple([None, None, "even", "odd"]),
        sleeve_parity=multiple([None, None, "even", "odd"]),
        seam_stitches=multiple([None, None, 0, 1]),
        narrower_front=multiple([False, False, True]),
        line_to_body=rng.randint(0, 2),
        yoke=yoke,
    )


def possible_rules(seed: int) -> Rules:
    rng = random.Random(seed)
    while conflicts(made := rules(rng)):
        pass
    return made


@pytest.mark.parametrize("seed", range(12))
def test_no_counts_cost_less_than_those_chosen(seed):
    wanted, ruled = targets(random.Random(seed), 3), possible_rules(seed)
    assert solve(wanted, ruled).cost == least_cost(wanted, ruled)


@pytest.mark.parametrize("seed", range(8))
def test_no_counts_with_a_wider_front_cost_less_than_those_chosen(seed):
    wanted, ruled = targets(random.Random(seed), 3, wider_front=True), possible_rules(seed)
    assert solve(wanted, ruled).cost == least_cost(wanted, ruled)


@pytest.mark.parametrize("seed", range(2))
def test_no_counts_cost_less_over_many_sizes(seed):
    wanted, ruled = targets(random.Random(seed), 5), Rules(body=CountRule(4), yoke=ROOMY)
    assert solve(wanted, ruled).cost == least_cost(wanted, ruled)


@pytest.mark.parametrize("wider_front", [False, True])
@pytest.mark.parametrize("seed", range(20, 26))
def test_no_chain_of_two_sizes_costs_less_of_all_there_are(seed, wider_front):
    wanted, ruled = targets(random.Random(seed), 2, wider_front=wider_front), possible_rules(seed)
    assert solve(wanted, ruled).cost == every_chain.least_cost(wanted, ruled)


seeds = st.integers(0, 10**9)


def solved(seed: int, sizes: int = 5, *, wider_front: bool = False) -> tuple[Rules, list[Solved]]:
    ruled = possible_rules(seed)
    solution = solve(targets(random.Random(seed), sizes, wider_front=wider_front), ruled)
    found = [size for size in solution.sizes if isinstance(size, Solved)]
    assume(len(found) == sizes)
    return ruled, found


@in_a_hundred_cases(90)
@given(seeds)
def test_body_and_sleeves_have_the_stitches_of_the_yoke_and_the_underarms(seed):
    for size in (*solved(seed)[1], *solved(seed, wider_front=True)[1]):
        counts = size.counts
        assert counts.body + 2 * counts.sleeve == counts.yoke_total + 4 * counts.underarm


@in_a_hundred_cases(90)
@given(seeds)
def test_every_total_lands_on_its_multiple(seed):
    ruled, sizes = solved(seed)
    for size in sizes:
        counts = size.counts
        assert ruled.neck.accepts(counts.cast_on)
        assert ruled.body.accepts(counts.body)
        assert ruled.sleeve.accepts(counts.sleeve)


@in_a_hundred_cases(90)
@given(seeds)
def test_every_section_has_the_parity_demanded_and_all_sizes_have_the_same(seed):
    ruled, sizes = solved(seed)
    for section, demanded in (("back", ruled.back_parity), ("sleeve", ruled.sleeve_parity)):
        found = {getattr(sections, section) % 2 for size in sizes for sections in (size.counts.neck, size.counts.split)}
        assert len(found) <= 1
        if demanded:
            assert found <= {("even", "odd").index(demanded)}


@in_a_hundred_cases(30)
@given(seeds)
def test_the_underarm_less_the_seam_is_even(seed):
    ruled, sizes = solved(seed)
    assume(ruled.seam_stitches is not None)
    assert all((size.counts.underarm - ruled.seam_stitches) % 2 == 0 for size in sizes)


@in_a_hundred_cases(90)
@given(seeds)
def test_no_count_falls_from_size_to_size(seed):
    def all_counts(size):
        counts = size.counts
        neck, split = counts.neck, counts.split
        sections = (neck.back, neck.front, neck.sleeve, split.back, split.front, split.sleeve)
        return (*sections, counts.cast_on, counts.body, counts.sleeve, counts.underarm, counts.rounds)

    for wider_front in (False, True):
        for smaller, larger in pairwise(solved(seed, wider_front=wider_front)[1]):
            assert all(a <= b for a, b in zip(all_counts(smaller), all_counts(larger), strict=True))


@in_a_hundred_cases(90)
@given(seeds)
def test_a_front_as_wide_as_asked_keeps_its_parity_its_neck_and_the_multiple_of_the_body(seed):
    ruled, sizes = solved(seed, wider_front=True)
    wanted = targets(random.Random(seed), len(sizes), wider_front=True)
    for size, target_ in zip(sizes, wanted, strict=True):
        neck, split = size.counts.neck, size.counts.split
        extra = split.front - split.back
        assert extra % 4 == 0
        assert abs(extra - target_.front_extra) <= 2
        assert size.differences.front_extra == extra - target_.front_extra
        assert split.back % 2 == split.front % 2 == neck.back % 2 == neck.front % 2
        assert split.back >= neck.back
        assert split.front >= neck.front
        assert ruled.body.accepts(size.counts.body)


@in_a_hundred_cases(90)
@given(seeds, st.booleans())
def test_the_increases_fit_in_the_rounds(seed, wider_front):
    ruled, sizes = solved(seed, wider_front=wider_front)
    for size in sizes:
        assert isinstance(schedule(size.counts.yoke("one"), ruled.yoke, GAUGE), Schedule)


@in_a_hundred_cases(90)
@given(seeds)
def test_back_and_front_are_equal_at_the_split_and_the_front_never_wider_at_the_neck(seed):
    ruled, sizes = solved(seed)
    for size in sizes:
        assert size.counts.split.back == size.counts.split.front
        assert size.counts.neck.front <= size.counts.neck.back
        assert ruled.narrower_front or size.counts.neck.front == size.counts.neck.back


ONE = target("M", 104, 34, 34, 14, 228, 74, 16, 74)


def test_targets_that_are_possible_are_met_at_no_cost():
    solution = solve([ONE], Rules(yoke=Options(double_body="if_needed")))
    assert solution.cost == 0
    assert solution.sizes[0].differences == target("M", *[0] * 8)


def test_of_parities_that_cost_the_same_the_one_whose_neck_costs_less_is_taken():
    tied = target("M", 103, 33, 33, 13, 205, 66, 11, 70)
    ruled = Rules(body=CountRule(4), yoke=ROOMY)
    assert (
        solve([tied], replace(ruled, back_parity="even")).cost == solve([tied], replace(ruled, back_parity="odd")).cost
    )
    assert solve([tied], ruled).sizes[0].counts.neck == Sections(33, 33, 14)


def test_a_size_whose_increases_do_not_fit_says_so_and_the_others_are_computed():
    wide = target("wide", 110, 35, 35, 16, 360, 120, 24, 80)
    solution = solve([ONE, wide], Rules())
    assert isinstance(solution.sizes[0], Solved)
    assert isinstance(solution.sizes[1], Impossible)
    assert solution.sizes[1].reason.id == "reason.too_few_rounds"


def test_each_nearest_change_alone_makes_an_impossible_yoke_possible():
    wide = target("wide", 110, 35, 35, 16, 360, 120, 24, 80)
    nearest = {each.field: each.value for each in solve([wide], Rules()).sizes[0].nearest}
    deeper = target("wide", 110, 35, 35, 16, 360, 120, 24, nearest["rounds"])
    assert isinstance(solve([deeper], Rules()).sizes[0], Solved)
    assert isinstance(solve([wide], Rules(yoke=Options(step=nearest["step"]))).sizes[0], Solved)
    doubled = Rules(yoke=Options(double_body=nearest["double_body"]))
    assert isinstance(solve([wide], doubled).sizes[0], Solved)


def test_the_yoke_gets_the_rounds_it_needs_before_a_circumference_gives_way():
    # 31 increases at a body edge on every second round need 62 rounds
    shallow = target("M", 104, 34, 34, 14, 228, 74, 16, 60)
    counts = solve([shallow], Rules()).sizes[0].counts
    assert (counts.body, counts.sleeve, counts.cast_on) == (228, 74, 104)
    assert counts.rounds == counts.split.back - counts.neck.back == 62


def test_the_underarm_helps_out_where_the_rounds_within_reach_are_not_enough():
    # 86 more stitches at the sleeve are 43 increases, and 74 + 6 rounds have room for 40 of them
    wide = target("M", 104, 34, 34, 14, 228, 118, 16, 74)
    counts = solve([wide], Rules()).sizes[0].counts
    assert counts.split.sleeve - counts.neck.sleeve == 2 * 40
    assert counts.rounds == 80
    assert counts.underarm > 16
    assert counts.body == 228


def test_a_sleeve_narrower_than_its_section_at_the_neck_is_impossible_and_says_from_where_it_is_not():
    thin = target("thin", 104, 34, 34, 14, 228, 12, 16, 74)
    impossible = solve([thin], Rules(yoke=ROOMY)).sizes[0]
    (nearest,) = impossible.nearest
    mended = target("thin", 104, 34, 34, 14, 228, nearest.value, 16, 74)
    assert nearest.field == "sleeve"
    assert isinstance(solve([mended], Rules(yoke=ROOMY)).sizes[0], Solved)


def test_an_underarm_that_grows_faster_than_body_and_sleeve_names_one_that_does_not():
    larger = target("L", 104, 34, 34, 14, 230, 75, 44, 74)
    made, impossible = solve([ONE, larger], Rules(yoke=ROOMY)).sizes
    assert isinstance(made, Solved)
    (nearest,) = impossible.nearest
    assert nearest.field == "underarm"
    mended = target("L", 104, 34, 34, 14, 230, 75, nearest.value, 74)
    assert all(isinstance(size, Solved) for size in solve([ONE, mended], Rules(yoke=ROOMY)).sizes)


WIDE = Options(step=1)


@pytest.mark.parametrize(
    ("smaller", "impossible", "options", "reason"),
    [
        # half of 228 less 2 and 16 is 96, and 96 less 80 is less than the 34 of the neck
        (None, replace(ONE, front_extra=Fraction(160)), ROOMY, "neck_too_wide_body_extra"),
        # 96 and 44 more are 106 more than the neck's 34: 53 increases, and 50 rounds
        (None, replace(ONE, front_extra=Fraction(88), rounds=Fraction(42)), WIDE, "too_few_rounds"),
        # 96 and 40 less 40 are 40 fewer than 96
        (
            ONE,
            replace(ONE, body=Fraction(308), rounds=Fraction(100), front_extra=Fraction(160)),
            ROOMY,
            "front_extra_grows_too_fast",
        ),
    ],
)
def test_a_front_too_wide_says_so_and_names_one_that_is_not(smaller, impossible, options, reason):
    before = [] if smaller is None else [smaller]
    refused = solve([*before, impossible], Rules(yoke=options)).sizes[-1]
    assert isinstance(refused, Impossible)
    assert refused.reason.id == f"reason.{reason}"
    (widest,) = [each.value for each in refused.nearest if each.field == "front_extra"]
    assert widest % 4 == 0

    def possible(front_extra: int) -> bool:
        eased = replace(impossible, front_extra=Fraction(front_extra))
        return isinstance(solve([*before, eased], Rules(yoke=options)).sizes[-1], Solved)

    assert possible(widest)
    # another parity, or a narrower back in the size before it, may leave a little more
    assert not possible(widest + 20)


def test_a_cast_on_rule_too_coarse_for_the_neck_names_a_multiple_that_is_not():
    impossible = solve([ONE], Rules(neck=CountRule(200))).sizes[0]
    (nearest,) = impossible.nearest
    assert isinstance(solve([ONE], Rules(neck=CountRule(nearest.value), yoke=ROOMY)).sizes[0], Solved)


@pytest.mark.parametrize("rounding", ["nearest", "up", "down"])
@pytest.mark.parametrize("multiple", range(1, 17))
def test_a_cast_on_on_any_usual_multiple_is_possible(multiple, rounding):
    counts = solve([ONE], Rules(neck=CountRule(multiple, 0, rounding), yoke=ROOMY)).sizes[0].counts
    assert counts.cast_on % multiple == 0


@pytest.mark.parametrize(
    ("ruled", "named"),
    [
        # a cast-on, and a body, are even: back and front are alike, and whatever else there is comes in pairs
        (Rules(neck=CountRule(2, 1)), ("neck",)),
        (Rules(body=CountRule(2, 1)), ("body",)),
        # even sections and an even underarm make an even sleeve
        (
            Rules(sleeve=CountRule(2, 1), sleeve_parity="even", seam_stitches=0),
            ("sleeve", "sleeve_parity", "seam_stitches"),
        ),
        # odd halves with an even underarm make a body of 2 more than a multiple of 4
        (Rules(body=CountRule(4), back_parity="odd", seam_stitches=0), ("body", "back_parity", "seam_stitches")),
    ],
)
def test_rules_that_contradict_each_other_are_named(ruled, named):
    assert conflicts(ruled) == named
