"""Relations between printed numbers against every number that may be meant by them, on a fine grid."""

from collections.abc import Mapping
from fractions import Fraction
from itertools import product

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from grading_core.codes import ProofCode
from grading_core.gauge import Gauge
from grading_core.proof.columns import Columns
from grading_core.proof.figures import GRAINS, Figure, Figures, Key, Numbers, grains
from grading_core.proof.relations import Largest, Linear, Multiple, Relation, computable, linear
from grading_core.pullover.request import Gauges
from grading_core.rounding import CountRule
from tests.grading_core.proof.hand_garment import found, proof_of

CODE = ProofCode.TOTAL_LENGTH
A, B, C = (Key("part", item) for item in "abc")
KEYS = (A, B, C)
GRID = 8
"""Of the numbers that may be meant, to one."""


def of(*numbers: int, half: int = 0) -> dict[Key, Figure]:
    return {key: Figure(value * GRAINS, half) for key, value in zip(KEYS, numbers, strict=False)}


def meant(figure: Figure) -> list[Fraction]:
    """Every number of the grid that is printed as one is, whichever way a tie goes."""
    printed, half = Fraction(figure.printed, GRAINS), Fraction(figure.half, GRAINS)
    return [printed + Fraction(eighths, GRID) for eighths in range(-int(half * GRID), int(half * GRID) + 1)]


def can_hold(times: Mapping[Key, int], least: int | None, most: int | None, figures: Figures) -> bool:
    sums = {sum(map(lambda t, n: t * n, times.values(), each)) for each in product(*(meant(figures[k]) for k in times))}
    return any((least is None or total >= least) and (most is None or total <= most) for total in sums)


