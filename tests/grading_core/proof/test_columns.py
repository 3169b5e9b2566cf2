"""Sums of rows in all sizes at once, against the same sums size by size."""

from hypothesis import given, settings
from hypothesis import strategies as st

from grading_core.proof.columns import BOUND_BITS, FACTOR_BITS, Columns
from grading_core.proof.figures import Key, Numbers

KEYS = [Key("a", item) for item in "bcd"]
FACTOR, BOUND = 2**FACTOR_BITS // len(KEYS) - 1, 2**BOUND_BITS - 1
NUMBERS = st.one_of(st.integers(0, 5), st.integers(2**64 - 5, 2**64 - 1))
FACTORS = st.one_of(st.integers(-3, 3), st.sampled_from((-FACTOR, FACTOR)))
BOUNDS = st.one_of(st.none(), st.integers(-9, 9), st.sampled_from((-BOUND, BOUND)))
ROWS = st.integers(1, 12).flatmap(lambda sizes: st.tuples(*[st.tuples(*[NUMBERS] * sizes) for _ in KEYS]))


@settings(max_examples=400)
@given(ROWS, st.tuples(*[FACTORS] * 3), st.tuples(*[st.sampled_from((0, 1, 4))] * 3), BOUNDS, BOUNDS)
def test_a_sum_lies_between_its_bounds_in_every_size(rows, factors, halves, least, most) -> None:  # type: ignore[no-untyped-def]
    columns = Columns({key: Numbers(row, half, "") for key, row, half in zip(KEYS, rows, halves, strict=True)})
    sums = [
        sum(factor * number for factor, number in zip(factors, size, strict=True)) for size in zip(*rows, strict=True)
    ]
    slack = sum(abs(factor) * half for factor, half in zip(factors, halves, strict=True))
    expected = all((least is None or least <= s + slack) and (most is None or s - slack <= most) for s in sums)
    assert columns.lies_within(dict(zip(KEYS, factors, strict=True)), least, most) == expected


@settings(max_examples=100)
@given(ROWS, st.sampled_from((None, -1)), st.data())
def test_with_a_size_that_has_none_or_less_than_nothing_nothing_is_seen(rows, number, data) -> None:  # type: ignore[no-untyped-def]
    place = data.draw(st.integers(0, len(rows[0]) - 1))
    lacking = (*rows[0][:place], number, *rows[0][place + 1 :])
    columns = Columns({key: Numbers(row, 0, "") for key, row in zip(KEYS, (lacking, *rows[1:]), strict=True)})
    assert not columns.lies_within(dict.fromkeys(KEYS, 1), None, None)
    assert columns.lies_within(dict.fromkeys(KEYS[1:], 1), None, None)