# One number stands once in the sum, so that the sums of the grid leave no gap between them.
SUMS = st.tuples(st.just(1), st.sampled_from((-3, -2, -1, 1, 2)), st.sampled_from((-2, -1, 1, 3)))
BOUNDS = st.sampled_from(((0, 0), (-2, 2), (0, None), (None, 0), (None, None), (3, 3)))
FIGURES = st.tuples(
    *(
        st.builds(Figure, st.integers(-6, 6).map(lambda n: n * GRAINS), st.sampled_from((0, GRAINS // 4, GRAINS // 2)))
        for _ in KEYS
    )
)


@settings(max_examples=150)
@given(SUMS, BOUNDS, FIGURES)
def test_a_sum_holds_where_any_numbers_that_may_be_meant_make_it(times, bounds, figures) -> None:  # type: ignore[no-untyped-def]
    own, printed = dict(zip(KEYS, times, strict=True)), dict(zip(KEYS, figures, strict=True))
    relation = Linear(
        code=CODE,
        times=own,
        least=None if bounds[0] is None else bounds[0] * GRAINS,
        most=None if bounds[1] is None else bounds[1] * GRAINS,
    )
    # the first number stands for itself alone: where it is exact, what the others come to leaves gaps
    if printed[A].half == 0 and bounds[0] == bounds[1] and bounds[0] is not None:
        printed[A] = printed[A]._replace(half=GRAINS // 2)
    assert relation.holds(printed) == can_hold(own, *bounds, printed)


@settings(max_examples=100)
@given(SUMS, BOUNDS, FIGURES, st.sampled_from(KEYS))
def test_what_a_sum_implies_of_a_number_is_all_that_makes_it_hold(times, bounds, figures, key) -> None:  # type: ignore[no-untyped-def]
    least, most = (None if bound is None else bound * GRAINS for bound in bounds)
    relation = Linear(code=CODE, times=dict(zip(KEYS, times, strict=True)), least=least, most=most)
    printed = dict(zip(KEYS, figures, strict=True))
    span = relation.implied(key, printed)
    assert span is not None
    for sixths in range(-40 * 6, 40 * 6 + 1):
        tried = sixths * GRAINS // 6
        inside = (span.least is None or tried >= span.least) and (span.most is None or tried <= span.most)
        assert relation.holds({**printed, key: Figure(tried)}) == inside


@settings(max_examples=100)
@given(SUMS, BOUNDS, st.lists(FIGURES, min_size=1, max_size=6), st.data())
def test_all_sizes_are_judged_as_each_by_itself(times, bounds, sizes, data) -> None:  # type: ignore[no-untyped-def]
    least, most = (None if bound is None else bound * GRAINS for bound in bounds)
    relation = Linear(code=CODE, times=dict(zip(KEYS, times, strict=True)), least=least, most=most)
    halves = [figure.half for figure in sizes[0]]
    lacking = {(place, key) for place in range(len(sizes)) for key in range(3) if data.draw(st.integers(0, 5)) == 0}
    rows = Columns(
        {
            key: Numbers(
                tuple(None if (place, at) in lacking else size[at].printed for place, size in enumerate(sizes)),
                half,
                "cm",
            )
            for at, (key, half) in enumerate(zip(KEYS, halves, strict=True))
        }
    )
    whole = [place for place in range(len(sizes)) if not any((place, at) in lacking for at in range(3))]
    broken = [
        place
        for place in whole
        if not relation.holds({k: Figure(rows[k].values[place] or 0, rows[k].half) for k in KEYS})
    ]
    judged = relation.judged(rows)
    assert (judged.times, list(judged.broken)) == (len(whole), broken)


@pytest.mark.parametrize("stitches_in_10_cm", [16, 22, 30, 42])
def test_a_width_is_found_exactly_where_no_width_that_prints_so_is_that_of_the_stitches(stitches_in_10_cm: int) -> None:
    gauge = Gauge.over(Fraction(stitches_in_10_cm), Fraction(30), Fraction(10))
    for stitches in range(195, 206):
        width = Fraction(10 * stitches, stitches_in_10_cm)
        for halves in range(int(2 * width) - 2, int(2 * width) + 4):
            printed = Fraction(halves, 2)
            # a second length that says that all are printed to half a centimetre
            rows = {"finished.bust": (float(printed),), "body.stitches": (stitches,), "finished.reach": (60.5,)}
            codes = [each.code for each in found(proof_of(("M",), rows, gauges=Gauges(gauge)))]
            assert codes == ([] if abs(printed - width) <= Fraction(1, 4) else ["width"]), (stitches, printed)


def test_fractions_in_a_sum_are_brought_to_whole_numbers() -> None:
    # a - b / 2 - c / 3 = 1: 6 - 3 - 2
    relation = linear(CODE, (A, 1), (B, Fraction(-1, 2)), (C, Fraction(-1, 3)), least=1, most=1)
    assert relation.holds(of(6, 6, 6))
    assert not relation.holds(of(6, 6, 9))
    assert relation.implied(C, of(6, 6, 9)) == (6 * GRAINS, 6 * GRAINS)


def test_a_size_that_lacks_a_number_is_not_judged() -> None:
    rows = Columns({A: Numbers((1, None, 3), 0, ""), B: Numbers((1, 2, None), 0, ""), C: Numbers((0, 0, 0), 0, "")})
    assert linear(CODE, (A, 1), (B, 1), (C, 1)).judged(rows) == (1, [0])


def test_relations_are_computable_between_rows_that_are_there() -> None:
    both, one = linear(CODE, (A, 1), (B, 1)), linear(CODE, (A, 1))
    relations: list[Relation] = [both, one]
    assert computable(relations, (A, C)) == [one]


@pytest.mark.parametrize(
    ("count", "holds", "nearest"), [(50, True, 50), (51, False, 50), (52, False, 54), (49, False, 50)]
)
def test_a_multiple_of_four_plus_two_is_known_and_the_nearest_told(count: int, holds: bool, nearest: int) -> None:
    # ..., 46, 50, 54, ...; 52 lies between two, and a tie goes up
    relation = Multiple(code=CODE, key=A, rule=CountRule(4, 2, "down"))
    assert relation.holds(of(count)) is holds
    assert relation.implied(A, of(count)) == (nearest * GRAINS, nearest * GRAINS)
    assert relation.judged(Columns({A: Numbers((count * GRAINS, None), 0, "stitches")})) == (1, [] if holds else [0])


LARGEST = Largest(code=CODE, key=A, of=({B: 1}, {C: 1}))


@settings(max_examples=60)
@given(st.tuples(*[st.integers(0, 5)] * 3))
def test_the_largest_is_the_largest(counts: tuple[int, int, int]) -> None:
    largest, one, other = counts
    assert LARGEST.holds(of(*counts)) is (largest == max(one, other))
    for key, at in zip(KEYS, range(3), strict=True):
        would = [n for n in range(10) if (t := [*counts[:at], n, *counts[at + 1 :]])[0] == max(t[1:])]
        span = LARGEST.implied(key, of(*counts))
        if not LARGEST.holds(of(*counts)):
            assert (span is not None) == bool(would)
            assert span is None or span.least == span.most == grains(would[-1])


def test_the_largest_is_judged_in_every_size_that_has_all_numbers() -> None:
    rows = Columns(
        {A: Numbers((5, 5, 5, None), 0, ""), B: Numbers((5, 4, 5, 5), 0, ""), C: Numbers((4, 4, 6, 5), 0, "")}
    )
    assert LARGEST.judged(rows) == (3, [1, 2])
